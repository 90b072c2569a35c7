#include "core/anatomy/Regions.h"

#include "core/anatomy/MarkPoint.h"
#include "core/anatomy/ShapeShares.h"
#include "core/base/JsonReader.h"

#include <nlohmann/json.hpp>

#include <QFile>

#include <algorithm>
#include <mutex>

namespace raphe {

namespace {

// Of resources/body-shares.json.
constexpr WordTable<Limb, 7> limbOfPart{{{Limb::Arm, "upper-arm"}, {Limb::Arm, "forearm"}, {Limb::Arm, "hand"},
    {Limb::Leg, "buttock"}, {Limb::Leg, "thigh"}, {Limb::Leg, "leg"}, {Limb::Leg, "foot"}}};

StructureId readRegion(const JsonReader &at, const Atlas &atlas)
{
    StructureId id{at.asString()};
    if (!atlas.find(id))
        at.fail(ErrorCode::UnknownId, id.value);
    return id;
}

// What a nerve, vessel, bursa or disc lies beside, and the ends of what is hidden.
std::vector<StructureId> neighboursOf(const Structure &structure)
{
    std::vector<StructureId> out = structure.beside;
    for (const Attachment &head : structure.attachments)
        for (const auto *ends : {&head.origins, &head.insertions})
            out.insert(out.end(), ends->begin(), ends->end());
    return out;
}

std::optional<StructureId> regionAtMark(const Atlas &atlas, const Body &body, const StructureId &id)
{
    const Structure &structure = atlas.at(id);
    const auto mark = markPoint(atlas, body, {id, structure.paired ? Side::Right : Side::Midline});
    if (!mark)
        return std::nullopt;
    const Drawing &drawing = body.of(mark->view);
    const Point drawn = drawing.drawnPoint(mark->point);
    for (const DrawnShape &shape : drawing.shapes())
        if (shape.layer == Layer::Skin && shape.bounds.contains(drawn) && contains(shape.polygons, drawn))
            return shape.structure;
    return std::nullopt;
}

} // namespace

// Shared by all who ask, in a place of its own so that Regions can move.
struct Regions::Found {
    std::mutex mutex; // for all below
    std::map<StructureId, std::vector<StructureId>> drawn;
    std::map<StructureId, std::map<StructureId, double>> over;
    std::map<StructureId, std::optional<StructureId>> atMark;
    std::map<std::pair<StructureId, StructureId>, double> shareOn;
};

bool isPartOf(const Atlas &atlas, const StructureId &part, const StructureId &whole)
{
    const auto &next = atlas.at(part).partOf;
    return next && (*next == whole || isPartOf(atlas, *next, whole));
}

Regions::Regions(const Atlas &atlas, const Body &body) : m_atlas(atlas), m_body(body), m_found(std::make_unique<Found>()) { }

Regions::Regions(Regions &&) noexcept = default;

Regions::~Regions() = default;

Result<Regions> Regions::read(std::string_view json, const std::string &file, const Atlas &atlas, const Body &body)
{
    const auto document = parseJson(json, file);
    if (!document)
        return document.error();
    return guarded([&] {
        Regions regions(atlas, body);
        for (const auto &[view, limb] : {std::pair{View::Palm, Limb::Arm}, std::pair{View::Sole, Limb::Leg}})
            for (const DrawnShape &shape : body.of(view).shapes())
                if (shape.layer == Layer::Skin)
                    regions.m_limbs.emplace(shape.structure, limb);
        const JsonReader list = JsonReader(document.value(), file).field("parts");
        const std::vector<JsonReader> parts = list.items();
        for (const auto &[limb, id] : limbOfPart) {
            const auto part =
                std::find_if(parts.begin(), parts.end(), [name = id](const JsonReader &p) { return p.string("id") == name; });
            if (part == parts.end())
                list.fail(ErrorCode::MissingField, std::string(id));
            for (const char *view : {"front", "back"})
                for (const JsonReader &region : part->field(view).field("regions").items())
                    regions.m_limbs.emplace(readRegion(region, atlas), limb);
        }
        return regions;
    });
}

// Found out without the lock, so that nobody waits for another's geometry; when two find the same, the first stays.
template <class Key, class Value, class Find>
const Value &Regions::remembered(std::map<Key, Value> &found, const Key &key, Find find) const
{
    {
        const std::lock_guard lock(m_found->mutex);
        if (const auto it = found.find(key); it != found.end())
            return it->second;
    }
    Value value = find();
    const std::lock_guard lock(m_found->mutex);
    return found.try_emplace(key, std::move(value)).first->second;
}

const std::vector<StructureId> &Regions::drawn(const StructureId &id) const
{
    return remembered(m_found->drawn, id, [&] { return drawnFor(m_atlas, m_body, id); });
}

const std::map<StructureId, double> &Regions::over(const StructureId &id) const
{
    return remembered(m_found->over, id, [&] { return regionsOver(m_body, drawn(id)); });
}

const std::optional<StructureId> &Regions::atMark(const StructureId &id) const
{
    return remembered(m_found->atMark, id, [&] { return regionAtMark(m_atlas, m_body, id); });
}

double Regions::shareOn(const StructureId &id, const StructureId &other) const
{
    return remembered(m_found->shareOn, {id, other}, [&] { return raphe::shareOn(m_body, drawn(id), drawn(other)); });
}

double Regions::overlap(const StructureId &a, const StructureId &b) const
{
    return std::max(shareOn(a, b), shareOn(b, a));
}

std::optional<Limb> Regions::limbOf(const StructureId &id, double least, const LimbRegions &roots) const
{
    if (drawn(id).empty()) {
        for (const StructureId &neighbour : neighboursOf(m_atlas.at(id)))
            if (!drawn(neighbour).empty())
                if (const auto limb = limbOf(neighbour, least, roots))
                    return limb;
        return std::nullopt;
    }
    const auto limbOfRegion = [&](const StructureId &region) -> std::optional<Limb> {
        for (const LimbRegions *regions : {&m_limbs, &roots})
            if (const auto it = regions->find(region); it != regions->end())
                return it->second;
        return std::nullopt;
    };
    std::map<Limb, double> shares;
    for (const auto &[region, share] : over(id))
        if (const auto limb = limbOfRegion(region))
            shares[*limb] += share;
    for (const auto &[limb, share] : shares)
        if (share >= least)
            return limb;
    if (shares.empty())
        return std::nullopt;
    const auto &mark = atMark(id);
    return mark ? limbOfRegion(*mark) : std::nullopt;
}

Result<Regions> readEmbeddedRegions(const Atlas &atlas, const Body &body)
{
    QFile file(QStringLiteral(":/body-shares.json"));
    if (!file.open(QIODevice::ReadOnly))
        return Error{ErrorCode::CannotRead, "body-shares.json", file.errorString().toStdString()};
    return Regions::read(file.readAll().toStdString(), "body-shares.json", atlas, body);
}

} // namespace raphe
