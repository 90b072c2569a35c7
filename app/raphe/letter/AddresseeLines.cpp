#include "app/raphe/letter/AddresseeLines.h"

#include "app/raphe/practice/FormParts.h"
#include "app/raphe/record/TextLine.h"
#include "core/base/Utf8.h"

#include <QCoreApplication>
#include <QVBoxLayout>

namespace raphe {

namespace {

QString words(const char *text)
{
    return QCoreApplication::translate("AddresseeLines", text);
}

bool isOverlong(const std::string &text)
{
    return characterCount(text) > Addressee::longestLine;
}

} // namespace

AddresseeLines::AddresseeLines()
    : m_name(new TextLine(words(QT_TRANSLATE_NOOP("AddresseeLines", "Name")))),
      m_role(new TextLine(words(QT_TRANSLATE_NOOP("AddresseeLines", "Role")))),
      m_address(new TextBlock(words(QT_TRANSLATE_NOOP("AddresseeLines", "Place and address")), 3))
{
    m_name->setPlaceholderText(words(QT_TRANSLATE_NOOP("AddresseeLines", "Name of the person or the department")));
    m_role->setPlaceholderText(words(QT_TRANSLATE_NOOP("AddresseeLines", "Role, as 'general practice'")));
    m_address->setPlaceholderText(words(QT_TRANSLATE_NOOP("AddresseeLines", "Place and address, line by line")));
}

void AddresseeLines::addTo(QVBoxLayout &column) const
{
    column.addWidget(m_name);
    column.addWidget(m_role);
    column.addWidget(m_address);
}

void AddresseeLines::give(const Addressee &addressee)
{
    m_name->give(addressee.name);
    m_role->give(addressee.role);
    std::string lines;
    for (const std::string &line : addressee.lines)
        lines += (lines.empty() ? "" : "\n") + line;
    m_address->give(lines);
}

Addressee AddresseeLines::value() const
{
    return {m_name->value(), m_role->value(), linesIn(QString::fromStdString(m_address->value()))};
}

bool AddresseeLines::isBlank() const
{
    return m_name->isBlank() && m_role->isBlank() && m_address->isBlank();
}

void AddresseeLines::setReadOnly(bool isReadOnly)
{
    m_name->setReadOnly(isReadOnly);
    m_role->setReadOnly(isReadOnly);
    m_address->setReadOnly(isReadOnly);
}

std::optional<Mistake> AddresseeLines::mistake() const
{
    const Addressee typed = value();
    if (!isBlank() && typed.name.empty() && typed.role.empty())
        return Mistake{words(QT_TRANSLATE_NOOP("AddresseeLines", "Write a name or a role above the address.")), m_name};
    const QString tooLong =
        words(QT_TRANSLATE_NOOP("AddresseeLines", "A line has %1 characters at most.")).arg(Addressee::longestLine);
    if (isOverlong(typed.name))
        return Mistake{tooLong, m_name};
    if (isOverlong(typed.role))
        return Mistake{tooLong, m_role};
    if (typed.lines.size() > Addressee::mostLines)
        return Mistake{words(QT_TRANSLATE_NOOP("AddresseeLines",
                                 "An address has %1 lines at most: more do not stand in the window of "
                                 "an envelope."))
                           .arg(Addressee::mostLines),
            m_address};
    for (const std::string &line : typed.lines)
        if (isOverlong(line))
            return Mistake{tooLong, m_address};
    return std::nullopt;
}

QString addresseeName(const Addressee &addressee)
{
    QStringList parts;
    for (const std::string &part : {addressee.name, addressee.role})
        if (!part.empty())
            parts << QString::fromStdString(part);
    return parts.join(QStringLiteral(", "));
}

} // namespace raphe
