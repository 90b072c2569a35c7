// raphe-batch note: the clinical note of a visit, as text or PDF.
#include "app/batch/NoteCommand.h"

#include "app/batch/PaperSize.h"
#include "app/batch/VisitFile.h"
#include "app/paint/ClinicalNotePages.h"
#include "core/document/NoteText.h"

#include <QByteArray>

#include <algorithm>
#include <iostream>

namespace raphe::batch {

namespace {

Result<std::vector<EarlierVisit>> earlierVisits(const std::vector<std::string> &files, const Atlas &atlas)
{
    std::vector<EarlierVisit> out;
    for (const std::string &file : files) {
        auto visit = readVisitFile(file, atlas);
        if (!visit)
            return visit.error();
        out.push_back({std::move(visit).value(), false});
    }
    std::stable_sort(out.begin(), out.end(),
        [](const EarlierVisit &a, const EarlierVisit &b) { return a.visit.date > b.visit.date; }); // newest first
    return out;
}

} // namespace

Result<Done> writeNote(const NoteVerb &verb)
{
    const auto size = paperOf(verb.paper);
    if (!size)
        return size.error();
    const bool isText = verb.out.empty() || verb.out.ends_with(".txt");
    if (!isText && !verb.out.ends_with(".pdf"))
        return Error{ErrorCode::BadArgument, verb.out, "the name must end in .pdf or .txt"};
    const auto read = readAdvisedVisit(verb.visit);
    if (!read)
        return read.error();
    const auto &[known, adviser] = read.value();
    const Knowledge &knowledge = known.knowledge;
    const auto examination = readEmbeddedExamination(*knowledge.atlas, adviser.rules());
    if (!examination)
        return examination.error();
    const auto techniques = readEmbeddedTechniques(adviser.rules());
    if (!techniques)
        return techniques.error();
    auto earlier = earlierVisits(verb.before, *knowledge.atlas);
    if (!earlier)
        return earlier.error();
    const auto advice = adviser.advise(known.visit, verb.visit);
    if (!advice)
        return advice.error();
    NoteGiven given;
    given.readers = verb.isForOthers ? NoteFor::Others : NoteFor::Record;
    given.earlier = std::move(earlier).value();
    given.explain = advice.value().reasons.explain;
    given.unexplained = advice.value().reasons.unexplained;
    const ClinicalNote note =
        clinicalNote({*knowledge.regions, adviser.rules(), examination.value(), techniques.value()}, known.visit, given);
    if (!isText)
        return writePdf(verb.out, clinicalNotePages(size.value(), note));
    const std::string text = noteText(note);
    if (!verb.out.empty())
        return saveAll(verb.out, QByteArray::fromStdString(text));
    std::cout << text;
    return Done{};
}

} // namespace raphe::batch
