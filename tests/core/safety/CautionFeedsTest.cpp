// What the record lets suspect: each feed is called for by what it names and by nothing else, and mistakes in the content are
// named.
#include "tests/core/safety/Rules.h"

#include "core/safety/CautionFeeds.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace raphe::test {

namespace {

constexpr const char *today = "2026-11-27";

PatientRecord saying(FeedField field, const std::string &text)
{
    PatientRecord record;
    record.name = "Ida Fenwright";
    switch (field) {
    case FeedField::Medicines: record.medicines = {text}; break;
    case FeedField::Allergies: record.allergies = {text}; break;
    case FeedField::Implants: record.implants = {{text, ""}}; break;
    case FeedField::Surgery: record.surgery = {{text, {}}}; break;
    default: break;
    }
    return record;
}

std::vector<std::string> idsOf(const PatientRecord &record, const std::vector<std::string> &confirmed = {})
{
    std::vector<std::string> out;
    for (const Reminder &reminder : remindersOf(safetyRules().feeds(), record, confirmed, today))
        out.push_back(reminder.feed->id);
    return out;
}

bool reminds(const PatientRecord &record, const std::string &id, const std::vector<std::string> &confirmed = {})
{
    const auto ids = idsOf(record, confirmed);
    return std::find(ids.begin(), ids.end(), id) != ids.end();
}

} // namespace

TEST(CautionFeeds, EachWordCallsForItsFeedInItsOwnFieldOnly)
{
    std::size_t words = 0;
    for (const CautionFeed &feed : safetyRules().feeds())
        for (const std::string &word : feed.words) {
            EXPECT_TRUE(reminds(saying(feed.field, "Takes " + word + " since May"), feed.id)) << feed.id << " " << word;
            EXPECT_FALSE(reminds(saying(feed.field, "nothing of the kind"), feed.id)) << feed.id;
            EXPECT_FALSE(reminds(saying(feed.field, word), feed.id, feed.suggests)) << feed.id << ", confirmed already";
            const FeedField other = feed.field == FeedField::Medicines ? FeedField::Surgery : FeedField::Medicines;
            EXPECT_FALSE(reminds(saying(other, word), feed.id)) << feed.id << " from another field";
            ++words;
        }
    EXPECT_GT(words, 300U);
}

TEST(CautionFeeds, NumbersCountWithinTheirLimits)
{
    for (const CautionFeed &feed : safetyRules().feeds()) {
        SCOPED_TRACE(feed.id);
        const auto with = [&](int first, int second) {
            PatientRecord record;
            record.name = "Ida Fenwright";
            if (feed.field == FeedField::Age)
                record.born = std::to_string(2026 - first) + "-01-01";
            if (feed.field == FeedField::PregnancyWeek)
                record.pregnancy = Pregnancy{first, today};
            if (feed.field == FeedField::BloodPressure)
                record.bloodPressure = BloodPressure{first, second, today};
            return reminds(record, feed.id);
        };
        if (!feed.words.empty())
            continue;
        const bool isPressure = feed.field == FeedField::BloodPressure;
        if (feed.from) {
            EXPECT_TRUE(with(feed.from->first, feed.from->second - (isPressure ? 1 : 0)));
            EXPECT_FALSE(with(feed.from->first - 1, feed.from->second - (isPressure ? 1 : 0)));
            if (isPressure) {
                EXPECT_TRUE(with(feed.from->first - 1, feed.from->second)) << "the lower number alone";
            }
        }
        if (feed.to) {
            EXPECT_TRUE(with(feed.to->first, feed.to->second));
            EXPECT_FALSE(with(feed.to->first + 1, feed.to->second + (isPressure ? 1 : 0)));
        }
    }
}

TEST(CautionFeeds, APregnancyGoesOnFromItsDay)
{
    PatientRecord record;
    record.pregnancy = Pregnancy{20, "2026-10-02"}; // eight weeks ago
    EXPECT_FALSE(idsOf(record).empty());
    const auto reminder = remindersOf(safetyRules().feeds(), record, {}, today).front();
    EXPECT_EQ(reminder.because, "28");
    record.pregnancy = Pregnancy{20, "2025-10-02"};
    EXPECT_TRUE(idsOf(record).empty()) << "long over";
    record.pregnancy = Pregnancy{20, "2026-12-02"};
    EXPECT_TRUE(idsOf(record).empty()) << "told for a day to come";
}

TEST(CautionFeeds, AShortWordIsAWholeOne)
{
    const std::vector<ConditionKind> conditions = safetyRules().conditions();
    const auto feeds = readCautionFeeds(
        R"({"format":"raphe-caution-feeds","version":1,"feeds":[{"id":"a","field":"allergies","words":["nut","aspir"],)"
        R"("suggests":["oil-allergy"],"say":"s","source":"x","read":"memory"}]})",
        conditions);
    ASSERT_TRUE(feeds.ok()) << inWords(feeds.error());
    const auto found = [&](const char *text) {
        return !remindersOf(feeds.value(), saying(FeedField::Allergies, text), {}, today).empty();
    };
    EXPECT_TRUE(found("Nut, mild"));
    EXPECT_FALSE(found("for a minute"));
    EXPECT_TRUE(found("ASPIRIN"));
}

TEST(CautionFeeds, MistakesAreNamedByTheirPlace)
{
    const auto refused = [](const char *pointer, const nlohmann::json &value) {
        auto content = shipped("safety/feeds.json");
        content[nlohmann::json::json_pointer(pointer)] = value;
        const auto read = readCautionFeeds(content.dump(), safetyRules().conditions());
        return read ? std::string() : read.error().place + " " + read.error().detail;
    };
    const std::string file = "safety/feeds.json#";
    EXPECT_EQ(refused("/feeds/0/field", "shoes"), file + "/feeds/0/field shoes");
    EXPECT_EQ(refused("/feeds/0/words", {"Warfarin"}), file + "/feeds/0/words/0 Warfarin") << "would never be found";
    EXPECT_EQ(refused("/feeds/0/words", nlohmann::json::array()), file + "/feeds/0 words");
    EXPECT_EQ(refused("/feeds/0/from", 3), file + "/feeds/0 a text, from or to");
    EXPECT_EQ(refused("/feeds/0/suggests", {"a-cold"}), file + "/feeds/0/suggests/0 a-cold");
    EXPECT_EQ(refused("/feeds/1/id", shipped("safety/feeds.json")["feeds"][0]["id"]), file + "/feeds/1/id anticoagulants");
    EXPECT_EQ(refused("/feeds/0/say", ""), file + "/feeds/0 say");
    EXPECT_EQ(refused("/feeds/0/colour", "red"), file + "/feeds/0 colour");
}

} // namespace raphe::test
