// The practice's own advice for home: what was kept from a visit, to be changed or taken out, and new items.
#pragma once

#include "app/raphe/record/RowList.h"
#include "core/treatment/OwnAdvice.h"

#include <QWidget>

namespace raphe {

class AdviceRow : public ListRow {
    Q_OBJECT

public:
    using Value = OwnAdvice;
    static Value nothing() { return {}; }
    explicit AdviceRow(QWidget *parent = nullptr);

    void give(const OwnAdvice &advice);
    /// Without an id when it is new.
    [[nodiscard]] OwnAdvice value() const;
    [[nodiscard]] bool isBlank() const override;

protected:
    [[nodiscard]] std::optional<Mistake> ownMistake() const override;

private:
    std::string m_id;
    TextLine *m_title;
    TextBlock *m_text;
};

class AdviceTab : public QWidget {
    Q_OBJECT

public:
    explicit AdviceTab(const std::vector<OwnAdvice> &advice, QWidget *parent = nullptr);

    [[nodiscard]] std::vector<OwnAdvice> advice() const;
    [[nodiscard]] std::optional<Mistake> mistake() const;

private:
    RowsOf<AdviceRow> *m_rows;
};

} // namespace raphe
