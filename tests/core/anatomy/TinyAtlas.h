// A small atlas that is correct, for tests that spoil it: pelvis and leg with a hand's breadth of trunk.
//   lumbar --tree-- sacrum --tree-- hip bone --tree-- femur --tree-- tibia; pubic symphysis (hip bone to hip bone) closing
#pragma once

#include "core/anatomy/AtlasReader.h"

#include <nlohmann/json.hpp>

#include <stdexcept>
#include <string>

namespace raphe::test {

inline nlohmann::json tinyStructure(const std::string &id, const std::string &kind, const std::string &layer, bool paired)
{
    return {{"id", id}, {"kind", kind}, {"layer", layer}, {"paired", paired},
        {"names",
            {{"latin", "latin " + id}, {"english", "english " + id},
                {"plain", {{"en", "plain " + id}, {"de", "deutsch " + id}, {"es", "llano " + id}}},
                {"synonyms", {id + " for short"}}}},
        {"sources", {"book"}}};
}

inline nlohmann::json tinyLandmark(const std::string &id, const std::string &bone, bool paired)
{
    auto s = tinyStructure(id, "landmark", "bone", paired);
    s["part_of"] = bone;
    return s;
}

inline nlohmann::json tinyHead(const std::string &origin, const std::string &insertion)
{
    return {
        {"head", "head"}, {"origins", {origin}}, {"insertions", {insertion}}, {"evidence", "described"}, {"sources", {"book"}}};
}

// Places in "structures", as the tests' pointers name them.
enum TinyIndex {
    lumbar,
    sacrum,
    hipBone,
    femur,
    tibia,
    sacroiliac,
    hip,
    knee,
    lumbosacral,
    symphysis,
    crest,
    trochanter,
    shin,
    process,
    tract,
    nerve,
    mover,
    region
};

/// The document before anything is spoilt; /structures/N is the TinyIndex.
inline nlohmann::json tinyJson()
{
    using nlohmann::json;
    json structures = json::array();
    structures.push_back(tinyStructure("lumbar", "bone", "bone", false));
    structures.push_back(tinyStructure("sacrum", "bone", "bone", false));
    structures.push_back(tinyStructure("hip-bone", "bone", "bone", true));
    structures.push_back(tinyStructure("femur", "bone", "bone", true));
    structures.push_back(tinyStructure("tibia", "bone", "bone", true));
    structures.push_back(tinyStructure("sacroiliac", "joint", "bone", true));
    structures.push_back(tinyStructure("hip", "joint", "bone", true));
    structures.push_back(tinyStructure("knee", "joint", "bone", true));
    structures.push_back(tinyStructure("lumbosacral", "joint", "bone", false));
    structures.push_back(tinyStructure("symphysis", "joint", "bone", false));
    structures.push_back(tinyLandmark("crest", "hip-bone", true));
    structures.push_back(tinyLandmark("trochanter", "femur", true));
    structures.push_back(tinyLandmark("shin", "tibia", true));
    structures.push_back(tinyLandmark("process", "lumbar", false));
    structures.push_back(tinyStructure("tract", "fascia", "deep-fascia", true));
    structures.push_back(tinyStructure("nerve", "nerve", "deep-muscle", true));
    auto moverJson = tinyStructure("mover", "muscle", "superficial-muscle", true);
    moverJson["nerves"] = {"nerve"};
    moverJson["attachments"] = json::array({tinyHead("crest", "shin")});
    structures.push_back(moverJson);
    structures.push_back(tinyStructure("flank", "surface-region", "skin", true));
    return {{"format", "raphe-atlas"}, {"version", 1}, {"structures", structures},
        {"joints",
            json::array({{{"id", "sacroiliac"}, {"bones", {"sacrum", "hip-bone"}}, {"role", "tree"}, {"complex", "pelvis"}},
                {{"id", "hip"}, {"bones", {"hip-bone", "femur"}}, {"role", "tree"}, {"complex", "hip"}},
                {{"id", "knee"}, {"bones", {"femur", "tibia"}}, {"role", "tree"}, {"complex", "knee"}},
                {{"id", "lumbosacral"}, {"bones", {"lumbar", "sacrum"}}, {"role", "tree"}, {"complex", "lumbar-spine"}},
                {{"id", "symphysis"}, {"bones", {"hip-bone", "hip-bone"}}, {"role", "closing"}, {"complex", "pelvis"}}})},
        {"continuities",
            json::array({{{"from", "mover"}, {"to", "tract"}, {"changes_side", false}, {"evidence", "described"},
                {"force", "unknown"}, {"sources", {"book"}}}})},
        {"seats",
            json::array({{{"structure", "mover"}, {"how_often", "common"}, {"felt_at", {"flank"}}, {"evidence", "described"},
                {"sources", {"book"}}}})},
        {"sources",
            json::array(
                {{{"id", "book"}, {"citation", "A book"}, {"doi", nullptr}, {"supports", "described"}, {"read", "memory"}},
                    {{"id", "review"}, {"citation", "A review"}, {"doi", "10.1/x"}, {"supports", "verified"},
                        {"read", "abstract"}}})}};
}

inline Result<Atlas> readTiny(const nlohmann::json &json)
{
    return readAtlas({{"tiny.json", json.dump(2)}});
}

/// The atlas of a document that is meant to be correct.
inline Atlas tinyAtlas(const nlohmann::json &json = tinyJson())
{
    auto read = readTiny(json);
    if (!read)
        throw std::runtime_error("the tiny atlas is refused: " + read.error().place + ": " + read.error().detail);
    return std::move(read).value();
}

} // namespace raphe::test
