// What was done, step by step, to be confirmed: done, in part, or not. Logged time is care that happened only once it is.
#pragma once

#include "app/raphe/VisitSession.h"

#include <QWidget>

#include <vector>

class QButtonGroup;
class QVBoxLayout;

namespace raphe {

class WrappedLabel;

class LogPage : public QWidget {
    Q_OBJECT

public:
    explicit LogPage(VisitSession &session, QWidget *parent = nullptr);

    void show(const TreatmentLog &log);
    /// The log as it is ticked.
    [[nodiscard]] TreatmentLog confirmed() const;

Q_SIGNALS:
    void confirmWanted();

private:
    [[nodiscard]] QString afterCups() const;
    [[nodiscard]] QString lineOf(const TreatmentStep &step) const;

    VisitSession &m_session;
    TreatmentLog m_log;
    QVBoxLayout *m_rows;
    WrappedLabel *m_sum;
    std::vector<QButtonGroup *> m_groups; // one a step
};

} // namespace raphe
