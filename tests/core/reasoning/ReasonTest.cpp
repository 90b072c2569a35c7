// What the findings point to and what to check next, on the built-in atlas: sides, clear places, limits and ranks.
#include "tests/core/reasoning/Visits.h"

#include "core/plan/Treat.h"
#include "core/reasoning/Reason.h"
#include "core/reasoning/ReasonWords.h"

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
        ASSERT_EQ(answer(here.tied, true, !own), answer(there.tied, false, !own)) << "visit " << i;
        ASSERT_EQ(answer(here.explain, true, !own), answer(there.explain, false, !own)) << "visit " << i;
        ASSERT_DOUBLE_EQ(here.unexplained, there.unexplained) << "visit " << i;
        ASSERT_EQ(answer(here.check, true, !own), answer(there.check, false, !own)) << "visit " << i;
        ASSERT_EQ(
            answer(treatFirst(reasoner(), visit).treat, true, !own), answer(treatFirst(reasoner(), image).treat, false, !own))
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
        EXPECT_EQ(answer(reasoner().reasons(visit).check, false, true), answer(reasoner().reasons(reversed).check, false, true));
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
        for (const Suggestion &s : reasons.tied)
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

TEST(Reason, IsTiedToWhatTwoFindingsShare)
{
    const Reasons reasons =
        reasoner().reasons(visitOf({tender("gluteus-maximus", Side::Right, 3), tender("latissimus-dorsi", Side::Left, 3)}));
    const auto fascia = std::find_if(reasons.tied.begin(), reasons.tied.end(), [](const Suggestion &s) {
        return s.place == Place{{"thoracolumbar-fascia"}, Side::Left};
    });
    ASSERT_NE(fascia, reasons.tied.end()) << "it lies between the two";
    EXPECT_NE(fascia->why.find("left thoracolumbar fascia"), std::string::npos) << fascia->why;
    EXPECT_EQ(fascia->path.size(), 1U);
}

TEST(Reason, IsTiedByTheLiftOfTheWalk)
{
    RandomVisits random(8);
    for (int i = 0; i < 40; ++i) {
        const Visit visit = random.next();
        const auto lift = liftOf(visit.findings);
        for (const Suggestion &s : reasoner().reasons(visit).tied)
            ASSERT_NEAR(s.score, lift[linkage().nodesOf(s.place).front()], 1e-8 * s.score) << "visit " << i << ", " << s.place;
    }
}

TEST(Reason, ThePullOfTheOthersIsTheLiftWithoutIt)
{
    RandomVisits random(9);
    for (int i = 0; i < 30; ++i) {
        const Visit visit = random.next();
        for (const Finding &f : visit.findings) {
            if (!f.isFound())
                continue;
            std::vector<Finding> others;
            std::copy_if(visit.findings.begin(), visit.findings.end(), std::back_inserter(others),
                [&](const Finding &o) { return o.place != f.place; });
            const auto lift = liftOf(others);
            double wanted = 0;
            for (const std::size_t node : linkage().nodesOf(f.place))
                wanted = std::max(wanted, lift[node]);
            ASSERT_NEAR(reasoner().pullOfOthers(visit, {f.place}).front(), wanted, 1e-8 * (1 + wanted)) << f.place;
        }
    }
}

/// Row of a place, or as many as there are rows.
std::size_t rowOf(const std::vector<Suggestion> &list, const Place &place)
{
    const auto it = std::find_if(list.begin(), list.end(), [&](const Suggestion &s) { return s.place == place; });
    return static_cast<std::size_t>(it - list.begin());
}

/// Rank of a place, 21 when it is not among the rows; equal scores share a rank.
int rankOf(const std::vector<Suggestion> &list, const Place &place)
{
    const std::size_t row = rowOf(list, place);
    return row < list.size() ? list[row].rank : static_cast<int>(suggestionsAtMost) + 1;
}

TEST(Reason, RaisingAFindingNeverLowersItsOwnPlace)
{
    RandomVisits random(12);
    int compared = 0;
    for (int i = 0; i < casesWanted(); ++i) {
        const Visit visit = random.next();
        for (std::size_t k = 0; k < visit.findings.size(); ++k) {
            const Finding &f = visit.findings[k];
            if (!f.tenderness || f.tenderness->grade == Tenderness::highest || f.isUnable())
                continue;
            Visit higher = visit;
            ++higher.findings[k].tenderness->grade;
            Visit known = visit;
            known.findings[k].familiar = true;
            for (const std::size_t node : linkage().nodesOf(f.place)) {
                const Place &place = linkage().places()[node];
                const int before = rankOf(reasoner().reasons(visit).explain, place);
                if (before > static_cast<int>(suggestionsAtMost))
                    continue;
                EXPECT_LE(rankOf(reasoner().reasons(higher).explain, place), before) << "visit " << i << ", " << place;
                EXPECT_LE(rankOf(reasoner().reasons(known).explain, place), before) << "visit " << i << ", " << place;
                ++compared;
            }
        }
    }
    EXPECT_GT(compared, casesWanted() / 5);
}

TEST(Reason, AClearNeverRaisesItselfInExplain)
{
    RandomVisits random(13);
    for (int i = 0; i < 60; ++i) {
        Visit visit = random.next();
        const auto before = reasoner().reasons(visit);
        for (const Suggestion &s : before.explain) {
            if (std::any_of(visit.findings.begin(), visit.findings.end(), [&](const Finding &f) { return f.place == s.place; }))
                continue;
            Visit checked = visit;
            checked.findings.push_back(clearOf(s.place));
            EXPECT_GE(rankOf(reasoner().reasons(checked).explain, s.place), rankOf(before.explain, s.place)) << s.place;
            break;
        }
    }
}

TEST(Reason, AnUnrelatedFarFindingRemovesNoPath)
{
    const Finding near = tender("plantar-aponeurosis", Side::Right, 3);
    const Visit alone = visitOf({near, tender("soleus", Side::Right, 2)});
    Visit both = alone;
    both.findings.push_back(tender("temporalis", Side::Left, 2));
    const auto inWords = [](const std::vector<PathStep> &path) { return pathInWords(atlas(), path); };
    for (const Suggestion &s : reasoner().reasons(alone).tied) {
        const auto before = reasoner().ways(alone, s.place);
        const auto after = reasoner().ways(both, s.place);
        ASSERT_EQ(before.size(), after.size()) << s.place;
        for (std::size_t k = 0; k < before.size(); ++k)
            EXPECT_EQ(inWords(before[k]), inWords(after[k])) << s.place;
    }
}

TEST(Reason, StiffnessCountsOnlyWhenTheExaminerIsCertainAndThenLittle)
{
    Finding joint = tender("hip-joint", Side::Right, 1);
    const auto scoreOf = [](const Finding &f) {
        const auto list = reasoner().reasons(visitOf({tender("gluteus-medius", Side::Right, 3), f})).explain;
        return list.at(rowOf(list, f.place)).score; // against the best, gluteus medius
    };
    const double without = scoreOf(joint);
    joint.restriction = Restriction{3};
    EXPECT_DOUBLE_EQ(scoreOf(joint), without);
    joint.certain = true;
    const double certain = scoreOf(joint);
    EXPECT_GT(certain, without);
    Finding sore = joint;
    sore.restriction.reset();
    sore.certain = false;
    sore.tenderness = Tenderness{2};
    EXPECT_GT(scoreOf(sore), certain) << "soreness carries the weight";
    EXPECT_TRUE(reasoner().reasons(visitOf({stiff("hip-joint", Side::Right, 3)})).explain.empty())
        << "stiff alone points nowhere";
}

TEST(Reason, AJointStiffAndSoreUnderOverworkedMusclesLeads)
{
    Finding joint = stiff("hip-joint", Side::Right, 2);
    joint.tenderness = Tenderness{2};
    joint.familiar = true;
    const Reasons reasons = reasoner().reasons(visitOf({joint, tender("gluteus-medius", Side::Right, 2),
        tender("tensor-fasciae-latae", Side::Right, 2), tender("psoas-major", Side::Right, 1)}));
    EXPECT_EQ(reasons.explain.front().place, joint.place);
    EXPECT_LT(reasons.unexplained, 1);
}

TEST(Reason, NothingThatWasFoundMayExplainIt)
{
    // Mild soreness at three places that have nothing to do with one another.
    const Reasons reasons = reasoner().reasons(visitOf(
        {tender("soleus", Side::Left, 1), tender("temporalis", Side::Right, 1), tender("flexor-carpi-ulnaris", Side::Left, 1)}));
    EXPECT_GT(reasons.unexplained, 1);
}

TEST(Reason, KeepsOffWhereHandsMayNotGo)
{
    const Visit visit = visitOf({tender("gluteus-maximus", Side::Right, 3)});
    const Place first = reasoner().reasons(visit).check.front().place;
    for (const Suggestion &s : reasoner().reasons(visit, [&](const Place &p) { return p != first; }).check)
        EXPECT_NE(s.place, first);
    // The place that is asked about is the patient's, whichever way the answer was computed.
    const Visit image = mirrored(visit);
    for (const Suggestion &s : reasoner().reasons(image, [&](const Place &p) { return p != mirrored(first); }).check)
        EXPECT_NE(s.place, mirrored(first));
}

TEST(Reason, ChecksOfOnePositionComeTogetherAndOneRowStandsForAJointComplex)
{
    RandomVisits random(14);
    for (int i = 0; i < 30; ++i) {
        const auto list = groupedByPosition(reasoner().reasons(random.next()).check);
        std::set<Position> done;
        std::set<std::pair<JointComplex, Side>> complexes;
        for (std::size_t k = 0; k < list.size(); ++k) {
            ASSERT_TRUE(list[k].position);
            if (k > 0 && list[k].position != list[k - 1].position) {
                EXPECT_TRUE(done.insert(*list[k - 1].position).second);
            }
            EXPECT_FALSE(done.contains(*list[k].position)) << "the patient would be turned twice";
            if (const Joint *joint = atlas().findJoint(list[k].place.structure)) {
                EXPECT_TRUE(complexes.emplace(joint->complex, list[k].place.side).second) << list[k].place;
            }
        }
    }
}

TEST(Reason, TheComplaintAloneAsksForChecksThere)
{
    Visit visit;
    visit.complaintAt = {{{"anterior-region-of-knee"}, Side::Left}};
    const Reasons reasons = reasoner().reasons(visit);
    EXPECT_TRUE(reasons.explain.empty());
    ASSERT_FALSE(reasons.check.empty());
    const StructureId first = reasons.check.front().place.structure;
    const StructureId knee{"anterior-region-of-knee"};
    const std::vector<StructureId> feltAt = atlas().at(first).seat ? atlas().at(first).seat->feltAt : std::vector<StructureId>{};
    EXPECT_TRUE(regions().over(first).contains(knee) || std::find(feltAt.begin(), feltAt.end(), knee) != feltAt.end()) << first;
    EXPECT_EQ(reasons.check.front().place.side, Side::Left);
}

TEST(Reason, TheSegmentOfTheSkinIsNearTheComplaintOnItsSide)
{
    Visit visit;
    visit.complaintAt = {{{"little-finger"}, Side::Left}};
    const auto near = reasoner().nearComplaint(
        visit, {{{"c7-t1"}, Side::Left}, {{"c7-t1"}, Side::Right}, {{"c7-t1"}, Side::Midline}, {{"l5-s1"}, Side::Left}});
    EXPECT_DOUBLE_EQ(near[0], constants()["near-supplied-skin"]); // C8 serves the little finger, and leaves below C7
    EXPECT_LT(near[1], near[0]);
    EXPECT_EQ(near[2], near[0]);
    EXPECT_LT(near[3], near[0]);
}

TEST(Reason, WhatIsFeltWhereItHurtsIsNearTheComplaint)
{
    Visit visit;
    visit.complaintAt = {{{"suprascapular-region"}, Side::Left}};
    const std::vector<Place> places{{{"c6-c7"}, Side::Left}, {{"c6-c7"}, Side::Right}, {{"knee-joint"}, Side::Left}};
    const auto near = reasoner().nearComplaint(visit, places);
    const double second = constants()["near-felt"] * constants()["near-felt-later"]; // the neck itself stands before it
    EXPECT_DOUBLE_EQ(near[0], second);
    EXPECT_LT(near[1], near[0]);
    EXPECT_EQ(near[2], 0);
    // Of two places of the complaint it is felt at one only.
    visit.complaintAt.push_back({{"anterior-region-of-knee"}, Side::Left});
    EXPECT_DOUBLE_EQ(reasoner().nearComplaint(visit, places)[0], second / 2);
}

TEST(Reason, WaysAreShortestFirstAndLeadToThePlace)
{
    const Visit visit = visitOf({tender("gluteus-maximus", Side::Right, 3)});
    const Place place{{"latissimus-dorsi"}, Side::Left};
    const auto ways = reasoner().ways(visit, place);
    ASSERT_EQ(ways.size(), waysOnDemand);
    for (const auto &way : ways) {
        EXPECT_EQ(way.front().from, visit.findings.front().place);
        EXPECT_EQ(way.back().to, place);
    }
    EXPECT_EQ(ways.front().size(), 2U);
    EXPECT_EQ(linkedInWords(atlas(), ways.front()),
        "right gluteus maximus, to the other side to left thoracolumbar fascia, to left latissimus dorsi: continuity seen in "
        "dissection.");
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
    EXPECT_TRUE(std::isfinite(reasons.unexplained));
    for (const auto *list : {&reasons.tied, &reasons.explain, &reasons.check})
        expectFinite(*list);
    expectFinite(treatFirst(reasoner(), visit).treat);
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
