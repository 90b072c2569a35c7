// What else hands felt at a place, and the sweep along an edge, in the window.
#include "app/raphe/examination/EdgeStrip.h"
#include "app/raphe/examination/SweepDialog.h"
#include "app/raphe/intake/ChoiceRow.h"
#include "core/record/VisitJson.h"
#include "tests/app/InNext.h"
#include "tests/app/Window.h"

#include <QTabWidget>

#include <random>

namespace raphe::test {

namespace {

class FeelTest : public WindowTest {
protected:
    void aim(const char *structure, Side side)
    {
        session().aimAt({{StructureId{structure}, side}, {}, {}});
        key(Qt::Key_Y);
        QCoreApplication::processEvents();
    }
    ChoiceRow *row(const QString &name)
    {
        for (auto *found : window().feel().findChildren<ChoiceRow *>())
            if (found->accessibleName() == name)
                return found;
        return nullptr;
    }
};

} // namespace

TEST_F(FeelTest, TextureAndClearOfTouchAreRecordedAndUndone)
{
    aim("quadratus-lumborum", Side::Right);
    QTest::mouseClick(button(QStringLiteral("Feels ropy")), Qt::LeftButton);
    ASSERT_EQ(findings().size(), 1U);
    EXPECT_EQ(findings()[0].texture, std::vector<std::string>{"ropy"});
    QTest::mouseClick(button(QStringLiteral("Clear of touch: not tender; motion was not felt")), Qt::LeftButton);
    EXPECT_TRUE(findings()[0].clear.tenderness);
    EXPECT_FALSE(findings()[0].clear.motion);
    EXPECT_EQ(findings()[0].texture.size(), 1U) << "texture stays";
    QTest::mouseClick(button(QStringLiteral("Feels ropy")), Qt::LeftButton);
    EXPECT_TRUE(findings()[0].texture.empty());
    session().undoStack().undo();
    session().undoStack().undo();
    session().undoStack().undo();
    EXPECT_TRUE(findings().empty());
}

// Whatever is pressed in whatever order, the visit can be read again: else nothing of this patient opens any more.
TEST_F(FeelTest, WhateverIsPressedCanBeReadAgain)
{
    std::mt19937 dice(4); // NOLINT(bugprone-random-generator-seed): the same presses each time
    const auto any = [&](int most) { return std::uniform_int_distribution(0, most)(dice); };
    const Atlas &atlas = *session().knowledge().atlas;
    aim("l4-l5", Side::Right);
    for (int press = 0; press < 400; ++press) {
        switch (any(9)) {
        case 0: session().setTenderness(any(4)); break;
        case 1: session().setRestriction(any(3)); break;
        case 2: session().setPlay(any(1) ? std::optional(any(6)) : std::nullopt); break;
        case 3: session().setEndFeel(any(1) ? std::optional(EndFeel::Firm) : std::nullopt); break;
        case 4: session().toggleCertain(); break;
        case 5: session().toggleAfterComparing(); break;
        case 6: session().toggleClearOf(any(1) == 0, any(1) == 0); break;
        case 7: session().toggleFamiliar(); break;
        case 8: session().toggleTexture("ropy"); break;
        default: session().setClear(); break;
        }
        const auto again = readVisit(writeVisit(session().visit()), "the visit", atlas);
        ASSERT_TRUE(again) << press << ": " << inWords(again.error());
    }
}

TEST_F(FeelTest, AGradeLeavesWhatIsClearOfTheOtherQuality)
{
    aim("quadratus-lumborum", Side::Right);
    session().toggleClearOf(false, true);
    session().setTenderness(2);
    ASSERT_EQ(findings().size(), 1U);
    EXPECT_TRUE(findings()[0].clear.motion);
    session().setRestriction(1);
    EXPECT_FALSE(findings()[0].clear.motion);
}

TEST_F(FeelTest, ALetterOnARowOfNumbersTakesNothingAway)
{
    aim("l4-l5", Side::Right);
    session().setPlay(2);
    ChoiceRow *play = row(QStringLiteral("Joint play"));
    ASSERT_NE(play, nullptr);
    play->button(2)->setFocus();
    QTest::keyClick(play->button(2), Qt::Key_M);
    ASSERT_EQ(findings().size(), 1U);
    EXPECT_EQ(findings()[0].play, JointPlay{2});
    EXPECT_EQ(play->value(), 2);
}

TEST_F(FeelTest, ClearPressedAgainIsTakenBack)
{
    aim("quadratus-lumborum", Side::Right);
    auto *clear = button(QStringLiteral("Clear of touch: not tender; motion was not felt"));
    QTest::mouseClick(clear, Qt::LeftButton);
    ASSERT_EQ(findings().size(), 1U);
    EXPECT_TRUE(clear->isChecked());
    QTest::mouseClick(clear, Qt::LeftButton);
    EXPECT_TRUE(findings().empty());
    EXPECT_FALSE(clear->isChecked());
}

TEST_F(FeelTest, ASignedVisitShowsWhatItSays)
{
    aim("quadratus-lumborum", Side::Right);
    QTest::mouseClick(button(QStringLiteral("Feels ropy")), Qt::LeftButton);
    ASSERT_TRUE(session().sign({}).ok());
    aim("quadratus-lumborum", Side::Right);
    auto *ropy = button(QStringLiteral("Feels ropy"));
    EXPECT_TRUE(ropy->isChecked());
    QTest::mouseClick(ropy, Qt::LeftButton);
    EXPECT_TRUE(ropy->isChecked());
    EXPECT_FALSE(ropy->isEnabled());
}

// Two findings at the same spot of a muscle, on two of its attachments: what is chosen in the list is what is changed.
TEST_F(FeelTest, AFindingOnOneOfSeveralAttachmentsIsChangedAlone)
{
    Finding one;
    one.place = {StructureId{"trapezius-descending-part"}, Side::Right};
    one.spot = Spot::Origin;
    one.at = StructureId{"external-occipital-protuberance"};
    one.tenderness = Tenderness{1};
    Finding other = one;
    other.at = StructureId{"nuchal-ligament"};
    other.tenderness = Tenderness{2};
    session().record({one, other}, {}, QStringLiteral("typed"));
    ASSERT_EQ(findings().size(), 2U);
    session().selectFinding(1);
    session().setTenderness(3);
    ASSERT_EQ(findings().size(), 2U);
    EXPECT_EQ(findings()[0], one);
    EXPECT_EQ(findings()[1].tenderness, Tenderness{3});
    Finding again = one;
    again.tenderness.reset();
    again.familiar = true;
    session().record({again}, {}, QStringLiteral("typed"));
    EXPECT_EQ(findings()[0].tenderness, Tenderness{1});
    EXPECT_TRUE(findings()[0].familiar);
    EXPECT_FALSE(findings()[1].familiar);
}

TEST_F(FeelTest, WhereItIsFeltAsWellIsTheNextTouch)
{
    aim("piriformis", Side::Right);
    session().setTenderness(2);
    QTest::mouseClick(button(QStringLiteral("Pressing here is felt elsewhere: touch that place next")), Qt::LeftButton);
    EXPECT_TRUE(window().feel().isPointing());
    BodyView &back = window().bodyView(View::Back);
    window().setLayer(Layer::Skin);
    const Place thigh{StructureId{"posterior-region-of-thigh-medial"}, Side::Right};
    QTest::mouseClick(&back, Qt::LeftButton, {}, pixelOf(back, thigh));
    EXPECT_FALSE(window().feel().isPointing());
    ASSERT_EQ(findings().size(), 1U);
    EXPECT_EQ(findings()[0].refersTo, std::vector<Place>{thigh});
    EXPECT_EQ(session().aim()->place.structure.value, "piriformis") << "the aim stays";
    QTest::mouseClick(&back, Qt::LeftButton, {}, pixelOf(back, thigh));
    EXPECT_EQ(session().aim()->place, thigh);
}

TEST_F(FeelTest, JointsHavePlayAndEndFeel)
{
    aim("hip-joint", Side::Left);
    QTest::mouseClick(row(QStringLiteral("Joint play"))->button(2), Qt::LeftButton);
    QTest::mouseClick(row(QStringLiteral("End feel"))->button(1), Qt::LeftButton);
    QTest::mouseClick(button(QStringLiteral("Felt only after comparing with the other side")), Qt::LeftButton);
    ASSERT_EQ(findings().size(), 1U);
    EXPECT_EQ(findings()[0].play, JointPlay{2});
    EXPECT_EQ(findings()[0].endFeel, EndFeel::Firm);
    EXPECT_TRUE(findings()[0].afterComparing);
    aim("gluteus-medius", Side::Left);
    EXPECT_FALSE(row(QStringLiteral("Joint play"))->isVisible());
}

TEST_F(FeelTest, ASweepMarksAsTheFingerGoes)
{
    aim("iliac-crest", Side::Right);
    inNext<SweepDialog>([](SweepDialog &dialog) {
        EdgeStrip &strip = dialog.strip();
        strip.setFocus();
        for (const auto k : {Qt::Key_0, Qt::Key_0, Qt::Key_2, Qt::Key_3})
            QTest::keyClick(&strip, k);
        EXPECT_EQ(strip.at(), 4U);
        QTest::keyClick(&strip, Qt::Key_Left);
        QTest::keyClick(&strip, Qt::Key_Delete);
        EXPECT_FALSE(strip.marks()[3]);
        const auto press = [&] { QTest::mouseClick(&strip, Qt::LeftButton, {}, strip.field(5).center().toPoint()); };
        press();
        EXPECT_FALSE(strip.marks()[5]) << "chosen, to see what attaches there";
        press();
        press();
        EXPECT_EQ(strip.marks()[5], 1);
        dialog.accept();
    });
    QTest::mouseClick(button(QStringLiteral("Sweep along this edge ...")), Qt::LeftButton);
    ASSERT_FALSE(findings().empty());
    for (const Finding &f : findings()) {
        EXPECT_EQ(f.place.side, Side::Right);
        if (f.tenderness) {
            EXPECT_FALSE(f.note.empty());
        }
    }
    session().undoStack().undo();
    EXPECT_TRUE(findings().empty()) << "one step of undo";
}

} // namespace raphe::test
