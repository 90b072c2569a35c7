// Whose visit it is: patient and visit, complaint, cautions, and the list of findings.
#pragma once

#include "app/raphe/CardDelegate.h"
#include "app/raphe/FindingsModel.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QListView;
class QPlainTextEdit;

namespace raphe {

class VisitPanel : public QWidget {
    Q_OBJECT

public:
    explicit VisitPanel(VisitSession &session, QWidget *parent = nullptr);

    void setTheme(const Theme &theme);
    /// Fills the patient and visit lists from the practice file and shows the open visit in them.
    void readPractice();

Q_SIGNALS:
    void failed(const QString &message);

private:
    void readVisits();
    void openChosenVisit();
    void newPatient();
    void newVisit();
    void showVisit();
    void showSelection();

    VisitSession &m_session;
    FindingsModel m_model;
    CardDelegate *m_delegate;
    QComboBox *m_patients;
    QComboBox *m_visits;
    QPlainTextEdit *m_complaint;
    QPlainTextEdit *m_cautions;
    QLabel *m_count;
    QListView *m_list;
    bool m_filling = false;
};

} // namespace raphe
