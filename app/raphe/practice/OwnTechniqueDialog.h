// One technique of the practice's own. Deletes itself when it is closed.
#pragma once

#include "app/raphe/practice/WorkDialog.h"
#include "core/plan/TreatmentSettings.h"

class QCheckBox;
class QComboBox;
class QLineEdit;
class QSpinBox;

namespace raphe {

class OwnTechniqueDialog : public WorkDialog {
    Q_OBJECT

public:
    /// `techniques`: the program's, at least one.
    OwnTechniqueDialog(const OwnTechnique &technique, const Techniques &techniques, QWidget *parent = nullptr);

    /// As it stands in the fields; the id is kept.
    [[nodiscard]] OwnTechnique technique() const;

private:
    void takeOver();
    void check();

    const OwnTechnique m_before;
    const Techniques m_techniques;
    QLineEdit *m_name;
    QComboBox *m_like;
    QSpinBox *m_seconds;
    QLineEdit *m_how;
    QLineEdit *m_caution;
    QCheckBox *m_preferred;
};

} // namespace raphe
