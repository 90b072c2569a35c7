// What is asked when something went wrong: signs to tick, what happened, and what was done about it.
#pragma once

#include "core/record/TreatmentLog.h"

#include <QWidget>

#include <vector>

class QCheckBox;
class QLineEdit;

namespace raphe {

class AdverseForm : public QWidget {
    Q_OBJECT

public:
    explicit AdverseForm(QWidget *parent = nullptr);

    /// Nothing is ticked or told.
    void clear();
    /// Without a time.
    [[nodiscard]] AdverseEvent told() const;
    [[nodiscard]] bool saysSomething() const;
    /// In the order of the list: ids that stand in the record.
    [[nodiscard]] static std::vector<std::string> signs();
    /// Its words; the id itself when there is no such sign.
    [[nodiscard]] static QString wordsOf(const std::string &sign);

Q_SIGNALS:
    void edited();

private:
    std::vector<QCheckBox *> m_signs;
    QLineEdit *m_told;
    QLineEdit *m_answer;
};

} // namespace raphe
