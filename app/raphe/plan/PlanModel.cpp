#include "app/raphe/plan/PlanModel.h"

#include "core/plan/PlanWords.h"

#include <algorithm>
#include <utility>

namespace raphe {

namespace {

QString text(const std::string &words)
{
    return QString::fromStdString(words);
}

QString caution(const QString &reason)
{
    return PlanModel::tr("Caution: %1", "a reason").arg(reason);
}

QStringList firstOf(const PlannedStep &step)
{
    QStringList out;
    if (step.turn > 0)
        out << PlanModel::tr("turn over");
    if (step.wipe > 0)
        out << PlanModel::tr("wipe the oil off");
    if (step.rest > 0)
        out << PlanModel::tr("rest %1", "so long").arg(text(minutesInWords(step.rest)));
    return out;
}

} // namespace

void PlanModel::show(SessionPlan plan, const PlanWish &wish)
{
    beginResetModel();
    m_plan = std::move(plan);
    m_rows.clear();
    const Shared shared = sharedCautions();
    for (const auto &[reason, steps] : shared)
        m_rows.push_back({tr("Caution, steps %1: %2", "numbers, a reason").arg(steps.join(QStringLiteral(", ")), reason), {}, {},
            {}, nullptr, false});
    int number = 0;
    for (const PlannedStep &step : m_plan.steps)
        m_rows.push_back(rowOf(step, ++number, shared, wish));
    if (!m_plan.left.empty())
        m_rows.push_back({tr("Left out"), {}, {}, {}, nullptr, false});
    for (const LeftOut &left : m_plan.left)
        m_rows.push_back({text(m_atlas.spoken(left.place)), {text(left.why)}, {text(left.why)}, left.place, nullptr, true});
    endResetModel();
}

PlanModel::Shared PlanModel::sharedCautions() const
{
    Shared all;
    for (std::size_t i = 0; i < m_plan.steps.size(); ++i)
        for (const CautionVerdict &v : m_plan.steps[i].cautions) {
            const QString reason = text(v.reason);
            const QString number = QString::number(i + 1);
            const auto known = std::find_if(all.begin(), all.end(), [&](const auto &other) { return other.first == reason; });
            if (known == all.end())
                all.push_back({reason, {number}});
            else if (!known->second.contains(number))
                known->second << number;
        }
    std::erase_if(all, [](const auto &one) { return one.second.size() < 2; });
    return all;
}

PlanModel::Row PlanModel::rowOf(const PlannedStep &step, int number, const Shared &shared, const PlanWish &wish) const
{
    Row row;
    row.place = step.place;
    row.step = &step;
    row.title = tr("%1  %2%3", "number, place, and that it is pinned")
                    .arg(number)
                    .arg(text(m_atlas.spoken(step.place)), wish.pinned.contains(step.place) ? tr(", pinned") : QString());
    row.lines << tr("%1, %2%3", "a technique, how long, and that it was chosen by hand")
                     .arg(text(step.technique->name), text(minutesInWords(step.work)),
                         wish.byHand.contains(step.place) ? tr("; your choice") : QString());
    const QString position = text(positionInWords(step.position));
    row.lines << (step.cover ? tr("%1; uncover: %2", "a position, a part of the body").arg(position, text(step.cover->name))
            : step.technique->throughCloth ? tr("%1; through cloth", "a position").arg(position)
                                           : position);
    if (const QStringList first = firstOf(step); !first.isEmpty())
        row.lines << tr("First: %1.").arg(first.join(QStringLiteral(", ")));
    QStringList alike;
    for (const CautionVerdict &v : step.cautions) {
        const QString reason = text(v.reason);
        const bool isShared = std::any_of(shared.begin(), shared.end(), [&](const auto &s) { return s.first == reason; });
        (isShared ? alike : row.lines) << caution(reason);
    }
    row.fullLines = row.lines;
    for (const std::string &why : step.why)
        row.fullLines << text(why);
    row.fullLines << tr("How: %1.").arg(text(step.technique->dose.how)) << alike
                  << tr("With this technique: %1").arg(text(step.technique->caution));
    return row;
}

int PlanModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

const PlannedStep *PlanModel::step(int row) const
{
    return row >= 0 && row < rowCount() ? m_rows[static_cast<std::size_t>(row)].step : nullptr;
}

std::optional<Place> PlanModel::place(int row) const
{
    return row >= 0 && row < rowCount() ? m_rows[static_cast<std::size_t>(row)].place : std::nullopt;
}

QVariant PlanModel::data(const QModelIndex &index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const Row &row = m_rows[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Qt::DisplayRole: return row.title;
    case LinesRole: return row.lines;
    case FullLinesRole: return row.fullLines;
    case Qt::AccessibleTextRole: {
        const QString lines = row.fullLines.join(QLatin1Char(' '));
        return row.isLeft ? tr("Left out, %1: %2").arg(row.title, lines)
            : row.step    ? tr("%1: %2", "a step, what there is to it").arg(row.title, lines)
                          : row.title;
    }
    default: return {};
    }
}

Qt::ItemFlags PlanModel::flags(const QModelIndex &index) const
{
    return place(index.row()) ? Qt::ItemIsEnabled | Qt::ItemIsSelectable : Qt::NoItemFlags;
}

} // namespace raphe
