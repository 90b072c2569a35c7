// Work off the plan in two presses: where, then what. Places are those where something was found today, or one that is looked
// for by name; techniques those that are meant for it, with what holds there.
#pragma once

#include "app/raphe/VisitSession.h"

#include <QWidget>

class QLabel;
class QVBoxLayout;

namespace raphe {

class WorkPicker : public QWidget {
    Q_OBJECT

public:
    explicit WorkPicker(VisitSession &session, QWidget *parent = nullptr);

    /// Nothing is chosen yet.
    void begin();
    void choosePlace(const Place &place);

Q_SIGNALS:
    /// Without seconds.
    void chosen(const raphe::TreatmentStep &step);
    void left();

private:
    void showTechniques();

    VisitSession &m_session;
    std::optional<Place> m_place;
    QVBoxLayout *m_places;
    QVBoxLayout *m_techniques;
    QLabel *m_head;
};

} // namespace raphe
