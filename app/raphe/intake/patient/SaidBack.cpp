#include "app/raphe/intake/patient/SaidBack.h"

#include "app/raphe/intake/PlaceWords.h"
#include "core/record/PaintedPlaces.h"

#include <algorithm>

namespace raphe {

namespace {

std::vector<PaintedPlace> placesIn(const Knowledge &knowledge, const PainPatch &patch)
{
    return paintedPlaces(patch, knowledge.body->of(patch.view), *knowledge.atlas);
}

const char *viewText(const PainPatch &patch)
{
    switch (patch.view) {
    case View::Front: return "side-front";
    case View::Back: return "side-back";
    case View::Side: return patch.facing == Side::Left ? "side-view-left" : "side-view-right";
    default: return nullptr; // an inset, which the patient is not offered
    }
}

} // namespace

QStringList saidBack(const PatientWords &words, const Knowledge &knowledge, const PainPatch &patch)
{
    const std::vector<PaintedPlace> places = placesIn(knowledge, patch);
    QStringList said;
    for (auto at = places.begin(); at != places.end(); ++at) {
        const auto isSame = [&](const PaintedPlace &other) { return other.place.structure == at->place.structure; };
        if (std::any_of(places.begin(), at, isSame))
            continue; // said with its other side
        const char *id = at->place.side == Side::Left ? "side-left"
            : at->place.side == Side::Right           ? "side-right"
                                                      : "side-middle";
        if (std::any_of(at + 1, places.end(), isSame))
            id = "side-both";
        said << words.say(id, {{"place", words.nameOf(*knowledge.atlas, at->place.structure)}});
    }
    if (const char *id = viewText(patch); id && !said.isEmpty())
        said << words.say(id);
    return said;
}

QString placesOf(const Knowledge &knowledge, const PainPatch &patch)
{
    return plainWords(*knowledge.atlas, placesIn(knowledge, patch));
}

} // namespace raphe
