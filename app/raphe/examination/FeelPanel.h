// What else the hands felt at the place aimed at: clear of touch or of movement only, play and end feel of a joint, how sure,
// what the tissue feels like, and where pressing it is felt as well. Every answer is recorded at once.
#pragma once

#include "app/raphe/VisitSession.h"

#include <QWidget>

class QComboBox;
class QPushButton;
class QVBoxLayout;

namespace raphe {

class ChoiceRow;
class WrappedLabel;

class FeelPanel : public QWidget {
    Q_OBJECT

public:
    /// `textures`: the words of the trade that are offered.
    FeelPanel(VisitSession &session, const std::vector<std::string> &textures, QWidget *parent = nullptr);

    /// The next touch on the body is where it is felt as well.
    [[nodiscard]] bool isPointing() const;
    void pointAt(const Place &place);

Q_SIGNALS:
    void sweepWanted();

protected:
    void hideEvent(QHideEvent *event) override;

private:
    void refresh();
    void showRefersTo(const Finding *finding);

    VisitSession &m_session;
    QWidget *m_all;
    QPushButton *m_clearOfTouch;
    QPushButton *m_clearOfMotion;
    QWidget *m_ofJoints;
    ChoiceRow *m_play;
    ChoiceRow *m_endFeel;
    QPushButton *m_certain;
    QPushButton *m_afterComparing;
    std::vector<QPushButton *> m_textures;
    QPushButton *m_point;
    QVBoxLayout *m_places; // where it is felt as well
    WrappedLabel *m_hint;
    QPushButton *m_sweep;
};

} // namespace raphe
