#include "tests/shots/ExaminationScreens.h"

#include "app/raphe/examination/EdgeStrip.h"
#include "app/raphe/examination/PassDialog.h"
#include "app/raphe/examination/PedalsDialog.h"
#include "app/raphe/examination/SweepDialog.h"
#include "app/raphe/help/Help.h"
#include "app/raphe/help/HelpWindow.h"

#include <QApplication>
#include <QTest>

namespace raphe {

namespace {

bool save(QWidget &widget, const QString &pattern, const char *screen)
{
    QTest::qWait(200); // wrapped words find their height
    return widget.grab().save(pattern.arg(QStringLiteral("examination-") + QLatin1String(screen)));
}

template <class Dialog> bool shown(Dialog &dialog, const QString &pattern, const char *screen)
{
    dialog.show();
    const bool isSaved = QTest::qWaitForWindowExposed(&dialog) && save(dialog, pattern, screen);
    dialog.hide(); // closing may ask
    return isSaved;
}

bool pass(VisitSession &session, MainWindow &window, const QString &pattern)
{
    Settings settings;
    PassDialog dialog(session, settings, window.examine().placesOfPass(), &window);
    auto now = std::make_shared<Pass::Time>(0);
    dialog.setClock([now] { return *now; });
    dialog.show();
    const auto press = [&](Pedal pedal) {
        const auto key = static_cast<Qt::Key>(settings.pedalKey(pedal));
        QTest::keyPress(&dialog, key);
        *now += Pass::Time(100);
        QTest::keyRelease(&dialog, key);
        *now += Pass::Time(500);
        dialog.tick();
    };
    press(Pedal::Clear);
    press(Pedal::Sore);
    press(Pedal::Sore);
    return shown(dialog, pattern, "pass");
}

bool sweep(VisitSession &session, MainWindow &window, const Theme &theme, const QString &pattern)
{
    const Place crest{StructureId{"iliac-crest"}, Side::Right};
    const auto edge = sweepOf(*session.knowledge().atlas, crest, Millimetres{1680});
    SweepDialog dialog(session, *edge, true, theme, &window);
    for (const int grade : {0, 0, 1, 3, 2, 0})
        dialog.strip().mark(grade);
    return shown(dialog, pattern, "sweep");
}

} // namespace

bool photographExamination(VisitSession &session, MainWindow &window, const Theme &theme, const QString &name)
{
    bool isGood = pass(session, window, name) && sweep(session, window, theme, name);
    for (const char *topic : {"typed-line", "evidence", "shortcuts"}) {
        window.help().openAt(QString::fromLatin1(topic), window);
        isGood = save(*window.help().window(), name, (std::string("help-") + topic).c_str()) && isGood;
    }
    window.help().close();
    Settings settings;
    PedalsDialog pedals(settings, &window);
    isGood = shown(pedals, name, "pedals") && isGood;

    window.showMiddle(MainWindow::Middle::Body);
    window.resize(1280, 800);
    session.aimAt({{StructureId{"l4-l5"}, Side::Right}, {}, {}});
    QApplication::setActiveWindow(&window);
    QTest::keyClick(&window.bodyView(View::Back), Qt::Key_Y);
    isGood = save(window, name, "feel") && isGood;

    WarningAnswer clot;
    clot.sign = "leg-clot-suspicion";
    clot.isThere = true;
    clot.asked = session.visit().date;
    clot.at = {{StructureId{"sural-region-medial"}, Side::Right}};
    clot.decided = Decision::CareSameDay;
    clot.why = "swollen calf";
    isGood = session.answerWarning(clot).ok() && isGood;
    window.showMiddle(MainWindow::Middle::Examine);
    window.examine().showSheet("knee");
    return save(window, name, "barred") && isGood;
}

} // namespace raphe
