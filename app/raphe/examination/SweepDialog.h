// The sweep along an edge: the edge unrolled from end to end, in steps of about 25 mm for this patient's height, with what
// attaches to each; one mark a step as the finger goes. Digits mark and go on, C is clear, arrows go back and forth.
#pragma once

#include "app/paint/Theme.h"
#include "app/raphe/VisitSession.h"
#include "core/examination/Sweep.h"

#include <QDialog>

namespace raphe {

class EdgeStrip;
class WrappedLabel;

class SweepDialog : public QDialog {
    Q_OBJECT

public:
    SweepDialog(VisitSession &session, const Sweep &sweep, bool isHeightKnown, const Theme &theme, QWidget *parent = nullptr);

    [[nodiscard]] EdgeStrip &strip() { return *m_strip; }
    /// Records what the marks say, as one step of undo.
    void accept() override;
    /// Asks first when something was marked.
    void reject() override;

private:
    void tell();

    VisitSession &m_session;
    Sweep m_sweep;
    EdgeStrip *m_strip;
    WrappedLabel *m_at; // what attaches to the step that is felt now
    WrappedLabel *m_marks;
};

} // namespace raphe
