// The hands of a patient on their own screen, and of the practitioner who takes it back.
#pragma once

#include "app/raphe/intake/ChoiceRow.h"
#include "app/raphe/intake/PainBoard.h"
#include "app/raphe/intake/patient/PatientWindow.h"
#include "app/raphe/intake/patient/PlacePage.h"
#include "app/raphe/practice/PassphraseEdit.h"
#include "app/raphe/record/TextLine.h"
#include "tests/app/Window.h"

#include <QSignalSpy>

namespace raphe::test {

class PatientHands : public WindowTest {
protected:
    PatientWindow &hand()
    {
        const auto handed = PatientWindow::handOver(session(), Theme::light(), 0, window());
        if (!handed.ok())
            throw std::runtime_error(inWords(handed.error()));
        m_patient = handed.value();
        show();
        return *m_patient;
    }
    void show()
    {
        EXPECT_TRUE(QTest::qWaitForWindowExposed(m_patient));
        QApplication::setActiveWindow(m_patient);
        QCoreApplication::processEvents();
    }
    [[nodiscard]] PatientWindow &patient() { return *m_patient; }
    [[nodiscard]] bool isOpen() const { return m_patient && m_patient->isVisible(); }
    [[nodiscard]] QString title() { return patient().page().title(); }

    [[nodiscard]] static QPushButton *seen(const QWidget &in, const QString &text)
    {
        for (auto *b : in.findChildren<QPushButton *>())
            if (b->isVisible() && b->text().simplified() == text && b->window() == in.window())
                return b;
        return nullptr;
    }
    void press(const char *text)
    {
        QPushButton *found = seen(patient(), QString::fromUtf8(text));
        ASSERT_TRUE(found) << "no button '" << text << "' on: " << title().toStdString();
        ASSERT_TRUE(found->isEnabled()) << text;
        QTest::mouseClick(found, Qt::LeftButton);
    }
    void choose(int row, int value)
    {
        const auto rows = patient().page().findChildren<ChoiceRow *>();
        ASSERT_GT(rows.size(), row) << title().toStdString();
        QTest::mouseClick(rows[row]->button(value), Qt::LeftButton);
    }
    void type(const char *text)
    {
        auto *field = patient().page().findChild<TextBlock *>();
        ASSERT_TRUE(field);
        field->insertPlainText(QString::fromUtf8(text));
    }
    [[nodiscard]] PainBoard &board() { return *patient().page().findChild<PainBoard *>(); }
    void paint(const Place &place)
    {
        PainBoard &on = board();
        ASSERT_TRUE(on.goTo(place));
        const QPoint at = on.boxOf(*on.spotAtCursor()).center();
        QTest::mousePress(&on, Qt::LeftButton, {}, at);
        QTest::mouseMove(&on, at + QPoint(0, 4));
        QTest::mouseRelease(&on, Qt::LeftButton, {}, at + QPoint(0, 4));
    }
    void toFront()
    {
        press("Go on");
        press("I have none of these");
        press("Go on");
        type("my shoulder aches");
        press("Go on");
        ASSERT_EQ(title(), QStringLiteral("Front of your body"));
    }
    [[nodiscard]] QString said() { return patient().page().findChildren<QLabel *>().isEmpty() ? QString() : place().said(); }
    [[nodiscard]] PlacePage &place() { return dynamic_cast<PlacePage &>(patient().page()); }
    void tryPassphrase(const QString &text)
    {
        press("For the therapist");
        const QPointer<TakeOverDialog> dialog = patient().findChild<TakeOverDialog *>();
        ASSERT_TRUE(dialog);
        ASSERT_TRUE(QTest::qWaitForWindowExposed(dialog));
        dialog->findChild<PassphraseLine *>()->setText(text);
        QPushButton *take = seen(*dialog, QStringLiteral("Take over"));
        ASSERT_TRUE(take);
        QTest::mouseClick(take, Qt::LeftButton);
        ASSERT_TRUE(QTest::qWaitFor([&] { return !dialog || !dialog->isWorking(); }, 60000));
    }
    QStringList takeBack()
    {
        QSignalSpy taken(m_patient, &PatientWindow::takenOver);
        tryPassphrase(QStringLiteral("for the test only"));
        EXPECT_EQ(taken.count(), 1);
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        return taken.isEmpty() ? QStringList() : taken.first().first().toStringList();
    }

private:
    QPointer<PatientWindow> m_patient;
};

} // namespace raphe::test
