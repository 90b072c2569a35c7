// raphe-batch: the core without a window. JSON on standard output; one line on standard error and exit status 2 for bad
// input, 1 for a failed check, 0 otherwise.
#include "app/batch/Verbs.h"
#include "app/words/ErrorText.h"
#include "core/store/crypto/NoDumps.h"

#include <QGuiApplication>

#include <iostream>

namespace {

// Standard error is for our one line: what Qt has to say about fonts or folders of the session is not for the caller.
void keepQuiet(QtMsgType type, const QMessageLogContext &, const QString &message)
{
    if (type == QtFatalMsg)
        std::cerr << message.toStdString() << '\n';
}

} // namespace

int main(int argc, char **argv)
{
    using namespace raphe;

    refuseDumps();
    CLI::App cli{
        "Raphe without a window: assists a trained practitioner; follow local law, scope of practice and licensed care."};
    cli.set_version_flag("--version", RAPHE_VERSION);
    cli.require_subcommand(0, 1); // none is reported below, so that an unknown verb is named
    Result<Done> result = Done{};
    bool isCheckFailed = false;
    batch::addVisitVerbs(cli, result, isCheckFailed);
    batch::addDocumentVerbs(cli, result);
    batch::addPracticeVerbs(cli, result);

    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen"); // fonts are needed for the map; a display is not
    qInstallMessageHandler(keepQuiet);
    int nameAlone = 1; // the rest is ours: some platforms would take --name for their own
    const QGuiApplication application(nameAlone, argv);
    try {
        cli.parse(argc, argv);
        if (cli.get_subcommands().empty())
            result = Error{ErrorCode::BadArgument, "raphe-batch", "a verb is required"};
    } catch (const CLI::Success &asked) { // help or the version
        return cli.exit(asked);
    } catch (const CLI::ParseError &error) {
        result = Error{ErrorCode::BadArgument, "raphe-batch", error.what()};
    }
    if (result)
        return 0;
    std::cerr << errorText(result.error()).toStdString() << '\n';
    return isCheckFailed || result.error().code == ErrorCode::Tampered ? 1 : 2;
}
