#include "core/examination/Examination.h"

#include "core/base/JsonReader.h"
#include "core/base/NumberText.h"
#include "core/safety/ContentReading.h"

#include <algorithm>
#include <numbers>

namespace raphe {

using content::findById;

double ReadingError::least() const
{
    constexpr double z95 = 1.96;
    return kind == ErrorKind::Sem ? z95 * std::numbers::sqrt2 * value : value;
}

AnswerForm answerFormOf(TestKind kind)
{
    switch (kind) {
    case TestKind::Provocation:
    case TestKind::Nerve: return AnswerForm::Pain;
    case TestKind::Reflex:
    case TestKind::Power:
    case TestKind::Sensation: return AnswerForm::Grade;
    case TestKind::UpperMotorNeurone:
    case TestKind::Screening: return AnswerForm::Present;
    case TestKind::Vital: break;
    }
    return AnswerForm::Values;
}

std::string signRaisedBy(const ExamTest &test, const TestResult &result)
{
    if (!test.raises)
        return {};
    bool isThere = result.present.value_or(false);
    for (std::size_t i = 0; i < std::min(test.raises->from.size(), result.values.size()); ++i)
        isThere = isThere || result.values[i] >= test.raises->from[i];
    return isThere ? test.raises->sign : std::string();
}

int highestGradeOf(TestKind kind)
{
    constexpr int power = 5;
    constexpr int reflex = 4;
    constexpr int sensation = 2;
    return kind == TestKind::Power ? power : kind == TestKind::Reflex ? reflex : sensation;
}

const ExamSource *Examination::findSource(std::string_view id) const
{
    return findById(sources, id);
}

const Movement *Examination::findMovement(std::string_view id) const
{
    return findById(movements, id);
}

const ExamTest *Examination::findTest(std::string_view id) const
{
    return findById(tests, id);
}

const Sheet *Examination::findSheet(std::string_view id) const
{
    return findById(sheets, id);
}

namespace {

// Throws Error at the first thing that cannot be.
class Check {
public:
    Check(const Examination &examination, std::string file) : m_examination(examination), m_file(std::move(file)) { }

    void measure(const Measure &measure, const std::string &pointer) const
    {
        const Movement *movement = m_examination.findMovement(measure.movement);
        if (!movement)
            fail(ErrorCode::UnknownId, pointer + "/movement", measure.movement);
        side(measure.side, movement->isPaired, pointer, measure.movement);
        for (const auto &[name, value] : {std::pair{"/value", measure.value}, {"/pain_from", measure.painFrom}})
            if (value && (*value < movement->least || *value > movement->furthest))
                fail(ErrorCode::OutOfRange, pointer + name, allowed(*value, movement->least, movement->furthest));
    }

    void result(const TestResult &result, const std::string &pointer) const
    {
        const ExamTest *test = m_examination.findTest(result.test);
        if (!test)
            fail(ErrorCode::UnknownId, pointer + "/test", result.test);
        side(result.side, test->isPaired, pointer, result.test);
        if (result.unable)
            return;
        const AnswerForm form = answerFormOf(test->kind);
        const bool fits = (form == AnswerForm::Pain && result.pain) || (form == AnswerForm::Grade && result.grade)
            || (form == AnswerForm::Present && result.present) || (form == AnswerForm::Values && !result.values.empty());
        if (!fits)
            fail(ErrorCode::WrongType, pointer,
                std::string(wordOf(testKindWords, test->kind)) + " test, allowed: " + nameOf(form));
        if (result.changesFromAfar && test->kind != TestKind::Nerve)
            fail(ErrorCode::Contradiction, pointer + "/changes", "changes, no nerve test");
        if (result.grade && *result.grade > highestGradeOf(test->kind))
            fail(ErrorCode::OutOfRange, pointer + "/grade", allowed(*result.grade, 0, highestGradeOf(test->kind)));
        if (form == AnswerForm::Values)
            values(*test, result, pointer + "/values");
    }

    // What a retest or a moment of the timeline points at.
    void known(MomentKind kind, const std::string &id, Side at, const std::string &pointer) const
    {
        if (kind == MomentKind::Finding)
            return;
        const Movement *movement = kind == MomentKind::Movement ? m_examination.findMovement(id) : nullptr;
        const ExamTest *test = kind == MomentKind::Test ? m_examination.findTest(id) : nullptr;
        if (!movement && !test)
            fail(ErrorCode::UnknownId, pointer + "/id", id);
        side(at, movement ? movement->isPaired : test->isPaired, pointer, id);
    }

private:
    [[noreturn]] void fail(ErrorCode code, const std::string &pointer, std::string detail) const
    {
        throw Error{code, m_file + "#" + pointer, std::move(detail)};
    }

    static std::string allowed(double value, double least, double most)
    {
        return numberText(value) + ", allowed: " + numberText(least) + " to " + numberText(most);
    }

    static std::string nameOf(AnswerForm form)
    {
        switch (form) {
        case AnswerForm::Pain: return "pain";
        case AnswerForm::Grade: return "grade";
        case AnswerForm::Present: return "present";
        case AnswerForm::Values: break;
        }
        return "values";
    }

    void side(Side side, bool isPaired, const std::string &pointer, const std::string &id) const
    {
        if ((side == Side::Midline) == isPaired)
            fail(ErrorCode::WrongSide, pointer + "/side", id);
    }

    void values(const ExamTest &test, const TestResult &result, const std::string &pointer) const
    {
        const VitalForm &form = *test.vital;
        if (result.values.size() != form.fields.size())
            fail(ErrorCode::OutOfRange, pointer,
                std::to_string(result.values.size()) + ", allowed: " + std::to_string(form.fields.size()));
        for (std::size_t i = 0; i < form.fields.size(); ++i)
            if (result.values[i] < form.least[i] || result.values[i] > form.most[i])
                fail(ErrorCode::OutOfRange, pointer + "/" + std::to_string(i),
                    allowed(result.values[i], form.least[i], form.most[i]));
    }

    const Examination &m_examination;
    std::string m_file;
};

} // namespace

Result<Done> checkExamined(const Examination &examination, const Visit &visit, const std::string &file)
{
    return guarded([&] {
        const Check check(examination, file);
        for (std::size_t i = 0; i < visit.measures.size(); ++i)
            check.measure(visit.measures[i], "/measures/" + std::to_string(i));
        for (std::size_t i = 0; i < visit.tests.size(); ++i)
            check.result(visit.tests[i], "/tests/" + std::to_string(i));
        for (std::size_t i = 0; i < visit.retested.measures.size(); ++i)
            check.measure(visit.retested.measures[i], "/retested/measures/" + std::to_string(i));
        for (std::size_t i = 0; i < visit.retested.tests.size(); ++i)
            check.result(visit.retested.tests[i], "/retested/tests/" + std::to_string(i));
        if (visit.retest)
            check.known(visit.retest->kind, visit.retest->id, visit.retest->side, "/retest");
        for (std::size_t i = 0; i < visit.timeline.size(); ++i)
            check.known(visit.timeline[i].kind, visit.timeline[i].id, visit.timeline[i].side, "/timeline/" + std::to_string(i));
        return Done{};
    });
}

} // namespace raphe
