// What is done in the dialog that opens next, while whoever opened it waits in its exec().
#pragma once

#include <gtest/gtest.h>

#include <QApplication>
#include <QTimer>

#include <functional>

namespace raphe::test {

template <class Dialog> void inNext(const std::function<void(Dialog &)> &act)
{
    QTimer::singleShot(0, [act] {
        auto *dialog = qobject_cast<Dialog *>(QApplication::activeModalWidget());
        ASSERT_TRUE(dialog);
        act(*dialog);
    });
}

} // namespace raphe::test
