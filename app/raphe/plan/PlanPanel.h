// The plan of this treatment: the minutes that are left on a slider, the steps with their reasons, what was left out. A step can
// be pinned, moved, dropped, worked with another technique, or its technique refused; everything is planned anew at once, and
// what is wanted is kept with the visit.
#pragma once

#include "app/raphe/CardDelegate.h"
#include "app/raphe/Settings.h"
#include "app/raphe/VisitSession.h"
#include "app/raphe/plan/PlanModel.h"

#include <QTimer>
#include <QWidget>

class QListView;
class QMenu;
class QPushButton;
class QSlider;
class QToolButton;

namespace raphe {

class WrappedLabel;

class PlanPanel : public QWidget {
    Q_OBJECT

public:
    PlanPanel(VisitSession &session, Settings &settings, QWidget *parent = nullptr);

    void setTheme(const Theme &theme);
    [[nodiscard]] QListView &view() { return *m_view; }
    [[nodiscard]] QSlider &minutes() { return *m_minutes; }
    [[nodiscard]] const SessionPlan &plan() const { return m_model->plan(); }
    /// Of the chosen row; each plans anew.
    void pin();
    void drop();
    void move(int by);
    /// The patient does not want this technique today.
    void refuse();

Q_SIGNALS:
    /// The plan is shown anew.
    void planShown();
    /// The treatment is to begin with this plan, or to go on.
    void treatWanted();
    /// A row was chosen.
    void chosen(const raphe::Place &place);

protected:
    void showEvent(QShowEvent *event) override;

private:
    void makeColumn();
    void makeWishes();
    void makeKeys();
    void takeWish();
    void keepWish();
    void refresh();
    void tellPlan(const Result<SessionPlan> &planned);
    void tellButtons();
    void fillTechniques();
    void choose(int row);
    [[nodiscard]] int row() const;

    VisitSession &m_session;
    Settings &m_settings;
    PlanWish m_wish; // the visit's, with what the slider says while it moves
    QTimer m_keeping; // of what the slider says
    PlanModel *m_model;
    CardDelegate *m_delegate;
    WrappedLabel *m_left; // minutes in words
    QSlider *m_minutes;
    QToolButton *m_wishes;
    std::vector<std::pair<Position, QAction *>> m_open; // positions
    QMenu *m_unwanted; // techniques
    WrappedLabel *m_notice;
    WrappedLabel *m_sum;
    QListView *m_view;
    QPushButton *m_pin;
    QPushButton *m_earlier;
    QPushButton *m_later;
    QPushButton *m_drop;
    QToolButton *m_technique;
    QPushButton *m_treat;
    std::optional<Place> m_chosen;
    bool m_filling = false;
};

} // namespace raphe
