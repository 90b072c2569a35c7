#include "core/examination/Pass.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace raphe {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("Pass", text);
}

QString sideWord(Side side)
{
    switch (side) {
    case Side::Right: return tr(QT_TRANSLATE_NOOP("Pass", "RIGHT"));
    case Side::Left: return tr(QT_TRANSLATE_NOOP("Pass", "LEFT"));
    case Side::Midline: break;
    }
    return {};
}

} // namespace

Pass::Pass(const Atlas &atlas, std::vector<Place> places)
    : m_atlas(atlas), m_places(std::move(places)), m_entries(m_places.size())
{
}

std::string saidInPass(const Atlas &atlas, const Place &place)
{
    const QString name = QString::fromStdString(atlas.at(place.structure).names.english);
    const QString side = sideWord(place.side);
    return (side.isEmpty() ? name : side + QStringLiteral(", ") + name).toStdString();
}

Finding findingOf(const Place &place, const PassEntry &entry)
{
    Finding finding;
    finding.place = place;
    if (entry.clear)
        finding.clear.tenderness = true; // a finger felt for soreness; nothing was moved
    if (entry.sore > 0)
        finding.tenderness = Tenderness{entry.sore};
    finding.familiar = entry.familiar;
    return finding;
}

std::string Pass::prompt() const
{
    return isDone() ? tr(QT_TRANSLATE_NOOP("Pass", "End of the pass")).toStdString() : saidInPass(m_atlas, m_places[m_at]);
}

std::string Pass::echo(std::size_t index) const
{
    const PassEntry &entry = m_entries[index];
    QStringList words{QString::fromStdString(saidInPass(m_atlas, m_places[index]))};
    if (entry.clear)
        words << tr(QT_TRANSLATE_NOOP("Pass", "clear"));
    if (entry.sore > 0)
        words << tr(QT_TRANSLATE_NOOP("Pass", "sore %1")).arg(entry.sore);
    if (entry.familiar)
        words << tr(QT_TRANSLATE_NOOP("Pass", "familiar"));
    return words.join(QStringLiteral(", ")).toStdString();
}

PassStep Pass::press(Pedal pedal, Time now)
{
    if (pedal == Pedal::Sore) {
        PassStep step = m_clearAt ? onClear() : PassStep{}; // the clear press was for the place before
        m_clearAt.reset();
        m_soreAt = now;
        m_wasHeld = false;
        return step;
    }
    if (m_soreAt) { // still down: it was for this place, whatever comes next
        m_clearAt = now;
        return settleSore(now);
    }
    if (m_clearAt && now - *m_clearAt <= quickPress) {
        m_clearAt.reset();
        return takeBack();
    }
    PassStep step = m_clearAt ? onClear() : PassStep{};
    m_clearAt = now;
    return step;
}

PassStep Pass::release(Pedal pedal, Time now)
{
    return pedal == Pedal::Clear || !m_soreAt ? PassStep{} : settleSore(now);
}

PassStep Pass::settleSore(Time now)
{
    const bool isHeld = now - *m_soreAt >= heldPress;
    m_soreAt.reset();
    return m_wasHeld ? PassStep{} : isHeld ? onHeld() : onSore();
}

PassStep Pass::tick(Time now)
{
    if (m_soreAt && !m_wasHeld && now - *m_soreAt >= heldPress) {
        m_wasHeld = true;
        return onHeld();
    }
    if (m_clearAt && now - *m_clearAt > quickPress) {
        m_clearAt.reset();
        return onClear();
    }
    return {};
}

PassStep Pass::onClear()
{
    if (isDone())
        return {PassStep::Kind::Nothing, m_at, {}, prompt()};
    const std::size_t index = m_at++;
    if (!m_entries[index].isEmpty()) // it was sore: on to the next
        return {PassStep::Kind::Nothing, index, {}, prompt()};
    m_before.emplace_back(index, m_entries[index]);
    m_entries[index].clear = true;
    return {PassStep::Kind::Record, index, m_entries[index], echo(index) + ". " + prompt()};
}

PassStep Pass::onSore()
{
    if (isDone())
        return {PassStep::Kind::Nothing, m_at, {}, prompt()};
    PassEntry &entry = m_entries[m_at];
    if (entry.sore == Tenderness::highest)
        return {PassStep::Kind::Nothing, m_at, {}, echo(m_at)};
    m_before.emplace_back(m_at, entry);
    ++entry.sore;
    entry.clear = false;
    return {PassStep::Kind::Record, m_at, entry, echo(m_at)};
}

PassStep Pass::onHeld()
{
    if (isDone())
        return {PassStep::Kind::Nothing, m_at, {}, prompt()};
    PassEntry &entry = m_entries[m_at];
    if (entry.familiar)
        return {PassStep::Kind::Nothing, m_at, {}, echo(m_at)};
    m_before.emplace_back(m_at, entry);
    entry.familiar = true;
    entry.clear = false;
    return {PassStep::Kind::Record, m_at, entry, echo(m_at)};
}

PassStep Pass::takeBack()
{
    if (m_before.empty())
        return {PassStep::Kind::Nothing, m_at, {}, tr(QT_TRANSLATE_NOOP("Pass", "Nothing to take back")).toStdString()};
    const auto [index, before] = m_before.back();
    m_before.pop_back();
    m_entries[index] = before;
    m_at = index;
    return {PassStep::Kind::TakeBack, index, before,
        //: %1: a place, and what is still said of it
        tr(QT_TRANSLATE_NOOP("Pass", "Taken back. %1")).arg(QString::fromStdString(echo(index))).toStdString()};
}

} // namespace raphe
