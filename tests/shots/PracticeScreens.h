// Pictures of the dialogs of a practice, with invented people.
#pragma once

#include "core/plan/Advice.h"
#include "core/reasoning/Knowledge.h"

#include <QString>

namespace raphe {

/// `name`: of a file that begins with "%1", which becomes the screen's own name. False when one cannot be made or written.
bool photographPractice(const Knowledge &knowledge, const Adviser &adviser, const QString &name);

} // namespace raphe
