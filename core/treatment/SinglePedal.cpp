#include "core/treatment/SinglePedal.h"

namespace raphe {

void SinglePedal::press(Time now)
{
    if (m_downAt || (m_upAt && now - *m_upAt < bounce))
        return;
    m_downAt = now;
    m_wasHeld = false;
    m_isSecond = m_waiting && now - *m_waiting <= quick;
}

std::optional<SinglePedal::Said> SinglePedal::release(Time now)
{
    if (!m_downAt)
        return {};
    const Time down = *m_downAt;
    m_downAt.reset();
    m_upAt = now;
    if (m_wasHeld)
        return {};
    if (now - down >= held) {
        m_waiting.reset();
        return Said{Act::Stop, down};
    }
    if (m_isSecond) {
        m_waiting.reset();
        return Said{Act::Back, down};
    }
    m_waiting = down;
    return tick(now);
}

std::optional<SinglePedal::Said> SinglePedal::tick(Time now)
{
    if (m_downAt && !m_wasHeld && now - *m_downAt >= held) {
        m_wasHeld = true;
        m_waiting.reset();
        return Said{Act::Stop, *m_downAt};
    }
    if (!m_downAt && m_waiting && now - *m_waiting > quick) {
        const Time at = *m_waiting;
        m_waiting.reset();
        return Said{Act::Next, at};
    }
    return {};
}

} // namespace raphe
