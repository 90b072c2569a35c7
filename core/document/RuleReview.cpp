#include "core/document/RuleReview.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <array>

namespace raphe {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("RuleReview", text);
}

QString q(std::string_view text)
{
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

QString listed(const QStringList &words)
{
    return words.join(QStringLiteral(", "));
}

template <class List, class F> QString listed(const List &list, F nameOf)
{
    QStringList words;
    for (const auto &item : list)
        words << q(nameOf(item));
    return listed(words);
}

// Paragraphs of a cell, the empty ones left out.
std::string cell(const QStringList &paragraphs)
{
    QStringList out;
    std::copy_if(paragraphs.begin(), paragraphs.end(), std::back_inserter(out), [](const QString &p) { return !p.isEmpty(); });
    return out.join(QLatin1Char('\n')).toStdString();
}

QString readWords(Reading read)
{
    switch (read) {
    case Reading::Page: return tr(QT_TRANSLATE_NOOP("RuleReview", "Read on a page."));
    case Reading::Abstract: return tr(QT_TRANSLATE_NOOP("RuleReview", "Read in an abstract."));
    case Reading::Memory: return tr(QT_TRANSLATE_NOOP("RuleReview", "From memory."));
    }
    return {};
}

std::string sourceCell(const std::string &source, Reading read)
{
    return cell({q(source), readWords(read)});
}

class Maker {
public:
    Maker(const SafetyRules &rules, const Atlas &atlas) : m_rules(rules), m_atlas(atlas) { }

    ReviewPart rulesOf(Verdict verdict) const
    {
        ReviewPart part{ruleTitle(verdict).toStdString(),
            tr(QT_TRANSLATE_NOOP("RuleReview",
                   "Is it right that this is what is said, of these conditions, these techniques and tests, at this place? "
                   "Is the reason right, and is it clear what to do instead?"))
                .toStdString(),
            {{text(QT_TRANSLATE_NOOP("RuleReview", "The patient has")), 3},
                {text(QT_TRANSLATE_NOOP("RuleReview", "What is limited")), 3},
                {text(QT_TRANSLATE_NOOP("RuleReview", "Where")), 2.7},
                {text(QT_TRANSLATE_NOOP("RuleReview", "Why, and what to do instead")), 4.6}, sourceColumn()},
            {}};
        using Of = bool (Maker::*)(const CautionRule &) const;
        const std::array<std::pair<const char *, Of>, 4> groups{
            {{QT_TRANSLATE_NOOP("RuleReview", "all work by hand"), &Maker::limitsAll},
                {QT_TRANSLATE_NOOP("RuleReview", "techniques and tests"), &Maker::limitsBoth},
                {QT_TRANSLATE_NOOP("RuleReview", "techniques"), &Maker::limitsTechniques},
                {QT_TRANSLATE_NOOP("RuleReview", "tests"), &Maker::limitsTests}}};
        for (const auto &[name, isOf] : groups)
            add(part, tr(name), rowsOf(verdict, isOf));
        return part;
    }

    ReviewPart signsOf(WarningLevel level) const
    {
        ReviewPart part{signTitle(level).toStdString(),
            tr(QT_TRANSLATE_NOOP("RuleReview",
                   "Is the level right, is it asked of the right people and again in time, and is it right what to do?"))
                .toStdString(),
            {{text(QT_TRANSLATE_NOOP("RuleReview", "Sign and question")), 4},
                {text(QT_TRANSLATE_NOOP("RuleReview", "Asked of whom, and when again")), 3},
                {text(QT_TRANSLATE_NOOP("RuleReview", "At worst")), 3}, {text(QT_TRANSLATE_NOOP("RuleReview", "What to do")), 4},
                sourceColumn()},
            {}};
        const auto rows = [&](bool byPractitioner) {
            std::vector<ReviewRow> out;
            for (const WarningSign &sign : m_rules.signs().signs)
                if (sign.level == level && sign.byPractitioner == byPractitioner)
                    out.push_back(rowOf(sign));
            return out;
        };
        add(part, tr(QT_TRANSLATE_NOOP("RuleReview", "asked of the patient")), rows(false));
        add(part, tr(QT_TRANSLATE_NOOP("RuleReview", "asked, seen or felt by the practitioner")), rows(true));
        return part;
    }

    ReviewPart feeds() const
    {
        ReviewPart part{text(QT_TRANSLATE_NOOP("RuleReview", "Reminders from the record")),
            text(QT_TRANSLATE_NOOP("RuleReview",
                "What stands in a patient's record reminds the practitioner to ask for a condition; nothing is taken as "
                "confirmed. Are the words and limits right, and is the right thing asked?")),
            {{text(QT_TRANSLATE_NOOP("RuleReview", "The record says")), 5},
                {text(QT_TRANSLATE_NOOP("RuleReview", "To be confirmed")), 3},
                {text(QT_TRANSLATE_NOOP("RuleReview", "What the practitioner is told")), 6}, sourceColumn()},
            {}};
        for (const auto &[field, word] : feedFieldWords) {
            std::vector<ReviewRow> rows;
            for (const CautionFeed &feed : m_rules.feeds())
                if (feed.field == field)
                    rows.push_back(rowOf(feed));
            add(part, q(word).replace(QLatin1Char('_'), QLatin1Char(' ')), std::move(rows));
        }
        return part;
    }

private:
    static std::string text(const char *words) { return tr(words).toStdString(); }
    static ReviewColumn sourceColumn() { return {text(QT_TRANSLATE_NOOP("RuleReview", "Source, and how it was read")), 4}; }

    static void add(ReviewPart &part, const QString &title, std::vector<ReviewRow> rows)
    {
        //: %1: what a group of rules or signs is about; %2: how many there are
        const QString counted = tr(QT_TRANSLATE_NOOP("RuleReview", "%1 (%2)")).arg(title).arg(rows.size());
        if (!rows.empty())
            part.groups.push_back({counted.toStdString(), std::move(rows)});
    }

    static QString ruleTitle(Verdict verdict)
    {
        switch (verdict) {
        case Verdict::Stop: return tr(QT_TRANSLATE_NOOP("RuleReview", "Caution rules that stop: it is not done"));
        case Verdict::Adapt: return tr(QT_TRANSLATE_NOOP("RuleReview", "Caution rules that adapt: lighter, or another way"));
        case Verdict::Ask: return tr(QT_TRANSLATE_NOOP("RuleReview", "Caution rules that ask: the question comes first"));
        }
        return {};
    }
    static QString signTitle(WarningLevel level)
    {
        switch (level) {
        case WarningLevel::EmergencyNow:
            return tr(QT_TRANSLATE_NOOP("RuleReview", "Warning signs, emergency now: nothing is treated at this visit"));
        case WarningLevel::SameDay:
            return tr(QT_TRANSLATE_NOOP("RuleReview", "Warning signs, the same day: licensed medical care on this day"));
        case WarningLevel::BeforeTreating:
            return tr(QT_TRANSLATE_NOOP("RuleReview", "Warning signs, before treating: licensed medical care judges it first"));
        }
        return {};
    }

    bool isTest(const std::string &id) const { return m_rules.findAction(id)->kind == ActionKind::Test; }
    bool limitsAll(const CautionRule &rule) const { return rule.actions.empty(); }
    bool limitsTests(const CautionRule &rule) const
    {
        return !limitsAll(rule)
            && std::all_of(rule.actions.begin(), rule.actions.end(), [&](const std::string &id) { return isTest(id); });
    }
    bool limitsTechniques(const CautionRule &rule) const
    {
        return !limitsAll(rule)
            && std::none_of(rule.actions.begin(), rule.actions.end(), [&](const std::string &id) { return isTest(id); });
    }
    bool limitsBoth(const CautionRule &rule) const { return !limitsAll(rule) && !limitsTests(rule) && !limitsTechniques(rule); }

    // In the order of the conditions; a rule for everybody comes first.
    std::vector<ReviewRow> rowsOf(Verdict verdict, bool (Maker::*isOf)(const CautionRule &) const) const
    {
        std::vector<const CautionRule *> of;
        for (const CautionRule &rule : m_rules.rules())
            if (rule.verdict == verdict && (this->*isOf)(rule))
                of.push_back(&rule);
        const auto place = [&](const CautionRule *rule) {
            return rule->conditions.empty() ? nullptr : m_rules.findCondition(rule->conditions.front());
        };
        std::stable_sort(
            of.begin(), of.end(), [&](const CautionRule *a, const CautionRule *b) { return std::less<>()(place(a), place(b)); });
        std::vector<ReviewRow> out;
        out.reserve(of.size());
        for (const CautionRule *rule : of)
            out.push_back(rowOf(*rule));
        return out;
    }

    QString conditionNames(const std::vector<std::string> &ids) const
    {
        return listed(ids, [&](const std::string &id) -> const std::string & { return m_rules.findCondition(id)->name; });
    }
    QString regionNames(const std::vector<StructureId> &ids) const
    {
        return listed(ids, [&](const StructureId &id) -> const std::string & { return m_atlas.at(id).names.english; });
    }

    ReviewRow rowOf(const CautionRule &rule) const
    {
        const QString whom = rule.conditions.empty() ? tr(QT_TRANSLATE_NOOP("RuleReview", "everybody, whatever they have"))
                                                     : conditionNames(rule.conditions);
        const QString what = rule.actions.empty()
            ? tr(QT_TRANSLATE_NOOP("RuleReview", "every technique and every test"))
            : listed(rule.actions, [&](const std::string &id) -> const std::string & { return m_rules.findAction(id)->name; });
        return {
            {cell({whom, inBrackets(rule.id)}), cell({what}), whereCell(rule), rule.reason, sourceCell(rule.source, rule.read)}};
    }

    std::string whereCell(const CautionRule &rule) const
    {
        QStringList words;
        switch (rule.where) {
        case Where::Everywhere:
            if (rule.regions.empty() && rule.layers.empty() && rule.kinds.empty())
                words << tr(QT_TRANSLATE_NOOP("RuleReview", "everywhere"));
            break;
        case Where::AtPlace:
            words << tr(
                QT_TRANSLATE_NOOP("RuleReview", "at the place of the condition, its parts, and what lies over or under it"));
            break;
        case Where::SameLimb: words << tr(QT_TRANSLATE_NOOP("RuleReview", "the whole arm or leg of the condition's side")); break;
        }
        const auto add = [&](const char *pattern, const QString &list) {
            if (!list.isEmpty())
                words << tr(pattern).arg(list);
        };
        add(QT_TRANSLATE_NOOP("RuleReview", "under this skin: %1"), regionNames(rule.regions));
        add(QT_TRANSLATE_NOOP("RuleReview", "only in these layers: %1"), wordsOf(layerWords, rule.layers));
        add(QT_TRANSLATE_NOOP("RuleReview", "only these: %1"), wordsOf(kindWords, rule.kinds));
        return cell(words);
    }
    template <class Table, class E> static QString wordsOf(const Table &table, const std::vector<E> &list)
    {
        return listed(list, [&](E item) { return wordOf(table, item); }).replace(QLatin1Char('-'), QLatin1Char(' '));
    }
    static QString inBrackets(const std::string &id) { return QStringLiteral("[%1]").arg(q(id)); }

    ReviewRow rowOf(const WarningSign &sign) const
    {
        const QString points = sign.points == 0
            ? QString()
            : tr(QT_TRANSLATE_NOOP("RuleReview", "points in the two-level score of a leg clot: %1")).arg(sign.points);
        const QString suspects = sign.suspects.empty()
            ? QString()
            : tr(QT_TRANSLATE_NOOP("RuleReview", "counts from then on as: %1")).arg(conditionNames(sign.suspects));
        return {{cell({q(sign.name), q(sign.ask), inBrackets(sign.id)}), cell(askedOf(sign)), cell({q(sign.means), suspects}),
            cell({q(sign.act), points}), sourceCell(sign.source, sign.read)}};
    }

    QStringList askedOf(const WarningSign &sign) const
    {
        QStringList words;
        words << (sign.areas.empty() ? tr(QT_TRANSLATE_NOOP("RuleReview", "wherever it hurts"))
                                     : tr(QT_TRANSLATE_NOOP("RuleReview", "when it hurts here: %1")).arg(areaNames(sign.areas)));
        if (sign.ageFrom)
            words << tr(QT_TRANSLATE_NOOP("RuleReview", "from %1 years on")).arg(*sign.ageFrom);
        if (sign.ageBelow)
            words << tr(QT_TRANSLATE_NOOP("RuleReview", "below %1 years")).arg(*sign.ageBelow);
        if (sign.ifPregnant)
            words << tr(QT_TRANSLATE_NOOP("RuleReview", "only of the pregnant"));
        if (sign.ifInjured)
            words << tr(QT_TRANSLATE_NOOP("RuleReview", "only after an injury"));
        if (sign.alone)
            words << tr(QT_TRANSLATE_NOOP("RuleReview", "only when nobody else can hear or read along; never in a letter"));
        if (!sign.askedWith.empty())
            words << tr(QT_TRANSLATE_NOOP("RuleReview", "only when one of these is there: %1"))
                         .arg(listed(sign.askedWith,
                             [&](const std::string &id) -> const std::string & { return m_rules.signs().find(id)->name; }));
        words << (sign.staleDays == 0 ? tr(QT_TRANSLATE_NOOP("RuleReview", "asked again on every day"))
                                      : tr(QT_TRANSLATE_NOOP("RuleReview", "asked again after %1 days")).arg(sign.staleDays));
        return words;
    }
    QString areaNames(const std::vector<std::string> &ids) const
    {
        return listed(ids, [&](const std::string &id) -> const std::string & {
            const auto &areas = m_rules.signs().areas;
            return std::find_if(areas.begin(), areas.end(), [&](const WarningArea &area) { return area.id == id; })->name;
        });
    }

    ReviewRow rowOf(const CautionFeed &feed) const
    {
        QStringList says;
        if (!feed.words.empty())
            says << listed(feed.words, [](const std::string &word) -> const std::string & { return word; });
        if (feed.from)
            says << tr(QT_TRANSLATE_NOOP("RuleReview", "%1 or more")).arg(limit(feed.field, *feed.from));
        if (feed.to)
            says << tr(QT_TRANSLATE_NOOP("RuleReview", "%1 or less")).arg(limit(feed.field, *feed.to));
        says << inBrackets(feed.id);
        return {{cell(says), cell({conditionNames(feed.suggests)}), feed.say, sourceCell(feed.source, feed.read)}};
    }
    static QString limit(FeedField field, const FeedLimit &at)
    {
        switch (field) {
        case FeedField::BloodPressure: return QStringLiteral("%1/%2 mmHg").arg(at.first).arg(at.second);
        case FeedField::PregnancyWeek: return tr(QT_TRANSLATE_NOOP("RuleReview", "week %1")).arg(at.first);
        default: return tr(QT_TRANSLATE_NOOP("RuleReview", "%1 years")).arg(at.first);
        }
    }

    const SafetyRules &m_rules;
    const Atlas &m_atlas;
};

} // namespace

RuleReview ruleReview(const SafetyRules &rules, const Atlas &atlas)
{
    const Maker maker(rules, atlas);
    RuleReview out;
    out.title = tr(QT_TRANSLATE_NOOP("RuleReview", "Cautions and warning signs: for review by a clinician")).toStdString();
    out.mark = tr(QT_TRANSLATE_NOOP("RuleReview", "Not yet reviewed by a clinician")).toStdString();
    out.words = {tr(QT_TRANSLATE_NOOP("RuleReview",
                        "This is everything by which the program warns, asks or stops: %1 caution rules, %2 warning signs and %3 "
                        "reminders. No clinician has read them yet. They assist a trained practitioner; local law, scope of "
                        "practice and licensed care come first. The program never names a disease."))
                     .arg(rules.rules().size())
                     .arg(rules.signs().signs.size())
                     .arg(rules.feeds().size())
                     .toStdString(),
        tr(QT_TRANSLATE_NOOP("RuleReview",
               "Please tick 'agree' or 'change' in every row and write what is wrong, missing or too careful. The name in square "
               "brackets is the one under which the entry is kept. 'From memory' means that nobody has looked the source up "
               "again. Names of conditions, techniques and regions are those that the practitioner reads."))
            .toStdString()};
    for (const Verdict verdict : {Verdict::Stop, Verdict::Adapt, Verdict::Ask})
        out.parts.push_back(maker.rulesOf(verdict));
    for (const WarningLevel level : {WarningLevel::EmergencyNow, WarningLevel::SameDay, WarningLevel::BeforeTreating})
        out.parts.push_back(maker.signsOf(level));
    out.parts.push_back(maker.feeds());
    std::erase_if(out.parts, [](const ReviewPart &part) { return part.groups.empty(); });
    return out;
}

} // namespace raphe
