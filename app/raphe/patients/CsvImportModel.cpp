#include "app/raphe/patients/CsvImportModel.h"

#include "app/raphe/patients/PersonWords.h"
#include "app/raphe/practice/FormParts.h"

#include <algorithm>

namespace raphe {

CsvImportModel::CsvImportModel(QObject *parent) : QAbstractTableModel(parent) { }

void CsvImportModel::show(CsvLook look)
{
    beginResetModel();
    m_look = std::move(look);
    judgeRows();
    chooseShown();
    count();
    endResetModel();
    Q_EMIT countsChanged();
}

void CsvImportModel::judgeRows()
{
    const std::vector<CsvRow> &rows = m_look.preview.rows;
    m_state.assign(rows.size(), State::Ticked);
    m_reasons.assign(rows.size(), {});
    for (std::size_t i = 0; i < rows.size(); ++i) {
        if (rows[i].ok())
            continue;
        const RowError &error = rows[i].error();
        m_state[i] = State::Mistake;
        m_reasons[i] = sentence({error.code, error.column, error.detail});
    }
    for (const CsvDuplicate &duplicate : m_look.preview.duplicates) {
        m_state[duplicate.row] = State::Open;
        QString &reason = m_reasons[duplicate.row];
        reason += (reason.isEmpty() ? QString() : QStringLiteral(" ")) + likeWhom(duplicate);
    }
}

QString CsvImportModel::likeWhom(const CsvDuplicate &duplicate) const
{
    const bool isRow = duplicate.among == CsvDuplicate::Among::Rows;
    const PatientRecord &other = isRow ? m_look.preview.rows[duplicate.other].record() : m_look.existing[duplicate.other];
    const QString name = QString::fromStdString(other.name);
    return isRow ? tr("Perhaps the same person as in line %1: %2, %3.", "a line, a name, 'born ...'")
                       .arg(QString::number(m_look.preview.rows[duplicate.other].line), name, bornWords(other.born))
                 : tr("Perhaps there already: %1, %2.", "a name, 'born ...'").arg(name, bornWords(other.born));
}

void CsvImportModel::showOnlyLooks(bool only)
{
    beginResetModel();
    m_onlyLooks = only;
    chooseShown();
    endResetModel();
}

void CsvImportModel::chooseShown()
{
    m_shown.clear();
    for (std::size_t i = 0; i < m_state.size(); ++i)
        if (!m_onlyLooks || !m_reasons[i].isEmpty())
            m_shown.push_back(i);
}

void CsvImportModel::count()
{
    const auto having = [this](
                            State state) { return static_cast<std::size_t>(std::count(m_state.begin(), m_state.end(), state)); };
    const auto reasons = static_cast<std::size_t>(
        std::count_if(m_reasons.begin(), m_reasons.end(), [](const QString &reason) { return !reason.isEmpty(); }));
    const std::size_t mistakes = having(State::Mistake);
    m_counts = {m_state.size(), having(State::Ticked), having(State::Imported), reasons - mistakes, mistakes};
}

void CsvImportModel::setTicked(const std::vector<int> &rows, bool ticked)
{
    if (rows.empty())
        return;
    for (const int row : rows)
        if (canTick(rowAt(row)))
            m_state[rowAt(row)] = ticked ? State::Ticked : State::Open;
    const auto [first, last] = std::minmax_element(rows.begin(), rows.end());
    Q_EMIT dataChanged(index(*first, Tick), index(*last, Tick), {Qt::CheckStateRole});
    count();
    Q_EMIT countsChanged();
}

void CsvImportModel::setImported()
{
    std::replace(m_state.begin(), m_state.end(), State::Ticked, State::Imported);
    count();
    if (!m_shown.empty())
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columns - 1));
    Q_EMIT countsChanged();
}

std::set<std::size_t> CsvImportModel::leftOut() const
{
    std::set<std::size_t> out;
    for (std::size_t i = 0; i < m_state.size(); ++i)
        if (m_state[i] != State::Ticked)
            out.insert(out.end(), i);
    return out;
}

int CsvImportModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_shown.size());
}

int CsvImportModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : columns;
}

QString CsvImportModel::text(std::size_t row, int column) const
{
    const CsvRow &content = m_look.preview.rows[row];
    switch (column) {
    case Line: return QString::number(content.line);
    case Name: return content.ok() ? QString::fromStdString(content.record().name) : QString();
    case Born: return content.ok() ? dayWords(content.record().born) : QString();
    case Look: return m_state[row] == State::Imported ? tr("Imported.") : m_reasons[row];
    default: return {};
    }
}

QVariant CsvImportModel::data(const QModelIndex &index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const std::size_t row = rowAt(index.row());
    if (index.column() == Tick) {
        if (role == Qt::CheckStateRole && m_state[row] != State::Mistake)
            return m_state[row] == State::Open ? Qt::Unchecked : Qt::Checked;
        if (role == Qt::AccessibleTextRole)
            return tr("Import line %1").arg(m_look.preview.rows[row].line);
        return {};
    }
    if (role == Qt::DisplayRole || (role == Qt::ToolTipRole && index.column() != Line))
        return text(row, index.column());
    if (role == Qt::TextAlignmentRole && index.column() == Line)
        return QVariant::fromValue(Qt::AlignRight | Qt::AlignVCenter);
    return {};
}

QVariant CsvImportModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal)
        return {};
    if (role == Qt::TextAlignmentRole)
        return QVariant::fromValue((section == Line ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    if (role != Qt::DisplayRole)
        return {};
    switch (section) {
    case Tick: return tr("Import");
    case Line: return tr("Line");
    case Name: return tr("Name");
    case Born: return tr("Born");
    case Look: return tr("To look at");
    default: return {};
    }
}

// A cell that cannot be ticked stays enabled: the arrow keys would pass over its row.
Qt::ItemFlags CsvImportModel::flags(const QModelIndex &index) const
{
    const bool isBox = index.isValid() && index.column() == Tick && canTick(rowAt(index.row()));
    return QAbstractTableModel::flags(index) | (isBox ? Qt::ItemIsUserCheckable : Qt::NoItemFlags);
}

bool CsvImportModel::setData(const QModelIndex &index, const QVariant &value, int role)
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid) || index.column() != Tick || role != Qt::CheckStateRole
        || !canTick(rowAt(index.row())))
        return false;
    setTicked({index.row()}, value.value<Qt::CheckState>() == Qt::Checked);
    return true;
}

} // namespace raphe
