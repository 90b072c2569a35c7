// The floors of the house (DEVELOPERS.md): a folder includes only folders on floors below its own. Reads every #include
// of core/ and app/ as text, so that a forbidden one is found even where it compiles.
#include <gtest/gtest.h>

#include <QDir>
#include <QDirIterator>
#include <QFile>
#include <QFileInfo>
#include <QLibraryInfo>
#include <QRegularExpression>

#include <map>
#include <set>
#include <string>
#include <vector>

namespace {

// Floor of each folder. Folders on one floor know nothing of each other.
const std::map<QString, int> floors{
    {QStringLiteral("core/base"), 0},
    {QStringLiteral("core/anatomy"), 1},
    {QStringLiteral("core/record"), 2},
    {QStringLiteral("core/safety"), 3},
    {QStringLiteral("core/reasoning"), 3},
    {QStringLiteral("core/outcome"), 3},
    {QStringLiteral("core/language"), 3},
    {QStringLiteral("core/plan"), 4},
    {QStringLiteral("core/examination"), 4},
    {QStringLiteral("core/treatment"), 5},
    {QStringLiteral("core/store"), 6},
    {QStringLiteral("core/document"), 6},
    {QStringLiteral("app/words"), 7},
    {QStringLiteral("app/paint"), 7},
    {QStringLiteral("app/raphe"), 8},
    {QStringLiteral("app/batch"), 8},
};

struct Include {
    QString file; // relative to the project
    int line = 0;
    QString header;
    bool ours = false; // written with quotes
};

QString folderOf(const QString &path)
{
    return path.section(QLatin1Char('/'), 0, 1);
}

std::string at(const Include &i)
{
    return (i.file + QLatin1Char(':') + QString::number(i.line) + QStringLiteral(" includes ") + i.header).toStdString();
}

std::vector<Include> readIncludes(const QString &root)
{
    static const QRegularExpression pattern(QStringLiteral("^\\s*#\\s*include\\s*([<\"])([^>\"]+)[>\"]"));
    std::vector<Include> found;
    for (const QString &top : {QStringLiteral("core"), QStringLiteral("app")}) {
        QDirIterator files(root + QLatin1Char('/') + top, {QStringLiteral("*.h"), QStringLiteral("*.cpp")}, QDir::Files,
            QDirIterator::Subdirectories | QDirIterator::FollowSymlinks);
        while (files.hasNext()) {
            QFile file(files.next());
            if (!file.open(QIODevice::ReadOnly))
                continue;
            const QString name = QDir(root).relativeFilePath(file.fileName());
            int line = 0;
            while (!file.atEnd()) {
                ++line;
                const auto match = pattern.match(QString::fromUtf8(file.readLine()));
                if (match.hasMatch())
                    found.push_back({name, line, match.captured(2), match.captured(1) == QLatin1String("\"")});
            }
        }
    }
    return found;
}

const std::vector<Include> &includes()
{
    static const auto read = readIncludes(QStringLiteral(RAPHE_SOURCE_DIR));
    return read;
}

/// The Qt module that brings a header such as "QPainter" or "QtGui/QPainter"; empty when it is none of Qt's.
QString qtModuleOf(const QString &header)
{
    if (header.startsWith(QLatin1String("Qt")) && header.contains(QLatin1Char('/')))
        return header.section(QLatin1Char('/'), 0, 0);
    const QDir qt(QLibraryInfo::path(QLibraryInfo::HeadersPath));
    for (const QString &module : qt.entryList({QStringLiteral("Qt*")}, QDir::Dirs))
        if (QFileInfo::exists(qt.filePath(module + QLatin1Char('/') + header)))
            return module;
    return {};
}

TEST(Floors, TheIncludesOfCoreAndAppAreSeen)
{
    // A test that reads nothing would always be content.
    EXPECT_GT(includes().size(), 50U) << "read from " << RAPHE_SOURCE_DIR;
    EXPECT_EQ(qtModuleOf(QStringLiteral("QString")), QStringLiteral("QtCore"));
    EXPECT_EQ(qtModuleOf(QStringLiteral("QPainter")), QStringLiteral("QtGui"));
    EXPECT_EQ(qtModuleOf(QStringLiteral("QWidget")), QStringLiteral("QtWidgets"));
    EXPECT_EQ(qtModuleOf(QStringLiteral("vector")), QString());
}

TEST(Floors, EveryFolderHasAFloor)
{
    for (const QString &top : {QStringLiteral("core"), QStringLiteral("app")})
        for (const QString &name :
            QDir(QStringLiteral(RAPHE_SOURCE_DIR "/") + top).entryList(QDir::Dirs | QDir::NoDotAndDotDot)) {
            const QString folder = top + QLatin1Char('/') + name;
            EXPECT_TRUE(floors.contains(folder))
                << folder.toStdString() << " stands on no floor: add it to the list in this test";
        }
}

TEST(Floors, AFolderIncludesOnlyFoldersBelowIt)
{
    for (const Include &i : includes()) {
        if (!i.ours)
            continue;
        const QString from = folderOf(i.file);
        const QString to = folderOf(i.header);
        ASSERT_TRUE(floors.contains(from)) << i.file.toStdString();
        if (i.header.endsWith(QLatin1String(".moc")))
            continue;
        ASSERT_TRUE(floors.contains(to)) << at(i) << ": quoted includes start at the top of the project";
        if (from != to) {
            EXPECT_LT(floors.at(to), floors.at(from))
                << at(i) << ": floor " << floors.at(from) << " may not know floor " << floors.at(to);
        }
    }
}

TEST(Floors, CoreKnowsQtCoreAndOnlyTheStoreKnowsQtSql)
{
    for (const Include &i : includes()) {
        const QString module = qtModuleOf(i.header);
        if (!i.file.startsWith(QLatin1String("core/")) || module.isEmpty())
            continue;
        std::set<QString> allowed{QStringLiteral("QtCore")};
        if (i.file.startsWith(QLatin1String("core/store/")))
            allowed.insert(QStringLiteral("QtSql"));
        EXPECT_TRUE(allowed.contains(module)) << at(i) << " of " << module.toStdString();
    }
}

TEST(Floors, HeadersOfCoreShowNoQt)
{
    // Strings of the core are UTF-8 std::string; QString stays inside .cpp files.
    for (const Include &i : includes()) {
        if (i.file.startsWith(QLatin1String("core/")) && i.file.endsWith(QLatin1String(".h"))) {
            EXPECT_TRUE(qtModuleOf(i.header).isEmpty()) << at(i);
        }
    }
}

TEST(Floors, PaintAndWordsAndBatchKnowNoWidgets)
{
    const std::set<QString> windows{
        QStringLiteral("QtWidgets"), QStringLiteral("QtSvgWidgets"), QStringLiteral("QtPrintSupport")};
    for (const Include &i : includes()) {
        const QString folder = folderOf(i.file);
        if (folder == QLatin1String("app/paint") || folder == QLatin1String("app/words")
            || folder == QLatin1String("app/batch")) {
            EXPECT_FALSE(windows.contains(qtModuleOf(i.header))) << at(i);
        }
    }
}

} // namespace
