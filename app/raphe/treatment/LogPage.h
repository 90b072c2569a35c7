// What was done, step by step, to be confirmed: done, in part, or not. Logged time is care that happened only once it is.
#pragma once

#include "app/raphe/VisitSession.h"

#include <QWidget>

#include <vector>

class QButtonGroup;
class QDoubleSpinBox;
class QSpinBox;
class QVBoxLayout;

namespace raphe {

class WrappedLabel;

class LogPage : public QWidget {
    Q_OBJECT

public:
    explicit LogPage(VisitSession &session, QWidget *parent = nullptr);

    void show(const TreatmentLog &log);
    /// Below what is shown; what is ticked stays.
    void append(const TreatmentStep &step);
    /// The log as it is ticked.
    [[nodiscard]] TreatmentLog confirmed() const;

Q_SIGNALS:
    void confirmWanted();
    /// Something was done that does not stand here.
    void otherWanted();

private:
    struct Row {
        QButtonGroup *done;
        QSpinBox *minutes; // of work off the plan, whose time nobody kept
        QDoubleSpinBox *kPa; // of cups
    };
    [[nodiscard]] QString afterCups() const;
    [[nodiscard]] QString lineOf(const TreatmentStep &step) const;
    void addRow(const TreatmentStep &step);
    void tellSum();

    VisitSession &m_session;
    TreatmentLog m_log;
    QVBoxLayout *m_rows;
    WrappedLabel *m_sum;
    std::vector<Row> m_shown; // one a step
};

} // namespace raphe
