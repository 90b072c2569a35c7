// The versions of a visit, the newest first: who did what to it, and when.
#pragma once

#include "core/store/Practice.h"

#include <QAbstractListModel>

namespace raphe {

class VersionsModel : public QAbstractListModel {
    Q_OBJECT

public:
    using QAbstractListModel::QAbstractListModel;

    /// In the order of Practice::history.
    void setVersions(std::vector<VisitVersion> versions);
    [[nodiscard]] const VisitVersion &version(int row) const { return m_versions[indexOf(row)]; }
    /// The version before it that has a document; nullptr when it is the first.
    [[nodiscard]] const VisitVersion *before(int row) const;

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;

private:
    [[nodiscard]] std::size_t indexOf(int row) const { return m_versions.size() - 1 - static_cast<std::size_t>(row); }

    std::vector<VisitVersion> m_versions;
};

} // namespace raphe
