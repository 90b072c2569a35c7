// A treatment while it goes on: which step stands before the hands, how long they have worked, and what is written down of it. It
// knows no window and no clock: acts come with their time. Not copied while it runs; one thread; nothing fails.
//
// A step is ready, then worked, then the next one is ready. Going back takes the step that is worked back to being ready, and
// from there the step before it; the seconds that were worked stay with a step, and go on when it is begun again. Before a step
// is begun the gate is asked: what stops it lets it only be skipped, what else holds must have been read. Nothing that was done
// is ever lost.
#pragma once

#include "core/record/CautionVerdict.h"
#include "core/record/TreatmentLog.h"

#include <chrono>
#include <functional>
#include <string>
#include <vector>

namespace raphe {

class TreatmentRun {
public:
    using Time = std::chrono::milliseconds; // of a clock that never jumps
    struct Now {
        Time at{};
        std::string clock; // local time, HH:MM:SS
    };
    /// What holds for a step's technique at its place, as the visit is now.
    using Gate = std::function<std::vector<CautionVerdict>(const TreatmentStep &)>;

    enum class Phase { Ready, Working, Stopped, Over };
    /// How often what runs is to be written down; what is lost when the program is killed.
    static constexpr Time keptEvery{5000};

    /// Goes on where `treatment` stands; a clock that ran was stopped when it was last seen.
    TreatmentRun(TreatmentLog treatment, Gate gate);

    [[nodiscard]] const TreatmentLog &treatment() const { return m_treatment; }
    [[nodiscard]] Phase phase() const { return m_phase; }
    /// The step that is ready or worked; nullptr when it is over.
    [[nodiscard]] const TreatmentStep *current() const;
    /// The one after it.
    [[nodiscard]] const TreatmentStep *next() const;
    /// Worked on the current step.
    [[nodiscard]] int seconds(Time now) const;
    /// Of the proposed rest before the current step, while it is ready.
    [[nodiscard]] int restLeft(Time now) const;
    /// When the clock was last seen running before an interruption; empty when there was none since the last act.
    [[nodiscard]] const std::string &interruptedAt() const { return m_interruptedAt; }
    /// What holds for the step that is ready.
    [[nodiscard]] const std::vector<CautionVerdict> &held() const { return m_held; }
    [[nodiscard]] bool isBarred() const;
    /// What holds and was not read yet in this treatment, gravest first: the next act reads it and does no more. A stop is read
    /// at each step. nullptr: nothing.
    [[nodiscard]] const CautionVerdict *toRead() const;

    /// Begins the step that is ready, or ends the one that is worked. Reads what holds first; a step that is stopped is skipped.
    void advance(const Now &now);
    void back(const Now &now);
    /// Work off the plan: it stands before what is ahead.
    void add(TreatmentStep step, const Now &now);
    /// Work off the plan that is over already, with its time; how much of it was done is still to be said.
    void addPast(TreatmentStep step);
    /// The step that is ready is left out.
    void skip(const Now &now);
    /// The clock stands until goOn() or end().
    void stop(const Now &now);
    /// Nothing was the matter; the step is ready again.
    void goOn(const Now &now);
    /// What is ahead is skipped; with `event` when something happened.
    void end(const Now &now, const std::optional<AdverseEvent> &event = {});
    /// Of the step that is worked, or ready after it was worked in part; else of the one before.
    void say(StepWord word);
    /// Of the step that is ready; its side is changed by nothing else.
    void changeSide();
    /// Consents, findings or conditions were changed: work that may not go on stops.
    void recheck(const Now &now);
    /// True when treatment() is to be written down.
    [[nodiscard]] bool tick(const Now &now);

private:
    void begin(const Now &now);
    void endWork(const Now &now);
    void takeBack();
    void makeReady(Time now);
    void askGate();
    [[nodiscard]] int worked(Time now) const;

    TreatmentLog m_treatment;
    Gate m_gate;
    Phase m_phase = Phase::Ready;
    std::vector<CautionVerdict> m_held;
    bool m_isStopRead = false; // of the step that is ready
    Time m_since{}; // the step is worked, or ready
    int m_before = 0; // seconds that were worked on it before
    Time m_kept{};
    std::string m_interruptedAt;
};

/// There is work ahead, or a step of which nobody said how much was done.
[[nodiscard]] bool isOpen(const TreatmentLog &log);

/// What holds of the rules, as ids that stand in a step's record.
[[nodiscard]] std::vector<std::string> idsOf(const std::vector<CautionVerdict> &verdicts);

} // namespace raphe
