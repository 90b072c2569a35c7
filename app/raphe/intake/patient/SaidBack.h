// What is said back of a patch: where it is, in the patient's words, with the side in capitals. The side comes from the drawing
// alone. Plain functions; any thread.
#pragma once

#include "app/raphe/intake/patient/PatientWords.h"
#include "core/reasoning/Knowledge.h"
#include "core/record/PainDrawing.h"

#include <QStringList>

namespace raphe {

/// A sentence for each place, most first, then one for the view. Nothing when the patch lies beside the body.
[[nodiscard]] QStringList saidBack(const PatientWords &words, const Knowledge &knowledge, const PainPatch &patch);
/// The places alone: 'LEFT shoulder cap; LEFT chest'.
[[nodiscard]] QString placesOf(const Knowledge &knowledge, const PainPatch &patch);

} // namespace raphe
