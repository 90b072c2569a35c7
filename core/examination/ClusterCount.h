// How many tests of a cluster brought the patient's own pain: counts, never a chance. Plain functions; nothing fails.
#pragma once

#include "core/examination/Examination.h"

#include <string>
#include <vector>

namespace raphe {

struct ClusterCount {
    const Cluster *cluster = nullptr; // of the examination, which must outlive it
    int familiar = 0;
    int done = 0;
    int unable = 0;
    [[nodiscard]] int parts() const { return static_cast<int>(cluster->parts.size()); }
    [[nodiscard]] bool reaches() const { return familiar >= cluster->threshold; }
    /// The tests without an answer, left or impossible, could change whether the count is reached: the studies did them all.
    [[nodiscard]] bool isOpen() const { return !reaches() && familiar + (parts() - done) >= cluster->threshold; }
};

/// A part without a side counts once: familiar when it is so on either side, done when both sides or the familiar one were.
[[nodiscard]] ClusterCount countOf(const Cluster &cluster, const std::vector<TestResult> &results);

/// '3 of 6 reproduced the familiar pain; 1 not done', and, once nothing is open, how many such patients of the first study
/// responded to its reference standard.
[[nodiscard]] std::string inWords(const ClusterCount &count);
/// For each study: whom, how many, sensitivity, specificity and likelihood ratios with their 95 % intervals, and the source.
[[nodiscard]] std::vector<std::string> studiesInWords(const ClusterCount &count, const Examination &examination);

} // namespace raphe
