#include "app/raphe/FindingsModel.h"

#include "core/document/VisitMap.h"

#include <algorithm>

namespace raphe {

FindingsModel::FindingsModel(VisitSession &session, QObject *parent) : QAbstractListModel(parent), m_session(session)
{
    connect(&session, &VisitSession::findingsChanged, this, &FindingsModel::takeOver);
    takeOver();
}

int FindingsModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_findings.size());
}

QVariant FindingsModel::data(const QModelIndex &index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const Finding &f = m_findings[static_cast<std::size_t>(index.row())];
    const Atlas &atlas = *m_session.knowledge().atlas;
    const QString place = QString::fromStdString(atlas.spoken(f.place));
    const QString detail = QString::fromStdString(findingInWords(atlas, f));
    switch (role) {
    case Qt::DisplayRole: return place;
    case Qt::AccessibleTextRole: return tr("%1: %2: %3", "number, place, finding").arg(index.row() + 1).arg(place, detail);
    case DetailRole: return detail;
    case NumberRole: return index.row() + 1;
    case MarkKindRole: return static_cast<int>(markKindOf(f));
    case GradeRole: return std::max(f.tendernessGrade(), f.restrictionGrade());
    case FamiliarRole: return f.familiar;
    default: return {};
    }
}

// Rows are added or removed singly where that is what happened, so that the views keep their selection.
void FindingsModel::takeOver()
{
    const auto &now = m_session.visit().findings;
    const auto [before, after] = std::mismatch(m_findings.begin(), m_findings.end(), now.begin(), now.end());
    const auto at = static_cast<int>(before - m_findings.begin());
    if (now.size() == m_findings.size() + 1 && std::equal(before, m_findings.end(), after + 1, now.end())) {
        beginInsertRows({}, at, at);
        m_findings = now;
        endInsertRows();
    } else if (now.size() + 1 == m_findings.size() && std::equal(before + 1, m_findings.end(), after, now.end())) {
        beginRemoveRows({}, at, at);
        m_findings = now;
        endRemoveRows();
    } else if (now.size() == m_findings.size()) {
        m_findings = now;
        if (!now.empty())
            Q_EMIT dataChanged(index(0), index(static_cast<int>(now.size()) - 1));
    } else {
        beginResetModel();
        m_findings = now;
        endResetModel();
    }
}

} // namespace raphe
