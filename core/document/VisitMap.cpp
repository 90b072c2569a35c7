#include "core/document/VisitMap.h"

#include "core/anatomy/Atlas.h"
#include "core/safety/Warnings.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <array>

namespace raphe {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("VisitMap", text);
}

bool tender(const Finding &f)
{
    return f.tendernessGrade() > 0;
}
bool restricted(const Finding &f)
{
    return f.restrictionGrade() > 0;
}

// An emergency is never settled at the visit; another sign is, once the treating team knows of it or it was explained.
bool isForOthers(const WarningSign &sign, const WarningAnswer &answer)
{
    return sign.level == WarningLevel::EmergencyNow || !answer.decided
        || (*answer.decided != Decision::InCare && *answer.decided != Decision::Explained);
}

QString howSoon(WarningLevel level)
{
    switch (level) {
    case WarningLevel::EmergencyNow:
        return tr(QT_TRANSLATE_NOOP("VisitMap", "Get medical help at once. Nothing was treated at this visit."));
    case WarningLevel::SameDay: return tr(QT_TRANSLATE_NOOP("VisitMap", "Let a doctor see this today."));
    case WarningLevel::BeforeTreating:
        return tr(QT_TRANSLATE_NOOP("VisitMap", "Let a doctor see this before it is treated here."));
    }
    return {};
}

std::vector<std::string> warningLines(const WarningSigns &signs, const Visit &visit)
{
    std::vector<std::pair<const WarningSign *, std::string>> lines;
    for (const WarningAnswer &answer : visit.warnings) {
        const WarningSign *sign = answer.isThere ? signs.find(answer.sign) : nullptr;
        if (!sign || sign->alone || answer.isMoved || !isForOthers(*sign, answer))
            continue;
        const QString what = sign->byPractitioner
            //: %1: a warning sign
            ? tr(QT_TRANSLATE_NOOP("VisitMap", "We saw: %1.")).arg(QString::fromStdString(sign->name))
            //: %1: a question
            : tr(QT_TRANSLATE_NOOP("VisitMap", "We asked: '%1' You said yes.")).arg(QString::fromStdString(sign->ask));
        //: %1: how soon somebody must see it; %2: what it is
        lines.emplace_back(sign, tr(QT_TRANSLATE_NOOP("VisitMap", "%1 %2")).arg(howSoon(sign->level), what).toStdString());
    }
    std::stable_sort(lines.begin(), lines.end(), [](const auto &a, const auto &b) { return a.first->level > b.first->level; });
    std::vector<std::string> out;
    out.reserve(lines.size());
    for (auto &[sign, line] : lines)
        out.push_back(std::move(line));
    return out;
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
    case EndFeel::Soft: return tr(QT_TRANSLATE_NOOP("VisitMap", "soft"));
    case EndFeel::Firm: return tr(QT_TRANSLATE_NOOP("VisitMap", "firm"));
    case EndFeel::Hard: return tr(QT_TRANSLATE_NOOP("VisitMap", "hard"));
    case EndFeel::Springy: return tr(QT_TRANSLATE_NOOP("VisitMap", "springy"));
    case EndFeel::Empty: return tr(QT_TRANSLATE_NOOP("VisitMap", "empty"));
    case EndFeel::Spasm: return tr(QT_TRANSLATE_NOOP("VisitMap", "spasm"));
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
        words << tr(QT_TRANSLATE_NOOP("VisitMap", "at %1")).arg(QString::fromStdString(atlas.spoken({*f.at, f.place.side})));
    if (f.tenderness)
        words << tr(QT_TRANSLATE_NOOP("VisitMap", "tenderness %1")).arg(f.tenderness->grade);
    if (f.restriction)
        words << tr(QT_TRANSLATE_NOOP("VisitMap", "restriction %1")).arg(f.restriction->grade);
    if (f.sore)
        words << tr(QT_TRANSLATE_NOOP("VisitMap", "sore, not graded"));
    if (f.stiff)
        words << tr(QT_TRANSLATE_NOOP("VisitMap", "stiff, not graded"));
    if (f.play)
        words << tr(QT_TRANSLATE_NOOP("VisitMap", "joint play %1")).arg(f.play->grade);
    if (f.endFeel)
        //: %1: soft, firm, hard, springy, empty, spasm
        words << tr(QT_TRANSLATE_NOOP("VisitMap", "end feel %1")).arg(endFeelInWords(*f.endFeel));
    if (f.familiar)
        words << tr(QT_TRANSLATE_NOOP("VisitMap", "familiar pain"));
    for (const std::string &texture : f.texture)
        words << QString::fromStdString(texture);
    for (const Place &place : f.refersTo)
        words << tr(QT_TRANSLATE_NOOP("VisitMap", "felt at %1 as well")).arg(QString::fromStdString(atlas.spoken(place)));
    if (f.afterComparing)
        words << tr(QT_TRANSLATE_NOOP("VisitMap", "felt only after comparing"));
    if (f.certain)
        words << tr(QT_TRANSLATE_NOOP("VisitMap", "very sure"));
    if (f.clear.tenderness && f.clear.motion)
        words << tr(QT_TRANSLATE_NOOP("VisitMap", "clear"));
    else if (f.clear.tenderness)
        words << tr(QT_TRANSLATE_NOOP("VisitMap", "clear of tenderness"));
    else if (f.clear.motion)
        words << tr(QT_TRANSLATE_NOOP("VisitMap", "clear in motion"));
    if (f.unable)
        words << tr(QT_TRANSLATE_NOOP("VisitMap", "could not examine: %1")).arg(QString::fromStdString(*f.unable));
    if (!f.note.empty())
        words << QString::fromStdString(f.note);
    return words.join(QStringLiteral(", ")).toStdString();
}

std::string findingInPlainWords(const Finding &f)
{
    static constexpr std::array sore{QT_TRANSLATE_NOOP("VisitMap", "not sore"), QT_TRANSLATE_NOOP("VisitMap", "a little sore"),
        QT_TRANSLATE_NOOP("VisitMap", "sore"), QT_TRANSLATE_NOOP("VisitMap", "very sore"),
        QT_TRANSLATE_NOOP("VisitMap", "sore to the lightest touch")};
    static constexpr std::array stiff{QT_TRANSLATE_NOOP("VisitMap", "moves freely"),
        QT_TRANSLATE_NOOP("VisitMap", "a little stiff"), QT_TRANSLATE_NOOP("VisitMap", "stiff"),
        QT_TRANSLATE_NOOP("VisitMap", "hardly moves")};
    QStringList words;
    if (f.tenderness || f.sore)
        words << tr(sore[static_cast<std::size_t>(f.tendernessGrade())]);
    if (f.restriction || f.stiff)
        words << tr(stiff[static_cast<std::size_t>(f.restrictionGrade())]);
    if (f.familiar)
        words << tr(QT_TRANSLATE_NOOP("VisitMap", "this is the pain you know"));
    if (f.clear.tenderness && f.clear.motion)
        words << tr(QT_TRANSLATE_NOOP("VisitMap", "checked: nothing found"));
    else if (f.clear.tenderness)
        words << tr(QT_TRANSLATE_NOOP("VisitMap", "checked: not sore"));
    else if (f.clear.motion)
        words << tr(QT_TRANSLATE_NOOP("VisitMap", "checked: moves well"));
    if (f.unable)
        words << tr(QT_TRANSLATE_NOOP("VisitMap", "not checked today"));
    if (words.isEmpty())
        words << tr(QT_TRANSLATE_NOOP("VisitMap", "noted"));
    return words.join(QStringLiteral("; ")).toStdString();
}

VisitMap visitMap(const SafetyRules &rules, const Atlas &atlas, const Body &body, const Visit &visit, const std::string &language)
{
    VisitMap map;
    map.patient = visit.patient ? visit.patient->name : std::string{};
    map.date = visit.date;
    map.practitioner = visit.practitioner;
    map.complaint = visit.complaint();
    map.warnings = warningLines(rules.signs(), visit);
    map.cautions = visit.cautions;
    int number = 0;
    for (const Finding &f : visit.findings) {
        ++number;
        const int grade = std::max(f.tendernessGrade(), f.restrictionGrade());
        map.marks.push_back(
            {number, markKindOf(f), grade, f.familiar, f.place, markPointOnPage(atlas, body, f.place, f.spot, f.at)});
        map.lines.push_back({number, atlas.plain(f.place, language), findingInPlainWords(f)});
    }
    return map;
}

} // namespace raphe
