// The card of the structure that is aimed at; its links lead on, and back again.
#pragma once

#include "app/raphe/Style.h"
#include "app/raphe/VisitSession.h"

#include <QWidget>

class QPushButton;
class QTextBrowser;

namespace raphe {

class CardPanel : public QWidget {
    Q_OBJECT

public:
    explicit CardPanel(VisitSession &session, QWidget *parent = nullptr);

    void setTheme(const Theme &theme);
    /// Stands beside the tabs, so that the card has the room; whoever places it owns it.
    [[nodiscard]] QPushButton *backButton() { return m_back; }

Q_SIGNALS:
    /// A link was followed.
    void chosen(const raphe::Place &place);

protected:
    void showEvent(QShowEvent *event) override;

private:
    void refresh();

    VisitSession &m_session;
    Theme m_theme = Theme::light();
    QPushButton *m_back;
    QTextBrowser *m_text;
    std::vector<Place> m_trail; // where links were followed from
    std::optional<Place> m_shown;
};

} // namespace raphe
