// Result<T>: a value or an Error. Used wherever something can fail; nothing throws across floors.
// An Error carries a code, the place (file and JSON pointer, file and position, or argument) and the
// offending word. It holds no sentence: app/words turns it into one. Owns its contents; no threads.
#pragma once

#include <string>
#include <utility>
#include <variant>

namespace raphe {

enum class ErrorCode {
    BadJson, // not JSON at all; detail: the parser's reason
    MissingField, // detail: the field's name
    UnknownField, // detail: the field's name
    WrongType, // detail: the type that was expected
    UnknownWord, // a word outside a closed list; detail: the word
    OutOfRange, // detail: the value and the allowed range
    BadId, // not lower case with hyphens; detail: the id
    UnknownId, // names nothing in the atlas; detail: the id
    Duplicate, // detail: the id
    WrongFormat, // "format" or "version" is not ours; detail: what was found
    MissingEnd, // a muscle without origin or insertion; detail: the muscle
    SkeletonCycle, // tree joints form a ring; detail: the joint that closes it
    SkeletonGap, // tree joints do not reach a bone; detail: the bone
    GradeTooHigh, // link graded above its source; detail: the link
    WrongSide, // a paired structure called midline or the reverse; detail: the structure
    BadDrawing, // the drawing breaks a rule; detail: which
    Contradiction, // e.g. clear of tenderness and tender; detail: which
    CannotRead, // file; detail: the system's reason
    CannotWrite, // file; detail: the system's reason
    NotAPractice, // the file is some other database; detail: what
    NewerVersion, // made by a later program; detail: its version
    Storage, // the database refused; detail: its message
    WrongPassphrase, // or a sign-in name that does not exist
    MistypedKey, // a recovery key with a slip; place: the group; detail: what is wrong there
    Tampered, // the practice file is not as it was written; detail: what
    NotAllowed, // e.g. a signed visit cannot be changed; detail: what
    NoCrypto, // the cryptographic library does not start; detail: its call
    OutOfMemory, // detail: how much was asked for
    BadArgument // command line; detail: what is wrong
};

struct Error {
    ErrorCode code{};
    std::string place;
    std::string detail;
};

template <class T> class [[nodiscard]] Result {
public:
    Result(T value) : m_state(std::in_place_index<0>, std::move(value)) { }
    Result(Error error) : m_state(std::in_place_index<1>, std::move(error)) { }

    [[nodiscard]] bool ok() const { return m_state.index() == 0; }
    explicit operator bool() const { return ok(); }
    [[nodiscard]] const T &value() const & { return std::get<0>(m_state); }
    [[nodiscard]] T &value() & { return std::get<0>(m_state); }
    [[nodiscard]] T &&value() && { return std::get<0>(std::move(m_state)); }
    [[nodiscard]] const Error &error() const { return std::get<1>(m_state); }

private:
    std::variant<T, Error> m_state;
};

struct Done { }; // the value of a Result that has nothing else to say

} // namespace raphe
