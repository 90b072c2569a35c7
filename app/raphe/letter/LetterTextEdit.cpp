#include "app/raphe/letter/LetterTextEdit.h"

#include "app/paint/TypedText.h"
#include "app/raphe/practice/FormParts.h"
#include "app/raphe/record/TextLine.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace raphe {

namespace {

constexpr int mostLines = 14; // beyond them it scrolls
constexpr int charactersOfALine = 68; // about, in the dialog as it opens

int linesOf(const std::string &text)
{
    int lines = 0;
    for (const QString &line : QString::fromStdString(text).split(QLatin1Char('\n')))
        lines += 1 + static_cast<int>(line.size()) / charactersOfALine;
    return lines;
}

} // namespace

LetterTextEdit::LetterTextEdit(const QString &name, const LetterText &text, int least, QWidget *parent)
    : QWidget(parent),
      m_block(new TextBlock(name, std::clamp(std::max(linesOf(text.text), linesOf(text.composed)), least, mostLines))),
      m_state(new QLabel(tr("edited"))),
      m_reset(pushButton(tr("As composed")))
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    auto *row = new QHBoxLayout;
    QLabel *head = heading(name);
    head->setTextFormat(Qt::PlainText);
    row->addWidget(head);
    m_state->setProperty("role", QStringLiteral("quiet"));
    row->addWidget(m_state);
    row->addStretch(1);
    m_reset->setAccessibleName(tr("%1: as composed", "part of a letter").arg(name));
    m_reset->setAutoDefault(false);
    QSizePolicy policy = m_reset->sizePolicy();
    policy.setRetainSizeWhenHidden(true); // so that nothing moves under the hand
    m_reset->setSizePolicy(policy);
    column->addLayout(row);
    column->addWidget(m_block);
    row->addWidget(m_reset);
    QWidget::setTabOrder(m_block, m_reset);
    connect(m_block, &QPlainTextEdit::textChanged, this, [this] {
        tell();
        Q_EMIT edited();
    });
    connect(m_reset, &QPushButton::clicked, this, [this] {
        m_block->setFocus(); // the button goes
        give({m_composed, m_composed});
        Q_EMIT edited();
    });
    give(text);
}

QString LetterTextEdit::name() const
{
    return m_block->accessibleName();
}

std::vector<QWidget *> LetterTextEdit::stops() const
{
    return {m_block, m_reset};
}

void LetterTextEdit::give(const LetterText &text)
{
    const QSignalBlocker quiet(m_block);
    m_composed = text.composed;
    m_block->give(text.text);
    tell();
}

LetterText LetterTextEdit::value() const
{
    return {m_block->value(), m_composed};
}

void LetterTextEdit::setReadOnly(bool isReadOnly)
{
    m_isReadOnly = isReadOnly;
    m_block->setReadOnly(isReadOnly);
    tell();
}

void LetterTextEdit::tell()
{
    const bool isChanged = value().isEdited() && !m_composed.empty();
    m_state->setVisible(isChanged);
    m_reset->setVisible(isChanged && !m_isReadOnly);
    m_reset->setToolTip(isChanged ? QStringLiteral("<p style='white-space: pre-wrap'>%1</p>")
                                        .arg(safelyShown(QString::fromStdString(m_composed)).toHtmlEscaped())
                                  : QString());
}

} // namespace raphe
