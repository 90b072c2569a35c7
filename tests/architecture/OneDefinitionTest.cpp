// One name, one type: two types of one name in one namespace compile, link, and then one's destructor is run on the other
// (C++ standard, basic.def.odr). Reads the headers of core/ and app/ as text; in them types begin at the start of a line.
#include <gtest/gtest.h>

#include <QDirIterator>
#include <QFile>
#include <QRegularExpression>

#include <map>

namespace {

std::map<QString, QStringList> filesOfTypes(const QString &root)
{
    static const QRegularExpression space(QStringLiteral("^namespace ([A-Za-z:]+) \\{"));
    static const QRegularExpression type(QStringLiteral("^(?:struct|class|enum class|enum) ([A-Za-z]+)[^;]*$"));
    std::map<QString, QStringList> out;
    for (const QString &top : {QStringLiteral("/core"), QStringLiteral("/app")}) {
        QDirIterator files(root + top, {QStringLiteral("*.h")}, QDir::Files, QDirIterator::Subdirectories);
        while (files.hasNext()) {
            QFile file(files.next());
            EXPECT_TRUE(file.open(QIODevice::ReadOnly | QIODevice::Text)) << file.fileName().toStdString();
            QString in;
            for (const QString &line : QString::fromUtf8(file.readAll()).split(QLatin1Char('\n'))) {
                if (const auto found = space.match(line); found.hasMatch())
                    in = found.captured(1);
                if (const auto found = type.match(line); found.hasMatch())
                    out[in + QStringLiteral("::") + found.captured(1)] << file.fileName();
            }
        }
    }
    return out;
}

TEST(OneDefinition, NoTypeOfAHeaderHasTheNameOfAnother)
{
    const auto types = filesOfTypes(QStringLiteral(RAPHE_SOURCE_DIR));
    EXPECT_GT(types.size(), 300U) << "the test no longer sees the types";
    for (const auto &[name, files] : types)
        EXPECT_EQ(files.size(), 1) << name.toStdString() << " is in " << files.join(QStringLiteral(", ")).toStdString();
}

} // namespace
