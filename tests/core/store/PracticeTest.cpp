// The sealed practice file as its users meet it: made, unlocked, filled, signed, amended, moved, merged, erased; and nobody else.
#include "tests/core/store/PracticeTesting.h"

#include <fstream>
#include <iterator>

namespace raphe::test {

namespace {

using PracticeFile = PracticeFileTest;

} // namespace

TEST_F(PracticeFile, IsReadBackAsItWasWritten)
{
    auto practice = made();
    const auto id = practice->addPatient(person("Ada Quill", "1980-02-03"));
    ASSERT_TRUE(id.ok()) << inWords(id.error());
    const auto visit = practice->addVisit(id.value(), "{\"first\":1}");
    ASSERT_TRUE(visit.ok()) << inWords(visit.error());
    ASSERT_TRUE(practice->saveVisit(visit.value(), "{\"second\":2}").ok());
    practice.reset();

    practice = unlocked();
    ASSERT_TRUE(practice);
    const auto cards = practice->patients();
    ASSERT_TRUE(cards.ok()) << inWords(cards.error());
    ASSERT_EQ(cards.value().size(), 1U);
    EXPECT_EQ(cards.value()[0].name, "Ada Quill");
    EXPECT_EQ(cards.value()[0].born, "1980-02-03");
    const auto visits = practice->visits(id.value());
    ASSERT_TRUE(visits.ok());
    ASSERT_EQ(visits.value().size(), 1U);
    EXPECT_EQ(visits.value()[0].document, "{\"second\":2}");
    EXPECT_EQ(visits.value()[0].state, VisitState::Draft);
    EXPECT_EQ(practice->settings().value(), settings());
    const auto verified = practice->verify();
    EXPECT_TRUE(verified.ok()) << inWords(verified.error());
}

TEST_F(PracticeFile, OpensWithTheRightPassphraseOnly)
{
    static_cast<void>(made());
    for (const auto &[signIn, passphrase] : {std::pair{"ada", "not the right one"}, {"bob", "right words here"}, {"ada", ""}}) {
        const auto practice = Practice::unlock(file(), signIn, std::string_view(passphrase));
        ASSERT_FALSE(practice.ok()) << signIn << ", " << passphrase;
        EXPECT_EQ(practice.error().code, ErrorCode::WrongPassphrase);
    }
    EXPECT_TRUE(unlocked());
}

TEST_F(PracticeFile, IsNotMadeOverAnotherAndNotWithAShortPassphrase)
{
    static_cast<void>(made());
    EXPECT_EQ(Practice::make(file(), settings(), owner()).error().code, ErrorCode::CannotWrite);
    NewAccount hasty = owner();
    hasty.passphrase = "short";
    EXPECT_EQ(Practice::make(file() + "2", settings(), hasty).error().code, ErrorCode::NotAllowed);
    EXPECT_FALSE(std::filesystem::exists(file() + "2")) << "nothing half-made is left";
}

TEST_F(PracticeFile, ASignedVisitChangesByAmendmentOnly)
{
    auto practice = made();
    const auto patient = practice->addPatient(person("Ada Quill", "")).value();
    const auto visit = practice->addVisit(patient, "one").value();
    ASSERT_TRUE(practice->sign(visit, "2026-11-20T10:00").ok());
    EXPECT_EQ(practice->saveVisit(visit, "two").error().code, ErrorCode::NotAllowed);
    EXPECT_EQ(practice->sign(visit).error().code, ErrorCode::NotAllowed) << "twice";
    EXPECT_EQ(practice->signAmendment(visit, "why").error().code, ErrorCode::NotAllowed) << "none begun";

    ASSERT_TRUE(practice->beginAmendment(visit).ok());
    ASSERT_TRUE(practice->saveVisit(visit, "two").ok());
    ASSERT_TRUE(practice->dropAmendment(visit).ok());
    EXPECT_EQ(practice->visit(visit).value().document, "one");

    ASSERT_TRUE(practice->beginAmendment(visit).ok());
    ASSERT_TRUE(practice->saveVisit(visit, "three").ok());
    EXPECT_EQ(practice->signAmendment(visit, "").error().code, ErrorCode::MissingField) << "a reason";
    ASSERT_TRUE(practice->signAmendment(visit, "wrong side", "2026-11-20T10:00").ok());
    ASSERT_TRUE(practice->markInError(visit, "another patient").ok());
    EXPECT_EQ(practice->beginAmendment(visit).error().code, ErrorCode::NotAllowed);

    const auto history = practice->history(visit);
    ASSERT_TRUE(history.ok()) << inWords(history.error());
    ASSERT_EQ(history.value().size(), 3U);
    EXPECT_EQ(history.value()[0].kind, EntryKind::Signed);
    EXPECT_EQ(history.value()[0].document, "one");
    EXPECT_EQ(history.value()[0].careAt, "2026-11-20T10:00");
    EXPECT_EQ(history.value()[0].author, "Ada Brook");
    EXPECT_EQ(history.value()[1].kind, EntryKind::Amended);
    EXPECT_EQ(history.value()[1].reason, "wrong side");
    EXPECT_EQ(history.value()[1].document, "three");
    EXPECT_EQ(history.value()[2].kind, EntryKind::InError);
    EXPECT_TRUE(practice->verify().ok());
}

TEST_F(PracticeFile, ALateEntrySaysWhy)
{
    auto practice = made();
    const auto visit = practice->addVisit(practice->addPatient(person("Ada Quill", "")).value(), "one").value();
    ASSERT_TRUE(practice->sign(visit, "2026-11-01T09:00", "power was out").ok());
    const auto history = practice->history(visit).value();
    EXPECT_EQ(history.front().kind, EntryKind::Late);
    EXPECT_EQ(history.front().reason, "power was out");
}

TEST_F(PracticeFile, ADraftMovesToTheRightPatient)
{
    auto practice = made();
    const auto wrong = practice->addPatient(person("Ada Quill", "")).value();
    const auto right = practice->addPatient(person("Ada Quilt", "")).value();
    const auto visit = practice->addVisit(wrong, "one").value();
    ASSERT_TRUE(practice->move(visit, right, "chosen by mistake").ok());
    EXPECT_TRUE(practice->visits(wrong).value().empty());
    ASSERT_EQ(practice->visits(right).value().size(), 1U);
    EXPECT_EQ(practice->visits(right).value()[0].document, "one");
    EXPECT_EQ(practice->history(visit).value().front().reason, "chosen by mistake");
    ASSERT_TRUE(practice->sign(visit).ok());
    EXPECT_EQ(practice->move(visit, wrong, "back").error().code, ErrorCode::NotAllowed) << "signed";
    EXPECT_TRUE(practice->verify().ok());
}

TEST_F(PracticeFile, MergedRecordsKeepEverythingAndAreErasedTogether)
{
    auto practice = made();
    const auto keep = practice->addPatient(person("Ada Quill", "1980-02-03")).value();
    const auto twin = practice->addPatient(person("Quill Ada", "1980-02-03")).value();
    const auto other = practice->addPatient(person("Bo Stone", "")).value();
    const auto first = practice->addVisit(keep, "one").value();
    const auto second = practice->addVisit(twin, "two").value();
    ASSERT_TRUE(practice->sign(second).ok());
    ASSERT_TRUE(practice->noteOpened(twin).ok());
    ASSERT_TRUE(practice->merge(keep, twin).ok());
    EXPECT_EQ(practice->accesses(keep).value().size(), 3U) << "the twin was signed and opened, then joined";
    EXPECT_EQ(practice->merge(twin, keep).error().code, ErrorCode::NotAllowed) << "a ring";
    EXPECT_EQ(practice->patients().value().size(), 2U);
    EXPECT_EQ(practice->patient(keep).value().otherNames, std::vector<std::string>{"Quill Ada"});
    ASSERT_EQ(practice->visits(keep).value().size(), 2U);
    EXPECT_EQ(practice->history(second).value().front().document, "two");
    ASSERT_TRUE(practice->verify().ok());

    const auto erased = practice->erase(keep, "asked for it");
    ASSERT_TRUE(erased.ok()) << inWords(erased.error());
    EXPECT_EQ(practice->patients().value().size(), 1U);
    EXPECT_FALSE(practice->visit(first).ok());
    EXPECT_FALSE(practice->visit(second).ok());
    EXPECT_EQ(practice->history(second).value().front().document, "") << "the act stays, its words do not";
    const auto verified = practice->verify();
    EXPECT_TRUE(verified.ok()) << inWords(verified.error());
    const auto next = practice->addPatient(person("Cy Reed", ""));
    EXPECT_GT(next.value(), other) << "the numbers of erased patients are not used again";
}

TEST_F(PracticeFile, LogsWhoOpenedWhichRecord)
{
    auto practice = made();
    const auto patient = practice->addPatient(person("Ada Quill", "")).value();
    ASSERT_TRUE(practice->noteOpened(patient).ok());
    const auto accesses = practice->accesses(patient).value();
    ASSERT_EQ(accesses.size(), 1U);
    EXPECT_EQ(accesses[0].kind, EntryKind::Opened);
    EXPECT_EQ(accesses[0].account, "Ada Brook");
    EXPECT_EQ(practice->noteOpened(99).error().code, ErrorCode::UnknownId);
}

TEST_F(PracticeFile, UsersComeAndGoAndOnlyTheirOwnPassphraseOpens)
{
    auto practice = made();
    const auto patient = practice->addPatient(person("Ada Quill", "")).value();
    const auto visit = practice->addVisit(patient, "one").value();
    const auto bo = practice->addAccount({"bo", "Bo Stone", "second of them", cheap});
    ASSERT_TRUE(bo.ok()) << inWords(bo.error());
    EXPECT_EQ(practice->addAccount({"bo", "Another", "third of them", cheap}).error().code, ErrorCode::Duplicate);

    auto theirs = Practice::unlock(file(), "bo", std::string_view("second of them"));
    ASSERT_TRUE(theirs.ok()) << inWords(theirs.error());
    ASSERT_TRUE(theirs.value()->sign(visit).ok());
    EXPECT_EQ(theirs.value()->history(visit).value().front().author, "Bo Stone");
    EXPECT_EQ(theirs.value()->removeAccount(bo.value()).error().code, ErrorCode::NotAllowed) << "oneself";
    ASSERT_TRUE(
        theirs.value()->changePassphrase(std::string_view("second of them"), std::string_view("quite another"), cheap).ok());
    EXPECT_FALSE(Practice::unlock(file(), "bo", std::string_view("second of them")).ok());
    ASSERT_TRUE(Practice::unlock(file(), "bo", std::string_view("quite another")).ok());
    const auto oldKeys = theirs.value()->keys();
    theirs.value().reset();

    const auto removed = practice->removeAccount(bo.value());
    ASSERT_TRUE(removed.ok()) << inWords(removed.error());
    EXPECT_FALSE(Practice::unlock(file(), "bo", std::string_view("quite another")).ok());
    EXPECT_EQ(Practice::open(file(), oldKeys).error().code, ErrorCode::Tampered) << "their keys open nothing any more";
    EXPECT_EQ(practice->history(visit).value().front().author, "Bo Stone") << "what they signed stays theirs";
    ASSERT_TRUE(practice->saveSettings(settings()).ok());
    practice.reset();
    practice = unlocked();
    ASSERT_TRUE(practice);
    EXPECT_EQ(practice->visit(visit).value().document, "one");
    EXPECT_TRUE(practice->addAccount({"bo", "Bo the second", "third of them", cheap}).ok()) << "the name is free again";
    const auto verified = practice->verify();
    EXPECT_TRUE(verified.ok()) << inWords(verified.error());
}

TEST_F(PracticeFile, TheRecoveryKeyLetsItsOwnerSetANewPassphrase)
{
    auto practice = made();
    const auto patient = practice->addPatient(person("Ada Quill", "")).value();
    const auto visit = practice->addVisit(patient, "one").value();
    ASSERT_TRUE(practice->sign(visit).ok());
    ASSERT_TRUE(practice->addAccount({"bo", "Bo Stone", "second of them", cheap}).ok());
    ASSERT_TRUE(practice->removeAccount(2).ok()); // a new file key must not leave the recovery key behind
    practice.reset();
    const auto typed = RecoveryKey::parse(recovery());
    ASSERT_TRUE(typed.ok());
    EXPECT_EQ(Practice::recover(file(), RecoveryKey::random(), owner()).error().code, ErrorCode::WrongPassphrase);
    NewAccount again = owner();
    again.passphrase = "a new beginning";
    auto recovered = Practice::recover(file(), typed.value(), again);
    ASSERT_TRUE(recovered.ok()) << inWords(recovered.error());
    EXPECT_EQ(recovered.value()->visit(visit).value().document, "one");
    recovered.value().reset();
    EXPECT_FALSE(unlocked()) << "the old passphrase is gone";
    auto anew = Practice::unlock(file(), "ada", std::string_view("a new beginning"));
    ASSERT_TRUE(anew.ok()) << inWords(anew.error());
    const auto verified = anew.value()->verify();
    EXPECT_TRUE(verified.ok()) << inWords(verified.error());
}

TEST_F(PracticeFile, ANewRecoveryKeyTakesThePlaceOfTheOld)
{
    auto practice = made();
    const auto old = RecoveryKey::parse(recovery()).value();
    const RecoveryKey next = RecoveryKey::random();
    EXPECT_FALSE(practice->settings().value().isRecoveryOnPaper);
    const auto changed = practice->changeRecoveryKey(next);
    ASSERT_TRUE(changed.ok()) << inWords(changed.error());
    EXPECT_TRUE(practice->settings().value().isRecoveryOnPaper);
    EXPECT_EQ(practice->accesses().value().back().kind, EntryKind::RecoveryKeyChanged);
    ASSERT_TRUE(practice->addAccount({"bo", "Bo Stone", "second of them", cheap}).ok());
    ASSERT_TRUE(practice->removeAccount(2).ok()); // the new file key is boxed for the new recovery key
    practice.reset();
    NewAccount again = owner();
    again.passphrase = "a new beginning";
    EXPECT_EQ(Practice::recover(file(), old, again).error().code, ErrorCode::WrongPassphrase);
    const auto recovered = Practice::recover(file(), next, again);
    ASSERT_TRUE(recovered.ok()) << inWords(recovered.error());
    const auto verified = recovered.value()->verify();
    EXPECT_TRUE(verified.ok()) << inWords(verified.error());
}

TEST_F(PracticeFile, TheScopeIsOfEachUserAndStaysThroughNewKeys)
{
    auto practice = made();
    const std::vector<std::string> thrust{"joint-thrust"};
    ASSERT_TRUE(practice->addAccount({"bo", "Bo Stone", "second of them", cheap, thrust}).ok());
    ASSERT_TRUE(practice->addAccount({"cy", "Cy Marsh", "third of them", cheap}).ok());
    EXPECT_EQ(practice->accounts().value()[1].scope, thrust);
    const auto saved = practice->saveScope(1, {"soft-tissue-by-hand"});
    ASSERT_TRUE(saved.ok()) << inWords(saved.error());
    EXPECT_EQ(practice->saveScope(9, {}).error().code, ErrorCode::UnknownId);
    ASSERT_TRUE(practice->removeAccount(3).ok());
    EXPECT_EQ(practice->saveScope(3, {}).error().code, ErrorCode::UnknownId) << "removed";
    practice.reset();
    const auto typed = RecoveryKey::parse(recovery()).value();
    practice = std::move(Practice::recover(file(), typed, owner())).value();
    ASSERT_TRUE(practice);
    const auto users = practice->accounts().value();
    ASSERT_EQ(users.size(), 4U);
    EXPECT_EQ(users[1].scope, thrust);
    EXPECT_EQ(users[3].name, "Ada Brook");
    EXPECT_EQ(users[3].scope, std::vector<std::string>{"soft-tissue-by-hand"}) << "what was set for the same person";
    EXPECT_TRUE(practice->verify().ok());
}

TEST_F(PracticeFile, HoldsNoReadableWord)
{
    auto practice = made();
    const auto patient = practice->addPatient(person("Zyxwvut Quillfeather", "1980-02-03")).value();
    const auto visit = practice->addVisit(patient, "{\"complaint\":\"Sesquipedalian ache\"}").value();
    ASSERT_TRUE(practice->sign(visit).ok());
    for (const char *end : {"", "-wal", "-shm"}) {
        std::ifstream in(file() + end, std::ios::binary);
        ASSERT_TRUE(in) << end;
        const std::string bytes{std::istreambuf_iterator<char>(in), {}};
        for (const std::string word :
            {"Zyxwvut", "Quillfeather", "1980-02-03", "Sesquipedalian", "Ada Brook", "Brook and Brook"}) {
            EXPECT_EQ(bytes.find(word), std::string::npos) << word << " in " << file() << end;
            std::string wide;
            for (const char c : word)
                wide += {c, '\0'};
            EXPECT_EQ(bytes.find(wide), std::string::npos) << word << " as UTF-16 in " << file() << end;
        }
    }
}

} // namespace raphe::test
