#include "core/document/fhir/FhirJson.h"

#include <QString>

#include <algorithm>

namespace raphe::fhir {

std::string cleaned(const std::string &text)
{
    QString out = QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
    for (QChar &c : out) {
        const bool isAllowed = c == QLatin1Char('\t') || c == QLatin1Char('\n') || c == QLatin1Char('\r');
        if (!isAllowed && (c.isSpace() || c.category() == QChar::Other_Control))
            c = QLatin1Char(' ');
    }
    return out.trimmed().toStdString();
}

void put(Json &json, const char *name, const std::string &text)
{
    if (std::string clean = cleaned(text); !clean.empty())
        json[name] = std::move(clean);
}

std::string own(std::string_view name)
{
    return "urn:raphe:fhir:" + std::string(name);
}

std::string spelt(std::string_view id)
{
    std::string out(id);
    std::replace(out.begin(), out.end(), '-', ' ');
    return out;
}

Json coding(const std::string &system, const std::string &code, const std::string &display)
{
    Json out = Json::object();
    out["system"] = system;
    put(out, "code", QString::fromStdString(cleaned(code)).simplified().toStdString());
    put(out, "display", display);
    return out;
}

Json ownCoding(std::string_view list, std::string_view code, const std::string &display)
{
    return coding(own(list), std::string(code), display.empty() ? spelt(code) : display);
}

Json coded(Json coding, const std::string &text)
{
    Json out = Json::object();
    append(out, "coding", std::move(coding));
    put(out, "text", text);
    return out;
}

Json ownCoded(std::string_view list, std::string_view code, const std::string &display)
{
    return coded(ownCoding(list, code, display));
}

Json textOnly(const std::string &text)
{
    Json out = Json::object();
    put(out, "text", text);
    return out;
}

void append(Json &json, const char *name, Json value)
{
    if (!json.contains(name))
        json[name] = Json::array();
    json[name].push_back(std::move(value));
}

Json extension(const std::string &url, const char *valueName, Json value)
{
    Json out = Json::object();
    out["url"] = url;
    out[valueName] = std::move(value);
    return out;
}

void addNote(Json &json, const std::string &text)
{
    if (Json note = textOnly(text); !note.empty())
        append(json, "note", std::move(note));
}

Json referTo(const std::string &id)
{
    Json out = Json::object();
    out["reference"] = "urn:uuid:" + id;
    return out;
}

} // namespace raphe::fhir
