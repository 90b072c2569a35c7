#include "app/raphe/practice/TreatmentTab.h"

#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/practice/FormParts.h"
#include "app/raphe/practice/OwnTechniqueDialog.h"
#include "core/plan/PlanWords.h"

#include <QDoubleSpinBox>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace raphe {

namespace {

constexpr double minute = 60; // seconds
constexpr double longestMinutes = Technique::longest / minute;

// The fields in the order of the form.
constexpr std::array reservedFields{
    &ReservedTimes::greeting, &ReservedTimes::undressing, &ReservedTimes::retest, &ReservedTimes::rising};

// One that no technique has.
std::string newId(const std::vector<OwnTechnique> &own)
{
    for (std::size_t i = 1;; ++i) {
        std::string id = "own-" + std::to_string(i);
        if (std::none_of(own.begin(), own.end(), [&](const OwnTechnique &t) { return t.id == id; }))
            return id;
    }
}

} // namespace

TreatmentTab::TreatmentTab(const TreatmentSettings &settings, const Techniques &techniques, QWidget *parent)
    : QWidget(parent),
      m_techniques(techniques),
      m_own(settings.techniques),
      m_list(new QListWidget),
      m_change(pushButton(tr("Change ..."))),
      m_remove(pushButton(tr("Remove")))
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 12, 0, 0);
    column->setSpacing(12);
    column->addWidget(heading(tr("Kept free in every plan")));
    const std::array names{tr("Greeting"), tr("Undressing"), tr("Retest"), tr("Rising slowly")};
    const ReservedTimes reserved = settings.reserved.value_or(techniques.times.reserved);
    auto *times = new QGridLayout;
    times->setHorizontalSpacing(12);
    times->setVerticalSpacing(8);
    for (std::size_t i = 0; i < m_minutes.size(); ++i) {
        m_minutes[i] = new QDoubleSpinBox;
        m_minutes[i]->setRange(0, longestMinutes);
        m_minutes[i]->setDecimals(1);
        m_minutes[i]->setSingleStep(0.5);
        m_minutes[i]->setSuffix(tr(" min", "after a number of minutes"));
        m_minutes[i]->setValue(reserved.*reservedFields[i] / minute);
        times->addLayout(labelled(names[i], m_minutes[i]), static_cast<int>(i) / 2, static_cast<int>(i) % 2);
    }
    column->addLayout(times);
    column->addWidget(heading(tr("Techniques of your own")));
    column->addWidget(hint(tr("Each is worked like a technique of the program, with its cautions, consent and scope of practice, "
                              "under your name and for your time.")));
    m_list->setAccessibleName(tr("Techniques of your own"));
    m_list->setStyleSheet(QStringLiteral("QListView { padding: 3px; }"));
    m_list->setMinimumHeight(3 * touchTarget);
    column->addWidget(m_list, 1);
    QPushButton *add = pushButton(tr("Add ..."));
    auto *row = new QHBoxLayout;
    row->setSpacing(8);
    for (QPushButton *button : {add, m_change, m_remove})
        row->addWidget(button);
    row->addStretch(1);
    column->addLayout(row);
    for (const OwnTechnique &own : m_own) {
        static_cast<void>(own);
        m_list->addItem(QString());
        showOwn(m_list->count() - 1);
    }
    connect(add, &QPushButton::clicked, this, &TreatmentTab::add);
    connect(m_change, &QPushButton::clicked, this, &TreatmentTab::change);
    connect(m_list, &QListWidget::itemDoubleClicked, this, &TreatmentTab::change);
    connect(m_remove, &QPushButton::clicked, this, &TreatmentTab::remove);
    connect(m_list, &QListWidget::currentRowChanged, this, &TreatmentTab::showChoice);
    add->setEnabled(!m_techniques.all.empty());
    m_list->setCurrentRow(0);
    showChoice();
}

TreatmentSettings TreatmentTab::settings() const
{
    ReservedTimes reserved;
    for (std::size_t i = 0; i < m_minutes.size(); ++i)
        reserved.*reservedFields[i] = static_cast<int>(std::lround(m_minutes[i]->value() * minute));
    return {reserved == m_techniques.times.reserved ? std::nullopt : std::optional(reserved), m_own};
}

void TreatmentTab::showOwn(int row)
{
    const OwnTechnique &own = m_own[static_cast<std::size_t>(row)];
    const Technique *like = m_techniques.find(own.like);
    QListWidgetItem *item = m_list->item(row);
    item->setText(tr("%1, %2, like %3", "name, time, another technique")
                      .arg(QString::fromStdString(own.name), QString::fromStdString(minutesInWords(own.seconds)),
                          like ? QString::fromStdString(like->name) : tr("one that is no longer there")));
    item->setSizeHint({0, touchTarget});
}

void TreatmentTab::showChoice()
{
    m_change->setEnabled(m_list->currentRow() >= 0 && !m_techniques.all.empty());
    m_remove->setEnabled(m_list->currentRow() >= 0);
}

void TreatmentTab::add()
{
    OwnTechnique fresh;
    fresh.id = newId(m_own);
    auto *dialog = new OwnTechniqueDialog(fresh, m_techniques, this);
    connect(dialog, &QDialog::accepted, this, [this, dialog] {
        m_own.push_back(dialog->technique());
        m_list->addItem(QString());
        showOwn(m_list->count() - 1);
        m_list->setCurrentRow(m_list->count() - 1);
    });
    dialog->open();
}

void TreatmentTab::change()
{
    const int row = m_list->currentRow();
    if (row < 0 || m_techniques.all.empty())
        return;
    auto *dialog = new OwnTechniqueDialog(m_own[static_cast<std::size_t>(row)], m_techniques, this);
    connect(dialog, &QDialog::accepted, this, [this, dialog, row] {
        m_own[static_cast<std::size_t>(row)] = dialog->technique();
        showOwn(row);
    });
    dialog->open();
}

void TreatmentTab::remove()
{
    const int row = m_list->currentRow();
    m_own.erase(m_own.begin() + row);
    delete m_list->takeItem(row);
}

} // namespace raphe
