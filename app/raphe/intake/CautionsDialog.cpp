#include "app/raphe/intake/CautionsDialog.h"

#include "app/raphe/WrappedLabel.h"
#include "app/raphe/practice/FormParts.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QScrollArea>
#include <QTimer>
#include <QVBoxLayout>

#include <functional>

namespace raphe {

namespace {

QString verdictName(Verdict verdict)
{
    switch (verdict) {
    case Verdict::Stop: return CautionsDialog::tr("Stop");
    case Verdict::Adapt: return CautionsDialog::tr("Adapt");
    case Verdict::Ask: return CautionsDialog::tr("Ask first");
    }
    return {};
}

} // namespace

QString causeWords(const Reminder &reminder)
{
    const QString because = QString::fromStdString(reminder.because);
    switch (reminder.feed->field) {
    case FeedField::Age: return CautionsDialog::tr("%1 years old").arg(because);
    case FeedField::PregnancyWeek: return CautionsDialog::tr("week %1 of a pregnancy").arg(because);
    case FeedField::BloodPressure: return CautionsDialog::tr("blood pressure %1").arg(because);
    default: return CautionsDialog::tr("the record says '%1'").arg(because);
    }
}

CautionsDialog::CautionsDialog(VisitSession &session, QWidget *parent)
    : WorkDialog(tr("What must be respected"), parent), m_session(session), m_area(scrolled(makePage()))
{
    form().addWidget(hint(tr("These rules are not yet read by a clinician. What is to be confirmed holds until you say whether "
                             "it is so. Assists a trained practitioner; follow local law, scope "
                             "of practice and licensed care.")));
    form().addWidget(m_area, 1);
    addGap();
    QPushButton *done = addButton(tr("Close"));
    done->setDefault(true);
    connect(done, &QPushButton::clicked, this, &CautionsDialog::accept);
    resize(640, 600);
    done->setFocus();
}

QWidget *CautionsDialog::makePage()
{
    auto *page = new QWidget;
    auto *column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 8, 0);
    column->setSpacing(12);
    for (const Reminder &reminder : m_session.reminders())
        column->addWidget(makeReminder(reminder));
    for (const CautionVerdict &v : m_session.standingVerdicts())
        column->addWidget(makePart(verdictName(v.verdict), v.reason, v.source));
    column->addStretch(1);
    return page;
}

QWidget *CautionsDialog::makePart(const QString &head, const std::string &words, const std::string &from)
{
    auto *part = new QWidget;
    auto *column = new QVBoxLayout(part);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    column->addWidget(heading(head));
    auto *reason = new WrappedLabel;
    WrappedLabel *source = hint();
    for (WrappedLabel *label : {reason, source}) {
        label->setTextFormat(Qt::PlainText);
        label->say(QString::fromStdString(label == reason ? words : from));
        column->addWidget(label);
    }
    return part;
}

QWidget *CautionsDialog::makeReminder(const Reminder &reminder)
{
    QWidget *part =
        makePart(tr("To confirm: %1", "what speaks for it").arg(causeWords(reminder)), reminder.feed->say, reminder.feed->source);
    if (m_session.isReadOnly())
        return part;
    const std::string because = causeWords(reminder).toStdString();
    for (const std::string &id : m_session.openOf(reminder)) {
        const ConditionKind &kind = *m_session.adviser().rules().findCondition(id);
        const QString name = QString::fromStdString(kind.name);
        QPushButton *take = pushButton(tr("It is so: %1", "name of a condition").arg(name));
        take->setToolTip(kind.place == PlaceNeed::Required
                ? tr("It goes into the record, and into this visit as a caution in words: the rules need to know its place")
                : tr("It goes into the record and into this visit"));
        QPushButton *ruleOut = pushButton(tr("It is not so"));
        ruleOut->setAccessibleName(tr("It is not so: %1", "name of a condition").arg(name));
        ruleOut->setToolTip(tr("The record keeps that it was said; it is asked again when the record says something else"));
        const auto answerBy = [this](QPushButton *button, const std::function<Result<Done>()> &act) {
            connect(button, &QPushButton::clicked, this, [this, act] {
                if (const auto done = act(); !done)
                    complain(done.error());
                QTimer::singleShot(
                    0, this, [this] { m_area->setWidget(makePage()); }); // the pressed button goes with the old page
            });
        };
        answerBy(take, [this, id, because] { return m_session.takeOver(id, because); });
        answerBy(ruleOut, [this, id, said = reminder.because] { return m_session.ruleOut(id, said); });
        auto *row = new QHBoxLayout;
        row->setSpacing(6);
        row->addWidget(take, 1);
        row->addWidget(ruleOut);
        qobject_cast<QVBoxLayout *>(part->layout())->addLayout(row);
    }
    return part;
}

} // namespace raphe
