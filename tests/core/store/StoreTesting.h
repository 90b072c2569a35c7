// What the tests of the store share: a folder of their own, the application object that Qt's drivers need, and plain
// SQL on a file behind the store's back. One thread at a time.
#pragma once

#include "core/base/Result.h"

#include "tests/support/PrintError.h"

#include <QCoreApplication>
#include <QSqlDatabase>
#include <QSqlError>
#include <QSqlQuery>
#include <QTemporaryDir>
#include <QVariant>

#include <gtest/gtest.h>

#include <fstream>
#include <iterator>
#include <memory>
#include <string>

namespace raphe {

/// The value, or a failed test and a value made of nothing.
template <class T> T valueOf(Result<T> result)
{
    if (result)
        return std::move(result).value();
    ADD_FAILURE() << testing::PrintToString(result.error());
    return {};
}

class StoreTest : public testing::Test {
protected:
    static void SetUpTestSuite()
    {
        if (QCoreApplication::instance())
            return;
        static int count = 1;
        static char name[] = "store-test";
        static char *arguments[] = {name, nullptr};
        static QCoreApplication application(count, arguments);
    }

    void SetUp() override { ASSERT_TRUE(folder.isValid()); }

    std::string path(const char *name) const { return folder.filePath(QString::fromUtf8(name)).toStdString(); }

    static std::string bytes(const std::string &file)
    {
        std::ifstream in(file, std::ios::binary);
        return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
    }

    static void writeBytes(const std::string &file, const std::string &content)
    {
        std::ofstream out(file, std::ios::binary | std::ios::trunc);
        out << content;
        out.close();
        ASSERT_TRUE(out.good());
    }

    QTemporaryDir folder;
};

/// A connection to a file that knows nothing of the store.
class PlainSql {
public:
    explicit PlainSql(const std::string &file)
    {
        QSqlDatabase db = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), m_name);
        db.setDatabaseName(QString::fromStdString(file));
        EXPECT_TRUE(db.open()) << db.lastError().text().toStdString();
    }
    ~PlainSql()
    {
        QSqlDatabase::database(m_name).close();
        QSqlDatabase::removeDatabase(m_name);
    }
    PlainSql(const PlainSql &) = delete;
    PlainSql &operator=(const PlainSql &) = delete;

    /// Runs one statement; the answer's first field as text, or empty.
    std::string run(const char *sql)
    {
        QSqlQuery query(QSqlDatabase::database(m_name));
        EXPECT_TRUE(query.exec(QString::fromUtf8(sql))) << sql << ": " << query.lastError().text().toStdString();
        return query.next() ? query.value(0).toString().toStdString() : std::string();
    }

private:
    const QString m_name = QStringLiteral("plain-sql");
};

} // namespace raphe
