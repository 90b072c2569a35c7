// A test of the examination, the studies of what its answer is worth, and clusters of tests that are counted together. Content of
// resources/examination/tests.json. Plain values.
#pragma once

#include "core/anatomy/Structure.h"
#include "core/examination/Movement.h"
#include "core/record/TestResult.h"

#include <optional>
#include <string>
#include <vector>

namespace raphe {

/// What is asked of the patient or seen decides how the answer is given: see answerOf.
enum class TestKind { Provocation, Nerve, Reflex, UpperMotorNeurone, Power, Sensation, Vital, Screening };
inline constexpr WordTable<TestKind, 8> testKindWords{{{TestKind::Provocation, "provocation"}, {TestKind::Nerve, "nerve"},
    {TestKind::Reflex, "reflex"}, {TestKind::UpperMotorNeurone, "upper-motor-neurone"}, {TestKind::Power, "power"},
    {TestKind::Sensation, "sensation"}, {TestKind::Vital, "vital"}, {TestKind::Screening, "screening-movement"}}};

enum class AnswerForm { Pain, Grade, Present, Values };

/// How a kind of test is answered: provocation and nerve by the pain that they bring; reflex 0-4 (0 absent, 1 less, 2 usual,
/// 3 brisk, 4 with clonus), power 0-5, sensation 0-2 (0 absent, 1 altered, 2 usual); signs present or not; vitals by numbers.
/// The grades are common practice, no source.
[[nodiscard]] AnswerForm answerFormOf(TestKind kind);
/// The highest grade of such a test; only where it is graded.
[[nodiscard]] int highestGradeOf(TestKind kind);

/// Patients with and without what a reference standard found, by the answer to the test.
struct TwoByTwo {
    int truePositives = 0;
    int falseNegatives = 0;
    int falsePositives = 0;
    int trueNegatives = 0;
    bool operator==(const TwoByTwo &) const = default;
};

/// What one study says of a test or a cluster.
struct Accuracy {
    std::string against; // the reference standard; empty: said with the setting
    std::string setting; // whose patients
    std::optional<TwoByTwo> table;
    std::optional<double> sensitivity; // 0 to 1, where no table is known
    std::optional<double> specificity;
    std::optional<int> people; // in the study
    std::string source;
    Reading read{};
};

/// What a vital sign is written as.
struct VitalForm {
    std::string unit;
    std::vector<std::string> fields; // one or two
    std::vector<double> least; // of each; the bounds only catch slips of the pen
    std::vector<double> most;
};

/// The warning sign that a positive answer is: it stops the work until it is decided what to do.
struct RaisedSign {
    std::string sign; // of resources/safety/warning-signs.json
    std::vector<double> from; // of vitals: any of the values, in the order of the form, that is as high
    std::string source; // of those values
};

struct ExamTest {
    std::string id;
    std::string name;
    TestKind kind{};
    std::string group;
    bool isPaired = true;
    std::string position;
    std::string how;
    std::string positive; // what counts
    std::vector<StructureId> loads;
    std::vector<StructureId> loadsOtherSide; // what the same hands load on the side that is not tested
    std::vector<std::string> actions;
    std::vector<std::string> roots; // as "L5"
    std::optional<VitalForm> vital;
    std::optional<RaisedSign> raises;
    std::vector<Accuracy> accuracy;
};

/// The warning sign that this answer to the test is; empty when none.
[[nodiscard]] std::string signRaisedBy(const ExamTest &test, const TestResult &result);

/// Tests that are counted together.
struct Cluster {
    struct Part {
        std::string test;
        std::optional<Side> side; // nothing: on either side counts once
    };
    std::string id;
    std::string name;
    std::vector<Part> parts;
    int threshold = 0; // so many familiar pains
    std::vector<Accuracy> studies; // of this threshold
};

} // namespace raphe
