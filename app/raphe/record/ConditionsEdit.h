// The standing conditions: chosen from the program's list by typing part of the name, each with a note. Conditions that the list
// does not have, from a later program, are shown by their id and kept.
#pragma once

#include "app/raphe/record/RowList.h"
#include "core/record/PatientRecord.h"
#include "core/safety/SafetyRules.h"

class QListWidget;

namespace raphe {

class ConditionRow : public ListRow {
    Q_OBJECT

public:
    ConditionRow(const QString &id, const QString &name, QWidget *parent = nullptr);

    void give(const std::string &note);
    [[nodiscard]] StandingCondition value() const;
    [[nodiscard]] bool isBlank() const override { return false; }

private:
    std::string m_id;
    TextLine *m_note;
};

class ConditionsEdit : public RecordField {
    Q_OBJECT

public:
    explicit ConditionsEdit(const SafetyRules &rules, QWidget *parent = nullptr);

    void give(const std::vector<StandingCondition> &conditions);
    [[nodiscard]] std::vector<StandingCondition> value() const;
    [[nodiscard]] bool has(const std::string &id) const;
    /// Puts the condition on the list, unless it is there.
    void add(const std::string &id);

protected:
    [[nodiscard]] std::optional<Mistake> ownMistake() const override;
    [[nodiscard]] QString understood() const override;
    void keyPressEvent(QKeyEvent *event) override;

private:
    ConditionRow *addRow(const StandingCondition &condition);
    void remove(ConditionRow *row);
    void offer();
    void take(int row);

    const SafetyRules &m_rules;
    TextLine *m_typed;
    QListWidget *m_offered;
    std::vector<ConditionRow *> m_rows;
};

} // namespace raphe
