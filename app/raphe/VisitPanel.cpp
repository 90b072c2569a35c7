#include "app/raphe/VisitPanel.h"

#include "app/paint/TypedText.h"
#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/patients/PatientsDialog.h"
#include "app/raphe/patients/PersonWords.h"
#include "app/raphe/practice/FormParts.h"
#include "app/raphe/record/PatientEditor.h"
#include "app/words/ErrorText.h"
#include "core/record/VisitJson.h"

#include <QComboBox>
#include <QDate>
#include <QHBoxLayout>
#include <QLabel>
#include <QListView>
#include <QLocale>
#include <QMenu>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>

namespace raphe {

namespace {

QPlainTextEdit *smallText(const QString &name, const QString &hint, int lines)
{
    auto *edit = new QPlainTextEdit;
    edit->setAccessibleName(name);
    edit->setPlaceholderText(hint);
    edit->setTabChangesFocus(true);
    edit->setFixedHeight(lines * 20 + 20);
    return edit;
}

} // namespace

VisitPanel::VisitPanel(VisitSession &session, QWidget *parent) : QWidget(parent), m_session(session), m_model(session)
{
    setMinimumWidth(290); // a complaint of a sentence or two without scrolling
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(6);

    column->addWidget(makePatientRow());
    m_visitRow = makeVisitRow();
    column->addWidget(m_visitRow);
    m_episodes = new QComboBox;
    m_episodes->setAccessibleName(tr("Which of the patient's complaints it is about"));
    m_episodes->setToolTip(tr("Visits about the same complaint belong together"));
    m_episodes->setMinimumHeight(touchTarget);
    m_episodes->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    column->addWidget(m_episodes);

    m_complaint = smallText(tr("Complaint, in the patient's words"), tr("What brings the patient, in their words"), 3);
    column->addWidget(heading(tr("Complaint")));
    column->addWidget(m_complaint);
    m_cautions =
        smallText(tr("Cautions, one a line"), tr("What must be respected, one a line: blood thinner, pregnancy, implant ..."), 2);
    column->addWidget(heading(tr("Cautions")));
    column->addWidget(m_cautions);

    m_count = heading({});
    column->addWidget(m_count);
    m_list = new QListView;
    m_list->setAccessibleName(tr("Findings"));
    m_list->setModel(&m_model);
    m_list->setWordWrap(true);
    m_list->setResizeMode(QListView::Adjust);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_list->setMouseTracking(true);
    m_delegate = new CardDelegate(
        {FindingsModel::DetailRole, -1, FindingsModel::MarkKindRole, FindingsModel::NumberRole, FindingsModel::FamiliarRole},
        this);
    m_list->setItemDelegate(m_delegate);
    column->addWidget(m_list, 1);

    connect(m_visits, &QComboBox::activated, this, &VisitPanel::openChosenVisit);
    connect(m_newVisit, &QPushButton::clicked, this, &VisitPanel::newVisit);
    connect(m_record, &QPushButton::clicked, this, &VisitPanel::editRecord);
    connect(m_episodes, &QComboBox::activated, this, &VisitPanel::chooseEpisode);
    connect(m_complaint, &QPlainTextEdit::textChanged, this, [this] {
        if (!m_filling)
            m_session.setComplaint(m_complaint->toPlainText().toStdString());
    });
    connect(m_cautions, &QPlainTextEdit::textChanged, this, [this] {
        if (!m_filling)
            m_session.setCautions(linesIn(m_cautions->toPlainText()));
    });
    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this, [this](const QModelIndex &now) {
        if (!m_filling && now.isValid())
            m_session.selectFinding(now.row());
    });
    connect(&session, &VisitSession::visitOpened, this, &VisitPanel::showVisit);
    connect(&session, &VisitSession::intakeChanged, this, &VisitPanel::showComplaint);
    connect(&session, &VisitSession::findingsChanged, this, &VisitPanel::showSelection);
    connect(&session, &VisitSession::aimChanged, this, &VisitPanel::showSelection);
    showVisit();
    showSelection();
}

void VisitPanel::setTheme(const Theme &theme)
{
    m_delegate->setTheme(theme);
    m_list->viewport()->update();
}

QWidget *VisitPanel::makePatientRow()
{
    auto *box = new QWidget;
    auto *column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    m_name = new WrappedLabel; // whole, whatever its length: it tells that this is the right patient
    m_name->setProperty("role", QStringLiteral("head"));
    m_person = new WrappedLabel;
    m_person->setProperty("role", QStringLiteral("quiet"));
    for (WrappedLabel *label : {m_name, m_person}) {
        label->setTextFormat(Qt::PlainText);
        column->addWidget(label);
    }
    auto *row = new QHBoxLayout;
    row->setContentsMargins(0, 4, 0, 0);
    row->setSpacing(6);
    auto *patients = new QPushButton(tr("Patients"));
    patients->setAccessibleName(tr("Find a patient"));
    patients->setToolTip(tr("Find a patient, or begin a record (Ctrl+O)"));
    m_record = new QPushButton(tr("Record"));
    m_record->setAccessibleName(tr("The patient's record"));
    m_record->setToolTip(tr("Change what the record says of this patient"));
    m_newVisit = new QPushButton(tr("New visit"));
    m_newVisit->setAccessibleName(tr("New visit for this patient"));
    for (QPushButton *button : {patients, m_record, m_newVisit}) {
        button->setMinimumHeight(touchTarget);
        row->addWidget(button, 1);
    }
    column->addLayout(row);
    connect(patients, &QPushButton::clicked, this, &VisitPanel::choosePatient);
    return box;
}

QWidget *VisitPanel::makeVisitRow()
{
    auto *box = new QWidget;
    auto *row = new QHBoxLayout(box);
    row->setContentsMargins(0, 0, 0, 0);
    m_visits = new QComboBox;
    m_visits->setAccessibleName(tr("Visit"));
    m_visits->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_acts = new QToolButton;
    m_acts->setPopupMode(QToolButton::MenuButtonPopup);
    m_acts->setFocusPolicy(Qt::StrongFocus);
    m_actsMenu = new QMenu(m_acts);
    m_acts->setMenu(m_actsMenu);
    makeActs();
    row->addWidget(m_visits, 1);
    row->addWidget(m_acts);
    m_visits->setMinimumHeight(touchTarget);
    m_acts->setMinimumHeight(touchTarget);
    return box;
}

void VisitPanel::tell(const Result<Done> &result)
{
    if (!result)
        Q_EMIT failed(errorText(result.error()));
}

namespace {

QString stateWords(VisitState state)
{
    switch (state) {
    case VisitState::Draft: return VisitPanel::tr("draft");
    case VisitState::Signed: return VisitPanel::tr("signed");
    case VisitState::Amending: return VisitPanel::tr("being amended");
    case VisitState::InError: return VisitPanel::tr("in error");
    }
    return {};
}

std::string dateOf(const StoredVisit &visit, const Atlas &atlas)
{
    const auto read = readVisit(visit.document, "visit", atlas);
    return read ? read.value().date : std::string();
}

} // namespace

void VisitPanel::readVisits()
{
    m_visits->clear();
    if (m_session.patientId() == 0)
        return;
    const auto visits = m_session.practice().visits(m_session.patientId());
    if (!visits) {
        Q_EMIT failed(errorText(visits.error()));
        return;
    }
    const auto shortDay = [](const std::string &isoDate) {
        return QLocale().toString(QDate::fromString(QString::fromStdString(isoDate), Qt::ISODate), QStringLiteral("d MMM yyyy"));
    };
    std::vector<std::pair<std::string, const StoredVisit *>> byDate;
    for (const StoredVisit &visit : visits.value())
        byDate.emplace_back(dateOf(visit, *m_session.knowledge().atlas), &visit);
    std::stable_sort(byDate.begin(), byDate.end(), [](const auto &a, const auto &b) { return a.first > b.first; });
    for (const auto &[date, visit] : byDate)
        m_visits->addItem(tr("%1, %2", "date of a visit, its state").arg(shortDay(date), stateWords(visit->state)),
            QVariant::fromValue<qlonglong>(visit->id));
    if (const int open = m_visits->findData(QVariant::fromValue<qlonglong>(m_session.visitId())); open >= 0)
        m_visits->setCurrentIndex(open);
}

void VisitPanel::openChosenVisit()
{
    const qlonglong id = m_visits->currentData().toLongLong();
    if (id == 0 || id == m_session.visitId())
        return;
    tell(m_session.open(id));
    readVisits(); // names what is open, also when the other could not be
}

void VisitPanel::openPatient(std::int64_t patient)
{
    const auto visits = m_session.practice().visits(patient);
    if (!visits) {
        Q_EMIT failed(errorText(visits.error()));
        return;
    }
    const auto newest = std::find_if(visits.value().begin(), visits.value().end(),
        [](const StoredVisit &visit) { return visit.state != VisitState::InError; });
    const bool isNew = newest == visits.value().end();
    openVisit(isNew ? m_session.startVisit(patient) : Result<std::int64_t>(newest->id), isNew);
}

void VisitPanel::openVisit(const Result<std::int64_t> &id, bool isNew)
{
    const auto opened = id ? m_session.open(id.value()) : Result<Done>(id.error());
    tell(opened);
    if (opened && isNew)
        Q_EMIT begun();
}

void VisitPanel::choosePatient()
{
    PatientsDialog dialog(m_session.practice(), m_session.adviser().rules(), PatientsDialog::Purpose::Open, this);
    dialog.exec();
    if (dialog.chosen() != 0 && dialog.chosen() != m_session.patientId()) {
        openPatient(dialog.chosen());
        return;
    }
    // The record that is open may have been changed, joined to another or erased meanwhile.
    if (m_session.patientId() != 0 && !m_session.rereadRecord())
        m_session.close();
}

void VisitPanel::newVisit()
{
    if (m_session.patientId() == 0)
        return;
    openVisit(m_session.startVisit(m_session.patientId(), m_session.visit().episode()), true);
}

void VisitPanel::editRecord()
{
    if (m_session.patientId() == 0)
        return;
    PatientEditor editor(m_session.record(), m_session.adviser().rules(), this);
    editor.saveThrough(
        [this](const PatientRecord &record) { return m_session.practice().savePatient(m_session.patientId(), record); });
    if (editor.exec() == QDialog::Accepted)
        tell(m_session.rereadRecord());
}

void VisitPanel::chooseEpisode(int index)
{
    const int id = m_episodes->itemData(index).toInt();
    m_session.setEpisode(id == 0 ? std::nullopt : std::optional(id));
}

void VisitPanel::showVisit()
{
    m_filling = true;
    const bool isOpen = m_session.patientId() != 0;
    const PatientRecord &record = m_session.record();
    m_name->say(isOpen ? safelyShown(QString::fromStdString(record.name)) : tr("No patient"));
    QString person = isOpen ? bornWords(record.born) : tr("Choose one, or begin a record");
    if (!record.mark.empty())
        person += tr(" - %1", "mark of a patient").arg(QString::fromStdString(record.mark));
    m_person->say(person);
    m_record->setEnabled(isOpen);
    m_newVisit->setEnabled(isOpen);
    m_visitRow->setVisible(isOpen);
    readVisits();
    showActs();

    m_episodes->clear();
    m_episodes->addItem(tr("About no complaint of the record"), 0);
    for (const PatientComplaint &complaint : record.complaints)
        if (!complaint.closed || complaint.id == m_session.visit().episode())
            m_episodes->addItem(tr("About: %1").arg(QString::fromStdString(complaint.text)), complaint.id);
    m_episodes->setCurrentIndex(std::max(0, m_episodes->findData(m_session.visit().episode().value_or(0))));
    m_episodes->setVisible(m_episodes->count() > 1);

    QStringList lines;
    for (const std::string &caution : m_session.visit().cautions)
        lines << QString::fromStdString(caution);
    fill(*m_cautions, lines.join(QLatin1Char('\n')));
    m_filling = false;
    showComplaint();
}

void VisitPanel::fill(QPlainTextEdit &edit, const QString &text)
{
    if (edit.toPlainText() != text)
        edit.setPlainText(text);
    edit.setReadOnly(m_session.isReadOnly() || m_session.patientId() == 0);
}

void VisitPanel::showComplaint()
{
    m_filling = true;
    fill(*m_complaint, QString::fromStdString(m_session.visit().complaint()));
    m_filling = false;
}

void VisitPanel::showSelection()
{
    m_count->setText(tr("Findings (%1)").arg(m_model.rowCount()));
    m_filling = true;
    const int row = m_session.currentFinding();
    if (row >= 0)
        m_list->setCurrentIndex(m_model.index(row));
    else
        m_list->selectionModel()->clear();
    m_filling = false;
    m_list->doItemsLayout(); // a row may have got more lines
}

} // namespace raphe
