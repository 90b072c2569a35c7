// BLAKE2b against the RFC and against Python's hashlib, and the hexadecimal helpers.
#include "core/store/crypto/Hash.h"

#include "core/base/Result.h"

#include <gtest/gtest.h>
#include <sodium.h>

#include <numeric>

namespace raphe::test {
namespace {

TEST(Hash, LibsodiumsBlake2bIsTheRfcs)
{
    // RFC 7693, appendix A: BLAKE2b-512 of "abc". From memory; Python's hashlib gives the same.
    initialiseCrypto();
    std::array<std::uint8_t, 64> hash{};
    const auto abc = bytesOf("abc");
    ASSERT_EQ(crypto_generichash(hash.data(), hash.size(), abc.data(), abc.size(), nullptr, 0), 0);
    EXPECT_EQ(toHex(hash),
        "ba80a53f981c4d0d6a2797b69f12f6e94c212f14685ac4b74b12bb6fdbffa2d1"
        "7d87c5392aab792dc252d5de4533cc9518d38aa8dbf1925ab92386edd4009923")
        << "RFC 7693, appendix A";
}

// No vectors of the RFC for 256 bits or with a key: computed with Python's hashlib.blake2b(digest_size=32).
TEST(Hash, With256BitsEqualsAnotherImplementation)
{
    EXPECT_EQ(toHex(hashOf(bytesOf("abc"))), "bddd813c634239723171ef3fee98579b94964e3bb1cb3e427262c8c068d52319");
    EXPECT_EQ(toHex(hashOf({})), "0e5751c026e543b2e8ab2eb06099daa1d1e5df47778f7787faab45cdf12fe3a8");
}

TEST(Hash, WithAKeyEqualsAnotherImplementation)
{
    SecretBytes key(hashKeySize);
    std::iota(key.span().begin(), key.span().end(), std::uint8_t{0});
    EXPECT_EQ(toHex(hashOf(bytesOf("abc"), key)), "d63a32d3e44738d7907f964316c241adaba0abfeabc32349677578a15a203f7f");
}

TEST(Hash, AKeyOfTheWrongSizeIsRefused)
{
    for (const std::size_t size : {0U, 16U, 31U, 33U, 64U})
        EXPECT_THROW(static_cast<void>(hashOf({}, SecretBytes(size))), Error) << size;
}

TEST(Hash, MatchesOnlyItself)
{
    const Hash256 hash = hashOf(bytesOf("abc"));
    EXPECT_TRUE(matches(hash, hashOf(bytesOf("abc"))));
    for (std::size_t bit = 0; bit < 256; ++bit) {
        Hash256 other = hash;
        other[bit / 8] ^= static_cast<std::uint8_t>(1U << bit % 8);
        EXPECT_FALSE(matches(hash, other)) << "bit " << bit;
    }
}

TEST(Hex, GoesThereAndBack)
{
    const std::vector<std::uint8_t> bytes{0x00, 0x0f, 0xa5, 0xff};
    EXPECT_EQ(toHex(bytes), "000fa5ff");
    EXPECT_EQ(fromHex("000fa5ff"), bytes);
    EXPECT_EQ(fromHex("000FA5fF"), bytes);
    EXPECT_EQ(toHex({}), "");
    EXPECT_EQ(fromHex(""), std::vector<std::uint8_t>());
}

TEST(Hex, RefusesEverythingElse)
{
    for (const char *text : {"0", "000", "0g", "g0", "00 00", " 0000", "0000 ", "0x00", "00:00", "é0"})
        EXPECT_EQ(fromHex(text), std::nullopt) << text;
    EXPECT_EQ(fromHex(std::string_view("00\0\0", 4)), std::nullopt);
}

} // namespace
} // namespace raphe::test
