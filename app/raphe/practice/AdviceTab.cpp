#include "app/raphe/practice/AdviceTab.h"

#include "app/raphe/WrappedLabel.h"
#include "app/raphe/practice/FormParts.h"
#include "app/raphe/record/TextLine.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

namespace raphe {

AdviceRow::AdviceRow(QWidget *parent)
    : ListRow(tr("advice"), parent),
      m_title(new TextLine(tr("Title"))),
      m_text(new TextBlock(tr("What to do, and when to stop"), 3))
{
    m_title->setPlaceholderText(m_title->accessibleName());
    m_text->setPlaceholderText(m_text->accessibleName());
    auto *both = new QVBoxLayout;
    both->addWidget(m_title);
    both->addWidget(m_text);
    line().addLayout(both, 1);
    watch(m_title);
    watch(m_text);
    setStops({m_title, m_text});
}

void AdviceRow::give(const OwnAdvice &advice)
{
    const QSignalBlocker quietTitle(m_title);
    const QSignalBlocker quietText(m_text);
    m_id = advice.id;
    m_title->give(advice.title);
    m_text->give(advice.text);
    tellButton();
}

OwnAdvice AdviceRow::value() const
{
    return {m_id, m_title->value(), m_text->value()};
}

bool AdviceRow::isBlank() const
{
    return m_title->isBlank() && m_text->isBlank();
}

std::optional<Mistake> AdviceRow::ownMistake() const
{
    if (!isBlank() && m_title->isBlank())
        return Mistake{tr("Give this advice a title."), m_title};
    if (!isBlank() && m_text->isBlank())
        return Mistake{tr("Write what to do, and when to stop."), m_text};
    return std::nullopt;
}

AdviceTab::AdviceTab(const std::vector<OwnAdvice> &advice, QWidget *parent)
    : QWidget(parent), m_rows(new RowsOf<AdviceRow>([] { return new AdviceRow; }))
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 12, 0, 0);
    column->setSpacing(12);
    column->addWidget(heading(tr("Advice for home, in your words")));
    column->addWidget(
        hint(tr("It stands before the advice of the program at the close of a visit. A wording that was kept for an item "
                "of the program takes its place; taken out here, the program's own comes back.")));
    column->addWidget(m_rows);
    column->addStretch(1);
    m_rows->give(advice);
}

std::optional<Mistake> AdviceTab::mistake() const
{
    for (const ListRow *row : m_rows->rows())
        if (auto found = row->mistake())
            return found;
    return m_rows->mistake();
}

std::vector<OwnAdvice> AdviceTab::advice() const
{
    std::vector<OwnAdvice> out = m_rows->value();
    for (OwnAdvice &own : out)
        if (own.id.empty())
            own.id = newAdviceId(out);
    return out;
}

} // namespace raphe
