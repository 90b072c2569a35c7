#include "app/raphe/examination/SheetRow.h"

#include "app/raphe/WrappedLabel.h"
#include "app/raphe/practice/FormParts.h"

#include <QLineEdit>
#include <QStyle>
#include <QVBoxLayout>

#include <algorithm>

namespace raphe {

std::vector<Side> SheetRow::sidesOf(bool isPaired)
{
    return isPaired ? std::vector{Side::Right, Side::Left} : std::vector{Side::Midline};
}

QString SheetRow::loud(Side side)
{
    switch (side) {
    case Side::Right: return tr("RIGHT");
    case Side::Left: return tr("LEFT");
    case Side::Midline: break;
    }
    return {};
}

QWidget *SheetRow::makeName(const QString &name, const QString &quiet)
{
    auto *box = new QWidget;
    auto *column = new QVBoxLayout(box);
    column->setContentsMargins(0, 6, 8, 0);
    column->setSpacing(1);
    auto *title = new WrappedLabel(capitalised(name));
    title->setProperty("role", QStringLiteral("head"));
    column->addWidget(title);
    if (!quiet.isEmpty())
        column->addWidget(hint(quiet));
    m_barred = new WrappedLabel;
    m_barred->setProperty("role", QStringLiteral("warning"));
    m_barred->setTextFormat(Qt::PlainText);
    m_barred->hide();
    column->addWidget(m_barred);
    column->addStretch(1);
    return box;
}

void SheetRow::sayBarred(std::vector<CautionVerdict> verdicts)
{
    std::stable_sort(
        verdicts.begin(), verdicts.end(), [](const CautionVerdict &a, const CautionVerdict &b) { return a.verdict > b.verdict; });
    const auto grave = std::find_if(verdicts.begin(), verdicts.end(), [this](const CautionVerdict &v) {
        return v.verdict == Verdict::Adapt && !v.condition.empty() && !m_throughout.contains(v.rule);
    });
    const CautionVerdict *said = stopAmong(verdicts) ? stopAmong(verdicts) : grave == verdicts.end() ? nullptr : &*grave;
    m_barred->setVisible(said != nullptr);
    if (!said)
        return;
    const QString reason = QString::fromStdString(said->reason);
    m_barred->say(said->verdict == Verdict::Stop ? tr("Leave it: %1").arg(reason) : tr("Adapt: %1").arg(reason));
}

void SheetRow::setWrong(QLineEdit *line, bool isWrong)
{
    if (line->property("wrong").toBool() == isWrong)
        return;
    line->setProperty("wrong", isWrong);
    line->style()->unpolish(line);
    line->style()->polish(line);
}

} // namespace raphe
