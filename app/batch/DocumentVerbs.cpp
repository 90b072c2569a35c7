#include "app/batch/Commands.h"
#include "app/batch/NoteCommand.h"
#include "app/batch/Verbs.h"

#include <memory>

namespace raphe::batch {

namespace {

struct Given {
    std::string visit;
    std::string out;
    std::string paper = "a4";
    std::string language = "en";
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
    auto *form = document("form", "write the form that a patient fills in before the visit, with a pen");
    form->add_option("--language", given->language, "what the patient reads: en, de or es");
    form->callback([&result, given] { result = writeForm(given->out, given->paper, given->language); });

    const auto written = std::make_shared<LetterVerb>();
    auto *letter = cli.add_subcommand("letter", "write a letter to another professional, warning signs first");
    letter->add_option("--visit", written->visit, "visit file")->required();
    letter->add_option("--out", written->out, "file ending in .pdf")->required();
    letter->add_option("--paper", written->paper, "a4 or letter");
    letter->add_option("--to", written->to, "name, role and address, with commas between; else to whoever takes over");
    letter->add_option("--question", written->question, "what is asked");
    letter->add_option("--urgency", written->urgency, "emergency-now, same-day, within-days, routine or for-information");
    letter->add_flag("--draft", written->isDraft, "compose it anew, although the visit keeps a letter");
    letter->callback([&result, written] { result = writeLetter(*written); });

    const auto noted = std::make_shared<NoteVerb>();
    auto *note = cli.add_subcommand("note", "print the clinical note of a visit file, or write it");
    note->add_option("--visit", noted->visits, "visit files")->required();
    note->add_option("--before", noted->before, "files of the patient's earlier visits: what was taken over from them is marked");
    note->add_option(
        "--out", noted->out, "file ending in .pdf or .txt, for several visits a folder; without it the text is printed");
    note->add_option("--paper", noted->paper, "a4 or letter");
    note->add_flag("--for-others", noted->isForOthers, "a copy without what was answered when nobody else could hear");
    note->callback([&result, noted] { result = writeNote(*noted); });

    const auto exchanged = std::make_shared<FhirVerb>();
    auto *fhir = cli.add_subcommand("fhir", "print a visit as an HL7 FHIR R4 bundle, for another record system");
    fhir->add_option("--visit", exchanged->visit, "visit file");
    fhir->add_option("--export", exchanged->exported, "what the verb export printed as JSON, instead of a visit file");
    fhir->add_option("--nth", exchanged->nth, "visit of the export, from 1, oldest first; else the newest")
        ->check(CLI::PositiveNumber);
    fhir->add_option("--practice-name", exchanged->practice, "name of the practice");
    fhir->add_option("--zone", exchanged->zone, "of the practice's clock on that day, as +01:00; without it no times of day");
    fhir->add_option("--out", exchanged->out, "file; else standard output");
    fhir->callback([&result, exchanged] { result = writeFhir(*exchanged); });
}

} // namespace raphe::batch
