// The warning signs that are to be asked for at this visit, by how fast somebody else must see the patient: one stroke answers no
// to a whole group, a yes asks what was decided. Each answer is recorded at once.
#pragma once

#include "app/raphe/VisitSession.h"
#include "app/raphe/practice/WorkDialog.h"

class QAbstractButton;
class QPushButton;

namespace raphe {

class WarningsDialog : public WorkDialog {
    Q_OBJECT

public:
    explicit WarningsDialog(VisitSession &session, QWidget *parent = nullptr);

private:
    struct Row {
        const WarningSign *sign;
        QAbstractButton *no;
        QAbstractButton *yes;
    };
    struct Group {
        std::vector<Row> rows;
        QPushButton *noToAll = nullptr;
    };

    QWidget *makeGroup(const QString &title, const std::vector<const WarningSign *> &signs);
    void answerNo(const std::vector<const WarningSign *> &signs);
    void answerYes(const WarningSign &sign);
    void addNewlyDue();
    void showAnswers();

    VisitSession &m_session;
    QVBoxLayout *m_list;
    WrappedLabel *m_state;
    std::vector<Group> m_groups;
};

} // namespace raphe
