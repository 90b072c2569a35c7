// raphe-batch atlas: the whole atlas as one JSON object (resources/schema/atlas-output.schema.json).
#include "app/batch/Commands.h"

#include "core/reasoning/Knowledge.h"

#include <nlohmann/json.hpp>

#include <iostream>
#include <map>

namespace raphe::batch {

namespace {

using Json = nlohmann::ordered_json;

Json idsOf(const std::vector<StructureId> &ids)
{
    Json out = Json::array();
    for (const StructureId &id : ids)
        out.push_back(id.value);
    return out;
}

Json alongJson(const Along *along)
{
    return along ? Json{{"from", along->from}, {"to", along->to}} : Json(nullptr);
}

Json actionsJson(const Structure &s)
{
    Json out = Json::array();
    for (const Action &action : s.actions) {
        Json motions = Json::array();
        for (const Motion motion : action.motions)
            motions.push_back(wordOf(motionWords, motion));
        const auto *joint = std::get_if<StructureId>(&action.at);
        out.push_back({{"at", joint ? Json(joint->value) : Json(wordOf(complexWords, std::get<JointComplex>(action.at)))},
            {"motions", std::move(motions)}});
    }
    return out;
}

Json borderJson(const Structure &s)
{
    if (!s.border)
        return nullptr;
    return {{"from", s.border->from}, {"to", s.border->to}, {"length_over_stature", s.border->lengthOverStature},
        {"sources", s.border->sources}, {"note", s.border->note}};
}

Json cautionJson(const Structure &s)
{
    if (!s.caution)
        return nullptr;
    return {{"runs", idsOf(s.caution->runs)}, {"risk", s.caution->risk}, {"work", s.caution->work}};
}

Json seatJson(const Structure &s)
{
    if (!s.seat)
        return nullptr;
    return {{"how_often", wordOf(howOftenWords, s.seat->howOften)}, {"felt_at", idsOf(s.seat->feltAt)},
        {"evidence", wordOf(gradeWords, s.seat->evidence)}, {"sources", s.seat->sources}};
}

Json structureJson(const Structure &s)
{
    return {{"id", s.id.value}, {"kind", wordOf(kindWords, s.kind)}, {"layer", wordOf(layerWords, s.layer)}, {"paired", s.paired},
        {"part_of", s.partOf ? Json(s.partOf->value) : Json(nullptr)},
        {"names",
            {{"latin", s.names.latin}, {"english", s.names.english}, {"plain", s.names.plain}, {"synonyms", s.names.synonyms}}},
        {"ids", {{"uberon", s.uberon}, {"fma", s.fma}}}, {"nerves", idsOf(s.nerves)}, {"roots", s.roots},
        {"actions", actionsJson(s)}, {"beside", idsOf(s.beside)}, {"border", borderJson(s)}, {"caution", cautionJson(s)},
        {"seat", seatJson(s)}, {"sources", s.sources}};
}

void addAttachments(const Atlas &atlas, const Structure &s, Json &out)
{
    for (const Attachment &head : s.attachments)
        for (const auto &[role, ends] : {std::pair{"origin", &head.origins}, std::pair{"insertion", &head.insertions}})
            for (const StructureId &onto : *ends)
                out.push_back({{"structure", s.id.value}, {"role", role}, {"onto", onto.value},
                    {"bones", idsOf(atlas.bonesOf(onto))}, {"head", head.head}, {"along", alongJson(head.alongOf(onto))},
                    {"evidence", wordOf(gradeWords, head.evidence)}, {"sources", head.sources}});
}

Json countsJson(const Atlas &atlas)
{
    std::map<std::string, int> kinds;
    for (const Structure &s : atlas.structures())
        ++kinds[std::string(wordOf(kindWords, s.kind))];
    return kinds;
}

} // namespace

Result<Done> printAtlas()
{
    const auto read = readKnowledge();
    if (!read)
        return read.error();
    const Atlas &atlas = *read.value().atlas;
    Json out{{"counts", countsJson(atlas)}, {"structures", Json::array()}, {"joints", Json::array()},
        {"attachments", Json::array()}, {"crossings", Json::array()}, {"continuities", Json::array()},
        {"overlies", Json::array()}, {"sources", Json::array()}};
    for (const Structure &s : atlas.structures()) {
        out["structures"].push_back(structureJson(s));
        addAttachments(atlas, s, out["attachments"]);
    }
    for (const Joint &j : atlas.joints())
        out["joints"].push_back({{"id", j.id.value}, {"bones", {j.bones[0].value, j.bones[1].value}},
            {"role", wordOf(jointRoleWords, j.role)}, {"complex", wordOf(complexWords, j.complex)}});
    for (const Crossing &c : atlas.crossings())
        out["crossings"].push_back({{"muscle", c.muscle.value}, {"joint", c.joint.value}, {"basis", wordOf(basisWords, c.basis)},
            {"evidence", wordOf(gradeWords, c.evidence)}, {"sources", c.sources}});
    for (const Continuity &c : atlas.continuities())
        out["continuities"].push_back({{"from", c.from.value}, {"to", c.to.value}, {"changes_side", c.changesSide},
            {"evidence", wordOf(gradeWords, c.evidence)}, {"force", wordOf(forceWords, c.force)}, {"sources", c.sources},
            {"note", c.note}});
    const double least = (*read.value().constants)["overlap-least"];
    for (const auto &[view, word] : viewWords)
        for (const Overlap &o : read.value().body->of(view).overlaps(atlas, least))
            out["overlies"].push_back({{"view", word}, {"outer", o.outer.value}, {"inner", o.inner.value}, {"share", o.share},
                {"evidence", "described"}, {"basis", "computed"}});
    for (const Source &s : atlas.sources())
        out["sources"].push_back({{"id", s.id}, {"citation", s.citation}, {"doi", s.doi ? Json(*s.doi) : Json(nullptr)},
            {"supports", wordOf(gradeWords, s.supports)}, {"read", wordOf(readingWords, s.read)}});
    std::cout << out.dump(1) << '\n';
    return Done{};
}

} // namespace raphe::batch
