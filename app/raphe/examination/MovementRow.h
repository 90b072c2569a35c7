// A movement on the sheet: how far, where pain starts, whether it is the patient's own; what the other side and people of that
// age reach. Letters in the field of the value say what is not a number: P hurts, F familiar, R today's retest.
#pragma once

#include "app/raphe/examination/SheetRow.h"

#include <functional>

class QLineEdit;
class QPushButton;

namespace raphe {

class ChoiceRow;

/// How movements are measured at the moment.
struct Measuring {
    MoveMode mode = MoveMode::Active;
    std::optional<Device> device;
};

class MovementRow : public SheetRow {
    Q_OBJECT

public:
    /// Keeps a reference to the movement. `measuring` is asked at each answer.
    MovementRow(VisitSession &session, const Movement &movement, std::function<Measuring()> measuring);

    void addTo(QGridLayout &grid) override;
    void refresh() override;

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;
    [[nodiscard]] std::vector<CautionVerdict> verdictsAt(const Cautions &cautions, Side side) const override;

private:
    struct Cell {
        Side side{};
        QWidget *box = nullptr;
        QLineEdit *value = nullptr;
        QLineEdit *painFrom = nullptr;
        ChoiceRow *pain = nullptr;
        QPushButton *retest = nullptr;
    };
    [[nodiscard]] Cell makeCell(Side side);
    void take(const Cell &cell);
    void toggleRetest(const Cell &cell);
    [[nodiscard]] Measure started(const Cell &cell) const;
    /// Nothing when it is empty; what is no number or beyond what can be is shown as a mistake and not recorded.
    [[nodiscard]] bool read(QLineEdit *line, std::optional<double> &value) const;
    void show(QLineEdit *line, std::optional<double> value) const;
    [[nodiscard]] QString compared(const Cell &cell) const;

    const Movement &m_movement;
    std::function<Measuring()> m_measuring;
    std::vector<Cell> m_cells;
    WrappedLabel *m_sides = nullptr;
    std::vector<WrappedLabel *> m_norms;
};

} // namespace raphe
