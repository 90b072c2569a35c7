// One visit as plain values: what was found, what was clear, what could not be examined. No storage, no window.
// Scales: tenderness 0-4, restriction 0-3, pain 0-10 (see the fields). The JSON form is in VisitJson.h.
#pragma once

#include "core/record/Closing.h"
#include "core/record/Complaint.h"
#include "core/record/ConsentAnswer.h"
#include "core/record/Letter.h"
#include "core/record/Measure.h"
#include "core/record/PainDrawing.h"
#include "core/record/PlanWish.h"
#include "core/record/SinceLast.h"
#include "core/record/TestResult.h"
#include "core/record/Timeline.h"
#include "core/record/TreatmentLog.h"
#include "core/record/WarningAnswer.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace raphe {

/// Tenderness grade 0 to 4: 0 none, 1 mild, 2 moderate with grimace or flinch, 3 severe with withdrawal,
/// 4 withdraws from touch that is normally painless. Common teaching scale, attributed to Hubbard & Berkoff 1993
/// in teaching notes (the paper itself is about EMG): 'as attributed'.
struct Tenderness {
    static constexpr int highest = 4;
    int grade = 0;
    auto operator<=>(const Tenderness &) const = default;
};

/// Restriction of movement or glide, 0 to 3: 0 free, 1 slight, 2 clear, 3 hardly moves. Common practice, no source.
struct Restriction {
    static constexpr int highest = 3;
    int grade = 0;
    auto operator<=>(const Restriction &) const = default;
};

/// Joint play, 0 to 6: 0 fused, 1 considerably and 2 slightly too little, 3 normal, 4 slightly and 5 considerably too much,
/// 6 unstable. Scale as in Gonnella, Paris, Kutner 1982 (from memory); repeatable within one examiner, not between two.
struct JointPlay {
    static constexpr int normal = 3;
    static constexpr int highest = 6;
    int grade = normal;
    auto operator<=>(const JointPlay &) const = default;
};

/// What a clear check covered.
struct Clear {
    bool tenderness = false;
    bool motion = false;
    [[nodiscard]] bool any() const { return tenderness || motion; }
    bool operator==(const Clear &) const = default;
};

/// What the hand meets at the end of a joint's movement. Common practice, no source. Empty: the patient stops it before any
/// resistance is felt.
enum class EndFeel { Soft, Firm, Hard, Springy, Empty, Spasm };
inline constexpr WordTable<EndFeel, 6> endFeelWords{{{EndFeel::Soft, "soft"}, {EndFeel::Firm, "firm"}, {EndFeel::Hard, "hard"},
    {EndFeel::Springy, "springy"}, {EndFeel::Empty, "empty"}, {EndFeel::Spasm, "spasm"}}};

/// One place examined. Either found (tenderness, restriction, familiar), or clear, or unable - never two of them
/// about the same quality.
struct Finding {
    Place place;
    std::optional<Spot> spot;
    std::optional<StructureId> at; // landmark, where a muscle attaches to several
    std::optional<Tenderness> tenderness;
    std::optional<Restriction> restriction;
    bool sore = false; // tender, without a grade
    bool stiff = false; // restricted, without a grade
    std::optional<JointPlay> play; // joints only
    std::optional<EndFeel> endFeel; // joints only
    bool familiar = false; // the patient recognises the pain as theirs
    bool certain = false; // the examiner is very sure of what was felt of the motion
    bool afterComparing = false; // the motion was told only by comparing with the other side
    std::vector<std::string> texture; // what the tissue feels like, in words of the trade
    std::vector<Place> refersTo; // where pressing here is felt as well
    Clear clear;
    std::optional<std::string> unable; // the reason why it could not be examined
    std::string note;

    /// What an ungraded word counts as where something must be reckoned with: the middle of the scale (our choice).
    static constexpr int ungraded = 2;
    [[nodiscard]] int tendernessGrade() const { return tenderness ? tenderness->grade : (sore ? ungraded : 0); }
    [[nodiscard]] int restrictionGrade() const { return restriction ? restriction->grade : (stiff ? ungraded : 0); }

    [[nodiscard]] bool isPositive() const
    {
        return tendernessGrade() > 0 || restrictionGrade() > 0 || (play && play->grade != JointPlay::normal) || familiar;
    }
    /// Something is said of how it moves.
    [[nodiscard]] bool saysOfMotion() const { return restriction || stiff || play || endFeel || clear.motion; }
    /// Something is said at all, besides that it could not be examined.
    [[nodiscard]] bool saysAnything() const
    {
        return saysOfMotion() || tenderness || sore || familiar || !texture.empty() || !refersTo.empty() || clear.any()
            || !note.empty();
    }
    /// Checked and nothing found; a grade of 0 says the same as the word 'clear'.
    [[nodiscard]] bool isClear() const { return clear.any() || (!isPositive() && (tenderness || restriction || play)); }
    [[nodiscard]] bool isUnable() const { return unable.has_value(); }
    /// Something was found; with 'clear' of the other quality both hold (tender, but moving freely).
    [[nodiscard]] bool isFound() const { return !isUnable() && (isPositive() || !isClear()); }
    bool operator==(const Finding &) const = default;
};

struct Patient {
    std::string name;
    std::string born; // ISO 8601 date or empty
    bool operator==(const Patient &) const = default;
};

/// What the patient has or takes that bears on the work, by its id in resources/safety/conditions.json.
struct Condition {
    std::string id;
    std::vector<Place> at; // where, when it has a place
    bool operator==(const Condition &) const = default;
};

enum class AdviceList { Explain, Check, Treat };
inline constexpr WordTable<AdviceList, 3> adviceListWords{
    {{AdviceList::Explain, "explain"}, {AdviceList::Check, "check"}, {AdviceList::Treat, "treat"}}};

/// What the practitioner thinks of a row that the program offered.
struct Judgement {
    AdviceList list{};
    Place place;
    std::string dismissed; // the reason; empty: the row is pinned
    [[nodiscard]] bool isPinned() const { return dismissed.empty(); }
    bool operator==(const Judgement &) const = default;
};

/// What was examined again after the treatment; the same as before, each with its value now.
struct Retested {
    std::vector<Finding> findings;
    std::vector<Measure> measures;
    std::vector<TestResult> tests;
    std::optional<PainScore> pain; // of the first complaint, now
    bool operator==(const Retested &) const = default;
};

struct Visit {
    std::optional<Patient> patient;
    std::string date; // ISO 8601 date or empty
    std::string practitioner; // name on the printed page
    std::vector<Complaint> complaints; // the first one is what the visit is about
    std::vector<Place> complaintAt; // where it hurts
    std::vector<PainPatch> pain; // where it hurts, as painted
    std::vector<std::string> cautions; // what must be respected, one line each
    bool injured = false; // it began with an injury
    std::vector<Condition> conditions;
    std::vector<WarningAnswer> warnings; // one at most for a sign
    std::vector<ConsentAnswer> consents; // one at most for an item
    std::optional<SinceLast> sinceLast; // at a follow-up visit
    std::vector<std::string> promised; // until the next visit, by either of the two; one line each
    std::vector<std::string> focus; // what the visit before left for this one, one line each
    std::vector<Finding> findings; // in the order of examination
    std::vector<Measure> measures; // one at most for a movement, its side and who moves
    std::vector<TestResult> tests; // one at most for a test and its side
    std::optional<RetestMark> retest; // today's
    std::vector<Moment> timeline; // in the order of time
    std::vector<Judgement> judgements; // one at most for a place in a list
    PlanWish plan; // of this treatment
    TreatmentLog treatment;
    Retested retested;
    Closing closing;
    bool sidesIntended = false; // complaint and findings on opposite sides: asked, and meant so
    std::vector<Letter> letters; // to other professionals, in the order in which they were begun

    /// In the words of what the visit is about; empty when nothing was told.
    [[nodiscard]] std::string complaint() const { return complaints.empty() ? std::string() : complaints.front().text; }
    /// The complaint of the patient's record that the visit is about.
    [[nodiscard]] std::optional<int> episode() const { return complaints.empty() ? std::nullopt : complaints.front().episode; }
    bool operator==(const Visit &) const = default;
};

/// A real day of the Gregorian calendar, written YYYY-MM-DD (ISO 8601).
[[nodiscard]] bool isIsoDate(std::string_view text);

/// What was said before of a place with what is said now: what is new takes the place of what it concerns, the rest stays. A
/// place that could not be examined says nothing else, and saying something takes that back.
[[nodiscard]] Finding saidBeside(Finding before, const Finding &now);

[[nodiscard]] Finding mirrored(Finding finding);
[[nodiscard]] Visit mirrored(Visit visit);

} // namespace raphe
