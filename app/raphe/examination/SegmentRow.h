// A joint on the sheet: its play from 0 to 6, its end feel, clear or stiff, and how sure the hands are, left against right.
#pragma once

#include "app/raphe/examination/SheetRow.h"

class QComboBox;
class QPushButton;

namespace raphe {

class ChoiceRow;

class SegmentRow : public SheetRow {
    Q_OBJECT

public:
    SegmentRow(VisitSession &session, StructureId joint);

    void addTo(QGridLayout &grid) override;
    void refresh() override;

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;
    [[nodiscard]] std::vector<CautionVerdict> verdictsAt(const Cautions &cautions, Side side) const override;

private:
    struct Cell {
        Place place;
        QWidget *box = nullptr;
        ChoiceRow *play = nullptr;
        ChoiceRow *motion = nullptr; // clear, stiff
        QComboBox *endFeel = nullptr;
        QPushButton *afterComparing = nullptr;
        QPushButton *certain = nullptr;
    };
    [[nodiscard]] Cell makeCell(const Place &place);
    void take(const Cell &cell);

    StructureId m_joint;
    std::vector<Cell> m_cells;
};

} // namespace raphe
