#include "app/raphe/patients/RetentionDialog.h"

#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/patients/PersonWords.h"
#include "app/raphe/practice/FormParts.h"
#include "app/raphe/practice/OnPractice.h"
#include "app/raphe/practice/PracticeTable.h"
#include "core/store/RetentionExamples.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLineEdit>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>

namespace raphe {

namespace {

constexpr std::size_t mostNames = 5; // of records that are not proposed

enum OldRecordColumn { Name, Born, LastVisit, Visits, From, Note, oldRecordColumns };

// As it is compared: typed spaces and the ways to write an accent do not matter.
QString comparable(const QString &name)
{
    return name.simplified().normalized(QString::NormalizationForm_C);
}

QString exampleWords(const RetentionExample &example)
{
    QString words = RetentionDialog::tr("%1: %2 years after the last visit", "whose rule it is, a number")
                        .arg(QString::fromStdString(example.label))
                        .arg(example.rule.years);
    if (example.rule.childUntil > 0)
        words += RetentionDialog::tr(", and of a child until the age of %1").arg(example.rule.childUntil);
    if (example.rule.childOf17Until != example.rule.childUntil)
        words += RetentionDialog::tr(" (%1 when 17 at the last visit)").arg(example.rule.childOf17Until);
    words += QStringLiteral(".\n") + RetentionDialog::tr("Source: %1").arg(QString::fromStdString(example.source));
    if (example.read == Reading::Memory)
        words += RetentionDialog::tr(", from memory");
    return words;
}

} // namespace

RetentionDialog::RetentionDialog(Practice &practice, QWidget *parent, const QDate &today)
    : WorkDialog(tr("Records past their time"), parent),
      m_practice(practice),
      m_today(today.toString(Qt::ISODate).toStdString()),
      m_rule(new WrappedLabel),
      m_law(hint(tr("This is only a proposal. Local law decides how long a record must be kept and when it may go. Back-ups made "
                    "before still hold what is erased here."))),
      m_children(new QCheckBox(
          tr("Keep the records of children until the 25th birthday (the 26th, if they were 17 at the last visit)"))),
      m_result(new WrappedLabel)
{
    m_rule->setProperty("role", QStringLiteral("head"));
    form().addWidget(m_rule);
    form().addWidget(m_law);
    m_children->setAccessibleName(m_children->text());
    m_children->setToolTip(tr("So the chiropractors' council of the United Kingdom says. Where you work it may differ."));
    m_children->setAccessibleDescription(m_children->toolTip());
    m_children->setMinimumHeight(touchTarget);
    m_children->setChecked(true);
    form().addWidget(m_children);
    m_list = makeDue();
    form().addWidget(m_list, 1);
    m_result->setProperty("role", QStringLiteral("head"));
    m_result->hide();
    form().addWidget(m_result);
    form().addStretch();
    addGap();
    QPushButton *close = addButton(tr("Close"));
    connect(close, &QPushButton::clicked, this, &RetentionDialog::reject);
    connect(m_children, &QCheckBox::toggled, this, &RetentionDialog::showDue);
    keepEnterToFocus();
    resize(1080, 640);
    m_children->hide();
    m_list->hide();
    readRecords();
}

QWidget *RetentionDialog::makeDue()
{
    auto *part = new QWidget;
    auto *column = new QVBoxLayout(part);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    m_count = heading({});
    column->addWidget(m_count);
    m_table = new QTableWidget(0, oldRecordColumns);
    prepareTable(*m_table, tr("Records past their time, the oldest first"));
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->setHorizontalHeaderLabels(
        {tr("Name"), tr("Born"), tr("Last visit"), tr("Visits"), tr("Past its time since"), tr("To look at")});
    m_table->horizontalHeader()->setStretchLastSection(true);
    const int widths[] = {190, 160, 165, 75, 170};
    for (int i = 0; i < Note; ++i)
        m_table->setColumnWidth(i, widths[i]);
    column->addWidget(m_table, 1);
    m_unclear = hint();
    column->addWidget(m_unclear);
    column->addWidget(makeErase());
    connect(m_table, &QTableWidget::itemSelectionChanged, this, &RetentionDialog::showChosen);
    return part;
}

QWidget *RetentionDialog::makeErase()
{
    m_eraseBox = new QWidget;
    auto *column = new QVBoxLayout(m_eraseBox);
    column->setContentsMargins(0, 6, 0, 0);
    column->setSpacing(8);
    m_who = new WrappedLabel;
    m_who->setProperty("role", QStringLiteral("head"));
    column->addWidget(m_who);
    m_reason = new QLineEdit;
    m_name = new QLineEdit;
    m_erase = pushButton(tr("Erase this record"));
    auto *row = new QHBoxLayout;
    row->setSpacing(12);
    row->addLayout(labelled(tr("Reason"), m_reason), 3);
    row->addLayout(labelled(tr("The patient's name, typed out"), m_name), 2);
    row->addWidget(m_erase, 0, Qt::AlignBottom);
    column->addLayout(row);
    connect(m_reason, &QLineEdit::textChanged, this, &RetentionDialog::showReady);
    connect(m_name, &QLineEdit::textChanged, this, &RetentionDialog::showReady);
    connect(m_erase, &QPushButton::clicked, this, &RetentionDialog::erase);
    return m_eraseBox;
}

void RetentionDialog::readRecords()
{
    workOn(tr("Looking at the last visits ..."),
        onPractice(m_practice,
            [](const Practice &practice) {
                return guarded([&] { return Seen{valueOrThrow(practice.settings()), valueOrThrow(readKeptRecords(practice))}; });
            }),
        [this](Result<Seen> seen) { showSeen(std::move(seen)); });
}

void RetentionDialog::showSeen(Result<Seen> seen)
{
    if (!seen) {
        complain(seen.error());
        return;
    }
    m_seen = std::move(seen).value();
    const bool isSet = m_seen.settings.retentionYears > 0;
    m_children->setVisible(isSet);
    m_list->setVisible(isSet);
    showRule();
    showDue();
    m_table->setFocus();
}

void RetentionDialog::showRule()
{
    const int years = m_seen.settings.retentionYears;
    const QString whose = QString::fromStdString(m_seen.settings.jurisdiction).simplified();
    if (years > 0) {
        const QString time = years == 1 ? tr("Records are kept for 1 year after the last visit")
                                        : tr("Records are kept for %1 years after the last visit").arg(years);
        m_rule->say(whose.isEmpty() ? time + QLatin1Char('.') : tr("%1 (%2).", "a rule, and whose it is").arg(time, whose));
        return;
    }
    m_rule->say(tr("It is not set yet how long records are kept. Set it in the settings of the practice."));
    QStringList words{tr("Ask your professional body, or look up the law where you work. Examples:")};
    if (const auto examples = readEmbeddedRetentionExamples())
        for (const RetentionExample &example : examples.value())
            words << exampleWords(example);
    m_law->say(words.join(QStringLiteral("\n\n")));
}

RetentionRule RetentionDialog::rule() const
{
    RetentionRule rule;
    rule.years = m_seen.settings.retentionYears;
    if (!m_children->isChecked())
        rule.childUntil = rule.childOf17Until = 0;
    return rule;
}

void RetentionDialog::showDue()
{
    auto review = reviewRetention(m_seen.records, rule(), m_today);
    if (!review) {
        complain(review.error());
        return;
    }
    m_table->setRowCount(0); // while what was chosen can still be asked for
    m_due = std::move(review.value().due);
    m_table->setRowCount(static_cast<int>(m_due.size()));
    for (int row = 0; row < m_table->rowCount(); ++row) {
        const DueRecord &due = m_due[static_cast<std::size_t>(row)];
        const QStringList texts{QString::fromStdString(due.record.name),
            due.record.born.empty() ? tr("not known") : dayWords(due.record.born), dayWords(due.record.lastVisit),
            QString::number(due.record.visits), dayWords(due.from), due.mayBeChild ? tr("Was this a child then?") : QString()};
        for (int column = 0; column < oldRecordColumns; ++column) {
            auto *item = new QTableWidgetItem(texts[column]);
            item->setToolTip(texts[column]);
            m_table->setItem(row, column, item);
        }
    }
    m_count->setText(m_due.empty() ? tr("No record is past its time.")
            : m_due.size() == 1    ? tr("1 record is past its time:")
                                   : tr("%1 records are past their time, the oldest first:").arg(m_due.size()));
    m_table->setVisible(!m_due.empty());
    showUnclear(review.value().unclear);
    showChosen();
}

void RetentionDialog::showUnclear(const std::vector<KeptRecord> &unclear)
{
    m_unclear->setVisible(!unclear.empty());
    QStringList names;
    for (std::size_t i = 0; i < std::min(unclear.size(), mostNames); ++i)
        names << QString::fromStdString(unclear[i].name);
    if (unclear.size() > mostNames)
        names << tr("%1 more").arg(unclear.size() - mostNames);
    m_unclear->say(
        tr("Not looked at, because a visit has no date that can be read: %1.", "names").arg(names.join(QStringLiteral(", "))));
}

// By what is selected, not by the current row: a table that gets the focus makes its first row the current one.
const DueRecord *RetentionDialog::chosen() const
{
    const QModelIndexList rows = m_table->selectionModel()->selectedRows();
    return rows.isEmpty() ? nullptr : &m_due[static_cast<std::size_t>(rows.front().row())];
}

void RetentionDialog::showChosen()
{
    const DueRecord *due = chosen();
    m_reason->clear();
    m_name->clear();
    m_eraseBox->setVisible(due != nullptr);
    if (due)
        m_who->say(tr("Erase the record of %1, %2, with its visits (%3)? This cannot be undone.", "name, 'born ...', a number")
                       .arg(QString::fromStdString(due->record.name), bornWords(due->record.born))
                       .arg(due->record.visits));
    showReady();
}

void RetentionDialog::showReady()
{
    const DueRecord *due = chosen();
    m_erase->setEnabled(due && !m_reason->text().trimmed().isEmpty()
        && comparable(m_name->text()) == comparable(QString::fromStdString(due->record.name)));
}

void RetentionDialog::erase()
{
    const DueRecord *due = chosen();
    if (!due)
        return;
    m_result->hide();
    const QString name = QString::fromStdString(due->record.name);
    workOn(tr("Erasing ..."),
        onPractice(m_practice,
            [patient = due->record.patient, reason = m_reason->text().trimmed().toStdString()](
                Practice &practice) { return practice.erase(patient, reason); }),
        [this, name](const Result<Erased> &done) {
            if (!done) {
                complain(done.error());
                return;
            }
            ++m_erased;
            m_result->show();
            m_result->say(done.value().isTidied
                    ? tr("Erased: %1. Back-ups made before still hold the record.").arg(name)
                    : tr("Erased: %1. Its place in the file could not be overwritten yet, for want of room perhaps; that is done "
                         "when the program is closed. Back-ups made before still hold the record.")
                          .arg(name));
            readRecords();
        });
}

} // namespace raphe
