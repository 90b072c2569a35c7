#include "app/raphe/Program.h"

#include "app/raphe/Learned.h"
#include "app/raphe/Lock.h"
#include "app/raphe/help/Help.h"
#include "app/raphe/practice/RestoreDialog.h"
#include "app/raphe/practice/SetUpDialog.h"
#include "app/raphe/practice/UnlockDialog.h"
#include "app/words/ErrorText.h"
#include "core/safety/TechniqueGroups.h"
#include "core/store/PlainPractice.h"
#include "core/store/PracticeInUse.h"

#include <CLI/CLI.hpp>

#include <QApplication>
#include <QDir>
#include <QIcon>
#include <QMessageBox>
#include <QScreen>
#include <QStandardPaths>

#include <fcntl.h>
#include <unistd.h>

#include <filesystem>
#include <future>
#include <iostream>

namespace raphe {

namespace {

struct Given {
    std::string practice;
    // Where a lock left off: by whom, and which visit was open.
    std::int64_t account = 0;
    std::int64_t visit = 0;
};

constexpr int badInput = 2;

int fail(const QString &message)
{
    std::cerr << message.toStdString() << '\n';
    QMessageBox::critical(nullptr, QStringLiteral("Raphe"), message);
    return badInput;
}

std::string usualPractice()
{
    const QDir home(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation));
    home.mkpath(QStringLiteral("."));
    return home.filePath(QStringLiteral("practice.raphe")).toStdString();
}

using LearnedResult = Result<std::shared_ptr<const Learned>>;

Result<Done> eraseAgain(
    const std::string &file, const std::shared_ptr<const Keyring> &keys, const std::vector<std::int64_t> &patients)
{
    if (patients.empty())
        return Done{};
    const auto practice = Practice::open(file, keys);
    if (!practice)
        return practice.error();
    for (const std::int64_t patient : patients)
        if (const auto erased = practice.value()->erase(patient, "erased before the restore"); !erased)
            return erased.error();
    return Done{};
}

Result<Done> noteRestored(const std::string &file, const std::shared_ptr<const Keyring> &keys, std::int64_t endsAt)
{
    const auto practice = Practice::open(file, keys);
    return practice ? practice.value()->noteRestored(endsAt) : Result<Done>(practice.error());
}

// Set-up for a practice that is not there yet or not sealed yet, else unlocking. Nothing when the person left; an error that
// cannot be mended here is shown and ends the program as well.
std::shared_ptr<const Keyring> keysFor(const std::string &practice, const std::shared_future<LearnedResult> &learning)
{
    Help help; // F1, before there is a window
    const bool isThere = std::filesystem::exists(practice) && std::filesystem::file_size(practice) > 0;
    const auto isPlain = isThere ? isPlainPractice(practice) : Result<bool>(false);
    if (!isPlain) {
        fail(errorText(isPlain.error()));
        return {};
    }
    if (!isThere || isPlain.value()) {
        const auto &learned = learning.get();
        if (!learned)
            return {}; // said by who asked for the keys
        SetUpDialog dialog(practice, nullptr, usualCost(), learned.value()->groups);
        if (dialog.exec() != QDialog::Accepted)
            return {};
        Settings().setSignIn(dialog.signIn()); // so that a lock asks for the passphrase only
        return dialog.keys();
    }
    Settings settings;
    std::vector<std::int64_t> erasedSince; // when a back-up was put in its place
    std::optional<std::int64_t> restoredTo; // the time of its newest entry
    UnlockDialog dialog(practice, settings.signIn(), settings.failedUnlocks());
    QObject::connect(&dialog, &UnlockDialog::restoreWanted, [&] {
        RestoreDialog restoring(practice, &dialog);
        if (restoring.exec() != QDialog::Accepted)
            return;
        erasedSince = restoring.erasedSince();
        restoredTo = restoring.endsAt();
        dialog.tellRestored();
    });
    QObject::connect(&dialog, &UnlockDialog::failuresChanged, [&](int failures) { settings.setFailedUnlocks(failures); });
    if (dialog.exec() != QDialog::Accepted)
        return {};
    settings.setSignIn(dialog.signIn());
    if (const auto erased = eraseAgain(practice, dialog.keys(), erasedSince); !erased) {
        fail(errorText(erased.error()));
        return {};
    }
    if (restoredTo)
        if (const auto noted = noteRestored(practice, dialog.keys(), *restoredTo); !noted) {
            fail(errorText(noted.error()));
            return {};
        }
    return dialog.keys();
}

struct Ended {
    int status = 0;
    Given left; // where to go on after a lock
};

// One round, from the locked file to the end of the window; everything that holds words or keys is gone when it returns.
Ended workOn(const Given &given)
{
    const auto held = PracticeInUse::hold(given.practice);
    if (!held)
        return {fail(errorText(held.error())), {}};
    const std::shared_future<LearnedResult> learning = std::async(std::launch::async, learn).share();
    const auto keys = keysFor(given.practice, learning);
    const auto &learned = learning.get();
    if (!learned)
        return {fail(errorText(learned.error())), {}};
    if (!keys)
        return {};
    auto practice = Practice::open(given.practice, keys);
    if (!practice)
        return {fail(errorText(practice.error())), {}};

    VisitSession session(*learned.value(), std::move(practice).value());
    if (const auto scope = session.rereadScope(); !scope)
        return {fail(errorText(scope.error())), {}};
    MainWindow window(session);
    if (const auto own = session.rereadTreatment(); !own)
        session.tell(errorText(own.error()));
    Lock lock(session, window);
    constexpr int titleBar = 40; // pixels that a window may need for its frame, which is not known yet
    if (window.height() + titleBar > window.screen()->availableSize().height())
        window.showMaximized();
    else
        window.show();
    // Who comes back to the visit that was open needs no list; another user must not fall into it.
    if (given.visit != 0 && given.account == keys->account) {
        static_cast<void>(session.open(given.visit));
    } else {
        QMetaObject::invokeMethod(&window.visitPanel(), &VisitPanel::choosePatient, Qt::QueuedConnection);
    }
    window.backups().runIfDue();
    window.remindOfRecoveryKey();
    window.remindOfRestore();
    const int status = QApplication::exec();
    return {status, {given.practice, keys->account, session.visitId()}};
}

// The same program anew. Nothing that is open goes over.
[[noreturn]] void executeAnew(char *program, const Given &given)
{
    std::vector<std::string> arguments{program, "--practice", given.practice};
    if (given.visit != 0)
        arguments.insert(
            arguments.end(), {"--resume-visit", std::to_string(given.visit), "--resume-account", std::to_string(given.account)});
    std::vector<char *> pointers;
    pointers.reserve(arguments.size() + 1);
    for (std::string &argument : arguments)
        pointers.push_back(argument.data());
    pointers.push_back(nullptr);
    for (int descriptor = 3, end = static_cast<int>(sysconf(_SC_OPEN_MAX)); descriptor < std::min(end, 4096); ++descriptor)
        fcntl(descriptor, F_SETFD, FD_CLOEXEC);
    execv("/proc/self/exe", pointers.data());
    std::cerr << "raphe: cannot be started again after locking; start it anew\n";
    _exit(badInput); // locked is locked
}

} // namespace

int runProgram(int argc, char **argv)
{
    CLI::App cli{"Raphe: assists a trained practitioner; follow local law, scope of practice and licensed care."};
    Given given;
    cli.set_version_flag("--version", RAPHE_VERSION);
    cli.add_option("--practice,practice", given.practice, "practice file; set up when missing");
    cli.add_option("--resume-visit", given.visit, "visit to open again")->group({});
    cli.add_option("--resume-account", given.account, "for this account only")->group({});
    try {
        cli.parse(argc, argv);
    } catch (const CLI::Success &asked) { // help or the version
        return cli.exit(asked);
    } catch (const CLI::ParseError &error) {
        std::cerr << errorText({ErrorCode::BadArgument, "raphe", error.what()}).toStdString() << '\n';
        return badInput;
    }

    Ended ended;
    {
        QApplication::setOrganizationName(QStringLiteral("Raphe"));
        QApplication::setApplicationName(QStringLiteral("Raphe"));
        QApplication::setApplicationVersion(QStringLiteral(RAPHE_VERSION));
        QApplication::setDesktopFileName(QStringLiteral("raphe"));
        QApplication application(argc, argv);
        QApplication::setQuitOnLastWindowClosed(true);
        QApplication::setWindowIcon(QIcon(QStringLiteral(":/icons/raphe.svg")));
        dress(application, themeFor(Settings().appearance()));
        if (given.practice.empty())
            given.practice = usualPractice();
        ended = workOn(given);
    }
    if (ended.status == Lock::exitCode)
        executeAnew(argv[0], ended.left);
    return ended.status;
}

} // namespace raphe
