// The board on which pain is painted: by mouse, finger, pen and keys, right and left, erasing, limits, pictures.
#include "app/raphe/intake/PainBoard.h"

#include "app/paint/PainPatchArt.h"
#include "app/raphe/Style.h"
#include "core/record/VisitJson.h"
#include "tests/support/Content.h"

#include <gtest/gtest.h>

#include <QAccessible>
#include <QApplication>
#include <QElapsedTimer>
#include <QPainter>
#include <QPointingDevice>
#include <QSignalSpy>
#include <QTabletEvent>
#include <QTest>

#include <cmath>
#include <iostream>

namespace raphe::test {

namespace {

const Knowledge &content()
{
    static const Result<Knowledge> read = readKnowledge();
    EXPECT_TRUE(read.ok()) << inWords(read.error());
    return read.value();
}

const Pane front{View::Front};
const Pane back{View::Back};
const Pane leftSide{View::Side, Side::Left};

class PainBoardTest : public testing::Test {
protected:
    void SetUp() override
    {
        m_board.resize(800, 800);
        m_board.show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(&m_board));
        QApplication::setActiveWindow(&m_board);
        m_board.setFocus();
    }

    [[nodiscard]] QPoint pixel(const Pane &view, Point p) { return board().pixelOf(view, p).toPoint(); }
    void paint(const Pane &view, const std::vector<Point> &points)
    {
        QTest::mousePress(&m_board, Qt::LeftButton, {}, pixel(view, points.front()));
        for (const Point &p : points)
            QTest::mouseMove(&m_board, pixel(view, p));
        QTest::mouseRelease(&m_board, Qt::LeftButton, {}, pixel(view, points.back()));
    }
    void key(Qt::Key k, Qt::KeyboardModifiers modifiers = {}) { QTest::keyClick(&m_board, k, modifiers); }
    void pen(QEvent::Type type, const Pane &view, Point p, QPointingDevice::PointerType tip)
    {
        static const QPointingDevice nib(QStringLiteral("nib"), 71, QInputDevice::DeviceType::Stylus,
            QPointingDevice::PointerType::Pen, QInputDevice::Capability::Position, 1, 3);
        static const QPointingDevice rubber(QStringLiteral("rubber"), 72, QInputDevice::DeviceType::Stylus,
            QPointingDevice::PointerType::Eraser, QInputDevice::Capability::Position, 1, 3);
        const bool isUp = type == QEvent::TabletRelease;
        QTabletEvent event(type, tip == QPointingDevice::PointerType::Eraser ? &rubber : &nib, board().pixelOf(view, p),
            board().pixelOf(view, p), isUp ? 0 : 0.5, 0, 0, 0, 0, 0, {},
            type == QEvent::TabletMove ? Qt::NoButton : Qt::LeftButton, isUp ? Qt::NoButton : Qt::LeftButton);
        QApplication::sendEvent(&m_board, &event);
        EXPECT_TRUE(event.isAccepted());
    }
    [[nodiscard]] PainBoard &board() { return m_board; }
    [[nodiscard]] const std::vector<PainPatch> &patches() { return m_board.patches(); }
    [[nodiscard]] std::string words(int index) { return m_board.words(index).toStdString(); }

private:
    PainBoard m_board{content()};
};

// Over the cap of the shoulder; x > 0 is the patient's left in front and the right at the back.
const Point shoulder{118, 205};
const Point otherShoulder{-118, 205};

} // namespace

TEST_F(PainBoardTest, AStrokeOnTheLeftShoulderIsCalledLeft)
{
    QSignalSpy changed(&board(), &PainBoard::changed);
    QSignalSpy chosen(&board(), &PainBoard::chosen);
    paint(front, {shoulder, {122, 215}, {124, 225}});
    ASSERT_EQ(patches().size(), 1U);
    EXPECT_EQ(patches()[0].view, View::Front);
    EXPECT_GE(patches()[0].strokes[0].points.size(), 2U);
    EXPECT_EQ(words(0).rfind("LEFT shoulder cap", 0), 0U) << words(0);
    EXPECT_EQ(words(0).find("RIGHT"), std::string::npos);
    EXPECT_EQ(changed.count(), 1) << "once a stroke";
    ASSERT_EQ(chosen.count(), 1);
    EXPECT_EQ(chosen[0][0].toInt(), 0);
    paint(front, {otherShoulder, {-122, 215}});
    ASSERT_EQ(patches().size(), 2U);
    EXPECT_EQ(words(1).rfind("RIGHT shoulder cap", 0), 0U) << words(1);
    EXPECT_TRUE(board().words(2).isEmpty());
    EXPECT_TRUE(board().words(-1).isEmpty());
}

TEST_F(PainBoardTest, OnTheBackTheSidesAreTheOtherWayRound)
{
    paint(back, {shoulder, {122, 215}});
    paint(back, {otherShoulder});
    ASSERT_EQ(patches().size(), 2U);
    EXPECT_EQ(words(0).rfind("RIGHT ", 0), 0U) << words(0);
    EXPECT_EQ(words(1).rfind("LEFT ", 0), 0U) << words(1);
    EXPECT_EQ(patches()[1].strokes[0].points.size(), 1U) << "a click is a dot";
    EXPECT_GT(pixel(back, shoulder).x(), 400) << "the view at the right";
    EXPECT_LT(pixel(front, shoulder).x(), 400);
    EXPECT_GT(pixel(front, shoulder).x(), pixel(front, otherShoulder).x());
}

TEST_F(PainBoardTest, ASideViewFacingLeftIsLeft)
{
    board().setViews({leftSide});
    paint(leftSide, {{0, 560}, {0, 600}}); // the thigh
    ASSERT_EQ(patches().size(), 1U);
    EXPECT_EQ(patches()[0].facing, Side::Left);
    EXPECT_EQ(words(0).rfind("LEFT ", 0), 0U) << words(0);
    EXPECT_EQ(words(0).find("RIGHT"), std::string::npos);
    board().setViews({{View::Side, Side::Right}});
    paint({View::Side, Side::Right}, {{0, 560}, {0, 600}});
    ASSERT_EQ(patches().size(), 2U);
    EXPECT_EQ(words(1).rfind("RIGHT ", 0), 0U) << words(1);
}

TEST_F(PainBoardTest, EveryViewSaysThePlaceThatItsCursorStandsIn)
{
    int painted = 0;
    for (const Arrangement &arrangement : BodyPanes::arrangements()) {
        board().setViews(arrangement.panes);
        for (const PainBoard::Spot &spot : board().spots()) {
            if (spot.pane != 0)
                continue;
            QSignalSpy hovered(&board(), &PainBoard::hovered);
            ASSERT_TRUE(board().goTo(spot.place));
            ASSERT_EQ(board().spotAtCursor(), spot);
            board().setBrush(PainLimits::leastRadius);
            key(Qt::Key_Space);
            ASSERT_EQ(patches().size(), 1U);
            EXPECT_EQ(board().places(0).front().place, spot.place) << arrangement.name.toStdString();
            EXPECT_TRUE(board().isPainted(spot));
            key(Qt::Key_Space);
            ASSERT_TRUE(patches().empty()) << "the same key takes it away";
            ++painted;
        }
    }
    EXPECT_GT(painted, 500);
}

TEST_F(PainBoardTest, ByKeysAlone)
{
    QSignalSpy hovered(&board(), &PainBoard::hovered);
    ASSERT_TRUE(board().goTo({{"deltoid-region"}, Side::Left}));
    ASSERT_EQ(hovered.count(), 1);
    EXPECT_EQ(hovered[0][0].toString(), QStringLiteral("LEFT shoulder cap"));
    key(Qt::Key_Space);
    ASSERT_EQ(patches().size(), 1U);
    EXPECT_EQ(patches()[0].strokes[0].radius, board().brush());
    EXPECT_EQ(words(0).rfind("LEFT shoulder cap", 0), 0U) << words(0);
    EXPECT_EQ(board().places(0).front().place.side, Side::Left);
    // On to the right of the picture: at last on the other view, which shows the back.
    for (int i = 0; i < 12 && board().spotAtCursor()->pane == 0; ++i)
        key(Qt::Key_Right);
    ASSERT_EQ(board().spotAtCursor()->pane, 1U);
    EXPECT_EQ(board().spotAtCursor()->place.side, Side::Left) << "the left of the back is the patient's left";
    key(Qt::Key_Space);
    ASSERT_EQ(patches().size(), 2U);
    EXPECT_EQ(patches()[1].view, View::Back);
    for (int i = 0; i < 12 && board().spotAtCursor()->pane == 1; ++i)
        key(Qt::Key_Left);
    EXPECT_EQ(board().spotAtCursor()->pane, 0U) << "and back";
    // By a little: the dot lies 6 units on.
    ASSERT_TRUE(board().goTo({{"deltoid-region"}, Side::Left}));
    key(Qt::Key_Down, Qt::ShiftModifier);
    key(Qt::Key_Space);
    ASSERT_EQ(patches()[0].strokes.size(), 1U) << "a dot inside another patch chooses it";
    EXPECT_EQ(board().current(), 0);
    key(Qt::Key_Space);
    ASSERT_EQ(patches()[0].strokes.size(), 2U);
    EXPECT_NEAR(patches()[0].strokes[1].points[0].y - patches()[0].strokes[0].points[0].y, 6, 0.11);
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(patches()[0].strokes.size(), 1U);
    QSignalSpy chosen(&board(), &PainBoard::chosen);
    key(Qt::Key_N);
    EXPECT_EQ(board().current(), 1);
    key(Qt::Key_N);
    EXPECT_EQ(board().current(), 0) << "round and round";
    key(Qt::Key_P);
    EXPECT_EQ(board().current(), 1);
    EXPECT_EQ(chosen.count(), 3);
    key(Qt::Key_Delete);
    ASSERT_EQ(patches().size(), 1U);
    EXPECT_EQ(patches()[0].view, View::Front);
    QTest::keyClick(&board(), ']');
    EXPECT_EQ(board().brush(), PainBoard::brushes[2]);
    QTest::keyClick(&board(), ']');
    QTest::keyClick(&board(), '[');
    QTest::keyClick(&board(), '[');
    EXPECT_EQ(board().brush(), PainBoard::brushes[0]);
}

TEST_F(PainBoardTest, GoesToAViewThatShowsThePlace)
{
    ASSERT_TRUE(board().goTo({{"plantar-region-medial"}, Side::Right}));
    ASSERT_TRUE(board().spotAtCursor());
    EXPECT_EQ(board().spotAtCursor()->place.side, Side::Right);
    EXPECT_NE(board().views(), (std::vector<Pane>{front, back}));
    key(Qt::Key_Space);
    ASSERT_EQ(patches().size(), 1U);
    EXPECT_NE(words(0).find("RIGHT arch of the foot"), std::string::npos) << words(0);
    EXPECT_FALSE(board().goTo({{"gluteus-maximus"}, Side::Right})) << "no skin";
    board().setViews({front, back});
    board().choose(-1);
    board().choose(0);
    EXPECT_NE(board().views(), (std::vector<Pane>{front, back})) << "a patch that is chosen is shown";
}

TEST_F(PainBoardTest, TheEraserRemovesTheStrokesThatItTouches)
{
    paint(front, {{100, 320}, {40, 320}});
    paint(front, {{100, 350}, {40, 350}});
    paint(back, {{100, 320}});
    ASSERT_EQ(patches().size(), 2U);
    ASSERT_EQ(patches()[0].strokes.size(), 2U);
    board().setErasing(true);
    paint(front, {{70, 280}, {70, 322}});
    ASSERT_EQ(patches()[0].strokes.size(), 1U);
    board().setErasing(false);
    const Point rubbed{70, 350};
    pen(QEvent::TabletPress, front, rubbed, QPointingDevice::PointerType::Eraser);
    pen(QEvent::TabletRelease, front, rubbed, QPointingDevice::PointerType::Eraser);
    ASSERT_EQ(patches().size(), 1U) << "the far end of a pen erases";
    EXPECT_EQ(patches()[0].view, View::Back);
    board().undoStroke();
    board().undoStroke();
    ASSERT_EQ(patches().size(), 2U);
    EXPECT_EQ(patches()[0].strokes.size(), 2U);
}

TEST_F(PainBoardTest, PenAndFingerPaintAndThePenComesFirst)
{
    pen(QEvent::TabletPress, front, shoulder, QPointingDevice::PointerType::Pen);
    pen(QEvent::TabletMove, front, {122, 225}, QPointingDevice::PointerType::Pen);
    pen(QEvent::TabletRelease, front, {122, 235}, QPointingDevice::PointerType::Pen);
    ASSERT_EQ(patches().size(), 1U);
    EXPECT_EQ(words(0).rfind("LEFT ", 0), 0U) << words(0);
    std::unique_ptr<QPointingDevice> screen(QTest::createTouchDevice());
    QTest::touchEvent(&board(), screen.get()).press(1, pixel(back, otherShoulder));
    QTest::touchEvent(&board(), screen.get()).move(1, pixel(back, {-122, 225})).press(2, pixel(front, {60, 600}));
    QTest::touchEvent(&board(), screen.get()).stationary(1).move(2, pixel(front, {60, 640}));
    QTest::touchEvent(&board(), screen.get()).release(1, pixel(back, {-122, 235})).release(2, pixel(front, {60, 640}));
    ASSERT_EQ(patches().size(), 2U) << "a second finger does nothing";
    EXPECT_EQ(words(1).rfind("LEFT ", 0), 0U) << words(1);
    EXPECT_GE(patches()[1].strokes[0].points.size(), 2U);
    const auto before = patches();
    QTest::touchEvent(&board(), screen.get()).press(3, pixel(front, {60, 600}));
    ASSERT_EQ(patches().size(), 3U) << "a palm";
    pen(QEvent::TabletPress, front, {-60, 600}, QPointingDevice::PointerType::Pen);
    QTest::touchEvent(&board(), screen.get()).move(3, pixel(front, {60, 640}));
    pen(QEvent::TabletRelease, front, {-60, 600}, QPointingDevice::PointerType::Pen);
    QTest::touchEvent(&board(), screen.get()).release(3, pixel(front, {60, 640}));
    ASSERT_EQ(patches().size(), 3U);
    EXPECT_LT(patches()[2].strokes[0].points[0].x, 0) << "the pen's, not the palm's";
}

TEST_F(PainBoardTest, AStrokeStaysOnTheViewWhereItBegan)
{
    paint(front, {shoulder, {150, 300}});
    QTest::mousePress(&board(), Qt::LeftButton, {}, pixel(front, {60, 600}));
    QTest::mouseMove(&board(), pixel(back, {0, 600}));
    QTest::mouseRelease(&board(), Qt::LeftButton, {}, pixel(back, {0, 600}));
    for (const PainPatch &patch : patches())
        EXPECT_EQ(patch.view, View::Front);
}

TEST_F(PainBoardTest, AScribbleOfThirtyThousandPointsKeepsWithinTheLimitsAndTells)
{
    QSignalSpy refused(&board(), &PainBoard::refused);
    board().setUpdatesEnabled(false); // what is painted, not how fast it is shown
    QTest::mousePress(&board(), Qt::LeftButton, {}, pixel(front, {0, 500}));
    for (int i = 0; i < 30000; ++i) {
        const double a = i * 2.399963; // never the same way twice
        QMouseEvent move(QEvent::MouseMove, board().pixelOf(front, {150 * std::cos(a), 400 + 300 * std::sin(a * 1.7)}), QPointF(),
            Qt::NoButton, Qt::LeftButton, {});
        QApplication::sendEvent(&board(), &move);
    }
    QTest::mouseRelease(&board(), Qt::LeftButton, {}, pixel(front, {0, 500}));
    ASSERT_EQ(refused.count(), 1);
    EXPECT_TRUE(refused[0][0].toString().contains(QStringLiteral("full"))) << refused[0][0].toString().toStdString();
    Visit visit;
    visit.pain = patches();
    const auto read = readVisit(writeVisit(visit), "v.json", *content().atlas);
    ASSERT_TRUE(read) << inWords(read.error());
    EXPECT_EQ(read.value().pain, patches());
    EXPECT_GT(patches()[0].strokes.size(), 3U);
}

TEST_F(PainBoardTest, ReadOnlyChangesNothingButCanBeRead)
{
    paint(front, {shoulder, {122, 225}});
    board().setIntensity(PainScore{6});
    paint(back, {shoulder});
    const auto before = patches();
    board().setReadOnly(true);
    QSignalSpy changed(&board(), &PainBoard::changed);
    QSignalSpy chosen(&board(), &PainBoard::chosen);
    paint(front, {{60, 600}, {60, 640}});
    ASSERT_TRUE(board().goTo({{"deltoid-region"}, Side::Right}));
    key(Qt::Key_Space);
    key(Qt::Key_Delete);
    key(Qt::Key_Z, Qt::ControlModifier);
    board().setErasing(true);
    paint(front, {shoulder});
    board().setQuality(PainQuality::Numb);
    board().setIntensity(PainScore{1});
    board().clear();
    board().removeCurrent();
    EXPECT_EQ(patches(), before);
    EXPECT_EQ(changed.count(), 0);
    ASSERT_EQ(chosen.count(), 1) << "a touch on a patch chooses it";
    EXPECT_EQ(board().current(), 0);
}

TEST_F(PainBoardTest, AVisitFileGivesThePatchesBack)
{
    board().setPainter(Painter::Practitioner);
    paint(front, {shoulder, {122, 225}, {124, 260}});
    board().setQuality(PainQuality::Burning);
    board().setIntensity(PainScore{7});
    board().setViews({leftSide});
    paint(leftSide, {{0, 560}, {0, 600}});
    board().setViews({{View::Sole}});
    ASSERT_TRUE(board().goTo({{"heel-region"}, Side::Left}));
    key(Qt::Key_Space);
    ASSERT_EQ(patches().size(), 3U);
    Visit visit;
    visit.pain = patches();
    const auto read = readVisit(writeVisit(visit), "v.json", *content().atlas);
    ASSERT_TRUE(read) << inWords(read.error());
    ASSERT_EQ(read.value().pain, patches());
    EXPECT_EQ(read.value().pain[0].painter, Painter::Practitioner);
    QSignalSpy changed(&board(), &PainBoard::changed);
    board().setPatches({});
    board().setPatches(read.value().pain);
    EXPECT_EQ(patches(), visit.pain);
    EXPECT_EQ(changed.count(), 0) << "what is set from outside is known outside";
    EXPECT_NE(words(2).find("LEFT heel"), std::string::npos) << words(2);
}

TEST_F(PainBoardTest, ScreenReadersHearTheRegionsAndWhatIsPainted)
{
    auto *reader = QAccessible::queryAccessibleInterface(&board());
    ASSERT_TRUE(reader);
    EXPECT_FALSE(reader->text(QAccessible::Name).isEmpty());
    ASSERT_EQ(reader->childCount(), static_cast<int>(board().spots().size()));
    ASSERT_TRUE(board().goTo({{"deltoid-region"}, Side::Left}));
    auto *focused = reader->focusChild();
    ASSERT_TRUE(focused);
    EXPECT_EQ(focused->text(QAccessible::Name), QStringLiteral("LEFT shoulder cap, view: Front"));
    EXPECT_TRUE(focused->state().focused);
    EXPECT_FALSE(focused->state().checked);
    EXPECT_TRUE(QRect(board().mapToGlobal(QPoint()), board().size()).contains(focused->rect()));
    key(Qt::Key_Space);
    EXPECT_TRUE(focused->state().checked);
    EXPECT_EQ(reader->child(reader->indexOfChild(focused)), focused);
}

TEST_F(PainBoardTest, HoverTellsThePlaceInWords)
{
    QSignalSpy hovered(&board(), &PainBoard::hovered);
    QTest::mouseMove(&board(), pixel(back, shoulder));
    QTest::mouseMove(&board(), pixel(back, {118.5, 206}));
    ASSERT_EQ(hovered.count(), 1) << "told when it changes";
    EXPECT_TRUE(hovered[0][0].toString().startsWith(QStringLiteral("RIGHT "))) << hovered[0][0].toString().toStdString();
    QTest::mouseMove(&board(), QPoint(405, 300));
    ASSERT_EQ(hovered.count(), 2);
    EXPECT_TRUE(hovered[1][0].toString().isEmpty());
}

// A hand's line is shown as it moves: a stroke of a drawing of forty others costs a small part of a frame.
TEST_F(PainBoardTest, AMoveIsPaintedWithinAFrame)
{
    std::vector<PainPatch> many(8);
    for (std::size_t i = 0; i < many.size(); ++i)
        for (int line = 0; line < 5; ++line) {
            BrushStroke stroke{{}, 12};
            for (int k = 0; k < 60; ++k)
                stroke.points.push_back({-60 + 2.0 * k, 250 + 60.0 * static_cast<double>(i) + 8 * line + 6 * std::sin(k * 0.3)});
            many[i].strokes.push_back(stroke);
        }
    board().setPatches(many);
    QImage part(60, 60, QImage::Format_ARGB32_Premultiplied);
    const QRect where(pixel(front, {-20, 400}), part.size());
    board().render(&part, {}, QRegion(where));
    QElapsedTimer timer;
    timer.start();
    for (int i = 0; i < 20; ++i)
        board().render(&part, {}, QRegion(where));
    const double each = static_cast<double>(timer.nsecsElapsed()) / 20e6;
    std::cout << "[ painted  ] " << each << " ms a move\n";
    EXPECT_LT(each, 100) << "on a busy machine, too";
}

// What is painted piece by piece while the hand moves is the picture that is painted at once.
TEST_F(PainBoardTest, ThePartsThatArePaintedAnewJoinTheRest)
{
    paint(front, {{60, 560}, {60, 640}});
    board().setQuality(PainQuality::Pressing);
    board().setIntensity(PainScore{5});
    QImage shown(board().size(), QImage::Format_ARGB32_Premultiplied);
    board().render(&shown);
    QTest::mousePress(&board(), Qt::LeftButton, {}, pixel(front, {60, 650}));
    QTest::mouseMove(&board(), pixel(front, {62, 665}));
    QTest::mouseMove(&board(), pixel(front, {70, 690}));
    QImage whole(board().size(), QImage::Format_ARGB32_Premultiplied);
    board().render(&whole);
    QImage parts(board().size(), QImage::Format_ARGB32_Premultiplied);
    for (int y = 0; y < board().height(); y += 37)
        for (int x = 0; x < board().width(); x += 41)
            board().render(&parts, {x, y}, QRegion(QRect(x, y, 41, 37)));
    EXPECT_NE(shown, whole);
    EXPECT_EQ(parts, whole);
    QTest::mouseRelease(&board(), Qt::LeftButton, {}, pixel(front, {70, 690}));
}

TEST(PainPatterns, AreDistinctWithoutColour)
{
    for (const Theme &theme : {Theme::light(), Theme::night()}) {
        const auto onSkin = [&](std::optional<PainQuality> quality) {
            const QImage pattern = painPattern(theme, quality, 2);
            QImage tile(pattern.size(), QImage::Format_ARGB32_Premultiplied);
            tile.fill(theme.skin);
            QPainter(&tile).drawImage(0, 0, pattern);
            return tile.convertToFormat(QImage::Format_Grayscale8);
        };
        std::vector<QImage> tiles{onSkin(std::nullopt)};
        for (const auto &[quality, word] : painQualityWords)
            tiles.push_back(onSkin(quality));
        // However they are shifted against one another, a good part of the square differs.
        for (std::size_t a = 0; a < tiles.size(); ++a)
            for (std::size_t b = a + 1; b < tiles.size(); ++b) {
                const int side = tiles[a].width();
                int least = side * side;
                for (int dy = 0; dy < side; dy += 2)
                    for (int dx = 0; dx < side; dx += 2) {
                        int differ = 0;
                        for (int y = 0; y < side; ++y)
                            for (int x = 0; x < side; ++x)
                                differ += std::abs(qGray(tiles[a].pixel(x, y))
                                              - qGray(tiles[b].pixel((x + dx) % side, (y + dy) % side)))
                                    > 40;
                        least = std::min(least, differ);
                    }
                EXPECT_GT(least, side * side / 10) << a << " and " << b;
            }
    }
}

TEST(PainPatterns, StandOutFromTheSkinThatTheyTint)
{
    for (const Theme &theme : {Theme::light(), Theme::night()}) {
        QImage tinted(8, 8, QImage::Format_ARGB32_Premultiplied);
        tinted.fill(theme.skin);
        QPainter painter(&tinted);
        painter.drawImage(0, 0, painPattern(theme, std::nullopt, 1));
        painter.end();
        EXPECT_GE(contrast(theme.tender, tinted.pixelColor(4, 4)), 3) << "WCAG 2.1, 1.4.11: graphical objects";
        EXPECT_GE(contrast(theme.onMark, theme.tender), 4.5) << "the number on its plate";
        EXPECT_GE(contrast(theme.ink, theme.panel), 4.5) << "the two lines around the current patch";
    }
}

} // namespace raphe::test
