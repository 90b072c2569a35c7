#include "core/document/FindingWords.h"

#include <QCoreApplication>
#include <QStringList>

namespace raphe {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("FindingWords", text);
}

bool tender(const Finding &f)
{
    return f.tendernessGrade() > 0;
}
bool restricted(const Finding &f)
{
    return f.restrictionGrade() > 0;
}

} // namespace

MarkKind markKindOf(const Finding &f)
{
    if (f.isUnable())
        return MarkKind::Unable;
    if (tender(f) && restricted(f))
        return MarkKind::TenderAndRestricted;
    if (tender(f))
        return MarkKind::Tender;
    if (restricted(f))
        return MarkKind::Restricted;
    return f.isClear() ? MarkKind::Clear : MarkKind::Noted;
}

namespace {

QString endFeelInWords(EndFeel feel)
{
    switch (feel) {
    case EndFeel::Soft: return tr(QT_TRANSLATE_NOOP("FindingWords", "soft"));
    case EndFeel::Firm: return tr(QT_TRANSLATE_NOOP("FindingWords", "firm"));
    case EndFeel::Hard: return tr(QT_TRANSLATE_NOOP("FindingWords", "hard"));
    case EndFeel::Springy: return tr(QT_TRANSLATE_NOOP("FindingWords", "springy"));
    case EndFeel::Empty: return tr(QT_TRANSLATE_NOOP("FindingWords", "empty"));
    case EndFeel::Spasm: return tr(QT_TRANSLATE_NOOP("FindingWords", "spasm"));
    }
    return {};
}

} // namespace

std::string findingInWords(const Atlas &atlas, const Finding &f)
{
    QStringList words;
    if (f.spot)
        words << QString::fromUtf8(wordOf(spotWords, *f.spot).data());
    if (f.at)
        words << tr(QT_TRANSLATE_NOOP("FindingWords", "at %1")).arg(QString::fromStdString(atlas.spoken({*f.at, f.place.side})));
    if (f.tenderness)
        words << tr(QT_TRANSLATE_NOOP("FindingWords", "tenderness %1")).arg(f.tenderness->grade);
    if (f.restriction)
        words << tr(QT_TRANSLATE_NOOP("FindingWords", "restriction %1")).arg(f.restriction->grade);
    if (f.sore)
        words << tr(QT_TRANSLATE_NOOP("FindingWords", "sore, not graded"));
    if (f.stiff)
        words << tr(QT_TRANSLATE_NOOP("FindingWords", "stiff, not graded"));
    if (f.play)
        words << tr(QT_TRANSLATE_NOOP("FindingWords", "joint play %1")).arg(f.play->grade);
    if (f.endFeel)
        //: %1: soft, firm, hard, springy, empty, spasm
        words << tr(QT_TRANSLATE_NOOP("FindingWords", "end feel %1")).arg(endFeelInWords(*f.endFeel));
    if (f.familiar)
        words << tr(QT_TRANSLATE_NOOP("FindingWords", "familiar pain"));
    for (const std::string &texture : f.texture)
        words << QString::fromStdString(texture);
    for (const Place &place : f.refersTo)
        words << tr(QT_TRANSLATE_NOOP("FindingWords", "felt at %1 as well")).arg(QString::fromStdString(atlas.spoken(place)));
    if (f.afterComparing)
        words << tr(QT_TRANSLATE_NOOP("FindingWords", "felt only after comparing"));
    if (f.certain)
        words << tr(QT_TRANSLATE_NOOP("FindingWords", "very sure"));
    if (f.clear.tenderness && f.clear.motion)
        words << tr(QT_TRANSLATE_NOOP("FindingWords", "clear"));
    else if (f.clear.tenderness)
        words << tr(QT_TRANSLATE_NOOP("FindingWords", "clear of tenderness"));
    else if (f.clear.motion)
        words << tr(QT_TRANSLATE_NOOP("FindingWords", "clear in motion"));
    if (f.unable)
        words << tr(QT_TRANSLATE_NOOP("FindingWords", "could not examine: %1")).arg(QString::fromStdString(*f.unable));
    if (!f.note.empty())
        words << QString::fromStdString(f.note);
    return words.join(QStringLiteral(", ")).toStdString();
}

} // namespace raphe
