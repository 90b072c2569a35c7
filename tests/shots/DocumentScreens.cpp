#include "tests/shots/DocumentScreens.h"

#include "app/raphe/help/AboutDialog.h"
#include "app/raphe/help/Help.h"
#include "app/raphe/help/HelpWindow.h"
#include "app/raphe/intake/patient/PatientWindow.h"
#include "app/raphe/letter/LetterDialog.h"
#include "app/raphe/pages/PagesDialog.h"
#include "app/raphe/pages/VisitPages.h"

#include <QTest>

namespace raphe {

namespace {

void photograph(QWidget &widget, const QString &name, const char *screen)
{
    widget.show();
    QTest::qWait(150); // wrapped words find their height
    widget.grab().save(name.arg(QLatin1String(screen)));
}

} // namespace

void photographDocuments(MainWindow &window, VisitSession &session, const Theme &theme, const QString &name)
{
    const VisitPages pages(session);
    {
        PagesDialog dialog(
            {pages.map(), pages.note(), pages.form(), pages.rules()}, {Paper::A4, Language::English, false, false}, &window);
        photograph(dialog, name, "52-pages-map");
        dialog.choose(1);
        photograph(dialog, name, "53-pages-note");
    }
    {
        PagesDialog dialog({pages.map()}, {Paper::Letter, Language::Spanish, true, false}, &window);
        photograph(dialog, name, "54-pages-large-print");
    }
    {
        LetterDialog dialog(session, &window);
        photograph(dialog, name, "55-letter");
    }
    if (const auto handed = PatientWindow::handOver(session, theme, 0, window, Language::German)) {
        photograph(*handed.value(), name, "56-patient-german");
        handed.value()->giveWay();
    }
    window.help().openAt(QStringLiteral("evidence"), window);
    if (HelpWindow *help = window.help().window()) {
        help->resize(1000, 720);
        photograph(*help, name, "57-help");
    }
    window.help().close();
    if (const auto notices = readEmbeddedNotices()) {
        AboutDialog about(notices.value(), QStringLiteral(RAPHE_VERSION), &window);
        photograph(about, name, "58-about");
    }
}

} // namespace raphe
