#include "app/raphe/MainWindow.h"

#include "app/paint/TypedText.h"
#include "app/raphe/examination/PassDialog.h"
#include "app/raphe/examination/SweepDialog.h"
#include "app/raphe/help/Help.h"
#include "app/raphe/intake/ConsentDialog.h"
#include "app/raphe/intake/DecisionDialog.h"
#include "app/raphe/intake/patient/PatientWindow.h"
#include "app/raphe/pages/VisitPages.h"
#include "app/raphe/treatment/AskMinded.h"
#include "app/raphe/treatment/TreatmentWindow.h"
#include "app/words/ErrorText.h"
#include "core/treatment/Gate.h"

#include <QAction>
#include <QApplication>
#include <QCloseEvent>
#include <QComboBox>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QMessageBox>
#include <QPushButton>
#include <QScreen>
#include <QShortcut>
#include <QSplitter>
#include <QStackedWidget>
#include <QStatusBar>
#include <QTabWidget>
#include <QToolBar>
#include <QToolButton>
#include <QVBoxLayout>

namespace raphe {

namespace {

// A column with margins; the last widget takes the space that is left.
QWidget *withMargins(std::initializer_list<QWidget *> widgets)
{
    auto *box = new QWidget;
    auto *column = new QVBoxLayout(box);
    column->setContentsMargins(10, 10, 10, 10);
    column->setSpacing(12);

    for (QWidget *widget : widgets)
        column->addWidget(widget, widget == *(widgets.end() - 1) ? 1 : 0);
    return box;
}

} // namespace

MainWindow::MainWindow(VisitSession &session, QWidget *parent)
    : QMainWindow(parent),
      m_session(session),
      m_pages(std::make_unique<VisitPages>(session)),
      m_visitPanel(new VisitPanel(session)),
      m_reasonPanel(new ReasonPanel(session, m_settings)),
      m_planPanel(new PlanPanel(session, m_settings)),
      m_timeline(new TimelinePanel(session)),
      m_visitTabs(new QTabWidget),
      m_bodies(new BodyPanes(session.knowledge())),
      m_aimPanel(new AimPanel(session)),
      m_tracePanel(new TracePanel(session)),
      m_cardPanel(new CardPanel(session)),
      m_about(new QTabWidget),
      m_search(new SearchBox(*session.knowledge().atlas)),
      m_hoverName(new QLabel),
      m_savedSign(new QLabel),
      m_backups(new BackupRunner(session.practice(), this)),
      m_stopCheck(std::make_shared<std::atomic<bool>>(false)),
      m_banner(new SafetyBanner(session)),
      m_intake(new IntakePage(session)),
      m_examine(new ExaminePage(session)),
      m_retest(new RetestPage(session)),
      m_close(new ClosePage(session)),
      m_line(new LineBar(session)),
      m_feel(new FeelPanel(session, session.lineWords().list().textures)),
      m_help(new Help(this))
{
    setWindowTitle(tr("Raphe"));
    resize(QSize(1440, 900).boundedTo(screen()->availableSize()));
    makeToolBar();

    auto *columns = new QSplitter;
    m_visitTabs->addTab(m_visitPanel, tr("Visit"));
    m_visitTabs->addTab(m_reasonPanel, tr("Next"));
    m_visitTabs->addTab(m_planPanel, tr("Plan"));
    m_visitTabs->addTab(m_timeline, tr("When"));
    m_visitTabs->setTabToolTip(0, tr("Patient, complaint, cautions and findings (W)"));
    m_visitTabs->setTabToolTip(1, tr("What would explain it, what to check, what to treat first (W)"));
    m_visitTabs->setTabToolTip(2, tr("The best use of the minutes that are left (W)"));
    m_visitTabs->setTabToolTip(3, tr("What was examined when (W)"));
    m_visitTabs->tabBar()->setAccessibleName(tr("Visit, what next, plan, or when"));
    m_left = withMargins({m_visitTabs});
    columns->addWidget(m_left);
    auto *middle = new QWidget; // the body gives room; the columns beside it have none to give on a small screen
    auto *rows = new QVBoxLayout(middle);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(0);
    rows->addWidget(m_banner);
    m_middle = new QStackedWidget;
    for (QWidget *page : {static_cast<QWidget *>(m_intake), static_cast<QWidget *>(m_examine), static_cast<QWidget *>(m_retest),
             static_cast<QWidget *>(m_close)})
        page->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored); // before the first layout, which else makes room for all
    m_middle->addWidget(m_bodies);
    m_middle->addWidget(m_intake);
    m_middle->addWidget(m_examine);
    m_middle->addWidget(m_retest);
    m_middle->addWidget(m_close);
    rows->addWidget(m_middle, 1);
    rows->addWidget(m_line);
    columns->addWidget(middle);
    m_right = withMargins({m_aimPanel, m_about});
    columns->addWidget(m_right);
    columns->setChildrenCollapsible(false);
    columns->setStretchFactor(1, 1);
    columns->setSizes({300, 720, 420});
    setCentralWidget(columns);

    m_about->addTab(m_tracePanel, tr("Tied to it"));
    m_about->addTab(m_cardPanel, tr("Card"));
    m_about->addTab(m_feel, tr("Feel"));
    m_about->setTabToolTip(0, tr("What this place is tied to (T)"));
    m_about->setTabToolTip(1, tr("All that the atlas knows of it (I)"));
    m_about->setTabToolTip(2, tr("What else was felt here: end feel, texture, how sure, where it is felt as well (Y)"));
    m_about->tabBar()->setAccessibleName(tr("About the place: ties, card, or what was felt"));
    m_about->setCornerWidget(m_cardPanel->backButton());
    const auto showBack = [this] { m_cardPanel->backButton()->setVisible(m_about->currentWidget() == m_cardPanel); };
    connect(m_about, &QTabWidget::currentChanged, this, showBack);
    showBack();

    statusBar()->addWidget(m_hoverName, 1);
    statusBar()->addPermanentWidget(m_backups->sign());
    statusBar()->addPermanentWidget(m_savedSign);
    m_savedSign->setText(tr("Saved"));

    connect(m_bodies, &BodyPanes::touched, this, [this](const Place &place, const std::vector<UnderHit> &stack) {
        if (m_feel->isPointing())
            m_feel->pointAt(place);
        else
            m_session.aimAt({place, {}, stack});
    });
    connect(m_feel, &FeelPanel::sweepWanted, this, &MainWindow::makeSweep);
    m_line->setMeasuring([this] { return std::pair(m_examine->mode(), m_examine->device()); });
    connect(m_line, &LineBar::told, this, &MainWindow::tell);
    connect(m_line, &LineBar::helpWanted, this, [this] { m_help->openAt(QStringLiteral("typed-line"), *this); });
    connect(m_bodies, &BodyPanes::hovered, m_hoverName, &QLabel::setText);
    connect(m_tracePanel, &TracePanel::litChanged, m_bodies, &BodyPanes::setLit);
    connect(m_reasonPanel, &ReasonPanel::shown, this, &MainWindow::showReason);
    connect(m_reasonPanel, &ReasonPanel::left, m_tracePanel, &TracePanel::tell);
    connect(m_reasonPanel, &ReasonPanel::chosen, this, &MainWindow::goTo);
    connect(m_planPanel, &PlanPanel::chosen, this, &MainWindow::goTo);
    connect(m_planPanel, &PlanPanel::treatWanted, this, &MainWindow::treat);
    connect(m_planPanel, &PlanPanel::planShown, this, &MainWindow::numberMarks);
    connect(m_visitTabs, &QTabWidget::currentChanged, this, &MainWindow::numberMarks);
    connect(m_search, &SearchBox::chosen, this, &MainWindow::goTo);
    connect(m_search, &SearchBox::nothingFound, this,
        [this](const QString &text) { tell(tr("No structure is called anything like '%1'.").arg(text)); });
    connect(m_cardPanel, &CardPanel::chosen, this, &MainWindow::goTo);
    connect(&session, &VisitSession::findingsChanged, this, &MainWindow::showMarks);
    connect(&session, &VisitSession::saving, this, [this] { m_savedSign->setText(tr("Saving ...")); });
    connect(&session, &VisitSession::aimChanged, this, &MainWindow::showMarks);
    connect(&session, &VisitSession::visitOpened, this, &MainWindow::showWhose);
    connect(&session, &VisitSession::saved, this, [this] {
        m_savedSign->setText(tr("Saved"));
        m_banner->refresh();
    });
    connect(m_banner, &SafetyBanner::failed, this, &MainWindow::tell);
    connect(&session, &VisitSession::saveFailed, this, &MainWindow::tellSaveFailed);
    connect(&session, &VisitSession::refused, this, &MainWindow::tell);
    connect(&session, &VisitSession::leaving, this, [] {
        if (QWidget *typing = QApplication::focusWidget())
            typing->clearFocus(); // a number that is being typed is taken
    });
    // Once the row that was answered has come to rest.
    connect(&session, &VisitSession::signFound, this, &MainWindow::decideOnSign, Qt::QueuedConnection);
    connect(m_visitPanel, &VisitPanel::begun, this, [this] { showIntake(true); });
    connect(m_intake, &IntakePage::examinationWanted, this, [this] { showMiddle(Middle::Examine); });
    connect(m_examine, &ExaminePage::passWanted, this, &MainWindow::makePass);
    connect(m_reasonPanel, &ReasonPanel::passWanted, this, &MainWindow::makePass);
    connect(m_timeline, &TimelinePanel::placeChosen, this, &MainWindow::goTo);
    connect(m_timeline, &TimelinePanel::sheetWanted, this, [this](const QString &id) {
        showMiddle(Middle::Examine);
        m_examine->reveal(id.toStdString());
    });
    connect(m_examine, &ExaminePage::bodyWanted, this, [this] { showMiddle(Middle::Body); });
    connect(m_retest, &RetestPage::closeWanted, this, [this] { showMiddle(Middle::Close); });
    connect(m_retest, &RetestPage::treatmentWanted, this, [this] {
        showMiddle(Middle::Body);
        m_visitTabs->setCurrentWidget(m_planPanel);
    });
    connect(m_close, &ClosePage::retestWanted, this, [this] { showMiddle(Middle::Retest); });
    connect(m_close, &ClosePage::signWanted, m_visitPanel, &VisitPanel::sign);
    connect(m_visitPanel, &VisitPanel::closeWanted, this, [this] { showMiddle(Middle::Close); });
    connect(&session, &VisitSession::workHeld, this, &MainWindow::logHeld);
    connect(m_intake, &IntakePage::consentWanted, this, &MainWindow::askConsent);
    connect(m_intake, &IntakePage::formWanted, this, &MainWindow::askForForm);
    connect(m_intake, &IntakePage::patientWanted, this, &MainWindow::handToPatient);
    connect(m_intake, &IntakePage::refused, this, &MainWindow::tell);
    connect(m_visitPanel, &VisitPanel::failed, this, [this](const QString &message) { statusBar()->showMessage(message); });
    connect(m_backups, &BackupRunner::done, this, [this](const QString &words) { statusBar()->showMessage(words, 8000); });
    connect(m_backups, &BackupRunner::failed, this, [this](const QString &words) { statusBar()->showMessage(words); });

    makeShortcuts();
    qApp->installEventFilter(this);
    restoreGeometry(m_settings.geometry());
    setTheme(themeFor(m_settings.appearance()));
    setLayer(Layer::SuperficialMuscle);
    showIntake(false);
}

MainWindow::~MainWindow()
{
    m_stopCheck->store(true);
}

void MainWindow::setTheme(const Theme &theme)
{
    m_bodies->setTheme(theme);
    m_visitPanel->setTheme(theme);
    m_reasonPanel->setTheme(theme);
    m_planPanel->setTheme(theme);
    m_tracePanel->setTheme(theme);
    m_cardPanel->setTheme(theme);
    m_banner->setTheme(theme);
    m_intake->setTheme(theme);
    m_retest->setTheme(theme);
}

MainWindow::Middle MainWindow::middle() const
{
    return static_cast<Middle>(m_middle->currentIndex());
}

void MainWindow::toggleIntake()
{
    showMiddle(isIntake() ? m_beforeIntake : Middle::Intake);
}

void MainWindow::toggle(Middle middle)
{
    showMiddle(this->middle() == middle ? Middle::Body : middle);
}

void MainWindow::showMiddle(Middle middle)
{
    const std::pair<Middle, QWidget *> pages[] = {{Middle::Body, m_bodies}, {Middle::Intake, m_intake},
        {Middle::Examine, m_examine}, {Middle::Retest, m_retest}, {Middle::Close, m_close}};
    if (middle == Middle::Intake && !isIntake())
        m_beforeIntake = this->middle();
    QWidget *shown = nullptr;
    for (const auto &[which, page] : pages) {
        if (which == middle)
            shown = page;
        if (page != m_bodies) // what is not seen asks for no room
            page->setSizePolicy(which == middle ? QSizePolicy(QSizePolicy::Preferred, QSizePolicy::Preferred)
                                                : QSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored));
    }
    m_middle->setCurrentWidget(shown);
    m_middle->updateGeometry(); // the policy of a hidden page tells nobody
    m_right->setVisible(middle == Middle::Body);
    m_left->setVisible(middle != Middle::Retest); // it shows what was found first
    m_line->setVisible(middle == Middle::Body || middle == Middle::Examine);
    m_toIntake->setChecked(middle == Middle::Intake);
    m_toExamine->setChecked(middle == Middle::Examine);
    m_toRetest->setChecked(middle == Middle::Retest);
    m_toClose->setChecked(middle == Middle::Close);
    for (QShortcut *key : m_bodyKeys)
        key->setEnabled(middle == Middle::Body);
    switch (middle) {
    case Middle::Intake: m_intake->begin(); break;
    case Middle::Examine: m_examine->begin(); break;
    case Middle::Retest: m_retest->begin(); break;
    case Middle::Close: m_close->begin(); break;
    case Middle::Body: bodyView(m_bodies->shown().back().view, m_bodies->shown().back().facing).setFocus(); break;
    }
}

void MainWindow::tellTheme(Appearance appearance)
{
    m_settings.setAppearance(appearance);
    const Theme theme = themeFor(appearance);
    dress(*qobject_cast<QApplication *>(QCoreApplication::instance()), theme);
    setTheme(theme);
}

void MainWindow::askConsent()
{
    if (m_session.visitId() != 0)
        ConsentDialog(m_session, this).exec();
}

void MainWindow::tell(const QString &message)
{
    statusBar()->showMessage(message, 6000);
}

bool MainWindow::mayExamine()
{
    if (m_session.visitId() != 0 && !m_session.isReadOnly())
        return true;
    tell(m_session.visitId() == 0 ? tr("No visit is open.") : tr("This visit cannot be changed."));
    return false;
}

void MainWindow::decideOnSign(const QString &id)
{
    const WarningSign *sign = m_session.adviser().rules().signs().find(id.toStdString());
    if (!sign || m_session.visitId() == 0 || m_session.isReadOnly())
        return;
    if (const auto done = decideOn(m_session, *sign, DecisionDialog::Slip::No, this); !done)
        tell(errorText(done.error()));
    m_banner->refresh();
}

void MainWindow::makePass(const std::vector<Place> &places)
{
    if (!mayExamine())
        return;
    const Cautions cautions = m_session.cautions();
    std::vector<Place> free;
    std::copy_if(places.begin(), places.end(), std::back_inserter(free),
        [&](const Place &place) { return !cautions.stopOf(place, "palpation"); });
    if (free.size() < places.size())
        tell(tr("Cautions keep hands off %n of the places: left out.", "", static_cast<int>(places.size() - free.size())));
    if (!free.empty())
        PassDialog(m_session, m_settings, free, this).exec();
    else if (places.empty())
        tell(tr("There is no place for a pass: none is on the list."));
}

void MainWindow::makeSweep()
{
    const auto &aim = m_session.aim();
    if (!aim || !mayExamine())
        return;
    if (const auto stop = m_session.cautions().stopOf(aim->place, "palpation")) {
        tell(tr("Leave this edge: %1").arg(QString::fromStdString(stop->reason)));
        return;
    }
    constexpr Millimetres usual{1700}; // where the record has no height; our choice
    const auto height = m_session.stature();
    const auto sweep = sweepOf(*m_session.knowledge().atlas, aim->place, height.value_or(usual));
    if (sweep)
        SweepDialog(m_session, *sweep, height.has_value(), themeFor(m_settings.appearance()), this).exec();
}

void MainWindow::treat()
{
    if (!mayExamine())
        return;
    std::vector<TreatmentStep> ahead = stepsAhead(m_planPanel->plan(), m_session.visit().treatment);
    if (ahead.empty() && !isOpen(m_session.visit().treatment)) {
        tell(m_planPanel->plan().steps.empty() ? tr("The plan has no step.")
                                               : tr("All of the plan was done today; change it for more."));
        return;
    }
    m_help->close();
    auto *window = new TreatmentWindow(m_session, m_settings, themeFor(m_settings.appearance()), std::move(ahead), this);
    Q_EMIT treating(true);
    connect(window, &QDialog::accepted, this, [this] { showMiddle(Middle::Retest); });
    connect(window, &QDialog::finished, this, [this] { Q_EMIT treating(false); });
    window->setModal(true);
    if (QGuiApplication::platformName() == QLatin1String("offscreen"))
        window->show();
    else
        window->showFullScreen();
}

void MainWindow::logHeld(const TreatmentStep &step, const QString &why)
{
    if (askMinded(m_session, step, why, this))
        m_session.addWork(step, true);
}

void MainWindow::setLayer(Layer layer)
{
    m_layers->setCurrentIndex(static_cast<int>(layer));
    m_bodies->setLayer(layer);
}

void MainWindow::makeToolBar()
{
    auto *bar = addToolBar(tr("Tools"));
    bar->setMovable(false);
    bar->setContextMenuPolicy(Qt::PreventContextMenu);

    QAction *undo = m_session.undoStack().createUndoAction(this, tr("Undo"));
    undo->setShortcut(Qt::CTRL | Qt::Key_Z);
    QAction *redo = m_session.undoStack().createRedoAction(this, tr("Redo"));
    redo->setShortcuts({Qt::CTRL | Qt::SHIFT | Qt::Key_Z, Qt::CTRL | Qt::Key_Y});
    // The buttons keep one width; what would be undone stands in the tip.
    const auto addStep = [&](QAction *action, const QString &text) {
        addAction(action);
        auto *button = new QToolButton;
        button->setText(text);
        button->setAccessibleName(text);
        button->setMinimumHeight(touchTarget);
        button->setFocusPolicy(Qt::StrongFocus);
        const auto follow = [button, action] {
            button->setEnabled(action->isEnabled());
            button->setToolTip(action->text());
        };
        connect(action, &QAction::changed, button, follow);
        connect(button, &QToolButton::clicked, action, &QAction::trigger);
        follow();
        bar->addWidget(button);
    };
    addStep(undo, tr("Undo"));
    addStep(redo, tr("Redo"));
    bar->addSeparator();

    m_layers = new QComboBox;
    m_layers->setAccessibleName(tr("Layer shown"));
    m_layers->setToolTip(tr("Layer shown (Ctrl+1 to Ctrl+7; Page Up: further out, Page Down: deeper)"));
    m_layers->setMinimumHeight(touchTarget);
    m_layers->addItems({tr("Skin"), tr("Superficial fascia"), tr("Deep fascia"), tr("Superficial muscles"),
        tr("Intermediate muscles"), tr("Deep muscles"), tr("Bones and joints")});
    bar->addWidget(m_layers);
    connect(m_layers, &QComboBox::activated, this, [this](int index) { setLayer(static_cast<Layer>(index)); });

    const auto addButton = [&](const QString &text, const QString &tip, auto slot) {
        auto *button = new QToolButton;
        button->setText(text);
        button->setAccessibleName(tip);
        button->setToolTip(tip);
        button->setMinimumHeight(touchTarget);
        button->setFocusPolicy(Qt::StrongFocus);
        connect(button, &QToolButton::clicked, this, slot);
        bar->addWidget(button);
        return button;
    };
    m_toIntake = addButton(
        tr("Intake"), tr("Complaint, pain drawing, consent; and back (E, while typing Alt+E)"), [this] { toggleIntake(); });
    m_toIntake->setCheckable(true);
    m_toExamine =
        addButton(tr("Examine"), tr("Movements, joints and tests on a sheet; and back to the body (M, while typing Alt+M)"),
            [this] { toggle(Middle::Examine); });
    m_toExamine->setCheckable(true);
    m_toRetest = addButton(tr("Retest"), tr("What was stiff or sore, examined again after the treatment (J, while typing Alt+J)"),
        [this] { toggle(Middle::Retest); });
    m_toRetest->setCheckable(true);
    m_toClose = addButton(tr("Close"), tr("What goes home, how it goes on, and the signature (K, while typing Alt+K)"),
        [this] { toggle(Middle::Close); });
    m_toClose->setCheckable(true);
    auto *views = addButton(tr("Views"), tr("Which views are shown (V: the next)"), [] {});
    auto *list = new QMenu(views);
    for (const Arrangement &arrangement : BodyPanes::arrangements()) {
        QAction *action = list->addAction(arrangement.name, this, [this, arrangement] { m_bodies->show(arrangement.panes); });
        action->setShortcut(arrangement.key);
        addAction(action); // the key works while the menu is closed
    }
    list->addSeparator();
    QAction *turn =
        list->addAction(tr("From the head end"), this, [this] { m_bodies->setUpsideDown(!m_bodies->isUpsideDown()); });
    turn->setCheckable(true);
    turn->setShortcut(Qt::Key_X);
    addAction(turn);
    views->setMenu(list);
    views->setPopupMode(QToolButton::InstantPopup);
    addButton(tr("Whole body"), tr("Show the whole body again (H)"), [this] { m_bodies->resetZoom(); });
    m_search->setMaximumWidth(320);
    bar->addWidget(m_search);
    auto *space = new QWidget;
    space->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    bar->addWidget(space);

    makePracticeMenu(addButton(tr("Practice"), tr("Lock, back-up, settings, who opened what"), [] {}));
    auto *look = addButton(tr("Look"), tr("Light, dark or as the system has it"), [] {});
    auto *menu = new QMenu(look);
    menu->addAction(tr("As the system"), this, [this] { tellTheme(Appearance::System); });
    menu->addAction(tr("Light"), this, [this] { tellTheme(Appearance::Light); });
    menu->addAction(tr("Dark"), this, [this] { tellTheme(Appearance::Dark); });
    look->setMenu(menu);
    look->setPopupMode(QToolButton::InstantPopup);
    makePagesMenu(addButton(tr("Pages"), tr("Visit map, letter, form before arrival, rules for review"), [] {}));
    makeHelp(addButton(tr("Help"), tr("Help on what stands here (F1)"), [] {}));
}

void MainWindow::goTo(const Place &place)
{
    if (middle() != Middle::Body)
        showMiddle(Middle::Body);
    if (m_feel->isPointing()) {
        m_feel->pointAt(place);
        return;
    }
    setLayer(m_session.knowledge().atlas->at(place.structure).layer);
    m_session.aimAt({place, {}, {}});
    m_bodies->reveal(place);
}

void MainWindow::handToPatient()
{
    m_help->close();
    giveScreen(m_pages->language(), nullptr);
}

void MainWindow::giveScreen(Language language, PatientWindow *inPlaceOf)
{
    const Theme theme = themeFor(Appearance::System); // as the program is dressed
    const auto handed = PatientWindow::handOver(m_session, theme, m_settings.failedUnlocks(), *this, language);
    if (!handed) {
        tell(errorText(handed.error()));
        return;
    }
    if (inPlaceOf)
        inPlaceOf->giveWay();
    PatientWindow *patient = handed.value();
    connect(patient, &PatientWindow::languageWanted, this, [this, patient](Language wanted) { giveScreen(wanted, patient); });
    connect(patient, &PatientWindow::failuresChanged, this, [this](int failures) { m_settings.setFailedUnlocks(failures); });
    connect(patient, &PatientWindow::takenOver, this, [this](const QStringList &notes, bool isUrgent) {
        showIntake(true);
        if (notes.isEmpty())
            return;
        auto *box = new QMessageBox(isUrgent ? QMessageBox::Warning : QMessageBox::Information, tr("Back from the patient"),
            notes.join(QStringLiteral("\n\n")), QMessageBox::Ok, this);
        box->setTextFormat(Qt::PlainText);
        box->setAttribute(Qt::WA_DeleteOnClose);
        box->open();
    });
}

bool MainWindow::isPlanning() const
{
    return m_visitTabs->currentWidget() == m_planPanel;
}

// Beside the plan the marks are numbered as its steps.
void MainWindow::numberMarks()
{
    std::optional<std::vector<Place>> order;
    if (isPlanning()) {
        order.emplace();
        for (const PlannedStep &step : m_planPanel->plan().steps)
            order->push_back(step.place);
    }
    m_bodies->setOrder(order);
}

// The path of a row, in views that can show its end.
void MainWindow::showReason(const Place &place, const std::vector<LitPlace> &lit, const std::vector<PathStep> &path)
{
    m_bodies->showView(place);
    m_bodies->setLit(lit, path);
}

void MainWindow::makeShortcuts()
{
    const auto on = [this](const QKeySequence &keys, auto slot) {
        auto *shortcut = new QShortcut(keys, this);
        connect(shortcut, &QShortcut::activated, this, slot);
        return shortcut;
    };
    // With Alt also while somebody types.
    on(QKeySequence(Qt::ALT | Qt::Key_C), [this] { askConsent(); });
    for (const int held : {0, static_cast<int>(Qt::ALT)}) {
        on(QKeySequence(held | Qt::Key_A), [this] { m_banner->ask(); });
        on(QKeySequence(held | Qt::Key_E), [this] { toggleIntake(); });
        on(QKeySequence(held | Qt::Key_L), [this] {
            if (middle() != Middle::Body && middle() != Middle::Examine)
                showMiddle(Middle::Body);
            m_line->begin();
        });
        on(QKeySequence(held | Qt::Key_M), [this] { toggle(Middle::Examine); });
        on(QKeySequence(held | Qt::Key_J), [this] { toggle(Middle::Retest); });
        on(QKeySequence(held | Qt::Key_K), [this] { toggle(Middle::Close); });
    }
    on(QKeySequence(Qt::Key_G),
        [this] { makePass(middle() == Middle::Examine ? m_examine->placesOfPass() : m_reasonPanel->placesToCheck()); });
    on(QKeySequence(Qt::CTRL | Qt::Key_N), [this] { m_visitPanel->newVisit(); });
    on(QKeySequence(Qt::CTRL | Qt::Key_O), [this] { m_visitPanel->choosePatient(); });
    on(QKeySequence::Find, [this] {
        m_search->setFocus(Qt::ShortcutFocusReason);
        m_search->selectAll();
    });
    const auto onBody = [&](const QKeySequence &keys, auto slot) { m_bodyKeys.push_back(on(keys, slot)); };
    for (int grade = 0; grade <= Tenderness::highest; ++grade)
        onBody(QKeySequence(Qt::Key_0 + grade), [this, grade] { m_session.setTenderness(grade); });
    for (int grade = 0; grade <= Restriction::highest; ++grade)
        onBody(
            QKeySequence(Qt::ALT | static_cast<Qt::Key>(Qt::Key_0 + grade)), [this, grade] { m_session.setRestriction(grade); });
    onBody(QKeySequence(Qt::Key_F), [this] { m_session.toggleFamiliar(); });
    onBody(QKeySequence(Qt::Key_C), [this] { m_session.setClear(); });
    onBody(QKeySequence(Qt::Key_B), [this] { m_session.toggleComplaint(); });
    onBody(QKeySequence(Qt::Key_P), [this] { isPlanning() ? m_planPanel->pin() : m_reasonPanel->pin(); });
    onBody(QKeySequence(Qt::Key_D), [this] { isPlanning() ? m_planPanel->drop() : m_reasonPanel->dismiss(); });
    onBody(QKeySequence(Qt::Key_W),
        [this] { m_visitTabs->setCurrentIndex((m_visitTabs->currentIndex() + 1) % m_visitTabs->count()); });
    onBody(QKeySequence(Qt::Key_R), [this] {
        m_visitTabs->setCurrentWidget(m_planPanel);
        treat();
    });
    onBody(QKeySequence(Qt::Key_U), [this] { m_aimPanel->askWhyUnable(); });
    onBody(QKeySequence(Qt::Key_Delete), [this] { m_session.removeFinding(); });
    onBody(QKeySequence(Qt::Key_T), [this] {
        m_about->setCurrentWidget(m_tracePanel);
        m_tracePanel->step();
    });
    onBody(QKeySequence(Qt::Key_I), [this] { m_about->setCurrentWidget(m_cardPanel); });
    onBody(QKeySequence(Qt::Key_Y), [this] { m_about->setCurrentWidget(m_feel); });
    onBody(QKeySequence(Qt::Key_V), [this] { m_bodies->showNext(); });
    onBody(QKeySequence(Qt::Key_H), [this] { m_bodies->resetZoom(); });
    for (int layer = 0; layer < m_layers->count(); ++layer)
        onBody(QKeySequence(Qt::CTRL | static_cast<Qt::Key>(Qt::Key_1 + layer)),
            [this, layer] { setLayer(static_cast<Layer>(layer)); });
    onBody(QKeySequence(Qt::Key_S), [this] { // next spot
        if (!m_session.aim())
            return;
        const auto spot = m_session.aim()->spot;
        const int next = spot ? static_cast<int>(*spot) + 1 : 0;
        m_session.setSpot(next < static_cast<int>(spotWords.size()) ? std::optional(static_cast<Spot>(next)) : std::nullopt);
    });
    onBody(QKeySequence(Qt::Key_PageUp), [this] { setLayer(static_cast<Layer>(std::max(0, m_layers->currentIndex() - 1))); });
    onBody(QKeySequence(Qt::Key_PageDown),
        [this] { setLayer(static_cast<Layer>(std::min(m_layers->count() - 1, m_layers->currentIndex() + 1))); });
}

void MainWindow::showMarks()
{
    m_bodies->setFindings(m_session.visit().findings, m_session.currentFinding());
    m_bodies->setSelected(m_session.aim() ? std::optional(m_session.aim()->place) : std::nullopt);
}

void MainWindow::showWhose()
{
    setWindowTitle(m_session.visit().patient
            ? tr("%1 - Raphe").arg(safelyShown(QString::fromStdString(m_session.visit().patient->name)))
            : tr("Raphe"));
}

void MainWindow::tellSaveFailed(const QString &message)
{
    m_savedSign->setText(tr("NOT SAVED"));
    statusBar()->showMessage(message);
}

// In a field that has nothing of its own to take back, Ctrl+Z is the visit's.
bool MainWindow::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() == QEvent::ShortcutOverride)
        if (const auto *line = qobject_cast<QLineEdit *>(watched); line && line->window() == this) {
            const auto *key = static_cast<QKeyEvent *>(event);
            if ((key->matches(QKeySequence::Undo) && !line->isUndoAvailable())
                || (key->matches(QKeySequence::Redo) && !line->isRedoAvailable())) {
                event->ignore();
                return true;
            }
        }
    return QMainWindow::eventFilter(watched, event);
}

void MainWindow::closeEvent(QCloseEvent *event)
{
    m_settings.setGeometry(saveGeometry());
    Q_EMIT m_session.leaving();
    if (const auto saved = m_session.saveNow(); !saved) {
        const auto answer = QMessageBox::warning(this, tr("Not saved"),
            tr("The last words of this visit could not be saved.\n\n%1\n\nFree some space or mend the disk, then try again.")
                .arg(errorText(saved.error())),
            QMessageBox::Retry | QMessageBox::Discard, QMessageBox::Retry);
        if (answer != QMessageBox::Discard) {
            tellSaveFailed(errorText(saved.error()));
            event->ignore();
            return;
        }
    }
    m_help->close();
    event->accept();
}

} // namespace raphe
