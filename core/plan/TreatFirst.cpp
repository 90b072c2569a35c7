#include "core/plan/TreatFirst.h"

#include <QCoreApplication>

#include <algorithm>
#include <map>

namespace raphe {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("TreatFirst", text);
}

QString reasonFor(std::string_view term)
{
    if (term == "familiar")
        return tr(QT_TRANSLATE_NOOP("TreatFirst", "the patient knows this pain"));
    if (term == "tenderness")
        return tr(QT_TRANSLATE_NOOP("TreatFirst", "tender"));
    if (term == "restriction")
        return tr(QT_TRANSLATE_NOOP("TreatFirst", "restricted"));
    if (term == "linkage")
        return tr(QT_TRANSLATE_NOOP("TreatFirst", "tied to the other findings"));
    if (term == "joint first")
        return tr(QT_TRANSLATE_NOOP("TreatFirst", "a joint, before the muscles across it"));
    return tr(QT_TRANSLATE_NOOP("TreatFirst", "superficial, before what lies deeper"));
}

// One entry a place, the strongest of several spots.
std::map<Place, Finding> strongestByPlace(const std::vector<Finding> &findings)
{
    std::map<Place, Finding> out;
    for (const Finding &f : findings) {
        if (!f.isFound())
            continue;
        auto [it, fresh] = out.try_emplace(f.place, f);
        if (fresh)
            continue;
        it->second.tenderness = std::max(it->second.tenderness, f.tenderness);
        it->second.restriction = std::max(it->second.restriction, f.restriction);
        it->second.familiar = it->second.familiar || f.familiar;
    }
    return out;
}

bool muscleFoundAcross(const Atlas &atlas, const Place &joint, const std::map<Place, Finding> &found)
{
    return std::any_of(atlas.crossings().begin(), atlas.crossings().end(), [&](const Crossing &c) {
        if (c.joint != joint.structure)
            return false;
        return std::any_of(found.begin(), found.end(), [&](const auto &entry) {
            return entry.first.structure == c.muscle
                && (entry.first.side == joint.side || joint.side == Side::Midline || entry.first.side == Side::Midline);
        });
    });
}

} // namespace

std::vector<Suggestion> treatFirst(const Linkage &linkage, const Visit &visit, const Constants &constants)
{
    const Atlas &atlas = linkage.atlas();
    const Canonical c = canonical(visit);
    const auto found = strongestByPlace(c.visit.findings);

    // Reach of all the other findings at each one: the share that is not its own doing.
    std::map<Place, double> linked;
    double most = 0;
    for (const auto &[place, finding] : found) {
        std::vector<Finding> others;
        std::copy_if(c.visit.findings.begin(), c.visit.findings.end(), std::back_inserter(others),
            [&p = place](const Finding &f) { return f.place != p; });
        double reach = 0;
        if (std::any_of(others.begin(), others.end(), [](const Finding &f) { return f.isFound(); })) {
            const auto lifts = liftOf(linkage, others, constants);
            for (const std::size_t node : linkage.nodesOf(place))
                reach = std::max(reach, lifts[node]);
        }
        linked[place] = reach;
        most = std::max(most, reach);
    }

    std::vector<Suggestion> out;
    for (const auto &[place, f] : found) {
        const Structure &structure = atlas.at(place.structure);
        const bool tooTender = f.tenderness && f.tenderness->grade == Tenderness::highest;
        Suggestion s;
        s.place = place;
        const auto add = [&](const char *name, double value) {
            if (value > 0)
                s.terms.push_back({name, value});
        };
        add("familiar", f.familiar ? constants["treat-familiar"] : 0);
        add("tenderness",
            f.tenderness && !tooTender ? constants["treat-tenderness"] * f.tenderness->grade / (Tenderness::highest - 1) : 0);
        add("restriction", f.restriction ? constants["treat-restriction"] * f.restriction->grade / Restriction::highest : 0);
        add("linkage", most > 0 ? constants["treat-linkage"] * linked[place] / most : 0);
        add("joint first",
            structure.kind == Kind::Joint && muscleFoundAcross(atlas, place, found) ? constants["treat-joint-first"] : 0);
        add("superficial first", structure.layer <= Layer::DeepFascia ? constants["treat-superficial-first"] : 0);
        for (const Term &term : s.terms)
            s.score += term.value;
        const auto largest =
            std::max_element(s.terms.begin(), s.terms.end(), [](const Term &a, const Term &b) { return a.value < b.value; });
        QString why = largest == s.terms.end() ? tr(QT_TRANSLATE_NOOP("TreatFirst", "noted")) : reasonFor(largest->name);
        if (tooTender)
            why = tr(QT_TRANSLATE_NOOP("TreatFirst", "caution: withdraws from touch; find out why before working here"))
                + QStringLiteral("; ") + why;
        s.why = why.toStdString();
        out.push_back(std::move(s));
    }
    rankAndCut(out);
    if (c.isMirrored)
        mirrorAll(out);
    return out;
}

} // namespace raphe
