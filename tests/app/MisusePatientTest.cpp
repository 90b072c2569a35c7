// Misuse of the screen that the patient is given: hurry, keys and touches that want out, a screen that goes away.
#include "tests/app/PatientHands.h"

#include "app/paint/TypedText.h"
#include "app/raphe/intake/SafetyBanner.h"

#include <QContextMenuEvent>
#include <QFileDialog>
#include <QLabel>
#include <QMenu>

namespace raphe::test {

namespace {

class MisusePatient : public PatientHands {
protected:
    [[nodiscard]] bool says(const char *words)
    {
        return std::ranges::any_of(patient().findChildren<QLabel *>(),
            [&](const QLabel *label) { return label->isVisible() && label->text().contains(QString::fromUtf8(words)); });
    }
    // A touch at a place of the window, whatever lies there.
    void touch(const QPoint &at, Qt::MouseButton button = Qt::LeftButton)
    {
        QWidget *under = patient().childAt(at);
        QTest::mouseClick(under ? under : &patient(), button, {}, under ? under->mapFrom(&patient(), at) : at);
    }
};

} // namespace

TEST_F(MisusePatient, Mis15TextThatTurnsRound)
{
    hand();
    toFront();
    paint({StructureId{"deltoid-region"}, Side::Right});
    press("Go on");
    press("It does not hurt on this side");
    EXPECT_TRUE(said().startsWith(QStringLiteral("You marked your RIGHT shoulder cap."))) << "from the drawing alone";
    press("Yes, that is the place");
    while (title() != QStringLiteral("What do you hope for?") && !HasFatalFailure())
        press("Skip this");
    type("pain in my \u202etfel\u202c shoulder \u202e");
    const QStringList notes = takeBack();
    EXPECT_TRUE(notes.join(QLatin1Char('\n')).contains(QStringLiteral("hidden characters that turn the direction")))
        << notes.join(QLatin1Char('\n')).toStdString();
    ASSERT_EQ(stored().complaints.size(), 1U);
    EXPECT_NE(stored().complaints[0].goal.find("\u202etfel\u202c"), std::string::npos) << "as typed";

    // The name with an override that nobody closed, and a caution with one: what stands beside keeps its direction.
    PatientRecord record = session().record();
    record.name = "Anna\u202e";
    ASSERT_TRUE(session().practice().savePatient(session().patientId(), record).ok());
    ASSERT_TRUE(session().rereadRecord().ok());
    session().setCautions({"asthma \u202espray", "no oil"});
    Q_EMIT session().visitOpened();
    for (const QLabel *label : window().findChildren<QLabel *>())
        EXPECT_FALSE(hasHiddenDirection(QString(label->text()).remove(QChar(0x2068)).remove(QChar(0x2069))))
            << label->text().toStdString();
    EXPECT_EQ(session().visit().cautions.front(), "asthma \u202espray") << "what is stored stays";
    EXPECT_EQ(session().record().name, "Anna\u202e");
}

TEST_F(MisusePatient, Mis31FortyTapsOnGoOn)
{
    hand();
    for (int i = 0; i < 40; ++i) {
        QPushButton *next = seen(patient(), QStringLiteral("Go on"));
        if (!next)
            break;
        touch(next->mapTo(&patient(), next->rect().center()));
        if (says("of these. Here is the first one"))
            break;
    }
    EXPECT_TRUE(says("You did not answer")) << title().toStdString();
    EXPECT_NE(title(), QStringLiteral("Please look at your answers once more.")) << "at the first of them";
    const Visit kept = stored();
    EXPECT_TRUE(kept.warnings.empty()) << "nobody said no";
    EXPECT_TRUE(kept.complaints.empty()) << "no answer was touched";
    EXPECT_TRUE(kept.pain.empty());
    const QString notes = takeBack().join(QLatin1Char('\n'));
    EXPECT_TRUE(notes.contains(QStringLiteral("The urgent list was not answered."))) << notes.toStdString();
    EXPECT_TRUE(notes.contains(QStringLiteral("Not answered: "))) << notes.toStdString();
    EXPECT_FALSE(session().warningsToAsk().empty()) << "the practitioner asks";
}

TEST_F(MisusePatient, Mis42TheWayToOtherPatients)
{
    PatientRecord other;
    other.name = "Somebody Else";
    ASSERT_TRUE(session().practice().addPatient(other).ok());
    hand();
    press("Go on");
    press("I have none of these");
    press("Go on");
    type("my shoulder aches");
    press("Go on");
    const auto isStillTheirs = [&](const char *after) {
        QCoreApplication::processEvents();
        EXPECT_TRUE(isOpen()) << after;
        EXPECT_EQ(QApplication::activeModalWidget(), &patient()) << after;
        EXPECT_FALSE(QApplication::activePopupWidget()) << after << ": no menu";
        for (const QWidget *widget : QApplication::topLevelWidgets())
            if (widget->isVisible() && widget != &patient() && widget != &window())
                ADD_FAILURE() << after << ": " << widget->metaObject()->className();
        EXPECT_FALSE(says("Somebody Else")) << after;
        EXPECT_FALSE(window().windowTitle().contains(QStringLiteral("Test Patient"))) << after;
    };
    PainBoard &body = board();
    for (const QPoint &at : {QPoint(2, 400), QPoint(1277, 400), QPoint(640, 2), QPoint(640, 797)}) { // from each edge inwards
        QTest::mousePress(&patient(), Qt::LeftButton, {}, at);
        QTest::mouseMove(&patient(), QPoint(640, 400));
        QTest::mouseRelease(&patient(), Qt::LeftButton, {}, QPoint(640, 400));
        isStillTheirs("a swipe");
    }
    for (const QWidget *widget : patient().findChildren<QWidget *>()) {
        if (!widget->isVisible())
            continue;
        QContextMenuEvent menu(QContextMenuEvent::Mouse, widget->rect().center(), widget->mapToGlobal(widget->rect().center()));
        QCoreApplication::sendEvent(const_cast<QWidget *>(widget), &menu);
        isStillTheirs(widget->metaObject()->className());
    }
    QTest::mouseClick(&body, Qt::RightButton, {}, body.rect().center());
    isStillTheirs("a right click on the body");
    for (const auto &[k, modifiers] :
        std::vector<std::pair<Qt::Key, Qt::KeyboardModifiers>>{{Qt::Key_Escape, {}}, {Qt::Key_F4, Qt::AltModifier},
            {Qt::Key_Tab, Qt::AltModifier}, {Qt::Key_O, Qt::ControlModifier}, {Qt::Key_P, Qt::ControlModifier}}) {
        key(k, modifiers);
        isStillTheirs("a key");
    }
    while (seen(patient(), QStringLiteral("Skip this")) && !HasFatalFailure())
        press("Skip this");
    for (int i = 0; i < 10; ++i) {
        if (QPushButton *next = seen(patient(), QStringLiteral("Go on")))
            QTest::mouseClick(next, Qt::LeftButton);
        touch(QPoint(640, 400));
        isStillTheirs("the last page, pressed");
    }
    const QPointer<PatientWindow> theirs = &patient();
    QCloseEvent closing;
    QCoreApplication::sendEvent(theirs, &closing);
    isStillTheirs("closing");
    EXPECT_EQ(stored().complaints.at(0).text, "my shoulder aches") << "what was answered is kept";
    takeBack();
    EXPECT_FALSE(isOpen());
}

TEST_F(MisusePatient, Mis46TheScreenGoesAway)
{
    PatientRecord other;
    other.name = "Somebody Else";
    const auto stranger = session().practice().addPatient(other).value();
    Visit theirs;
    theirs.patient = Patient{other.name, {}};
    theirs.date = session().visit().date;
    const auto another = session().practice().addVisit(stranger, writeVisit(theirs)).value();
    const auto mine = session().visitId();

    hand();
    toFront();
    paint({StructureId{"deltoid-region"}, Side::Left});
    press("Go on");
    press("It does not hurt on this side");
    const Visit kept = stored();
    ASSERT_EQ(kept.pain.size(), 1U);
    EXPECT_EQ(kept.pain[0].painter, Painter::Patient);
    EXPECT_FALSE(kept.pain[0].confirmed);
    EXPECT_EQ(kept.complaints.at(0).text, "my shoulder aches");

    // The window jumps to another screen, small, minimised, and is brought back: it stays theirs, and covers the other one.
    patient().showNormal();
    patient().setGeometry(0, 0, 800, 600);
    patient().setWindowState(Qt::WindowMinimized);
    QCoreApplication::processEvents();
    EXPECT_FALSE(patient().isMinimized());
    EXPECT_EQ(QApplication::activeModalWidget(), &patient());
    EXPECT_TRUE(std::ranges::any_of(window().findChildren<QLabel *>(), [](const QLabel *label) {
        return label->isVisible() && label->text() == QStringLiteral("The patient has the screen.");
    })) << "the record behind is covered";
    EXPECT_EQ(title(), QStringLiteral("Is this the place?")) << title().toStdString();

    // Whatever visit is in front meanwhile: answers go to the one that was handed over, or nowhere.
    ASSERT_TRUE(session().open(another).ok());
    press("Yes, that is the place");
    choose(0, 1);
    ASSERT_TRUE(session().saveNow().ok());
    EXPECT_EQ(session().visit(), theirs) << "nothing of this patient is in another's visit";
    ASSERT_TRUE(session().open(mine).ok());
    EXPECT_EQ(session().visit().pain, kept.pain) << "nothing is lost";
    press("Go on");
    choose(0, 6);
    EXPECT_EQ(stored().pain.at(0).intensity, PainScore{6}) << "it goes on where it was";
    EXPECT_EQ(stored().pain.at(0).quality, PainQuality::Burning) << "with what was answered meanwhile";
    const QString notes = takeBack().join(QLatin1Char('\n'));
    EXPECT_TRUE(notes.contains(QStringLiteral("Not answered: "))) << notes.toStdString();
    EXPECT_TRUE(notes.contains(QStringLiteral("marked by the patient"))) << notes.toStdString();
    EXPECT_FALSE(stored().pain[0].confirmed) << "that is the practitioner's to say";
}

} // namespace raphe::test
