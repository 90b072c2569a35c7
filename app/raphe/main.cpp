// raphe: the window on a practice file.
#include "app/raphe/MainWindow.h"
#include "app/words/ErrorText.h"

#include <CLI/CLI.hpp>

#include <QApplication>
#include <QDir>
#include <QMessageBox>
#include <QStandardPaths>

#include <iostream>

namespace {

int fail(const QString &message)
{
    std::cerr << message.toStdString() << '\n';
    QMessageBox::critical(nullptr, QStringLiteral("Raphe"), message);
    return 2;
}

} // namespace

int main(int argc, char **argv)
{
    using namespace raphe;

    CLI::App cli{"Raphe: assists a trained practitioner; follow local law, scope of practice and licensed care."};
    std::string practice;
    cli.add_option("--practice", practice, "practice file; made when missing");
    try {
        cli.parse(argc, argv);
    } catch (const CLI::CallForHelp &help) {
        return cli.exit(help);
    } catch (const CLI::ParseError &error) {
        std::cerr << errorText({ErrorCode::BadArgument, "raphe", error.what()}).toStdString() << '\n';
        return 2;
    }

    QApplication::setOrganizationName(QStringLiteral("Raphe"));
    QApplication::setApplicationName(QStringLiteral("Raphe"));
    QApplication application(argc, argv);
    dress(application, themeFor(Settings().appearance()));

    if (practice.empty()) {
        const QDir home(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation));
        home.mkpath(QStringLiteral("."));
        practice = home.filePath(QStringLiteral("practice.raphe")).toStdString();
    }
    const auto knowledge = readKnowledge();
    if (!knowledge)
        return fail(errorText(knowledge.error()));
    const auto adviser = Adviser::of(knowledge.value());
    if (!adviser)
        return fail(errorText(adviser.error()));
    auto store = openPractice(practice);
    if (!store)
        return fail(errorText(store.error()));
    VisitSession session(knowledge.value(), adviser.value(), std::move(store).value(), existingPractice(practice));
    MainWindow window(session);
    if (const auto opened = window.openFirstVisit(); !opened)
        return fail(errorText(opened.error()));
    window.show();
    return QApplication::exec();
}
