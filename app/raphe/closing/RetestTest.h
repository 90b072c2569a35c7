// A test that was done before, done again.
#pragma once

#include "app/raphe/closing/RetestRow.h"

namespace raphe {

class ChoiceRow;

class RetestTest : public RetestRow {
    Q_OBJECT

public:
    RetestTest(VisitSession &session, const RetestItem &item);

protected:
    void showEntry() override;

private:
    void take();

    ChoiceRow *m_answer = nullptr; // nullptr: nothing to compare with
};

} // namespace raphe
