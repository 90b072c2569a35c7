// raphe-batch import-patient: a patient's record that another practice exported, into a practice file.
#include "app/batch/Commands.h"

#include "app/batch/Unlocked.h"
#include "core/anatomy/AtlasReader.h"
#include "core/examination/Examination.h"
#include "core/safety/Cautions.h"
#include "core/safety/Warnings.h"
#include "core/store/ExportImport.h"

#include <nlohmann/json.hpp>

#include <QFile>

#include <iostream>

namespace raphe::batch {

namespace {

// What the program has no rules for would be kept, and never thought of.
Result<Done> checkKnown(const ExportedRecord &record, const std::string &file, const Atlas &atlas)
{
    const auto rules = readEmbeddedSafetyRules(atlas);
    if (!rules)
        return rules.error();
    const auto examination = readEmbeddedExamination(atlas, rules.value());
    if (!examination)
        return examination.error();
    for (std::size_t i = 0; i < record.visits.size(); ++i) {
        const Visit &visit = record.visits[i].visit;
        for (const auto &checked : {checkConditions(rules.value(), visit, {}), checkWarnings(rules.value(), visit, {}),
                 checkExamined(examination.value(), visit, {})})
            if (!checked) // its place is "#/pointer"
                return Error{checked.error().code,
                    file + "#/visits/" + std::to_string(i) + "/document" + checked.error().place.substr(1),
                    checked.error().detail};
    }
    return Done{};
}

} // namespace

Result<Done> importExported(const std::string &practiceFile, const Key &key, const std::string &exportFile)
{
    const auto atlas = readEmbeddedAtlas();
    if (!atlas)
        return atlas.error();
    QFile in(QString::fromStdString(exportFile));
    if (!in.open(QIODevice::ReadOnly))
        return Error{ErrorCode::CannotRead, exportFile, in.errorString().toStdString()};
    const auto record = readExport(in.readAll().toStdString(), exportFile, atlas.value());
    if (!record)
        return record.error();
    if (const auto checked = checkKnown(record.value(), exportFile, atlas.value()); !checked)
        return checked.error();
    const auto practice = unlocked(practiceFile, key);
    if (!practice)
        return practice.error();
    const auto before = practice.value()->patients();
    if (!before)
        return before.error();
    const auto imported = importPatient(*practice.value(), record.value());
    if (!imported)
        return imported.error();
    nlohmann::ordered_json out{{"patient", imported.value().patient}, {"visits", imported.value().visits}};
    out["alike"] = nlohmann::ordered_json::array();
    for (const PatientCard &card : before.value())
        if (card.name == record.value().patient.name && card.born == record.value().patient.born)
            out["alike"].push_back(card.id);
    out["accesses_left_behind"] = record.value().accesses;
    std::cout << out.dump(1) << '\n';
    return Done{};
}

} // namespace raphe::batch
