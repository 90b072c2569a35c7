#include "core/store/crypto/Seal.h"

#include "core/store/crypto/Bytes.h"
#include "core/store/crypto/KeySize.h"
#include "core/store/crypto/SealDetail.h"

#include <sodium.h>

#include <algorithm>

namespace raphe {

static_assert(sealKeySize == crypto_aead_xchacha20poly1305_ietf_KEYBYTES);
static_assert(sealNonceSize == crypto_aead_xchacha20poly1305_ietf_NPUBBYTES);
static_assert(sealTagSize == crypto_aead_xchacha20poly1305_ietf_ABYTES);

namespace {

// False, and `plain` without meaning, when the box is refused. The box is long enough, and `plain` has the room.
bool openInto(std::uint8_t *plain, const SecretBytes &key, std::span<const std::uint8_t> sealed, std::string_view boundTo)
{
    const auto nonce = sealed.first(sealNonceSize);
    const auto box = sealed.subspan(sealNonceSize);
    const auto place = bytesOf(boundTo);
    return crypto_aead_xchacha20poly1305_ietf_decrypt(
               plain, nullptr, nullptr, box.data(), box.size(), place.data(), place.size(), nonce.data(), key.span().data())
        == 0;
}

} // namespace

std::vector<std::uint8_t> detail::sealWith(
    const SealNonce &nonce, const SecretBytes &key, std::span<const std::uint8_t> plain, std::string_view boundTo)
{
    expectKeySize(key, sealKeySize);
    std::vector<std::uint8_t> sealed(plain.size() + sealOverhead);
    std::copy(nonce.begin(), nonce.end(), sealed.begin());
    const auto place = bytesOf(boundTo);
    crypto_aead_xchacha20poly1305_ietf_encrypt(sealed.data() + sealNonceSize, nullptr, plain.data(), plain.size(), place.data(),
        place.size(), nullptr, nonce.data(), key.span().data());
    return sealed;
}

std::vector<std::uint8_t> seal(const SecretBytes &key, std::span<const std::uint8_t> plain, std::string_view boundTo)
{
    initialiseCrypto();
    detail::SealNonce nonce{};
    randombytes_buf(nonce.data(), nonce.size());
    return detail::sealWith(nonce, key, plain, boundTo);
}

std::optional<std::vector<std::uint8_t>> unseal(
    const SecretBytes &key, std::span<const std::uint8_t> sealed, std::string_view boundTo)
{
    expectKeySize(key, sealKeySize);
    if (sealed.size() < sealOverhead)
        return std::nullopt;
    std::vector<std::uint8_t> plain(sealed.size() - sealOverhead);
    if (!openInto(plain.data(), key, sealed, boundTo))
        return std::nullopt;
    return plain;
}

std::optional<SecretBytes> unsealSecret(const SecretBytes &key, std::span<const std::uint8_t> sealed, std::string_view boundTo)
{
    expectKeySize(key, sealKeySize);
    if (sealed.size() < sealOverhead)
        return std::nullopt;
    SecretBytes plain(sealed.size() - sealOverhead);
    if (!openInto(plain.span().data(), key, sealed, boundTo))
        return std::nullopt;
    return plain;
}

} // namespace raphe
