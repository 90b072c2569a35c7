// What the tests of misuse (tests/misuse) have in common: the window with its intake, its banner and its dialogs, the program
// without a window, and a second look at what the practice file holds. Each test is named by the attempt that it does.
#pragma once

#include "tests/app/InNext.h"
#include "tests/app/Window.h"

#include "app/raphe/intake/DecisionDialog.h"
#include "app/raphe/intake/WarningsDialog.h"
#include "core/safety/Consents.h"
#include "core/safety/Warnings.h"

#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QProcess>
#include <QTimer>

#include <functional>
#include <stdexcept>

namespace raphe::test {

class Misuse : public WindowTest {
protected:
    // Widgets by the names that a screen reader says.
    template <class Widget> [[nodiscard]] static Widget *named(const QWidget &in, const QString &name)
    {
        for (auto *widget : in.findChildren<Widget *>())
            if (widget->accessibleName() == name)
                return widget;
        throw std::runtime_error("nothing is called " + name.toStdString());
    }
    template <class Widget> [[nodiscard]] Widget *field(const char *name)
    {
        return named<Widget>(window().intake(), QString::fromUtf8(name));
    }
    [[nodiscard]] static QPushButton *button(const QWidget &in, const QString &start)
    {
        for (auto *b : in.findChildren<QPushButton *>())
            if (b->window() == in.window() && (b->accessibleName().startsWith(start) || b->text() == start))
                return b;
        throw std::runtime_error("no button " + start.toStdString());
    }
    [[nodiscard]] static bool says(const QWidget &in, const QString &words)
    {
        for (const auto *label : in.findChildren<QLabel *>())
            if (label->isVisible() && label->text().contains(words))
                return true;
        return false;
    }
    [[nodiscard]] bool intakeSays(const char *words) { return says(window().intake(), QString::fromUtf8(words)); }
    [[nodiscard]] QPlainTextEdit &story() { return *field<QPlainTextEdit>("What brings the patient, in their words"); }
    [[nodiscard]] SafetyBanner &banner() { return *window().findChild<SafetyBanner *>(); }
    [[nodiscard]] QString bannerWords() { return banner().findChild<QLabel *>()->text(); }

    void beginIntake()
    {
        window().showIntake(true);
        QCoreApplication::processEvents();
    }
    void reopen()
    {
        const auto visit = session().visitId();
        ASSERT_TRUE(session().saveNow().ok());
        session().close();
        ASSERT_TRUE(session().open(visit).ok());
    }
    [[nodiscard]] const std::string &today() { return session().visit().date; }
    [[nodiscard]] static std::string dayFrom(const std::string &day, int days)
    {
        return QDate::fromString(QString::fromStdString(day), Qt::ISODate).addDays(days).toString(Qt::ISODate).toStdString();
    }
    void hurtsAt(const char *structure, Side side)
    {
        session().aimAt({{{structure}, side}, {}, {}});
        session().toggleComplaint();
    }
    void finds(const char *structure, Side side)
    {
        session().aimAt({{{structure}, side}, {}, {}});
        session().setTenderness(3);
    }
    /// The record of the patient whose visit is open becomes this.
    void changeRecord(const std::function<void(PatientRecord &)> &change)
    {
        PatientRecord record = session().record();
        change(record);
        ASSERT_TRUE(session().practice().savePatient(session().patientId(), record).ok());
        ASSERT_TRUE(session().rereadRecord().ok());
    }
    /// What the practice file holds of the open visit now, without saving it first.
    [[nodiscard]] Visit onDisk()
    {
        auto file = Practice::open(practice(), session().practice().keys());
        EXPECT_TRUE(file.ok());
        auto visit = readVisit(file.value()->visit(session().visitId()).value().document, "on disk", *knowledge().atlas);
        EXPECT_TRUE(visit.ok());
        return visit.value();
    }

    /// By keys where there are any, else as an input method gives it, to whoever has the focus.
    static void write(const QString &text)
    {
        for (const QChar c : text) {
            QWidget *focus = QApplication::focusWidget();
            if (c.unicode() < 0x80) {
                QTest::keyClick(focus, c.toLatin1());
                continue;
            }
            QKeyEvent press(QEvent::KeyPress, Qt::Key_unknown, {}, QString(c));
            QApplication::sendEvent(focus, &press);
        }
    }

    // Warning signs.
    [[nodiscard]] const WarningSign &sign(const char *id) { return *adviser().rules().signs().find(id); }
    [[nodiscard]] const WarningAnswer *answered(const char *id)
    {
        for (const WarningAnswer &a : session().visit().warnings)
            if (a.sign == id)
                return &a;
        return nullptr;
    }
    [[nodiscard]] Result<Done> answer(const char *id, bool isThere, const std::vector<Place> &at = {},
        std::optional<Decision> decided = {}, const char *why = "", const char *told = "")
    {
        return session().answerWarning({id, isThere, today(), at, decided, why, told});
    }
    void emergency()
    {
        ASSERT_TRUE(
            answer("chest-pain-now", true, {}, Decision::EmergencyServices, "crushing on effort", "emergency service, 10:42")
                .ok());
    }
    [[nodiscard]] std::vector<std::string> due()
    {
        std::vector<std::string> ids;
        for (const WarningSign *s : session().warningsToAsk())
            ids.push_back(s->id);
        return ids;
    }
    [[nodiscard]] bool isDue(const char *id)
    {
        const auto ids = due();
        return std::find(ids.begin(), ids.end(), id) != ids.end();
    }
    [[nodiscard]] Cautions cautions() { return cautionsOf(session().visit()); }
    [[nodiscard]] static Cautions cautionsOf(const Visit &visit)
    {
        auto out = Cautions::of(adviser().rules(), *knowledge().regions, visit, "visit");
        if (!out)
            throw std::runtime_error(inWords(out.error()));
        return std::move(out).value();
    }
    void expectNothingOffered(const char *when)
    {
        EXPECT_TRUE(session().isLocked()) << when;
        const auto advice = adviser().advise(session().visit(), "visit");
        ASSERT_TRUE(advice.ok());
        EXPECT_TRUE(advice.value().isLocked()) << when;
        EXPECT_TRUE(advice.value().treatment.treat.empty()) << when;
    }
    void ask(const std::function<void(WarningsDialog &)> &act)
    {
        inNext<WarningsDialog>(act);
        banner().ask();
    }
    /// Presses Yes; `act` is done in the dialog that asks what was decided.
    void yes(WarningsDialog &dialog, const char *id, const std::function<void(DecisionDialog &)> &act)
    {
        inNext<DecisionDialog>(act);
        QTest::mouseClick(button(dialog, QStringLiteral("Yes: ") + QString::fromStdString(sign(id).ask)), Qt::LeftButton);
    }
    static void fill(DecisionDialog &dialog, const QString &why, const QString &told)
    {
        named<QLineEdit>(dialog, QStringLiteral("Why"))->setText(why);
        named<QLineEdit>(dialog, QStringLiteral("Who was told"))->setText(told);
        QTest::mouseClick(button(dialog, QStringLiteral("Record")), Qt::LeftButton);
    }

    // The program without a window.
    struct Ran {
        int status = -1;
        QString out;
        QString err;
    };
    [[nodiscard]] static Ran run(const QStringList &arguments)
    {
        QProcess process;
        process.start(QStringLiteral(RAPHE_BATCH), arguments);
        if (!process.waitForFinished())
            return {};
        return {process.exitCode(), QString::fromUtf8(process.readAllStandardOutput()),
            QString::fromUtf8(process.readAllStandardError())};
    }
    [[nodiscard]] QString written(const Visit &visit, const char *name = "visit.json")
    {
        QFile file(inFolder(name));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(QByteArray::fromStdString(writeVisit(visit)));
        return inFolder(name);
    }
};

} // namespace raphe::test
