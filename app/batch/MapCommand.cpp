// raphe-batch map: the visit map as PDF, SVG or PNG.
#include "app/batch/Commands.h"

#include "app/batch/VisitFile.h"
#include "app/paint/VisitMapPage.h"
#include "core/reasoning/Knowledge.h"

namespace raphe::batch {

Result<Done> writeMap(const std::string &visitFile, const std::string &out, const std::string &paper, const std::string &language)
{
    const auto size = fromWord(paperWords, paper);
    if (!size)
        return Error{ErrorCode::BadArgument, "--paper", "'" + paper + "' is not a paper size; use a4 or letter"};
    if (language != "en" && language != "de" && language != "es")
        return Error{ErrorCode::BadArgument, "--language", "'" + language + "' is not a language of the atlas; use en, de or es"};
    const auto read = readKnowledge();
    if (!read)
        return read.error();
    const Knowledge &knowledge = read.value();
    const auto visit = readVisitFile(visitFile, *knowledge.atlas);
    if (!visit)
        return visit.error();
    return writeVisitMap(out, *size, visitMap(*knowledge.atlas, *knowledge.body, visit.value(), language),
        BodyArt(*knowledge.atlas, knowledge.body->front), BodyArt(*knowledge.atlas, knowledge.body->back));
}

} // namespace raphe::batch
