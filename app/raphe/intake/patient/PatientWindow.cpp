#include "app/raphe/intake/patient/PatientWindow.h"
#include "app/raphe/practice/ChoiceFields.h"

#include "app/paint/TypedText.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/intake/patient/MarkPage.h"
#include "app/raphe/intake/patient/PlacePage.h"
#include "app/raphe/intake/patient/QuestionPages.h"
#include "app/raphe/practice/FormParts.h"

#include <QApplication>
#include <QHBoxLayout>
#include <QPushButton>
#include <QScreen>
#include <QScrollArea>
#include <QScrollBar>
#include <QStackedWidget>

#include <algorithm>
#include <cmath>

namespace raphe {

namespace {

constexpr QSize smallest{1280, 800}; // where type and targets have their least size
constexpr double largestScale = 2;
constexpr double framePoints = 20;
constexpr int target = 60; // pixels inside a button's edge at scale 1

// Nothing of the window behind is seen, whatever brings it to the front.
class BehindCover : public QWidget {
public:
    BehindCover(QWidget &behind, const QString &words) : QWidget(&behind), m_title(behind.windowTitle())
    {
        setAutoFillBackground(true);
        auto *column = new QVBoxLayout(this);
        auto *label = new QLabel(words);
        label->setAlignment(Qt::AlignCenter);
        column->addWidget(label);
        behind.installEventFilter(this);
        behind.setWindowTitle(QStringLiteral("Raphe")); // it names the patient
        setGeometry(behind.rect());
        raise();
        show();
    }
    ~BehindCover() override
    {
        if (parentWidget())
            parentWidget()->setWindowTitle(m_title);
    }

protected:
    bool eventFilter(QObject *watched, QEvent *event) override
    {
        if (event->type() == QEvent::Resize)
            setGeometry(parentWidget()->rect());
        return QWidget::eventFilter(watched, event);
    }

private:
    QString m_title;
};

// One word at most: nothing that tells others who it is.
QString firstName(const Visit &visit)
{
    if (!visit.patient)
        return {};
    const QString name = QString::fromStdString(visit.patient->name);
    const QString given = name.contains(QLatin1Char(',')) ? name.section(QLatin1Char(','), 1) : name;
    const QString word = given.simplified().section(QLatin1Char(' '), 0, 0);
    return word.endsWith(QLatin1Char('.')) ? QString() : word; // a title or an initial
}

class EndPage : public ReadPage {
public:
    using ReadPage::ReadPage;
    [[nodiscard]] bool goesOn() const override { return false; }
};

} // namespace

Result<PatientWindow *> PatientWindow::handOver(
    VisitSession &session, const Theme &theme, int failures, QWidget &behind, Language language)
{
    if (session.visitId() == 0 || session.isReadOnly())
        return Error{ErrorCode::NotAllowed, "visit", "it cannot be changed"};
    auto texts = readEmbeddedPatientTexts();
    if (!texts)
        return texts.error();
    const auto accounts = session.practice().accounts();
    if (!accounts)
        return accounts.error();
    TakeOverDialog::Whose whose{session.practice().file(), {}, session.practice().keys()->account};
    for (const AccountCard &account : accounts.value())
        if (account.id == whose.account)
            whose.signIn = account.signIn;
    if (whose.signIn.empty()) // nobody could take the screen back
        return Error{ErrorCode::NotAllowed, "practice", "nobody is signed in"};
    auto *window = new PatientWindow(session, std::move(texts).value(), std::move(whose), theme, failures, behind, language);
    if (QGuiApplication::platformName() == QLatin1String("offscreen")) {
        window->resize(smallest);
        window->show();
        return window;
    }
    for (QScreen *screen : QGuiApplication::screens())
        if (screen != behind.screen()) {
            window->setGeometry(screen->geometry());
            break;
        }
    window->showFullScreen();
    return window;
}

PatientWindow::PatientWindow(VisitSession &session, PatientTexts texts, TakeOverDialog::Whose whose, const Theme &theme,
    int failures, QWidget &behind, Language language)
    : QDialog(&behind, Qt::Window | Qt::FramelessWindowHint),
      m_session(session),
      m_visit(session.visitId()),
      m_before(session.visit()),
      m_words(std::move(texts), Phrases(language)),
      m_whose(std::move(whose)),
      m_theme(theme),
      m_failures(failures),
      m_answers(startingAnswers(m_before)),
      m_saved(m_answers),
      m_cover(new BehindCover(behind, tr("The patient has the screen."))),
      m_name(new QLabel(safelyShown(firstName(m_before)))),
      m_number(new QLabel),
      m_stack(new QStackedWidget),
      m_message(new WrappedLabel)
{
    setAttribute(Qt::WA_DeleteOnClose);
    setWindowModality(Qt::ApplicationModal);
    setLayoutDirection(Qt::LeftToRight); // typed text has its own direction in its own field
    setWindowTitle(m_words.say("mark-title"));
    makeFrame();
    makeLanguages(language);
    makePages();
    connect(&session, &VisitSession::saveFailed, this, [this] {
        m_isUnsaved = true;
        showMessage();
    });
    connect(&session, &VisitSession::saved, this, [this] {
        m_isUnsaved = false;
        showMessage();
    });
    fit();
    showStop(0);
}

PatientWindow::~PatientWindow()
{
    delete m_cover;
}

QPushButton *PatientWindow::frameButton(const char *id)
{
    auto *button = new QPushButton(m_words.onButton(id));
    button->setAccessibleName(button->text());
    return button;
}

void PatientWindow::makeFrame()
{
    auto *column = new QVBoxLayout(this);
    auto *head = new QHBoxLayout;
    for (QLabel *label : {m_name, m_number})
        label->setTextFormat(Qt::PlainText);
    m_number->setProperty("role", QStringLiteral("quiet"));
    m_therapist = frameButton("end-therapist");
    m_therapist->setObjectName(QStringLiteral("quiet"));
    head->addWidget(m_name);
    head->addStretch(1);
    head->addWidget(m_number);
    head->addStretch(1);
    head->addWidget(m_therapist);
    column->addLayout(head);
    column->addWidget(m_stack, 1);
    m_message->setTextFormat(Qt::PlainText);
    m_message->hide();
    column->addWidget(m_message);
    auto *bar = new QHBoxLayout;
    m_back = frameButton("move-back");
    m_help = frameButton("move-help");
    m_skip = frameButton("move-skip");
    m_next = frameButton("move-next");
    m_next->setObjectName(QStringLiteral("onward"));
    m_next->setDefault(true);
    bar->addWidget(m_back);
    bar->addWidget(m_help);
    bar->addStretch(1);
    bar->addWidget(m_skip);
    bar->addWidget(m_next);
    column->addLayout(bar);

    connect(m_therapist, &QPushButton::clicked, this, &PatientWindow::askTherapist);
    connect(m_back, &QPushButton::clicked, this, &PatientWindow::goBack);
    connect(m_skip, &QPushButton::clicked, this, &PatientWindow::goOn);
    connect(m_next, &QPushButton::clicked, this, &PatientWindow::wantOn);
    connect(m_help, &QPushButton::clicked, this, [this] {
        m_askedForHelpAt << page().title();
        QApplication::beep();
        m_toldHelp = true;
        showMessage();
    });
}

void PatientWindow::makeLanguages(Language current)
{
    m_languages = new QWidget;
    auto *row = new QHBoxLayout(m_languages);
    row->setContentsMargins(0, 0, 0, 0);
    row->addStretch(1);
    for (const auto &each : languageWords) {
        const Language language = each.first;
        auto *button = new QPushButton(ownName(std::string(each.second)));
        button->setAccessibleName(button->text());
        button->setObjectName(QStringLiteral("language"));
        button->setCheckable(true);
        button->setChecked(language == current);
        connect(button, &QPushButton::clicked, this, [this, button, language, current] {
            button->setChecked(language == current);
            if (language != current)
                Q_EMIT languageWanted(language);
        });
        row->addWidget(button);
    }
    row->addStretch(1);
    static_cast<QVBoxLayout *>(layout())->insertWidget(1, m_languages);
}

template <class Page> Page *PatientWindow::added(Page *page)
{
    QScrollArea *area = scrolled(page);
    m_stack->addWidget(area);
    m_pages.emplace_back(page, area);
    connect(page, &PatientPage::changed, this, [this, page] {
        if (page == m_stops[m_at].page)
            take();
    });
    connect(page, &PatientPage::onward, this, &PatientWindow::goOn);
    return page;
}

void PatientWindow::makePages()
{
    const Knowledge &knowledge = m_session.knowledge();
    const Complaint known = m_before.complaints.empty() ? Complaint{} : m_before.complaints.front();
    m_welcome = added(new ReadPage(
        m_words, "welcome-title", {"welcome-why", "welcome-skip", "welcome-help", "welcome-private", "welcome-limits"}));
    m_urgent = added(new UrgentPage(m_words));
    if (known.text.empty())
        m_story = added(new WordsPage(m_words, "story-title", &Complaint::text));
    for (const MarkPage::Of of : {MarkPage::Of::Front, MarkPage::Of::Back, MarkPage::Of::Sides}) {
        m_marks.push_back(added(new MarkPage(m_words, knowledge, m_theme, of)));
        connect(m_marks.back(), &MarkPage::sidesWanted, this, [this] {
            m_wantsSides = true;
            take();
            m_stops = stops();
            showStop(stopOf(m_marks.back()));
        });
    }
    m_place = added(new PlacePage(m_words, knowledge, m_theme));
    connect(m_place, &PlacePage::againWanted, this, &PatientWindow::markAgain);
    connect(m_place, &PlacePage::otherSideWanted, this, &PatientWindow::toOtherSide);
    m_quality = added(new QualityPage(m_words, knowledge));
    m_strength = added(new StrengthPage(m_words, knowledge));
    m_questions.push_back(added(new RatingsPage(m_words)));
    m_since = added(new SincePage(m_words));
    m_questions.push_back(m_since);
    m_questions.push_back(added(new ChangePage(m_words, "worse-title", &Complaint::aggravates,
        {"change-sitting", "change-standing", "change-walking", "change-lying", "change-bending", "change-lifting",
            "change-turning", "change-reaching", "change-stairs", "change-rising", "change-resting", "change-moving",
            "change-cough", "change-cold", "change-nothing"})));
    m_questions.push_back(added(new ChangePage(m_words, "better-title", &Complaint::eases,
        {"change-sitting", "change-standing", "change-walking", "change-lying", "change-resting", "change-moving", "change-heat",
            "change-cold", "change-medicine", "change-nothing"})));
    m_questions.push_back(added(new SettlePage(m_words)));
    m_questions.push_back(added(new DayPage(m_words)));
    m_questions.push_back(added(new HardPage(m_words, known.activities)));
    m_questions.push_back(added(new WordsPage(m_words, "goal-title", &Complaint::goal)));
    m_check = added(new CheckPage(m_words));
    connect(m_check, &CheckPage::changeWanted, this, [this](int stop) {
        showStop(static_cast<std::size_t>(stop));
        // What is marked anew is said back, and so on from there.
        m_returns = std::find(m_marks.begin(), m_marks.end(), &page()) == m_marks.end();
    });
    m_end = added(new EndPage(m_words, "end-thanks", {"end-hand-back", "end-locked", "end-talk", "side-checked"}));
}

std::vector<PatientWindow::Stop> PatientWindow::stops() const
{
    std::vector<Stop> out{{m_welcome, -1}, {m_urgent, -1}};
    if (m_story)
        out.push_back({m_story, -1});
    const int count = static_cast<int>(m_answers.pain.size());
    for (MarkPage *page : m_marks) {
        const bool isSides = page == m_marks.back();
        const auto isShown = [page](const PainPatch &patch) { return page->shows(patch); };
        if (!isSides || m_wantsSides || std::any_of(m_answers.pain.begin(), m_answers.pain.end(), isShown))
            out.push_back({page, -1});
    }
    for (int i = 0; i < count; ++i)
        out.push_back({m_place, i});
    for (int i = 0; i < count; ++i) {
        out.push_back({m_quality, i});
        out.push_back({m_strength, i});
    }
    for (PatientPage *page : m_questions)
        out.push_back({page, -1});
    out.push_back({m_check, -1});
    out.push_back({m_end, -1});
    return out;
}

std::size_t PatientWindow::stopOf(const PatientPage *page, int patch) const
{
    for (std::size_t i = 0; i < m_stops.size(); ++i)
        if (m_stops[i].page == page && m_stops[i].patch == patch)
            return i;
    return m_at;
}

void PatientWindow::showStop(std::size_t index)
{
    m_stops = stops();
    m_at = std::min(index, m_stops.size() - 1);
    m_toldMissing = false;
    m_missing = 0;
    m_toldHelp = false;
    PatientPage *now = m_stops[m_at].page;
    now->give(m_answers, m_stops[m_at].patch);
    if (now == m_check)
        m_check->list(listedAnswers());
    for (const auto &[shown, area] : m_pages)
        if (shown == now) {
            m_stack->setCurrentWidget(area);
            area->verticalScrollBar()->setValue(0);
        }
    m_number->setText(m_words.say("move-page", {{"page", std::to_string(m_at + 1)}, {"pages", std::to_string(m_stops.size())}}));
    setAccessibleName(now->title() + QLatin1Char(' ') + m_number->text());
    m_languages->setVisible(now == m_welcome && m_answers == startingAnswers(m_before));
    showButtons();
    showMessage();
    QWidget *first = now->firstField();
    if (!first)
        first = now->goesOn() ? m_next : m_therapist;
    first->setFocus(Qt::OtherFocusReason);
}

std::vector<CheckPage::Answer> PatientWindow::listedAnswers() const
{
    std::vector<CheckPage::Answer> answers;
    for (std::size_t i = 0; i < m_stops.size(); ++i) {
        const Stop &stop = m_stops[i];
        if (!stop.page->asks() || stop.page == m_urgent || stop.page == m_place) // the places stand with the drawing
            continue;
        answers.push_back({stop.page->title(), stop.page->answerWords(m_answers, stop.patch), static_cast<int>(i)});
    }
    return answers;
}

// The first question without an answer, shown once before the end.
bool PatientWindow::goToMissing()
{
    const auto listed = listedAnswers();
    const auto isMissing = [](const CheckPage::Answer &answer) { return answer.words.isEmpty(); };
    const auto first = std::find_if(listed.begin(), listed.end(), isMissing);
    if (first == listed.end() || m_wentToMissing)
        return false;
    m_wentToMissing = true;
    showStop(static_cast<std::size_t>(first->stop));
    m_returns = true;
    m_missing = static_cast<int>(std::count_if(listed.begin(), listed.end(), isMissing));
    showMessage();
    return true;
}

void PatientWindow::showButtons()
{
    const PatientPage &now = page();
    m_back->setEnabled(m_at > 0);
    m_next->setVisible(now.goesOn());
    m_skip->setVisible(now.asks() && !now.isAnswered());
}

void PatientWindow::wantOn()
{
    take();
    if (&page() == m_check && goToMissing())
        return;
    if (page().asks() && !page().isAnswered() && !m_toldMissing) {
        m_toldMissing = true;
        showMessage();
        return;
    }
    goOn();
}

void PatientWindow::goOn()
{
    take();
    m_stops = stops();
    const std::size_t next = m_returns ? stopOf(m_check) : m_at + 1;
    m_returns = false;
    showStop(next);
}

void PatientWindow::goBack()
{
    take();
    m_returns = false;
    if (m_at > 0)
        showStop(m_at - 1);
}

void PatientWindow::take()
{
    page().take(m_answers);
    showButtons();
    showMessage();
    save();
}

void PatientWindow::save()
{
    if (m_answers == m_saved || m_session.visitId() != m_visit)
        return;
    const std::vector<PainPatch> pain = mergedPain(m_before, m_answers);
    if (!fitsDrawing(pain)) { // with what the practitioner had painted
        if (auto *marks = qobject_cast<MarkPage *>(&page()))
            marks->refuseLast(); // and comes here again
        return;
    }
    m_saved = m_answers;
    m_session.setPain(pain);
    m_session.setComplaints(mergedComplaints(m_before, m_answers));
}

void PatientWindow::markAgain(int patch)
{
    const PainPatch wrong = m_answers.pain[static_cast<std::size_t>(patch)];
    m_returns = false;
    for (MarkPage *marks : m_marks)
        if (marks->shows(wrong)) {
            showStop(stopOf(marks));
            marks->takeOff(wrong);
            return;
        }
    m_answers.pain.erase(m_answers.pain.begin() + patch); // on a view that is not offered here
    save();
    showStop(stopOf(m_marks.front()));
}

void PatientWindow::toOtherSide(int patch)
{
    auto &pain = m_answers.pain;
    const PainPatch other = mirrored(pain[static_cast<std::size_t>(patch)]);
    pain[static_cast<std::size_t>(patch)] = other;
    std::stable_sort(pain.begin(), pain.end(), [](const PainPatch &a, const PainPatch &b) { return rankOf(a) < rankOf(b); });
    save();
    m_stops = stops();
    showStop(stopOf(m_place, static_cast<int>(std::find(pain.begin(), pain.end(), other) - pain.begin())));
}

// What matters most comes first.
void PatientWindow::showMessage()
{
    QString words = page().note();
    if (m_isUnsaved)
        words = m_words.say("move-not-saved");
    else if (m_toldHelp)
        words = m_words.say("move-help-said");
    else if (words.isEmpty() && m_missing > 0 && !page().isAnswered())
        words = m_words.say("end-missing", {{"count", std::to_string(m_missing)}});
    else if (words.isEmpty() && m_toldMissing && !page().isAnswered())
        words = m_words.say(page().missingId());
    if (words == m_message->text())
        return;
    m_message->say(words);
    m_message->setVisible(!words.isEmpty());
    m_message->setAccessibleName(words);
}

void PatientWindow::askTherapist()
{
    auto *dialog = new TakeOverDialog(m_whose, m_failures, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &TakeOverDialog::failuresChanged, this, [this](int failures) {
        m_failures = failures;
        Q_EMIT failuresChanged(failures);
    });
    connect(dialog, &QDialog::accepted, this, &PatientWindow::takeOver);
    dialog->open();
}

void PatientWindow::takeOver()
{
    take();
    m_isTakenOver = true;
    const QStringList words = notes();
    const bool isUrgent = m_urgent->wasSaid();
    delete m_cover;
    done(Accepted);
    Q_EMIT takenOver(words, isUrgent);
}

QStringList PatientWindow::notes() const
{
    QStringList out;
    if (m_urgent->wasSaid())
        out << tr("The patient said that a sign of the urgent list is there. Ask the warning signs now.");
    else if (!m_urgent->answer())
        out << tr("The urgent list was not answered.");
    if (!m_answers.pain.empty())
        out << tr("%n patch(es) marked by the patient: say each place back, then 'Said back and agreed'.", nullptr,
            static_cast<int>(m_answers.pain.size()));
    if (m_since->isInjury() && !m_before.injured)
        out << tr(
            "By the patient's words it began with an injury. Tick 'Began with an injury' if so: more signs are asked then.");
    const Complaint before = m_before.complaints.empty() ? Complaint{} : m_before.complaints.front();
    const std::vector<Complaint> merged = mergedComplaints(m_before, m_answers);
    const Complaint now = merged.empty() ? Complaint{} : merged.front();
    const auto isBoth = [&](std::string Complaint::*field) { return !(before.*field).empty() && before.*field != now.*field; };
    if (isBoth(&Complaint::text) || isBoth(&Complaint::since) || isBoth(&Complaint::aggravates) || isBoth(&Complaint::eases)
        || isBoth(&Complaint::goal))
        out << tr("Where something else was written before, both are kept. Please read the complaint.");
    QStringList open;
    for (const CheckPage::Answer &answer : listedAnswers())
        if (answer.words.isEmpty() && !open.contains(answer.question))
            open << answer.question;
    if (!open.isEmpty())
        out << tr("Not answered: %1").arg(open.join(QLatin1Char(' ')));
    QString typed;
    for (const std::string *text : {&now.text, &now.since, &now.aggravates, &now.eases, &now.goal})
        typed += QString::fromStdString(*text);
    for (const Activity &activity : now.activities)
        typed += QString::fromStdString(activity.name);
    if (hasHiddenDirection(typed))
        out << tr("The words hold hidden characters that turn the direction of text. They are kept as typed; sides come from the "
                  "drawing alone.");
    if (!m_askedForHelpAt.isEmpty())
        out << tr("The patient asked for help at: %1").arg(m_askedForHelpAt.join(QLatin1Char(' ')));
    return out;
}

void PatientWindow::giveWay()
{
    m_isTakenOver = true;
    delete m_cover;
    done(Accepted);
}

void PatientWindow::done(int result)
{
    if (m_isTakenOver)
        QDialog::done(result);
}

void PatientWindow::resizeEvent(QResizeEvent *event)
{
    QDialog::resizeEvent(event);
    fit();
}

void PatientWindow::changeEvent(QEvent *event)
{
    QDialog::changeEvent(event);
    if (event->type() == QEvent::WindowStateChange && isMinimized())
        setWindowState((windowState() & ~Qt::WindowMinimized) | Qt::WindowFullScreen);
}

void PatientWindow::fit()
{
    const double room =
        std::min(static_cast<double>(width()) / smallest.width(), static_cast<double>(height()) / smallest.height());
    const double scale = std::clamp(room, 1.0, largestScale);
    if (std::abs(scale - m_scale) < 0.01)
        return;
    m_scale = scale;
    const auto px = [scale](int pixels) { return QString::number(std::lround(pixels * scale)) + QStringLiteral("px"); };
    const QColor edge = m_theme.dark ? QColor(0x5c, 0x66, 0x6c) : QColor(0xb9, 0xb2, 0xa6);
    const QString onAccent = QApplication::palette().color(QPalette::HighlightedText).name();
    setStyleSheet(QStringLiteral(
        "QPushButton { min-height: %1; padding: 2px %2; border: 2px solid %3; border-radius: %4; }"
        "QPushButton:hover { border-color: %5; }"
        "QPushButton:focus { border: 3px solid %5; padding: 1px %2; }"
        "QPushButton#quiet { border-color: transparent; background: transparent; color: %6; }"
        "QPushButton#language { border-color: transparent; }"
        "QPushButton#language:checked { border-color: %5; font-weight: 700; }"
        "QPushButton#quiet:focus { border: 3px solid %5; }"
        "QPushButton#onward { background: %5; color: %7; border-color: %5; font-weight: 700; }"
        "QPushButton#onward:focus { border: 3px solid %8; }"
        "QScrollBar:vertical { width: %9; background: transparent; } QScrollBar::handle:vertical { background: %3; "
        "border-radius: 8px; min-height: %1; margin-left: 6px; } QScrollBar::add-line:vertical, QScrollBar::sub-line:vertical { "
        "height: 0; } QScrollBar::add-page:vertical, QScrollBar::sub-page:vertical { background: transparent; }"
        "QPlainTextEdit { border: 2px solid %3; border-radius: %4; } QPlainTextEdit:focus { border: 3px solid %5; }")
                      .arg(px(target), px(16), edge.name(), px(12), m_theme.accent.name(), m_theme.quiet.name(), onAccent,
                          m_theme.ink.name(), px(26)));
    const QFont frame = typeface(framePoints * scale);
    for (QWidget *widget : std::initializer_list<QWidget *>{m_name, m_number, m_therapist, m_back, m_help, m_skip, m_next})
        widget->setFont(frame);
    for (auto *button : m_languages->findChildren<QPushButton *>())
        button->setFont(frame);
    m_message->setFont(typeface(framePoints * scale, QFont::Bold));
    const int margin = static_cast<int>(std::lround(36 * scale));
    layout()->setContentsMargins(margin, margin / 3, margin, margin / 2);
    layout()->setSpacing(static_cast<int>(std::lround(10 * scale)));
    for (const auto &[page, area] : m_pages)
        page->setScale(scale);
}

} // namespace raphe
