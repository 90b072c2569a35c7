#include "app/raphe/practice/VersionsModel.h"

#include "app/raphe/practice/EntryWords.h"

namespace raphe {

void VersionsModel::setVersions(std::vector<VisitVersion> versions)
{
    beginResetModel();
    m_versions = std::move(versions);
    endResetModel();
}

const VisitVersion *VersionsModel::before(int row) const
{
    for (std::size_t i = indexOf(row); i-- > 0;)
        if (!m_versions[i].document.empty())
            return &m_versions[i];
    return nullptr;
}

int VersionsModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_versions.size());
}

QVariant VersionsModel::data(const QModelIndex &index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid) || (role != Qt::DisplayRole && role != Qt::AccessibleTextRole))
        return {};
    const VisitVersion &shown = version(index.row());
    const QString author = shown.author.empty() ? tr("unknown user") : QString::fromStdString(shown.author);
    const QString act = tr("%1 %2", "a name, what was done").arg(author, actWords(shown.kind));
    return role == Qt::DisplayRole ? act + QLatin1Char('\n') + momentWords(shown.madeAt)
                                   : tr("%1, %2", "what was done, when").arg(act, momentWords(shown.madeAt));
}

} // namespace raphe
