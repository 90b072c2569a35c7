#include "app/raphe/closing/ReviewBox.h"

#include "app/raphe/WrappedLabel.h"
#include "app/raphe/intake/ChoiceRow.h"
#include "app/raphe/patients/PersonWords.h"
#include "app/raphe/record/TextLine.h"

#include <QVBoxLayout>

#include <utility>

namespace raphe {

ReviewBox::ReviewBox(VisitSession &session, QWidget *parent)
    : CloseSection(session, parent),
      m_ask(new WrappedLabel),
      m_readings(new WrappedLabel),
      m_decision(
          new ChoiceRow(tr("What is made of it"), {tr("Change the plan"), tr("Refer to somebody else"), tr("End the care")})),
      m_why(new TextLine(tr("Why")))
{
    m_ask->setProperty("role", QStringLiteral("warning"));
    m_readings->setTextFormat(Qt::PlainText);
    m_why->setPlaceholderText(tr("Why; a decision without a reason is not kept"));
    for (QWidget *widget : {static_cast<QWidget *>(m_ask), static_cast<QWidget *>(m_readings), static_cast<QWidget *>(m_decision),
             static_cast<QWidget *>(m_why)})
        column().addWidget(widget);
    connect(m_decision, &ChoiceRow::chosen, this, &ReviewBox::take);
    connect(m_why, &QLineEdit::textEdited, this, &ReviewBox::take);
}

void ReviewBox::take()
{
    Closing changed = closing();
    changed.review.reset();
    if (m_decision->value() && !m_why->isBlank())
        changed.review = CareReview{static_cast<CareDecision>(*m_decision->value()), m_why->value()};
    write(changed);
}

void ReviewBox::show(const Closing &closing)
{
    if (std::exchange(m_shownFor, m_session.visitId()) != m_session.visitId()) { // half an answer is of its visit alone
        m_decision->give(std::nullopt);
        m_why->give({});
    }
    const CareProgress progress = m_session.careProgress();
    setVisible(progress.isToReview || closing.review);
    if (!progress.isToReview && !closing.review)
        return;
    QStringList lines;
    for (const CareReading &reading : progress.readings)
        lines << tr("%1: then %2, today %3: %4", "a reading, two values, what became of it")
                     .arg(QString::fromStdString(reading.name), QString::fromStdString(reading.before),
                         QString::fromStdString(reading.now), QString::fromStdString(reading.verdict));
    if (lines.isEmpty())
        lines << tr("Nothing was read both then and today.");
    m_readings->say(lines.join(QLatin1Char('\n')));
    if (closing.plan)
        m_ask->say(
            (progress.isWorse ? tr("%n visits since %1, nothing is better beyond error, and something is worse. Change the "
                                   "plan, refer, or end the care: which, and why?",
                 "", progress.visits)
                              : tr("%n visits since %1, and nothing is better beyond error. Change the plan, refer, or end "
                                   "the care: which, and why?",
                                  "", progress.visits))
                .arg(dayWords(closing.plan->agreed)));
    if (closing.review || (m_decision->value() && m_why->isBlank())) // half an answer stays
        m_decision->give(closing.review ? std::optional(static_cast<int>(closing.review->decision)) : m_decision->value());
    if (closing.review && closing.review->why != m_why->value())
        m_why->give(closing.review->why);
}

} // namespace raphe
