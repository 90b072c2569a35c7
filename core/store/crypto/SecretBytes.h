// Memory for keys, by libsodium: between guard pages, kept out of swap and core dumps where the system allows it, and
// wiped when freed. Each object owns its bytes. An object belongs to one thread at a time.
// Where the limit on locked memory (RLIMIT_MEMLOCK) or the system forbids locking, everything still works, but then the
// bytes may reach swap, a hibernation image or a core dump. Guard pages and wiping stay.
// An object costs some pages of memory: meant for keys, not for documents.
#pragma once

#include <cstddef>
#include <cstdint>
#include <span>

namespace raphe {

/// Starts libsodium once; any thread, any number of times. Everything in this folder calls it itself.
/// Throws Error with NoCrypto when the library finds no source of randomness.
void initialiseCrypto();

class SecretBytes {
public:
    /// All zero. Throws Error with OutOfMemory.
    explicit SecretBytes(std::size_t size);
    ~SecretBytes();
    SecretBytes(const SecretBytes &) = delete;
    SecretBytes &operator=(const SecretBytes &) = delete;
    /// What was moved from is empty.
    SecretBytes(SecretBytes &&other) noexcept;
    SecretBytes &operator=(SecretBytes &&other) noexcept;

    /// From the system's generator, fit for keys.
    [[nodiscard]] static SecretBytes random(std::size_t size);
    /// The source stays as it is: whoever owns it wipes it.
    [[nodiscard]] static SecretBytes copyOf(std::span<const std::uint8_t> bytes);
    [[nodiscard]] SecretBytes clone() const { return copyOf(span()); }

    [[nodiscard]] std::span<const std::uint8_t> span() const { return {m_bytes, m_size}; }
    [[nodiscard]] std::span<std::uint8_t> span() { return {m_bytes, m_size}; }
    [[nodiscard]] std::size_t size() const { return m_size; }

    /// Takes the same time wherever two of one size differ; sizes are no secret.
    [[nodiscard]] bool operator==(const SecretBytes &other) const;

private:
    std::uint8_t *m_bytes = nullptr;
    std::size_t m_size = 0;
};

} // namespace raphe
