#include "core/document/PatientTexts.h"

#include "core/anatomy/AtlasReader.h"
#include "core/safety/ContentReading.h"

#include <nlohmann/json.hpp>

#include <array>

namespace raphe {

using namespace content;

namespace {

constexpr const char *textsFile = "intake/patient-texts.json";
constexpr std::array<std::string_view, 4> fillings{"place", "page", "pages", "count"};

// Every brace belongs to a name that somebody fills in.
void expectKnownFillings(const JsonReader &at, std::string text)
{
    for (const std::string_view name : fillings)
        text = filled(std::move(text), {{std::string(name), std::string()}});
    if (text.find_first_of("{}") != std::string::npos)
        at.fail(ErrorCode::UnknownWord, text.substr(text.find_first_of("{}")));
}

} // namespace

const PatientText *PatientTexts::find(std::string_view id) const
{
    return findById(texts, id);
}

const std::string &PatientTexts::at(std::string_view id) const
{
    if (const PatientText *found = find(id))
        return found->text;
    throw Error{ErrorCode::UnknownId, textsFile, std::string(id)};
}

std::string filled(std::string text, const std::vector<std::pair<std::string, std::string>> &values)
{
    for (const auto &[name, value] : values) {
        const std::string braced = "{" + name + "}";
        for (std::size_t at = text.find(braced); at != std::string::npos; at = text.find(braced, at + value.size()))
            text.replace(at, braced.size(), value);
    }
    return text;
}

Result<PatientTexts> readPatientTexts(std::string_view text)
{
    return guarded([&] {
        const auto json = valueOrThrow(parseJson(text, textsFile));
        const JsonReader root(json, textsFile);
        root.expectObject({"format", "version", "texts"});
        expectFormat(root, "raphe-patient-texts");
        PatientTexts out;
        for (const JsonReader &at : root.field("texts").items()) {
            at.expectObject({"id", "text", "where"});
            out.texts.push_back({readNewId(at, out.texts), readText(at, "text"), readWord(textUseWords, at.field("where"))});
            expectKnownFillings(at.field("text"), out.texts.back().text);
        }
        return out;
    });
}

PatientTexts inLanguage(PatientTexts texts, const Phrases &phrases)
{
    for (PatientText &text : texts.texts)
        text.text = phrases.say("patient-texts", text.text);
    return texts;
}

Result<PatientTexts> readEmbeddedPatientTexts()
{
    const auto files = embeddedFiles("intake");
    if (!files)
        return files.error();
    const auto texts = std::find_if(
        files.value().begin(), files.value().end(), [](const NamedText &file) { return "intake/" + file.name == textsFile; });
    return readPatientTexts(texts == files.value().end() ? std::string_view() : std::string_view(texts->text));
}

} // namespace raphe
