// A patch is said back in words, with the side, and the patient says whether it is the place. Three answers, each of which leads
// on; what was painted is seen beside them.
#pragma once

#include "app/raphe/intake/PainBoard.h"
#include "app/raphe/intake/patient/PatientPage.h"

namespace raphe {

class PlacePage : public PatientPage {
    Q_OBJECT

public:
    PlacePage(const PatientWords &words, const Knowledge &knowledge, const Theme &theme);

    void give(const PatientAnswers &answers, int patch) override;
    [[nodiscard]] bool isAnswered() const override { return false; } // each button leads on
    [[nodiscard]] bool goesOn() const override { return false; }
    [[nodiscard]] QWidget *firstField() const override;
    void setScale(double scale) override;
    /// What is said, as one text.
    [[nodiscard]] QString said() const;

Q_SIGNALS:
    void againWanted(int patch);
    void otherSideWanted(int patch);

private:
    const Knowledge &m_knowledge;
    PainBoard *m_board;
    QWidget *m_side;
    WrappedLabel *m_said;
    WrappedLabel *m_ask;
    QPushButton *m_yes;
    QPushButton *m_again;
    QPushButton *m_other;
};

} // namespace raphe
