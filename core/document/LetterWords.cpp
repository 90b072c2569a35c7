#include "core/document/LetterWords.h"

#include "core/examination/RecordWords.h"

#include <QCoreApplication>
#include <QRegularExpression>
#include <QStringList>

namespace raphe {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("LetterWords", text);
}

// 'Kolber 2011', of a citation that has a year.
QString shortSource(const QString &citation)
{
    constexpr qsizetype longFrom = 40; // characters
    static const QRegularExpression year(QStringLiteral("\\b(?:19|20)[0-9]{2}\\b(?:(?=;)|(?!.*\\b(?:19|20)[0-9]{2};))"));
    const auto match = year.match(citation); // that of the volume, where there is one
    if (citation.size() < longFrom || !match.hasMatch())
        return citation;
    return citation.section(QRegularExpression(QStringLiteral("[ ,]")), 0, 0) + QLatin1Char(' ') + match.captured();
}

} // namespace

std::string urgencyInWords(Urgency urgency)
{
    switch (urgency) {
    case Urgency::EmergencyNow: return tr(QT_TRANSLATE_NOOP("LetterWords", "Emergency now")).toStdString();
    case Urgency::SameDay: return tr(QT_TRANSLATE_NOOP("LetterWords", "Same day")).toStdString();
    case Urgency::WithinDays: return tr(QT_TRANSLATE_NOOP("LetterWords", "Within days")).toStdString();
    case Urgency::Routine: return tr(QT_TRANSLATE_NOOP("LetterWords", "Routine")).toStdString();
    case Urgency::Information: break;
    }
    return tr(QT_TRANSLATE_NOOP("LetterWords", "For information")).toStdString();
}

std::string urgencyAsks(Urgency urgency, const std::string &written)
{
    switch (urgency) {
    case Urgency::EmergencyNow: return tr(QT_TRANSLATE_NOOP("LetterWords", "please act at once")).toStdString();
    case Urgency::SameDay:
        return written.empty()
            ? tr(QT_TRANSLATE_NOOP("LetterWords", "please see the patient on the day of this letter")).toStdString()
            //: %1: a date
            : tr(QT_TRANSLATE_NOOP("LetterWords", "please see the patient on %1"))
                  .arg(QString::fromStdString(written))
                  .toStdString();
    case Urgency::WithinDays:
        return tr(QT_TRANSLATE_NOOP("LetterWords", "please see the patient within the next days")).toStdString();
    case Urgency::Routine:
        return tr(QT_TRANSLATE_NOOP("LetterWords", "please see the patient at the next usual appointment")).toStdString();
    case Urgency::Information: break;
    }
    return tr(QT_TRANSLATE_NOOP("LetterWords", "nothing is asked for by a date")).toStdString();
}

std::string letterLimits()
{
    return tr(QT_TRANSLATE_NOOP("LetterWords",
                  "This letter tells what was asked, seen, done and decided; it is not a diagnosis. Assists a trained "
                  "practitioner; follow local law, scope of practice and licensed care."))
        .toStdString();
}

std::string inSentence(const std::string &named, Side side)
{
    const QString head = QString::fromStdString(namedWithSide({}, side));
    const QString text = QString::fromStdString(named);
    if (side == Side::Midline || !text.startsWith(head))
        return named;
    //: %1: a movement, a test or a structure
    return (
        side == Side::Right ? tr(QT_TRANSLATE_NOOP("LetterWords", "right %1")) : tr(QT_TRANSLATE_NOOP("LetterWords", "left %1")))
        .arg(text.mid(head.size()))
        .toStdString();
}

std::string spokenList(const Atlas &atlas, const std::vector<Place> &places)
{
    std::vector<std::string> out;
    out.reserve(places.size());
    for (const Place &place : places)
        out.push_back(atlas.spoken(place));
    return inOneLine(out);
}

std::string withShortSources(const std::string &verdict)
{
    const QString all = QString::fromStdString(verdict);
    QString out;
    QString inside; // of the outermost brackets
    int depth = 0;
    for (const QChar c : all) {
        if (c == QLatin1Char(')') && depth == 1) {
            const qsizetype comma = inside.indexOf(QStringLiteral(", "));
            out += comma < 0 ? inside : inside.left(comma + 2) + shortSource(inside.mid(comma + 2));
            inside.clear();
        }
        depth -= c == QLatin1Char(')') && depth > 0 ? 1 : 0;
        (depth > 0 ? inside : out) += c;
        depth += c == QLatin1Char('(') ? 1 : 0;
    }
    return (out + inside).toStdString();
}

std::vector<std::string> capped(std::vector<std::string> lines, std::size_t most)
{
    if (lines.size() <= most)
        return lines;
    const auto left = static_cast<qulonglong>(lines.size() - most);
    lines.resize(most);
    //: %1: a number
    lines.push_back(tr(QT_TRANSLATE_NOOP("LetterWords", "and %1 more, in the record")).arg(left).toStdString());
    return lines;
}

std::string inOneLine(const std::vector<std::string> &items)
{
    std::string out;
    for (const std::string &item : items)
        out += (out.empty() ? "" : "; ") + item;
    return out;
}

} // namespace raphe
