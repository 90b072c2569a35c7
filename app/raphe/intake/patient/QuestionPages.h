// The pages that ask in words and numbers. What they ask, they put into PatientAnswers; see PatientPage.
#pragma once

#include "app/raphe/intake/patient/PatientPage.h"
#include "core/reasoning/Knowledge.h"

#include <array>

namespace raphe {

/// Words to read.
class ReadPage : public PatientPage {
    Q_OBJECT

public:
    ReadPage(const PatientWords &words, const char *titleId, const std::vector<const char *> &textIds);
    [[nodiscard]] bool asks() const override { return false; }
};

/// Signs for which nobody should wait. What is answered goes nowhere but to the practitioner, at once.
class UrgentPage : public PatientPage {
    Q_OBJECT

public:
    explicit UrgentPage(const PatientWords &words);
    /// 0 none of these, 1 one of these.
    [[nodiscard]] std::optional<int> answer() const;
    /// It was said once, whatever was said later.
    [[nodiscard]] bool wasSaid() const { return m_wasSaid; }
    [[nodiscard]] bool goesOn() const override { return answer() != 1; }
    [[nodiscard]] QString note() const override;

private:
    ChoiceRow *m_choice;
    bool m_wasSaid = false;
};

/// In the patient's own words.
class WordsPage : public PatientPage {
    Q_OBJECT

public:
    WordsPage(const PatientWords &words, const char *titleId, std::string Complaint::*field);
    void take(PatientAnswers &answers) const override;
    [[nodiscard]] QString answerWords(const PatientAnswers &answers, int patch) const override;

private:
    std::string Complaint::*m_field;
    TextBlock *m_text;
};

/// About one patch: where it lies stands large above one row of answers.
class PatchPage : public PatientPage {
    Q_OBJECT

public:
    void give(const PatientAnswers &answers, int patch) override;
    void take(PatientAnswers &answers) const override;
    [[nodiscard]] QString answerWords(const PatientAnswers &answers, int patch) const override;

protected:
    PatchPage(const PatientWords &words, const char *titleId, const Knowledge &knowledge);
    void setRow(ChoiceRow *row) { m_row = row; }

    /// As a place in the row; nothing when it was not answered.
    [[nodiscard]] virtual std::optional<int> answerOf(const PainPatch &patch) const = 0;
    virtual void setAnswer(PainPatch &patch, std::optional<int> answer) const = 0;
    [[nodiscard]] virtual QString wordsOf(int answer) const = 0;

private:
    const Knowledge &m_knowledge;
    WrappedLabel *m_where;
    ChoiceRow *m_row = nullptr;
};

/// What a patch feels like.
class QualityPage : public PatchPage {
    Q_OBJECT

public:
    QualityPage(const PatientWords &words, const Knowledge &knowledge);

protected:
    [[nodiscard]] std::optional<int> answerOf(const PainPatch &patch) const override;
    void setAnswer(PainPatch &patch, std::optional<int> answer) const override;
    [[nodiscard]] QString wordsOf(int answer) const override;
};

/// How strong a patch is.
class StrengthPage : public PatchPage {
    Q_OBJECT

public:
    StrengthPage(const PatientWords &words, const Knowledge &knowledge);

protected:
    [[nodiscard]] std::optional<int> answerOf(const PainPatch &patch) const override;
    void setAnswer(PainPatch &patch, std::optional<int> answer) const override;
    [[nodiscard]] QString wordsOf(int answer) const override;
};

/// How strong it is now, at its worst and at its best.
class RatingsPage : public PatientPage {
    Q_OBJECT

public:
    explicit RatingsPage(const PatientWords &words);
    void take(PatientAnswers &answers) const override;
    [[nodiscard]] QString note() const override;
    [[nodiscard]] QString answerWords(const PatientAnswers &answers, int patch) const override;

private:
    std::array<ChoiceRow *, 3> m_rows{}; // now, worst, best
};

class SincePage : public PatientPage {
    Q_OBJECT

public:
    explicit SincePage(const PatientWords &words);
    void take(PatientAnswers &answers) const override;
    [[nodiscard]] QString answerWords(const PatientAnswers &answers, int patch) const override;
    /// A fall, a blow, a lift or a crash.
    [[nodiscard]] bool isInjury() const;

private:
    ChoiceRow *m_when;
    ChoiceRow *m_how;
    TextBlock *m_day;
};

/// What makes it worse, or better: all that fit.
class ChangePage : public PatientPage {
    Q_OBJECT

public:
    ChangePage(const PatientWords &words, const char *titleId, std::string Complaint::*field,
        const std::vector<const char *> &choiceIds);
    void take(PatientAnswers &answers) const override;
    [[nodiscard]] bool isAnswered() const override;
    [[nodiscard]] QString answerWords(const PatientAnswers &answers, int patch) const override;
    [[nodiscard]] QWidget *firstField() const override;
    void setScale(double scale) override;

private:
    std::string Complaint::*m_field;
    std::vector<const char *> m_ids;
    std::vector<QPushButton *> m_choices;
    TextBlock *m_own;
};

/// How much stirs it up and how long it takes to settle.
class SettlePage : public PatientPage {
    Q_OBJECT

public:
    explicit SettlePage(const PatientWords &words);
    void take(PatientAnswers &answers) const override;
    [[nodiscard]] QString answerWords(const PatientAnswers &answers, int patch) const override;

private:
    ChoiceRow *m_stirs;
    ChoiceRow *m_settles;
};

class DayPage : public PatientPage {
    Q_OBJECT

public:
    explicit DayPage(const PatientWords &words);
    void take(PatientAnswers &answers) const override;
    [[nodiscard]] QString answerWords(const PatientAnswers &answers, int patch) const override;

private:
    std::array<ChoiceRow *, partOfDayWords.size()> m_rows{};
};

/// Three things that are hard to do; at a follow-up the same ones, with new numbers.
class HardPage : public PatientPage {
    Q_OBJECT

public:
    /// `known`: their names, when they were told before.
    HardPage(const PatientWords &words, const std::vector<Activity> &known);
    void take(PatientAnswers &answers) const override;
    [[nodiscard]] QString answerWords(const PatientAnswers &answers, int patch) const override;

private:
    struct Row {
        std::string name; // known, or typed in `own`
        TextBlock *own = nullptr;
        ChoiceRow *score = nullptr;
    };
    std::vector<Row> m_hard;
};

} // namespace raphe
