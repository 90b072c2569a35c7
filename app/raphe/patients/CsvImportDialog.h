// Takes a list of patients from a table (CSV). First it is only looked at: what each column becomes, which rows have mistakes,
// and who may be there already. Then the ticked rows become patients, all of them or none.
#pragma once

#include "app/raphe/patients/CsvImportModel.h"
#include "app/raphe/practice/WorkDialog.h"
#include "core/store/Practice.h"

#include <optional>

class QCheckBox;
class QLabel;
class QRadioButton;
class QTableView;
class QTableWidget;

namespace raphe {

class CsvImportDialog : public WorkDialog {
    Q_OBJECT

public:
    /// The practice must outlive the dialog.
    explicit CsvImportDialog(Practice &practice, QWidget *parent = nullptr);

    /// Looks at this file, in the background.
    void read(const QString &file);
    /// How many patients were imported since the dialog was opened.
    [[nodiscard]] std::size_t imported() const { return m_imported; }

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    [[nodiscard]] QWidget *makeOrder();
    [[nodiscard]] QWidget *makeColumns();
    [[nodiscard]] QWidget *makeRows();
    void chooseFile();
    void look();
    void showLook(Result<CsvLook> look);
    void showColumns();
    void showCounts();
    void showReason();
    void tickChosen();
    void import();
    void showImported(std::size_t patients, std::size_t leftOut);

    Practice &m_practice;
    CsvImportModel m_model;
    QString m_file;
    std::optional<DateOrder> m_dateOrder;
    std::size_t m_imported = 0;
    QPushButton *m_choose;
    QLabel *m_name; // of the file
    WrappedLabel *m_hint;
    WrappedLabel *m_result;
    QWidget *m_order;
    QWidget *m_body;
    QTableWidget *m_columns;
    QLabel *m_counts;
    QCheckBox *m_onlyLooks;
    QTableView *m_table;
    WrappedLabel *m_reason;
    QPushButton *m_import;
};

} // namespace raphe
