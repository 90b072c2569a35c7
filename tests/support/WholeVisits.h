// Random visits with something in every field that the visit file has, over the content that is built into the program: what
// readVisit takes, and what the checks of conditions, warning signs, movements and tests take too. The same on every platform.
#pragma once

#include "core/document/Deidentified.h"
#include "core/language/WordList.h"
#include "tests/core/examination/Exam.h"
#include "tests/support/Content.h"

#include <algorithm>
#include <array>
#include <cstdio>
#include <functional>
#include <optional>
#include <random>
#include <set>
#include <string>
#include <tuple>
#include <utility>
#include <vector>

namespace raphe::test {

/// What is built into the program, for taking de-identified copies.
inline const KnownContent &wholeContent()
{
    static const Techniques techniques = readEmbeddedTechniques(safetyRules()).value();
    static const HomeAdvice advice = readEmbeddedHomeAdvice(safetyRules()).value();
    static const std::vector<std::string> textures = readEmbeddedWordList("en", atlas()).value().textures;
    static const KnownContent content{atlas(), safetyRules(), examination(), techniques, advice, textures};
    return content;
}

class WholeVisits {
public:
    using Words = std::function<std::string()>;
    using Id = std::function<std::string(const std::string &)>;

    explicit WholeVisits(unsigned seed) : m_engine(seed) { }

    /// What stands wherever somebody wrote in their own words: never empty. Else words that are hard to write and to read.
    void setWords(Words words) { m_words = std::move(words); }
    /// What stands for an id that is none of the atlas. Else the id itself, one of the program's.
    void setIds(Id id) { m_id = std::move(id); }

    /// Dates are of this year and the 49 after it.
    void setFirstYear(int year) { m_firstYear = year; }

    /// What may be left out is there half of the time.
    Visit next() { return make(false); }
    /// Something in every field that can stand beside the others.
    Visit whole() { return make(true); }

    int below(int limit) { return static_cast<int>(m_engine() % static_cast<unsigned>(limit)); }
    std::string date()
    {
        std::array<char, 16> out{};
        std::snprintf(out.data(), out.size(), "%04d-%02d-%02d", m_firstYear + below(50), 1 + below(12), 1 + below(28));
        return out.data();
    }

private:
    bool chance() { return m_isWhole || below(2) == 0; }
    // How many there are of something: more than one of each in a whole visit.
    int some(int most) { return m_isWhole ? most : below(most + 1); }
    std::string words()
    {
        if (m_words)
            return m_words();
        static const std::vector<std::string> samples{"pain", "größer", "\"quoted\" \\ back", "two\nlines\ttab", "𝄞 é",
            "\x01\x7f", "</p>", "=1+1", "'=2", "'", "-3", "@home", "\rreturn", "a, b; c", "\r\n", "¡vale!", "腰が痛い", "+49 555",
            " "};
        return of(samples) + (below(3) == 0 ? " " + of(samples) : "");
    }
    std::string maybe() { return chance() ? words() : std::string(); }
    std::string maybeDate() { return chance() ? date() : std::string(); }
    std::string time()
    {
        std::array<char, 16> out{};
        std::snprintf(out.data(), out.size(), "%02d:%02d:%02d", below(24), below(60), below(60));
        return out.data();
    }
    // Not only numbers with a short way to write them.
    double number(double low, double high) { return std::min(high, low + (high - low) * (below(1 << 30) / double{1 << 30})); }
    template <class T> const T &of(const std::vector<T> &list)
    {
        return list[static_cast<std::size_t>(below(static_cast<int>(list.size())))];
    }
    template <class E, std::size_t N> E word(const WordTable<E, N> &table)
    {
        return table[static_cast<std::size_t>(below(static_cast<int>(N)))].first;
    }
    template <class E, std::size_t N> std::optional<E> maybeWord(const WordTable<E, N> &table)
    {
        return chance() ? std::optional(word(table)) : std::nullopt;
    }
    std::optional<PainScore> score() { return chance() ? std::optional(PainScore{below(PainScore::highest + 1)}) : std::nullopt; }
    std::string id(const std::string &known) { return m_id ? m_id(known) : known; }
    std::vector<std::string> lines(int most)
    {
        std::vector<std::string> out;
        for (int i = some(most); i > 0; --i)
            out.push_back(words());
        return out;
    }

    Place placeOf(const Structure &s) { return {s.id, of(atlas().sides(s))}; }
    Place place() { return placeOf(of(atlas().structures())); }
    std::vector<Place> places(int most)
    {
        std::vector<Place> out;
        for (int i = some(most); i > 0; --i)
            if (const Place one = place(); std::find(out.begin(), out.end(), one) == out.end())
                out.push_back(one);
        return out;
    }
    Side sideOf(bool isPaired) { return !isPaired ? Side::Midline : below(2) == 0 ? Side::Left : Side::Right; }

    Complaint complaint()
    {
        Complaint out;
        if (chance())
            out.episode = 1 + below(PatientComplaint::highestId);
        out.text = maybe();
        out.since = maybe();
        out.now = score();
        out.worst = score();
        out.best = score();
        out.aggravates = maybe();
        out.eases = maybe();
        for (auto &level : out.day)
            level = maybeWord(dayLevelWords);
        out.irritability = maybeWord(irritabilityWords);
        for (int i = some(static_cast<int>(Activity::most)); i > 0; --i) {
            Activity activity{maybe(), chance() ? std::optional(below(Activity::highest + 1)) : std::nullopt};
            if (activity == Activity{})
                activity.name = words();
            out.activities.push_back(std::move(activity));
        }
        out.goal = maybe();
        out.asked = maybeDate();
        return out;
    }

    PainPatch patch()
    {
        PainPatch out;
        out.view = word(viewWords);
        if (isWhole(out.view))
            out.facing = sideOf(true);
        for (int i = 1 + some(1); i > 0; --i) {
            out.strokes.push_back({{}, number(PainLimits::leastRadius, PainLimits::greatestRadius)});
            for (int p = 1 + below(4); p > 0; --p)
                out.strokes.back().points.push_back({number(-500, 500), number(0, 1000)});
        }
        out.quality = maybeWord(painQualityWords);
        out.intensity = score();
        out.painter = word(painterWords);
        out.confirmed = chance();
        return out;
    }

    std::vector<Condition> conditions()
    {
        std::vector<Condition> out;
        for (int i = some(4); i > 0; --i) {
            const ConditionKind &kind = of(safetyRules().conditions());
            Condition condition{id(kind.id), {}};
            if (kind.place == PlaceNeed::Required)
                condition.at.push_back(place());
            if (kind.place == PlaceNeed::Optional)
                condition.at = places(2);
            out.push_back(std::move(condition));
        }
        return out;
    }

    std::vector<WarningAnswer> warnings()
    {
        std::vector<WarningAnswer> out;
        std::set<std::string> seen;
        for (int i = some(6); i > 0; --i) {
            const std::string sign = of(safetyRules().signs().signs).id;
            if (!seen.insert(sign).second)
                continue;
            WarningAnswer answer{id(sign), i % 3 > 0, date(), {}, {}, {}, {}};
            if (answer.isThere) {
                answer.at = {place()};
                answer.decided = below(2) == 0 ? std::optional(word(decisionWords)) : std::nullopt;
                answer.why = answer.decided ? words() : maybe();
                answer.told = answer.decided ? "somebody: " + words() : maybe();
                answer.isMoved = !answer.decided && chance();
            }
            out.push_back(std::move(answer));
        }
        return out;
    }

    std::vector<ConsentAnswer> consents()
    {
        std::vector<ConsentAnswer> out;
        for (const ConsentItem &item : safetyRules().consents().items) {
            if (!m_isWhole && below(4) > 0)
                continue;
            ConsentAnswer answer{id(item.id), word(consentStateWords), date(), maybeWord(chaperoneWords), {}, {}, maybe()};
            if (answer.chaperone == Chaperone::Present)
                answer.chaperoneName = maybe();
            if (chance())
                answer.guardian = Guardian{words(), maybe()};
            out.push_back(std::move(answer));
        }
        return out;
    }

    SinceLast since()
    {
        SinceLast out{maybeWord(courseWords), maybeWord(reactionWords), maybe(), {}};
        for (int i = some(3); i > 0; --i)
            out.promises.push_back({words(), maybeWord(keptWords)});
        return out;
    }

    // The landmarks and tissues that the structure is fixed to.
    static std::vector<StructureId> endsOf(const Structure &s, std::optional<Spot> spot)
    {
        std::vector<StructureId> out;
        for (const Attachment &head : s.attachments) {
            if (spot != Spot::Insertion)
                out.insert(out.end(), head.origins.begin(), head.origins.end());
            if (spot != Spot::Origin)
                out.insert(out.end(), head.insertions.begin(), head.insertions.end());
        }
        return out;
    }

    Finding finding()
    {
        Finding f;
        const Structure &s = of(atlas().structures());
        f.place = placeOf(s);
        const bool isSoft =
            s.kind == Kind::Muscle || s.kind == Kind::Fascia || s.kind == Kind::Ligament || s.kind == Kind::Tendon;
        if (isSoft)
            f.spot = maybeWord(spotWords);
        if (const auto ends = endsOf(s, f.spot); !ends.empty() && chance())
            f.at = of(ends);
        if (below(8) == 0) {
            f.unable = words();
            return f;
        }
        switch (below(4)) { // of how tender it is, one is said
        case 0: f.tenderness = Tenderness{below(Tenderness::highest + 1)}; break;
        case 1: f.sore = true; break;
        case 2: f.clear.tenderness = true; break;
        default: break;
        }
        switch (below(5)) { // and of how it moves
        case 0: f.restriction = Restriction{below(Restriction::highest + 1)}; break;
        case 1: f.stiff = true; break;
        case 2: f.clear.motion = true; break;
        case 3:
            f.restriction = Restriction{0};
            f.clear.motion = true;
            break;
        default: break;
        }
        if (s.kind == Kind::Joint) {
            if (chance())
                f.play = JointPlay{f.clear.motion ? JointPlay::normal : below(JointPlay::highest + 1)};
            f.endFeel = maybeWord(endFeelWords);
        }
        f.familiar = below(3) == 0;
        f.certain = f.saysOfMotion() && chance();
        f.afterComparing = f.saysOfMotion() && chance();
        for (int i = some(2); i > 0; --i) {
            const std::string texture = m_words && below(2) == 0 ? words() : of(wholeContent().textures);
            if (std::find(f.texture.begin(), f.texture.end(), texture) == f.texture.end())
                f.texture.push_back(texture);
        }
        f.refersTo = places(2);
        f.note = maybe();
        if (!f.saysAnything())
            f.note = words();
        return f;
    }

    std::vector<Finding> findings(int most)
    {
        std::vector<Finding> out;
        std::set<std::tuple<Place, std::optional<Spot>, std::optional<StructureId>>> seen;
        for (int i = some(most); i > 0; --i)
            if (Finding one = finding(); seen.emplace(one.place, one.spot, one.at).second)
                out.push_back(std::move(one));
        return out;
    }

    std::vector<Measure> measures(int most)
    {
        std::vector<Measure> out;
        std::set<std::tuple<std::string, Side, std::optional<MoveMode>>> seen;
        for (int i = some(most); i > 0; --i) {
            const Movement &movement = of(examination().movements);
            Measure m;
            m.side = sideOf(movement.isPaired);
            m.mode = maybeWord(moveModeWords);
            if (!seen.emplace(movement.id, m.side, m.mode).second)
                continue;
            m.movement = id(movement.id);
            if (chance())
                m.value = below(3) == 0 ? number(movement.least, movement.furthest)
                                        : std::clamp(1.0 * below(60), movement.least, movement.furthest);
            m.device = maybeWord(deviceWords);
            if (chance())
                m.painFrom = number(movement.least, movement.furthest);
            m.hurts = chance();
            m.familiar = chance();
            m.note = maybe();
            out.push_back(std::move(m));
        }
        return out;
    }

    void answer(const ExamTest &test, TestResult &t)
    {
        if (below(6) == 0) {
            t.unable = words();
            return;
        }
        switch (answerFormOf(test.kind)) {
        case AnswerForm::Pain:
            t.pain = word(testPainWords);
            t.changesFromAfar = test.kind == TestKind::Nerve && chance();
            return;
        case AnswerForm::Grade: t.grade = below(highestGradeOf(test.kind) + 1); return;
        case AnswerForm::Present: t.present = below(2) == 0; return;
        case AnswerForm::Values: break;
        }
        for (std::size_t i = 0; i < test.vital->fields.size(); ++i)
            t.values.push_back(number(test.vital->least[i], test.vital->most[i]));
    }

    std::vector<TestResult> tests(int most)
    {
        std::vector<TestResult> out;
        std::set<std::pair<std::string, Side>> seen;
        for (int i = some(most); i > 0; --i) {
            const ExamTest &test = of(examination().tests);
            TestResult t;
            t.side = sideOf(test.isPaired);
            if (!seen.emplace(test.id, t.side).second)
                continue;
            t.test = id(test.id);
            answer(test, t);
            t.note = maybe();
            out.push_back(std::move(t));
        }
        return out;
    }

    std::pair<std::string, Side> examined(MomentKind kind)
    {
        switch (kind) {
        case MomentKind::Finding: {
            const Place at = place();
            return {at.structure.value, at.side};
        }
        case MomentKind::Movement: {
            const Movement &movement = of(examination().movements);
            return {id(movement.id), sideOf(movement.isPaired)};
        }
        case MomentKind::Test: break;
        }
        const ExamTest &test = of(examination().tests);
        return {id(test.id), sideOf(test.isPaired)};
    }

    std::vector<Judgement> judgements()
    {
        std::vector<Judgement> out;
        for (int i = some(6); i > 0; --i) {
            const Judgement one{word(adviceListWords), place(), i % 2 == 0 ? std::string() : words()};
            const auto isSame = [&](const Judgement &j) { return j.list == one.list && j.place == one.place; };
            if (std::none_of(out.begin(), out.end(), isSame))
                out.push_back(one);
        }
        return out;
    }

    PlanWish plan()
    {
        PlanWish out;
        if (chance())
            out.minutes = below(PlanWish::mostMinutes + 1);
        for (int i = some(3); i > 0; --i)
            out.barred.insert(word(positionWords));
        for (int i = some(3); i > 0; --i)
            out.refused.insert(id(below(2) == 0 ? of(wholeContent().techniques.all).id : of(safetyRules().actions()).id));
        for (int i = some(3); i > 0; --i)
            out.pinned.insert(place());
        for (int i = some(3); i > 0; --i)
            if (const Place one = place(); !out.pinned.contains(one))
                out.dropped.insert(one);
        for (int i = some(3); i > 0; --i)
            out.byHand.emplace(place(), id(of(wholeContent().techniques.all).id));
        for (int i = some(3); i > 0; --i) {
            const std::pair pair(place(), place());
            if (pair.first != pair.second && std::find(out.ordered.begin(), out.ordered.end(), pair) == out.ordered.end())
                out.ordered.push_back(pair);
        }
        return out;
    }

    TreatmentStep step(bool isAhead)
    {
        TreatmentStep out;
        out.place = place();
        out.technique = id(of(wholeContent().techniques.all).id);
        out.position = maybeWord(positionWords);
        out.planned = chance() ? 1 + below(TreatmentStep::longest) : 0;
        out.rest = chance() ? 1 + below(TreatmentStep::longest) : 0;
        if (!isAhead || chance())
            out.began = time();
        out.seconds = chance() ? 1 + below(TreatmentStep::longest) : 0;
        for (int i = some(3); i > 0; --i)
            out.words.push_back(word(stepWordWords));
        for (int i = some(2); i > 0; --i)
            out.minded.push_back(id(of(safetyRules().rules()).id));
        if (chance())
            out.kPa = number(0, TreatmentStep::strongestSuction);
        if (!isAhead && below(4) > 0)
            out.done = word(stepDoneWords);
        if (out.done == StepDone::Skipped && below(2) == 0)
            out.began.clear();
        out.note = maybe();
        return out;
    }

    TreatmentLog treatment()
    {
        TreatmentLog out;
        for (int i = some(4); i > 0; --i)
            out.steps.push_back(step(false));
        for (int i = some(3); i > 0; --i)
            out.ahead.push_back(step(true));
        if (chance() && !out.steps.empty()) {
            out.steps.back().done.reset();
            if (!out.steps.back().hasBegun())
                out.steps.back().began = time();
            out.running = time();
        }
        static const std::vector<std::string> signs{"faint", "new-numbness-or-weakness", "sudden-severe-pain", "breathless"};
        for (int i = some(3); i > 0; --i) {
            AdverseEvent event{time(), {}, maybe(), maybe()};
            if (event.told.empty() || i % 2 == 0)
                event.signs.push_back(id(of(signs)));
            out.events.push_back(std::move(event));
        }
        return out;
    }

    Closing closing()
    {
        Closing out;
        std::set<std::string> seen;
        for (int i = some(4); i > 0; --i) {
            const std::string item = of(wholeContent().advice.items).id;
            if (i % 2 == 0)
                out.advice.push_back({"", maybe(), words()});
            else if (seen.insert(item).second)
                out.advice.push_back({id(item), maybe(), words()});
        }
        out.isTold = chance();
        out.focus = lines(3);
        if (chance())
            out.impression = {words(), maybe(), maybe()};
        for (int i = some(3); i > 0; --i)
            out.goals.push_back({words(), maybeDate(), chance()});
        if (chance())
            out.plan = CarePlan{date(), 1 + below(CarePlan::mostVisits), 1 + below(CarePlan::mostDays), maybe()};
        if (chance())
            out.review = CareReview{word(careDecisionWords), words()};
        if (chance()) {
            out.call = LaterCall{date(), maybeDate(), {}, {}};
            if (!out.call->made.empty()) {
                out.call->reaction = maybeWord(reactionWords);
                out.call->told = maybe();
            }
        }
        return out;
    }

    // Left as it was composed, edited, or written by hand alone.
    LetterText letterText()
    {
        switch (below(4)) {
        case 0: return {words(), words()};
        case 1: return {"", words()};
        case 2: return {words(), ""};
        default: break;
        }
        const std::string same = words();
        return {same, same};
    }

    Letter letter()
    {
        Letter out;
        out.written = date();
        if (chance())
            out.to = {words(), maybe(), lines(3)};
        out.title = words();
        out.urgency = word(urgencyWords);
        if (chance())
            out.reason = letterText();
        if (chance())
            out.question = letterText();
        std::set<std::string> titles;
        for (int i = some(3); i > 0; --i)
            if (const std::string title = words() + " " + std::to_string(i); titles.insert(title).second)
                out.parts.push_back({title, letterText()});
        out.sent = maybeDate();
        return out;
    }

    Visit make(bool isWhole)
    {
        m_isWhole = isWhole;
        Visit visit;
        if (chance())
            visit.patient = Patient{maybe(), maybeDate()};
        visit.date = maybeDate();
        visit.practitioner = maybe();
        for (int i = some(2); i > 0; --i)
            visit.complaints.push_back(complaint());
        visit.complaintAt = places(3);
        for (int i = some(3); i > 0; --i)
            visit.pain.push_back(patch());
        visit.cautions = lines(2);
        visit.injured = chance();
        visit.conditions = conditions();
        visit.warnings = warnings();
        visit.consents = consents();
        if (chance())
            visit.sinceLast = since();
        visit.promised = lines(2);
        visit.focus = lines(2);
        visit.findings = findings(12);
        visit.measures = measures(6);
        visit.tests = tests(8);
        if (chance()) {
            const MomentKind kind = below(2) == 0 ? MomentKind::Movement : MomentKind::Test;
            const auto [what, side] = examined(kind);
            visit.retest = RetestMark{kind, what, side};
        }
        for (int i = some(6); i > 0; --i) {
            const MomentKind kind = word(momentKindWords);
            const auto [what, side] = examined(kind);
            visit.timeline.push_back({time(), kind, what, side});
        }
        visit.judgements = judgements();
        visit.plan = plan();
        visit.treatment = treatment();
        visit.retested = {findings(3), measures(2), tests(2), score()};
        visit.closing = closing();
        visit.sidesIntended = chance();
        for (int i = some(3); i > 0; --i)
            visit.letters.push_back(letter());
        return visit;
    }

    std::mt19937 m_engine;
    Words m_words;
    Id m_id;
    int m_firstYear = 1990;
    bool m_isWhole = false;
};

} // namespace raphe::test
