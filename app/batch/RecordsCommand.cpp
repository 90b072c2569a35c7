// raphe-batch export --form pdf: all that a practice file holds on one patient, as pages.
#include "app/batch/NoteCommand.h"

#include "app/batch/PaperSize.h"
#include "app/batch/Unlocked.h"
#include "app/paint/RecordsRequestPages.h"
#include "app/words/StoredNotes.h"
#include "core/reasoning/Knowledge.h"

namespace raphe::batch {

Result<Done> exportPages(const std::string &practiceFile, const Key &key, const RecordsVerb &verb)
{
    const auto size = paperOf(verb.paper);
    if (!size)
        return size.error();
    if (!verb.out.ends_with(".pdf")) // before the export is written down
        return Error{ErrorCode::BadArgument, verb.out.empty() ? "--out" : verb.out, "a file whose name ends in .pdf"};
    const auto practice = unlocked(practiceFile, key);
    if (!practice)
        return practice.error();
    const auto knowledge = readKnowledge();
    if (!knowledge)
        return knowledge.error();
    const auto rules = readEmbeddedSafetyRules(*knowledge.value().atlas);
    if (!rules)
        return rules.error();
    const auto examination = readEmbeddedExamination(*knowledge.value().atlas, rules.value());
    if (!examination)
        return examination.error();
    auto techniques = readEmbeddedTechniques(rules.value());
    if (!techniques)
        return techniques.error();
    const auto settings = practice.value()->settings();
    if (!settings)
        return settings.error();
    techniques = withOwn(std::move(techniques).value(), settings.value().treatment);
    if (!techniques)
        return techniques.error();
    const auto kept = recordContent(*practice.value(), verb.patient, *knowledge.value().atlas);
    if (!kept)
        return kept.error();
    const RecordsRequest request =
        recordsRequest({*knowledge.value().regions, rules.value(), examination.value(), techniques.value()}, kept.value(),
            verb.isForOthers ? NoteFor::Others : NoteFor::Record);
    return writePdf(verb.out, recordsRequestPages(size.value(), request));
}

} // namespace raphe::batch
