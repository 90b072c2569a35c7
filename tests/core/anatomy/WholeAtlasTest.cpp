// The built-in atlas as a whole: nothing without a source, an end, a link or an action; nothing above its source.
#include "core/anatomy/Atlas.h"

#include "tests/support/Content.h"

#include <gtest/gtest.h>

#include <map>
#include <set>

namespace raphe::test {

namespace {

using Names = std::set<std::string>;

bool isWhole(const Structure &s)
{
    return !atlas().partsOf(s.id).empty();
}

void expectNotAboveSources(Grade grade, const std::vector<std::string> &sources, const std::string &what)
{
    ASSERT_FALSE(sources.empty()) << what;
    Grade best = Grade::Convention;
    for (const std::string &id : sources) {
        const Source *source = atlas().findSource(id);
        ASSERT_TRUE(source) << what << " cites " << id;
        best = std::min(best, source->supports);
    }
    EXPECT_GE(grade, best) << what << " is graded above its sources";
}

TEST(WholeAtlas, EveryMuscleHasTwoEndsAndANerve)
{
    for (const Structure &s : atlas().structures()) {
        if (s.kind != Kind::Muscle || (isWhole(s) && s.attachments.empty()))
            continue;
        EXPECT_FALSE(s.attachments.empty()) << s.id;
        for (const Attachment &head : s.attachments)
            EXPECT_TRUE(!head.origins.empty() && !head.insertions.empty()) << s.id;
        EXPECT_FALSE(s.nerves.empty()) << s.id;
    }
}

TEST(WholeAtlas, EveryCrossedJointHasAnActionAndNoActionIsElsewhere)
{
    std::map<std::string, Names> crossed;
    for (const Crossing &c : atlas().crossings())
        crossed[c.muscle.value].insert(c.joint.value);
    for (const Structure &s : atlas().structures()) {
        Names covered;
        for (const Action &action : s.actions) {
            Names here;
            for (const std::string &id : crossed[s.id.value]) {
                const auto *joint = std::get_if<StructureId>(&action.at);
                if (joint ? joint->value == id : std::get<JointComplex>(action.at) == atlas().findJoint({id})->complex)
                    here.insert(id);
            }
            EXPECT_FALSE(here.empty()) << s.id << " has an action at a joint that it does not cross";
            covered.insert(here.begin(), here.end());
        }
        for (const std::string &id : crossed[s.id.value]) {
            const bool seam = atlas().findJoint({id})->complex == JointComplex::Skull; // no motion to speak of
            EXPECT_TRUE(seam || covered.contains(id)) << s.id << " has no action at " << id;
        }
    }
}

TEST(WholeAtlas, EveryStructureAndLinkHasASourceThatCarriesIt)
{
    for (const Structure &s : atlas().structures()) {
        EXPECT_FALSE(s.sources.empty()) << s.id;
        for (const std::string &id : s.sources) {
            EXPECT_TRUE(atlas().findSource(id)) << s.id << " cites " << id;
        }
        for (const Attachment &head : s.attachments)
            expectNotAboveSources(head.evidence, head.sources, s.id.value);
        if (s.seat)
            expectNotAboveSources(s.seat->evidence, s.seat->sources, s.id.value + " as a seat");
    }
    for (const Continuity &c : atlas().continuities())
        expectNotAboveSources(c.evidence, c.sources, c.from.value + " to " + c.to.value);
    for (const Crossing &c : atlas().crossings())
        expectNotAboveSources(c.evidence, c.sources, c.muscle.value + " over " + c.joint.value);
}

TEST(WholeAtlas, EverySourceIsCited)
{
    Names cited;
    const auto add = [&](const std::vector<std::string> &ids) { cited.insert(ids.begin(), ids.end()); };
    for (const Structure &s : atlas().structures()) {
        add(s.sources);
        for (const Attachment &head : s.attachments)
            add(head.sources);
        for (const Span &span : s.spans)
            add(span.sources);
        if (s.border)
            add(s.border->sources);
        if (s.seat)
            add(s.seat->sources);
    }
    for (const Continuity &c : atlas().continuities())
        add(c.sources);
    for (const Source &source : atlas().sources()) {
        EXPECT_TRUE(cited.contains(source.id)) << source.id << " supports nothing";
    }
}

// What can be the place of a complaint: what the reasoning ranks, but for the fat of a region, which is felt where it is.
TEST(WholeAtlas, OfEveryTissueThatCanHurtItIsSaidHowOftenAndWhere)
{
    std::map<HowOften, int> seats;
    for (const Structure &s : atlas().structures()) {
        const bool canHurt = s.kind == Kind::Muscle || s.kind == Kind::Joint || s.kind == Kind::Ligament || s.kind == Kind::Tendon
            || s.kind == Kind::Fascia;
        EXPECT_EQ(s.seat.has_value(), canHurt) << s.id;
        if (!s.seat)
            continue;
        ++seats[s.seat->howOften];
        EXPECT_FALSE(s.seat->feltAt.empty()) << s.id;
        EXPECT_LE(s.seat->feltAt.size(), 6U) << s.id;
    }
    const int all = seats[HowOften::Common] + seats[HowOften::Occasional] + seats[HowOften::Rare];
    EXPECT_LT(seats[HowOften::Common] * 3, all) << "what is common must stand out";
}

TEST(WholeAtlas, NothingStandsAlone)
{
    Names linked;
    const auto add = [&](const std::vector<StructureId> &ids) {
        for (const StructureId &id : ids)
            linked.insert(id.value);
    };
    for (const Structure &s : atlas().structures()) {
        const std::size_t before = linked.size();
        for (const Attachment &head : s.attachments) {
            add(head.origins);
            add(head.insertions);
        }
        add(s.nerves);
        add(s.beside);
        if (s.caution)
            add(s.caution->runs);
        if (s.partOf)
            add({*s.partOf});
        if (linked.size() > before || !s.attachments.empty() || !s.nerves.empty() || !s.beside.empty() || s.partOf)
            linked.insert(s.id.value);
    }
    for (const Continuity &c : atlas().continuities())
        add({c.from, c.to});
    for (const Joint &j : atlas().joints())
        add({j.id, j.bones[0], j.bones[1]});
    for (const Structure &s : atlas().structures()) {
        const bool exempt =
            s.kind == Kind::SurfaceRegion || s.kind == Kind::SuperficialFascia || s.kind == Kind::CautionArea; // until drawn
        EXPECT_TRUE(exempt || linked.contains(s.id.value)) << s.id << " is linked to nothing";
    }
}

TEST(WholeAtlas, EveryMuscleIsCalledWhatPractitionersSay)
{
    int few = 0;
    for (const Structure &s : atlas().structures())
        if (s.kind == Kind::Muscle) {
            EXPECT_FALSE(s.names.synonyms.empty()) << s.id;
            few += s.names.synonyms.size() < 2;
        }
    EXPECT_EQ(few, 0) << "muscles with fewer than two synonyms";
}

TEST(WholeAtlas, NoScientificNameStandsForTwoStructures)
{
    std::map<std::string, std::string> owner;
    for (const Structure &s : atlas().structures())
        for (const std::string &name : {s.names.english, s.names.latin}) {
            const auto [it, fresh] = owner.emplace(name, s.id.value);
            EXPECT_TRUE(fresh || it->second == s.id.value) << name << ": " << it->second << " and " << s.id;
        }
}

TEST(WholeAtlas, CautionAreasSayWhatRunsThereAndHowToWork)
{
    int areas = 0;
    for (const Structure &s : atlas().structures()) {
        if (!s.caution)
            continue;
        ++areas;
        EXPECT_FALSE(s.caution->runs.empty()) << s.id;
        EXPECT_GT(s.caution->risk.size(), 20U) << s.id;
        EXPECT_GT(s.caution->work.size(), 20U) << s.id;
        EXPECT_EQ(s.caution->risk.find("diagnos"), std::string::npos) << s.id;
        EXPECT_EQ(s.caution->work.find("diagnos"), std::string::npos) << s.id;
    }
    EXPECT_GE(areas, 18);
}

} // namespace

} // namespace raphe::test
