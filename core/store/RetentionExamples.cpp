#include "core/store/RetentionExamples.h"

#include "core/base/JsonReader.h"

#include <nlohmann/json.hpp>

#include <QFile>

#include <set>

namespace raphe {

namespace {

constexpr const char *format = "raphe-retention-examples";
constexpr int version = 1;

std::string readText(const JsonReader &owner, std::string_view name)
{
    std::string text = owner.string(name);
    if (text.empty())
        owner.fail(ErrorCode::MissingField, std::string(name));
    return text;
}

int yearsOr(const JsonReader &owner, std::string_view name, int fallback)
{
    return owner.has(name) ? owner.field(name).asInt(1, RetentionRule::longest) : fallback;
}

RetentionExample readExample(const JsonReader &at)
{
    at.expectObject({"label", "years", "child_until", "child_of_17_until", "source", "read"});
    RetentionExample example;
    example.label = readText(at, "label");
    example.rule.years = at.field("years").asInt(1, RetentionRule::longest);
    example.rule.childUntil = yearsOr(at, "child_until", 0);
    example.rule.childOf17Until = yearsOr(at, "child_of_17_until", example.rule.childUntil);
    example.source = readText(at, "source");
    example.read = readWord(readingWords, at.field("read"));
    return example;
}

} // namespace

Result<std::vector<RetentionExample>> readRetentionExamples(std::string_view text, const std::string &file)
{
    const auto parsed = parseJson(text, file);
    if (!parsed)
        return parsed.error();
    return guarded([&] {
        const JsonReader root(parsed.value(), file);
        root.expectObject({"format", "version", "examples"});
        if (root.string("format") != format)
            root.field("format").fail(ErrorCode::WrongFormat, root.string("format"));
        static_cast<void>(root.field("version").asInt(version, version));
        std::vector<RetentionExample> out;
        std::set<std::string> labels;
        for (const JsonReader &at : root.field("examples").items()) {
            out.push_back(readExample(at));
            if (!labels.insert(out.back().label).second)
                at.field("label").fail(ErrorCode::Duplicate, out.back().label);
        }
        return out;
    });
}

Result<std::vector<RetentionExample>> readEmbeddedRetentionExamples()
{
    QFile file(QStringLiteral(":/retention.json"));
    if (!file.open(QIODevice::ReadOnly))
        return Error{ErrorCode::CannotRead, "retention.json", file.errorString().toStdString()};
    return readRetentionExamples(file.readAll().toStdString(), "retention.json");
}

} // namespace raphe
