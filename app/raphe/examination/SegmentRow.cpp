#include "app/raphe/examination/SegmentRow.h"

#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/intake/ChoiceRow.h"
#include "app/raphe/practice/FormParts.h"
#include "core/examination/Barred.h"

#include <QComboBox>
#include <QEvent>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace raphe {

namespace {

enum Motion { MovesFreely, IsStiff };

} // namespace

SegmentRow::SegmentRow(VisitSession &session, StructureId joint) : SheetRow(session), m_joint(std::move(joint)) { }

SegmentRow::Cell SegmentRow::makeCell(const Place &place)
{
    const QString name = QString::fromStdString(m_session.knowledge().atlas->spoken(place));
    Cell cell;
    cell.place = place;
    cell.box = new QWidget;
    auto *lines = new QVBoxLayout(cell.box);
    lines->setContentsMargins(0, 4, 6, 4);
    lines->setSpacing(4);
    auto *first = new QHBoxLayout;
    first->setSpacing(6);
    if (place.side == Side::Midline)
        first->addWidget(hint(loud(place.side)));
    cell.play = ChoiceRow::ofNumbers(tr("%1: joint play").arg(name), JointPlay::highest);
    cell.play->setTips({tr("0: fused"), tr("1: considerably too little"), tr("2: slightly too little"), tr("3: normal"),
        tr("4: slightly too much"), tr("5: considerably too much"), tr("6: unstable")});
    first->addWidget(cell.play);
    cell.motion = new ChoiceRow(tr("%1: motion").arg(name), {tr("Clear"), tr("Stiff")});
    first->addWidget(cell.motion);
    first->addStretch(1);
    lines->addLayout(first);
    auto *second = new QHBoxLayout;
    second->setSpacing(6);
    cell.endFeel = new QComboBox;
    cell.endFeel->setAccessibleName(tr("%1: end feel").arg(name));
    cell.endFeel->setMinimumHeight(touchTarget);
    cell.endFeel->setFocusPolicy(Qt::StrongFocus);
    cell.endFeel->installEventFilter(this);
    cell.endFeel->addItems({tr("end feel"), tr("soft"), tr("firm"), tr("hard"), tr("springy"), tr("empty"), tr("spasm")});
    second->addWidget(cell.endFeel);
    const auto addFlag = [&](const QString &text, const QString &about) {
        QPushButton *button = toggleButton(text, tr("%1: %2", "a joint, what is said of it").arg(name, about));
        button->setToolTip(about);
        second->addWidget(button);
        return button;
    };
    cell.afterComparing = addFlag(tr("After comparing"), tr("felt only after comparing with the other side"));
    cell.certain = addFlag(tr("Sure"), tr("very sure of what was felt"));
    second->addStretch(1);
    lines->addLayout(second);
    return cell;
}

void SegmentRow::addTo(QGridLayout &grid)
{
    const Atlas &atlas = *m_session.knowledge().atlas;
    const int line = grid.rowCount();
    grid.addWidget(makeName(QString::fromStdString(atlas.at(m_joint).names.english), {}), line, 0);
    const std::vector<Side> there = atlas.sides(atlas.at(m_joint));
    const bool isPaired = std::find(there.begin(), there.end(), Side::Right) != there.end();
    for (const Side side : sidesOf(isPaired))
        m_cells.push_back(makeCell({m_joint, side}));
    for (std::size_t i = 0; i < m_cells.size(); ++i) {
        const Cell &cell = m_cells[i];
        addBox(grid, line, cell.place.side, cell.box);
        const auto hear = [this, i] { take(m_cells[i]); };
        connect(cell.play, &ChoiceRow::chosen, this, hear);
        connect(cell.motion, &ChoiceRow::chosen, this, hear);
        connect(cell.endFeel, &QComboBox::activated, this, hear);
        connect(cell.afterComparing, &QPushButton::clicked, this, hear);
        connect(cell.certain, &QPushButton::clicked, this, hear);
    }
    refresh();
}

// Turning the wheel scrolls the sheet and chooses nothing on its way.
bool SegmentRow::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() != QEvent::Wheel)
        return SheetRow::eventFilter(watched, event);
    event->ignore();
    return true;
}

// What hands found there otherwise stays: soreness, where it is felt, a graded restriction.
void SegmentRow::take(const Cell &cell)
{
    if (isUnread(*cell.play))
        return;
    const Finding *before = m_session.findingAt(cell.place);
    Finding f = before ? *before : Finding{};
    f.place = cell.place;
    f.unable.reset();
    const auto play = cell.play->value();
    f.play = play ? std::optional(JointPlay{*play}) : std::nullopt;
    const bool isClear = cell.motion->value() == MovesFreely && (!f.play || f.play->grade == JointPlay::normal);
    f.clear.motion = isClear;
    f.stiff = cell.motion->value() == IsStiff && !(f.restriction && f.restriction->grade > 0);
    if (isClear || (f.stiff && f.restriction))
        f.restriction.reset();
    const int feel = cell.endFeel->currentIndex();
    f.endFeel = feel > 0 ? std::optional(static_cast<EndFeel>(feel - 1)) : std::nullopt;
    f.certain = cell.certain->isChecked() && f.saysOfMotion();
    f.afterComparing = cell.afterComparing->isChecked() && f.saysOfMotion();
    if (f.saysAnything() || !(before && before->isUnable())) // nothing said does not take 'could not' away
        m_session.record(f);
    refresh(); // what cannot stand together goes back
}

void SegmentRow::refresh()
{
    for (const Cell &cell : m_cells) {
        const Finding *f = m_session.findingAt(cell.place);
        const bool isThere = f && !f->isUnable();
        cell.play->give(isThere && f->play ? std::optional(f->play->grade) : std::nullopt);
        cell.motion->give(!isThere          ? std::nullopt
                : f->clear.motion           ? std::optional<int>(MovesFreely)
                : f->restrictionGrade() > 0 ? std::optional<int>(IsStiff)
                                            : std::nullopt);
        cell.endFeel->setCurrentIndex(isThere && f->endFeel ? static_cast<int>(*f->endFeel) + 1 : 0);
        const bool saysOfMotion = isThere && f->saysOfMotion();
        for (QPushButton *flag : {cell.afterComparing, cell.certain})
            flag->setEnabled(saysOfMotion);
        cell.afterComparing->setChecked(isThere && f->afterComparing);
        cell.certain->setChecked(isThere && f->certain);
    }
}

std::vector<CautionVerdict> SegmentRow::verdictsAt(const Cautions &cautions, Side side) const
{
    return verdictsOnPlay(*m_session.knowledge().atlas, cautions, m_joint, side);
}

} // namespace raphe
