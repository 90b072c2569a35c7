#include "core/document/Notices.h"

#include "core/safety/ContentReading.h"

#include <nlohmann/json.hpp>

#include <QFile>

namespace raphe {

using content::expectFormat;
using content::readNewId;
using content::readText;

namespace {

constexpr const char *noticesFile = "notices.json";
constexpr const char *licencesFolder = "licences";

Licence readLicence(const JsonReader &at, const std::vector<Licence> &earlier, const std::vector<NamedText> &texts)
{
    at.expectObject({"id", "name", "reference", "text"});
    Licence out{readText(at, "id"), readText(at, "name"), readText(at, "reference"), {}};
    if (content::findById(earlier, out.id))
        at.field("id").fail(ErrorCode::Duplicate, out.id);
    if (at.has("text")) {
        const std::string file = readText(at, "text");
        const auto found = std::find_if(texts.begin(), texts.end(), [&](const NamedText &text) { return text.name == file; });
        if (found == texts.end() || found->text.empty())
            at.field("text").fail(ErrorCode::UnknownId, file);
        out.text = found->text;
    }
    return out;
}

Notice readNotice(const JsonReader &at, const Notices &earlier)
{
    at.expectObject({"id", "kind", "what", "who", "licence", "read", "source", "where", "files", "changed", "notice"});
    Notice out;
    out.id = readNewId(at, earlier.notices);
    out.kind = readWord(noticeKindWords, at.field("kind"));
    out.what = readText(at, "what");
    out.who = readText(at, "who");
    out.licence = content::readKnownId(at.field("licence"), earlier.licences);
    out.read = readWord(licenceReadingWords, at.field("read"));
    out.source = readText(at, "source");
    out.where = readWord(noticeWhereWords, at.field("where"));
    out.files = content::readChoice(at, "files", [](const JsonReader &file) { return file.asString(); });
    if (out.files.empty() && out.kind == NoticeKind::Data)
        at.fail(ErrorCode::MissingField, "files");
    if (!out.files.empty() && out.kind != NoticeKind::Data)
        at.fail(ErrorCode::UnknownField, "files");
    out.changed = readText(at, "changed");
    if (at.has("notice"))
        out.notice = readText(at, "notice");
    return out;
}

// What stands there for nobody is a slip.
void expectUsed(const JsonReader &root, const Notices &read, const std::vector<NamedText> &texts)
{
    for (const JsonReader &at : root.field("licences").items()) {
        const std::string id = at.string("id");
        if (std::none_of(read.notices.begin(), read.notices.end(), [&](const Notice &n) { return n.licence == id; }))
            at.field("id").fail(ErrorCode::Contradiction, id + " is the licence of nothing");
    }
    for (const NamedText &text : texts)
        if (std::none_of(
                read.licences.begin(), read.licences.end(), [&](const Licence &licence) { return licence.text == text.text; }))
            throw Error{ErrorCode::Contradiction, std::string(licencesFolder) + "/" + text.name, "the text of no licence"};
}

} // namespace

const Licence *Notices::licence(std::string_view id) const
{
    return content::findById(licences, id);
}

Result<Notices> readNotices(std::string_view json, const std::vector<NamedText> &texts)
{
    return guarded([&] {
        const auto parsed = valueOrThrow(parseJson(json, noticesFile));
        const JsonReader root(parsed, noticesFile);
        root.expectObject({"format", "version", "licences", "notices"});
        expectFormat(root, "raphe-notices");
        Notices out;
        for (const JsonReader &at : root.field("licences").items())
            out.licences.push_back(readLicence(at, out.licences, texts));
        for (const JsonReader &at : root.field("notices").items())
            out.notices.push_back(readNotice(at, out));
        expectUsed(root, out, texts);
        return out;
    });
}

Result<Notices> readEmbeddedNotices()
{
    QFile file(QStringLiteral(":/notices.json"));
    if (!file.open(QIODevice::ReadOnly))
        return Error{ErrorCode::CannotRead, noticesFile, file.errorString().toStdString()};
    const auto texts = embeddedFiles(licencesFolder);
    if (!texts)
        return texts.error();
    return readNotices(file.readAll().toStdString(), texts.value());
}

} // namespace raphe
