// The views of the body: transform, labels, panes, keys; right and left never swap, turned or not.
#include "app/raphe/ViewTransform.h"
#include "tests/app/Window.h"

#include <QTest>

namespace raphe::test {

namespace {

ViewTransform transformOf(double zoom, QPointF pan, bool upsideDown)
{
    return {{400, 800}, QRectF(-200, 0, 400, 1000), zoom, pan, upsideDown};
}

class Views : public WindowTest { };

} // namespace

TEST(ViewTransform, ThereAndBackAgain)
{
    for (const bool upsideDown : {false, true})
        for (const double zoom : {1.0, 3.5, 12.0}) {
            const ViewTransform t = transformOf(zoom, {17, -40}, upsideDown);
            for (const Point p : {Point{0, 0}, Point{103, 492}, Point{-190, 640}}) {
                const Point back = t.toBody(t.toWidget(p));
                EXPECT_NEAR(back.x, p.x, 1e-9);
                EXPECT_NEAR(back.y, p.y, 1e-9);
                const QPointF mapped = t.matrix().map(QPointF(p.x, p.y));
                EXPECT_NEAR(mapped.x(), t.toWidget(p).x(), 1e-9);
                EXPECT_NEAR(mapped.y(), t.toWidget(p).y(), 1e-9);
            }
        }
}

TEST(ViewTransform, UpsideDownIsATurnAndNoMirror)
{
    const ViewTransform up = transformOf(1, {0, 0}, false);
    const ViewTransform down = transformOf(1, {0, 0}, true);
    EXPECT_GT(down.toWidget({0, 0}).y(), down.toWidget({0, 1000}).y()) << "the crown is at the bottom";
    EXPECT_LT(down.toWidget({100, 500}).x(), down.toWidget({-100, 500}).x()) << "and the sides have changed places on the screen";
    EXPECT_GT(up.matrix().determinant() * down.matrix().determinant(), 0) << "a mirror image would turn the sign";
}

TEST(Labels, NeverTouchOneAnother)
{
    std::vector<Label> wanted;
    for (int i = 0; i < 60; ++i)
        wanted.push_back(
            {QStringLiteral("label %1").arg(i), QPointF((i * 37) % 400, (i * 53) % 300), static_cast<double>(i % 7), {}});
    const QRectF room(0, 0, 400, 300);
    const QRectF mark(150, 100, 40, 40);
    const auto placed = placedLabels(wanted, room, {mark}, [](const QString &) { return QSizeF(60, 14); });
    ASSERT_GT(placed.size(), 10U);
    for (std::size_t i = 0; i < placed.size(); ++i) {
        EXPECT_TRUE(room.contains(placed[i].box));
        EXPECT_FALSE(mark.intersects(placed[i].box));
        for (std::size_t k = i + 1; k < placed.size(); ++k)
            EXPECT_FALSE(placed[i].box.intersects(placed[k].box)) << placed[i].text.toStdString() << placed[k].text.toStdString();
    }
    EXPECT_EQ(placed.front().weight, 6) << "the heaviest choose first";
}

TEST_F(Views, EachHasItsKeyAndItsTitle)
{
    window().setFocus();
    const std::vector<std::pair<Qt::Key, Pane>> keys{{Qt::Key_F3, {View::Front}}, {Qt::Key_F4, {View::Back}},
        {Qt::Key_F5, {View::Side, Side::Right}}, {Qt::Key_F6, {View::Side, Side::Left}}, {Qt::Key_F7, {View::Sole}},
        {Qt::Key_F8, {View::Palm}}, {Qt::Key_F9, {View::Head, Side::Right}}, {Qt::Key_F10, {View::Head, Side::Left}}};
    std::set<QString> titles;
    for (const auto &[k, pane] : keys) {
        QTest::keyClick(&window(), k);
        ASSERT_EQ(window().bodies().shown(), std::vector{pane});
        EXPECT_TRUE(window().bodies().viewOf(pane).isVisible());
        EXPECT_FALSE(window().bodies().viewOf({View::Front}).isVisible() && pane.view != View::Front);
        titles.insert(window().bodies().viewOf(pane).title());
    }
    EXPECT_EQ(titles.size(), keys.size());
    QTest::keyClick(&window(), Qt::Key_F2);
    EXPECT_EQ(window().bodies().shown().size(), 2U);
}

TEST_F(Views, TheSideViewRecordsTheSideThatItShows)
{
    for (const Side facing : {Side::Right, Side::Left}) {
        window().bodies().show({{View::Side, facing}});
        window().setLayer(Layer::SuperficialMuscle);
        QCoreApplication::processEvents();
        BodyView &view = window().bodyView(View::Side, facing);
        const Place place{StructureId{"gluteus-maximus"}, facing};
        EXPECT_TRUE(view.shows(place));
        EXPECT_FALSE(view.shows(mirrored(place)));
        QTest::mouseClick(&view, Qt::LeftButton, {}, pixelOf(view, place));
        ASSERT_TRUE(session().aim());
        EXPECT_EQ(session().aim()->place, place);
        for (const UnderHit &hit : session().aim()->stack)
            EXPECT_NE(hit.place.side, mirrored(facing)) << hit.place;
    }
}

TEST_F(Views, TheTwoSidesAreMirrorImages)
{
    BodyView &right = window().bodyView(View::Side, Side::Right);
    BodyView &left = window().bodyView(View::Side, Side::Left);
    const auto rights = body().of(View::Side).under(atlas(), {30, 500}, Side::Right);
    const auto lefts = body().of(View::Side).under(atlas(), {-30, 500}, Side::Left);
    ASSERT_EQ(rights.size(), lefts.size());
    for (std::size_t i = 0; i < rights.size(); ++i)
        EXPECT_EQ(mirrored(rights[i].place), lefts[i].place);
    EXPECT_EQ(right.title(), QStringLiteral("Right side"));
    EXPECT_EQ(left.title(), QStringLiteral("Left side"));
}

TEST_F(Views, TurnedForWorkFromTheHeadEndSidesHold)
{
    window().bodies().show({{View::Back}});
    QCoreApplication::processEvents();
    BodyView &back = window().bodyView(View::Back);
    const Place place{StructureId{"gluteus-maximus"}, Side::Right};
    const QPoint before = pixelOf(back, place);
    EXPECT_GT(before.x(), back.width() / 2) << "the patient's right is on the right";
    window().setFocus();
    QTest::keyClick(&window(), Qt::Key_X);
    ASSERT_TRUE(back.isUpsideDown());
    const QPoint after = pixelOf(back, place);
    EXPECT_LT(after.x(), back.width() / 2);
    QTest::mouseClick(&back, Qt::LeftButton, {}, after);
    EXPECT_EQ(session().aim()->place, place);
}

TEST_F(Views, FindingWhatIsDrawnElsewhereBringsItsView)
{
    const Place place{StructureId{"flexor-digitorum-brevis"}, Side::Left};
    if (body().of(View::Front).shows(place.structure) || body().of(View::Back).shows(place.structure))
        GTEST_FAIL() << "the example must be drawn in an inset only";
    window().bodies().reveal(place);
    EXPECT_EQ(window().bodies().shown(), (std::vector<Pane>{{View::Sole}}));
    window().bodies().reveal({StructureId{"gluteus-maximus"}, Side::Right});
    EXPECT_EQ(window().bodies().shown().size(), 2U) << "front and back again";
}

TEST_F(Views, NamesAppearWhenThereIsRoomForThem)
{
    window().bodies().show({{View::Back}});
    window().setLayer(Layer::SuperficialMuscle);
    BodyView &back = window().bodyView(View::Back);
    back.grab();
    EXPECT_TRUE(back.labels().empty());
    back.zoomBy(5, back.toWidget({60, 480}));
    QTest::qWait(200); // the hand rests
    back.grab();
    EXPECT_FALSE(back.labels().empty());
}

TEST_F(Views, ANewLayerFadesInAndThenStandsStill)
{
    BodyView &back = window().bodyView(View::Back);
    const auto isStill = [&back] { return back.isStill(); };
    window().setLayer(Layer::Skin);
    ASSERT_TRUE(QTest::qWaitFor(isStill));
    const QImage before = back.grab().toImage();
    window().setLayer(Layer::Bone);
    EXPECT_FALSE(back.isStill());
    ASSERT_TRUE(QTest::qWaitFor(isStill));
    const QImage after = back.grab().toImage();
    EXPECT_NE(after, before);
    QTest::qWait(300);
    EXPECT_EQ(back.grab().toImage(), after);
}

} // namespace raphe::test
