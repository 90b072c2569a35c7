#include "core/language/Moves.h"

#include "core/base/NumberText.h"
#include "core/language/GradeMarks.h"

#include <algorithm>
#include <utility>

namespace raphe::language {

namespace {

// One value with the side that goes with it.
struct Value {
    double number = 0;
    std::optional<Stretch> at; // nothing when only pain was told
    std::optional<Mark> side;
    std::optional<double> painFrom;
    std::optional<Stretch> painAt;
};

class MoveReader {
public:
    MoveReader(const Clause &clause, const std::optional<SideSaid> &head, const LineWords &words, Issues &issues)
        : m_clause(clause), m_head(head), m_words(words), m_issues(issues)
    {
    }

    std::vector<Measure> run()
    {
        for (const Mark &mark : m_clause.marks)
            take(mark);
        const Mark &name = *m_clause.movement;
        if (name.movements.size() != 1) {
            askMovement(name);
            return {};
        }
        m_movement = &m_words.list().movements[name.movements.front()];
        if (m_values.empty() && m_common.painFrom)
            m_values.push_back({0, {}, {}, std::exchange(m_common.painFrom, {}), m_painAt});
        if (m_values.empty())
            askAboutMovement(Doubt::ValueMissing, AskAbout::Amount, stretchOf(name));
        for (Value &value : m_values)
            checkValue(value);
        checkLate();
        if (m_issues.any())
            return {};
        placeSides();
        return m_issues.any() ? std::vector<Measure>() : made();
    }

private:
    void take(const Mark &mark)
    {
        switch (mark.kind) {
        case MarkKind::Side:
            m_sides.push_back(mark);
            m_order += 's';
            return;
        case MarkKind::Number:
            m_values.push_back({mark.number, stretchOf(mark), {}, {}, {}});
            m_order += 'n';
            if (mark.upTo)
                m_issues.ask(AskAbout::Amount, Doubt::GradeRange, stretchOf(mark)).choices = {
                    {numberText(mark.number), {}}, {numberText(*mark.upTo), {}}};
            return;
        case MarkKind::Unit: m_units.push_back(mark); return;
        case MarkKind::Mode:
        case MarkKind::Device:
        case MarkKind::Familiar: return takeOfAll(mark);
        case MarkKind::PainFrom:
            (m_values.empty() ? m_common.painFrom : m_values.back().painFrom) = mark.number;
            (m_values.empty() ? m_painAt : m_values.back().painAt) = stretchOf(mark);
            return;
        case MarkKind::Open: m_issues.ask(AskAbout::Amount, Doubt::SayAnew, stretchOf(mark)); return;
        case MarkKind::And: return;
        case MarkKind::Grade:
            if (mark.grade.quality == Quality::Tender && !mark.grade.value) {
                return takeOfAll(mark);
            }
            [[fallthrough]];
        default: m_issues.fault(AskAbout::Amount, LineFault::NotOfMovement, stretchOf(mark));
        }
    }

    // Said before all values it goes for all of them. Later it may be of one: kept until all are known.
    void takeOfAll(const Mark &mark)
    {
        if (!m_order.empty())
            m_late.emplace_back(mark, m_values.size());
        switch (mark.kind) {
        case MarkKind::Mode: m_common.mode = mark.word == LineWord::Active ? MoveMode::Active : MoveMode::Passive; return;
        case MarkKind::Device: m_common.device = mark.device; return;
        case MarkKind::Familiar: m_common.familiar = mark.word == LineWord::Familiar; return;
        default: m_common.hurts = true;
        }
    }

    // 'r 32 painful l 45': which of the two hurts is not said. How it was measured may stand behind all values.
    void checkLate()
    {
        for (const auto &[mark, valuesBefore] : m_late) {
            const bool isHow = mark.kind == MarkKind::Mode || mark.kind == MarkKind::Device;
            if (m_values.size() > 1 && !(isHow && valuesBefore == m_values.size()))
                m_issues.ask(AskAbout::Amount, Doubt::SayAnew, stretchOf(mark));
        }
    }

    LineQuestion &askAboutMovement(Doubt doubt, AskAbout about, Stretch at)
    {
        LineQuestion &question = m_issues.ask(about, doubt, at);
        question.movement = m_movement ? m_movement->id : std::string();
        return question;
    }

    void askMovement(const Mark &name)
    {
        const bool isJointMissing = name.movements.empty();
        LineQuestion &question = m_issues.ask(isJointMissing ? AskAbout::Structure : AskAbout::Amount,
            isJointMissing ? Doubt::JointMissing : Doubt::MovementOfSeveral, stretchOf(name));
        const std::string typed = m_issues.textOf(stretchOf(name));
        for (std::size_t i = 0; i < m_words.list().movements.size(); ++i) {
            const LineMovement &movement = m_words.list().movements[i];
            const bool isMeant = isJointMissing
                ? std::find(movement.says.begin(), movement.says.end(), typed) != movement.says.end()
                : std::find(name.movements.begin(), name.movements.end(), i) != name.movements.end();
            if (isMeant)
                question.choices.push_back({movement.alone.front(), {}});
        }
    }

    void checkValue(Value &value)
    {
        for (const Mark &unit : m_units) {
            const bool isDegrees = unit.word == LineWord::Degrees;
            if (isDegrees != (m_movement->unit == MoveUnit::Degrees)) {
                askAboutMovement(Doubt::UnitUnlike, AskAbout::Amount, stretchOf(unit));
                return;
            }
        }
        if (m_units.empty() && m_movement->needsUnit) {
            const Stretch at = value.at ? *value.at : *value.painAt;
            const std::string typed = m_issues.textOf(at);
            askAboutMovement(Doubt::UnitMissing, AskAbout::Amount, at).choices = {
                {typed + " " + m_words.firstPhrase(LineWord::Millimetres), {}},
                {typed + " " + m_words.firstPhrase(LineWord::Centimetres), {}}};
            return;
        }
        if (value.at)
            value.number = inUnit(value.number, *value.at);
        if (value.painFrom && value.painAt)
            value.painFrom = inUnit(*value.painFrom, *value.painAt);
    }

    // In the movement's own unit, and no more than can be. A single unit goes for all numbers, wherever it stands.
    double inUnit(double number, Stretch at)
    {
        const auto unit =
            std::find_if(m_units.begin(), m_units.end(), [&](const Mark &u) { return m_units.size() == 1 || u.begin >= at.end; });
        if (unit != m_units.end() && unit->word == LineWord::Centimetres)
            number *= 10;
        if (number < m_movement->least || number > m_movement->most)
            askAboutMovement(Doubt::ValueBeyond, AskAbout::Amount, at);
        return number;
    }

    void placeSides()
    {
        if (!m_movement->hasSides)
            return placeMidline();
        if (m_sides.empty() && m_head && m_values.size() == 1) {
            m_values.front().side = Mark{};
            m_values.front().side->side = m_head->side;
            return;
        }
        if (m_sides.size() == m_values.size() && isRow()) {
            for (std::size_t i = 0; i < m_values.size(); ++i)
                m_values[i].side = m_sides[i];
            checkSides();
            return;
        }
        if (m_sides.size() > 1 && m_values.size() == 1)
            return m_issues.fault(AskAbout::Side, LineFault::BothSides, spanOf(stretchOf(m_sides[0]), stretchOf(m_sides[1])));
        if (m_sides.size() == 1 && m_values.size() == 1) {
            m_values.front().side = m_sides.front();
            return checkSides();
        }
        askSides();
    }

    void placeMidline()
    {
        for (const Mark &side : m_sides)
            if (side.side != SideWord::Midline)
                askAboutMovement(Doubt::OnlyMidline, AskAbout::Side, stretchOf(side));
        if (m_values.size() > 1)
            askAboutMovement(Doubt::ValueMissing, AskAbout::Amount, spanOf(*m_values.front().at, *m_values.back().at));
    }

    bool isRow() const
    {
        for (std::size_t i = 1; i < m_order.size(); ++i)
            if (m_order[i] == m_order[i - 1])
                return false;
        return true;
    }

    void checkSides()
    {
        for (std::size_t i = 0; i < m_values.size(); ++i) {
            const Mark &side = *m_values[i].side;
            if (side.side == SideWord::Midline)
                askAboutMovement(Doubt::SideMissing, AskAbout::Side, stretchOf(side));
            for (std::size_t j = 0; j < i; ++j)
                if (m_values[j].side->side == side.side || side.side == SideWord::Both
                    || m_values[j].side->side == SideWord::Both)
                    m_issues.fault(AskAbout::Side, LineFault::SideTwice, stretchOf(side));
        }
    }

    // One number: the side goes before the movement. Two: which of them is which.
    void askSides()
    {
        const std::string left = phraseOf(SideWord::Left, m_words) + " ";
        const std::string right = phraseOf(SideWord::Right, m_words) + " ";
        if (m_sides.empty() && m_values.size() == 1) {
            LineQuestion &question = askAboutMovement(Doubt::SideMissing, AskAbout::Side, stretchOf(*m_clause.movement));
            const std::string typed = m_issues.textOf(stretchOf(*m_clause.movement));
            question.choices = {{left + typed, {}}, {right + typed, {}}};
            return;
        }
        LineQuestion &question =
            askAboutMovement(Doubt::SideMissing, AskAbout::Side, spanOf(*m_values.front().at, *m_values.back().at));
        if (m_sides.empty() && m_values.size() == 2) {
            const std::string first = m_issues.textOf(*m_values[0].at);
            const std::string second = m_issues.textOf(*m_values[1].at);
            question.choices = {{left + first + " " + right + second, {}}, {right + first + " " + left + second, {}}};
        }
    }

    std::vector<Measure> made() const
    {
        std::vector<Measure> out;
        for (const Value &value : m_values) {
            Measure measure = m_common;
            measure.movement = m_movement->id;
            if (value.at)
                measure.value = value.number;
            if (value.painFrom)
                measure.painFrom = value.painFrom;
            const SideWord side = m_movement->hasSides && value.side ? value.side->side : SideWord::Midline;
            if (side != SideWord::Left) {
                measure.side = side == SideWord::Midline ? Side::Midline : Side::Right;
                out.push_back(measure);
            }
            if (side == SideWord::Left || side == SideWord::Both) {
                measure.side = Side::Left;
                out.push_back(measure);
            }
        }
        return out;
    }

    const Clause &m_clause;
    const std::optional<SideSaid> &m_head;
    const LineWords &m_words;
    Issues &m_issues;
    const LineMovement *m_movement = nullptr;
    std::vector<Value> m_values;
    std::vector<Mark> m_sides;
    std::vector<Mark> m_units;
    std::string m_order; // of sides and numbers
    std::vector<std::pair<Mark, std::size_t>> m_late; // with the number of values before it
    Measure m_common; // what goes for every value
    std::optional<Stretch> m_painAt; // of its painFrom
};

} // namespace

std::vector<Measure> measuresOf(const Clause &clause, const std::optional<SideSaid> &head, const LineWords &words, Issues &issues)
{
    return MoveReader(clause, head, words, issues).run();
}

} // namespace raphe::language
