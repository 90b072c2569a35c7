// What is worked through when a region is examined. Content of resources/examination/sheets.json. Plain values.
#pragma once

#include "core/anatomy/Structure.h"

#include <string>
#include <vector>

namespace raphe {

struct Sheet {
    std::string id;
    std::string name;
    std::vector<StructureId> regions; // surface regions for whose pain it is proposed
    std::vector<std::string> movements; // in the order of work, as the rest
    std::vector<StructureId> segments; // joints, for play and motion, left against right
    std::vector<std::string> tests;
    std::vector<std::string> nerves; // tests that stand there only when the complaint calls for nerves
    std::vector<std::string> cord; // only when it calls for the spinal cord
    std::vector<std::string> retest; // movements and tests that make good retests, best first
};

} // namespace raphe
