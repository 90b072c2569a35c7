#include "core/treatment/WorkLine.h"

#include "core/language/Marker.h"
#include "core/treatment/WorkAmounts.h"
#include "core/treatment/WorkPhrases.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace raphe {

namespace {

using language::Mark;
using language::MarkKind;
using language::Token;
using Tokens = std::vector<Token>;

QString tr(const char *text)
{
    return QCoreApplication::translate("WorkLine", text);
}

bool isIn(const std::vector<std::string> &list, const std::string &text)
{
    return std::find(list.begin(), list.end(), text) != list.end();
}

/// Single blanks between the words, none around them.
std::string collapsed(std::string_view text)
{
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size())).simplified().toStdString();
}

class WorkReader {
public:
    WorkReader(std::string_view line, const LineWords &words, const Techniques &techniques)
        : m_line(line),
          m_words(words),
          m_work(words.list().work),
          m_techniques(techniques),
          m_tokens(language::tokensOf(line)),
          m_rest(line)
    {
    }

    WorkReading run()
    {
        m_used.assign(m_tokens.size(), false);
        m_begin = workBeginning(m_tokens, m_work);
        use(0, m_begin);
        m_named = namedTechniques(m_tokens, m_begin, m_techniques);
        for (const NamedTechnique &named : m_named)
            useWithLead(named.begin, named.end);
        findAmounts();
        for (std::size_t i = 0; i < m_tokens.size(); ++i)
            if (isStop(m_tokens[i]))
                blank(m_tokens[i].begin, m_tokens[i].end);
        TreatmentStep step;
        readTechnique(step);
        readTime(step);
        readSuction(step);
        readPlace(step);
        if (m_out.problem.empty() && m_out.questions.empty() && m_out.mistakes.empty())
            m_out.step = std::move(step);
        return std::move(m_out);
    }

private:
    void problem(const QString &sentence)
    {
        if (m_out.problem.empty()) // the first is the one to mend first
            m_out.problem = sentence.toStdString();
    }

    void blank(std::size_t begin, std::size_t end) // bytes
    {
        std::fill(m_rest.begin() + static_cast<std::ptrdiff_t>(begin), m_rest.begin() + static_cast<std::ptrdiff_t>(end), ' ');
    }

    void use(std::size_t begin, std::size_t end) // tokens
    {
        for (std::size_t i = begin; i < end; ++i) {
            m_used[i] = true;
            blank(m_tokens[i].begin, m_tokens[i].end);
        }
    }

    // With the 'for' or 'using' before it.
    void useWithLead(std::size_t begin, std::size_t end)
    {
        while (begin > m_begin && !m_used[begin - 1] && isIn(m_work.leads, m_tokens[begin - 1].text))
            --begin;
        use(begin, end);
    }

    [[nodiscard]] QString typed(std::size_t begin, std::size_t end) const // tokens
    {
        const std::size_t from = m_tokens[begin].begin;
        return QString::fromStdString(collapsed(m_line.substr(from, m_tokens[end - 1].end - from)));
    }

    [[nodiscard]] bool isAt(std::size_t token) const
    {
        const auto *meanings = m_words.meanings(m_tokens[token].text);
        return meanings && std::any_of(meanings->begin(), meanings->end(), [](const LineWords::Meaning &m) {
            return m.kind == LineWords::Kind::Word && static_cast<LineWord>(m.index) == LineWord::At;
        });
    }

    void findAmounts()
    {
        for (std::size_t i = m_begin; i < m_tokens.size(); ++i) {
            if (m_used[i])
                continue;
            if (const auto suction = suctionAt(m_tokens, i, m_work)) {
                m_suctions.push_back(*suction);
                useWithLead(suction->begin, suction->end);
                if (suction->begin > m_begin && isAt(suction->begin - 1))
                    use(suction->begin - 1, suction->begin);
                i = suction->end - 1;
            } else if (const auto time = durationAt(m_tokens, i, i > 0 && isAt(i - 1), m_work)) {
                m_times.push_back(*time);
                useWithLead(time->begin, time->end);
                i = time->end - 1;
            }
        }
    }

    void readTechnique(TreatmentStep &step)
    {
        std::vector<const Technique *> named;
        for (const NamedTechnique &match : m_named)
            if (std::find(named.begin(), named.end(), match.technique) == named.end())
                named.push_back(match.technique);
        if (named.empty())
            return askTechnique();
        if (named.size() > 1)
            return problem(tr(QT_TRANSLATE_NOOP("WorkLine", "More than one technique is named: %1. Type a line for each."))
                               .arg(namesOf(named)));
        step.technique = named.front()->id;
    }

    // A word may be part of a technique's name: 'cups'. 'Left' and 'joint' are of the place rather.
    void askTechnique()
    {
        for (std::size_t i = m_begin; i < m_tokens.size(); ++i) {
            const std::string &word = m_tokens[i].text;
            const bool isOfPlace = m_words.meanings(word) || isIn(m_words.list().leftOut, word);
            if (m_used[i] || isOfPlace || m_tokens[i].kind != language::TokenKind::Word || isStop(m_tokens[i]))
                continue;
            const auto near = techniquesWith(word, m_techniques);
            if (near.empty())
                continue;
            use(i, i + 1);
            return problem(tr(QT_TRANSLATE_NOOP("WorkLine", "Which technique is '%1'? Type its name: %2."))
                               .arg(QString::fromStdString(word), namesOf(near)));
        }
        if (m_techniques.all.empty())
            return problem(tr(QT_TRANSLATE_NOOP("WorkLine", "There is no technique that could be named.")));
        problem(tr(QT_TRANSLATE_NOOP("WorkLine", "No technique is named that is known. Type one, for example '%1'."))
                    .arg(QString::fromStdString(m_techniques.all.front().name)));
    }

    [[nodiscard]] static QString namesOf(const std::vector<const Technique *> &techniques)
    {
        QStringList names;
        for (const Technique *technique : techniques)
            names << QString::fromStdString(technique->name);
        return names.join(QStringLiteral("; ")); // there are commas in names
    }

    void readTime(TreatmentStep &step)
    {
        if (m_times.empty())
            return problem(
                tr(QT_TRANSLATE_NOOP("WorkLine", "How long was it? Type the time, for example '90 s', '2 min' or '1:30'.")));
        if (m_times.size() > 1)
            return problem(tr(QT_TRANSLATE_NOOP("WorkLine", "More than one time is typed: %1 and %2. Leave one."))
                               .arg(typed(m_times[0].begin, m_times[0].end), typed(m_times[1].begin, m_times[1].end)));
        const WorkAmount &time = m_times.front();
        const double seconds = std::round(time.value);
        const QString words = typed(time.begin, time.end);
        if (!time.isOne || seconds < 1)
            return problem(
                tr(QT_TRANSLATE_NOOP("WorkLine", "'%1' is not one time of work. Type it as '90 s', '2 min' or '1:30'."))
                    .arg(words));
        if (seconds > TreatmentStep::longest)
            return problem(
                tr(QT_TRANSLATE_NOOP("WorkLine", "'%1' is too long: one piece of work takes %2 min at most. Type its time."))
                    .arg(words, QString::number(TreatmentStep::longest / 60)));
        step.seconds = static_cast<int>(seconds);
    }

    void readSuction(TreatmentStep &step)
    {
        if (m_suctions.empty())
            return;
        const WorkAmount &suction = m_suctions.front();
        const QString words = typed(suction.begin, m_suctions.back().end);
        const Technique *technique = m_techniques.find(step.technique);
        if (technique && !technique->dose.kPa)
            return problem(tr(QT_TRANSLATE_NOOP("WorkLine", "'%1' is of cups only. Take it out, or name the cups.")).arg(words));
        const bool isOne = m_suctions.size() == 1 && suction.isOne;
        if (!isOne || suction.value <= 0 || suction.value > TreatmentStep::strongestSuction)
            return problem(
                tr(QT_TRANSLATE_NOOP("WorkLine", "'%1' is no suction. Type one value up to %2 kPa, for example '20 kPa'."))
                    .arg(words, QString::number(TreatmentStep::strongestSuction)));
        step.kPa = suction.value;
    }

    void readPlace(TreatmentStep &step)
    {
        takeOutForeign();
        const std::string &tender = m_words.firstPhrase(LineWord::Tender); // with it the place reads as a finding
        std::vector<Place> places;
        bool areSeveral = false;
        for (const LineChip &chip : readLine(m_rest + ' ' + tender, m_words).chips) {
            if (const auto *finding = std::get_if<Finding>(&chip.is))
                places.push_back(finding->place);
            else if (const auto *mistake = std::get_if<LineMistake>(&chip.is))
                add(*mistake);
            else if (const auto *question = std::get_if<LineQuestion>(&chip.is))
                areSeveral = !add(*question) || areSeveral;
        }
        if (places.size() > 1 || areSeveral)
            return problem(severalPlaces());
        if (!places.empty())
            step.place = places.front();
        else if (m_out.questions.empty() && m_out.mistakes.empty())
            problem(tr(QT_TRANSLATE_NOOP("WorkLine", "Where was it? Type side and structure, for example 'right piriformis'.")));
    }

    [[nodiscard]] static QString severalPlaces()
    {
        return tr(QT_TRANSLATE_NOOP("WorkLine", "More than one place is named. Type a line for each place and side."));
    }

    // A comma or a technique stands within it: no one name was meant. A point only cuts a word short.
    [[nodiscard]] bool isTorn(const Mark &mark) const
    {
        std::string cut = cutOut(mark.begin, mark.end);
        std::erase_if(cut, [](char c) { return c == '.' || c == ' '; });
        return !cut.empty();
    }

    // Only side and structure are left.
    void takeOutForeign()
    {
        for (const Mark &mark : language::marksOf(m_rest, m_words)) {
            const QString words =
                QString::fromStdString(collapsed(std::string_view(m_rest).substr(mark.begin, mark.end - mark.begin)));
            switch (mark.kind) {
            case MarkKind::Name:
                if (isTorn(mark))
                    problem(severalPlaces());
                continue;
            case MarkKind::Side:
            case MarkKind::NoLevel:
            case MarkKind::Region:
            case MarkKind::And:
            case MarkKind::Unknown: continue;
            case MarkKind::Spot:
            case MarkKind::At:
                problem(tr(QT_TRANSLATE_NOOP("WorkLine", "Work is logged for the whole structure. Take out '%1'.")).arg(words));
                break;
            default:
                problem(tr(QT_TRANSLATE_NOOP("WorkLine",
                               "'%1' is no part of a piece of work. Take it out, or type what was found on a line of its own."))
                            .arg(words));
            }
            blank(mark.begin, mark.end);
        }
    }

    // False when it asks how two places stand to each other.
    bool add(LineQuestion question)
    {
        switch (question.doubt) {
        case Doubt::NameOfSeveral:
        case Doubt::SideMissing:
        case Doubt::OnlyMidline:
        case Doubt::SideOfVertebra: break;
        default: return false;
        }
        if (question.begin >= m_rest.size())
            return true; // about the word that was put behind it
        fit(question);
        const std::string cut = cutOut(question.begin, question.end);
        for (LineChoice &choice : question.choices)
            choice.insert = collapsed(choice.insert + ' ' + cut);
        m_out.questions.push_back(std::move(question));
        return true;
    }

    void add(LineMistake mistake)
    {
        if (mistake.begin >= m_rest.size())
            return; // about the word that was put behind it
        fit(mistake);
        m_out.mistakes.push_back(std::move(mistake));
    }

    // Within the line, and about words of it that are left.
    template <class T> void fit(T &issue) const
    {
        issue.end = std::min(issue.end, m_rest.size());
        while (issue.end > issue.begin + 1 && m_rest[issue.end - 1] == ' ')
            --issue.end;
        issue.words = collapsed(std::string_view(m_rest).substr(issue.begin, issue.end - issue.begin));
    }

    // What was taken out between words that are asked about stands behind the answer.
    [[nodiscard]] std::string cutOut(std::size_t begin, std::size_t end) const
    {
        std::string out;
        for (std::size_t i = begin; i < end; ++i)
            out += m_rest[i] == m_line[i] ? ' ' : m_line[i];
        return collapsed(out);
    }

    std::string_view m_line;
    const LineWords &m_words;
    const WordList::Work &m_work;
    const Techniques &m_techniques;
    Tokens m_tokens;
    std::string m_rest; // the line; what was read of it is blank
    std::vector<bool> m_used; // of each token
    std::size_t m_begin = 0; // token after the words for work
    std::vector<NamedTechnique> m_named;
    std::vector<WorkAmount> m_times;
    std::vector<WorkAmount> m_suctions;
    WorkReading m_out;
};

} // namespace

bool isWorkLine(std::string_view line, const LineWords &words)
{
    return workBeginning(language::tokensOf(line), words.list().work) > 0;
}

WorkReading readWorkLine(std::string_view line, const LineWords &words, const Techniques &techniques)
{
    return WorkReader(line, words, techniques).run();
}

} // namespace raphe
