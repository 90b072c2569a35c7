// Every page of the screen that the patient is given, at a laptop's and a desk's size.
#pragma once

#include "app/paint/Theme.h"
#include "app/raphe/VisitSession.h"

#include <QString>

namespace raphe {

/// Names of files come of `name` with %1 as the screen; false when a page could not be left or written. The visit gets the
/// answers.
[[nodiscard]] bool photographPatientMode(VisitSession &session, QWidget &behind, const Theme &theme, const QString &name);

} // namespace raphe
