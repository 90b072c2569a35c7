#include "core/anatomy/SpinalRoot.h"

#include <array>
#include <regex>
#include <string>

namespace raphe {

bool isSpinalRoot(std::string_view text)
{
    static const std::regex root("C[1-8]|T([1-9]|1[0-2])|L[1-5]|S[1-5]|Co1");
    return std::regex_match(text.begin(), text.end(), root);
}

std::optional<StructureId> segmentOf(std::string_view root)
{
    static constexpr std::array segments{"c0-c1", "c1-c2", "c2-c3", "c3-c4", "c4-c5", "c5-c6", "c6-c7", "c7-t1", "t1-t2", "t2-t3",
        "t3-t4", "t4-t5", "t5-t6", "t6-t7", "t7-t8", "t8-t9", "t9-t10", "t10-t11", "t11-t12", "t12-l1", "l1-l2", "l2-l3", "l3-l4",
        "l4-l5", "l5-s1"}; // C1 to C8, T1 to T12, L1 to L5 in this order
    if (root.starts_with('S') || root.starts_with("Co"))
        return std::nullopt;
    const std::size_t before = root.front() == 'C' ? 0 : (root.front() == 'T' ? 8 : 20);
    return StructureId{segments.at(before + std::stoul(std::string(root.substr(1))) - 1)};
}

} // namespace raphe
