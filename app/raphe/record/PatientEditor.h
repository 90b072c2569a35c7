// Writing down or changing a patient's record: who it is, whom to call, what bears on the work, and the complaints. Ctrl+Return
// saves, Escape leaves. The dialog changes nothing but its own copy of the record; whoever opened it reads record() when it was
// accepted, or has it saved while the form still stands: see saveThrough().
#pragma once

#include "app/raphe/ScopedConnection.h"
#include "core/record/PatientRecord.h"
#include "core/safety/SafetyRules.h"

#include <QDialog>
#include <QPointer>

#include <functional>

class QLabel;
class QPushButton;
class QStackedWidget;
class QTabWidget;

namespace raphe {

class BloodPressureEdit;
class ComplaintRow;
class ConditionsEdit;
class ContactEdit;
class ImplantRow;
class KeptList;
class OptionalDateEdit;
class PregnancyEdit;
class ReferenceEdit;
class RecordPage;
class SurgeryRow;
class TextBlockField;
class TextField;
class TextRow;
class WrappedLabel;
template <class Row> class RowsOf;

class PatientEditor : public QDialog {
    Q_OBJECT

public:
    /// An empty record begins a new one. `rules` give the names of the standing conditions; they must outlive the dialog.
    PatientEditor(PatientRecord record, const SafetyRules &rules, QWidget *parent = nullptr);

    /// As it is written now; what cannot be read yet is left out of it.
    [[nodiscard]] PatientRecord record() const;

    /// Called with the record before the dialog is accepted. When it fails the dialog stays, and says why.
    void saveThrough(std::function<Result<Done>(const PatientRecord &)> save) { m_save = std::move(save); }

    /// Saves, when nothing is to be corrected.
    void accept() override;
    /// Asks once when something was written.
    void reject() override;

protected:
    void keyPressEvent(QKeyEvent *event) override;

private:
    RecordPage *makePersonPage();
    RecordPage *makeContactsPage();
    RecordPage *makeHealthPage();
    RecordPage *makeComplaintsPage();
    QWidget *makeSaveBar();
    QWidget *makeLeaveBar();
    void addPage(RecordPage *page, const QString &title);
    void fill();
    void lookAgain();
    void tellTabs();
    [[nodiscard]] bool isChanged() const;
    [[nodiscard]] bool isInOrder();
    void askToLeave();
    void backToForm();
    void complain(const Error &error);
    void say(const QString &words, bool isMistake);

    PatientRecord m_given;
    const SafetyRules &m_rules;
    std::function<Result<Done>(const PatientRecord &)> m_save;

    QTabWidget *m_tabs;
    std::vector<RecordPage *> m_pages;
    std::vector<QString> m_titles;
    QStackedWidget *m_bars;
    WrappedLabel *m_message = nullptr;
    QPushButton *m_keepWriting = nullptr;
    ScopedConnection m_focusWatch;
    QPointer<QWidget> m_writing; // where the keyboard was when the question came

    TextField *m_name = nullptr;
    RowsOf<TextRow> *m_otherNames = nullptr;
    OptionalDateEdit *m_born = nullptr;
    KeptList *m_otherBorn = nullptr;
    ReferenceEdit *m_reference = nullptr;
    TextField *m_mark = nullptr;
    TextField *m_language = nullptr;
    TextField *m_interpreter = nullptr;
    TextField *m_phone = nullptr;
    TextField *m_email = nullptr;
    TextBlockField *m_address = nullptr;
    ContactEdit *m_doctor = nullptr;
    ContactEdit *m_emergency = nullptr;
    ContactEdit *m_guardian = nullptr;
    ConditionsEdit *m_conditions = nullptr;
    RowsOf<TextRow> *m_medicines = nullptr;
    RowsOf<TextRow> *m_allergies = nullptr;
    PregnancyEdit *m_pregnancy = nullptr;
    QWidget *m_pregnancyReminder = nullptr;
    WrappedLabel *m_pregnancyDoubt = nullptr; // at a great age
    WrappedLabel *m_surgeryDoubt = nullptr; // an operation before the birth
    KeptList *m_otherPregnancies = nullptr;
    BloodPressureEdit *m_bloodPressure = nullptr;
    KeptList *m_otherBloodPressures = nullptr;
    RowsOf<TextRow> *m_unclear = nullptr;
    KeptList *m_ruledOut = nullptr;
    RowsOf<SurgeryRow> *m_surgery = nullptr;
    RowsOf<ImplantRow> *m_implants = nullptr;
    RowsOf<ComplaintRow> *m_complaints = nullptr;
};

} // namespace raphe
