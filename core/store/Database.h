// One connection to an SQLite file through Qt Sql, with every return value checked. Belongs to the thread that made it; several
// objects, also in several programs, may have the same file open. Everything here throws raphe::Error, place: the file.
// The file is only ever touched through SQLite: opening and closing it by other means in the same process would drop SQLite's
// POSIX locks (https://www.sqlite.org/howtocorrupt.html, section 2.2).
#pragma once

#include "core/base/Result.h"

#include <algorithm>
#include <cstdint>
#include <initializer_list>
#include <memory>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace raphe {

using Blob = std::vector<std::uint8_t>;

/// What goes into a column; the first is NULL.
using Value = std::variant<std::monostate, std::int64_t, std::string, Blob>;

/// The rows of one query, one after the other; columns from 0. NULL reads as 0 or empty.
class Rows {
public:
    struct Query;
    explicit Rows(std::unique_ptr<Query> query);
    ~Rows();
    Rows(Rows &&) noexcept;
    Rows &operator=(Rows &&) = delete;

    [[nodiscard]] bool next();
    [[nodiscard]] std::int64_t number(int column) const;
    [[nodiscard]] std::string text(int column) const;
    [[nodiscard]] Blob blob(int column) const;
    [[nodiscard]] bool isNull(int column) const;
    /// How many rows the statement changed.
    [[nodiscard]] int affected() const;
    /// Of the row that the statement inserted.
    [[nodiscard]] std::int64_t newId() const;

private:
    std::unique_ptr<Query> m_query;
};

/// The bytes of a column that has one size. Throws Error with Tampered, place as given.
template <class Array> [[nodiscard]] Array arrayOf(const Blob &blob, const std::string &place)
{
    Array out{};
    if (blob.size() != out.size())
        throw Error{ErrorCode::Tampered, place, "a value of the wrong size"};
    std::copy(blob.begin(), blob.end(), out.begin());
    return out;
}

template <class Array> [[nodiscard]] Blob blobOf(const Array &bytes)
{
    return {bytes.begin(), bytes.end()};
}

class Database {
public:
    /// Opens the file, or makes an empty one. The folder must exist.
    explicit Database(std::string file);
    ~Database();
    Database(const Database &) = delete;
    Database &operator=(const Database &) = delete;

    [[nodiscard]] const std::string &file() const { return m_file; }
    /// One statement; `values` for its question marks.
    Rows run(std::string_view sql, std::initializer_list<Value> values = {}) const;
    /// The first row, which must be there.
    [[nodiscard]] Rows single(std::string_view sql, std::initializer_list<Value> values = {}) const;
    [[nodiscard]] std::int64_t number(std::string_view sql, std::initializer_list<Value> values = {}) const;
    /// Sets it and reads it back.
    void setPragma(const std::string &name, const std::string &value, const std::string &expected) const;
    /// Write-ahead log, a sync at every commit, foreign keys. Waits for others that open the same new file.
    void makeDurable() const;

private:
    std::string m_file;
    std::string m_name; // of the Qt Sql connection; QSqlDatabase itself must not be a member
};

/// Takes the write lock at once, so that nothing read inside can be outdated when it is written. Rolls back unless committed;
/// when that fails there is nothing left to say, for SQLite rolls back by itself at the next opening.
class WriteTransaction {
public:
    explicit WriteTransaction(const Database &db);
    ~WriteTransaction();
    WriteTransaction(const WriteTransaction &) = delete;
    WriteTransaction &operator=(const WriteTransaction &) = delete;
    void commit();

private:
    const Database &m_db;
    bool m_done = false;
};

} // namespace raphe
