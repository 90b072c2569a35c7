// The screen that the patient is given: by mouse and by keys through all pages, what it says of sides, that only the passphrase
// leads out, and that what was answered is stored beside what the practitioner had written.
#include "app/paint/TypedText.h"
#include "app/raphe/intake/patient/MarkPage.h"
#include "app/raphe/intake/patient/QuestionPages.h"
#include "app/raphe/intake/patient/SaidBack.h"
#include "app/raphe/record/TextLine.h"
#include "core/anatomy/MarkPoint.h"
#include "tests/app/PatientHands.h"

#include <QMessageBox>

namespace raphe::test {

namespace {

const Place leftCap{StructureId{"deltoid-region"}, Side::Left};
const Place rightCap{StructureId{"deltoid-region"}, Side::Right};

PainPatch dot(View view, Point at)
{
    PainPatch patch;
    patch.view = view;
    patch.strokes = {{{at}, 12}};
    patch.painter = Painter::Patient;
    return patch;
}

using PatientMode = PatientHands;

QString sentences(const PainPatch &patch)
{
    const PatientWords words(readEmbeddedPatientTexts().value());
    return saidBack(words, knowledge(), patch).join(QLatin1Char(' '));
}

} // namespace

// Front view: x > 0 is the patient's left; back view: x > 0 is the patient's right (the drawing's own rule).
TEST(SaidBackTest, SaysTheSideOfTheDrawing)
{
    for (const View view : {View::Front, View::Back})
        for (const Place &cap : {leftCap, rightCap}) {
            const auto at = markPointIn(*knowledge().atlas, knowledge().body->of(view), cap);
            ASSERT_TRUE(at);
            EXPECT_EQ(at->x > 0, (view == View::Front) == (cap.side == Side::Left));
            const QString text = sentences(dot(view, *at));
            const QString side = cap.side == Side::Left ? QStringLiteral("LEFT") : QStringLiteral("RIGHT");
            const QString other = cap.side == Side::Left ? QStringLiteral("RIGHT") : QStringLiteral("LEFT");
            EXPECT_TRUE(text.startsWith(QStringLiteral("You marked your %1 shoulder cap.").arg(side))) << text.toStdString();
            EXPECT_FALSE(text.contains(other)) << text.toStdString();
            EXPECT_TRUE(text.endsWith(view == View::Front ? QStringLiteral("It is on the front of your body.")
                                                          : QStringLiteral("It is on the back of your body.")))
                << text.toStdString();
            const QString mirror = sentences(mirrored(dot(view, *at)));
            QString swapped = text;
            swapped.replace(side, other);
            EXPECT_EQ(mirror, swapped);
        }
}

TEST(SaidBackTest, SaysBothSidesAndTheMiddleAndNothingBesideTheBody)
{
    const auto left = markPointIn(*knowledge().atlas, knowledge().body->of(View::Front), leftCap);
    PainPatch both = dot(View::Front, *left);
    both.strokes.push_back(mirrored(both.strokes.front()));
    EXPECT_TRUE(sentences(both).startsWith(QStringLiteral("You marked both sides: your LEFT and your RIGHT shoulder cap.")))
        << sentences(both).toStdString();
    const auto navel =
        markPointIn(*knowledge().atlas, knowledge().body->of(View::Front), {StructureId{"umbilical-region"}, Side::Midline});
    EXPECT_TRUE(sentences(dot(View::Front, *navel)).startsWith(QStringLiteral("You marked the middle: your navel area.")))
        << sentences(dot(View::Front, *navel)).toStdString();
    EXPECT_TRUE(sentences(dot(View::Front, {480, 10})).isEmpty());
    PainPatch side = dot(View::Side, {0, 500});
    side.facing = Side::Left;
    EXPECT_TRUE(sentences(side).endsWith(QStringLiteral("It is on the picture of your LEFT side.")))
        << sentences(side).toStdString();
}

TEST(TypedTextTest, CannotTurnWhatStandsBesideIt)
{
    const QString typed = QStringLiteral("pain in my \u202etfel\u202c shoulder");
    EXPECT_TRUE(hasHiddenDirection(typed));
    const QString shown = safelyShown(typed);
    EXPECT_FALSE(shown.contains(QChar(0x202e)));
    EXPECT_TRUE(shown.startsWith(QChar(0x2068)) && shown.endsWith(QChar(0x2069)));
    EXPECT_EQ(shown.count(QChar(QChar::ReplacementCharacter)), 2) << "they are seen, not dropped";
    EXPECT_FALSE(hasHiddenDirection(QStringLiteral("\u05db\u05d0\u05d1 L4/L5, 7/10"))) << "a text of its own direction is none";
}

TEST(PatientAnswersTest, NothingOfThePractitionerIsLost)
{
    Visit before;
    before.date = "2026-03-04";
    Complaint first;
    first.text = "low back";
    first.aggravates = "stooping";
    first.now = PainScore{5};
    first.irritability = Irritability::Low;
    first.activities = {{"Gardening", 4}};
    before.complaints = {first, Complaint{}};
    before.complaints[1].text = "knee";
    PainPatch painted = dot(View::Back, {40, 420});
    painted.painter = Painter::Practitioner;
    PainPatch agreed = dot(View::Front, {40, 420});
    agreed.confirmed = true;
    before.pain = {painted, agreed, dot(View::Front, {60, 500})};

    PatientAnswers answers = startingAnswers(before);
    EXPECT_EQ(answers.pain, std::vector<PainPatch>{before.pain[2]}) << "their own, not yet said back";
    EXPECT_EQ(mergedComplaints(before, answers), before.complaints) << "nothing answered, nothing changed";
    answers.pain[0].confirmed = true;
    answers.complaint.aggravates = "When I sit.";
    answers.complaint.now = PainScore{7};
    answers.complaint.irritability = Irritability::High;
    answers.complaint.activities = {{" gardening", 2}, {"sleep", 3}};
    answers.complaint.goal = "to dance";
    const auto pain = mergedPain(before, answers);
    ASSERT_EQ(pain.size(), 3U);
    EXPECT_EQ(pain[0], painted);
    EXPECT_EQ(pain[1], agreed);
    EXPECT_FALSE(pain[2].confirmed) << "only the practitioner confirms";

    const auto merged = mergedComplaints(before, answers);
    ASSERT_EQ(merged.size(), 2U);
    EXPECT_EQ(merged[1], before.complaints[1]);
    EXPECT_EQ(merged[0].aggravates, "stooping\nPatient: When I sit.");
    EXPECT_EQ(merged[0].now, PainScore{7});
    EXPECT_EQ(merged[0].irritability, Irritability::Low);
    EXPECT_EQ(merged[0].goal, "to dance");
    EXPECT_EQ(merged[0].activities, (std::vector<Activity>{{"Gardening", 2}, {"sleep", 3}}));
    EXPECT_EQ(merged[0].asked, before.date);
    EXPECT_EQ(merged[0].text,
        "low back\nBefore the patient answered: pain now 5.\nBy the patient's answers irritability would be high.\n"
        "Before the patient answered: 'Gardening' was 4.");

    Visit again = before; // the screen is handed over a second time, with the same answers
    again.complaints = merged;
    EXPECT_EQ(mergedComplaints(again, answers)[0].aggravates, merged[0].aggravates);
    for (int i = 0; i < 5; ++i)
        answers.complaint.activities.push_back({"thing " + std::to_string(i), i});
    const auto many = mergedComplaints(before, answers)[0];
    EXPECT_EQ(many.activities.size(), Activity::most);
    EXPECT_NE(many.text.find("thing 4 (4)"), std::string::npos) << many.text;
}

// Common practice, no source.
TEST(PatientAnswersTest, WhatStirsAndSettlesGivesIrritability)
{
    EXPECT_EQ(irritabilityOf(Stirs::Little, Settles::Days), Irritability::High);
    EXPECT_EQ(irritabilityOf(Stirs::Little, Settles::Hours), Irritability::High);
    EXPECT_EQ(irritabilityOf(Stirs::Little, Settles::Minutes), Irritability::Medium);
    EXPECT_EQ(irritabilityOf(Stirs::Lots, Settles::Minutes), Irritability::Low);
    EXPECT_EQ(irritabilityOf(Stirs::Lots, Settles::Days), Irritability::Medium);
    EXPECT_EQ(irritabilityOf(Stirs::Some, Settles::Hours), Irritability::Medium);
}

TEST_F(PatientMode, ByMouseThroughAllPagesIntoTheStoredVisit)
{
    hand();
    toFront();
    paint(leftCap);
    press("Go on");
    ASSERT_EQ(title(), QStringLiteral("Back of your body"));
    press("It does not hurt on this side");
    EXPECT_TRUE(said().startsWith(QStringLiteral("You marked your LEFT shoulder cap."))) << said().toStdString();
    press("Yes, that is the place");
    choose(0, 1);
    press("Go on");
    choose(0, 6);
    press("Go on");
    choose(0, 5);
    choose(1, 3);
    choose(2, 8);
    EXPECT_TRUE(std::ranges::any_of(patient().findChildren<QLabel *>(), [](const QLabel *label) {
        return label->isVisible() && label->text().startsWith(QStringLiteral("You said that its best is more than its worst."));
    }));
    press("Go on");
    choose(0, 2);
    choose(1, 2);
    press("Go on");
    press("When I sit");
    press("When I bend");
    press("Go on");
    press("When I walk");
    press("Go on");
    choose(0, 0);
    choose(1, 2);
    press("Go on");
    choose(4, 3);
    press("Go on");
    const auto fields = patient().page().findChildren<TextBlock *>();
    ASSERT_EQ(fields.size(), 3);
    fields[0]->insertPlainText(QStringLiteral("putting on a coat"));
    choose(0, 3);
    press("Go on");
    type("to swim again");
    press("Go on");
    ASSERT_EQ(title(), QStringLiteral("Please look at your answers once more."));
    EXPECT_TRUE(std::ranges::any_of(patient().page().findChildren<QLabel *>(), [](const QLabel *label) {
        return label->text().startsWith(QStringLiteral("LEFT shoulder cap"));
    })) << "what was marked is among the answers";
    press("Go on");
    ASSERT_EQ(title(), QStringLiteral("Thank you. That was the last question."));
    EXPECT_FALSE(seen(patient(), QStringLiteral("Go on")));

    const Visit kept = stored(); // nobody has taken over yet
    ASSERT_EQ(kept.pain.size(), 1U);
    EXPECT_EQ(kept.pain[0].painter, Painter::Patient);
    EXPECT_FALSE(kept.pain[0].confirmed);
    EXPECT_EQ(kept.pain[0].quality, PainQuality::Burning);
    EXPECT_EQ(kept.pain[0].intensity, PainScore{6});
    ASSERT_EQ(kept.complaints.size(), 1U);
    const Complaint &told = kept.complaints[0];
    EXPECT_EQ(told.text, "my shoulder aches");
    EXPECT_EQ(told.now, PainScore{5});
    EXPECT_EQ(told.worst, PainScore{3});
    EXPECT_EQ(told.best, PainScore{8}) << "kept as told";
    EXPECT_EQ(told.since, "It started some weeks ago. It came after a fall, a blow, a lift or a crash.");
    EXPECT_EQ(told.aggravates, "When I sit. When I bend.");
    EXPECT_EQ(told.eases, "When I walk.");
    EXPECT_EQ(told.irritability, Irritability::High);
    EXPECT_EQ(told.day[static_cast<std::size_t>(PartOfDay::Night)], DayLevel::More);
    EXPECT_EQ(told.activities, (std::vector<Activity>{{"putting on a coat", 3}}));
    EXPECT_EQ(told.goal, "to swim again");

    const QStringList notes = takeBack();
    EXPECT_FALSE(isOpen());
    EXPECT_TRUE(notes.join(QLatin1Char('\n')).contains(QStringLiteral("began with an injury")));
    EXPECT_EQ(stored(), kept);
}

TEST_F(PatientMode, ByKeysAloneThroughAllPages)
{
    hand();
    key(Qt::Key_Return);
    key(Qt::Key_Right); // none of these
    EXPECT_EQ(title(), QStringLiteral("Do you have one of these now?"));
    key(Qt::Key_Return);
    QTest::keyClicks(QApplication::focusWidget(), QStringLiteral("knee"));
    key(Qt::Key_Tab);
    while (QApplication::focusWidget() != seen(patient(), QStringLiteral("Go on")))
        key(Qt::Key_Tab);
    key(Qt::Key_Return);
    ASSERT_EQ(title(), QStringLiteral("Front of your body"));
    ASSERT_TRUE(board().hasFocus());
    key(Qt::Key_Down);
    key(Qt::Key_Space);
    EXPECT_EQ(board().patches().size(), 1U);
    key(Qt::Key_Return);
    ASSERT_EQ(title(), QStringLiteral("Back of your body"));
    key(Qt::Key_Return);
    key(Qt::Key_Return); // nothing marked here: said once, then on
    ASSERT_EQ(title(), QStringLiteral("Is this the place?"));
    key(Qt::Key_Return); // yes
    ASSERT_EQ(title(), QStringLiteral("How does it feel?"));
    key(Qt::Key_Down);
    key(Qt::Key_Return);
    key(Qt::Key_7);
    key(Qt::Key_Return);
    EXPECT_EQ(patient().answers().pain.at(0).quality, PainQuality::Aching);
    EXPECT_EQ(patient().answers().pain.at(0).intensity, PainScore{7});
    int pages = 0;
    while (title() != QStringLiteral("Thank you. That was the last question.") && ++pages < 30) {
        const QString before = title();
        for (int tries = 0; title() == before && tries < 40; ++tries) { // Tab is never caught
            if (QApplication::focusWidget() == seen(patient(), QStringLiteral("Go on")))
                key(Qt::Key_Return);
            else
                key(Qt::Key_Tab);
        }
        ASSERT_NE(title(), before);
    }
    EXPECT_LT(pages, 30);
    EXPECT_EQ(stored().complaints.at(0).text, "knee");
}

TEST_F(PatientMode, EveryPageNamesWhatCanBeReachedAndIsLargeEnough)
{
    hand();
    for (int pages = 0; title() != QStringLiteral("Thank you. That was the last question.") && pages < 40; ++pages) {
        std::set<QWidget *> wanted;
        for (auto *w : patient().findChildren<QWidget *>())
            if (w->isVisible() && w->isEnabled() && (w->focusPolicy() & Qt::TabFocus) && !w->focusProxy())
                wanted.insert(w);
        for (int i = 0; i < 80; ++i) {
            QWidget *now = QApplication::focusWidget();
            ASSERT_TRUE(now);
            wanted.erase(now);
            EXPECT_FALSE(now->accessibleName().isEmpty()) << now->metaObject()->className() << ", " << title().toStdString();
            key(Qt::Key_Tab);
        }
        EXPECT_TRUE(wanted.empty()) << title().toStdString() << ": "
                                    << (wanted.empty() ? "" : (*wanted.begin())->accessibleName().toStdString());
        for (const auto *b : patient().findChildren<QPushButton *>())
            if (b->isVisible()) {
                EXPECT_GE(std::min(b->height(), b->width()), 60) << b->text().toStdString() << ", " << title().toStdString();
            }
        for (const auto *label : patient().findChildren<QLabel *>())
            if (label->isVisible()) {
                EXPECT_GE(label->fontInfo().pointSizeF(), 19.9) << label->text().toStdString();
            }
        if (dynamic_cast<MarkPage *>(&patient().page()) && patient().answers().pain.empty())
            paint(leftCap);
        QPushButton *on = seen(patient(), QStringLiteral("Skip this"));
        on = on ? on : seen(patient(), QStringLiteral("Go on"));
        ASSERT_TRUE(on) << title().toStdString();
        QTest::mouseClick(on, Qt::LeftButton);
    }
    EXPECT_EQ(title(), QStringLiteral("Thank you. That was the last question."));
}

TEST_F(PatientMode, TheOtherSideIsTheMirrorAndIsSaidAgain)
{
    hand();
    toFront();
    paint(leftCap);
    press("Go on");
    paint(leftCap);
    press("Go on");
    ASSERT_EQ(patient().answers().pain.size(), 2U);
    const std::vector<PainPatch> before = patient().answers().pain;
    EXPECT_TRUE(said().contains(QStringLiteral("LEFT shoulder cap"))) << said().toStdString();
    press("It is on the other side");
    EXPECT_TRUE(said().contains(QStringLiteral("RIGHT shoulder cap"))) << said().toStdString();
    EXPECT_FALSE(said().contains(QStringLiteral("LEFT")));
    EXPECT_TRUE(said().contains(QStringLiteral("front of your body")));
    EXPECT_EQ(patient().answers().pain[0], mirrored(before[0]));
    EXPECT_EQ(patient().answers().pain[1], before[1]);
    EXPECT_EQ(stored().pain, patient().answers().pain);
    press("Yes, that is the place");
    EXPECT_TRUE(said().contains(QStringLiteral("LEFT shoulder cap"))) << said().toStdString();
    EXPECT_TRUE(said().contains(QStringLiteral("back of your body")));

    press("No, let me mark it again");
    EXPECT_EQ(title(), QStringLiteral("Back of your body"));
    EXPECT_TRUE(board().patches().empty());
    press("Take back the last mark");
    EXPECT_EQ(board().patches(), std::vector<PainPatch>{before[1]}) << "nothing is lost by a slip";
}

TEST_F(PatientMode, OnlyThePassphraseLeadsOut)
{
    session().aimAt({{StructureId{"gluteus-maximus"}, Side::Right}, {}, {}});
    session().setTenderness(3);
    const std::vector<Finding> foundBefore = findings();
    QSignalSpy locks(&window(), &MainWindow::lockWanted);
    hand();
    const int steps = session().undoStack().index();
    for (const auto &[k, modifiers] : std::vector<std::pair<Qt::Key, Qt::KeyboardModifiers>>{{Qt::Key_Escape, {}},
             {Qt::Key_F4, Qt::AltModifier}, {Qt::Key_E, {}}, {Qt::Key_A, {}}, {Qt::Key_0, {}}, {Qt::Key_1, {}}, {Qt::Key_4, {}},
             {Qt::Key_1, Qt::AltModifier}, {Qt::Key_F, {}}, {Qt::Key_C, {}}, {Qt::Key_B, {}}, {Qt::Key_Delete, {}},
             {Qt::Key_L, Qt::ControlModifier}, {Qt::Key_O, Qt::ControlModifier}, {Qt::Key_P, Qt::ControlModifier},
             {Qt::Key_F, Qt::ControlModifier}, {Qt::Key_Z, Qt::ControlModifier}, {Qt::Key_Y, Qt::ControlModifier},
             {Qt::Key_Q, Qt::ControlModifier}, {Qt::Key_W, Qt::ControlModifier}, {Qt::Key_1, Qt::ControlModifier},
             {Qt::Key_F1, {}}, {Qt::Key_Tab, {}}, {Qt::Key_Backtab, {}}, {Qt::Key_Menu, {}}}) {
        key(k, modifiers);
        EXPECT_TRUE(isOpen()) << k << ' ' << modifiers;
        EXPECT_EQ(QApplication::activeModalWidget(), &patient()) << k << ' ' << modifiers;
        QTest::keyClick(&window(), k, modifiers); // even to the window behind
        EXPECT_EQ(QApplication::activeModalWidget(), &patient()) << k << ' ' << modifiers;
    }
    patient().close();
    EXPECT_TRUE(isOpen());
    patient().reject();
    patient().accept();
    patient().done(1);
    EXPECT_TRUE(isOpen());
    QCloseEvent asked;
    QCoreApplication::sendEvent(&patient(), &asked);
    EXPECT_FALSE(asked.isAccepted());
    EXPECT_TRUE(isOpen());
    EXPECT_EQ(locks.count(), 0);
    EXPECT_EQ(findings(), foundBefore);
    EXPECT_EQ(session().undoStack().index(), steps);
    EXPECT_EQ(window().windowTitle(), QStringLiteral("Raphe")) << "no name to be seen";

    QSignalSpy failures(&patient(), &PatientWindow::failuresChanged);
    for (const char *wrong : {"", "for the test", "FOR THE TEST ONLY"}) {
        tryPassphrase(QString::fromUtf8(wrong));
        EXPECT_TRUE(isOpen()) << wrong;
        auto *dialog = patient().findChild<TakeOverDialog *>();
        ASSERT_TRUE(dialog) << wrong;
        QTest::keyClick(dialog, Qt::Key_Escape);
        EXPECT_TRUE(isOpen()) << "Escape leads back to the patient, not out";
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
    ASSERT_EQ(failures.count(), 2) << "an empty one is no try";
    EXPECT_EQ(failures.last().first().toInt(), 2);
    takeBack();
    EXPECT_FALSE(isOpen());
    EXPECT_EQ(window().windowTitle(), QStringLiteral("Test Patient - Raphe"));
    EXPECT_EQ(failures.last().first().toInt(), 0);
}

TEST_F(PatientMode, WaitsAfterWrongTries)
{
    const auto handed = PatientWindow::handOver(session(), Theme::light(), 3, window()); // two more slips than are free
    ASSERT_TRUE(handed.ok());
    QTest::mouseClick(seen(*handed.value(), QStringLiteral("For the therapist")), Qt::LeftButton);
    auto *dialog = handed.value()->findChild<TakeOverDialog *>();
    ASSERT_TRUE(dialog);
    EXPECT_FALSE(seen(*dialog, QStringLiteral("Take over"))->isEnabled());
    dialog->findChild<PassphraseLine *>()->setText(QStringLiteral("for the test only"));
    QTest::keyClick(dialog->findChild<PassphraseLine *>(), Qt::Key_Return);
    EXPECT_FALSE(dialog->isWorking());
    delete handed.value();
}

TEST_F(PatientMode, ThePractitionersWordsAndMarksStay)
{
    PainPatch painted = dot(View::Back, {40, 420});
    painted.painter = Painter::Practitioner;
    session().setPain({painted});
    Complaint complaint;
    complaint.text = "low back";
    complaint.goal = "lift the child";
    complaint.activities = {{"stairs", {}}};
    session().setComplaints({complaint});
    hand();
    press("Go on");
    press("Skip this");
    ASSERT_EQ(title(), QStringLiteral("Front of your body")) << "what brings the patient was told before";
    paint(rightCap);
    press("Go on");
    press("It does not hurt on this side");
    press("Yes, that is the place");
    while (title() != QStringLiteral("What is hard for you to do?") && !HasFatalFailure())
        press("Skip this");
    EXPECT_FALSE(patient().page().findChild<TextBlock *>()) << "the same activities, by name";
    choose(0, 4);
    press("Go on");
    type("to dance\u202e");
    const QStringList notes = takeBack();
    EXPECT_TRUE(notes.join(QLatin1Char('\n')).contains(QStringLiteral("hidden characters")))
        << notes.join(QLatin1Char('\n')).toStdString();
    const Visit kept = stored();
    ASSERT_EQ(kept.pain.size(), 2U);
    EXPECT_EQ(kept.pain[0], painted);
    EXPECT_EQ(kept.pain[1].painter, Painter::Patient);
    EXPECT_EQ(kept.complaints.at(0).text, "low back");
    EXPECT_EQ(kept.complaints.at(0).goal, "lift the child\nPatient: to dance\u202e") << "to the last character";
    EXPECT_EQ(kept.complaints.at(0).activities, (std::vector<Activity>{{"stairs", 4}}));
}

TEST_F(PatientMode, AnUrgentSignStopsAndIsToldToThePractitioner)
{
    hand();
    press("Go on");
    press("I have one of these");
    EXPECT_FALSE(seen(patient(), QStringLiteral("Go on")));
    EXPECT_FALSE(seen(patient(), QStringLiteral("Skip this")));
    press("I have none of these");
    EXPECT_TRUE(seen(patient(), QStringLiteral("Go on")));
    const QStringList notes = takeBack();
    EXPECT_TRUE(notes.first().contains(QStringLiteral("Ask the warning signs now"))) << "said once is told";
    EXPECT_TRUE(stored().warnings.empty());
}

TEST_F(PatientMode, ADrawingThatIsFullTakesNoMore)
{
    std::vector<PainPatch> many;
    for (std::size_t i = 0; i < PainLimits::patches; ++i) {
        many.push_back(dot(View::Back, {0, 10 + 9 * static_cast<double>(i)}));
        many.back().painter = Painter::Practitioner;
    }
    session().setPain(many);
    hand();
    toFront();
    paint(leftCap);
    EXPECT_TRUE(board().patches().empty());
    EXPECT_EQ(stored().pain, many) << "and can be read";
}

TEST_F(PatientMode, ASignedVisitIsNotHandedOver)
{
    ASSERT_TRUE(session().sign({}).ok());
    const auto handed = PatientWindow::handOver(session(), Theme::light(), 0, window());
    ASSERT_FALSE(handed.ok());
    EXPECT_EQ(handed.error().code, ErrorCode::NotAllowed);
    Q_EMIT window().intake().patientWanted();
    EXPECT_FALSE(QApplication::activeModalWidget());
}

} // namespace raphe::test
