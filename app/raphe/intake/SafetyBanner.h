// What must be respected with this patient, in one strip over everything else; it stays as long as the patient is open. Warning
// signs that are still to be asked stand there too.
#pragma once

#include "app/paint/Theme.h"
#include "app/raphe/VisitSession.h"

#include <QFrame>

class QPushButton;

namespace raphe {

class WrappedLabel;

class SafetyBanner : public QFrame {
    Q_OBJECT

public:
    explicit SafetyBanner(VisitSession &session, QWidget *parent = nullptr);
    void setTheme(const Theme &theme);
    void refresh();
    /// Opens the questions.
    void ask();

Q_SIGNALS:
    void failed(const QString &message);

private:
    VisitSession &m_session;
    WrappedLabel *m_words;
    QPushButton *m_read;
    QPushButton *m_ask;
    Theme m_theme = Theme::light();
};

} // namespace raphe
