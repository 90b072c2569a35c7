// Before work is logged that a caution limits: what holds there, and whether it was minded.
#pragma once

#include "app/raphe/VisitSession.h"

class QWidget;

namespace raphe {

/// `why`: what holds at the step's place.
[[nodiscard]] bool askMinded(const VisitSession &session, const TreatmentStep &step, const QString &why, QWidget *parent);

/// Each reason once, one a line.
[[nodiscard]] QString reasonsOf(const std::vector<CautionVerdict> &held);

} // namespace raphe
