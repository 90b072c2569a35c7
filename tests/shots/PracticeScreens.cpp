#include "tests/shots/PracticeScreens.h"

#include "app/raphe/patients/CsvImportDialog.h"
#include "app/raphe/patients/DuplicatesDialog.h"
#include "app/raphe/patients/PatientsDialog.h"
#include "app/raphe/patients/RetentionDialog.h"
#include "app/raphe/practice/AccessLogDialog.h"
#include "app/raphe/practice/HistoryDialog.h"
#include "app/raphe/practice/NewRecoveryKeyDialog.h"
#include "app/raphe/practice/OwnTechniqueDialog.h"
#include "app/raphe/practice/SetUpDialog.h"
#include "app/raphe/practice/SettingsDialog.h"
#include "app/raphe/practice/UnlockDialog.h"
#include "app/raphe/practice/UserDialogs.h"
#include "app/raphe/record/PatientEditor.h"
#include "core/record/VisitJson.h"

#include <QFile>
#include <QLineEdit>
#include <QTabWidget>
#include <QTemporaryDir>
#include <QTest>

namespace raphe {

namespace {

constexpr const char *words = "for the pictures";

class Screens {
public:
    Screens(const Knowledge &knowledge, const Adviser &adviser, QString name)
        : m_knowledge(knowledge),
          m_adviser(adviser),
          m_groups(readEmbeddedTechniqueGroups(adviser.rules()).value()),
          m_name(std::move(name))
    {
    }

    bool run()
    {
        m_file = m_folder.filePath(QStringLiteral("practice.raphe")).toStdString();
        {
            SetUpDialog setUp(m_folder.filePath(QStringLiteral("new.raphe")).toStdString(), nullptr, leastCost, m_groups);
            take(setUp, "30-set-up");
        }
        PracticeSettings settings;
        settings.name = "Lowbridge Practice (demo)";
        settings.letterhead = "12 Weir Lane\nLowbridge";
        settings.jurisdiction = "as an example";
        settings.retentionYears = 8;
        settings.isRecoveryOnPaper = true;
        settings.treatment.techniques = {{"own-1", "gliding", "forearm glide", 150, "slow, with the flat of the forearm",
            "Lighter over bone, veins that show, and anything that throbs.", true}};
        auto made = Practice::make(m_file, settings, {"kestrel", "A. Kestrel", words, leastCost});
        if (!made)
            return false;
        m_practice = std::move(made.value().practice);
        fill();
        UnlockDialog unlock(m_file, QStringLiteral("kestrel"), 0);
        take(unlock, "31-unlock");
        {
            PatientsDialog patients(*m_practice, m_adviser.rules(), PatientsDialog::Purpose::Open);
            QTest::qWait(800);
            take(patients, "32-patients");
            QTest::keyClicks(patients.findChild<QLineEdit *>(), QStringLiteral("ottoline"));
            QTest::keyClick(patients.findChild<QLineEdit *>(), Qt::Key_Return);
            take(patients, "33-identity");
        }
        {
            PatientEditor editor(m_practice->patient(m_first).value(), m_adviser.rules());
            for (int tab = 0; tab < editor.findChild<QTabWidget *>()->count(); ++tab) {
                editor.findChild<QTabWidget *>()->setCurrentIndex(tab);
                take(editor, ("34-record-" + std::to_string(tab + 1)).c_str());
            }
        }
        {
            CsvImportDialog import(*m_practice);
            import.show();
            import.read(list());
            QTest::qWait(1500);
            take(import, "35-import");
        }
        {
            DuplicatesDialog duplicates(*m_practice);
            duplicates.show();
            QTest::qWait(800);
            take(duplicates, "36-double-records");
        }
        {
            RetentionDialog retention(*m_practice);
            retention.show();
            QTest::qWait(800);
            take(retention, "37-past-their-time");
        }
        {
            SettingsDialog dialog(*m_practice, nullptr, leastCost, m_groups, readEmbeddedTechniques(m_adviser.rules()).value());
            for (int tab = 0; tab < dialog.findChild<QTabWidget *>()->count(); ++tab) {
                dialog.findChild<QTabWidget *>()->setCurrentIndex(tab);
                take(dialog, ("38-settings-" + std::to_string(tab + 1)).c_str());
            }
        }
        {
            OwnTechniqueDialog own(settings.treatment.techniques.front(), readEmbeddedTechniques(m_adviser.rules()).value());
            own.setAttribute(Qt::WA_DeleteOnClose, false);
            take(own, "48-own-technique");
        }
        {
            UserScopeDialog scope(*m_practice, m_practice->accounts().value().front(), m_groups);
            scope.setAttribute(Qt::WA_DeleteOnClose, false);
            take(scope, "41-techniques-of-a-user");
            AddUserDialog add(*m_practice, leastCost, m_groups);
            add.setAttribute(Qt::WA_DeleteOnClose, false);
            take(add, "42-add-a-user");
            NewRecoveryKeyDialog key(*m_practice);
            key.setAttribute(Qt::WA_DeleteOnClose, false);
            take(key, "43-new-recovery-key");
        }
        AccessLogDialog log(*m_practice, {});
        take(log, "39-who-opened-what");
        const Examination examination = readEmbeddedExamination(*m_knowledge.atlas, m_adviser.rules()).value();
        HistoryDialog history(*m_practice, m_visit, m_knowledge, m_adviser.rules(), examination);
        take(history, "40-history");
        return m_isGood;
    }

private:
    void fill()
    {
        PatientRecord first;
        first.name = "Ottoline Marsh (demo)";
        first.born = "1962-07-19";
        first.mark = "silver plait, hums when thinking";
        first.phone = "none given";
        first.doctor = Contact{"Dr Halloran", "at the mill surgery"};
        first.medicines = {"apixaban", "vitamin D"};
        first.allergies = {"arnica"};
        first.surgery = {{"left knee, meniscus", 2011}};
        first.conditions = {{"anticoagulant", "since 2024"}};
        first.bloodPressure = BloodPressure{138, 84, "2026-11-02"};
        first.complaints = {{1, "neck that will not turn left", "since the move", false}, {2, "sore thumb", "", true}};
        PatientRecord twin = first;
        twin.name = "Otoline Marsh (demo)";
        twin.phone = "not told";
        twin.complaints.clear();
        PatientRecord other;
        other.name = "Bastian Quell (demo)";
        other.born = "1988-01-30";
        m_first = m_practice->addPatient(first).value();
        const auto second = m_practice->addPatient(twin).value();
        const auto third = m_practice->addPatient(other).value();
        Visit visit;
        visit.patient = Patient{first.name, first.born};
        visit.date = "2026-11-02";
        Finding sore;
        sore.place = {StructureId{"levator-scapulae"}, Side::Left};
        sore.tenderness = Tenderness{3};
        sore.restriction = Restriction{2};
        sore.familiar = true;
        visit.findings = {sore};
        m_visit = m_practice->addVisit(m_first, writeVisit(visit)).value();
        static_cast<void>(m_practice->noteOpened(m_first));
        static_cast<void>(m_practice->sign(m_visit));
        static_cast<void>(m_practice->beginAmendment(m_visit));
        visit.findings.front().tenderness = Tenderness{2};
        static_cast<void>(m_practice->saveVisit(m_visit, writeVisit(visit)));
        static_cast<void>(m_practice->signAmendment(m_visit, "grade of the other side was written down"));
        visit.patient = Patient{other.name, other.born};
        visit.date = "2016-05-04";
        static_cast<void>(m_practice->addVisit(third, writeVisit(visit)));
        static_cast<void>(m_practice->noteOpened(second));
    }

    QString list()
    {
        const QString name = m_folder.filePath(QStringLiteral("patients.csv"));
        QFile file(name);
        if (file.open(QIODevice::WriteOnly))
            file.write("Name;Birth date;Phone\nIda Fenwright (demo);1971-02-11;1\nBastian Quell (demo);1988-01-30;2\n"
                       "Noll Pettigrew (demo);31.2.1980;3\nSunniva Ashdown (demo);;4\n");
        return name;
    }

    void take(QWidget &dialog, const char *screen)
    {
        dialog.show();
        QTest::qWait(60); // wrapped words find their height
        m_isGood = dialog.grab().save(m_name.arg(QLatin1String(screen))) && m_isGood;
    }

    const Knowledge &m_knowledge;
    const Adviser &m_adviser;
    const std::vector<TechniqueGroup> m_groups;
    const QString m_name;
    QTemporaryDir m_folder;
    std::string m_file;
    std::unique_ptr<Practice> m_practice;
    std::int64_t m_first = 0;
    std::int64_t m_visit = 0;
    bool m_isGood = true;
};

} // namespace

bool photographPractice(const Knowledge &knowledge, const Adviser &adviser, const QString &name)
{
    return Screens(knowledge, adviser, name).run();
}

} // namespace raphe
