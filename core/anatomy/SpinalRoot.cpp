#include "core/anatomy/SpinalRoot.h"

#include <array>
#include <string>

namespace raphe {

namespace {

struct RootGroup {
    std::string_view letters;
    std::size_t count;
};
constexpr std::array<RootGroup, 5> groups{{{"C", 8}, {"T", 12}, {"L", 5}, {"S", 5}, {"Co", 1}}};

// At which of all roots, from C1 down, the named one stands.
std::optional<std::size_t> indexOf(std::string_view root)
{
    std::size_t before = 0;
    for (const RootGroup &group : groups) {
        for (std::size_t number = 1; number <= group.count; ++number)
            if (root == std::string(group.letters) + std::to_string(number))
                return before + number - 1;
        before += group.count;
    }
    return std::nullopt;
}

} // namespace

bool isSpinalRoot(std::string_view text)
{
    return indexOf(text).has_value();
}

std::optional<StructureId> segmentOf(std::string_view root)
{
    static constexpr std::array segments{"c0-c1", "c1-c2", "c2-c3", "c3-c4", "c4-c5", "c5-c6", "c6-c7", "c7-t1", "t1-t2", "t2-t3",
        "t3-t4", "t4-t5", "t5-t6", "t6-t7", "t7-t8", "t8-t9", "t9-t10", "t10-t11", "t11-t12", "t12-l1", "l1-l2", "l2-l3", "l3-l4",
        "l4-l5", "l5-s1"}; // of C1 to C8, T1 to T12, L1 to L5 in this order
    const auto index = indexOf(root);
    return index && *index < segments.size() ? std::optional(StructureId{segments[*index]}) : std::nullopt;
}

} // namespace raphe
