// The windows of the examination that the film does not open: the pass, the sweep, what else was felt, the page of help, a barred
// sheet.
#pragma once

#include "app/raphe/MainWindow.h"

#include <QString>

namespace raphe {

/// Names of files come of `name` with %1 as the screen; false when something could not be written.
[[nodiscard]] bool photographExamination(VisitSession &session, MainWindow &window, const Theme &theme, const QString &name);

} // namespace raphe
