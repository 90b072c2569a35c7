#include "app/raphe/examination/MovementRow.h"

#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/intake/ChoiceRow.h"
#include "app/raphe/practice/FormParts.h"
#include "core/examination/Barred.h"
#include "core/examination/ComparingWords.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace raphe {

namespace {

enum Pain { Hurts, Familiar };

} // namespace

MovementRow::MovementRow(VisitSession &session, const Movement &movement, std::function<Measuring()> measuring)
    : SheetRow(session), m_movement(movement), m_measuring(std::move(measuring))
{
}

MovementRow::Cell MovementRow::makeCell(Side side)
{
    const QString unit = m_movement.unit == Unit::Degrees ? tr("degrees") : tr("mm");
    const QString name = withSide(side, m_movement.name);
    Cell cell;
    cell.side = side;
    cell.box = new QWidget;
    auto *lines = new QVBoxLayout(cell.box);
    lines->setContentsMargins(0, 4, 6, 4);
    lines->setSpacing(4);
    auto *numbers = new QHBoxLayout;
    numbers->setSpacing(4);
    lines->addLayout(numbers);
    if (side == Side::Midline)
        numbers->addWidget(hint(loud(side)));
    const auto addLine = [&](const QString &about, const QString &placeholder, const QString &tip) {
        auto *line = new QLineEdit;
        line->setAccessibleName(tr("%1: %2", "a movement with its side, what is measured").arg(name, about));
        line->setPlaceholderText(placeholder);
        line->setToolTip(tip);
        line->setWhatsThis(tip); // for when the tip has said what is wrong
        line->setMinimumHeight(touchTarget);
        line->setFixedWidth(92);
        line->setMaxLength(8);
        line->installEventFilter(this);
        numbers->addWidget(line, 1);
        return line;
    };
    cell.value = addLine(tr("how far, %1").arg(unit), unit, tr("How far. Letters: P hurts, F familiar, R today's retest"));
    cell.painFrom = addLine(tr("pain from, %1").arg(unit), tr("pain from"), tr("Where pain starts"));
    numbers->addStretch(1);
    auto *row = new QHBoxLayout;
    row->setSpacing(4);
    lines->addLayout(row);
    cell.pain = new ChoiceRow(tr("%1: pain").arg(name), {tr("Hurts"), tr("Familiar")});
    row->addWidget(cell.pain);
    cell.retest = toggleButton(tr("Retest"), tr("%1: today's retest").arg(name));
    cell.retest->setToolTip(tr("Done again before the patient leaves (R in the field of the value)"));
    row->addWidget(cell.retest);
    row->addStretch(1);
    return cell;
}

void MovementRow::addTo(QGridLayout &grid)
{
    const int line = grid.rowCount();
    grid.addWidget(makeName(QString::fromStdString(m_movement.name), QString::fromStdString(m_movement.position)), line, 0, 3, 1);
    const bool isPaired = m_movement.isPaired;
    for (const Side side : sidesOf(isPaired))
        m_cells.push_back(makeCell(side));
    for (std::size_t i = 0; i < m_cells.size(); ++i) {
        const Cell &cell = m_cells[i];
        addBox(grid, line, cell.side, cell.box);
        m_norms.push_back(hint());
        grid.addWidget(m_norms.back(), line + 1, static_cast<int>(i) + 1, 1, isPaired ? 1 : 2);
        for (QLineEdit *edit : {cell.value, cell.painFrom})
            connect(edit, &QLineEdit::editingFinished, this, [this, i] { take(m_cells[i]); });
        connect(cell.pain, &ChoiceRow::chosen, this, [this, i] { take(m_cells[i]); });
        connect(cell.retest, &QPushButton::clicked, this, [this, i] { toggleRetest(m_cells[i]); });
    }
    m_sides = hint();
    grid.addWidget(m_sides, line + 2, 1, 1, 2);
    refresh();
}

Measure MovementRow::started(const Cell &cell) const
{
    if (const Measure *before = m_session.measureOf(m_movement.id, cell.side, m_measuring().mode))
        return *before;
    Measure fresh;
    fresh.movement = m_movement.id;
    fresh.side = cell.side;
    fresh.mode = m_measuring().mode;
    return fresh;
}

// What is being typed stays as it is, and so does what was typed and could not be recorded; a visit that takes nothing shows what
// it holds.
void MovementRow::show(QLineEdit *line, std::optional<double> value) const
{
    if (line->isModified() && (line->hasFocus() || isWrong(line)) && !m_session.isReadOnly())
        return;
    line->setText(value ? QString::number(*value) : QString());
    setWrong(line, false);
}

bool MovementRow::read(QLineEdit *line, std::optional<double> &value) const
{
    const QString text = line->text().trimmed().replace(QLatin1Char(','), QLatin1Char('.'));
    bool isNumber = false;
    const double number = text.toDouble(&isNumber);
    const bool isWrong = !text.isEmpty() && (!isNumber || number < m_movement.least || number > m_movement.furthest);
    setWrong(line, isWrong);
    line->setToolTip(isWrong ? tr("A number from %1 to %2").arg(m_movement.least).arg(m_movement.furthest) : line->whatsThis());
    if (!isWrong)
        value = text.isEmpty() ? std::nullopt : std::optional(number);
    return !isWrong;
}

void MovementRow::take(const Cell &cell)
{
    Measure measure = started(cell); // a number that is wrong leaves the last good one, and the pain is heard all the same
    const bool isMeasured = cell.value->isModified();
    if (read(cell.value, measure.value) && isMeasured)
        measure.device = measure.value ? deviceFor(m_movement, m_measuring().device) : std::nullopt;
    static_cast<void>(read(cell.painFrom, measure.painFrom));
    for (QLineEdit *line : {cell.value, cell.painFrom})
        if (!isWrong(line))
            line->setModified(false);
    const auto pain = cell.pain->value();
    measure.hurts = pain == Hurts;
    measure.familiar = pain == Familiar;
    m_session.record(measure);
}

void MovementRow::toggleRetest(const Cell &cell)
{
    const RetestMark mark{MomentKind::Movement, m_movement.id, cell.side};
    m_session.setRetest(m_session.visit().retest == mark ? std::nullopt : std::optional(mark));
    refresh(); // a button that was refused goes back
}

bool MovementRow::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() != QEvent::KeyPress && event->type() != QEvent::ShortcutOverride)
        return SheetRow::eventFilter(watched, event);
    const auto *key = static_cast<QKeyEvent *>(event);
    const bool isLetter = key->key() >= Qt::Key_A && key->key() <= Qt::Key_Z && !(key->modifiers() & ~Qt::ShiftModifier);
    if (!isLetter)
        return SheetRow::eventFilter(watched, event);
    event->accept(); // no key of the window while a number is typed
    if (event->type() == QEvent::ShortcutOverride)
        return true;
    for (const Cell &cell : m_cells) {
        if (watched != cell.value && watched != cell.painFrom)
            continue;
        if (key->key() == Qt::Key_R) {
            toggleRetest(cell);
        } else if (key->key() == Qt::Key_P || key->key() == Qt::Key_F) {
            const int wanted = key->key() == Qt::Key_P ? Hurts : Familiar;
            cell.pain->give(cell.pain->value() == wanted ? std::nullopt : std::optional(wanted));
            take(cell);
        }
    }
    return true;
}

QString MovementRow::compared(const Cell &cell) const
{
    const Measure *measure = m_session.measureOf(m_movement.id, cell.side, m_measuring().mode);
    if (!measure || !measure->value || m_movement.norms.empty())
        return {};
    return capitalised(
        QString::fromStdString(inWords(m_movement, comparedWithNorm(m_movement, *measure, m_session.reference()))));
}

void MovementRow::refresh()
{
    for (std::size_t i = 0; i < m_cells.size(); ++i) {
        const Cell &cell = m_cells[i];
        const Measure *measure = m_session.measureOf(m_movement.id, cell.side, m_measuring().mode);
        show(cell.value, measure ? measure->value : std::nullopt);
        show(cell.painFrom, measure ? measure->painFrom : std::nullopt);
        cell.pain->give(!measure    ? std::nullopt
                : measure->familiar ? std::optional<int>(Familiar)
                : measure->hurts    ? std::optional<int>(Hurts)
                                    : std::nullopt);
        cell.retest->setChecked(m_session.visit().retest == RetestMark{MomentKind::Movement, m_movement.id, cell.side});
        const QString words = compared(cell);
        m_norms[i]->setVisible(!words.isEmpty());
        m_norms[i]->say(words);
    }
    const auto sides = comparedSides(m_movement, m_session.visit().measures, m_measuring().mode);
    m_sides->setVisible(sides.has_value());
    if (sides)
        m_sides->say(QString::fromStdString(inWords(m_movement, *sides)));
}

std::vector<CautionVerdict> MovementRow::verdictsAt(const Cautions &cautions, Side side) const
{
    return verdictsOn(*m_session.knowledge().atlas, cautions, m_movement, side);
}

} // namespace raphe
