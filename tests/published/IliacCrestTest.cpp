// Who attaches where along the iliac crest, from the front spine backwards (iliac-crest.json).
#include "core/anatomy/Edge.h"

#include "tests/support/Content.h"
#include "tests/support/Published.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace raphe::test {

namespace {

TEST(IliacCrest, MusclesTakeThePublishedParts)
{
    const auto json = publishedJson("iliac-crest.json");
    const double tolerance = json.at("tolerance");
    const auto edge = edgeOf(atlas(), {"iliac-crest"});
    ASSERT_TRUE(edge);
    for (const auto &value : json.at("values")) {
        const std::string muscle = value.at("structure");
        double from = 1;
        double to = 0;
        for (const raphe::Stretch &s : edge->stretches)
            if (s.structure.value == muscle) {
                from = std::min(from, s.along.from);
                to = std::max(to, s.along.to);
            }
        const std::string source = muscle + " takes the " + value.at("wording").get<std::string>()
            + "; source: iliac-crest.json, from " + json.at("read").get<std::string>();
        EXPECT_LT(from, to) << source;
        if (value.contains("ends_at")) {
            EXPECT_NEAR(from, 0, tolerance) << source;
            EXPECT_NEAR(to, value["ends_at"].get<double>(), tolerance) << source;
        }
        if (value.contains("ends_before")) {
            EXPECT_LE(to, value["ends_before"].get<double>()) << source;
        }
        if (value.contains("starts_after")) {
            EXPECT_GE(from, value["starts_after"].get<double>()) << source;
        }
    }
}

} // namespace

} // namespace raphe::test
