#include "core/document/LetterChanges.h"

#include "core/document/LetterWords.h"
#include "core/treatment/Retest.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace raphe {

namespace {

constexpr std::size_t mostLines = 10; // our choice, no source

QString tr(const char *text)
{
    return QCoreApplication::translate("LetterChanges", text);
}

QString q(const std::string &text)
{
    return QString::fromStdString(text);
}

// Without capitals: the side word stands in a sentence.
QString nameOf(const RetestItem &item, const Atlas &atlas)
{
    return q(item.kind == MomentKind::Finding && !item.isPain() ? atlas.spoken({StructureId{item.id}, item.side})
                                                                : inSentence(item.name, item.side));
}

// No error is published for it. What was read in two ways has no verdict on a change at all.
bool isOfUnknownError(const RetestPair &pair)
{
    if (pair.change)
        return pair.change->beyond == Beyond::Unknown;
    const QString verdict = q(pair.verdict);
    return pair.before == pair.now || (verdict.contains(q(pair.before)) && verdict.contains(q(pair.now)));
}

// 'tenderness (insertion) 3, now 1'; 'familiar pain, now no pain'.
QString pairInWords(const RetestPair &pair)
{
    //: %1: what it was before; %2: what it is now
    QString values = tr(QT_TRANSLATE_NOOP("LetterChanges", "%1, now %2")).arg(q(pair.before), q(pair.now));
    const QString quality = q(pair.quality);
    if (quality.isEmpty() || q(pair.before).endsWith(quality) || q(pair.now).endsWith(quality))
        return values;
    const QString spot = quality.section(QStringLiteral(", "), 1);
    const QString name = spot.isEmpty()
        ? quality
        //: %1: tenderness or the like; %2: the spot
        : tr(QT_TRANSLATE_NOOP("LetterChanges", "%1 (%2)")).arg(quality.section(QStringLiteral(", "), 0, 0), spot);
    return name + QLatin1Char(' ') + values;
}

} // namespace

std::vector<std::string> changeLines(const Visit &visit, const Examination &examination, const Atlas &atlas)
{
    std::vector<std::string> beyond;
    std::vector<std::string> others;
    std::vector<std::pair<RetestItem, QStringList>> unknown;
    for (const RetestPair &pair : retestPairs(visit, examination, atlas)) {
        if (isOfUnknownError(pair)) {
            auto same = std::find_if(unknown.begin(), unknown.end(), [&](const auto &group) { return group.first == pair.item; });
            if (same == unknown.end())
                same = unknown.insert(unknown.end(), {pair.item, {}});
            same->second << pairInWords(pair);
            continue;
        }
        const bool isBeyond = pair.change && pair.change->beyond == Beyond::Beyond;
        const QString quality = pair.quality.empty() ? QString() : QStringLiteral(", ") + q(pair.quality);
        (isBeyond ? beyond : others)
            //: %1: what was examined again; %2 and %3: in words or numbers; %4: what is made of it
            .push_back(
                tr(QT_TRANSLATE_NOOP("LetterChanges", "%1: before %2, now %3; %4"))
                    .arg(nameOf(pair.item, atlas) + quality, q(pair.before), q(pair.now), q(withShortSources(pair.verdict)))
                    .toStdString());
    }
    std::vector<std::string> out = std::move(beyond);
    out.insert(out.end(), others.begin(), others.end());
    for (const auto &group : unknown)
        //: %1: what was examined again; %2: what of it, before and now
        out.push_back(tr(QT_TRANSLATE_NOOP("LetterChanges", "%1: %2; error unknown"))
                          .arg(nameOf(group.first, atlas), group.second.join(QStringLiteral("; ")))
                          .toStdString());
    out = capped(std::move(out), mostLines);
    if (out.empty())
        return out;
    std::vector<std::string> left;
    for (const RetestItem &item : notRetested(visit, examination, atlas))
        left.push_back(nameOf(item, atlas).toStdString());
    if (!left.empty())
        //: %1: places, movements and tests
        out.push_back(tr(QT_TRANSLATE_NOOP("LetterChanges", "Not examined again: %1"))
                          .arg(q(inOneLine(capped(std::move(left), mostLines))))
                          .toStdString());
    return out;
}

} // namespace raphe
