#include "core/reasoning/Knowledge.h"

#include "core/anatomy/AtlasReader.h"

namespace raphe {

Result<Knowledge> readKnowledge()
{
    Knowledge knowledge;
    auto atlas = readEmbeddedAtlas();
    if (!atlas)
        return atlas.error();
    knowledge.atlas = std::make_unique<const Atlas>(std::move(atlas).value());
    auto body = readEmbeddedBody(*knowledge.atlas);
    if (!body)
        return body.error();
    knowledge.body = std::make_unique<const Body>(std::move(body).value());
    auto regions = readEmbeddedRegions(*knowledge.atlas, *knowledge.body);
    if (!regions)
        return regions.error();
    knowledge.regions = std::make_unique<const Regions>(std::move(regions).value());
    auto constants = readEmbeddedConstants();
    if (!constants)
        return constants.error();
    knowledge.constants = std::make_unique<const Constants>(std::move(constants).value());
    knowledge.linkage = std::make_unique<const Linkage>(*knowledge.atlas, *knowledge.body, *knowledge.constants);
    return knowledge;
}

} // namespace raphe
