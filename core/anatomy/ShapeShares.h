// How much of one drawn shape lies under or on another. Plain functions of the drawings, which remember nothing (Regions does);
// thread-safe. A structure is given by what shows it.
#pragma once

#include "core/anatomy/Drawing.h"

#include <map>
#include <vector>

namespace raphe {

/// What shows a structure: itself, else its drawn parts, else the next whole that is drawn. Empty: nothing does.
[[nodiscard]] std::vector<StructureId> drawnFor(const Atlas &atlas, const Body &body, const StructureId &id);

/// Surface region -> share (0 to 1) of the shape that lies under it: in the back view, or the front where that shows clearly
/// more, else in the other view that shows most; and in the insets of palm and sole, where these show it too.
[[nodiscard]] std::map<StructureId, double> regionsOver(const Body &body, const std::vector<StructureId> &drawn);

/// The greatest share (0 to 1), over the views, of the first that lies on or under the second. Side and head, which look through
/// the whole width of the body, count only for what front and back do not show.
[[nodiscard]] double shareOn(const Body &body, const std::vector<StructureId> &first, const std::vector<StructureId> &second);

} // namespace raphe
