#include "core/anatomy/BodyShare.h"

#include "core/anatomy/Atlas.h"
#include "core/anatomy/AtlasReader.h"
#include "core/base/JsonReader.h"

#include <nlohmann/json.hpp>

#include <QFile>

#include <cmath>
#include <map>

namespace raphe {

namespace {

// The region of the skin at the middle of a cell of the half that is drawn.
const StructureId *regionAt(const Drawing &drawing, const Point p)
{
    for (const DrawnShape &shape : drawing.shapes())
        if (shape.layer == Layer::Skin && shape.bounds.contains(p) && contains(shape.polygons, p))
            return &shape.structure;
    return nullptr;
}

struct Part {
    std::string id;
    bool paired = false;
    double percent = 0;
};

} // namespace

Result<BodyShare> BodyShare::read(std::string_view json, const std::string &file, const Atlas &atlas, const Body &body)
{
    auto document = parseJson(json, file);
    if (!document)
        return document.error();
    return guarded([&]() -> BodyShare {
        const JsonReader root(document.value(), file);
        root.expectObject({"format", "version", "source", "parts"});
        if (root.string("format") != "raphe-body-shares")
            root.field("format").fail(ErrorCode::WrongFormat, root.string("format"));
        if (root.field("version").asNumber() != 1)
            root.field("version").fail(ErrorCode::WrongFormat, std::to_string(root.field("version").asNumber()));
        BodyShare share;
        for (const View view : {View::Front, View::Back}) {
            std::map<StructureId, Part> owner; // region -> its part in this view
            for (const JsonReader &at : root.field("parts").items()) {
                at.expectObject({"id", "paired", "front", "back"});
                const JsonReader seen = at.field(wordOf(viewWords, view));
                seen.expectObject({"percent", "regions"});
                const Part part{at.string("id"), at.field("paired").asBool(), seen.field("percent").asNumber()};
                if (!(part.percent >= 0 && part.percent <= 100))
                    seen.field("percent").fail(ErrorCode::OutOfRange, "percent; allowed: 0 to 100");
                for (const JsonReader &region : seen.field("regions").items()) {
                    const StructureId id{region.asString()};
                    if (!atlas.find(id) || !body.of(view).shows(id))
                        region.fail(ErrorCode::UnknownId, id.value);
                    if (!owner.emplace(id, part).second)
                        region.fail(ErrorCode::Duplicate, id.value);
                }
            }
            std::map<std::pair<std::string, Side>, std::size_t> indexOf;
            const auto partIndex = [&](const Part &part, Side side) {
                const auto [it, fresh] = indexOf.emplace(std::pair(part.id, side), share.m_parts.size());
                if (fresh)
                    share.m_parts.push_back({part.id, side, view, part.percent, 0});
                return it->second;
            };
            const Drawing &drawing = body.of(view);
            for (int y = 0; y < 1000; ++y)
                for (int x = 0; x < 500; ++x) {
                    const StructureId *region = regionAt(drawing, {x + 0.5, y + 0.5});
                    if (!region)
                        continue;
                    const auto it = owner.find(*region);
                    if (it == owner.end())
                        root.field("parts").fail(ErrorCode::MissingField,
                            "a part for " + region->value + " in the " + std::string(wordOf(viewWords, view)) + " view");
                    auto known = std::find(share.m_regions.begin(), share.m_regions.end(), *region);
                    if (known == share.m_regions.end())
                        known = share.m_regions.insert(share.m_regions.end(), *region);
                    for (const int shown : {x, -1 - x}) { // the cell and its mirror image
                        const Side side = it->second.paired ? drawing.sideAt(shown + 0.5) : Side::Midline;
                        const std::size_t part = partIndex(it->second, side);
                        ++share.m_parts[part].cells;
                        share.m_cells.push_back({static_cast<std::int16_t>(shown), static_cast<std::int16_t>(y),
                            static_cast<std::uint16_t>(part), static_cast<std::uint16_t>(known - share.m_regions.begin())});
                    }
                }
        }
        return share;
    });
}

std::vector<double> BodyShare::percentByPart(const SurfaceMask &mask) const
{
    std::vector<int> marked(m_parts.size());
    for (const Cell &cell : m_cells)
        marked[cell.part] += mask.isMarked(m_parts[cell.part].view, cell.x, cell.y);
    std::vector<double> percent;
    for (std::size_t i = 0; i < m_parts.size(); ++i)
        percent.push_back(m_parts[i].percent * (static_cast<double>(marked[i]) / m_parts[i].cells));
    return percent;
}

double BodyShare::percentOf(const SurfaceMask &mask) const
{
    double sum = 0;
    for (const double percent : percentByPart(mask))
        sum += percent;
    return sum;
}

void BodyShare::markRegion(SurfaceMask &mask, const Place &region) const
{
    for (const Cell &cell : m_cells) {
        if (m_regions[cell.region] != region.structure)
            continue;
        const View view = m_parts[cell.part].view;
        const bool isRight = (view == View::Back) == (cell.x >= 0);
        if (region.side == Side::Midline || isRight == (region.side == Side::Right))
            mask.mark(view, cell.x, cell.y);
    }
}

Result<BodyShare> readEmbeddedBodyShare(const Atlas &atlas, const Body &body)
{
    QFile file(QStringLiteral(":/body-shares.json"));
    if (!file.open(QIODevice::ReadOnly))
        return Error{ErrorCode::CannotRead, "body-shares.json", file.errorString().toStdString()};
    return BodyShare::read(file.readAll().toStdString(), "body-shares.json", atlas, body);
}

} // namespace raphe
