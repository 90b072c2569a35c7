#include "tests/shots/VisitFilm.h"

#include "tests/shots/ExaminationScreens.h"

#include "core/record/VisitJson.h"
#include "core/store/Practice.h"
#include "tests/shots/PatientScreens.h"
#include "tests/shots/Still.h"
#include "tests/support/VisitHands.h"

#include <QApplication>
#include <QDate>
#include <QTemporaryDir>
#include <QTest>

#include <iostream>

namespace raphe {

namespace {

using test::VisitHands;

std::string daysAgo(int days)
{
    return QDate::currentDate().addDays(-days).toString(Qt::ISODate).toStdString();
}

Visit earlier()
{
    Visit visit;
    visit.patient = Patient{"Corin Haldane (demo)", "1979-08-21"};
    visit.date = daysAgo(9);
    visit.practitioner = "A. Kestrel";
    visit.cautions = {"bruises easily"};
    Complaint neck;
    neck.text = "My neck locks after a day at the bench";
    neck.since = "since spring";
    neck.now = PainScore{5};
    neck.worst = PainScore{7};
    neck.best = PainScore{2};
    neck.aggravates = "looking up";
    neck.eases = "warmth";
    neck.goal = "to sing in the choir again";
    neck.activities = {{"turn to reverse the van", 4}, {"look up at the shelf", 3}};
    neck.asked = visit.date;
    visit.complaints = {neck};
    visit.complaintAt = {{StructureId{"posterior-cervical-region"}, Side::Left}};
    PainPatch patch;
    patch.view = View::Back;
    patch.quality = PainQuality::Stiff;
    patch.intensity = PainScore{5};
    patch.painter = Painter::Patient;
    patch.confirmed = true;
    patch.strokes = {{{{-18, 150}, {-20, 165}, {-30, 178}}, 10}}; // back view: x < 0 is the patient's left
    visit.pain = {patch};
    visit.promised = {"walk twice a day"};
    return visit;
}

class Film {
public:
    Film(const Learned &learned, Theme theme, QString name)
        : m_learned(learned), m_theme(std::move(theme)), m_name(std::move(name))
    {
    }

    bool run()
    {
        for (const auto by : {VisitHands::By::Mouse, VisitHands::By::Keys})
            for (const QSize size : {QSize(1280, 800), QSize(1920, 1080)})
                shoot(by, size);
        return m_isGood;
    }

private:
    void shoot(VisitHands::By by, QSize size)
    {
        const QTemporaryDir folder;
        const std::string file = folder.filePath(QStringLiteral("film.raphe")).toStdString();
        auto made = Practice::make(file, {}, {"kestrel", "A. Kestrel", "for the pictures", leastCost});
        if (!made) {
            m_isGood = false;
            return;
        }
        Practice &practice = *made.value().practice;
        PatientRecord record;
        record.name = earlier().patient->name;
        record.born = earlier().patient->born;
        const auto patient = practice.addPatient(record);
        if (!patient || !practice.addVisit(patient.value(), writeVisit(earlier()))) {
            m_isGood = false;
            return;
        }
        VisitSession session(m_learned, std::move(made.value().practice));
        MainWindow window(session);
        window.setTheme(m_theme);
        window.resize(size);
        window.show();
        m_isGood = QTest::qWaitForWindowExposed(&window) && m_isGood;
        QApplication::setActiveWindow(&window);

        int step = 0;
        const QString way = QStringLiteral("%1-%2").arg(
            by == VisitHands::By::Mouse ? QStringLiteral("mouse") : QStringLiteral("keys"), QString::number(size.width()));
        const auto show = [&](const QString &part) {
            return [&, part](QWidget &seen, const char *screen) {
                m_isGood = waitUntilStill(seen) && m_isGood;
                const QString name = QStringLiteral("film-%1-%2-%3-%4")
                                         .arg(part, way)
                                         .arg(++step, 2, 10, QLatin1Char('0'))
                                         .arg(QLatin1String(screen));
                m_isGood = seen.grab().save(m_name.arg(name)) && m_isGood;
            };
        };
        VisitHands first(window, by);
        first.onScreen(show(QStringLiteral("new")));
        first.newPatient();
        first.firstVisit();
        tell(first, "new patient", way);
        step = 0;
        window.visitPanel().openPatient(patient.value());
        VisitHands again(window, by);
        again.onScreen(show(QStringLiteral("follow-up")));
        again.followUp();
        tell(again, "follow-up", way);
        window.examine().showSheet("low-back-pelvis");
        step = 0;
        VisitHands examining(window, by);
        examining.onScreen(show(QStringLiteral("examine")));
        examining.examine();
        tell(examining, "examination", way);
        if (by == VisitHands::By::Mouse && size.width() == 1280)
            m_isGood = photographPatientMode(session, window, m_theme, m_name)
                && photographExamination(session, window, m_theme, m_name) && m_isGood;
    }

    void tell(const VisitHands &hands, const char *what, const QString &way)
    {
        std::cout << what << ", " << way.toStdString() << ": " << hands.actions() << " actions, Tab " << hands.tabs()
                  << " times\n";
        for (const std::string &trouble : hands.troubles()) {
            std::cerr << trouble << '\n';
            m_isGood = false;
        }
    }

    const Learned &m_learned;
    Theme m_theme;
    QString m_name;
    bool m_isGood = true;
};

} // namespace

bool filmVisit(const Learned &learned, const Theme &theme, const QString &name)
{
    return Film(learned, theme, name).run();
}

} // namespace raphe
