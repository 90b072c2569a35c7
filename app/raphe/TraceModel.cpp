#include "app/raphe/TraceModel.h"

#include <algorithm>

namespace raphe {

TraceModel::TraceModel(const Knowledge &knowledge, QObject *parent) : QAbstractListModel(parent), m_knowledge(knowledge) { }

void TraceModel::show(const std::optional<Place> &place, TraceGroup group, std::size_t ring)
{
    beginResetModel();
    if (place != m_place) {
        m_place = place;
        m_all = place ? trace(*m_knowledge.linkage, *place) : std::vector<Traced>{};
    }
    m_rows.clear();
    m_rings = 0;
    for (const Traced &traced : m_all) {
        if (traced.group != group)
            continue;
        m_rings = std::max(m_rings, traced.path.size());
        if (traced.path.size() <= ring)
            m_rows.push_back(traced);
    }
    endResetModel();
}

int TraceModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QStringList TraceModel::linesOf(const Traced &traced) const
{
    const Atlas &atlas = *m_knowledge.atlas;
    QStringList lines{QString::fromStdString(pathInWords(atlas, traced.path))};
    QStringList cited;
    for (const PathStep &step : traced.path) {
        const QString where =
            traced.path.size() > 1 ? tr("to %1: ").arg(QString::fromStdString(atlas.spoken(step.to))) : QString();
        lines << where + QString::fromStdString(evidenceInWords(step));
        if (!step.note.empty())
            lines << QString::fromStdString(step.note);
        for (const std::string &source : sourcesInWords(atlas, step.sources))
            if (const QString words = QString::fromStdString(source); !cited.contains(words))
                cited << words;
    }
    for (const QString &source : cited)
        lines << tr("Source: %1").arg(source);
    return lines;
}

QVariant TraceModel::data(const QModelIndex &index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const Traced &traced = m_rows[static_cast<std::size_t>(index.row())];
    const QString place = QString::fromStdString(m_knowledge.atlas->spoken(traced.place));
    switch (role) {
    case Qt::DisplayRole: return place;
    case ShortRole:
        return QStringList{QString::fromStdString(pathInWords(*m_knowledge.atlas, traced.path)),
            tr("weakest link: %1").arg(QString::fromStdString(gradeInWords(weakestOf(traced.path))))};
    case LinesRole: return linesOf(traced);
    case Qt::AccessibleTextRole: return place + QStringLiteral(". ") + linesOf(traced).join(QStringLiteral(". "));
    default: return {};
    }
}

} // namespace raphe
