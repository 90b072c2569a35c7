#include "core/language/Said.h"

#include "core/base/NumberText.h"
#include "core/language/GradeMarks.h"
#include "core/language/Levels.h"

#include <algorithm>
#include <cmath>

namespace raphe::language {

namespace {

bool isGradeOf(double value, Quality quality)
{
    return value >= 0 && value <= highestOf(quality) && value == std::floor(value);
}

std::optional<Spot> spotOf(LineWord word)
{
    switch (word) {
    case LineWord::Belly: return Spot::Belly;
    case LineWord::Origin: return Spot::Origin;
    case LineWord::Insertion: return Spot::Insertion;
    case LineWord::Border: return Spot::Border;
    case LineWord::Junction: return Spot::Junction;
    default: return {};
    }
}

std::optional<EndFeel> endFeelOf(LineWord word)
{
    switch (word) {
    case LineWord::EndFeelSoft: return EndFeel::Soft;
    case LineWord::EndFeelFirm: return EndFeel::Firm;
    case LineWord::EndFeelHard: return EndFeel::Hard;
    case LineWord::EndFeelSpringy: return EndFeel::Springy;
    case LineWord::EndFeelEmpty: return EndFeel::Empty;
    case LineWord::EndFeelSpasm: return EndFeel::Spasm;
    default: return {};
    }
}

LineWord wordOf(Quality quality)
{
    return quality == Quality::Tender ? LineWord::Tender : quality == Quality::Stiff ? LineWord::Stiff : LineWord::Play;
}

class SaidReader {
public:
    SaidReader(bool hasSide, bool isJoint, const LineWords &words, Issues &issues)
        : m_hasSide(hasSide), m_isJoint(isJoint), m_words(words), m_issues(issues)
    {
    }

    Said run(const std::vector<Mark> &marks)
    {
        for (const Mark &mark : marks)
            read(mark);
        if (m_unknown)
            m_issues.fault(AskAbout::Structure, LineFault::UnknownWords, *m_unknown);
        if (!m_unknown || m_issues.mistakes().empty())
            for (const auto &[mark, isPluses] : m_bare)
                askScale(mark, isPluses);
        return std::move(m_said);
    }

private:
    void read(const Mark &mark)
    {
        const Stretch at = stretchOf(mark);
        switch (mark.kind) {
        case MarkKind::Grade: return readGrade(mark);
        case MarkKind::LetterGrade: return askLetter(mark);
        case MarkKind::Clear:
            m_said.what.clear.tenderness = m_said.what.clear.tenderness || mark.word != LineWord::ClearOfMotion;
            m_said.what.clear.motion = m_said.what.clear.motion || mark.word != LineWord::ClearOfTenderness;
            return;
        case MarkKind::Unable:
            if (mark.text.empty())
                m_issues.ask(AskAbout::Amount, Doubt::ReasonMissing, at);
            m_said.what.unable = mark.text;
            return;
        case MarkKind::Familiar: m_said.what.familiar = mark.word == LineWord::Familiar; return;
        case MarkKind::Certain:
            m_said.what.certain = mark.word == LineWord::Certain;
            if (m_said.what.certain)
                m_said.certain = at;
            return;
        case MarkKind::AfterComparing:
            m_said.what.afterComparing = true;
            m_said.certain = at;
            return;
        case MarkKind::Texture:
            if (std::find(m_said.what.texture.begin(), m_said.what.texture.end(), mark.text) == m_said.what.texture.end())
                m_said.what.texture.push_back(mark.text);
            return;
        case MarkKind::EndFeel:
            m_said.what.endFeel = endFeelOf(mark.word);
            m_said.endFeel = at;
            return;
        case MarkKind::Spot:
            if (m_said.what.spot && m_said.what.spot != spotOf(mark.word))
                m_issues.fault(AskAbout::Spot, LineFault::Contradiction, at);
            m_said.what.spot = spotOf(mark.word);
            m_said.spot = at;
            return;
        case MarkKind::At:
            if (!mark.parts.empty())
                m_said.at.push_back(mark);
            else
                addUnknown(at);
            return;
        case MarkKind::RefersTo: m_said.refersTo.push_back(mark); return;
        case MarkKind::Same: m_said.isSame = true; return;
        case MarkKind::Number: m_bare.emplace_back(mark, false); return;
        case MarkKind::Pluses: m_bare.emplace_back(mark, true); return;
        case MarkKind::Side:
        case MarkKind::And:
        case MarkKind::Break:
        case MarkKind::Colon: return;
        case MarkKind::Open: m_issues.ask(AskAbout::Amount, Doubt::SayAnew, at); return;
        default: addUnknown(at);
        }
    }

    void addUnknown(Stretch at) { m_unknown = m_unknown ? spanOf(*m_unknown, at) : at; }

    void readGrade(const Mark &mark)
    {
        const GradeSaid &grade = mark.grade;
        const Stretch number{grade.numberBegin, grade.numberEnd};
        if (grade.quality == Quality::Play)
            m_said.play = stretchOf(mark);
        if (!grade.value) {
            if (grade.quality == Quality::Play)
                m_issues.ask(AskAbout::Grade, Doubt::ValueMissing, stretchOf(mark));
            (grade.quality == Quality::Tender ? m_said.what.sore : m_said.what.stiff) |= grade.quality != Quality::Play;
            return;
        }
        if (grade.upTo) {
            if (!isGradeOf(*grade.value, grade.quality) || !isGradeOf(*grade.upTo, grade.quality))
                return m_issues.fault(AskAbout::Grade, LineFault::GradeBeyondScale, number);
            const bool isLetter = number.begin == mark.begin;
            const std::string before = isLetter ? m_words.firstPhrase(wordOf(grade.quality)) + " " : std::string();
            LineQuestion &question = m_issues.ask(AskAbout::Grade, Doubt::GradeRange, number);
            question.choices = {{before + numberText(*grade.value), {}}, {before + numberText(*grade.upTo), {}}};
            return;
        }
        if (!isGradeOf(*grade.value, grade.quality))
            return m_issues.fault(AskAbout::Grade, LineFault::GradeBeyondScale, number);
        setGrade(grade.quality, static_cast<int>(*grade.value), stretchOf(mark));
    }

    template <class T> void set(std::optional<T> &grade, int value, Stretch at)
    {
        if (grade && grade->grade != value)
            m_issues.fault(AskAbout::Amount, LineFault::GradeTwice, at);
        grade = T{value};
    }

    void setGrade(Quality quality, int value, Stretch at)
    {
        switch (quality) {
        case Quality::Tender: return set(m_said.what.tenderness, value, at);
        case Quality::Stiff: return set(m_said.what.restriction, value, at);
        case Quality::Play: return set(m_said.what.play, value, at);
        }
    }

    void askLetter(const Mark &mark)
    {
        const std::string number = numberText(mark.number);
        const WordList::GradeLetter *letter = nullptr;
        for (const WordList::GradeLetter &l : m_words.list().gradeLetters)
            if (l.letter == mark.text)
                letter = &l;
        if (!letter)
            return addUnknown(stretchOf(mark));
        std::vector<LineChoice> choices;
        bool couldBeSide = false;
        for (const std::string &grade : letter->grades) {
            const auto *meanings = m_words.meanings(grade);
            const bool isGrade = meanings && qualityOf(static_cast<LineWord>(meanings->front().index)).has_value();
            if (!isGrade && m_hasSide)
                continue;
            couldBeSide = couldBeSide || !isGrade;
            std::string insert = grade;
            insert.append(" ").append(number);
            choices.push_back({std::move(insert), {}});
        }
        if (const auto level = vertebra(mark.text, static_cast<int>(mark.number), m_words))
            choices.push_back(
                {", " + m_words.names().sureName(m_words.atlas(), *level), m_words.atlas().structures()[*level].id});
        const AskAbout about = couldBeSide ? AskAbout::Side : AskAbout::Scale;
        m_issues.ask(about, Doubt::LetterAndNumber, stretchOf(mark)).choices = std::move(choices);
    }

    void askScale(const Mark &mark, bool isPluses)
    {
        std::vector<LineChoice> choices;
        for (const Quality quality : {Quality::Tender, Quality::Stiff, Quality::Play})
            if (isGradeOf(mark.number, quality) && isGradeOf(mark.upTo.value_or(0), quality)
                && (quality != Quality::Play || (m_isJoint && !isPluses)))
                for (const auto number : {std::optional(mark.number), mark.upTo})
                    if (number)
                        choices.push_back({m_words.firstPhrase(wordOf(quality)) + " " + numberText(*number), {}});
        if (choices.empty())
            m_issues.fault(AskAbout::Grade, LineFault::GradeBeyondScale, stretchOf(mark));
        else
            m_issues.ask(AskAbout::Scale, Doubt::NumberWithoutScale, stretchOf(mark)).choices = std::move(choices);
    }

    bool m_hasSide;
    bool m_isJoint;
    const LineWords &m_words;
    Issues &m_issues;
    Said m_said;
    std::optional<Stretch> m_unknown;
    std::vector<std::pair<Mark, bool>> m_bare; // numbers and plus signs by themselves
};

} // namespace

Said saidBy(const std::vector<Mark> &marks, bool hasSide, bool isJoint, const LineWords &words, Issues &issues)
{
    Said said = SaidReader(hasSide, isJoint, words, issues).run(marks);
    // A grade says more than its word alone.
    said.what.sore = said.what.sore && !said.what.tenderness;
    said.what.stiff = said.what.stiff && !said.what.restriction;
    return said;
}

void checkSense(const Said &said, Stretch at, Issues &issues)
{
    const Finding &what = said.what;
    const bool isTenderAndClear = what.clear.tenderness && (what.tendernessGrade() > 0 || what.familiar);
    const bool isStiffAndClear =
        what.clear.motion && (what.restrictionGrade() > 0 || (what.play && what.play->grade != JointPlay::normal));
    const bool isUnableAndFound = what.isUnable() && (what.saysAnything() || said.certain || !said.refersTo.empty());
    if (isTenderAndClear || isStiffAndClear || isUnableAndFound)
        issues.fault(AskAbout::Amount, LineFault::Contradiction, at);
    else if (said.certain && !what.saysOfMotion() && !said.isSame)
        issues.ask(AskAbout::Amount, Doubt::NothingSaid, *said.certain);
}

bool addTo(Finding &finding, const Finding &more)
{
    const auto goesWith = [](const auto &a, const auto &b) { return !a || !b || *a == *b; };
    if (!goesWith(finding.tenderness, more.tenderness) || !goesWith(finding.restriction, more.restriction)
        || !goesWith(finding.play, more.play) || !goesWith(finding.endFeel, more.endFeel) || finding.isUnable()
        || more.isUnable())
        return false;
    const auto take = [](auto &into, const auto &from) {
        if (from)
            into = from;
    };
    take(finding.tenderness, more.tenderness);
    take(finding.restriction, more.restriction);
    take(finding.play, more.play);
    take(finding.endFeel, more.endFeel);
    finding.sore = (finding.sore || more.sore) && !finding.tenderness;
    finding.stiff = (finding.stiff || more.stiff) && !finding.restriction;
    finding.familiar = finding.familiar || more.familiar;
    finding.certain = finding.certain || more.certain;
    finding.afterComparing = finding.afterComparing || more.afterComparing;
    finding.clear.tenderness = finding.clear.tenderness || more.clear.tenderness;
    finding.clear.motion = finding.clear.motion || more.clear.motion;
    for (const std::string &texture : more.texture)
        if (std::find(finding.texture.begin(), finding.texture.end(), texture) == finding.texture.end())
            finding.texture.push_back(texture);
    for (const Place &place : more.refersTo)
        if (std::find(finding.refersTo.begin(), finding.refersTo.end(), place) == finding.refersTo.end())
            finding.refersTo.push_back(place);
    return true;
}

} // namespace raphe::language
