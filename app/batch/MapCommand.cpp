// raphe-batch map: the visit map as PDF, SVG or PNG.
#include "app/batch/Commands.h"

#include "app/batch/PaperSize.h"
#include "app/batch/VisitFile.h"
#include "app/paint/VisitMapPage.h"

namespace raphe::batch {

Result<Done> writeMap(const std::string &visitFile, const std::string &out, const std::string &paper, const std::string &language)
{
    const auto size = paperOf(paper);
    if (!size)
        return size.error();
    if (language != "en" && language != "de" && language != "es")
        return Error{ErrorCode::BadArgument, "--language", "'" + language + "' is not a language of the atlas; use en, de or es"};
    const auto read = readKnownVisit(visitFile);
    if (!read)
        return read.error();
    const auto &[knowledge, visit] = read.value();
    const auto rules = readEmbeddedSafetyRules(*knowledge.atlas);
    if (!rules)
        return rules.error();
    return writeVisitMap(out, size.value(), visitMap(rules.value(), *knowledge.atlas, *knowledge.body, visit, language),
        BodyArt(*knowledge.atlas, knowledge.body->of(View::Front)), BodyArt(*knowledge.atlas, knowledge.body->of(View::Back)));
}

} // namespace raphe::batch
