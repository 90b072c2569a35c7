// Misuse of what is told and painted: ratings, activities, stories, drawings, sides.
#include "tests/app/Misuse.h"

#include "app/raphe/intake/ChoiceRow.h"
#include "core/anatomy/StrokeRaster.h"
#include "core/plan/NextVisit.h"
#include "core/record/PainMask.h"
#include "tests/support/Complaints.h"

#include <QMessageBox>
#include <QTabBar>
#include <QTextLayout>

namespace raphe::test {

namespace {

PainPatch patchAt(View view, double x, double y)
{
    PainPatch patch;
    patch.view = view;
    patch.strokes = {{{{x, y}, {x, y + 30}}, 12}};
    patch.quality = PainQuality::Aching;
    patch.intensity = PainScore{6};
    return patch;
}

// Whether these characters stand from left to right on the line, in the order in which they are written; the first is left out,
// since a cursor before it stands where the text before it ends.
bool standInOrder(const QString &line, const QString &part)
{
    QTextLayout layout(line);
    layout.beginLayout();
    QTextLine shaped = layout.createLine();
    layout.endLayout();
    const int start = static_cast<int>(line.indexOf(part));
    for (int i = start + 1; i + 1 < start + static_cast<int>(part.size()); ++i) {
        int here = i, next = i + 1;
        if (shaped.cursorToX(here, QTextLine::Leading) >= shaped.cursorToX(next, QTextLine::Leading))
            return false;
    }
    return start >= 0;
}

} // namespace

TEST_F(Misuse, Mis01RatingsInTheWrongBoxes)
{
    beginIntake();
    const std::pair<const char *, Qt::Key> typed[] = {
        {"Pain now", Qt::Key_6}, {"Pain worst", Qt::Key_3}, {"Pain best", Qt::Key_8}};
    for (const auto &[name, digit] : typed) {
        field<ChoiceRow>(name)->button(0)->setFocus();
        key(digit);
    }
    EXPECT_TRUE(intakeSays("now 6, worst 3, best 8"));
    EXPECT_TRUE(intakeSays("Best is the least, worst is the most. They are kept as told; ask which is meant."));
    field<ChoiceRow>("Score of 1")->button(5)->click(); // goes on
    const Complaint told = stored().complaints.front();
    EXPECT_EQ(told.now, PainScore{6});
    EXPECT_EQ(told.worst, PainScore{3});
    EXPECT_EQ(told.best, PainScore{8});
    EXPECT_EQ(told.activities.front().score, 5);
}

TEST_F(Misuse, Mis04HalfActivities)
{
    beginIntake();
    field<ChoiceRow>("Score of 1")->button(5)->click();
    auto *second = field<QLineEdit>("What is hard to do, 2");
    second->setFocus();
    QTest::keyClicks(second, QStringLiteral("carry my grandson"));
    EXPECT_TRUE(intakeSays("A score of 5 has no name yet. 'carry my grandson' has no score yet."));
    EXPECT_FALSE(intakeSays("Mean")) << "no mean of no complete row; the empty third row is no complaint";
    reopen();
    EXPECT_EQ(field<ChoiceRow>("Score of 1")->value(), 5);
    EXPECT_EQ(field<QLineEdit>("What is hard to do, 2")->text(), QStringLiteral("carry my grandson"));
    EXPECT_EQ(meanScore(stored().complaints.front().activities), std::nullopt);
}

TEST_F(Misuse, Mis06NothingDrawnAtTheFollowUp)
{
    Visit before = session().visit();
    before.date = dayFrom(today(), -9);
    before.complaints = {complaintOf("low back")};
    before.complaintAt = {{{"lumbar-region-medial"}, Side::Right}};
    before.pain = {patchAt(View::Back, 40, 400)};
    ASSERT_TRUE(session().practice().saveVisit(session().visitId(), writeVisit(before)).ok());
    window().visitPanel().newVisit();
    beginIntake();
    button(window().intake(), QStringLiteral("All the rest is as it was"))->click();
    beginIntake();
    EXPECT_TRUE(QTest::qWaitFor([&] { return intakeSays("Nothing is drawn today, so that it cannot be compared"); }));
    for (const char *word : {"redrawing error", "may have moved", "Jaccard", "overlap"})
        EXPECT_FALSE(intakeSays(word)) << word;
    // The place is kept as the patient's word; the drawing is not copied, neither silently nor by an offer.
    EXPECT_EQ(stored().complaintAt, before.complaintAt);
    EXPECT_TRUE(stored().pain.empty());
}

TEST_F(Misuse, Mis08AbsurdRatings)
{
    beginIntake();
    auto *now = field<ChoiceRow>("Pain now");
    for (const char *typed : {"11", "-3", "7.5e3", "NaN", "\u221e", "6 or 7"}) {
        now->button(0)->setFocus();
        key(Qt::Key_Delete);
        write(QString::fromUtf8(typed));
        ASSERT_TRUE(window().isIntake()) << "no letter was a key of the window: " << typed;
        EXPECT_EQ(now->value(), std::nullopt) << typed;
        EXPECT_TRUE(intakeSays((std::string("'") + typed + "' is not a whole number from 0 to 10").c_str())) << typed;
        EXPECT_TRUE(stored().complaints.empty() || !stored().complaints.front().now) << typed;
    }
    key(Qt::Key_Delete);
    EXPECT_FALSE(intakeSays("whole number"));
    write(QStringLiteral("10"));
    EXPECT_EQ(stored().complaints.front().now, PainScore{10});
    key(Qt::Key_Delete);
    EXPECT_TRUE(stored().complaints.empty()) << "cleared is not 0";
}

TEST_F(Misuse, Mis10AScribbleOverTheWholeBody)
{
    beginIntake();
    // Four thousand strokes, from side to side and far beyond the outline.
    std::vector<PainPatch> scribble;
    for (const View view : {View::Front, View::Back})
        for (int patch = 0; patch < 4; ++patch) {
            PainPatch made;
            made.view = view;
            made.intensity = PainScore{10};
            for (int i = 0; i < 500; ++i) {
                const double y = (patch * 500 + i) / 2.0;
                made.strokes.push_back({{{-480, y}, {480, y}}, 6});
            }
            scribble.push_back(std::move(made));
        }
    session().setPain(scribble);
    EXPECT_TRUE(QTest::qWaitFor([&] { return intakeSays("Almost the whole body is marked: is that meant?"); }, 20'000));
    EXPECT_TRUE(intakeSays("% of the body"));
    EXPECT_FALSE(intakeSays("exaggerat"));
    const auto silhouette = silhouetteMask(*knowledge().body);
    const SurfaceMask mask = painMask(session().visit().pain, silhouette);
    EXPECT_EQ(mask,
        painMask(
            {scribble[0], scribble[1], scribble[2], scribble[3], scribble[4], scribble[5], scribble[6], scribble[7], scribble[0]},
            silhouette))
        << "what lies on each other counts once";
    const Ran extent = run({QStringLiteral("extent"), QStringLiteral("--visit"), written(session().visit())});
    ASSERT_EQ(extent.status, 0) << extent.err.toStdString();
    const double percent = nlohmann::json::parse(extent.out.toStdString()).at("pain").at("percent").get<double>();
    EXPECT_LE(percent, 100.0);
    EXPECT_GE(percent, 80.0);
    EXPECT_EQ(stored().pain, scribble) << "all of it is kept";
}

TEST_F(Misuse, Mis11AVeryLongStory)
{
    beginIntake();
    const QString told =
        QStringLiteral("and then ").repeated(25'000) + QStringLiteral("and since Tuesday I cannot feel the saddle");
    const QString before = bannerWords();
    story().insertPlainText(told);
    EXPECT_EQ(stored().complaint(), told.toStdString());
    EXPECT_EQ(bannerWords(), before);
    EXPECT_TRUE(banner().isVisible());
    reopen();
    beginIntake();
    EXPECT_TRUE(story().toPlainText().endsWith(QStringLiteral("cannot feel the saddle")));
    EXPECT_FALSE(session().warningsToAsk().empty()) << "typed text is no answer";
}

TEST_F(Misuse, Mis12AVeryLongWord)
{
    window().resize(1280, 800);
    beginIntake();
    const QString word = QStringLiteral("hoovering").repeated(5'000 / 9);
    field<QLineEdit>("What is hard to do, 1")->insert(word);
    field<ChoiceRow>("Score of 1")->button(3)->click();
    QCoreApplication::processEvents();
    EXPECT_LE(window().width(), 1280);
    const QWidget *score = field<ChoiceRow>("Score of 1")->button(10);
    const QRect seen(score->mapTo(&window(), QPoint()), score->size());
    EXPECT_LE(seen.right(), window().width());
    EXPECT_EQ(stored().complaints.front().activities, (std::vector<Activity>{{word.toStdString(), 3}}));
    const Ran map = run({QStringLiteral("map"), QStringLiteral("--visit"), written(session().visit()), QStringLiteral("--out"),
        inFolder("map.pdf")});
    EXPECT_EQ(map.status, 0) << map.err.toStdString();
}

TEST_F(Misuse, Mis14AStoryInHebrew)
{
    beginIntake();
    const QString told = QString::fromUtf8("כאב בגב התחתון מצד ימין, L4/L5, 7/10");
    story().insertPlainText(told);
    EXPECT_EQ(stored().complaint(), told.toStdString());
    reopen();
    beginIntake();
    EXPECT_EQ(story().toPlainText(), told);
    EXPECT_EQ(window().layoutDirection(), Qt::LeftToRight);
    EXPECT_TRUE(standInOrder(told, QStringLiteral("L4/L5")));
    EXPECT_TRUE(standInOrder(told, QStringLiteral("7/10")));
    // No program of ours reads a story in any language; the side is what was marked: nothing.
    EXPECT_TRUE(stored().complaintAt.empty());
    const QString file = written(session().visit());
    const Ran map = run({QStringLiteral("map"), QStringLiteral("--visit"), file, QStringLiteral("--out"), inFolder("map.pdf")});
    EXPECT_EQ(map.status, 0) << map.err.toStdString();
}

TEST_F(Misuse, Mis18MarksThatRunOverTheLinesAbove)
{
    beginIntake();
    QString word = QStringLiteral("b");
    for (int i = 0; i < 200; ++i)
        word += QChar(static_cast<char16_t>(0x0301 + i % 0x6F));
    word += QStringLiteral("urning");
    QCoreApplication::processEvents();
    const auto grabBanner = [&] { return window().grab(QRect(banner().mapTo(&window(), QPoint()), banner().size())).toImage(); };
    const QImage before = grabBanner();
    story().insertPlainText(word);
    field<QPlainTextEdit>("What the patient hopes for, in their words")->insertPlainText(word);
    QCoreApplication::processEvents();
    EXPECT_EQ(grabBanner(), before) << "nothing is painted over the banner";
    EXPECT_EQ(stored().complaint(), word.toStdString());
    EXPECT_EQ(stored().complaints.front().goal, word.toStdString());
    const Ran map = run({QStringLiteral("map"), QStringLiteral("--visit"), written(session().visit()), QStringLiteral("--out"),
        inFolder("map.pdf")});
    EXPECT_EQ(map.status, 0) << map.err.toStdString();
}

TEST_F(Misuse, Mis21DaysThatAreNone)
{
    beginIntake();
    auto *since = field<QPlainTextEdit>("Since when");
    since->setPlainText(QString::fromStdString(dayFrom(today(), 21)));
    EXPECT_TRUE(intakeSays("This day is still to come. It is kept as told; a year, a month or 'not known' will do."));
    EXPECT_EQ(stored().complaints.front().since, dayFrom(today(), 21));
    since->setPlainText(QStringLiteral("31 February"));
    EXPECT_TRUE(intakeSays("There is no such day. It is kept as told"));
    EXPECT_EQ(stored().complaints.front().since, "31 February");
    for (const char *fine : {"three weeks", "29 February", "2019-04-02", "last March", "1.2.2019"}) {
        since->setPlainText(QString::fromUtf8(fine));
        EXPECT_FALSE(intakeSays("kept as told")) << fine;
    }
    // Whether bones are asked for goes by the tick, not by a day.
    since->setPlainText(QStringLiteral("31 February"));
    hurtsAt("posterior-cervical-region", Side::Left);
    EXPECT_FALSE(isDue("neck-injury-dangerous-force"));
    session().setInjured(true);
    EXPECT_TRUE(isDue("neck-injury-dangerous-force"));
}

TEST_F(Misuse, Mis26PaintedOnTheWrongSide)
{
    hurtsAt("scapular-region", Side::Left);
    beginIntake();
    const PainPatch wrong = patchAt(View::Back, 90, 220); // x > 0: the right from behind
    session().setPain({wrong});
    QPushButton *confirm = button(window().intake(), QStringLiteral("Said back and agreed"));
    EXPECT_TRUE(intakeSays("RIGHT"));
    inNext<QMessageBox>([](QMessageBox &box) {
        EXPECT_TRUE(box.text().contains(QStringLiteral("painted on the RIGHT, and was told to hurt on the LEFT: which is it?")))
            << box.text().toStdString();
        QTest::keyClick(&box, Qt::Key_Return); // a blind key
    });
    confirm->click();
    EXPECT_FALSE(session().visit().pain.front().confirmed);
    EXPECT_EQ(session().visit().pain, std::vector{wrong}) << "nothing is moved by itself";
    inNext<QMessageBox>([](QMessageBox &box) { QTest::mouseClick(button(box, QStringLiteral("On the LEFT")), Qt::LeftButton); });
    confirm->click();
    EXPECT_TRUE(session().visit().pain.front().confirmed);
    EXPECT_EQ(session().visit().pain.front().strokes, mirrored(wrong).strokes);
    for (const Place &place : stored().complaintAt)
        EXPECT_NE(place.side, Side::Right) << place;
    session().undoStack().undo(); // confirmed
    session().undoStack().undo(); // moved
    EXPECT_EQ(session().visit().pain, std::vector{wrong}) << "the first marking can be had back";
    inNext<QMessageBox>([](QMessageBox &box) { QTest::mouseClick(button(box, QStringLiteral("On the RIGHT")), Qt::LeftButton); });
    confirm->click();
    EXPECT_EQ(session().visit().pain.front().strokes, wrong.strokes);
    for (const Place &place : stored().complaintAt)
        EXPECT_NE(place.side, Side::Left) << place;
}

// Through the session; the patient's own page has its own tests.
TEST_F(Misuse, Mis27NoTheOtherOneTwice)
{
    beginIntake();
    const PainPatch left = patchAt(View::Front, 45, 730);
    session().setPain({left});
    EXPECT_TRUE(window().intake().pain().board().words(0).startsWith(QStringLiteral("LEFT")));
    session().movePainToOtherSide();
    EXPECT_TRUE(window().intake().pain().board().words(0).startsWith(QStringLiteral("RIGHT")));
    ASSERT_EQ(session().visit().pain.size(), 1U) << "no mark on both sides";
    EXPECT_EQ(session().visit().pain.front().intensity, left.intensity);
    EXPECT_EQ(session().visit().pain.front().quality, left.quality);
    session().movePainToOtherSide();
    EXPECT_EQ(session().visit().pain, std::vector{left});
    EXPECT_FALSE(session().visit().pain.front().confirmed);
}

TEST_F(Misuse, Mis30TheSameComplaintTwice)
{
    beginIntake();
    story().insertPlainText(QStringLiteral("low back pain, right"));
    field<ChoiceRow>("Pain now")->button(5)->click();
    button(window().intake(), QStringLiteral("Another complaint"))->click();
    story().insertPlainText(QStringLiteral("Low back pain,  right"));
    field<ChoiceRow>("Pain now")->button(6)->click();
    EXPECT_TRUE(intakeSays("Complaints 1 and 2 are told in the same words. Both are kept as told"));
    button(window().intake(), QStringLiteral("Make first"))->click();
    const auto complaints = stored().complaints;
    ASSERT_EQ(complaints.size(), 2U);
    EXPECT_EQ(complaints[0].now, PainScore{6}) << "one is first: the newer choice";
    EXPECT_EQ(complaints[1].now, PainScore{5});
}

TEST_F(Misuse, Mis45ThePowerFailsInTheSeventhStroke)
{
    beginIntake();
    std::vector<PainPatch> six;
    for (int i = 0; i < 6; ++i)
        six.push_back(patchAt(View::Back, 20 + 5 * i, 300 + 90 * i));
    session().setPain(six);
    PainBoard &board = window().intake().pain().board();
    const auto pixel = [&](double x, double y) { return board.pixelOf(Pane{View::Front}, {x, y}).toPoint(); };
    QTest::mousePress(&board, Qt::LeftButton, {}, pixel(40, 250));
    QTest::mouseMove(&board, pixel(45, 270));
    QTest::mouseMove(&board, pixel(40, 290));
    // The pen is down; this is what a process that is killed now leaves.
    EXPECT_TRUE(QTest::qWaitFor([&] { return onDisk().pain.size() >= 6; }));
    EXPECT_EQ(onDisk().pain, six) << "the half stroke is left out, and nothing is closed or confirmed";
    QTest::mouseRelease(&board, Qt::LeftButton, {}, pixel(40, 290));
    EXPECT_EQ(stored().pain.size(), 7U);
}

TEST_F(Misuse, Mis48NumbersOfOtherScripts)
{
    beginIntake();
    auto *now = field<ChoiceRow>("Pain now");
    const auto type = [&](const char *typed) {
        now->button(0)->setFocus();
        key(Qt::Key_Delete);
        write(QString::fromUtf8(typed));
    };
    for (const char *seven : {"\u0667", "\uff17"}) {
        type(seven);
        EXPECT_EQ(now->value(), 7) << seven;
        EXPECT_EQ(stored().complaints.front().now, PainScore{7}) << seven;
    }
    for (const char *none : {"7,5", "sieben", "VII"}) {
        type(none);
        EXPECT_EQ(now->value(), std::nullopt) << none;
        EXPECT_TRUE(intakeSays("is not a whole number from 0 to 10")) << none;
        EXPECT_TRUE(stored().complaints.empty()) << none;
    }
}

TEST_F(Misuse, Mis50TextsThatLookLikeProgram)
{
    beginIntake();
    const QString html = QStringLiteral("<b>walk</b><script>alert(1)</script><img src=x>");
    const QString sheet = QStringLiteral("=HYPERLINK(\"a\",\"b\")");
    const QString percent = QStringLiteral("walk'); DROP TABLE visit; -- %1 %n {0} \\u0000");
    field<QLineEdit>("What is hard to do, 1")->insert(html);
    field<QLineEdit>("What is hard to do, 2")->insert(sheet);
    field<QLineEdit>("What is hard to do, 3")->insert(percent + QChar(u'\0'));
    for (const QString &text : {html, sheet, percent})
        EXPECT_TRUE(intakeSays(("'" + text.toStdString()).c_str())) << "as it is, with nothing put in: " << text.toStdString();
    for (const auto *label : window().intake().findChildren<QLabel *>())
        EXPECT_TRUE(!label->text().contains(QStringLiteral("walk")) || label->textFormat() == Qt::PlainText);
    for (int i = 1; i <= 3; ++i)
        field<ChoiceRow>(("Score of " + std::to_string(i)).c_str())->button(i)->click();
    const auto activities = stored().complaints.front().activities;
    ASSERT_EQ(activities.size(), 3U);
    EXPECT_EQ(activities[0], (Activity{html.toStdString(), 1}));
    EXPECT_EQ(activities[1], (Activity{sheet.toStdString(), 2}));
    EXPECT_EQ(activities[2].score, 3);
    EXPECT_TRUE(activities[2].name.starts_with(percent.toStdString())) << "nothing is cut";
    reopen();
    EXPECT_EQ(stored().complaints.front().activities, activities);
}

} // namespace raphe::test
