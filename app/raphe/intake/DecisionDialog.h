// What was decided about a warning sign that is there: what it means, what to do, and the decision with its reason. An emergency
// cannot be taken back at this visit, and says so before it is recorded.
#pragma once

#include "app/raphe/VisitSession.h"
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
    /// Whether the yes may have been a slip; what was found and recorded is taken back where it was recorded.
    enum class Slip { Possible, No };
    /// `sign` must outlive it. `places`: where it may be, by their names; empty when the sign has no place.
    DecisionDialog(const WarningSign &sign, WarningAnswer answer, const std::vector<std::pair<Place, QString>> &places, Slip slip,
        QWidget *parent = nullptr);

    /// As it was filled in; undecided when the practitioner said so.
    [[nodiscard]] const WarningAnswer &answer() const { return m_answer; }

    /// The practitioner said that the yes was a slip, which is not so when the program ends under the dialog.
    [[nodiscard]] bool isSlip() const { return m_isSlip; }

    /// A slip, or else not decided yet.
    void reject() override;

private:
    void record(bool isDecided);

    const WarningSign &m_sign;
    WarningAnswer m_answer;
    Slip m_slip;
    bool m_isSlip = false;
    QComboBox *m_decided;
    QLineEdit *m_why;
    QLineEdit *m_told;
    std::vector<std::pair<Place, QCheckBox *>> m_places;
};

/// The sign is there: on disk at once, so that whoever ends the program now finds the work stopped, and then what is decided, or
/// that it was a slip. Fails as VisitSession::answerWarning and saveNow.
[[nodiscard]] Result<Done> decideOn(VisitSession &session, const WarningSign &sign, DecisionDialog::Slip slip, QWidget *parent);

} // namespace raphe
