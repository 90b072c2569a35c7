// What was done, what to do at home, what to expect, and when to call whom.
#include "core/document/MapSections.h"

#include <QtGlobal>

#include <algorithm>

namespace raphe {

namespace {

constexpr const char *adviceContext = "home-advice";

MapWord adviceOf(const HomeAdvice &library, const GivenAdvice &given, const Phrases &phrases)
{
    const HomeAdviceItem *item = library.find(given.item);
    if (item && given.title == item->title && given.text == item->text + "\n" + item->stop)
        return {phrases.say(adviceContext, item->title),
            phrases.say(adviceContext, item->text) + " " + phrases.say(adviceContext, item->stop)};
    return {given.title, given.text, true};
}

} // namespace

int numberOf(const Visit &visit, const Place &place, std::optional<Spot> spot)
{
    const auto at = [&](bool isSameSpot) {
        const auto it = std::find_if(visit.findings.begin(), visit.findings.end(),
            [&](const Finding &f) { return f.place == place && (!isSameSpot || f.spot == spot); });
        return it == visit.findings.end() ? 0 : static_cast<int>(it - visit.findings.begin()) + 1;
    };
    return at(true) > 0 ? at(true) : at(false);
}

MapSection whatWeDid(const MapSource &source, const Visit &visit, const Phrases &phrases)
{
    MapSection out{mapText(phrases, QT_TRANSLATE_NOOP("VisitMap", "What we did")), {}};
    for (const TreatmentStep &step : visit.treatment.steps) {
        if (step.done == StepDone::Skipped || !step.hasBegun())
            continue;
        const Technique *technique = source.techniques.find(step.technique);
        std::string work = !technique  ? std::string()
            : technique->plain.empty() ? technique->name
                                       : phrases.say("techniques", technique->plain);
        work += (work.empty() ? "" : ", ") + plainTime(phrases, step.seconds) + ".";
        const int number = numberOf(visit, step.place);
        out.words.push_back({number > 0 ? std::string() : begun(plainPlace(phrases, source.atlas, step.place)) + ":", begun(work),
            false, number});
    }
    if (!visit.treatment.events.empty())
        out.words.push_back(
            {{}, mapText(phrases, QT_TRANSLATE_NOOP("VisitMap", "You did not feel well at one point. We wrote it down."))});
    return out;
}

MapSection whatToDoAtHome(const MapSource &source, const Visit &visit, const Phrases &phrases)
{
    MapSection out{mapText(phrases, QT_TRANSLATE_NOOP("VisitMap", "What to do at home")), {}};
    for (const GivenAdvice &given : visit.closing.advice)
        out.words.push_back(adviceOf(source.advice, given, phrases));
    if (!out.words.empty()) {
        std::string always;
        for (const std::string &line : source.advice.always)
            always += (always.empty() ? "" : " ") + phrases.say(adviceContext, line);
        out.words.push_back({{}, always});
    }
    return out;
}

MapSection whatToExpect(const MapSource &source, const Visit &visit, const Phrases &phrases)
{
    MapSection out{mapText(phrases, QT_TRANSLATE_NOOP("VisitMap", "What to expect")), {}};
    for (const std::string &line : expectedAfter(source.advice, visit.treatment, source.techniques))
        out.words.push_back({{}, phrases.say(adviceContext, line)});
    return out;
}

MapSection whenToCall(const MapSource &source, const Phrases &phrases)
{
    MapSection out{mapText(phrases, QT_TRANSLATE_NOOP("VisitMap", "Call or see a doctor if")), {}};
    const auto lead = [&](CallWhom whom) {
        switch (whom) {
        case CallWhom::Emergency: return mapText(phrases, QT_TRANSLATE_NOOP("VisitMap", "Call the emergency number at once if:"));
        case CallWhom::DoctorToday: return mapText(phrases, QT_TRANSLATE_NOOP("VisitMap", "See a doctor today if:"));
        case CallWhom::Us: break;
        }
        return mapText(phrases, QT_TRANSLATE_NOOP("VisitMap", "Call us if:"));
    };
    std::optional<CallWhom> last;
    for (const CallLine &call : source.advice.calls) {
        if (last != call.whom) {
            out.words.push_back({lead(call.whom), {}});
            out.words.emplace_back();
        }
        std::string &text = out.words.back().text;
        text += (text.empty() ? "" : " ") + phrases.say(adviceContext, call.text);
        last = call.whom;
    }
    return out;
}

} // namespace raphe
