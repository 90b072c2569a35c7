// When what was examined at this visit, newest last, in the words that stand there now.
#pragma once

#include "app/raphe/VisitSession.h"

#include <QWidget>

class QListWidget;

namespace raphe {

class TimelinePanel : public QWidget {
    Q_OBJECT

public:
    explicit TimelinePanel(VisitSession &session, QWidget *parent = nullptr);

Q_SIGNALS:
    /// A finding was chosen.
    void placeChosen(const Place &place);
    /// A movement or a test was chosen.
    void sheetWanted(const QString &id);

private:
    void refresh();
    void choose(int row);
    [[nodiscard]] QString words(const Moment &moment) const;

    VisitSession &m_session;
    QListWidget *m_list;
};

} // namespace raphe
