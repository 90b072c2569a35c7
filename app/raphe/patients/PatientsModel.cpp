#include "app/raphe/patients/PatientsModel.h"

#include "app/raphe/patients/PersonWords.h"
#include "core/record/PatientSearch.h"

#include <algorithm>

namespace raphe {

PatientsModel::PatientsModel(QObject *parent) : QAbstractListModel(parent) { }

void PatientsModel::setPatients(std::vector<PatientCard> patients)
{
    beginResetModel();
    m_patients = std::move(patients);
    filter();
    endResetModel();
}

void PatientsModel::setTyped(const QString &typed)
{
    beginResetModel();
    m_typed = typed;
    filter();
    endResetModel();
}

void PatientsModel::filter()
{
    const PatientQuery query(m_typed.toStdString());
    m_shown.clear();
    for (std::size_t i = 0; i < m_patients.size(); ++i)
        if (query.matches(m_patients[i].searched))
            m_shown.push_back(i);
}

int PatientsModel::rowOf(std::int64_t patient) const
{
    const auto it =
        std::find_if(m_shown.begin(), m_shown.end(), [&](std::size_t index) { return m_patients[index].id == patient; });
    return it == m_shown.end() ? -1 : static_cast<int>(it - m_shown.begin());
}

int PatientsModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_shown.size());
}

QVariant PatientsModel::data(const QModelIndex &index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const PatientCard &patient = card(index.row());
    const QString born = bornWords(patient.born);
    switch (role) {
    case Qt::DisplayRole:
        return QStringLiteral("%1\n%2").arg(QString::fromStdString(patient.name),
            patient.mark.empty() ? born : tr("%1 - %2", "birth date, mark").arg(born, QString::fromStdString(patient.mark)));
    case Qt::AccessibleTextRole: return QStringLiteral("%1, %2").arg(QString::fromStdString(patient.name), born);
    default: return {};
    }
}

} // namespace raphe
