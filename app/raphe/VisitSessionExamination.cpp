// The examination's part of the open visit: movements, tests, joint play, and when what was recorded.
#include "app/raphe/VisitSession.h"

#include "core/examination/RecordWords.h"
#include "core/safety/Day.h"

#include <algorithm>

namespace raphe {

namespace {

constexpr double millimetresPerCentimetre = 10;

bool saysSomething(const Measure &m)
{
    return m.value || m.bringsPain() || !m.note.empty();
}

bool isOfSame(const Measure &a, const Measure &b)
{
    return a.movement == b.movement && a.side == b.side && a.mode == b.mode;
}

bool isOfSame(const TestResult &a, const TestResult &b)
{
    return a.test == b.test && a.side == b.side;
}

bool isOfSame(const Finding &a, const Finding &b)
{
    return a.place == b.place && a.spot == b.spot && a.at == b.at;
}

template <class T> void replaceOrAdd(std::vector<T> &list, const T &item)
{
    const auto same = std::find_if(list.begin(), list.end(), [&](const T &other) { return isOfSame(other, item); });
    if (same == list.end())
        list.push_back(item);
    else
        *same = item;
}

template <class T> bool isIn(const std::vector<T> &list, const T &item)
{
    return std::find(list.begin(), list.end(), item) != list.end();
}

Moment momentOf(const Finding &f)
{
    return {{}, MomentKind::Finding, f.place.structure.value, f.place.side};
}

Moment momentOf(const Measure &m)
{
    return {{}, MomentKind::Movement, m.movement, m.side};
}

Moment momentOf(const TestResult &r)
{
    return {{}, MomentKind::Test, r.test, r.side};
}

bool isAbout(const Moment &a, const Moment &b)
{
    return a.kind == b.kind && a.id == b.id && a.side == b.side;
}

// What is new or changed stands at the end, at this time; what is gone has no time.
template <class T>
void noteTimes(std::vector<Moment> &timeline, const std::vector<T> &before, const std::vector<T> &after, const std::string &now)
{
    const auto drop = [&](const Moment &gone) { std::erase_if(timeline, [&](const Moment &m) { return isAbout(m, gone); }); };
    const auto hasSame = [&](const Moment &moment) {
        return std::any_of(after.begin(), after.end(), [&](const T &item) { return isAbout(momentOf(item), moment); });
    };
    for (const T &item : before)
        if (!hasSame(momentOf(item)))
            drop(momentOf(item));
    for (const T &item : after) {
        if (isIn(before, item))
            continue;
        Moment moment = momentOf(item);
        drop(moment);
        moment.time = now;
        timeline.push_back(std::move(moment));
    }
}

} // namespace

void VisitSession::noteTime(Recorded &after) const
{
    const std::string now = m_clock().toString(QStringLiteral("HH:mm:ss")).toStdString();
    noteTimes(after.timeline, m_visit.findings, after.findings, now);
    noteTimes(after.timeline, m_visit.measures, after.measures, now);
    noteTimes(after.timeline, m_visit.tests, after.tests, now);
}

Reference VisitSession::reference() const
{
    return {m_record.sex, m_visit.patient ? yearsBetween(m_visit.patient->born, m_visit.date) : std::nullopt};
}

std::optional<Millimetres> VisitSession::stature() const
{
    return m_record.height ? std::optional(Millimetres{*m_record.height * millimetresPerCentimetre}) : std::nullopt;
}

// A visit whose conditions cannot be read stops the window long before; here the reasons would be lost with the rest.
Cautions VisitSession::cautions() const
{
    auto cautions = Cautions::of(m_learned.adviser.rules(), *m_learned.knowledge.regions, asSuspected(), "visit");
    return cautions ? std::move(cautions).value()
                    : Cautions::of(m_learned.adviser.rules(), *m_learned.knowledge.regions, {}, "visit").value();
}

const Finding *VisitSession::findingAt(const Place &place, std::optional<Spot> spot) const
{
    const auto &list = m_visit.findings;
    const auto it = std::find_if(list.begin(), list.end(), [&](const Finding &f) { return f.place == place && f.spot == spot; });
    return it == list.end() ? nullptr : &*it;
}

const Measure *VisitSession::measureOf(const std::string &movement, Side side, std::optional<MoveMode> mode) const
{
    const auto &list = m_visit.measures;
    const auto it = std::find_if(
        list.begin(), list.end(), [&](const Measure &m) { return m.movement == movement && m.side == side && m.mode == mode; });
    return it == list.end() ? nullptr : &*it;
}

const TestResult *VisitSession::resultOf(const std::string &test, Side side) const
{
    const auto &list = m_visit.tests;
    const auto it = std::find_if(list.begin(), list.end(), [&](const TestResult &r) { return r.test == test && r.side == side; });
    return it == list.end() ? nullptr : &*it;
}

void VisitSession::put(Recorded &after, const Finding &finding) const
{
    if (finding.saysAnything() || finding.isUnable())
        replaceOrAdd(after.findings, finding);
    else
        std::erase_if(after.findings, [&](const Finding &f) { return isOfSame(f, finding); });
}

void VisitSession::put(Recorded &after, const Measure &measure) const
{
    if (saysSomething(measure))
        replaceOrAdd(after.measures, measure);
    else
        std::erase_if(after.measures, [&](const Measure &m) { return isOfSame(m, measure); });
}

void VisitSession::record(const Finding &finding)
{
    Recorded after = recorded();
    put(after, finding);
    apply(std::move(after), QString::fromStdString(m_learned.knowledge.atlas->spoken(finding.place)));
}

void VisitSession::record(const Measure &measure)
{
    Recorded after = recorded();
    put(after, measure);
    const Movement *movement = examination().findMovement(measure.movement);
    apply(std::move(after), QString::fromStdString(namedWithSide(movement ? movement->name : measure.movement, measure.side)));
}

void VisitSession::record(const TestResult &result)
{
    Recorded after = recorded();
    replaceOrAdd(after.tests, result);
    const ExamTest *test = examination().findTest(result.test);
    apply(std::move(after), QString::fromStdString(namedWithSide(test ? test->name : result.test, result.side)));
    const WarningSign *sign = test && !isReadOnly() ? adviser().rules().signs().find(signRaisedBy(*test, result)) : nullptr;
    const WarningAnswer *known = sign ? answerTo(*sign) : nullptr;
    if (sign && !(known && known->isThere))
        Q_EMIT signFound(QString::fromStdString(sign->id));
}

void VisitSession::removeResult(const std::string &test, Side side)
{
    Recorded after = recorded();
    std::erase_if(after.tests, [&](const TestResult &r) { return r.test == test && r.side == side; });
    apply(std::move(after), tr("take back a test", "undo step"));
}

bool VisitSession::record(const std::vector<Finding> &findings, const std::vector<Measure> &measures, const QString &what)
{
    Recorded after = recorded();
    const auto putBeside = [&](const auto &list, const auto &item) {
        const auto before = std::find_if(list.begin(), list.end(), [&](const auto &other) { return isOfSame(other, item); });
        put(after, before == list.end() ? item : saidBeside(*before, item));
    };
    for (const Finding &finding : findings)
        putBeside(after.findings, finding);
    for (const Measure &measure : measures)
        putBeside(after.measures, measure);
    return apply(std::move(after), what);
}

void VisitSession::setRetest(const std::optional<RetestMark> &mark)
{
    Recorded after = recorded();
    after.retest = mark;
    apply(std::move(after), mark ? tr("today's retest", "undo step") : tr("no retest", "undo step"));
}

} // namespace raphe
