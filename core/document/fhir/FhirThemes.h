// What a bundle says, theme by theme: each adds its resources to the bundle that is made. In the order in which they are called.
#pragma once

#include "core/document/fhir/FhirMaking.h"

namespace raphe::fhir {

/// Patient, Practitioner, Organization, Encounter.
void addPeople(Making &making);
/// The complaints (Condition) with their scales, where it hurts, the pain drawing's patches, the time since the last visit.
void addComplaints(Making &making);
/// What bears on the work: conditions (Condition) and cautions (Flag).
void addCautions(Making &making);
/// The warning signs that were asked for (QuestionnaireResponse), without those that were asked when nobody else could hear; and
/// the consents (Consent).
void addAsked(Making &making);
/// What was felt by hand, before and, where it was felt again, after the treatment.
void addFindings(Making &making);
/// Movements and tests, before and after.
void addMeasures(Making &making);
/// What was done (Procedure), what was said meanwhile, and what should not have happened (AdverseEvent).
void addWork(Making &making);
/// Goals, the plan of care with advice and call (CarePlan), and the practitioner's impression (ClinicalImpression).
void addCare(Making &making);
/// Who signed what when (Provenance); last, since it names all the others.
void addSignatures(Making &making);

/// The names of the complaints' conditions, in their order.
[[nodiscard]] std::string complaintName(std::size_t index);

/// Whether what is seen is from before the treatment, or was looked at again after it.
enum class When { Before, After };
/// Adds an observation under its name. After the treatment it gets a category that says so and names the one of before, if there
/// is one of the same name.
Json addSeen(Making &making, When when, const std::string &name, Json observation);
/// The time (HH:MM:SS) at which it was examined; empty when none was kept, or after the treatment.
[[nodiscard]] std::string timeOf(const Making &making, When when, MomentKind kind, const std::string &id, Side side);

} // namespace raphe::fhir
