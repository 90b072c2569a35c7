// Atlas files: any bytes give an atlas or an error with a place; an atlas that was accepted answers every question about
// itself. The bytes are read twice: as the whole atlas, and as one more file beside a small correct one.
#include "tests/core/anatomy/TinyAtlas.h"
#include "tests/fuzz/Expect.h"

#include <cstddef>
#include <cstdint>
#include <set>

namespace {

using namespace raphe;
using fuzz::expect;

void askEverything(const Atlas &atlas)
{
    std::set<std::string> ids;
    for (const Structure &s : atlas.structures()) {
        expect(ids.insert(s.id.value).second, "an id stands for one structure", s.id.value);
        expect(atlas.find(s.id) == &s, "a structure is found by its id", s.id.value);
        std::size_t steps = 0;
        for (auto whole = s.partOf; whole; whole = atlas.at(*whole).partOf)
            expect(++steps <= atlas.structures().size(), "nothing is part of itself", s.id.value);
        for (const Side side : atlas.sides(s))
            for (const char *language : {"en", "de", "es"})
                expect(
                    !(atlas.spoken({s.id, side}) + atlas.plain({s.id, side}, language)).empty(), "a place has words", s.id.value);
        expect(s.kind != Kind::Landmark || atlas.bonesOf(s.id).size() == 1, "a landmark is on one bone", s.id.value);
        for (const Attachment &head : s.attachments) {
            expect(!head.origins.empty() && !head.insertions.empty() && !head.sources.empty(),
                "a head has both ends and a source", s.id.value);
            for (const auto *ends : {&head.origins, &head.insertions})
                for (const StructureId &end : *ends)
                    expect(atlas.find(end) != nullptr, "an end is known", end.value);
        }
    }
    for (const Joint &j : atlas.joints()) {
        expect(atlas.findJoint(j.id) == &j, "a joint is found by its id", j.id.value);
        expect(atlas.at(j.id).kind == Kind::Joint, "a joint is a joint", j.id.value);
        for (const StructureId &bone : j.bones)
            expect(atlas.at(bone).kind == Kind::Bone, "a joint is between bones", bone.value);
    }
    for (const Crossing &c : atlas.crossings()) {
        expect(atlas.at(c.muscle).kind == Kind::Muscle, "a muscle crosses", c.muscle.value);
        expect(atlas.findJoint(c.joint) != nullptr, "a joint is crossed", c.joint.value);
    }
    for (const Continuity &c : atlas.continuities()) {
        expect(atlas.find(c.from) && atlas.find(c.to), "both ends of a continuity are known", c.from.value);
        for (const std::string &source : c.sources)
            expect(atlas.findSource(source) != nullptr, "a source is known", source);
    }
}

void read(const std::vector<NamedText> &files)
{
    const auto atlas = readAtlas(files);
    if (atlas)
        askEverything(atlas.value());
    else
        expect(!atlas.error().place.empty(), "an error has a place", atlas.error().detail);
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size);
int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size)
{
    const NamedText input{"input.json", std::string(data, data + size)};
    static const NamedText tiny{"tiny.json", raphe::test::tinyJson().dump()};
    read({input});
    read({input, tiny}); // in this order, so that what is no JSON at all costs nothing
    return 0;
}
