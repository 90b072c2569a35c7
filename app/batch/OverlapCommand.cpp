// raphe-batch overlap: how far the pain drawings of two visits cover each other (resources/schema/overlap.schema.json).
#include "app/batch/Commands.h"

#include "app/batch/Output.h"
#include "app/batch/VisitFile.h"
#include "core/anatomy/StrokeRaster.h"
#include "core/outcome/DrawingOverlap.h"
#include "core/record/PainMask.h"

#include <iostream>

namespace raphe::batch {

namespace {

Json orNull(const std::optional<double> &number)
{
    return number ? Json(*number) : Json(nullptr);
}

} // namespace

Result<Done> printOverlap(const std::string &visitFile, const std::string &beforeFile)
{
    const auto read = readKnownVisit(visitFile);
    if (!read)
        return read.error();
    const auto &[knowledge, visit] = read.value();
    const auto before = readVisitFile(beforeFile, *knowledge.atlas);
    if (!before)
        return before.error();
    const SurfaceMask silhouette = silhouetteMask(*knowledge.body);
    const DrawingOverlap overlap = overlapOf(painMask(visit.pain, silhouette), painMask(before.value().pain, silhouette));
    const auto verdict = overlap.verdict();
    const Json out{
        {"jaccard", {{"front", orNull(overlap.front)}, {"back", orNull(overlap.back)}, {"both", orNull(overlap.both)}}},
        {"threshold", RedrawingError::leastJaccard},
        {"verdict", verdict ? Json(wordOf(overlapVerdictWords, *verdict)) : Json(nullptr)}, {"words", inWords(overlap)}};
    std::cout << out.dump(1) << '\n';
    return Done{};
}

} // namespace raphe::batch
