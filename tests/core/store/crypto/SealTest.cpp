// Sealed boxes: as published, and refused when any bit of box, place or key is another one.
#include "core/store/crypto/Seal.h"

#include "core/base/Result.h"
#include "core/store/crypto/Bytes.h"
#include "core/store/crypto/SealDetail.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <numeric>
#include <string>

namespace raphe::test {
namespace {

const std::string place = "visit/17/3";

std::vector<std::uint8_t> vectorOf(std::string_view text)
{
    const auto bytes = bytesOf(text);
    return {bytes.begin(), bytes.end()};
}

void flip(std::span<std::uint8_t> bytes, std::size_t bit)
{
    bytes[bit / 8] ^= static_cast<std::uint8_t>(1U << bit % 8);
}

TEST(Seal, EqualsThePublishedBox)
{
    // draft-irtf-cfrg-xchacha-03, appendix A.3.1. The same comes out of another implementation: HChaCha20 written out in
    // Python, and ChaCha20-Poly1305 of OpenSSL.
    SecretBytes key(sealKeySize);
    std::iota(key.span().begin(), key.span().end(), std::uint8_t{0x80});
    detail::SealNonce nonce{};
    std::iota(nonce.begin(), nonce.end(), std::uint8_t{0x40});
    const std::string boundTo = "\x50\x51\x52\x53\xc0\xc1\xc2\xc3\xc4\xc5\xc6\xc7";
    const std::string plain = "Ladies and Gentlemen of the class of '99: If I could offer you only one tip for the future, "
                              "sunscreen would be it.";
    const auto sealed = detail::sealWith(nonce, key, bytesOf(plain), boundTo);
    EXPECT_EQ(toHex(sealed),
        "404142434445464748494a4b4c4d4e4f5051525354555657" // nonce
        "bd6d179d3e83d43b9576579493c0e939572a1700252bfaccbed2902c21396cbb"
        "731c7f1b0b4aa6440bf3a82f4eda7e39ae64c6708c54c216cb96b72e1213b452"
        "2f8c9ba40db5d945b11b69b982c1bb9e3f3fac2bc369488f76b2383565d3fff9"
        "21f9664c97637da9768812f615c68b13b52e"
        "c0875924c1c7987947deafd8780acf49") // tag
        << "draft-irtf-cfrg-xchacha-03, A.3.1";
    EXPECT_EQ(unseal(key, sealed, boundTo), vectorOf(plain));
}

TEST(Seal, WhatIsSealedComesOut)
{
    const auto key = SecretBytes::random(sealKeySize);
    for (const std::size_t size : {0U, 1U, 63U, 64U, 65U, 100'000U}) {
        std::vector<std::uint8_t> plain(size);
        std::iota(plain.begin(), plain.end(), std::uint8_t{7});
        for (const std::string &boundTo : {std::string(), place, std::string("a\0b", 3)}) {
            const auto sealed = seal(key, plain, boundTo);
            EXPECT_EQ(sealed.size(), size + sealOverhead);
            EXPECT_EQ(unseal(key, sealed, boundTo), plain) << size;
            const auto secret = unsealSecret(key, sealed, boundTo);
            ASSERT_TRUE(secret) << size;
            EXPECT_TRUE(*secret == SecretBytes::copyOf(plain)) << size;
        }
    }
}

class SmallBox : public testing::Test {
protected:
    void expectRefused(const SecretBytes &otherKey, std::span<const std::uint8_t> box, std::string_view boundTo) const
    {
        EXPECT_EQ(unseal(otherKey, box, boundTo), std::nullopt);
        EXPECT_FALSE(unsealSecret(otherKey, box, boundTo));
    }

    const SecretBytes key = SecretBytes::random(sealKeySize);
    const std::vector<std::uint8_t> sealed = seal(key, bytesOf("Ana"), place);
};

TEST_F(SmallBox, OpensAsItIs)
{
    EXPECT_EQ(unseal(key, sealed, place), vectorOf("Ana"));
}

TEST_F(SmallBox, IsRefusedWithAnyBitChanged)
{
    for (std::size_t bit = 0; bit < 8 * sealed.size(); ++bit) {
        SCOPED_TRACE(bit);
        auto changed = sealed;
        flip(changed, bit);
        expectRefused(key, changed, place);
    }
}

TEST_F(SmallBox, IsRefusedAtAnyOtherPlace)
{
    for (std::size_t bit = 0; bit < 8 * place.size(); ++bit) {
        SCOPED_TRACE(bit);
        auto changed = vectorOf(place);
        flip(changed, bit);
        expectRefused(key, sealed, std::string(changed.begin(), changed.end()));
    }
    for (const std::string &other : {std::string(), place + " ", place + '\0', place.substr(1)}) {
        SCOPED_TRACE(other);
        expectRefused(key, sealed, other);
    }
}

TEST_F(SmallBox, IsRefusedWithAnyOtherKey)
{
    for (std::size_t bit = 0; bit < 8 * sealKeySize; ++bit) {
        SCOPED_TRACE(bit);
        auto changed = key.clone();
        flip(changed.span(), bit);
        expectRefused(changed, sealed, place);
    }
}

TEST_F(SmallBox, IsRefusedCutOrLengthened)
{
    for (std::size_t size = 0; size < sealed.size(); ++size) {
        SCOPED_TRACE(size);
        // A copy of its own, so that a sanitizer sees any reading behind its end.
        expectRefused(key, std::vector<std::uint8_t>(sealed.begin(), sealed.begin() + static_cast<long>(size)), place);
    }
    auto longer = sealed;
    longer.push_back(0);
    expectRefused(key, longer, place);
}

TEST_F(SmallBox, IsAnotherOneEachTime)
{
    const auto again = seal(key, bytesOf("Ana"), place);
    EXPECT_FALSE(std::equal(again.begin(), again.begin() + sealNonceSize, sealed.begin())) << "the nonce came twice";
    EXPECT_NE(toHex(std::span(again).subspan(sealNonceSize)), toHex(std::span(sealed).subspan(sealNonceSize)));
}

TEST_F(SmallBox, AKeyOfTheWrongSizeIsAnError)
{
    for (const std::size_t size : {0U, 16U, 31U, 33U}) {
        const SecretBytes wrong(size);
        EXPECT_THROW(static_cast<void>(seal(wrong, {}, place)), Error) << size;
        EXPECT_THROW(static_cast<void>(unseal(wrong, sealed, place)), Error) << size;
        EXPECT_THROW(static_cast<void>(unsealSecret(wrong, sealed, place)), Error) << size;
    }
}

} // namespace
} // namespace raphe::test
