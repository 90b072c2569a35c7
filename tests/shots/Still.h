// A picture is taken when what it shows has come to rest, however slow the machine.
#pragma once

#include <QWidget>

namespace raphe {

/// Waits a moment for what follows a change, then until every body in the widget stands still; false when one never does.
[[nodiscard]] bool waitUntilStill(const QWidget &widget);

} // namespace raphe
