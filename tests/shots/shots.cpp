// raphe-shots: opens the window on the demo visits, goes through a visit with mouse and keys, and saves what it shows.
#include "app/raphe/MainWindow.h"
#include "app/raphe/intake/CautionsDialog.h"
#include "app/raphe/intake/DecisionDialog.h"
#include "app/raphe/intake/WarningsDialog.h"
#include "app/raphe/treatment/LogPage.h"
#include "app/raphe/treatment/TreatmentWindow.h"
#include "app/raphe/treatment/WorkPicker.h"
#include "app/words/ErrorText.h"
#include "core/anatomy/MarkPoint.h"
#include "core/record/VisitJson.h"
#include "core/treatment/Gate.h"
#include "tests/shots/DocumentScreens.h"
#include "tests/shots/PracticeScreens.h"
#include "tests/shots/Still.h"
#include "tests/shots/VisitFilm.h"

#include <CLI/CLI.hpp>

#include <QApplication>
#include <QDir>
#include <QFile>
#include <QListView>
#include <QPainter>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>

#include <iostream>

namespace {

using namespace raphe;

bool fail(const Error &error)
{
    std::cerr << errorText(error).toStdString() << '\n';
    return false;
}

class Photographer {
public:
    Photographer(const Learned &learned, QString demo, QString out, QString suffix, bool sheets, bool film)
        : m_learned(learned),
          m_knowledge(learned.knowledge),
          m_adviser(learned.adviser),
          m_demo(std::move(demo)),
          m_out(std::move(out)),
          m_suffix(std::move(suffix)),
          m_sheets(sheets),
          m_film(film)
    {
    }

    bool run()
    {
        for (const Appearance appearance : {Appearance::Light, Appearance::Dark}) {
            m_look = appearance == Appearance::Light ? QStringLiteral("light") : QStringLiteral("dark");
            const Theme theme = themeFor(appearance);
            dress(*qobject_cast<QApplication *>(QCoreApplication::instance()), theme);
            if (!m_film && (!visit(theme) || !photographPractice(m_knowledge, m_adviser, pattern())))
                return false;
            if (!filmVisit(m_learned, theme, pattern()))
                return false;
        }
        return true;
    }

private:
    [[nodiscard]] QString pattern() const
    {
        return QStringLiteral("%2/screen-%1-%3%4.png").arg(QStringLiteral("%1"), m_out, m_look, m_suffix);
    }

    bool visit(const Theme &theme)
    {
        const QTemporaryDir home;
        const std::string practice = home.filePath(QStringLiteral("practice.raphe")).toStdString();
        PracticeSettings settings;
        settings.name = "Lowbridge Practice (demo)";
        auto made = Practice::make(practice, settings, {"kestrel", "A. Kestrel", "for the pictures", leastCost});
        if (!made)
            return fail(made.error());
        Practice &file = *made.value().practice;
        const auto files = QDir(m_demo).entryInfoList({QStringLiteral("*.json")}, QDir::Files, QDir::Name);
        for (const QFileInfo &info : files) {
            QFile document(info.filePath());
            if (!document.open(QIODevice::ReadOnly))
                return fail({ErrorCode::CannotRead, info.filePath().toStdString(), document.errorString().toStdString()});
            auto read = readVisit(document.readAll().toStdString(), info.fileName().toStdString(), *m_knowledge.atlas);
            if (!read)
                return fail(read.error());
            Visit visit = read.value();
            if (info.fileName().startsWith(QStringLiteral("tarrant")))
                visit.findings.clear(); // found again below, with mouse and keys
            PatientRecord record;
            record.name = visit.patient->name;
            record.born = visit.patient->born;
            const auto patient = file.addPatient(record);
            if (!patient)
                return fail(patient.error());
            if (const auto added = file.addVisit(patient.value(), writeVisit(visit)); !added)
                return fail(added.error());
        }

        VisitSession session(m_learned, std::move(made.value().practice));
        MainWindow window(session);
        window.setTheme(theme);
        window.resize(1440, 900);
        window.show();
        if (!QTest::qWaitForWindowExposed(&window))
            return false;
        openVisitOf(session, "Imogen");

        save(window, "0-empty");
        findAll(window);
        save(window, "1-finding");
        session.selectFinding(0);
        save(window, "2-trace");
        window.findChild<TracePanel *>()->step();
        showLinked(window, {StructureId{"latissimus-dorsi"}, Side::Left});
        save(window, "3-path");
        window.setLayer(Layer::Bone);
        window.bodyView(View::Back).zoomBy(3.2, window.bodyView(View::Back).toWidget({0, 430}));
        save(window, "4-bones-zoomed");
        window.bodyView(View::Back).resetZoom();
        window.setLayer(Layer::Skin);
        save(window, "5-skin");
        window.setLayer(Layer::DeepMuscle);
        save(window, "6-deep");
        window.setLayer(Layer::DeepFascia);
        save(window, "7-fascia");
        window.setLayer(Layer::SuperficialMuscle);
        window.resize(1440, 1200); // a card is long
        touch(window, "gluteus-maximus", Side::Right);
        QTest::keyClick(&window, Qt::Key_I);
        save(window, "10-card");
        lookUp(window, "right iliak crest");
        save(window, "11-search");
        QTest::keyClick(window.findChild<SearchBox *>(), Qt::Key_Return);
        save(window, "12-edge");
        lookUp(window, "groin triangle");
        QTest::keyClick(window.findChild<SearchBox *>(), Qt::Key_Return);
        save(window, "13-caution");
        QTest::keyClick(&window, Qt::Key_T);
        window.findChild<SearchBox *>()->clear();
        window.setLayer(Layer::SuperficialMuscle);
        window.resize(1440, 900);
        for (const Arrangement &arrangement : BodyPanes::arrangements()) {
            if (!m_sheets || arrangement.panes.size() > 1)
                continue;
            for (const Layer layer : {Layer::Skin, Layer::DeepFascia, Layer::SuperficialMuscle, Layer::IntermediateMuscle,
                     Layer::DeepMuscle, Layer::Bone}) {
                sheet(arrangement.panes.front(), layer, theme);
            }
        }
        window.bodies().show(BodyPanes::arrangements().front().panes);
        window.bodies().setUpsideDown(true);
        window.setLayer(Layer::SuperficialMuscle);
        save(window, "14-from-the-head-end");
        window.bodies().setUpsideDown(false);
        window.bodies().show({{View::Side, Side::Right}});
        touch(window, "gluteus-medius", Side::Right);
        save(window, "15-side");
        window.bodies().show({{View::Back}});
        window.setLayer(Layer::SuperficialMuscle);
        window.bodyView(View::Back).zoomBy(5, window.bodyView(View::Back).toWidget({55, 200}));
        save(window, "16-labels");
        window.bodies().resetZoom();
        window.bodies().show(BodyPanes::arrangements().front().panes);
        window.resize(1440, 1200);
        openVisitOf(session, "Imogen");
        QTest::keyClick(&window, Qt::Key_W);
        save(window, "17-what-next");
        lookAt(window, AdviceList::Check, 1);
        save(window, "18-check-next");
        QTest::keyClick(&window, Qt::Key_P);
        lookAt(window, AdviceList::Treat, 1);
        save(window, "19-treat-first");
        openVisitOf(session, "Perpetua");
        save(window, "20-leave-alone");
        openVisitOf(session, "Imogen");
        QTest::keyClick(&window, Qt::Key_W);
        save(window, "21-plan");
        planByHand(window);
        save(window, "22-plan-by-hand");
        saveTreatment(window, session, theme);
        openVisitOf(session, "Perpetua");
        window.resize(1280, 800);
        save(window, "23-plan-with-cautions");
        QTest::keyClick(&window, Qt::Key_W);
        QTest::keyClick(&window, Qt::Key_W);
        window.resize(1440, 900);
        openVisitOf(session, "Osric");
        photographDocuments(window, session, theme, pattern());
        openVisitOf(session, "Olek");
        session.selectFinding(0);
        save(window, "8-groin");
        window.setLayer(Layer::IntermediateMuscle);
        openVisitOf(session, "Perpetua");
        session.selectFinding(1);
        save(window, "9-shoulder-blades");
        saveIntake(window, session);
        return true;
    }

    // The screen for oiled hands under a clock of its own: ready, worked, stopped, and the log.
    void saveTreatment(MainWindow &window, VisitSession &session, const Theme &theme)
    {
        Settings settings;
        TreatmentRun::Time now{};
        TreatmentWindow treatment(session, settings, theme, stepsAhead(window.planPanel().plan()));
        treatment.setAttribute(Qt::WA_DeleteOnClose, false);
        treatment.setClock([&now] { return TreatmentRun::Now{now, "10:12:00"}; });
        treatment.resize(1920, 1080);
        const auto press = [&](TreatmentRun::Time length) {
            QTest::keyPress(&treatment, Qt::Key_PageDown);
            now += length;
            treatment.tick();
            QTest::keyRelease(&treatment, Qt::Key_PageDown);
            now += 2 * SinglePedal::quick;
            treatment.tick();
        };
        const auto begin = [&] {
            for (int i = 0; i < 9 && treatment.run().phase() == TreatmentRun::Phase::Ready; ++i)
                press(std::chrono::milliseconds(100));
        };
        saveDialog(treatment, "24-treatment-ready");
        begin();
        now += std::chrono::seconds(47);
        treatment.tick();
        QTest::keyClick(&treatment, Qt::Key_E);
        saveDialog(treatment, "25-treatment-working");
        press(std::chrono::milliseconds(100));
        begin();
        now += std::chrono::seconds(20);
        press(SinglePedal::held);
        treatment.resize(1280, 800);
        saveDialog(treatment, "26-treatment-stopped");
        for (auto *button : treatment.findChildren<QPushButton *>())
            if (button->text().startsWith(QStringLiteral("End")))
                button->click();
        saveDialog(treatment, "27-treatment-log");
        treatment.findChild<LogPage *>()->otherWanted();
        auto *other = treatment.findChild<WorkPicker *>();
        other->choosePlace({StructureId{"latissimus-dorsi"}, Side::Left});
        saveDialog(treatment, "49-something-else");
        session.setTreatment(treatment.findChild<LogPage *>()->confirmed());
        saveAfter(window, session);
        session.setTreatment({});
        session.setRetested({});
        session.setClosing({});
    }

    // What is examined again, before and after it was answered, and the close.
    void saveAfter(MainWindow &window, VisitSession &session)
    {
        window.resize(1440, 900);
        window.showMiddle(MainWindow::Middle::Retest);
        save(window, "28-retest-hidden");
        Retested again;
        for (const Finding &finding : session.visit().findings) {
            if (!finding.isFound() || !finding.tenderness)
                continue;
            Finding now;
            now.place = finding.place;
            now.spot = finding.spot;
            now.at = finding.at;
            now.tenderness = Tenderness{std::max(0, finding.tenderness->grade - 2)};
            again.findings.push_back(now);
        }
        if (again.findings.size() > 1)
            again.findings.pop_back(); // one is left, and said to be
        session.setRetested(again);
        save(window, "29-retest");
        Closing closing;
        const HomeAdvice &library = session.homeAdvice();
        for (const char *id : {"walk-a-little", "move-the-low-back"})
            closing.advice.push_back({id, library.find(id)->title, library.find(id)->text + "\n" + library.find(id)->stop});
        closing.isTold = true;
        closing.goals = {{"Carry the shopping up two floors", "", false}};
        closing.plan = CarePlan{session.visit().date, 4, 7, "Sleeps through; carries the shopping"};
        closing.impression.text = "Buttock and broad back muscle of the other side, after lifting";
        session.setClosing(closing);
        window.showMiddle(MainWindow::Middle::Close);
        save(window, "50-close");
        window.resize(1280, 800);
        save(window, "51-close-small");
        window.showMiddle(MainWindow::Middle::Body);
        window.resize(1440, 1200);
    }

    void saveIntake(MainWindow &window, VisitSession &session)
    {
        WarningsDialog warnings(session);
        saveDialog(warnings, "44-warning-signs");
        const WarningSign &sign = *m_adviser.rules().signs().find("leg-clot-suspicion");
        DecisionDialog decision(
            sign, {sign.id, true, session.visit().date, {}, {}, {}, {}}, session.placesFor(sign), DecisionDialog::Slip::Possible);
        saveDialog(decision, "45-decision");
        CautionsDialog cautions(session);
        saveDialog(cautions, "46-cautions");
        static_cast<void>(session.answerWarning({"chest-pain-now", true, session.visit().date, {}, Decision::EmergencyServices,
            "pressure behind the breastbone since noon", "emergency service"}));
        save(window, "47-stopped");
    }

    void saveDialog(QWidget &dialog, const char *name)
    {
        dialog.show();
        QTest::qWait(60); // wrapped words find their height
        dialog.grab().save(QStringLiteral("%1/screen-%2-%3%4.png").arg(m_out, QLatin1String(name), m_look, m_suffix));
    }

    void openVisitOf(VisitSession &session, const std::string &name)
    {
        const auto patients = session.practice().patients();
        for (const PatientCard &card : patients.value())
            if (card.name.starts_with(name)) {
                const auto visits = session.practice().visits(card.id);
                if (const auto opened = session.open(visits.value().front().id); !opened)
                    fail(opened.error());
            }
    }

    void touch(MainWindow &window, const char *structure, Side side)
    {
        const Place place{StructureId{structure}, side};
        window.setLayer(m_knowledge.atlas->at(place.structure).layer);
        BodyView &view = window.bodyView(markPoint(*m_knowledge.atlas, *m_knowledge.body, place)->view);
        const QRect box = view.widgetRectOf(place);
        for (int y = box.top(); y <= box.bottom(); y += 2)
            for (int x = box.left(); x <= box.right(); x += 2)
                if (view.placeAt(QPointF(x, y)) == place && view.placeAt(QPointF(x + 3, y + 3)) == place) {
                    QTest::mouseClick(&view, Qt::LeftButton, {}, QPoint(x + 1, y + 1));
                    return;
                }
    }

    void findAll(MainWindow &window)
    {
        const auto press = [&](int key, Qt::KeyboardModifiers modifiers = {}) {
            QTest::keyClick(&window, static_cast<Qt::Key>(key), modifiers);
        };
        touch(window, "gluteus-maximus", Side::Right);
        press(Qt::Key_3);
        press(Qt::Key_2, Qt::AltModifier);
        press(Qt::Key_F);
        touch(window, "thoracolumbar-fascia", Side::Left);
        press(Qt::Key_2, Qt::AltModifier);
        touch(window, "latissimus-dorsi", Side::Left);
        press(Qt::Key_2);
        touch(window, "quadratus-lumborum", Side::Left);
        press(Qt::Key_1);
        touch(window, "piriformis", Side::Right);
        press(Qt::Key_C);
        window.setLayer(Layer::SuperficialMuscle);
        touch(window, "gluteus-maximus", Side::Right);
    }

    void showLinked(MainWindow &window, const Place &place)
    {
        auto *list = window.findChild<TracePanel *>()->findChild<QListView *>();
        const QString name = QString::fromStdString(m_knowledge.atlas->spoken(place));
        for (int row = 0; row < list->model()->rowCount(); ++row)
            if (list->model()->index(row, 0).data().toString() == name)
                list->setCurrentIndex(list->model()->index(row, 0));
    }

    // Chooses the n-th row that offers something.
    void lookAt(MainWindow &window, AdviceList list, int n)
    {
        QListView &view = window.findChild<ReasonPanel *>()->view(list);
        for (int row = 0; row < view.model()->rowCount(); ++row)
            if ((view.model()->flags(view.model()->index(row, 0)) & Qt::ItemIsSelectable) && n-- == 0)
                view.setCurrentIndex(view.model()->index(row, 0));
    }

    // Little time, one step pinned, and a technique that is not wanted.
    static void planByHand(MainWindow &window)
    {
        PlanPanel &panel = window.planPanel();
        panel.minutes().setValue(12);
        const auto choose = [&](std::size_t step) {
            const auto &model = *qobject_cast<PlanModel *>(panel.view().model());
            for (int row = 0; row < model.rowCount(); ++row)
                if (model.step(row) == &model.plan().steps[step])
                    panel.view().setCurrentIndex(model.index(row));
        };
        choose(0);
        panel.refuse();
        choose(1);
        panel.pin();
    }

    void lookUp(MainWindow &window, const char *name)
    {
        QTest::keyClick(&window, Qt::Key_F, Qt::ControlModifier);
        auto *box = window.findChild<SearchBox *>();
        box->clear();
        QTest::keyClicks(box, QLatin1String(name));
    }

    // One view and layer by itself, 1400 pixels high.
    void sheet(const Pane &pane, Layer layer, const Theme &theme)
    {
        BodyView view(*m_knowledge.atlas, m_knowledge.body->of(pane.view), pane.facing);
        view.setTheme(theme);
        view.setLayer(layer);
        view.resize(1000, 1400);
        const QString file = QStringLiteral("%1/sheet-%2-%3-%4-%5%6.png")
                                 .arg(m_out, QLatin1String(wordOf(viewWords, view.drawing().view()).data()),
                                     QLatin1String(wordOf(sideWords, view.facing()).data()),
                                     QLatin1String(wordOf(layerWords, layer).data()), m_look, m_suffix);
        if (!view.grab().save(file))
            fail({ErrorCode::CannotWrite, file.toStdString(), "picture"});
    }

    void save(MainWindow &window, const char *name)
    {
        if (!waitUntilStill(window))
            std::cerr << name << ": the body does not come to rest\n";
        const QString file = QStringLiteral("%1/screen-%2-%3%4.png").arg(m_out, QLatin1String(name), m_look, m_suffix);
        QPixmap picture = window.grab();
        if (QWidget *popup = QApplication::activePopupWidget()) { // a window of its own: laid over where it stands
            QPainter painter(&picture);
            const auto *box = window.findChild<SearchBox *>();
            painter.drawPixmap(box->mapTo(&window, QPoint(0, box->height())), popup->grab());
        }
        if (!picture.save(file))
            fail({ErrorCode::CannotWrite, file.toStdString(), "picture"});
    }

    const Learned &m_learned;
    const Knowledge &m_knowledge;
    const Adviser &m_adviser;
    QString m_demo;
    QString m_out;
    QString m_suffix;
    QString m_look;
    bool m_sheets; // each view and layer by itself too
    bool m_film; // the steps of intake and nothing else
};

// What the offscreen platform cannot do is not for the reader of demo/run.
void keepQuiet(QtMsgType type, const QMessageLogContext &, const QString &message)
{
    if (type != QtWarningMsg && type != QtDebugMsg)
        std::cerr << message.toStdString() << '\n';
}

} // namespace

int main(int argc, char **argv)
{
    CLI::App cli{"Pictures of every screen, made by going through a demo visit"};
    std::string demo;
    std::string out;
    std::string suffix;
    cli.add_option("--demo", demo, "folder of demo visits")->required();
    cli.add_option("--out", out, "folder for the pictures")->required();
    cli.add_option("--suffix", suffix, "added to the names");
    bool sheets = false;
    cli.add_flag("--sheets", sheets, "each view and layer by itself too");
    bool film = false;
    cli.add_flag("--film", film, "the steps of intake and nothing else");
    CLI11_PARSE(cli, argc, argv);

    const QTemporaryDir home; // no settings of the user's
    qputenv("XDG_CONFIG_HOME", home.path().toUtf8());
    qInstallMessageHandler(keepQuiet);
    QApplication application(argc, argv);
    const auto learned = learn();
    if (!learned) {
        fail(learned.error());
        return 2;
    }
    return Photographer(*learned.value(), QString::fromStdString(demo), QString::fromStdString(out),
               QString::fromStdString(suffix), sheets, film)
               .run()
        ? 0
        : 1;
}
