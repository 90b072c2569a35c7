#include "app/batch/Commands.h"
#include "app/batch/Verbs.h"

#include <memory>

namespace raphe::batch {

namespace {

struct Given {
    std::string visit;
    std::string out;
    std::string paper = "a4";
};

} // namespace

void addDocumentVerbs(CLI::App &cli, Result<Done> &result)
{
    const auto given = std::make_shared<Given>(); // lives in the callbacks
    const auto document = [&](const char *name, const char *words) {
        auto *verb = cli.add_subcommand(name, words);
        verb->add_option("--out", given->out, "file ending in .pdf")->required();
        verb->add_option("--paper", given->paper, "a4 or letter");
        return verb;
    };
    document("rules", "write all caution rules, warning signs and reminders as tables for a clinician's review")
        ->callback([&result, given] { result = writeRules(given->out, given->paper); });
    document("form", "write the form that a patient fills in before the visit, with a pen")->callback([&result, given] {
        result = writeForm(given->out, given->paper);
    });
    auto *letter = document("letter", "write a letter about the warning signs of a visit, to the clinician who takes over");
    letter->add_option("--visit", given->visit, "visit file")->required();
    letter->callback([&result, given] { result = writeLetter(given->visit, given->out, given->paper); });
}

} // namespace raphe::batch
