// A key from a passphrase: Argon2id version 1.3 (RFC 9106) with one lane, by libsodium. Pure functions; any thread, and
// slow on purpose: never call deriveKey in the thread of the windows.
#pragma once

#include "core/base/Result.h"
#include "core/store/crypto/SecretBytes.h"

#include <array>
#include <cstdint>
#include <span>

namespace raphe {

inline constexpr std::size_t saltSize = 16; // bytes; RFC 9106, section 4, recommends 128 bits
inline constexpr std::size_t derivedKeySize = 32; // bytes
using Salt = std::array<std::uint8_t, saltSize>;

/// What a guess costs. Memory counts in steps of 4 KiB, rounded down (RFC 9106, section 3.2: four blocks a lane).
struct DerivationCost {
    std::uint64_t passes = 0;
    std::uint64_t memoryBytes = 0;
    bool operator==(const DerivationCost &) const = default;
};

// Costs are read from a file before anything proves that the file is ours, so they are bounded. The least is what
// Argon2id itself allows, for tests; the most is our choice, no source.
inline constexpr DerivationCost leastCost{1, std::uint64_t{8} * 1024};
inline constexpr DerivationCost mostCost{16, std::uint64_t{1024} * 1024 * 1024};

/// 3 passes over 64 MiB: RFC 9106, section 4, second recommended option, but for its four lanes, since libsodium has one.
/// An attacker's guess costs the same work and memory; ours runs on one core.
[[nodiscard]] DerivationCost usualCost();

/// Fails with OutOfRange, place "passes" or "memoryBytes", unless leastCost <= cost <= mostCost in both.
[[nodiscard]] Result<Done> checkCost(const DerivationCost &cost);

/// Never used for two passphrases.
[[nodiscard]] Salt randomSalt();

/// derivedKeySize bytes. The passphrase is taken byte by byte: bring it to one Unicode form (NFC) before, since keyboards
/// differ; whoever owns it wipes it. An empty one is allowed here and for the caller to refuse.
/// Fails as checkCost before any memory is taken, and with OutOfMemory when the system refuses the memory. A system that
/// promises more memory than it has may still end the program.
[[nodiscard]] Result<SecretBytes> deriveKey(std::span<const char> passphrase, const Salt &salt, const DerivationCost &cost);

} // namespace raphe
