// A window on a practice file of its own with one patient and one empty visit, for the tests of the window.
#pragma once

#include "app/raphe/MainWindow.h"
#include "core/record/VisitJson.h"
#include "tests/support/Content.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QListView>
#include <QListWidget>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>

#include <memory>

namespace raphe::test {

inline const Knowledge &knowledge()
{
    static const Result<Knowledge> read = readKnowledge();
    EXPECT_TRUE(read.ok()) << inWords(read.error());
    return read.value();
}

class WindowTest : public testing::Test {
protected:
    void SetUp() override
    {
        ASSERT_TRUE(m_folder.isValid());
        auto store = openPractice(practice());
        ASSERT_TRUE(store.ok());
        Visit visit;
        visit.patient = Patient{"Test Patient", "1980-01-01"};
        visit.date = "2026-11-25";
        visit.cautions = {"Takes a blood thinner"};
        const auto patient = store.value()->addPatient(visit.patient->name, visit.patient->born);
        ASSERT_TRUE(patient.ok());
        ASSERT_TRUE(store.value()->addVisit(patient.value(), visit.date, writeVisit(visit)).ok());
        dress(*qobject_cast<QApplication *>(QCoreApplication::instance()), Theme::light());
        m_session =
            std::make_unique<VisitSession>(knowledge(), adviser(), std::move(store).value(), existingPractice(practice()));
        m_window = std::make_unique<MainWindow>(*m_session);
        m_window->resize(1440, 900);
        ASSERT_TRUE(m_window->openFirstVisit().ok());
        m_window->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(m_window.get()));
        QApplication::setActiveWindow(m_window.get());
    }

    [[nodiscard]] std::string practice() const { return m_folder.filePath(QStringLiteral("test.raphe")).toStdString(); }
    [[nodiscard]] QString inFolder(const char *name) const { return m_folder.filePath(QString::fromUtf8(name)); }
    [[nodiscard]] MainWindow &window() { return *m_window; }
    [[nodiscard]] VisitSession &session() { return *m_session; }
    [[nodiscard]] const std::vector<Finding> &findings() const { return m_session->visit().findings; }
    void key(Qt::Key k, Qt::KeyboardModifiers modifiers = {})
    {
        QTest::keyClick(QApplication::focusWidget() ? QApplication::focusWidget() : m_window.get(), k, modifiers);
    }

    /// A pixel where a touch means the place; fails the test when there is none.
    [[nodiscard]] QPoint pixelOf(BodyView &view, const Place &place)
    {
        const QRect box = view.widgetRectOf(place);
        for (int y = box.top(); y <= box.bottom(); y += 2)
            for (int x = box.left(); x <= box.right(); x += 2)
                if (view.placeAt(QPointF(x, y)) == place && view.placeAt(QPointF(x + 2, y + 2)) == place)
                    return {x + 1, y + 1};
        ADD_FAILURE() << "no pixel of " << view.nameOf(place).toStdString() << " can be touched";
        return {};
    }

    [[nodiscard]] QPushButton *button(const QString &accessibleName)
    {
        for (auto *b : m_window->findChildren<QPushButton *>())
            if (b->accessibleName() == accessibleName)
                return b;
        ADD_FAILURE() << "no button " << accessibleName.toStdString();
        return nullptr;
    }

    /// What the practice file holds, read through a store of its own.
    [[nodiscard]] Visit stored()
    {
        m_session->saveNow();
        auto store = openPractice(practice());
        EXPECT_TRUE(store.ok());
        const auto row = store.value()->visit(m_session->visitId());
        EXPECT_TRUE(row.ok());
        auto visit = readVisit(row.value().document, "stored", *knowledge().atlas);
        EXPECT_TRUE(visit.ok());
        return visit.value();
    }

private:
    QTemporaryDir m_folder;
    std::unique_ptr<VisitSession> m_session;
    std::unique_ptr<MainWindow> m_window;
};

} // namespace raphe::test
