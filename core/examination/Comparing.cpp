#include "core/examination/Comparing.h"

#include <algorithm>
#include <cmath>
#include <tuple>
#include <vector>

namespace raphe {

namespace {

bool isLike(const Norm &norm, const Measure &measure)
{
    return norm.mode == measure.mode && norm.device == measure.device;
}

NoNorm whyNone(const Movement &movement, const Measure &measure, const Reference &reference)
{
    if (!measure.value)
        return NoNorm::NotMeasured;
    if (movement.norms.empty())
        return NoNorm::NonePublished;
    if (!measure.mode)
        return NoNorm::ModeUnknown;
    if (!measure.device)
        return NoNorm::DeviceUnknown;
    const auto isThere = [&](auto fits) { return std::any_of(movement.norms.begin(), movement.norms.end(), fits); };
    if (!isThere([&](const Norm &n) { return isLike(n, measure); }))
        return NoNorm::NonePublished;
    if (!reference.age)
        return NoNorm::AgeUnknown;
    const bool onlyBySex =
        isThere([&](const Norm &n) { return isLike(n, measure) && n.from <= *reference.age && *reference.age <= n.to && n.sex; });
    return !reference.sex && onlyBySex ? NoNorm::SexUnknown : NoNorm::NonePublished;
}

} // namespace

NormComparison comparedWithNorm(const Movement &movement, const Measure &measure, const Reference &reference)
{
    std::vector<const Norm *> fitting;
    if (measure.value && reference.age)
        for (const Norm &norm : movement.norms)
            if (isLike(norm, measure) && norm.from <= *reference.age && *reference.age <= norm.to
                && (!norm.sex || norm.sex == reference.sex))
                fitting.push_back(&norm);
    if (fitting.empty())
        return {nullptr, whyNone(movement, measure, reference), 0, {}, nullptr};
    const auto order = [](const Norm *n) { return std::tuple(n->to - n->from, !n->sex, !n->sd); };
    std::stable_sort(fitting.begin(), fitting.end(), [&](const Norm *a, const Norm *b) { return order(a) < order(b); });
    const Norm &best = *fitting.front();
    const auto other =
        std::find_if(fitting.begin(), fitting.end(), [&](const Norm *norm) { return norm->source != best.source; });
    const double difference = *measure.value - best.mean;
    return {&best, {}, difference, best.sd ? std::optional(difference / *best.sd) : std::nullopt,
        other == fitting.end() ? nullptr : *other};
}

std::optional<Device> deviceFor(const Movement &movement, std::optional<Device> chosen)
{
    const bool isOfLength = chosen == Device::Tape || chosen == Device::Ruler;
    const bool fits = chosen == Device::Eye || (movement.unit == Unit::Millimetres) == isOfLength;
    return fits ? chosen : std::nullopt;
}

const ReadingError *errorOf(const Movement &movement, std::optional<MoveMode> mode, std::optional<Device> device)
{
    const ReadingError *greatest = nullptr;
    for (const ReadingError &error : movement.errors) {
        const bool fits = error.device == device && (!error.mode || error.mode == mode);
        if (fits && (!greatest || error.least() > greatest->least()))
            greatest = &error;
    }
    return greatest;
}

std::optional<SideComparison> comparedSides(
    const Movement &movement, const std::vector<Measure> &measures, std::optional<MoveMode> mode)
{
    if (!mode) // of two that nobody said how they were moved it is not known that they are alike
        return std::nullopt;
    const auto on = [&](Side side) {
        return std::find_if(measures.begin(), measures.end(),
            [&](const Measure &m) { return m.movement == movement.id && m.side == side && m.mode == mode && m.value; });
    };
    const auto right = on(Side::Right);
    const auto left = on(Side::Left);
    if (right == measures.end() || left == measures.end() || right->device != left->device)
        return std::nullopt;
    const double difference = *right->value - *left->value;
    const ReadingError *error = errorOf(movement, mode, right->device);
    const Beyond beyond = !error ? Beyond::Unknown : std::abs(difference) > error->least() ? Beyond::Beyond : Beyond::Within;
    return SideComparison{difference, beyond, error};
}

} // namespace raphe
