// Misuse of the record and its file: medicines, days, doubles, other programs, a full disk.
#include "tests/app/Misuse.h"

#include "app/raphe/patients/PatientsDialog.h"
#include "app/raphe/patients/PersonWords.h"
#include "app/raphe/record/PatientEditor.h"
#include "app/raphe/record/PregnancyEdit.h"
#include "app/words/ErrorText.h"
#include "core/record/PatientSearch.h"

#include <QAction>
#include <QFile>
#include <QListView>
#include <QMenu>
#include <QMessageBox>
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

// The window dates a visit by the clock; a day that is too early can only come from a clock that is wrong, or a file.
TEST_F(Misuse, Mis23AFollowUpBeforeTheFirstVisit)
{
    Visit first = session().visit();
    first.date = "2031-02-20";
    first.complaintAt = {{{"posterior-cervical-region"}, Side::Left}};
    first.warnings = {{"past-cancer", true, first.date, {}, Decision::Referred, "told", "the doctor"}};
    ASSERT_TRUE(session().practice().saveVisit(session().visitId(), writeVisit(first)).ok());
    Visit early = first;
    early.date = "2030-02-21";
    early.warnings.clear();
    early.sinceLast = SinceLast{Course::Better, Reaction::Sore, "for a day", {{"walk", Kept::Done}}};
    const auto id = session().practice().addVisit(session().patientId(), writeVisit(early));
    ASSERT_TRUE(id.ok());
    ASSERT_TRUE(session().open(id.value()).ok());
    beginIntake();
    EXPECT_FALSE(session().lastVisit()) << "nothing lies before it, so that nothing is compared";
    EXPECT_FALSE(intakeSays("Since the visit of"));
    EXPECT_EQ(stored().sinceLast, early.sinceLast) << "what was told is kept";
    EXPECT_TRUE(isDue("past-cancer")) << "an answer of a later day is none of today";
    EXPECT_TRUE(session().isLate()) << "signing asks why it is entered so late";
}

TEST_F(Misuse, Mis25APregnancyThatWentOn)
{
    changeRecord([&](PatientRecord &record) {
        record.born = "1974-05-06";
        record.pregnancy = Pregnancy{30, dayFrom(today(), -84)};
        record.conditions = {{"pregnancy", ""}};
        record.surgery = {{"right hip replaced", 1951}};
    });
    const auto reminders = session().reminders();
    const auto because = [&](const std::string &words) {
        return std::any_of(reminders.begin(), reminders.end(), [&](const Reminder &r) { return r.because == words; });
    };
    EXPECT_TRUE(because("42")) << "counted on: 30 + 12";
    EXPECT_FALSE(because("30"));
    EXPECT_TRUE(because("right hip replaced")) << "counts although its year is odd";
    const QDate day = QDate::fromString(QString::fromStdString(today()), Qt::ISODate);
    EXPECT_TRUE(weekTodayWords(*session().record().pregnancy, day).contains(QStringLiteral("week 42 today. Is the child born?")));
    EXPECT_TRUE(weekTodayWords({42, dayFrom(today(), -7)}, day).contains(QStringLiteral("past week 42")));
    PatientEditor editor(session().record(), adviser().rules());
    editor.show();
    EXPECT_TRUE(std::any_of(editor.findChildren<QLabel *>().begin(), editor.findChildren<QLabel *>().end(), [](const QLabel *l) {
        return l->text()
            == QStringLiteral("An operation of 1951 lies before the birth in 1974. It is kept and counts; correct the year.");
    }));
    // One stroke confirms what was told of the complaint, and neither of these; long after, pregnancy still holds.
    session().confirmComplaints();
    EXPECT_EQ(session().reminders().size(), reminders.size());
    changeRecord([&](PatientRecord &record) { record.pregnancy->date = dayFrom(today(), -200); });
    const auto next = session().startVisit(session().patientId());
    ASSERT_TRUE(next.ok());
    ASSERT_TRUE(session().open(next.value()).ok());
    const auto &conditions = session().visit().conditions;
    EXPECT_TRUE(std::any_of(conditions.begin(), conditions.end(), [](const Condition &c) { return c.id == "pregnancy"; }));
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

// A file is taken in as a draft of its own, never over a visit; the practice file itself can be changed with other programs.
TEST_F(Misuse, Mis33TheFileIsChangedByHand)
{
    emergency();
    ASSERT_TRUE(session().saveNow().ok());
    const auto visit = session().visitId();
    Visit edited = session().visit();
    edited.warnings.front() = {"chest-pain-now", false, edited.date, {}, {}, {}, {}};
    const auto taken = session().practice().addVisit(session().patientId(), writeVisit(edited)); // as import does
    ASSERT_TRUE(taken.ok());
    ASSERT_TRUE(session().open(taken.value()).ok());
    expectNothingOffered("the edited copy of the visit");
    EXPECT_EQ(answered("chest-pain-now")->why, "crushing on effort");
    ASSERT_TRUE(session().open(visit).ok());
    expectNothingOffered("the visit itself");
    const std::string copy = inFolder("copy.raphe").toStdString();
    const Ran saved = run({QStringLiteral("backup"), QStringLiteral("--practice"), QString::fromStdString(practice()),
        QStringLiteral("--out"), QString::fromStdString(copy)});
    ASSERT_EQ(saved.status, 0) << saved.err.toStdString();
    QFile file(QString::fromStdString(copy));
    ASSERT_TRUE(file.open(QIODevice::ReadWrite));
    QByteArray bytes = file.readAll();
    int refused = 0, opened = 0;
    for (qsizetype at = bytes.size() - 3; at > 4096; at -= 701) {
        QByteArray changed = bytes;
        changed[at] = static_cast<char>(changed[at] ^ 1);
        file.seek(0);
        file.write(changed);
        file.flush();
        auto practiceFile = Practice::open(copy, session().practice().keys());
        if (!practiceFile || !practiceFile.value()->verify()) {
            ++refused;
            continue;
        }
        // Nothing that counts was there: the answer is as it was.
        ++opened;
        const auto row = practiceFile.value()->visit(visit);
        ASSERT_TRUE(row.ok());
        const auto read = readVisit(row.value().document, "copy", *knowledge().atlas);
        ASSERT_TRUE(read.ok());
        EXPECT_TRUE(read.value().warnings.front().isThere);
    }
    EXPECT_GT(refused, 10) << "of " << refused + opened;
    const Error tampered{ErrorCode::Tampered, "visits", "row"};
    EXPECT_TRUE(errorText(tampered).contains(QStringLiteral("keep this file as it is, work from a back-up")));
}

// Of the verbs that the attempt names, the program has reason (what to treat), map and letter.
TEST_F(Misuse, Mis38TheProgramWithoutAWindow)
{
    hurtsAt("gluteal-region-middle", Side::Right);
    finds("gluteus-maximus", Side::Right);
    emergency();
    const QString locked = written(session().visit());
    const Ran reason = run({QStringLiteral("reason"), QStringLiteral("--visit"), locked});
    ASSERT_EQ(reason.status, 0) << reason.err.toStdString();
    const auto out = nlohmann::json::parse(reason.out.toStdString());
    EXPECT_TRUE(out.at("treat").empty());
    EXPECT_TRUE(out.at("check").empty());
    EXPECT_EQ(out.at("cautions").at(0).at("rule"), "chest-pain-now") << "locked, and by which sign";
    EXPECT_EQ(out.at("cautions").at(0).at("verdict"), "stop");
    for (const char *verb : {"map", "letter"}) {
        const Ran ran =
            run({QString::fromUtf8(verb), QStringLiteral("--visit"), locked, QStringLiteral("--out"), inFolder("out.pdf")});
        ASSERT_EQ(ran.status, 0) << verb << ran.err.toStdString();
        QProcess text;
        text.start(QStringLiteral("pdftotext"), {inFolder("out.pdf"), QStringLiteral("-")});
        ASSERT_TRUE(text.waitForFinished());
        EXPECT_TRUE(QString::fromUtf8(text.readAllStandardOutput()).contains(QStringLiteral("hest pain"))) << verb;
    }
    Visit bare = session().visit();
    bare.warnings.clear();
    const Ran bareRan = run({QStringLiteral("reason"), QStringLiteral("--visit"), written(bare, "bare.json")});
    ASSERT_EQ(bareRan.status, 0) << bareRan.err.toStdString();
    const auto toAsk = nlohmann::json::parse(bareRan.out.toStdString()).at("warnings_to_ask");
    EXPECT_NE(std::find(toAsk.begin(), toAsk.end(), "chest-pain-now"), toAsk.end()) << "not asked in this file";
    EXPECT_GT(toAsk.size(), 20U);
    expectNothingOffered("the visit itself"); // no verb writes into it
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
