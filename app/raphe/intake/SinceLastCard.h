// At a follow-up visit: what was told of the time since the last one, what was promised, and where it hurts now beside then. What
// did not change is confirmed in one stroke.
#pragma once

#include "app/raphe/VisitSession.h"

#include <QWidget>

class QPushButton;
class QVBoxLayout;

namespace raphe {

class ChoiceRow;
class TextBlock;
class WrappedLabel;

class SinceLastCard : public QWidget {
    Q_OBJECT

public:
    explicit SinceLastCard(VisitSession &session, QWidget *parent = nullptr);

Q_SIGNALS:
    /// All else is as it was: the examination can begin.
    void allSame();

private:
    void showVisit();
    void showPlaces();
    void showPromises();
    void showLeft();
    void confirmAll();
    [[nodiscard]] SinceLast told() const;
    void typed();

    VisitSession &m_session;
    WrappedLabel *m_title;
    WrappedLabel *m_left; // for today, by the last visit
    ChoiceRow *m_course;
    ChoiceRow *m_reaction;
    TextBlock *m_reactionTold;
    QVBoxLayout *m_promiseRows;
    std::vector<std::pair<std::string, ChoiceRow *>> m_promises; // task, kept
    WrappedLabel *m_places;
    QPushButton *m_same;
    bool m_filling = false;
};

} // namespace raphe
