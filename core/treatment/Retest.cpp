#include "core/treatment/Retest.h"

#include "core/anatomy/Atlas.h"
#include "core/base/NumberText.h"
#include "core/examination/ComparingWords.h"
#include "core/examination/RecordWords.h"
#include "core/treatment/MovementScale.h"

#include <QCoreApplication>

#include <algorithm>
#include <tuple>

namespace raphe {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("Retest", text);
}

std::string said(const char *text)
{
    return tr(text).toStdString();
}

// Of things without a scale: the two words, and that nothing is known of the error.
std::string changedInWords(const std::string &before, const std::string &now)
{
    return before == now ? said(QT_TRANSLATE_NOOP("Retest", "no change: error unknown"))
                         : tr(QT_TRANSLATE_NOOP("Retest", "was %1, now %2: error unknown"))
                               .arg(QString::fromStdString(before), QString::fromStdString(now))
                               .toStdString();
}

RetestItem itemOf(const Place &place, const Atlas &atlas)
{
    return {MomentKind::Finding, place.structure.value, place.side,
        namedWithSide(atlas.at(place.structure).names.english, place.side)};
}

RetestItem itemOf(const RetestMark &mark, const Examination &examination)
{
    std::string name = mark.id;
    if (const Movement *movement = mark.kind == MomentKind::Movement ? examination.findMovement(mark.id) : nullptr)
        name = movement->name;
    if (const ExamTest *test = mark.kind == MomentKind::Test ? examination.findTest(mark.id) : nullptr)
        name = test->name;
    return {mark.kind, mark.id, mark.side, namedWithSide(name, mark.side)};
}

RetestItem itemOf(const Measure &measure, const Examination &examination)
{
    return itemOf(RetestMark{MomentKind::Movement, measure.movement, measure.side}, examination);
}

RetestItem itemOf(const TestResult &result, const Examination &examination)
{
    return itemOf(RetestMark{MomentKind::Test, result.test, result.side}, examination);
}

RetestItem painItem()
{
    return {MomentKind::Finding, {}, Side::Midline, said(QT_TRANSLATE_NOOP("Retest", "pain now, 0 to 10"))};
}

std::optional<PainScore> painBefore(const Visit &visit)
{
    return visit.complaints.empty() ? std::nullopt : visit.complaints.front().now;
}

bool isAgain(const Visit &visit, const RetestItem &item)
{
    const Retested &again = visit.retested;
    if (item.isPain())
        return again.pain.has_value();
    switch (item.kind) {
    case MomentKind::Finding:
        return std::any_of(again.findings.begin(), again.findings.end(),
            [&](const Finding &f) { return f.place.structure.value == item.id && f.place.side == item.side; });
    case MomentKind::Movement:
        return std::any_of(again.measures.begin(), again.measures.end(),
            [&](const Measure &m) { return m.movement == item.id && m.side == item.side; });
    case MomentKind::Test: break;
    }
    return std::any_of(
        again.tests.begin(), again.tests.end(), [&](const TestResult &r) { return r.test == item.id && r.side == item.side; });
}

class Pairs {
public:
    Pairs(const Visit &visit, const Examination &examination, const Atlas &atlas)
        : m_visit(visit), m_examination(examination), m_atlas(atlas)
    {
    }

    std::vector<RetestPair> make()
    {
        for (const Measure &now : m_visit.retested.measures)
            for (const Measure &before : m_visit.measures)
                if (std::tie(before.movement, before.side, before.mode) == std::tie(now.movement, now.side, now.mode))
                    compare(before, now);
        for (const TestResult &now : m_visit.retested.tests)
            for (const TestResult &before : m_visit.tests)
                if (std::tie(before.test, before.side) == std::tie(now.test, now.side))
                    compare(before, now);
        for (const Finding &now : m_visit.retested.findings)
            for (const Finding &before : m_visit.findings)
                if (std::tie(before.place, before.spot, before.at) == std::tie(now.place, now.spot, now.at))
                    compare(before, now);
        if (const auto before = painBefore(m_visit); before && m_visit.retested.pain) {
            const int now = m_visit.retested.pain->value;
            numbers(painItem(), {}, {before->value, now}, {std::to_string(before->value), std::to_string(now)}, painScale());
        }
        return std::move(m_out);
    }

private:
    void numbers(const RetestItem &item, std::string quality, std::pair<double, double> values,
        std::pair<std::string, std::string> words, const ReadingScale &scale)
    {
        const ReadingChange change = changeOf(values.first, values.second, scale);
        m_out.push_back(
            {item, std::move(quality), std::move(words.first), std::move(words.second), change, inWords(change, scale)});
    }
    void words(const RetestItem &item, std::string quality, std::string before, std::string now)
    {
        std::string verdict = changedInWords(before, now);
        m_out.push_back({item, std::move(quality), std::move(before), std::move(now), {}, std::move(verdict)});
    }

    void compare(const Measure &before, const Measure &now)
    {
        const Movement *movement = m_examination.findMovement(now.movement);
        if (!movement)
            return;
        const RetestItem item = itemOf(now, m_examination);
        if (before.value && now.value) {
            const auto words = std::pair(valueInWords(*movement, *before.value), valueInWords(*movement, *now.value));
            if (before.device == now.device)
                numbers(item, {}, {*before.value, *now.value}, words, movementScale(*movement, now, m_examination));
            else
                m_out.push_back({item, {}, words.first, words.second, {},
                    said(QT_TRANSLATE_NOOP("Retest", "not compared: measured with two devices"))});
        }
        const auto pain = [](const Measure &m) {
            return m.familiar    ? said(QT_TRANSLATE_NOOP("Retest", "familiar pain"))
                : m.bringsPain() ? said(QT_TRANSLATE_NOOP("Retest", "pain"))
                                 : said(QT_TRANSLATE_NOOP("Retest", "no pain"));
        };
        if (before.bringsPain() || now.bringsPain())
            words(item, said(QT_TRANSLATE_NOOP("Retest", "pain")), pain(before), pain(now));
    }

    void compare(const TestResult &before, const TestResult &now)
    {
        const RetestItem item = itemOf(now, m_examination);
        const auto pain = [](TestPain p) {
            return p == TestPain::None    ? said(QT_TRANSLATE_NOOP("Retest", "no pain"))
                : p == TestPain::Familiar ? said(QT_TRANSLATE_NOOP("Retest", "familiar pain"))
                                          : said(QT_TRANSLATE_NOOP("Retest", "other pain"));
        };
        const auto presence = [](bool there) {
            return there ? said(QT_TRANSLATE_NOOP("Retest", "present")) : said(QT_TRANSLATE_NOOP("Retest", "not present"));
        };
        if (before.pain && now.pain)
            words(item, said(QT_TRANSLATE_NOOP("Retest", "pain")), pain(*before.pain), pain(*now.pain));
        if (before.present && now.present)
            words(item, {}, presence(*before.present), presence(*now.present));
        if (before.grade && now.grade)
            words(item, said(QT_TRANSLATE_NOOP("Retest", "grade")), std::to_string(*before.grade), std::to_string(*now.grade));
        if (!before.values.empty() && before.values.size() == now.values.size())
            words(item, {}, listed(before.values), listed(now.values));
    }

    static std::string listed(const std::vector<double> &values)
    {
        std::string out;
        for (const double value : values)
            out += (out.empty() ? "" : "/") + numberText(value);
        return out;
    }

    void compare(const Finding &before, const Finding &now)
    {
        const RetestItem item = itemOf(now.place, m_atlas);
        const auto at = [&](const char *quality) {
            return before.spot ? tr(QT_TRANSLATE_NOOP("Retest", "%1, %2"))
                                     .arg(tr(quality), QString::fromStdString(std::string(wordOf(spotWords, *before.spot))))
                                     .toStdString()
                               : said(quality);
        };
        const auto grade = [&](const char *quality, std::optional<int> first, std::optional<int> second, bool isUngraded) {
            if (first && second)
                numbers(item, at(quality), {*first, *second}, {std::to_string(*first), std::to_string(*second)}, gradeScale());
            else if (isUngraded && second)
                words(item, at(quality), said(QT_TRANSLATE_NOOP("Retest", "found, without a grade")), std::to_string(*second));
        };
        const auto tender = [](const Finding &f) {
            return f.tenderness ? std::optional(f.tenderness->grade) : f.clear.tenderness ? std::optional(0) : std::nullopt;
        };
        const auto stiff = [](const Finding &f) {
            return f.restriction ? std::optional(f.restriction->grade) : f.clear.motion ? std::optional(0) : std::nullopt;
        };
        grade(QT_TRANSLATE_NOOP("Retest", "tenderness"), tender(before), tender(now), before.sore);
        grade(QT_TRANSLATE_NOOP("Retest", "restriction"), stiff(before), stiff(now), before.stiff);
        if (before.play && now.play)
            words(item, at(QT_TRANSLATE_NOOP("Retest", "joint play")), std::to_string(before.play->grade),
                std::to_string(now.play->grade));
    }

    const Visit &m_visit;
    const Examination &m_examination;
    const Atlas &m_atlas;
    std::vector<RetestPair> m_out;
};

} // namespace

std::vector<RetestItem> toRetest(const Visit &visit, const Examination &examination, const Atlas &atlas)
{
    std::vector<RetestItem> out;
    const auto add = [&](RetestItem item) {
        if (std::find(out.begin(), out.end(), item) == out.end())
            out.push_back(std::move(item));
    };
    if (visit.retest)
        add(itemOf(*visit.retest, examination));
    const auto isJoint = [&](const Finding &f) { return atlas.at(f.place.structure).kind == Kind::Joint; };
    for (const Finding &f : visit.findings)
        if (f.isFound() && isJoint(f))
            add(itemOf(f.place, atlas));
    for (const Finding &f : visit.findings)
        if (f.isFound() && !isJoint(f) && f.tendernessGrade() > 0)
            add(itemOf(f.place, atlas));
    if (painBefore(visit))
        out.push_back(painItem());
    return out;
}

std::vector<RetestItem> notRetested(const Visit &visit, const Examination &examination, const Atlas &atlas)
{
    std::vector<RetestItem> out = toRetest(visit, examination, atlas);
    std::erase_if(out, [&](const RetestItem &item) { return isAgain(visit, item); });
    return out;
}

std::vector<RetestPair> retestPairs(const Visit &visit, const Examination &examination, const Atlas &atlas)
{
    return Pairs(visit, examination, atlas).make();
}

} // namespace raphe
