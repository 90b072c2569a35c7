#include "core/safety/CautionFeeds.h"

#include "core/record/PatientSearch.h"
#include "core/safety/ContentReading.h"
#include "core/safety/Day.h"
#include "core/safety/SafetyRules.h"

#include <nlohmann/json.hpp>

namespace raphe {

using namespace content;

namespace {

constexpr const char *feedsFile = "safety/feeds.json";
constexpr int highest = 400; // of a limit
constexpr std::size_t shortestPart = 4; // letters; a shorter word is looked for as a whole one only
constexpr int lastWeek = 60; // a count that is longer is an old note; our choice

bool isText(FeedField field)
{
    return field <= FeedField::Allergies;
}

FeedLimit readLimit(const JsonReader &at, FeedField field)
{
    if (field != FeedField::BloodPressure)
        return {at.asInt(0, highest), 0};
    at.expectObject({"systolic", "diastolic"});
    return {at.field("systolic").asInt(0, highest), at.field("diastolic").asInt(0, highest)};
}

CautionFeed readFeed(const JsonReader &at, const std::vector<CautionFeed> &earlier, const std::vector<ConditionKind> &conditions)
{
    at.expectObject({"id", "field", "words", "from", "to", "suggests", "say", "source", "read"});
    CautionFeed feed;
    feed.id = readNewId(at, earlier);
    feed.field = readWord(feedFieldWords, at.field("field"));
    feed.words = readChoice(at, "words", [](const JsonReader &item) {
        std::string word = item.asString();
        if (word.empty() || foldedWords(word) != word)
            item.fail(ErrorCode::UnknownWord, word);
        return word;
    });
    if (at.has("from"))
        feed.from = readLimit(at.field("from"), feed.field);
    if (at.has("to"))
        feed.to = readLimit(at.field("to"), feed.field);
    const bool hasLimits = feed.from || feed.to;
    if (isText(feed.field) ? feed.words.empty() : !hasLimits)
        at.fail(ErrorCode::MissingField, isText(feed.field) ? "words" : "from or to");
    if (isText(feed.field) ? hasLimits : !feed.words.empty())
        at.fail(ErrorCode::Contradiction, isText(feed.field) ? "a text, from or to" : "a number, words");
    feed.suggests = readChoice(at, "suggests", [&](const JsonReader &item) { return readKnownId(item, conditions); });
    feed.say = readText(at, "say");
    feed.source = readText(at, "source");
    feed.read = readWord(readingWords, at.field("read"));
    return feed;
}

bool names(const std::string &folded, const std::string &word)
{
    if (word.size() >= shortestPart)
        return folded.find(word) != std::string::npos;
    return isIn(splitWords(folded), word);
}

std::vector<std::string> textsOf(const PatientRecord &record, FeedField field)
{
    std::vector<std::string> out;
    switch (field) {
    case FeedField::Medicines: return record.medicines;
    case FeedField::Allergies: return record.allergies;
    case FeedField::Implants:
        for (const Implant &implant : record.implants)
            out.push_back(implant.place.empty() ? implant.text : implant.text + ", " + implant.place);
        return out;
    case FeedField::Surgery:
        for (const Surgery &surgery : record.surgery)
            out.push_back(surgery.text);
        return out;
    default: return out;
    }
}

bool isWithin(const CautionFeed &feed, int value)
{
    return (!feed.from || value >= feed.from->first) && (!feed.to || value <= feed.to->first);
}

bool isWithin(const CautionFeed &feed, const BloodPressure &pressure)
{
    const auto reaches = [&](const FeedLimit &limit) {
        return pressure.systolic >= limit.first || pressure.diastolic >= limit.second;
    };
    if (!feed.from)
        return pressure.systolic <= feed.to->first || pressure.diastolic <= feed.to->second;
    return reaches(*feed.from) && (!feed.to || (pressure.systolic <= feed.to->first && pressure.diastolic <= feed.to->second));
}

bool namesAny(const CautionFeed &feed, const std::string &text)
{
    const std::string folded = foldedWords(text);
    return std::any_of(feed.words.begin(), feed.words.end(), [&](const std::string &word) { return names(folded, word); });
}

// What the record says that calls for the feed; empty: nothing.
std::string causeOf(const CautionFeed &feed, const PatientRecord &record, const std::string &today)
{
    if (isText(feed.field)) {
        for (const std::string &text : textsOf(record, feed.field))
            if (namesAny(feed, text))
                return text;
        return {};
    }
    if (feed.field == FeedField::Age) {
        const auto age = yearsBetween(record.born, today);
        return age && isWithin(feed, *age) ? std::to_string(*age) : std::string();
    }
    if (feed.field == FeedField::PregnancyWeek) {
        const auto days = record.pregnancy ? daysBetween(record.pregnancy->date, today) : std::nullopt;
        const int week = days ? record.pregnancy->week + static_cast<int>(*days / 7) : 0;
        return days && *days >= 0 && week <= lastWeek && isWithin(feed, week) ? std::to_string(week) : std::string();
    }
    const auto &pressure = record.bloodPressure;
    return pressure && isWithin(feed, *pressure) ? std::to_string(pressure->systolic) + "/" + std::to_string(pressure->diastolic)
                                                 : std::string();
}

} // namespace

Result<std::vector<CautionFeed>> readCautionFeeds(std::string_view text, const std::vector<ConditionKind> &conditions)
{
    return guarded([&] {
        const auto json = valueOrThrow(parseJson(text, feedsFile));
        const JsonReader root(json, feedsFile);
        root.expectObject({"format", "version", "feeds"});
        expectFormat(root, "raphe-caution-feeds");
        std::vector<CautionFeed> out;
        for (const JsonReader &at : root.field("feeds").items())
            out.push_back(readFeed(at, out, conditions));
        return out;
    });
}

std::vector<std::string> unwatched(const std::vector<CautionFeed> &feeds, const PatientRecord &record)
{
    std::vector<std::string> out;
    for (const FeedField field : {FeedField::Medicines, FeedField::Allergies})
        for (const std::string &text : textsOf(record, field))
            if (std::none_of(feeds.begin(), feeds.end(),
                    [&](const CautionFeed &feed) { return feed.field == field && namesAny(feed, text); }))
                out.push_back(text);
    return out;
}

std::vector<std::string> openOf(const Reminder &reminder, const PatientRecord &record, const std::vector<std::string> &confirmed)
{
    std::vector<std::string> out;
    for (const std::string &id : reminder.feed->suggests) {
        const auto rulesOut = [&](const RuledOut &r) {
            return r.id == id && (r.because == reminder.because || reminder.feed->field == FeedField::Age);
        };
        if (!isIn(confirmed, id) && std::none_of(record.ruledOut.begin(), record.ruledOut.end(), rulesOut))
            out.push_back(id);
    }
    return out;
}

std::vector<Reminder> remindersOf(const std::vector<CautionFeed> &feeds, const PatientRecord &record,
    const std::vector<std::string> &confirmed, const std::string &today)
{
    std::vector<Reminder> out;
    for (const CautionFeed &feed : feeds) {
        Reminder reminder{&feed, causeOf(feed, record, today)};
        if (!reminder.because.empty() && (feed.suggests.empty() || !openOf(reminder, record, confirmed).empty()))
            out.push_back(std::move(reminder));
    }
    return out;
}

} // namespace raphe
