#include "app/raphe/VisitPanel.h"

#include "app/raphe/Style.h"
#include "app/words/ErrorText.h"

#include <QComboBox>
#include <QDate>
#include <QHBoxLayout>
#include <QInputDialog>
#include <QLabel>
#include <QListView>
#include <QLocale>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace raphe {

namespace {

QLabel *heading(const QString &text)
{
    auto *label = new QLabel(text);
    label->setProperty("role", QStringLiteral("head"));
    return label;
}

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

    m_patients = new QComboBox;
    m_patients->setAccessibleName(tr("Patient"));
    auto *addPatient = new QPushButton(tr("New"));
    addPatient->setAccessibleName(tr("New patient"));
    m_visits = new QComboBox;
    m_visits->setAccessibleName(tr("Visit"));
    auto *addVisit = new QPushButton(tr("New"));
    addVisit->setAccessibleName(tr("New visit for this patient"));
    for (QWidget *widget : {static_cast<QWidget *>(m_patients), static_cast<QWidget *>(addPatient),
             static_cast<QWidget *>(m_visits), static_cast<QWidget *>(addVisit)})
        widget->setMinimumHeight(touchTarget);
    const auto addRow = [&](QComboBox *box, QPushButton *button) {
        auto *row = new QHBoxLayout;
        row->addWidget(box, 1);
        row->addWidget(button);
        column->addLayout(row);
    };
    column->addWidget(heading(tr("Patient and visit")));
    addRow(m_patients, addPatient);
    addRow(m_visits, addVisit);

    m_complaint = smallText(tr("Complaint, in the patient's words"), tr("What brings the patient, in their words"), 3);
    column->addWidget(heading(tr("Complaint")));
    column->addWidget(m_complaint);
    m_cautions =
        smallText(tr("Cautions, one a line"), tr("What must be respected, one a line: blood thinner, pregnancy, implant ..."), 3);
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

    connect(m_patients, &QComboBox::activated, this, [this] {
        readVisits();
        openChosenVisit();
    });
    connect(m_visits, &QComboBox::activated, this, &VisitPanel::openChosenVisit);
    connect(addPatient, &QPushButton::clicked, this, &VisitPanel::newPatient);
    connect(addVisit, &QPushButton::clicked, this, &VisitPanel::newVisit);
    connect(m_complaint, &QPlainTextEdit::textChanged, this, [this] {
        if (!m_filling)
            m_session.setComplaint(m_complaint->toPlainText().toStdString());
    });
    connect(m_cautions, &QPlainTextEdit::textChanged, this, [this] {
        if (m_filling)
            return;
        std::vector<std::string> lines;
        for (const QString &line : m_cautions->toPlainText().split(QLatin1Char('\n')))
            if (!line.trimmed().isEmpty())
                lines.push_back(line.trimmed().toStdString());
        m_session.setCautions(lines);
    });
    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this, [this](const QModelIndex &now) {
        if (!m_filling && now.isValid())
            m_session.selectFinding(now.row());
    });
    connect(&session, &VisitSession::visitOpened, this, &VisitPanel::showVisit);
    connect(&session, &VisitSession::findingsChanged, this, &VisitPanel::showSelection);
    connect(&session, &VisitSession::aimChanged, this, &VisitPanel::showSelection);
    showSelection();
}

void VisitPanel::setTheme(const Theme &theme)
{
    m_delegate->setTheme(theme);
    m_list->viewport()->update();
}

void VisitPanel::readPractice()
{
    const auto patients = m_session.store().patients();
    if (!patients) {
        Q_EMIT failed(errorText(patients.error()));
        return;
    }
    m_patients->clear();
    for (const PatientRow &row : patients.value())
        m_patients->addItem(QString::fromStdString(row.name), QVariant::fromValue<qlonglong>(row.id));
    const auto open = m_session.store().visit(m_session.visitId());
    if (open)
        m_patients->setCurrentIndex(m_patients->findData(QVariant::fromValue<qlonglong>(open.value().patient)));
    readVisits();
}

void VisitPanel::readVisits()
{
    m_visits->clear();
    if (m_patients->currentIndex() < 0)
        return;
    const auto visits = m_session.store().visits(m_patients->currentData().toLongLong());
    if (!visits) {
        Q_EMIT failed(errorText(visits.error()));
        return;
    }
    for (const VisitRow &row : visits.value()) {
        const QDate date = QDate::fromString(QString::fromStdString(row.date), Qt::ISODate);
        m_visits->addItem(tr("Visit of %1").arg(QLocale().toString(date, QStringLiteral("d MMMM yyyy"))),
            QVariant::fromValue<qlonglong>(row.id));
    }
    if (const int open = m_visits->findData(QVariant::fromValue<qlonglong>(m_session.visitId())); open >= 0)
        m_visits->setCurrentIndex(open);
}

void VisitPanel::openChosenVisit()
{
    if (m_visits->currentIndex() < 0) { // a patient without a visit yet
        newVisit();
        return;
    }
    const qlonglong id = m_visits->currentData().toLongLong();
    if (id == m_session.visitId())
        return;
    if (const auto opened = m_session.open(id); !opened)
        Q_EMIT failed(errorText(opened.error()));
}

void VisitPanel::newPatient()
{
    bool ok = false;
    const QString name = QInputDialog::getText(this, tr("New patient"), tr("Name"), QLineEdit::Normal, {}, &ok).trimmed();
    if (!ok || name.isEmpty())
        return;
    const auto id = m_session.store().addPatient(name.toStdString(), {});
    if (!id) {
        Q_EMIT failed(errorText(id.error()));
        return;
    }
    readPractice();
    m_patients->setCurrentIndex(m_patients->findData(QVariant::fromValue<qlonglong>(id.value())));
    readVisits();
    newVisit();
}

void VisitPanel::newVisit()
{
    if (m_patients->currentIndex() < 0)
        return;
    const auto id = m_session.startVisit(m_patients->currentData().toLongLong());
    if (!id) {
        Q_EMIT failed(errorText(id.error()));
        return;
    }
    if (const auto opened = m_session.open(id.value()); !opened)
        Q_EMIT failed(errorText(opened.error()));
}

void VisitPanel::showVisit()
{
    readPractice(); // the lists always name the visit that is open
    m_filling = true;
    m_complaint->setPlainText(QString::fromStdString(m_session.visit().complaint));
    QStringList lines;
    for (const std::string &caution : m_session.visit().cautions)
        lines << QString::fromStdString(caution);
    m_cautions->setPlainText(lines.join(QLatin1Char('\n')));
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
