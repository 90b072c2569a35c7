#include "app/raphe/intake/patient/PlacePage.h"

#include "app/raphe/WrappedLabel.h"
#include "app/raphe/intake/patient/SaidBack.h"
#include "app/raphe/practice/FormParts.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QPushButton>
#include <QScrollArea>

#include <cmath>

namespace raphe {

namespace {

constexpr int placeWordsWidth = 620; // pixels at scale 1

} // namespace

PlacePage::PlacePage(const PatientWords &words, const Knowledge &knowledge, const Theme &theme)
    : PatientPage(words, "side-title"),
      m_knowledge(knowledge),
      m_board(new PainBoard(knowledge)),
      m_side(new QWidget),
      m_said(nullptr),
      m_ask(nullptr),
      m_yes(largeButton(words.onButton("side-yes"))),
      m_again(largeButton(words.onButton("side-no"))),
      m_other(largeButton(words.onButton("side-other")))
{
    m_board->setTheme(theme);
    m_board->setReadOnly(true);
    m_board->setFocusPolicy(Qt::NoFocus);
    m_board->setAttribute(Qt::WA_TransparentForMouseEvents);
    auto *row = new QHBoxLayout;
    row->addWidget(m_board, 1);
    auto *column = new QVBoxLayout(m_side);
    column->setContentsMargins(0, 0, 0, 0);
    auto *box = new QWidget;
    auto *text = new QVBoxLayout(box);
    text->setContentsMargins(0, 0, 0, 0);
    m_said = tellLarge(text);
    m_ask = tell({}, text);
    text->addStretch(1);
    column->addWidget(scrolled(box), 1);
    for (QPushButton *button : {m_yes, m_again, m_other})
        column->addWidget(button);
    row->addWidget(m_side);
    this->column().addLayout(row, 1);
    connect(m_yes, &QPushButton::clicked, this, &PatientPage::onward);
    connect(m_again, &QPushButton::clicked, this, [this] { Q_EMIT againWanted(patch()); });
    connect(m_other, &QPushButton::clicked, this, [this] { Q_EMIT otherSideWanted(patch()); });
}

void PlacePage::give(const PatientAnswers &answers, int patch)
{
    PatientPage::give(answers, patch);
    if (patch < 0 || patch >= static_cast<int>(answers.pain.size()))
        return;
    const PainPatch &painted = answers.pain[static_cast<std::size_t>(patch)];
    m_board->setViews({{painted.view, isWhole(painted.view) ? painted.facing : Side::Right}});
    m_board->setPatches({painted});
    const QStringList sentences = saidBack(words(), m_knowledge, painted);
    const bool isOnBody = !sentences.isEmpty();
    m_said->say(isOnBody ? sentences.join(QLatin1Char('\n')) : say("side-beside"));
    m_ask->say(say("side-ask"));
    m_ask->setVisible(isOnBody);
    m_yes->setEnabled(isOnBody);
    m_other->setEnabled(isOnBody);
    m_board->setAccessibleName(m_said->text());
    m_yes->setAccessibleDescription(m_said->text() + QLatin1Char('\n') + m_ask->text());
    QAccessibleEvent spoken(m_said, QAccessible::Alert);
    QAccessible::updateAccessibility(&spoken);
}

QWidget *PlacePage::firstField() const
{
    return m_yes->isEnabled() ? m_yes : m_again;
}

void PlacePage::setScale(double scale)
{
    PatientPage::setScale(scale);
    m_side->setFixedWidth(static_cast<int>(std::lround(placeWordsWidth * scale)));
}

QString PlacePage::said() const
{
    return m_said->text();
}

} // namespace raphe
