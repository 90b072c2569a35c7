#include "core/document/MapWords.h"

#include "core/document/PatientTexts.h"

#include <QString>
#include <QtGlobal>

#include <array>

namespace raphe {

namespace {

template <std::size_t N> std::string ofGrade(const Phrases &phrases, const std::array<const char *, N> &words, int grade)
{
    return mapText(phrases, words[std::min(static_cast<std::size_t>(std::max(grade, 0)), N - 1)]);
}

} // namespace

std::string mapText(const Phrases &phrases, const char *english, const std::vector<std::pair<std::string, std::string>> &values)
{
    return filled(phrases.say("VisitMap", english), values);
}

std::string plainSide(const Phrases &phrases, Side side)
{
    switch (side) {
    case Side::Left: return mapText(phrases, QT_TRANSLATE_NOOP("VisitMap", "left side"));
    case Side::Right: return mapText(phrases, QT_TRANSLATE_NOOP("VisitMap", "right side"));
    case Side::Midline: break;
    }
    return {};
}

std::string plainPlace(const Phrases &phrases, const Atlas &atlas, const Place &place)
{
    const std::string name = atlas.plainName(place.structure, phrases.code());
    return place.side == Side::Midline
        ? mapText(phrases, QT_TRANSLATE_NOOP("VisitMap", "{place}, in the middle"), {{"place", name}})
        : name + ", " + plainSide(phrases, place.side);
}

std::string plainTenderness(const Phrases &phrases, int grade)
{
    static constexpr std::array words{QT_TRANSLATE_NOOP("VisitMap", "not sore"), QT_TRANSLATE_NOOP("VisitMap", "a bit sore"),
        QT_TRANSLATE_NOOP("VisitMap", "sore"), QT_TRANSLATE_NOOP("VisitMap", "very sore"),
        QT_TRANSLATE_NOOP("VisitMap", "sore to the least touch")};
    return ofGrade(phrases, words, grade);
}

std::string plainRestriction(const Phrases &phrases, int grade)
{
    static constexpr std::array words{QT_TRANSLATE_NOOP("VisitMap", "moves well"),
        QT_TRANSLATE_NOOP("VisitMap", "moves a bit less"), QT_TRANSLATE_NOOP("VisitMap", "does not move with ease"),
        QT_TRANSLATE_NOOP("VisitMap", "hardly moves")};
    return ofGrade(phrases, words, grade);
}

std::string findingInPlainWords(const Phrases &phrases, const Finding &f)
{
    std::string words;
    const auto add = [&](const std::string &word) { words += (words.empty() ? "" : ", ") + word; };
    if (f.tenderness || f.sore)
        add(plainTenderness(phrases, f.tendernessGrade()));
    if (f.restriction || f.stiff)
        add(plainRestriction(phrases, f.restrictionGrade()));
    if (f.clear.tenderness && f.clear.motion)
        add(mapText(phrases, QT_TRANSLATE_NOOP("VisitMap", "checked, nothing found")));
    else if (f.clear.tenderness)
        add(mapText(phrases, QT_TRANSLATE_NOOP("VisitMap", "checked, not sore")));
    else if (f.clear.motion)
        add(mapText(phrases, QT_TRANSLATE_NOOP("VisitMap", "checked, moves well")));
    if (f.unable)
        add(mapText(phrases, QT_TRANSLATE_NOOP("VisitMap", "not checked today")));
    if (words.empty() && !f.familiar)
        add(mapText(phrases, QT_TRANSLATE_NOOP("VisitMap", "noted")));
    std::string out = words.empty() ? std::string() : begun(words) + ".";
    if (f.familiar)
        out += (out.empty() ? "" : " ") + mapText(phrases, QT_TRANSLATE_NOOP("VisitMap", "This is the pain you know."));
    return out;
}

std::string plainTime(const Phrases &phrases, int seconds)
{
    const int minutes = (seconds + 30) / 60;
    if (minutes == 0)
        return mapText(phrases, QT_TRANSLATE_NOOP("VisitMap", "less than a minute"));
    if (minutes == 1)
        return mapText(phrases, QT_TRANSLATE_NOOP("VisitMap", "about 1 minute"));
    return mapText(phrases, QT_TRANSLATE_NOOP("VisitMap", "about {count} minutes"), {{"count", std::to_string(minutes)}});
}

std::string begun(const std::string &sentence)
{
    QString text = QString::fromStdString(sentence);
    if (!text.isEmpty())
        text.replace(0, 1, text.left(1).toUpper());
    return text.toStdString();
}

} // namespace raphe
