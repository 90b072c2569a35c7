#include "app/batch/Commands.h"
#include "app/batch/NoteCommand.h"
#include "app/batch/Verbs.h"

#include <memory>

namespace raphe::batch {

namespace {

struct Given {
    std::string practice;
    std::string name;
    std::string userName;
    Key key;
    std::vector<std::string> visits;
    std::string file; // a back-up, an export or pages, written or read
    std::int64_t patient = 0;
    std::string form = "json";
    std::string paper = "a4";
    bool isForOthers = false;
};

enum class KeyIs { Needed, Optional, NotAsked };

} // namespace

void addPracticeVerbs(CLI::App &cli, Result<Done> &result)
{
    const auto given = std::make_shared<Given>(); // lives in the callbacks
    const auto add = [&](const char *name, const char *words, const char *practice, KeyIs key) {
        auto *verb = cli.add_subcommand(name, words);
        verb->add_option("--practice", given->practice, practice)->required();
        if (key != KeyIs::NotAsked) {
            auto *signIn = verb->add_option("--sign-in", given->key.signIn, "sign-in name of the user who opens it");
            if (key == KeyIs::Needed)
                signIn->required();
            verb->add_option(
                "--passphrase-fd", given->key.descriptor, "file descriptor to read the passphrase from; asked for without");
        }
        return verb;
    };

    auto *make = add("make", "make a practice file with its first user; prints the recovery key, once",
        "practice file; there must be none", KeyIs::Needed);
    make->add_option("--name", given->name, "name of the practice")->required();
    make->add_option("--user-name", given->userName, "name of the user, as the record shows it")->required();
    make->callback([&result, given] { result = makePractice(given->practice, given->name, given->userName, given->key); });

    auto *imports = add("import", "add visit files to a practice file, as drafts", "practice file", KeyIs::Needed);
    imports->add_option("--visit", given->visits, "visit files")->required();
    imports->callback([&result, given] { result = importVisits(given->practice, given->key, given->visits); });

    auto *importing =
        add("import-patient", "add a record that another practice exported, as a new patient", "practice file", KeyIs::Needed);
    importing->add_option("--export", given->file, "file that export printed as JSON")->required();
    importing->callback([&result, given] { result = importExported(given->practice, given->key, given->file); });

    auto *verify = add(
        "verify", "check a practice file; without --sign-in its chain of signed entries only", "practice file", KeyIs::Optional);
    verify->callback([&result, given] { result = verifyPractice(given->practice, given->key); });

    auto *backup = add("backup", "write and check a back-up of a practice file; needs no passphrase",
        "practice file; may be in use", KeyIs::NotAsked);
    backup->add_option("--out", given->file, "file for the back-up")->required();
    backup->callback([&result, given] { result = backUpPractice(given->practice, given->file); });

    auto *restore = add("restore", "put a back-up in the place of a practice file, which is kept beside it",
        "practice file; must not be in use", KeyIs::Optional);
    restore->add_option("--from", given->file, "back-up")->required();
    restore->callback([&result, given] { result = restorePractice(given->file, given->practice, given->key); });

    auto *exporting = add("export", "print all that a practice file holds on one patient", "practice file", KeyIs::Needed);
    exporting->add_option("--patient", given->patient, "number of the patient")->required();
    exporting->add_option("--form", given->form, "json or text, printed, or pdf");
    exporting->add_option("--out", given->file, "for pdf: file ending in .pdf");
    exporting->add_option("--paper", given->paper, "for pdf: a4 or letter");
    exporting->add_flag(
        "--for-others", given->isForOthers, "for pdf: a copy without what was answered when nobody else could hear");
    exporting->callback([&result, given] {
        if (given->form == "pdf")
            result = exportPages(given->practice, given->key, {given->patient, given->file, given->paper, given->isForOthers});
        else if (!given->file.empty())
            result = Error{ErrorCode::BadArgument, "--out", "goes with --form pdf; the other forms are printed"};
        else
            result = exportFrom(given->practice, given->key, given->patient, given->form);
    });
} // namespace raphe::batch

} // namespace raphe::batch
