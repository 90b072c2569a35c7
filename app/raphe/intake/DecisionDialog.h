// What was decided about a warning sign that is there: what it means, what to do, and the decision with its reason. An emergency
// cannot be taken back at this visit, and says so before it is recorded.
#pragma once

#include "app/raphe/practice/WorkDialog.h"
#include "core/record/WarningAnswer.h"
#include "core/safety/WarningSigns.h"

class QCheckBox;
class QComboBox;
class QLineEdit;

namespace raphe {

class DecisionDialog : public WorkDialog {
    Q_OBJECT

public:
    /// `sign` must outlive it. `places`: where it may be, by their names; empty when the sign has no place.
    DecisionDialog(const WarningSign &sign, WarningAnswer answer, const std::vector<std::pair<Place, QString>> &places,
        QWidget *parent = nullptr);

    /// As it was filled in; undecided when the practitioner said so.
    [[nodiscard]] const WarningAnswer &answer() const { return m_answer; }

    /// The practitioner said that the yes was a slip, which is not so when the program ends under the dialog.
    [[nodiscard]] bool isSlip() const { return m_isSlip; }

    void reject() override;

private:
    void record(bool isDecided);

    const WarningSign &m_sign;
    WarningAnswer m_answer;
    bool m_isSlip = false;
    QComboBox *m_decided;
    QLineEdit *m_why;
    QLineEdit *m_told;
    std::vector<std::pair<Place, QCheckBox *>> m_places;
};

} // namespace raphe
