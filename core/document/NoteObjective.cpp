// What was measured, tested and felt: found, clear, what could not be examined, and what was not.
#include "core/document/FindingWords.h"
#include "core/document/NoteSource.h"

#include "core/examination/Comparing.h"
#include "core/examination/ComparingWords.h"
#include "core/examination/Proposal.h"
#include "core/examination/RecordWords.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <tuple>

namespace raphe {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("ClinicalNote", text);
}

std::string said(const char *text)
{
    return tr(text).toStdString();
}

QString q(const std::string &text)
{
    return QString::fromStdString(text);
}

std::string capitalised(const std::string &words)
{
    QString out = q(words);
    if (!out.isEmpty())
        out[0] = out[0].toUpper();
    return out.toStdString();
}

QString deviceWords(Device device)
{
    switch (device) {
    case Device::Goniometer: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "by goniometer"));
    case Device::Inclinometer: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "by inclinometer"));
    case Device::Compass: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "by compass"));
    case Device::Phone: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "by telephone"));
    case Device::Tape: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "by tape"));
    case Device::Ruler: return tr(QT_TRANSLATE_NOOP("ClinicalNote", "by ruler"));
    case Device::Eye: break;
    }
    return tr(QT_TRANSLATE_NOOP("ClinicalNote", "by eye"));
}

class ObjectiveWriter {
public:
    explicit ObjectiveWriter(const NoteSource &source)
        : m_source(source),
          m_visit(source.visit),
          m_examination(source.known.examination),
          m_part(said(QT_TRANSLATE_NOOP("ClinicalNote", "Objective")))
    {
    }

    NotePart write()
    {
        section(QT_TRANSLATE_NOOP("ClinicalNote", "Vital signs"));
        for (const TestResult &result : m_visit.tests)
            if (isVital(result))
                test(result);
        section(QT_TRANSLATE_NOOP("ClinicalNote", "Movements"));
        movements(m_visit.measures);
        section(QT_TRANSLATE_NOOP("ClinicalNote", "Tests"));
        for (const TestResult &result : m_visit.tests)
            if (!isVital(result))
                test(result);
        section(QT_TRANSLATE_NOOP(
            "ClinicalNote", "Felt by hand (tenderness 0 to 4, restriction 0 to 3, joint play 0 to 6 with 3 usual)"));
        findings(m_visit.findings);
        if (m_visit.sidesIntended)
            line(said(QT_TRANSLATE_NOOP("ClinicalNote", "Sides")),
                said(QT_TRANSLATE_NOOP("ClinicalNote",
                    "complaint and findings stand on opposite sides: the practitioner was asked, and meant it so")));
        notExamined();
        section(QT_TRANSLATE_NOOP("ClinicalNote", "Retest"));
        if (m_visit.retest)
            line(said(QT_TRANSLATE_NOOP("ClinicalNote", "Marked to be examined again")), marked(*m_visit.retest));
        section(QT_TRANSLATE_NOOP("ClinicalNote", "Examined again after the treatment"));
        again(m_visit.retested);
        return m_part.take();
    }

private:
    void section(const char *title) { m_part.section(said(title)); }
    void line(std::string label, std::string text, std::string asOf = {})
    {
        m_part.line(std::move(label), std::move(text), std::move(asOf));
    }

    [[nodiscard]] bool isVital(const TestResult &result) const
    {
        const ExamTest *known = m_examination.findTest(result.test);
        return known && known->kind == TestKind::Vital;
    }

    void test(const TestResult &result)
    {
        const ExamTest *known = m_examination.findTest(result.test);
        const std::string name = namedWithSide(known ? known->name : result.test, result.side);
        line(name, after(inWords(m_examination, result), name, said(QT_TRANSLATE_NOOP("ClinicalNote", "noted"))),
            sameNote(result.note, [&](const Visit &before) { return noteOf(before.tests, result); }));
    }

    // What follows the name and a colon.
    static std::string after(const std::string &words, const std::string &name, const std::string &nothing)
    {
        return words.size() > name.size() + 2 ? words.substr(name.size() + 2) : nothing;
    }

    void movements(const std::vector<Measure> &measures)
    {
        for (auto measure = measures.begin(); measure != measures.end(); ++measure) {
            movement(*measure);
            // Both sides are held against each other once the second of them stands there.
            const bool isSecond = std::any_of(measures.begin(), measure, [&](const Measure &other) {
                return std::tie(other.movement, other.mode) == std::tie(measure->movement, measure->mode);
            });
            const Movement *known = m_examination.findMovement(measure->movement);
            if (!known || !isSecond)
                continue;
            if (const auto sides = comparedSides(*known, measures, measure->mode))
                //: %1: a movement
                line(tr(QT_TRANSLATE_NOOP("ClinicalNote", "%1, sides compared"))
                         .arg(q(nameOf(*measure, Side::Midline)))
                         .toStdString(),
                    inWords(*known, *sides));
        }
    }

    // With who moves.
    [[nodiscard]] std::string nameOf(const Measure &measure, Side side) const
    {
        Measure bare;
        bare.movement = measure.movement;
        bare.side = side;
        bare.mode = measure.mode;
        return inWords(m_examination, bare);
    }

    void movement(const Measure &measure)
    {
        const std::string name = nameOf(measure, measure.side);
        QStringList words;
        if (!measure.value)
            words << tr(QT_TRANSLATE_NOOP("ClinicalNote", "watched, not measured"));
        if (const std::string rest = after(inWords(m_examination, measure), name, {}); !rest.empty())
            words << q(rest);
        if (measure.device)
            words << deviceWords(*measure.device);
        line(name, words.join(QStringLiteral(", ")).toStdString(),
            sameNote(measure.note, [&](const Visit &before) { return noteOf(before.measures, measure); }));
    }

    static std::string noteOf(const std::vector<Measure> &list, const Measure &like)
    {
        const auto it = std::find_if(list.begin(), list.end(), [&](const Measure &m) {
            return std::tie(m.movement, m.side, m.mode) == std::tie(like.movement, like.side, like.mode);
        });
        return it == list.end() ? std::string() : it->note;
    }
    static std::string noteOf(const std::vector<TestResult> &list, const TestResult &like)
    {
        const auto it = std::find_if(list.begin(), list.end(),
            [&](const TestResult &r) { return std::tie(r.test, r.side) == std::tie(like.test, like.side); });
        return it == list.end() ? std::string() : it->note;
    }
    static std::string noteOf(const std::vector<Finding> &list, const Finding &like)
    {
        const auto it = std::find_if(list.begin(), list.end(), [&](const Finding &f) {
            return std::tie(f.place, f.spot, f.at, f.note) == std::tie(like.place, like.spot, like.at, like.note);
        });
        return it == list.end() ? std::string() : it->note;
    }
    template <class Before> [[nodiscard]] std::string sameNote(const std::string &note, Before before) const
    {
        return m_source.sameWords(!note.empty() && m_source.previous && before(*m_source.previous) == note);
    }

    // Found first, then what could not be examined, then clear ones; of these those that say the same stand in one line.
    void findings(const std::vector<Finding> &findings)
    {
        for (const Finding &finding : findings)
            if (!finding.isUnable() && !isPlainlyClear(finding))
                place(finding);
        for (const Finding &finding : findings)
            if (finding.isUnable())
                place(finding);
        std::vector<std::pair<std::string, std::vector<Place>>> clear;
        for (const Finding &finding : findings)
            if (isPlainlyClear(finding)) {
                const std::string words = findingInWords(m_source.atlas(), finding);
                auto same = std::find_if(clear.begin(), clear.end(), [&](const auto &one) { return one.first == words; });
                if (same == clear.end())
                    same = clear.insert(clear.end(), {words, {}});
                same->second.push_back(finding.place);
            }
        for (const auto &[words, places] : clear)
            line(capitalised(words), m_source.named(places));
    }

    // Clear, and nothing besides.
    static bool isPlainlyClear(const Finding &finding)
    {
        Finding plain;
        plain.place = finding.place;
        plain.clear = finding.clear;
        return finding.clear.any() && plain == finding;
    }

    void place(const Finding &finding)
    {
        const std::string words = findingInWords(m_source.atlas(), finding);
        line(m_source.named(finding.place), words.empty() ? said(QT_TRANSLATE_NOOP("ClinicalNote", "noted")) : words,
            sameNote(finding.note, [&](const Visit &before) { return noteOf(before.findings, finding); }));
    }

    // What stands on a sheet: how much of it was examined, what only on one side, what not at all.
    struct Looked {
        int done = 0;
        QStringList oneSide; // with the side that is missing
        QStringList none;
    };

    template <class IsDone> static void look(Looked &out, const std::string &name, bool isPaired, IsDone isDone)
    {
        const bool right = isDone(isPaired ? Side::Right : Side::Midline);
        const bool left = isPaired ? isDone(Side::Left) : right;
        out.done += right || left ? 1 : 0;
        if (!right && !left)
            out.none << q(name);
        else if (right != left)
            out.oneSide << q(namedWithSide(name, right ? Side::Left : Side::Right));
    }

    [[nodiscard]] Looked movementsOf(const Sheet &sheet) const
    {
        Looked out;
        for (const std::string &id : sheet.movements)
            if (const Movement *movement = m_examination.findMovement(id))
                look(out, movement->name, movement->isPaired, [&](Side side) {
                    return std::any_of(m_visit.measures.begin(), m_visit.measures.end(),
                        [&](const Measure &m) { return m.movement == id && m.side == side; });
                });
        return out;
    }

    [[nodiscard]] Looked testsOn(const Sheet &sheet) const
    {
        Looked out;
        for (const ExamTest *test : testsOf(m_examination, sheet, callsOf(m_source.known.regions, m_visit), m_visit))
            look(out, test->name, test->isPaired, [&](Side side) {
                return std::any_of(m_visit.tests.begin(), m_visit.tests.end(),
                    [&](const TestResult &r) { return r.test == test->id && r.side == side; });
            });
        return out;
    }

    [[nodiscard]] Looked jointsOf(const Sheet &sheet) const
    {
        Looked out;
        for (const StructureId &segment : sheet.segments)
            look(out, m_source.atlas().at(segment).names.english, false, [&](Side) {
                return std::any_of(m_visit.findings.begin(), m_visit.findings.end(),
                    [&](const Finding &f) { return f.place.structure == segment; });
            });
        return out;
    }

    // Of the sheet that the complaint calls for; of several, of that on which most was examined.
    void notExamined()
    {
        const Sheet *worked = nullptr;
        int most = -1;
        for (const Sheet *sheet : proposedSheets(m_examination, m_source.known.regions, m_visit))
            if (const int done = movementsOf(*sheet).done + testsOn(*sheet).done + jointsOf(*sheet).done; done > most) {
                worked = sheet;
                most = done;
            }
        if (!worked)
            return;
        //: %1: name of a sheet of the examination
        m_part.section(tr(QT_TRANSLATE_NOOP("ClinicalNote", "Not examined, of what stands on the sheet '%1'"))
                           .arg(q(worked->name))
                           .toStdString(),
            true);
        missing(QT_TRANSLATE_NOOP("ClinicalNote", "Movements"), movementsOf(*worked));
        missing(QT_TRANSLATE_NOOP("ClinicalNote", "Tests"), testsOn(*worked));
        missing(QT_TRANSLATE_NOOP("ClinicalNote", "Joints"), jointsOf(*worked));
    }

    // One side alone comes first: there it was begun.
    void missing(const char *label, const Looked &looked)
    {
        constexpr qsizetype mostNamed = 12; // our choice
        QStringList names = looked.oneSide + looked.none;
        if (names.isEmpty())
            return;
        if (looked.done == 0)
            names = {tr(QT_TRANSLATE_NOOP("ClinicalNote", "none of the %1 was")).arg(names.size())};
        else if (names.size() > mostNamed)
            names = names.mid(0, mostNamed) << tr(QT_TRANSLATE_NOOP("ClinicalNote", "and %1 more")).arg(names.size() - mostNamed);
        line(said(label), names.join(QStringLiteral("; ")).toStdString());
    }

    [[nodiscard]] std::string marked(const RetestMark &mark) const
    {
        std::string name = mark.id;
        if (const Movement *movement = mark.kind == MomentKind::Movement ? m_examination.findMovement(mark.id) : nullptr)
            name = movement->name;
        if (const ExamTest *test = mark.kind == MomentKind::Test ? m_examination.findTest(mark.id) : nullptr)
            name = test->name;
        return namedWithSide(name, mark.side);
    }

    void again(const Retested &retested)
    {
        movements(retested.measures);
        for (const TestResult &result : retested.tests)
            test(result);
        findings(retested.findings);
        if (retested.pain)
            line(said(QT_TRANSLATE_NOOP("ClinicalNote", "Pain now (numeric rating scale, 0 to 10)")),
                std::to_string(retested.pain->value));
    }

    const NoteSource &m_source;
    const Visit &m_visit;
    const Examination &m_examination;
    NotePartWriter m_part;
};

} // namespace

NotePart objectivePart(const NoteSource &source)
{
    return ObjectiveWriter(source).write();
}

} // namespace raphe
