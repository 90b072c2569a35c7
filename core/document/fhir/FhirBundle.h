// One visit as an HL7 FHIR R4 Bundle, for the record system of another clinician: patient, practitioner, encounter, complaints,
// warning signs, consents, findings, measures, tests, work, what went wrong, plan, impression, signatures.
//
// - It is a collection: every reference leads to an entry of the bundle. Ids are made of names (FhirSource), so that the same
//   visit gives the same bundle, byte for byte, and an amended one gives the same ids.
// - Each finding is a panel of one place (structure, side, spot) whose members are its qualities. Clear and 'could not' are told
//   like the rest. What was examined again after the treatment names what it follows.
// - Left and right stand on every place three times: coded beside the body site, in the BodyStructure, and in words.
// - Words are English whatever the language of the window; what practitioner and patient wrote stands as it is.
// - Warning signs that are asked only when nobody else can hear are left out, question and answer alike, as in the letter: the
//   bundle goes where we cannot see who reads it. So is what was moved to another patient.
// - Left out as well: the strokes of the pain drawing (its patches are told), wishes for the plan and what was left of it,
//   judgements on the program's lists, which cautions were read, what the last visit left for this one, and letters. Nothing of
//   the program's own reasoning is in it.
#pragma once

#include "core/base/Result.h"
#include "core/document/fhir/FhirSource.h"

#include <string>

namespace raphe {

/// Pretty-printed JSON, UTF-8. Fails with OutOfRange when the zone of the source cannot be (beyond 14 hours either way).
[[nodiscard]] Result<std::string> fhirBundle(const FhirSource &source);

} // namespace raphe
