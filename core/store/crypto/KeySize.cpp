#include "core/store/crypto/KeySize.h"

#include "core/base/Result.h"

#include <string>

namespace raphe {

void expectKeySize(const SecretBytes &key, std::size_t size)
{
    if (key.size() != size)
        throw Error{
            ErrorCode::OutOfRange, "key", std::to_string(key.size()) + " bytes, allowed: " + std::to_string(size) + " bytes"};
}

} // namespace raphe
