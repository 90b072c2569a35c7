// Ed25519 against RFC 8032, and that nothing else is taken for a signature.
#include "core/store/crypto/Signing.h"

#include "core/base/Result.h"
#include "core/store/crypto/Bytes.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <string>
#include <vector>

namespace raphe::test {
namespace {

SecretBytes secretFromHex(const std::string &hex)
{
    return SecretBytes::copyOf(fromHex(hex).value());
}

TEST(Signing, EqualsTheRfc)
{
    struct Vector {
        std::string seed, publicKey, message, signature;
    };
    // RFC 8032, section 7.1, tests 1 to 3. From memory; OpenSSL gives the same.
    const std::vector<Vector> vectors{
        {"9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60",
            "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a", "",
            "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e06522490155"
            "5fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b"},
        {"4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb",
            "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c", "72",
            "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da"
            "085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00"},
        {"c5aa8df43f9f837bedb7442f31dcb7b166d38535076f094b85ce3a2e0b4458f7",
            "fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025", "af82",
            "6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac"
            "18ff9b538d16f290ae67f760984dc6594a7c15e9716ed28dc027beceea1ec40a"},
    };
    for (std::size_t i = 0; i < vectors.size(); ++i) {
        SCOPED_TRACE("RFC 8032, section 7.1, test " + std::to_string(i + 1));
        const auto key = SigningKey::fromSeed(secretFromHex(vectors[i].seed));
        EXPECT_EQ(toHex(key.publicKey()), vectors[i].publicKey);
        EXPECT_EQ(toHex(key.seed().span()), vectors[i].seed);
        const auto message = fromHex(vectors[i].message).value();
        const Signature signature = key.sign(message);
        EXPECT_EQ(toHex(signature), vectors[i].signature);
        EXPECT_TRUE(verify(key.publicKey(), message, signature));
    }
}

TEST(Signing, AStoredSeedGivesTheSameKey)
{
    const auto key = SigningKey::random();
    const auto again = SigningKey::fromSeed(key.seed().clone());
    EXPECT_EQ(again.publicKey(), key.publicKey());
    EXPECT_TRUE(verify(key.publicKey(), bytesOf("visit"), again.sign(bytesOf("visit"))));
    EXPECT_NE(SigningKey::random().publicKey(), key.publicKey());
}

TEST(Signing, AnyChangeIsRefused)
{
    const auto key = SigningKey::random();
    const std::vector<std::uint8_t> message{'v', 'i', 's', 'i', 't'};
    const Signature signature = key.sign(message);
    ASSERT_TRUE(verify(key.publicKey(), message, signature));
    const auto flipped = [](auto bytes, std::size_t bit) {
        bytes[bit / 8] ^= static_cast<std::uint8_t>(1U << bit % 8);
        return bytes;
    };
    for (std::size_t bit = 0; bit < 8 * signature.size(); ++bit)
        EXPECT_FALSE(verify(key.publicKey(), message, flipped(signature, bit))) << "signature, bit " << bit;
    for (std::size_t bit = 0; bit < 8 * message.size(); ++bit)
        EXPECT_FALSE(verify(key.publicKey(), flipped(message, bit), signature)) << "message, bit " << bit;
    for (std::size_t bit = 0; bit < 8 * key.publicKey().size(); ++bit)
        EXPECT_FALSE(verify(flipped(key.publicKey(), bit), message, signature)) << "public key, bit " << bit;
    EXPECT_FALSE(verify(key.publicKey(), std::span(message).first(4), signature));
    EXPECT_FALSE(verify(SigningKey::random().publicKey(), message, signature));
}

TEST(Signing, ASecondFormOfASignatureIsRefused)
{
    // The second half is a number below the group's order L (RFC 8032, section 5.1); with L added it would fit as well.
    const auto order = fromHex("edd3f55c1a631258d69cf7a2def9de1400000000000000000000000000000010").value();
    const auto key = SigningKey::random();
    Signature signature = key.sign({});
    unsigned carry = 0;
    for (std::size_t i = 0; i < 32; ++i) {
        carry += static_cast<unsigned>(signature[32 + i]) + order[i];
        signature[32 + i] = static_cast<std::uint8_t>(carry & 0xffU);
        carry >>= 8;
    }
    ASSERT_EQ(carry, 0U);
    EXPECT_FALSE(verify(key.publicKey(), {}, signature));
}

TEST(Signing, APublicKeyForWhichAnythingIsSignedIsRefused)
{
    // With the neutral point as public key and as first half, and 0 as second half, the equation holds for every message.
    PublicKey neutral{};
    neutral[0] = 1;
    Signature signature{};
    signature[0] = 1;
    EXPECT_FALSE(verify(neutral, bytesOf("visit"), signature));
}

TEST(Signing, ASeedOfTheWrongSizeIsRefused)
{
    for (const std::size_t size : {0U, 31U, 33U, 64U})
        EXPECT_THROW(static_cast<void>(SigningKey::fromSeed(SecretBytes(size))), Error) << size;
}

} // namespace
} // namespace raphe::test
