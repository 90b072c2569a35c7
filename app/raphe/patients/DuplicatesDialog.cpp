#include "app/raphe/patients/DuplicatesDialog.h"

#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/patients/PersonWords.h"
#include "app/raphe/patients/RecordComparison.h"
#include "app/raphe/practice/FormParts.h"
#include "app/raphe/practice/OnPractice.h"
#include "app/raphe/practice/PracticeTable.h"
#include "core/store/Retention.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QListWidget>
#include <QPushButton>
#include <QRadioButton>
#include <QStackedWidget>
#include <QTableWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace raphe {

namespace {

constexpr int listWidth = 320; // pixels

enum Page { Empty, Sides };
enum Step { Choose, Confirm };
enum Column { Field, First, Second, Word, columns };

QString visitWords(const KeptRecord &kept)
{
    if (kept.visits == 0)
        return DuplicatesDialog::tr("none");
    const QString last = dayWords(kept.lastVisit);
    return last.isEmpty() ? QString::number(kept.visits)
                          : DuplicatesDialog::tr("%1, the last on %2", "visits, a date").arg(QString::number(kept.visits), last);
}

} // namespace

DuplicatesDialog::DuplicatesDialog(Practice &practice, QWidget *parent)
    : WorkDialog(tr("Double records"), parent), m_practice(practice)
{
    auto *body = new QHBoxLayout;
    body->setSpacing(18);
    body->addWidget(makeList());
    m_empty = hint(tr("No two records look like one person."));
    m_empty->hide();
    auto *emptyPage = new QWidget;
    auto *emptyColumn = new QVBoxLayout(emptyPage);
    emptyColumn->setContentsMargins(0, 0, 0, 0);
    emptyColumn->addWidget(m_empty);
    emptyColumn->addStretch();
    m_pages = new QStackedWidget;
    m_pages->addWidget(emptyPage);
    m_pages->addWidget(makeSides());
    body->addWidget(m_pages, 1);
    form().addLayout(body, 1);
    m_result = new WrappedLabel;
    m_result->setProperty("role", QStringLiteral("head"));
    m_result->hide();
    form().addWidget(m_result);
    addGap();
    QPushButton *close = addButton(tr("Close"));
    connect(close, &QPushButton::clicked, this, &DuplicatesDialog::reject);
    keepEnterToFocus();
    resize(1080, 640);
    workOn(tr("Looking for records that are alike ..."), onPractice(practice, findPairs),
        [this](Result<Found> found) { showFound(std::move(found)); });
}

QWidget *DuplicatesDialog::makeList()
{
    m_left = new QWidget;
    m_left->setFixedWidth(listWidth);
    auto *column = new QVBoxLayout(m_left);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    m_count = heading({});
    column->addWidget(m_count);
    m_list = new QListWidget;
    prepareList(*m_list, tr("Pairs of records that look alike"));
    column->addWidget(m_list, 1);
    connect(m_list, &QListWidget::currentRowChanged, this, &DuplicatesDialog::showPair);
    return m_left;
}

QWidget *DuplicatesDialog::makeSides()
{
    auto *part = new QWidget;
    auto *column = new QVBoxLayout(part);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    column->addWidget(heading(tr("Both records")));
    m_sides = new QTableWidget(0, columns);
    prepareTable(*m_sides, tr("Both records, line by line"));
    m_sides->setHorizontalHeaderLabels({tr("Field"), tr("First record"), tr("Second record"), tr("In a word")});
    m_sides->setWordWrap(true);
    m_sides->setSelectionMode(QAbstractItemView::SingleSelection);
    m_sides->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    for (const int fixed : {static_cast<int>(Field), static_cast<int>(Word)})
        m_sides->horizontalHeader()->setSectionResizeMode(fixed, QHeaderView::ResizeToContents);
    connect(m_sides->horizontalHeader(), &QHeaderView::sectionResized, m_sides, &QTableWidget::resizeRowsToContents,
        Qt::QueuedConnection); // when all columns have their widths
    column->addWidget(m_sides, 1);
    m_steps = new QStackedWidget;
    m_steps->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
    m_steps->addWidget(makeChoice());
    m_steps->addWidget(makeConfirmation());
    column->addWidget(m_steps);
    return part;
}

QWidget *DuplicatesDialog::makeChoice()
{
    auto *part = new QWidget;
    auto *column = new QVBoxLayout(part);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    column->addWidget(
        hint(tr("The record that stays keeps its name and birth date. What the other one says differently is written "
                "beside it, and its visits come over. Nothing is lost.")));
    auto *row = new QHBoxLayout;
    row->setSpacing(16);
    m_keepFirst = new QRadioButton(tr("The first stays"));
    m_keepSecond = new QRadioButton(tr("The second stays"));
    for (QRadioButton *button : {m_keepFirst, m_keepSecond}) {
        button->setAccessibleName(button->text());
        button->setMinimumHeight(touchTarget);
        row->addWidget(button);
    }
    row->addStretch(1);
    QPushButton *two = pushButton(tr("These are two people"));
    m_ask = pushButton(tr("Join the two ..."));
    row->addWidget(two);
    row->addWidget(m_ask);
    column->addLayout(row);
    connect(two, &QPushButton::clicked, this, &DuplicatesDialog::partPair);
    connect(m_ask, &QPushButton::clicked, this, &DuplicatesDialog::askOnce);
    return part;
}

QWidget *DuplicatesDialog::makeConfirmation()
{
    auto *part = new QWidget;
    auto *column = new QVBoxLayout(part);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    m_question = new WrappedLabel;
    m_question->setProperty("role", QStringLiteral("head"));
    column->addWidget(m_question);
    auto *row = new QHBoxLayout;
    m_no = pushButton(tr("No, leave both as they are"));
    QPushButton *yes = pushButton(tr("Yes, join them"));
    row->addStretch(1);
    row->addWidget(m_no);
    row->addWidget(yes);
    column->addLayout(row);
    connect(m_no, &QPushButton::clicked, this, &DuplicatesDialog::takeBack);
    connect(yes, &QPushButton::clicked, this, &DuplicatesDialog::join);
    return part;
}

Result<DuplicatesDialog::Found> DuplicatesDialog::findPairs(const Practice &practice)
{
    return guarded([&] {
        std::vector<Person> people;
        std::vector<PatientRecord> records;
        for (const PatientCard &card : valueOrThrow(practice.patients())) {
            people.push_back({card.id, QString::fromStdString(card.name), bornWords(card.born)});
            records.push_back(valueOrThrow(practice.patient(card.id)));
        }
        const PatientPairs pairs = findPatientPairs(records);
        Found found;
        found.isAll = pairs.isAll;
        for (const PatientPair &pair : pairs.found)
            found.pairs.push_back({people[pair.one], people[pair.other]});
        return found;
    });
}

void DuplicatesDialog::showFound(Result<Found> found)
{
    if (!found) {
        complain(found.error());
        return;
    }
    m_pairs = std::move(found.value().pairs);
    if (!found.value().isAll) {
        m_more = tr(", and there may be more");
        m_empty->say(tr("These were all that could be shown at once. Open this again to see whether there are more."));
    }
    fillList(0);
}

// Shows what is left of the pairs, and of them the one in this row.
void DuplicatesDialog::fillList(int row)
{
    {
        const QSignalBlocker quiet(m_list);
        m_list->clear();
        for (const Pair &pair : m_pairs)
            m_list->addItem(pair.first.name + QStringLiteral(", ") + pair.first.born + QLatin1Char('\n') + pair.second.name
                + QStringLiteral(", ") + pair.second.born);
        for (int i = 0; i < m_list->count(); ++i)
            m_list->item(i)->setToolTip(m_list->item(i)->text());
        m_list->setCurrentRow(std::min(row, m_list->count() - 1));
    }
    m_left->setVisible(!m_pairs.empty());
    const QString pairs = m_pairs.size() == 1 ? tr("1 pair looks alike") : tr("%1 pairs look alike").arg(m_pairs.size());
    m_count->setText(pairs + m_more);
    showPair();
    m_list->setFocus();
}

const DuplicatesDialog::Pair *DuplicatesDialog::chosen() const
{
    const int row = m_list->currentRow();
    return row < 0 ? nullptr : &m_pairs[static_cast<std::size_t>(row)];
}

void DuplicatesDialog::showPair()
{
    say({});
    m_steps->setCurrentIndex(Choose);
    m_pages->setCurrentIndex(Empty);
    const Pair *pair = chosen();
    m_empty->setVisible(!pair);
    if (!pair)
        return;
    if (const auto shown = compare(*pair); shown)
        m_pages->setCurrentIndex(Sides);
    else
        complain(shown.error());
}

void DuplicatesDialog::noteOnce(std::int64_t patient)
{
    if (m_noted.contains(patient))
        return;
    static_cast<void>(valueOrThrow(m_practice.noteOpened(patient)));
    m_noted.insert(patient);
}

Result<Done> DuplicatesDialog::compare(const Pair &pair)
{
    return guarded([&]() -> Done {
        for (const std::int64_t id : {pair.first.id, pair.second.id})
            noteOnce(id);
        const KeptRecord first = valueOrThrow(readKeptRecord(m_practice, pair.first.id));
        const KeptRecord second = valueOrThrow(readKeptRecord(m_practice, pair.second.id));
        std::vector<ComparedLine> lines =
            compareRecords(valueOrThrow(m_practice.patient(pair.first.id)), valueOrThrow(m_practice.patient(pair.second.id)));
        lines.push_back({tr("Visits"), visitWords(first), visitWords(second)});
        m_sides->setRowCount(static_cast<int>(lines.size()));
        for (int row = 0; row < m_sides->rowCount(); ++row) {
            const ComparedLine &line = lines[static_cast<std::size_t>(row)];
            QFont font = m_sides->font();
            font.setBold(line.differs());
            const QStringList texts{line.field, line.first, line.second, line.inAWord()};
            for (int column = 0; column < columns; ++column) {
                auto *item = new QTableWidgetItem(texts[column]);
                item->setTextAlignment(Qt::AlignLeft | Qt::AlignTop);
                if (column != Field)
                    item->setFont(font);
                m_sides->setItem(row, column, item);
            }
        }
        m_sides->resizeRowsToContents();
        m_sides->scrollToTop();
        (second.visits > first.visits ? m_keepSecond : m_keepFirst)->setChecked(true);
        return {};
    });
}

void DuplicatesDialog::askOnce()
{
    const Pair *pair = chosen();
    if (!pair)
        return;
    const bool isFirst = m_keepFirst->isChecked();
    const Person &keep = isFirst ? pair->first : pair->second;
    const Person &other = isFirst ? pair->second : pair->first;
    m_question->say(tr("%1 (%2) stays, and %3 (%4) becomes part of it. This cannot be undone. Is it one person?",
        "name, 'born ...', name, 'born ...'")
                        .arg(keep.name, keep.born, other.name, other.born));
    m_steps->setCurrentIndex(Confirm);
    m_no->setFocus();
}

void DuplicatesDialog::takeBack()
{
    m_steps->setCurrentIndex(Choose);
    m_ask->setFocus();
}

void DuplicatesDialog::join()
{
    const int row = m_list->currentRow();
    const Pair pair = *chosen();
    const bool isFirst = m_keepFirst->isChecked();
    const Person &keep = isFirst ? pair.first : pair.second;
    const Person &other = isFirst ? pair.second : pair.first;
    if (const auto merged = m_practice.merge(keep.id, other.id); !merged) {
        takeBack();
        complain(merged.error());
        return;
    }
    ++m_joined;
    m_result->show();
    m_result->say(tr("Joined to one record: %1, %2.", "name, 'born ...'").arg(keep.name, keep.born));
    replaceInPairs(other.id, keep);
    fillList(row);
}

void DuplicatesDialog::partPair()
{
    const int row = m_list->currentRow();
    m_pairs.erase(m_pairs.begin() + row);
    m_result->hide();
    fillList(row);
}

// Who looked like the record that is gone looks like the one that it became part of; each pair stands once.
void DuplicatesDialog::replaceInPairs(std::int64_t gone, const Person &by)
{
    std::set<std::pair<std::int64_t, std::int64_t>> seen;
    std::vector<Pair> left;
    for (Pair &pair : m_pairs) {
        for (Person *person : {&pair.first, &pair.second})
            if (person->id == gone)
                *person = by;
        const auto ids = std::minmax(pair.first.id, pair.second.id);
        if (ids.first != ids.second && seen.insert(ids).second)
            left.push_back(std::move(pair));
    }
    m_pairs = std::move(left);
}

void DuplicatesDialog::reject()
{
    if (m_steps->currentIndex() == Confirm && !isWorking())
        takeBack();
    else
        WorkDialog::reject();
}

} // namespace raphe
