#include "core/store/PracticeSettings.h"

#include "core/base/JsonReader.h"
#include "core/record/LetterJson.h"
#include "core/store/Retention.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace raphe {

namespace {

constexpr const char *format = "raphe-practice";
constexpr int version = 1;
constexpr int longestMinutes = 24 * 60;

std::vector<Addressee> readAddressees(const JsonReader &at)
{
    std::vector<Addressee> out;
    for (const JsonReader &item : at.items(0, PracticeSettings::mostAddressees)) {
        Addressee addressee = readAddressee(item);
        if (std::find(out.begin(), out.end(), addressee) != out.end())
            item.fail(ErrorCode::Duplicate, addressee.name.empty() ? addressee.role : addressee.name);
        out.push_back(std::move(addressee));
    }
    return out;
}

} // namespace

Result<PracticeSettings> readSettings(const std::string &text, const std::string &file)
{
    const auto parsed = parseJson(text, file);
    if (!parsed)
        return parsed.error();
    return guarded([&] {
        const JsonReader at(parsed.value(), file);
        at.expectObject({"format", "version", "name", "letterhead", "language", "metric", "lock_minutes", "backup_folder",
            "jurisdiction", "retention_years", "recovery_on_paper", "treatment", "advice", "addressees"});
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
        if (at.has("addressees"))
            s.addressees = readAddressees(at.field("addressees"));
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
    for (const Addressee &addressee : s.addressees)
        json["addressees"].push_back(addresseeJson(addressee));
    return json.dump();
}

} // namespace raphe
