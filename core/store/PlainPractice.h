// The first versions kept the practice in a plain SQLite file (schema version 1). This reads it once, to seal it.
#pragma once

#include "core/store/Practice.h"

namespace raphe {

/// Whether this is such a file. Fails when it is no practice at all.
[[nodiscard]] Result<bool> isPlainPractice(const std::string &file);

/// Makes a sealed practice of the plain one, checks that it holds the same, and puts it in its place. Until then nothing is
/// changed. The plain file is removed; that its bytes can be found on the disk no more cannot be promised. Fails as
/// Practice::make, and with Tampered when the two differ.
[[nodiscard]] Result<MadePractice> sealPlainPractice(
    const std::string &file, const PracticeSettings &settings, const NewAccount &first);

} // namespace raphe
