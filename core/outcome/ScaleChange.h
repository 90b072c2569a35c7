// Whether a change of a patient's number is more than what counts as none, by a published figure. Plain functions of plain
// values; nothing fails, any thread.
#pragma once

#include <string>

namespace raphe {

/// The least change of a scale that counts, and who says so.
struct ScaleThreshold {
    double least = 0; // points
    const char *source = "";
};

/// Numeric rating of pain, 0 to 10: least important change, consensus of Ostelo 2008 (Spine 33:90-4). Not its own error: that
/// was 1.8 points in patients with back trouble in hospital.
inline constexpr ScaleThreshold painScoreThreshold{2, "Ostelo 2008"};
/// Patient-Specific Functional Scale, 0 to 10, Stratford 1995 (Physiother Can 47:258-63): least detectable change at 90 %.
inline constexpr ScaleThreshold activityThreshold{3, "Stratford 1995"}; // of one activity
inline constexpr ScaleThreshold activitiesThreshold{2, "Stratford 1995"}; // of the mean of several

[[nodiscard]] bool counts(double before, double now, const ScaleThreshold &threshold);

/// 'less by 3: counts as a change (from 2 points on, Ostelo 2008)' (translated).
[[nodiscard]] std::string changeInWords(double before, double now, const ScaleThreshold &threshold);

} // namespace raphe
