// The first run: a practice is made or sealed, and its recovery key is on paper.
#include "tests/app/PracticeDialogs.h"

#include "app/raphe/practice/ChoiceFields.h"
#include "app/raphe/practice/PassphraseEdit.h"
#include "app/raphe/practice/SetUpDialog.h"
#include "core/store/Layout.h"
#include "core/store/PlainPractice.h"
#include "tests/app/PdfPage.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFileInfo>
#include <QPainter>
#include <QPdfWriter>
#include <QPlainTextEdit>
#include <QScreen>

namespace raphe::test {

namespace {

class SetUpPractice : public PracticeDialogTest {
protected:
    /// By keys alone, from the first field on.
    static void typeNames()
    {
        type("Brook and Brook");
        key(Qt::Key_Tab);
        type("4 Mill Lane");
        key(Qt::Key_Tab);
        type("Ada Brook");
        key(Qt::Key_Tab);
        key(Qt::Key_Tab);
        type("right words here");
        key(Qt::Key_Tab);
        type("right words here");
        key(Qt::Key_Return);
    }
    void makeByKeys(SetUpDialog &dialog)
    {
        open(dialog);
        typeNames();
        key(Qt::Key_Return);
        await(dialog);
        ASSERT_TRUE(dialog.keys()) << notice(dialog).toStdString();
    }
    [[nodiscard]] bool isKeyOnPaper(const SetUpDialog &dialog) const
    {
        return Practice::open(file(), dialog.keys()).value()->settings().value().isRecoveryOnPaper;
    }
    [[nodiscard]] bool isThere() const { return std::filesystem::exists(file()); }
    // As the first versions wrote it.
    void makePlain() const
    {
        const Database db(file());
        db.run("CREATE TABLE patient (id INTEGER PRIMARY KEY, name TEXT NOT NULL, born TEXT NOT NULL)");
        db.run("CREATE TABLE visit (id INTEGER PRIMARY KEY, patient INTEGER NOT NULL REFERENCES patient (id),"
               " held_on TEXT NOT NULL, document TEXT NOT NULL)");
        db.run("INSERT INTO patient VALUES (1, 'Ada Quill', '1980-02-03')");
        db.run("PRAGMA application_id = " + std::to_string(practiceApplicationId));
        db.run("PRAGMA user_version = 1");
    }
};

} // namespace

TEST_F(SetUpPractice, ByKeysAloneMakesAFileThatOpensWithWhatWasTyped)
{
    SetUpDialog dialog(file(), nullptr, leastCost);
    makeByKeys(dialog);
    const QString paper = shownKey(dialog);
    key(Qt::Key_Tab); // from 'Print ...'
    key(Qt::Key_Tab); // and 'Save as text ...'
    while (QApplication::focusWidget() != button(dialog, "It is on paper"))
        key(Qt::Key_Tab);
    key(Qt::Key_Return);
    const std::vector<int> numbers = asked(dialog);
    ASSERT_EQ(numbers.size(), 2U);
    type(paper.section(QLatin1Char('-'), numbers[0] - 1, numbers[0] - 1).toLower());
    key(Qt::Key_Tab);
    type(paper.section(QLatin1Char('-'), numbers[1] - 1, numbers[1] - 1));
    key(Qt::Key_Return);
    await(dialog);
    EXPECT_EQ(dialog.result(), QDialog::Accepted) << notice(dialog).toStdString();
    EXPECT_EQ(dialog.signIn(), QStringLiteral("ada"));
    EXPECT_EQ(shownGroup(dialog, 1), QString()) << "the key is not left in the window";

    auto practice = Practice::unlock(file(), "ada", std::string_view("right words here"));
    ASSERT_TRUE(practice.ok()) << inWords(practice.error());
    const auto settings = practice.value()->settings().value();
    EXPECT_TRUE(settings.isRecoveryOnPaper);
    EXPECT_EQ(settings.name, "Brook and Brook");
    EXPECT_EQ(settings.letterhead, "4 Mill Lane");
    EXPECT_EQ(settings.backupFolder, "");
    EXPECT_EQ(settings.lockMinutes, PracticeSettings().lockMinutes);
    EXPECT_EQ(settings.language, "en");
    EXPECT_TRUE(settings.isMetric);
    EXPECT_EQ(practice.value()->accounts().value().front().name, "Ada Brook");
    EXPECT_TRUE(Practice::open(file(), dialog.keys()).ok());
    practice.value().reset();
    const auto read = RecoveryKey::parse(paper.toStdString());
    ASSERT_TRUE(read.ok()) << inWords(read.error());
    NewAccount again = owner();
    again.passphrase = "a new beginning";
    const auto recovered = Practice::recover(file(), read.value(), again);
    EXPECT_TRUE(recovered.ok()) << "the key that was shown: " << inWords(recovered.error());
}

TEST_F(SetUpPractice, EscBeforeItIsMadeLeavesNoFile)
{
    {
        SetUpDialog dialog(file(), nullptr, leastCost);
        open(dialog);
        type("Brook and Brook");
        key(Qt::Key_Escape);
        EXPECT_FALSE(dialog.isVisible());
        EXPECT_EQ(dialog.result(), QDialog::Rejected);
        EXPECT_FALSE(dialog.keys());
    }
    EXPECT_TRUE(std::filesystem::is_empty(folder()));
    SetUpDialog dialog(file(), nullptr, leastCost);
    open(dialog);
    typeNames();
    ASSERT_TRUE(button(dialog, "Make the practice"));
    key(Qt::Key_Escape);
    EXPECT_FALSE(dialog.isVisible());
    EXPECT_TRUE(std::filesystem::is_empty(folder()));
    for (const auto *field : dialog.findChildren<PassphraseLine *>())
        EXPECT_EQ(field->text(), QString());
}

TEST_F(SetUpPractice, EscWhileItIsMadeWaitsForTheKeyToBeShown)
{
    SetUpDialog dialog(file(), nullptr, leastCost);
    open(dialog);
    typeNames();
    key(Qt::Key_Return);
    ASSERT_TRUE(dialog.isWorking());
    QTest::keyClick(&dialog, Qt::Key_Escape);
    EXPECT_FALSE(dialog.close());
    EXPECT_TRUE(dialog.isVisible());
    await(dialog);
    EXPECT_TRUE(button(dialog, "It is on paper"));
    for (const auto *field : dialog.findChildren<PassphraseLine *>())
        EXPECT_EQ(field->text(), QString()) << "it is not needed any longer";
}

TEST_F(SetUpPractice, WhatIsMissingIsNamedAndTypingGoesOnThere)
{
    SetUpDialog dialog(file(), nullptr, leastCost);
    open(dialog);
    const auto expectAt = [&](const char *words, const char *field) {
        press(dialog, "Next");
        EXPECT_TRUE(noticeSays(dialog, words)) << notice(dialog).toStdString();
        EXPECT_EQ(QApplication::focusWidget()->accessibleName(), QString::fromUtf8(field));
    };
    expectAt("practice", "Name of the practice");
    type("B");
    EXPECT_EQ(notice(dialog), QString()) << "it is being mended";
    expectAt("your name", "Your name");
    type("Zo\u00eb Stone");
    expectAt("At least 8", "Passphrase");
    type("1234567");
    expectAt("One character more", "Passphrase");
    type("8");
    expectAt("once more", "The same once more");
    type("123456789");
    expectAt("differ", "The same once more");
    key(Qt::Key_Backspace);
    auto *signIn = named<QLineEdit>(dialog, "Sign-in name");
    EXPECT_EQ(signIn->text(), QStringLiteral("zoe"));
    signIn->clear();
    expectAt("sign-in name", "Sign-in name");
    type("z");
    press(dialog, "Next");
    EXPECT_TRUE(button(dialog, "Make the practice"));
    press(dialog, "Back");
    EXPECT_EQ(signIn->text(), QStringLiteral("z")) << "what was typed stays";
    EXPECT_TRUE(std::filesystem::is_empty(folder()));
}

TEST_F(SetUpPractice, ASignInNameIsProposedUntilOneIsTyped)
{
    for (const auto &[name, proposed] :
        {std::pair{"Ada Brook", "ada"}, {"  Zo\u00eb", "zoe"}, {"O'Neil Bo", "oneil"}, {"\u674e \u660e", "\u674e"}, {"", ""}})
        EXPECT_EQ(proposedSignIn(QString::fromUtf8(name)), QString::fromUtf8(proposed)) << name;
    SetUpDialog dialog(file(), nullptr, leastCost);
    open(dialog);
    auto *name = named<QLineEdit>(dialog, "Your name");
    auto *signIn = named<QLineEdit>(dialog, "Sign-in name");
    signIn->setFocus();
    type("me");
    name->setFocus();
    type("Ada Brook");
    EXPECT_EQ(signIn->text(), QStringLiteral("me"));
}

TEST_F(SetUpPractice, AFolderForBackupsMustBeThere)
{
    SetUpDialog dialog(file(), nullptr, leastCost);
    open(dialog);
    typeNames();
    type("/no/such/folder");
    key(Qt::Key_Return);
    EXPECT_FALSE(dialog.isWorking());
    EXPECT_TRUE(noticeSays(dialog, "/no/such/folder")) << notice(dialog).toStdString();
    auto *field = qobject_cast<QLineEdit *>(QApplication::focusWidget());
    ASSERT_TRUE(field);
    field->clear();
    type(QString::fromStdString(folder()));
    dialog.findChild<LockBox *>()->findChild<QComboBox *>()->setFocus();
    key(Qt::Key_End); // never
    key(Qt::Key_Return);
    await(dialog);
    ASSERT_TRUE(dialog.keys()) << notice(dialog).toStdString();
    const auto settings = Practice::open(file(), dialog.keys()).value()->settings().value();
    EXPECT_EQ(settings.backupFolder, folder());
    EXPECT_EQ(settings.lockMinutes, 0);
}

TEST_F(SetUpPractice, NeverLockingSaysItsRisk)
{
    LockBox box(0);
    box.show();
    bool saysSo = false;
    for (const auto *label : box.findChildren<QLabel *>())
        saysSo = saysSo || label->text().contains(QStringLiteral("can read every record"));
    EXPECT_TRUE(saysSo);
    LockBox odd(7);
    EXPECT_EQ(odd.minutes(), 7) << "a number that is not offered stays";
}

TEST_F(SetUpPractice, WhatIsTickedIsTheScope)
{
    const std::vector<TechniqueGroup> groups{{"hands", "by hand", {}}, {"thrust", "thrust", {}}};
    ScopeTicks all(QStringLiteral("Scope"), groups, {});
    EXPECT_TRUE(all.scope().empty()) << "not restricted";
    const auto ticks = all.findChildren<QCheckBox *>();
    ASSERT_EQ(ticks.size(), 2);
    ticks[1]->setChecked(false);
    EXPECT_EQ(all.scope(), std::vector<std::string>{"hands"});
    EXPECT_EQ(all.trouble(), QString());
    ticks[0]->setChecked(false);
    EXPECT_NE(all.trouble(), QString()) << "nothing ticked would be stored as everything";
    ScopeTicks later(QStringLiteral("Scope"), groups, {"thrust", "of-a-later-program"});
    EXPECT_EQ(later.scope(), (std::vector<std::string>{"thrust", "of-a-later-program"}));

    SetUpDialog dialog(file(), nullptr, leastCost, groups);
    open(dialog);
    typeNames();
    dialog.findChildren<QCheckBox *>()[0]->setChecked(false);
    press(dialog, "Make the practice");
    await(dialog);
    ASSERT_TRUE(dialog.keys()) << notice(dialog).toStdString();
    EXPECT_EQ(Practice::open(file(), dialog.keys()).value()->accounts().value()[0].scope, std::vector<std::string>{"thrust"});
}

TEST_F(SetUpPractice, AWrongGroupIsNamedAndTheKeyCanBeSeenAgain)
{
    SetUpDialog dialog(file(), nullptr, leastCost);
    makeByKeys(dialog);
    const QString paper = shownKey(dialog);
    std::set<int> seen;
    for (int round = 0; round < 60; ++round) {
        press(dialog, "It is on paper");
        const auto numbers = asked(dialog);
        ASSERT_EQ(numbers.size(), 2U);
        EXPECT_LT(numbers[0], numbers[1]);
        EXPECT_GE(numbers[0], 1);
        EXPECT_LE(numbers[1], 9);
        seen.insert(numbers.begin(), numbers.end());
        press(dialog, "Back");
        EXPECT_EQ(shownKey(dialog), paper);
    }
    EXPECT_EQ(seen.size(), 9U) << "every group is asked for now and then";
    press(dialog, "It is on paper");
    const auto numbers = asked(dialog);
    key(Qt::Key_Return);
    EXPECT_TRUE(noticeSays(dialog, ("group " + std::to_string(numbers[0])).c_str())) << "empty";
    type(shownGroup(dialog, numbers[0]));
    key(Qt::Key_Tab);
    type(shownGroup(dialog, numbers[0]));
    key(Qt::Key_Return);
    EXPECT_TRUE(dialog.isVisible());
    EXPECT_FALSE(isKeyOnPaper(dialog));
    EXPECT_TRUE(noticeSays(dialog, ("Group " + std::to_string(numbers[1])).c_str())) << notice(dialog).toStdString();
    EXPECT_EQ(QApplication::focusWidget()->accessibleName(), QStringLiteral("Group %1").arg(numbers[1]));
}

TEST_F(SetUpPractice, FinishingWithoutProofIsAskedAndTheFileWorks)
{
    SetUpDialog dialog(file(), nullptr, leastCost);
    makeByKeys(dialog);
    const QString paper = shownKey(dialog);
    key(Qt::Key_Escape);
    EXPECT_TRUE(dialog.isVisible());
    EXPECT_EQ(QApplication::focusWidget(), button(dialog, "Back to the key")) << "the safe answer";
    key(Qt::Key_Return);
    EXPECT_TRUE(button(dialog, "It is on paper"));
    EXPECT_EQ(shownKey(dialog), paper);
    press(dialog, "Finish without proof ...");
    key(Qt::Key_Escape);
    EXPECT_TRUE(button(dialog, "It is on paper")) << "Esc does not finish";
    EXPECT_FALSE(dialog.close());
    press(dialog, "Finish without proof");
    EXPECT_EQ(dialog.result(), QDialog::Accepted);
    EXPECT_FALSE(isKeyOnPaper(dialog));
    EXPECT_TRUE(dialog.keys());
    EXPECT_TRUE(opensWith("ada", "right words here"));
}

TEST_F(SetUpPractice, AFileThatIsThereIsNotTouched)
{
    static_cast<void>(made());
    SetUpDialog dialog(file(), nullptr, leastCost);
    open(dialog);
    typeNames();
    key(Qt::Key_Return);
    await(dialog);
    EXPECT_FALSE(dialog.keys());
    EXPECT_TRUE(noticeSays(dialog, "exists already")) << notice(dialog).toStdString();
    press(dialog, "Back");
    EXPECT_EQ(named<QLineEdit>(dialog, "Name of the practice")->text(), QStringLiteral("Brook and Brook"))
        << "what was typed stays";
    EXPECT_FALSE(dialog.findChild<PassphraseLine *>()->text().isEmpty());
    key(Qt::Key_Escape);
    EXPECT_TRUE(opensWith("ada", "right words here"));
}

TEST_F(SetUpPractice, APlainFileIsSealedAndItsEndIsSaid)
{
    makePlain();
    SetUpDialog dialog(file(), nullptr, leastCost);
    open(dialog);
    const auto says = [&](const char *words) {
        for (const auto *label : dialog.findChildren<QLabel *>())
            if (label->isVisible() && label->text().contains(QString::fromUtf8(words)))
                return true;
        return false;
    };
    EXPECT_TRUE(says("the plain file is then removed"));
    typeNames();
    EXPECT_TRUE(isPlainPractice(file()).value()) << "nothing is done yet";
    ASSERT_TRUE(button(dialog, "Seal it"));
    key(Qt::Key_Return);
    await(dialog);
    ASSERT_TRUE(dialog.keys()) << notice(dialog).toStdString();
    EXPECT_TRUE(says("the plain file is removed"));
    EXPECT_FALSE(isPlainPractice(file()).value());
    const auto practice = Practice::unlock(file(), "ada", std::string_view("right words here"));
    ASSERT_TRUE(practice.ok()) << inWords(practice.error());
    EXPECT_EQ(practice.value()->patients().value().front().name, "Ada Quill");
}

TEST_F(SetUpPractice, ThePaperAndTheTextSayTheWholeKeyAndWhatItIsFor)
{
    const RecoverySheet sheet{QStringLiteral("Brook and Brook"), QDate(2026, 11, 27), RecoveryKey::random()};
    const QString pdf = QString::fromStdString(folder() + "/key.pdf");
    {
        QPdfWriter writer(pdf);
        writer.setResolution(72);
        writer.setPageSize(QPageSize(QPageSize::A4));
        writer.setPageMargins({0, 0, 0, 0});
        QPainter painter(&writer);
        paintRecoverySheet(painter, sheet, 595, 842);
    }
    const QString text = QString::fromStdString(folder() + "/key.txt");
    ASSERT_TRUE(saveRecoveryText(sheet, text).ok());
    QFile saved(text);
    ASSERT_TRUE(saved.open(QIODevice::ReadOnly));
    const QString lines = QString::fromUtf8(saved.readAll());
    for (const QString &words : {textOf(pdf), lines.simplified()}) {
        EXPECT_TRUE(words.contains(QStringLiteral("Brook and Brook"))) << words.toStdString();
        EXPECT_TRUE(words.contains(QStringLiteral("27 November 2026")));
        EXPECT_TRUE(words.contains(QStringLiteral("Where to keep it")));
        for (std::size_t number = 1; number <= RecoveryKey::groupCount; ++number)
            EXPECT_TRUE(words.contains(QStringLiteral("%1 %2").arg(number).arg(QString::fromStdString(sheet.key.group(number)))))
                << number << " in " << words.toStdString();
    }
    for (const QString &line : lines.split(QLatin1Char('\n')))
        EXPECT_LE(line.size(), 72) << line.toStdString();
    EXPECT_EQ(QFileInfo(text).permissions() & (QFile::ReadGroup | QFile::ReadOther | QFile::WriteGroup | QFile::WriteOther),
        QFile::Permissions());
    EXPECT_EQ(saveRecoveryText(sheet, QStringLiteral("/no/such/folder/key.txt")).error().code, ErrorCode::CannotWrite);
}

TEST_F(SetUpPractice, KeysReachEverythingOnEveryPage)
{
    SetUpDialog dialog(file(), nullptr, leastCost, {{"hands", "By hand", {}}, {"thrust", "Thrust", {}}});
    open(dialog);
    expectKeyboardReachesAll(dialog, "names");
    expectFitsSmallScreen(dialog, "names");
    typeNames();
    expectKeyboardReachesAll(dialog, "choices");
    expectFitsSmallScreen(dialog, "choices");
    press(dialog, "Make the practice");
    await(dialog);
    expectKeyboardReachesAll(dialog, "the key");
    expectFitsSmallScreen(dialog, "the key");
    press(dialog, "It is on paper");
    expectKeyboardReachesAll(dialog, "the proof");
    press(dialog, "Finish without proof ...");
    expectKeyboardReachesAll(dialog, "without proof");
}

} // namespace raphe::test
