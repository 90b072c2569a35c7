#include "app/raphe/record/OptionalDateEdit.h"

#include "app/raphe/patients/PersonWords.h"
#include "app/raphe/record/TextLine.h"
#include "core/record/CsvDate.h"

#include <QVBoxLayout>

#include <algorithm>

namespace raphe {

namespace {

// Some write 5. 3. 1980.
std::string withoutSpaces(const QString &typed)
{
    QString text = typed;
    text.erase(std::remove_if(text.begin(), text.end(), [](QChar c) { return c.isSpace(); }), text.end());
    return text.toStdString();
}

QString mistakeIn(const QString &typed)
{
    const std::string cell = withoutSpaces(typed);
    if (readCsvDate(cell, {}).orderNeeded) {
        const auto first = readCsvDate(cell, DateOrder::DayFirst).iso;
        const auto second = readCsvDate(cell, DateOrder::MonthFirst).iso;
        if (first && second)
            return OptionalDateEdit::tr("Is it %1 or %2? Write %3 or %4.", "each: a date in words, then in digits")
                .arg(dayWords(first.value()), dayWords(second.value()), QString::fromStdString(first.value()),
                    QString::fromStdString(second.value()));
    }
    return OptionalDateEdit::tr("This is no day of the calendar. Write it as 1980-03-05 or as 5.3.1980.");
}

} // namespace

OptionalDateEdit::OptionalDateEdit(const QString &name, Words words, QWidget *parent)
    : RecordField(parent), m_line(new TextLine(name)), m_words(std::move(words))
{
    m_line->setPlaceholderText(tr("1980-03-05 or 5.3.1980", "the two ways to write a date"));
    column().addWidget(m_line);
    setFocusProxy(m_line);
    watch(m_line);
}

void OptionalDateEdit::give(const std::string &isoDate)
{
    const QSignalBlocker quiet(m_line);
    m_line->give(isoDate);
    tell();
}

std::string OptionalDateEdit::value() const
{
    if (!m_line->isChanged())
        return m_line->value();
    const auto read = readCsvDate(withoutSpaces(m_line->text()), {}).iso;
    return read ? read.value() : std::string();
}

bool OptionalDateEdit::isBlank() const
{
    return m_line->isBlank();
}

std::optional<Mistake> OptionalDateEdit::ownMistake() const
{
    if (m_line->isBlank() || !value().empty())
        return std::nullopt;
    return Mistake{mistakeIn(m_line->text()), m_line};
}

QString OptionalDateEdit::understood() const
{
    return m_line->isBlank() ? QString() : m_words(value());
}

} // namespace raphe
