#include "app/raphe/patients/TakeOver.h"

#include "core/anatomy/AtlasReader.h"
#include "core/record/VisitJson.h"
#include "core/store/VisitImport.h"

#include <nlohmann/json.hpp>

#include <QFile>

#include <algorithm>

namespace raphe {

namespace {

constexpr qint64 longestFile = 100'000'000; // bytes; our choice: a record of decades has a few million

bool isVisit(const std::string &text)
{
    const auto document = nlohmann::json::parse(text, nullptr, false);
    return document.is_object() && document.contains("format") && document["format"] == visitFormat;
}

Result<TakenOver> takeOverVisit(Practice &practice, const Visit &visit, const std::string &file)
{
    if (const auto checked = checkBelongs(visit, file); !checked)
        return checked.error();
    auto imported = importVisit(practice, visit);
    if (!imported)
        return imported.error();
    return TakenOver{std::move(imported).value(), false};
}

Result<TakenOver> takeOverRecord(Practice &practice, const ExportedRecord &record)
{
    const auto before = practice.patients();
    if (!before)
        return before.error();
    auto imported = importPatient(practice, record);
    if (!imported)
        return imported.error();
    const bool isAlike = std::any_of(before.value().begin(), before.value().end(),
        [&](const PatientCard &card) { return card.name == record.patient.name && card.born == record.patient.born; });
    return TakenOver{std::move(imported).value(), isAlike};
}

} // namespace

Result<TakenOver> takeOver(Practice &practice, const QString &name)
{
    const std::string file = name.toStdString();
    QFile in(name);
    if (!in.open(QIODevice::ReadOnly))
        return Error{ErrorCode::CannotRead, file, in.errorString().toStdString()};
    if (in.size() > longestFile)
        return Error{ErrorCode::CannotRead, file, "it is longer than any record"};
    const std::string text = in.readAll().toStdString();
    const auto atlas = readEmbeddedAtlas();
    if (!atlas)
        return atlas.error();
    const auto rules = readEmbeddedSafetyRules(atlas.value());
    if (!rules)
        return rules.error();
    const auto examination = readEmbeddedExamination(atlas.value(), rules.value());
    if (!examination)
        return examination.error();
    const auto checked = [&](const auto &read) -> Result<Done> {
        return read ? checkKnownContent(rules.value(), examination.value(), read.value(), file) : read.error();
    };
    if (isVisit(text)) {
        const auto visit = readVisit(text, file, atlas.value());
        if (const auto known = checked(visit); !known)
            return known.error();
        return takeOverVisit(practice, visit.value(), file);
    }
    const auto record = readExport(text, file, atlas.value());
    if (const auto known = checked(record); !known)
        return known.error();
    return takeOverRecord(practice, record.value());
}

} // namespace raphe
