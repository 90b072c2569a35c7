// A practice file opened for a verb.
#pragma once

#include "app/batch/Commands.h"
#include "core/store/Practice.h"

namespace raphe::batch {

/// Asks for the passphrase, or reads it from the key's descriptor. Fails as Practice::unlock.
[[nodiscard]] Result<std::unique_ptr<Practice>> unlocked(const std::string &practiceFile, const Key &key);

} // namespace raphe::batch
