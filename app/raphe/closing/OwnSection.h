// What the practitioner makes of it in own words, with a code, and what should not have happened.
#pragma once

#include "app/raphe/closing/CloseSection.h"

class QPushButton;

namespace raphe {

class AdverseForm;
class TextBlock;
class TextLine;
class WrappedLabel;

class OwnSection : public CloseSection {
    Q_OBJECT

public:
    explicit OwnSection(VisitSession &session, QWidget *parent = nullptr);

protected:
    void show(const Closing &closing) override;

private:
    void makeEvents();
    void takeImpression();
    void takeLast();
    void showEvents();

    TextBlock *m_text;
    TextLine *m_code;
    TextLine *m_system;
    QPushButton *m_last;
    WrappedLabel *m_events = nullptr;
    QPushButton *m_add = nullptr;
    AdverseForm *m_form = nullptr;
    QPushButton *m_record = nullptr;
};

} // namespace raphe
