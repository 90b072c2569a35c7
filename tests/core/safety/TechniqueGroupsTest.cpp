// The groups of techniques: each technique in exactly one, and mistakes named by their place.
#include "core/safety/TechniqueGroups.h"

#include "core/reasoning/Knowledge.h"
#include "tests/support/Content.h"

#include <gtest/gtest.h>

#include <set>

namespace raphe::test {

namespace {

std::string scope(const std::string &groups)
{
    return R"({"format":"raphe-scope","version":1,"read":"x","groups":)" + groups + "}";
}

} // namespace

TEST(TechniqueGroups, OnlyThoseOfTheScopeAreAllowed)
{
    const std::vector<TechniqueGroup> groups{{"a", "a", {"gliding", "stretching"}}, {"b", "b", {"thrust"}}};
    EXPECT_EQ(techniquesWithin(groups, {}), std::nullopt) << "not restricted";
    EXPECT_EQ(techniquesWithin(groups, {"a"}), (std::set<std::string>{"gliding", "stretching"}));
    EXPECT_EQ(techniquesWithin(groups, {"b", "of-a-later-program"}), std::set<std::string>{"thrust"});
    EXPECT_EQ(techniquesWithin(groups, {"of-a-later-program"}), std::set<std::string>{}) << "nothing, not everything";
}

TEST(TechniqueGroups, HoldEachTechniqueOnce)
{
    const auto &rules = adviser().rules();
    const auto groups = readEmbeddedTechniqueGroups(rules);
    ASSERT_TRUE(groups.ok()) << inWords(groups.error());
    std::multiset<std::string> held;
    for (const TechniqueGroup &group : groups.value())
        held.insert(group.techniques.begin(), group.techniques.end());
    std::multiset<std::string> all;
    for (const HandsAction &action : rules.actions())
        if (action.kind == ActionKind::Technique)
            all.insert(action.id);
    EXPECT_EQ(held, all);
    EXPECT_GE(all.size(), 12U);
}

TEST(TechniqueGroups, MistakesAreNamed)
{
    const auto &rules = adviser().rules();
    const auto expect = [&](const std::string &groups, ErrorCode code, const std::string &place) {
        const auto read = readTechniqueGroups(scope(groups), rules);
        ASSERT_FALSE(read.ok()) << groups;
        EXPECT_EQ(read.error().code, code) << inWords(read.error());
        EXPECT_EQ(read.error().place, place) << inWords(read.error());
    };
    expect(
        R"([{"id":"a","name":"a","techniques":["juggling"]}])", ErrorCode::UnknownId, "safety/scope.json#/groups/0/techniques/0");
    expect(R"([{"id":"a","name":"a","techniques":["slump"]}])", ErrorCode::UnknownId, "safety/scope.json#/groups/0/techniques/0");
    expect(R"([{"id":"a","name":"a","techniques":["thrust"]},{"id":"b","name":"b","techniques":["thrust"]}])",
        ErrorCode::Duplicate, "safety/scope.json#/groups/1/techniques/0");
    expect(R"([{"id":"a","name":"a","techniques":["thrust"]},{"id":"a","name":"b","techniques":["gliding"]}])",
        ErrorCode::Duplicate, "safety/scope.json#/groups/1/id");
    expect(R"([{"id":"a","name":"a","techniques":["thrust"]}])", ErrorCode::MissingField, "safety/scope.json#/groups");
    expect(R"([{"id":"a","name":"a","techniques":["thrust"],"colour":"red"}])", ErrorCode::UnknownField,
        "safety/scope.json#/groups/0");
}

} // namespace raphe::test
