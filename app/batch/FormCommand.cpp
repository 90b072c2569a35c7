// raphe-batch form: the form that a patient fills in before the visit.
#include "app/batch/Commands.h"
#include "app/batch/PaperSize.h"

#include "app/paint/ArrivalFormPages.h"
#include "core/reasoning/Knowledge.h"

namespace raphe::batch {

Result<Done> writeForm(const std::string &out, const std::string &paper, const std::string &word)
{
    const auto size = paperOf(paper);
    if (!size)
        return size.error();
    const auto language = languageOf(word);
    if (!language)
        return language.error();
    const auto knowledge = readKnowledge();
    if (!knowledge)
        return knowledge.error();
    const auto texts = readEmbeddedPatientTexts();
    if (!texts)
        return texts.error();
    const auto form = arrivalForm(inLanguage(texts.value(), Phrases(language.value())));
    if (!form)
        return form.error();
    const auto &[atlas, body] = std::tie(knowledge.value().atlas, knowledge.value().body);
    const BodyArt front(*atlas, body->of(View::Front));
    const BodyArt back(*atlas, body->of(View::Back));
    return writePdf(out, arrivalFormPages(size.value(), form.value(), front, back));
}

} // namespace raphe::batch
