// Keeps the screen from going dark while hands are busy, where the desktop takes such a wish (org.freedesktop.ScreenSaver).
#pragma once

#include <QtGlobal>

namespace raphe {

class ScreenAwake {
public:
    ScreenAwake();
    ~ScreenAwake();
    ScreenAwake(const ScreenAwake &) = delete;
    ScreenAwake &operator=(const ScreenAwake &) = delete;

private:
    quint32 m_cookie = 0; // 0: nobody took it
};

} // namespace raphe
