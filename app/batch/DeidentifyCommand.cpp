// raphe-batch deidentify: copies of visit files for teaching, without names, words and real dates. The copies' file names tell
// nothing either.
#include "app/batch/Commands.h"

#include "app/batch/SamePatient.h"
#include "app/batch/VisitFile.h"
#include "app/paint/Paper.h"
#include "core/anatomy/AtlasReader.h"
#include "core/document/Deidentified.h"
#include "core/language/WordList.h"
#include "core/record/VisitJson.h"

#include <QByteArray>

#include <filesystem>
#include <iostream>
#include <map>

namespace raphe::batch {

namespace {

// By number of the patient; each in the order of the files.
using VisitsByPatient = std::map<int, std::vector<Visit>>;

Result<VisitsByPatient> readCopies(const std::vector<std::string> &visitFiles)
{
    const auto atlas = readEmbeddedAtlas();
    if (!atlas)
        return atlas.error();
    const auto rules = readEmbeddedSafetyRules(atlas.value());
    if (!rules)
        return rules.error();
    const auto examination = readEmbeddedExamination(atlas.value(), rules.value());
    if (!examination)
        return examination.error();
    const auto techniques = readEmbeddedTechniques(rules.value());
    if (!techniques)
        return techniques.error();
    const auto advice = readEmbeddedHomeAdvice(rules.value());
    if (!advice)
        return advice.error();
    const auto words = readEmbeddedWordList("en", atlas.value());
    if (!words)
        return words.error();
    std::vector<Visit> visits;
    for (const std::string &file : visitFiles) {
        auto visit = readVisitFile(file, atlas.value());
        if (!visit)
            return visit.error();
        visits.push_back(std::move(visit).value());
    }
    const std::vector<int> numbers = patientNumbers(visits);
    VisitsByPatient out;
    for (std::size_t i = 0; i < visits.size(); ++i)
        out[numbers[i]].push_back(std::move(visits[i]));
    const KnownContent known{
        atlas.value(), rules.value(), examination.value(), techniques.value(), advice.value(), words.value().textures};
    for (auto &[number, ofOne] : out)
        ofOne = deidentified(std::move(ofOne), "Patient " + std::to_string(number), known);
    return out;
}

} // namespace

Result<Done> writeDeidentified(const std::vector<std::string> &visitFiles, const std::string &outFolder)
{
    if (outFolder.empty() && visitFiles.size() > 1)
        return Error{ErrorCode::BadArgument, "--out-dir", "needed for more than one visit"};
    const auto copies = readCopies(visitFiles);
    if (!copies)
        return copies.error();
    std::vector<std::pair<std::string, std::string>> files; // name and text
    for (const auto &[patient, visits] : copies.value())
        for (std::size_t i = 0; i < visits.size(); ++i)
            files.emplace_back(outFolder + "/patient-" + std::to_string(patient) + "-visit-" + std::to_string(i + 1) + ".json",
                writeVisit(visits[i]));
    if (outFolder.empty()) {
        std::cout << files.front().second;
    } else {
        for (const auto &[name, text] : files)
            if (std::filesystem::exists(name)) // of another patient, maybe
                return Error{ErrorCode::CannotWrite, name, "exists already"};
        for (const auto &[name, text] : files)
            if (const auto saved = saveAll(name, QByteArray::fromStdString(text)); !saved)
                return saved.error();
    }
    std::cerr << deidentifiedWarning() << '\n';
    return Done{};
}

} // namespace raphe::batch
