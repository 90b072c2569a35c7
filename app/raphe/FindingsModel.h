// The findings of the open visit as a list: one row each, in the order of examination.
#pragma once

#include "app/raphe/VisitSession.h"

#include <QAbstractListModel>

namespace raphe {

class FindingsModel : public QAbstractListModel {
    Q_OBJECT

public:
    enum Role { NumberRole = Qt::UserRole + 1, MarkKindRole, GradeRole, FamiliarRole, DetailRole };

    explicit FindingsModel(VisitSession &session, QObject *parent = nullptr);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;

private:
    void takeOver();

    VisitSession &m_session;
    std::vector<Finding> m_findings; // what the views have been told
};

} // namespace raphe
