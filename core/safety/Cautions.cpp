#include "core/safety/Cautions.h"

#include "core/safety/ContentReading.h"
#include "core/safety/Under.h"
#include "core/safety/Warnings.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace raphe {

namespace {

// Share of one of two shapes that are drawn on one another. Our choice, no source: with less, neighbours that merely share an
// edge were barred as well, the wrist joint by a wound over the finger extensor.
constexpr double leastOverlap = 0.5;

// The surface region that a structure is, or is the superficial fascia of.
std::optional<StructureId> regionOf(const Structure &structure)
{
    if (structure.kind == Kind::SurfaceRegion)
        return structure.id;
    if (structure.kind == Kind::SuperficialFascia)
        return StructureId{structure.id.value.substr(std::string_view("sf-").size())};
    return std::nullopt;
}

// What is at a vertebra is at the segments above and below it.
bool isSegmentOf(const Atlas &atlas, const StructureId &segment, const StructureId &bone)
{
    const Joint *joint = atlas.isSpinalSegment(segment) ? atlas.findJoint(segment) : nullptr;
    return joint && content::isIn(std::vector(joint->bones.begin(), joint->bones.end()), bone);
}

// A nerve, vessel, bursa, disc or caution area, and what it is said to lie beside, or a part of that.
bool isBeside(const Atlas &atlas, const StructureId &id, const StructureId &neighbour)
{
    const std::vector<StructureId> &beside = atlas.at(id).beside;
    return std::any_of(
        beside.begin(), beside.end(), [&](const StructureId &b) { return b == neighbour || isPartOf(atlas, neighbour, b); });
}

void sort(std::vector<CautionVerdict> &verdicts)
{
    std::sort(verdicts.begin(), verdicts.end(), [](const CautionVerdict &a, const CautionVerdict &b) {
        return a.verdict != b.verdict ? a.verdict > b.verdict : a.rule < b.rule;
    });
}

CautionVerdict verdictOf(const CautionRule &rule, const std::string &condition, const std::optional<Place> &place)
{
    return {place, rule.actions, rule.verdict, rule.reason, rule.id, condition, rule.source};
}

// The rest of the tissue may be worked.
CautionVerdict sparingTheRest(CautionVerdict verdict)
{
    //: A stop at a part of a structure only. %1: the reason for the stop, sentences
    const QString reason =
        QCoreApplication::translate("Cautions", "Only a part lies there: work the rest, a hand's width away. %1");
    verdict.verdict = Verdict::Adapt;
    verdict.reason = reason.arg(QString::fromStdString(verdict.reason)).toStdString();
    return verdict;
}

} // namespace

Result<Done> checkConditions(const SafetyRules &rules, const Visit &visit, const std::string &file)
{
    for (std::size_t i = 0; i < visit.conditions.size(); ++i) {
        const Condition &condition = visit.conditions[i];
        const std::string place = file + "#/conditions/" + std::to_string(i);
        const ConditionKind *kind = rules.findCondition(condition.id);
        if (!kind)
            return Error{ErrorCode::UnknownId, place + "/condition", condition.id};
        if (kind->place == PlaceNeed::Required && condition.at.empty())
            return Error{ErrorCode::MissingField, place, "at"};
        if (kind->place == PlaceNeed::None && !condition.at.empty())
            return Error{ErrorCode::UnknownField, place, "at"};
    }
    return Done{};
}

Cautions::Cautions(const SafetyRules &rules, const Regions &regions) : m_items(rules.consents()), m_regions(regions)
{
    for (const Structure &s : regions.atlas().structures())
        if (s.caution) {
            m_areas.emplace(s.id, &s);
            for (const StructureId &beside : s.beside)
                m_areas.emplace(beside, &s);
        }
}

Result<Cautions> Cautions::of(const SafetyRules &rules, const Regions &regions, const Visit &visit, const std::string &file)
{
    if (const auto checked = checkConditions(rules, visit, file); !checked)
        return checked.error();
    if (const auto checked = checkWarnings(rules, visit, file); !checked)
        return checked.error();
    if (const auto checked = checkConsents(rules, visit, file); !checked)
        return checked.error();
    const Visit seen = withSuspected(rules, visit);
    Cautions cautions(rules, regions);
    ConsentVerdicts consents = consentVerdicts(rules.consents(), visit);
    cautions.m_everywhere = warningVerdicts(rules.signs(), visit);
    std::move(consents.everywhere.begin(), consents.everywhere.end(), std::back_inserter(cautions.m_everywhere));
    cautions.m_consents = std::move(consents.atPlaces);
    for (const Condition &condition : seen.conditions) {
        Case c{condition.id, {}};
        for (const Place &place : condition.at)
            c.at.emplace_back(place, regions.limbOf(place.structure, leastUnder, rules.limbRoots()));
        cautions.m_cases.push_back(std::move(c));
    }
    for (const CautionRule &rule : rules.rules())
        if (rule.conditions.empty()
            || std::any_of(seen.conditions.begin(), seen.conditions.end(),
                [&](const Condition &condition) { return content::isIn(rule.conditions, condition.id); }))
            cautions.m_rules.push_back(&rule);
    return cautions;
}

Cautions::Extent Cautions::extentAt(const Place &place, const Place &other) const
{
    const Atlas &atlas = m_regions.atlas();
    const StructureId &id = place.structure;
    if (id == other.structure && atlas.isSpinalSegment(id)) // left, right and midline move as one
        return Extent::Whole;
    if (!goTogether(place.side, other.side))
        return Extent::None;
    if (id == other.structure || isPartOf(atlas, id, other.structure) || isPartOf(atlas, other.structure, id)
        || isBeside(atlas, id, other.structure) || isBeside(atlas, other.structure, id) || isSegmentOf(atlas, id, other.structure)
        || isSegmentOf(atlas, other.structure, id))
        return Extent::Whole;
    if (const auto region = regionOf(atlas.at(other.structure)))
        return isUnder(m_regions, id, {*region}) ? Extent::Whole : Extent::None;
    if (m_regions.shareOn(id, other.structure) >= leastOverlap)
        return Extent::Whole;
    return m_regions.shareOn(other.structure, id) >= leastOverlap ? Extent::Part : Extent::None;
}

bool Cautions::concerns(const CautionRule &rule, const StructureId &id) const
{
    const Structure &structure = m_regions.atlas().at(id);
    return (rule.layers.empty() || content::isIn(rule.layers, structure.layer))
        && (rule.kinds.empty() || content::isIn(rule.kinds, structure.kind))
        && (rule.regions.empty() || isUnder(m_regions, id, rule.regions));
}

std::optional<Cautions::Cause> Cautions::causeOf(const CautionRule &rule, const Place &place) const
{
    if (!concerns(rule, place.structure))
        return std::nullopt;
    if (rule.conditions.empty())
        return Cause{};
    const auto extentOf = [&](const Case &c) {
        if (rule.where == Where::Everywhere || c.at.empty())
            return Extent::Whole;
        Extent most = Extent::None;
        for (const auto &[at, limb] : c.at)
            if (rule.where == Where::AtPlace)
                most = std::max(most, extentAt(place, at));
            else if (limb && place.side == at.side && m_regions.limbOf(place.structure, leastUnder) == limb)
                most = Extent::Whole;
        return most;
    };
    std::optional<Cause> part;
    for (const std::string &condition : rule.conditions)
        for (const Case &c : m_cases) {
            const Extent extent = c.condition == condition ? extentOf(c) : Extent::None;
            if (extent == Extent::Whole || (extent == Extent::Part && !rule.sparesTheRest))
                return Cause{condition};
            if (extent == Extent::Part && !part)
                part = Cause{condition, true};
        }
    return part;
}

CautionVerdict Cautions::verdictOf(const Structure &area, const Place &place) const
{
    QStringList runs;
    for (const StructureId &id : area.caution->runs)
        runs.append(QString::fromStdString(m_regions.atlas().at(id).names.english));
    std::string source;
    for (const std::string &id : area.sources)
        source += (source.empty() ? "" : " ") + m_regions.atlas().findSource(id)->citation;
    //: A caution area. %1: how to work there, sentences; %2: names of nerves, vessels and organs
    const QString reason = QCoreApplication::translate("Cautions", "%1 What lies here: %2.")
                               .arg(QString::fromStdString(area.caution->work), runs.join(QStringLiteral(", ")));
    return {place, {"sustained-pressure"}, Verdict::Adapt, reason.toStdString(), area.id.value, {}, source};
}

std::vector<CautionVerdict> Cautions::at(const Place &place) const
{
    std::vector<CautionVerdict> verdicts = m_everywhere;
    for (CautionVerdict &v : verdicts)
        v.place = place;
    for (const CautionRule *rule : m_rules)
        if (const auto cause = causeOf(*rule, place)) {
            CautionVerdict verdict = raphe::verdictOf(*rule, cause->condition, place);
            verdicts.push_back(cause->isPart ? sparingTheRest(std::move(verdict)) : std::move(verdict));
        }
    for (const ConsentVerdict &consent : m_consents)
        if (auto verdict = verdictAt(m_items, consent, m_regions, place))
            verdicts.push_back(std::move(*verdict));
    const auto [first, last] = m_areas.equal_range(place.structure);
    for (auto it = first; it != last; ++it)
        verdicts.push_back(verdictOf(*it->second, place));
    sort(verdicts);
    return verdicts;
}

std::vector<CautionVerdict> Cautions::general() const
{
    std::vector<CautionVerdict> verdicts = m_everywhere;
    for (const CautionRule *rule : m_rules) {
        if (!rule->regions.empty() || !rule->layers.empty() || !rule->kinds.empty())
            continue;
        for (const std::string &condition : rule->conditions) {
            const bool everywhere = std::any_of(m_cases.begin(), m_cases.end(),
                [&](const Case &c) { return c.condition == condition && (rule->where == Where::Everywhere || c.at.empty()); });
            if (everywhere) {
                verdicts.push_back(raphe::verdictOf(*rule, condition, std::nullopt));
                break;
            }
        }
    }
    sort(verdicts);
    return verdicts;
}

bool Cautions::isBarred(const Place &place) const
{
    if (lockAmong(m_everywhere))
        return true;
    const bool isRefused = std::any_of(m_consents.begin(), m_consents.end(), [&](const ConsentVerdict &consent) {
        const auto verdict = consent.no ? verdictAt(m_items, consent, m_regions, place) : std::nullopt;
        return verdict && verdict->stopsAll();
    });
    return isRefused || std::any_of(m_rules.begin(), m_rules.end(), [&](const CautionRule *rule) {
        if (rule->verdict != Verdict::Stop || !rule->actions.empty())
            return false;
        const auto cause = causeOf(*rule, place);
        return cause && !cause->isPart;
    });
}

std::optional<CautionVerdict> Cautions::stopOf(const Place &place, std::string_view action) const
{
    std::optional<CautionVerdict> stop;
    for (CautionVerdict &v : at(place)) {
        const bool names = std::find(v.actions.begin(), v.actions.end(), action) != v.actions.end();
        if (v.verdict != Verdict::Stop || !(names || v.concernsAll()))
            continue;
        if (!stop || (v.concernsAll() && !stop->concernsAll()))
            stop = std::move(v);
    }
    return stop;
}

} // namespace raphe
