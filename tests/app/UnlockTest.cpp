// Unlocking a practice file, and getting back in with the recovery key.
#include "tests/app/PracticeDialogs.h"

#include "app/raphe/practice/PassphraseEdit.h"
#include "app/raphe/practice/RecoverDialog.h"
#include "app/raphe/practice/UnlockDialog.h"
#include "core/store/Database.h"

#include <QComboBox>
#include <QLineEdit>
#include <QSignalSpy>

#include <fstream>

namespace raphe::test {

namespace {

class Unlock : public PracticeDialogTest {
protected:
    void open(UnlockDialog &dialog)
    {
        PracticeDialogTest::open(dialog);
        m_counts.clear();
        QObject::connect(&dialog, &UnlockDialog::failuresChanged, [this](int failures) { m_counts.push_back(failures); });
    }
    /// Types the passphrase over what is there, and Enter.
    void attempt(UnlockDialog &dialog, const char *passphrase)
    {
        auto *field = dialog.findChild<PassphraseLine *>();
        field->setFocus();
        field->selectAll();
        type(passphrase);
        key(Qt::Key_Return);
        await(dialog);
    }
    [[nodiscard]] const std::vector<int> &counts() const { return m_counts; }

    static RecoverDialog &recovering(UnlockDialog &dialog)
    {
        press(dialog, "I have lost the passphrase");
        auto *recover = dialog.findChild<RecoverDialog *>();
        if (!recover)
            throw std::runtime_error("no dialog for the recovery key");
        PracticeDialogTest::open(*recover);
        return *recover;
    }
    static void typePassphrases(RecoverDialog &dialog, const char *passphrase)
    {
        const auto fields = dialog.findChildren<PassphraseLine *>();
        ASSERT_EQ(fields.size(), 2);
        for (PassphraseLine *field : fields) {
            field->setFocus();
            type(passphrase);
        }
    }

private:
    std::vector<int> m_counts;
};

void spoil(const std::string &file)
{
    std::ofstream out(file, std::ios::binary | std::ios::trunc);
    out << std::string(5000, 'x');
}

} // namespace

TEST_F(Unlock, TheRightPassphraseByKeysAloneOpensTheFile)
{
    static_cast<void>(made());
    UnlockDialog dialog(file(), QStringLiteral("ada"), 0, nullptr, leastCost);
    open(dialog);
    EXPECT_EQ(notice(dialog), QString());
    type("right words here");
    key(Qt::Key_Return);
    await(dialog);
    EXPECT_EQ(dialog.result(), QDialog::Accepted);
    EXPECT_FALSE(dialog.isVisible());
    ASSERT_TRUE(dialog.keys());
    EXPECT_EQ(dialog.signIn(), QStringLiteral("ada"));
    EXPECT_TRUE(Practice::open(file(), dialog.keys()).ok());
    EXPECT_EQ(counts(), (std::vector<int>{1, 0}));
    EXPECT_EQ(dialog.findChild<PassphraseLine *>()->text(), QString()) << "nothing typed is left";
}

TEST_F(Unlock, TheSignInNameComesFirstWhenItIsNotKnown)
{
    static_cast<void>(made());
    UnlockDialog dialog(file(), {}, 0, nullptr, leastCost);
    open(dialog);
    key(Qt::Key_Return);
    EXPECT_TRUE(noticeSays(dialog, "sign-in name"));
    EXPECT_TRUE(counts().empty()) << "nothing was tried";
    type(" ada ");
    key(Qt::Key_Return);
    EXPECT_TRUE(noticeSays(dialog, "passphrase"));
    type("right words here");
    key(Qt::Key_Return);
    await(dialog);
    EXPECT_EQ(dialog.result(), QDialog::Accepted);
    EXPECT_EQ(dialog.signIn(), QStringLiteral("ada"));
}

TEST_F(Unlock, TwoSlipsAreFreeTheThirdWaitsAndThenItStillOpens)
{
    static_cast<void>(made());
    UnlockDialog dialog(file(), QStringLiteral("ada"), 0, nullptr, leastCost);
    open(dialog);
    QPushButton *unlock = button(dialog, "Unlock");
    ASSERT_TRUE(unlock);
    for (int i = 0; i < 2; ++i) {
        attempt(dialog, "something else");
        EXPECT_TRUE(noticeSays(dialog, "do not belong together"));
        EXPECT_TRUE(unlock->isEnabled());
    }
    attempt(dialog, "something else");
    EXPECT_FALSE(unlock->isEnabled());
    EXPECT_TRUE(noticeSays(dialog, "in 1 s")) << notice(dialog).toStdString();
    const auto before = counts();
    EXPECT_EQ(before, (std::vector<int>{1, 2, 3}));
    attempt(dialog, "right words here");
    EXPECT_TRUE(dialog.isVisible());
    EXPECT_EQ(counts(), before) << "Enter does not go round the wait";
    ASSERT_TRUE(QTest::qWaitFor([&] { return unlock->isEnabled(); }, 10000));
    EXPECT_FALSE(noticeSays(dialog, " s."));
    key(Qt::Key_Return); // what was typed meanwhile is still there
    await(dialog);
    EXPECT_EQ(dialog.result(), QDialog::Accepted);
    EXPECT_EQ(counts().back(), 0);
}

TEST_F(Unlock, TriesBeforeARestartCount)
{
    static_cast<void>(made());
    UnlockDialog dialog(file(), QStringLiteral("ada"), 9, nullptr, leastCost);
    open(dialog);
    EXPECT_FALSE(button(dialog, "Unlock")->isEnabled());
    EXPECT_TRUE(noticeSays(dialog, "30 s")) << notice(dialog).toStdString();
    type("typing goes on meanwhile");
    EXPECT_FALSE(dialog.findChild<PassphraseLine *>()->text().isEmpty());
}

TEST_F(Unlock, ATryCountsBeforeItsOutcomeIsKnown)
{
    static_cast<void>(made());
    UnlockDialog dialog(file(), QStringLiteral("ada"), 1, nullptr, leastCost);
    open(dialog);
    type("something else");
    key(Qt::Key_Return);
    EXPECT_TRUE(dialog.isWorking());
    EXPECT_EQ(counts(), (std::vector<int>{2})) << "ending the program now does not undo it";
    key(Qt::Key_Escape);
    EXPECT_TRUE(dialog.isVisible()) << "while it works";
    await(dialog);
    EXPECT_EQ(counts(), (std::vector<int>{2}));
}

TEST_F(Unlock, AFileThatIsNoneSaysWhatToDoAndIsNobodysMistake)
{
    spoil(file());
    UnlockDialog dialog(file(), QStringLiteral("ada"), 2, nullptr, leastCost);
    open(dialog);
    EXPECT_FALSE(button(dialog, "Restore a back-up ..."));
    attempt(dialog, "right words here");
    EXPECT_TRUE(noticeSays(dialog, "Restore a back-up")) << notice(dialog).toStdString();
    EXPECT_EQ(counts(), (std::vector<int>{3, 2}));
    EXPECT_TRUE(button(dialog, "Unlock")->isEnabled());
    QSignalSpy wanted(&dialog, &UnlockDialog::restoreWanted);
    press(dialog, "Restore a back-up ...");
    EXPECT_EQ(wanted.count(), 1);

    std::filesystem::remove(file());
    static_cast<void>(made()); // a good one is in its place
    dialog.tellRestored();
    EXPECT_FALSE(button(dialog, "Restore a back-up ..."));
    attempt(dialog, "right words here");
    EXPECT_EQ(dialog.result(), QDialog::Accepted);
}

TEST_F(Unlock, AFileThatWasTamperedWithOffersABackupToo)
{
    static_cast<void>(made());
    Database(file()).run("UPDATE entry SET made_at = made_at + 1");
    UnlockDialog dialog(file(), QStringLiteral("ada"), 0, nullptr, leastCost);
    open(dialog);
    attempt(dialog, "right words here");
    EXPECT_TRUE(dialog.isVisible());
    EXPECT_FALSE(dialog.keys());
    EXPECT_TRUE(noticeSays(dialog, "not as it was written")) << notice(dialog).toStdString();
    EXPECT_TRUE(button(dialog, "Restore a back-up ..."));
}

TEST_F(Unlock, AFileOfALaterProgramAsksForThatProgram)
{
    static_cast<void>(made());
    Database(file()).run("PRAGMA user_version = 99");
    UnlockDialog dialog(file(), QStringLiteral("ada"), 0, nullptr, leastCost);
    open(dialog);
    attempt(dialog, "right words here");
    EXPECT_TRUE(noticeSays(dialog, "update the program")) << notice(dialog).toStdString();
    EXPECT_FALSE(button(dialog, "Restore a back-up ...")) << "nothing is wrong with the file";
}

TEST_F(Unlock, APassphraseIsHiddenUnlessItIsToBeSeen)
{
    static_cast<void>(made());
    UnlockDialog dialog(file(), QStringLiteral("ada"), 0, nullptr, leastCost);
    open(dialog);
    auto *field = dialog.findChild<PassphraseLine *>();
    type("secret");
    EXPECT_EQ(field->echoMode(), QLineEdit::Password);
    EXPECT_FALSE(field->displayText().contains(QStringLiteral("secret")));
    press(dialog, "Show");
    EXPECT_EQ(field->displayText(), QStringLiteral("secret"));
    press(dialog, "Show");
    EXPECT_FALSE(field->displayText().contains(QStringLiteral("secret")));
}

TEST_F(Unlock, BothFormsOfAnAccentAreTheSamePassphrase)
{
    NewAccount account = owner();
    account.passphrase = "caf\u00e9 au lait"; // one character
    ASSERT_TRUE(Practice::make(file(), {}, account).ok());
    UnlockDialog dialog(file(), QStringLiteral("ada"), 0, nullptr, leastCost);
    open(dialog);
    dialog.findChild<PassphraseLine *>()->setText(QString::fromUtf8("cafe\u0301 au lait")); // letter and accent
    key(Qt::Key_Return);
    await(dialog);
    EXPECT_EQ(dialog.result(), QDialog::Accepted);
}

TEST_F(Unlock, WipingOverwritesTheBufferOfTheField)
{
    QLineEdit field;
    field.setText(QString::fromUtf8("secret words"));
    const QString held = field.text(); // shares the field's buffer
    wipe(field);
    EXPECT_EQ(field.text(), QString());
    EXPECT_EQ(held, QString(held.size(), QChar(u'\0')));
    field.setText(QStringLiteral("a literal")); // lies in memory that cannot be written to
    wipe(field);
    EXPECT_EQ(field.text(), QString());
    std::string text = "secret";
    wipe(text);
    EXPECT_TRUE(text.empty());
}

TEST_F(Unlock, EscLeavesWithoutKeys)
{
    static_cast<void>(made());
    UnlockDialog dialog(file(), QStringLiteral("ada"), 0, nullptr, leastCost);
    open(dialog);
    type("right words here");
    key(Qt::Key_Escape);
    EXPECT_FALSE(dialog.isVisible());
    EXPECT_EQ(dialog.result(), QDialog::Rejected);
    EXPECT_FALSE(dialog.keys());
    EXPECT_EQ(dialog.findChild<PassphraseLine *>()->text(), QString());
}

TEST_F(Unlock, TheRecoveryKeyFromPaperSetsANewPassphrase)
{
    const auto practice = made();
    ASSERT_TRUE(practice->addAccount({"bo", "Bo Stone", "second of them", leastCost}).ok());
    UnlockDialog dialog(file(), QStringLiteral("ada"), 5, nullptr, leastCost);
    open(dialog);
    RecoverDialog &recover = recovering(dialog);
    const auto *who = recover.findChild<QComboBox *>();
    EXPECT_EQ(who->count(), 2);
    EXPECT_EQ(who->currentText(), QStringLiteral("ada")) << "as in the window before";
    QString typed = QString::fromStdString(recovery()).toLower();
    type(typed.remove(QLatin1Char('-'))); // each full group leads on to the next field
    typePassphrases(recover, "a new beginning");
    key(Qt::Key_Return);
    await(recover);
    EXPECT_TRUE(dialog.isVisible()) << "what changed is said first";
    ASSERT_TRUE(button(recover, "Go on")) << notice(recover).toStdString();
    bool saysSo = false;
    for (const auto *label : recover.findChildren<QLabel *>())
        saysSo = saysSo || (label->isVisible() && label->text().contains(QStringLiteral("new signing key")));
    EXPECT_TRUE(saysSo);
    key(Qt::Key_Escape); // there is no way back, so this goes on too
    EXPECT_EQ(dialog.result(), QDialog::Accepted);
    EXPECT_FALSE(dialog.isVisible());
    ASSERT_TRUE(dialog.keys());
    EXPECT_EQ(counts().back(), 0);
    auto opened = Practice::open(file(), dialog.keys());
    ASSERT_TRUE(opened.ok()) << inWords(opened.error());
    const auto accounts = opened.value()->accounts().value();
    EXPECT_EQ(accounts.back().signIn, "ada");
    EXPECT_EQ(accounts.back().name, "Ada Brook") << "their name stays";
    EXPECT_FALSE(opensWith("ada", "right words here"));
    EXPECT_TRUE(opensWith("ada", "a new beginning"));
    EXPECT_TRUE(opensWith("bo", "second of them"));
}

TEST_F(Unlock, AMistypedGroupIsNamedAndNothingChanges)
{
    static_cast<void>(made());
    UnlockDialog dialog(file(), QStringLiteral("ada"), 0, nullptr, leastCost);
    open(dialog);
    RecoverDialog &recover = recovering(dialog);
    std::string wrong = recovery();
    const std::size_t at = 6 * 4 + 2; // in the fifth group
    wrong[at] = wrong[at] == 'X' ? 'Y' : 'X';
    key(Qt::Key_Return);
    EXPECT_TRUE(noticeSays(recover, "group 1")) << "nothing is typed yet";
    auto *first = qobject_cast<QLineEdit *>(QApplication::focusWidget());
    ASSERT_TRUE(first);
    first->insert(QString::fromStdString(wrong)); // as pasting does
    Q_EMIT first->textEdited(first->text());
    EXPECT_EQ(first->text(), QString::fromStdString(wrong.substr(0, 5)));
    typePassphrases(recover, "a new beginning");
    key(Qt::Key_Return);
    EXPECT_TRUE(noticeSays(recover, "Group 5")) << notice(recover).toStdString();
    EXPECT_EQ(QApplication::focusWidget()->accessibleName(), QStringLiteral("Group 5"));
    key(Qt::Key_Escape);
    EXPECT_TRUE(dialog.isVisible());
    EXPECT_FALSE(dialog.keys());
    EXPECT_TRUE(opensWith("ada", "right words here"));
}

TEST_F(Unlock, TheKeyOfAnotherPracticeIsRefused)
{
    static_cast<void>(made());
    UnlockDialog dialog(file(), QStringLiteral("ada"), 0, nullptr, leastCost);
    open(dialog);
    RecoverDialog &recover = recovering(dialog);
    QString typed = QString::fromStdString(RecoveryKey::random().text());
    type(typed.remove(QLatin1Char('-')));
    key(Qt::Key_Return);
    EXPECT_TRUE(noticeSays(recover, "new passphrase")) << "none is typed yet";
    typePassphrases(recover, "a new beginning");
    key(Qt::Key_Return);
    await(recover);
    EXPECT_TRUE(noticeSays(recover, "not that of this practice")) << notice(recover).toStdString();
    EXPECT_FALSE(recover.keys());
    EXPECT_TRUE(opensWith("ada", "right words here"));
}

TEST_F(Unlock, KeysReachEverything)
{
    static_cast<void>(made());
    UnlockDialog dialog(file(), QStringLiteral("ada"), 0, nullptr, leastCost);
    open(dialog);
    expectKeyboardReachesAll(dialog, "unlocking");
    expectFitsSmallScreen(dialog, "unlocking");
    RecoverDialog &recover = recovering(dialog);
    expectKeyboardReachesAll(recover, "recovering");
    expectFitsSmallScreen(recover, "recovering");
}

} // namespace raphe::test
