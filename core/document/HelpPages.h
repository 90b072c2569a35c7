// The pages of the help, in the order of its contents: what resources/help/pages.json lists, read strictly, with the Markdown of
// each. Plain values; any thread.
#pragma once

#include "core/anatomy/AtlasReader.h"
#include "core/base/Result.h"

#include <string>
#include <string_view>
#include <vector>

namespace raphe {

struct HelpPage {
    std::string id;
    std::string title; // in the contents
    std::string text; // Markdown; another page is linked as 'id.md'
};

struct HelpPages {
    std::vector<HelpPage> pages; // not empty; the first one is where to begin

    /// nullptr when there is none.
    [[nodiscard]] const HelpPage *find(std::string_view id) const;
};

/// Where the links of a page of Markdown lead, in order, as they are written.
[[nodiscard]] std::vector<std::string> linksIn(std::string_view markdown);

/// The page that a link names, 'id.md'; nullptr when it is none of them.
[[nodiscard]] const HelpPage *linkedFrom(const HelpPages &pages, std::string_view link);

/// `list`: the text of help/pages.json; `files`: those that it names, by their whole names ('help/en/index.md'). Unknown fields,
/// duplicates, a file that is not there or that the list leaves out, one that does not begin with a heading, and a link to what
/// is no page are errors.
[[nodiscard]] Result<HelpPages> readHelpPages(std::string_view list, const std::vector<NamedText> &files);
/// Those that are built into the program.
[[nodiscard]] Result<HelpPages> readEmbeddedHelpPages();

} // namespace raphe
