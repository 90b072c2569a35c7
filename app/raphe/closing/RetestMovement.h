// A movement that was measured or watched before, done again: in the same mode and with the same device. The number is pointed at
// on a scale or typed.
#pragma once

#include "app/raphe/closing/RetestRow.h"

class QLineEdit;

namespace raphe {

class ChoiceRow;
class ValueScale;

class RetestMovement : public RetestRow {
    Q_OBJECT

public:
    RetestMovement(VisitSession &session, const RetestItem &item);

protected:
    void showEntry() override;

private:
    // A measure of it before; it can have been both active and passive.
    struct Again {
        Measure before;
        QLineEdit *value = nullptr; // nullptr: it was watched only
        ValueScale *scale = nullptr;
        ChoiceRow *pain = nullptr;
    };
    void make(const Measure &before, const Movement &movement);
    void take(const Again &again);
    [[nodiscard]] const Measure *now(const Measure &before) const;

    std::vector<Again> m_all;
};

} // namespace raphe
