#include "core/anatomy/BodyShare.h"

#include "core/anatomy/Atlas.h"
#include "core/anatomy/AtlasReader.h"
#include "core/anatomy/StrokeRaster.h"
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
        const SurfaceMask silhouette = silhouetteMask(body);
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
            std::map<std::pair<std::string, Side>, std::size_t> partOf;
            std::map<std::pair<StructureId, Side>, std::size_t> slotOf;
            const auto partIndex = [&](const Part &part, Side side) {
                const auto [it, fresh] = partOf.emplace(std::pair(part.id, side), share.m_parts.size());
                if (fresh)
                    share.m_parts.push_back({part.id, side, view, part.percent, 0});
                return it->second;
            };
            const auto slotIndex = [&](const StructureId &region, Side half, std::size_t part) {
                const auto [it, fresh] = slotOf.emplace(std::pair(region, half), share.m_slots.size());
                if (fresh)
                    share.m_slots.push_back({region, half, part, 0, atlas.at(region).paired});
                return it->second;
            };
            const Drawing &drawing = body.of(view);
            for (int y = 0; y < SurfaceMask::rows; ++y)
                for (int x = 0; x <= SurfaceMask::lastX; ++x) {
                    if (!silhouette.isMarked(view, x, y))
                        continue; // a region may reach a hair beyond
                    const StructureId *region = regionAt(drawing, {x + 0.5, y + 0.5});
                    if (!region)
                        continue;
                    const auto it = owner.find(*region);
                    if (it == owner.end())
                        root.field("parts").fail(ErrorCode::MissingField,
                            "a part for " + region->value + " in the " + std::string(wordOf(viewWords, view)) + " view");
                    for (const int shown : {x, -1 - x}) { // the cell and its mirror image
                        const Side half = drawing.sideAt(shown + 0.5);
                        const std::size_t part = partIndex(it->second, it->second.paired ? half : Side::Midline);
                        const std::size_t slot = slotIndex(*region, half, part);
                        ++share.m_parts[part].cells;
                        ++share.m_slots[slot].cells;
                        share.m_cells.push_back(
                            {static_cast<std::int16_t>(shown), static_cast<std::int16_t>(y), static_cast<std::uint16_t>(slot)});
                    }
                }
        }
        return share;
    });
}

std::vector<int> BodyShare::markedBySlot(const SurfaceMask &mask) const
{
    std::vector<int> marked(m_slots.size());
    for (const Cell &cell : m_cells)
        marked[cell.slot] += mask.isMarked(m_parts[m_slots[cell.slot].part].view, cell.x, cell.y);
    return marked;
}

std::vector<double> BodyShare::percentByPart(const SurfaceMask &mask) const
{
    const std::vector<int> bySlot = markedBySlot(mask);
    std::vector<int> marked(m_parts.size());
    for (std::size_t i = 0; i < bySlot.size(); ++i)
        marked[m_slots[i].part] += bySlot[i];
    std::vector<double> percent;
    for (std::size_t i = 0; i < m_parts.size(); ++i)
        percent.push_back(m_parts[i].percent * (static_cast<double>(marked[i]) / m_parts[i].cells));
    return percent;
}

double BodyShare::percentOf(const SurfaceMask &mask) const
{
    const std::vector<double> percent = percentByPart(mask);
    double sum = 0;
    for (std::size_t i = 0; i < percent.size(); ++i)
        if (m_parts[i].side == Side::Midline)
            sum += percent[i];
        else { // both sides before all else, so that it does not matter which is which
            sum += percent[i] + percent[i + 1];
            ++i;
        }
    return sum;
}

std::vector<RegionShare> BodyShare::percentByRegion(const SurfaceMask &mask) const
{
    const std::vector<int> marked = markedBySlot(mask);
    const auto shareOf = [&](const Slot &slot, int cells) {
        const BodyPart &part = m_parts[slot.part];
        return part.percent * (static_cast<double>(cells) / part.cells);
    };
    std::map<Place, RegionShare> found;
    const auto add = [&](const Slot &slot, Side side, double percent, double of) {
        RegionShare &share = found[{slot.region, side}];
        share.region = {slot.region, side};
        share.percent += percent;
        share.of += of;
    };
    std::map<Place, int> cells;
    for (std::size_t i = 0; i + 1 < m_slots.size(); i += 2) { // the two sides together, as in percentOf()
        const Slot &one = m_slots[i];
        const Slot &other = m_slots[i + 1];
        const double ones = shareOf(one, marked[i]);
        const double others = shareOf(other, marked[i + 1]);
        if (one.paired) {
            add(one, one.half, ones, shareOf(one, one.cells));
            add(other, other.half, others, shareOf(other, other.cells));
            cells[{one.region, one.half}] += marked[i];
            cells[{other.region, other.half}] += marked[i + 1];
        } else {
            add(one, Side::Midline, ones + others, shareOf(one, one.cells) + shareOf(other, other.cells));
            cells[{one.region, Side::Midline}] += marked[i] + marked[i + 1];
        }
    }
    std::vector<RegionShare> out;
    for (const auto &[place, share] : found)
        if (cells[place] > 0)
            out.push_back(share);
    return out;
}

void BodyShare::markRegion(SurfaceMask &mask, const Place &region) const
{
    for (const Cell &cell : m_cells) {
        const Slot &slot = m_slots[cell.slot];
        if (slot.region == region.structure && (region.side == Side::Midline || region.side == slot.half))
            mask.mark(m_parts[slot.part].view, cell.x, cell.y);
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
