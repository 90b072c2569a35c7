// Which records have been kept as long as the practice chose to keep them. The program only proposes: one record at a time can be
// erased, with a reason and with the patient's name typed out. There is no way to erase several at once.
#pragma once

#include "app/raphe/practice/WorkDialog.h"
#include "core/store/Retention.h"

#include <QDate>

#include <vector>

class QCheckBox;
class QLineEdit;
class QTableWidget;

namespace raphe {

class RetentionDialog : public WorkDialog {
    Q_OBJECT

public:
    /// The practice must outlive the dialog. Reading begins at once, in the background.
    explicit RetentionDialog(Practice &practice, QWidget *parent = nullptr, const QDate &today = QDate::currentDate());

    /// How many records were erased.
    [[nodiscard]] int erased() const { return m_erased; }

protected:
private:
    struct Seen {
        PracticeSettings settings;
        std::vector<KeptRecord> records;
    };

    [[nodiscard]] QWidget *makeDue();
    [[nodiscard]] QWidget *makeErase();
    void readRecords();
    void showSeen(Result<Seen> seen);
    void showRule();
    void showDue();
    void showUnclear(const std::vector<KeptRecord> &unclear);
    void showChosen();
    void showReady();
    void erase();
    [[nodiscard]] RetentionRule rule() const;
    [[nodiscard]] const DueRecord *chosen() const;

    Practice &m_practice;
    std::string m_today; // ISO 8601 date
    Seen m_seen;
    std::vector<DueRecord> m_due;
    int m_erased = 0;
    WrappedLabel *m_rule;
    WrappedLabel *m_law;
    QCheckBox *m_children;
    WrappedLabel *m_result;
    QWidget *m_list = nullptr;
    QLabel *m_count = nullptr;
    QTableWidget *m_table = nullptr;
    WrappedLabel *m_unclear = nullptr;
    QWidget *m_eraseBox = nullptr;
    WrappedLabel *m_who = nullptr;
    QLineEdit *m_reason = nullptr;
    QLineEdit *m_name = nullptr;
    QPushButton *m_erase = nullptr;
};

} // namespace raphe
