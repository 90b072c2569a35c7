// What the hands can do at a place: content of resources/techniques.json. Plain values.
#pragma once

#include "core/anatomy/Structure.h"
#include "core/base/Result.h"
#include "core/plan/PlanProblem.h"
#include "core/safety/SafetyRules.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace raphe {

/// What a technique is chosen for. Attachment: where muscle, tendon or ligament meets bone.
enum class Tissue { SuperficialFascia, Fascia, Muscle, Attachment, Joint };
inline constexpr WordTable<Tissue, 5> tissueWords{{{Tissue::SuperficialFascia, "superficial-fascia"}, {Tissue::Fascia, "fascia"},
    {Tissue::Muscle, "muscle"}, {Tissue::Attachment, "attachment"}, {Tissue::Joint, "joint"}}};

inline constexpr WordTable<plan::Skin, 3> skinWords{
    {{plan::Skin::Dry, "dry"}, {plan::Skin::Any, "any"}, {plan::Skin::Oiled, "oiled"}}};

/// When a technique suits a place, by the grades found there, and how well. The weights are our choice: only their order counts.
struct Suit {
    Tissue tissue{};
    int leastTenderness = 0; // 0-4
    int mostTenderness = 4;
    int leastRestriction = 0; // 0-3
    int weight = 1; // 1-9
};

struct Dose {
    int seconds = 60; // at one place
    std::string how; // what is done in them
    std::optional<std::pair<double, double>> kPa; // suction below the pressure of the air
    int restHours = 0; // before deep work at the same place again
    int perWeek = 7; // times at one place in seven days
    std::string source;
    Reading read{}; // how we read the source
};

struct Technique {
    static constexpr int longest = 3600; // seconds at one place

    std::string id;
    std::string action; // of resources/safety/actions.json: the cautions, consents and scope of practice that hold for it
    std::string name; // in the trade's words, lower case
    std::string plain; // in the patient's words; empty of the practitioner's own
    std::vector<std::string> says; // other ways to say it in a typed line; the practitioner's own are said by their name
    std::vector<Layer> layers; // in which it is done
    plan::Skin skin{};
    bool deep = false; // asks for a rest of the area
    bool throughCloth = false; // nothing is uncovered for it
    bool lengthens = false; // joints first, where preferred
    std::vector<int> grades; // of joint mobilisation, 1 to 5
    Dose dose;
    std::vector<Suit> suits;
    std::string caution; // when to stop
    bool isOwn = false; // the practitioner's (TreatmentSettings.h)
};

/// Seconds that every treatment takes besides its steps. Common practice, no source; a practice can set its own.
struct ReservedTimes {
    int greeting = 0;
    int undressing = 0;
    int retest = 0;
    int rising = 0; // slowly
    [[nodiscard]] int sum() const { return greeting + undressing + retest + rising; }
    bool operator==(const ReservedTimes &) const = default;
};

struct PlanTimes {
    ReservedTimes reserved;
    plan::ProblemTimes between; // steps; turns in the order of Position. Common practice, no source
};

struct Techniques {
    std::vector<Technique> all; // in the order of the content; of two that suit alike the first is chosen
    PlanTimes times;
    [[nodiscard]] const Technique *find(std::string_view id) const;
};

/// Unknown fields, words, ids and actions, grades and seconds that cannot be, a duplicate (also of a phrase: it says one
/// technique) and a text that is missing are errors with file and JSON pointer.
[[nodiscard]] Result<Techniques> readTechniques(std::string_view text, const std::string &file, const SafetyRules &rules);
/// Those that are built into the program.
[[nodiscard]] Result<Techniques> readEmbeddedTechniques(const SafetyRules &rules);

} // namespace raphe
