// A key of the wrong size, as a damaged file may hold one, must never reach libsodium, which would read past its end.
#pragma once

#include "core/store/crypto/SecretBytes.h"

namespace raphe {

/// Throws Error with OutOfRange unless the key has that many bytes.
void expectKeySize(const SecretBytes &key, std::size_t size);

} // namespace raphe
