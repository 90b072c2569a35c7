// Whose work the program uses, under which licence, and what was changed: content of resources/notices.json and
// resources/licences, read strictly. It stands in the window's About and in the package. Plain values; any thread.
#pragma once

#include "core/anatomy/AtlasReader.h"
#include "core/base/Words.h"

#include <string>
#include <string_view>
#include <vector>

namespace raphe {

enum class NoticeKind { Data, Library, Typeface };
inline constexpr WordTable<NoticeKind, 3> noticeKindWords{
    {{NoticeKind::Data, "data"}, {NoticeKind::Library, "library"}, {NoticeKind::Typeface, "typeface"}}};

/// How we know the licence: read where its owner states it, read where others quote it, or from memory.
enum class LicenceReading { Page, Quoted, Memory };
inline constexpr WordTable<LicenceReading, 3> licenceReadingWords{
    {{LicenceReading::Page, "page"}, {LicenceReading::Quoted, "quoted"}, {LicenceReading::Memory, "memory"}}};

/// In the program, or in the tests of its source only.
enum class NoticeWhere { Program, Tests };
inline constexpr WordTable<NoticeWhere, 2> noticeWhereWords{{{NoticeWhere::Program, "program"}, {NoticeWhere::Tests, "tests"}}};

struct Licence {
    std::string id; // as SPDX calls it, where SPDX has it
    std::string name;
    std::string reference; // where its words are to be found
    std::string text; // its words without the owners' names; empty: the licence is content with the reference
};

struct Notice {
    std::string id;
    NoticeKind kind{};
    std::string what; // what it is, and what of it is used
    std::string who; // whom the licence asks to name
    std::string licence; // id
    LicenceReading read{};
    std::string source; // citation or address
    NoticeWhere where{};
    std::vector<std::string> files; // of the source tree; data only
    std::string changed;
    std::string notice; // the words that the licence asks for; empty: none
};

struct Notices {
    std::vector<Licence> licences;
    std::vector<Notice> notices; // in the order in which they are shown

    /// nullptr when there is none.
    [[nodiscard]] const Licence *licence(std::string_view id) const;
};

/// `texts`: the files of resources/licences. Unknown fields, words and licences, duplicates, empty texts, licences and texts that
/// nothing uses, data without files and other things with files are errors with file and JSON pointer.
[[nodiscard]] Result<Notices> readNotices(std::string_view json, const std::vector<NamedText> &texts);
/// Those that are built into the program.
[[nodiscard]] Result<Notices> readEmbeddedNotices();

} // namespace raphe
