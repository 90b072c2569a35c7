// The closed lists of the atlas in words that a practitioner reads (translated).
#pragma once

#include "core/anatomy/Structure.h"

#include <string>

namespace raphe {

[[nodiscard]] std::string inWords(Kind kind); // 'muscle', 'caution area'
[[nodiscard]] std::string inWords(Layer layer); // 'deep fascia', 'bone and joint'
[[nodiscard]] std::string inWords(Motion motion); // 'lateral rotation'
[[nodiscard]] std::string inWords(JointComplex complex); // 'lumbar spine'

} // namespace raphe
