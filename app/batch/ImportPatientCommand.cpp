// raphe-batch import-patient: a patient's record that another practice exported, into a practice file.
#include "app/batch/Commands.h"

#include "app/batch/Unlocked.h"
#include "core/anatomy/AtlasReader.h"
#include "core/store/ExportImport.h"

#include <nlohmann/json.hpp>

#include <QFile>

#include <iostream>

namespace raphe::batch {

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
    const auto rules = readEmbeddedSafetyRules(atlas.value());
    if (!rules)
        return rules.error();
    const auto examination = readEmbeddedExamination(atlas.value(), rules.value());
    if (!examination)
        return examination.error();
    if (const auto checked = checkKnownContent(rules.value(), examination.value(), record.value(), exportFile); !checked)
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
