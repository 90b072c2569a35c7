// What somebody typed, made safe to be shown among other words: characters that turn the direction of text around, or that
// cannot be seen, become a visible mark, and the whole cannot change the direction of what stands beside it. What is stored stays
// as it was typed. Plain functions; any thread.
#pragma once

#include <QString>

namespace raphe {

[[nodiscard]] QString safelyShown(const QString &typed);
/// Whether it holds characters that turn the direction of text around and cannot be seen themselves.
[[nodiscard]] bool hasHiddenDirection(const QString &typed);

} // namespace raphe
