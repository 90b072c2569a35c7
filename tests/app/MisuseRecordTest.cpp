// Misuse of the record and its file: medicines, days, doubles, other programs, a full disk.
#include "tests/app/Misuse.h"

#include "app/raphe/intake/CautionsDialog.h"
#include "app/raphe/patients/PatientsDialog.h"
#include "app/raphe/patients/PersonWords.h"
#include "app/raphe/practice/RestoreDialog.h"
#include "app/raphe/record/PatientEditor.h"
#include "app/raphe/record/PregnancyEdit.h"
#include "app/words/ErrorText.h"
#include "core/record/PatientSearch.h"
#include "core/store/Database.h"

#include <QAction>
#include <QFile>
#include <QFileInfo>
#include <QListView>
#include <QMenu>
#include <QMessageBox>
#include <QStatusBar>
#include <QToolButton>

#include <csignal>
#include <sys/resource.h>

namespace raphe::test {

namespace {

// While it stands no file of this process may grow: to SQLite that is a full disk.
class FullDisk {
public:
    FullDisk()
    {
        m_handler = std::signal(SIGXFSZ, SIG_IGN);
        getrlimit(RLIMIT_FSIZE, &m_before);
        rlimit none = m_before;
        none.rlim_cur = 0;
        setrlimit(RLIMIT_FSIZE, &none);
    }
    ~FullDisk()
    {
        setrlimit(RLIMIT_FSIZE, &m_before);
        std::signal(SIGXFSZ, m_handler);
    }
    FullDisk(const FullDisk &) = delete;
    FullDisk &operator=(const FullDisk &) = delete;

private:
    rlimit m_before{};
    void (*m_handler)(int) = nullptr;
};

} // namespace

TEST_F(Misuse, Mis03NoMedicinesAndABloodThinner)
{
    session().setCautions({"never any bleeding problem"});
    finds("soleus", Side::Right);
    const Place there{{"soleus"}, Side::Right};
    const auto asked = [&] {
        auto now = Cautions::of(adviser().rules(), *knowledge().regions, session().asSuspected(), "visit");
        EXPECT_TRUE(now.ok());
        return std::move(now).value();
    };
    EXPECT_FALSE(asked().stopOf(there, "suction"));
    changeRecord([](PatientRecord &record) { record.medicines = {"takes no medicines", "apixaban 5 mg twice a day"}; });
    // The stricter of the two holds at once, and the banner says so.
    for (const char *action : {"suction", "instrument"})
        EXPECT_TRUE(asked().stopOf(there, action)) << action;
    EXPECT_TRUE(bannerWords().contains(QStringLiteral("To confirm: the record says 'apixaban 5 mg twice a day'")))
        << bannerWords().toStdString();
    EXPECT_TRUE(bannerWords().contains(QStringLiteral("never any bleeding problem"))) << "what was typed stays too";
    EXPECT_EQ(session().record().medicines.size(), 2U) << "both entries are kept";
    reopen();
    EXPECT_TRUE(asked().stopOf(there, "suction")) << "until it is answered";
    EXPECT_TRUE(bannerWords().contains(QStringLiteral("To confirm")));
    // 'Not so' is kept beside what the record said, and is asked anew when that changes.
    inNext<CautionsDialog>([&](CautionsDialog &dialog) {
        QTest::mouseClick(button(dialog, QStringLiteral("It is not so: ")), Qt::LeftButton);
        dialog.accept();
    });
    QTest::mouseClick(button(banner(), QStringLiteral("What it means")), Qt::LeftButton);
    ASSERT_EQ(session().record().ruledOut.size(), 1U);
    EXPECT_EQ(session().record().ruledOut[0], (RuledOut{"anticoagulant", "apixaban 5 mg twice a day"}));
    EXPECT_FALSE(asked().stopOf(there, "suction"));
    changeRecord([](PatientRecord &record) { record.medicines.back() = "apixaban 2.5 mg"; });
    EXPECT_TRUE(asked().stopOf(there, "suction"));
}

TEST_F(Misuse, Mis09NumbersThatCannotBe)
{
    changeRecord([](PatientRecord &record) { record.born = "1941-02-03"; });
    PatientEditor editor(session().record(), adviser().rules(), &window());
    editor.show();
    QApplication::setActiveWindow(&editor);
    const auto line = [&](const char *name) { return named<QLineEdit>(editor, QString::fromUtf8(name)); };
    const auto offered = [&](const char *first) { // the button beside that field
        QWidget *field = line(first)->parentWidget();
        for (auto *b : field->findChildren<QPushButton *>())
            if (b->text().startsWith(QStringLiteral("Keep it as written")))
                return b;
        return static_cast<QPushButton *>(nullptr);
    };
    named<QLineEdit>(editor, QStringLiteral("Name"))->setText(QStringLiteral("Test Patient the Elder"));
    const auto writePressure = [&](const char *upper, const char *lower, const char *says_) {
        line("Systolic blood pressure")->setText(QString::fromUtf8(upper));
        line("Diastolic blood pressure")->setText(QString::fromUtf8(lower));
        line("Day of the reading")->setText(QStringLiteral("2026-11-20"));
        editor.accept();
        EXPECT_TRUE(editor.isVisible()) << "not read as it stands";
        EXPECT_TRUE(says(editor, QString::fromUtf8(says_))) << says_;
        QPushButton *as = offered("Systolic blood pressure");
        ASSERT_TRUE(as);
        QTest::mouseClick(as, Qt::LeftButton);
    };
    writePressure("80", "190", "The first number has to be the higher one");
    writePressure("1200", "80", "as a whole number from 40 to 300");
    writePressure("120", "", "Write the lower number");
    line("Week of pregnancy")->setText(QStringLiteral("67"));
    line("Day on which the week was counted")->setText(QStringLiteral("2026-11-20"));
    editor.accept();
    EXPECT_TRUE(says(editor, QStringLiteral("Write the week as a number from 1 to 42")));
    QTest::mouseClick(offered("Week of pregnancy"), Qt::LeftButton);
    line("Week of pregnancy")->setText(QStringLiteral("12"));
    line("Day on which the week was counted")->setText(QStringLiteral("2026-11-20"));
    bool isDoubted = false;
    for (const auto *label : editor.findChildren<QLabel *>())
        isDoubted = isDoubted || label->text().contains(QStringLiteral("A pregnancy at 85 years: is this the right patient?"));
    EXPECT_TRUE(isDoubted);
    const PatientRecord written = editor.record();
    EXPECT_EQ(written.name, "Test Patient the Elder") << "the rest is not held up";
    EXPECT_FALSE(written.bloodPressure) << "nothing is read out of it, and nothing swapped";
    ASSERT_EQ(written.unclear.size(), 4U);
    EXPECT_NE(written.unclear[0].find("80 over 190"), std::string::npos) << written.unclear[0];
    EXPECT_NE(written.unclear[1].find("1200 over 80"), std::string::npos);
    EXPECT_NE(written.unclear[2].find("120 over"), std::string::npos);
    EXPECT_NE(written.unclear[3].find("week 67"), std::string::npos);
    EXPECT_EQ(written.pregnancy, (Pregnancy{12, "2026-11-20"}));
    editor.accept();
    EXPECT_FALSE(editor.isVisible()) << "all of it can be saved";
    changeRecord([&](PatientRecord &record) { record = written; });
    EXPECT_TRUE(bannerWords().contains(QStringLiteral("To clarify: the record says 'blood pressure 80 over 190")))
        << bannerWords().toStdString();
    const auto standing = session().standingVerdicts();
    EXPECT_TRUE(std::any_of(standing.begin(), standing.end(), [](const CautionVerdict &v) {
        return v.verdict == Verdict::Ask && v.reason.find("80 over 190") != std::string::npos;
    })) << "ask before treating";
    const auto reminders = session().reminders();
    EXPECT_TRUE(std::any_of(reminders.begin(), reminders.end(), [](const Reminder &r) { return r.feed->id == "pregnancy-any"; }))
        << "the rules of pregnancy are not dropped";
}

TEST_F(Misuse, Mis13FourHundredMedicines)
{
    changeRecord([](PatientRecord &record) {
        record.name = std::string(300, 'N');
        for (int i = 1; i < 400; ++i)
            record.medicines.push_back("tonic " + std::to_string(i) + " drops");
        record.medicines.push_back("warfarin 3 mg");
    });
    EXPECT_TRUE(bannerWords().contains(QStringLiteral("To confirm: the record says 'warfarin 3 mg'")))
        << bannerWords().toStdString();
    EXPECT_TRUE(
        bannerWords().contains(QStringLiteral("Not recognised, so that no rule watches it: 'tonic 1 drops' (and 398 more)")))
        << bannerWords().toStdString();
    EXPECT_LT(bannerWords().size(), 500) << "neither the name nor the list pushes anything out";
    EXPECT_LE(window().width(), 1440);
    ASSERT_TRUE(session().rereadRecord().ok());
    EXPECT_EQ(session().record().medicines.size(), 400U);
    EXPECT_EQ(session().record().medicines.back(), "warfarin 3 mg");
}

TEST_F(Misuse, Mis17TheSameNameInAnotherSpelling)
{
    Practice &file = session().practice();
    PatientRecord known;
    known.name = "Zo\u00eb N\u00fa\u00f1ez";
    known.born = "1990-02-03";
    known.allergies = {"latex"};
    ASSERT_TRUE(file.addPatient(known).ok());
    PatientRecord twin;
    twin.name = "Zoe\u0308 Nu\u0301n\u0303ez";
    twin.born = known.born;
    PatientsDialog dialog(file, adviser().rules(), PatientsDialog::Purpose::Open);
    dialog.show();
    const auto count = [&] { return file.patients().value().size(); };
    const std::size_t before = count();
    inNext<PatientEditor>([&](PatientEditor &editor) {
        named<QLineEdit>(editor, QStringLiteral("Name"))->setText(QString::fromStdString(twin.name));
        named<QLineEdit>(editor, QStringLiteral("Birth date"))->setText(QStringLiteral("1990-02-03"));
        editor.accept();
        EXPECT_TRUE(editor.isVisible());
        EXPECT_TRUE(says(editor, QStringLiteral("A patient of this name and birth date is on file already")));
        EXPECT_EQ(count(), before) << "no second record silently";
        editor.accept(); // insists
    });
    QTimer::singleShot(200, [] { // what is asked once they are on file
        if (auto *box = qobject_cast<QDialog *>(QApplication::activeModalWidget()))
            box->reject();
    });
    QTest::mouseClick(button(dialog, QStringLiteral("New patient")), Qt::LeftButton);
    ASSERT_EQ(count(), before + 1);
    for (const char *typed : {"Zo\u00eb N\u00fa\u00f1ez", "Zoe\u0308 Nu\u0301n\u0303ez", "Zoe Nunez"}) {
        const PatientQuery query{std::string(typed)};
        const auto cards = file.patients().value();
        EXPECT_EQ(std::count_if(cards.begin(), cards.end(), [&](const PatientCard &c) { return query.matches(c.searched); }), 2)
            << typed;
    }
    const auto cards = file.patients().value();
    EXPECT_TRUE(std::any_of(cards.begin(), cards.end(), [&](const PatientCard &c) { return c.name == twin.name; }))
        << "as entered";
}

TEST_F(Misuse, Mis19AllergiesInOtherLetters)
{
    changeRecord([](PatientRecord &record) {
        record.allergies = {"la\u0301tex", "l\u00e1tex"};
        record.medicines = {"war\u200b"
                            "farin"};
    });
    const auto reminders = session().reminders();
    const auto count = [&](const char *condition) {
        return std::count_if(reminders.begin(), reminders.end(), [&](const Reminder &r) {
            return std::find(r.feed->suggests.begin(), r.feed->suggests.end(), condition) != r.feed->suggests.end();
        });
    };
    EXPECT_EQ(count("latex-allergy"), 1) << "once";
    EXPECT_GE(count("anticoagulant"), 1) << "an invisible character hides nothing";
    EXPECT_TRUE(unwatched(adviser().rules().feeds(), session().record()).empty());
    EXPECT_EQ(session().record().allergies, (std::vector<std::string>{"la\u0301tex", "l\u00e1tex"})) << "as typed";
}

TEST_F(Misuse, Mis23AVisitBeforeTheFirstOne)
{
    finds("gluteus-maximus", Side::Right);
    ASSERT_TRUE(session().saveNow().ok());
    const auto first = session().visitId();
    Visit late;
    late.patient = session().visit().patient;
    late.date = dayFrom(today(), -400);
    late.complaintAt = {{{"deltoid-region"}, Side::Left}};
    const auto id = session().practice().addVisit(session().patientId(), writeVisit(late)).value();
    ASSERT_TRUE(session().open(id).ok());
    EXPECT_FALSE(session().lastVisit()) << "there is none before it: nothing is compared backwards";
    EXPECT_TRUE(session().isLate());
    const auto refused = session().sign("");
    ASSERT_FALSE(refused.ok());
    EXPECT_EQ(inWords(refused.error()).find("reason of the late entry") != std::string::npos, true) << inWords(refused.error());
    ASSERT_TRUE(session().sign("written down from paper").ok());
    const auto history = session().practice().history(id).value();
    ASSERT_EQ(history.size(), 1U);
    EXPECT_EQ(history[0].kind, EntryKind::Late);
    EXPECT_EQ(history[0].careAt, late.date) << "the day of care, beside the time of entry";
    EXPECT_EQ(history[0].reason, "written down from paper");
    EXPECT_EQ(session().visit().complaintAt, late.complaintAt) << "nothing is dropped";
    ASSERT_TRUE(session().open(first).ok());
    ASSERT_TRUE(session().lastVisit());
    EXPECT_EQ(session().lastVisit()->date, late.date) << "of the later visit it is the one before";
}

TEST_F(Misuse, Mis25APregnancyThatIsOverAndAnOperationBeforeBirth)
{
    changeRecord([&](PatientRecord &record) {
        record.born = "1974-05-06";
        record.pregnancy = Pregnancy{30, dayFrom(today(), -84)};
        record.surgery = {{"hip replaced, right", 1951}};
        record.conditions = {{"pregnancy", ""}, {"late-pregnancy", ""}};
    });
    const auto reminders = session().reminders();
    const auto reminder = [&](const char *id) {
        return std::find_if(reminders.begin(), reminders.end(), [&](const Reminder &r) { return r.feed->id == id; });
    };
    ASSERT_NE(reminder("pregnancy-due"), reminders.end()) << "asked, although pregnancy is confirmed";
    EXPECT_EQ(reminder("pregnancy-due")->because, "42") << "30 and 12";
    EXPECT_NE(reminder("pregnancy-due")->feed->say.find("ask whether the baby is born"), std::string::npos);
    ASSERT_NE(reminder("surgery-hip"), reminders.end()) << "the hip counts, whatever its year";
    EXPECT_TRUE(bannerWords().contains(QStringLiteral("To confirm"))) << bannerWords().toStdString();
    session().confirmComplaints(); // the one stroke
    EXPECT_EQ(session().reminders().size(), reminders.size());
    PatientEditor editor(session().record(), adviser().rules(), &window());
    editor.show();
    bool isSaid = false;
    for (const auto *label : editor.findChildren<QLabel *>())
        isSaid = isSaid || label->text().contains(QStringLiteral("An operation of 1951 lies before the birth in 1974"));
    EXPECT_TRUE(isSaid) << "as soon as the form is open";
    EXPECT_EQ(editor.record().surgery, session().record().surgery) << "kept as written";
}

TEST_F(Misuse, Mis28EverythingOnTheOtherSide)
{
    hurtsAt("hip-region", Side::Right);
    for (const char *structure : {"soleus", "gastrocnemius-medial-head", "rectus-femoris", "biceps-brachii", "trapezius"})
        finds(structure, Side::Left);
    const auto sign = [&] {
        for (auto *b : window().visitPanel().findChildren<QToolButton *>())
            if (b->popupMode() == QToolButton::MenuButtonPopup)
                for (QAction *action : b->menu()->actions())
                    if (action->text() == QStringLiteral("Sign"))
                        action->trigger();
    };
    int asked = 0;
    for (int i = 0; i < 3; ++i) { // Enter, Enter, Enter
        inNext<QMessageBox>([&](QMessageBox &box) {
            ++asked;
            EXPECT_TRUE(box.text().contains(QStringLiteral("complaint is on the RIGHT, everything found is on the LEFT")))
                << box.text().toStdString();
            QTest::keyClick(&box, Qt::Key_Return);
        });
        sign();
        EXPECT_EQ(session().state(), VisitState::Draft) << "Enter looks again";
    }
    EXPECT_EQ(asked, 3);
    for (const Finding &f : findings())
        EXPECT_EQ(f.place.side, Side::Left) << "nothing is mirrored by itself";
    inNext<QMessageBox>(
        [](QMessageBox &box) { QTest::mouseClick(button(box, QStringLiteral("Intended: sign")), Qt::LeftButton); });
    sign();
    EXPECT_EQ(session().state(), VisitState::Signed);
    reopen();
    EXPECT_FALSE(session().sidesToAsk()) << "asked once";
    EXPECT_TRUE(session().visit().sidesIntended) << "the answer is kept";
}

TEST_F(Misuse, Mis33TheFileIsChangedByHand)
{
    emergency();
    ASSERT_TRUE(session().saveNow().ok());
    const auto visit = session().visitId();
    // There is no way to bring a visit into a practice from a file: the only import is of lists of patients.
    Visit changed = session().visit();
    changed.warnings.clear();
    const Ran imported = run({QStringLiteral("import"), QStringLiteral("--practice"), QString::fromStdString(practice()),
        QStringLiteral("--from"), written(changed), QStringLiteral("--sign-in"), QStringLiteral("test"),
        QStringLiteral("--passphrase-fd"), QStringLiteral("0")});
    EXPECT_NE(imported.status, 0) << imported.out.toStdString();
    EXPECT_FALSE(imported.err.isEmpty());
    EXPECT_TRUE(onDisk().warnings.size() == 1 && onDisk().warnings[0].isThere);

    // One byte of the sealed visit, with another program.
    const std::string file = practice();
    session().close();
    {
        const Database db(file);
        db.run("UPDATE visit SET document = CAST(substr(document, 1, 60) || CASE substr(document, 61, 1) WHEN x'00' THEN x'01' "
               "ELSE x'00' END || substr(document, 62) AS BLOB) WHERE id = ?",
            {visit});
        ASSERT_EQ(db.number("SELECT changes() "), 1);
    }
    const auto opened = session().open(visit);
    ASSERT_FALSE(opened.ok()) << "nothing of it is believed";
    EXPECT_EQ(opened.error().code, ErrorCode::Tampered);
    EXPECT_EQ(session().visitId(), 0) << "and nothing can be treated";
    const QString words = errorText(opened.error());
    EXPECT_TRUE(words.contains(QStringLiteral("visit"))) << words.toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("back-up"))) << words.toStdString();
    EXPECT_EQ(session().practice().verify().error().code, ErrorCode::Tampered);
    EXPECT_EQ(session().practice().patients().value().size(), 1U) << "what is whole stays readable";
}

TEST_F(Misuse, Mis44AnOldBackUp)
{
    ASSERT_TRUE(session().saveNow().ok());
    const std::string file = practice();
    const std::string backup = inFolder("nine.raphe-backup").toStdString();
    ASSERT_TRUE(backUp(file, backup).ok());
    emergency();
    ASSERT_TRUE(session().saveNow().ok());
    session().close();
    const auto gap = gapOf(backup, file);
    ASSERT_TRUE(gap.ok()) << inWords(gap.error());
    EXPECT_EQ(gap.value().visits, 1) << "the locked one";
    {
        RestoreDialog dialog(file, &window());
        dialog.show();
        dialog.look(QString::fromStdString(backup));
        ASSERT_TRUE(QTest::qWaitFor([&] { return !dialog.isWorking(); }, 30000));
        EXPECT_TRUE(says(dialog, QStringLiteral("1 new or changed visit"))) << "before anything is replaced";
        EXPECT_TRUE(says(dialog, QStringLiteral("An emergency among them is not known to the restored file")));
        EXPECT_FALSE(QFileInfo::exists(QString::fromStdString(keptBeside(file))));
    }
    {
        RestoreDialog unreadable(inFolder("none.raphe").toStdString(), &window());
        unreadable.show();
        unreadable.look(QString::fromStdString(backup));
        ASSERT_TRUE(QTest::qWaitFor([&] { return !unreadable.isWorking(); }, 30000));
        EXPECT_TRUE(says(unreadable, QStringLiteral("cannot be checked")));
    }
    const QString elsewhere = inFolder("elsewhere.raphe");
    ASSERT_TRUE(backUp(file, elsewhere.toStdString()).ok());
    const Ran restored = run({QStringLiteral("restore"), QStringLiteral("--from"), QString::fromStdString(backup),
        QStringLiteral("--practice"), elsewhere});
    ASSERT_EQ(restored.status, 0) << restored.err.toStdString();
    EXPECT_TRUE(restored.out.contains(QStringLiteral("\"visits\": 1"))) << restored.out.toStdString();
    EXPECT_TRUE(QFileInfo::exists(elsewhere + QStringLiteral(".before-restore"))) << "the newer file is there";
    // Whoever opens it afterwards is told, until the newer file is put away.
    auto old = Practice::open(elsewhere.toStdString(), session().practice().keys());
    ASSERT_TRUE(old.ok());
    ASSERT_TRUE(old.value()->noteRestored(gap.value().endsAt).ok());
    EXPECT_EQ(old.value()->accesses().value().back().kind, EntryKind::Restored) << "in the history for good";
    VisitSession restoredSession(learned(), std::move(old).value());
    MainWindow opened(restoredSession);
    opened.remindOfRestore();
    EXPECT_TRUE(opened.statusBar()->currentMessage().contains(QStringLiteral("Restored from a back-up")));
    EXPECT_TRUE(opened.statusBar()->currentMessage().contains(QStringLiteral("elsewhere.raphe.before-restore")));
}

TEST_F(Misuse, Mis47TheDiskIsFullAtSigning)
{
    hurtsAt("gluteal-region-middle", Side::Right);
    finds("gluteus-maximus", Side::Right);
    ASSERT_TRUE(session().saveNow().ok());
    const Visit before = session().visit();
    {
        const FullDisk full;
        const auto signing = session().sign("");
        EXPECT_FALSE(signing.ok());
        EXPECT_EQ(session().state(), VisitState::Draft) << "nothing is signed";
        EXPECT_TRUE(errorText(signing.error()).contains(QStringLiteral("the last saved state is kept")))
            << errorText(signing.error()).toStdString();
        EXPECT_EQ(session().visit(), before) << "all entries stay in the window";
    }
    ASSERT_TRUE(session().sign("").ok()) << "room was made";
    EXPECT_EQ(session().practice().history(session().visitId()).value().size(), 1U) << "signed once";
    ASSERT_TRUE(session().practice().verify().ok()) << "no half signature";
    // The stick is pulled out: what is not there cannot be opened, and back it is whole.
    const QString file = QString::fromStdString(practice());
    session().close();
    ASSERT_TRUE(QFile::copy(file, inFolder("stick.raphe")));
    EXPECT_FALSE(Practice::signInNames(inFolder("gone.raphe").toStdString()).ok());
}

TEST_F(Misuse, Mis49EntriesThatNoRuleRecognises)
{
    changeRecord([](PatientRecord &record) {
        record.allergies = {"uczulenie na lateks"};
        record.medicines = {"w\u0430rfarin"}; // U+0430 is a letter of another script
        record.conditions = {};
        record.mark = "\u9aa8\u7c97\u9b06\u75c7";
    });
    const auto unknown = unwatched(adviser().rules().feeds(), session().record());
    EXPECT_EQ(unknown.size() + session().reminders().size() >= 2, true);
    EXPECT_NE(std::find(unknown.begin(), unknown.end(), "w\u0430rfarin"), unknown.end());
    EXPECT_TRUE(bannerWords().contains(QStringLiteral("Not recognised, so that no rule watches it: 'w\u0430rfarin'")))
        << bannerWords().toStdString();
    EXPECT_EQ(session().record().mark, "\u9aa8\u7c97\u9b06\u75c7") << "kept as typed";
    // Standing conditions are chosen from the list: there is no free text that could pass as one.
    EXPECT_EQ(session().record().medicines.front(), "w\u0430rfarin");
}

} // namespace raphe::test
