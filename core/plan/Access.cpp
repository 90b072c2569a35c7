#include "core/plan/Access.h"

#include "core/safety/ContentReading.h"

#include <QFile>
#include <nlohmann/json.hpp>

namespace raphe {

using namespace content;

namespace {

constexpr const char *accessFile = "access.json";
constexpr double leastShare = 0.2; // of a place under a region, for hands to reach it from there; our choice

} // namespace

Result<Access> Access::read(std::string_view text, const std::string &file, const Regions &regions)
{
    return guarded([&] {
        const auto json = valueOrThrow(parseJson(text, file));
        const JsonReader root(json, file);
        root.expectObject({"format", "version", "read", "covers", "regions"});
        expectFormat(root, "raphe-access");
        Access out(regions);
        for (const JsonReader &at : root.field("covers").items()) {
            at.expectObject({"id", "name", "by_side"});
            out.m_covers.push_back({readNewId(at, out.m_covers), readText(at, "name"), at.field("by_side").asBool()});
        }
        for (const JsonReader &at : root.field("regions").items()) {
            at.expectObject({"region", "positions", "uncover"});
            const StructureId id = readRegion(at.field("region"), regions.atlas());
            Region region;
            for (const JsonReader &position : at.field("positions").items(1, positionWords.size())) {
                const std::string word = position.asString();
                if (word == "up")
                    region.isUp = true;
                else if (word == "down")
                    region.isDown = true;
                else
                    region.always |= setOf(readWord(positionWords, position));
            }
            if (at.has("uncover")) {
                const std::string cover = readKnownId(at.field("uncover"), out.m_covers);
                region.cover = static_cast<int>(findById(out.m_covers, cover) - out.m_covers.data()) + 1;
            }
            if (!out.m_byRegion.emplace(id, region).second)
                at.field("region").fail(ErrorCode::Duplicate, id.value);
        }
        for (const Structure &structure : regions.atlas().structures())
            if (structure.kind == Kind::SurfaceRegion && !out.m_byRegion.contains(structure.id))
                root.field("regions").fail(ErrorCode::MissingField, structure.id.value);
        return out;
    });
}

plan::PositionSet Access::positionsIn(const Region &region, Side side)
{
    plan::PositionSet out = region.always;
    const bool isLeft = side != Side::Right; // the midline is reached from either side
    const bool isRight = side != Side::Left;
    if ((region.isUp && isRight) || (region.isDown && isLeft))
        out |= setOf(Position::OnLeftSide);
    if ((region.isUp && isLeft) || (region.isDown && isRight))
        out |= setOf(Position::OnRightSide);
    return out;
}

std::vector<std::pair<const Access::Region *, double>> Access::over(const Place &place) const
{
    std::vector<std::pair<const Region *, double>> out;
    for (const auto &[region, share] : m_regions.over(place.structure))
        if (share >= leastShare)
            out.emplace_back(&m_byRegion.at(region), share);
    if (const auto &mark = m_regions.atMark(place.structure); out.empty() && mark)
        out.emplace_back(&m_byRegion.at(*mark), 1);
    return out;
}

plan::PositionSet Access::positionsOf(const Place &place) const
{
    plan::PositionSet out = 0;
    for (const auto &[region, share] : over(place))
        out |= positionsIn(*region, place.side);
    return out;
}

int Access::coverOf(const Place &place, Position position) const
{
    int cover = 0;
    double most = 0;
    for (const auto &[region, share] : over(place))
        if ((positionsIn(*region, place.side) & setOf(position)) != 0 && share > most) {
            most = share;
            cover = region->cover;
        }
    return cover;
}

int Access::areaOf(const Place &place) const
{
    int area = 0;
    double most = 0;
    for (const auto &[region, share] : over(place))
        if (share > most) {
            most = share;
            area = region->cover;
        }
    return area;
}

Result<Access> readEmbeddedAccess(const Regions &regions)
{
    QFile file(QStringLiteral(":/access.json"));
    if (!file.open(QIODevice::ReadOnly))
        return Error{ErrorCode::CannotRead, accessFile, file.errorString().toStdString()};
    return Access::read(file.readAll().toStdString(), accessFile, regions);
}

} // namespace raphe
