// Intake on one page: the pain drawing, the complaints, what was told since the last visit, and the way on to consent, the
// patient's own screen and the examination.
#pragma once

#include "app/raphe/VisitSession.h"
#include "app/raphe/intake/PainPanel.h"

class QCheckBox;
class QPlainTextEdit;
class QPushButton;
class QScrollArea;
class QTabBar;

namespace raphe {

class ComplaintForm;
class SinceLastCard;
class TextBlock;
class WrappedLabel;

class IntakePage : public QWidget {
    Q_OBJECT

public:
    explicit IntakePage(VisitSession &session, QWidget *parent = nullptr);

    void setTheme(const Theme &theme);
    [[nodiscard]] PainPanel &pain() { return *m_pain; }
    /// Puts the keys where one begins to type.
    void begin();

Q_SIGNALS:
    void examinationWanted();
    void consentWanted();
    void patientWanted();
    void formWanted();
    void refused(const QString &message);

protected:
    void showEvent(QShowEvent *event) override;

private:
    [[nodiscard]] QWidget *makeHead();
    [[nodiscard]] QWidget *makeForm();
    void showVisit();
    void showComplaint();
    void chooseComplaint(int index);
    void addComplaint();
    void putFirst();
    void takeComplaint();
    [[nodiscard]] const Complaint *before(const Complaint &complaint) const;

    VisitSession &m_session;
    PainPanel *m_pain;
    SinceLastCard *m_since = nullptr;
    QTabBar *m_tabs = nullptr;
    QPushButton *m_first = nullptr;
    WrappedLabel *m_twice = nullptr; // two complaints in the same words
    WrappedLabel *m_asked = nullptr; // when it was told, where that was not today
    QPushButton *m_stillSo = nullptr;
    ComplaintForm *m_form = nullptr;
    TextBlock *m_promised = nullptr;
    QCheckBox *m_injured = nullptr;
    QPushButton *m_consent = nullptr;
    QPushButton *m_examine = nullptr;
    QScrollArea *m_scroll = nullptr;
    std::size_t m_current = 0; // of the visit's complaints; may be one past them: a new one
    bool m_filling = false;
};

} // namespace raphe
