// Our attachments and crossed joints against the muscle tables of three published models (bone-pairs.csv, mapped to our
// ids by bone-pairs-mapping.json). A row agrees when each of its bodies holds one of our attachments and, where the row
// names joints, our crossed joints restricted to those of the model are the row's. A joint between two bones that the
// model lumps into one body is no joint of the model. Rows that cannot agree stand under "exceptions" with the reason.
#include "tests/published/Crossed.h"
#include "tests/support/Content.h"
#include "tests/support/Published.h"

#include <gtest/gtest.h>

#include <iostream>
#include <map>
#include <set>

namespace raphe::test {

namespace {

using Names = std::set<std::string>;

struct Verdict {
    bool agrees = true;
    std::string difference;
};

class Models {
public:
    Models() : m_table(publishedTable("bone-pairs.csv")), m_mapping(publishedJson("bone-pairs-mapping.json"))
    {
        for (const auto &row : m_table.rows)
            for (const auto &joint : splitList(row.at("joints_crossed")))
                m_jointsOfModel[row.at("model")].insert(joint);
        for (const auto &row : m_table.rows)
            for (const char *end : {"bone_a", "bone_b"})
                m_bodiesOfModel[row.at("model")].insert(row.at(end));
    }

    using Row = std::map<std::string, std::string>;

    const Table &table() const { return m_table; }
    const nlohmann::json &mapping() const { return m_mapping; }

    static std::string muscleOf(const Row &row) { return row.at("model") + "/" + row.at("muscle"); }
    static std::string nameOf(const Row &row) { return muscleOf(row) + ": " + row.at("bone_a") + " to " + row.at("bone_b"); }

    bool isOutsideRegion(const Row &row) const
    {
        const auto &outside = m_mapping["outside_region"];
        return std::find(outside.begin(), outside.end(), muscleOf(row)) != outside.end();
    }

    Names ourBones(const std::string &model, const std::string &body) const
    {
        const auto &bodies = m_mapping["bodies"];
        const std::string own = model + "/" + body;
        return bodies.contains(own) ? bodies[own].get<Names>() : bodies.at(body).get<Names>();
    }

    /// Whether every structure of ours that stands for the row's muscle agrees with the row.
    Verdict judge(const Row &row) const
    {
        Verdict verdict;
        for (const auto &id : m_mapping["muscles"].at(muscleOf(row))) {
            const Structure &muscle = atlas().at({id.get<std::string>()});
            for (const std::string &difference : {differentEnds(row, muscle), differentJoints(row, muscle)})
                if (!difference.empty()) {
                    verdict.agrees = false;
                    verdict.difference += (verdict.difference.empty() ? "" : "; ") + muscle.id.value + " " + difference;
                }
        }
        return verdict;
    }

private:
    static bool holds(const Names &body, const std::vector<StructureId> &ends)
    {
        for (const StructureId &end : ends) {
            if (body.contains(end.value))
                return true;
            for (const StructureId &bone : atlas().bonesOf(end))
                if (body.contains(bone.value))
                    return true;
        }
        return false;
    }

    // Stricter than 'each body holds an attachment': one head must join the two bodies.
    std::string differentEnds(const Row &row, const Structure &muscle) const
    {
        const Names a = ourBones(row.at("model"), row.at("bone_a"));
        const Names b = ourBones(row.at("model"), row.at("bone_b"));
        bool onA = false;
        bool onB = false;
        for (const Attachment &head : muscle.attachments) {
            const bool originA = holds(a, head.origins);
            const bool originB = holds(b, head.origins);
            const bool insertionA = holds(a, head.insertions);
            const bool insertionB = holds(b, head.insertions);
            if ((originA && insertionB) || (originB && insertionA))
                return {};
            onA = onA || originA || insertionA;
            onB = onB || originB || insertionB;
        }
        if (onA && onB)
            return "is attached to both, but by different heads";
        return "has no attachment on the " + row.at(onA ? "bone_b" : "bone_a")
            + (onA || onB ? "" : " and none on the " + row.at("bone_b"));
    }

    bool isWithinOneBody(const std::string &model, const std::string &jointId) const
    {
        const Joint *joint = atlas().findJoint({jointId});
        if (!joint)
            throw std::runtime_error("bone-pairs-mapping.json names the joint " + jointId + ", which the atlas does not have");
        for (const std::string &body : m_bodiesOfModel.at(model)) {
            const Names bones = ourBones(model, body);
            if (bones.contains(joint->bones[0].value) && bones.contains(joint->bones[1].value))
                return true;
        }
        return false;
    }

    std::string differentJoints(const Row &row, const Structure &muscle) const
    {
        const auto named = splitList(row.at("joints_crossed"));
        if (named.empty())
            return {};
        const std::string &model = row.at("model");
        const Names theirs(named.begin(), named.end());
        const Names ours = jointsCrossedBy(atlas(), muscle.id.value);
        std::string difference;
        for (const std::string &joint : m_jointsOfModel.at(model)) {
            const auto mapped = m_mapping["joints"].at(joint).get<Names>();
            if (mapped.empty())
                continue; // outside of our region
            const bool crossed = std::any_of(mapped.begin(), mapped.end(),
                [&](const std::string &id) { return !isWithinOneBody(model, id) && ours.contains(id); });
            if (crossed != theirs.contains(joint))
                difference +=
                    std::string(difference.empty() ? "" : ", ") + (crossed ? "crosses the " : "does not cross the ") + joint;
        }
        return difference;
    }

    Table m_table;
    nlohmann::json m_mapping;
    std::map<std::string, Names> m_jointsOfModel;
    std::map<std::string, Names> m_bodiesOfModel;
};

const Models &models()
{
    static const Models read;
    return read;
}

// Exception rows by name, with the reason.
std::map<std::string, std::string> exceptions()
{
    std::map<std::string, std::string> out;
    for (const auto &exception : models().mapping()["exceptions"])
        for (const auto &row : exception.at("rows"))
            out.emplace(row.get<std::string>(), exception.at("reason").get<std::string>());
    return out;
}

TEST(BonePairs, EveryMuscleOfTheModelsIsMappedOrOutsideOurRegion)
{
    for (const auto &row : models().table().rows) {
        const bool mapped = models().mapping()["muscles"].contains(Models::muscleOf(row));
        EXPECT_NE(mapped, models().isOutsideRegion(row)) << Models::nameOf(row) << "; source:" << models().table().source;
    }
    for (const auto &[muscle, ours] : models().mapping()["muscles"].items())
        for (const auto &id : ours) {
            EXPECT_TRUE(atlas().find({id.get<std::string>()})) << muscle << " stands for " << id;
        }
}

TEST(BonePairs, EveryRowOfOurRegionAgreesOrIsANamedException)
{
    const auto excepted = exceptions();
    std::size_t agreeing = 0;
    std::size_t different = 0;
    std::map<std::string, std::pair<int, int>> tally; // model -> agreeing, excepted
    for (const auto &row : models().table().rows) {
        if (models().isOutsideRegion(row))
            continue;
        const Verdict verdict = models().judge(row);
        const bool isException = excepted.contains(Models::nameOf(row));
        ++(verdict.agrees ? agreeing : different);
        ++(verdict.agrees ? tally[row.at("model")].first : tally[row.at("model")].second);
        EXPECT_TRUE(verdict.agrees || isException) << Models::nameOf(row) << " (" << row.at("joints_crossed")
                                                   << "): " << verdict.difference << "\nsource:" << models().table().source;
        EXPECT_FALSE(verdict.agrees && isException) << Models::nameOf(row) << " is excepted (" << excepted.at(Models::nameOf(row))
                                                    << ") but agrees; take it off the list";
    }
    std::cout << "bone pairs: " << agreeing << " rows agree, " << different << " are excepted\n";
    for (const auto &[model, counts] : tally)
        std::cout << "  " << model << ": " << counts.first << " agree, " << counts.second << " excepted\n";
    EXPECT_GT(agreeing, different) << "most rows should agree";
}

TEST(BonePairs, EveryExceptionNamesARowOfOurRegionAndAReason)
{
    Names rows;
    for (const auto &row : models().table().rows)
        if (!models().isOutsideRegion(row))
            rows.insert(Models::nameOf(row));
    for (const auto &[name, reason] : exceptions()) {
        EXPECT_TRUE(rows.contains(name)) << name << " is no row of our region in bone-pairs.csv";
        EXPECT_GT(reason.size(), 20U) << name;
    }
}

} // namespace

} // namespace raphe::test
