// One thing that is examined again: how it is answered now, and only then what it was before and what became of it. Derived rows
// know how their kind is answered.
#pragma once

#include "app/raphe/VisitSession.h"
#include "core/treatment/Retest.h"

#include <QWidget>

#include <vector>

class QVBoxLayout;

namespace raphe {

class ChoiceRow;
class WrappedLabel;

class RetestRow : public QWidget {
    Q_OBJECT

public:
    RetestRow(VisitSession &session, RetestItem item);

    [[nodiscard]] const RetestItem &item() const { return m_item; }
    /// Shows what the visit says now, and the pairs of this item.
    void refresh(const std::vector<RetestPair> &pairs);

protected:
    virtual void showEntry() = 0;
    void add(QWidget *field, const QString &name);
    void addQuiet(const QString &words);
    /// What was typed on a row of numbers and is none of them changes nothing; it is told.
    [[nodiscard]] bool isUnread(const ChoiceRow &row);

    VisitSession &m_session;

private:
    RetestItem m_item;
    QVBoxLayout *m_fields;
    int m_lines = 0; // kept free for what became of it
    QWidget *m_room;
    WrappedLabel *m_became;
};

/// The row for the item: pain, a place, a movement or a test.
[[nodiscard]] RetestRow *makeRetestRow(VisitSession &session, const RetestItem &item);

} // namespace raphe
