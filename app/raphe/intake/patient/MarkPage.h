// The patient marks where it hurts on one view, or on the two sides. Each page keeps the patches of its own views and leaves the
// others alone, so that taking back never changes what is not seen.
#pragma once

#include "app/raphe/intake/PainBoard.h"
#include "app/raphe/intake/patient/PatientPage.h"

class QBoxLayout;

namespace raphe {

class MarkPage : public PatientPage {
    Q_OBJECT

public:
    enum class Of { Front, Back, Sides };
    MarkPage(const PatientWords &words, const Knowledge &knowledge, const Theme &theme, Of of);

    void give(const PatientAnswers &answers, int patch) override;
    void take(PatientAnswers &answers) const override;
    [[nodiscard]] bool isAnswered() const override { return m_saidNothing || !m_board->patches().empty(); }
    [[nodiscard]] const char *missingId() const override { return "mark-empty"; }
    [[nodiscard]] QWidget *firstField() const override { return m_board; }
    [[nodiscard]] QString answerWords(const PatientAnswers &answers, int patch) const override;
    void setScale(double scale) override;

    [[nodiscard]] bool shows(const PainPatch &patch) const;
    /// Takes the patch off, so that it can be marked again; 'take back' brings it back.
    void takeOff(const PainPatch &patch);
    /// The last stroke was more than a drawing can hold.
    void refuseLast();

Q_SIGNALS:
    void sidesWanted();

private:
    QWidget *makeWords(Of of);
    QWidget *makeTools(Of of);
    void showTools();

    const Knowledge &m_knowledge;
    bool m_saidNothing = false; // it does not hurt here
    PainBoard *m_board;
    QWidget *m_side;
    ChoiceRow *m_brush = nullptr;
    QPushButton *m_takeBack = nullptr;
    QPushButton *m_wipe = nullptr;
    QPushButton *m_nothing = nullptr;
    WrappedLabel *m_here = nullptr; // the place under the hand
};

} // namespace raphe
