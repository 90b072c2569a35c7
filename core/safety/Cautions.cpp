#include "core/safety/Cautions.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace raphe {

namespace {

// Shares of a shape. Our choices, no source: below 0.15 an overlap in the drawing may be the pen's (as for the reasoning);
// a structure of which 0.3 lies under a region is hardly reached without touching that region's skin.
constexpr double leastOverlap = 0.5;
constexpr double leastUnder = 0.3;

template <class T> bool isIn(const std::vector<T> &list, const T &item)
{
    return std::find(list.begin(), list.end(), item) != list.end();
}

// What holds on one side of the body concerns the midline too, and the reverse.
bool goTogether(Side a, Side b)
{
    return a == b || a == Side::Midline || b == Side::Midline;
}

// The surface region that a structure is, or is the superficial fascia of.
std::optional<StructureId> regionOf(const Structure &structure)
{
    if (structure.kind == Kind::SurfaceRegion)
        return structure.id;
    if (structure.kind == Kind::SuperficialFascia)
        return StructureId{structure.id.value.substr(std::string_view("sf-").size())};
    return std::nullopt;
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

} // namespace

// A place that is asked about, and what the drawing says of it, found out when a rule wants to know.
class Cautions::Here {
public:
    Here(const Cautions &cautions, const Place &place) : m_cautions(cautions), m_place(place) { }

    bool isUnder(const std::vector<StructureId> &regions)
    {
        if (!m_regions)
            m_regions = regionsOver(m_cautions.m_atlas, m_cautions.m_body, m_place.structure);
        double share = 0;
        for (const StructureId &region : regions)
            if (const auto it = m_regions->find(region); it != m_regions->end())
                share += it->second;
        if (share >= leastUnder || share <= 0) // where nothing lies, the mark does not stand
            return share > 0;
        if (!m_mark)
            m_mark = regionAtMark(m_cautions.m_atlas, m_cautions.m_body, m_place.structure);
        return *m_mark && isIn(regions, **m_mark);
    }

    bool isAt(const Place &other)
    {
        if (!goTogether(m_place.side, other.side))
            return false;
        const Atlas &atlas = m_cautions.m_atlas;
        const StructureId &id = m_place.structure;
        if (id == other.structure || isPartOf(atlas, id, other.structure) || isPartOf(atlas, other.structure, id)
            || isBeside(atlas, id, other.structure) || isBeside(atlas, other.structure, id))
            return true;
        if (const auto region = regionOf(atlas.at(other.structure)))
            return isUnder({*region});
        return overlapOf(atlas, m_cautions.m_body, id, other.structure) >= leastOverlap;
    }

    bool isOnLimb(Side side, const std::optional<Limb> &limb)
    {
        if (!limb || m_place.side != side)
            return false;
        if (!m_limb)
            m_limb = m_cautions.m_limbs.limbOf(m_cautions.m_atlas, m_cautions.m_body, m_place.structure, leastUnder);
        return *m_limb == limb;
    }

private:
    const Cautions &m_cautions;
    const Place &m_place;
    std::optional<std::map<StructureId, double>> m_regions;
    std::optional<std::optional<StructureId>> m_mark;
    std::optional<std::optional<Limb>> m_limb;
};

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

Cautions::Cautions(const Atlas &atlas, const Body &body, Limbs limbs) : m_atlas(atlas), m_body(body), m_limbs(std::move(limbs))
{
    for (const Structure &s : atlas.structures())
        if (s.caution) {
            m_areas.emplace(s.id, &s);
            for (const StructureId &beside : s.beside)
                m_areas.emplace(beside, &s);
        }
}

Result<Cautions> Cautions::of(
    const SafetyRules &rules, const Atlas &atlas, const Body &body, const Visit &visit, const std::string &file)
{
    if (const auto checked = checkConditions(rules, visit, file); !checked)
        return checked.error();
    auto limbs = readEmbeddedLimbs(atlas, body);
    if (!limbs)
        return limbs.error();
    Cautions cautions(atlas, body, std::move(limbs).value());
    for (const Condition &condition : visit.conditions) {
        Case c{condition.id, {}};
        for (const Place &place : condition.at)
            c.at.emplace_back(place, cautions.m_limbs.limbOf(atlas, body, place.structure, leastUnder));
        cautions.m_cases.push_back(std::move(c));
    }
    for (const CautionRule &rule : rules.rules())
        if (rule.conditions.empty()
            || std::any_of(visit.conditions.begin(), visit.conditions.end(),
                [&](const Condition &condition) { return isIn(rule.conditions, condition.id); }))
            cautions.m_rules.push_back(rule);
    return cautions;
}

// The first of the rule's conditions that the patient has here.
const Cautions::Case *Cautions::causeOf(const CautionRule &rule, Here &here) const
{
    for (const std::string &condition : rule.conditions)
        for (const Case &c : m_cases) {
            if (c.condition != condition)
                continue;
            if (rule.where == Where::Everywhere || c.at.empty())
                return &c;
            for (const auto &[place, limb] : c.at)
                if (rule.where == Where::AtPlace ? here.isAt(place) : here.isOnLimb(place.side, limb))
                    return &c;
        }
    return nullptr;
}

bool Cautions::concerns(const CautionRule &rule, const Structure &structure, Here &here) const
{
    return (rule.layers.empty() || isIn(rule.layers, structure.layer)) && (rule.kinds.empty() || isIn(rule.kinds, structure.kind))
        && (rule.regions.empty() || here.isUnder(rule.regions));
}

CautionVerdict Cautions::verdictOf(const Structure &area, const Place &place) const
{
    QStringList runs;
    for (const StructureId &id : area.caution->runs)
        runs.append(QString::fromStdString(m_atlas.at(id).names.english));
    std::string source;
    for (const std::string &id : area.sources)
        source += (source.empty() ? "" : " ") + m_atlas.findSource(id)->citation;
    //: A caution area. %1: how to work there, sentences; %2: names of nerves, vessels and organs
    const QString reason = QCoreApplication::translate("Cautions", "%1 What lies here: %2.")
                               .arg(QString::fromStdString(area.caution->work), runs.join(QStringLiteral(", ")));
    return {place, {"sustained-pressure"}, Verdict::Adapt, reason.toStdString(), area.id.value, {}, source};
}

std::vector<CautionVerdict> Cautions::at(const Place &place) const
{
    const Structure &structure = m_atlas.at(place.structure);
    Here here(*this, place);
    std::vector<CautionVerdict> verdicts;
    for (const CautionRule &rule : m_rules) {
        if (!concerns(rule, structure, here))
            continue;
        if (rule.conditions.empty())
            verdicts.push_back(raphe::verdictOf(rule, {}, place));
        else if (const Case *cause = causeOf(rule, here))
            verdicts.push_back(raphe::verdictOf(rule, cause->condition, place));
    }
    const auto [first, last] = m_areas.equal_range(place.structure);
    for (auto it = first; it != last; ++it)
        verdicts.push_back(verdictOf(*it->second, place));
    sort(verdicts);
    return verdicts;
}

std::vector<CautionVerdict> Cautions::general() const
{
    std::vector<CautionVerdict> verdicts;
    for (const CautionRule &rule : m_rules) {
        if (!rule.regions.empty() || !rule.layers.empty() || !rule.kinds.empty())
            continue;
        for (const std::string &condition : rule.conditions) {
            const bool everywhere = std::any_of(m_cases.begin(), m_cases.end(),
                [&](const Case &c) { return c.condition == condition && (rule.where == Where::Everywhere || c.at.empty()); });
            if (everywhere) {
                verdicts.push_back(raphe::verdictOf(rule, condition, std::nullopt));
                break;
            }
        }
    }
    sort(verdicts);
    return verdicts;
}

bool Cautions::isBarred(const Place &place) const
{
    const std::vector<CautionVerdict> verdicts = at(place);
    return std::any_of(
        verdicts.begin(), verdicts.end(), [](const CautionVerdict &v) { return v.verdict == Verdict::Stop && v.concernsAll(); });
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
