// The patients of the practice as a list that follows what is typed: by any part of name, birth date or complaint.
#pragma once

#include "core/store/Practice.h"

#include <QAbstractListModel>

namespace raphe {

class PatientsModel : public QAbstractListModel {
    Q_OBJECT

public:
    explicit PatientsModel(QObject *parent = nullptr);

    /// In the order in which they are shown.
    void setPatients(std::vector<PatientCard> patients);
    void setTyped(const QString &typed);
    [[nodiscard]] const PatientCard &card(int row) const { return m_patients[m_shown[static_cast<std::size_t>(row)]]; }
    /// -1 when the patient is not among those shown.
    [[nodiscard]] int rowOf(std::int64_t patient) const;
    [[nodiscard]] std::size_t patientCount() const { return m_patients.size(); }

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;

private:
    void filter();

    std::vector<PatientCard> m_patients;
    std::vector<std::size_t> m_shown; // indices into m_patients
    QString m_typed;
};

} // namespace raphe
