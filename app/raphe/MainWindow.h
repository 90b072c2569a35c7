// The window: visit, findings and what they lead to on the left, the body in the middle, the hands' place and its ties on the
// right.
#pragma once

#include "app/raphe/AimPanel.h"
#include "app/raphe/BodyPanes.h"
#include "app/raphe/CardPanel.h"
#include "app/raphe/ReasonPanel.h"
#include "app/raphe/SearchBox.h"
#include "app/raphe/Settings.h"
#include "app/raphe/TracePanel.h"
#include "app/raphe/VisitPanel.h"
#include "app/raphe/closing/ClosePage.h"
#include "app/raphe/closing/RetestPage.h"
#include "app/raphe/examination/ExaminePage.h"
#include "app/raphe/examination/FeelPanel.h"
#include "app/raphe/examination/LineBar.h"
#include "app/raphe/examination/TimelinePanel.h"
#include "app/raphe/intake/IntakePage.h"
#include "app/raphe/intake/SafetyBanner.h"
#include "app/raphe/plan/PlanPanel.h"
#include "app/raphe/practice/BackupRunner.h"
#include "core/base/Phrases.h"

#include <QMainWindow>

#include <atomic>
#include <functional>
#include <memory>

class QComboBox;
class QLabel;
class QShortcut;
class QStackedWidget;
class QTabWidget;
class QToolBar;
class QToolButton;

namespace raphe {

class Help;
class PatientWindow;
class VisitPages;
struct PageOffer;

class MainWindow : public QMainWindow {
    Q_OBJECT

public:
    explicit MainWindow(VisitSession &session, QWidget *parent = nullptr);
    ~MainWindow() override;

    void setTheme(const Theme &theme);
    void setLayer(Layer layer);
    [[nodiscard]] BodyView &bodyView(View view, Side facing = Side::Right) { return m_bodies->viewOf({view, facing}); }
    [[nodiscard]] BodyPanes &bodies() { return *m_bodies; }
    /// Writes the visit map of the open visit; says in the status line what happened.
    bool exportMap(const QString &file, Paper paper);
    /// In the status bar, while nobody has typed part of it from paper.
    void remindOfRecoveryKey();
    /// As long as the file that a back-up took the place of lies beside it.
    void remindOfRestore();
    [[nodiscard]] BackupRunner &backups() { return *m_backups; }
    [[nodiscard]] VisitPanel &visitPanel() { return *m_visitPanel; }
    [[nodiscard]] IntakePage &intake() { return *m_intake; }
    [[nodiscard]] ExaminePage &examine() { return *m_examine; }
    [[nodiscard]] RetestPage &retest() { return *m_retest; }
    [[nodiscard]] ClosePage &closing() { return *m_close; }
    [[nodiscard]] LineBar &line() { return *m_line; }
    [[nodiscard]] FeelPanel &feel() { return *m_feel; }
    [[nodiscard]] PlanPanel &planPanel() { return *m_planPanel; }
    [[nodiscard]] Help &help() { return *m_help; }
    /// What stands in the middle.
    enum class Middle { Body, Intake, Examine, Retest, Close };
    void showMiddle(Middle middle);
    [[nodiscard]] Middle middle() const;
    /// Intake in the place of the body, or the body again.
    void showIntake(bool isIntake) { showMiddle(isIntake ? Middle::Intake : Middle::Body); }
    [[nodiscard]] bool isIntake() const { return middle() == Middle::Intake; }

Q_SIGNALS:
    void lockWanted();
    void settingsChanged();
    /// Hands are busy: nobody touches the computer, and it is not to be locked for that.
    void treating(bool isBusy);

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;
    void closeEvent(QCloseEvent *event) override;

private:
    void makeToolBar();
    void makePracticeMenu(QToolButton *button);
    void makePagesMenu(QToolButton *button);
    void makeHelp(QToolButton *button);
    void makeShortcuts();
    void changeSettings();
    void showAccesses();
    void checkPractice();
    void showMarks();
    void showWhose();
    void tellSaveFailed(const QString &message);
    void askConsent();
    void tell(const QString &message);
    void decideOnSign(const QString &id);
    [[nodiscard]] bool mayExamine();
    void toggleIntake();
    void toggle(Middle middle);
    void logHeld(const TreatmentStep &step, const QString &why);
    void makePass(const std::vector<Place> &places);
    void makeSweep();
    void treat();
    [[nodiscard]] QString helpTopic() const;
    // Pages, in MainWindowPages.cpp.
    void showPages(std::size_t first);
    void showOffers(std::vector<PageOffer> offers, std::size_t first);
    void askForForm();
    void writeLetter();
    void exchange();
    void tellWritten(const Result<Done> &written, const QString &file);
    void goTo(const Place &place);
    [[nodiscard]] bool isPlanning() const;
    void numberMarks();
    void handToPatient();
    void giveScreen(Language language, PatientWindow *inPlaceOf);
    void showReason(const Place &place, const std::vector<LitPlace> &lit, const std::vector<PathStep> &path);
    void tellTheme(Appearance appearance);

    VisitSession &m_session;
    Settings m_settings;
    std::unique_ptr<VisitPages> m_pages;
    VisitPanel *m_visitPanel;
    ReasonPanel *m_reasonPanel;
    PlanPanel *m_planPanel;
    TimelinePanel *m_timeline;
    QTabWidget *m_visitTabs; // what was recorded, what it leads to, and when
    BodyPanes *m_bodies;
    AimPanel *m_aimPanel;
    TracePanel *m_tracePanel;
    CardPanel *m_cardPanel;
    QTabWidget *m_about; // ties and card of the place aimed at
    QComboBox *m_layers = nullptr;
    SearchBox *m_search;
    QLabel *m_hoverName;
    QLabel *m_savedSign;
    BackupRunner *m_backups;
    std::shared_ptr<std::atomic<bool>> m_stopCheck; // of the whole file
    SafetyBanner *m_banner;
    IntakePage *m_intake;
    ExaminePage *m_examine;
    RetestPage *m_retest;
    ClosePage *m_close;
    LineBar *m_line;
    FeelPanel *m_feel;
    Help *m_help;
    QStackedWidget *m_middle = nullptr; // the body, intake, or the sheet
    Middle m_beforeIntake = Middle::Body; // where one goes back to
    QWidget *m_left = nullptr; // of the visit
    QWidget *m_right = nullptr; // of the place aimed at
    QToolButton *m_toIntake = nullptr;
    QToolButton *m_toExamine = nullptr;
    QToolButton *m_toRetest = nullptr;
    QToolButton *m_toClose = nullptr;
    std::vector<QShortcut *> m_bodyKeys; // rest while the body is not seen
};

} // namespace raphe
