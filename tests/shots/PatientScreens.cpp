#include "tests/shots/PatientScreens.h"

#include "app/raphe/intake/ChoiceRow.h"
#include "app/raphe/intake/PainBoard.h"
#include "app/raphe/intake/patient/PatientWindow.h"
#include "app/raphe/record/TextLine.h"

#include <QApplication>
#include <QPushButton>
#include <QTest>

namespace raphe {

namespace {

void paint(PainBoard &board)
{
    const bool isFront = board.views().front().view == View::Front;
    if (!board.goTo({StructureId{isFront ? "deltoid-region" : "lumbar-region-medial"}, isFront ? Side::Left : Side::Right}))
        return;
    const QPoint at = board.boxOf(*board.spotAtCursor()).center();
    QTest::mousePress(&board, Qt::LeftButton, {}, at);
    for (int i = 0; i < 6; ++i)
        QTest::mouseMove(&board, at + QPoint(i % 2 ? 6 : -6, 4 * i));
    QTest::mouseRelease(&board, Qt::LeftButton, {}, at + QPoint(0, 20));
}

void answer(PatientPage &page)
{
    if (auto *board = page.findChild<PainBoard *>(); board && !board->isReadOnly())
        paint(*board);
    else
        for (ChoiceRow *row : page.findChildren<ChoiceRow *>())
            row->button(0)->click();
    if (auto *text = page.findChild<TextBlock *>(); text && text->isBlank())
        text->insertPlainText(QStringLiteral("Reaching up to the shelf"));
}

QPushButton *wayOn(const PatientWindow &window)
{
    QPushButton *on = nullptr;
    for (auto *button : window.findChildren<QPushButton *>())
        if (button->isVisible() && button->isEnabled()
            && (button->text() == QStringLiteral("Go on") || button->text().startsWith(QStringLiteral("Yes"))))
            on = button;
    return on;
}

} // namespace

bool photographPatientMode(VisitSession &session, QWidget &behind, const Theme &theme, const QString &name)
{
    constexpr int pagesAtMost = 40;
    bool isGood = true;
    for (const QSize size : {QSize(1280, 800), QSize(1920, 1080)}) {
        const auto handed = PatientWindow::handOver(session, theme, 0, behind);
        if (!handed)
            return false;
        PatientWindow &window = *handed.value();
        window.resize(size);
        isGood = QTest::qWaitForWindowExposed(&window) && isGood;
        QApplication::setActiveWindow(&window);
        int number = 0;
        for (QPushButton *on = nullptr; number < pagesAtMost; on->click()) {
            answer(window.page());
            QTest::qWait(60); // wrapped words find their height
            const QString page = QStringLiteral("patient-%1-%2").arg(size.width()).arg(++number, 2, 10, QLatin1Char('0'));
            isGood = window.grab().save(name.arg(page)) && isGood;
            on = wayOn(window);
            if (!on)
                break;
        }
        isGood = number < pagesAtMost && isGood;
        delete &window;
    }
    return isGood;
}

} // namespace raphe
