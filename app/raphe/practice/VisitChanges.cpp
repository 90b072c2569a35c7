#include "app/raphe/practice/VisitChanges.h"

#include "app/raphe/patients/PersonWords.h"
#include "core/document/LetterWords.h"
#include "core/document/VisitMap.h"
#include "core/examination/RecordWords.h"

#include <QCoreApplication>

#include <algorithm>

namespace raphe {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("VisitChanges", text);
}

QString findingWords(const Atlas &atlas, const Finding &finding)
{
    const std::string words = findingInWords(atlas, finding);
    return words.empty() ? tr("noted") : QString::fromStdString(words);
}

using Pairs = std::vector<std::pair<Finding, Finding>>;

// Takes out of both what agrees by `same`, each with the first that it meets.
template <class Same> Pairs takePairs(std::vector<Finding> &before, std::vector<Finding> &after, Same same)
{
    Pairs pairs;
    for (auto one = before.begin(); one != before.end();) {
        const auto other = std::find_if(after.begin(), after.end(), [&](const Finding &f) { return same(*one, f); });
        if (other == after.end()) {
            ++one;
            continue;
        }
        pairs.emplace_back(*one, *other);
        one = before.erase(one);
        after.erase(other);
    }
    return pairs;
}

void compareFindings(const Atlas &atlas, std::vector<Finding> before, std::vector<Finding> after, VisitChanges &changes)
{
    const bool differ = before != after;
    takePairs(before, after, [](const Finding &a, const Finding &b) { return a == b; });
    if (differ && before.empty() && after.empty())
        changes.others << tr("The findings stand in another order.");
    const auto sameSpot = [](const Finding &a, const Finding &b) {
        return a.place == b.place && a.spot == b.spot && a.at == b.at;
    };
    const auto samePlace = [](const Finding &a, const Finding &b) { return a.place == b.place; };
    for (const Pairs &pairs : {takePairs(before, after, sameSpot), takePairs(before, after, samePlace)})
        for (const auto &[old, now] : pairs)
            changes.changed << tr("%1: %2; now %3")
                                   .arg(QString::fromStdString(atlas.spoken(old.place)), findingWords(atlas, old),
                                       findingWords(atlas, now));
    for (const Finding &finding : after)
        changes.added << findingLine(atlas, finding);
    for (const Finding &finding : before)
        changes.gone << findingLine(atlas, finding);
}

QString quoted(const QString &text)
{
    return text.isEmpty() ? tr("nothing") : tr("'%1'").arg(text);
}

void compareText(const QString &what, const QString &before, const QString &after, QStringList &out)
{
    if (before != after)
        out << tr("%1: %2; now %3").arg(what, quoted(before), quoted(after));
}

QString dayText(const std::string &isoDate)
{
    const QString words = dayWords(isoDate);
    return words.isEmpty() ? QString::fromStdString(isoDate) : words;
}

QString personText(const std::optional<Patient> &patient)
{
    if (!patient)
        return {};
    const QString name = QString::fromStdString(patient->name);
    return patient->born.empty() ? name : tr("%1, %2").arg(name, dayText(patient->born));
}

QString placesText(const Atlas &atlas, const std::vector<Place> &places)
{
    QStringList words;
    for (const Place &place : places)
        words << QString::fromStdString(atlas.spoken(place));
    return words.join(QStringLiteral(", "));
}

QString cautionsText(const std::vector<std::string> &lines)
{
    QStringList words;
    for (const std::string &line : lines)
        words << QString::fromStdString(line);
    return words.join(QStringLiteral("; "));
}

QString conditionsText(const Atlas &atlas, const SafetyRules &rules, const std::vector<Condition> &conditions)
{
    QStringList words;
    for (const Condition &condition : conditions) {
        const ConditionKind *kind = rules.findCondition(condition.id);
        const QString name = QString::fromStdString(kind ? kind->name : condition.id);
        words << (condition.at.empty() ? name : tr("%1 (%2)").arg(name, placesText(atlas, condition.at)));
    }
    return words.join(QStringLiteral("; "));
}

// What was measured or answered, one after the other.
template <class T> QString examinedText(const Examination &examination, const std::vector<T> &list)
{
    QStringList words;
    for (const T &item : list)
        words << QString::fromStdString(inWords(examination, item));
    return words.join(QStringLiteral("; "));
}

// The words and the episode of the first one are compared in words.
std::vector<Complaint> withoutFirstWords(std::vector<Complaint> complaints)
{
    if (!complaints.empty()) {
        complaints.front().text.clear();
        complaints.front().episode.reset();
        if (complaints.front() == Complaint{})
            complaints.erase(complaints.begin());
    }
    return complaints;
}

QString letterTo(const Letter &letter)
{
    const std::string &who = letter.to.name.empty() ? letter.to.role : letter.to.name;
    return who.empty() ? tr("whoever takes over") : QString::fromStdString(who);
}

QString letterText(const std::string &text)
{
    constexpr qsizetype most = 120; // characters; the whole stands in the letter
    const QString line = QString::fromStdString(text).simplified();
    return line.size() > most ? line.left(most) + QStringLiteral(" ...") : line;
}

// What of it is another.
QStringList letterChanges(const Letter &before, const Letter &after)
{
    QStringList out;
    if (before.to != after.to)
        out << (letterTo(before) == letterTo(after) ? tr("role or address") : tr("now to %1").arg(letterTo(after)));
    compareText(tr("urgency"), QString::fromStdString(urgencyInWords(before.urgency)),
        QString::fromStdString(urgencyInWords(after.urgency)), out);
    compareText(tr("reason"), letterText(before.reason.text), letterText(after.reason.text), out);
    compareText(tr("question"), letterText(before.question.text), letterText(after.question.text), out);
    const auto textOf = [](const Letter &letter, const std::string &title) {
        for (const LetterPart &part : letter.parts)
            if (part.title == title)
                return letterText(part.words.text);
        return QString();
    };
    QStringList titles;
    for (const Letter *letter : {&before, &after})
        for (const LetterPart &part : letter->parts)
            titles << QString::fromStdString(part.title);
    titles.removeDuplicates();
    for (const QString &title : titles)
        compareText(title, textOf(before, title.toStdString()), textOf(after, title.toStdString()), out);
    if (before.sent != after.sent)
        out << (after.sent.empty() ? tr("not marked as sent any more") : tr("sent on %1").arg(dayText(after.sent)));
    if (out.isEmpty() && before != after)
        out << tr("date, title, or what was composed");
    return out;
}

void compareLetters(std::vector<Letter> before, std::vector<Letter> after, QStringList &out)
{
    if (before == after)
        return;
    for (auto one = before.begin(); one != before.end();) {
        const auto same = std::find(after.begin(), after.end(), *one);
        if (same == after.end()) {
            ++one;
            continue;
        }
        after.erase(same);
        one = before.erase(one);
    }
    if (before.empty() && after.empty())
        out << tr("The letters stand in another order.");
    const std::size_t both = std::min(before.size(), after.size());
    for (std::size_t i = 0; i < both; ++i)
        out << tr("The letter to %1 is another: %2")
                   .arg(letterTo(before[i]), letterChanges(before[i], after[i]).join(QStringLiteral("; ")));
    for (std::size_t i = both; i < before.size(); ++i)
        out << tr("A letter to %1 is no longer kept.").arg(letterTo(before[i]));
    for (std::size_t i = both; i < after.size(); ++i)
        out << tr("A letter to %1 is kept: '%2', %3")
                   .arg(letterTo(after[i]), letterText(after[i].title), QString::fromStdString(urgencyInWords(after[i].urgency)));
}

} // namespace

QString findingLine(const Atlas &atlas, const Finding &finding)
{
    return tr("%1: %2").arg(QString::fromStdString(atlas.spoken(finding.place)), findingWords(atlas, finding));
}

VisitChanges visitChanges(
    const Atlas &atlas, const SafetyRules &rules, const Examination &examination, const Visit &before, const Visit &after)
{
    VisitChanges changes;
    compareFindings(atlas, before.findings, after.findings, changes);
    QStringList &others = changes.others;
    compareText(tr("Patient"), personText(before.patient), personText(after.patient), others);
    compareText(tr("Date"), dayText(before.date), dayText(after.date), others);
    compareText(
        tr("Practitioner"), QString::fromStdString(before.practitioner), QString::fromStdString(after.practitioner), others);
    if (before.episode() != after.episode())
        others << tr("The visit is about another complaint of the record.");
    compareText(tr("Complaint"), QString::fromStdString(before.complaint()), QString::fromStdString(after.complaint()), others);
    if (withoutFirstWords(before.complaints) != withoutFirstWords(after.complaints))
        others << tr("What was told of the complaints is another.");
    compareText(tr("Where it hurts"), placesText(atlas, before.complaintAt), placesText(atlas, after.complaintAt), others);
    if (before.pain != after.pain)
        others << tr("The pain drawing is another.");
    compareText(tr("Cautions"), cautionsText(before.cautions), cautionsText(after.cautions), others);
    compareText(tr("Conditions"), conditionsText(atlas, rules, before.conditions), conditionsText(atlas, rules, after.conditions),
        others);
    if (before.warnings != after.warnings)
        others << tr("The answers about warning signs are others.");
    if (before.consents != after.consents)
        others << tr("The answers about consent are others.");
    if (before.sinceLast != after.sinceLast || before.promised != after.promised)
        others << tr("What was told since the last visit, or promised until the next, is another.");
    compareText(tr("Movements"), examinedText(examination, before.measures), examinedText(examination, after.measures), others);
    compareText(tr("Tests"), examinedText(examination, before.tests), examinedText(examination, after.tests), others);
    if (before.retest != after.retest)
        others << tr("Today's retest is another.");
    if (before.timeline != after.timeline && before.findings == after.findings && before.measures == after.measures
        && before.tests == after.tests)
        others << tr("The times of the examination are others.");
    if (before.judgements != after.judgements)
        others << tr("Other rows are pinned or put away.");
    if (before.plan != after.plan)
        others << tr("The wishes for the plan of the treatment are others.");
    if (before.treatment != after.treatment)
        others << tr("What was done in the treatment is another.");
    if (before.retested != after.retested)
        others << tr("What was examined again is another.");
    if (before.closing != after.closing || before.focus != after.focus)
        others << tr("How the visit was closed, or what was left for the next one, is another.");
    compareLetters(before.letters, after.letters, others);
    if (changes.areNone() && before != after)
        others << tr("Something else was changed.");
    return changes;
}

} // namespace raphe
