#include "app/raphe/record/RecordPage.h"

#include "app/raphe/Style.h"
#include "app/raphe/record/TextLine.h"

#include <QApplication>
#include <QGridLayout>
#include <QLabel>

#include <algorithm>

namespace raphe {

namespace {

constexpr int nameWidth = 140; // pixels
constexpr int pageWidth = 760; // at most: longer lines are hard to read

} // namespace

RecordPage::RecordPage(QWidget *parent) : QScrollArea(parent)
{
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::NoFocus);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto *page = new QWidget;
    page->setMaximumWidth(pageWidth);
    m_grid = new QGridLayout(page);
    m_grid->setContentsMargins(4, 8, 12, 8);
    m_grid->setHorizontalSpacing(12);
    m_grid->setVerticalSpacing(10);
    m_grid->setColumnMinimumWidth(0, nameWidth);
    m_grid->setColumnStretch(1, 1);
    setWidget(page);
    m_focusWatch = connect(qApp, &QApplication::focusChanged, this, [this](QWidget *, QWidget *now) {
        if (now && widget()->isAncestorOf(now))
            ensureWidgetVisible(now, 0, touchTarget);
    });
}

void RecordPage::add(const QString &name, QWidget *field)
{
    const int row = m_grid->rowCount();
    if (!name.isEmpty()) {
        auto *label = new QLabel(name);
        label->setWordWrap(true);
        label->setFixedWidth(nameWidth);
        label->setMinimumHeight(touchTarget);
        m_grid->addWidget(label, row, 0, Qt::AlignTop);
    }
    m_grid->addWidget(field, row, 1);
    hear(field);
}

void RecordPage::addWide(QWidget *wide)
{
    m_grid->addWidget(wide, m_grid->rowCount(), 0, 1, 2);
    hear(wide);
}

void RecordPage::hear(QWidget *field)
{
    if (auto *heard = qobject_cast<RecordField *>(field))
        connect(heard, &RecordField::edited, this, &RecordPage::edited);
}

void RecordPage::close()
{
    m_grid->setRowStretch(m_grid->rowCount(), 1);
}

int RecordPage::mistakesShown() const
{
    const auto fields = widget()->findChildren<RecordField *>();
    return static_cast<int>(
        std::count_if(fields.begin(), fields.end(), [](const RecordField *field) { return field->showsMistake(); }));
}

std::optional<Mistake> RecordPage::insist()
{
    std::optional<Mistake> first;
    const auto fields = widget()->findChildren<RecordField *>(); // in the order of the page: they were made in it
    for (RecordField *field : fields) {
        const auto mistake = field->mistake();
        if (!mistake)
            continue;
        field->insist();
        if (!first)
            first = mistake;
    }
    return first;
}

bool RecordPage::isChanged() const
{
    const auto lines = widget()->findChildren<TextLine *>();
    const auto blocks = widget()->findChildren<TextBlock *>();
    return std::any_of(lines.begin(), lines.end(), [](const TextLine *line) { return line->isChanged(); })
        || std::any_of(blocks.begin(), blocks.end(), [](const TextBlock *block) { return block->isChanged(); });
}

} // namespace raphe
