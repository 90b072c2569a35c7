// Reads and checks the atlas files. Strict: unknown fields, words or ids, duplicates, muscles without both ends,
// rings or gaps among tree joints and grades above their source are errors with file and JSON pointer.
#pragma once

#include "core/anatomy/Atlas.h"
#include "core/base/Result.h"

#include <string>
#include <vector>

namespace raphe {

struct NamedText {
    std::string name; // file name, used in messages
    std::string text; // UTF-8
};

[[nodiscard]] Result<Atlas> readAtlas(const std::vector<NamedText> &files);

/// The atlas that is built into the program (resources/atlas).
[[nodiscard]] Result<Atlas> readEmbeddedAtlas();

/// All files of a folder of the built-in resources, by name; errors name the file.
[[nodiscard]] Result<std::vector<NamedText>> embeddedFiles(const std::string &folder);

} // namespace raphe
