// The history of a visit: every signed version and act, and for the chosen one its facts, what it changed, and its findings.
// Nothing can be changed here.
#pragma once

#include "app/raphe/practice/VersionsModel.h"
#include "core/examination/Examination.h"
#include "core/reasoning/Knowledge.h"
#include "core/record/Visit.h"
#include "core/safety/SafetyRules.h"

#include <QDialog>

class QListView;
class QTextBrowser;

namespace raphe {

class WrappedLabel;

class HistoryDialog : public QDialog {
    Q_OBJECT

public:
    /// `practice` is only read now; the others must outlive the dialog.
    HistoryDialog(const Practice &practice, std::int64_t visit, const Knowledge &knowledge, const SafetyRules &rules,
        const Examination &examination, QWidget *parent = nullptr);

private:
    void read(const Practice &practice, std::int64_t visit);
    void showVersion(int row);
    [[nodiscard]] Result<Visit> visitOf(const VisitVersion &version) const;
    [[nodiscard]] QString factsOf(const VisitVersion &version) const;
    [[nodiscard]] QString changesOf(int row, const Visit &visit) const;
    [[nodiscard]] QString findingsOf(const Visit &visit) const;

    const Knowledge &m_knowledge;
    const SafetyRules &m_rules;
    const Examination &m_examination;
    VersionsModel m_model;
    WrappedLabel *m_state;
    QListView *m_list;
    QTextBrowser *m_text;
};

} // namespace raphe
