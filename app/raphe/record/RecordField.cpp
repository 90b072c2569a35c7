#include "app/raphe/record/RecordField.h"

#include "app/raphe/Style.h"
#include "app/raphe/WrappedLabel.h"
#include "app/raphe/practice/FormParts.h"
#include "app/raphe/record/TextLine.h"
#include "core/record/PatientRecord.h"

#include <QApplication>
#include <QLocale>
#include <QPushButton>
#include <QVBoxLayout>

namespace raphe {

namespace {

// Code points, as the record counts them. Surrogates are the halves of one.
qsizetype characters(const QString &text)
{
    return std::count_if(text.begin(), text.end(), [](QChar c) { return !c.isLowSurrogate(); });
}

bool isTooLong(const QString &text)
{
    return characters(text) > static_cast<qsizetype>(PatientRecord::longestText);
}

Mistake tooLong(const QString &text, QWidget *at)
{
    return {RecordField::tr("This has %1 characters. Shorten it to %2 at most.")
                .arg(QLocale().toString(characters(text)), QLocale().toString(qlonglong{PatientRecord::longestText})),
        at};
}

} // namespace

RecordField::RecordField(QWidget *parent)
    : QWidget(parent), m_column(new QVBoxLayout), m_below(new QVBoxLayout), m_words(new WrappedLabel)
{
    auto *all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->setSpacing(3);
    m_column->setSpacing(6);
    all->addLayout(m_column);
    m_words->setTextFormat(Qt::PlainText);
    m_words->setContentsMargins(2, 0, 0, 0);
    m_words->hide();
    all->addWidget(m_words);
    m_below->setSpacing(6);
    all->addLayout(m_below);
    m_focusWatch = connect(qApp, &QApplication::focusChanged, this, &RecordField::focusMoved);
}

std::optional<Mistake> RecordField::mistake() const
{
    for (TextLine *line : m_lines)
        if (isTooLong(line->text()))
            return tooLong(line->text(), line);
    for (TextBlock *block : m_blocks)
        if (const QString text = block->toPlainText(); isTooLong(text))
            return tooLong(text, block);
    return ownMistake();
}

void RecordField::offerToKeep()
{
    m_keep = pushButton(tr("Keep it as written, to be clarified"));
    m_keep->hide();
    m_below->addWidget(m_keep, 0, Qt::AlignLeft);
    connect(m_keep, &QPushButton::clicked, this, [this] {
        const QString written = asWritten();
        empty();
        m_wasTyped = false;
        m_insists = false;
        Q_EMIT isUnclear(written);
    });
}

void RecordField::insist()
{
    m_insists = true;
    tell();
}

void RecordField::watch(TextLine *line)
{
    m_lines.push_back(line);
    connect(line, &QLineEdit::textChanged, this, &RecordField::typed);
}

void RecordField::watch(TextBlock *block)
{
    m_blocks.push_back(block);
    connect(block, &QPlainTextEdit::textChanged, this, &RecordField::typed);
}

void RecordField::watch(RecordField *inner)
{
    connect(inner, &RecordField::edited, this, &RecordField::tell);
}

void RecordField::typed()
{
    m_wasTyped = true;
    tell();
}

void RecordField::tell()
{
    const auto wrong = mistake();
    m_insists = m_insists && wrong;
    const QString words = !wrong ? understood() : m_insists || m_wasTyped ? wrong->words : QString();
    m_words->setProperty("role", m_insists ? QStringLiteral("head") : QStringLiteral("quiet"));
    // A style sheet of its own: the colour, and that the role is looked at again.
    const Theme theme = themeFor(Appearance::System);
    m_words->setStyleSheet(QStringLiteral("color: %1;").arg((m_insists ? theme.tender : theme.quiet).name()));
    m_words->say(words);
    m_words->setVisible(!words.isEmpty());
    if (m_keep)
        m_keep->setVisible(m_insists);
    for (TextLine *line : m_lines)
        line->setAccessibleDescription(words);
    for (TextBlock *block : m_blocks)
        block->setAccessibleDescription(words);
    Q_EMIT edited();
}

void RecordField::focusMoved(const QWidget *from, const QWidget *to)
{
    if (m_wasTyped && from && isAncestorOf(from) && to && !isAncestorOf(to)) // to none: another window came to the front
        insist();
}

} // namespace raphe
