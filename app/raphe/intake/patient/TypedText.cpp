#include "app/raphe/intake/patient/TypedText.h"

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

} // namespace

QString safelyShown(const QString &typed)
{
    if (typed.isEmpty())
        return {};
    QString out = typed;
    for (QChar &c : out)
        if (turnsDirection(c) || (c.category() == QChar::Other_Control && c != QLatin1Char('\n') && c != QLatin1Char('\t')))
            c = QChar::ReplacementCharacter;
    return QChar(firstStrongIsolate) + out + QChar(popIsolate);
}

bool hasHiddenDirection(const QString &typed)
{
    return std::any_of(typed.begin(), typed.end(), turnsDirection);
}

} // namespace raphe
