// The words that the window has for what a pain feels like.
#pragma once

#include <QStringList>

namespace raphe {

/// In the order of painQualityWords, for a button.
[[nodiscard]] QStringList painQualityNames();

} // namespace raphe
