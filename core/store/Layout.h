// The tables of the practice file, and the names by which sealed boxes are bound to their places. What can be read without a
// key is listed in DEVELOPERS.md: ids, kinds, times, sizes, sign-in names, public keys.
#pragma once

#include "core/store/Database.h"

#include <array>

namespace raphe {

inline constexpr int practiceApplicationId = 0x52617068; // "Raph" in ASCII
inline constexpr int firstSealedVersion = 2; // SQLite's user_version; 1 was the plain file
inline constexpr int practiceVersion = 2; // of today; older ones are brought to it, see Migrations.h

using PracticeId = std::array<std::uint8_t, 16>; // random, made with the file

/// The tables, in a database without any content; inside a transaction of the caller.
void createTables(const Database &db);

/// The practice's own number. Throws Error with Tampered when it has the wrong size.
[[nodiscard]] PracticeId readPracticeId(const Database &db);

/// Throws NotAPractice for a foreign or half-made database, NewerVersion for a later one.
void expectPractice(const Database &db);

/// Binds a box to one column of one row at one count of its changes: a box from elsewhere, or from before, is refused.
[[nodiscard]] std::string boxPlace(
    const PracticeId &practice, std::string_view table, std::int64_t row, std::string_view column, std::int64_t changes);

} // namespace raphe
