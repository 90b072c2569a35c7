#include "app/raphe/examination/SheetRow.h"

#include "app/raphe/WrappedLabel.h"
#include "app/raphe/intake/ChoiceRow.h"
#include "app/raphe/practice/FormParts.h"
#include "core/examination/Barred.h"
#include "core/examination/RecordWords.h"

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
    return tr("MIDLINE");
}

QString SheetRow::withSide(Side side, const std::string &name)
{
    return QString::fromStdString(namedWithSide(name, side));
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
    std::vector<Said> all;
    for (const auto &[side, box] : m_boxes) {
        const std::vector<CautionVerdict> verdicts = verdictsAt(cautions, side);
        const CautionVerdict *stop = stopAmong(verdicts);
        box->setEnabled(!stop && m_session.visitId() != 0 && !m_session.isReadOnly());
        const auto milder = std::find_if(verdicts.begin(), verdicts.end(), [this](const CautionVerdict &v) { // gravest first
            return v.verdict != Verdict::Stop && !v.condition.empty() && !m_throughout.contains(v.rule);
        });
        if (!stop && milder == verdicts.end())
            continue;
        const CautionVerdict &verdict = stop ? *stop : *milder;
        const QString reason = QString::fromStdString(verdict.reason);
        const auto same = std::find_if(
            all.begin(), all.end(), [&](const Said &said) { return said.verdict == verdict.verdict && said.reason == reason; });
        if (same == all.end())
            all.push_back({verdict.verdict, reason, {side}});
        else
            same->sides.push_back(side);
    }
    sayBarred(all);
}

void SheetRow::sayBarred(const std::vector<Said> &all)
{
    QStringList lines;
    for (const Said &said : all) {
        const bool isEverywhere = said.sides.size() == m_boxes.size();
        const QString side = loud(said.sides.front());
        switch (said.verdict) {
        case Verdict::Stop:
            lines << (isEverywhere ? tr("Leave it: %1").arg(said.reason)
                                   : tr("Leave the %1: %2", "a side, the reason").arg(side, said.reason));
            break;
        case Verdict::Adapt:
            lines << (isEverywhere ? tr("Adapt: %1").arg(said.reason)
                                   : tr("Adapt on the %1: %2", "a side, the reason").arg(side, said.reason));
            break;
        case Verdict::Ask:
            lines << (isEverywhere ? tr("Ask first: %1").arg(said.reason)
                                   : tr("Ask first on the %1: %2", "a side, the reason").arg(side, said.reason));
        }
    }
    m_barred->setVisible(!lines.isEmpty());
    m_barred->say(lines.join(QLatin1Char('\n')));
}

bool SheetRow::isUnread(const ChoiceRow &row)
{
    if (row.unread().isEmpty())
        return false;
    m_session.tell(tr("'%1' is no choice here; what was recorded stays.").arg(row.unread()));
    refresh();
    return true;
}

} // namespace raphe
