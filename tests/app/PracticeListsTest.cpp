// The three dialogs on lists of patients: importing a list, joining double records, and records past their time. Each on a sealed
// practice of its own, driven by mouse and keys. All people here are invented.
#include "app/raphe/Style.h"
#include "app/raphe/patients/CsvImportDialog.h"
#include "app/raphe/patients/DuplicatesDialog.h"
#include "app/raphe/patients/RecordComparison.h"
#include "app/raphe/patients/RetentionDialog.h"
#include "tests/core/record/PatientTesting.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QCheckBox>
#include <QElapsedTimer>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QRadioButton>
#include <QTableWidget>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>

#include <filesystem>
#include <random>
#include <set>

namespace raphe::test {

namespace {

constexpr int patience = 60'000; // milliseconds; only a test that fails waits so long
constexpr int smallScreenWidth = 1366; // pixels
constexpr int smallScreenHeight = 700;

QString text(const char *utf8)
{
    return QString::fromUtf8(utf8);
}

class PracticeLists : public testing::Test {
protected:
    void SetUp() override
    {
        ASSERT_TRUE(m_folder.isValid());
        dress(*qobject_cast<QApplication *>(QCoreApplication::instance()), Theme::light());
        PracticeSettings settings;
        settings.retentionYears = 8;
        settings.jurisdiction = "the law of Farnbeck";
        auto made = Practice::make(practiceFile(), settings, {"ada", "Ada Brook", "right words here", leastCost});
        ASSERT_TRUE(made.ok()) << testing::PrintToString(made.error());
        m_practice = std::move(made.value().practice);
    }

    [[nodiscard]] std::string practiceFile() const { return in("practice.raphe").toStdString(); }
    [[nodiscard]] QString in(const char *name) const { return m_folder.filePath(text(name)); }
    [[nodiscard]] Practice &practice() { return *m_practice; }

    std::int64_t add(const PatientRecord &record) { return okay(practice().addPatient(record)); }
    std::int64_t add(const char *name, const char *born, const char *lastVisit = "")
    {
        const std::int64_t id = add(named(name, born));
        if (*lastVisit)
            visit(id, lastVisit);
        return id;
    }
    void visit(std::int64_t patient, const std::string &date)
    {
        EXPECT_TRUE(practice().addVisit(patient, "{\"date\":\"" + date + "\"}").ok());
    }
    QStringList names()
    {
        QStringList out;
        for (const PatientCard &card : okay(practice().patients()))
            out << QString::fromStdString(card.name);
        return out;
    }
    int countOf(EntryKind kind)
    {
        const auto rows = okay(practice().accesses());
        return static_cast<int>(std::count_if(rows.begin(), rows.end(), [&](const AccessRow &row) { return row.kind == kind; }));
    }

    QString write(const char *name, const QByteArray &content) const
    {
        QFile file(in(name));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly) && file.write(content) == content.size());
        return file.fileName();
    }

    static void show(WorkDialog &dialog)
    {
        dialog.show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(&dialog));
        QApplication::setActiveWindow(&dialog);
        settle(dialog);
    }
    static void settle(const WorkDialog &dialog)
    {
        ASSERT_TRUE(QTest::qWaitFor([&] { return !dialog.isWorking(); }, patience));
    }

    template <class W> static W *only(const QWidget &in, const std::function<bool(const W &)> &which)
    {
        W *found = nullptr;
        for (W *widget : in.findChildren<W *>())
            if (which(*widget)) {
                EXPECT_EQ(found, nullptr) << "there are two";
                found = widget;
            }
        return found;
    }
    /// Fails the test when there is none, or it cannot be seen.
    template <class W> static W &labelled(const QWidget &in, const char *words)
    {
        W *found = only<W>(in, [&](const W &w) { return w.text() == text(words) && w.isVisible(); });
        if (!found)
            throw std::runtime_error(std::string("not to be seen: ") + words);
        return *found;
    }
    static QPushButton &button(const QWidget &in, const char *words) { return labelled<QPushButton>(in, words); }
    static void click(QWidget &widget) { QTest::mouseClick(&widget, Qt::LeftButton); }
    static void tick(QAbstractButton &box) // a label's far end is not part of it
    {
        QTest::mouseClick(&box, Qt::LeftButton, {}, QPoint(8, box.height() / 2));
    }
    static bool says(const QWidget &in, const char *words)
    {
        for (const QLabel *label : in.findChildren<QLabel *>())
            if (label->isVisible() && label->text().contains(text(words)))
                return true;
        return false;
    }
    static void key(Qt::Key k) { QTest::keyClick(QApplication::focusWidget(), k); }

    /// Every widget that takes the keyboard has a name, Tab comes to all of them and round again, and the dialog fits.
    static void expectUsableByKeys(QWidget &dialog)
    {
        std::set<QWidget *> wanted;
        for (QWidget *widget : dialog.findChildren<QWidget *>())
            if (widget->isVisible() && widget->isEnabled() && (widget->focusPolicy() & Qt::TabFocus)) {
                EXPECT_FALSE(widget->accessibleName().isEmpty()) << widget->metaObject()->className();
                wanted.insert(widget);
            }
        ASSERT_FALSE(wanted.empty());
        std::set<QWidget *> reached;
        for (std::size_t i = 0; i < 2 * wanted.size(); ++i) {
            key(Qt::Key_Tab);
            reached.insert(QApplication::focusWidget());
        }
        for (QWidget *widget : wanted) {
            const auto *radio = qobject_cast<QRadioButton *>(widget); // Tab comes to the checked one, arrows to the others
            if (!radio || radio->isChecked()) {
                EXPECT_TRUE(reached.contains(widget)) << "Tab does not come to " << widget->accessibleName().toStdString();
            }
        }
        EXPECT_LE(dialog.width(), smallScreenWidth);
        EXPECT_LE(dialog.height(), smallScreenHeight);
        EXPECT_LE(dialog.minimumSizeHint().width(), smallScreenWidth);
        EXPECT_LE(dialog.minimumSizeHint().height(), smallScreenHeight);
    }

    static QString cell(const QTableWidget &table, int row, int column)
    {
        const QTableWidgetItem *item = table.item(row, column);
        return item ? item->text() : QString();
    }

private:
    QTemporaryDir m_folder;
    std::unique_ptr<Practice> m_practice;
};

// --- a list is imported

class CsvImport : public PracticeLists {
protected:
    static QTableView &rows(const CsvImportDialog &dialog)
    {
        return *only<QTableView>(dialog, [](const QTableView &t) { return !qobject_cast<const QTableWidget *>(&t); });
    }
    static QModelIndex at(const CsvImportDialog &dialog, int row, int column) { return rows(dialog).model()->index(row, column); }
    static QVariant box(const CsvImportDialog &dialog, int row)
    {
        return at(dialog, row, CsvImportModel::Tick).data(Qt::CheckStateRole);
    }
    static std::string reason(const CsvImportDialog &dialog, int row)
    {
        return at(dialog, row, CsvImportModel::Look).data().toString().toStdString();
    }
    static void touch(const CsvImportDialog &dialog, int row, int column, QPoint off = {})
    {
        QTableView &table = rows(dialog);
        table.scrollTo(at(dialog, row, column));
        QTest::mouseClick(table.viewport(), Qt::LeftButton, {}, table.visualRect(at(dialog, row, column)).center() + off);
    }
    static void look(CsvImportDialog &dialog, const QString &file)
    {
        dialog.read(file);
        settle(dialog);
    }

    /// Five rows: good, like somebody who is there, good, like the row before, with a mistake.
    QString mixedList()
    {
        add("Anna Méyer", "1980-03-05");
        return write("mixed.csv",
            "Name;Geburtsdatum;Schuhe\n"
            "Bo Reed;01.02.1990;41\n"
            "Meyer Anna;05.03.1980;\n"
            "Ida Okafor;;\n"
            "Ida Okafor;;\n"
            "Tom Farrow;31.02.1975;\n");
    }
};

TEST_F(CsvImport, ShowsBeforeAnythingIsImportedWhatWouldBe)
{
    CsvImportDialog dialog(practice());
    show(dialog);
    EXPECT_FALSE(button(dialog, "Import 0 patients").isEnabled());
    look(dialog, mixedList());
    const auto &columns = *only<QTableWidget>(dialog, [](const QTableWidget &) { return true; });
    ASSERT_EQ(columns.rowCount(), 3);
    EXPECT_EQ(cell(columns, 0, 0) + cell(columns, 0, 1), text("Namename"));
    EXPECT_EQ(cell(columns, 1, 0) + cell(columns, 1, 1), text("Geburtsdatumdate of birth"));
    EXPECT_EQ(cell(columns, 2, 0) + cell(columns, 2, 1), text("Schuhenot used"));

    ASSERT_EQ(rows(dialog).model()->rowCount(), 5);
    EXPECT_EQ(box(dialog, 0), Qt::Checked);
    EXPECT_EQ(box(dialog, 1), Qt::Unchecked);
    EXPECT_EQ(box(dialog, 2), Qt::Checked);
    EXPECT_EQ(box(dialog, 3), Qt::Unchecked);
    EXPECT_FALSE(box(dialog, 4).isValid()) << "a row with a mistake has no box";
    EXPECT_EQ(reason(dialog, 0), "");
    EXPECT_EQ(reason(dialog, 1).find("Perhaps there already: Anna Méyer, born 5 March 1980"), 0U) << reason(dialog, 1);
    EXPECT_EQ(reason(dialog, 3), "Perhaps the same person as in line 4: Ida Okafor, no birth date.");
    EXPECT_NE(reason(dialog, 4).find("31.02.1975"), std::string::npos) << reason(dialog, 4);
    EXPECT_EQ(at(dialog, 1, CsvImportModel::Line).data().toString(), text("3"));
    EXPECT_EQ(at(dialog, 1, CsvImportModel::Name).data().toString(), text("Meyer Anna"));
    EXPECT_EQ(at(dialog, 0, CsvImportModel::Born).data().toString(), text("1 February 1990"));
    EXPECT_TRUE(says(dialog, "5 rows: 2 ticked, 2 perhaps there twice, 1 with a mistake"));
    EXPECT_TRUE(button(dialog, "Import 2 patients").isEnabled());
    EXPECT_EQ(names(), QStringList{text("Anna Méyer")}) << "looking imports nothing";
    expectUsableByKeys(dialog);
}

TEST_F(CsvImport, ImportsTheTickedRowsAndSaysSo)
{
    CsvImportDialog dialog(practice());
    show(dialog);
    look(dialog, mixedList());
    click(button(dialog, "Import 2 patients"));
    settle(dialog);
    EXPECT_EQ(names(), (QStringList{text("Anna Méyer"), text("Bo Reed"), text("Ida Okafor")}));
    EXPECT_TRUE(says(dialog, "2 patients are imported. 3 rows were left out."));
    EXPECT_EQ(dialog.imported(), 2U);
    EXPECT_EQ(reason(dialog, 0), "Imported.");
    EXPECT_FALSE(button(dialog, "Import 0 patients").isEnabled());
    touch(dialog, 0, CsvImportModel::Tick);
    EXPECT_EQ(box(dialog, 0), Qt::Checked) << "what is imported stays so";

    touch(dialog, 3, CsvImportModel::Tick);
    click(button(dialog, "Import 1 patient"));
    settle(dialog);
    EXPECT_EQ(names().count(text("Ida Okafor")), 2) << "a row that was left out can come after";
    EXPECT_EQ(names().size(), 4) << "and the others are not imported again";
    EXPECT_TRUE(says(dialog, "1 patient is imported. 2 rows were left out."));
    EXPECT_EQ(dialog.imported(), 3U);
}

TEST_F(CsvImport, TheWholeCellTicks)
{
    CsvImportDialog dialog(practice());
    show(dialog);
    look(dialog, mixedList());
    touch(dialog, 0, CsvImportModel::Tick, QPoint(25, 10));
    EXPECT_EQ(box(dialog, 0), Qt::Unchecked);
    touch(dialog, 0, CsvImportModel::Tick);
    EXPECT_EQ(box(dialog, 0), Qt::Checked);
    touch(dialog, 1, CsvImportModel::Tick);
    EXPECT_EQ(box(dialog, 1), Qt::Checked) << "the user may know that they are two people";
    EXPECT_TRUE(button(dialog, "Import 3 patients").isEnabled());
    touch(dialog, 4, CsvImportModel::Tick);
    EXPECT_FALSE(box(dialog, 4).isValid());
    EXPECT_TRUE(button(dialog, "Import 3 patients").isEnabled()) << "but no row with a mistake";
    touch(dialog, 2, CsvImportModel::Name);
    EXPECT_EQ(box(dialog, 2), Qt::Checked) << "other cells only choose the row";
}

TEST_F(CsvImport, TheSpaceKeyTicksAllChosenRows)
{
    CsvImportDialog dialog(practice());
    show(dialog);
    look(dialog, mixedList());
    ASSERT_EQ(QApplication::focusWidget(), &rows(dialog));
    key(Qt::Key_Space);
    EXPECT_EQ(box(dialog, 0), Qt::Unchecked) << "the first row is chosen at the start";
    QTest::keyClick(&rows(dialog), Qt::Key_A, Qt::ControlModifier);
    key(Qt::Key_Space);
    EXPECT_TRUE(button(dialog, "Import 4 patients").isEnabled());
    key(Qt::Key_Space);
    EXPECT_FALSE(button(dialog, "Import 0 patients").isEnabled());
    key(Qt::Key_Down);
    key(Qt::Key_Down);
    key(Qt::Key_Space);
    EXPECT_EQ(box(dialog, 2), Qt::Checked);
    EXPECT_TRUE(button(dialog, "Import 1 patient").isEnabled());
}

TEST_F(CsvImport, EnterPressesOnlyTheButtonThatHasTheFocus)
{
    CsvImportDialog dialog(practice());
    show(dialog);
    look(dialog, mixedList());
    key(Qt::Key_Return);
    EXPECT_FALSE(dialog.isWorking()) << "Enter in the table imports nothing";
    EXPECT_TRUE(dialog.isVisible());
    button(dialog, "Import 2 patients").setFocus();
    key(Qt::Key_Return);
    settle(dialog);
    EXPECT_EQ(names().size(), 3);
    key(Qt::Key_Escape);
    EXPECT_FALSE(dialog.isVisible());
}

TEST_F(CsvImport, OnlyRowsThatNeedALook)
{
    CsvImportDialog dialog(practice());
    show(dialog);
    look(dialog, mixedList());
    tick(labelled<QCheckBox>(dialog, "Only rows that need a look"));
    ASSERT_EQ(rows(dialog).model()->rowCount(), 3);
    EXPECT_EQ(at(dialog, 0, CsvImportModel::Line).data().toString(), text("3"));
    EXPECT_EQ(at(dialog, 1, CsvImportModel::Line).data().toString(), text("5"));
    EXPECT_EQ(at(dialog, 2, CsvImportModel::Line).data().toString(), text("6"));
    touch(dialog, 1, CsvImportModel::Tick);
    EXPECT_TRUE(says(dialog, "Perhaps the same person as in line 4: Ida Okafor")) << "in full under the table";
    EXPECT_TRUE(says(dialog, "5 rows: 3 ticked")) << "the count is of all rows";
    tick(labelled<QCheckBox>(dialog, "Only rows that need a look"));
    EXPECT_EQ(rows(dialog).model()->rowCount(), 5);
    EXPECT_EQ(box(dialog, 3), Qt::Checked) << "the tick was on the right row";
}

TEST_F(CsvImport, AsksInWhichOrderDatesAreWritten)
{
    const QString file = write("slashes.csv", "name,born\nBo Reed,03/04/1990\nIda Okafor,1971-05-06\n");
    CsvImportDialog dialog(practice());
    show(dialog);
    look(dialog, file);
    EXPECT_TRUE(says(dialog, "Some dates can be read in two ways"));
    EXPECT_FALSE(box(dialog, 0).isValid());
    expectUsableByKeys(dialog);
    tick(labelled<QRadioButton>(dialog, "March 4 (month first)"));
    settle(dialog);
    EXPECT_EQ(at(dialog, 0, CsvImportModel::Born).data().toString(), text("4 March 1990"));
    tick(labelled<QRadioButton>(dialog, "3 April (day first)"));
    settle(dialog);
    EXPECT_EQ(at(dialog, 0, CsvImportModel::Born).data().toString(), text("3 April 1990"));
    click(button(dialog, "Import 2 patients"));
    settle(dialog);
    const auto patients = okay(practice().patients());
    ASSERT_EQ(patients.size(), 2U);
    EXPECT_EQ(patients[0].born, "1990-04-03");

    look(dialog, write("plain.csv", "name,born\nZed Orr,1990-04-03\n"));
    EXPECT_FALSE(says(dialog, "Some dates can be read in two ways")) << "another list asks only when it has to";
    look(dialog, file);
    EXPECT_TRUE(says(dialog, "Some dates can be read in two ways"));
    EXPECT_FALSE(labelled<QRadioButton>(dialog, "3 April (day first)").isChecked()) << "and nothing is taken for granted";
}

TEST_F(CsvImport, AListThatCannotBeReadIsExplained)
{
    CsvImportDialog dialog(practice());
    show(dialog);
    look(dialog, mixedList());
    look(dialog, write("broken.csv", "colour,shoes\nred,41\n"));
    EXPECT_TRUE(says(dialog, "broken.csv, line 1"));
    EXPECT_FALSE(rows(dialog).isVisible());
    EXPECT_FALSE(button(dialog, "Import 0 patients").isEnabled()) << "nothing of the list before is left";
    EXPECT_EQ(QApplication::focusWidget(), &button(dialog, "Choose a file ..."));
    look(dialog, in("not-there.csv"));
    EXPECT_TRUE(says(dialog, "not-there.csv: cannot be read"));
    look(dialog, mixedList());
    EXPECT_FALSE(says(dialog, "not-there.csv")) << "a good list takes the complaint away";
    EXPECT_TRUE(rows(dialog).isVisible());
}

TEST_F(CsvImport, WhatIsTickedStaysWhenThePracticeRefuses)
{
    CsvImportDialog dialog(practice());
    show(dialog);
    look(dialog, mixedList());
    touch(dialog, 0, CsvImportModel::Tick);
    std::filesystem::rename(practiceFile(), practiceFile() + ".away");
    click(button(dialog, "Import 1 patient"));
    settle(dialog);
    std::filesystem::rename(practiceFile() + ".away", practiceFile());
    EXPECT_TRUE(says(dialog, "cannot be read (no such file)"));
    EXPECT_EQ(names().size(), 1) << "nothing is imported";
    EXPECT_EQ(dialog.imported(), 0U);
    EXPECT_EQ(box(dialog, 0), Qt::Unchecked);
    EXPECT_EQ(box(dialog, 2), Qt::Checked);
    click(button(dialog, "Import 1 patient"));
    settle(dialog);
    EXPECT_EQ(names(), (QStringList{text("Anna Méyer"), text("Ida Okafor")}));
}

// Half a second is the longest that a window may stand still; measured between two ticks of its own clock.
TEST_F(CsvImport, AListOfFiveThousandDoesNotFreezeTheWindow)
{
    std::mt19937 engine(3);
    const auto word = [&engine] {
        QByteArray out;
        for (int i = 0; i < 8; ++i)
            out += static_cast<char>('a' + engine() % 26);
        return out;
    };
    QByteArray list = "name,born\n";
    for (int i = 0; i < 5000; ++i)
        list += word() + ' ' + word() + QStringLiteral(",19%1-0%2-11\n").arg(10 + i % 80).arg(1 + i % 9).toUtf8();
    const QString file = write("long.csv", list);
    CsvImportDialog dialog(practice());
    show(dialog);
    QElapsedTimer sinceBeat;
    qint64 longest = 0;
    QTimer beat;
    beat.setInterval(10);
    QObject::connect(&beat, &QTimer::timeout, &dialog, [&] { longest = std::max(longest, sinceBeat.restart()); });
    sinceBeat.start();
    beat.start();
    const auto expectSmooth = [&](const char *what) {
        settle(dialog);
        QTest::qWait(30); // a few beats more, so that what the end of the work costs is seen
        EXPECT_LT(longest, 500) << what;
        longest = 0;
    };
    dialog.read(file);
    expectSmooth("reading the list");
    ASSERT_EQ(rows(dialog).model()->rowCount(), 5000);
    click(button(dialog, "Import 5000 patients"));
    expectSmooth("importing");
    EXPECT_EQ(names().size(), 5000);
    sinceBeat.restart(); // the line above read the practice in this thread
    dialog.read(file);
    expectSmooth("reading it again with all of them there");
    EXPECT_TRUE(says(dialog, "5000 rows: 0 ticked, 5000 perhaps there twice"));
    QTest::keyClick(&rows(dialog), Qt::Key_A, Qt::ControlModifier);
    key(Qt::Key_Space);
    expectSmooth("ticking all");
    EXPECT_TRUE(button(dialog, "Import 5000 patients").isEnabled());
}

TEST_F(CsvImport, TheModelKeepsQtsRules)
{
    CsvImportModel model;
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    const std::vector<PatientRecord> existing{named("Anna Meyer", "1980-03-05")};
    CsvOptions options;
    options.file = "list.csv";
    const auto look = [&](const char *list) { return CsvLook{okay(previewCsv(list, options, existing)), existing}; };
    model.show(look("name,born\nBo Reed,\nAnna Meyer,1980-03-05\n,\nZed Orr,32.01.1990\n"));
    EXPECT_EQ(model.rowCount(), 3);
    EXPECT_TRUE(model.setData(model.index(0, CsvImportModel::Tick), Qt::Unchecked, Qt::CheckStateRole));
    EXPECT_FALSE(model.isTicked(0));
    EXPECT_FALSE(model.setData(model.index(2, CsvImportModel::Tick), Qt::Checked, Qt::CheckStateRole)) << "a mistake";
    EXPECT_FALSE(model.setData(model.index(0, CsvImportModel::Name), Qt::Checked, Qt::CheckStateRole));
    EXPECT_FALSE(model.flags(model.index(2, CsvImportModel::Tick)).testFlag(Qt::ItemIsUserCheckable));
    model.showOnlyLooks(true);
    EXPECT_EQ(model.rowCount(), 2);
    model.setTicked({0, 1}, true);
    EXPECT_EQ(model.leftOut(), (std::set<std::size_t>{0, 2}));
    model.setImported();
    EXPECT_EQ(model.leftOut(), (std::set<std::size_t>{0, 1, 2}));
    EXPECT_EQ(model.counts().imported, 1U);
    model.show(look("name\nBo Reed\n"));
    EXPECT_EQ(model.rowCount(), 0) << "nothing to look at";
    model.clear();
    EXPECT_EQ(model.counts().rows, 0U);
}

// --- double records

class Duplicates : public PracticeLists {
protected:
    static QListWidget &pairs(const DuplicatesDialog &dialog)
    {
        return *only<QListWidget>(dialog, [](const QListWidget &) { return true; });
    }
    static QTableWidget &sides(const DuplicatesDialog &dialog)
    {
        return *only<QTableWidget>(dialog, [](const QTableWidget &) { return true; });
    }
    static int lineOf(const DuplicatesDialog &dialog, const char *field)
    {
        for (int row = 0; row < sides(dialog).rowCount(); ++row)
            if (cell(sides(dialog), row, 0) == text(field))
                return row;
        ADD_FAILURE() << "no line " << field;
        return 0;
    }
    static std::string line(const DuplicatesDialog &dialog, const char *field)
    {
        const int row = lineOf(dialog, field);
        return (
            cell(sides(dialog), row, 1) + text(" | ") + cell(sides(dialog), row, 2) + text(" | ") + cell(sides(dialog), row, 3))
            .toStdString();
    }
    static bool isBold(const DuplicatesDialog &dialog, const char *field, int column)
    {
        return sides(dialog).item(lineOf(dialog, field), column)->font().bold();
    }
};

TEST_F(Duplicates, ShowsPairsAndBothRecordsSideBySide)
{
    PatientRecord anna = named("Anna Meyer", "1980-03-05");
    anna.phone = "0555 12";
    PatientRecord twin = named("Meyer Anna", "1980-03-05");
    twin.phone = "0555 98";
    twin.mark = "walks with a stick";
    const std::int64_t first = add(anna);
    add(twin);
    add("Bo Reed", "");
    add("Reed Bo", "1990-01-01");
    add("Zed Orr", "1970-01-01");
    visit(first, "2015-04-01");
    visit(first, "2014-04-01");
    DuplicatesDialog dialog(practice());
    show(dialog);
    ASSERT_EQ(pairs(dialog).count(), 2);
    EXPECT_EQ(pairs(dialog).item(0)->text().section(QLatin1Char(','), 0, 0), text("Anna Meyer")) << "the most alike come first";
    EXPECT_EQ(pairs(dialog).item(1)->text().section(QLatin1Char(','), 0, 0), text("Bo Reed"));
    EXPECT_TRUE(says(dialog, "2 pairs look alike"));
    EXPECT_EQ(line(dialog, "Name"), "Anna Meyer | Meyer Anna | differs");
    EXPECT_EQ(line(dialog, "Born"), "5 March 1980 | 5 March 1980 | same");
    EXPECT_EQ(line(dialog, "Phone"), "0555 12 | 0555 98 | differs");
    EXPECT_EQ(line(dialog, "Mark"), " | walks with a stick | only second");
    EXPECT_EQ(line(dialog, "Visits"), "2, the last on 1 April 2015 | none | differs");
    EXPECT_TRUE(isBold(dialog, "Phone", 1) && isBold(dialog, "Phone", 2) && isBold(dialog, "Phone", 3));
    EXPECT_FALSE(isBold(dialog, "Born", 1) || isBold(dialog, "Born", 3));
    EXPECT_TRUE(labelled<QRadioButton>(dialog, "The first stays").isChecked()) << "it has more visits";
    expectUsableByKeys(dialog);
    pairs(dialog).setFocus();
    key(Qt::Key_Down);
    EXPECT_EQ(line(dialog, "Name"), "Bo Reed | Reed Bo | differs");
    key(Qt::Key_Return);
    EXPECT_TRUE(dialog.isVisible());
    EXPECT_EQ(names().size(), 5);
    key(Qt::Key_Escape);
    EXPECT_FALSE(dialog.isVisible());
}

TEST_F(Duplicates, JoinsOnlyAfterASecondYes)
{
    const std::int64_t anna = add("Anna Meyer", "1980-03-05");
    const std::int64_t other = add("Meyer Anna", "1980-03-05");
    visit(other, "2015-04-01");
    DuplicatesDialog dialog(practice());
    show(dialog);
    EXPECT_TRUE(labelled<QRadioButton>(dialog, "The second stays").isChecked()) << "it has more visits";
    tick(labelled<QRadioButton>(dialog, "The first stays"));
    click(button(dialog, "Join the two ..."));
    EXPECT_EQ(names().size(), 2) << "not yet";
    EXPECT_TRUE(says(dialog, "Anna Meyer (born 5 March 1980"));
    EXPECT_TRUE(says(dialog, "This cannot be undone."));
    EXPECT_EQ(QApplication::focusWidget(), &button(dialog, "No, leave both as they are"));
    expectUsableByKeys(dialog);
    key(Qt::Key_Escape);
    EXPECT_TRUE(dialog.isVisible()) << "Esc only takes the question back";
    EXPECT_FALSE(says(dialog, "This cannot be undone."));
    EXPECT_EQ(QApplication::focusWidget(), &button(dialog, "Join the two ..."));
    key(Qt::Key_Return);
    key(Qt::Key_Return); // on 'No'
    EXPECT_FALSE(says(dialog, "This cannot be undone."));
    EXPECT_EQ(names().size(), 2);
    click(button(dialog, "Join the two ..."));
    click(button(dialog, "Yes, join them"));
    EXPECT_EQ(names(), QStringList{text("Anna Meyer")});
    EXPECT_EQ(okay(practice().patient(anna)).otherNames, std::vector<std::string>{"Meyer Anna"});
    EXPECT_EQ(okay(practice().visits(anna)).size(), 1U) << "the visits came over";
    EXPECT_TRUE(says(dialog, "Joined to one record: Anna Meyer, born 5 March 1980"));
    EXPECT_TRUE(says(dialog, "No two records look like one person."));
    EXPECT_EQ(dialog.joined(), 1);
}

TEST_F(Duplicates, TheChosenRecordStays)
{
    add("Anna Meyer", "1980-03-05");
    add("Meyer Anna", "1980-03-05");
    DuplicatesDialog dialog(practice());
    show(dialog);
    tick(labelled<QRadioButton>(dialog, "The second stays"));
    click(button(dialog, "Join the two ..."));
    EXPECT_TRUE(says(dialog, "Meyer Anna (born 5 March 1980"));
    click(button(dialog, "Yes, join them"));
    EXPECT_EQ(names(), QStringList{text("Meyer Anna")});
}

TEST_F(Duplicates, AnotherPairTakesTheQuestionBack)
{
    for (const char *name : {"Anna Meyer", "Meyer Anna", "Bo Reed", "Reed Bo"})
        add(name, *name == 'A' || *name == 'M' ? "1980-03-05" : "1990-01-01");
    DuplicatesDialog dialog(practice());
    show(dialog);
    click(button(dialog, "Join the two ..."));
    pairs(dialog).setFocus();
    key(Qt::Key_Down);
    EXPECT_FALSE(says(dialog, "This cannot be undone.")) << "a question about the pair before must not be answered for this one";
    EXPECT_EQ(names().size(), 4);
}

TEST_F(Duplicates, TwoPeopleLeaveTheListForNow)
{
    add("Anna Meyer", "1980-03-05");
    add("Meyer Anna", "1980-03-05");
    add("Bo Reed", "1990-01-01");
    add("Reed Bo", "1990-01-01");
    {
        DuplicatesDialog dialog(practice());
        show(dialog);
        ASSERT_EQ(pairs(dialog).count(), 2);
        click(button(dialog, "These are two people"));
        ASSERT_EQ(pairs(dialog).count(), 1);
        EXPECT_TRUE(says(dialog, "1 pair looks alike"));
        EXPECT_EQ(line(dialog, "Name"), "Bo Reed | Reed Bo | differs") << "the next one is shown";
        click(button(dialog, "These are two people"));
        EXPECT_TRUE(says(dialog, "No two records look like one person."));
        EXPECT_FALSE(sides(dialog).isVisible());
    }
    EXPECT_EQ(names().size(), 4);
    DuplicatesDialog again(practice());
    show(again);
    EXPECT_EQ(pairs(again).count(), 2) << "nothing about it is kept";
}

TEST_F(Duplicates, WhoLookedLikeAJoinedRecordStaysInTheList)
{
    for (const char *name : {"Anna Meyer", "Meyer Anna", "Anna Maria Meyer"})
        add(name, "1980-03-05");
    DuplicatesDialog dialog(practice());
    show(dialog);
    ASSERT_EQ(pairs(dialog).count(), 3);
    click(button(dialog, "Join the two ..."));
    click(button(dialog, "Yes, join them"));
    ASSERT_EQ(pairs(dialog).count(), 1) << "the two pairs with the third record became one";
    click(button(dialog, "Join the two ..."));
    click(button(dialog, "Yes, join them"));
    EXPECT_EQ(names().size(), 1);
    EXPECT_EQ(dialog.joined(), 2);
    EXPECT_TRUE(practice().verify().ok());
}

TEST_F(Duplicates, RecordsOnceThatARecordWasLookedAt)
{
    for (const char *name : {"Anna Meyer", "Meyer Anna", "Anna Maria Meyer"})
        add(name, "1980-03-05");
    DuplicatesDialog dialog(practice());
    show(dialog);
    EXPECT_EQ(countOf(EntryKind::Opened), 2);
    key(Qt::Key_Down);
    key(Qt::Key_Down);
    key(Qt::Key_Up);
    EXPECT_EQ(countOf(EntryKind::Opened), 3);
}

TEST_F(Duplicates, ARefusedJoinIsExplainedAndThePairStays)
{
    add("Anna Meyer", "1980-03-05");
    const std::int64_t other = add("Meyer Anna", "1980-03-05");
    DuplicatesDialog dialog(practice());
    show(dialog);
    click(button(dialog, "Join the two ..."));
    ASSERT_TRUE(practice().erase(other, "meanwhile, elsewhere").ok());
    click(button(dialog, "Yes, join them"));
    EXPECT_TRUE(says(dialog, "names nothing that is known"));
    EXPECT_FALSE(says(dialog, "Joined"));
    EXPECT_EQ(pairs(dialog).count(), 1);
    EXPECT_EQ(names(), QStringList{text("Anna Meyer")});
}

TEST_F(Duplicates, SaysWhenThereAreNone)
{
    add("Anna Meyer", "1980-03-05");
    add("Zed Orr", "1970-01-01");
    DuplicatesDialog dialog(practice());
    show(dialog);
    EXPECT_TRUE(says(dialog, "No two records look like one person."));
    EXPECT_FALSE(pairs(dialog).isVisible());
    EXPECT_EQ(countOf(EntryKind::Opened), 0);
    expectUsableByKeys(dialog);
}

TEST_F(Duplicates, RowsAreAsHighAsTheirWords)
{
    PatientRecord anna = named("Anna Meyer", "1980-03-05");
    anna.mark =
        "walks with a stick that has a silver knob in the shape of a heron, and wears a red scarf in winter and in summer";
    add(anna);
    add(anna);
    DuplicatesDialog dialog(practice());
    show(dialog);
    const int mark = lineOf(dialog, "Mark");
    EXPECT_GT(sides(dialog).rowHeight(mark), sides(dialog).rowHeight(0));
    const auto fits = [&] {
        QCoreApplication::processEvents(); // what the new widths led to
        const int height = sides(dialog).rowHeight(mark);
        sides(dialog).resizeRowToContents(mark);
        return height == sides(dialog).rowHeight(mark);
    };
    EXPECT_TRUE(fits());
    int before = sides(dialog).columnWidth(1);
    for (const int width : {smallScreenWidth, dialog.minimumSizeHint().width()}) {
        dialog.resize(width, dialog.height());
        ASSERT_TRUE(QTest::qWaitFor([&] { return sides(dialog).columnWidth(1) != before; }, patience));
        EXPECT_TRUE(fits()) << width;
        before = sides(dialog).columnWidth(1);
    }
}

TEST_F(Duplicates, SaysWhenThereMayBeMore)
{
    const std::vector<PatientRecord> many(46, named("Anna Meyer", "1980-03-05")); // 46 * 45 / 2 = 1035 pairs, 1000 are given
    ASSERT_TRUE(practice().addPatients(many).ok());
    DuplicatesDialog dialog(practice());
    show(dialog);
    EXPECT_EQ(pairs(dialog).count(), 1000);
    EXPECT_TRUE(says(dialog, "1000 pairs look alike, and there may be more"));
}

TEST(RecordComparison, SaysOfEachFieldHowTheTwoDiffer)
{
    const PatientRecord whole = wholeRecord();
    const PatientRecord bare = named("Zoë Ørsted");
    const std::vector<ComparedLine> same = compareRecords(whole, whole);
    ASSERT_EQ(same.size(), 27U) << "a line for every field of the record";
    for (const ComparedLine &line : same) {
        EXPECT_EQ(line.inAWord(), text("same")) << line.field.toStdString();
        EXPECT_FALSE(line.first.isEmpty()) << line.field.toStdString();
    }
    const std::vector<ComparedLine> first = compareRecords(whole, bare);
    const std::vector<ComparedLine> second = compareRecords(bare, whole);
    ASSERT_EQ(first.size(), same.size());
    EXPECT_EQ(first[0].inAWord(), text("same"));
    for (std::size_t i = 1; i < first.size(); ++i) {
        EXPECT_EQ(first[i].inAWord(), text("only first")) << first[i].field.toStdString();
        EXPECT_EQ(second[i].inAWord(), text("only second")) << first[i].field.toStdString();
    }
    EXPECT_EQ(compareRecords(bare, bare).size(), 1U) << "what both lack is left out";
}

TEST(RecordComparison, ReadsAsAPersonWouldWriteIt)
{
    QMap<QString, QString> lines;
    for (const ComparedLine &line : compareRecords(wholeRecord(), wholeRecord()))
        lines[line.field] = line.first;
    EXPECT_EQ(lines[text("Born")], text("5 March 1980"));
    EXPECT_EQ(lines[text("Doctor")], text("Dr Quill, 0555 90"));
    EXPECT_EQ(lines[text("Emergency contact")], text("0555 13"));
    EXPECT_EQ(lines[text("Medicines")], text("a\nb"));
    EXPECT_EQ(lines[text("Surgery")], text("appendix, 1999\ntonsils"));
    EXPECT_EQ(lines[text("Implants")], text("plate, left wrist\nport"));
    EXPECT_EQ(lines[text("Pregnancy")], text("week 12 on 29 February 2024"));
    EXPECT_EQ(lines[text("Blood pressure")], text("120/80 on 2 January 2024"));
    EXPECT_EQ(lines[text("Complaints")], text("low back, last winter, closed\nKnie rechts"));
}

// --- records past their time

class Retention : public PracticeLists {
protected:
    static QTableWidget &table(const RetentionDialog &dialog)
    {
        return *only<QTableWidget>(dialog, [](const QTableWidget &) { return true; });
    }
    static QLineEdit &field(const RetentionDialog &dialog, const char *name)
    {
        return *only<QLineEdit>(dialog, [&](const QLineEdit &edit) { return edit.accessibleName() == text(name); });
    }
    static QStringList dueNames(const RetentionDialog &dialog)
    {
        QStringList out;
        for (int row = 0; row < table(dialog).rowCount(); ++row)
            out << cell(table(dialog), row, 0);
        return out;
    }
    static void choose(const RetentionDialog &dialog, int row)
    {
        QTableWidget &t = table(dialog);
        QTest::mouseClick(t.viewport(), Qt::LeftButton, {}, t.visualItemRect(t.item(row, 0)).center());
    }
    static void type(const RetentionDialog &dialog, const char *reason, const QString &name)
    {
        field(dialog, "Reason").setText(text(reason));
        field(dialog, "The patient's name, typed out").setText(name);
    }

    /// Three are due: one without a birth date, Anna, Tom who was a child; Ida is not.
    void addFour()
    {
        add("Anna Meyer", "1980-03-05", "2016-02-29");
        add("Bo Reed", "", "2012-01-05");
        add("Tom Farrow", "2000-06-15", "2010-05-01");
        add("Ida Okafor", "1971-05-06", "2024-05-05");
    }

    const QDate m_today{2026, 11, 25};
};

TEST_F(Retention, ShowsWhoIsDueAndThatItOnlyProposes)
{
    addFour();
    RetentionDialog dialog(practice(), nullptr, m_today);
    show(dialog);
    EXPECT_EQ(dueNames(dialog), (QStringList{text("Bo Reed"), text("Anna Meyer"), text("Tom Farrow")}));
    EXPECT_EQ(cell(table(dialog), 0, 1), text("not known"));
    EXPECT_EQ(cell(table(dialog), 0, 4), text("5 January 2020"));
    EXPECT_EQ(cell(table(dialog), 0, 5), text("Was this a child then?"));
    EXPECT_EQ(cell(table(dialog), 1, 2), text("29 February 2016"));
    EXPECT_EQ(cell(table(dialog), 1, 3), text("1"));
    EXPECT_EQ(cell(table(dialog), 1, 4), text("29 February 2024"));
    EXPECT_EQ(cell(table(dialog), 2, 4), text("15 June 2025")) << "the 25th birthday";
    EXPECT_TRUE(says(dialog, "8 years after the last visit (the law of Farnbeck)."));
    EXPECT_TRUE(says(dialog, "This is only a proposal. Local law decides"));
    EXPECT_TRUE(says(dialog, "Back-ups made before still hold what is erased here."));
    EXPECT_TRUE(says(dialog, "3 records are past their time"));
    EXPECT_EQ(names().size(), 4) << "looking erases nothing";
    expectUsableByKeys(dialog);
    tick(*only<QCheckBox>(dialog, [](const QCheckBox &) { return true; }));
    EXPECT_EQ(dueNames(dialog), (QStringList{text("Tom Farrow"), text("Bo Reed"), text("Anna Meyer")}));
    EXPECT_EQ(cell(table(dialog), 0, 4), text("1 May 2018")) << "eight years after the last visit";
    EXPECT_EQ(cell(table(dialog), 1, 5), QString()) << "without the rule it does not matter";
    key(Qt::Key_Escape);
    EXPECT_FALSE(dialog.isVisible());
}

TEST_F(Retention, ErasingNeedsAReasonAndTheNameTypedOut)
{
    addFour();
    RetentionDialog dialog(practice(), nullptr, m_today);
    show(dialog);
    EXPECT_FALSE(field(dialog, "Reason").isVisible()) << "nobody is chosen";
    key(Qt::Key_Down);
    EXPECT_TRUE(field(dialog, "Reason").isVisible()) << "the arrow keys choose";
    choose(dialog, 1);
    EXPECT_TRUE(says(dialog, "Erase the record of Anna Meyer, born 5 March 1980"));
    QPushButton &erase = button(dialog, "Erase this record");
    EXPECT_FALSE(erase.isEnabled());
    expectUsableByKeys(dialog);
    type(dialog, "", text("Anna Meyer"));
    EXPECT_FALSE(erase.isEnabled()) << "no reason";
    type(dialog, "  ", text("Anna Meyer"));
    EXPECT_FALSE(erase.isEnabled()) << "a blank one is none";
    for (const char *name : {"", "Anna", "anna meyer", "Bo Reed", "Anna Meyers"}) {
        type(dialog, "the time is over", text(name));
        EXPECT_FALSE(erase.isEnabled()) << name;
    }
    type(dialog, "the time is over", text(" Anna  Meyer "));
    EXPECT_TRUE(erase.isEnabled()) << "spaces do not matter";
    field(dialog, "Reason").setFocus();
    key(Qt::Key_Return);
    EXPECT_FALSE(dialog.isWorking()) << "Enter in a field erases nothing";
    click(erase);
    settle(dialog);
    EXPECT_EQ(names(), (QStringList{text("Bo Reed"), text("Ida Okafor"), text("Tom Farrow")}));
    EXPECT_EQ(dueNames(dialog), (QStringList{text("Bo Reed"), text("Tom Farrow")}));
    EXPECT_TRUE(says(dialog, "Erased: Anna Meyer. Back-ups made before still hold the record."));
    EXPECT_EQ(countOf(EntryKind::Erased), 1);
    EXPECT_EQ(dialog.erased(), 1);
    EXPECT_FALSE(field(dialog, "Reason").isVisible()) << "the next one has to be chosen";
    EXPECT_TRUE(practice().verify().ok());
}

TEST_F(Retention, AnAccentMayBeTypedInTwoWays)
{
    add("Zoë Ørsted", "1980-03-05", "2016-02-29");
    RetentionDialog dialog(practice(), nullptr, m_today);
    show(dialog);
    choose(dialog, 0);
    type(dialog, "the time is over", text("Zoe\xCC\x88 Ørsted"));
    EXPECT_TRUE(button(dialog, "Erase this record").isEnabled());
    type(dialog, "the time is over", text("Zoe Ørsted"));
    EXPECT_FALSE(button(dialog, "Erase this record").isEnabled());
}

TEST_F(Retention, AnotherChoiceEmptiesWhatWasTyped)
{
    addFour();
    RetentionDialog dialog(practice(), nullptr, m_today);
    show(dialog);
    choose(dialog, 1);
    type(dialog, "the time is over", text("Anna Meyer"));
    choose(dialog, 0);
    EXPECT_EQ(field(dialog, "Reason").text(), QString());
    EXPECT_EQ(field(dialog, "The patient's name, typed out").text(), QString());
    EXPECT_FALSE(button(dialog, "Erase this record").isEnabled());
}

TEST_F(Retention, OneRecordAtATime)
{
    addFour();
    RetentionDialog dialog(practice(), nullptr, m_today);
    show(dialog);
    choose(dialog, 0);
    QTableWidget &t = table(dialog);
    QTest::mouseClick(t.viewport(), Qt::LeftButton, Qt::ControlModifier, t.visualItemRect(t.item(1, 0)).center());
    EXPECT_LE(t.selectionModel()->selectedRows().size(), 1);
    t.selectAll();
    EXPECT_LE(t.selectionModel()->selectedRows().size(), 1);
    int erasing = 0;
    for (const QPushButton *b : dialog.findChildren<QPushButton *>())
        erasing += b->text().contains(text("rase")) ? 1 : 0;
    EXPECT_EQ(erasing, 1);
}

TEST_F(Retention, ARefusedErasureIsExplainedAndWhatWasTypedStays)
{
    addFour();
    RetentionDialog dialog(practice(), nullptr, m_today);
    show(dialog);
    choose(dialog, 1);
    type(dialog, "the time is over", text("Anna Meyer"));
    std::filesystem::rename(practiceFile(), practiceFile() + ".away");
    click(button(dialog, "Erase this record"));
    settle(dialog);
    std::filesystem::rename(practiceFile() + ".away", practiceFile());
    EXPECT_TRUE(says(dialog, "cannot be read (no such file)"));
    EXPECT_EQ(names().size(), 4);
    EXPECT_EQ(dialog.erased(), 0);
    EXPECT_EQ(field(dialog, "Reason").text(), text("the time is over"));
    click(button(dialog, "Erase this record"));
    settle(dialog);
    EXPECT_EQ(names().size(), 3);
}

TEST_F(Retention, NamesWhoseLastVisitHasNoDate)
{
    const std::int64_t zed = add("Zed Orr", "1970-01-01", "2001-01-01");
    ASSERT_TRUE(practice().addVisit(zed, "{}").ok());
    add("Ida Okafor", "1971-05-06");
    RetentionDialog dialog(practice(), nullptr, m_today);
    show(dialog);
    EXPECT_TRUE(says(dialog, "a visit has no date that can be read: Zed Orr."));
    EXPECT_TRUE(says(dialog, "No record is past its time."));
    EXPECT_FALSE(table(dialog).isVisible());
    expectUsableByKeys(dialog);
}

TEST_F(Retention, WithoutATimeItExplainsWhereToFindOne)
{
    addFour();
    PracticeSettings settings = okay(practice().settings());
    settings.retentionYears = 0;
    ASSERT_TRUE(practice().saveSettings(settings).ok());
    RetentionDialog dialog(practice(), nullptr, m_today);
    show(dialog);
    EXPECT_TRUE(says(dialog, "It is not set yet how long records are kept."));
    EXPECT_TRUE(says(dialog,
        "Chiropractors, United Kingdom: 8 years after the last visit, and of a child until the age of 25 (26 "
        "when 17 at the last visit)."));
    EXPECT_TRUE(says(dialog, "Osteopaths, United Kingdom: 8 years after the last visit, and of a child until the age of 25."));
    EXPECT_TRUE(says(dialog, "Source: General Chiropractic Council"));
    EXPECT_FALSE(table(dialog).isVisible());
    expectUsableByKeys(dialog);
}

} // namespace

} // namespace raphe::test
