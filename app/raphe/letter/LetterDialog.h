// A letter to another professional about the open visit: to whom, how urgent, what is asked, and the parts as the program
// composed them, to be edited. It is kept in the visit, with what was composed beside what was changed. What was sent is not
// edited any more.
#pragma once

#include "app/raphe/VisitSession.h"
#include "app/raphe/letter/AddresseeLines.h"
#include "app/raphe/practice/WorkDialog.h"
#include "core/document/LetterDraft.h"

#include <optional>
#include <vector>

class QComboBox;
class QScrollArea;

namespace raphe {

class ChoiceRow;
class LetterTextEdit;

class LetterDialog : public WorkDialog {
    Q_OBJECT

public:
    /// Opens the letter that was begun last, or a draft where the visit keeps none. A visit must be open.
    explicit LetterDialog(VisitSession &session, QWidget *parent = nullptr);

    /// As it is written now.
    [[nodiscard]] Letter letter() const;
    /// Who does not want to lose what was typed is asked once.
    void reject() override;

Q_SIGNALS:
    /// To be shown, printed or saved as a file. It was kept before, where the visit can be changed.
    void printWanted(const raphe::Letter &letter, const raphe::LetterFacts &facts);

private:
    QWidget *makeLeft();
    QWidget *makeRight();
    void makeButtons();
    void list();
    void fillBook();
    void choose(int row);
    void show(const Letter &letter);
    void edited();
    void tell();
    [[nodiscard]] bool isChanged() const;
    [[nodiscard]] bool mayEdit() const;
    [[nodiscard]] bool check();
    bool store();
    void keep();
    void takeOut();
    void print();
    void composeAnew();
    void keepAddressee();
    void toggleSent();

    VisitSession &m_session;
    const Letter m_draft; // what the visit says now
    const Urgency m_suggestion;
    std::optional<std::size_t> m_kept; // among the visit's letters; nothing: a new one
    Letter m_base; // what the form was made of
    std::optional<Letter> m_before; // what leaving the form loses nothing of; nothing: all of it would be lost
    std::vector<Addressee> m_book;
    std::vector<Addressee> m_offered; // those of the book, and the patient's doctor
    bool m_isWarned = false;

    QComboBox *m_which;
    QComboBox *m_fromBook;
    AddresseeLines m_to;
    QPushButton *m_keepTo;
    ChoiceRow *m_urgency;
    LetterTextEdit *m_question;
    LetterTextEdit *m_reason = nullptr;
    std::vector<LetterTextEdit *> m_parts;
    QScrollArea *m_right = nullptr;
    QWidget *m_outdated = nullptr;
    QPushButton *m_anew = nullptr;
    QPushButton *m_sent = nullptr;
    QPushButton *m_takeOut = nullptr;
    QPushButton *m_print = nullptr;
    QPushButton *m_keep = nullptr;
};

} // namespace raphe
