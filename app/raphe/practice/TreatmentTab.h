// How the practice treats: the minutes that every treatment takes besides its steps, and techniques of its own. Nothing is
// written here; settings() says what stands in the fields.
#pragma once

#include "core/plan/TreatmentSettings.h"

#include <QWidget>

#include <array>

class QDoubleSpinBox;
class QListWidget;
class QPushButton;

namespace raphe {

class TreatmentTab : public QWidget {
    Q_OBJECT

public:
    /// `techniques`: the program's.
    TreatmentTab(const TreatmentSettings &settings, const Techniques &techniques, QWidget *parent = nullptr);

    [[nodiscard]] TreatmentSettings settings() const;

private:
    void showOwn(int row);
    void showChoice();
    void add();
    void change();
    void remove();

    const Techniques m_techniques;
    std::vector<OwnTechnique> m_own; // as in the list
    std::array<QDoubleSpinBox *, 4> m_minutes{}; // as in ReservedTimes
    QListWidget *m_list;
    QPushButton *m_change;
    QPushButton *m_remove;
};

} // namespace raphe
