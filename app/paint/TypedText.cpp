#include "app/paint/TypedText.h"

#include <algorithm>

namespace raphe {

namespace {

constexpr char16_t firstStrongIsolate = 0x2068;
constexpr char16_t popIsolate = 0x2069;

// Marks, embeddings, overrides and isolates of the Unicode bidirectional algorithm (UAX #9, section 2).
bool turnsDirection(QChar c)
{
    const char16_t u = c.unicode();
    return u == 0x061C || u == 0x200E || u == 0x200F || (u >= 0x202A && u <= 0x202E) || (u >= 0x2066 && u <= 0x2069);
}

bool runsRightToLeft(QChar c)
{
    return c.direction() == QChar::DirR || c.direction() == QChar::DirAL || c.isSurrogate();
}

bool isControl(QChar c)
{
    return c.category() == QChar::Other_Control && c != QLatin1Char('\n') && c != QLatin1Char('\t');
}

} // namespace

QString safelyShown(const QString &typed)
{
    const auto isOdd = [](QChar c) { return turnsDirection(c) || isControl(c) || runsRightToLeft(c); };
    if (std::none_of(typed.begin(), typed.end(), isOdd))
        return typed; // it can turn nothing
    QString out = typed;
    for (QChar &c : out)
        if (turnsDirection(c) || isControl(c))
            c = QChar::ReplacementCharacter;
    return QChar(firstStrongIsolate) + out + QChar(popIsolate);
}

bool hasHiddenDirection(const QString &typed)
{
    return std::any_of(typed.begin(), typed.end(), turnsDirection);
}

} // namespace raphe
