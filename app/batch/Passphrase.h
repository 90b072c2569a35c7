// A passphrase from a file descriptor or from the terminal; never from arguments or the environment, where others can see it.
#pragma once

#include "core/base/Result.h"

#include <optional>
#include <string>

namespace raphe::batch {

/// The first line. From the descriptor when one is given, otherwise asked for at the terminal without showing what is typed.
/// In Unicode's composed form (NFC), since keyboards differ. Lives in ordinary memory until the program ends, which is soon.
[[nodiscard]] Result<std::string> passphrase(std::optional<int> descriptor);

} // namespace raphe::batch
