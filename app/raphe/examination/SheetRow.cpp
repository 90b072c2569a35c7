#include "app/raphe/examination/SheetRow.h"

#include "app/raphe/WrappedLabel.h"
#include "app/raphe/practice/FormParts.h"
#include "core/examination/Barred.h"

#include <QGridLayout>
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

void SheetRow::addBox(QGridLayout &grid, int line, Side side, QWidget *box)
{
    const int column = side == Side::Left ? 2 : 1;
    grid.addWidget(box, line, column, 1, side == Side::Midline ? 2 : 1, Qt::AlignLeft | Qt::AlignTop);
    m_boxes.emplace_back(side, box);
}

void SheetRow::bar(const Cautions &cautions)
{
    std::vector<SideVerdicts> all;
    for (const auto &[side, box] : m_boxes) {
        all.push_back({side, verdictsAt(cautions, side)});
        box->setEnabled(!stopAmong(all.back().verdicts));
    }
    sayBarred(all);
}

void SheetRow::sayBarred(const std::vector<SideVerdicts> &sides)
{
    const CautionVerdict *stop = nullptr;
    const CautionVerdict *adapt = nullptr;
    QStringList stopped; // sides
    for (const SideVerdicts &one : sides) {
        if (const CautionVerdict *here = stopAmong(one.verdicts)) {
            stop = stop ? stop : here;
            stopped << loud(one.side);
        }
        const auto grave = std::find_if(one.verdicts.begin(), one.verdicts.end(), [this](const CautionVerdict &v) {
            return v.verdict == Verdict::Adapt && !v.condition.empty() && !m_throughout.contains(v.rule);
        });
        if (!adapt && grave != one.verdicts.end())
            adapt = &*grave;
    }
    m_barred->setVisible(stop || adapt);
    if (stop && stopped.size() < static_cast<qsizetype>(sides.size()))
        m_barred->say(tr("Leave the %1: %2", "a side, the reason").arg(stopped.front(), QString::fromStdString(stop->reason)));
    else if (stop)
        m_barred->say(tr("Leave it: %1").arg(QString::fromStdString(stop->reason)));
    else if (adapt)
        m_barred->say(tr("Adapt: %1").arg(QString::fromStdString(adapt->reason)));
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
