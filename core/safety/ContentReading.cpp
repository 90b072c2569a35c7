#include "core/safety/ContentReading.h"

namespace raphe::content {

void expectFormat(const JsonReader &root, std::string_view format)
{
    if (root.string("format") != format)
        root.field("format").fail(ErrorCode::WrongFormat, root.string("format"));
    if (root.field("version").asNumber() != 1)
        root.field("version").fail(ErrorCode::WrongFormat, std::to_string(root.field("version").asNumber()));
}

std::string readText(const JsonReader &owner, std::string_view name)
{
    std::string text = owner.string(name);
    if (text.empty())
        owner.fail(ErrorCode::MissingField, std::string(name));
    return text;
}

StructureId readRegion(const JsonReader &at, const Atlas &atlas)
{
    StructureId id{at.asString()};
    const Structure *structure = atlas.find(id);
    if (!structure)
        at.fail(ErrorCode::UnknownId, id.value);
    if (structure->kind != Kind::SurfaceRegion)
        at.fail(ErrorCode::WrongType, "id of a surface-region, not " + id.value);
    return id;
}

} // namespace raphe::content
