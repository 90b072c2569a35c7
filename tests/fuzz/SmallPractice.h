// A small practice file for the fuzz targets, made once a process: sealed, with everything in it that a practice can hold. Keys
// and times are new in each process, the layout of the file is not.
#pragma once

#include "core/store/Practice.h"

#include <QTemporaryDir>

#include <memory>
#include <string>

namespace raphe::fuzz {

/// The folder of this process; removed at its end.
[[nodiscard]] std::string workFolder();

struct SmallPractice {
    std::string bytes; // of the file
    std::shared_ptr<const Keyring> keys;
    std::string recovery; // the recovery key's text
};
inline constexpr const char *smallSignIn = "ada";
inline constexpr std::string_view smallPassphrase = "right words here";

[[nodiscard]] const SmallPractice &smallPractice();

/// Puts these bytes in the place of the file at this path, and removes its log.
void putFile(const std::string &path, const std::string &bytes);

/// Everything that can be read of it, in words; ends the process when a reader says other than Error. With `expectAll` nothing
/// may fail.
[[nodiscard]] std::string allOf(const Practice &practice, bool expectAll);

} // namespace raphe::fuzz
