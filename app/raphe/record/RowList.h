// A list of a record: a row for each entry, each with a way to take it out, and at the end always an empty row to write the next
// one in. Return goes to the next row. Empty rows are no entries.
#pragma once

#include "app/raphe/record/RecordField.h"

#include <functional>

class QHBoxLayout;
class QPushButton;

namespace raphe {

/// One row. Derived rows put their lines into line() and say what they hold.
class ListRow : public RecordField {
    Q_OBJECT

public:
    /// `name`: of an entry, as 'medicine'.
    explicit ListRow(const QString &name, QWidget *parent = nullptr);

    [[nodiscard]] virtual bool isBlank() const = 0;
    /// Whether it can be taken out at all.
    [[nodiscard]] virtual bool isRemovable() const { return true; }
    /// From 1: tells the rows of a list apart for those who cannot see them.
    void setNumber(int number);
    /// The keyboard goes to its first line. No focus proxy does that: Tab would take the row itself for a stop.
    void enter() { m_stops.front()->setFocus(); }
    /// All that Tab reaches, in its order.
    [[nodiscard]] std::vector<QWidget *> stops() const;

Q_SIGNALS:
    void removed();

protected:
    /// Beside the button that takes the row out.
    [[nodiscard]] QHBoxLayout &line() { return *m_line; }
    /// To be called once, with the lines and boxes in the order in which they were put into the layout.
    void setStops(std::vector<QWidget *> stops);
    void tellButton();

private:
    QString m_name;
    QHBoxLayout *m_all;
    QHBoxLayout *m_line;
    QPushButton *m_remove;
    std::vector<QWidget *> m_stops;
    std::vector<QString> m_stopNames;
};

class RowList : public RecordField {
    Q_OBJECT

public:
    using MakeRow = std::function<ListRow *()>;
    explicit RowList(MakeRow makeRow, QWidget *parent = nullptr);

    [[nodiscard]] const std::vector<ListRow *> &rows() const { return m_rows; }

protected:
    /// Adds rows at the end, or takes them away there. The first always stays: Tab would not come to it after others.
    void resize(std::size_t rows);
    [[nodiscard]] std::optional<Mistake> ownMistake() const override;
    void keyPressEvent(QKeyEvent *event) override;

private:
    void addRow();
    void remove(ListRow *row);
    void renumber();

    MakeRow m_makeRow;
    std::vector<ListRow *> m_rows;
};

/// `Row` is a ListRow that names what it holds `Value`, with give() and value(), and nothing() for the empty row.
template <class Row> class RowsOf : public RowList {
public:
    using Value = typename Row::Value;
    using RowList::RowList;

    void give(const std::vector<Value> &values)
    {
        resize(values.size() + 1);
        for (std::size_t i = 0; i < values.size(); ++i)
            static_cast<Row *>(rows()[i])->give(values[i]);
        static_cast<Row *>(rows().back())->give(Row::nothing());
    }

    [[nodiscard]] std::vector<Value> value() const
    {
        std::vector<Value> out;
        for (const ListRow *row : rows())
            if (!row->isBlank())
                out.push_back(static_cast<const Row *>(row)->value());
        return out;
    }
};

} // namespace raphe
