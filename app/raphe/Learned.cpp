#include "app/raphe/Learned.h"

namespace raphe {

Result<std::shared_ptr<const Learned>> learn()
{
    auto knowledge = readKnowledge();
    if (!knowledge)
        return knowledge.error();
    auto adviser = Adviser::of(knowledge.value());
    if (!adviser)
        return adviser.error();
    auto groups = readEmbeddedTechniqueGroups(adviser.value().rules());
    if (!groups)
        return groups.error();
    auto examination = readEmbeddedExamination(*knowledge.value().atlas, adviser.value().rules());
    if (!examination)
        return examination.error();
    auto list = readEmbeddedWordList("en", *knowledge.value().atlas);
    if (!list)
        return list.error();
    auto techniques = readEmbeddedTechniques(adviser.value().rules());
    if (!techniques)
        return techniques.error();
    auto access = readEmbeddedAccess(*knowledge.value().regions);
    if (!access)
        return access.error();
    auto homeAdvice = readEmbeddedHomeAdvice(adviser.value().rules());
    if (!homeAdvice)
        return homeAdvice.error();
    LineWords lineWords(*knowledge.value().atlas, std::move(list).value());
    return std::make_shared<const Learned>(Learned{std::move(knowledge).value(), std::move(adviser).value(),
        std::move(groups).value(), std::move(examination).value(), std::move(lineWords), std::move(techniques).value(),
        std::move(access).value(), std::move(homeAdvice).value()});
}

} // namespace raphe
