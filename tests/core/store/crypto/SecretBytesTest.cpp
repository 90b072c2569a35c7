// Memory for keys: fresh, separate, guarded. That it is wiped when freed cannot be looked at from here: libsodium unmaps
// the pages.
#include "core/store/crypto/SecretBytes.h"

#include <gtest/gtest.h>

#include <sys/mman.h>
#include <sys/resource.h>
#include <unistd.h>

#include <algorithm>
#include <fstream>
#include <string>
#include <utility>
#include <vector>

namespace raphe::test {
namespace {

const std::vector<std::uint8_t> someBytes{1, 2, 3, 4, 5};

// Memory of this process that is kept out of swap, in KiB.
long lockedKib()
{
    std::ifstream status("/proc/self/status");
    std::string line;
    while (std::getline(status, line))
        if (line.starts_with("VmLck:"))
            return std::stol(line.substr(6));
    return -1;
}

// Whether a page can be locked here at all. AddressSanitizer leaves out the call and says that it worked.
bool lockingWorks()
{
    constexpr std::size_t page = 4096;
    void *memory = mmap(nullptr, page, PROT_READ | PROT_WRITE, MAP_PRIVATE | MAP_ANONYMOUS, -1, 0);
    const long before = lockedKib();
    const bool locked = mlock(memory, page) == 0 && lockedKib() > before;
    munmap(memory, page);
    return locked;
}

TEST(SecretBytes, AreZeroAtFirst)
{
    for (const std::size_t size : {1U, 31U, 32U, 4096U, 5000U}) {
        const SecretBytes bytes(size); // libsodium itself hands out memory full of other bytes
        ASSERT_EQ(bytes.size(), size);
        ASSERT_EQ(bytes.span().size(), size);
        EXPECT_TRUE(std::ranges::all_of(bytes.span(), [](std::uint8_t b) { return b == 0; })) << size;
    }
}

TEST(SecretBytes, CompareByContentAndSize)
{
    const auto bytes = SecretBytes::copyOf(someBytes);
    EXPECT_TRUE(std::ranges::equal(bytes.span(), someBytes));
    EXPECT_TRUE(bytes == SecretBytes::copyOf(someBytes));
    for (std::size_t i = 0; i < someBytes.size(); ++i) {
        auto other = bytes.clone();
        other.span()[i] ^= 0x80U;
        EXPECT_FALSE(bytes == other) << "byte " << i;
    }
    EXPECT_FALSE(bytes == SecretBytes::copyOf(std::span(someBytes).first(4)));
    EXPECT_TRUE(SecretBytes(0) == SecretBytes::copyOf({}));
    EXPECT_FALSE(bytes == SecretBytes(0));
}

TEST(SecretBytes, ACloneIsSeparate)
{
    const auto bytes = SecretBytes::copyOf(someBytes);
    auto clone = bytes.clone();
    clone.span()[0] = 99;
    EXPECT_EQ(bytes.span()[0], 1);
}

TEST(SecretBytes, MovingHandsOverAndLeavesNothing)
{
    auto source = SecretBytes::copyOf(someBytes);
    const SecretBytes taken = std::move(source);
    EXPECT_TRUE(taken == SecretBytes::copyOf(someBytes));
    EXPECT_EQ(source.size(), 0U); // NOLINT(bugprone-use-after-move,clang-analyzer-cplusplus.Move): promised
    EXPECT_TRUE(source.span().empty());

    auto target = SecretBytes::random(32);
    auto second = SecretBytes::copyOf(someBytes);
    target = std::move(second);
    EXPECT_TRUE(target == taken);
    EXPECT_EQ(second.size(), 0U); // NOLINT(bugprone-use-after-move,clang-analyzer-cplusplus.Move)
}

TEST(SecretBytes, RandomOnesDiffer)
{
    const auto one = SecretBytes::random(32);
    EXPECT_EQ(one.size(), 32U);
    EXPECT_FALSE(one == SecretBytes::random(32));
    EXPECT_FALSE(one == SecretBytes(32));
}

TEST(SecretBytesDeathTest, ReadingBehindTheEndEndsTheProgram)
{
    GTEST_FLAG_SET(death_test_style, "threadsafe");
    const auto bytes = SecretBytes::random(32);
    const volatile std::uint8_t *behind = bytes.span().data() + bytes.size();
    EXPECT_DEATH(static_cast<void>(*behind), "");
}

TEST(SecretBytes, AreLockedWhereTheSystemAllowsIt)
{
    const bool works = lockingWorks();
    const long before = lockedKib();
    const auto bytes = SecretBytes::random(32);
    if (works)
        EXPECT_GT(lockedKib(), before);
    else
        EXPECT_EQ(lockedKib(), before);
}

TEST(SecretBytes, WorkWithoutLockedMemory)
{
    GTEST_FLAG_SET(death_test_style, "threadsafe");
    const auto asNobodyWithoutLocking = [] {
        constexpr uid_t nobody = 65534; // the limit does not bind root
        const rlimit none{0, 0};
        if (setrlimit(RLIMIT_MEMLOCK, &none) != 0 || (geteuid() == 0 && setresuid(nobody, nobody, nobody) != 0) || lockingWorks())
            _exit(1);
        const auto bytes = SecretBytes::copyOf(someBytes);
        _exit(std::ranges::equal(bytes.span(), someBytes) ? 0 : 2);
    };
    EXPECT_EXIT(asNobodyWithoutLocking(), testing::ExitedWithCode(0), "");
}

} // namespace
} // namespace raphe::test
