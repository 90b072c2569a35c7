// Where trouble of a tissue is felt, against studies that provoked or blocked it.
#include "tests/support/Content.h"
#include "tests/support/Published.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace raphe::test {

namespace {

TEST(FeltAt, IsWhereTheStudiesFoundIt)
{
    const auto published = publishedJson("felt-at.json");
    for (const auto &study : published.at("studies")) {
        const StructureId id{study.at("structure").get<std::string>()};
        const std::string source = "source: " + study.at("citation").get<std::string>()
            + " (read: " + study.at("read").get<std::string>() + "): " + study.at("says").get<std::string>();
        const auto &seat = atlas().at(id).seat;
        ASSERT_TRUE(seat) << id << "; " << source;
        const auto isFeltAt = [&](const std::string &region) {
            EXPECT_TRUE(atlas().find({region})) << region;
            return std::find(seat->feltAt.begin(), seat->feltAt.end(), StructureId{region}) != seat->feltAt.end();
        };
        for (const std::string region : study.at("felt_at")) {
            EXPECT_TRUE(isFeltAt(region)) << id << " is felt at " << region << ", but not in our atlas; " << source;
        }
        for (const std::string region : study.at("never")) {
            EXPECT_FALSE(isFeltAt(region)) << id << " is not felt at " << region << ", but it is in our atlas; " << source;
        }
    }
}

} // namespace

} // namespace raphe::test
