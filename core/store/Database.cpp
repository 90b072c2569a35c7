#include "core/store/Database.h"

#include <QDir>
#include <QFileInfo>
#include <QSqlDatabase>
#include <QSqlError>
#include <QSqlQuery>
#include <QThread>
#include <QVariant>

#include <atomic>
#include <utility>

namespace raphe {

namespace {

// Primary result codes of SQLite (https://www.sqlite.org/rescode.html); the low byte of an extended code.
constexpr int sqlitePerm = 3;
constexpr int sqliteBusy = 5;
constexpr int sqliteReadonly = 8;
constexpr int sqliteFull = 13;
constexpr int sqliteCantOpen = 14;
constexpr int sqliteNotADatabase = 26;

int primaryCode(const QSqlError &error)
{
    return error.nativeErrorCode().toInt() & 0xff; // 0, which is no error of SQLite, when Qt itself refused
}

ErrorCode codeOf(const QSqlError &error)
{
    switch (primaryCode(error)) {
    case sqliteNotADatabase: return ErrorCode::NotAPractice;
    case sqlitePerm:
    case sqliteReadonly:
    case sqliteFull:
    case sqliteCantOpen: return ErrorCode::CannotWrite;
    default: return ErrorCode::Storage;
    }
}

[[noreturn]] void fail(const QSqlError &error, const std::string &file)
{
    const QString words = error.databaseText().isEmpty() ? error.text() : error.databaseText();
    throw Error{codeOf(error), file, words.toStdString()};
}

QString text(std::string_view utf8)
{
    return QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()));
}

QSqlDatabase connection(const std::string &name)
{
    return QSqlDatabase::database(text(name), false);
}

struct ToVariant {
    QVariant operator()(std::monostate) const { return {}; }
    QVariant operator()(std::int64_t number) const { return QVariant::fromValue<qint64>(number); }
    QVariant operator()(const std::string &utf8) const { return text(utf8); }
    QVariant operator()(const Blob &blob) const
    {
        return QByteArray(reinterpret_cast<const char *>(blob.data()), static_cast<qsizetype>(blob.size()));
    }
};

} // namespace

struct Rows::Query {
    QSqlQuery query;
    std::string file;
};

Rows::Rows(std::unique_ptr<Query> query) : m_query(std::move(query)) { }

Rows::~Rows() = default;
Rows::Rows(Rows &&) noexcept = default;

bool Rows::next()
{
    if (m_query->query.next())
        return true;
    if (m_query->query.lastError().isValid()) // next() answers false at the end and on an error alike
        fail(m_query->query.lastError(), m_query->file);
    return false;
}

std::int64_t Rows::number(int column) const
{
    return m_query->query.value(column).toLongLong();
}

std::string Rows::text(int column) const
{
    return m_query->query.value(column).toString().toStdString();
}

Blob Rows::blob(int column) const
{
    const QByteArray bytes = m_query->query.value(column).toByteArray(); // of a number or a text: its characters
    return {bytes.begin(), bytes.end()};
}

bool Rows::isNull(int column) const
{
    return m_query->query.isNull(column);
}

int Rows::affected() const
{
    return m_query->query.numRowsAffected();
}

std::int64_t Rows::newId() const
{
    return m_query->query.lastInsertId().toLongLong();
}

Database::Database(std::string file) : m_file(std::move(file))
{
    static std::atomic<int> count{0};
    m_name = "raphe-" + std::to_string(++count);
    const QFileInfo info(text(m_file));
    if (m_file.empty() || !info.dir().exists())
        throw Error{ErrorCode::CannotWrite, m_file, "no such folder"};
    if (info.isDir())
        throw Error{ErrorCode::NotAPractice, m_file, "a folder"};
    // SQLite would delete the log of an emptied file and start afresh; its content may still be worth saving.
    if (info.size() == 0 && QFileInfo(info.absoluteFilePath() + QStringLiteral("-wal")).size() > 0)
        throw Error{ErrorCode::Storage, m_file, "empty, but its write-ahead log is not"};
    QSqlDatabase db = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), text(m_name));
    db.setDatabaseName(info.absoluteFilePath());
    if (!db.open()) {
        const QSqlError error = db.lastError();
        db = {};
        QSqlDatabase::removeDatabase(text(m_name));
        fail(error, m_file);
    }
}

Database::~Database()
{
    connection(m_name).close();
    QSqlDatabase::removeDatabase(text(m_name));
}

Rows Database::run(std::string_view sql, std::initializer_list<Value> values) const
{
    QSqlQuery query(connection(m_name));
    query.setForwardOnly(true);
    if (!query.prepare(text(sql)))
        fail(query.lastError(), m_file);
    for (const Value &value : values)
        query.addBindValue(std::visit(ToVariant{}, value));
    if (!query.exec())
        fail(query.lastError(), m_file);
    return Rows(std::make_unique<Rows::Query>(Rows::Query{std::move(query), m_file}));
}

Rows Database::single(std::string_view sql, std::initializer_list<Value> values) const
{
    Rows rows = run(sql, values);
    if (!rows.next())
        throw Error{ErrorCode::Storage, m_file, "no answer to: " + std::string(sql)};
    return rows;
}

std::int64_t Database::number(std::string_view sql, std::initializer_list<Value> values) const
{
    return single(sql, values).number(0);
}

void Database::setPragma(const std::string &name, const std::string &value, const std::string &expected) const
{
    run("PRAGMA " + name + " = " + value);
    if (const std::string now = single("PRAGMA " + name).text(0); now != expected)
        throw Error{ErrorCode::Storage, m_file, name + " is " + now};
}

void Database::makeDurable() const
{
    setPragma("foreign_keys", "ON", "1");
    setPragma("synchronous", "FULL", "2");
    // The one step at which SQLite does not wait for others by itself, when two make or open the same new file at once.
    constexpr int attempts = 250; // with the pause five seconds, as long as Qt's driver waits for a busy file
    constexpr unsigned long pauseMs = 20;
    for (int left = attempts; left > 0; --left) {
        QSqlQuery query(connection(m_name));
        if (query.exec(QStringLiteral("PRAGMA journal_mode = WAL")))
            break;
        if (primaryCode(query.lastError()) != sqliteBusy || left == 1)
            fail(query.lastError(), m_file);
        QThread::msleep(pauseMs);
    }
    if (const std::string mode = single("PRAGMA journal_mode").text(0); mode != "wal")
        throw Error{ErrorCode::Storage, m_file, "journal_mode is " + mode};
}

WriteTransaction::WriteTransaction(const Database &db) : m_db(db)
{
    m_db.run("BEGIN IMMEDIATE");
}

WriteTransaction::~WriteTransaction()
{
    if (m_done)
        return;
    try {
        m_db.run("ROLLBACK");
    } catch (const Error &) { // see above
    }
}

void WriteTransaction::commit()
{
    m_db.run("COMMIT");
    m_done = true;
}

} // namespace raphe
