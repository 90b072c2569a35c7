#include "core/examination/Diagnostics.h"

#include <cmath>

namespace raphe {

namespace {

constexpr double z95 = 1.959963984540054; // quantile of the normal distribution for 95 %

// How far the two shares are from having this ratio: the score statistic, with the shares that are likeliest if they had it.
double scoreOf(const Share &above, const Share &below, double ratio)
{
    const double a = ratio * (above.of + below.of);
    const double b = ratio * (above.of + below.count) + above.count + below.of;
    const double c = above.count + below.count;
    const double likeliestBelow = 2 * c / (b + std::sqrt(b * b - 4 * a * c));
    const double likeliestAbove = ratio * likeliestBelow;
    const double variance =
        likeliestAbove * (1 - likeliestAbove) / above.of + ratio * ratio * likeliestBelow * (1 - likeliestBelow) / below.of;
    const double difference = above.value() - ratio * below.value();
    return difference * difference / variance;
}

// The ratio beyond `value`, downwards or upwards by `factor`, where the score reaches that of 95 %.
double boundOf(const Share &above, const Share &below, double value, double factor)
{
    double within = value;
    double beyond = value * factor;
    while (scoreOf(above, below, beyond) < z95 * z95) {
        within = beyond;
        beyond *= factor;
    }
    for (int halving = 0; halving < 60; ++halving) {
        const double middle = std::sqrt(within * beyond);
        (scoreOf(above, below, middle) < z95 * z95 ? within : beyond) = middle;
    }
    return within;
}

std::optional<Ratio> ratioOf(const Share &above, const Share &below)
{
    if (above.count == 0 || below.count == 0)
        return std::nullopt;
    const double value = above.value() / below.value();
    return Ratio{value, {boundOf(above, below, value, 0.5), boundOf(above, below, value, 2)}};
}

std::optional<Share> shareOf(int count, int other)
{
    return count + other > 0 ? std::optional(Share{count, count + other}) : std::nullopt;
}

} // namespace

ConfidenceInterval Share::interval() const
{
    const double n = of;
    const double p = value();
    const double centre = p + z95 * z95 / (2 * n);
    const double spread = z95 * std::sqrt(p * (1 - p) / n + z95 * z95 / (4 * n * n));
    const double scale = 1 + z95 * z95 / n;
    return {(centre - spread) / scale, (centre + spread) / scale};
}

Share sensitivity(const TwoByTwo &table)
{
    return {table.truePositives, table.truePositives + table.falseNegatives};
}

Share specificity(const TwoByTwo &table)
{
    return {table.trueNegatives, table.trueNegatives + table.falsePositives};
}

std::optional<Share> positiveValue(const TwoByTwo &table)
{
    return shareOf(table.truePositives, table.falsePositives);
}

std::optional<Share> negativeValue(const TwoByTwo &table)
{
    return shareOf(table.trueNegatives, table.falseNegatives);
}

std::optional<Ratio> positiveRatio(const TwoByTwo &table)
{
    return ratioOf(sensitivity(table), {table.falsePositives, table.falsePositives + table.trueNegatives});
}

std::optional<Ratio> negativeRatio(const TwoByTwo &table)
{
    return ratioOf({table.falseNegatives, table.truePositives + table.falseNegatives}, specificity(table));
}

} // namespace raphe
