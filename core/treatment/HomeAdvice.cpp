#include "core/treatment/HomeAdvice.h"

#include "core/safety/ContentReading.h"

#include <QFile>
#include <nlohmann/json.hpp>

#include <algorithm>

namespace raphe {

using namespace content;

namespace {

constexpr const char *adviceFile = "home-advice.json";
constexpr int longestDays = 60;

std::vector<std::string> readTexts(const JsonReader &owner, std::string_view name)
{
    return readChoice(owner, name, [](const JsonReader &item) {
        std::string text = item.asString();
        if (text.empty())
            item.fail(ErrorCode::MissingField, "a text");
        return text;
    });
}

class Reader {
public:
    explicit Reader(const SafetyRules &rules) : m_rules(rules) { }

    HomeAdvice read(const JsonReader &root)
    {
        root.expectObject(
            {"format", "version", "read", "always", "regions", "by_sheet", "ask_first", "advice", "expect", "call"});
        expectFormat(root, "raphe-home-advice");
        m_out.always = readTexts(root, "always");
        m_out.regions = readTexts(root, "regions");
        for (const JsonReader &at : root.field("by_sheet").items())
            m_out.bySheet.push_back(readSheet(at));
        m_out.askFirst = readConditions(root, "ask_first");
        for (const JsonReader &at : root.field("advice").items())
            m_out.items.push_back(readItem(at));
        for (const JsonReader &at : root.field("expect").items())
            m_out.expectations.push_back(readExpectation(at));
        for (const HandsAction &action : m_rules.actions())
            if (action.kind == ActionKind::Technique && !m_out.after(action.id))
                root.field("expect").fail(ErrorCode::MissingField, action.id);
        for (const JsonReader &at : root.field("call").items())
            m_out.calls.push_back(readCall(at));
        return std::move(m_out);
    }

private:
    std::vector<std::string> readConditions(const JsonReader &owner, std::string_view name) const
    {
        std::vector<std::string> out;
        for (const JsonReader &item : owner.field(name).items())
            out.push_back(readKnownId(item, m_rules.conditions()));
        return out;
    }

    std::vector<std::string> readRegions(const JsonReader &owner, std::string_view name) const
    {
        return readChoice(owner, name, [this](const JsonReader &region) {
            std::string word = region.asString();
            if (!isIn(m_out.regions, word))
                region.fail(ErrorCode::UnknownWord, word);
            return word;
        });
    }

    SheetRegions readSheet(const JsonReader &at) const
    {
        at.expectObject({"sheet", "regions"});
        SheetRegions out{at.string("sheet"), readRegions(at, "regions")};
        for (const SheetRegions &other : m_out.bySheet)
            if (other.sheet == out.sheet)
                at.field("sheet").fail(ErrorCode::Duplicate, out.sheet);
        return out;
    }

    HomeAdviceItem readItem(const JsonReader &at) const
    {
        at.expectObject({"id", "title", "text", "stop", "for", "not_with", "source", "read"});
        HomeAdviceItem out;
        out.id = readNewId(at, m_out.items);
        out.title = readText(at, "title");
        out.text = readText(at, "text");
        out.stop = readText(at, "stop");
        out.regions = readRegions(at, "for");
        out.askFirst = readConditions(at, "not_with");
        out.source = readText(at, "source");
        out.read = readWord(readingWords, at.field("read"));
        return out;
    }

    Expectation readExpectation(const JsonReader &at) const
    {
        at.expectObject({"action", "text", "days", "source", "read"});
        Expectation out;
        out.action = readKnownId(at.field("action"), m_rules.actions());
        if (m_rules.findAction(out.action)->kind != ActionKind::Technique)
            at.field("action").fail(ErrorCode::UnknownId, out.action);
        if (m_out.after(out.action))
            at.field("action").fail(ErrorCode::Duplicate, out.action);
        out.text = readText(at, "text");
        if (const JsonReader days = at.field("days"); !days.isNull())
            out.days = days.asInt(1, longestDays);
        out.source = readText(at, "source");
        out.read = readWord(readingWords, at.field("read"));
        return out;
    }

    CallLine readCall(const JsonReader &at) const
    {
        at.expectObject({"id", "how", "text"});
        CallLine out{readNewId(at, m_out.calls), readWord(callWhomWords, at.field("how")), readText(at, "text")};
        if (!m_out.calls.empty() && out.whom < m_out.calls.back().whom)
            at.field("how").fail(ErrorCode::Contradiction, "gravest first");
        return out;
    }

    const SafetyRules &m_rules;
    HomeAdvice m_out;
};

} // namespace

const HomeAdviceItem *HomeAdvice::find(std::string_view id) const
{
    return findById(items, id);
}

const Expectation *HomeAdvice::after(std::string_view action) const
{
    const auto it =
        std::find_if(expectations.begin(), expectations.end(), [&](const Expectation &e) { return e.action == action; });
    return it == expectations.end() ? nullptr : &*it;
}

Result<HomeAdvice> readHomeAdvice(std::string_view text, const std::string &file, const SafetyRules &rules)
{
    return guarded([&] {
        const auto json = valueOrThrow(parseJson(text, file));
        return Reader(rules).read(JsonReader(json, file));
    });
}

Result<HomeAdvice> readEmbeddedHomeAdvice(const SafetyRules &rules)
{
    QFile file(QStringLiteral(":/home-advice.json"));
    if (!file.open(QIODevice::ReadOnly))
        return Error{ErrorCode::CannotRead, adviceFile, file.errorString().toStdString()};
    return readHomeAdvice(file.readAll().toStdString(), adviceFile, rules);
}

std::vector<const HomeAdviceItem *> offeredFor(const HomeAdvice &advice, const std::vector<std::string> &sheets)
{
    std::vector<std::string> wanted;
    for (const std::string &sheet : sheets)
        for (const SheetRegions &known : advice.bySheet)
            if (known.sheet == sheet)
                wanted.insert(wanted.end(), known.regions.begin(), known.regions.end());
    wanted.emplace_back("anywhere");
    const auto rank = [&](const HomeAdviceItem *item) {
        const auto it =
            std::find_if(wanted.begin(), wanted.end(), [&](const std::string &region) { return isIn(item->regions, region); });
        return it - wanted.begin();
    };
    std::vector<const HomeAdviceItem *> out;
    for (const HomeAdviceItem &item : advice.items)
        out.push_back(&item);
    std::stable_sort(out.begin(), out.end(), [&](const auto *a, const auto *b) { return rank(a) < rank(b); });
    return out;
}

std::vector<std::string> expectedAfter(const HomeAdvice &advice, const TreatmentLog &treatment, const Techniques &techniques)
{
    std::vector<std::string> out;
    for (const TreatmentStep &step : treatment.steps) {
        const Technique *technique = techniques.find(step.technique);
        const Expectation *after = technique ? advice.after(technique->action) : nullptr;
        const bool wasDone = step.hasBegun() && step.done != StepDone::Skipped;
        if (after && wasDone && !isIn(out, after->text))
            out.push_back(after->text);
    }
    return out;
}

bool isAskedFirst(const HomeAdvice &advice, const HomeAdviceItem &item, const std::vector<std::string> &conditions)
{
    return std::any_of(conditions.begin(), conditions.end(),
        [&](const std::string &id) { return isIn(advice.askFirst, id) || isIn(item.askFirst, id); });
}

} // namespace raphe
