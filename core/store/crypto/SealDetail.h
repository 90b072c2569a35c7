// Sealing with a given nonce, for tests against published vectors only: a nonce that is used twice with one key gives
// away both contents.
#pragma once

#include "core/store/crypto/Seal.h"

#include <array>

namespace raphe::detail {

using SealNonce = std::array<std::uint8_t, sealNonceSize>;

[[nodiscard]] std::vector<std::uint8_t> sealWith(
    const SealNonce &nonce, const SecretBytes &key, std::span<const std::uint8_t> plain, std::string_view boundTo);

} // namespace raphe::detail
