// When something was examined, as plain values: the order of a visit.
#pragma once

#include "core/anatomy/Place.h"

#include <string>

namespace raphe {

enum class MomentKind { Finding, Movement, Test };
inline constexpr WordTable<MomentKind, 3> momentKindWords{
    {{MomentKind::Finding, "finding"}, {MomentKind::Movement, "movement"}, {MomentKind::Test, "test"}}};

/// What is said of it now stands with the finding, the measure or the result; a thing recorded again has its later time too.
struct Moment {
    std::string time; // local, HH:MM:SS
    MomentKind kind{};
    std::string id; // of the structure, the movement or the test
    Side side{};
    bool operator==(const Moment &) const = default;
};

/// The movement or test that is done again at the end of the visit.
struct RetestMark {
    MomentKind kind = MomentKind::Movement; // never a finding
    std::string id;
    Side side{};
    bool operator==(const RetestMark &) const = default;
};

} // namespace raphe
