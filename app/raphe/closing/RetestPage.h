// The examination after the treatment: what was marked, stiff or sore is answered again without sight of the first answer, and
// then stands beside it with what became of it. What was not examined again is said.
#pragma once

#include "app/paint/Theme.h"
#include "app/raphe/VisitSession.h"
#include "core/treatment/Retest.h"

#include <QWidget>

#include <vector>

class QVBoxLayout;

namespace raphe {

class BeforeAfter;
class RetestRow;
class WrappedLabel;

class RetestPage : public QWidget {
    Q_OBJECT

public:
    explicit RetestPage(VisitSession &session, QWidget *parent = nullptr);

    void setTheme(const Theme &theme);
    /// To be called when it comes to the front.
    void begin();
    [[nodiscard]] BeforeAfter &pictures() { return *m_pictures; }

Q_SIGNALS:
    void closeWanted();
    void treatmentWanted();

private:
    QWidget *makeHead();
    void fill();
    void refresh();

    VisitSession &m_session;
    QVBoxLayout *m_lines;
    std::vector<RetestRow *> m_rows;
    WrappedLabel *m_left;
    WrappedLabel *m_work;
    BeforeAfter *m_pictures;
};

} // namespace raphe
