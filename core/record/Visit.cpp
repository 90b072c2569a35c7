// Mirroring of findings and visits, and what counts as a date. Plain functions of plain values; nothing fails.
#include "core/record/Visit.h"

#include <algorithm>
#include <chrono>

namespace raphe {

bool isIsoDate(std::string_view text)
{
    constexpr std::string_view pattern = "dddd-dd-dd";
    const bool shaped = std::equal(text.begin(), text.end(), pattern.begin(), pattern.end(),
        [](char c, char p) { return p == 'd' ? c >= '0' && c <= '9' : c == p; });
    if (!shaped)
        return false;
    const auto number = [text](std::size_t from, std::size_t count) {
        int value = 0;
        for (const char c : text.substr(from, count))
            value = value * 10 + (c - '0');
        return value;
    };
    return std::chrono::year_month_day(std::chrono::year(number(0, 4)), std::chrono::month(static_cast<unsigned>(number(5, 2))),
        std::chrono::day(static_cast<unsigned>(number(8, 2))))
        .ok();
}

// `at` is a structure without a side and the words of a note are the practitioner's own: both stay.
Finding mirrored(Finding finding)
{
    finding.place = mirrored(finding.place);
    for (Place &place : finding.refersTo)
        place = mirrored(place);
    return finding;
}

Finding saidBeside(Finding before, const Finding &now)
{
    if (now.isUnable())
        return now;
    Finding out = std::move(before);
    out.unable.reset();
    if (now.tenderness || now.sore || now.clear.tenderness) {
        out.tenderness = now.tenderness;
        out.sore = now.sore;
        out.clear.tenderness = now.clear.tenderness;
        out.familiar = out.familiar && !now.clear.tenderness;
    }
    if (now.restriction || now.stiff || now.clear.motion) {
        out.restriction = now.restriction;
        out.stiff = now.stiff;
    }
    if (now.play || now.clear.motion)
        out.play = now.play;
    if (now.endFeel)
        out.endFeel = now.endFeel;
    if (now.saysOfMotion()) { // of what was felt now
        out.clear.motion = now.clear.motion || (out.clear.motion && now.restrictionGrade() == 0 && !now.play);
        out.certain = now.certain;
        out.afterComparing = now.afterComparing;
    }
    out.familiar = out.familiar || now.familiar;
    out.clear.tenderness = out.clear.tenderness && !now.familiar; // a pain that is known is none of a clear place
    for (const std::string &word : now.texture)
        if (std::find(out.texture.begin(), out.texture.end(), word) == out.texture.end())
            out.texture.push_back(word);
    for (const Place &place : now.refersTo)
        if (std::find(out.refersTo.begin(), out.refersTo.end(), place) == out.refersTo.end())
            out.refersTo.push_back(place);
    if (!now.note.empty())
        out.note = now.note;
    return out;
}

Measure saidBeside(Measure before, const Measure &now)
{
    Measure out = std::move(before);
    if (now.value) {
        out.value = now.value;
        out.device = now.device;
    }
    if (now.painFrom)
        out.painFrom = now.painFrom;
    out.hurts = out.hurts || now.hurts;
    out.familiar = out.familiar || now.familiar;
    if (!now.note.empty())
        out.note = now.note;
    return out;
}

// What is written in words, as in letters, stays as it is.
Visit mirrored(Visit visit)
{
    for (Finding &finding : visit.findings)
        finding = mirrored(std::move(finding));
    for (Measure &measure : visit.measures)
        measure.side = mirrored(measure.side);
    for (TestResult &result : visit.tests)
        result.side = mirrored(result.side);
    if (visit.retest)
        visit.retest->side = mirrored(visit.retest->side);
    for (Moment &moment : visit.timeline)
        moment.side = mirrored(moment.side);
    for (Place &place : visit.complaintAt)
        place = mirrored(place);
    for (PainPatch &patch : visit.pain)
        patch = mirrored(std::move(patch));
    for (Condition &condition : visit.conditions)
        for (Place &place : condition.at)
            place = mirrored(place);
    for (WarningAnswer &answer : visit.warnings)
        for (Place &place : answer.at)
            place = mirrored(place);
    for (Judgement &judgement : visit.judgements)
        judgement.place = mirrored(judgement.place);
    visit.plan = mirrored(visit.plan);
    visit.treatment = mirrored(std::move(visit.treatment));
    for (Finding &finding : visit.retested.findings)
        finding = mirrored(std::move(finding));
    for (Measure &measure : visit.retested.measures)
        measure.side = mirrored(measure.side);
    for (TestResult &result : visit.retested.tests)
        result.side = mirrored(result.side);
    return visit;
}

} // namespace raphe
