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
