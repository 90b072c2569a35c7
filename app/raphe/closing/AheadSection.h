// How it goes on: what the next visit is to look at, the goals, and what was agreed on how often and how long.
#pragma once

#include "app/raphe/closing/CloseSection.h"
#include "app/raphe/record/RowList.h"

class QComboBox;
class QCheckBox;
class QPushButton;
class QSpinBox;

namespace raphe {

class FlowLayout;
class TextBlock;
class TextLine;
class WrappedLabel;

class GoalRow : public ListRow {
    Q_OBJECT

public:
    using Value = Goal;
    static Value nothing() { return {}; }
    explicit GoalRow(QWidget *parent = nullptr);

    void give(const Goal &goal);
    [[nodiscard]] Goal value() const;
    [[nodiscard]] bool isBlank() const override;

private:
    TextLine *m_text;
    QComboBox *m_until;
    QCheckBox *m_reached;
};

class AheadSection : public CloseSection {
    Q_OBJECT

public:
    explicit AheadSection(VisitSession &session, QWidget *parent = nullptr);

protected:
    void show(const Closing &closing) override;

private:
    void makePlan();
    void offerFocus();
    void addFocus(const std::string &line);
    void takePlan();
    void agree();
    void showPlan(const std::optional<CarePlan> &plan);

    TextBlock *m_focus;
    QWidget *m_offers;
    FlowLayout *m_offered;
    RowsOf<GoalRow> *m_goals;
    QPushButton *m_agree = nullptr;
    QWidget *m_plan = nullptr;
    QSpinBox *m_every = nullptr;
    QSpinBox *m_visits = nullptr;
    TextLine *m_success = nullptr;
    WrappedLabel *m_agreed = nullptr;
};

} // namespace raphe
