#include "app/raphe/record/DayRow.h"

#include "app/raphe/Style.h"
#include "app/raphe/record/OptionalDateEdit.h"
#include "app/raphe/record/TextLine.h"

#include <QDate>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

namespace raphe {

QHBoxLayout *dayRow(const std::vector<QWidget *> &numbers, OptionalDateEdit *date)
{
    auto *row = new QHBoxLayout;
    row->setSpacing(6);
    for (QWidget *number : numbers)
        row->addWidget(number, 0, Qt::AlignTop);
    auto *on = new QLabel(OptionalDateEdit::tr("on", "between a number and the day on which it was measured"));
    on->setMinimumHeight(touchTarget);
    row->addWidget(on, 0, Qt::AlignTop);
    row->addWidget(date, 1, Qt::AlignTop);
    auto *today = new QPushButton(OptionalDateEdit::tr("Today"));
    today->setMinimumHeight(touchTarget);
    today->setAccessibleName(
        OptionalDateEdit::tr("Today: %1", "button that fills in a date field").arg(date->line()->accessibleName()));
    QObject::connect(
        today, &QPushButton::clicked, date, [date] { date->line()->setText(QDate::currentDate().toString(Qt::ISODate)); });
    row->addWidget(today, 0, Qt::AlignTop);
    return row;
}

} // namespace raphe
