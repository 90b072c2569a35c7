// raphe-batch: the core without a window. JSON on standard output; one line on standard error and exit status 2 for bad
// input, 1 for a failed check, 0 otherwise.
#include "app/batch/Commands.h"
#include "app/words/ErrorText.h"

#include <CLI/CLI.hpp>

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

    CLI::App cli{
        "Raphe without a window: assists a trained practitioner; follow local law, scope of practice and licensed care."};
    cli.require_subcommand(0, 1); // none is reported below, so that an unknown verb is named
    Result<Done> result = Done{};

    cli.add_subcommand("atlas", "print the atlas")->callback([&] { result = batch::printAtlas(); });

    std::string view;
    double x = 0;
    double y = 0;
    auto *under = cli.add_subcommand("under", "print what lies under a point, outside in");
    std::string facing = "right";
    under->add_option("--view", view, "front, back, side, sole, palm or head")->required();
    under->add_option("--facing", facing, "side and head: which side of the patient is seen, right or left");
    under
        ->add_option("--x", x,
            "units of 1/1000 stature (insets: their own) from the middle of the view; in the back view x > 0 is the patient's "
            "right, "
            "in the side view facing right x > 0 is forward")
        ->required();
    under->add_option("--y", y, "units of 1/1000 stature below the crown")->required();
    under->callback([&] { result = batch::printUnder(view, facing, x, y); });

    std::string visit;
    auto *reasons = cli.add_subcommand("reason", "print what to explain, check and treat");
    reasons->add_option("--visit", visit, "visit file")->required();
    reasons->callback([&] { result = batch::printReasons(visit); });

    auto *cautions = cli.add_subcommand("cautions", "print what must be respected in a visit, and why");
    cautions->add_option("--visit", visit, "visit file")->required();
    cautions->callback([&] { result = batch::printCautions(visit); });

    auto *extent = cli.add_subcommand("extent", "print how much of the body's surface the findings on the skin take");
    extent->add_option("--visit", visit, "visit file")->required();
    extent->callback([&] { result = batch::printExtent(visit); });

    std::string out;
    std::string paper = "a4";
    std::string language = "en";
    auto *map = cli.add_subcommand("map", "write the visit map");
    map->add_option("--visit", visit, "visit file")->required();
    map->add_option("--out", out, "file ending in .pdf, .svg or .png")->required();
    map->add_option("--paper", paper, "a4 or letter");
    map->add_option("--language", language, "language of the plain names: en, de or es");
    map->callback([&] { result = batch::writeMap(visit, out, paper, language); });

    std::string practice;
    std::vector<std::string> visits;
    auto *import = cli.add_subcommand("import", "add visit files to a practice file");
    import->add_option("--practice", practice, "practice file; made when missing")->required();
    import->add_option("--visit", visits, "visit files")->required();
    import->callback([&] { result = batch::importVisits(practice, visits);
});

batch::Key key;
const auto askKey = [&](CLI::App *verb, bool needed) {
    auto *signIn = verb->add_option("--sign-in", key.signIn, "sign-in name of the user who opens it");
    if (needed)
        signIn->required();
    verb->add_option("--passphrase-fd", key.descriptor, "file descriptor to read the passphrase from; asked for without");
};
auto *verify = cli.add_subcommand("verify", "check a sealed practice file; without --sign-in its chain of signed entries only");
verify->add_option("--practice", practice, "practice file")->required();
askKey(verify, false);
verify->callback([&] { result = batch::verifyPractice(practice, key); });

auto *backup = cli.add_subcommand("backup", "write and check a back-up of a sealed practice file; needs no passphrase");
backup->add_option("--practice", practice, "practice file; may be in use")->required();
backup->add_option("--out", out, "file for the back-up")->required();
backup->callback([&] { result = batch::backUpPractice(practice, out); });

std::string from;
auto *restore = cli.add_subcommand("restore", "put a back-up in the place of a practice file, which is kept beside it");
restore->add_option("--practice", practice, "practice file; must not be in use")->required();
restore->add_option("--from", from, "back-up")->required();
askKey(restore, false);
restore->callback([&] { result = batch::restorePractice(from, practice, key); });

std::int64_t patient = 0;
std::string form = "json";
auto *exporting = cli.add_subcommand("export", "print all that a sealed practice file holds on one patient");
exporting->add_option("--practice", practice, "practice file")->required();
exporting->add_option("--patient", patient, "number of the patient")->required();
exporting->add_option("--form", form, "json or text");
askKey(exporting, true);
exporting->callback([&] { result = batch::exportFrom(practice, key, patient, form); });

std::string edge;
double stature = 0;
auto *edges = cli.add_subcommand("edge", "print how long an edge is and who attaches along it");
edges->add_option("--structure", edge, "id of the edge, such as iliac-crest")->required();
edges->add_option("--stature", stature, "stature of the patient in millimetres")->required();
edges->callback([&] { result = batch::printEdge(edge, stature); });

if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM"))
    qputenv("QT_QPA_PLATFORM", "offscreen"); // fonts are needed for the map; a display is not
qInstallMessageHandler(keepQuiet);
const QGuiApplication application(argc, argv);
try {
    cli.parse(argc, argv);
    if (cli.get_subcommands().empty())
        result = Error{ErrorCode::BadArgument, "raphe-batch", "a verb is required"};
} catch (const CLI::CallForHelp &help) {
    return cli.exit(help);
} catch (const CLI::ParseError &error) {
    result = Error{ErrorCode::BadArgument, "raphe-batch", error.what()};
}
if (result)
    return 0;
std::cerr << errorText(result.error()).toStdString() << '\n';
return result.error().code == ErrorCode::Tampered ? 1 : 2;
}
