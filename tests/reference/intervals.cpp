// Writes shares and likelihood ratios with their intervals, of the published tables and of others, for scipy_check.py to judge.
#include "core/examination/Diagnostics.h"

#include <nlohmann/json.hpp>

#include <iostream>
#include <random>

int main()
{
    using namespace raphe;
    using nlohmann::json;

    std::vector<TwoByTwo> tables{{15, 1, 7, 25}, {10, 1, 7, 25}, {10, 1, 3, 20}, {23, 4, 7, 26}};
    std::mt19937 random(5);
    const auto any = [&] { return static_cast<int>(1 + random() % 60); };
    while (tables.size() < 200)
        tables.push_back({any(), any(), any(), any()});
    json out{{"shares", json::array()}, {"ratios", json::array()}};
    for (const TwoByTwo &t : tables) {
        for (const Share &share : {sensitivity(t), specificity(t), *positiveValue(t), Share{0, t.trueNegatives},
                 Share{t.truePositives, t.truePositives}})
            out["shares"].push_back({share.count, share.of, share.interval().low, share.interval().high});
        const auto put = [&](const std::optional<Ratio> &ratio, int a, int of, int b, int ofB) {
            out["ratios"].push_back({a, of, b, ofB, ratio->value, ratio->interval.low, ratio->interval.high});
        };
        const int with = t.truePositives + t.falseNegatives;
        const int without = t.falsePositives + t.trueNegatives;
        put(positiveRatio(t), t.truePositives, with, t.falsePositives, without);
        put(negativeRatio(t), t.falseNegatives, with, t.trueNegatives, without);
    }
    std::cout << out.dump() << '\n';
    return 0;
}
