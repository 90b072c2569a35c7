// The difference of two notes, line by line: whatever can be read in a note and was changed is found, and what cannot be read
// there is named. What the program derives follows from the rest and is not told twice.
#include "core/document/NoteSource.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace raphe {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("ClinicalNote", text);
}

QString q(const std::string &text)
{
    return QString::fromStdString(text);
}

struct NotedLine {
    std::string where; // part and section
    NoteLine line;
    bool operator==(const NotedLine &) const = default;
};

// 'Objective, felt by hand': without what a title explains.
std::string placeIn(const NotePart &part, const NoteSection &section)
{
    const std::string name = section.title.substr(0, section.title.find_first_of("(,:"));
    const QString title = q(name).trimmed();
    return (title.isEmpty() ? q(part.title) : tr(QT_TRANSLATE_NOOP("ClinicalNote", "%1, %2")).arg(q(part.title), title))
        .toStdString();
}

std::vector<NotedLine> linesOf(const NoteKnowledge &known, const Visit &visit, NoteFor readers)
{
    NoteGiven given;
    given.state = NoteState::Signed;
    given.readers = readers;
    given.lettersInFull = true;
    const ClinicalNote note = clinicalNote(known, visit, given);
    std::vector<NotedLine> out;
    for (const NoteLine &line : note.heads)
        out.push_back({{}, line});
    for (const NotePart &part : note.parts)
        for (const NoteSection &section : part.sections)
            if (!section.isDerived)
                for (const NoteLine &line : section.lines)
                    out.push_back({placeIn(part, section), line});
    return out;
}

QString whole(const NoteLine &line)
{
    QString out = q(line.text);
    out.replace(QLatin1Char('\n'), QLatin1Char(' '));
    return line.asOf.empty() ? out : tr(QT_TRANSLATE_NOOP("ClinicalNote", "%1 (%2)")).arg(out, q(line.asOf));
}

QString whereOf(const NotedLine &noted)
{
    if (noted.where.empty() || noted.line.label.empty())
        return q(noted.where.empty() ? noted.line.label : noted.where);
    return tr(QT_TRANSLATE_NOOP("ClinicalNote", "%1, %2")).arg(q(noted.where), q(noted.line.label));
}

// What both have is taken out of both.
void takeCommon(std::vector<NotedLine> &before, std::vector<NotedLine> &after)
{
    std::erase_if(before, [&](const NotedLine &line) {
        const auto same = std::find(after.begin(), after.end(), line);
        if (same == after.end())
            return false;
        after.erase(same);
        return true;
    });
}

// What the note does not show of a visit.
QStringList unseen(const Visit &before, const Visit &after)
{
    QStringList out;
    if (before.pain != after.pain)
        out << tr(QT_TRANSLATE_NOOP("ClinicalNote", "the drawing of the pain"));
    if (before.timeline != after.timeline)
        out << tr(QT_TRANSLATE_NOOP("ClinicalNote", "the times of the examination"));
    if (before.plan != after.plan)
        out << tr(QT_TRANSLATE_NOOP("ClinicalNote", "the wishes for the plan of the treatment"));
    return out;
}

} // namespace

std::vector<std::string> noteChanges(const NoteKnowledge &known, const Visit &before, const Visit &after, NoteFor readers)
{
    if (before == after)
        return {};
    const std::vector<NotedLine> allBefore = linesOf(known, before, readers);
    const std::vector<NotedLine> allAfter = linesOf(known, after, readers);
    std::vector<NotedLine> gone = allBefore;
    std::vector<NotedLine> added = allAfter;
    takeCommon(gone, added);
    std::vector<std::string> out;
    const auto say = [&](const QString &sentence) { out.push_back(sentence.toStdString()); };
    if (gone.empty() && added.empty() && allBefore != allAfter)
        say(tr(QT_TRANSLATE_NOOP("ClinicalNote", "The same lines stand in another order.")));
    for (const NotedLine &old : gone) {
        const auto now = std::find_if(added.begin(), added.end(),
            [&](const NotedLine &line) { return line.where == old.where && line.line.label == old.line.label; });
        if (now == added.end()) {
            //: %1: where in the note; %2: what stood there
            say(tr(QT_TRANSLATE_NOOP("ClinicalNote", "%1: '%2' is gone")).arg(whereOf(old), whole(old.line)));
            continue;
        }
        //: %1: where in the note; %2 and %3: what stood there, and what stands there now
        say(tr(QT_TRANSLATE_NOOP("ClinicalNote", "%1: was '%2', now '%3'")).arg(whereOf(old), whole(old.line), whole(now->line)));
        added.erase(now);
    }
    for (const NotedLine &line : added)
        say(tr(QT_TRANSLATE_NOOP("ClinicalNote", "%1: '%2' is added")).arg(whereOf(line), whole(line.line)));
    if (!out.empty())
        return out;
    const QStringList names = unseen(before, after);
    if (names.isEmpty())
        say(tr(QT_TRANSLATE_NOOP("ClinicalNote", "What was changed does not show in this note.")));
    else
        //: %1: a list
        say(tr(QT_TRANSLATE_NOOP("ClinicalNote", "What was changed does not show in this note: %1."))
                .arg(names.join(QStringLiteral(", "))));
    return out;
}

} // namespace raphe
