// Brings the file of an older version to the present one when it is opened with its keys: one step from each version to the
// next, all in one transaction, so that a kill, a power cut or a step that fails leaves the file as it was.
// There is only one version of the sealed file yet, so there are no steps. What a step has to keep to:
// - It runs before foreign keys are enforced, so it may make a table anew; at the end every reference must hold.
// - It may not change what unlocking reads before any key is there: practice.ident, and the accounts but for their cards.
// - Before it changes rows it compares the head's sum with the rows as the older version counted them, and then writes the head
//   anew (Head.h): else a file that was tampered with would be taken for sound from then on.
// - Entries stay as they were signed.
#pragma once

#include "core/store/Keyring.h"

#include <functional>
#include <span>

namespace raphe {

/// From one version to the next; throws Error when it cannot.
using MigrationStep = std::function<void(const Database &, const Keyring &)>;

/// Does those steps that the file still needs: `steps[0]` leads from version `first` to the one after it, and so on. The file's
/// version is not below `first`. Throws Error, also when a reference does not hold afterwards (Tampered); then nothing is
/// changed.
void migrate(const Database &db, const Keyring &keys, std::int64_t first, std::span<const MigrationStep> steps);

/// The same with the steps that there are, to practiceVersion.
void migrateToPresent(const Database &db, const Keyring &keys);

} // namespace raphe
