// What is recorded of a treatment and after it.
#include "app/raphe/VisitSession.h"

#include "core/treatment/Gate.h"
#include "core/treatment/TreatmentRun.h"

#include <algorithm>

namespace raphe {

void VisitSession::setTreatment(const TreatmentLog &log)
{
    if (log == m_visit.treatment || !mayChange())
        return;
    m_visit.treatment = log;
    save();
    Q_EMIT treatmentChanged();
}

bool VisitSession::addWork(TreatmentStep step, bool minded)
{
    if (!mayChange())
        return false;
    const std::vector<CautionVerdict> held = gateOf(cautions(), m_handTechniques, step);
    const auto stop = std::find_if(held.begin(), held.end(), [](const CautionVerdict &v) { return v.verdict == Verdict::Stop; });
    if (stop != held.end()) {
        tell(tr("Not logged, this is stopped there: %1").arg(QString::fromStdString(stop->reason)));
        return false;
    }
    if (!held.empty() && !minded) {
        QStringList reasons;
        for (const CautionVerdict &v : held)
            reasons << QString::fromStdString(v.reason);
        reasons.removeDuplicates();
        Q_EMIT workHeld(step, reasons.join(QLatin1Char('\n')));
        return false;
    }
    step.minded = idsOf(held);
    const QTime began = m_clock().addSecs(-step.seconds);
    step.began = began.toString(QStringLiteral("HH:mm:ss")).toStdString();
    step.done = StepDone::Done;
    TreatmentLog log = m_visit.treatment;
    log.steps.push_back(std::move(step));
    setTreatment(log);
    return true;
}

void VisitSession::addEvent(AdverseEvent event)
{
    event.time = timeNow();
    TreatmentLog log = m_visit.treatment;
    log.events.push_back(std::move(event));
    setTreatment(log);
}

std::string VisitSession::timeNow() const
{
    return m_clock().toString(QStringLiteral("HH:mm:ss")).toStdString();
}

void VisitSession::setRetested(const Retested &retested)
{
    if (retested == m_visit.retested || !mayChange())
        return;
    m_visit.retested = retested;
    save();
    Q_EMIT retestChanged();
}

void VisitSession::setClosing(const Closing &closing)
{
    if (closing == m_visit.closing || !mayChange())
        return;
    m_visit.closing = closing;
    save();
    Q_EMIT closingChanged();
}

Result<std::string> VisitSession::keepAdvice(OwnAdvice advice)
{
    auto settings = m_practice->settings();
    if (!settings)
        return settings.error();
    std::vector<OwnAdvice> &all = settings.value().advice;
    if (advice.id.empty())
        advice.id = newAdviceId(all);
    std::erase_if(all, [&](const OwnAdvice &other) { return other.id == advice.id; });
    all.push_back(advice);
    if (const auto saved = m_practice->saveSettings(settings.value()); !saved)
        return saved.error();
    if (const auto read = rereadTreatment(); !read)
        return read.error();
    return advice.id;
}

CareProgress VisitSession::careProgress() const
{
    return raphe::careProgress(m_visit, m_earlier, m_learned.examination);
}

} // namespace raphe
