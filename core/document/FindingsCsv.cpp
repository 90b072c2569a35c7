#include "core/document/FindingsCsv.h"

#include "core/base/NumberText.h"

#include <algorithm>
#include <array>
#include <optional>

namespace raphe {

namespace {

// In the order of the table.
enum class CsvCell : std::size_t {
    Patient,
    Visit,
    VisitDate,
    When,
    Kind,
    Id,
    Name,
    Complaint,
    Side,
    Spot,
    At,
    Quality,
    Value,
    Answer,
    Scale,
    Unit,
    Mode,
    Device,
    Familiar,
    Certain,
    AfterComparing,
    Clear,
    To,
    ToSide,
    Unable,
    Note
};
constexpr std::size_t csvCells = static_cast<std::size_t>(CsvCell::Note) + 1;

// A text that no spreadsheet takes for a formula.
std::string guardedText(const std::string &text)
{
    const std::size_t begins = text.find_first_not_of('\'');
    const bool isTaken =
        begins != std::string::npos && std::string_view("=+-@\t\r\n").find(text[begins]) != std::string_view::npos;
    return isTaken ? "'" + text : text;
}

std::string quotedCell(const std::string &text)
{
    if (text.find_first_of(",\"\r\n") == std::string::npos)
        return text;
    std::string out = "\"";
    for (const char c : text)
        out += c == '"' ? std::string("\"\"") : std::string(1, c);
    return out + "\"";
}

class CsvLine {
public:
    CsvLine &text(CsvCell cell, const std::string &words)
    {
        m_cells[static_cast<std::size_t>(cell)] = quotedCell(guardedText(words));
        return *this;
    }
    CsvLine &word(CsvCell cell, std::string_view word) { return text(cell, std::string(word)); }
    CsvLine &number(CsvCell cell, double value)
    {
        m_cells[static_cast<std::size_t>(cell)] = numberText(value);
        return *this;
    }
    CsvLine &flag(CsvCell cell, bool is) { return is ? word(cell, "yes") : *this; }
    CsvLine &grade(int value, int highest)
    {
        return number(CsvCell::Value, value).text(CsvCell::Scale, "0-" + std::to_string(highest));
    }

    void putTo(std::string &out) const
    {
        for (std::size_t i = 0; i < m_cells.size(); ++i)
            out += (i > 0 ? "," : "") + m_cells[i];
        out += "\r\n";
    }

private:
    std::array<std::string, csvCells> m_cells; // ready to be written
};

class FindingsTable {
public:
    FindingsTable(const Atlas &atlas, const Examination &examination) : m_atlas(atlas), m_examination(examination)
    {
        for (std::size_t i = 0; i < findingsCsvColumns().size(); ++i)
            m_out += (i > 0 ? "," : "") + std::string(findingsCsvColumns()[i]);
        m_out += "\r\n";
    }

    void add(const std::string &patient, int number, const Visit &visit)
    {
        CsvLine start;
        start.text(CsvCell::Patient, patient).number(CsvCell::Visit, number).text(CsvCell::VisitDate, visit.date);
        m_start = start;
        m_start.word(CsvCell::When, "before");
        for (std::size_t i = 0; i < visit.complaints.size(); ++i)
            scales(visit.complaints[i], static_cast<int>(i + 1));
        examined(visit.findings, visit.measures, visit.tests);
        m_start = start;
        m_start.word(CsvCell::When, "retest");
        if (visit.retested.pain)
            score("pain-now", "pain now", visit.retested.pain->value, 1);
        examined(visit.retested.findings, visit.retested.measures, visit.retested.tests);
    }

    [[nodiscard]] std::string take() { return std::move(m_out); }

private:
    void put(const CsvLine &line) { line.putTo(m_out); }

    void examined(
        const std::vector<Finding> &findings, const std::vector<Measure> &measures, const std::vector<TestResult> &tests)
    {
        for (const Finding &finding : findings)
            rowsOf(finding);
        for (const Measure &measure : measures)
            rowsOf(measure);
        for (const TestResult &test : tests)
            rowsOf(test);
    }

    void score(const char *id, const std::string &name, int value, int complaint)
    {
        CsvLine line = m_start;
        line.word(CsvCell::Kind, "scale").word(CsvCell::Id, id).text(CsvCell::Name, name).number(CsvCell::Complaint, complaint);
        put(line.word(CsvCell::Quality, "score").grade(value, PainScore::highest));
    }

    void scales(const Complaint &complaint, int number)
    {
        static_assert(PainScore::highest == Activity::highest);
        for (const auto &[id, name, score] : {std::tuple{"pain-now", "pain now", complaint.now},
                 {"pain-worst", "pain at its worst in seven days", complaint.worst},
                 {"pain-best", "pain at its best in seven days", complaint.best}})
            if (score)
                this->score(id, name, score->value, number);
        for (const Activity &activity : complaint.activities)
            if (activity.score)
                score("activity", activity.name, *activity.score, number);
    }

    void rowsOf(const Finding &f)
    {
        CsvLine start = m_start;
        start.word(CsvCell::Kind, "finding").text(CsvCell::Id, f.place.structure.value);
        start.text(CsvCell::Name, nameOf(f.place.structure)).word(CsvCell::Side, wordOf(sideWords, f.place.side));
        if (f.spot)
            start.word(CsvCell::Spot, wordOf(spotWords, *f.spot));
        if (f.at)
            start.text(CsvCell::At, f.at->value);
        start.flag(CsvCell::Familiar, f.familiar).flag(CsvCell::Certain, f.certain).text(CsvCell::Note, f.note);
        start.flag(CsvCell::AfterComparing, f.afterComparing);
        bool isSilent = true;
        const auto row = [&](const char *quality) {
            isSilent = false;
            CsvLine line = start;
            line.word(CsvCell::Quality, quality);
            return line;
        };
        // Grade, word and clear of one quality are one row.
        const auto graded = [&](const char *quality, std::optional<int> grade, int highest, const char *word, bool clear) {
            if (!grade && !word && !clear)
                return;
            CsvLine line = row(quality);
            if (grade)
                line.grade(*grade, highest);
            else
                line.word(CsvCell::Answer, word ? word : "clear");
            put(line.flag(CsvCell::Clear, clear));
        };
        const auto gradeOf = [](const auto &scale) { return scale ? std::optional(scale->grade) : std::nullopt; };
        if (f.unable)
            put(row("unable").text(CsvCell::Unable, *f.unable));
        graded("tenderness", gradeOf(f.tenderness), Tenderness::highest, f.sore ? "sore" : nullptr, f.clear.tenderness);
        graded("restriction", gradeOf(f.restriction), Restriction::highest, f.stiff ? "stiff" : nullptr, f.clear.motion);
        graded("play", gradeOf(f.play), JointPlay::highest, nullptr, false);
        if (f.endFeel)
            put(row("end_feel").word(CsvCell::Answer, wordOf(endFeelWords, *f.endFeel)));
        for (const std::string &texture : f.texture)
            put(row("texture").text(CsvCell::Answer, texture));
        for (const Place &to : f.refersTo)
            put(row("refers_to").text(CsvCell::To, to.structure.value).word(CsvCell::ToSide, wordOf(sideWords, to.side)));
        if (isSilent)
            put(f.familiar ? row("familiar").word(CsvCell::Answer, "yes") : row("note"));
    }

    void rowsOf(const Measure &m)
    {
        const Movement *movement = m_examination.findMovement(m.movement);
        CsvLine start = m_start;
        start.word(CsvCell::Kind, "measure").text(CsvCell::Id, m.movement);
        start.text(CsvCell::Name, movement ? movement->name : m.movement).word(CsvCell::Side, wordOf(sideWords, m.side));
        if (m.mode)
            start.word(CsvCell::Mode, wordOf(moveModeWords, *m.mode));
        if (m.device)
            start.word(CsvCell::Device, wordOf(deviceWords, *m.device));
        start.flag(CsvCell::Familiar, m.familiar).text(CsvCell::Note, m.note);
        const auto row = [&](const char *quality, const std::optional<double> &value) {
            CsvLine line = start;
            line.word(CsvCell::Quality, quality);
            if (value)
                line.number(CsvCell::Value, *value).word(CsvCell::Unit, movement ? wordOf(unitWords, movement->unit) : "");
            return line;
        };
        if (m.value)
            put(row("range", m.value));
        if (m.painFrom)
            put(row("pain_from", m.painFrom));
        if (m.hurts)
            put(row("pain", {}).word(CsvCell::Answer, "yes"));
        if (!m.value && !m.painFrom && !m.hurts)
            put(m.familiar ? row("familiar", {}).word(CsvCell::Answer, "yes")
                           : row("range", {}).word(CsvCell::Answer, "watched"));
    }

    void rowsOf(const TestResult &t)
    {
        const ExamTest *test = m_examination.findTest(t.test);
        CsvLine start = m_start;
        start.word(CsvCell::Kind, "test").text(CsvCell::Id, t.test).text(CsvCell::Name, test ? test->name : t.test);
        start.word(CsvCell::Side, wordOf(sideWords, t.side)).text(CsvCell::Note, t.note);
        start.flag(CsvCell::Familiar, t.pain == TestPain::Familiar);
        const auto row = [&](const std::string &quality) {
            CsvLine line = start;
            line.text(CsvCell::Quality, quality);
            return line;
        };
        if (t.pain)
            put(row("pain").word(CsvCell::Answer, wordOf(testPainWords, *t.pain)));
        if (t.changesFromAfar)
            put(row("changes").word(CsvCell::Answer, "yes"));
        if (t.grade)
            put(row("grade").grade(*t.grade, highestOf(test)));
        if (t.present)
            put(row("present").word(CsvCell::Answer, *t.present ? "yes" : "no"));
        for (std::size_t i = 0; i < t.values.size(); ++i) {
            const bool isKnown = test && test->vital && i < test->vital->fields.size();
            CsvLine line = row(isKnown ? test->vital->fields[i] : "value");
            put(line.number(CsvCell::Value, t.values[i]).text(CsvCell::Unit, isKnown ? test->vital->unit : ""));
        }
        if (t.unable)
            put(row("unable").text(CsvCell::Unable, *t.unable));
    }

    // What the file allows, where the test is not known or has no grades.
    [[nodiscard]] static int highestOf(const ExamTest *test)
    {
        const bool isGraded = test && answerFormOf(test->kind) == AnswerForm::Grade;
        return isGraded ? highestGradeOf(test->kind) : TestResult::highestGrade;
    }

    [[nodiscard]] std::string nameOf(const StructureId &id) const
    {
        const Structure *structure = m_atlas.find(id);
        return structure ? structure->names.english : id.value;
    }

    const Atlas &m_atlas;
    const Examination &m_examination;
    CsvLine m_start; // what all rows of the visit begin with
    std::string m_out;
};

} // namespace

const std::vector<std::string_view> &findingsCsvColumns()
{
    static const std::vector<std::string_view> columns{"patient", "visit", "visit_date", "when", "kind", "id", "name",
        "complaint", "side", "spot", "at", "quality", "value", "answer", "scale", "unit", "mode", "device", "familiar", "certain",
        "after_comparing", "clear", "to", "to_side", "unable", "note"};
    return columns;
}

std::string findingsCsv(const std::vector<ListedVisit> &visits, const Atlas &atlas, const Examination &examination)
{
    FindingsTable table(atlas, examination);
    for (std::size_t i = 0; i < visits.size(); ++i)
        table.add(visits[i].patient, static_cast<int>(i + 1), visits[i].visit);
    return table.take();
}

} // namespace raphe
