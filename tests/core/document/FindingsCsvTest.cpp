// The table of findings: what its rows say, that all of it can be read back by a reader of ours and by one that is not, and that
// no spreadsheet takes a text for a formula.
#include "core/document/FindingsCsv.h"

#include "core/record/CsvTable.h"
#include "tests/support/WholeVisits.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <QProcess>

#include <algorithm>
#include <map>
#include <string>
#include <vector>

namespace raphe::test {

namespace {

using TableCells = std::vector<std::string>;

std::string tableOf(const std::vector<ListedVisit> &visits)
{
    return findingsCsv(visits, atlas(), examination());
}

// The header row too.
std::vector<TableCells> rowsIn(const std::string &text)
{
    std::vector<TableCells> rows;
    CsvTable table(text, ',');
    while (auto row = table.next()) {
        EXPECT_EQ(row->mistake, "") << "line " << row->line;
        EXPECT_EQ(row->cells.size(), findingsCsvColumns().size()) << "line " << row->line;
        rows.push_back(std::move(row->cells));
    }
    return rows;
}

std::size_t columnOf(std::string_view name)
{
    const auto &columns = findingsCsvColumns();
    const auto it = std::find(columns.begin(), columns.end(), name);
    EXPECT_NE(it, columns.end()) << name;
    return static_cast<std::size_t>(it - columns.begin());
}

bool beginsFormula(char c)
{
    return std::string_view("=+-@\t\r\n").find(c) != std::string_view::npos;
}

// As the header of FindingsCsv.h tells readers to.
std::string withoutGuard(const std::string &cell)
{
    const std::size_t begins = cell.find_first_not_of('\'');
    return begins != std::string::npos && begins > 0 && beginsFormula(cell[begins]) ? cell.substr(1) : cell;
}

// One row by the names of its columns.
class TableRow {
public:
    explicit TableRow(const TableCells &cells) : m_cells(cells) { }
    [[nodiscard]] std::string operator[](std::string_view name) const { return withoutGuard(m_cells.at(columnOf(name))); }
    [[nodiscard]] bool has(std::string_view name) const { return !(*this)[name].empty(); }
    [[nodiscard]] bool yes(std::string_view name) const
    {
        EXPECT_TRUE(!has(name) || (*this)[name] == "yes");
        return has(name);
    }
    [[nodiscard]] double value() const { return std::stod(m_cells.at(columnOf("value"))); }
    [[nodiscard]] int grade() const { return std::stoi(m_cells.at(columnOf("value"))); }
    template <class E, std::size_t N>
    [[nodiscard]] std::optional<E> word(std::string_view name, const WordTable<E, N> &table) const
    {
        return fromWord(table, (*this)[name]);
    }
    [[nodiscard]] Side side() const { return word("side", sideWords).value_or(Side::Midline); }

private:
    const TableCells &m_cells;
};

// What the rows say, put together again by nothing but the description in FindingsCsv.h.
class TableReader {
public:
    explicit TableReader(const std::vector<TableCells> &rows)
    {
        for (std::size_t i = 1; i < rows.size(); ++i)
            take(TableRow(rows[i]));
    }
    Visit visit; // findings, measures, tests, the same again, and scores of complaints

private:
    void take(const TableRow &row)
    {
        const bool isRetest = row["when"] == "retest";
        EXPECT_TRUE(isRetest || row["when"] == "before");
        const std::string kind = row["kind"];
        if (kind == "finding")
            finding(row, isRetest ? visit.retested.findings : visit.findings);
        else if (kind == "measure")
            measure(row, isRetest ? visit.retested.measures : visit.measures);
        else if (kind == "test")
            test(row, isRetest ? visit.retested.tests : visit.tests);
        else
            scale(row, isRetest);
    }

    template <class T, class F> static T &oneOf(std::vector<T> &list, T made, F isSame)
    {
        if (list.empty() || !isSame(list.back()))
            list.push_back(std::move(made));
        return list.back();
    }

    static void finding(const TableRow &row, std::vector<Finding> &list)
    {
        Finding made;
        made.place = {{row["id"]}, row.side()};
        made.spot = row.word("spot", spotWords);
        if (row.has("at"))
            made.at = StructureId{row["at"]};
        made.familiar = row.yes("familiar");
        made.certain = row.yes("certain");
        made.afterComparing = row.yes("after_comparing");
        made.note = row["note"];
        Finding &f =
            oneOf(list, made, [&](const Finding &o) { return o.place == made.place && o.spot == made.spot && o.at == made.at; });
        const std::string quality = row["quality"];
        if (quality == "tenderness") {
            if (row.has("value"))
                f.tenderness = Tenderness{row.grade()};
            f.sore = row["answer"] == "sore";
            f.clear.tenderness = row.yes("clear");
        } else if (quality == "restriction") {
            if (row.has("value"))
                f.restriction = Restriction{row.grade()};
            f.stiff = row["answer"] == "stiff";
            f.clear.motion = row.yes("clear");
        } else if (quality == "play") {
            f.play = JointPlay{row.grade()};
        } else if (quality == "end_feel") {
            f.endFeel = row.word("answer", endFeelWords);
        } else if (quality == "texture") {
            f.texture.push_back(row["answer"]);
        } else if (quality == "refers_to") {
            f.refersTo.push_back({{row["to"]}, row.word("to_side", sideWords).value_or(Side::Midline)});
        } else if (quality == "unable") {
            f.unable = row["unable"];
        } else {
            EXPECT_TRUE(quality == "familiar" || quality == "note") << quality;
        }
    }

    static void measure(const TableRow &row, std::vector<Measure> &list)
    {
        Measure made;
        made.movement = row["id"];
        made.side = row.side();
        made.mode = row.word("mode", moveModeWords);
        made.device = row.word("device", deviceWords);
        made.familiar = row.yes("familiar");
        made.note = row["note"];
        Measure &m = oneOf(list, made,
            [&](const Measure &o) { return o.movement == made.movement && o.side == made.side && o.mode == made.mode; });
        const std::string quality = row["quality"];
        if (quality == "range" && row.has("value"))
            m.value = row.value();
        else if (quality == "pain_from")
            m.painFrom = row.value();
        else if (quality == "pain")
            m.hurts = true;
        else
            EXPECT_TRUE(quality == "familiar" || row["answer"] == "watched") << quality;
    }

    static void test(const TableRow &row, std::vector<TestResult> &list)
    {
        TestResult made;
        made.test = row["id"];
        made.side = row.side();
        made.note = row["note"];
        TestResult &t = oneOf(list, made, [&](const TestResult &o) { return o.test == made.test && o.side == made.side; });
        const std::string quality = row["quality"];
        if (quality == "pain")
            t.pain = row.word("answer", testPainWords);
        else if (quality == "changes")
            t.changesFromAfar = true;
        else if (quality == "grade")
            t.grade = row.grade();
        else if (quality == "present")
            t.present = row["answer"] == "yes";
        else if (quality == "unable")
            t.unable = row["unable"];
        else
            t.values.push_back(row.value());
    }

    void scale(const TableRow &row, bool isRetest)
    {
        EXPECT_EQ(row["kind"], "scale");
        EXPECT_EQ(row["scale"], "0-10");
        const PainScore score{row.grade()};
        if (isRetest) {
            EXPECT_EQ(row["id"], "pain-now");
            visit.retested.pain = score;
            return;
        }
        const auto number = static_cast<std::size_t>(std::stoi(row["complaint"]));
        visit.complaints.resize(std::max(visit.complaints.size(), number));
        Complaint &c = visit.complaints[number - 1];
        if (row["id"] == "activity")
            c.activities.push_back({row["name"], score.value});
        else
            (row["id"] == "pain-now" ? c.now : row["id"] == "pain-worst" ? c.worst : c.best) = score;
    }
};

// What the table holds of a visit.
Visit listedOf(const Visit &visit)
{
    Visit out;
    out.findings = visit.findings;
    out.measures = visit.measures;
    out.tests = visit.tests;
    out.retested = visit.retested;
    for (const Complaint &c : visit.complaints) {
        Complaint scores;
        scores.now = c.now;
        scores.worst = c.worst;
        scores.best = c.best;
        for (const Activity &activity : c.activities)
            if (activity.score)
                scores.activities.push_back(activity);
        out.complaints.push_back(scores);
    }
    while (!out.complaints.empty() && out.complaints.back() == Complaint{})
        out.complaints.pop_back();
    return out;
}

Visit smallVisit()
{
    Visit visit;
    visit.date = "2024-03-05";
    Complaint complaint;
    complaint.now = PainScore{6};
    complaint.activities = {{"tie shoes, \"kneeling\"", 4}};
    visit.complaints = {complaint};
    Finding tender;
    tender.place = {{"gluteus-maximus"}, Side::Right};
    tender.spot = Spot::Origin;
    tender.at = StructureId{"sacrum"};
    tender.tenderness = Tenderness{3};
    tender.stiff = true;
    tender.familiar = true;
    tender.note = "=2+3\nover two lines";
    Finding clear;
    clear.place = {{"l4-l5"}, Side::Midline};
    clear.clear = {true, true};
    clear.restriction = Restriction{0};
    Finding unable;
    unable.place = {{"psoas-major"}, Side::Left};
    unable.unable = "full bladder";
    visit.findings = {tender, clear, unable};
    Measure measure;
    measure.movement = "neck-flexion";
    measure.side = Side::Midline;
    measure.value = -5;
    measure.mode = MoveMode::Active;
    measure.device = Device::Inclinometer;
    measure.painFrom = 32.5;
    visit.measures = {measure};
    TestResult pressure;
    pressure.test = "blood-pressure";
    pressure.side = Side::Left;
    pressure.values = {128, 82};
    visit.tests = {pressure};
    visit.retested.pain = PainScore{2};
    tender.note.clear();
    tender.stiff = false;
    tender.tenderness = Tenderness{1};
    visit.retested.findings = {tender};
    return visit;
}

} // namespace

TEST(FindingsCsv, SaysEachQualityInARow)
{
    const std::string name = atlas().at({"gluteus-maximus"}).names.english;
    EXPECT_EQ(tableOf({{"7", smallVisit()}}),
        "patient,visit,visit_date,when,kind,id,name,complaint,side,spot,at,quality,value,answer,scale,unit,mode,device,familiar,"
        "certain,after_comparing,clear,to,to_side,unable,note\r\n"
        "7,1,2024-03-05,before,scale,pain-now,pain now,1,,,,score,6,,0-10,,,,,,,,,,,\r\n"
        "7,1,2024-03-05,before,scale,activity,\"tie shoes, \"\"kneeling\"\"\",1,,,,score,4,,0-10,,,,,,,,,,,\r\n"
        "7,1,2024-03-05,before,finding,gluteus-maximus,"
            + name
            + ",,right,origin,sacrum,tenderness,3,,0-4,,,,yes,,,,,,,\"'=2+3\nover two lines\"\r\n"
              "7,1,2024-03-05,before,finding,gluteus-maximus,"
            + name
            + ",,right,origin,sacrum,restriction,,stiff,,,,,yes,,,,,,,\"'=2+3\nover two lines\"\r\n"
              "7,1,2024-03-05,before,finding,l4-l5,L4/L5 segment,,midline,,,tenderness,,clear,,,,,,,,yes,,,,\r\n"
              "7,1,2024-03-05,before,finding,l4-l5,L4/L5 segment,,midline,,,restriction,0,,0-3,,,,,,,yes,,,,\r\n"
              "7,1,2024-03-05,before,finding,psoas-major,psoas major,,left,,,unable,,,,,,,,,,,,,full bladder,\r\n"
              "7,1,2024-03-05,before,measure,neck-flexion,neck "
              "flexion,,midline,,,range,-5,,,degrees,active,inclinometer,,,,,,,,\r\n"
              "7,1,2024-03-05,before,measure,neck-flexion,neck "
              "flexion,,midline,,,pain_from,32.5,,,degrees,active,inclinometer,,,,,,,,"
              "\r\n"
              "7,1,2024-03-05,before,test,blood-pressure,blood pressure,,left,,,systolic,128,,,mmHg,,,,,,,,,,\r\n"
              "7,1,2024-03-05,before,test,blood-pressure,blood pressure,,left,,,diastolic,82,,,mmHg,,,,,,,,,,\r\n"
              "7,1,2024-03-05,retest,scale,pain-now,pain now,1,,,,score,2,,0-10,,,,,,,,,,,\r\n"
              "7,1,2024-03-05,retest,finding,gluteus-maximus,"
            + name + ",,right,origin,sacrum,tenderness,1,,0-4,,,,yes,,,,,,,\r\n");
}

TEST(FindingsCsv, AllOfItCanBeReadBack)
{
    WholeVisits visits(11);
    for (int i = 0; i < 200; ++i) {
        const Visit visit = i % 2 == 0 ? visits.whole() : visits.next();
        const std::string text = tableOf({{"p", visit}});
        const TableReader read(rowsIn(text));
        ASSERT_TRUE(read.visit == listedOf(visit)) << i << "\n" << text;
    }
}

TEST(FindingsCsv, SeveralVisitsAreToldApart)
{
    WholeVisits visits(12);
    const Visit first = visits.whole();
    const Visit second = visits.whole();
    const auto rows = rowsIn(tableOf({{"-1", first}, {"Ørsted, Zoë", second}}));
    std::map<std::string, int> counted;
    for (std::size_t i = 1; i < rows.size(); ++i) {
        const TableRow row(rows[i]);
        ++counted[row["patient"] + "|" + row["visit"] + "|" + row["visit_date"]];
    }
    EXPECT_EQ(counted.size(), 2U);
    EXPECT_GT(counted["-1|1|" + first.date], 10) << "a patient's word is a text, which keeps its sign";
    EXPECT_GT(counted["Ørsted, Zoë|2|" + second.date], 10);
    EXPECT_EQ(rowsIn(tableOf({})).size(), 1U) << "the header stands without any visit";
}

TEST(FindingsCsv, NoTextIsTakenForAFormulaAndNoNumberIsChanged)
{
    WholeVisits visits(13);
    int guarded = 0;
    int negative = 0;
    for (int i = 0; i < 100; ++i)
        for (const TableCells &row : rowsIn(tableOf({{"=SUM(A1)", visits.whole()}})))
            for (std::size_t c = 0; c < row.size(); ++c) {
                if (row[c].empty())
                    continue;
                guarded += row[c][0] == '\'' ? 1 : 0;
                if (c != columnOf("value"))
                    EXPECT_FALSE(beginsFormula(row[c][0])) << findingsCsvColumns()[c] << ": " << row[c];
                else if (row[c] != "value") {
                    EXPECT_EQ(row[c].find_first_not_of("-.0123456789"), std::string::npos) << row[c];
                    negative += row[c][0] == '-' ? 1 : 0;
                }
            }
    EXPECT_GT(guarded, 100);
    EXPECT_GT(negative, 10) << "measures below zero were tried";
}

TEST(FindingsCsv, TheMirroredVisitHasTheSameRowsWithSidesSwapped)
{
    const auto swapped = [](const std::string &side) {
        return side == "left" ? std::string("right") : side == "right" ? std::string("left") : side;
    };
    WholeVisits visits(14);
    for (int i = 0; i < 50; ++i) {
        const Visit visit = visits.whole();
        auto rows = rowsIn(tableOf({{"p", visit}}));
        for (std::size_t r = 1; r < rows.size(); ++r)
            for (const char *name : {"side", "to_side"})
                rows[r][columnOf(name)] = swapped(rows[r][columnOf(name)]);
        ASSERT_EQ(rowsIn(tableOf({{"p", mirrored(visit)}})), rows);
    }
}

// By the csv module of Python, which follows RFC 4180.
TEST(FindingsCsv, AReaderThatIsNotOursReadsTheSame)
{
    WholeVisits visits(15);
    std::vector<ListedVisit> listed;
    for (int i = 0; i < 40; ++i)
        listed.push_back({"patient \"" + std::to_string(i) + "\"", visits.whole()});
    const std::string text = tableOf(listed);
    QProcess python;
    python.start(QStringLiteral("/usr/bin/python3"),
        {QStringLiteral("-c"),
            QStringLiteral("import csv, io, json, sys\n"
                           "text = io.TextIOWrapper(sys.stdin.buffer, encoding='utf-8', newline='')\n"
                           "print(json.dumps(list(csv.reader(text, strict=True))))")});
    python.write(text.data(), static_cast<qint64>(text.size()));
    python.closeWriteChannel();
    ASSERT_TRUE(python.waitForFinished()) << "python3 is needed";
    ASSERT_EQ(python.exitCode(), 0) << python.readAllStandardError().toStdString();
    const auto read = nlohmann::json::parse(python.readAllStandardOutput().toStdString()).get<std::vector<TableCells>>();
    EXPECT_GT(read.size(), 1000U);
    EXPECT_EQ(read, rowsIn(text));
}

} // namespace raphe::test
