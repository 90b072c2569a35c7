// A place that was felt before, felt again: on the scales that were used before, at each of its spots.
#pragma once

#include "app/raphe/closing/RetestRow.h"

namespace raphe {

class ChoiceRow;

class RetestPlace : public RetestRow {
    Q_OBJECT

public:
    RetestPlace(VisitSession &session, const RetestItem &item);

protected:
    void showEntry() override;

private:
    struct Spotted {
        Finding before;
        ChoiceRow *tenderness = nullptr; // each only where it was used before
        ChoiceRow *restriction = nullptr;
        ChoiceRow *play = nullptr;
    };
    void make(const Finding &before);
    void take(const Spotted &spotted);

    std::vector<Spotted> m_spots;
};

} // namespace raphe
