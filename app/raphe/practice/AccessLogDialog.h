// Who opened, exported, signed or joined which record, and when; the newest first. Nothing can be changed here.
#pragma once

#include "app/raphe/practice/AccessModel.h"

#include <QDialog>

#include <map>
#include <optional>

class QLineEdit;
class QTreeView;

namespace raphe {

class WrappedLabel;

class AccessLogDialog : public QDialog {
    Q_OBJECT

public:
    /// Of one patient, or of the whole practice. `practice` is only read now.
    AccessLogDialog(const Practice &practice, std::optional<std::int64_t> patient, QWidget *parent = nullptr);

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void read(const Practice &practice, std::optional<std::int64_t> patient);
    void showCount();

    AccessModel m_model;
    QLineEdit *m_typed;
    QTreeView *m_list;
    WrappedLabel *m_count;
};

} // namespace raphe
