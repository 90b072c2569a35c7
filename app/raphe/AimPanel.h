// What the hands are on: the stack under the point, outside in, and one row of buttons a scale. One touch records.
#pragma once

#include "app/raphe/VisitSession.h"

#include <QWidget>

class QAbstractButton;
class QButtonGroup;
class QListWidget;
class QPushButton;

namespace raphe {

class WrappedLabel;

class AimPanel : public QWidget {
    Q_OBJECT

public:
    explicit AimPanel(VisitSession &session, QWidget *parent = nullptr);

    /// Asks for the reason and records that the place could not be examined.
    void askWhyUnable();

private:
    QWidget *scaleRow(const QString &title, const QStringList &labels, const QStringList &names, QButtonGroup *&group);
    void showAim();
    void showFinding();

    VisitSession &m_session;
    WrappedLabel *m_title;
    WrappedLabel *m_plain;
    QListWidget *m_stack;
    QWidget *m_scales;
    QButtonGroup *m_tenderness = nullptr;
    QButtonGroup *m_restriction = nullptr;
    QButtonGroup *m_spots = nullptr;
    QPushButton *m_familiar;
    QPushButton *m_clear;
    QPushButton *m_unable;
    QPushButton *m_hurts;
    QPushButton *m_remove;
    bool m_filling = false;
};

} // namespace raphe
