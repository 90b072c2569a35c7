// Speaks short prompts where a voice is installed; silent otherwise. What is said last cuts off what was said before.
#pragma once

#include <QObject>

#include <memory>

class QTextToSpeech;

namespace raphe {

class Speaker : public QObject {
    Q_OBJECT

public:
    explicit Speaker(QObject *parent = nullptr);
    ~Speaker() override;

    /// A voice is there and works.
    [[nodiscard]] bool canSpeak() const;
    void say(const QString &text);
    void stop();

private:
    std::unique_ptr<QTextToSpeech> m_voice;
};

} // namespace raphe
