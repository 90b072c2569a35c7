#include "app/raphe/closing/RetestTest.h"

#include "app/raphe/intake/ChoiceRow.h"

#include <algorithm>

namespace raphe {

namespace {

enum Present { IsThere, IsNot };

} // namespace

RetestTest::RetestTest(VisitSession &session, const RetestItem &item) : RetestRow(session, item)
{
    const TestResult *before = session.resultOf(item.id, item.side);
    const ExamTest *test = session.examination().findTest(item.id);
    const QString name = QString::fromStdString(item.name);
    if (before && before->pain)
        m_answer = new ChoiceRow(name, {tr("None"), tr("Other pain"), tr("Familiar")});
    else if (before && before->grade && test)
        m_answer = ChoiceRow::ofNumbers(name, highestGradeOf(test->kind));
    else if (before && before->present)
        m_answer = new ChoiceRow(name, {tr("Present"), tr("Absent")});
    if (!m_answer) {
        addQuiet(before ? tr("Do it again on the sheet of the examination: its numbers are not compared here.")
                        : tr("Nothing was written down of it before: there is nothing to compare with."));
        return;
    }
    add(m_answer, {});
    connect(m_answer, &ChoiceRow::chosen, this, &RetestTest::take);
}

void RetestTest::take()
{
    const TestResult *before = m_session.resultOf(item().id, item().side);
    if (!before || isUnread(*m_answer))
        return;
    Retested again = m_session.visit().retested;
    std::erase_if(again.tests, [&](const TestResult &r) { return r.test == item().id && r.side == item().side; });
    if (const auto answer = m_answer->value()) {
        TestResult now;
        now.test = item().id;
        now.side = item().side;
        if (before->pain)
            now.pain = static_cast<TestPain>(*answer);
        else if (before->grade)
            now.grade = *answer;
        else
            now.present = *answer == IsThere;
        again.tests.push_back(now);
    }
    m_session.setRetested(again);
}

void RetestTest::showEntry()
{
    if (!m_answer)
        return;
    const auto &all = m_session.visit().retested.tests;
    const auto now =
        std::find_if(all.begin(), all.end(), [&](const TestResult &r) { return r.test == item().id && r.side == item().side; });
    if (now == all.end())
        return m_answer->give(std::nullopt);
    m_answer->give(now->pain ? static_cast<int>(*now->pain) : now->grade ? *now->grade : *now->present ? IsThere : IsNot);
}

} // namespace raphe
