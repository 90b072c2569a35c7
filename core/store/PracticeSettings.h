// What is set once for a practice: sealed in its file. JSON form "raphe-practice", version 1.
#pragma once

#include "core/base/Result.h"
#include "core/plan/TreatmentSettings.h"
#include "core/record/Letter.h"
#include "core/treatment/OwnAdvice.h"

#include <string>
#include <vector>

namespace raphe {

struct PracticeSettings {
    static constexpr std::size_t mostAddressees = 500; // our choice, no source

    std::string name; // of the practice
    std::string letterhead; // address and the like, several lines
    std::string language = "en"; // for what patients read
    bool isMetric = true; // centimetres and kilograms, not inches and pounds
    int lockMinutes = 10; // idle time until the program locks itself; 0: never. Our choice, no source
    std::string backupFolder; // empty: no scheduled back-ups
    std::string jurisdiction; // whose law on retention the practitioner goes by, in their words
    int retentionYears = 0; // after the last visit; 0: not set. The program proposes and never erases by itself
    bool isRecoveryOnPaper = false; // somebody typed part of the recovery key from paper
    TreatmentSettings treatment;
    std::vector<OwnAdvice> advice; // for home
    std::vector<Addressee> addressees; // the book of those whom letters go to; none of them twice
    bool operator==(const PracticeSettings &) const = default;
};

[[nodiscard]] Result<PracticeSettings> readSettings(const std::string &json, const std::string &file);
[[nodiscard]] std::string writeSettings(const PracticeSettings &settings);

} // namespace raphe
