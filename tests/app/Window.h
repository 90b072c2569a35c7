// A window on a practice file of its own with one patient and one empty visit, for the tests of the window.
#pragma once

#include "app/raphe/MainWindow.h"
#include "core/record/VisitJson.h"
#include "tests/support/Content.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QDate>
#include <QListView>
#include <QListWidget>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>

#include <memory>

namespace raphe::test {

/// What the program learns at its start.
inline const Learned &learned()
{
    static const auto read = learn();
    EXPECT_TRUE(read.ok()) << inWords(read.error());
    return *read.value();
}

inline const Knowledge &knowledge()
{
    return learned().knowledge;
}

class WindowTest : public testing::Test {
protected:
    void SetUp() override
    {
        ASSERT_TRUE(m_folder.isValid());
        auto made = Practice::make(practice(), {}, {"test", "Test Hand", "for the test only", leastCost});
        ASSERT_TRUE(made.ok()) << inWords(made.error());
        Practice &file = *made.value().practice;
        m_keys = file.keys();
        Visit visit;
        visit.patient = Patient{"Test Patient", "1980-01-01"};
        visit.date = QDate::currentDate().toString(Qt::ISODate).toStdString();
        visit.cautions = {"Takes a blood thinner"};
        PatientRecord record;
        record.name = visit.patient->name;
        record.born = visit.patient->born;
        const auto patient = file.addPatient(record);
        ASSERT_TRUE(patient.ok());
        ASSERT_TRUE(file.addVisit(patient.value(), writeVisit(visit)).ok());
        dress(*qobject_cast<QApplication *>(QCoreApplication::instance()), Theme::light());
        m_session = std::make_unique<VisitSession>(learned(), std::move(made.value().practice));
        m_window = std::make_unique<MainWindow>(*m_session);
        m_window->resize(1440, 900);
        m_window->visitPanel().openPatient(patient.value());
        ASSERT_NE(m_session->visitId(), 0);
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

    /// What the practice file holds, read through a connection of its own.
    [[nodiscard]] Visit stored()
    {
        EXPECT_TRUE(m_session->saveNow().ok());
        auto file = Practice::open(practice(), m_keys);
        EXPECT_TRUE(file.ok());
        const auto row = file.value()->visit(m_session->visitId());
        EXPECT_TRUE(row.ok());
        auto visit = readVisit(row.value().document, "stored", *knowledge().atlas);
        EXPECT_TRUE(visit.ok());
        return visit.value();
    }

private:
    QTemporaryDir m_folder;
    std::shared_ptr<const Keyring> m_keys;
    std::unique_ptr<VisitSession> m_session;
    std::unique_ptr<MainWindow> m_window;
};

} // namespace raphe::test
