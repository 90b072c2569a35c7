// A blood pressure in mmHg and the day of the reading. Not set when all is empty.
#pragma once

#include "app/raphe/record/RecordField.h"
#include "core/record/PatientRecord.h"

namespace raphe {

class OptionalDateEdit;

/// "120 over 80 mmHg on 2 January 2024".
[[nodiscard]] QString bloodPressureWords(const BloodPressure &pressure);

class BloodPressureEdit : public RecordField {
    Q_OBJECT

public:
    explicit BloodPressureEdit(QWidget *parent = nullptr);

    void give(const std::optional<BloodPressure> &pressure);
    [[nodiscard]] std::optional<BloodPressure> value() const;

protected:
    [[nodiscard]] std::optional<Mistake> ownMistake() const override;
    [[nodiscard]] QString understood() const override;
    [[nodiscard]] QString asWritten() const override;
    void empty() override { give(std::nullopt); }

private:
    TextLine *m_systolic;
    TextLine *m_diastolic;
    OptionalDateEdit *m_date;
};

} // namespace raphe
