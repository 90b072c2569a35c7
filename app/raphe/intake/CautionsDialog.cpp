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

CautionsDialog::CautionsDialog(const std::vector<CautionVerdict> &verdicts, QWidget *parent)
    : WorkDialog(tr("What must be respected"), parent)
{
    form().addWidget(
        hint(tr("These rules are not yet read by a clinician. Assists a trained practitioner; follow local law, scope "
                "of practice and licensed care.")));
    auto *page = new QWidget;
    auto *column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 8, 0);
    column->setSpacing(12);
    for (const CautionVerdict &v : verdicts) {
        auto *part = new QVBoxLayout;
        part->setSpacing(2);
        part->addWidget(heading(verdictName(v.verdict)));
        auto *reason = new WrappedLabel;
        WrappedLabel *source = hint();
        for (WrappedLabel *words : {reason, source}) {
            words->setTextFormat(Qt::PlainText);
            words->say(QString::fromStdString(words == reason ? v.reason : v.source));
            part->addWidget(words);
        }
        column->addLayout(part);
    }
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
