// Visit files: any bytes give a visit or an error with a place. A visit that reads must write and read back equal, and so
// must its mirror image; mirroring twice gives it back.
#include "tests/core/anatomy/TinyAtlas.h"
#include "tests/fuzz/Expect.h"

#include "core/record/VisitJson.h"

#include <cstddef>
#include <cstdint>

namespace {

using namespace raphe;
using fuzz::expect;

void expectRoundTrip(const Visit &visit, const Atlas &atlas)
{
    const std::string text = writeVisit(visit);
    const auto again = readVisit(text, "written.json", atlas);
    expect(again.ok(), "what was written can be read",
        again ? std::string() : again.error().place + ": " + again.error().detail + "\n" + text);
    expect(again.value() == visit, "what was written reads back equal", text);
    expect(writeVisit(again.value()) == text, "the same visit gives the same text", text);
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size);
int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size)
{
    static const Atlas atlas = raphe::test::tinyAtlas();
    const std::string text(data, data + size);
    const auto visit = readVisit(text, "input.json", atlas);
    if (!visit) {
        expect(!visit.error().place.empty(), "an error has a place", visit.error().detail);
        return 0;
    }
    expectRoundTrip(visit.value(), atlas);
    const Visit mirror = mirrored(visit.value());
    expectRoundTrip(mirror, atlas);
    expect(mirrored(mirror) == visit.value(), "mirroring twice gives the visit back");
    for (const Finding &f : visit.value().findings) {
        expect(atlas.find(f.place.structure) != nullptr, "a finding is about something known", f.place.structure.value);
        expect(int{f.isFound()} + int{f.isUnable()} <= 1, "found and unable exclude each other", f.place.structure.value);
    }
    return 0;
}
