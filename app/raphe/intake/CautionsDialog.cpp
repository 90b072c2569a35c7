#include "app/raphe/intake/CautionsDialog.h"

#include "app/raphe/WrappedLabel.h"
#include "app/raphe/practice/FormParts.h"

#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

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

CautionsDialog::CautionsDialog(
    const std::vector<CautionVerdict> &verdicts, const std::vector<Reminder> &reminders, QWidget *parent)
    : WorkDialog(tr("What must be respected"), parent)
{
    form().addWidget(
        hint(tr("These rules are not yet read by a clinician. Assists a trained practitioner; follow local law, scope "
                "of practice and licensed care.")));
    auto *page = new QWidget;
    auto *column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 8, 0);
    column->setSpacing(12);
    const auto add = [&](const QString &head, const std::string &words, const std::string &from) {
        auto *part = new QVBoxLayout;
        part->setSpacing(2);
        part->addWidget(heading(head));
        auto *reason = new WrappedLabel;
        WrappedLabel *source = hint();
        for (WrappedLabel *label : {reason, source}) {
            label->setTextFormat(Qt::PlainText);
            label->say(QString::fromStdString(label == reason ? words : from));
            part->addWidget(label);
        }
        column->addLayout(part);
    };
    for (const Reminder &reminder : reminders)
        add(tr("To confirm: %1", "what speaks for it").arg(causeWords(reminder)), reminder.feed->say, reminder.feed->source);
    for (const CautionVerdict &v : verdicts)
        add(verdictName(v.verdict), v.reason, v.source);
    column->addStretch(1);
    form().addWidget(scrolled(page), 1);
    addGap();
    QPushButton *done = addButton(tr("Close"));
    done->setDefault(true);
    connect(done, &QPushButton::clicked, this, &CautionsDialog::accept);
    resize(640, 600);
    done->setFocus();
}

} // namespace raphe
