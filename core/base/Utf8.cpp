#include "core/base/Utf8.h"

#include <QList>
#include <QString>
#include <QStringDecoder>

#include <algorithm>

namespace raphe {

bool isUtf8(std::string_view text)
{
    QStringDecoder decoder(QStringDecoder::Utf8, QStringDecoder::Flag::Stateless);
    const QString decoded = decoder(QByteArrayView(text.data(), static_cast<qsizetype>(text.size())));
    return !decoder.hasError();
}

std::size_t characterCount(std::string_view text)
{
    return static_cast<std::size_t>(
        std::count_if(text.begin(), text.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }));
}

bool saysSomething(std::string_view text)
{
    const auto letters = QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size())).toUcs4();
    return std::any_of(letters.begin(), letters.end(), [](uint c) { return QChar::isLetterOrNumber(c); });
}

} // namespace raphe
