// What the patient marked and answered on the screen that was handed over, and how it goes into the visit beside what stood there
// before. Plain values and functions of them; any thread.
//
// Nothing that stood in the visit is lost. Where both wrote something of the same:
// - texts: both, the patient's on a line of its own after 'Patient:';
// - numbers, times of day: the patient's own stand, since it is their pain; what stood before is kept in the complaint's words;
// - irritability: the practitioner's judgement stands, and what the patient's answers amount to is kept in the words.
#pragma once

#include "core/record/Visit.h"

#include <optional>
#include <string>
#include <vector>

namespace raphe {

/// Where patches stand among each other: front, back, sides, then the rest.
[[nodiscard]] int rankOf(const PainPatch &patch);

struct PatientAnswers {
    std::vector<PainPatch> pain; // by rankOf
    Complaint complaint; // only what the patient answered
    bool operator==(const PatientAnswers &) const = default;
};

/// What the patient may go on with: their own patches that nobody has said back yet.
[[nodiscard]] PatientAnswers startingAnswers(const Visit &visit);

/// The visit's patches with the patient's: `before` is the visit as it was when the screen was handed over.
[[nodiscard]] std::vector<PainPatch> mergedPain(const Visit &before, const PatientAnswers &answers);
/// Whether a drawing can hold it (PainLimits).
[[nodiscard]] bool fitsDrawing(const std::vector<PainPatch> &pain);

/// The first complaint with the patient's answers; the others stay as they are.
[[nodiscard]] std::vector<Complaint> mergedComplaints(const Visit &before, const PatientAnswers &answers);

enum class Stirs { Little, Some, Lots };
enum class Settles { Minutes, Hours, Days };
/// Common practice, no source: little and hours or days is high, a lot and minutes is low, all else is medium.
[[nodiscard]] Irritability irritabilityOf(Stirs stirs, Settles settles);

} // namespace raphe
