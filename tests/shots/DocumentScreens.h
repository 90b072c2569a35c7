// Pictures of the documents of the open visit: their dialog, the letter, and the patient's screen in another language.
#pragma once

#include "app/raphe/MainWindow.h"

#include <QString>

namespace raphe {

/// `name`: of a file that begins with "%1", which becomes the screen's own name.
void photographDocuments(MainWindow &window, VisitSession &session, const Theme &theme, const QString &name);

} // namespace raphe
