// Writing down a patient's record: by keys alone, without losing or guessing anything.
#include "app/raphe/record/PatientEditor.h"
#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/record/OptionalDateEdit.h"
#include "app/raphe/record/PregnancyEdit.h"
#include "app/raphe/record/RecordPage.h"
#include "app/raphe/record/TextLine.h"
#include "tests/core/record/PatientTesting.h"
#include "tests/support/Content.h"

#include <QAbstractButton>
#include <QAbstractScrollArea>
#include <QApplication>
#include <QCheckBox>
#include <QLabel>
#include <QListWidget>
#include <QLocale>
#include <QPushButton>
#include <QTabWidget>
#include <QtTest>

#include <set>

namespace raphe::test {

namespace {

class EditorTest : public testing::Test {
protected:
    void SetUp() override { dress(*qobject_cast<QApplication *>(QCoreApplication::instance()), Theme::light()); }

    void open(const PatientRecord &record)
    {
        m_editor = std::make_unique<PatientEditor>(record, safetyRules());
        m_editor->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(m_editor.get()));
        QApplication::setActiveWindow(m_editor.get());
        QCoreApplication::processEvents();
    }

    [[nodiscard]] PatientEditor &editor() { return *m_editor; }
    [[nodiscard]] QTabWidget &tabs() { return *m_editor->findChild<QTabWidget *>(); }
    [[nodiscard]] PatientRecord record() const { return m_editor->record(); }

    void key(Qt::Key k, Qt::KeyboardModifiers modifiers = {})
    {
        ASSERT_NE(QApplication::focusWidget(), nullptr);
        QTest::keyClick(QApplication::focusWidget(), k, modifiers);
        QCoreApplication::processEvents(); // what was removed goes
    }
    void write(const char *text)
    {
        ASSERT_NE(QApplication::focusWidget(), nullptr);
        QTest::keyClicks(QApplication::focusWidget(), QString::fromUtf8(text));
        QCoreApplication::processEvents();
    }
    void save() { key(Qt::Key_Return, Qt::ControlModifier); }
    [[nodiscard]] bool isSaved() const { return !m_editor->isVisible() && m_editor->result() == QDialog::Accepted; }

    [[nodiscard]] static QString here()
    {
        return QApplication::focusWidget() ? QApplication::focusWidget()->accessibleName() : QStringLiteral("nowhere");
    }
    /// To a tab by its number, with the keys that change tabs.
    void toTab(int index)
    {
        for (int i = 0; i < 4 && tabs().currentIndex() != index; ++i)
            key(Qt::Key_Tab, Qt::ControlModifier);
        ASSERT_EQ(tabs().currentIndex(), index);
    }
    /// To the field of that name on the tab that is shown, with Tab alone.
    void to(const char *name)
    {
        for (int i = 0; i < 150 && here() != QString::fromUtf8(name); ++i)
            key(Qt::Key_Tab);
        ASSERT_EQ(here().toStdString(), name) << "Tab does not reach it";
    }
    /// Instead of what stands there.
    void fill(const char *name, const char *text)
    {
        to(name);
        key(Qt::Key_A, Qt::ControlModifier);
        key(Qt::Key_Delete);
        write(text);
    }
    template <class W = QWidget> [[nodiscard]] W *field(const char *name)
    {
        for (W *widget : m_editor->findChildren<W *>())
            if (widget->accessibleName() == QString::fromUtf8(name))
                return widget;
        return nullptr;
    }
    /// What stands under a field; empty when nothing is shown.
    [[nodiscard]] std::string wordsUnder(const char *name)
    {
        const QWidget *widget = field(name);
        EXPECT_NE(widget, nullptr) << name;
        if (!widget)
            return {};
        for (QWidget *up = widget->parentWidget(); up; up = up->parentWidget())
            if (auto *around = qobject_cast<RecordField *>(up))
                for (const WrappedLabel *label : around->findChildren<WrappedLabel *>(QString(), Qt::FindDirectChildrenOnly))
                    if (label->isVisible() && !label->text().isEmpty())
                        return label->text().toStdString();
        return {};
    }
    [[nodiscard]] bool says(const QString &part)
    {
        for (const QLabel *label : m_editor->findChildren<QLabel *>())
            if (label->isVisible() && label->text().contains(part))
                return true;
        return false;
    }
    void press(const char *name)
    {
        auto *button = field<QAbstractButton>(name);
        ASSERT_NE(button, nullptr) << name;
        QTest::mouseClick(button, Qt::LeftButton);
        QCoreApplication::processEvents();
    }

private:
    std::unique_ptr<PatientEditor> m_editor;
};

constexpr int person = 0;
constexpr int contacts = 1;
constexpr int health = 2;
constexpr int complaints = 3;

} // namespace

TEST_F(EditorTest, AnUntouchedRecordComesBackEqual)
{
    Random random(20261127);
    for (int i = 0; i < 60; ++i) {
        PatientRecord given = i == 0 ? wholeRecord() : random.record();
        if (i % 3 == 1) { // what a line or a block would show otherwise
            given.mark = "  two\nlines\r\nand\ttab ";
            given.address = "Low Lane 3\r\n\u00a0Brook \u2029 ";
        }
        open(given);
        EXPECT_EQ(record(), given) << testing::PrintToString(given);
        save();
        ASSERT_TRUE(isSaved()) << testing::PrintToString(given);
        EXPECT_EQ(record(), given);
        open(given);
        key(Qt::Key_Escape);
        EXPECT_FALSE(editor().isVisible()) << "nothing was changed: there is nothing to ask";
        EXPECT_EQ(editor().result(), QDialog::Rejected);
    }
}

TEST_F(EditorTest, OpensInTheName)
{
    open({});
    EXPECT_EQ(here(), QStringLiteral("Name"));
    write("Ana Brook");
    save();
    EXPECT_TRUE(isSaved());
    EXPECT_EQ(record(), named("Ana Brook"));
}

TEST_F(EditorTest, WritesEveryFieldByKeys)
{
    open({});
    fill("Name", "Zoe Orsted");
    fill("Other name 1", "Zoe Oersted");
    fill("Other name 2", "Zoe Hill");
    fill("Birth date", "5.3.1980");
    fill("Sex", "f");
    fill("Height in centimetres", "168");
    fill("Mark", "scar on the left eyebrow");
    fill("Language", "Danish");
    fill("Interpreter", "her son");
    toTab(contacts);
    fill("Phone", "0555 12");
    fill("Email", "zoe@example.org");
    fill("Address", "Low Lane 3");
    key(Qt::Key_Return);
    write("Brook");
    fill("Doctor: name", "Dr Quill");
    fill("Doctor: phone", "0555 90");
    fill("Emergency contact: phone", "0555 13");
    fill("Guardian: name", "Ib Orsted");
    toTab(health);
    fill("Add a standing condition", "diab");
    key(Qt::Key_Return);
    write("since childhood"); // the keyboard is in its note
    key(Qt::Key_Return);
    EXPECT_EQ(here(), QStringLiteral("Add a standing condition")) << "for the next";
    write("osteop");
    key(Qt::Key_Return);
    fill("Medicine 1", "a");
    key(Qt::Key_Return);
    write("b");
    fill("Allergy 1", "nickel");
    fill("Week of pregnancy", "12");
    fill("Day on which the week was counted", "2024-02-29");
    fill("Systolic blood pressure", "120");
    fill("Diastolic blood pressure", "80");
    fill("Day of the reading", "2.1.2024");
    fill("Operation 1", "appendix");
    fill("Year of operation 1", "1999");
    fill("Operation 2", "tonsils");
    fill("Implant 1", "plate");
    fill("Place of implant 1", "left wrist");
    fill("Implant 2", "port");
    toTab(complaints);
    fill("Complaint 1", "low back");
    fill("Since when, complaint 1", "last winter");
    to("Closed, complaint 1");
    key(Qt::Key_Space);
    fill("Complaint 2", "right knee");
    save();
    ASSERT_TRUE(isSaved());

    PatientRecord expected;
    expected.name = "Zoe Orsted";
    expected.otherNames = {"Zoe Oersted", "Zoe Hill"};
    expected.born = "1980-03-05";
    expected.sex = Sex::Female;
    expected.height = 168;
    expected.mark = "scar on the left eyebrow";
    expected.language = "Danish";
    expected.interpreter = "her son";
    expected.phone = "0555 12";
    expected.email = "zoe@example.org";
    expected.address = "Low Lane 3\nBrook";
    expected.doctor = Contact{"Dr Quill", "0555 90"};
    expected.emergency = Contact{"", "0555 13"};
    expected.guardian = Contact{"Ib Orsted", ""};
    expected.medicines = {"a", "b"};
    expected.allergies = {"nickel"};
    expected.surgery = {{"appendix", 1999}, {"tonsils", {}}};
    expected.implants = {{"plate", "left wrist"}, {"port", ""}};
    expected.conditions = {{"diabetes", "since childhood"}, {"osteoporosis", ""}};
    expected.pregnancy = Pregnancy{12, "2024-02-29"};
    expected.bloodPressure = BloodPressure{120, 80, "2024-01-02"};
    expected.complaints = {{1, "low back", "last winter", true}, {2, "right knee", "", false}};
    EXPECT_EQ(record(), expected);
}

TEST_F(EditorTest, ChangesAndEmptiesWhatWasThere)
{
    PatientRecord expected = wholeRecord();
    open(expected);
    fill("Name", "  Zoe Orsted ");
    expected.name = "Zoe Orsted";
    fill("Birth date", "");
    expected.born.clear();
    fill("Other name 1", "");
    expected.otherNames.clear();
    toTab(contacts);
    fill("Guardian: name", "");
    expected.guardian.reset();
    fill("Doctor: phone", "0555 91");
    expected.doctor->phone = "0555 91";
    toTab(health);
    fill("Note about diabetes", "type 2");
    expected.conditions[0].note = "type 2";
    fill("Week of pregnancy", "");
    fill("Day on which the week was counted", "");
    expected.pregnancy.reset();
    fill("Systolic blood pressure", "");
    fill("Diastolic blood pressure", "");
    fill("Day of the reading", "");
    expected.bloodPressure.reset();
    fill("Year of operation 1", "");
    expected.surgery[0].year.reset();
    toTab(complaints);
    to("Closed, complaint 1");
    key(Qt::Key_Space);
    expected.complaints[0].closed = false;
    save();
    ASSERT_TRUE(isSaved());
    EXPECT_EQ(record(), expected);
}

TEST_F(EditorTest, ReadsADateAsItIsWrittenAndNeverGuesses)
{
    struct Case {
        const char *typed;
        const char *iso; // empty: refused
        const char *words; // a part of what stands under it
    };
    const std::vector<Case> cases{{"1980-03-05", "1980-03-05", "Born 5 March 1980, "}, {"5.3.1980", "1980-03-05", "5 March 1980"},
        {"05.03.1980", "1980-03-05", "5 March 1980"}, {" 5. 3. 1980 ", "1980-03-05", "5 March 1980"},
        {"29.2.2024", "2024-02-29", "29 February 2024"}, {"25/3/1980", "1980-03-25", "25 March 1980"},
        {"3/25/1980", "1980-03-25", "25 March 1980"}, {"4/4/1980", "1980-04-04", "4 April 1980"},
        {"03/04/1980", "", "Is it 3 April 1980 or 4 March 1980? Write 1980-04-03 or 1980-03-04."},
        {"30.2.1980", "", "no day of the calendar"}, {"29.2.2023", "", "no day of the calendar"},
        {"5.3.80", "", "no day of the calendar"}, {"March 1980", "", "no day of the calendar"},
        {"5-3-1980", "", "no day of the calendar"}, {"2990-01-01", "2990-01-01", "1 January 2990 is still to come"}};
    for (const Case &c : cases) {
        open(raphe::test::named("Ana Brook"));
        fill("Birth date", c.typed);
        EXPECT_EQ(record().born, c.iso) << c.typed;
        EXPECT_NE(wordsUnder("Birth date").find(c.words), std::string::npos) << c.typed << ": " << wordsUnder("Birth date");
        save();
        EXPECT_EQ(isSaved(), *c.iso != 0) << c.typed;
        EXPECT_EQ(field<TextLine>("Birth date")->text().toStdString(), c.typed) << "what was typed stays";
    }
}

TEST_F(EditorTest, SaysTheAgeInYears)
{
    const QDate today = QDate::currentDate();
    PatientRecord given = named("Ana Brook", today.addYears(-46).toString(Qt::ISODate).toStdString());
    open(given);
    EXPECT_NE(wordsUnder("Birth date").find(", 46 years."), std::string::npos) << wordsUnder("Birth date");
    given.born = today.addYears(-46).addDays(1).toString(Qt::ISODate).toStdString();
    open(given);
    EXPECT_NE(wordsUnder("Birth date").find(", 45 years."), std::string::npos) << wordsUnder("Birth date");
}

TEST_F(EditorTest, RefusesEachMistakeBesideItsField)
{
    struct Case {
        int tab;
        const char *field;
        const char *typed;
        const char *words;
    };
    const std::vector<Case> cases{{person, "Name", "", "Write the name"}, {person, "Name", "   ", "Write the name"},
        {person, "Birth date", "31.4.1980", "no day of the calendar"}, {person, "Sex", "x", "female or male"},
        {person, "Height in centimetres", "30", "number from 40 to 260"},
        {person, "Height in centimetres", "tall", "number from 40 to 260"},
        {health, "Add a standing condition", "zzz", "No further condition has this"},
        {health, "Add a standing condition", "fever", "Enter takes 'fever or infection'"},
        {health, "Week of pregnancy", "43", "number from 1 to 42"}, {health, "Week of pregnancy", "0", "number from 1 to 42"},
        {health, "Week of pregnancy", "few", "number from 1 to 42"}, {health, "Week of pregnancy", "", "number from 1 to 42"},
        {health, "Day on which the week was counted", "", "Write the day on which this was the week"},
        {health, "Day on which the week was counted", "1/2/2024", "Is it 1 February 2024 or 2 January 2024?"},
        {health, "Systolic blood pressure", "301", "higher number as a whole number from 40 to 300"},
        {health, "Systolic blood pressure", "", "higher number as a whole number from 40 to 300"},
        {health, "Systolic blood pressure", "80", "has to be the higher one"},
        {health, "Diastolic blood pressure", "19", "lower number as a whole number from 20 to 200"},
        {health, "Diastolic blood pressure", "8o", "lower number as a whole number from 20 to 200"},
        {health, "Day of the reading", "", "Write the day of the reading"}, {health, "Year of operation 1", "99", "four digits"},
        {health, "Year of operation 1", "1879", "four digits"}, {health, "Year of operation 1", "2201", "four digits"},
        {health, "Operation 1", "", "Write what was done in that year"}, {health, "Implant 1", "", "Write what is there"},
        {complaints, "Complaint 1", "", "can be marked as closed"},
        {complaints, "Since when, complaint 3", "May", "Write what the complaint is, or remove it"}};
    for (const Case &c : cases) {
        open(wholeRecord());
        const QString title = tabs().tabText(c.tab);
        toTab(c.tab);
        fill(c.field, c.typed);
        EXPECT_EQ(tabs().tabText(c.tab), title) << "not while it is being typed: " << c.field;
        toTab((c.tab + 1) % 4);
        save();
        EXPECT_TRUE(editor().isVisible()) << c.field << " " << c.typed;
        EXPECT_EQ(tabs().currentIndex(), c.tab) << c.field;
        EXPECT_EQ(tabs().tabText(c.tab), title + QStringLiteral(": 1 to correct"));
        const QString at = here();
        const bool isPart = at == QString::fromUtf8(c.field)
            || (QString::fromUtf8(c.field).startsWith(QLatin1String("Since")) && at == QStringLiteral("Complaint 3"));
        EXPECT_TRUE(isPart) << c.field << ", but the keyboard is in " << at.toStdString();
        EXPECT_NE(wordsUnder(c.field).find(c.words), std::string::npos) << c.field << ": " << wordsUnder(c.field);
        EXPECT_FALSE(QApplication::focusWidget()->visibleRegion().isEmpty()) << c.field << " is scrolled away";
        EXPECT_TRUE(says(QStringLiteral("To correct before it can be saved: ") + title)) << c.field;
    }
}

TEST_F(EditorTest, GoesToTheFirstMistakeAndLosesNothing)
{
    open(wholeRecord());
    toTab(health);
    fill("Year of operation 2", "soon");
    fill("Medicine 3", "c");
    toTab(person);
    fill("Birth date", "yesterday");
    fill("Mark", "walks with a stick");
    save();
    EXPECT_EQ(tabs().currentIndex(), person);
    EXPECT_EQ(here(), QStringLiteral("Birth date"));
    EXPECT_TRUE(says(QStringLiteral("Person, Health")));
    EXPECT_EQ(field<TextLine>("Birth date")->text(), QStringLiteral("yesterday"));
    EXPECT_EQ(field<TextLine>("Year of operation 2")->text(), QStringLiteral("soon"));
    fill("Birth date", "5.3.1980");
    EXPECT_EQ(tabs().tabText(person), QStringLiteral("Person")) << "corrected";
    save();
    EXPECT_EQ(tabs().currentIndex(), health);
    EXPECT_EQ(here(), QStringLiteral("Year of operation 2"));
    fill("Year of operation 2", "2001");
    EXPECT_TRUE(says(QStringLiteral("Ctrl+Enter saves")));
    save();
    ASSERT_TRUE(isSaved());
    PatientRecord expected = wholeRecord();
    expected.surgery[1].year = 2001;
    expected.medicines.emplace_back("c");
    expected.mark = "walks with a stick";
    EXPECT_EQ(record(), expected);
}

TEST_F(EditorTest, AMistakeIsShownWhenItsFieldIsLeft)
{
    open(wholeRecord());
    fill("Birth date", "30.2.1980");
    EXPECT_EQ(tabs().tabText(person), QStringLiteral("Person"));
    key(Qt::Key_Tab);
    EXPECT_EQ(tabs().tabText(person), QStringLiteral("Person: 1 to correct"));
    fill("Birth date", "5.3.1980");
    EXPECT_EQ(tabs().tabText(person), QStringLiteral("Person"));
    write("7");
    EXPECT_EQ(tabs().tabText(person), QStringLiteral("Person")) << "a new word is heard out first";
    key(Qt::Key_Backspace);
    toTab(health);
    fill("Week of pregnancy", "13");
    fill("Day on which the week was counted", "");
    EXPECT_EQ(tabs().tabText(health), QStringLiteral("Health")) << "still within the field";
    fill("Systolic blood pressure", "121");
    EXPECT_EQ(tabs().tabText(health), QStringLiteral("Health: 1 to correct"));
}

TEST_F(EditorTest, TooLongTextsAndListsAreRefused)
{
    const std::string longest(PatientRecord::longestText, 'x');
    open(wholeRecord());
    field<TextLine>("Mark")->setText(QString::fromStdString(longest + "y"));
    save();
    EXPECT_TRUE(editor().isVisible());
    EXPECT_EQ(here(), QStringLiteral("Mark"));
    EXPECT_NE(wordsUnder("Mark").find("10001 characters"), std::string::npos) << wordsUnder("Mark");
    key(Qt::Key_End);
    key(Qt::Key_Backspace);
    save();
    EXPECT_TRUE(isSaved());
    EXPECT_EQ(record().mark, longest);

    PatientRecord full = wholeRecord();
    full.allergies.assign(PatientRecord::longestList, "dust");
    open(full);
    toTab(health);
    field("Allergy 500")->setFocus();
    key(Qt::Key_Return);
    EXPECT_EQ(here(), QStringLiteral("Allergy 501"));
    write("pollen");
    save();
    EXPECT_TRUE(editor().isVisible());
    EXPECT_EQ(here(), QStringLiteral("Allergy 502")) << "the end of the list";
    EXPECT_TRUE(says(QStringLiteral("These are 501."))) << "and how many are kept";
    press("Remove allergy 3");
    save();
    EXPECT_TRUE(isSaved());
    EXPECT_EQ(record().allergies.size(), PatientRecord::longestList);
    EXPECT_EQ(record().allergies.back(), "pollen");
}

TEST_F(EditorTest, EscapeAsksOnceWhenSomethingWasWritten)
{
    open(wholeRecord());
    to("Mark");
    write("x");
    key(Qt::Key_Escape);
    EXPECT_TRUE(editor().isVisible());
    EXPECT_TRUE(says(QStringLiteral("Leave without saving?")));
    EXPECT_EQ(here(), QStringLiteral("Keep writing")) << "a slip of the hand loses nothing";
    key(Qt::Key_Return);
    EXPECT_FALSE(says(QStringLiteral("Leave without saving?")));
    EXPECT_EQ(here(), QStringLiteral("Mark"));
    key(Qt::Key_Escape);
    key(Qt::Key_Escape);
    EXPECT_TRUE(editor().isVisible()) << "Escape leaves the question, not the form";
    EXPECT_EQ(here(), QStringLiteral("Mark"));
    key(Qt::Key_Escape);
    key(Qt::Key_Tab, Qt::ShiftModifier);
    EXPECT_EQ(here(), QStringLiteral("Leave without saving"));
    key(Qt::Key_Return);
    EXPECT_FALSE(editor().isVisible());
    EXPECT_EQ(editor().result(), QDialog::Rejected);
}

TEST_F(EditorTest, EscapeAsksAboutAllThatCanBeChanged)
{
    const std::vector<std::function<void()>> changes{[&] { fill("Birth date", "rubbish"); }, [&] { fill("Other name 2", "Z"); },
        [&] { press("Remove other name 1"); },
        [&] {
            toTab(complaints);
            to("Closed, complaint 2");
            key(Qt::Key_Space);
        },
        [&] {
            toTab(health);
            fill("Add a standing condition", "fev");
        },
        [&] {
            toTab(health);
            press("Remove thin bone (osteoporosis)");
        },
        [&] { press("Remove from Other birth dates: 3 May 1980"); }};
    for (std::size_t i = 0; i < changes.size(); ++i) {
        open(wholeRecord());
        changes[i]();
        key(Qt::Key_Escape);
        EXPECT_TRUE(editor().isVisible()) << i;
        EXPECT_TRUE(says(QStringLiteral("Leave without saving?"))) << i;
    }
    // Typed and taken back is no change.
    open(wholeRecord());
    to("Mark");
    key(Qt::Key_End);
    write("x");
    key(Qt::Key_Backspace);
    key(Qt::Key_Escape);
    EXPECT_FALSE(editor().isVisible());
}

TEST_F(EditorTest, TheQuestionGoesWhenTheFormIsTouched)
{
    open(wholeRecord());
    fill("Mark", "x");
    key(Qt::Key_Escape);
    ASSERT_TRUE(says(QStringLiteral("Leave without saving?")));
    QTest::mouseClick(field("Language"), Qt::LeftButton);
    EXPECT_FALSE(says(QStringLiteral("Leave without saving?")));
    EXPECT_TRUE(field("Save the record")->isVisible());
    editor().close(); // the window's own way out asks as well
    EXPECT_TRUE(editor().isVisible());
    EXPECT_TRUE(says(QStringLiteral("Leave without saving?")));
}

TEST_F(EditorTest, ASavedComplaintIsClosedNotRemoved)
{
    open(wholeRecord()); // complaints 1 and 7
    toTab(complaints);
    fill("Complaint 3", "left shoulder");
    EXPECT_FALSE(field("Remove complaint 1")->isVisible());
    EXPECT_FALSE(field("Remove complaint 2")->isVisible());
    EXPECT_TRUE(field("Remove complaint 3")->isVisible());
    EXPECT_FALSE(field("Remove complaint 4")->isVisible()) << "the empty row at the end";
    fill("Complaint 4", "jaw");
    press("Remove complaint 3");
    to("Closed, complaint 2");
    key(Qt::Key_Space);
    save();
    ASSERT_TRUE(isSaved());
    const std::vector<PatientComplaint> expected{
        {1, "low back", "last winter", true}, {7, "Knie rechts", "", true}, {8, "jaw", "", false}};
    EXPECT_EQ(record().complaints, expected) << testing::PrintToString(record());
}

TEST_F(EditorTest, NewComplaintsGoOnAfterTheHighestNumber)
{
    PatientRecord given = named("Ana Brook");
    given.complaints = {{40, "a", "", true}, {3, "b", "", false}};
    open(given);
    toTab(complaints);
    fill("Complaint 3", "c");
    fill("Complaint 4", "d");
    ASSERT_EQ(record().complaints.size(), 4U);
    EXPECT_EQ(record().complaints[2].id, 41);
    EXPECT_EQ(record().complaints[3].id, 42);
}

TEST_F(EditorTest, ARemovedRowTakesItsMistakeAlong)
{
    open(wholeRecord());
    toTab(complaints);
    fill("Since when, complaint 3", "May");
    save();
    EXPECT_EQ(tabs().tabText(complaints), QStringLiteral("Complaints: 1 to correct"));
    QTest::mouseClick(field("Remove complaint 3"), Qt::LeftButton);
    EXPECT_EQ(tabs().tabText(complaints), QStringLiteral("Complaints"));
    QCoreApplication::processEvents();
    save();
    EXPECT_TRUE(isSaved());
    EXPECT_EQ(record(), wholeRecord());
}

TEST_F(EditorTest, AnEmptyComplaintCannotBeClosed)
{
    open(wholeRecord());
    toTab(complaints);
    EXPECT_FALSE(field("Closed, complaint 3")->isEnabled());
    fill("Complaint 3", "jaw");
    EXPECT_TRUE(field("Closed, complaint 3")->isEnabled());
}

TEST_F(EditorTest, WhatAJoinLeftOverIsShownAndCanBeTakenOut)
{
    PatientRecord given = wholeRecord();
    given.otherBorn = {"1980-05-03", "1981-05-03"};
    open(given);
    EXPECT_TRUE(says(QStringLiteral("3 May 1980")));
    to("Remove from Other birth dates: 3 May 1980");
    key(Qt::Key_Return);
    EXPECT_EQ(here(), QStringLiteral("Remove from Other birth dates: 3 May 1981"));
    EXPECT_EQ(record().otherBorn, std::vector<std::string>{"1981-05-03"});
    toTab(health);
    EXPECT_TRUE(says(QStringLiteral("Week 42 on 31 January 2019")));
    EXPECT_TRUE(says(QStringLiteral("140 over 90 mmHg on 2 January 2023")));
    to("Remove from Other weeks of pregnancy: Week 42 on 31 January 2019");
    key(Qt::Key_Space);
    EXPECT_TRUE(says(QStringLiteral("All taken out.")));
    to("Remove from Other blood pressures: 140 over 90 mmHg on 2 January 2023");
    key(Qt::Key_Space);
    save();
    ASSERT_TRUE(isSaved());
    given.otherBorn = {"1981-05-03"};
    given.otherPregnancies.clear();
    given.otherBloodPressures.clear();
    EXPECT_EQ(record(), given);
    open(named("Ana Brook"));
    EXPECT_FALSE(says(QStringLiteral("Other birth dates"))) << "nothing to show";
}

TEST_F(EditorTest, SaysWhichWeekItIsToday)
{
    const QDate counted(2026, 11, 1);
    const Pregnancy twelve{12, "2026-11-01"};
    const auto words = [&](qint64 days) { return weekTodayWords(twelve, counted.addDays(days)).toStdString(); };
    EXPECT_EQ(words(0), "That makes week 12 today.");
    EXPECT_EQ(words(6), "That makes week 12 today.");
    EXPECT_EQ(words(7), "That makes week 13 today.");
    EXPECT_EQ(words(7 * 28), "That makes week 40 today.");
    EXPECT_NE(words(7 * 30).find("week 42 today. Is the child born?"), std::string::npos);
    EXPECT_NE(words(7 * 31).find("past week 42"), std::string::npos);
    EXPECT_NE(words(-1).find("still to come"), std::string::npos);

    open(named("Ana Brook"));
    toTab(health);
    EXPECT_EQ(wordsUnder("Week of pregnancy"), "Not set.");
    fill("Week of pregnancy", "20");
    to("Today: Day on which the week was counted");
    key(Qt::Key_Return);
    EXPECT_NE(wordsUnder("Week of pregnancy").find("That makes week 20 today."), std::string::npos)
        << wordsUnder("Week of pregnancy");
    EXPECT_EQ(record().pregnancy, (Pregnancy{20, QDate::currentDate().toString(Qt::ISODate).toStdString()}));
}

TEST_F(EditorTest, RemindsThatCautionsGoByTheConditions)
{
    PatientRecord given = named("Ana Brook");
    given.pregnancy = Pregnancy{12, "2026-11-01"};
    open(given);
    toTab(health);
    to("Add pregnancy to the standing conditions");
    key(Qt::Key_Return);
    EXPECT_FALSE(field("Add pregnancy to the standing conditions")->isVisible());
    EXPECT_EQ(record().conditions, (std::vector<StandingCondition>{{"pregnancy", ""}}));
    press("Remove pregnancy");
    EXPECT_TRUE(field("Add pregnancy to the standing conditions")->isVisible());
}

TEST_F(EditorTest, ChoosesAConditionByPartOfItsName)
{
    PatientRecord given = named("Ana Brook");
    given.conditions = {{"from-a-later-program", "kept"}, {"diabetes", ""}};
    open(given);
    toTab(health);
    EXPECT_TRUE(says(QStringLiteral("from-a-later-program (not in this program's list)")));
    auto *offered = field<QListWidget>("Conditions with this in their name");
    ASSERT_NE(offered, nullptr);
    fill("Add a standing condition", "diab");
    EXPECT_FALSE(offered->isVisible()) << "it is chosen already";
    fill("Add a standing condition", "ALLERGY to");
    ASSERT_EQ(offered->count(), 6);
    key(Qt::Key_Down);
    key(Qt::Key_Return);
    EXPECT_EQ(here(), QStringLiteral("Note about allergy to silicone"));
    EXPECT_FALSE(offered->isVisible());
    write("gloves");
    key(Qt::Key_Return);
    write("fever");
    QTest::mouseClick(offered->viewport(), Qt::LeftButton, {}, offered->visualItemRect(offered->item(0)).center());
    save();
    ASSERT_TRUE(isSaved());
    const std::vector<StandingCondition> expected{
        {"from-a-later-program", "kept"}, {"diabetes", ""}, {"silicone-allergy", "gloves"}, {"fever-or-infection", ""}};
    EXPECT_EQ(record().conditions, expected);
}

TEST_F(EditorTest, EveryConditionIsFoundByItsWholeName)
{
    open(named("Ana Brook"));
    toTab(health);
    for (const ConditionKind &kind : safetyRules().conditions()) {
        to("Add a standing condition");
        field<TextLine>("Add a standing condition")->setText(QString::fromStdString(kind.name));
        const auto *offered = field<QListWidget>("Conditions with this in their name");
        ASSERT_GE(offered->count(), 1) << kind.name;
        bool isThere = false;
        for (int i = 0; i < offered->count(); ++i)
            isThere = isThere || offered->item(i)->text().toStdString() == kind.name;
        EXPECT_TRUE(isThere) << kind.name;
        field<TextLine>("Add a standing condition")->clear();
    }
}

TEST_F(EditorTest, ReturnGoesOnAndDoesNotSave)
{
    open(wholeRecord());
    key(Qt::Key_Return);
    EXPECT_EQ(here(), QStringLiteral("Other name 1"));
    key(Qt::Key_Return);
    EXPECT_EQ(here(), QStringLiteral("Other name 2"));
    key(Qt::Key_Return);
    EXPECT_EQ(here(), QStringLiteral("Birth date")) << "the empty row ends the list";
    EXPECT_TRUE(editor().isVisible());
    press("Remove other name 1");
    EXPECT_EQ(here(), QStringLiteral("Other name 1")) << "the next row has come up";
    EXPECT_TRUE(record().otherNames.empty());
}

TEST_F(EditorTest, StaysWhenSavingFails)
{
    open(wholeRecord());
    fill("Mark", "walks with a stick");
    std::vector<PatientRecord> handed;
    bool fails = true;
    editor().saveThrough([&](const PatientRecord &written) -> Result<Done> {
        handed.push_back(written);
        if (fails)
            return Error{ErrorCode::CannotWrite, "test.raphe", "disk full"};
        return Done{};
    });
    save();
    EXPECT_TRUE(editor().isVisible());
    EXPECT_TRUE(says(QStringLiteral("Not saved."))) << "and why";
    EXPECT_TRUE(says(QStringLiteral("disk full")));
    EXPECT_EQ(record().mark, "walks with a stick");
    fails = false;
    save();
    EXPECT_TRUE(isSaved());
    ASSERT_EQ(handed.size(), 2U);
    EXPECT_EQ(handed[1], record());
}

TEST_F(EditorTest, EachFieldIsNamedLargeEnoughAndReachedByTab)
{
    PatientRecord given = wholeRecord();
    given.pregnancy->date = "2026-11-01";
    open(given);
    for (int tab = 0; tab < 4; ++tab) {
        toTab(tab);
        std::set<QWidget *> wanted;
        std::set<QString> names;
        for (auto *widget : editor().findChildren<QWidget *>()) {
            if (!widget->isVisible() || !widget->isEnabled() || !(widget->focusPolicy() & Qt::TabFocus) || widget->focusProxy())
                continue;
            EXPECT_FALSE(widget->accessibleName().isEmpty()) << widget->metaObject()->className();
            EXPECT_TRUE(names.insert(widget->accessibleName()).second) << "twice: " << widget->accessibleName().toStdString();
            EXPECT_GE(widget->height(), touchTarget - 1) << widget->accessibleName().toStdString();
            wanted.insert(widget);
        }
        EXPECT_GT(wanted.size(), 8U) << tab;
        std::set<QWidget *> reached;
        std::vector<int> heights; // where the keyboard was, on the page
        for (int i = 0; i < 100; ++i) {
            QWidget *now = QApplication::focusWidget();
            if (reached.insert(now).second && qobject_cast<QLineEdit *>(now)) {
                EXPECT_FALSE(now->visibleRegion().isEmpty()) << "scrolled away: " << here().toStdString();
                heights.push_back(now->mapTo(qobject_cast<RecordPage *>(tabs().widget(tab))->widget(), QPoint()).y());
            }
            QTest::keyClick(now, Qt::Key_Tab);
        }
        for (QWidget *widget : wanted)
            EXPECT_TRUE(reached.contains(widget)) << widget->accessibleName().toStdString();
        std::rotate(heights.begin(), std::min_element(heights.begin(), heights.end()), heights.end());
        EXPECT_TRUE(std::is_sorted(heights.begin(), heights.end())) << "Tab goes down the page, tab " << tab;
    }
}

TEST_F(EditorTest, FitsASmallScreenAndIsReadableInBothThemes)
{
    for (const Theme &theme : {Theme::light(), Theme::night()}) {
        dress(*qobject_cast<QApplication *>(QCoreApplication::instance()), theme);
        open(wholeRecord());
        EXPECT_LE(editor().width(), 1366);
        EXPECT_LE(editor().height(), 700);
        EXPECT_LE(editor().minimumSizeHint().height(), 700);
        EXPECT_LE(editor().minimumSizeHint().width(), 900);
        fill("Birth date", "x");
        save();
        int seen = 0;
        for (QLabel *label : editor().findChildren<QLabel *>()) {
            if (!label->isVisible() || label->text().isEmpty())
                continue;
            ++seen;
            const QColor text = label->grab().isNull() ? QColor() : label->palette().color(label->foregroundRole());
            EXPECT_GE(contrast(text, theme.panel), 4.5) << label->text().toStdString();
        }
        EXPECT_GT(seen, 5);
    }
    dress(*qobject_cast<QApplication *>(QCoreApplication::instance()), Theme::light());
}

} // namespace raphe::test
