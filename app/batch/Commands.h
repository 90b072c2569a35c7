// The verbs of raphe-batch. Each prints JSON to standard output (or writes a file) and returns what went wrong, if anything.
#pragma once

#include "core/base/Result.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace raphe::batch {

[[nodiscard]] Result<Done> printAtlas();
[[nodiscard]] Result<Done> printUnder(const std::string &view, const std::string &facing, double x, double y);
/// How long an edge is in a patient of this stature (mm), in 25 mm steps, and what attaches along it.
[[nodiscard]] Result<Done> printEdge(const std::string &structure, double stature);
[[nodiscard]] Result<Done> printReasons(const std::string &visitFile);
/// What a plan is asked for with: ids of groups of techniques, words of positions, techniques that are not wanted.
struct PlanVerb {
    std::string visit;
    std::optional<int> minutes; // nothing: as the visit says
    std::vector<std::string> barred;
    std::vector<std::string> scope;
    std::vector<std::string> without;
};
/// The best use of the minutes left.
[[nodiscard]] Result<Done> printPlan(const PlanVerb &verb);
/// What the caution rules say of a visit, everywhere and at its places.
[[nodiscard]] Result<Done> printCautions(const std::string &visitFile);
/// A typed line as findings and measurements, and what it leaves open; an error when something in it makes no sense, which
/// `isCheckFailed` tells from bad usage.
[[nodiscard]] Result<Done> printReading(const std::string &text, bool &isCheckFailed);
/// Percent of the body's surface that the findings on skin regions take, and that the pain drawing takes.
[[nodiscard]] Result<Done> printExtent(const std::string &visitFile);
/// How far the pain drawings of two visits cover each other, and whether that is more than redrawing would differ.
[[nodiscard]] Result<Done> printOverlap(const std::string &visitFile, const std::string &beforeFile);
/// How a visit map is wanted.
struct MapVerb {
    std::vector<std::string> visits; // files
    std::string out; // a file; for several visits a folder
    std::string paper = "a4";
    std::string language = "en";
    bool isLarge = false;
    bool isGrey = false;
};
/// Prints how many pages each took, and its reading grade (resources/schema/map.schema.json). No visit is written unless all
/// can be read.
[[nodiscard]] Result<Done> writeMap(const MapVerb &verb);
/// The reading grade of each line of the standard input, one JSON object a line (resources/schema/grade.schema.json).
[[nodiscard]] Result<Done> printGrades();
/// All caution rules, warning signs and reminders, for a clinician's review.
[[nodiscard]] Result<Done> writeRules(const std::string &out, const std::string &paper);
/// The form that a patient fills in before the visit.
[[nodiscard]] Result<Done> writeForm(const std::string &out, const std::string &paper, const std::string &language);
/// One visit as an HL7 FHIR R4 bundle, to standard output or a file.
struct FhirVerb {
    std::string visit; // file; or
    std::string exported; // what `export` printed: with it where the visit stands, who signed it, and the patient's record
    std::optional<int> nth; // visit of the export, from 1, oldest first; nothing: the newest
    std::string practice; // name; may be empty
    std::string zone; // of the practice's clock on that day, as '+01:00'; empty: times of day are left out
    std::string out; // empty: standard output
};
[[nodiscard]] Result<Done> writeFhir(const FhirVerb &verb);
/// To another professional.
struct LetterVerb {
    std::string visit;
    std::string out;
    std::string paper = "a4";
    std::string to; // name, role, and lines of the address, with commas between; empty: whoever takes over
    std::string question;
    std::string urgency; // a word of urgencyWords; empty: as the signs suggest
    bool isDraft = false; // composed anew, although the visit keeps a letter
};
/// The letter that the visit keeps, or a draft.
[[nodiscard]] Result<Done> writeLetter(const LetterVerb &verb);
/// The findings of visits as a table (CSV), printed when `out` is empty. Patients are numbered, told apart by name and birth
/// date.
[[nodiscard]] Result<Done> writeCsv(const std::vector<std::string> &visitFiles, const std::string &out);
/// Copies for teaching, into a folder that is there; one alone is printed when `outFolder` is empty. Warns on standard error.
[[nodiscard]] Result<Done> writeDeidentified(const std::vector<std::string> &visitFiles, const std::string &outFolder);
/// Who opens a practice file; the passphrase is asked for, or read from the descriptor.
struct Key {
    std::string signIn;
    std::optional<int> descriptor;
};
/// Makes a practice file with its first user, and prints the recovery key: the only time that it is seen.
[[nodiscard]] Result<Done> makePractice(
    const std::string &practiceFile, const std::string &name, const std::string &userName, const Key &key);
/// Adds visit files as drafts; patients are told apart by name and birth date.
[[nodiscard]] Result<Done> importVisits(
    const std::string &practiceFile, const Key &key, const std::vector<std::string> &visitFiles);
/// Adds a record that another practice exported as a new patient; refuses what the program does not know.
[[nodiscard]] Result<Done> importExported(const std::string &practiceFile, const Key &key, const std::string &exportFile);
/// With a sign-in name everything, without one the chain of signed entries.
[[nodiscard]] Result<Done> verifyPractice(const std::string &practiceFile, const Key &key);
[[nodiscard]] Result<Done> backUpPractice(const std::string &practiceFile, const std::string &out);
/// Patients that were erased since the back-up are erased again; that needs the key.
[[nodiscard]] Result<Done> restorePractice(const std::string &backup, const std::string &practiceFile, const Key &key);
[[nodiscard]] Result<Done> exportFrom(
    const std::string &practiceFile, const Key &key, std::int64_t patient, const std::string &form);

} // namespace raphe::batch
