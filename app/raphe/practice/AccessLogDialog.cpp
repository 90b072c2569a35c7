#include "app/raphe/practice/AccessLogDialog.h"

#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/practice/FormParts.h"

#include <QCoreApplication>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>
#include <QTreeView>
#include <QVBoxLayout>

namespace raphe {

namespace {

// PatientNames of patients, those whose records were joined to others too. Each is read once.
class PatientNames {
public:
    explicit PatientNames(const Practice &practice) : m_practice(practice)
    {
        if (const auto patients = practice.patients())
            for (const PatientCard &patient : patients.value())
                m_names[patient.id] = QString::fromStdString(patient.name);
    }

    [[nodiscard]] QString of(std::int64_t patient)
    {
        const auto known = m_names.find(patient);
        if (known != m_names.end())
            return known->second;
        const auto record = m_practice.patient(patient);
        const QString name = record ? QString::fromStdString(record.value().name)
            : record.error().code == ErrorCode::UnknownId
            ? AccessLogDialog::tr("record %1, erased", "a number").arg(patient)
            : AccessLogDialog::tr("record %1, cannot be read", "a number").arg(patient);
        return m_names[patient] = name;
    }

private:
    const Practice &m_practice;
    std::map<std::int64_t, QString> m_names;
};

} // namespace

AccessLogDialog::AccessLogDialog(const Practice &practice, std::optional<std::int64_t> patient, QWidget *parent)
    : QDialog(parent), m_model(!patient), m_typed(new QLineEdit), m_list(new QTreeView), m_count(hint())
{
    setWindowTitle(tr("Who did what"));
    resize(820, 600);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(16, 16, 16, 16);
    column->setSpacing(10);
    m_typed->setMinimumHeight(touchTarget);
    m_typed->setPlaceholderText(tr("Part of a name, an act or a day"));
    m_typed->setAccessibleName(tr("Show only what has this in it"));
    m_typed->installEventFilter(this); // arrow keys go to the list
    column->addWidget(m_typed);

    m_list->setAccessibleName(tr("Who did what, the newest first"));
    m_list->setModel(&m_model);
    m_list->setRootIsDecorated(false);
    m_list->setUniformRowHeights(true);
    m_list->setAlternatingRowColors(true);
    m_list->setAllColumnsShowFocus(true);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setStyleSheet(QStringLiteral(
        "QTreeView { border: 1px solid palette(mid); border-radius: 7px; } QTreeView:focus { border: 2px solid "
        "palette(highlight); }"
        "QTreeView::item { padding: 5px 6px; }"
        "QHeaderView::section { padding: 6px 3px; border: 0; border-bottom: 1px solid palette(mid); background: palette(base); "
        "font-weight: 700; }"));
    m_list->header()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    m_list->header()->setSectionsMovable(false);
    m_list->header()->setStretchLastSection(true);
    column->addWidget(m_list, 1);

    auto *row = new QHBoxLayout;
    row->addWidget(m_count, 1);
    auto *close = pushButton(tr("Close"));
    row->addWidget(close);
    column->addLayout(row);

    connect(m_typed, &QLineEdit::textChanged, this, [this](const QString &typed) {
        m_model.setTyped(typed);
        showCount();
    });
    connect(close, &QPushButton::clicked, this, &QDialog::reject);
    read(practice, patient);
    m_typed->setFocus();
}

void AccessLogDialog::read(const Practice &practice, std::optional<std::int64_t> patient)
{
    const auto accesses = practice.accesses(patient);
    if (!accesses) {
        m_count->say(sentence(accesses.error()));
        return;
    }
    PatientNames names(practice);
    if (patient)
        setWindowTitle(tr("Who did what with the record of %1").arg(names.of(*patient)));
    m_model.setAccesses(accesses.value(), [&](std::int64_t id) { return names.of(id); });
    m_list->setColumnWidth(AccessModel::When, 210);
    m_list->setColumnWidth(AccessModel::Who, 170);
    m_list->setColumnWidth(AccessModel::What, 240);
    showCount();
}

void AccessLogDialog::showCount()
{
    m_list->setCurrentIndex(m_model.index(0, 0));
    m_count->say(m_model.accessCount() == 0 ? tr("Nothing has been done with it yet.")
            : m_model.rowCount() == 0       ? tr("Nothing has this in it. Try fewer letters.")
                                            : tr("%1 of %2").arg(m_model.rowCount()).arg(m_model.accessCount()));
}

bool AccessLogDialog::eventFilter(QObject *watched, QEvent *event)
{
    if (watched == m_typed && event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent *>(event)->key();
        if (key == Qt::Key_Up || key == Qt::Key_Down || key == Qt::Key_PageUp || key == Qt::Key_PageDown) {
            QCoreApplication::sendEvent(m_list, event);
            return true;
        }
        if (key == Qt::Key_Return || key == Qt::Key_Enter)
            return true; // the list has followed already; the dialog stays
    }
    return QDialog::eventFilter(watched, event);
}

} // namespace raphe
