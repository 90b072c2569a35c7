#include "app/raphe/practice/AccessModel.h"

#include "app/raphe/practice/EntryWords.h"
#include "core/record/PatientSearch.h"

namespace raphe {

AccessModel::AccessModel(bool withPatient, QObject *parent) : QAbstractTableModel(parent), m_withPatient(withPatient) { }

void AccessModel::setAccesses(const std::vector<AccessRow> &accesses, const std::function<QString(std::int64_t)> &nameOf)
{
    beginResetModel();
    m_rows.clear();
    for (auto access = accesses.rbegin(); access != accesses.rend(); ++access) {
        Row row;
        row.words[When] = momentWords(access->madeAt);
        row.words[Who] = access->account.empty() ? tr("unknown user") : QString::fromStdString(access->account);
        row.words[What] = actWords(access->kind);
        if (access->patient && m_withPatient)
            row.words[Whose] = nameOf(*access->patient);
        for (const QString &words : row.words)
            row.searched += foldedWords(words.toStdString()) + " ";
        m_rows.push_back(std::move(row));
    }
    filter();
    endResetModel();
}

void AccessModel::setTyped(const QString &typed)
{
    beginResetModel();
    m_typed = typed;
    filter();
    endResetModel();
}

void AccessModel::filter()
{
    const PatientQuery query(m_typed.toStdString());
    m_shown.clear();
    for (std::size_t i = 0; i < m_rows.size(); ++i)
        if (query.matches(m_rows[i].searched))
            m_shown.push_back(i);
}

int AccessModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_shown.size());
}

int AccessModel::columnCount(const QModelIndex &parent) const
{
    if (parent.isValid())
        return 0;
    return m_withPatient ? 4 : 3;
}

QVariant AccessModel::data(const QModelIndex &index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid) || (role != Qt::DisplayRole && role != Qt::ToolTipRole))
        return {};
    return m_rows[m_shown[static_cast<std::size_t>(index.row())]].words[static_cast<std::size_t>(index.column())];
}

QVariant AccessModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    switch (section) {
    case When: return tr("When", "column: a moment");
    case Who: return tr("Who", "column: a user");
    case What: return tr("What", "column: what was done");
    case Whose: return tr("Whose record", "column: a patient");
    default: return {};
    }
}

} // namespace raphe
