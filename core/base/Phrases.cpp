#include "core/base/Phrases.h"

#include <QDate>
#include <QLocale>
#include <QTranslator>

namespace raphe {

Phrases::Phrases(Language language) : m_language(language)
{
    if (language == Language::English)
        return;
    auto translator = std::make_shared<QTranslator>();
    if (translator->load(QStringLiteral(":/translations/raphe_%1.qm").arg(QString::fromStdString(code()))))
        m_translator = std::move(translator);
}

bool Phrases::has(const char *context, const std::string &english) const
{
    return m_language == Language::English || (m_translator && !m_translator->translate(context, english.c_str()).isEmpty());
}

std::string Phrases::say(const char *context, const std::string &english) const
{
    const QString there = m_translator ? m_translator->translate(context, english.c_str()) : QString();
    return there.isEmpty() ? english : there.toStdString();
}

std::string Phrases::longDate(const std::string &iso) const
{
    const QDate date = QDate::fromString(QString::fromStdString(iso), Qt::ISODate);
    const QLocale locale(m_language == Language::German ? QLocale::German
            : m_language == Language::Spanish           ? QLocale::Spanish
                                                        : QLocale::English);
    QString format = locale.dateFormat(QLocale::LongFormat);
    format.remove(QStringLiteral("dddd, ")).remove(QStringLiteral("dddd "));
    if (m_language == Language::English)
        format = QStringLiteral("d MMMM yyyy"); // understood on both sides of the ocean
    return locale.toString(date, format).toStdString();
}

} // namespace raphe
