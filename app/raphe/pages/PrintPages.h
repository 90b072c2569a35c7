// Printing a document through the dialog of the system.
#pragma once

#include "app/paint/Paper.h"

class QWidget;

namespace raphe {

/// False when the dialog was left. Fails when the printer does not begin or gives up.
[[nodiscard]] Result<bool> printThroughDialog(const PrintedPages &document, QWidget *parent);

} // namespace raphe
