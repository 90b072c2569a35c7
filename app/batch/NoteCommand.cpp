// raphe-batch note: the clinical note of a visit, as text or PDF.
#include "app/batch/NoteCommand.h"

#include "app/batch/DocumentTasks.h"
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
    const auto tasks = documentTasks(verb.visits, verb.out, ".pdf");
    if (!tasks)
        return tasks.error();
    for (const DocumentTask &task : tasks.value())
        if (!task.out.empty() && !task.out.ends_with(".txt") && !task.out.ends_with(".pdf"))
            return Error{ErrorCode::BadArgument, task.out, "the name must end in .pdf or .txt"};
    if (tasks.value().size() > 1 && !verb.before.empty())
        return Error{ErrorCode::BadArgument, "--before", "goes with one visit only"};
    const auto read = readKnowledge();
    if (!read)
        return read.error();
    const Knowledge &knowledge = read.value();
    const auto adviser = Adviser::of(knowledge);
    if (!adviser)
        return adviser.error();
    const SafetyRules &rules = adviser.value().rules();
    const auto examination = readEmbeddedExamination(*knowledge.atlas, rules);
    if (!examination)
        return examination.error();
    const auto techniques = readEmbeddedTechniques(rules);
    if (!techniques)
        return techniques.error();
    const auto visits = readVisitFiles(tasks.value(), *knowledge.atlas);
    if (!visits)
        return visits.error();
    NoteGiven given;
    given.readers = verb.isForOthers ? NoteFor::Others : NoteFor::Record;
    auto earlier = earlierVisits(verb.before, *knowledge.atlas);
    if (!earlier)
        return earlier.error();
    given.earlier = std::move(earlier).value();
    for (std::size_t i = 0; i < tasks.value().size(); ++i) {
        tellProgress(tasks.value(), i);
        const DocumentTask &task = tasks.value()[i];
        const Visit &visit = visits.value()[i];
        const auto advice = adviser.value().advise(visit, task.visit);
        if (!advice)
            return advice.error();
        given.explain = advice.value().reasons.explain;
        given.unexplained = advice.value().reasons.unexplained;
        const ClinicalNote note =
            clinicalNote({*knowledge.regions, rules, examination.value(), techniques.value()}, visit, given);
        if (task.out.ends_with(".pdf")) {
            if (const auto written = writePdf(task.out, clinicalNotePages(size.value(), note)); !written)
                return written.error();
        } else if (task.out.empty()) {
            std::cout << noteText(note);
        } else if (const auto written = saveAll(task.out, QByteArray::fromStdString(noteText(note))); !written) {
            return written.error();
        }
    }
    return Done{};
}

} // namespace raphe::batch
