#include "core/store/PracticeSettings.h"

#include "core/base/JsonReader.h"
#include "core/store/Retention.h"

#include <nlohmann/json.hpp>

namespace raphe {

namespace {

constexpr const char *format = "raphe-practice";
constexpr int version = 1;
constexpr int longestMinutes = 24 * 60;

} // namespace

Result<PracticeSettings> readSettings(const std::string &text, const std::string &file)
{
    const auto parsed = parseJson(text, file);
    if (!parsed)
        return parsed.error();
    return guarded([&] {
        const JsonReader at(parsed.value(), file);
        at.expectObject({"format", "version", "name", "letterhead", "language", "metric", "lock_minutes", "backup_folder",
            "jurisdiction", "retention_years", "recovery_on_paper", "treatment", "advice"});
        if (at.string("format") != format)
            at.field("format").fail(ErrorCode::WrongFormat, at.string("format"));
        static_cast<void>(at.field("version").asInt(version, version));
        PracticeSettings s;
        s.name = at.string("name");
        s.letterhead = at.string("letterhead");
        s.language = at.string("language");
        s.isMetric = at.field("metric").asBool();
        s.lockMinutes = at.field("lock_minutes").asInt(0, longestMinutes);
        s.backupFolder = at.string("backup_folder");
        s.jurisdiction = at.string("jurisdiction");
        s.retentionYears = at.field("retention_years").asInt(0, RetentionRule::longest);
        s.isRecoveryOnPaper = at.field("recovery_on_paper").asBool();
        if (at.has("treatment"))
            s.treatment = readTreatmentSettings(at.field("treatment"));
        if (at.has("advice"))
            s.advice = readOwnAdvice(at.field("advice"));
        return s;
    });
}

std::string writeSettings(const PracticeSettings &s)
{
    nlohmann::ordered_json json{{"format", format}, {"version", version}, {"name", s.name}, {"letterhead", s.letterhead},
        {"language", s.language}, {"metric", s.isMetric}, {"lock_minutes", s.lockMinutes}, {"backup_folder", s.backupFolder},
        {"jurisdiction", s.jurisdiction}, {"retention_years", s.retentionYears}, {"recovery_on_paper", s.isRecoveryOnPaper}};
    if (s.treatment != TreatmentSettings{})
        json["treatment"] = treatmentSettingsJson(s.treatment);
    if (!s.advice.empty())
        json["advice"] = ownAdviceJson(s.advice);
    return json.dump();
}

} // namespace raphe
