// The screen that the patient is given: one thing a page, large type, plain words, and no way out but the passphrase of who is
// signed in. What is answered goes into the visit at once, so that a lock or a crash loses nothing; patches of pain stay
// unconfirmed. The window behind is covered meanwhile. Deletes itself when the practitioner has taken over.
// What cannot be prevented from here: that the desktop itself switches to another program, if it lets the patient.
#pragma once

#include "app/paint/Theme.h"
#include "app/raphe/VisitSession.h"
#include "app/raphe/intake/patient/CheckPage.h"
#include "app/raphe/intake/patient/PatientAnswers.h"
#include "app/raphe/intake/patient/PatientPage.h"
#include "app/raphe/intake/patient/TakeOverDialog.h"

#include <QDialog>
#include <QPointer>

class QLabel;
class QScrollArea;
class QStackedWidget;

namespace raphe {

class HardPage;
class MarkPage;
class PlacePage;
class SincePage;
class UrgentPage;

class PatientWindow : public QDialog {
    Q_OBJECT

public:
    /// Shown already when it succeeds. Fails where the visit cannot be changed. `failures`: wrong passphrases in a row so far.
    [[nodiscard]] static Result<PatientWindow *> handOver(
        VisitSession &session, const Theme &theme, int failures, QWidget &behind, Language language = Language::English);
    ~PatientWindow() override;

    [[nodiscard]] const PatientAnswers &answers() const { return m_answers; }
    [[nodiscard]] PatientPage &page() const { return *m_stops[m_at].page; }
    /// Nothing but the passphrase ends it, or another such window that has come in its place.
    void done(int result) override;
    void giveWay();

Q_SIGNALS:
    void failuresChanged(int failures);
    /// The practitioner has the screen again; `notes` are for them.
    void takenOver(const QStringList &notes, bool isUrgent);
    /// Before anything was answered: the patient reads another language.
    void languageWanted(raphe::Language language);

protected:
    void resizeEvent(QResizeEvent *event) override;
    void changeEvent(QEvent *event) override;

private:
    struct Stop {
        PatientPage *page = nullptr;
        int patch = -1;
    };

    PatientWindow(VisitSession &session, PatientTexts texts, TakeOverDialog::Whose whose, const Theme &theme, int failures,
        QWidget &behind, Language language);
    void makeFrame();
    void makeLanguages(Language current);
    void makePages();
    template <class Page> Page *added(Page *page);
    [[nodiscard]] QPushButton *frameButton(const char *id);
    [[nodiscard]] std::vector<Stop> stops() const;
    [[nodiscard]] std::size_t stopOf(const PatientPage *page, int patch = -1) const;
    void showStop(std::size_t index);
    [[nodiscard]] std::vector<CheckPage::Answer> listedAnswers() const;
    [[nodiscard]] bool goToMissing();
    void showButtons();
    void wantOn();
    void goOn();
    void goBack();
    void take();
    void save();
    void markAgain(int patch);
    void toOtherSide(int patch);
    void showMessage();
    void askTherapist();
    void takeOver();
    [[nodiscard]] QStringList notes() const;
    void fit();

    VisitSession &m_session;
    const std::int64_t m_visit; // no other one takes the answers
    const Visit m_before; // as it was when the screen was handed over
    const PatientWords m_words;
    const TakeOverDialog::Whose m_whose;
    const Theme m_theme;
    int m_failures;
    PatientAnswers m_answers;
    PatientAnswers m_saved;
    std::vector<Stop> m_stops;
    std::size_t m_at = 0;
    bool m_returns = false; // to the last look, when this answer was changed
    bool m_toldMissing = false;
    int m_missing = 0; // how many were not answered, while the first of them is shown for that
    bool m_wentToMissing = false; // once; whoever goes on then does not want to answer
    bool m_toldHelp = false;
    bool m_isUnsaved = false;
    bool m_wantsSides = false;
    bool m_isTakenOver = false;
    QStringList m_askedForHelpAt;
    double m_scale = 0;

    QPointer<QWidget> m_cover; // of the window behind
    QLabel *m_name;
    QLabel *m_number;
    QWidget *m_languages = nullptr; // on the first page
    QStackedWidget *m_stack;
    WrappedLabel *m_message;
    QPushButton *m_therapist = nullptr;
    QPushButton *m_back = nullptr;
    QPushButton *m_help = nullptr;
    QPushButton *m_skip = nullptr;
    QPushButton *m_next = nullptr;
    std::vector<std::pair<PatientPage *, QScrollArea *>> m_pages;

    PatientPage *m_welcome = nullptr;
    UrgentPage *m_urgent = nullptr;
    PatientPage *m_story = nullptr; // nullptr: it was told before
    std::vector<MarkPage *> m_marks; // front, back, sides
    PlacePage *m_place = nullptr;
    PatientPage *m_quality = nullptr;
    PatientPage *m_strength = nullptr;
    SincePage *m_since = nullptr;
    std::vector<PatientPage *> m_questions; // after the drawing, in order
    CheckPage *m_check = nullptr;
    PatientPage *m_end = nullptr;
};

} // namespace raphe
