// Our continuities against two systematic reviews: nothing is called verified beyond what they verified, and the eight
// pairs that they verified are there.
#include "tests/support/Content.h"
#include "tests/support/Published.h"

#include <gtest/gtest.h>

#include <iostream>
#include <map>
#include <set>

namespace raphe::test {

namespace {

using Names = std::set<std::string>;

const nlohmann::json &reviews()
{
    static const nlohmann::json json = publishedJson("continuity-reviews.json");
    return json;
}

const nlohmann::json &review(const std::string &source)
{
    for (const auto &entry : reviews().at("reviews"))
        if (entry.at("source") == source)
            return entry;
    throw std::runtime_error("continuity-reviews.json has no " + source);
}

std::string sourceOf(const std::string &id)
{
    return "source: " + atlas().findSource(id)->citation + " (continuity-reviews.json)";
}

/// "posterior-oblique-2" belongs to the group "posterior-oblique".
std::string groupOf(const std::string &transition)
{
    return transition.substr(0, transition.rfind('-'));
}

std::string inWords(const Continuity &c)
{
    return c.from.value + " to " + c.to.value + (c.changesSide ? " of the other side" : "");
}

TEST(ContinuityReviews, EveryVerifiedLinkBelongsToAnExaminedTransitionAndItsReview)
{
    Names groups;
    for (const auto &value : review("wilke-2016").at("values"))
        groups.insert(value.at("group"));
    for (const Continuity &c : atlas().continuities()) {
        if (c.evidence != Grade::Verified)
            continue;
        EXPECT_TRUE(groups.contains(groupOf(c.transition)))
            << inWords(c) << " stands for '" << c.transition << "'; " << sourceOf("wilke-2016");
        EXPECT_NE(std::find(c.sources.begin(), c.sources.end(), "wilke-2016"), c.sources.end()) << inWords(c);
    }
}

TEST(ContinuityReviews, NoGroupHasMoreVerifiedTransitionsThanTheReviewFound)
{
    std::map<std::string, Names> ours;
    for (const Continuity &c : atlas().continuities())
        if (c.evidence == Grade::Verified)
            ours[groupOf(c.transition)].insert(c.transition);
    for (const auto &value : review("wilke-2016").at("values")) {
        const std::string group = value.at("group");
        const auto verified = value.at("transitions_verified").get<std::size_t>();
        EXPECT_LE(ours[group].size(), verified) << group << "; " << sourceOf("wilke-2016");
        std::cout << "verified transitions, " << group << ": ours " << ours[group].size() << ", review " << verified << '\n';
    }
}

TEST(ContinuityReviews, ForceIsCalledPassedNoMoreOftenThanTheReviewFound)
{
    std::map<std::string, Names> ours;
    for (const Continuity &c : atlas().continuities())
        if (!c.transition.empty() && c.force == Force::Yes)
            ours[groupOf(c.transition)].insert(c.transition);
    for (const auto &value : review("krause-2016").at("values")) {
        const std::string group = value.at("group");
        const auto &verified = value.at("transitions_verified");
        EXPECT_LE(ours[group].size(), verified.is_null() ? 0U : verified.get<std::size_t>())
            << group << "; " << sourceOf("krause-2016");
    }
}

// Each structure of one end is tied by a verified link to some structure of the next, and the reverse.
bool isTied(const std::string &structure, const Names &others, const std::string &transition, bool changesSide)
{
    for (const Continuity &c : atlas().continuities()) {
        if (c.evidence != Grade::Verified || c.transition != transition || c.changesSide != changesSide)
            continue;
        if ((c.from.value == structure && others.contains(c.to.value))
            || (c.to.value == structure && others.contains(c.from.value)))
            return true;
    }
    return false;
}

TEST(ContinuityReviews, TheEightVerifiedPairsExistAsVerified)
{
    const auto &pairs = reviews().at("pairs");
    const std::string how = "; pairs from " + pairs.at("read").get<std::string>() + ", confidence "
        + pairs.at("confidence").get<std::string>() + "; " + sourceOf("wilke-2016");
    EXPECT_EQ(pairs.at("values").size(), 8U);
    for (const auto &pair : pairs.at("values")) {
        const std::string transition = pair.at("transition");
        const bool changesSide = pair.at("changes_side");
        const auto chain = pair.at("joins").get<std::vector<Names>>();
        for (std::size_t i = 0; i + 1 < chain.size(); ++i) {
            for (const std::string &structure : chain[i]) {
                EXPECT_TRUE(isTied(structure, chain[i + 1], transition, changesSide)) << transition << ": " << structure << how;
            }
            for (const std::string &structure : chain[i + 1]) {
                EXPECT_TRUE(isTied(structure, chain[i], transition, changesSide)) << transition << ": " << structure << how;
            }
        }
    }
}

TEST(ContinuityReviews, NoOtherPairIsVerified)
{
    std::map<std::string, Names> members;
    for (const auto &pair : reviews().at("pairs").at("values"))
        for (const auto &end : pair.at("joins").get<std::vector<Names>>())
            members[pair.at("transition")].insert(end.begin(), end.end());
    for (const Continuity &c : atlas().continuities())
        if (c.evidence == Grade::Verified) {
            EXPECT_TRUE(members[c.transition].contains(c.from.value) && members[c.transition].contains(c.to.value))
                << inWords(c) << " is no part of " << c.transition << "; " << sourceOf("wilke-2016");
        }
}

TEST(ContinuityReviews, TheFrontOfTheBodyFromToeToNeckIsNeverMoreThanConvention)
{
    // Anterior longitudinal: the review found no evidence. Any link between two of these stations, in order from the toes
    // to the neck, is one of its transitions; links within a station are not.
    const std::vector<Names> stations{{"extensor-digitorum-longus", "extensor-hallucis-longus", "tibialis-anterior",
                                          "extensor-digitorum-brevis", "fibularis-tertius"},
        {"patellar-ligament", "quadriceps-tendon"}, {"rectus-femoris"}, {"rectus-abdominis"},
        {"pectoral-fascia", "sternal-membrane", "radiate-sternocostal-ligament"}, {"sternocleidomastoid"}};
    const auto stationOf = [&](const StructureId &id) {
        return std::find_if(stations.begin(), stations.end(), [&](const Names &s) { return s.contains(id.value); });
    };
    int found = 0;
    for (const Continuity &c : atlas().continuities())
        if (const auto from = stationOf(c.from), to = stationOf(c.to);
            (from != stations.end() && to != stations.end() && from != to) || groupOf(c.transition) == "anterior-longitudinal") {
            ++found;
            EXPECT_EQ(c.evidence, Grade::Convention) << inWords(c) << "; " << sourceOf("wilke-2016");
        }
    EXPECT_GT(found, 2) << "the links are in the atlas, as convention";
}

} // namespace

} // namespace raphe::test
