// A treatment as hands drive it: by one pedal under a test clock, stopped, interrupted, refused half way, and confirmed at the
// end.
#include "tests/app/Window.h"

#include "app/raphe/treatment/AdverseForm.h"
#include "app/raphe/treatment/LogPage.h"
#include "app/raphe/treatment/PlacePicture.h"
#include "app/raphe/treatment/StepView.h"
#include "app/raphe/treatment/StopPage.h"
#include "app/raphe/treatment/TreatmentWindow.h"
#include "app/raphe/treatment/WorkPicker.h"

#include <QCheckBox>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QPointer>
#include <QSignalSpy>
#include <QSpinBox>

#include <algorithm>
#include <cstdio>

namespace raphe::test {

namespace {

using namespace std::chrono_literals;

class TreatmentOfVisit : public WindowTest {
protected:
    void SetUp() override
    {
        WindowTest::SetUp();
        find("latissimus-dorsi", Side::Left, 2);
        find("soleus", Side::Left, 1);
        open();
    }
    void TearDown() override
    {
        delete m_treatment;
        WindowTest::TearDown();
    }

    void open()
    {
        std::vector<TreatmentStep> ahead(2);
        ahead[0].place = {StructureId{"latissimus-dorsi"}, Side::Left};
        ahead[0].technique = "gliding";
        ahead[0].position = Position::Prone;
        ahead[0].planned = 120;
        ahead[1].place = {StructureId{"soleus"}, Side::Left};
        ahead[1].technique = "held-ease";
        ahead[1].planned = 90;
        m_treatment = new TreatmentWindow(session(), m_settings, Theme::light(), ahead, &window());
        m_treatment->setClock([this] {
            std::array<char, 16> clock{};
            const int of = 10 * 3600 + static_cast<int>(m_now.count() / 1000);
            std::snprintf(clock.data(), clock.size(), "%02d:%02d:%02d", of / 3600, of / 60 % 60, of % 60);
            return TreatmentRun::Now{m_now, clock.data()};
        });
        m_treatment->show();
        QApplication::setActiveWindow(m_treatment);
    }
    TreatmentWindow &treatment() { return *m_treatment; }
    const TreatmentRun &run() { return m_treatment->run(); }
    const TreatmentLog &log() { return session().visit().treatment; }

    void find(const char *id, Side side, int grade)
    {
        session().aimAt({{StructureId{id}, side}, {}, {}});
        session().setTenderness(grade);
    }
    /// At this second, with the foot down so long.
    void pedal(int second, TreatmentRun::Time length = 100ms)
    {
        until(second);
        QTest::keyPress(m_treatment, Qt::Key_PageDown);
        const TreatmentRun::Time up = m_now + length;
        for (; m_now < up; m_now += 40ms)
            m_treatment->tick();
        QTest::keyRelease(m_treatment, Qt::Key_PageDown);
        const TreatmentRun::Time after = m_now + 500ms;
        for (; m_now < after; m_now += 40ms)
            m_treatment->tick();
    }
    void until(int second)
    {
        for (; m_now < std::chrono::seconds(second); m_now += 200ms)
            m_treatment->tick();
        m_now = std::chrono::seconds(second);
        m_treatment->tick();
    }
    /// Presses until the step is worked: what holds there has to be read first.
    int begin(int second)
    {
        for (; run().phase() == TreatmentRun::Phase::Ready && second < 1000; second += 2)
            pedal(second);
        return second - 2;
    }
    template <class Page> Page &page() { return *m_treatment->findChild<Page *>(); }
    QPushButton &buttonOf(QWidget &in, const char *text)
    {
        for (auto *b : in.findChildren<QPushButton *>())
            if (b->text() == QLatin1String(text))
                return *b;
        throw std::runtime_error(std::string("no button ") + text);
    }
    QPointer<TreatmentWindow> m_treatment;
    Settings m_settings;
    TreatmentRun::Time m_now{};
};

bool says(const QWidget &in, const QString &words)
{
    const auto labels = in.findChildren<QLabel *>();
    return std::any_of(labels.begin(), labels.end(), [&](const QLabel *l) { return l->text().contains(words); });
}

} // namespace

TEST_F(TreatmentOfVisit, AWholeOneByOnePedalEndsWithALogWhoseTimesAddUp)
{
    EXPECT_TRUE(says(page<StepView>(), QStringLiteral("LEFT")));
    EXPECT_TRUE(says(page<StepView>(), QStringLiteral("latissimus dorsi")));
    EXPECT_TRUE(says(page<StepView>(), QStringLiteral("lying face down; uncover: back")));
    const int first = begin(1);
    pedal(first + 100);
    const int second = begin(first + 110);
    QTest::keyClick(m_treatment, Qt::Key_E);
    pedal(second + 60);
    ASSERT_EQ(run().phase(), TreatmentRun::Phase::Over);
    ASSERT_EQ(log().steps.size(), 2U);
    EXPECT_EQ(log().steps[0].seconds, 100);
    EXPECT_EQ(log().steps[1].seconds, 60);
    EXPECT_EQ(log().steps[1].words, (std::vector<StepWord>{StepWord::Eased}));
    EXPECT_FALSE(session().sign({}).ok()) << "not before it was confirmed";
    ASSERT_TRUE(page<LogPage>().isVisible());
    EXPECT_TRUE(says(page<LogPage>(), QStringLiteral("2 min 40 s of work in all")));
    QTest::mouseClick(&buttonOf(page<LogPage>(), "It was so"), Qt::LeftButton);
    EXPECT_EQ(stored().treatment.steps[0].done, StepDone::Done);
    EXPECT_EQ(stored().treatment.steps[1].done, StepDone::Done);
    EXPECT_TRUE(session().sign({}).ok());
}

TEST_F(TreatmentOfVisit, HeldForTwoSecondsItStopsAndNoPedalGoesOn)
{
    const int first = begin(1);
    pedal(first + 30, 2500ms);
    ASSERT_TRUE(page<StopPage>().isVisible());
    EXPECT_TRUE(says(page<StopPage>(), QStringLiteral("Help to sit or lie as needed")));
    pedal(first + 60);
    pedal(first + 70, 2500ms);
    EXPECT_TRUE(page<StopPage>().isVisible()) << "the pedal cannot leave it";
    QTest::mouseClick(&buttonOf(page<StopPage>(), "None of these: go on"), Qt::LeftButton);
    EXPECT_TRUE(page<StepView>().isVisible());
    EXPECT_EQ(run().current()->seconds, 30);

    pedal(first + 100, 2500ms);
    page<StopPage>().findChildren<QCheckBox *>()[0]->setChecked(true);
    EXPECT_FALSE(buttonOf(page<StopPage>(), "None of these: go on").isEnabled());
    QTest::mouseClick(&buttonOf(page<StopPage>(), "End the treatment and record it"), Qt::LeftButton);
    ASSERT_EQ(stored().treatment.events.size(), 1U);
    EXPECT_EQ(stored().treatment.events[0].signs, (std::vector<std::string>{AdverseForm::signs()[0]}));
    EXPECT_EQ(run().phase(), TreatmentRun::Phase::Over);
}

TEST_F(TreatmentOfVisit, ADoublePressGoesBack)
{
    const int first = begin(1);
    pedal(first + 50);
    EXPECT_EQ(run().current()->place.structure.value, "soleus");
    until(first + 60);
    for (int i = 0; i < 2; ++i) {
        QTest::keyPress(m_treatment, Qt::Key_PageDown);
        m_now += 80ms;
        QTest::keyRelease(m_treatment, Qt::Key_PageDown);
        m_now += 80ms;
    }
    EXPECT_EQ(run().current()->place.structure.value, "latissimus-dorsi");
    EXPECT_EQ(run().current()->seconds, 50);
}

TEST_F(TreatmentOfVisit, KilledItGoesOnWhereItWasAndSaysSo)
{
    const int first = begin(1);
    until(first + 42);
    EXPECT_FALSE(log().running.empty());
    delete m_treatment; // as if the program were gone: what was kept is in the visit
    ASSERT_TRUE(session().saveNow().ok());
    EXPECT_EQ(stored().treatment, log());
    m_now = std::chrono::seconds(first + 600);
    open();
    EXPECT_EQ(run().phase(), TreatmentRun::Phase::Ready);
    EXPECT_GE(run().current()->seconds, 37);
    EXPECT_LE(run().current()->seconds, 42);
    EXPECT_TRUE(says(page<StepView>(), QStringLiteral("Interrupted at")));
}

TEST_F(TreatmentOfVisit, AnEndThatWasNotConfirmedIsComeBackTo)
{
    const int first = begin(1);
    pedal(first + 50, 2500ms);
    QTest::mouseClick(&buttonOf(page<StopPage>(), "End the treatment"), Qt::LeftButton);
    ASSERT_TRUE(page<LogPage>().isVisible());
    QTest::keyClick(m_treatment, Qt::Key_Escape);
    EXPECT_TRUE(isOpen(log()));
    delete m_treatment;
    open(); // with the plan, which does not begin anew
    EXPECT_TRUE(page<LogPage>().isVisible());
    QTest::mouseClick(&buttonOf(page<LogPage>(), "It was so"), Qt::LeftButton);
    EXPECT_FALSE(isOpen(log()));
    EXPECT_EQ(log().steps.size(), 2U);
}

TEST_F(TreatmentOfVisit, TheSideIsChangedByItsOwnKeyAndSaidAloud)
{
    QTest::keyClick(m_treatment, Qt::Key_X);
    EXPECT_EQ(run().current()->place.side, Side::Right);
    EXPECT_TRUE(says(page<StepView>(), QStringLiteral("RIGHT")));
    EXPECT_TRUE(treatment().said().back().startsWith(QStringLiteral("RIGHT")));
}

// A screen of 24 inches, 16 to 9, is 299 mm high (0.49 times its diagonal).
TEST_F(TreatmentOfVisit, CapitalsAreTwelveMillimetresHighOnAScreenOf24Inches)
{
    constexpr double screenHeight = 298.9;
    m_treatment->resize(1920, 1080);
    begin(1);
    QTest::qWait(50);
    const auto labels = page<StepView>().findChildren<QLabel *>();
    int seen = 0;
    for (const QLabel *label : labels) {
        if (!label->isVisible() || label->text().isEmpty())
            continue;
        ++seen;
        const double height = QFontMetricsF(label->font()).capHeight() * screenHeight / page<StepView>().height();
        EXPECT_GE(height, 12) << label->text().toStdString();
        EXPECT_LE(label->heightForWidth(label->width()), label->height() + 1) << "cut off: " << label->text().toStdString();
    }
    EXPECT_GE(seen, 7);
}

TEST_F(TreatmentOfVisit, TheLongestCautionCanBeRead)
{
    std::string longest;
    for (const CautionRule &rule : session().adviser().rules().rules())
        if (rule.reason.size() > longest.size())
            longest = rule.reason;
    longest += " What lies here: axillary artery, brachial plexus, median nerve, ulnar nerve, radial nerve, long thoracic nerve.";
    TreatmentLog log;
    log.ahead = run().treatment().ahead;
    const TreatmentRun held(log, [&](const TreatmentStep &) {
        return std::vector<CautionVerdict>{{{}, {}, Verdict::Adapt, longest, "a-rule", {}, {}}};
    });
    StepView view(session(), Theme::light());
    view.resize(1920, 1080);
    view.QWidget::show();
    view.show(held, {});
    QTest::qWait(50);
    EXPECT_TRUE(says(view, QString::fromStdString(longest)));
    const auto labels = view.findChildren<QLabel *>();
    for (const QLabel *label : labels) {
        if (label->isVisible()) {
            EXPECT_LE(label->heightForWidth(label->width()), label->height() + 1) << label->text().toStdString();
        }
    }
    EXPECT_LE(view.minimumSizeHint().height(), 1080);
}

TEST_F(TreatmentOfVisit, ATouchMovesOnOnlyWhenItIsSwitchedOn)
{
    const int first = begin(1);
    const auto touch = [&](int second) {
        until(second);
        QTest::mousePress(m_treatment, Qt::LeftButton, {}, {40, 40});
        m_now += 100ms;
        QTest::mouseRelease(m_treatment, Qt::LeftButton, {}, {40, 40});
        until(second + 2);
    };
    touch(first + 20);
    EXPECT_EQ(run().phase(), TreatmentRun::Phase::Working);
    m_settings.setTouches(true);
    touch(first + 40);
    m_settings.setTouches(false);
    EXPECT_EQ(run().phase(), TreatmentRun::Phase::Ready);
    EXPECT_EQ(log().steps.size(), 1U);
}

TEST_F(TreatmentOfVisit, WorkOffThePlanComesInTwoPresses)
{
    const int first = begin(1);
    until(first + 10);
    QTest::keyClick(m_treatment, Qt::Key_O);
    ASSERT_TRUE(page<WorkPicker>().isVisible());
    QTest::mouseClick(&buttonOf(page<WorkPicker>(), "Left soleus"), Qt::LeftButton);
    QTest::mouseClick(&buttonOf(page<WorkPicker>(), "Gliding strokes along the fibres"), Qt::LeftButton);
    ASSERT_TRUE(page<StepView>().isVisible());
    EXPECT_EQ(run().phase(), TreatmentRun::Phase::Working) << "the step that is worked goes on";
    ASSERT_EQ(log().ahead.size(), 2U);
    EXPECT_EQ(log().ahead[0].place, (Place{StructureId{"soleus"}, Side::Left}));
    EXPECT_EQ(log().ahead[0].technique, "gliding");

    pedal(first + 50);
    QTest::keyClick(m_treatment, Qt::Key_N);
    QTest::keyClick(m_treatment, Qt::Key_N);
    ASSERT_TRUE(page<LogPage>().isVisible()) << "both were left out by their key";
    QTest::mouseClick(&buttonOf(page<LogPage>(), "Something else was done"), Qt::LeftButton);
    QTest::mouseClick(&buttonOf(page<WorkPicker>(), "Left latissimus dorsi"), Qt::LeftButton);
    QTest::mouseClick(&buttonOf(page<WorkPicker>(), "Held position of ease"), Qt::LeftButton);
    ASSERT_TRUE(page<LogPage>().isVisible());
    ASSERT_EQ(log().steps.size(), 4U);
    EXPECT_FALSE(log().steps[3].done) << "how much of it was done is still to be said";
    page<LogPage>().findChild<QSpinBox *>()->setValue(3);
    QTest::mouseClick(&buttonOf(page<LogPage>(), "It was so"), Qt::LeftButton);
    EXPECT_EQ(stored().treatment.steps[3].seconds, 180);
    EXPECT_EQ(stored().treatment.steps[3].done, StepDone::Done);
    EXPECT_EQ(stored().treatment.steps[1].done, StepDone::Skipped);
}

TEST_F(TreatmentOfVisit, TheSuctionOfCupsIsAsked)
{
    TreatmentLog cups;
    cups.steps.resize(1);
    cups.steps[0].place = {StructureId{"latissimus-dorsi"}, Side::Left};
    cups.steps[0].technique = "cups-gliding";
    cups.steps[0].planned = 120;
    cups.steps[0].began = "10:00:00";
    cups.steps[0].seconds = 120;
    LogPage log(session());
    log.show(cups);
    EXPECT_FALSE(log.confirmed().steps[0].kPa) << "nobody said it";
    log.findChild<QDoubleSpinBox *>()->setValue(20);
    log.QWidget::show();
    EXPECT_TRUE(says(log, QStringLiteral("2 min under cups, 20 kPa at most.")));
    EXPECT_EQ(log.confirmed().steps[0].kPa, 20);
}

TEST_F(TreatmentOfVisit, NoNameIsShownAndNothingTakesATouch)
{
    const auto labels = treatment().findChildren<QLabel *>();
    for (const QLabel *label : labels)
        EXPECT_FALSE(label->text().contains(QStringLiteral("Test Patient"))) << label->text().toStdString();
    EXPECT_FALSE(treatment().windowTitle().contains(QStringLiteral("Patient")));
    const auto before = log();
    QTest::mouseClick(&page<StepView>(), Qt::LeftButton);
    EXPECT_EQ(log(), before);
    EXPECT_TRUE(page<StepView>().findChildren<QPushButton *>().empty());
}

// Left and right must never be the other one: what is drawn in the middle is the place of the step.
TEST_F(TreatmentOfVisit, ThePictureShowsTheSideThatIsWorked)
{
    auto &picture = page<PlacePicture>();
    for (const QSize size : {QSize(1920, 1080), QSize(1280, 800)})
        for (const char *id :
            {"gluteus-maximus", "l4-l5", "pectoralis-major", "soleus", "thoracolumbar-fascia", "gluteus-medius"})
            for (const Side side : {Side::Right, Side::Left}) {
                treatment().resize(size);
                picture.setPlace({StructureId{id}, side});
                const ViewTransform transform = picture.transform();
                const QPainterPath outline = picture.art()->outlineOf({StructureId{id}, side});
                ASSERT_FALSE(outline.isEmpty()) << id;
                const QRectF drawn = transform.matrix().mapRect(outline.boundingRect());
                EXPECT_TRUE(QRectF(picture.rect()).contains(drawn)) << id;
                EXPECT_LT((drawn.center() - QRectF(picture.rect()).center()).manhattanLength(), 4) << id;
                const double sign = picture.art()->drawing().signOf(side);
                EXPECT_GE(transform.toBody(drawn.center()).x * sign, 0) << id;
            }
}

// Letters of 12 mm on a screen of 24 inches: its picture is some 299 mm high.
TEST_F(TreatmentOfVisit, EveryLetterCanBeReadAtTwoMetres)
{
    treatment().resize(1920, 1080);
    QCoreApplication::processEvents(); // the labels find their places
    constexpr double millimetresPerPixel = 299.0 / 1080;
    int lines = 0;
    for (const QLabel *label : page<StepView>().findChildren<QLabel *>()) {
        if (label->text().isEmpty())
            continue;
        EXPECT_GE(label->font().pixelSize() * millimetresPerPixel, 12) << label->text().toStdString();
        EXPECT_LE(label->heightForWidth(label->width()), label->height() + 2) << "cut off: " << label->text().toStdString();
        ++lines;
    }
    EXPECT_GE(lines, 6);
}

TEST_F(TreatmentOfVisit, WhoIsTreatedIsNotLockedOut)
{
    QSignalSpy treating(&window(), &MainWindow::treating);
    delete m_treatment;
    key(Qt::Key_R);
    ASSERT_EQ(treating.size(), 1);
    EXPECT_TRUE(treating[0][0].toBool());
    auto *begun = window().findChild<TreatmentWindow *>();
    ASSERT_NE(begun, nullptr);
    QTest::keyClick(begun, Qt::Key_Escape);
    EXPECT_TRUE(QTest::qWaitFor([&] { return treating.size() == 2; }));
    EXPECT_FALSE(treating[1][0].toBool());
}

} // namespace raphe::test
