// What is explained to the patient and asked before hands-on work, one item at a time in large plain type, since the patient
// looks at it too: given, refused or taken back, with a chaperone where one is offered and a guardian where one is needed. Each
// answer is recorded at once; the plain items can be agreed to in one stroke.
#pragma once

#include "app/raphe/VisitSession.h"
#include "app/raphe/practice/WorkDialog.h"

class QButtonGroup;
class QLineEdit;
class QListWidget;
class QPushButton;
class QScrollArea;

namespace raphe {

class ConsentDialog : public WorkDialog {
    Q_OBJECT

public:
    explicit ConsentDialog(VisitSession &session, QWidget *parent = nullptr);

private:
    struct Part {
        WrappedLabel *label;
        std::string ConsentItem::*text;
    };

    [[nodiscard]] QWidget *makePage();
    [[nodiscard]] QLayout *makeAnswer();
    void orderItems();
    void showItem();
    void showAnswers();
    void agreeToPlain();
    void give();
    void refuse(ConsentState state);
    [[nodiscard]] bool record(const ConsentItem &item, ConsentState state);
    /// What is missing before a yes can be recorded is said in words; false then.
    [[nodiscard]] bool isComplete(const ConsentItem &item);
    void goToNextDue();
    [[nodiscard]] bool isDue(const ConsentItem &item) const;
    [[nodiscard]] bool isGuardianNeeded(const ConsentItem &item) const;
    [[nodiscard]] const ConsentItem &current() const;
    [[nodiscard]] const ConsentAnswer *answerTo(const ConsentItem &item) const;
    [[nodiscard]] QString stateOf(const ConsentItem &item) const;
    [[nodiscard]] QString inWords(const std::string &text) const;
    [[nodiscard]] const ConsentItems &items() const { return m_session.adviser().rules().consents(); }

    VisitSession &m_session;
    QString m_keptFor; // how long the practice keeps a record
    std::vector<const ConsentItem *> m_items; // as listed: to ask, answered, the others
    WrappedLabel *m_state;
    QListWidget *m_list;
    QScrollArea *m_page = nullptr;
    std::vector<Part> m_parts;
    WrappedLabel *m_marks;
    QWidget *m_chaperone;
    QButtonGroup *m_chaperoneChoice;
    QLineEdit *m_chaperoneName;
    QWidget *m_guardian;
    QLineEdit *m_guardianName;
    QLineEdit *m_guardianRelation;
    QLineEdit *m_remark;
    QPushButton *m_given;
    QPushButton *m_refused;
    QPushButton *m_withdrawn;
    QPushButton *m_plain;
};

} // namespace raphe
