// 'What is it tied to?': four kinds of tie, ring by ring, with path, evidence and source; says what to light up.
#pragma once

#include "app/paint/BodyArt.h"
#include "app/raphe/CardDelegate.h"
#include "app/raphe/TraceModel.h"
#include "app/raphe/VisitSession.h"

#include <QWidget>

class QButtonGroup;
class QListView;
class QPushButton;

namespace raphe {

class WrappedLabel;

class TracePanel : public QWidget {
    Q_OBJECT

public:
    explicit TracePanel(VisitSession &session, QWidget *parent = nullptr);

    void setTheme(const Theme &theme);
    /// Lights one more ring; after the last one, starts again at the first.
    void step();
    /// Says again what to light up.
    void tell();

Q_SIGNALS:
    void litChanged(const std::vector<raphe::LitPlace> &lit, const std::vector<raphe::PathStep> &path);

private:
    void refresh();

    VisitSession &m_session;
    TraceModel m_model;
    CardDelegate *m_delegate;
    QListView *m_list;
    QButtonGroup *m_groups;
    QPushButton *m_step;
    WrappedLabel *m_heading;
    std::size_t m_ring = 1;
};

} // namespace raphe
