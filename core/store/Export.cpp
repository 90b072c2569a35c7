#include "core/store/Export.h"

#include "core/base/JsonReader.h"
#include "core/record/PatientRecordJson.h"

#include <nlohmann/json.hpp>

#include <QDateTime>

namespace raphe {

namespace {

std::string isoTime(std::int64_t milliseconds)
{
    return QDateTime::fromMSecsSinceEpoch(milliseconds, Qt::UTC).toString(Qt::ISODate).toStdString();
}

// A document that is JSON stands as such, another as text.
nlohmann::ordered_json asJson(const std::string &document)
{
    auto json = nlohmann::ordered_json::parse(document, nullptr, false);
    return json.is_discarded() ? nlohmann::ordered_json(document) : json;
}

constexpr const char *stateWords[] = {"draft", "signed", "being amended", "entered in error"};

} // namespace

Result<PatientExport> exportPatient(Practice &practice, std::int64_t patient)
{
    return guarded([&]() -> PatientExport {
        const PatientRecord record = valueOrThrow(practice.patient(patient));
        const auto visits = valueOrThrow(practice.visits(patient));
        static_cast<void>(valueOrThrow(practice.noteExported(patient)));
        nlohmann::ordered_json out{{"format", "raphe-export"}, {"version", 1}};
        out["patient"] = asJson(writePatient(record));
        std::string text = record.name + (record.born.empty() ? "" : ", born " + record.born) + "\n";
        out["visits"] = nlohmann::ordered_json::array();
        for (auto visit = visits.rbegin(); visit != visits.rend(); ++visit) { // oldest first
            const char *state = stateWords[static_cast<std::size_t>(visit->state)];
            nlohmann::ordered_json one{{"state", state}, {"document", asJson(visit->document)}};
            text += "\nVisit, " + std::string(state) + "\n" + asJson(visit->document).dump(2) + "\n";
            for (const VisitVersion &version : valueOrThrow(practice.history(visit->id))) {
                nlohmann::ordered_json act{{"act", wordOf(entryWords, version.kind)}, {"author", version.author},
                    {"entered_at", isoTime(version.madeAt)}};
                text += "  " + std::string(wordOf(entryWords, version.kind)) + " by " + version.author + ", entered "
                    + isoTime(version.madeAt);
                if (!version.careAt.empty()) {
                    act["care_at"] = version.careAt;
                    text += ", care given " + version.careAt;
                }
                if (!version.reason.empty()) {
                    act["reason"] = version.reason;
                    text += ": " + version.reason;
                }
                if (!version.document.empty())
                    act["document"] = asJson(version.document);
                text += "\n";
                one["history"].push_back(std::move(act));
            }
            out["visits"].push_back(std::move(one));
        }
        text += "\nWho used this record\n";
        for (const AccessRow &access : valueOrThrow(practice.accesses(patient))) {
            out["accesses"].push_back(
                {{"at", isoTime(access.madeAt)}, {"by", access.account}, {"act", wordOf(entryWords, access.kind)}});
            text +=
                "  " + isoTime(access.madeAt) + " " + access.account + ": " + std::string(wordOf(entryWords, access.kind)) + "\n";
        }
        return {out.dump(2) + "\n", text};
    });
}

} // namespace raphe
