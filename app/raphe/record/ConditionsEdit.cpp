#include "app/raphe/record/ConditionsEdit.h"

#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/record/TextLine.h"
#include "core/record/PatientSearch.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QListWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace raphe {

namespace {

constexpr int offeredAtOnce = 4; // rows; the rest scrolls

QString nameOf(const SafetyRules &rules, const std::string &id)
{
    if (const ConditionKind *kind = rules.findCondition(id))
        return QString::fromStdString(kind->name);
    return ConditionsEdit::tr("%1 (not in this program's list)", "the id of a condition").arg(QString::fromStdString(id));
}

} // namespace

ConditionRow::ConditionRow(const QString &id, const QString &name, QWidget *parent)
    : ListRow(name, parent), m_id(id.toStdString()), m_note(new TextLine(tr("Note about %1", "a condition").arg(name)))
{
    auto *words = new WrappedLabel(name);
    words->setTextFormat(Qt::PlainText);
    words->setContentsMargins(2, 0, 0, 0);
    m_note->setPlaceholderText(tr("Note"));
    line().addWidget(words, 1, Qt::AlignVCenter);
    line().addWidget(m_note, 1, Qt::AlignTop);
    watch(m_note);
    setStops({m_note});
}

void ConditionRow::give(const std::string &note)
{
    const QSignalBlocker quiet(m_note);
    m_note->give(note);
}

StandingCondition ConditionRow::value() const
{
    return {m_id, m_note->value()};
}

ConditionsEdit::ConditionsEdit(const SafetyRules &rules, QWidget *parent)
    : RecordField(parent), m_rules(rules), m_typed(new TextLine(tr("Add a standing condition"))), m_offered(new QListWidget)
{
    m_typed->setPlaceholderText(tr("Type part of its name, then Enter"));
    column().addWidget(m_typed);
    m_offered->setAccessibleName(tr("Conditions with this in their name"));
    m_offered->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_offered->setTextElideMode(Qt::ElideRight);
    m_offered->hide();
    column().addWidget(m_offered);
    setFocusProxy(m_typed);
    watch(m_typed);
    connect(m_typed, &QLineEdit::textChanged, this, &ConditionsEdit::offer);
    connect(m_offered, &QListWidget::clicked, this, [this](const QModelIndex &index) { take(index.row()); });
    tell();
}

void ConditionsEdit::give(const std::vector<StandingCondition> &conditions)
{
    for (const StandingCondition &condition : conditions)
        addRow(condition);
    tell();
}

std::vector<StandingCondition> ConditionsEdit::value() const
{
    std::vector<StandingCondition> out;
    for (const ConditionRow *row : m_rows)
        out.push_back(row->value());
    return out;
}

bool ConditionsEdit::has(const std::string &id) const
{
    return std::any_of(m_rows.begin(), m_rows.end(), [&](const ConditionRow *row) { return row->value().id == id; });
}

void ConditionsEdit::add(const std::string &id)
{
    if (!has(id))
        addRow({id, {}});
    tell();
}

ConditionRow *ConditionsEdit::addRow(const StandingCondition &condition)
{
    auto *row = new ConditionRow(QString::fromStdString(condition.id), nameOf(m_rules, condition.id));
    row->give(condition.note);
    below().addWidget(row);
    QWidget *before = m_rows.empty() ? m_offered : m_rows.back()->stops().back();
    for (QWidget *stop : row->stops()) {
        setTabOrder(before, stop);
        before = stop;
    }
    m_rows.push_back(row);
    connect(row, &ListRow::removed, this, [this, row] { remove(row); });
    connect(row, &RecordField::edited, this, &ConditionsEdit::tell);
    return row;
}

void ConditionsEdit::remove(ConditionRow *row)
{
    m_rows.erase(std::find(m_rows.begin(), m_rows.end(), row));
    m_typed->setFocus();
    row->hide();
    row->setParent(nullptr); // it is no field of the record any more
    row->deleteLater(); // its button is still at work
    offer();
    tell();
}

void ConditionsEdit::offer()
{
    m_offered->clear();
    if (!m_typed->isBlank()) {
        const PatientQuery query(m_typed->text().toStdString());
        for (const ConditionKind &kind : m_rules.conditions()) {
            if (has(kind.id) || !query.matches(foldedWords(kind.name)))
                continue;
            auto *item = new QListWidgetItem(QString::fromStdString(kind.name), m_offered);
            item->setData(Qt::UserRole, QString::fromStdString(kind.id));
            item->setToolTip(item->text());
            item->setSizeHint({0, touchTarget});
        }
    }
    const int count = m_offered->count();
    m_offered->setCurrentRow(0);
    m_offered->setFixedHeight(std::min(count, offeredAtOnce) * touchTarget + 2 * m_offered->frameWidth() + 2);
    m_offered->setVisible(count > 0);
}

void ConditionsEdit::take(int row)
{
    const QListWidgetItem *item = m_offered->item(row);
    if (!item)
        return;
    ConditionRow *taken = addRow({item->data(Qt::UserRole).toString().toStdString(), {}});
    m_typed->clear(); // and nothing is offered any more
    taken->enter();
}

void ConditionsEdit::keyPressEvent(QKeyEvent *event)
{
    const bool isReturn = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    const bool isTyping = m_typed->hasFocus() || m_offered->hasFocus();
    if (isReturn && !(event->modifiers() & Qt::ControlModifier) && !isTyping) {
        m_typed->setFocus(); // after a note, the next condition
    } else if (isReturn && !(event->modifiers() & Qt::ControlModifier) && !m_typed->isBlank()) {
        take(m_offered->currentRow());
    } else if (isTyping && (event->key() == Qt::Key_Up || event->key() == Qt::Key_Down)) {
        const int step = event->key() == Qt::Key_Up ? -1 : 1;
        m_offered->setCurrentRow(std::clamp(m_offered->currentRow() + step, 0, std::max(0, m_offered->count() - 1)));
        tell(); // which one Enter would take
    } else {
        RecordField::keyPressEvent(event);
    }
}

std::optional<Mistake> ConditionsEdit::ownMistake() const
{
    if (m_typed->isBlank())
        return std::nullopt;
    if (m_offered->count() == 0)
        return Mistake{tr("No further condition has this in its name. Try fewer letters, or clear this."), m_typed};
    return Mistake{tr("Enter takes '%1'. Take one of the list, or clear this.").arg(m_offered->currentItem()->text()), m_typed};
}

QString ConditionsEdit::understood() const
{
    return m_rows.empty() ? tr("None written down.") : QString();
}

} // namespace raphe
