#include "core/store/crypto/SecretBytes.h"

#include "core/base/Result.h"

#include <sodium.h>

#include <algorithm>
#include <string>
#include <utility>

namespace raphe {

void initialiseCrypto()
{
    static const int outcome = sodium_init(); // negative: failed; 1: somebody else had started it
    if (outcome < 0)
        throw Error{ErrorCode::NoCrypto, "libsodium", "sodium_init"};
}

SecretBytes::SecretBytes(std::size_t size)
{
    initialiseCrypto();
    m_bytes = static_cast<std::uint8_t *>(sodium_malloc(size));
    if (m_bytes == nullptr)
        throw Error{ErrorCode::OutOfMemory, "key", std::to_string(size)};
    m_size = size;
    sodium_memzero(m_bytes, m_size);
}

SecretBytes::~SecretBytes()
{
    sodium_free(m_bytes);
}

SecretBytes::SecretBytes(SecretBytes &&other) noexcept
    : m_bytes(std::exchange(other.m_bytes, nullptr)), m_size(std::exchange(other.m_size, 0))
{
}

SecretBytes &SecretBytes::operator=(SecretBytes &&other) noexcept
{
    sodium_free(std::exchange(m_bytes, std::exchange(other.m_bytes, nullptr)));
    m_size = std::exchange(other.m_size, 0);
    return *this;
}

SecretBytes SecretBytes::random(std::size_t size)
{
    SecretBytes bytes(size);
    randombytes_buf(bytes.m_bytes, size);
    return bytes;
}

SecretBytes SecretBytes::copyOf(std::span<const std::uint8_t> bytes)
{
    SecretBytes copy(bytes.size());
    std::copy(bytes.begin(), bytes.end(), copy.m_bytes);
    return copy;
}

bool SecretBytes::operator==(const SecretBytes &other) const
{
    return m_size == other.m_size && (m_size == 0 || sodium_memcmp(m_bytes, other.m_bytes, m_size) == 0);
}

} // namespace raphe
