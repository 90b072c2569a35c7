// The week of a pregnancy as counted on a day, and in words which week that makes today. Not set when both are empty.
#pragma once

#include "app/raphe/record/RecordField.h"
#include "core/record/PatientRecord.h"

#include <QDate>

namespace raphe {

class OptionalDateEdit;

/// "Week 12 on 5 March 1980": as it was written down.
[[nodiscard]] QString pregnancyWords(const Pregnancy &pregnancy);
/// "That makes week 20 today.": every seven days another week, by the calendar. Beyond the last week it asks whether it still
/// holds.
[[nodiscard]] QString weekTodayWords(const Pregnancy &pregnancy, const QDate &today);

class PregnancyEdit : public RecordField {
    Q_OBJECT

public:
    explicit PregnancyEdit(QWidget *parent = nullptr);

    void give(const std::optional<Pregnancy> &pregnancy);
    [[nodiscard]] std::optional<Pregnancy> value() const;

protected:
    [[nodiscard]] std::optional<Mistake> ownMistake() const override;
    [[nodiscard]] QString understood() const override;
    [[nodiscard]] QString asWritten() const override;
    void empty() override { give(std::nullopt); }

private:
    TextLine *m_week;
    OptionalDateEdit *m_date;
};

} // namespace raphe
