#include "core/document/VisitMap.h"

#include "core/document/MapSections.h"
#include "core/safety/Warnings.h"

#include <QtGlobal>

#include <algorithm>
#include <tuple>

namespace raphe {

namespace {

// An emergency is never settled at the visit; another sign is, once the treating team knows of it or it was explained.
bool isForOthers(const WarningSign &sign, const WarningAnswer &answer)
{
    return sign.level == WarningLevel::EmergencyNow || !answer.decided
        || (*answer.decided != Decision::InCare && *answer.decided != Decision::Explained);
}

std::string howSoon(WarningLevel level, const Phrases &phrases)
{
    switch (level) {
    case WarningLevel::EmergencyNow:
        return mapText(phrases, QT_TRANSLATE_NOOP("VisitMap", "Get medical help at once. We did not go on with this visit."));
    case WarningLevel::SameDay: return mapText(phrases, QT_TRANSLATE_NOOP("VisitMap", "Let a doctor see this today."));
    case WarningLevel::BeforeTreating:
        return mapText(phrases, QT_TRANSLATE_NOOP("VisitMap", "Let a doctor see this before we treat it here."));
    }
    return {};
}

std::vector<std::string> warningLines(const WarningSigns &signs, const Visit &visit, const Phrases &phrases)
{
    std::vector<std::pair<const WarningSign *, std::string>> lines;
    for (const WarningAnswer &answer : visit.warnings) {
        const WarningSign *sign = answer.isThere ? signs.find(answer.sign) : nullptr;
        if (!sign || sign->alone || answer.isMoved || !isForOthers(*sign, answer))
            continue;
        const std::string what = sign->byPractitioner
            ? mapText(
                phrases, QT_TRANSLATE_NOOP("VisitMap", "We saw: {sign}."), {{"sign", phrases.say("warning-signs", sign->name)}})
            : mapText(phrases, QT_TRANSLATE_NOOP("VisitMap", "We asked: '{question}' You said yes."),
                {{"question", phrases.say("warning-signs", sign->ask)}});
        lines.emplace_back(sign, howSoon(sign->level, phrases) + " " + what);
    }
    std::stable_sort(lines.begin(), lines.end(), [](const auto &a, const auto &b) { return a.first->level > b.first->level; });
    std::vector<std::string> out;
    out.reserve(lines.size());
    for (auto &[sign, line] : lines)
        out.push_back(std::move(line));
    return out;
}

MapMark markOf(const MapSource &source, const Finding &f, int number)
{
    return {number, markKindOf(f), std::max(f.tendernessGrade(), f.restrictionGrade()), f.familiar, f.place,
        markPointOnPage(source.atlas, source.body, f.place, f.spot, f.at)};
}

MapLabels labelsOf(const Phrases &phrases)
{
    const auto text = [&](const char *english) { return mapText(phrases, english); };
    return {text(QT_TRANSLATE_NOOP("VisitMap", "Front")), text(QT_TRANSLATE_NOOP("VisitMap", "Back")),
        text(QT_TRANSLATE_NOOP("VisitMap", "Before")), text(QT_TRANSLATE_NOOP("VisitMap", "Now: what we felt again")),
        text(QT_TRANSLATE_NOOP("VisitMap", "left")), text(QT_TRANSLATE_NOOP("VisitMap", "right")),
        {{MarkKind::Tender, text(QT_TRANSLATE_NOOP("VisitMap", "sore"))},
            {MarkKind::Restricted, text(QT_TRANSLATE_NOOP("VisitMap", "moves less"))},
            {MarkKind::TenderAndRestricted, text(QT_TRANSLATE_NOOP("VisitMap", "sore and moves less"))},
            {MarkKind::Noted, text(QT_TRANSLATE_NOOP("VisitMap", "noted"))},
            {MarkKind::Clear, text(QT_TRANSLATE_NOOP("VisitMap", "checked, nothing found"))},
            {MarkKind::Unable, text(QT_TRANSLATE_NOOP("VisitMap", "not checked today"))}},
        text(QT_TRANSLATE_NOOP("VisitMap", "ring: the pain you know")),
        text(QT_TRANSLATE_NOOP("VisitMap", "page {page} of {pages}"))};
}

std::string cautionsOf(const Visit &visit, const Phrases &phrases)
{
    std::string cautions;
    for (const std::string &caution : visit.cautions)
        cautions += (cautions.empty() ? "" : "; ") + caution;
    return cautions.empty()
        ? mapText(
            phrases, QT_TRANSLATE_NOOP("VisitMap", "No cautions were told. Let us know if your health or medicines change."))
        : mapText(phrases, QT_TRANSLATE_NOOP("VisitMap", "We take care because of: {cautions}"), {{"cautions", cautions}});
}

} // namespace

VisitMap visitMap(const MapSource &source, const Visit &visit, const Phrases &phrases)
{
    VisitMap map;
    map.language = phrases.language();
    map.title = mapText(phrases, QT_TRANSLATE_NOOP("VisitMap", "Your visit"));
    map.patient = visit.patient ? visit.patient->name : std::string{};
    map.date = phrases.longDate(visit.date);
    map.practitioner = visit.practitioner;
    if (!visit.complaint().empty())
        map.complaint = mapText(phrases, QT_TRANSLATE_NOOP("VisitMap", "In your words: {words}"), {{"words", visit.complaint()}});
    map.warnings = warningLines(source.rules.signs(), visit, phrases);
    map.foundTitle = mapText(phrases, QT_TRANSLATE_NOOP("VisitMap", "What we found"));
    int number = 0;
    for (const Finding &f : visit.findings) {
        ++number;
        map.marks.push_back(markOf(source, f, number));
        map.lines.push_back({number, begun(plainPlace(phrases, source.atlas, f.place)), findingInPlainWords(phrases, f)});
        map.names.push_back(source.atlas.plainName(f.place.structure, phrases.code()));
        for (const Finding &again : visit.retested.findings)
            if (std::tie(again.place, again.spot, again.at) == std::tie(f.place, f.spot, f.at))
                map.now.push_back(markOf(source, again, number));
    }
    for (const TreatmentStep &step : visit.treatment.steps)
        map.names.push_back(source.atlas.plainName(step.place.structure, phrases.code()));
    for (MapSection section : {whatWeDid(source, visit, phrases), whatChanged(source, visit, phrases),
             whatToDoAtHome(source, visit, phrases), whatToExpect(source, visit, phrases), whenToCall(source, phrases)})
        if (!section.words.empty())
            map.sections.push_back(std::move(section));
    map.cautions = cautionsOf(visit, phrases);
    map.legal = mapText(phrases,
        QT_TRANSLATE_NOOP("VisitMap",
            "This page shows where hands found something. It is not a diagnosis. It assists a trained practitioner, who follows "
            "local law, scope of practice and licensed care. If things get worse or new signs appear, seek medical help."));
    map.labels = labelsOf(phrases);
    return map;
}

} // namespace raphe
