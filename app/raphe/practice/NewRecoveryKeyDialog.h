// Puts a new recovery key on paper and, once that is proved, in the place of the old one: when the old paper is lost or was seen,
// or was never made. Until the proof nothing is changed. accepted() when it is done; deletes itself when it is closed.
#pragma once

#include "app/raphe/practice/WorkDialog.h"
#include "core/store/Practice.h"

class QPushButton;
class QStackedWidget;

namespace raphe {

class RecoveryKeyPage;
class RecoveryProofPage;

class NewRecoveryKeyDialog : public WorkDialog {
    Q_OBJECT

public:
    /// `practice` must outlive it.
    explicit NewRecoveryKeyDialog(const Practice &practice, QWidget *parent = nullptr);

    void done(int result) override;

private:
    enum Page { Key, Proof };
    void goTo(Page page);
    void next();
    void change();

    const Practice &m_practice;
    const RecoveryKey m_next;
    QStackedWidget *m_pages;
    RecoveryKeyPage *m_key;
    RecoveryProofPage *m_proof;
    QPushButton *m_back;
    QPushButton *m_forward;
};

} // namespace raphe
