// A pass of twenty places with two pedals alone, under a test clock, with all that is spoken.
#include "app/raphe/examination/PassDialog.h"
#include "app/raphe/examination/PedalsDialog.h"
#include "tests/app/Window.h"

namespace raphe::test {

namespace {

using namespace std::chrono_literals;

class PassDialogTest : public WindowTest {
protected:
    void SetUp() override
    {
        WindowTest::SetUp();
        window().examine().showSheet("low-back-pelvis");
        auto places = window().examine().placesOfPass();
        ASSERT_GE(places.size(), 20U);
        places.resize(20);
        m_dialog = std::make_unique<PassDialog>(session(), m_settings, places);
        m_dialog->setClock([this] { return m_now; });
        m_dialog->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(m_dialog.get()));
        QApplication::setActiveWindow(m_dialog.get());
    }

    void wait(std::chrono::milliseconds time)
    {
        for (const auto end = m_now + time; m_now < end; m_now += 20ms)
            m_dialog->tick();
    }
    void press(Pedal pedal, std::chrono::milliseconds down = 100ms)
    {
        const auto code = static_cast<Qt::Key>(m_settings.pedalKey(pedal));
        QTest::keyPress(m_dialog.get(), code);
        wait(down);
        QTest::keyRelease(m_dialog.get(), code);
        wait(20ms);
    }
    void clear()
    {
        press(Pedal::Clear);
        wait(500ms);
    }
    void sore(int grade)
    {
        for (int i = 0; i < grade; ++i)
            press(Pedal::Sore);
    }

    Settings m_settings;
    std::chrono::milliseconds m_now{0};
    std::unique_ptr<PassDialog> m_dialog;
};

} // namespace

TEST_F(PassDialogTest, TwentyPlacesByPedalsAlone)
{
    const std::vector<Place> places = m_dialog->pass().places();
    const int grades[] = {0, 2, 0, 1, 0, 0, 3, 0, 0, 1, 0, 0, 0, 2, 0, 0, 0, 0, 1, 0};
    for (std::size_t i = 0; i < 20; ++i) {
        EXPECT_EQ(m_dialog->pass().at(), i);
        sore(grades[i]);
        if (i == 6)
            press(Pedal::Sore, 900ms); // familiar
        clear();
    }
    EXPECT_TRUE(m_dialog->pass().isDone());
    ASSERT_EQ(findings().size(), 20U);
    for (std::size_t i = 0; i < 20; ++i) {
        const Finding *f = session().findingAt(places[i]);
        ASSERT_NE(f, nullptr) << i;
        EXPECT_EQ(f->tendernessGrade(), grades[i]) << i;
        EXPECT_EQ(f->clear.tenderness, grades[i] == 0) << i;
        EXPECT_FALSE(f->clear.motion) << "nothing was moved";
        EXPECT_EQ(f->familiar, i == 6) << i;
    }
    const QStringList &said = m_dialog->said();
    EXPECT_TRUE(said.front().startsWith(QStringLiteral("RIGHT, "))) << said.front().toStdString();
    for (std::size_t i = 0; i < 20; ++i) {
        const QString name = QString::fromStdString(saidInPass(*knowledge().atlas, places[i]));
        const QString echo = name + (grades[i] > 0 ? QStringLiteral(", sore %1").arg(grades[i]) : QStringLiteral(", clear"));
        EXPECT_TRUE(std::any_of(said.begin(), said.end(), [&](const QString &words) { return words.startsWith(echo); }))
            << echo.toStdString();
    }
    EXPECT_TRUE(said.back().contains(QStringLiteral("End of the pass"))) << said.back().toStdString();
    if (qEnvironmentVariableIsSet("RAPHE_PASS_FILM"))
        std::cout << said.join(QLatin1Char('\n')).toStdString() << '\n';
}

TEST_F(PassDialogTest, TwiceQuicklyTakesBackInTheVisitToo)
{
    clear();
    sore(2);
    ASSERT_EQ(findings().size(), 2U);
    press(Pedal::Clear, 60ms);
    press(Pedal::Clear, 60ms);
    wait(500ms);
    EXPECT_EQ(findings()[1].tenderness, Tenderness{1});
    for (int i = 0; i < 2; ++i) {
        press(Pedal::Clear, 60ms);
        press(Pedal::Clear, 60ms);
        wait(500ms);
    }
    EXPECT_TRUE(findings().empty());
    EXPECT_EQ(m_dialog->pass().at(), 0U);
}

TEST_F(PassDialogTest, WhatWasThereBeforeStaysAndComesBack)
{
    Finding before;
    before.place = m_dialog->pass().places()[0];
    before.stiff = true;
    session().record(before);
    sore(1);
    EXPECT_TRUE(findings()[0].stiff) << "the pass asks for soreness alone";
    press(Pedal::Clear, 60ms);
    press(Pedal::Clear, 60ms);
    wait(500ms);
    ASSERT_EQ(findings().size(), 1U);
    EXPECT_EQ(findings()[0], before);
}

// Pedals are keyboards: whatever has the focus must not take their keys.
TEST_F(PassDialogTest, PedalsThatSendSpaceAndArrowsPressNoButton)
{
    m_settings.setPedalKey(Pedal::Clear, Qt::Key_Space);
    m_settings.setPedalKey(Pedal::Sore, Qt::Key_Right);
    for (auto *focus : m_dialog->findChildren<QPushButton *>()) {
        const std::size_t at = m_dialog->pass().at();
        focus->setFocus();
        for (const auto code : {Qt::Key_Right, Qt::Key_Space}) {
            QTest::keyPress(QApplication::focusWidget(), code);
            wait(100ms);
            QTest::keyRelease(QApplication::focusWidget(), code);
            wait(500ms);
        }
        ASSERT_TRUE(m_dialog->isVisible()) << focus->text().toStdString();
        EXPECT_EQ(m_dialog->pass().at(), at + 1) << focus->text().toStdString();
        EXPECT_EQ(findings().back().tenderness, Tenderness{1}) << focus->text().toStdString();
        EXPECT_EQ(QApplication::focusWidget(), focus);
    }
}

TEST_F(PassDialogTest, AHeldKeyThatRepeatsIsOnePress)
{
    const auto code = static_cast<Qt::Key>(m_settings.pedalKey(Pedal::Sore));
    QTest::keyPress(m_dialog.get(), code);
    for (int i = 0; i < 5; ++i) {
        QKeyEvent again(QEvent::KeyPress, code, Qt::NoModifier, QString(), true);
        QCoreApplication::sendEvent(m_dialog.get(), &again);
        wait(40ms);
    }
    QTest::keyRelease(m_dialog.get(), code);
    EXPECT_EQ(findings()[0].tenderness, Tenderness{1});
}

TEST_F(PassDialogTest, PedalsAreLearnedAndMustDiffer)
{
    PedalsDialog dialog(m_settings);
    QPushButton *fields[2] = {};
    for (auto *button : dialog.findChildren<QPushButton *>()) {
        if (button->accessibleName() == QStringLiteral("Clear pedal"))
            fields[0] = button;
        if (button->accessibleName() == QStringLiteral("Sore pedal"))
            fields[1] = button;
    }
    ASSERT_TRUE(fields[0] && fields[1]);
    QTest::keyClick(fields[0], Qt::Key_B);
    QTest::keyClick(fields[1], Qt::Key_B);
    for (const auto *button : dialog.findChildren<QPushButton *>())
        if (button->text() == QStringLiteral("Save")) {
            EXPECT_FALSE(button->isEnabled());
        }
    QTest::keyClick(fields[1], Qt::Key_N);
    dialog.accept();
    EXPECT_EQ(m_settings.pedalKey(Pedal::Clear), static_cast<int>(Qt::Key_B));
    EXPECT_EQ(m_settings.pedalKey(Pedal::Sore), static_cast<int>(Qt::Key_N));
    m_settings.setPedalKey(Pedal::Clear, Qt::Key_PageDown);
    m_settings.setPedalKey(Pedal::Sore, Qt::Key_PageUp);
}

} // namespace raphe::test
