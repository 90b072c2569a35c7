#include "core/examination/Diagnostics.h"

#include <cmath>

namespace raphe {

namespace {

constexpr double z95 = 1.959963984540054; // quantile of the normal distribution for 95 %

std::optional<Ratio> ratioOf(const Share &above, const Share &below)
{
    if (above.count == 0 || below.count == 0)
        return std::nullopt;
    const double value = above.value() / below.value();
    const double spread = z95 * std::sqrt(1.0 / above.count - 1.0 / above.of + 1.0 / below.count - 1.0 / below.of);
    return Ratio{value, {value * std::exp(-spread), value * std::exp(spread)}};
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
