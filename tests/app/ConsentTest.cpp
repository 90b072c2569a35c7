// Consent in the window: explained and answered by mouse and by keys, a no stops what it covered, and what is missing is told in
// words.
#include "tests/app/Window.h"

#include "app/raphe/intake/ConsentDialog.h"

#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QScrollArea>

namespace raphe::test {

namespace {

class ConsentInWindow : public WindowTest {
protected:
    [[nodiscard]] ConsentDialog &open()
    {
        m_dialog = std::make_unique<ConsentDialog>(session(), &window());
        m_dialog->show();
        QApplication::setActiveWindow(m_dialog.get());
        return *m_dialog;
    }
    [[nodiscard]] QListWidget &list() { return *m_dialog->findChild<QListWidget *>(); }
    [[nodiscard]] const ConsentItem &item(const char *id) { return *adviser().rules().consents().find(id); }
    void choose(const char *id)
    {
        for (int row = 0; row < list().count(); ++row)
            if (list().item(row)->text().startsWith(QString::fromStdString(item(id).title) + QLatin1Char('\n')))
                return list().setCurrentRow(row);
        FAIL() << "not listed: " << id;
    }
    [[nodiscard]] QString stateOf(const char *id)
    {
        for (int row = 0; row < list().count(); ++row)
            if (list().item(row)->text().startsWith(QString::fromStdString(item(id).title) + QLatin1Char('\n')))
                return list().item(row)->text().section(QLatin1Char('\n'), 1);
        return {};
    }
    [[nodiscard]] QPushButton *named(const char *start)
    {
        for (auto *b : m_dialog->findChildren<QPushButton *>())
            if (b->accessibleName().startsWith(QString::fromUtf8(start)))
                return b;
        throw std::runtime_error(std::string("no button ") + start);
    }
    void click(const char *start) { QTest::mouseClick(named(start), Qt::LeftButton); }
    [[nodiscard]] QLineEdit *field(const char *name)
    {
        for (auto *f : m_dialog->findChildren<QLineEdit *>())
            if (f->accessibleName() == QString::fromUtf8(name))
                return f;
        throw std::runtime_error(std::string("no field ") + name);
    }
    [[nodiscard]] QString notice() { return m_dialog->findChild<QLabel *>(QStringLiteral("notice"))->text(); }
    [[nodiscard]] QString shownWords()
    {
        QString all;
        for (const auto *label : m_dialog->findChild<QWidget *>(QStringLiteral("consent"))->findChildren<QLabel *>())
            if (label->isVisible())
                all += label->text() + QLatin1Char('\n');
        return all;
    }
    [[nodiscard]] const ConsentAnswer *answered(const char *id)
    {
        for (const ConsentAnswer &a : session().visit().consents)
            if (a.item == id)
                return &a;
        return nullptr;
    }
    void find(const char *structure, Side side)
    {
        session().aimAt({{{structure}, side}, {}, {}});
        session().setTenderness(2);
    }
    // The rows of what to treat, and of what is left alone.
    [[nodiscard]] bool isOffered(const Place &place)
    {
        const auto advice = adviser().advise(session().visit(), "visit");
        EXPECT_TRUE(advice.ok());
        const auto &rows = advice.value().treatment.treat;
        return std::any_of(rows.begin(), rows.end(), [&](const Suggestion &s) { return s.place == place; });
    }

private:
    std::unique_ptr<ConsentDialog> m_dialog;
};

} // namespace

TEST_F(ConsentInWindow, WhatIsShownIsAllThatIsToBeExplained)
{
    static_cast<void>(open());
    for (const ConsentItem &each : adviser().rules().consents().items) {
        choose(each.id.c_str());
        const QString words = shownWords();
        for (const std::string *text : {&each.title, &each.benefits, &each.risks, &each.alternatives, &each.withdraw})
            EXPECT_TRUE(words.contains(QString::fromStdString(*text))) << each.id << ": " << *text;
        EXPECT_EQ(words.contains(QStringLiteral("Marks can stay")), each.marks) << each.id;
        EXPECT_FALSE(words.contains(QLatin1Char('{'))) << each.id;
        EXPECT_EQ(named("Chaperone offered: does not")->isVisible(), each.chaperone) << each.id;
    }
    choose("record");
    EXPECT_TRUE(shownWords().contains(QStringLiteral("for as long as the law says after")));
}

TEST_F(ConsentInWindow, GivenByMouseAndTakenBackStopsTheRow)
{
    const Place buttock{{"gluteus-maximus"}, Side::Right};
    find("gluteus-maximus", Side::Right);
    find("soleus", Side::Right);
    ASSERT_TRUE(isOffered(buttock));
    static_cast<void>(open());
    choose("region-buttock-tailbone");
    EXPECT_EQ(stateOf("region-buttock-tailbone"), QStringLiteral("not needed so far"));
    click("Given");
    EXPECT_FALSE(answered("region-buttock-tailbone")) << "no chaperone was offered";
    EXPECT_TRUE(notice().contains(QStringLiteral("Offer a chaperone"))) << notice().toStdString();
    click("Chaperone offered: somebody");
    click("Given");
    EXPECT_FALSE(answered("region-buttock-tailbone")) << "nobody is named";
    EXPECT_TRUE(notice().contains(QStringLiteral("who is present"))) << notice().toStdString();
    field("Who is present")->setText(QStringLiteral(" Ada Berg "));
    click("Given");
    ASSERT_TRUE(answered("region-buttock-tailbone"));
    EXPECT_EQ(*answered("region-buttock-tailbone"),
        (ConsentAnswer{
            "region-buttock-tailbone", ConsentState::Given, session().visit().date, Chaperone::Present, "Ada Berg", {}, {}}));
    EXPECT_TRUE(isOffered(buttock));
    choose("region-buttock-tailbone");
    EXPECT_FALSE(named("Refused")->isEnabled()) << "what was given is taken back";
    field("Remark: what was asked, or agreed beside it")->setText(QStringLiteral("it hurts"));
    click("Taken back");
    EXPECT_EQ(answered("region-buttock-tailbone")->state, ConsentState::Withdrawn);
    EXPECT_EQ(answered("region-buttock-tailbone")->remark, "it hurts");
    EXPECT_TRUE(stateOf("region-buttock-tailbone").startsWith(QStringLiteral("taken back on")));
    EXPECT_FALSE(isOffered(buttock)) << "it is left alone";
    EXPECT_TRUE(isOffered({{"soleus"}, Side::Right}));
    while (session().undoStack().canUndo())
        session().undoStack().undo();
    EXPECT_EQ(answered("region-buttock-tailbone")->state, ConsentState::Withdrawn) << "undo takes back findings only";
    while (session().undoStack().canRedo())
        session().undoStack().redo();
    EXPECT_EQ(stored().consents, session().visit().consents);
    const auto visit = session().visitId();
    session().close();
    ASSERT_TRUE(session().open(visit).ok());
    EXPECT_FALSE(isOffered(buttock)) << "opened again";
    const auto next = session().startVisit(session().patientId());
    ASSERT_TRUE(next.ok() && session().open(next.value()).ok());
    find("gluteus-maximus", Side::Right);
    EXPECT_FALSE(isOffered(buttock)) << "at the next visit";
    ConsentAnswer again{"region-buttock-tailbone", ConsentState::Given, session().visit().date, Chaperone::Declined, {}, {}, {}};
    ASSERT_TRUE(session().answerConsent(again).ok());
    EXPECT_TRUE(isOffered(buttock)) << "given again";
}

TEST_F(ConsentInWindow, ByKeysAlone)
{
    ConsentDialog &dialog = open();
    ASSERT_EQ(QApplication::focusWidget(), &list());
    const auto due = session().consentsDue().size();
    EXPECT_EQ(due, 4U) << "what every visit uses; no place that needs its own is told";
    QTest::keyClick(&list(), Qt::Key_A, Qt::AltModifier);
    for (const char *plain : {"examination-by-touch", "record", "soft-tissue-by-hand"}) {
        ASSERT_TRUE(answered(plain)) << plain;
        EXPECT_EQ(answered(plain)->state, ConsentState::Given);
    }
    EXPECT_EQ(session().visit().consents.size(), 3U) << "each of the others is asked by itself";
    EXPECT_EQ(session().consentsDue().size(), due - 3);
    EXPECT_FALSE(named("Explained and agreed")->isEnabled());
    const ConsentItem *first = session().consentsDue().front();
    EXPECT_TRUE(list().currentItem()->text().startsWith(QString::fromStdString(first->title))) << "the next one is shown";
    QTest::keyClick(&list(), Qt::Key_R, Qt::AltModifier);
    ASSERT_TRUE(answered(first->id.c_str()));
    EXPECT_EQ(answered(first->id.c_str())->state, ConsentState::Refused);
    QTest::keyClick(&list(), Qt::Key_G, Qt::AltModifier);
    EXPECT_EQ(answered(first->id.c_str())->state, ConsentState::Given) << "a no may become a yes";
    choose(first->id.c_str());
    QTest::keyClick(&list(), Qt::Key_T, Qt::AltModifier);
    EXPECT_EQ(answered(first->id.c_str())->state, ConsentState::Withdrawn);
    // The walk: everything that can be pressed or filled is reached by Tab, and has a name.
    choose("region-buttock-tailbone");
    std::set<QWidget *> reached;
    for (int guard = 0; guard < 60; ++guard) {
        reached.insert(QApplication::focusWidget());
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
    }
    for (auto *w : dialog.findChildren<QWidget *>())
        if (w->isVisible() && w->isEnabled() && (w->focusPolicy() & Qt::TabFocus)) {
            EXPECT_TRUE(reached.contains(w)) << w->accessibleName().toStdString();
            EXPECT_FALSE(w->accessibleName().isEmpty()) << w->metaObject()->className();
        }
    // A chaperone is declined by keys.
    named("Chaperone offered: does not")->setFocus();
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Space);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_G, Qt::AltModifier);
    ASSERT_TRUE(answered("region-buttock-tailbone"));
    EXPECT_EQ(answered("region-buttock-tailbone")->chaperone, Chaperone::Declined);
}

TEST_F(ConsentInWindow, OnlyWhatWasGivenCanBeTakenBack)
{
    const std::string day = session().visit().date;
    EXPECT_EQ(
        session().answerConsent({"cupping", ConsentState::Withdrawn, day, {}, {}, {}, {}}).error().code, ErrorCode::NotAllowed);
    ASSERT_TRUE(session().answerConsent({"cupping", ConsentState::Refused, day, {}, {}, {}, {}}).ok());
    EXPECT_FALSE(session().answerConsent({"cupping", ConsentState::Withdrawn, day, {}, {}, {}, {}}).ok());
    static_cast<void>(open());
    choose("cupping");
    EXPECT_FALSE(named("Taken back")->isEnabled());
    EXPECT_EQ(
        session().answerConsent({"hugging", ConsentState::Refused, day, {}, {}, {}, {}}).error().code, ErrorCode::UnknownId);
}

TEST_F(ConsentInWindow, AMissingGuardianIsToldInWords)
{
    PatientRecord record = session().record();
    record.born = "2012-03-04";
    const auto patient = session().practice().addPatient(record);
    ASSERT_TRUE(patient.ok());
    const auto visit = session().startVisit(patient.value());
    ASSERT_TRUE(visit.ok() && session().open(visit.value()).ok());
    const std::string day = session().visit().date;
    EXPECT_EQ(session().answerConsent({"record", ConsentState::Given, day, {}, {}, {}, {}}).error().detail, "guardian");
    static_cast<void>(open());
    click("Explained and agreed");
    EXPECT_TRUE(session().visit().consents.empty());
    EXPECT_TRUE(notice().contains(QStringLiteral("under 18"))) << notice().toStdString();
    EXPECT_TRUE(notice().contains(QStringLiteral("parent or guardian"))) << notice().toStdString();
    EXPECT_EQ(QApplication::focusWidget(), field("Name of the parent or guardian"));
    field("Name of the parent or guardian")->setText(QStringLiteral("Nora Feld"));
    field("What they are to the patient")->setText(QStringLiteral("mother"));
    click("Explained and agreed");
    ASSERT_EQ(session().visit().consents.size(), 3U);
    EXPECT_EQ(answered("record")->guardian, (Guardian{"Nora Feld", "mother"}));
    choose("region-pelvic-floor-inside");
    click("Given");
    EXPECT_FALSE(answered("region-pelvic-floor-inside"));
    EXPECT_TRUE(notice().contains(QStringLiteral("not done with a patient under 18"))) << notice().toStdString();
    choose("guardian");
    EXPECT_EQ(stateOf("guardian"), QStringLiteral("to ask"));
    click("Refused");
    EXPECT_TRUE(session().isLocked()) << "the guardian says no";
}

TEST_F(ConsentInWindow, ASignedVisitKeepsItsAnswers)
{
    const std::string day = session().visit().date;
    ASSERT_TRUE(session().answerConsent({"cupping", ConsentState::Given, day, {}, {}, {}, {}}).ok());
    ASSERT_TRUE(session().sign("").ok());
    EXPECT_EQ(
        session().answerConsent({"cupping", ConsentState::Withdrawn, day, {}, {}, {}, {}}).error().code, ErrorCode::NotAllowed);
    EXPECT_EQ(answered("cupping")->state, ConsentState::Given);
    static_cast<void>(open());
    for (const ConsentItem &each : adviser().rules().consents().items) {
        choose(each.id.c_str());
        for (const char *name : {"Given", "Refused", "Taken back", "Explained and agreed"})
            EXPECT_FALSE(named(name)->isEnabled()) << each.id << " " << name;
    }
}

} // namespace raphe::test
