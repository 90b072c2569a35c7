// What the patient takes home: things to do, from the library or in own words, what to expect after this work, when to call whom,
// and whether somebody calls them.
#pragma once

#include "app/raphe/closing/CloseSection.h"

#include <vector>

class QCheckBox;
class QMenu;
class QPushButton;

namespace raphe {

class ChoiceRow;
class TextBlock;
class TextLine;
class WrappedLabel;

class HomeSection : public CloseSection {
    Q_OBJECT

public:
    explicit HomeSection(VisitSession &session, QWidget *parent = nullptr);

protected:
    void show(const Closing &closing) override;

private:
    void makeAdvice();
    void makeWarning();
    void makeCall();
    void fillMenu();
    void addAdvice(const GivenAdvice &advice);
    void takeOwn();
    void keepOwn();
    void keepWording(const std::string &item);
    void showAdvice(const std::vector<GivenAdvice> &all);
    void takeCall();
    void showCall(const std::optional<LaterCall> &call);
    [[nodiscard]] QString expectations() const;

    QVBoxLayout *m_advice = nullptr;
    std::vector<GivenAdvice> m_shown; // of the library
    TextBlock *m_own = nullptr;
    QPushButton *m_keepOwn = nullptr;
    QMenu *m_menu = nullptr;
    WrappedLabel *m_expect = nullptr;
    QCheckBox *m_told = nullptr;
    QPushButton *m_call = nullptr;
    QWidget *m_called = nullptr;
    ChoiceRow *m_reaction = nullptr;
    TextLine *m_callTold = nullptr;
};

} // namespace raphe
