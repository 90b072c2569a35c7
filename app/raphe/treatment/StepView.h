// One step of a treatment, to be read at two metres: the side largest, the place by name and drawn, how to lie, what to do, and
// the time. It shows no name of a patient and takes no touch.
#pragma once

#include "app/paint/Theme.h"
#include "app/raphe/VisitSession.h"
#include "core/treatment/TreatmentRun.h"

#include <QWidget>

#include <vector>

class QLabel;

namespace raphe {

class PlacePicture;

class StepView : public QWidget {
    Q_OBJECT

public:
    StepView(VisitSession &session, const Theme &theme, QWidget *parent = nullptr);
    ~StepView() override;

    void show(const TreatmentRun &run, TreatmentRun::Time now);
    /// Only what the clock changes.
    void tick(const TreatmentRun &run, TreatmentRun::Time now);
    /// What was heard last: 'EASED'.
    void echo(const QString &words);

    /// The size of the smallest letters is this share of the view's height: then capitals are 12 mm of some 300 mm high on a
    /// screen of 24 inches.
    static constexpr double smallestShare = 0.057;

protected:
    void resizeEvent(QResizeEvent *event) override;

private:
    QLabel *line(double share, bool isBold);
    [[nodiscard]] QString positionOf(const TreatmentStep &step, const Technique *technique) const;
    [[nodiscard]] QString noticeOf(const TreatmentRun &run, TreatmentRun::Time now) const;
    void notice(const QString &words, const QColor &colour);

    VisitSession &m_session;
    const Theme m_theme;
    std::vector<std::pair<QLabel *, double>> m_lines; // with their share of the height
    QLabel *m_count;
    QLabel *m_side;
    QLabel *m_place;
    QLabel *m_technique;
    QLabel *m_position;
    QLabel *m_clock;
    QLabel *m_notice;
    QLabel *m_next;
    PlacePicture *m_body;
};

/// 'RIGHT', 'LEFT', or 'MIDLINE'.
[[nodiscard]] QString sideAloud(Side side);

} // namespace raphe
