#include "core/record/LetterJson.h"

#include "core/base/JsonText.h"
#include "core/base/Utf8.h"
#include "core/record/IntakeJson.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace raphe {

namespace {

using LettersJson = nlohmann::ordered_json;

void expectLength(const JsonReader &at, const std::string &text, std::size_t longest)
{
    if (const std::size_t length = characterCount(text); length > longest)
        at.fail(ErrorCode::OutOfRange, std::to_string(length) + " characters, allowed: at most " + std::to_string(longest));
}

std::string readShort(const JsonReader &owner, std::string_view name)
{
    std::string text = owner.stringOr(name, {});
    if (!text.empty())
        expectLength(owner.field(name), text, Addressee::longestLine);
    return text;
}

std::string readTitle(const JsonReader &owner)
{
    std::string title = owner.string("title");
    if (title.empty())
        owner.fail(ErrorCode::MissingField, "title");
    expectLength(owner.field("title"), title, Addressee::longestLine);
    return title;
}

// What was composed is left out where nobody changed it.
void readWords(const JsonReader &at, LetterText &out)
{
    out.text = at.string("text");
    expectLength(at.field("text"), out.text, LetterText::longest);
    out.composed = at.stringOr("composed", out.text);
    if (at.has("composed"))
        expectLength(at.field("composed"), out.composed, LetterText::longest);
    if (out.text.empty() && out.composed.empty())
        at.fail(ErrorCode::MissingField, "text");
}

LetterText readLetterText(const JsonReader &owner, std::string_view name)
{
    LetterText out;
    if (!owner.has(name))
        return out;
    const JsonReader at = owner.field(name);
    at.expectObject({"text", "composed"});
    readWords(at, out);
    return out;
}

void putWords(LettersJson &json, const LetterText &words)
{
    json["text"] = words.text;
    if (words.isEdited())
        json["composed"] = words.composed;
}

void putLetterText(LettersJson &json, const char *name, const LetterText &words)
{
    if (words == LetterText{})
        return;
    json[name] = LettersJson::object();
    putWords(json[name], words);
}

LetterPart readPart(const JsonReader &at, const std::vector<LetterPart> &earlier)
{
    at.expectObject({"title", "text", "composed"});
    LetterPart out;
    out.title = readTitle(at);
    readWords(at, out.words);
    if (std::any_of(earlier.begin(), earlier.end(), [&](const LetterPart &part) { return part.title == out.title; }))
        at.fail(ErrorCode::Duplicate, out.title);
    return out;
}

Letter readLetter(const JsonReader &at)
{
    at.expectObject({"written", "to", "title", "urgency", "reason", "question", "parts", "sent"});
    Letter out;
    static_cast<void>(at.field("written"));
    out.written = readDate(at, "written");
    if (at.has("to"))
        out.to = readAddressee(at.field("to"));
    out.title = readTitle(at);
    out.urgency = readWord(urgencyWords, at.field("urgency"));
    out.reason = readLetterText(at, "reason");
    out.question = readLetterText(at, "question");
    if (at.has("parts"))
        for (const JsonReader &item : at.field("parts").items(0, Letter::mostParts))
            out.parts.push_back(readPart(item, out.parts));
    out.sent = readDate(at, "sent");
    return out;
}

LettersJson letterJson(const Letter &letter)
{
    LettersJson json{{"written", letter.written}};
    if (!letter.to.isNobody())
        json["to"] = addresseeJson(letter.to);
    json["title"] = letter.title;
    json["urgency"] = wordOf(urgencyWords, letter.urgency);
    putLetterText(json, "reason", letter.reason);
    putLetterText(json, "question", letter.question);
    for (const LetterPart &part : letter.parts) {
        LettersJson one{{"title", part.title}};
        putWords(one, part.words);
        json["parts"].push_back(std::move(one));
    }
    putText(json, "sent", letter.sent);
    return json;
}

} // namespace

Addressee readAddressee(const JsonReader &at)
{
    at.expectObject({"name", "role", "lines"});
    Addressee out{readShort(at, "name"), readShort(at, "role"), {}};
    if (at.has("lines"))
        for (const JsonReader &item : at.field("lines").items(0, Addressee::mostLines)) {
            out.lines.push_back(item.asString());
            if (out.lines.back().empty())
                item.fail(ErrorCode::MissingField, "a line");
            expectLength(item, out.lines.back(), Addressee::longestLine);
        }
    if (out.name.empty() && out.role.empty())
        at.fail(ErrorCode::MissingField, "name or role");
    return out;
}

LettersJson addresseeJson(const Addressee &addressee)
{
    LettersJson json = LettersJson::object();
    putText(json, "name", addressee.name);
    putText(json, "role", addressee.role);
    if (!addressee.lines.empty())
        json["lines"] = addressee.lines;
    return json;
}

std::vector<Letter> readLetters(const JsonReader &at)
{
    std::vector<Letter> out;
    for (const JsonReader &item : at.items(0, Letter::most))
        out.push_back(readLetter(item));
    return out;
}

LettersJson lettersJson(const std::vector<Letter> &letters)
{
    LettersJson json = LettersJson::array();
    for (const Letter &letter : letters)
        json.push_back(letterJson(letter));
    return json;
}

} // namespace raphe
