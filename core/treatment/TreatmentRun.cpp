#include "core/treatment/TreatmentRun.h"

#include <algorithm>
#include <utility>

namespace raphe {

using std::chrono::duration_cast;

TreatmentRun::TreatmentRun(TreatmentLog treatment, Gate gate) : m_treatment(std::move(treatment)), m_gate(std::move(gate))
{
    if (!m_treatment.running.empty()) {
        m_interruptedAt = std::exchange(m_treatment.running, {});
        takeBack();
    }
    makeReady({});
}

const TreatmentStep *TreatmentRun::current() const
{
    if (m_phase == Phase::Working)
        return &m_treatment.steps.back();
    return m_treatment.ahead.empty() ? nullptr : &m_treatment.ahead.front();
}

const TreatmentStep *TreatmentRun::next() const
{
    const std::size_t index = m_phase == Phase::Working ? 0 : 1;
    return index < m_treatment.ahead.size() ? &m_treatment.ahead[index] : nullptr;
}

int TreatmentRun::worked(Time now) const
{
    const auto since = duration_cast<std::chrono::seconds>(now - m_since).count();
    return std::clamp<int>(m_before + static_cast<int>(std::max<std::int64_t>(0, since)), 0, TreatmentStep::longest);
}

int TreatmentRun::seconds(Time now) const
{
    if (m_phase == Phase::Working)
        return worked(now);
    const TreatmentStep *step = current();
    return step ? step->seconds : 0;
}

int TreatmentRun::restLeft(Time now) const
{
    const TreatmentStep *step = current();
    if (m_phase != Phase::Ready || !step)
        return 0;
    return std::max(0, step->rest - static_cast<int>(duration_cast<std::chrono::seconds>(now - m_since).count()));
}

bool TreatmentRun::isBarred() const
{
    return std::any_of(m_held.begin(), m_held.end(), [](const CautionVerdict &v) { return v.verdict == Verdict::Stop; });
}

const CautionVerdict *TreatmentRun::toRead() const
{
    if (m_phase != Phase::Ready)
        return nullptr;
    const auto isRead = [this](const CautionVerdict &v) {
        const auto minds = [&](const TreatmentStep &step) {
            return std::find(step.minded.begin(), step.minded.end(), v.rule) != step.minded.end();
        };
        if (v.verdict == Verdict::Stop)
            return m_isStopRead;
        return minds(m_treatment.ahead.front()) || std::any_of(m_treatment.steps.begin(), m_treatment.steps.end(), minds);
    };
    const auto it = std::find_if_not(m_held.begin(), m_held.end(), isRead);
    return it == m_held.end() ? nullptr : &*it;
}

void TreatmentRun::askGate()
{
    const bool wasBarred = isBarred();
    m_held = m_gate(m_treatment.ahead.front());
    m_isStopRead = m_isStopRead && wasBarred;
}

void TreatmentRun::makeReady(Time now)
{
    m_phase = m_treatment.ahead.empty() ? Phase::Over : Phase::Ready;
    m_since = now;
    m_held.clear();
    if (m_phase == Phase::Ready)
        askGate();
}

void TreatmentRun::begin(const Now &now)
{
    TreatmentStep step = std::move(m_treatment.ahead.front());
    m_treatment.ahead.erase(m_treatment.ahead.begin());
    if (!step.hasBegun())
        step.began = now.clock;
    step.minded = idsOf(m_held);
    m_before = step.seconds;
    m_treatment.steps.push_back(std::move(step));
    m_treatment.running = now.clock;
    m_phase = Phase::Working;
    m_held.clear();
    m_since = now.at;
    m_kept = now.at;
}

void TreatmentRun::endWork(const Now &now)
{
    m_treatment.steps.back().seconds = worked(now.at);
    m_treatment.running.clear();
}

// The last step is before the hands again.
void TreatmentRun::takeBack()
{
    TreatmentStep step = std::move(m_treatment.steps.back());
    m_treatment.steps.pop_back();
    step.done.reset();
    m_treatment.ahead.insert(m_treatment.ahead.begin(), std::move(step));
}

void TreatmentRun::advance(const Now &now)
{
    m_interruptedAt.clear();
    if (m_phase == Phase::Working) {
        endWork(now);
        makeReady(now.at);
        return;
    }
    if (m_phase != Phase::Ready)
        return;
    askGate();
    if (const CautionVerdict *unread = toRead()) {
        if (unread->verdict == Verdict::Stop)
            m_isStopRead = true;
        else
            m_treatment.ahead.front().minded.push_back(unread->rule);
    } else if (isBarred()) {
        skip(now);
    } else {
        begin(now);
    }
}

void TreatmentRun::back(const Now &now)
{
    m_interruptedAt.clear();
    if (m_phase == Phase::Working)
        endWork(now);
    else if (m_phase == Phase::Stopped || m_treatment.steps.empty())
        return;
    takeBack();
    makeReady(now.at);
}

void TreatmentRun::add(TreatmentStep step, const Now &now)
{
    m_treatment.ahead.insert(m_treatment.ahead.begin(), std::move(step));
    if (m_phase == Phase::Ready || m_phase == Phase::Over)
        makeReady(now.at);
}

void TreatmentRun::addPast(TreatmentStep step)
{
    const auto end = m_phase == Phase::Working ? m_treatment.steps.end() - 1 : m_treatment.steps.end();
    m_treatment.steps.insert(end, std::move(step)); // what is worked stays the last
}

void TreatmentRun::skip(const Now &now)
{
    if (m_phase != Phase::Ready)
        return;
    TreatmentStep step = std::move(m_treatment.ahead.front());
    m_treatment.ahead.erase(m_treatment.ahead.begin());
    if (!step.hasBegun())
        step.done = StepDone::Skipped; // how much of a begun one was done is for the practitioner to say
    m_treatment.steps.push_back(std::move(step));
    makeReady(now.at);
}

void TreatmentRun::stop(const Now &now)
{
    if (m_phase == Phase::Working) {
        endWork(now);
        takeBack();
    }
    if (m_phase != Phase::Over)
        m_phase = Phase::Stopped;
}

void TreatmentRun::goOn(const Now &now)
{
    if (m_phase == Phase::Stopped)
        makeReady(now.at);
}

void TreatmentRun::end(const Now &now, const std::optional<AdverseEvent> &event)
{
    if (m_phase == Phase::Working)
        endWork(now);
    if (m_phase == Phase::Stopped)
        m_phase = Phase::Ready;
    makeReady(now.at);
    while (m_phase == Phase::Ready)
        skip(now);
    if (event)
        m_treatment.events.push_back(*event);
}

void TreatmentRun::say(StepWord word)
{
    if (m_phase == Phase::Ready && m_treatment.ahead.front().hasBegun())
        m_treatment.ahead.front().words.push_back(word);
    else if (m_phase != Phase::Stopped && !m_treatment.steps.empty())
        m_treatment.steps.back().words.push_back(word);
}

void TreatmentRun::changeSide()
{
    if (m_phase != Phase::Ready)
        return;
    TreatmentStep &step = m_treatment.ahead.front();
    if (step.hasBegun())
        return; // the work that was done keeps its side
    step.place = mirrored(step.place);
    if (step.position)
        step.position = mirrored(*step.position);
    step.minded.clear();
    askGate();
}

void TreatmentRun::recheck(const Now &now)
{
    if (m_phase == Phase::Ready) {
        askGate();
        return;
    }
    if (m_phase != Phase::Working)
        return;
    const std::vector<CautionVerdict> holds = m_gate(m_treatment.steps.back());
    if (std::none_of(holds.begin(), holds.end(), [](const CautionVerdict &v) { return v.verdict == Verdict::Stop; }))
        return;
    endWork(now);
    takeBack();
    makeReady(now.at);
}

bool TreatmentRun::tick(const Now &now)
{
    if (m_phase != Phase::Working || now.at - m_kept < keptEvery)
        return false;
    m_kept = now.at;
    m_treatment.steps.back().seconds = worked(now.at);
    m_treatment.running = now.clock;
    return true;
}

bool isOpen(const TreatmentLog &log)
{
    return !log.ahead.empty()
        || std::any_of(log.steps.begin(), log.steps.end(), [](const TreatmentStep &step) { return !step.done; });
}

std::vector<std::string> idsOf(const std::vector<CautionVerdict> &verdicts)
{
    std::vector<std::string> out;
    for (const CautionVerdict &v : verdicts)
        if (std::find(out.begin(), out.end(), v.rule) == out.end())
            out.push_back(v.rule);
    return out;
}

} // namespace raphe
