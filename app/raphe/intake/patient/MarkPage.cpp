#include "app/raphe/intake/patient/MarkPage.h"

#include "app/raphe/WrappedLabel.h"
#include "app/raphe/intake/ChoiceRow.h"
#include "app/raphe/intake/patient/SaidBack.h"
#include "app/raphe/practice/FormParts.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QScrollArea>

#include <algorithm>
#include <cmath>

namespace raphe {

namespace {

constexpr int wordsWidth = 590; // pixels at scale 1

const char *titleOf(MarkPage::Of of)
{
    switch (of) {
    case MarkPage::Of::Front: return "mark-front-title";
    case MarkPage::Of::Back: return "mark-back-title";
    case MarkPage::Of::Sides: break;
    }
    return "mark-sides-title";
}

std::vector<Pane> viewsOf(MarkPage::Of of)
{
    switch (of) {
    case MarkPage::Of::Front: return {{View::Front}};
    case MarkPage::Of::Back: return {{View::Back}};
    case MarkPage::Of::Sides: break;
    }
    return {{View::Side, Side::Right}, {View::Side, Side::Left}};
}

} // namespace

MarkPage::MarkPage(const PatientWords &words, const Knowledge &knowledge, const Theme &theme, Of of)
    : PatientPage(words, titleOf(of)), m_knowledge(knowledge), m_board(new PainBoard(knowledge)), m_side(new QWidget)
{
    m_board->setTheme(theme);
    m_board->setViews(viewsOf(of));
    m_board->setPainter(Painter::Patient);
    m_board->setAccessibleName(title());
    auto *row = new QHBoxLayout;
    row->addWidget(m_board, 1);
    auto *column = new QVBoxLayout(m_side);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(scrolled(makeWords(of)), 1);
    column->addWidget(makeTools(of));
    row->addWidget(m_side);
    this->column().addLayout(row, 1);

    connect(m_board, &PainBoard::changed, this, [this] {
        m_saidNothing = false;
        showTools();
        Q_EMIT changed();
    });
    connect(m_board, &PainBoard::hovered, m_here, &WrappedLabel::say);
    connect(m_board, &PainBoard::refused, m_here, [this] { m_here->say(say("mark-full")); });
    connect(m_board, &PainBoard::brushChanged, this, &MarkPage::showTools);
    showTools();
}

QWidget *MarkPage::makeWords(Of of)
{
    auto *box = new QWidget;
    auto *column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(10);
    const std::vector<const char *> ids = of == Of::Front
        ? std::vector<const char *>{"mark-front-touch", "mark-letters", "mark-front-faces"}
        : of == Of::Back ? std::vector<const char *>{"mark-back-touch", "mark-letters", "mark-back-faces"}
                         : std::vector<const char *>{"mark-sides-touch", "mark-sides-faces", "mark-draw"};
    for (const char *id : ids)
        tell(say(id), column);
    column->addStretch(1);
    return box;
}

QWidget *MarkPage::makeTools(Of of)
{
    auto *box = new QWidget;
    auto *column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    m_here = tell({}, column);
    m_here->setProperty("role", QStringLiteral("head"));
    m_brush = new ChoiceRow(
        say("mark-line"), {words().onButton("mark-thin"), words().onButton("mark-wide"), words().onButton("mark-wider")});
    connect(m_brush, &ChoiceRow::chosen, this, [this] {
        if (m_brush->value())
            m_board->setBrush(PainBoard::brushes[static_cast<std::size_t>(*m_brush->value())]);
        showTools();
    });
    column->addWidget(m_brush);
    auto *row = new QHBoxLayout;
    m_takeBack = largeButton(inTwoLines(words().onButton("mark-take-back")));
    connect(m_takeBack, &QPushButton::clicked, m_board, &PainBoard::undoStroke);
    row->addWidget(m_takeBack);
    m_wipe = largeButton(words().onButton("mark-wipe"));
    m_wipe->setCheckable(true);
    connect(m_wipe, &QPushButton::toggled, m_board, &PainBoard::setErasing);
    row->addWidget(m_wipe);
    column->addLayout(row);
    auto *others = new QHBoxLayout;
    if (of == Of::Back) {
        QPushButton *sides = largeButton(inTwoLines(words().onButton("mark-sides-open")));
        connect(sides, &QPushButton::clicked, this, &MarkPage::sidesWanted);
        others->addWidget(sides);
    }
    m_nothing = largeButton(inTwoLines(words().onButton("mark-nothing")));
    connect(m_nothing, &QPushButton::clicked, this, [this] {
        m_saidNothing = true;
        Q_EMIT onward();
    });
    others->addWidget(m_nothing);
    column->addLayout(others);
    return box;
}

void MarkPage::setScale(double scale)
{
    PatientPage::setScale(scale);
    m_side->setFixedWidth(static_cast<int>(std::lround(wordsWidth * scale)));
}

void MarkPage::showTools()
{
    const auto at = std::find(PainBoard::brushes.begin(), PainBoard::brushes.end(), m_board->brush());
    m_brush->give(static_cast<int>(at - PainBoard::brushes.begin()));
    m_nothing->setEnabled(m_board->patches().empty());
    m_wipe->setEnabled(!m_board->patches().empty());
    if (m_board->patches().empty())
        m_wipe->setChecked(false);
}

bool MarkPage::shows(const PainPatch &patch) const
{
    const auto views = m_board->views();
    return std::any_of(
        views.begin(), views.end(), [&](const Pane &pane) { return canvasOf(pane.view, pane.facing) == canvasOf(patch); });
}

void MarkPage::give(const PatientAnswers &answers, int patch)
{
    PatientPage::give(answers, patch);
    std::vector<PainPatch> mine;
    std::copy_if(
        answers.pain.begin(), answers.pain.end(), std::back_inserter(mine), [this](const PainPatch &p) { return shows(p); });
    if (mine != m_board->patches())
        m_board->setPatches(mine);
    showTools();
}

void MarkPage::take(PatientAnswers &answers) const
{
    std::erase_if(answers.pain, [this](const PainPatch &p) { return shows(p); });
    answers.pain.insert(answers.pain.end(), m_board->patches().begin(), m_board->patches().end());
    std::stable_sort(
        answers.pain.begin(), answers.pain.end(), [](const PainPatch &a, const PainPatch &b) { return rankOf(a) < rankOf(b); });
}

QString MarkPage::answerWords(const PatientAnswers &answers, int) const
{
    QStringList lines;
    for (const PainPatch &patch : answers.pain)
        if (shows(patch))
            lines << placesOf(m_knowledge, patch);
    if (lines.isEmpty() && m_saidNothing)
        return say("mark-nothing");
    return lines.join(QLatin1Char('\n'));
}

void MarkPage::takeOff(const PainPatch &patch)
{
    const auto &patches = m_board->patches();
    const auto at = std::find(patches.begin(), patches.end(), patch);
    if (at == patches.end())
        return;
    m_board->choose(static_cast<int>(at - patches.begin()));
    m_board->removeCurrent();
}

void MarkPage::refuseLast()
{
    m_board->undoStroke();
    m_here->say(say("mark-full"));
}

} // namespace raphe
