// Consents: each is asked of whom it concerns and of nobody else, and again when a yes has lapsed; a no stops what it covered, on
// both sides, until a yes is given.
#include "tests/core/safety/Rules.h"

#include <gtest/gtest.h>

#include <QDate>

#include <algorithm>

namespace raphe::test {

namespace {

constexpr const char *consentDay = "2026-11-27";
const Place palm{{"palm"}, Side::Left}; // no item of a place but the thrust of elsewhere

const ConsentItems &consents()
{
    return safetyRules().consents();
}

const ConsentItem &item(const char *id)
{
    return *consents().find(id);
}

std::string dayAfter(const std::string &day, int days)
{
    return QDate::fromString(QString::fromStdString(day), Qt::ISODate).addDays(days).toString(Qt::ISODate).toStdString();
}

ConsentAnswer answer(const std::string &id, ConsentState state)
{
    ConsentAnswer out{id, state, consentDay, {}, {}, {}, {}};
    if (state == ConsentState::Given) {
        out.chaperone = Chaperone::Declined;
        if (consents().find(id)->covers.guardian)
            out.guardian = Guardian{"Nora Feld", "mother"};
    }
    return out;
}

Visit visitAnswering(const std::vector<ConsentAnswer> &answers)
{
    Visit visit;
    visit.patient = Patient{"Ida", "1980-01-01"};
    visit.date = consentDay;
    visit.consents = answers;
    return visit;
}

Visit minorAnswering(const std::vector<ConsentAnswer> &answers)
{
    Visit visit = visitAnswering(answers);
    visit.patient->born = "2012-03-04";
    return visit;
}

bool isDue(const ConsentItem &item, const Visit &visit, const std::optional<std::set<std::string>> &techniques = {})
{
    const auto due = consentsDue(consents(), regions(), visit, techniques);
    return std::find(due.begin(), due.end(), &item) != due.end();
}

// Places that the item covers, and places that it does not.
std::vector<Place> placesWhere(const ConsentItem &item, bool covered)
{
    std::vector<Place> out;
    for (const Structure &s : atlas().structures())
        for (const Side side : atlas().sides(s))
            if (covers(consents(), item, regions(), {s.id, side}) == covered)
                out.push_back({s.id, side});
    return out;
}

// The visit of somebody whom this item concerns, and that gives no answer to it.
Visit fitting(const ConsentItem &item)
{
    Visit visit = visitAnswering({});
    if (item.covers.isOfPlace())
        visit.complaintAt = {placesWhere(item, true).front()};
    if (item.covers.guardian)
        visit.patient->born = "2012-03-04";
    return visit;
}

bool stopsWork(const ConsentItem &item)
{
    return !item.covers.record && !item.covers.pictures && !item.covers.guardian;
}

} // namespace

TEST(Consents, EachItemIsAskedOfWhomItConcernsAndOfNobodyElse)
{
    ASSERT_EQ(consents().items.size(), 21U);
    for (const ConsentItem &item : consents().items) {
        SCOPED_TRACE(item.id);
        const Visit visit = fitting(item);
        EXPECT_TRUE(isDue(item, visit));
        for (const auto &[state, word] : consentStateWords) {
            Visit answered = visit;
            answered.consents = {answer(item.id, state)};
            EXPECT_FALSE(isDue(item, answered)) << "answered today: " << word;
        }
        EXPECT_EQ(isDue(item, visit, std::set<std::string>{}), item.covers.techniques.empty()) << "nothing may be used";
        if (!item.covers.techniques.empty()) {
            EXPECT_TRUE(isDue(item, visit, std::set<std::string>{item.covers.techniques.back(), "palpation"}));
        }
        Visit elsewhere = visit;
        elsewhere.complaintAt = {palm};
        EXPECT_EQ(isDue(item, elsewhere), !item.covers.isOfPlace() || item.covers.elsewhere);
        elsewhere.complaintAt.clear();
        EXPECT_EQ(isDue(item, elsewhere), !item.covers.isOfPlace()) << "it hurts nowhere";
        Visit minor = visit;
        minor.patient->born = "2012-03-04";
        EXPECT_EQ(isDue(item, minor), !item.adultsOnly);
        minor.patient->born = "1980-01-01";
        EXPECT_EQ(isDue(item, minor), !item.covers.guardian);
    }
}

TEST(Consents, AYesLapsesAndANoDoesNot)
{
    for (const ConsentItem &item : consents().items) {
        SCOPED_TRACE(item.id);
        for (const auto &[state, word] : consentStateWords) {
            Visit visit = fitting(item);
            visit.consents = {answer(item.id, state)};
            const auto isDueOn = [&](int days) {
                visit.date = dayAfter(consentDay, days);
                return isDue(item, visit);
            };
            const bool isYes = state == ConsentState::Given;
            EXPECT_FALSE(isDueOn(item.renewDays)) << word;
            EXPECT_EQ(isDueOn(item.renewDays + 1), isYes) << word;
            EXPECT_EQ(isDueOn(-1), isYes) << "the clock was put back: " << word;
        }
    }
}

TEST(Consents, AGuardianIsAskedForBelowTheAgeOrWhenOneWasNamed)
{
    EXPECT_EQ(consents().guardianBelow, 18);
    Visit visit = visitAnswering({});
    visit.patient->born = "2008-11-28";
    EXPECT_TRUE(needsGuardian(consents(), visit)) << "the day before the birthday";
    visit.date = "2026-11-28";
    EXPECT_FALSE(needsGuardian(consents(), visit));
    visit.patient->born.clear();
    EXPECT_FALSE(needsGuardian(consents(), visit)) << "an unknown age";
    visit.consents = {answer("record", ConsentState::Given)};
    EXPECT_FALSE(needsGuardian(consents(), visit));
    visit.consents.front().guardian = Guardian{"Nora Feld", "mother"};
    EXPECT_TRUE(needsGuardian(consents(), visit));
    EXPECT_TRUE(isDue(item("guardian"), visit));
}

TEST(Consents, WhoCameOfAgeIsAskedAgain)
{
    Visit visit = visitAnswering({answer("record", ConsentState::Given)});
    visit.patient->born = "2008-12-01";
    visit.consents.front().guardian = Guardian{"Nora Feld", "mother"};
    visit.date = "2026-11-30";
    EXPECT_FALSE(isDue(item("record"), visit));
    visit.date = "2026-12-01";
    EXPECT_TRUE(isDue(item("record"), visit));
}

// Read from the trade's point of view: what must be caught, and what must not.
TEST(Consents, TheScopesReachWhatTheyMean)
{
    const auto reaches = [](const char *id, const char *structure) {
        return covers(consents(), item(id), regions(), {{structure}, Side::Right});
    };
    for (const char *joint : {"c1-c2", "c4-c5", "c6-c7"}) {
        EXPECT_TRUE(reaches("thrust-neck", joint)) << joint;
        EXPECT_FALSE(reaches("thrust-elsewhere", joint)) << joint;
    }
    for (const char *joint : {"l2-l3", "l4-l5", "l5-s1", "sacroiliac-joint"}) {
        EXPECT_TRUE(reaches("thrust-low-back", joint)) << joint;
        EXPECT_FALSE(reaches("thrust-elsewhere", joint)) << joint;
    }
    for (const char *joint : {"t5-t6", "shoulder-joint", "knee-joint", "ankle-joint", "temporomandibular-joint"}) {
        EXPECT_TRUE(reaches("thrust-elsewhere", joint)) << joint;
        EXPECT_FALSE(reaches("thrust-neck", joint)) << joint;
        EXPECT_FALSE(reaches("thrust-low-back", joint)) << joint;
    }
    EXPECT_TRUE(reaches("region-breast-chest", "pectoralis-major"));
    EXPECT_TRUE(reaches("region-groin-inner-thigh", "pectineus"));
    EXPECT_TRUE(reaches("region-groin-inner-thigh", "caution-groin-triangle"));
    EXPECT_TRUE(reaches("region-buttock-tailbone", "gluteus-maximus"));
    EXPECT_TRUE(reaches("region-inside-mouth", "medial-pterygoid"));
    EXPECT_FALSE(reaches("region-inside-mouth", "masseter"));
    EXPECT_TRUE(reaches("region-pelvic-floor-outside", "levator-ani"));
    EXPECT_TRUE(reaches("region-abdomen", "rectus-abdominis"));
    for (const ConsentItem &each : consents().items)
        if (each.covers.isOfPlace() && each.covers.techniques.empty()) {
            for (const char *structure :
                {"soleus", "biceps-brachii", "knee-joint", "c4-c5", "splenius-capitis", "tibialis-anterior"})
                EXPECT_FALSE(covers(consents(), each, regions(), {{structure}, Side::Right})) << each.id << " " << structure;
        }
}

TEST(Consents, EveryPlaceHasOneThrustItemAtLeast)
{
    for (const Structure &s : atlas().structures()) {
        const auto count = std::count_if(consents().items.begin(), consents().items.end(), [&](const ConsentItem &each) {
            return each.covers.techniques == std::vector<std::string>{"thrust"}
            && covers(consents(), each, regions(), {s.id, atlas().sides(s).front()});
        });
        EXPECT_GE(count, 1) << s.id;
    }
}

TEST(Consents, ANoStopsWhatItCoveredAndNothingElse)
{
    for (const ConsentItem &item : consents().items) {
        SCOPED_TRACE(item.id);
        const bool isOfPlace = item.covers.isOfPlace();
        for (const ConsentState state : {ConsentState::Refused, ConsentState::Withdrawn}) {
            Visit visit = visitAnswering({answer(item.id, state)});
            visit.consents.front().remark = "not today";
            const Cautions cautions = cautionsOf(visit);
            const auto general = cautions.general();
            EXPECT_EQ(verdictOf(general, item.id) != nullptr, stopsWork(item) && !isOfPlace);
            const auto check = [&](const Place &place, bool holds) {
                const auto at = cautions.at(place);
                const CautionVerdict *verdict = verdictOf(at, item.id);
                ASSERT_EQ(verdict != nullptr, holds) << place;
                if (!verdict)
                    return;
                EXPECT_EQ(verdict->verdict, Verdict::Stop);
                EXPECT_EQ(verdict->place, place);
                EXPECT_EQ(verdict->actions, item.covers.techniques);
                EXPECT_NE(verdict->reason.find(item.title), std::string::npos) << verdict->reason;
                EXPECT_NE(verdict->reason.find("not today"), std::string::npos) << verdict->reason;
                const char *said = state == ConsentState::Refused ? "refused" : "taken back";
                EXPECT_NE(verdict->reason.find(said), std::string::npos) << verdict->reason;
                EXPECT_NE(verdict->source.find(consentDay), std::string::npos) << verdict->source;
                EXPECT_EQ(cautions.isBarred(place), item.covers.techniques.empty()) << place;
                for (const HandsAction &action : safetyRules().actions()) {
                    const bool named = item.covers.techniques.empty()
                        || std::find(item.covers.techniques.begin(), item.covers.techniques.end(), action.id)
                            != item.covers.techniques.end();
                    const auto stop = cautions.stopOf(place, action.id);
                    EXPECT_TRUE(!named || stop) << place << " " << action.id;
                    EXPECT_TRUE(named || !stop || stop->rule != item.id) << place << " " << action.id;
                }
            };
            const auto covered = placesWhere(item, true);
            const auto others = placesWhere(item, false);
            ASSERT_EQ(others.empty(), !isOfPlace);
            for (std::size_t i = 0; i < covered.size(); i += 1 + covered.size() / 20) // a sample: each asks for every action
                check(covered[i], stopsWork(item));
            for (std::size_t i = 0; i < others.size(); i += 7)
                check(others[i], false);
        }
    }
}

TEST(Consents, ARefusalHoldsOnBothSidesAndMirrors)
{
    for (const ConsentItem &item : consents().items) {
        Visit visit = visitAnswering({answer(item.id, ConsentState::Refused)});
        visit.complaintAt = {{{"gluteus-maximus"}, Side::Right}};
        const Cautions cautions = cautionsOf(visit);
        const Cautions mirror = cautionsOf(mirrored(visit));
        for (const char *structure : {"gluteus-maximus", "pectineus", "masseter", "pectoralis-major", "c4-c5", "soleus"})
            for (const Side side : {Side::Left, Side::Right}) {
                const Place place{{structure}, side};
                auto verdicts = mirror.at(mirrored(place));
                for (CautionVerdict &v : verdicts)
                    v.place = mirrored(*v.place);
                EXPECT_EQ(verdicts, cautions.at(place)) << item.id << " " << place;
                EXPECT_EQ(cautions.isBarred(place), cautions.isBarred(mirrored(place))) << item.id << " " << place;
            }
    }
}

TEST(Consents, WhatIsTakenBackStopsAndIsFreeWhenGivenAgain)
{
    const Place buttock{{"gluteus-maximus"}, Side::Right};
    const auto isBarred = [&](ConsentState state) {
        return cautionsOf(visitAnswering({answer("region-buttock-tailbone", state)})).isBarred(buttock);
    };
    EXPECT_FALSE(isBarred(ConsentState::Given));
    EXPECT_TRUE(isBarred(ConsentState::Withdrawn));
    EXPECT_FALSE(isBarred(ConsentState::Given));
    Visit later = visitAnswering({answer("region-buttock-tailbone", ConsentState::Withdrawn)});
    later.date = dayAfter(consentDay, 4000);
    EXPECT_TRUE(cautionsOf(later).isBarred(buttock)) << "a no holds on";
}

TEST(Consents, WorkWithAConsentOfItsOwnIsAskedForFirst)
{
    for (const ConsentItem &item : consents().items) {
        SCOPED_TRACE(item.id);
        const bool ofThrust = !item.covers.techniques.empty();
        const Cautions open = cautionsOf(visitAnswering({}));
        const Cautions given = cautionsOf(visitAnswering({answer(item.id, ConsentState::Given)}));
        EXPECT_EQ(verdictOf(open.general(), item.id), nullptr);
        Visit lapsed = visitAnswering({answer(item.id, ConsentState::Given)});
        lapsed.date = dayAfter(consentDay, item.renewDays + 1);
        std::size_t asked = 0;
        for (const Place &place : placesWhere(item, true)) {
            const auto at = open.at(place);
            const CautionVerdict *verdict = verdictOf(at, item.id);
            const bool isJoint = atlas().at(place.structure).kind == Kind::Joint;
            ASSERT_EQ(verdict != nullptr, item.covers.isOfPlace() && (isJoint || !ofThrust)) << place;
            EXPECT_FALSE(holds(given, item.id, place)) << place;
            if (!verdict)
                continue;
            EXPECT_EQ(verdict->verdict, Verdict::Ask);
            EXPECT_EQ(verdict->actions, item.covers.techniques);
            EXPECT_EQ(verdict->reason.find("chaperone") != std::string::npos, item.chaperone) << verdict->reason;
            EXPECT_TRUE(asked++ > 0 || holds(cautionsOf(lapsed), item.id, place)) << "the yes was of another day";
        }
        EXPECT_EQ(asked > 0, item.covers.isOfPlace());
        const auto others = placesWhere(item, false);
        for (std::size_t i = 0; i < others.size(); i += 7)
            EXPECT_FALSE(holds(open, item.id, others[i])) << others[i];
    }
}

TEST(Consents, ANoToWorkFromInsideLeavesWhatWasAgreedFromOutside)
{
    const Place levator{{"levator-ani"}, Side::Right};
    Visit visit = visitAnswering({answer("region-pelvic-floor-inside", ConsentState::Refused)});
    EXPECT_TRUE(cautionsOf(visit).isBarred(levator)) << "nothing was agreed to";
    visit.consents.push_back(answer("region-pelvic-floor-outside", ConsentState::Given));
    const auto at = cautionsOf(visit).at(levator);
    const CautionVerdict *verdict = verdictOf(at, "region-pelvic-floor-inside");
    ASSERT_NE(verdict, nullptr);
    EXPECT_EQ(verdict->verdict, Verdict::Adapt);
    EXPECT_NE(verdict->reason.find("outside"), std::string::npos) << verdict->reason;
    EXPECT_FALSE(cautionsOf(visit).isBarred(levator));
    visit.date = dayAfter(consentDay, 1);
    EXPECT_TRUE(cautionsOf(visit).isBarred(levator)) << "the yes was of another day";
    visit.consents.back().state = ConsentState::Refused;
    EXPECT_TRUE(cautionsOf(visit).isBarred(levator));
    Visit other = visitAnswering({answer("region-pelvic-floor-outside", ConsentState::Refused),
        answer("region-pelvic-floor-inside", ConsentState::Given)});
    EXPECT_TRUE(cautionsOf(other).isBarred(levator)) << "a yes to inside allows nothing from outside";
}

TEST(Consents, WithoutAGuardiansYesNothingIsDoneWithAMinor)
{
    const auto locks = [](const Visit &visit) { return lockAmong(cautionsOf(visit).general()) != nullptr; };
    EXPECT_FALSE(locks(minorAnswering({answer("guardian", ConsentState::Given)})));
    EXPECT_TRUE(locks(minorAnswering({answer("guardian", ConsentState::Refused)})));
    EXPECT_TRUE(locks(minorAnswering({answer("guardian", ConsentState::Withdrawn)})));
    Visit adult = visitAnswering({answer("guardian", ConsentState::Refused)});
    EXPECT_FALSE(locks(adult)) << "an adult wants nobody else to decide";
    adult.consents.push_back(answer("record", ConsentState::Given));
    adult.consents.back().guardian = Guardian{"Nora Feld", "guardian by court"};
    EXPECT_TRUE(locks(adult)) << "somebody else decides for this one";
    EXPECT_TRUE(locks(visitAnswering({answer("examination-by-touch", ConsentState::Withdrawn)})));
    EXPECT_TRUE(cautionsOf(visitAnswering({answer("examination-by-touch", ConsentState::Refused)})).isBarred(palm));
    EXPECT_FALSE(locks(visitAnswering({answer("examination-by-touch", ConsentState::Given)})));
    EXPECT_FALSE(locks(visitAnswering({answer("record", ConsentState::Refused), answer("pictures", ConsentState::Refused)})));
}

TEST(Consents, MistakesInTheAnswersAreNamed)
{
    const auto failure = [](const Visit &visit) {
        const auto cautions = Cautions::of(safetyRules(), regions(), visit, "v.json");
        return cautions ? std::string() : cautions.error().place + " " + cautions.error().detail;
    };
    EXPECT_EQ(failure(visitAnswering({{"no-such-item", ConsentState::Given, consentDay, {}, {}, {}, {}}})),
        "v.json#/consents/0/item no-such-item");
    EXPECT_EQ(failure(minorAnswering({answer("record", ConsentState::Refused), answer("cupping", ConsentState::Given)})),
        "v.json#/consents/1 guardian");
    EXPECT_EQ(failure(visitAnswering({answer("cupping", ConsentState::Given)})), "");
    ConsentAnswer byGuardian = answer("cupping", ConsentState::Given);
    byGuardian.guardian = Guardian{"", "mother"};
    EXPECT_EQ(failure(minorAnswering({byGuardian})), "v.json#/consents/0 guardian") << "without a name";
    byGuardian.guardian->name = "Nora Feld";
    EXPECT_EQ(failure(minorAnswering({byGuardian})), "");
    EXPECT_EQ(failure(minorAnswering({answer("cupping", ConsentState::Refused)})), "") << "a child may say no alone";
    ConsentAnswer inside = answer("region-pelvic-floor-inside", ConsentState::Given);
    inside.guardian = byGuardian.guardian;
    EXPECT_EQ(failure(minorAnswering({inside})), "v.json#/consents/0 region-pelvic-floor-inside, under the age of 18");
    EXPECT_EQ(failure(visitAnswering({inside})), "");
    for (const ConsentItem &item : consents().items) {
        ConsentAnswer unasked = answer(item.id, ConsentState::Given);
        unasked.chaperone.reset();
        EXPECT_EQ(failure(visitAnswering({unasked})), item.chaperone ? "v.json#/consents/0 chaperone" : "") << item.id;
    }
    ConsentAnswer nobody = answer("guardian", ConsentState::Given);
    nobody.guardian.reset();
    EXPECT_EQ(failure(visitAnswering({nobody})), "v.json#/consents/0 guardian") << "somebody else said yes: who";
}

TEST(Consents, VerdictsComeGravestFirstThenByRule)
{
    std::vector<ConsentAnswer> all;
    for (const ConsentItem &item : consents().items)
        if (!item.covers.examination && item.id != "region-breast-chest")
            all.push_back(answer(item.id, item.covers.elsewhere ? ConsentState::Given : ConsentState::Refused));
    std::reverse(all.begin(), all.end());
    const Cautions cautions = cautionsOf(visitAnswering(all));
    const auto isInOrder = [](const std::vector<CautionVerdict> &verdicts) {
        return std::is_sorted(verdicts.begin(), verdicts.end(), [](const CautionVerdict &a, const CautionVerdict &b) {
            return a.verdict != b.verdict ? a.verdict > b.verdict : a.rule < b.rule;
        });
    };
    EXPECT_GE(cautions.general().size(), 6U);
    EXPECT_TRUE(isInOrder(cautions.general()));
    for (const char *structure : {"gluteus-maximus", "pectoralis-major", "c4-c5", "hip-joint", "rectus-abdominis"})
        EXPECT_TRUE(isInOrder(cautions.at({{structure}, Side::Left}))) << structure;
}

} // namespace raphe::test
