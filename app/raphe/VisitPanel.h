// Whose visit it is: patient and visit, what can be done with it, complaint, cautions, and the list of findings.
#pragma once

#include "app/raphe/CardDelegate.h"
#include "app/raphe/FindingsModel.h"

#include <QWidget>

class QAction;
class QComboBox;
class QLabel;
class QListView;
class QMenu;
class QPlainTextEdit;
class QPushButton;
class QToolButton;

namespace raphe {

class WrappedLabel;

class VisitPanel : public QWidget {
    Q_OBJECT

public:
    explicit VisitPanel(VisitSession &session, QWidget *parent = nullptr);

    void setTheme(const Theme &theme);
    /// Opens the patient's newest visit, or their first one, today.
    void openPatient(std::int64_t patient);
    /// Shows the dialog in which a patient is found and identity confirmed, and opens who was chosen.
    void choosePatient();
    /// Of the patient who is open, today.
    void newVisit();
    void sign();

Q_SIGNALS:
    void failed(const QString &message);
    /// A new visit is open.
    void begun();
    void closeWanted();

private:
    QWidget *makePatientRow();
    QWidget *makeVisitRow();
    void readVisits();
    void openChosenVisit();
    void editRecord();
    void chooseEpisode(int index);
    void openVisit(const Result<std::int64_t> &id, bool isNew);
    void showVisit();
    void showComplaint();
    void fill(QPlainTextEdit &edit, const QString &text);
    void showSelection();
    void tell(const Result<Done> &result);

    // The acts of the visit's menu, in VisitActs.cpp.
    void makeActs();
    void showActs();
    [[nodiscard]] bool areSidesMeant();
    [[nodiscard]] bool isReviewed();
    void writeCall();
    void amend();
    void dropAmendment();
    void markInError();
    void move();
    void showHistory();
    [[nodiscard]] std::string askReason(const QString &title, const QString &question, const QString &usual = {});

    VisitSession &m_session;
    FindingsModel m_model;
    CardDelegate *m_delegate;
    WrappedLabel *m_name = nullptr;
    WrappedLabel *m_person = nullptr; // birth date and mark
    QPushButton *m_record = nullptr;
    QWidget *m_visitRow = nullptr;
    QComboBox *m_visits = nullptr;
    QPushButton *m_newVisit = nullptr;
    QToolButton *m_acts = nullptr; // does the next one; the others are in its menu
    QMenu *m_actsMenu = nullptr;
    QAction *m_sign = nullptr;
    QAction *m_amend = nullptr;
    QAction *m_call = nullptr;
    QAction *m_dropAmendment = nullptr;
    QAction *m_move = nullptr;
    QAction *m_inError = nullptr;
    QAction *m_history = nullptr;
    QComboBox *m_episodes;
    QPlainTextEdit *m_complaint;
    QPlainTextEdit *m_cautions;
    QLabel *m_count;
    QListView *m_list;
    bool m_filling = false;
};

} // namespace raphe
