#include "app/raphe/patients/PatientsDialog.h"

#include "app/raphe/InBackground.h"
#include "app/raphe/OwnersFile.h"
#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/patients/CsvImportDialog.h"
#include "app/raphe/patients/DuplicatesDialog.h"
#include "app/raphe/patients/PersonWords.h"
#include "app/raphe/patients/RetentionDialog.h"
#include "app/raphe/patients/TakeOver.h"
#include "app/raphe/practice/OnPractice.h"
#include "app/raphe/record/PatientEditor.h"
#include "app/words/ErrorText.h"
#include "core/record/PatientSearch.h"
#include "core/store/Export.h"

#include <QDir>
#include <QFileDialog>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QMenu>
#include <QPushButton>
#include <QStackedWidget>
#include <QTimer>
#include <QToolButton>
#include <QVBoxLayout>

#include <atomic>
#include <chrono>
#include <utility>

namespace raphe {

namespace {

constexpr std::chrono::milliseconds patience{300}; // until it says that it is still reading

} // namespace

struct PatientsDialog::Reading {
    std::atomic<std::size_t> count = 0;
    std::atomic<bool> stop = false;
};

PatientsDialog::PatientsDialog(Practice &practice, const SafetyRules &rules, Purpose purpose, QWidget *parent)
    : QDialog(parent), m_practice(practice), m_rules(rules), m_pages(new QStackedWidget)
{
    setWindowTitle(purpose == Purpose::Open ? tr("Patients") : tr("Move the visit to"));
    resize(560, 620);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(16, 16, 16, 16);
    m_pages->addWidget(makeListPage());
    m_pages->addWidget(makeGuardPage(purpose));
    column->addWidget(m_pages);
    readPatients();
    m_typed->setFocus();
}

PatientsDialog::~PatientsDialog()
{
    if (m_reading)
        m_reading->stop = true; // the dialog waits for it
}

QWidget *PatientsDialog::makeListPage()
{
    auto *page = new QWidget;
    auto *column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(10);
    m_typed = new QLineEdit;
    m_typed->setMinimumHeight(touchTarget);
    m_typed->setPlaceholderText(tr("Part of a name, a birth date or a complaint"));
    m_typed->setAccessibleName(tr("Look for a patient"));
    m_typed->installEventFilter(this);
    column->addWidget(m_typed);
    m_list = new QListView;
    m_list->setAccessibleName(tr("Patients found"));
    m_list->setModel(&m_model);
    m_list->setUniformItemSizes(true);
    m_list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setStyleSheet(QStringLiteral("QListView::item { min-height: 44px; padding: 0 8px; }"));
    m_list->installEventFilter(this);
    column->addWidget(m_list, 1);
    m_message = new WrappedLabel;
    column->addWidget(m_message);

    auto *row = new QHBoxLayout;
    const auto add = [&](const QString &text, const QString &name) {
        auto *button = new QPushButton(text);
        button->setMinimumHeight(touchTarget);
        button->setAccessibleName(name);
        button->setAutoDefault(false);
        row->addWidget(button);
        return button;
    };
    auto *fresh = add(tr("New patient ..."), tr("New patient"));
    m_record = add(tr("Record ..."), tr("Change the record of the chosen patient"));
    auto *more = new QToolButton;
    more->setText(tr("More"));
    more->setAccessibleName(tr("Import a list, take over a file, join double records, records past their time, export a record"));
    more->setMinimumHeight(touchTarget);
    more->setFocusPolicy(Qt::StrongFocus);
    more->setPopupMode(QToolButton::InstantPopup);
    auto *menu = new QMenu(more);
    menu->addAction(tr("Import a list of patients ..."), this, &PatientsDialog::importList);
    menu->addAction(tr("Take over a record or visit from a file ..."), this, &PatientsDialog::askForFile);
    menu->addAction(tr("Find double records ..."), this, &PatientsDialog::joinDuplicates);
    menu->addAction(tr("Records past their time ..."), this, &PatientsDialog::lookAtRetention);
    menu->addAction(tr("Export the chosen record ..."), this, &PatientsDialog::askForExport);
    more->setMenu(menu);
    row->addWidget(more);
    row->addStretch();
    m_open = add(tr("Open"), tr("Open the chosen patient"));
    column->addLayout(row);

    connect(m_typed, &QLineEdit::textChanged, this, [this](const QString &typed) {
        m_model.setTyped(typed);
        m_list->setCurrentIndex(m_model.index(0));
        showCount();
    });
    connect(m_list, &QListView::doubleClicked, this, [this] { askIdentity(current()); });
    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this, &PatientsDialog::showCount);
    connect(m_open, &QPushButton::clicked, this, [this] { askIdentity(current()); });
    connect(fresh, &QPushButton::clicked, this, &PatientsDialog::newPatient);
    connect(m_record, &QPushButton::clicked, this, &PatientsDialog::editRecord);
    return page;
}

QWidget *PatientsDialog::makeGuardPage(Purpose purpose)
{
    auto *page = new QWidget;
    auto *column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(14);
    column->addWidget(new WrappedLabel(purpose == Purpose::Open
            ? tr("Ask for name and birth date, and look for the mark. Is this the person in the room?")
            : tr("Is this the person whose visit it was? Compare all three.")));
    auto *facts = new QGridLayout;
    facts->setHorizontalSpacing(16);
    facts->setVerticalSpacing(12);
    const auto addFact = [&](const QString &title) {
        auto *head = new QLabel(title);
        head->setProperty("role", QStringLiteral("quiet"));
        auto *value = new WrappedLabel;
        value->setProperty("role", QStringLiteral("title"));
        value->setTextFormat(Qt::PlainText); // a name is no markup
        const int row = facts->rowCount();
        facts->addWidget(head, row, 0, Qt::AlignTop);
        facts->addWidget(value, row, 1);
        return value;
    };
    m_name = addFact(tr("Name"));
    m_born = addFact(tr("Birth date"));
    m_mark = addFact(tr("Mark"));
    facts->setColumnStretch(1, 1);
    column->addLayout(facts);
    column->addStretch(1);
    auto *row = new QHBoxLayout;
    auto *back = new QPushButton(tr("Not this one"));
    m_confirm = new QPushButton(tr("All three agree"));
    for (QPushButton *button : {back, m_confirm}) {
        button->setMinimumHeight(touchTarget + 8);
        button->setAutoDefault(true);
        button->setAccessibleName(button->text());
    }
    row->addWidget(back);
    row->addStretch();
    row->addWidget(m_confirm);
    column->addLayout(row);
    m_confirm->installEventFilter(this);
    connect(back, &QPushButton::clicked, this, &PatientsDialog::backToList);
    connect(m_confirm, &QPushButton::clicked, this, [this] {
        m_chosen = m_asked;
        accept();
    });
    return page;
}

std::int64_t PatientsDialog::current() const
{
    const QModelIndex index = m_list->currentIndex();
    return index.isValid() ? m_model.card(index.row()).id : 0;
}

void PatientsDialog::readPatients(std::int64_t select)
{
    if (m_reading)
        m_reading->stop = true;
    const auto reading = std::make_shared<Reading>();
    m_reading = reading;
    inBackground(this,
        onPractice(m_practice,
            [reading](const Practice &practice) {
                return practice.patients([&](std::size_t count) {
                    reading->count = count;
                    return !reading->stop;
                });
            }),
        [this, reading, select](Result<std::vector<PatientCard>> patients) {
            if (reading == m_reading) // else it was asked anew
                showPatients(std::move(patients), select);
        });
    tellCount();
}

void PatientsDialog::tellCount()
{
    QTimer::singleShot(patience, this, [this] {
        if (!m_reading)
            return;
        showCount();
        tellCount();
    });
}

void PatientsDialog::showPatients(Result<std::vector<PatientCard>> patients, std::int64_t select)
{
    m_reading.reset();
    if (!patients) {
        complain(patients.error());
        return;
    }
    m_model.setPatients(std::move(patients).value());
    m_list->setCurrentIndex(m_model.index(std::max(0, m_model.rowOf(select))));
    showCount();
    if (!m_takenOver.isEmpty())
        m_message->say(std::exchange(m_takenOver, {}));
}

void PatientsDialog::showCount()
{
    const bool any = current() != 0;
    m_open->setEnabled(any);
    m_record->setEnabled(any);
    if (m_reading) {
        m_message->say(tr("Reading the list: %1 so far ...").arg(m_reading->count));
        return;
    }
    m_message->say(m_model.patientCount() == 0 ? tr("Nobody is written down yet. 'New patient' begins a record.")
            : m_model.rowCount() == 0          ? tr("Nobody is found for this. Try fewer letters, or begin a new record.")
                                               : tr("%1 of %2").arg(m_model.rowCount()).arg(m_model.patientCount()));
}

void PatientsDialog::askIdentity(std::int64_t id)
{
    if (id == 0)
        return;
    const auto record = m_practice.patient(id);
    if (!record) {
        complain(record.error());
        return;
    }
    m_asked = id;
    m_name->say(QString::fromStdString(record.value().name));
    m_born->say(
        record.value().born.empty() ? tr("not written down: ask, and add it to the record") : bornWords(record.value().born));
    m_mark->say(record.value().mark.empty() ? tr("none chosen yet: add one to the record, such as 'walks with a stick'")
                                            : QString::fromStdString(record.value().mark));
    m_pages->setCurrentIndex(1);
    m_confirm->setFocus();
}

void PatientsDialog::backToList()
{
    m_asked = 0;
    m_pages->setCurrentIndex(0);
    m_typed->setFocus();
    m_typed->selectAll();
}

// By name, in whatever spelling, and birth date.
bool PatientsDialog::isOnFile(const PatientRecord &record) const
{
    const auto cards = m_practice.patients();
    return cards && std::any_of(cards.value().begin(), cards.value().end(), [&](const PatientCard &card) {
        return card.born == record.born && foldedWords(card.name) == foldedWords(record.name);
    });
}

void PatientsDialog::newPatient()
{
    std::int64_t added = 0;
    PatientEditor editor(PatientRecord(), m_rules, this);
    std::optional<PatientRecord> insisted; // on which the user was told that there is such a patient
    editor.saveThrough([&](const PatientRecord &record) -> Result<Done> {
        if (record != insisted && isOnFile(record)) {
            insisted = record;
            return Error{ErrorCode::NotAllowed, {},
                tr("A patient of this name and birth date is on file already: leave this form and open their record, or save "
                   "again to keep both.")
                    .toStdString()};
        }
        const auto id = m_practice.addPatient(record);
        if (!id)
            return id.error();
        added = id.value();
        return Done{};
    });
    if (editor.exec() != Accepted)
        return;
    m_typed->clear();
    readPatients(added);
    askIdentity(added);
}

void PatientsDialog::editRecord()
{
    const std::int64_t id = current();
    const auto record = m_practice.patient(id);
    if (!record) {
        complain(record.error());
        return;
    }
    if (const auto noted = m_practice.noteOpened(id); !noted) {
        complain(noted.error());
        return;
    }
    PatientEditor editor(record.value(), m_rules, this);
    editor.saveThrough([&](const PatientRecord &changed) { return m_practice.savePatient(id, changed); });
    if (editor.exec() == Accepted)
        readPatients(id);
}

void PatientsDialog::joinDuplicates()
{
    DuplicatesDialog(m_practice, this).exec();
    readPatients(current());
}

void PatientsDialog::importList()
{
    CsvImportDialog(m_practice, this).exec();
    readPatients(current());
}

void PatientsDialog::lookAtRetention()
{
    RetentionDialog(m_practice, this).exec();
    readPatients(current());
}

void PatientsDialog::askForExport()
{
    if (current() == 0) {
        m_message->say(tr("Choose a patient in the list first."));
        return;
    }
    const QString file = QFileDialog::getSaveFileName(this, tr("Export the record: the file is not sealed"),
        QDir::home().filePath(tr("record.json")),
        tr("For other programs (*.json)") + QStringLiteral(";;") + tr("To be read (*.txt)"));
    if (!file.isEmpty())
        exportTo(file);
}

void PatientsDialog::exportTo(const QString &file)
{
    m_message->say(tr("Exporting ..."));
    inBackground(this,
        onPractice(m_practice,
            [patient = current(), file](Practice &practice) -> Result<Done> {
                const auto exported = exportPatient(practice, patient);
                if (!exported)
                    return exported.error();
                const bool asText = file.endsWith(QStringLiteral(".txt"), Qt::CaseInsensitive);
                return saveForOwner(file, QByteArray::fromStdString(asText ? exported.value().text : exported.value().json));
            }),
        [this, file](const Result<Done> &done) {
            if (!done)
                complain(done.error());
            else
                m_message->say(tr("Exported to '%1'. It can be read by whoever gets at the file.").arg(file));
        });
}

void PatientsDialog::askForFile()
{
    const QString file = QFileDialog::getOpenFileName(
        this, tr("Take over a record that was exported, or a visit"), QDir::homePath(), tr("Records and visits (*.json)"));
    if (!file.isEmpty())
        takeOverFrom(file);
}

void PatientsDialog::takeOverFrom(const QString &file)
{
    m_message->say(tr("Reading the file ..."));
    inBackground(this, onPractice(m_practice, [file](Practice &practice) { return takeOver(practice, file); }),
        [this](const Result<TakenOver> &taken) {
            if (!taken) {
                complain(taken.error());
                return;
            }
            m_typed->clear();
            m_takenOver = tr("Taken over from the file. Visits: %1.").arg(taken.value().imported.visits.size());
            if (taken.value().isAlike)
                m_takenOver += QLatin1Char(' ')
                    + tr("Somebody of this name and birth date was on file: compare both, and join them by 'Find double "
                         "records' if it is one person.");
            readPatients(taken.value().imported.patient);
        });
}

void PatientsDialog::complain(const Error &error)
{
    m_message->say(errorText(error));
}

void PatientsDialog::keyPressEvent(QKeyEvent *event)
{
    const bool isEnter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (event->key() == Qt::Key_Escape && m_pages->currentIndex() == 1)
        backToList();
    else if (!isEnter) // it belongs to what has the focus; an Enter that chose a patient must not confirm the identity as well
        QDialog::keyPressEvent(event);
}

bool PatientsDialog::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() != QEvent::KeyPress)
        return QDialog::eventFilter(watched, event);
    const auto *pressed = static_cast<QKeyEvent *>(event);
    const int key = pressed->key();
    if (watched == m_confirm)
        return pressed->isAutoRepeat(); // a key that was held too long confirms nothing
    if (key == Qt::Key_Return || key == Qt::Key_Enter) {
        if (!pressed->isAutoRepeat())
            askIdentity(current());
        return true;
    }
    if (watched == m_typed && (key == Qt::Key_Up || key == Qt::Key_Down || key == Qt::Key_PageUp || key == Qt::Key_PageDown)) {
        const int step = key == Qt::Key_Up ? -1 : key == Qt::Key_Down ? 1 : key == Qt::Key_PageUp ? -8 : 8;
        const int row = std::clamp(m_list->currentIndex().row() + step, 0, std::max(0, m_model.rowCount() - 1));
        m_list->setCurrentIndex(m_model.index(row));
        return true;
    }
    return QDialog::eventFilter(watched, event);
}

} // namespace raphe
