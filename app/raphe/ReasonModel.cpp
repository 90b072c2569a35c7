#include "app/raphe/ReasonModel.h"

#include "core/reasoning/ReasonWords.h"

#include <algorithm>
#include <cmath>

namespace raphe {

namespace {

const Judgement *judgementOf(const Visit &visit, AdviceList list, const Place &place)
{
    const auto it = std::find_if(
        visit.judgements.begin(), visit.judgements.end(), [&](const Judgement &j) { return j.list == list && j.place == place; });
    return it == visit.judgements.end() ? nullptr : &*it;
}

// Scores of 'explain' fall off by powers: ten halvings are the length of the bar.
double barOf(double score)
{
    return std::max(0.0, 1 + std::log2(std::max(score, 1e-9)) / 10);
}

QString inWords(Verdict verdict)
{
    switch (verdict) {
    case Verdict::Ask: return ReasonModel::tr("Ask first");
    case Verdict::Adapt: return ReasonModel::tr("Adapt");
    case Verdict::Stop: break;
    }
    return ReasonModel::tr("Leave out some techniques");
}

} // namespace

ReasonModel::ReasonModel(const Atlas &atlas, AdviceList list, QObject *parent)
    : QAbstractListModel(parent), m_atlas(atlas), m_list(list)
{
}

void ReasonModel::clear()
{
    beginResetModel();
    m_rows.clear();
    endResetModel();
}

void ReasonModel::show(const Advice &advice, const Visit &visit)
{
    beginResetModel();
    m_rows.clear();
    m_general = advice.general;
    switch (m_list) {
    case AdviceList::Explain: {
        const auto &list = advice.reasons.explain;
        const auto ahead =
            std::find_if(list.begin(), list.end(), [&](const Suggestion &s) { return s.score < advice.reasons.unexplained; });
        addOffered({list.begin(), ahead}, visit);
        if (!list.empty())
            addHeading(tr("Or nothing that was found explains it"), barOf(std::min(1.0, advice.reasons.unexplained)));
        addOffered({ahead, list.end()}, visit);
        break;
    }
    case AdviceList::Check: addOffered(groupedByPosition(advice.reasons.check), visit); break;
    case AdviceList::Treat:
        addOffered(advice.treatment.treat, visit);
        if (!advice.treatment.leave.empty())
            addHeading(tr("Leave alone for now"));
        for (const Suggestion &s : advice.treatment.leave)
            m_rows.push_back({{}, s, false, {}, 0});
        break;
    }
    for (const Judgement &judgement : visit.judgements) { // what was pinned does not vanish
        const auto isHere = [&](const Row &row) { return row.offered && row.offered->place == judgement.place; };
        if (judgement.list != m_list || !judgement.isPinned() || std::any_of(m_rows.begin(), m_rows.end(), isHere))
            continue;
        Suggestion s(judgement.place);
        s.why = tr("Not offered any more.").toStdString();
        m_rows.insert(m_rows.begin(), {{}, s, true, {}, 0});
    }
    const auto isDismissed = [](const Row &row) { return !row.dismissed.isEmpty(); };
    const auto dismissed = std::stable_partition(m_rows.begin(), m_rows.end(), [&](const Row &row) { return !isDismissed(row); });
    if (dismissed != m_rows.end())
        m_rows.insert(dismissed, {tr("Dismissed"), {}, false, {}, 0});
    endResetModel();
}

// Pinned rows first; checks with a heading where the position changes.
void ReasonModel::addOffered(std::vector<Suggestion> list, const Visit &visit)
{
    double best = 0;
    for (const Suggestion &s : list)
        best = std::max(best, s.score);
    const auto isPinned = [&](const Suggestion &s) {
        const Judgement *judgement = judgementOf(visit, m_list, s.place);
        return judgement && judgement->isPinned();
    };
    const auto pinned = std::stable_partition(list.begin(), list.end(), isPinned) - list.begin();
    std::optional<Position> position;
    for (std::size_t i = 0; i < list.size(); ++i) {
        Suggestion &s = list[i];
        const Judgement *judgement = judgementOf(visit, m_list, s.place);
        const QString dismissed = judgement ? QString::fromStdString(judgement->dismissed) : QString();
        if (static_cast<std::ptrdiff_t>(i) >= pinned && s.position && s.position != position && dismissed.isEmpty()) {
            position = s.position;
            addHeading(QString::fromStdString(positionInWords(*position)));
        }
        const double bar = m_list == AdviceList::Explain ? barOf(s.score) : (best > 0 ? s.score / best : 0);
        m_rows.push_back({{}, s, static_cast<std::ptrdiff_t>(i) < pinned, dismissed, bar});
    }
}

void ReasonModel::addHeading(const QString &text, double bar)
{
    Row row;
    row.heading = text;
    row.heading[0] = row.heading[0].toUpper();
    row.bar = bar;
    m_rows.push_back(std::move(row));
}

const Suggestion *ReasonModel::suggestion(int row) const
{
    if (row < 0 || row >= rowCount() || !m_rows[static_cast<std::size_t>(row)].offered)
        return nullptr;
    return &*m_rows[static_cast<std::size_t>(row)].offered;
}

int ReasonModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

Qt::ItemFlags ReasonModel::flags(const QModelIndex &index) const
{
    if (index.isValid() && !suggestion(index.row()))
        return Qt::ItemNeverHasChildren;
    return QAbstractListModel::flags(index);
}

// What the rules say of this place alone; what holds everywhere stands above the lists.
QStringList ReasonModel::cautionsOf(const Suggestion &s, bool inFull) const
{
    QStringList full;
    std::optional<Verdict> gravest;
    for (const CautionVerdict &v : s.cautions) {
        const bool isGeneral = std::any_of(
            m_general.begin(), m_general.end(), [&](const CautionVerdict &general) { return general.rule == v.rule; });
        if (isGeneral || v.reason == s.why)
            continue;
        gravest = gravest.value_or(v.verdict);
        full << tr("%1: %2", "verdict of a caution rule: its reason").arg(inWords(v.verdict), QString::fromStdString(v.reason));
    }
    if (inFull || !gravest)
        return full;
    return {tr("Caution: %1 (choose the row to read it)").arg(inWords(*gravest).toLower())};
}

QStringList ReasonModel::linesOf(const Row &row, bool inFull) const
{
    if (!row.offered)
        return {};
    if (!row.dismissed.isEmpty())
        return {tr("dismissed: %1").arg(row.dismissed)};
    const Suggestion &s = *row.offered;
    QStringList lines{QString::fromStdString(s.why)};
    if (m_list == AdviceList::Treat)
        return lines + cautionsOf(s, inFull);
    if (s.path.empty())
        return lines;
    if (inFull)
        lines << QString::fromStdString(linkedInWords(m_atlas, s.path));
    else
        lines << tr("weakest link: %1").arg(QString::fromStdString(gradeInWords(weakestOf(s.path))));
    return lines;
}

QVariant ReasonModel::data(const QModelIndex &index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const Row &row = m_rows[static_cast<std::size_t>(index.row())];
    QString title = row.offered ? QString::fromStdString(m_atlas.spoken(row.offered->place)) : row.heading;
    if (row.isPinned)
        title = tr("Pinned: %1").arg(title);
    switch (role) {
    case Qt::DisplayRole: return title;
    case LinesRole: return linesOf(row, false);
    case FullLinesRole: return linesOf(row, true);
    case BarRole: return row.bar > 0 ? QVariant(row.bar) : QVariant();
    case Qt::AccessibleTextRole: return title + QStringLiteral(". ") + linesOf(row, true).join(QStringLiteral(". "));
    default: return {};
    }
}

} // namespace raphe
