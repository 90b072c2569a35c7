// raphe-batch letter: to another professional; the one that was kept with the visit, or a draft of it.
#include "app/batch/Commands.h"
#include "app/batch/PaperSize.h"
#include "app/batch/VisitFile.h"

#include "app/paint/LetterPages.h"
#include "core/base/Utf8.h"
#include "core/safety/Day.h"

#include <QString>
#include <QStringList>

#include <algorithm>

namespace raphe::batch {

namespace {

// "Dr A. Example, general practice, 1 High Street, Lowbridge": name, role, then lines of the address.
Result<Addressee> addresseeOf(const std::string &words)
{
    Addressee out;
    for (const QString &piece : QString::fromStdString(words).split(QLatin1Char(','))) {
        const std::string text = piece.trimmed().toStdString();
        if (text.empty())
            continue;
        if (characterCount(text) > Addressee::longestLine)
            return Error{ErrorCode::BadArgument, "--to", "a line is too long"};
        if (out.name.empty())
            out.name = text;
        else if (out.role.empty())
            out.role = text;
        else
            out.lines.push_back(text);
    }
    if (out.lines.size() > Addressee::mostLines)
        return Error{ErrorCode::BadArgument, "--to", "the address has too many lines"};
    return out;
}

Result<Letter> draftOf(const KnownVisit &known, const LetterVerb &verb)
{
    const auto rules = readEmbeddedSafetyRules(*known.knowledge.atlas);
    if (!rules)
        return rules.error();
    const auto examination = readEmbeddedExamination(*known.knowledge.atlas, rules.value());
    if (!examination)
        return examination.error();
    const auto techniques = readEmbeddedTechniques(rules.value());
    if (!techniques)
        return techniques.error();
    const auto to = addresseeOf(verb.to);
    if (!to)
        return to.error();
    const Visit &visit = known.visit;
    const Reference reference{{}, visit.patient ? yearsBetween(visit.patient->born, visit.date) : std::nullopt};
    Letter letter = letterDraft(
        {rules.value(), *known.knowledge.regions, examination.value(), techniques.value(), reference}, visit, visit.date);
    letter.to = to.value();
    if (!verb.question.empty()) {
        letter.question.text = verb.question;
        letter.urgency = std::max(letter.urgency, Urgency::Routine); // an answer is asked for
    }
    if (verb.urgency.empty())
        return letter;
    const auto urgency = fromWord(urgencyWords, verb.urgency);
    if (!urgency)
        return Error{ErrorCode::BadArgument, "--urgency",
            "'" + verb.urgency + "' is none; use emergency-now, same-day, within-days, routine or for-information"};
    letter.urgency = *urgency;
    return letter;
}

} // namespace

Result<Done> writeLetter(const LetterVerb &verb)
{
    const auto size = paperOf(verb.paper);
    if (!size)
        return size.error();
    const auto known = readKnownVisit(verb.visit);
    if (!known)
        return known.error();
    const Visit &visit = known.value().visit;
    const bool isKept = !visit.letters.empty() && !verb.isDraft;
    if (isKept && (!verb.to.empty() || !verb.question.empty() || !verb.urgency.empty()))
        return Error{ErrorCode::BadArgument, "--draft",
            "the visit keeps a letter, which is written as it was kept; with --to, --question or --urgency a draft must be asked "
            "for"};
    const auto letter = isKept ? Result<Letter>(visit.letters.back()) : draftOf(known.value(), verb);
    if (!letter)
        return letter.error();
    return writePdf(verb.out, letterPages(size.value(), letter.value(), letterFacts(visit, {}, {})));
}

} // namespace raphe::batch
