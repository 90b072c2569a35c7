// Argon2id. The RFC's vector has four lanes, a secret and associated data, which libsodium does not offer: so libargon2 is
// held against the RFC, and libsodium, through deriveKey, against libargon2.
#include "core/store/crypto/KeyDerivation.h"

#include "core/store/crypto/Bytes.h"

#include <argon2.h>
#include <gtest/gtest.h>
#include <sys/resource.h>
#include <unistd.h>

#include <algorithm>
#include <fstream>
#include <limits>
#include <numeric>
#include <string>

namespace raphe::test {
namespace {

constexpr std::uint64_t kib = 1024;

Salt someSalt()
{
    Salt salt{};
    std::iota(salt.begin(), salt.end(), std::uint8_t{0xf8});
    return salt;
}

std::string derived(std::string_view passphrase, const Salt &salt, const DerivationCost &cost)
{
    const auto key = deriveKey(passphrase, salt, cost);
    return key ? toHex(key.value().span()) : key.error().place + ": " + key.error().detail;
}

std::string fromLibargon2(std::string_view passphrase, const Salt &salt, const DerivationCost &cost)
{
    std::array<std::uint8_t, derivedKeySize> key{};
    const int outcome =
        argon2id_hash_raw(static_cast<std::uint32_t>(cost.passes), static_cast<std::uint32_t>(cost.memoryBytes / kib), 1,
            passphrase.data(), passphrase.size(), salt.data(), salt.size(), key.data(), key.size());
    return outcome == ARGON2_OK ? toHex(key) : argon2_error_message(outcome);
}

// Lets the process have only that much more address space while it lives.
class AddressSpaceLeft {
public:
    explicit AddressSpaceLeft(std::uint64_t bytes)
    {
        getrlimit(RLIMIT_AS, &m_before);
        std::uint64_t pages = 0;
        std::ifstream("/proc/self/statm") >> pages;
        const rlimit limit{pages * static_cast<std::uint64_t>(sysconf(_SC_PAGESIZE)) + bytes, m_before.rlim_max};
        m_set = pages > 0 && setrlimit(RLIMIT_AS, &limit) == 0;
    }
    ~AddressSpaceLeft() { setrlimit(RLIMIT_AS, &m_before); }
    AddressSpaceLeft(const AddressSpaceLeft &) = delete;
    AddressSpaceLeft &operator=(const AddressSpaceLeft &) = delete;

    [[nodiscard]] bool set() const { return m_set; }

private:
    rlimit m_before{};
    bool m_set = false;
};

TEST(KeyDerivation, Libargon2IsTheRfcs)
{
    // RFC 9106, section 5.3. The tag is from memory; OpenSSL's Argon2id gives the same.
    std::array<std::uint8_t, 32> tag{};
    std::array<std::uint8_t, 32> password{};
    std::array<std::uint8_t, 16> salt{};
    std::array<std::uint8_t, 8> secret{};
    std::array<std::uint8_t, 12> associated{};
    password.fill(1);
    salt.fill(2);
    secret.fill(3);
    associated.fill(4);
    argon2_context context{};
    context.out = tag.data();
    context.outlen = tag.size();
    context.pwd = password.data();
    context.pwdlen = password.size();
    context.salt = salt.data();
    context.saltlen = salt.size();
    context.secret = secret.data();
    context.secretlen = secret.size();
    context.ad = associated.data();
    context.adlen = associated.size();
    context.t_cost = 3;
    context.m_cost = 32;
    context.lanes = 4;
    context.threads = 1;
    context.version = ARGON2_VERSION_13;
    ASSERT_EQ(argon2_ctx(&context, Argon2_id), ARGON2_OK);
    EXPECT_EQ(toHex(tag), "0d640df58d78766c08c037a34a8b53c9d01ef0452d75b65eb52520e96b01e659") << "RFC 9106, section 5.3";
}

TEST(KeyDerivation, EqualsLibargon2WithOneLane)
{
    const std::string high = "Gr\xc3\xb6\xc3\x9f"
                             "er \xf0\x9d\x84\x9e \xff\x80";
    for (const DerivationCost &cost : {leastCost, DerivationCost{1, 64 * kib}, DerivationCost{3, 256 * kib},
             DerivationCost{2, 1024 * kib}, DerivationCost{16, 8 * kib}, DerivationCost{2, 70'001}})
        for (const std::string &passphrase :
            {std::string("correct horse"), std::string(), std::string("a\0b", 3), high, std::string(300, 'x')})
            EXPECT_EQ(derived(passphrase, someSalt(), cost), fromLibargon2(passphrase, someSalt(), cost))
                << cost.passes << " passes, " << cost.memoryBytes << " bytes, passphrase " << testing::PrintToString(passphrase);
}

TEST(KeyDerivation, EveryInputCounts)
{
    const DerivationCost cost{2, 16 * kib};
    const std::string key = derived("passphrase", someSalt(), cost);
    ASSERT_EQ(key.size(), 2 * derivedKeySize) << key;
    EXPECT_EQ(derived("passphrase", someSalt(), cost), key);
    Salt otherSalt = someSalt();
    otherSalt.back() ^= 1U;
    EXPECT_NE(derived("passphrase", otherSalt, cost), key);
    EXPECT_NE(derived("Passphrase", someSalt(), cost), key);
    EXPECT_NE(derived("passphrase ", someSalt(), cost), key);
    EXPECT_NE(derived("passphrase", someSalt(), {3, 16 * kib}), key);
    EXPECT_NE(derived("passphrase", someSalt(), {2, 20 * kib}), key);
}

TEST(KeyDerivation, SaltsDiffer)
{
    EXPECT_NE(toHex(randomSalt()), toHex(randomSalt()));
    EXPECT_NE(randomSalt(), Salt{});
}

TEST(KeyDerivation, CostsOutsideTheBoundsAreRefusedByName)
{
    struct Case {
        DerivationCost cost;
        std::string place;
        std::string detail;
    };
    const std::uint64_t most = std::numeric_limits<std::uint64_t>::max();
    const std::string passes = ", allowed: 1 to 16";
    const std::string memory = ", allowed: 8192 to 1073741824";
    for (const auto &[cost, place, detail] :
        {Case{{0, 8 * kib}, "passes", "0" + passes}, Case{{17, 8 * kib}, "passes", "17" + passes},
            Case{{most, 8 * kib}, "passes", std::to_string(most) + passes}, Case{{1, 0}, "memoryBytes", "0" + memory},
            Case{{1, 8191}, "memoryBytes", "8191" + memory}, Case{{1, 1'073'741'825}, "memoryBytes", "1073741825" + memory},
            Case{{1, most}, "memoryBytes", std::to_string(most) + memory}}) {
        const auto checked = checkCost(cost);
        ASSERT_FALSE(checked) << detail;
        const auto key = deriveKey({}, someSalt(), cost);
        ASSERT_FALSE(key) << detail;
        for (const Error &error : {checked.error(), key.error()}) {
            EXPECT_EQ(error.code, ErrorCode::OutOfRange);
            EXPECT_EQ(error.place, place);
            EXPECT_EQ(error.detail, detail);
        }
    }
}

TEST(KeyDerivation, TheBoundsThemselvesAreAllowed)
{
    EXPECT_TRUE(checkCost(leastCost).ok());
    EXPECT_TRUE(checkCost(mostCost).ok());
    EXPECT_TRUE(checkCost(usualCost()).ok());
}

TEST(KeyDerivation, TheUsualCostIsTheRfcsSecondRecommendedOption)
{
    EXPECT_EQ(usualCost(), (DerivationCost{3, 65'536 * kib})) << "RFC 9106, section 4";
}

TEST(KeyDerivation, TooLittleMemoryIsAnError)
{
    initialiseCrypto();
    const AddressSpaceLeft left(64 * kib * kib);
    ASSERT_TRUE(left.set());
    const auto key = deriveKey({}, someSalt(), {1, mostCost.memoryBytes});
    ASSERT_FALSE(key);
    EXPECT_EQ(key.error().code, ErrorCode::OutOfMemory);
    EXPECT_EQ(key.error().place, "memoryBytes");
    EXPECT_EQ(key.error().detail, "1073741824");
}

} // namespace
} // namespace raphe::test
