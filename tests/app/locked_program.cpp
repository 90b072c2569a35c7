// The program itself, but with its memory open to the test that reads it, and a hand that works it: it unlocks, opens the
// first patient, types a complaint, says "open" and, told to go on, locks. Anew, it says "locked" and waits.
// Standard input: passphrase, letters of the patient's name, complaint, then one line for "go on". None of them may stand in
// this program, whose own text is in its memory too.
#include "app/raphe/MainWindow.h"
#include "app/raphe/Program.h"
#include "app/raphe/patients/PatientsDialog.h"
#include "app/raphe/practice/UnlockDialog.h"

#include <QApplication>
#include <QLineEdit>
#include <QListView>
#include <QPlainTextEdit>
#include <QTest>
#include <QTimer>

#include <algorithm>
#include <iostream>

namespace {

using namespace raphe;

void say(const char *word)
{
    std::cout << word << std::endl;
}

QString line()
{
    std::string words;
    std::getline(std::cin, words);
    return QString::fromStdString(words);
}

void wipeTyped(QString &words)
{
    words.fill(QLatin1Char('-'));
}

void typeInto(QWidget *field)
{
    QString words = line();
    field->setFocus();
    QTest::keyClicks(field, words);
    wipeTyped(words);
}

void workIt()
{
    static int step = 0;
    QWidget *top = QApplication::activeModalWidget();
    if (auto *unlock = qobject_cast<UnlockDialog *>(top); unlock && step == 0) {
        step = 1;
        for (auto *field : unlock->findChildren<QLineEdit *>())
            if (field->echoMode() == QLineEdit::Password) {
                typeInto(field);
                QTest::keyClick(field, Qt::Key_Return);
            }
    } else if (auto *patients = qobject_cast<PatientsDialog *>(top); patients && step == 1) {
        if (patients->findChild<QListView *>()->model()->rowCount() == 0)
            return; // not read yet
        step = 2;
        auto *field = patients->findChild<QLineEdit *>();
        typeInto(field);
        QTest::keyClick(field, Qt::Key_Return); // asks for the identity
        QTest::keyClick(patients->focusWidget(), Qt::Key_Return); // confirms it
    } else if (!top && step == 2) {
        for (QWidget *window : QApplication::topLevelWidgets()) {
            auto *main = qobject_cast<MainWindow *>(window);
            if (!main)
                continue;
            step = 3;
            typeInto(main->visitPanel().findChild<QPlainTextEdit *>());
            say("open");
            static_cast<void>(line());
            QApplication::setActiveWindow(main);
            QTest::keyClick(main, Qt::Key_L, Qt::ControlModifier);
        }
    }
}

void startWorking()
{
    const QStringList arguments = QCoreApplication::arguments();
    const bool isAnew = std::any_of(arguments.begin(), arguments.end(),
        [](const QString &argument) { return argument.startsWith(QStringLiteral("--resume-visit")); });
    auto *timer = new QTimer(QCoreApplication::instance());
    QObject::connect(timer, &QTimer::timeout, [timer, isAnew] {
        if (!isAnew) {
            workIt();
        } else if (qobject_cast<UnlockDialog *>(QApplication::activeModalWidget())) {
            timer->stop();
            say("locked");
        }
    });
    timer->start(20);
}

} // namespace

Q_COREAPP_STARTUP_FUNCTION(startWorking)

int main(int argc, char **argv)
{
    return runProgram(argc, argv);
}
