// What is linked in the end, not only what is included: a library may drag in another one unseen.
#include <gtest/gtest.h>

#include <QProcess>
#include <QString>

namespace {

/// All shared libraries that a program loads, one a line, as the loader resolves them; empty when it cannot be asked.
QString librariesOf(const char *program)
{
    QProcess loader;
    loader.start(QStringLiteral("ldd"), {QString::fromUtf8(program)});
    if (!loader.waitForFinished() || loader.exitCode() != 0)
        return {};
    return QString::fromUtf8(loader.readAllStandardOutput());
}

void expectWithout(const char *program, const char *library)
{
    const QString libraries = librariesOf(program);
    ASSERT_TRUE(libraries.contains(QLatin1String("libQt6Core"))) << "ldd says nothing of " << program;
    EXPECT_FALSE(libraries.contains(QLatin1String(library))) << program << " links " << library << ":\n"
                                                             << libraries.toStdString();
}

TEST(LinkedLibraries, TheCoreLinksNoWindowAndNoPainting)
{
    expectWithout(RAPHE_CORE_ONLY, "libQt6Gui");
    expectWithout(RAPHE_CORE_ONLY, "libQt6Widgets");
}

TEST(LinkedLibraries, TheCoreAloneReadsItsAtlas)
{
    QProcess program;
    program.start(QStringLiteral(RAPHE_CORE_ONLY), QStringList{});
    ASSERT_TRUE(program.waitForFinished());
    EXPECT_EQ(program.exitCode(), 0) << program.readAllStandardError().toStdString();
    EXPECT_TRUE(program.readAllStandardOutput().endsWith(" structures\n"));
}

#ifdef RAPHE_BATCH
TEST(LinkedLibraries, TheProgramWithoutAWindowLinksNoWidgets)
{
    expectWithout(RAPHE_BATCH, "libQt6Widgets");
    expectWithout(RAPHE_BATCH, "libQt6PrintSupport");
}
#endif

} // namespace
