#include "core/store/Migrations.h"

namespace raphe {

void migrate(const Database &db, const Keyring &keys, std::int64_t first, std::span<const MigrationStep> steps)
{
    db.setPragma("synchronous", "FULL", "2");
    db.run("PRAGMA secure_delete = ON"); // what is deleted is overwritten
    WriteTransaction transaction(db); // before the version is read: another program may be about to do the same
    const std::int64_t last = first + static_cast<std::int64_t>(steps.size());
    const std::int64_t now = db.number("PRAGMA user_version");
    if (now >= last)
        return;
    for (const MigrationStep &step : steps.subspan(static_cast<std::size_t>(now - first)))
        step(db, keys);
    if (db.run("PRAGMA foreign_key_check").next())
        throw Error{ErrorCode::Tampered, db.file(), "a row refers to one that is not there"};
    db.run("PRAGMA user_version = " + std::to_string(last));
    transaction.commit();
}

void migrateToPresent(const Database &db, const Keyring &keys)
{
    migrate(db, keys, firstSealedVersion, {});
}

} // namespace raphe
