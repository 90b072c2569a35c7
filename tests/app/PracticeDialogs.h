// Dialogs of a practice, driven by keys on real files in a folder of their own, with a cheap derivation of keys.
#pragma once

#include "app/raphe/Style.h"
#include "app/raphe/practice/RecoveryKeyPages.h"
#include "app/raphe/practice/WorkDialog.h"
#include "core/store/Practice.h"
#include "tests/support/Content.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QPointer>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>

#include <filesystem>
#include <set>

namespace raphe::test {

class PracticeDialogTest : public testing::Test {
protected:
    void SetUp() override
    {
        ASSERT_TRUE(m_folder.isValid());
        dress(*qobject_cast<QApplication *>(QCoreApplication::instance()), Theme::light());
    }

    [[nodiscard]] std::string folder() const { return m_folder.path().toStdString(); }
    [[nodiscard]] std::string file() const { return folder() + "/test.raphe"; }
    [[nodiscard]] static NewAccount owner() { return {"ada", "Ada Brook", "right words here", leastCost}; }
    /// A practice of Ada's.
    [[nodiscard]] std::unique_ptr<Practice> made()
    {
        PracticeSettings settings;
        settings.name = "Brook and Brook";
        auto made = Practice::make(file(), settings, owner());
        if (!made.ok()) {
            ADD_FAILURE() << inWords(made.error());
            return nullptr;
        }
        m_recovery = made.value().recovery.text();
        return std::move(made.value().practice);
    }
    [[nodiscard]] const std::string &recovery() const { return m_recovery; }
    [[nodiscard]] bool opensWith(const char *signIn, std::string_view passphrase) const
    {
        return Practice::unlock(file(), signIn, passphrase).ok();
    }

    static void open(QDialog &dialog)
    {
        dialog.show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(&dialog));
        QApplication::setActiveWindow(&dialog);
        QCoreApplication::processEvents();
    }
    /// Where the focus is, also when it moves on meanwhile.
    static void type(const QString &text)
    {
        for (const QChar c : text)
            QTest::sendKeyEvent(QTest::Click, QApplication::focusWidget(), Qt::Key_unknown, c, Qt::NoModifier);
    }
    static void type(const char *text) { type(QString::fromUtf8(text)); }
    static void key(Qt::Key k, Qt::KeyboardModifiers modifiers = {})
    {
        QTest::keyClick(QApplication::focusWidget() ? QApplication::focusWidget() : QApplication::activeWindow(), k, modifiers);
    }
    static void await(const WorkDialog &dialog)
    {
        ASSERT_TRUE(QTest::qWaitFor([&] { return !dialog.isWorking(); }, 60000));
    }
    /// Until a dialog that deletes itself has done so.
    static void awaitEnd(const QPointer<WorkDialog> &dialog)
    {
        EXPECT_TRUE(QTest::qWaitFor([&] { return !dialog || (dialog->isVisible() && !dialog->isWorking()); }, 60000));
        EXPECT_FALSE(dialog) << notice(*dialog).toStdString();
    }
    /// Of the buttons that can be seen; null when there is none.
    [[nodiscard]] static QPushButton *button(const QWidget &in, const char *text)
    {
        for (auto *b : in.findChildren<QPushButton *>())
            if (b->isVisible() && b->window() == in.window() && b->text() == QString::fromUtf8(text))
                return b;
        return nullptr;
    }
    static void press(const QWidget &in, const char *text)
    {
        QPushButton *found = button(in, text);
        ASSERT_TRUE(found) << "no button " << text;
        ASSERT_TRUE(found->isEnabled()) << text;
        QTest::mouseClick(found, Qt::LeftButton);
    }
    template <class Field> [[nodiscard]] static Field *named(const QWidget &in, const char *name)
    {
        for (auto *field : in.findChildren<Field *>())
            if (field->accessibleName() == QString::fromUtf8(name))
                return field;
        throw std::runtime_error(std::string("no field ") + name);
    }
    /// What it complains of; empty when nothing is to be seen.
    [[nodiscard]] static QString notice(const WorkDialog &dialog)
    {
        for (const auto *label : dialog.findChildren<QLabel *>(QStringLiteral("notice")))
            if (label->isVisible() && label->window() == &dialog)
                return label->text();
        return {};
    }
    [[nodiscard]] static bool noticeSays(const WorkDialog &dialog, const char *words)
    {
        return notice(dialog).contains(QString::fromUtf8(words));
    }

    /// A group of the recovery key as it is shown.
    static QString shownGroup(const QWidget &dialog, int number)
    {
        const auto *label = dialog.findChild<QLabel *>(QStringLiteral("group %1").arg(number));
        return label ? label->text() : QString();
    }
    static QString shownKey(const QWidget &dialog)
    {
        QStringList groups;
        for (int number = 1; number <= static_cast<int>(RecoveryKey::groupCount); ++number)
            groups += shownGroup(dialog, number);
        return groups.join(QLatin1Char('-'));
    }
    /// The numbers that are asked for, in the order of their fields.
    static std::vector<int> asked(const QWidget &dialog)
    {
        std::vector<int> numbers;
        for (const auto *field : dialog.findChild<RecoveryProofPage *>()->findChildren<QLineEdit *>())
            numbers.push_back(field->accessibleName().section(QLatin1Char(' '), 1).toInt());
        return numbers;
    }

    /// Tab comes to every widget that takes it and back to the first, each has a name, and buttons and fields are high enough.
    static void expectKeyboardReachesAll(const QWidget &dialog, const std::string &when)
    {
        std::set<const QWidget *> wanted;
        for (const auto *w : dialog.findChildren<QWidget *>())
            if (w->isVisible() && w->isEnabled() && w->window() == &dialog && (w->focusPolicy() & Qt::TabFocus)
                && !w->focusProxy())
                wanted.insert(w);
        ASSERT_FALSE(wanted.empty()) << when;
        const QWidget *first = QApplication::focusWidget();
        ASSERT_TRUE(first) << when;
        std::set<const QWidget *> reached;
        const std::size_t steps = wanted.size() + 2;
        for (std::size_t i = 0; i < steps; ++i) {
            const QWidget *now = QApplication::focusWidget();
            reached.insert(now);
            EXPECT_FALSE(now->accessibleName().isEmpty()) << now->metaObject()->className() << ", " << when;
            if (qobject_cast<const QPushButton *>(now) || now->inherits("QLineEdit") || now->inherits("QComboBox")) {
                EXPECT_GE(now->height(), touchTarget) << now->accessibleName().toStdString() << ", " << when;
            }
            key(Qt::Key_Tab);
            if (QApplication::focusWidget() == first)
                break;
        }
        EXPECT_EQ(QApplication::focusWidget(), first) << "Tab does not come round, " << when;
        for (const QWidget *w : wanted)
            EXPECT_TRUE(reached.count(w) || (w->parentWidget() && reached.count(w->parentWidget())))
                << w->metaObject()->className() << ' ' << w->accessibleName().toStdString() << ", " << when;
    }
    static void expectFitsSmallScreen(const QWidget &dialog, const std::string &when)
    {
        EXPECT_LE(dialog.minimumSizeHint().height(), 700) << when;
        EXPECT_LE(dialog.height(), 700) << when;
        EXPECT_LE(dialog.width(), 1366) << when;
    }

private:
    QTemporaryDir m_folder;
    std::string m_recovery;
};

} // namespace raphe::test
