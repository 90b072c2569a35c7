// The letter to another professional in the window: what was edited is kept beside what was composed, and can be put back; the
// book of addressees; what was sent stays as it is.
#include "tests/app/PracticeDialogs.h"

#include "app/raphe/Learned.h"
#include "app/raphe/VisitSession.h"
#include "app/raphe/intake/ChoiceRow.h"
#include "app/raphe/letter/LetterDialog.h"
#include "core/record/VisitJson.h"
#include "tests/core/reasoning/Visits.h"
#include "tests/support/Complaints.h"

#include <QComboBox>
#include <QDate>
#include <QPlainTextEdit>

namespace raphe::test {

namespace {

const Learned &learnedOnce()
{
    static const auto read = learn();
    EXPECT_TRUE(read.ok()) << inWords(read.error());
    return *read.value();
}

std::string dayNow()
{
    return QDate::currentDate().toString(Qt::ISODate).toStdString();
}

class LetterInTheWindow : public PracticeDialogTest {
protected:
    void SetUp() override
    {
        PracticeDialogTest::SetUp();
        auto practice = made();
        ASSERT_TRUE(practice);
        PatientRecord record;
        record.name = "Ada Quill";
        record.born = "1961-03-04";
        record.doctor = Contact{"Dr Bartholomew Finch", {}};
        const auto patient = practice->addPatient(record);
        ASSERT_TRUE(patient.ok());
        Visit visit;
        visit.patient = Patient{record.name, record.born};
        visit.date = dayNow();
        visit.practitioner = "Ines Brook";
        visit.complaints = {complaintOf("sore since the drive")};
        visit.findings = {tender("soleus", Side::Right, 3)};
        const auto id = practice->addVisit(patient.value(), writeVisit(visit));
        ASSERT_TRUE(id.ok());
        m_session = std::make_unique<VisitSession>(learnedOnce(), std::move(practice));
        ASSERT_TRUE(m_session->open(id.value()).ok());
    }

    [[nodiscard]] VisitSession &session() { return *m_session; }
    /// As the practice file has it.
    [[nodiscard]] std::vector<Letter> stored()
    {
        EXPECT_TRUE(m_session->saveNow().ok());
        const auto row = m_session->practice().visit(m_session->visitId());
        EXPECT_TRUE(row.ok());
        const auto visit = readVisit(row.value().document, "stored", *learnedOnce().knowledge.atlas);
        EXPECT_TRUE(visit.ok());
        return visit.value().letters;
    }
    static void write(const QWidget &in, const char *field, const char *text)
    {
        named<QPlainTextEdit>(in, field)->setPlainText(QString::fromUtf8(text));
    }
    static void fill(const QWidget &in, const char *field, const char *text)
    {
        named<QLineEdit>(in, field)->setText(QString::fromUtf8(text));
    }
    static std::string textOf(const QWidget &in, const char *field)
    {
        return named<QPlainTextEdit>(in, field)->toPlainText().toStdString();
    }
    static void chooseUrgency(const LetterDialog &dialog, Urgency urgency)
    {
        named<ChoiceRow>(dialog, "Urgency")->button(4 - static_cast<int>(urgency))->click();
    }
    static LetterPart partOf(const Letter &letter, const char *title)
    {
        for (const LetterPart &part : letter.parts)
            if (part.title == title)
                return part;
        ADD_FAILURE() << "no part " << title;
        return {};
    }
    /// A letter that is kept with the visit.
    void keepOne()
    {
        LetterDialog dialog(session());
        open(dialog);
        fill(dialog, "Name", "Dr Asta Nord");
        write(dialog, "Complaint", "Sore for three days.");
        press(dialog, "Keep");
        ASSERT_EQ(dialog.result(), QDialog::Accepted) << notice(dialog).toStdString();
    }

private:
    std::unique_ptr<VisitSession> m_session;
};

} // namespace

TEST_F(LetterInTheWindow, AnEditIsKeptAfterCloseAndReopen)
{
    {
        LetterDialog dialog(session());
        open(dialog);
        EXPECT_EQ(textOf(dialog, "Found by hand"), "right soleus: tenderness 3");
        fill(dialog, "Name", "Dr Asta Nord");
        fill(dialog, "Role", "general practice");
        write(dialog, "Place and address", "4 Mill Lane\nLower Harrow");
        chooseUrgency(dialog, Urgency::Routine);
        write(dialog, "Question", "Is there a reason not to go on?");
        write(dialog, "Complaint", "Sore for three days.");
        write(dialog, "Found by hand", "");
        press(dialog, "Keep");
        ASSERT_EQ(dialog.result(), QDialog::Accepted) << notice(dialog).toStdString();
    }
    const std::vector<Letter> letters = stored();
    ASSERT_EQ(letters.size(), 1U);
    const Letter &letter = letters[0];
    EXPECT_EQ(letter.to, (Addressee{"Dr Asta Nord", "general practice", {"4 Mill Lane", "Lower Harrow"}}));
    EXPECT_EQ(letter.urgency, Urgency::Routine);
    EXPECT_EQ(letter.question, (LetterText{"Is there a reason not to go on?", {}}));
    EXPECT_EQ(letter.written, dayNow());
    EXPECT_EQ(partOf(letter, "Complaint").words, (LetterText{"Sore for three days.", "'sore since the drive'"}))
        << "one sees what was changed";
    EXPECT_EQ(partOf(letter, "Found by hand").words, (LetterText{"", "right soleus: tenderness 3"})) << "left out of the letter";
    EXPECT_FALSE(letter.reason.isEdited());
    ASSERT_TRUE(session().open(session().visitId()).ok());
    LetterDialog again(session());
    open(again);
    EXPECT_EQ(again.letter(), letter);
    EXPECT_EQ(textOf(again, "Complaint"), "Sore for three days.");
    EXPECT_EQ(named<QLineEdit>(again, "Name")->text(), QStringLiteral("Dr Asta Nord"));
    EXPECT_EQ(named<ChoiceRow>(again, "Urgency")->value(), 3);
    press(again, "Keep");
    EXPECT_EQ(stored(), letters) << "looking changes nothing";
}

TEST_F(LetterInTheWindow, WhatWasComposedComesBack)
{
    LetterDialog dialog(session());
    open(dialog);
    auto *reset = named<QPushButton>(dialog, "Complaint: as composed");
    EXPECT_FALSE(reset->isVisible());
    write(dialog, "Complaint", "Sore for three days.");
    ASSERT_TRUE(reset->isVisible());
    EXPECT_TRUE(reset->toolTip().contains(QStringLiteral("sore since the drive"))) << "it is seen beside the edit";
    reset->click();
    EXPECT_FALSE(reset->isVisible());
    EXPECT_EQ(textOf(dialog, "Complaint"), "'sore since the drive'");
    EXPECT_FALSE(partOf(dialog.letter(), "Complaint").words.isEdited());
    write(dialog, "Complaint", "");
    reset->click();
    EXPECT_FALSE(partOf(dialog.letter(), "Complaint").words.isEdited());
}

TEST_F(LetterInTheWindow, AnAddresseeIsKeptInTheBook)
{
    {
        LetterDialog dialog(session());
        open(dialog);
        auto *keep = named<QPushButton>(dialog, "Keep in the book");
        EXPECT_FALSE(keep->isEnabled()) << "nobody is there yet";
        fill(dialog, "Name", "Dr Asta Nord");
        ASSERT_TRUE(keep->isEnabled());
        keep->click();
        EXPECT_FALSE(keep->isEnabled()) << "it is in the book";
        write(dialog, "Place and address", "4 Mill Lane");
        keep->click();
        press(dialog, "Cancel");
        EXPECT_TRUE(dialog.isVisible()) << "what was typed is not kept";
        press(dialog, "Cancel");
        EXPECT_EQ(dialog.result(), QDialog::Rejected);
    }
    EXPECT_TRUE(stored().empty());
    EXPECT_EQ(session().practice().settings().value().addressees, (std::vector<Addressee>{{"Dr Asta Nord", {}, {"4 Mill Lane"}}}))
        << "the same person with another address stands once";
    LetterDialog dialog(session());
    open(dialog);
    auto *book = named<QComboBox>(dialog, "From the book of addressees");
    ASSERT_EQ(book->count(), 3);
    EXPECT_EQ(book->itemText(2), QStringLiteral("Dr Bartholomew Finch, the patient's doctor"));
    book->setCurrentIndex(1);
    Q_EMIT book->activated(1);
    EXPECT_EQ(dialog.letter().to, (Addressee{"Dr Asta Nord", {}, {"4 Mill Lane"}}));
}

TEST_F(LetterInTheWindow, WhatIsNotKeptIsAskedAboutOnce)
{
    LetterDialog dialog(session());
    open(dialog);
    write(dialog, "Question", "Is it safe?");
    key(Qt::Key_Escape);
    ASSERT_TRUE(dialog.isVisible());
    EXPECT_TRUE(noticeSays(dialog, "not kept yet"));
    write(dialog, "Question", "Is it safe now?");
    key(Qt::Key_Escape);
    ASSERT_TRUE(dialog.isVisible()) << "it went on, so it is asked again";
    key(Qt::Key_Escape);
    EXPECT_FALSE(dialog.isVisible());
    EXPECT_TRUE(stored().empty());
    LetterDialog untouched(session());
    open(untouched);
    key(Qt::Key_Escape);
    EXPECT_FALSE(untouched.isVisible()) << "a draft that nobody touched is lost without a word";
}

TEST_F(LetterInTheWindow, WhatIsPrintedIsKept)
{
    LetterDialog dialog(session());
    open(dialog);
    Letter printed;
    LetterFacts facts;
    int times = 0;
    QObject::connect(&dialog, &LetterDialog::printWanted, &dialog, [&](const Letter &letter, const LetterFacts &of) {
        printed = letter;
        facts = of;
        ++times;
    });
    write(dialog, "Place and address", "4 Mill Lane");
    press(dialog, "Print or save ...");
    EXPECT_EQ(times, 0) << "an address of nobody";
    EXPECT_NE(notice(dialog), QString());
    fill(dialog, "Name", "Dr Asta Nord");
    write(dialog, "Complaint", "Sore for three days.");
    press(dialog, "Print or save ...");
    ASSERT_EQ(times, 1);
    EXPECT_EQ(stored(), std::vector<Letter>{printed});
    EXPECT_EQ(facts.practice, "Brook and Brook");
    EXPECT_EQ(facts.patient, "Ada Quill");
    EXPECT_EQ(facts.practitioner, "Ines Brook");
    press(dialog, "Print or save ...");
    EXPECT_EQ(stored().size(), 1U) << "it is the same letter";
}

TEST_F(LetterInTheWindow, WhatWasSentStaysAsItIs)
{
    keepOne();
    {
        LetterDialog dialog(session());
        open(dialog);
        press(dialog, "Mark as sent");
        EXPECT_EQ(stored()[0].sent, dayNow());
        EXPECT_TRUE(named<QPlainTextEdit>(dialog, "Complaint")->isReadOnly());
        EXPECT_TRUE(named<QLineEdit>(dialog, "Name")->isReadOnly());
        const auto urgency = named<ChoiceRow>(dialog, "Urgency")->value();
        chooseUrgency(dialog, Urgency::EmergencyNow);
        EXPECT_EQ(named<ChoiceRow>(dialog, "Urgency")->value(), urgency);
        EXPECT_FALSE(named<QPushButton>(dialog, "Keep")->isEnabled());
        EXPECT_FALSE(button(dialog, "Take out of the visit"));
    }
    LetterDialog dialog(session());
    open(dialog);
    const Letter sent = stored()[0];
    auto *which = named<QComboBox>(dialog, "Which letter");
    ASSERT_EQ(which->count(), 2);
    which->setCurrentIndex(1);
    Q_EMIT which->activated(1);
    EXPECT_EQ(textOf(dialog, "Complaint"), "'sore since the drive'") << "another one begins anew";
    press(dialog, "Keep");
    ASSERT_EQ(stored().size(), 2U);
    EXPECT_EQ(stored()[0], sent);
}

TEST_F(LetterInTheWindow, ALetterIsTakenOutWhileItsWordsAreStillThere)
{
    keepOne();
    LetterDialog dialog(session());
    open(dialog);
    press(dialog, "Take out of the visit");
    EXPECT_TRUE(stored().empty());
    EXPECT_EQ(textOf(dialog, "Complaint"), "Sore for three days.");
    key(Qt::Key_Escape);
    ASSERT_TRUE(dialog.isVisible()) << "it would be lost";
    press(dialog, "Keep");
    EXPECT_EQ(stored().size(), 1U);
}

TEST_F(LetterInTheWindow, WhatWasFoundLaterComesInAndEditsStay)
{
    keepOne();
    session().record(tender("soleus", Side::Right, 4));
    LetterDialog dialog(session());
    open(dialog);
    EXPECT_EQ(textOf(dialog, "Found by hand"), "right soleus: tenderness 3");
    ASSERT_TRUE(button(dialog, "Compose anew"));
    press(dialog, "Compose anew");
    EXPECT_EQ(textOf(dialog, "Found by hand"), "right soleus: tenderness 4");
    EXPECT_EQ(textOf(dialog, "Complaint"), "Sore for three days.");
    EXPECT_FALSE(button(dialog, "Compose anew"));
    press(dialog, "Keep");
    EXPECT_EQ(partOf(stored()[0], "Found by hand").words.composed, "right soleus: tenderness 4");
}

TEST_F(LetterInTheWindow, ASignThatIsThereSuggestsTheUrgencyAndThePractitionerChooses)
{
    ASSERT_TRUE(session().answerWarning({"fever-now", true, dayNow(), {}, Decision::CareSameDay, "39 degrees", "Dr Marsh"}).ok());
    LetterDialog dialog(session());
    open(dialog);
    EXPECT_EQ(dialog.letter().urgency, Urgency::SameDay);
    chooseUrgency(dialog, Urgency::WithinDays);
    EXPECT_EQ(dialog.letter().urgency, Urgency::WithinDays);
    chooseUrgency(dialog, Urgency::WithinDays); // pressed again
    EXPECT_TRUE(named<ChoiceRow>(dialog, "Urgency")->value()) << "there always is one";
}

TEST_F(LetterInTheWindow, OfASignedVisitALetterIsPrintedOnly)
{
    keepOne();
    ASSERT_TRUE(session().sign({}).ok());
    const std::vector<Letter> before = stored();
    LetterDialog dialog(session());
    open(dialog);
    EXPECT_FALSE(named<QPushButton>(dialog, "Keep")->isEnabled());
    EXPECT_TRUE(named<QPlainTextEdit>(dialog, "Complaint")->isReadOnly());
    int times = 0;
    QObject::connect(&dialog, &LetterDialog::printWanted, &dialog, [&] { ++times; });
    press(dialog, "Print or save ...");
    EXPECT_EQ(times, 1);
    EXPECT_EQ(stored(), before);
    key(Qt::Key_Escape);
    EXPECT_FALSE(dialog.isVisible());
}

TEST_F(LetterInTheWindow, TheKeyboardReachesAllAndItFitsASmallScreen)
{
    for (const char *when : {"a new letter", "a kept letter"}) {
        LetterDialog dialog(session());
        open(dialog);
        write(dialog, "Complaint", "Sore for three days.");
        named<QLineEdit>(dialog, "Name")->setFocus();
        expectKeyboardReachesAll(dialog, when);
        expectFitsSmallScreen(dialog, when);
        press(dialog, "Keep");
    }
}

} // namespace raphe::test
