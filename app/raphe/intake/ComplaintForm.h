// One complaint on the form: how it feels, what it costs and what the patient hopes for. It shows what it is given and says what
// it holds; it changes no visit itself.
#pragma once

#include "core/record/Complaint.h"

#include <QWidget>

#include <array>
#include <vector>

class QBoxLayout;

namespace raphe {

class ChoiceRow;
class TextBlock;
class TextLine;
class WrappedLabel;

class ComplaintForm : public QWidget {
    Q_OBJECT

public:
    explicit ComplaintForm(QWidget *parent = nullptr);

    /// `before`: the same complaint at the last visit, whose numbers stand beside those of today.
    void give(const Complaint &complaint, const Complaint *before = nullptr);
    [[nodiscard]] Complaint value() const;
    void setReadOnly(bool isReadOnly);
    void focusFirst();

Q_SIGNALS:
    void edited();

private:
    struct ActivityRow {
        TextLine *name;
        ChoiceRow *score;
    };
    void addActivityRow(QBoxLayout &column);
    void typed();
    void tell();

    bool m_filling = false;
    Complaint m_given;
    Complaint m_before;
    TextBlock *m_text;
    TextBlock *m_since;
    std::array<ChoiceRow *, 3> m_ratings{}; // now, worst, best
    WrappedLabel *m_sinceDoubt;
    WrappedLabel *m_doubt; // where the ratings do not fit each other
    TextBlock *m_aggravates;
    TextBlock *m_eases;
    std::array<ChoiceRow *, partOfDayWords.size()> m_day{};
    ChoiceRow *m_irritability;
    std::vector<ActivityRow> m_activities;
    WrappedLabel *m_mean;
    TextBlock *m_goal;
};

} // namespace raphe
