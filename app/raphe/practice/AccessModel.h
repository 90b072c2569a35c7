// Who did what with which record, newest first; those that hold every typed word are shown. Rows are made into words once, when
// they come in.
#pragma once

#include "core/store/Practice.h"

#include <QAbstractTableModel>

#include <array>
#include <functional>

namespace raphe {

class AccessModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { When, Who, What, Whose };

    /// `withPatient`: whether the last column is there; for one patient it would always say the same.
    explicit AccessModel(bool withPatient, QObject *parent = nullptr);

    /// In the order of Practice::accesses; `nameOf` gives the name of a patient.
    void setAccesses(const std::vector<AccessRow> &accesses, const std::function<QString(std::int64_t)> &nameOf);
    void setTyped(const QString &typed);
    [[nodiscard]] int accessCount() const { return static_cast<int>(m_rows.size()); }

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    struct Row {
        std::array<QString, 4> words; // by Column
        std::string searched; // folded words
    };
    void filter();

    bool m_withPatient;
    std::vector<Row> m_rows;
    std::vector<std::size_t> m_shown;
    QString m_typed;
};

} // namespace raphe
