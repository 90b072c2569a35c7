// Shapes named by fresh eyes (first-draw.json, second-draw.json): raw answers, and which are right. Here: nothing is missing,
// what was shown is drawn in that view, and at least forty of fifty are right. The tally is printed.
#include "tests/support/Content.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <fstream>
#include <iostream>
#include <set>

namespace raphe::test {

namespace {

class Naming : public testing::TestWithParam<std::string> { };

TEST_P(Naming, AtLeastFortyOfFiftyAreRight)
{
    std::ifstream in(std::string(RAPHE_SOURCE_DIR) + "/tests/naming/" + GetParam() + "-draw.json");
    const auto answers = nlohmann::json::parse(in).at("answers");
    ASSERT_EQ(answers.size(), 50U);
    std::set<std::string> shown;
    int right = 0;
    for (const auto &answer : answers) {
        const StructureId id{answer.at("shown").get<std::string>()};
        const auto view = fromWord(viewWords, answer.at("view").get<std::string>());
        ASSERT_TRUE(view) << id;
        EXPECT_TRUE(body().of(*view).shows(id)) << id;
        EXPECT_FALSE(answer.at("answer").get<std::string>().empty()) << id;
        shown.insert(id.value);
        right += answer.at("right").get<bool>();
    }
    EXPECT_EQ(shown.size(), 50U);
    EXPECT_GE(right, 40);
    std::cout << "shapes named by fresh eyes, " << GetParam() << " draw: " << right << " of 50 right\n";
}

INSTANTIATE_TEST_SUITE_P(Draws, Naming, testing::Values("first", "second"), [](const auto &each) { return each.param; });

} // namespace

} // namespace raphe::test
