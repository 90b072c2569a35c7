// A random key that a person prints, keeps in a drawer and types when the passphrase is lost. 9 groups of 5 characters;
// 4 of each group are random, the last checks them: 36 x log2(29) = 174.9 random bits, far beyond guessing, so that
// nothing slow has to stand between the text and the key.
//
// The alphabet is the ten digits and the capital letters but for seven that are taken for another character: O for 0,
// I and L for 1, Z for 2, S for 5, B for 8, U for V. Who types one of the seven means the other. 29 characters are left,
// and 29 is prime: with the characters as numbers c1 to c5, 2c1 + 3c2 + 4c3 + 5c4 + c5 must equal the group's number
// modulo 29. As the factors differ and none is 0, one wrong character and any two exchanged ones are always found, a
// group in the wrong place too, and of other slips 28 in 29.
//
// The text lives in ordinary memory, which is neither locked nor wiped: keep the object only while it is shown or typed.
#pragma once

#include "core/base/Result.h"
#include "core/store/crypto/SecretBytes.h"

#include <cstddef>
#include <string>
#include <string_view>

namespace raphe {

class RecoveryKey {
public:
    static constexpr std::size_t groupCount = 9;
    static constexpr std::size_t groupSize = 5;
    static constexpr std::string_view alphabet = "0123456789ACDEFGHJKMNPQRTVWXY";

    [[nodiscard]] static RecoveryKey random();

    /// Reads what a person typed: either case, look-alikes, spaces, line ends and hyphens anywhere or nowhere.
    /// Fails with MistypedKey; the place is "group 3" (from 1), the detail what is wrong there without the rest of the
    /// group, so that it may be shown and logged. A lost or doubled character is named by its group when the groups are
    /// kept apart, otherwise by the first group that does not check.
    [[nodiscard]] static Result<RecoveryKey> parse(std::string_view typed);

    /// "XXXXX-XXXXX-...", capital letters.
    [[nodiscard]] std::string text() const;
    /// The characters of a group, numbered from 1 to groupCount. Throws Error with OutOfRange.
    [[nodiscard]] std::string group(std::size_t number) const;
    /// Whether a person who is asked for that group typed it; as forgiving as parse.
    [[nodiscard]] bool isGroup(std::size_t number, std::string_view typed) const;

    /// 32 bytes: BLAKE2b of the text without hyphens, keyed with the name of this use.
    [[nodiscard]] SecretBytes key() const;

private:
    explicit RecoveryKey(std::string characters);

    std::string m_characters; // as in text(), without hyphens
};

} // namespace raphe
