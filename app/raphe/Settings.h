// The program's settings: every key with its type and default, in one place.
#pragma once

#include "app/paint/Paper.h"
#include "app/raphe/Style.h"
#include "core/examination/Pass.h"
#include "core/plan/Treat.h"
#include "core/record/Measure.h"

#include <QByteArray>
#include <QSettings>

namespace raphe {

class Settings {
public:
    [[nodiscard]] Appearance appearance() const { return word("appearance", appearanceWords, Appearance::System); }
    void setAppearance(Appearance value) { set("appearance", wordOf(appearanceWords, value)); }
    [[nodiscard]] Paper paper() const { return word("paper", paperWords, Paper::A4); }
    void setPaper(Paper value) { set("paper", wordOf(paperWords, value)); }
    [[nodiscard]] Preferences preferences() const
    {
        return {flag("complaint-first", Preferences().complaintFirst), flag("joint-first", Preferences().jointFirst), {}};
    }
    void setPreferences(const Preferences &value)
    {
        m_settings.setValue(QStringLiteral("complaint-first"), value.complaintFirst);
        m_settings.setValue(QStringLiteral("joint-first"), value.jointFirst);
    }
    /// Who signed in last, and how often a passphrase was wrong since somebody got in: the next try waits accordingly.
    [[nodiscard]] QString signIn() const { return m_settings.value(QStringLiteral("sign-in")).toString(); }
    void setSignIn(const QString &value) { m_settings.setValue(QStringLiteral("sign-in"), value); }
    [[nodiscard]] int failedUnlocks() const { return m_settings.value(QStringLiteral("failed-unlocks"), 0).toInt(); }
    void setFailedUnlocks(int value) { m_settings.setValue(QStringLiteral("failed-unlocks"), value); }
    /// How movements were measured last.
    [[nodiscard]] MoveMode moveMode() const { return word("move-mode", moveModeWords, MoveMode::Active); }
    void setMoveMode(MoveMode value) { set("move-mode", wordOf(moveModeWords, value)); }
    [[nodiscard]] std::optional<Device> device() const
    {
        return fromWord(deviceWords, m_settings.value(QStringLiteral("device")).toString().toStdString());
    }
    void setDevice(std::optional<Device> value) { set("device", value ? wordOf(deviceWords, *value) : std::string_view()); }
    /// The key (Qt::Key) that a pedal sends; pedals that turn pages are the commonest.
    [[nodiscard]] int pedalKey(Pedal pedal) const
    {
        return m_settings.value(nameOf(pedal), pedal == Pedal::Clear ? Qt::Key_PageDown : Qt::Key_PageUp).toInt();
    }
    void setPedalKey(Pedal pedal, int key) { m_settings.setValue(nameOf(pedal), key); }
    /// A pass says its places aloud, where there is a voice.
    [[nodiscard]] bool speaks() const { return flag("speaks", true); }
    void setSpeaks(bool value) { m_settings.setValue(QStringLiteral("speaks"), value); }
    /// Touching the screen of a treatment moves on, as the pedal does.
    [[nodiscard]] bool touches() const { return flag("touches", false); }
    void setTouches(bool value) { m_settings.setValue(QStringLiteral("touches"), value); }
    [[nodiscard]] QByteArray geometry() const { return m_settings.value(QStringLiteral("geometry")).toByteArray(); }
    void setGeometry(const QByteArray &value) { m_settings.setValue(QStringLiteral("geometry"), value); }

private:
    [[nodiscard]] static QString nameOf(Pedal pedal)
    {
        return pedal == Pedal::Clear ? QStringLiteral("clear-pedal") : QStringLiteral("sore-pedal");
    }
    template <class E, std::size_t N> [[nodiscard]] E word(const char *key, const WordTable<E, N> &table, E fallback) const
    {
        return fromWord(table, m_settings.value(QString::fromLatin1(key)).toString().toStdString()).value_or(fallback);
    }
    [[nodiscard]] bool flag(const char *key, bool fallback) const
    {
        return m_settings.value(QString::fromLatin1(key), fallback).toBool();
    }
    void set(const char *key, std::string_view value)
    {
        m_settings.setValue(QString::fromLatin1(key), QString::fromUtf8(value.data(), static_cast<qsizetype>(value.size())));
    }

    QSettings m_settings;
};

} // namespace raphe
