// Search and structure card in the window: misspelt names lead somewhere, links lead on and back, sides hold.
#include "tests/app/Window.h"

#include <QAbstractItemView>
#include <QCompleter>
#include <QPushButton>
#include <QStatusBar>
#include <QTextBrowser>

namespace raphe::test {

namespace {

class Card : public WindowTest {
protected:
    SearchBox &box() { return *window().findChild<SearchBox *>(); }
    QTextBrowser &text() { return *window().findChild<QTextBrowser *>(); }
    QPushButton &back() { return *window().findChild<CardPanel *>()->backButton(); }

    void lookUp(const char *typed)
    {
        key(Qt::Key_F, Qt::ControlModifier);
        box().clear();
        QTest::keyClicks(&box(), QLatin1String(typed));
        QTest::keyClick(&box(), Qt::Key_Return);
    }

    void follow(const QString &address) { Q_EMIT text().anchorClicked(QUrl(address)); }
};

} // namespace

TEST_F(Card, AMisspeltNameWithItsSideTakesAimThere)
{
    lookUp("pirifromis r");
    ASSERT_TRUE(session().aim());
    EXPECT_EQ(session().aim()->place, (Place{StructureId{"piriformis"}, Side::Right}));
    EXPECT_EQ(window().bodyView(View::Back).layer(), Layer::DeepMuscle);
    lookUp("left glutmax");
    EXPECT_EQ(session().aim()->place, (Place{StructureId{"gluteus-maximus"}, Side::Left}));
    lookUp("L4/5");
    EXPECT_EQ(session().aim()->place.structure, StructureId{"l4-l5"});
}

TEST_F(Card, WithoutASideWordBothSidesAreOffered)
{
    key(Qt::Key_F, Qt::ControlModifier);
    QTest::keyClicks(&box(), QStringLiteral("soleus"));
    const auto offered = box().offered();
    ASSERT_GE(offered.size(), 2U);
    EXPECT_EQ(offered[0], (Place{StructureId{"soleus"}, Side::Left}));
    EXPECT_EQ(offered[1], (Place{StructureId{"soleus"}, Side::Right}));
}

TEST_F(Card, NonsenseSaysSoAndChangesNothing)
{
    lookUp("left piriformis");
    lookUp("xqzzwv");
    EXPECT_EQ(session().aim()->place, (Place{StructureId{"piriformis"}, Side::Left}));
    EXPECT_TRUE(window().statusBar()->currentMessage().contains(QStringLiteral("xqzzwv")));
}

TEST_F(Card, ShowsWhatIsAimedAtAndLeadsOnAndBack)
{
    lookUp("right glute max");
    window().setFocus();
    key(Qt::Key_I);
    ASSERT_TRUE(text().isVisible());
    EXPECT_TRUE(text().toPlainText().contains(QStringLiteral("right gluteal tuberosity")));
    EXPECT_TRUE(text().toPlainText().contains(QStringLiteral("that treating one end helps the other: not shown")));
    EXPECT_FALSE(back().isEnabled());
    ASSERT_TRUE(text().toHtml().contains(QStringLiteral("href=\"gluteal-tuberosity/right\"")));
    follow(QStringLiteral("gluteal-tuberosity/right"));
    EXPECT_EQ(session().aim()->place, (Place{StructureId{"gluteal-tuberosity"}, Side::Right}));
    EXPECT_TRUE(text().toPlainText().contains(QStringLiteral("right gluteus maximus"))) << "attached there";
    ASSERT_TRUE(back().isEnabled());
    QTest::mouseClick(&back(), Qt::LeftButton);
    EXPECT_EQ(session().aim()->place, (Place{StructureId{"gluteus-maximus"}, Side::Right}));
    EXPECT_FALSE(back().isEnabled());
    follow(QStringLiteral("no-such-thing"));
    EXPECT_EQ(session().aim()->place, (Place{StructureId{"gluteus-maximus"}, Side::Right}))
        << "an address that is none is ignored";
}

TEST_F(Card, AFindingStandsOnTheCardAtOnce)
{
    lookUp("left quadratus lumborum");
    window().setFocus();
    key(Qt::Key_I);
    EXPECT_FALSE(text().toPlainText().contains(QStringLiteral("Found here")));
    key(Qt::Key_3);
    EXPECT_TRUE(text().toPlainText().contains(QStringLiteral("this visit: left quadratus lumborum, tenderness 3")));
}

TEST_F(Card, TypedSideWordsAreUnderstood)
{
    EXPECT_EQ(typedPlace(QStringLiteral("r glute max")).side, Side::Right);
    EXPECT_EQ(typedPlace(QStringLiteral("glute max LEFT")).side, Side::Left);
    EXPECT_EQ(typedPlace(QStringLiteral("glute max LEFT")).name, "glute max");
    EXPECT_FALSE(typedPlace(QStringLiteral("L4/5")).side) << "no side word";
}

} // namespace raphe::test
