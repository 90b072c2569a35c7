// Finding a patient by a few letters, confirming that it is the right one, and what the file then says of it.
#include "app/raphe/patients/PatientsDialog.h"
#include "app/raphe/patients/PersonWords.h"
#include "tests/app/Window.h"

#include <QAbstractItemModelTester>
#include <QLabel>
#include <QLineEdit>

namespace raphe::test {

namespace {

class Patients : public WindowTest {
protected:
    void SetUp() override
    {
        WindowTest::SetUp();
        for (const auto &[name, born, mark] : {std::tuple{"Ilse Bramwell", "1951-03-30", "walks with an ash stick"},
                 std::tuple{"Ilse Bramhall", "1990-12-02", ""}, std::tuple{"Tomasz Zoll", "", "tall, left-handed"}}) {
            PatientRecord record;
            record.name = name;
            record.born = born;
            record.mark = mark;
            if (record.name == "Tomasz Zoll")
                record.complaints.push_back({1, "heel pain in the morning", "", false});
            ASSERT_TRUE(session().practice().addPatient(record).ok());
        }
        m_dialog =
            std::make_unique<PatientsDialog>(session().practice(), session().adviser().rules(), PatientsDialog::Purpose::Open);
        m_dialog->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(m_dialog.get()));
        QApplication::setActiveWindow(m_dialog.get());
        awaitList();
    }

    // Until the list is read and shown.
    void awaitList()
    {
        ASSERT_TRUE(QTest::qWaitFor([&] { return m_dialog->findChild<QListView *>()->currentIndex().isValid(); }));
    }

    PatientsDialog &dialog() { return *m_dialog; }
    void type(const QString &words) { QTest::keyClicks(m_dialog->findChild<QLineEdit *>(), words); }
    QStringList shown()
    {
        QStringList out;
        const auto *model = m_dialog->findChild<QListView *>()->model();
        for (int row = 0; row < model->rowCount(); ++row)
            out << model->index(row, 0).data().toString().section(QLatin1Char('\n'), 0, 0);
        return out;
    }
    bool says(const QString &words)
    {
        for (const auto *label : m_dialog->findChildren<QLabel *>())
            if (label->isVisible() && label->text().contains(words))
                return true;
        return false;
    }
    std::size_t openings(std::int64_t patient)
    {
        std::size_t count = 0;
        const auto accesses = session().practice().accesses(patient).value();
        for (const AccessRow &row : accesses)
            count += row.kind == EntryKind::Opened ? 1 : 0;
        return count;
    }

private:
    std::unique_ptr<PatientsDialog> m_dialog;
};

} // namespace

TEST_F(Patients, AreFoundByPartOfANameABirthDateOrAComplaint)
{
    EXPECT_EQ(shown().size(), 4);
    type(QStringLiteral("bram ils"));
    EXPECT_EQ(shown(), (QStringList{QStringLiteral("Ilse Bramhall"), QStringLiteral("Ilse Bramwell")}));
    dialog().findChild<QLineEdit *>()->clear();
    type(QStringLiteral("30.3.1951"));
    EXPECT_EQ(shown(), QStringList{QStringLiteral("Ilse Bramwell")});
    dialog().findChild<QLineEdit *>()->clear();
    type(QStringLiteral("heel"));
    EXPECT_EQ(shown(), QStringList{QStringLiteral("Tomasz Zoll")});
    type(QStringLiteral("x"));
    EXPECT_TRUE(shown().isEmpty());
    EXPECT_TRUE(says(QStringLiteral("Nobody is found")));
    QTest::keyClick(&dialog(), Qt::Key_Return);
    EXPECT_EQ(dialog().chosen(), 0);
    EXPECT_TRUE(dialog().isVisible());
}

TEST_F(Patients, IdentityIsAskedBeforeARecordOpens)
{
    type(QStringLiteral("ilse"));
    QTest::keyClick(dialog().findChild<QLineEdit *>(), Qt::Key_Down);
    QTest::keyClick(dialog().findChild<QLineEdit *>(), Qt::Key_Return);
    EXPECT_EQ(dialog().chosen(), 0) << "not yet";
    EXPECT_TRUE(says(QStringLiteral("Ilse Bramwell")));
    EXPECT_TRUE(says(QStringLiteral("born 30 March 1951")));
    EXPECT_TRUE(says(QStringLiteral("walks with an ash stick")));
    QTest::keyClick(&dialog(), Qt::Key_Escape);
    EXPECT_TRUE(dialog().isVisible()) << "back to the list, not out";
    EXPECT_FALSE(says(QStringLiteral("walks with an ash stick")));
    QTest::keyClick(dialog().findChild<QLineEdit *>(), Qt::Key_Return);
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    EXPECT_FALSE(dialog().isVisible());
    ASSERT_NE(dialog().chosen(), 0);
    EXPECT_EQ(session().practice().patient(dialog().chosen()).value().name, "Ilse Bramwell");
}

TEST_F(Patients, AChosenRecordIsExportedForARequest)
{
    type(QStringLiteral("zoll"));
    const auto patients = session().practice().patients().value();
    const auto zoll =
        std::find_if(patients.begin(), patients.end(), [](const PatientCard &c) { return c.name == "Tomasz Zoll"; });
    for (const char *name : {"record.json", "record.txt"}) {
        const QString file = inFolder(name);
        dialog().exportTo(file);
        ASSERT_TRUE(QTest::qWaitFor([&] { return says(QStringLiteral("Exported to")) && QFile::exists(file); }));
        QFile in(file);
        ASSERT_TRUE(in.open(QIODevice::ReadOnly));
        const QByteArray bytes = in.readAll();
        EXPECT_TRUE(bytes.contains("Tomasz Zoll"));
        EXPECT_FALSE(bytes.contains("Bramwell")) << "one patient's only";
        EXPECT_EQ(in.permissions() & (QFileDevice::ReadOther | QFileDevice::ReadGroup), QFileDevice::Permissions());
        EXPECT_EQ(bytes.startsWith('{'), file.endsWith(QStringLiteral(".json")));
    }
    EXPECT_EQ(session().practice().accesses(zoll->id).value().back().kind, EntryKind::Exported);
    dialog().exportTo(inFolder("no/such/folder/record.json"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return says(QStringLiteral("no/such/folder")); }));
}

// A visit of somebody who is on file goes to them; a record always comes as one of its own, and says that there are two now.
TEST_F(Patients, ARecordAndAVisitComeInFromFiles)
{
    const auto count = [&] { return session().practice().patients().value().size(); };
    const std::size_t before = count();
    const auto write = [&](const char *name, const QByteArray &text) {
        QFile file(inFolder(name));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(text);
        return file.fileName();
    };
    dialog().takeOverFrom(write("visit.json",
        R"({"format":"raphe-visit","version":2,"patient":{"name":"Ilse Bramwell","born":"1951-03-30"},"date":"2026-11-20",)"
        R"("findings":[{"structure":"soleus","side":"left","tenderness":3}]})"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return says(QStringLiteral("Taken over")); }));
    EXPECT_EQ(count(), before);
    type(QStringLiteral("bramwell"));
    const auto patients = session().practice().patients().value();
    const auto ilse =
        std::find_if(patients.begin(), patients.end(), [](const PatientCard &c) { return c.name == "Ilse Bramwell"; });
    const auto visits = session().practice().visits(ilse->id).value();
    ASSERT_EQ(visits.size(), 1U);
    EXPECT_EQ(visits.front().state, VisitState::Draft);

    const QString record = inFolder("record.json");
    dialog().exportTo(record);
    ASSERT_TRUE(QTest::qWaitFor([&] { return says(QStringLiteral("Exported to")) && QFile::exists(record); }));
    dialog().takeOverFrom(record);
    ASSERT_TRUE(QTest::qWaitFor([&] { return says(QStringLiteral("was on file")); }));
    EXPECT_EQ(count(), before + 1);

    for (const char *bad : {"{", "[]", R"({"format":"raphe-visit","version":2,"findings":[]})",
             R"({"format":"raphe-visit","version":2,"date":"2026-11-20","patient":{"name":"A"},"findings":[],)"
             R"("conditions":[{"id":"no-such"}]})"}) {
        dialog().takeOverFrom(write("bad.json", bad));
        ASSERT_TRUE(QTest::qWaitFor([&] { return says(QStringLiteral("bad.json")); })) << bad;
        type(QStringLiteral("x")); // another message
    }
    EXPECT_EQ(count(), before + 1);
}

TEST_F(Patients, WhatIsMissingForTheComparisonIsSaid)
{
    type(QStringLiteral("zoll"));
    QTest::keyClick(dialog().findChild<QLineEdit *>(), Qt::Key_Return);
    EXPECT_TRUE(says(QStringLiteral("not written down")));
    QTest::keyClick(&dialog(), Qt::Key_Escape);
    dialog().findChild<QLineEdit *>()->clear();
    type(QStringLiteral("bramhall"));
    QTest::keyClick(dialog().findChild<QLineEdit *>(), Qt::Key_Return);
    EXPECT_TRUE(says(QStringLiteral("none chosen yet")));
}

TEST_F(Patients, OpeningOneIsLoggedOnceAndStartsAVisit)
{
    const auto patients = session().practice().patients().value();
    const auto zoll =
        std::find_if(patients.begin(), patients.end(), [](const PatientCard &c) { return c.name == "Tomasz Zoll"; });
    window().visitPanel().openPatient(zoll->id);
    EXPECT_EQ(session().patientId(), zoll->id);
    EXPECT_EQ(session().visit().patient->name, "Tomasz Zoll");
    EXPECT_EQ(openings(zoll->id), 1U);
    const auto second = session().startVisit(zoll->id, 1);
    ASSERT_TRUE(second.ok());
    ASSERT_TRUE(session().open(second.value()).ok());
    EXPECT_EQ(openings(zoll->id), 1U) << "another visit of the same patient is no other opening";
    EXPECT_EQ(session().visit().episode(), 1);
    EXPECT_EQ(session().visit().complaint(), "heel pain in the morning");
}

TEST(PatientsModelTest, IsAProperModel)
{
    PatientsModel model;
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.setPatients({{1, "Ada", "1980-01-02", "", "ada"}, {2, "Bo", "", "red cap", "bo"}});
    EXPECT_EQ(model.rowCount(), 2);
    model.setTyped(QStringLiteral("b"));
    EXPECT_EQ(model.rowCount(), 1);
    EXPECT_EQ(model.rowOf(2), 0);
    EXPECT_EQ(model.rowOf(1), -1);
}

TEST(PersonWordsTest, AgesOnTheBirthday)
{
    EXPECT_EQ(bornWords("1980-03-05", QDate(2026, 3, 4)), QStringLiteral("born 5 March 1980, 45 years"));
    EXPECT_EQ(bornWords("1980-03-05", QDate(2026, 3, 5)), QStringLiteral("born 5 March 1980, 46 years"));
    EXPECT_EQ(bornWords("2024-02-29", QDate(2025, 2, 28)), QStringLiteral("born 29 February 2024, 1 years"));
    EXPECT_EQ(bornWords("", QDate(2026, 3, 5)), QStringLiteral("no birth date"));
}

} // namespace raphe::test
