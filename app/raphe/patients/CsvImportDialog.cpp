#include "app/raphe/patients/CsvImportDialog.h"

#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/practice/FormParts.h"
#include "app/raphe/practice/OnPractice.h"
#include "app/raphe/practice/PracticeTable.h"

#include <QButtonGroup>
#include <QCheckBox>
#include <QEvent>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QPainter>
#include <QPushButton>
#include <QRadioButton>
#include <QStyledItemDelegate>
#include <QTableView>
#include <QTableWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace raphe {

namespace {

constexpr qint64 mostBytes = qint64{64} * 1024 * 1024; // of a list; our choice: far more than any practice has
constexpr int columnsWidth = 280; // pixels
constexpr int nameWidth = 800; // of the file's name, at most
constexpr double boxSize = 16;

// A cell with a box in its middle that is ticked by touching the cell anywhere. Drawn in the colour of the text, so that it is
// seen on every ground.
class TickDelegate : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter *painter, const QStyleOptionViewItem &option, const QModelIndex &index) const override
    {
        QStyleOptionViewItem cell = option;
        const QVariant state = index.data(Qt::CheckStateRole);
        option.widget->style()->drawPrimitive(QStyle::PE_PanelItemViewItem, &cell, painter, option.widget);
        if (!state.isValid())
            return;
        const bool isChosen = option.state.testFlag(QStyle::State_Selected);
        const QColor ink = option.palette.color(isChosen ? QPalette::HighlightedText : QPalette::Text);
        QRectF box(0, 0, boxSize, boxSize);
        box.moveCenter(QRectF(option.rect).center());
        painter->save();
        painter->setRenderHint(QPainter::Antialiasing);
        painter->setPen(QPen(ink, 1.2));
        painter->drawRoundedRect(box, 3, 3);
        if (state.value<Qt::CheckState>() == Qt::Checked) {
            painter->setPen(QPen(ink, 2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
            const auto at = [&](double x, double y) { return box.topLeft() + QPointF(x, y) * boxSize; };
            painter->drawPolyline(QPolygonF{at(0.22, 0.52), at(0.42, 0.72), at(0.78, 0.28)});
        }
        painter->restore();
    }

protected:
    bool editorEvent(QEvent *event, QAbstractItemModel *model, const QStyleOptionViewItem &, const QModelIndex &index) override
    {
        if (event->type() != QEvent::MouseButtonRelease || static_cast<QMouseEvent *>(event)->button() != Qt::LeftButton)
            return false;
        const bool isTicked = index.data(Qt::CheckStateRole).value<Qt::CheckState>() == Qt::Checked;
        return model->setData(index, isTicked ? Qt::Unchecked : Qt::Checked, Qt::CheckStateRole);
    }
};

Result<std::string> readBytes(const QString &name)
{
    QFile file(name);
    if (!file.open(QIODevice::ReadOnly))
        return Error{ErrorCode::CannotRead, QFileInfo(name).fileName().toStdString(), file.errorString().toStdString()};
    const QByteArray bytes = file.read(mostBytes + 1);
    if (bytes.size() > mostBytes)
        return Error{ErrorCode::CannotRead, QFileInfo(name).fileName().toStdString(), "larger than 64 MB"};
    return bytes.toStdString();
}

Result<CsvLook> lookAt(const Practice &practice, const QString &file, std::optional<DateOrder> order)
{
    return guarded([&] {
        const std::string text = valueOrThrow(readBytes(file));
        CsvLook look;
        for (const PatientCard &card : valueOrThrow(practice.patients()))
            look.existing.push_back(valueOrThrow(practice.patient(card.id)));
        CsvOptions options;
        options.file = QFileInfo(file).fileName().toStdString();
        options.dateOrder = order;
        look.preview = valueOrThrow(previewCsv(text, options, look.existing));
        return look;
    });
}

} // namespace

CsvImportDialog::CsvImportDialog(Practice &practice, QWidget *parent)
    : WorkDialog(tr("Import a list of patients"), parent),
      m_practice(practice),
      m_choose(pushButton(tr("Choose a file ..."))),
      m_name(new QLabel),
      m_hint(hint(tr("A list in CSV form, as most programs can save one. Its first line names the columns, in English, German or "
                     "Spanish. Nothing is imported before you have seen it here."))),
      m_result(new WrappedLabel),
      m_order(makeOrder()),
      m_body(new QWidget)
{
    auto *top = new QHBoxLayout;
    top->setSpacing(12);
    top->addWidget(m_choose);
    top->addWidget(m_name, 1);
    form().addLayout(top);
    form().addWidget(m_hint);
    form().addWidget(m_order);
    auto *body = new QHBoxLayout(m_body);
    body->setContentsMargins(0, 0, 0, 0);
    body->setSpacing(18);
    body->addWidget(makeColumns());
    body->addWidget(makeRows(), 1);
    form().addWidget(m_body, 1);
    m_result->setProperty("role", QStringLiteral("head"));
    m_result->hide();
    form().addWidget(m_result);
    form().addStretch();

    addGap();
    QPushButton *close = addButton(tr("Close"));
    m_import = addButton({});
    keepEnterToFocus();
    resize(1160, 640);

    m_order->hide();
    m_body->hide();
    showCounts();
    m_choose->setFocus();
    connect(m_choose, &QPushButton::clicked, this, &CsvImportDialog::chooseFile);
    connect(close, &QPushButton::clicked, this, &CsvImportDialog::reject);
    connect(m_import, &QPushButton::clicked, this, &CsvImportDialog::import);
    connect(&m_model, &CsvImportModel::countsChanged, this, &CsvImportDialog::showCounts);
}

QWidget *CsvImportDialog::makeOrder()
{
    auto *order = new QWidget;
    auto *row = new QHBoxLayout(order);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(16);
    row->addWidget(heading(tr("Some dates can be read in two ways. Here 03/04/1980 means")));
    auto *group = new QButtonGroup(order);
    const auto add = [&](const QString &text, const QString &name, DateOrder value) {
        auto *button = new QRadioButton(text);
        button->setAccessibleName(name);
        button->setMinimumHeight(touchTarget);
        group->addButton(button);
        row->addWidget(button);
        connect(button, &QRadioButton::clicked, this, [this, value] {
            m_dateOrder = value;
            look();
        });
    };
    add(tr("3 April (day first)"), tr("In dates with slashes the day comes first"), DateOrder::DayFirst);
    add(tr("March 4 (month first)"), tr("In dates with slashes the month comes first"), DateOrder::MonthFirst);
    row->addStretch(1);
    return order;
}

QWidget *CsvImportDialog::makeColumns()
{
    auto *part = new QWidget;
    part->setFixedWidth(columnsWidth);
    auto *column = new QVBoxLayout(part);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    auto *title = heading(tr("What the columns become"));
    title->setMinimumHeight(touchTarget);
    column->addWidget(title);
    m_columns = new QTableWidget(0, 2);
    prepareTable(*m_columns, tr("What the columns become"));
    m_columns->setHorizontalHeaderLabels({tr("In the list"), tr("Becomes")});
    m_columns->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    column->addWidget(m_columns, 1);
    return part;
}

QWidget *CsvImportDialog::makeRows()
{
    auto *part = new QWidget;
    auto *column = new QVBoxLayout(part);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    m_counts = heading({});
    m_onlyLooks = new QCheckBox(tr("Only rows that need a look"));
    m_onlyLooks->setAccessibleName(m_onlyLooks->text());
    m_onlyLooks->setMinimumHeight(touchTarget);
    auto *top = new QHBoxLayout;
    top->addWidget(m_counts, 1);
    top->addWidget(m_onlyLooks);
    column->addLayout(top);
    m_table = new QTableView;
    m_table->setModel(&m_model);
    prepareTable(*m_table, tr("Rows of the list; the space key ticks those that are chosen"));
    m_table->setItemDelegateForColumn(CsvImportModel::Tick, new TickDelegate(m_table));
    m_table->horizontalHeader()->setStretchLastSection(true);
    m_table->setColumnWidth(CsvImportModel::Tick, 80);
    m_table->setColumnWidth(CsvImportModel::Line, 70);
    m_table->setColumnWidth(CsvImportModel::Name, 190);
    m_table->setColumnWidth(CsvImportModel::Born, 165);
    m_table->installEventFilter(this);
    column->addWidget(m_table, 1);
    m_reason = hint(); // in full, where the table has no room
    column->addWidget(m_reason);
    connect(m_onlyLooks, &QCheckBox::toggled, this, [this](bool only) {
        m_model.showOnlyLooks(only);
        showReason();
    });
    connect(m_table->selectionModel(), &QItemSelectionModel::currentChanged, this, &CsvImportDialog::showReason);
    return part;
}

void CsvImportDialog::chooseFile()
{
    const QString file = QFileDialog::getOpenFileName(
        this, tr("Choose a list of patients"), {}, tr("Lists (*.csv *.tsv *.txt)") + QStringLiteral(";;") + tr("All files (*)"));
    if (!file.isEmpty())
        read(file);
}

void CsvImportDialog::read(const QString &file)
{
    m_file = file;
    m_dateOrder.reset();
    m_order->hide();
    look();
}

void CsvImportDialog::look()
{
    m_name->setText(m_name->fontMetrics().elidedText(QFileInfo(m_file).fileName(), Qt::ElideMiddle, nameWidth));
    m_result->hide();
    workOn(tr("Reading the list and comparing it with your patients ..."),
        onPractice(
            m_practice, [file = m_file, order = m_dateOrder](const Practice &practice) { return lookAt(practice, file, order); }),
        [this](Result<CsvLook> seen) { showLook(std::move(seen)); });
}

void CsvImportDialog::showLook(Result<CsvLook> look)
{
    m_onlyLooks->setChecked(false);
    m_body->setVisible(look.ok());
    m_hint->setVisible(!look.ok());
    if (!look) {
        m_model.clear();
        complain(look.error());
        m_choose->setFocus();
        return;
    }
    m_model.show(std::move(look).value());
    const CsvPreview &preview = m_model.preview();
    if (preview.dateOrderNeeded && m_order->isHidden()) {
        for (auto *button : m_order->findChildren<QRadioButton *>()) {
            button->group()->setExclusive(false);
            button->setChecked(false);
            button->group()->setExclusive(true);
        }
        m_order->show();
    }
    showColumns();
    m_table->selectRow(0);
    showReason();
    if (!preview.comparedAll)
        say(tr("Too many names are alike to compare them all: some people who are there twice may not be marked."));
    m_table->setFocus();
}

void CsvImportDialog::showColumns()
{
    const std::vector<CsvColumn> &columns = m_model.preview().columns;
    m_columns->setRowCount(static_cast<int>(columns.size()));
    for (int row = 0; row < m_columns->rowCount(); ++row) {
        const CsvColumn &column = columns[static_cast<std::size_t>(row)];
        auto *header = new QTableWidgetItem(QString::fromStdString(column.header));
        header->setToolTip(header->text());
        const std::string_view field = wordOf(csvFieldWords, column.becomes);
        m_columns->setItem(row, 0, header);
        m_columns->setItem(row, 1, new QTableWidgetItem(QString::fromUtf8(field.data(), static_cast<int>(field.size()))));
    }
}

void CsvImportDialog::showCounts()
{
    const CsvImportModel::Counts &counts = m_model.counts();
    const QString rows = counts.rows == 1 ? tr("1 row") : tr("%1 rows").arg(counts.rows);
    m_counts->setText(tr("%1: %2 ticked, %3 perhaps there twice, %4 with a mistake", "'12 rows' and three numbers")
                          .arg(rows)
                          .arg(counts.ticked)
                          .arg(counts.alike)
                          .arg(counts.mistakes));
    m_import->setText(counts.ticked == 1 ? tr("Import 1 patient") : tr("Import %1 patients").arg(counts.ticked));
    m_import->setAccessibleName(m_import->text());
    m_import->setEnabled(counts.ticked > 0);
}

void CsvImportDialog::showReason()
{
    const QModelIndex index = m_table->currentIndex();
    const QString reason = index.isValid() ? m_model.reason(index.row()) : QString();
    m_reason->say(reason.isEmpty() ? tr("The space key ticks or unticks the chosen rows.") : reason);
}

// All that can be ticked follows the current row.
void CsvImportDialog::tickChosen()
{
    std::vector<int> rows;
    for (const QModelIndex &index : m_table->selectionModel()->selectedRows())
        rows.push_back(index.row());
    if (const QModelIndex current = m_table->currentIndex(); current.isValid())
        m_model.setTicked(rows, !m_model.isTicked(current.row()));
}

void CsvImportDialog::import()
{
    auto records = chosenRows(m_model.preview(), m_model.leftOut());
    if (!records) {
        complain(records.error());
        return;
    }
    const std::size_t patients = records.value().size();
    const std::size_t leftOut = m_model.counts().rows - m_model.counts().imported - patients;
    workOn(tr("Importing ..."),
        onPractice(
            m_practice, [chosen = std::move(records).value()](Practice &practice) { return practice.addPatients(chosen); }),
        [this, patients, leftOut](const Result<Done> &added) {
            if (added)
                showImported(patients, leftOut);
            else
                complain(added.error());
        });
}

void CsvImportDialog::showImported(std::size_t patients, std::size_t leftOut)
{
    m_imported += patients;
    m_model.setImported();
    const QString done = patients == 1 ? tr("1 patient is imported.") : tr("%1 patients are imported.").arg(patients);
    const QString rest = leftOut == 0 ? QString()
        : leftOut == 1                ? tr("1 row was left out.")
                                      : tr("%1 rows were left out.").arg(leftOut);
    m_result->show();
    m_result->say((done + QLatin1Char(' ') + rest).trimmed());
    m_table->setFocus();
}

bool CsvImportDialog::eventFilter(QObject *watched, QEvent *event)
{
    if (watched == m_table && event->type() == QEvent::KeyPress && static_cast<QKeyEvent *>(event)->key() == Qt::Key_Space) {
        tickChosen();
        return true;
    }
    return WorkDialog::eventFilter(watched, event);
}

} // namespace raphe
