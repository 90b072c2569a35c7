// The work was stopped: what to do first, what to ask, and what to write down when something happened.
#pragma once

#include "core/record/TreatmentLog.h"

#include <QWidget>

#include <vector>

class QCheckBox;
class QLineEdit;
class QPushButton;

namespace raphe {

class StopPage : public QWidget {
    Q_OBJECT

public:
    explicit StopPage(QWidget *parent = nullptr);

    /// Nothing is ticked or told.
    void begin();
    /// What was ticked and told; without a time.
    [[nodiscard]] AdverseEvent told() const;
    /// In the order of the list: ids that stand in the record.
    [[nodiscard]] static std::vector<std::string> signs();

Q_SIGNALS:
    /// Nothing was the matter.
    void goOnWanted();
    void endWanted();

private:
    void tellButtons();

    std::vector<QCheckBox *> m_signs;
    QLineEdit *m_told;
    QLineEdit *m_answer;
    QPushButton *m_goOn;
    QPushButton *m_end;
};

} // namespace raphe
