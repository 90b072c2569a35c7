#include "app/raphe/record/RowList.h"

#include "app/raphe/Style.h"
#include "app/raphe/record/TextLine.h"
#include "core/record/PatientRecord.h"

#include <QApplication>
#include <QKeyEvent>
#include <QLocale>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace raphe {

ListRow::ListRow(const QString &name, QWidget *parent)
    : RecordField(parent), m_name(name), m_all(new QHBoxLayout), m_line(new QHBoxLayout), m_remove(new QPushButton(tr("Remove")))
{
    m_all->setSpacing(6);
    column().addLayout(m_all);
    m_line->setSpacing(6);
    m_all->addLayout(m_line, 1);
    m_remove->setMinimumHeight(touchTarget);
    QSizePolicy policy = m_remove->sizePolicy();
    policy.setRetainSizeWhenHidden(true); // so that all rows are in line
    m_remove->setSizePolicy(policy);
    connect(m_remove, &QPushButton::clicked, this, &ListRow::removed);
    connect(this, &RecordField::edited, this, &ListRow::tellButton);
}

void ListRow::setStops(std::vector<QWidget *> stops)
{
    m_stops = std::move(stops);
    for (const QWidget *stop : m_stops)
        m_stopNames.push_back(stop->accessibleName());
    m_remove->setAccessibleName(tr("Remove %1", "what the row holds").arg(m_name));
    m_all->addWidget(m_remove, 0, Qt::AlignTop); // only now: Tab comes to it last
    tellButton();
}

void ListRow::setNumber(int number)
{
    for (std::size_t i = 0; i < m_stops.size(); ++i)
        m_stops[i]->setAccessibleName(
            tr("%1 %2", "name of a field in a list, number of the row").arg(m_stopNames[i]).arg(number));
    m_remove->setAccessibleName(tr("Remove %1 %2", "what the list holds, number of the row").arg(m_name).arg(number));
}

std::vector<QWidget *> ListRow::stops() const
{
    std::vector<QWidget *> all = m_stops;
    all.push_back(m_remove);
    return all;
}

void ListRow::tellButton()
{
    m_remove->setVisible(!isBlank() && isRemovable());
}

RowList::RowList(MakeRow makeRow, QWidget *parent) : RecordField(parent), m_makeRow(std::move(makeRow))
{
    addRow();
}

void RowList::addRow()
{
    ListRow *row = m_makeRow();
    column().addWidget(row);
    if (!m_rows.empty()) { // else Tab would come to it after all that is there already
        QWidget *before = m_rows.back()->stops().back();
        for (QWidget *stop : row->stops()) {
            setTabOrder(before, stop);
            before = stop;
        }
    }
    m_rows.push_back(row);
    row->setNumber(static_cast<int>(m_rows.size()));
    connect(row, &ListRow::removed, this, [this, row] { remove(row); });
    connect(row, &RecordField::edited, this, [this, row] {
        if (row == m_rows.back() && !row->isBlank())
            addRow();
        tell();
    });
}

void RowList::resize(std::size_t rows)
{
    while (m_rows.size() < rows)
        addRow();
    while (m_rows.size() > rows) {
        delete m_rows.back();
        m_rows.pop_back();
    }
}

void RowList::remove(ListRow *row)
{
    const auto at = std::find(m_rows.begin(), m_rows.end(), row);
    const auto index = at - m_rows.begin();
    m_rows.erase(at);
    // Before the row goes: else the focus wanders to a row that nobody chose.
    m_rows[static_cast<std::size_t>(index)]->enter(); // there always is one: the empty row at the end has no button
    row->hide();
    row->setParent(nullptr); // it is no field of the record any more
    row->deleteLater(); // its button is still at work
    renumber();
    tell();
}

void RowList::renumber()
{
    for (std::size_t i = 0; i < m_rows.size(); ++i)
        m_rows[i]->setNumber(static_cast<int>(i) + 1);
}

std::optional<Mistake> RowList::ownMistake() const
{
    const auto entries = std::count_if(m_rows.begin(), m_rows.end(), [](const ListRow *row) { return !row->isBlank(); });
    if (entries <= static_cast<std::ptrdiff_t>(PatientRecord::longestList))
        return std::nullopt;
    return Mistake{tr("These are %1. Remove some, or write several into one row: %2 are kept at most.")
                       .arg(QLocale().toString(qlonglong{entries}), QLocale().toString(qlonglong{PatientRecord::longestList})),
        m_rows.back()->stops().front()};
}

void RowList::keyPressEvent(QKeyEvent *event)
{
    const bool isReturn = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (!isReturn || event->modifiers() & Qt::ControlModifier) {
        RecordField::keyPressEvent(event);
        return;
    }
    const auto here = std::find_if(
        m_rows.begin(), m_rows.end(), [](const ListRow *row) { return row->isAncestorOf(QApplication::focusWidget()); });
    if (here == m_rows.end() || here + 1 == m_rows.end()) {
        event->ignore(); // on to the next field
        return;
    }
    (*(here + 1))->enter();
}

} // namespace raphe
