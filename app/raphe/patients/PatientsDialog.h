// Finding a patient, and making sure that it is the right one: a list that follows what is typed, then name, birth date and mark
// in large letters, to be compared with the person in the room.
#pragma once

#include "app/raphe/patients/PatientsModel.h"
#include "core/safety/SafetyRules.h"

#include <QDialog>

#include <memory>

class QLineEdit;
class QListView;
class QPushButton;
class QStackedWidget;

namespace raphe {

class WrappedLabel;

class PatientsDialog : public QDialog {
    Q_OBJECT

public:
    /// What the patient is looked up for.
    enum class Purpose {
        Open, // the record: identity is confirmed
        MoveTo // a visit that was written under another name
    };

    /// The list is read beside the window, and is there a moment later.
    PatientsDialog(Practice &practice, const SafetyRules &rules, Purpose purpose, QWidget *parent = nullptr);
    ~PatientsDialog() override;

    /// The patient whose identity was confirmed; 0 when the dialog was left.
    [[nodiscard]] std::int64_t chosen() const { return m_chosen; }

    void keyPressEvent(QKeyEvent *event) override;
    /// Writes all that the file holds on the chosen patient, as JSON or, for a name that ends in .txt, for people to read. Says
    /// what happened; the file is not sealed.
    void exportTo(const QString &file);
    /// Takes over a record or a visit from a file, beside the window, and says what happened; the patient is chosen in the list.
    void takeOverFrom(const QString &file);

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    QWidget *makeListPage();
    QWidget *makeGuardPage(Purpose purpose);
    void readPatients(std::int64_t select = 0);
    void showPatients(Result<std::vector<PatientCard>> patients, std::int64_t select);
    void tellCount();
    void showCount();
    void askIdentity(std::int64_t id);
    void backToList();
    [[nodiscard]] bool isOnFile(const PatientRecord &record) const;
    void newPatient();
    void editRecord();
    void joinDuplicates();
    void importList();
    void lookAtRetention();
    void askForExport();
    void askForFile();
    void complain(const Error &error);
    [[nodiscard]] std::int64_t current() const;

    Practice &m_practice;
    const SafetyRules &m_rules;
    PatientsModel m_model;
    QStackedWidget *m_pages;
    QLineEdit *m_typed = nullptr;
    QListView *m_list = nullptr;
    QPushButton *m_open = nullptr;
    QPushButton *m_record = nullptr;
    WrappedLabel *m_message = nullptr;
    WrappedLabel *m_name = nullptr;
    WrappedLabel *m_born = nullptr;
    WrappedLabel *m_mark = nullptr;
    QPushButton *m_confirm = nullptr;
    struct Reading;
    std::shared_ptr<Reading> m_reading; // under way, and the list is not shown yet
    QString m_takenOver; // said once the list is read anew
    std::int64_t m_asked = 0;
    std::int64_t m_chosen = 0;
};

} // namespace raphe
