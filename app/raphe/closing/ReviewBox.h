// When the agreed visits are over and nothing is better beyond the error of reading it: what was read, and what is made of it.
#pragma once

#include "app/raphe/closing/CloseSection.h"

namespace raphe {

class ChoiceRow;
class TextLine;
class WrappedLabel;

class ReviewBox : public CloseSection {
    Q_OBJECT

public:
    explicit ReviewBox(VisitSession &session, QWidget *parent = nullptr);

protected:
    void show(const Closing &closing) override;

private:
    void take();

    WrappedLabel *m_ask;
    WrappedLabel *m_readings;
    ChoiceRow *m_decision;
    TextLine *m_why;
    std::int64_t m_shownFor = 0;
};

} // namespace raphe
