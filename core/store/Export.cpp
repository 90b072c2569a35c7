#include "core/store/Export.h"

#include "core/base/JsonReader.h"
#include "core/record/PatientRecordJson.h"

#include <nlohmann/json.hpp>

#include <QDateTime>

#include <algorithm>

namespace raphe {

namespace {

std::string isoTime(std::int64_t milliseconds)
{
    return QDateTime::fromMSecsSinceEpoch(milliseconds, Qt::UTC).toString(Qt::ISODate).toStdString();
}

// Ours has six levels; the bound keeps what is written by recursion from running out of stack. Our choice, no source.
constexpr int deepest = 100;

// A document that is JSON stands as such, another, or one that is nested without end, as text.
nlohmann::ordered_json asJson(const std::string &document)
{
    bool isTooDeep = false;
    const auto watch = [&](int depth, nlohmann::ordered_json::parse_event_t, const nlohmann::ordered_json &) {
        isTooDeep = isTooDeep || depth > deepest;
        return true;
    };
    auto json = nlohmann::ordered_json::parse(document, watch, false);
    return json.is_discarded() || isTooDeep ? nlohmann::ordered_json(document) : json;
}

// JSON as indented lines, for people: "name: value", a list's entries with a dash; without the file's own head.
void putLines(std::string &out, const nlohmann::ordered_json &json, const std::string &indent)
{
    const auto put = [&](const std::string &lead, const nlohmann::ordered_json &value) {
        if (value.is_structured()) {
            out += indent + lead + "\n";
            putLines(out, value, indent + "  ");
        } else {
            const std::string words = value.is_string() ? value.get<std::string>() : value.dump();
            out += indent + lead + (lead.empty() ? "" : " ") + words + "\n";
        }
    };
    if (json.is_object()) {
        for (const auto &[key, value] : json.items()) {
            std::string name = key;
            std::replace(name.begin(), name.end(), '_', ' ');
            if (key != "format" && key != "version")
                put(name + ":", value);
        }
    } else if (json.is_array()) {
        for (const auto &value : json)
            put("-", value);
    } else {
        put("", json);
    }
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
        std::string text;
        putLines(text, out["patient"], {});
        out["visits"] = nlohmann::ordered_json::array();
        for (auto visit = visits.rbegin(); visit != visits.rend(); ++visit) { // oldest first
            const char *state = stateWords[static_cast<std::size_t>(visit->state)];
            nlohmann::ordered_json one{{"state", state}, {"document", asJson(visit->document)}};
            text += "\nVisit, " + std::string(state) + "\n";
            putLines(text, one["document"], "  ");
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
                text += "\n";
                if (!version.document.empty()) {
                    act["document"] = asJson(version.document);
                    if (version.document != visit->document) // what it said then
                        putLines(text, act["document"], "    ");
                }
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
        // Ill-formed UTF-8 would make dump() throw.
        return {out.dump(2, ' ', false, nlohmann::ordered_json::error_handler_t::replace) + "\n", text};
    });
}

} // namespace raphe
