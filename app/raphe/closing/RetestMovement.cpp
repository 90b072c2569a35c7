#include "app/raphe/closing/RetestMovement.h"

#include "app/raphe/Style.h"
#include "app/raphe/closing/ValueScale.h"
#include "app/raphe/intake/ChoiceRow.h"
#include "app/raphe/practice/FormParts.h"

#include <QHBoxLayout>
#include <QLineEdit>

#include <algorithm>
#include <tuple>

namespace raphe {

namespace {

enum Pain { None, Hurts, FamiliarPain };

} // namespace

RetestMovement::RetestMovement(VisitSession &session, const RetestItem &item) : RetestRow(session, item)
{
    const Movement *movement = session.examination().findMovement(item.id);
    for (const Measure &measure : session.visit().measures)
        if (movement && measure.movement == item.id && measure.side == item.side)
            make(measure, *movement);
    if (m_all.empty())
        addQuiet(tr("Nothing was written down of it before: there is nothing to compare with."));
}

void RetestMovement::make(const Measure &before, const Movement &movement)
{
    Again again;
    again.before = before;
    QStringList how;
    if (before.mode)
        how << (*before.mode == MoveMode::Active ? tr("the patient alone") : tr("moved by your hands"));
    if (before.device == Device::Eye)
        how << tr("by eye, as before");
    else if (before.device)
        how << tr("with the %1, as before").arg(QString::fromStdString(std::string(wordOf(deviceWords, *before.device))));
    const QString unit = movement.unit == Unit::Degrees ? tr("degrees") : tr("mm");
    const QString name = QString::fromStdString(item().name);
    if (before.value) {
        auto *box = new QWidget;
        auto *row = new QHBoxLayout(box);
        row->setContentsMargins(0, 0, 0, 0);
        again.scale = new ValueScale(tr("%1, %2, on a scale", "a movement, its unit").arg(name, unit),
            static_cast<int>(movement.least), static_cast<int>(movement.furthest));
        again.value = new QLineEdit;
        again.value->setAccessibleName(tr("%1, %2", "a movement, its unit").arg(name, unit));
        again.value->setPlaceholderText(unit);
        again.value->setToolTip(tr("A number from %1 to %2").arg(movement.least).arg(movement.furthest));
        again.value->setMinimumHeight(touchTarget);
        again.value->setFixedWidth(92);
        row->addWidget(again.scale, 1);
        row->addWidget(again.value);
        add(box, how.join(QStringLiteral(", ")));
    }
    again.pain = new ChoiceRow(tr("%1: pain").arg(name), {tr("No pain"), tr("Hurts"), tr("Familiar")});
    add(again.pain, before.value ? QString() : how.join(QStringLiteral(", ")));
    m_all.push_back(again);
    connect(again.pain, &ChoiceRow::chosen, this, [this, again] { take(again); });
    if (!again.value)
        return;
    connect(again.value, &QLineEdit::editingFinished, this, [this, again] { take(again); });
    connect(again.scale, &ValueScale::pointedAt, this, [this, again](int value) {
        again.value->setText(QString::number(value));
        take(again);
    });
}

const Measure *RetestMovement::now(const Measure &before) const
{
    const auto &all = m_session.visit().retested.measures;
    const auto it = std::find_if(all.begin(), all.end(), [&](const Measure &m) {
        return std::tie(m.movement, m.side, m.mode) == std::tie(before.movement, before.side, before.mode);
    });
    return it == all.end() ? nullptr : &*it;
}

// Whole only when all is answered that was answered before: what nobody asked again is no 'no'.
void RetestMovement::take(const Again &again)
{
    Measure measure;
    measure.movement = again.before.movement;
    measure.side = again.before.side;
    measure.mode = again.before.mode;
    bool isWhole = again.pain->value().has_value();
    if (again.value) {
        bool isNumber = false;
        const double number = again.value->text().trimmed().replace(QLatin1Char(','), QLatin1Char('.')).toDouble(&isNumber);
        const Movement *movement = m_session.examination().findMovement(measure.movement);
        isNumber = isNumber && number >= movement->least && number <= movement->furthest;
        setWrong(again.value, !isNumber && !again.value->text().isEmpty());
        isWhole = isNumber && (isWhole || !again.before.bringsPain());
        measure.value = number;
        measure.device = again.before.device;
    }
    measure.hurts = again.pain->value() == Hurts;
    measure.familiar = again.pain->value() == FamiliarPain;
    Retested all = m_session.visit().retested;
    std::erase_if(all.measures, [&](const Measure &m) {
        return std::tie(m.movement, m.side, m.mode) == std::tie(measure.movement, measure.side, measure.mode);
    });
    if (isWhole)
        all.measures.push_back(measure);
    m_session.setRetested(all);
}

void RetestMovement::showEntry()
{
    for (const Again &again : m_all) {
        const Measure *measure = now(again.before);
        if (!measure)
            continue; // what is half answered stays
        again.pain->give(measure->familiar ? FamiliarPain
                : measure->hurts           ? Hurts
                : again.pain->value()      ? std::optional<int>(None)
                                           : std::nullopt);
        if (again.value && measure->value) {
            again.value->setText(QString::number(*measure->value));
            again.scale->give(measure->value);
        }
    }
}

} // namespace raphe
