// What the findings point to and what to check next, on the built-in atlas: sides, clear places, limits and ranks.
#include "tests/core/reasoning/Visits.h"

#include "core/plan/Treat.h"
#include "core/reasoning/Reason.h"

#include <gtest/gtest.h>

#include <cmath>
#include <set>
#include <sstream>

namespace raphe::test {

namespace {

std::string swapSides(std::string text)
{
    const std::string left = "left ";
    const std::string right = "right ";
    for (std::size_t at = 0; at < text.size(); ++at)
        if (text.compare(at, left.size(), left) == 0) {
            text.replace(at, left.size(), right);
            at += right.size() - 1;
        } else if (text.compare(at, right.size(), right) == 0) {
            text.replace(at, right.size(), left);
            at += left.size() - 1;
        }
    return text;
}

std::string pathOf(const Suggestion &s, bool mirror)
{
    std::ostringstream out;
    for (const PathStep &step : s.path)
        out << (mirror ? mirrored(step.from) : step.from) << '>' << (mirror ? mirrored(step.to) : step.to) << ' ';
    return out.str();
}

/// All that an entry says, as one comparable line. Of a visit that is its own mirror image a midline place may be
/// reached from either side equally well; there the path is left out.
std::multiset<std::string> answer(const std::vector<Suggestion> &list, bool mirror, bool withPath)
{
    std::multiset<std::string> out;
    // A group of equals that the limit of twenty cuts through may show either of its members.
    const int open = list.size() == suggestionsAtMost ? list.back().rank : 0;
    for (const Suggestion &s : list) {
        std::ostringstream line;
        line << s.rank << ' ' << std::hexfloat << s.score;
        for (const Term &term : s.terms)
            line << ' ' << term.name << '=' << term.value;
        if (s.rank != open)
            line << ' ' << (mirror ? mirrored(s.place) : s.place);
        if (withPath && s.rank != open)
            line << ' ' << pathOf(s, mirror) << (mirror ? swapSides(s.why) : s.why);
        out.insert(line.str());
    }
    return out;
}

bool isItsOwnMirrorImage(const Visit &visit)
{
    const auto images = mirrored(visit).findings;
    return std::is_permutation(visit.findings.begin(), visit.findings.end(), images.begin(), images.end());
}

TEST(Reason, OfTheMirrorImageIsExactlyTheMirrorImage)
{
    RandomVisits random(20240501);
    int symmetric = 0;
    for (int i = 0; i < casesWanted(); ++i) {
        const Visit visit = random.next();
        const Visit image = mirrored(visit);
        const bool own = isItsOwnMirrorImage(visit);
        symmetric += own;
        const Reasons here = reasoner().reasons(visit);
        const Reasons there = reasoner().reasons(image);
        ASSERT_EQ(answer(here.explain, true, !own), answer(there.explain, false, !own)) << "visit " << i;
        ASSERT_EQ(answer(here.check, true, !own), answer(there.check, false, !own)) << "visit " << i;
        ASSERT_EQ(answer(treatFirst(reasoner(), visit).treat, true, !own),
            answer(treatFirst(reasoner(), image).treat, false, !own))
            << "visit " << i;
    }
    EXPECT_GT(symmetric, casesWanted() / 20) << "visits that are their own mirror image are the hardest and must be among them";
    EXPECT_LT(symmetric, casesWanted() / 2);
}

TEST(Reason, TheOrderOfTheFindingsDoesNotMatter)
{
    RandomVisits random(99);
    for (int i = 0; i < 20; ++i) {
        const Visit visit = random.next();
        Visit reversed = visit;
        std::reverse(reversed.findings.begin(), reversed.findings.end());
        EXPECT_EQ(answer(reasoner().reasons(visit).check, false, true),
            answer(reasoner().reasons(reversed).check, false, true));
    }
}

TEST(Reason, AddingAClearNeverRaisesThatPlace)
{
    RandomVisits random(31);
    for (int i = 0; i < 60; ++i) {
        Visit visit = random.next();
        const Place place =
            linkage().places()[static_cast<std::size_t>(random.below(static_cast<int>(linkage().places().size())))];
        const std::size_t node = linkage().nodesOf(place).front();
        const double before = liftOf(visit.findings)[node];
        visit.findings.push_back(clearOf(place));
        const double after = liftOf(visit.findings)[node];
        EXPECT_LE(after, before + 1e-12) << "visit " << i << ", " << place;
    }
}

TEST(Reason, AClearOnTheOnlyWayKeepsTheWalkFromPassing)
{
    const Finding found = tender("gluteus-maximus", Side::Right, 3);
    const Finding clear = clearOf({{"thoracolumbar-fascia"}, Side::Left});
    const std::size_t latissimus = linkage().nodesOf({{"latissimus-dorsi"}, Side::Left}).front();
    const double before = liftOf({found})[latissimus];
    EXPECT_LT(liftOf({found, clear})[latissimus], 0.9 * before);
}

TEST(Reason, ClearPlacesAreNeverSuggested)
{
    RandomVisits random(5);
    for (int i = 0; i < 60; ++i) {
        const Visit visit = random.next();
        std::set<std::size_t> clear;
        std::set<std::size_t> examined;
        for (const Finding &f : visit.findings)
            for (const std::size_t node : linkage().nodesOf(f.place)) {
                examined.insert(node);
                if (f.isClear() && !f.isFound())
                    clear.insert(node);
            }
        for (const Finding &f : visit.findings)
            if (f.isFound())
                for (const std::size_t node : linkage().nodesOf(f.place))
                    clear.erase(node);
        const Reasons reasons = reasoner().reasons(visit);
        for (const Suggestion &s : reasons.explain)
            EXPECT_FALSE(clear.contains(linkage().nodesOf(s.place).front())) << s.place;
        for (const Suggestion &s : reasons.check)
            EXPECT_FALSE(examined.contains(linkage().nodesOf(s.place).front())) << s.place << " was examined already";
    }
}

TEST(Reason, TenderButMovingFreelyIsAFinding)
{
    Finding f = tender("gluteus-maximus", Side::Right, 3);
    f.clear.motion = true;
    const Reasons reasons = reasoner().reasons(visitOf({f}));
    ASSERT_FALSE(reasons.explain.empty());
    EXPECT_EQ(reasons.explain.front().place, f.place);
    ASSERT_FALSE(reasons.check.empty()) << "what is tied to it is worth checking";
    EXPECT_FALSE(reasons.check.front().path.empty());
    EXPECT_EQ(reasons.check.front().path.front().from, f.place);
    EXPECT_EQ(reasons.check.front().why.find("Found here"), std::string::npos) << reasons.check.front().why;
}

TEST(Reason, TenderAtOneSpotAndClearAtAnotherIsAFinding)
{
    Finding origin = tender("gluteus-maximus", Side::Right, 3);
    origin.spot = Spot::Origin;
    Finding belly = clearOf(origin.place);
    belly.spot = Spot::Belly;
    const Reasons reasons = reasoner().reasons(visitOf({origin, belly}));
    ASSERT_FALSE(reasons.explain.empty());
    EXPECT_EQ(reasons.explain.front().place, origin.place);
    EXPECT_FALSE(reasons.check.empty());
}

TEST(Reason, PointsAtWhatTwoFindingsShare)
{
    const Reasons reasons = reasoner().reasons(visitOf({tender("gluteus-maximus", Side::Right, 3), tender("latissimus-dorsi", Side::Left, 3)}));
    const auto fascia = std::find_if(reasons.check.begin(), reasons.check.end(), [](const Suggestion &s) {
        return s.place == Place{{"thoracolumbar-fascia"}, Side::Left};
    });
    ASSERT_NE(fascia, reasons.check.end()) << "it lies between the two";
    EXPECT_NE(fascia->why.find("left thoracolumbar fascia"), std::string::npos) << fascia->why;
    EXPECT_EQ(fascia->path.size(), 1U);
}

TEST(Reason, GivesAtMostTwentyInOrderAndEqualScoresShareARank)
{
    RandomVisits random(77);
    bool full = false;
    for (int i = 0; i < 30; ++i) {
        const Visit visit = random.next();
        const Reasons reasons = reasoner().reasons(visit);
        for (const auto *list : {&reasons.explain, &reasons.check}) {
            EXPECT_LE(list->size(), suggestionsAtMost);
            full = full || list->size() == suggestionsAtMost;
            for (std::size_t k = 0; k < list->size(); ++k) {
                const Suggestion &s = (*list)[k];
                if (k == 0) {
                    EXPECT_EQ(s.rank, 1);
                    continue;
                }
                const Suggestion &before = (*list)[k - 1];
                EXPECT_LE(s.score, before.score);
                EXPECT_EQ(s.rank, s.score == before.score ? before.rank : static_cast<int>(k) + 1) << s.place;
            }
        }
    }
    EXPECT_TRUE(full) << "no list was long enough to be cut";
}

TEST(Reason, EqualFindingsOnBothSidesRankEqually)
{
    const Reasons reasons =
        reasoner().reasons(visitOf({tender("piriformis", Side::Left, 2), tender("piriformis", Side::Right, 2)}));
    ASSERT_GE(reasons.explain.size(), 2U);
    EXPECT_EQ(reasons.explain[0].place.structure, reasons.explain[1].place.structure);
    EXPECT_EQ(reasons.explain[0].rank, 1);
    EXPECT_EQ(reasons.explain[1].rank, 1);
    EXPECT_EQ(reasons.explain[0].score, reasons.explain[1].score);
}

TEST(Reason, AMidlineFindingCountsHalfForEachSide)
{
    // Without clear places the walk is linear in its start, so two findings give the mean weighted by their strength.
    const Finding midline = stiff("l4-l5", Side::Midline, 2);
    const Finding other = tender("gluteus-maximus", Side::Right, 3);
    const auto together = liftOf({midline, other});
    const auto left = liftOf({stiff("l4-l5", Side::Left, 2)});
    const auto right = liftOf({stiff("l4-l5", Side::Right, 2)});
    const auto alone = liftOf({other});
    const double a = strengthOf(midline, constants());
    const double b = strengthOf(other, constants());
    for (std::size_t i = 0; i < together.size(); ++i)
        ASSERT_NEAR(together[i], (a * (left[i] + right[i]) / 2 + b * alone[i]) / (a + b), 1e-8) << linkage().places()[i];
}

void expectFinite(const std::vector<Suggestion> &list)
{
    for (const Suggestion &s : list) {
        EXPECT_TRUE(std::isfinite(s.score)) << s.place;
        EXPECT_GE(s.score, 0) << s.place;
        for (const Term &term : s.terms)
            EXPECT_TRUE(std::isfinite(term.value)) << s.place << ' ' << term.name;
    }
}

void expectFinite(const Visit &visit)
{
    const Reasons reasons = reasoner().reasons(visit);
    expectFinite(reasons.explain);
    expectFinite(reasons.check);
}

TEST(Reason, AnEmptyVisitGivesNothing)
{
    const Reasons reasons = reasoner().reasons({});
    EXPECT_TRUE(reasons.explain.empty());
    EXPECT_TRUE(reasons.check.empty());
    EXPECT_TRUE(treatFirst(reasoner(), {}).treat.empty());
}

TEST(Reason, OnlyClearAndUnableGivesNothing)
{
    Finding unable;
    unable.place = {{"piriformis"}, Side::Left};
    unable.unable = "dressing";
    const Reasons reasons = reasoner().reasons(visitOf({clearOf({{"gluteus-maximus"}, Side::Right}), unable}));
    EXPECT_TRUE(reasons.explain.empty());
    EXPECT_TRUE(reasons.check.empty());
}

TEST(Reason, AContradictoryVisitGivesNumbers)
{
    // The visit reader refuses these; the reasoning must not break on them either.
    Finding both = tender("gluteus-maximus", Side::Right, 3);
    both.clear = {true, true};
    both.unable = "and more";
    expectFinite(visitOf({both, clearOf(both.place), tender("gluteus-maximus", Side::Right, 4), both}));
    Finding midline = stiff("l4-l5", Side::Midline, 3);
    expectFinite(visitOf({midline, clearOf({{"l4-l5"}, Side::Left}), clearOf(midline.place)}));
    expectFinite(visitOf({tender("no-such-structure", Side::Right, 3)}));
}

TEST(Reason, AHugeVisitGivesNumbers)
{
    Visit everything;
    for (const Place &place : examinablePlaces())
        everything.findings.push_back(
            tender(place.structure.value, place.side, 1 + static_cast<int>(everything.findings.size() % 4)));
    expectFinite(everything);
    EXPECT_LE(reasoner().reasons(everything).explain.size(), suggestionsAtMost);
    Visit allClear;
    for (const Place &place : examinablePlaces())
        allClear.findings.push_back(clearOf(place));
    allClear.findings.front() = tender("gluteus-maximus", Side::Right, 2);
    expectFinite(allClear);
}

TEST(StrengthOf, GrowsWithEveryGrade)
{
    for (int grade = 1; grade <= Tenderness::highest; ++grade)
        EXPECT_GT(strengthOf(tender("piriformis", Side::Left, grade), constants()),
            strengthOf(tender("piriformis", Side::Left, grade - 1), constants()));
    for (int grade = 1; grade <= Restriction::highest; ++grade)
        EXPECT_GT(strengthOf(stiff("hip-joint", Side::Left, grade), constants()),
            strengthOf(stiff("hip-joint", Side::Left, grade - 1), constants()));
    Finding familiar = tender("piriformis", Side::Left, 2);
    familiar.familiar = true;
    EXPECT_GT(strengthOf(familiar, constants()), strengthOf(tender("piriformis", Side::Left, 2), constants()));
    EXPECT_EQ(strengthOf(clearOf({{"piriformis"}, Side::Left}), constants()), 0);
}

} // namespace

} // namespace raphe::test
