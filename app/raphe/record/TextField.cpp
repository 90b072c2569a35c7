#include "app/raphe/record/TextField.h"

#include "app/raphe/record/TextLine.h"

#include <QVBoxLayout>

namespace raphe {

TextField::TextField(const QString &name, const QString &needed, QWidget *parent)
    : RecordField(parent), m_line(new TextLine(name)), m_needed(needed)
{
    column().addWidget(m_line);
    setFocusProxy(m_line);
    watch(m_line);
}

void TextField::give(const std::string &text)
{
    const QSignalBlocker quiet(m_line);
    m_line->give(text);
    tell();
}

std::string TextField::value() const
{
    return m_line->value();
}

std::optional<Mistake> TextField::ownMistake() const
{
    if (m_needed.isEmpty() || !m_line->isBlank())
        return std::nullopt;
    return Mistake{m_needed, m_line};
}

TextBlockField::TextBlockField(const QString &name, int lines, QWidget *parent)
    : RecordField(parent), m_block(new TextBlock(name, lines))
{
    column().addWidget(m_block);
    setFocusProxy(m_block);
    watch(m_block);
}

void TextBlockField::give(const std::string &text)
{
    const QSignalBlocker quiet(m_block);
    m_block->give(text);
    tell();
}

std::string TextBlockField::value() const
{
    return m_block->value();
}

} // namespace raphe
