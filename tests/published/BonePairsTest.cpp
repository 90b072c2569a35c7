// Our attachments and crossed joints against the muscle tables of three published models (bone-pairs.csv, mapped to our
// ids by bone-pairs-mapping.json). A row agrees when one head of ours joins its two bodies and, where the row names joints,
// the joints between those ends are the row's, and the joints that the whole muscle crosses are those of all rows of that
// muscle (the models split a muscle by fingers and fascicles); each restricted to the joints of the model. A joint between
// two bones that the model lumps into one body is no joint of the model. Rows that cannot agree stand under "exceptions".
#include "core/anatomy/Skeleton.h"

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
            for (const auto &joint : splitList(row.at("joints_crossed"))) {
                m_jointsOfModel[row.at("model")].insert(joint);
                m_jointsOfMuscle[muscleOf(row)].insert(joint);
            }
        for (const auto &row : m_table.rows)
            for (const char *end : {"bone_a", "bone_b"})
                m_bodiesOfModel[row.at("model")].insert(row.at(end));
    }

    using Row = std::map<std::string, std::string>;

    const Table &table() const { return m_table; }
    const nlohmann::json &mapping() const { return m_mapping; }

    static std::string muscleOf(const Row &row) { return row.at("model") + "/" + row.at("muscle"); }
    static std::string nameOf(const Row &row) { return muscleOf(row) + ": " + row.at("bone_a") + " to " + row.at("bone_b"); }

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
            for (const std::string &difference :
                {differentEnds(row, muscle), differentPath(row, muscle), differentWhole(row, muscle)})
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

    // Joints between the row's two bodies, by the heads that join them, and those stated.
    std::string differentPath(const Row &row, const Structure &muscle) const
    {
        const auto named = splitList(row.at("joints_crossed"));
        if (named.empty())
            return {};
        const Names a = ourBones(row.at("model"), row.at("bone_a"));
        const Names b = ourBones(row.at("model"), row.at("bone_b"));
        Names ours;
        const auto addPaths = [&](const std::vector<StructureId> &from, const Names &fromBody, const std::vector<StructureId> &to,
                                  const Names &toBody) {
            for (const StructureId &one : from)
                for (const StructureId &other : to)
                    for (const StructureId &x : atlas().bonesOf(one))
                        for (const StructureId &y : atlas().bonesOf(other))
                            if (fromBody.contains(x.value) && toBody.contains(y.value))
                                for (const StructureId &joint : m_skeleton.path(x, y))
                                    ours.insert(joint.value);
        };
        for (const Attachment &head : muscle.attachments) {
            addPaths(head.origins, a, head.insertions, b);
            addPaths(head.origins, b, head.insertions, a);
        }
        for (const Span &span : muscle.spans)
            ours.insert(span.joint.value);
        const std::string difference = compare(row.at("model"), ours, Names(named.begin(), named.end()));
        return difference.empty() ? "" : "between these bodies " + difference;
    }

    // Joints of the whole muscle, against all rows of that muscle.
    std::string differentWhole(const Row &row, const Structure &muscle) const
    {
        const auto theirs = m_jointsOfMuscle.find(muscleOf(row));
        if (theirs == m_jointsOfMuscle.end())
            return {};
        return compare(row.at("model"), jointsCrossedBy(atlas(), muscle.id.value), theirs->second);
    }

    std::string compare(const std::string &model, const Names &ours, const Names &theirs) const
    {
        std::string difference;
        for (const std::string &joint : m_jointsOfModel.at(model)) {
            const auto mapped = m_mapping["joints"].at(joint).get<Names>();
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
    std::map<std::string, Names> m_jointsOfMuscle; // of all its rows
    std::map<std::string, Names> m_bodiesOfModel;
    Skeleton m_skeleton{atlas().joints()};
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

TEST(BonePairs, EveryMuscleOfTheModelsIsMapped)
{
    EXPECT_EQ(models().table().rows.size(), 118U) << "source:" << models().table().source;
    for (const auto &row : models().table().rows) {
        EXPECT_TRUE(models().mapping()["muscles"].contains(Models::muscleOf(row)))
            << Models::nameOf(row) << "; source:" << models().table().source;
        for (const char *end : {"bone_a", "bone_b"}) {
            const Names body = models().ourBones(row.at("model"), row.at(end));
            EXPECT_FALSE(body.empty()) << row.at(end);
            for (const std::string &id : body) {
                EXPECT_TRUE(atlas().find({id})) << row.at(end) << " stands for " << id;
            }
        }
    }
    for (const auto &[muscle, ours] : models().mapping()["muscles"].items())
        for (const auto &id : ours) {
            EXPECT_TRUE(atlas().find({id.get<std::string>()})) << muscle << " stands for " << id;
        }
    for (const auto &[joint, ours] : models().mapping()["joints"].items()) {
        EXPECT_FALSE(ours.empty()) << joint;
    }
}

TEST(BonePairs, EveryRowAgreesOrIsANamedException)
{
    const auto excepted = exceptions();
    std::size_t agreeing = 0;
    std::size_t different = 0;
    std::map<std::string, std::pair<int, int>> tally; // model -> agreeing, excepted
    for (const auto &row : models().table().rows) {
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
    EXPECT_LE(different * 100, 12 * (agreeing + different)) << "no more than 12 % exceptions";
}

TEST(BonePairs, EveryExceptionNamesARowAndAReason)
{
    Names rows;
    for (const auto &row : models().table().rows)
        rows.insert(Models::nameOf(row));
    for (const auto &[name, reason] : exceptions()) {
        EXPECT_TRUE(rows.contains(name)) << name << " is no row of bone-pairs.csv";
        EXPECT_GT(reason.size(), 20U) << name;
    }
}

} // namespace

} // namespace raphe::test
