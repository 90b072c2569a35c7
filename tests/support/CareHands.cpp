// The second half of a follow-up visit, by mouse and pedal.
#include "tests/support/VisitHands.h"

#include "app/raphe/treatment/LogPage.h"
#include "app/raphe/treatment/TreatmentWindow.h"
#include "core/anatomy/MarkPoint.h"

#include <QAbstractItemView>
#include <QApplication>
#include <QMenu>
#include <QPointer>
#include <QTabBar>
#include <QTabWidget>
#include <QTest>

namespace raphe::test {

namespace {

TreatmentWindow *treatmentWindow()
{
    const auto windows = QApplication::topLevelWidgets();
    for (QWidget *window : windows)
        if (auto *treatment = qobject_cast<TreatmentWindow *>(window); treatment && treatment->isVisible())
            return treatment;
    return nullptr;
}

} // namespace

void VisitHands::greet(const QString &name)
{
    inNext([&](QWidget &list) {
        auto *view = list.findChild<QAbstractItemView *>();
        for (int row = 0; view && row < view->model()->rowCount(); ++row) {
            const QModelIndex index = view->model()->index(row, 0);
            if (!index.data().toString().contains(name))
                continue;
            ++m_actions;
            QTest::mouseClick(view->viewport(), Qt::LeftButton, {}, view->visualRect(index).center());
        }
        press(&list, QStringLiteral("Open the chosen patient"));
        see(list, "identity");
        press(&list, QStringLiteral("All three agree"));
    });
    open(&m_window, QStringLiteral("Patients"), Qt::Key_O, Qt::ControlModifier);
}

void VisitHands::feel(const Place &place, const QString &grade)
{
    BodyView &view = m_window.bodyView(View::Back);
    const QRect box = view.widgetRectOf(place);
    for (int y = box.top(); y <= box.bottom(); y += 2)
        for (int x = box.left(); x <= box.right(); x += 2)
            if (view.placeAt(QPointF(x, y)) == place && view.placeAt(QPointF(x + 2, y + 2)) == place) {
                ++m_actions;
                QTest::mouseClick(&view, Qt::LeftButton, {}, {x + 1, y + 1});
                press(&m_window, grade);
                return;
            }
    m_troubles.push_back("nothing to touch of " + place.structure.value);
}

// Each step for as long as it is planned, by a clock of our own.
void VisitHands::treatByPedal()
{
    QPointer<TreatmentWindow> treatment = treatmentWindow();
    if (!treatment) {
        m_troubles.emplace_back("the treatment does not open");
        return;
    }
    QApplication::setActiveWindow(treatment);
    TreatmentRun::Time now{};
    treatment->setClock([&now] { return TreatmentRun::Now{now, "10:12:00"}; });
    const auto pedal = [&] {
        ++m_actions;
        QTest::keyPress(treatment, Qt::Key_PageDown);
        now += std::chrono::milliseconds(100);
        QTest::keyRelease(treatment, Qt::Key_PageDown);
        now += 2 * SinglePedal::quick;
        treatment->tick();
    };
    constexpr int most = 60;
    for (int i = 0; i < most && treatment->run().phase() != TreatmentRun::Phase::Over; ++i) {
        if (treatment->run().phase() == TreatmentRun::Phase::Working) {
            see(*treatment, "treating");
            now += std::chrono::seconds(treatment->run().current()->planned);
        }
        pedal();
    }
    see(*treatment, "log");
    press(treatment->findChild<LogPage *>(), QStringLiteral("It was so"));
    QApplication::setActiveWindow(&m_window);
}

void VisitHands::retest()
{
    QWidget &page = m_window.retest();
    see(m_window, "retest-hidden");
    choose(&page, QStringLiteral("trunk flexion: pain"), 0);
    choose(&page, QStringLiteral("RIGHT L4/L5 segment: Joint play, 0 to 6, 3 is normal"), 3);
    choose(&page, QStringLiteral("RIGHT gluteus maximus: Tenderness, 0 to 4"), 1);
    choose(&page, QStringLiteral("LEFT latissimus dorsi: Tenderness, 0 to 4"), 1);
    choose(&page, QStringLiteral("pain now, 0 to 10"), 0);
    see(m_window, "retest");
    press(&page, QStringLiteral("To the close"));
}

void VisitHands::close()
{
    QWidget &page = m_window.closing();
    for (auto *menu : page.findChildren<QMenu *>()) {
        m_actions += 2; // opens it, and chooses the first
        Q_EMIT menu->aboutToShow();
        if (!menu->actions().isEmpty())
            menu->actions().constFirst()->trigger();
        break;
    }
    press(&page, QStringLiteral("Told to the patient"));
    press(&page, QStringLiteral("We call tomorrow"));
    see(m_window, "close");
    press(&page, QStringLiteral("Sign"));
}

void VisitHands::careAndSign()
{
    ExaminePage &sheet = m_window.examine();
    constexpr int familiar = 1;
    choose(&sheet, QStringLiteral("trunk flexion: pain"), familiar);
    press(&sheet, QStringLiteral("trunk flexion: today's retest"));
    part(sheet, 1);
    choose(&sheet, QStringLiteral("right L4/L5 segment: joint play"), 2);
    press(&sheet, QStringLiteral("To the body"));
    feel({StructureId{"gluteus-maximus"}, Side::Right}, QStringLiteral("Tenderness 3"));
    feel({StructureId{"latissimus-dorsi"}, Side::Left}, QStringLiteral("Tenderness 2"));
    for (auto *tabs : m_window.findChildren<QTabWidget *>())
        for (int i = 0; i < tabs->count(); ++i)
            if (tabs->tabText(i) == QStringLiteral("Plan")) {
                ++m_actions;
                QTest::mouseClick(tabs->tabBar(), Qt::LeftButton, {}, tabs->tabBar()->tabRect(i).center());
            }
    see(m_window, "plan");
    press(&m_window, QStringLiteral("Treat by this plan"));
    treatByPedal();
    retest();
    close();
}

} // namespace raphe::test
