#include "core/document/HelpPages.h"

#include "core/safety/ContentReading.h"

#include <nlohmann/json.hpp>

#include <set>

namespace raphe {

using namespace content;

namespace {

constexpr const char *pagesFile = "help/pages.json";
constexpr std::string_view pageEnding = ".md";

const NamedText *fileOf(const std::vector<NamedText> &files, std::string_view name)
{
    const auto it = std::find_if(files.begin(), files.end(), [&](const NamedText &file) { return file.name == name; });
    return it == files.end() ? nullptr : &*it;
}

HelpPage readPage(const JsonReader &at, const std::vector<HelpPage> &earlier, const std::vector<NamedText> &files)
{
    at.expectObject({"id", "title", "file"});
    HelpPage page{readNewId(at, earlier), readText(at, "title"), {}};
    const NamedText *file = fileOf(files, readText(at, "file"));
    if (!file)
        at.field("file").fail(ErrorCode::UnknownId, at.string("file"));
    if (!file->text.starts_with("# "))
        throw Error{ErrorCode::WrongFormat, file->name, "no heading in the first line"};
    page.text = file->text;
    return page;
}

// Each file of the help's own folder stands in the list, once.
void expectNoOther(const JsonReader &list, const std::vector<NamedText> &files)
{
    std::set<std::string> listed;
    for (const JsonReader &at : list.items())
        if (!listed.insert(at.string("file")).second)
            at.field("file").fail(ErrorCode::Duplicate, at.string("file"));
    for (const NamedText &file : files)
        if (!listed.contains(file.name))
            list.fail(ErrorCode::MissingField, file.name);
}

void expectWholeLinks(const HelpPages &pages)
{
    for (const HelpPage &page : pages.pages)
        for (const std::string &link : linksIn(page.text))
            if (!linkedFrom(pages, link))
                throw Error{ErrorCode::UnknownId, "help page " + page.id, link};
}

} // namespace

const HelpPage *HelpPages::find(std::string_view id) const
{
    return findById(pages, id);
}

std::vector<std::string> linksIn(std::string_view markdown)
{
    std::vector<std::string> out;
    for (std::size_t at = markdown.find("]("); at != std::string_view::npos; at = markdown.find("](", at)) {
        at += 2;
        if (const std::size_t end = markdown.find(')', at); end != std::string_view::npos)
            out.emplace_back(markdown.substr(at, end - at));
    }
    return out;
}

const HelpPage *linkedFrom(const HelpPages &pages, std::string_view link)
{
    return link.ends_with(pageEnding) ? pages.find(link.substr(0, link.size() - pageEnding.size())) : nullptr;
}

Result<HelpPages> readHelpPages(std::string_view list, const std::vector<NamedText> &files)
{
    return guarded([&] {
        const auto json = valueOrThrow(parseJson(list, pagesFile));
        const JsonReader root(json, pagesFile);
        root.expectObject({"format", "version", "pages"});
        expectFormat(root, "raphe-help");
        HelpPages out;
        for (const JsonReader &at : root.field("pages").items())
            out.pages.push_back(readPage(at, out.pages, files));
        if (out.pages.empty())
            root.fail(ErrorCode::MissingField, "pages");
        expectNoOther(root.field("pages"), files);
        expectWholeLinks(out);
        return out;
    });
}

Result<HelpPages> readEmbeddedHelpPages()
{
    const auto lists = embeddedFiles("help");
    if (!lists)
        return lists.error();
    const NamedText *list = fileOf(lists.value(), "pages.json");
    std::vector<NamedText> files;
    // The page on the typed line stands beside the words of that line.
    for (const std::string folder : {"help/en", "language"}) {
        auto read = embeddedFiles(folder);
        if (!read)
            return read.error();
        for (NamedText &file : read.value())
            if (file.name.ends_with(pageEnding))
                files.push_back({folder + "/" + file.name, std::move(file.text)});
    }
    return readHelpPages(list ? std::string_view(list->text) : std::string_view(), files);
}

} // namespace raphe
