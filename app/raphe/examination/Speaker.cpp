#include "app/raphe/examination/Speaker.h"

#include <QTextToSpeech>

namespace raphe {

Speaker::Speaker(QObject *parent) : QObject(parent)
{
    if (!QTextToSpeech::availableEngines().isEmpty())
        m_voice = std::make_unique<QTextToSpeech>();
}

Speaker::~Speaker() = default;

bool Speaker::canSpeak() const
{
    return m_voice && m_voice->state() != QTextToSpeech::Error && !m_voice->availableVoices().isEmpty();
}

void Speaker::say(const QString &text)
{
    if (!canSpeak())
        return;
    m_voice->stop();
    m_voice->say(text);
}

void Speaker::stop()
{
    if (m_voice)
        m_voice->stop();
}

} // namespace raphe
