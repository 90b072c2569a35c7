// What was examined again, beside what it was before.
#include "core/base/NumberText.h"
#include "core/document/MapSections.h"
#include "core/treatment/MovementScale.h"
#include "core/treatment/Retest.h"

#include <QtGlobal>

#include <tuple>

namespace raphe {

namespace {

std::string valueOf(const Movement &movement, double value)
{
    return numberText(value) + (movement.unit == Unit::Degrees ? "\u00b0" : " mm");
}

std::string verdictOn(const ReadingChange &change, const Phrases &phrases)
{
    if (change.beyond == Beyond::Unknown)
        return mapText(phrases, QT_TRANSLATE_NOOP("VisitMap", "It is not known how exact this test is."));
    if (change.beyond == Beyond::Within)
        return mapText(phrases, QT_TRANSLATE_NOOP("VisitMap", "That is about the same."));
    return change.course == ReadingChange::Course::Better
        ? mapText(phrases, QT_TRANSLATE_NOOP("VisitMap", "That is better, by more than the test can be off."))
        : mapText(phrases, QT_TRANSLATE_NOOP("VisitMap", "That is worse, by more than the test can be off."));
}

class Changes {
public:
    Changes(const MapSource &source, const Visit &visit, const Phrases &phrases)
        : m_source(source), m_visit(visit), m_again(visit.retested), m_phrases(phrases)
    {
    }

    MapSection make()
    {
        pain();
        for (const Measure &now : m_again.measures)
            for (const Measure &before : m_visit.measures)
                if (std::tie(before.movement, before.side, before.mode) == std::tie(now.movement, now.side, now.mode))
                    movement(before, now);
        tests();
        findings();
        if (const auto open = notRetested(m_visit, m_source.examination, m_source.atlas); !m_out.words.empty() && !open.empty())
            say({}, QT_TRANSLATE_NOOP("VisitMap", "Not checked again today: {count}."), {{"count", std::to_string(open.size())}});
        return std::move(m_out);
    }

private:
    using Values = std::vector<std::pair<std::string, std::string>>;

    [[nodiscard]] std::string text(const char *english, const Values &values = {}) const
    {
        return mapText(m_phrases, english, values);
    }
    void say(const std::string &lead, const char *english, const Values &values = {})
    {
        m_out.words.push_back({lead, text(english, values)});
    }
    [[nodiscard]] std::string beforeAndNow(const std::string &before, const std::string &now) const
    {
        return text(QT_TRANSLATE_NOOP("VisitMap", "{before} before, {now} now."), {{"before", before}, {"now", now}});
    }

    void pain()
    {
        if (!m_again.pain || m_visit.complaints.empty() || !m_visit.complaints.front().now)
            return;
        const int before = m_visit.complaints.front().now->value;
        const int now = m_again.pain->value;
        m_out.words.push_back({text(QT_TRANSLATE_NOOP("VisitMap", "Your pain, from 0 to 10:")),
            beforeAndNow(std::to_string(before), std::to_string(now)) + " "
                + verdictOn(changeOf(before, now, painScale()), m_phrases)});
    }

    void movement(const Measure &before, const Measure &now)
    {
        const Movement *movement = m_source.examination.findMovement(now.movement);
        if (!movement)
            return;
        std::string lead = begun(m_phrases.say("movements", movement->plain));
        if (now.side != Side::Midline)
            lead += " (" + plainSide(m_phrases, now.side) + ")";
        lead += ":";
        std::string words;
        if (before.value && now.value && before.device == now.device)
            words = beforeAndNow(valueOf(*movement, *before.value), valueOf(*movement, *now.value)) + " "
                + verdictOn(changeOf(*before.value, *now.value, movementScale(*movement, now, m_source.examination)), m_phrases);
        const auto add = [&](const std::string &more) { words += (words.empty() ? "" : " ") + more; };
        if (before.bringsPain())
            add(now.bringsPain() ? text(QT_TRANSLATE_NOOP("VisitMap", "It still hurts."))
                                 : text(QT_TRANSLATE_NOOP("VisitMap", "It hurt before. Now it does not.")));
        else if (now.bringsPain())
            add(text(QT_TRANSLATE_NOOP("VisitMap", "It did not hurt before. Now it does.")));
        if (!words.empty())
            m_out.words.push_back({lead, words});
    }

    void tests()
    {
        int before = 0;
        int still = 0;
        int newly = 0;
        for (const TestResult &now : m_again.tests)
            for (const TestResult &first : m_visit.tests) {
                if (std::tie(first.test, first.side) != std::tie(now.test, now.side) || !first.pain || !now.pain)
                    continue;
                const bool hurt = *first.pain != TestPain::None;
                const bool hurts = *now.pain != TestPain::None;
                before += hurt ? 1 : 0;
                still += hurt && hurts ? 1 : 0;
                newly += !hurt && hurts ? 1 : 0;
            }
        if (before > 0)
            say({}, QT_TRANSLATE_NOOP("VisitMap", "Tests that hurt before: {before}. Of these, still sore now: {now}."),
                {{"before", std::to_string(before)}, {"now", std::to_string(still)}});
        if (newly > 0)
            say({}, QT_TRANSLATE_NOOP("VisitMap", "Tests that hurt only now: {count}."), {{"count", std::to_string(newly)}});
    }

    void findings()
    {
        bool isAny = false;
        for (const Finding &now : m_again.findings)
            for (const Finding &before : m_visit.findings) {
                if (std::tie(before.place, before.spot, before.at) != std::tie(now.place, now.spot, now.at))
                    continue;
                std::string words;
                const auto add = [&](const std::string &first, const std::string &second) {
                    words += (words.empty() ? "" : " ")
                        + begun(first == second ? text(QT_TRANSLATE_NOOP("VisitMap", "{now}, as before."), {{"now", second}})
                                                : beforeAndNow(first, second));
                };
                if ((before.tenderness || before.sore || before.clear.tenderness) && (now.tenderness || now.clear.tenderness))
                    add(plainTenderness(m_phrases, before.tendernessGrade()), plainTenderness(m_phrases, now.tendernessGrade()));
                if ((before.restriction || before.stiff || before.clear.motion) && (now.restriction || now.clear.motion))
                    add(plainRestriction(m_phrases, before.restrictionGrade()),
                        plainRestriction(m_phrases, now.restrictionGrade()));
                if (words.empty())
                    continue;
                isAny = true;
                m_out.words.push_back({{}, words, false, numberOf(m_visit, now.place, now.spot)});
            }
        if (isAny)
            say({}, QT_TRANSLATE_NOOP("VisitMap", "What hands feel is not exact. Take it as a hint."));
    }

    const MapSource &m_source;
    const Visit &m_visit;
    const Retested &m_again;
    const Phrases &m_phrases;
    MapSection m_out{mapText(m_phrases, QT_TRANSLATE_NOOP("VisitMap", "What changed")), {}};
};

} // namespace

MapSection whatChanged(const MapSource &source, const Visit &visit, const Phrases &phrases)
{
    return Changes(source, visit, phrases).make();
}

} // namespace raphe
