// The work was stopped: what to do first, what to ask, and what to write down when something happened.
#pragma once

#include "core/record/TreatmentLog.h"

#include <QWidget>

class QPushButton;

namespace raphe {

class AdverseForm;

class StopPage : public QWidget {
    Q_OBJECT

public:
    explicit StopPage(QWidget *parent = nullptr);

    /// Nothing is ticked or told.
    void begin();
    /// What was ticked and told; without a time.
    [[nodiscard]] AdverseEvent told() const;

Q_SIGNALS:
    /// Nothing was the matter.
    void goOnWanted();
    void endWanted();

private:
    void tellButtons();

    AdverseForm *m_form;
    QPushButton *m_goOn;
    QPushButton *m_end;
};

} // namespace raphe
