#include "core/plan/Treat.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <map>

namespace raphe {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("Treat", text);
}

QString reasonFor(std::string_view term)
{
    if (term == "complaint")
        return tr(QT_TRANSLATE_NOOP("Treat", "where it hurts"));
    if (term == "familiar")
        return tr(QT_TRANSLATE_NOOP("Treat", "the patient knows this pain"));
    if (term == "tenderness")
        return tr(QT_TRANSLATE_NOOP("Treat", "tender"));
    if (term == "restriction")
        return tr(QT_TRANSLATE_NOOP("Treat", "restricted"));
    if (term == "linkage")
        return tr(QT_TRANSLATE_NOOP("Treat", "tied to the other findings"));
    if (term == "joint first")
        return tr(QT_TRANSLATE_NOOP("Treat", "a joint, before the muscles across it"));
    return tr(QT_TRANSLATE_NOOP("Treat", "superficial, before what lies deeper"));
}

// All that adds to the score, the heaviest first; what is too tender begins with that.
std::string inWords(std::vector<Term> terms, bool tooTender)
{
    std::stable_sort(terms.begin(), terms.end(), [](const Term &a, const Term &b) { return a.value > b.value; });
    QStringList reasons;
    for (const Term &term : terms)
        reasons << reasonFor(term.name);
    if (reasons.isEmpty())
        reasons << tr(QT_TRANSLATE_NOOP("Treat", "noted"));
    if (tooTender)
        reasons.prepend(tr(QT_TRANSLATE_NOOP("Treat", "caution: withdraws from touch, find out why before working here")));
    QString sentence = reasons.join(QStringLiteral("; ")) + QLatin1Char('.');
    sentence[0] = sentence[0].toUpper();
    return sentence.toStdString();
}

// One entry a place, the strongest of several spots.
std::map<Place, Finding> strongestByPlace(const Atlas &atlas, const std::vector<Finding> &findings)
{
    std::map<Place, Finding> out;
    for (const Finding &f : findings) {
        if (!f.isFound() || !atlas.find(f.place.structure))
            continue;
        auto [it, fresh] = out.try_emplace(f.place, f);
        if (fresh)
            continue;
        if (f.tendernessGrade() > it->second.tendernessGrade()) {
            it->second.tenderness = f.tenderness;
            it->second.sore = f.sore;
        }
        if (f.restrictionGrade() > it->second.restrictionGrade()) {
            it->second.restriction = f.restriction;
            it->second.stiff = f.stiff;
        }
        it->second.familiar = it->second.familiar || f.familiar;
        if (f.play)
            it->second.play = f.play;
    }
    return out;
}

bool muscleFoundAcross(const Atlas &atlas, const Place &joint, const std::map<Place, Finding> &found)
{
    return std::any_of(atlas.crossings().begin(), atlas.crossings().end(), [&](const Crossing &c) {
        if (c.joint != joint.structure)
            return false;
        return std::any_of(found.begin(), found.end(),
            [&](const auto &entry) { return entry.first.structure == c.muscle && goTogether(entry.first.side, joint.side); });
    });
}

} // namespace

namespace {

constexpr std::string_view mobilising = "mobilising";
constexpr std::string_view thrust = "thrust";

bool isAbout(const CautionVerdict &verdict, std::string_view action)
{
    return std::find(verdict.actions.begin(), verdict.actions.end(), action) != verdict.actions.end();
}

// What stops all work on such a tissue: everything, or mobilising a joint, or both pressing and lengthening what is soft.
const CautionVerdict *stopOf(const std::vector<CautionVerdict> &verdicts, Kind kind)
{
    const auto it = std::find_if(verdicts.begin(), verdicts.end(), [&](const CautionVerdict &v) {
        const bool leavesNothing =
            kind == Kind::Joint ? isAbout(v, mobilising) : isAbout(v, "sustained-pressure") && isAbout(v, "stretching");
        return v.verdict == Verdict::Stop && (v.concernsAll() || leavesNothing);
    });
    return it == verdicts.end() ? nullptr : &*it;
}

// Why a joint's play forbids mobilising it; empty when it does not.
QString vetoOf(const std::optional<JointPlay> &play)
{
    if (!play)
        return {};
    if (play->grade == 0)
        return tr(QT_TRANSLATE_NOOP("Treat", "Fused: not to be mobilised."));
    if (play->grade > JointPlay::normal)
        return tr(QT_TRANSLATE_NOOP("Treat", "Too much play: not to be mobilised; the muscles around it may be holding it."));
    return {};
}

// Why nothing within the practitioner's scope is for such a structure; empty when something is. A joint is mobilised; what is
// outside is given to somebody who may.
QString outOfScope(const std::optional<std::set<std::string>> &techniques, Kind kind)
{
    if (!techniques)
        return {};
    if (kind == Kind::Joint)
        return techniques->contains(std::string(mobilising))
            ? QString()
            : tr(QT_TRANSLATE_NOOP("Treat", "Mobilising a joint is outside your scope of practice."));
    const bool any = std::any_of(
        techniques->begin(), techniques->end(), [](const std::string &each) { return each != mobilising && each != thrust; });
    return any ? QString() : tr(QT_TRANSLATE_NOOP("Treat", "Work on soft tissue is outside your scope of practice."));
}

} // namespace

Treatment treatFirst(const Reasoner &reasoner, const Visit &visit, const Preferences &preferences, const Verdicts &verdicts)
{
    const Atlas &atlas = reasoner.linkage().atlas();
    const Constants &constants = reasoner.constants();
    const Canonical c = canonical(visit);
    const auto found = strongestByPlace(atlas, c.visit.findings);

    std::vector<Place> places;
    places.reserve(found.size());
    for (const auto &[place, finding] : found)
        places.push_back(place);
    std::vector<double> pulls = reasoner.pullOfOthers(c.visit, places);
    if (c.isItsOwnImage) // rounding must not tell left from right
        for (std::size_t i = 0; i < places.size(); ++i)
            if (const auto image = std::lower_bound(places.begin(), places.end(), mirrored(places[i])) - places.begin();
                static_cast<std::size_t>(image) > i)
                pulls[i] = pulls[static_cast<std::size_t>(image)] = (pulls[i] + pulls[static_cast<std::size_t>(image)]) / 2;
    const double most = pulls.empty() ? 0 : *std::max_element(pulls.begin(), pulls.end());

    const std::vector<double> near = reasoner.nearComplaint(c.visit, places);
    Treatment out;
    for (std::size_t i = 0; i < places.size(); ++i) {
        const Place &place = places[i];
        const Finding &f = found.at(place);
        const double pull = pulls[i];
        const Structure &structure = atlas.at(place.structure);
        const bool tooTender = f.tenderness && f.tenderness->grade == Tenderness::highest;
        Suggestion s(place);
        if (verdicts)
            s.cautions = verdicts(c.isMirrored ? mirrored(place) : place);
        const auto add = [&](const char *name, double value) {
            if (value > 0)
                s.terms.push_back({name, value, {}});
        };
        QString veto = structure.kind == Kind::Joint ? vetoOf(f.play) : QString();
        if (veto.isEmpty())
            veto = outOfScope(preferences.techniques, structure.kind);
        if (const CautionVerdict *stop = stopOf(s.cautions, structure.kind); stop || !veto.isEmpty()) {
            s.why = stop ? stop->reason : veto.toStdString();
            out.leave.push_back(std::move(s));
            continue;
        }
        if (preferences.complaintFirst)
            add("complaint", constants["treat-complaint"] * near[i]);
        add("familiar", f.familiar && !tooTender ? constants["treat-familiar"] : 0);
        add("tenderness", tooTender ? 0 : constants["treat-tenderness"] * f.tendernessGrade() / (Tenderness::highest - 1));
        add("restriction", constants["treat-restriction"] * f.restrictionGrade() / Restriction::highest);
        add("linkage", most > 0 ? constants["treat-linkage"] * pull / most : 0);
        if (preferences.jointFirst)
            add("joint first",
                structure.kind == Kind::Joint && muscleFoundAcross(atlas, place, found) ? constants["treat-joint-first"] : 0);
        add("superficial first", structure.layer <= Layer::DeepFascia ? constants["treat-superficial-first"] : 0);
        for (const Term &term : s.terms)
            s.score += term.value;
        s.why = inWords(s.terms, tooTender);
        out.treat.push_back(std::move(s));
    }
    rankAndCut(out.treat);
    for (Suggestion &s : out.leave)
        s.rank = 1; // none before another, and none left out
    if (c.isMirrored) {
        mirrorAll(out.treat);
        mirrorAll(out.leave);
    }
    return out;
}

} // namespace raphe
