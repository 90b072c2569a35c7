// The settings of a practice, and its users.
#include "tests/app/PracticeDialogs.h"

#include "app/raphe/practice/NewRecoveryKeyDialog.h"
#include "app/raphe/practice/OwnTechniqueDialog.h"
#include "app/raphe/practice/PassphraseEdit.h"
#include "app/raphe/practice/SettingsDialog.h"
#include "app/raphe/practice/UserDialogs.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QSpinBox>
#include <QTabWidget>

namespace raphe::test {

namespace {

class SettingsOfPractice : public PracticeDialogTest {
protected:
    void SetUp() override
    {
        PracticeDialogTest::SetUp();
        m_practice = made();
        ASSERT_TRUE(m_practice);
    }

    [[nodiscard]] Practice &practice() { return *m_practice; }
    [[nodiscard]] PracticeSettings stored() { return Practice::open(file(), m_practice->keys()).value()->settings().value(); }
    static void showTab(SettingsDialog &dialog, int tab) { dialog.findChild<QTabWidget *>()->setCurrentIndex(tab); }
    static void fill(const QWidget &in, const char *name, const char *text)
    {
        auto *field = named<QLineEdit>(in, name);
        field->setFocus();
        field->selectAll();
        type(text);
    }
    /// A dialog that the settings have opened.
    template <class Dialog> static Dialog &opened(SettingsDialog &settings, const char *with)
    {
        press(settings, with);
        auto *dialog = settings.findChild<Dialog *>();
        if (!dialog)
            throw std::runtime_error(std::string("nothing opened with ") + with);
        open(*dialog);
        return *dialog;
    }
    void addBo() { ASSERT_TRUE(practice().addAccount({"bo", "Bo Stone", "second of them", leastCost}).ok()); }

private:
    std::unique_ptr<Practice> m_practice;
};

constexpr int backups = 1;
constexpr int records = 2;
constexpr int users = 3;
constexpr int treatment = 4;
constexpr int advice = 5;
constexpr int addressees = 6;

const Techniques &programTechniques()
{
    static const Techniques read = readEmbeddedTechniques(safetyRules()).value();
    return read;
}

} // namespace

TEST_F(SettingsOfPractice, AreShownAndSavedWhole)
{
    PracticeSettings before;
    before.name = "Brook and Brook";
    before.letterhead = "4 Mill Lane\nLower Harrow";
    before.language = "sv"; // not offered
    before.isMetric = false;
    before.lockMinutes = 7; // not offered
    before.backupFolder = "/no/such/drive"; // unplugged
    before.jurisdiction = "here";
    before.retentionYears = 10;
    before.isRecoveryOnPaper = true;
    before.treatment.reserved = ReservedTimes{30, 90, 60, 0};
    before.treatment.techniques = {{"own-1", "gliding", "forearm glide", 150, "slowly", "At pain.", true}};
    before.advice = {{"own-2", "Hum", "Hum a tune.\nStop when you cough."}};
    before.addressees = {{"Dr Asta Nord", "general practice", {"4 Mill Lane", "Lower Harrow"}}, {{}, "emergency department", {}}};
    ASSERT_TRUE(practice().saveSettings(before).ok());
    {
        SettingsDialog dialog(practice(), nullptr, leastCost);
        open(dialog);
        press(dialog, "Save");
        EXPECT_EQ(dialog.result(), QDialog::Accepted) << notice(dialog).toStdString();
    }
    EXPECT_EQ(stored(), before) << "nothing is lost by looking";

    SettingsDialog dialog(practice(), nullptr, leastCost);
    open(dialog);
    fill(dialog, "Name of the practice", " Brook & Daughter ");
    named<QPlainTextEdit>(dialog, "Letterhead")->setPlainText(QStringLiteral("5 Mill Lane\n"));
    auto *language = named<QComboBox>(dialog, "Language for patients");
    language->setCurrentIndex(language->findData(QStringLiteral("de")));
    named<QComboBox>(dialog, "Units")->setCurrentIndex(0);
    auto *lock = named<QComboBox>(dialog, "Lock when left alone");
    lock->setCurrentIndex(lock->findData(0));
    showTab(dialog, backups);
    fill(dialog, "Folder for back-ups", folder().c_str());
    showTab(dialog, records);
    fill(dialog, "Law that you go by", "elsewhere");
    named<QSpinBox>(dialog, "Kept after the last visit")->setFocus();
    key(Qt::Key_Up);
    key(Qt::Key_Return);
    EXPECT_EQ(dialog.result(), QDialog::Accepted) << notice(dialog).toStdString();
    PracticeSettings after = before;
    after.name = "Brook & Daughter";
    after.letterhead = "5 Mill Lane";
    after.language = "de";
    after.isMetric = true;
    after.lockMinutes = 0;
    after.backupFolder = folder();
    after.jurisdiction = "elsewhere";
    after.retentionYears = 11;
    EXPECT_EQ(stored(), after);
}

TEST_F(SettingsOfPractice, TheTimesOfATreatmentAreSetInMinutes)
{
    SettingsDialog dialog(practice(), nullptr, leastCost, {}, programTechniques());
    open(dialog);
    showTab(dialog, treatment);
    EXPECT_EQ(named<QDoubleSpinBox>(dialog, "Undressing")->value(), 2.0);
    named<QDoubleSpinBox>(dialog, "Undressing")->setValue(0.5);
    press(dialog, "Save");
    const ReservedTimes usual = programTechniques().times.reserved;
    EXPECT_EQ(stored().treatment.reserved, (ReservedTimes{usual.greeting, 30, usual.retest, usual.rising}));
}

TEST_F(SettingsOfPractice, ATechniqueOfOnesOwnIsAddedChangedAndRemoved)
{
    SettingsDialog dialog(practice(), nullptr, leastCost, {}, programTechniques());
    open(dialog);
    showTab(dialog, treatment);
    auto &adding = opened<OwnTechniqueDialog>(dialog, "Add ...");
    press(adding, "Keep");
    EXPECT_TRUE(adding.isVisible()) << "it has no name yet";
    EXPECT_NE(notice(adding), QString());
    fill(adding, "Name", "forearm glide");
    named<QSpinBox>(adding, "How long")->setValue(150);
    press(adding, "Keep");
    auto *list = named<QListWidget>(dialog, "Techniques of your own");
    ASSERT_EQ(list->count(), 1);
    EXPECT_TRUE(list->item(0)->text().startsWith(QStringLiteral("forearm glide, 2 min 30 s, like ")));
    press(dialog, "Save");
    const Technique &first = programTechniques().all.front();
    const OwnTechnique expected{"own-1", first.id, "forearm glide", 150, first.dose.how, first.caution, false};
    EXPECT_EQ(stored().treatment.techniques, std::vector{expected});

    SettingsDialog again(practice(), nullptr, leastCost, {}, programTechniques());
    open(again);
    showTab(again, treatment);
    auto &changing = opened<OwnTechniqueDialog>(again, "Change ...");
    changing.findChild<QCheckBox *>()->setChecked(true);
    press(changing, "Keep");
    press(again, "Save");
    EXPECT_TRUE(stored().treatment.techniques.front().isPreferred);

    SettingsDialog last(practice(), nullptr, leastCost, {}, programTechniques());
    open(last);
    showTab(last, treatment);
    press(last, "Remove");
    press(last, "Save");
    EXPECT_EQ(stored().treatment, TreatmentSettings{});
}

TEST_F(SettingsOfPractice, AdviceInOwnWordsIsWrittenAndTakenOut)
{
    {
        SettingsDialog dialog(practice(), nullptr, leastCost);
        open(dialog);
        showTab(dialog, advice);
        named<QPlainTextEdit>(dialog, "What to do, and when to stop 1")->setPlainText(QStringLiteral("Hum a tune."));
        press(dialog, "Save");
        EXPECT_TRUE(dialog.isVisible()) << "it has no title yet";
        EXPECT_NE(notice(dialog), QString());
        fill(dialog, "Title 1", "Hum");
        press(dialog, "Save");
        EXPECT_EQ(stored().advice, (std::vector<OwnAdvice>{{"own-1", "Hum", "Hum a tune."}}));
    }
    SettingsDialog dialog(practice(), nullptr, leastCost);
    open(dialog);
    showTab(dialog, advice);
    named<QPushButton>(dialog, "Remove advice 1")->click();
    press(dialog, "Save");
    EXPECT_TRUE(stored().advice.empty());
}

TEST_F(SettingsOfPractice, AddresseesOfLettersAreChangedAndTakenOut)
{
    {
        SettingsDialog dialog(practice(), nullptr, leastCost);
        open(dialog);
        showTab(dialog, addressees);
        named<QPlainTextEdit>(dialog, "Place and address 1")->setPlainText(QStringLiteral("4 Mill Lane\n\nLower Harrow"));
        press(dialog, "Save");
        EXPECT_TRUE(dialog.isVisible()) << "nobody is named yet";
        EXPECT_NE(notice(dialog), QString());
        fill(dialog, "Name 1", "Dr Asta Nord");
        fill(dialog, "Name 2", "Dr Asta Nord");
        named<QPlainTextEdit>(dialog, "Place and address 2")->setPlainText(QStringLiteral("4 Mill Lane\nLower Harrow"));
        press(dialog, "Save");
        EXPECT_EQ(dialog.result(), QDialog::Accepted) << notice(dialog).toStdString();
        EXPECT_EQ(stored().addressees, (std::vector<Addressee>{{"Dr Asta Nord", {}, {"4 Mill Lane", "Lower Harrow"}}}))
            << "the same one is kept once";
    }
    SettingsDialog dialog(practice(), nullptr, leastCost);
    open(dialog);
    showTab(dialog, addressees);
    fill(dialog, "Role 1", std::string(Addressee::longestLine + 1, 'x').c_str());
    press(dialog, "Save");
    EXPECT_TRUE(dialog.isVisible()) << "too long for the window of an envelope, and for the reader";
    named<QPushButton>(dialog, "Remove addressee 1")->click();
    press(dialog, "Save");
    EXPECT_TRUE(stored().addressees.empty());
}

TEST_F(SettingsOfPractice, EscChangesNothing)
{
    const PracticeSettings before = stored();
    SettingsDialog dialog(practice(), nullptr, leastCost);
    open(dialog);
    fill(dialog, "Name of the practice", "Another");
    key(Qt::Key_Escape);
    EXPECT_EQ(dialog.result(), QDialog::Rejected);
    EXPECT_FALSE(dialog.isVisible());
    EXPECT_EQ(stored(), before);
}

TEST_F(SettingsOfPractice, WhatCannotBeIsNamedOnItsTab)
{
    const PracticeSettings before = stored();
    SettingsDialog dialog(practice(), nullptr, leastCost);
    open(dialog);
    showTab(dialog, backups);
    fill(dialog, "Folder for back-ups", "/no/such/folder");
    showTab(dialog, users);
    press(dialog, "Save");
    EXPECT_TRUE(dialog.isVisible());
    EXPECT_EQ(dialog.findChild<QTabWidget *>()->currentIndex(), backups);
    EXPECT_TRUE(noticeSays(dialog, "/no/such/folder")) << notice(dialog).toStdString();
    EXPECT_EQ(QApplication::focusWidget()->accessibleName(), QStringLiteral("Folder for back-ups"));
    named<QLineEdit>(dialog, "Folder for back-ups")->clear();
    named<QLineEdit>(dialog, "Name of the practice")->setText(QStringLiteral("  "));
    press(dialog, "Save");
    EXPECT_EQ(dialog.findChild<QTabWidget *>()->currentIndex(), 0);
    EXPECT_TRUE(noticeSays(dialog, "name"));
    EXPECT_EQ(stored(), before);
}

TEST_F(SettingsOfPractice, AnAddedUserCanUnlock)
{
    SettingsDialog dialog(practice(), nullptr, leastCost);
    open(dialog);
    showTab(dialog, users);
    auto &add = opened<AddUserDialog>(dialog, "Add ...");
    type("Bo Stone");
    EXPECT_EQ(add.signIn(), QStringLiteral("bo"));
    fill(add, "Sign-in name", "ada");
    fill(add, "Their passphrase", "second of them");
    key(Qt::Key_Return);
    EXPECT_TRUE(noticeSays(add, "once more")) << notice(add).toStdString();
    fill(add, "The same once more", "second of them");
    key(Qt::Key_Return);
    await(add);
    EXPECT_TRUE(noticeSays(add, "'ada' already")) << notice(add).toStdString();
    EXPECT_TRUE(opensWith("ada", "right words here"));
    type("bo"); // where the name is chosen anew
    key(Qt::Key_Return);
    awaitEnd(&add);
    EXPECT_TRUE(opensWith("bo", "second of them"));
    EXPECT_EQ(named<QListWidget>(dialog, "Users")->count(), 2);
    EXPECT_EQ(practice().accounts().value().back().name, "Bo Stone");
}

TEST_F(SettingsOfPractice, EachUserHasTheirOwnScope)
{
    const std::vector<TechniqueGroup> groups{{"hands", "by hand", {}}, {"thrust", "thrust", {}}};
    SettingsDialog dialog(practice(), nullptr, leastCost, groups);
    open(dialog);
    showTab(dialog, users);
    auto &add = opened<AddUserDialog>(dialog, "Add ...");
    type("Bo Stone");
    fill(add, "Their passphrase", "second of them");
    fill(add, "The same once more", "second of them");
    for (const char *name : {"By hand", "Thrust"})
        named<QCheckBox>(add, name)->setChecked(false);
    press(add, "Add");
    EXPECT_TRUE(noticeSays(add, "at least one")) << notice(add).toStdString();
    named<QCheckBox>(add, "Thrust")->setChecked(true);
    press(add, "Add");
    awaitEnd(&add);
    const auto scopes = [&] {
        const auto cards = practice().accounts().value();
        return std::pair(cards[0].scope, cards[1].scope);
    };
    EXPECT_EQ(scopes(), std::pair(std::vector<std::string>{}, std::vector<std::string>{"thrust"}));

    auto *list = named<QListWidget>(dialog, "Users");
    list->setCurrentRow(0);
    auto &mine = opened<UserScopeDialog>(dialog, "Techniques ...");
    named<QCheckBox>(mine, "Thrust")->setChecked(false);
    press(mine, "Save");
    awaitEnd(&mine);
    list->setCurrentRow(1);
    auto &theirs = opened<UserScopeDialog>(dialog, "Techniques ...");
    EXPECT_FALSE(named<QCheckBox>(theirs, "By hand")->isChecked()) << "theirs, not mine";
    named<QCheckBox>(theirs, "By hand")->setChecked(true);
    press(theirs, "Save");
    awaitEnd(&theirs);
    EXPECT_EQ(scopes(), std::pair(std::vector<std::string>{"hands"}, std::vector<std::string>{}));
}

TEST_F(SettingsOfPractice, ANewRecoveryKeyIsSetOnlyOnceItIsOnPaper)
{
    SettingsDialog dialog(practice(), nullptr, leastCost);
    open(dialog);
    const auto recovers = [&](const QString &paper) {
        const QString copy = QString::fromStdString(folder() + "/copy.raphe");
        QFile::remove(copy);
        EXPECT_TRUE(practice().saveSettings(stored()).ok());
        const Database db(file());
        db.run("VACUUM INTO ?", {copy.toStdString()});
        return Practice::recover(
            copy.toStdString(), RecoveryKey::parse(paper.toStdString()).value(), {"ada", "Ada", "once more in", leastCost})
            .ok();
    };
    showTab(dialog, users);
    auto &first = opened<NewRecoveryKeyDialog>(dialog, "New recovery key ...");
    const QString shown = shownKey(first);
    press(first, "It is on paper");
    press(first, "Set it");
    EXPECT_TRUE(noticeSays(first, "from your paper")) << notice(first).toStdString();
    key(Qt::Key_Escape);
    awaitEnd(&first);
    EXPECT_FALSE(stored().isRecoveryOnPaper);
    EXPECT_FALSE(recovers(shown)) << "nothing was changed";

    auto &again = opened<NewRecoveryKeyDialog>(dialog, "New recovery key ...");
    const QString paper = shownKey(again);
    EXPECT_NE(paper, shown);
    press(again, "It is on paper");
    for (const int number : asked(again))
        fill(again, ("Group " + std::to_string(number)).c_str(),
            paper.section(QLatin1Char('-'), number - 1, number - 1).toLatin1().constData());
    press(again, "Set it");
    awaitEnd(&again);
    EXPECT_TRUE(stored().isRecoveryOnPaper);
    EXPECT_TRUE(recovers(paper));
    EXPECT_FALSE(recovers(shown));
    named<QLineEdit>(dialog, "Name of the practice")->setText(QStringLiteral("Afterwards"));
    press(dialog, "Save");
    EXPECT_TRUE(stored().isRecoveryOnPaper) << "saving the settings does not put the old ones back";
}

TEST_F(SettingsOfPractice, ARemovedUserCannotUnlockAndTheOthersGoOn)
{
    addBo();
    PatientRecord record;
    record.name = "Ada Quill";
    const auto patient = practice().addPatient(record).value();
    const auto oldKeys = practice().keys();
    SettingsDialog dialog(practice(), nullptr, leastCost);
    std::shared_ptr<const Keyring> told;
    QObject::connect(&dialog, &SettingsDialog::keysChanged, [&](const std::shared_ptr<const Keyring> &keys) { told = keys; });
    open(dialog);
    showTab(dialog, users);
    auto *list = named<QListWidget>(dialog, "Users");
    EXPECT_FALSE(button(dialog, "Remove ...")->isEnabled()) << "nobody removes themselves";
    list->setFocus();
    key(Qt::Key_Down);

    // The first time with a change of mind.
    auto &first = opened<RemoveUserDialog>(dialog, "Remove ...");
    EXPECT_EQ(QApplication::focusWidget(), button(first, "Cancel")) << "not by a slip";
    key(Qt::Key_Return);
    awaitEnd(&first);
    EXPECT_TRUE(opensWith("bo", "second of them"));
    EXPECT_FALSE(told);
    auto &remove = opened<RemoveUserDialog>(dialog, "Remove ...");
    press(remove, "Remove");
    awaitEnd(&remove);
    EXPECT_FALSE(opensWith("bo", "second of them"));
    EXPECT_TRUE(opensWith("ada", "right words here"));
    ASSERT_TRUE(told);
    EXPECT_NE(told, oldKeys);
    EXPECT_EQ(practice().keys(), told);
    EXPECT_EQ(practice().patient(patient).value().name, "Ada Quill") << "the open practice goes on";
    EXPECT_FALSE(Practice::open(file(), oldKeys).ok());
    EXPECT_TRUE(Practice::open(file(), told).ok());
    ASSERT_EQ(list->count(), 2);
    EXPECT_TRUE(list->item(1)->text().contains(QStringLiteral("removed")));
    list->setCurrentRow(1);
    EXPECT_FALSE(button(dialog, "Remove ...")->isEnabled()) << "once is enough";

    named<QLineEdit>(dialog, "Name of the practice")->setText(QStringLiteral("After the removal"));
    press(dialog, "Save");
    EXPECT_EQ(stored().name, "After the removal");
}

TEST_F(SettingsOfPractice, AUserWhoCannotBeRemovedStaysAndItIsSaid)
{
    addBo();
    SettingsDialog dialog(practice(), nullptr, leastCost);
    open(dialog);
    showTab(dialog, users);
    named<QListWidget>(dialog, "Users")->setCurrentRow(1);
    auto &remove = opened<RemoveUserDialog>(dialog, "Remove ...");
    ASSERT_TRUE(practice().removeAccount(2).ok()); // somebody else was faster; the dialog's keys are old ones now
    press(remove, "Remove");
    await(remove);
    EXPECT_TRUE(remove.isVisible());
    EXPECT_NE(notice(remove), QString());
    EXPECT_FALSE(remove.keys());
}

TEST_F(SettingsOfPractice, TheOwnPassphraseIsChanged)
{
    SettingsDialog dialog(practice(), nullptr, leastCost);
    open(dialog);
    showTab(dialog, users);
    auto &change = opened<ChangePassphraseDialog>(dialog, "Change your passphrase ...");
    key(Qt::Key_Return);
    EXPECT_TRUE(noticeSays(change, "present passphrase"));
    type("not the right one");
    fill(change, "New passphrase", "quite another");
    fill(change, "The same once more", "quite another");
    key(Qt::Key_Return);
    await(change);
    EXPECT_TRUE(noticeSays(change, "not your present passphrase")) << notice(change).toStdString();
    EXPECT_TRUE(opensWith("ada", "right words here"));
    type("right words here"); // over what was wrong
    key(Qt::Key_Return);
    awaitEnd(&change);
    EXPECT_FALSE(opensWith("ada", "right words here"));
    EXPECT_TRUE(opensWith("ada", "quite another"));
    EXPECT_TRUE(practice().settings().ok()) << "the open practice goes on";
}

TEST_F(SettingsOfPractice, EscInASmallDialogLeavesTheSettingsOpen)
{
    SettingsDialog dialog(practice(), nullptr, leastCost);
    open(dialog);
    showTab(dialog, users);
    auto &add = opened<AddUserDialog>(dialog, "Add ...");
    type("Bo Stone");
    key(Qt::Key_Escape);
    awaitEnd(&add);
    EXPECT_TRUE(dialog.isVisible());
    EXPECT_EQ(practice().accounts().value().size(), 1U);
}

TEST_F(SettingsOfPractice, KeysReachEverythingOnEveryTab)
{
    addBo();
    SettingsDialog dialog(practice(), nullptr, leastCost, {{"hands", "By hand", {}}, {"thrust", "Thrust", {}}});
    open(dialog);
    for (int tab = 0; tab <= users; ++tab) {
        showTab(dialog, tab);
        dialog.findChild<QTabWidget *>()->setFocus();
        key(Qt::Key_Tab);
        expectKeyboardReachesAll(dialog, "tab " + std::to_string(tab));
        expectFitsSmallScreen(dialog, "tab " + std::to_string(tab));
    }
    auto &add = opened<AddUserDialog>(dialog, "Add ...");
    expectKeyboardReachesAll(add, "adding");
    add.reject();
    awaitEnd(&add);
    auto &change = opened<ChangePassphraseDialog>(dialog, "Change your passphrase ...");
    expectKeyboardReachesAll(change, "changing");
    change.reject();
    awaitEnd(&change);
    named<QListWidget>(dialog, "Users")->setCurrentRow(1);
    expectKeyboardReachesAll(opened<RemoveUserDialog>(dialog, "Remove ..."), "removing");
}

} // namespace raphe::test
