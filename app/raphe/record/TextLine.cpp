#include "app/raphe/record/TextLine.h"

#include "app/raphe/Style.h"

#include <QEvent>

#include <cmath>

namespace raphe {

TextLine::TextLine(const QString &name, QWidget *parent) : QLineEdit(parent)
{
    setAccessibleName(name);
    setMinimumHeight(touchTarget);
    setMaxLength(10'000'000); // Qt's own limit would cut what is pasted without a word
}

void TextLine::give(const std::string &text)
{
    m_given = text;
    setText(QString::fromStdString(text));
    m_shown = this->text();
    setCursorPosition(0); // a long text shows its beginning
}

std::string TextLine::value() const
{
    return isChanged() ? text().trimmed().toStdString() : m_given;
}

std::optional<int> TextLine::number() const
{
    bool isNumber = false;
    const int value = text().trimmed().toInt(&isNumber);
    return isNumber ? std::optional(value) : std::nullopt;
}

TextBlock::TextBlock(const QString &name, int lines, QWidget *parent) : QPlainTextEdit(parent), m_lines(lines)
{
    setAccessibleName(name);
    setTabChangesFocus(true);
    fit();
}

void TextBlock::give(const std::string &text)
{
    m_given = text;
    setPlainText(QString::fromStdString(text));
    m_shown = toPlainText();
}

std::string TextBlock::value() const
{
    return isChanged() ? toPlainText().trimmed().toStdString() : m_given;
}

void TextBlock::changeEvent(QEvent *event)
{
    QPlainTextEdit::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange)
        fit();
}

void TextBlock::fit()
{
    constexpr int around = 24; // pixels of frame, padding and the document's margins, as the style sheet has them
    setFixedHeight(static_cast<int>(std::ceil(m_lines * QFontMetricsF(font()).lineSpacing())) + around);
}

} // namespace raphe
