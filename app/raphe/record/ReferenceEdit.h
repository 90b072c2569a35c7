// What published reference values go by besides age: sex, and the standing height in centimetres. Both may be left out.
#pragma once

#include "app/raphe/record/RecordField.h"
#include "core/record/PatientRecord.h"

namespace raphe {

class ReferenceEdit : public RecordField {
    Q_OBJECT

public:
    explicit ReferenceEdit(QWidget *parent = nullptr);

    void give(std::optional<Sex> sex, std::optional<int> height);
    [[nodiscard]] std::optional<Sex> sex() const;
    [[nodiscard]] std::optional<int> height() const;

protected:
    [[nodiscard]] std::optional<Mistake> ownMistake() const override;
    [[nodiscard]] QString understood() const override;

private:
    TextLine *m_sex;
    TextLine *m_height;
};

} // namespace raphe
