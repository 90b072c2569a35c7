#include "tests/support/Content.h"

#include "core/anatomy/AtlasReader.h"

#include <fstream>
#include <stdexcept>

namespace raphe {

std::ostream &operator<<(std::ostream &out, const StructureId &id)
{
    return out << id.value;
}

std::ostream &operator<<(std::ostream &out, const Place &place)
{
    return out << wordOf(sideWords, place.side) << ' ' << place.structure;
}

std::ostream &operator<<(std::ostream &out, ErrorCode code)
{
    return out << "error code " << static_cast<int>(code);
}

} // namespace raphe

namespace raphe::test {

namespace {

template <class T> T valueOrThrow(Result<T> result, const std::string &what)
{
    if (!result)
        throw std::runtime_error(what + ": " + inWords(result.error()));
    return std::move(result).value();
}

} // namespace

std::string inWords(const Error &error)
{
    return "code " + std::to_string(static_cast<int>(error.code)) + " at " + error.place + ": " + error.detail;
}

nlohmann::json shipped(const std::string &file)
{
    std::ifstream in(RAPHE_SOURCE_DIR "/resources/" + file, std::ios::binary);
    return nlohmann::json::parse(in);
}

const Atlas &atlas()
{
    static const Atlas read = valueOrThrow(readEmbeddedAtlas(), "the built-in atlas");
    return read;
}

const Body &body()
{
    static const Body read = valueOrThrow(readEmbeddedBody(atlas()), "the built-in drawings");
    return read;
}

const Constants &constants()
{
    static const Constants read = valueOrThrow(readEmbeddedConstants(), "the built-in constants of the reasoning");
    return read;
}

const Linkage &linkage()
{
    static const Linkage built(atlas(), body(), constants());
    return built;
}

const Reasoner &reasoner()
{
    return adviser().reasoner();
}

const SafetyRules &safetyRules()
{
    static const SafetyRules read = valueOrThrow(readEmbeddedSafetyRules(atlas()), "the built-in caution rules");
    return read;
}

const Regions &regions()
{
    static const Regions read = valueOrThrow(readEmbeddedRegions(atlas(), body()), "the built-in body shares");
    return read;
}

const Adviser &adviser()
{
    static const Adviser made(std::make_unique<const Reasoner>(linkage(), regions(), constants()),
        std::make_unique<const SafetyRules>(safetyRules()), regions());
    return made;
}

} // namespace raphe::test
