// raphe-batch form: the form that a patient fills in before the visit.
#include "app/batch/Commands.h"
#include "app/batch/PaperSize.h"

#include "app/paint/ArrivalFormPages.h"
#include "core/reasoning/Knowledge.h"

namespace raphe::batch {

Result<Done> writeForm(const std::string &out, const std::string &paper)
{
    const auto size = paperOf(paper);
    if (!size)
        return size.error();
    const auto knowledge = readKnowledge();
    if (!knowledge)
        return knowledge.error();
    const auto texts = readEmbeddedPatientTexts();
    if (!texts)
        return texts.error();
    const auto form = arrivalForm(texts.value());
    if (!form)
        return form.error();
    const auto &[atlas, body] = std::tie(knowledge.value().atlas, knowledge.value().body);
    return writeArrivalForm(
        out, size.value(), form.value(), BodyArt(*atlas, body->of(View::Front)), BodyArt(*atlas, body->of(View::Back)));
}

} // namespace raphe::batch
