// Drawn muscles against the path ends of two published models (attachment-points.csv, |lateral|): in a view that shows the muscle
// each end lies inside its shape or within 30 units of it, and the shape does not reach more than 40 units past the outermost
// ends. Muscles that cannot agree stand in drawn-attachments-exceptions.json with the reason.
#include "tests/support/Content.h"
#include "tests/support/Published.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <iostream>
#include <limits>
#include <map>
#include <set>

namespace raphe::test {

namespace {

constexpr double nearEnough = 30; // units: 0.03 of stature
constexpr double pastEnds = 40; // units: 0.04 of stature

struct ModelMuscle {
    std::string name;
    std::set<std::string> ids; // ours
    std::vector<Point> ends; // of all its path elements, in both models
};

std::vector<ModelMuscle> modelMuscles()
{
    auto mapping = publishedJson("bone-pairs-mapping.json").at("muscles");
    mapping["gait2392/iliacus"] = {"iliacus"}; // not in that table
    const auto drawnWith = publishedJson("drawn-attachments-exceptions.json").at("drawn_with");
    std::map<std::string, ModelMuscle> muscles;
    for (const auto &row : publishedTable("attachment-points.csv").rows) {
        ModelMuscle &muscle = muscles[row.at("muscle")];
        muscle.name = row.at("muscle");
        muscle.ids.merge(mapping.at(row.at("model") + "/" + muscle.name).get<std::set<std::string>>());
        muscle.ends.push_back(
            {1000 * std::abs(std::stod(row.at("lateral_over_stature"))), 1000 * (1 - std::stod(row.at("height_over_stature")))});
    }
    std::vector<ModelMuscle> out;
    for (auto &[name, muscle] : muscles) {
        // With the tendons that it ends on, and the sheets that are its aponeurosis: a path runs to the bone.
        std::set<std::string> tendons;
        for (const std::string &id : muscle.ids)
            for (const Attachment &head : atlas().at({id}).attachments)
                for (const StructureId &end : head.insertions)
                    if (atlas().at(end).kind == Kind::Tendon)
                        tendons.insert(end.value);
        muscle.ids.merge(tendons);
        if (drawnWith.contains(name))
            muscle.ids.merge(drawnWith.at(name).get<std::set<std::string>>());
        out.push_back(std::move(muscle));
    }
    return out;
}

/// What is wrong with the muscle in this view; empty when nothing is; nothing when the view does not show all of it.
std::optional<std::string> complaint(const ModelMuscle &muscle, View view)
{
    std::vector<Polygon> shape;
    for (const std::string &id : muscle.ids)
        for (const std::size_t index : body().of(view).shapesOf({id})) {
            const auto &polygons = body().of(view).shapes()[index].polygons;
            shape.insert(shape.end(), polygons.begin(), polygons.end());
        }
    if (shape.empty())
        return std::nullopt;
    std::string wrong;
    double left = std::numeric_limits<double>::infinity();
    double right = -left;
    double top = left;
    double bottom = -left;
    double farthest = 0;
    for (const Point &end : muscle.ends) {
        farthest = std::max(farthest, contains(shape, end) ? 0 : distanceToEdge(shape, end));
        left = std::min(left, end.x);
        right = std::max(right, end.x);
        top = std::min(top, end.y);
        bottom = std::max(bottom, end.y);
    }
    if (farthest > nearEnough)
        wrong += "an end lies " + std::to_string(std::lround(farthest)) + " units off; ";
    const Box box = boundsOf(shape);
    const double past = std::max({left - box.left, box.right - right, top - box.top, box.bottom - bottom});
    if (past > pastEnds)
        wrong += "the shape reaches " + std::to_string(std::lround(past)) + " units past the ends (x "
            + std::to_string(std::lround(box.left)) + ".." + std::to_string(std::lround(box.right)) + ", y "
            + std::to_string(std::lround(box.top)) + ".." + std::to_string(std::lround(box.bottom)) + "; ends x "
            + std::to_string(std::lround(left)) + ".." + std::to_string(std::lround(right)) + ", y "
            + std::to_string(std::lround(top)) + ".." + std::to_string(std::lround(bottom)) + "); ";
    return wrong;
}

TEST(DrawnAttachments, EveryMuscleOfTheModelsEndsWhereItIsDrawn)
{
    const auto exceptions = publishedJson("drawn-attachments-exceptions.json").at("muscles");
    const std::string source = publishedTable("attachment-points.csv").source;
    int checked = 0;
    int excepted = 0;
    for (const ModelMuscle &muscle : modelMuscles()) {
        ++checked;
        std::string best = "not drawn in front or back";
        for (const View view : {View::Front, View::Back})
            if (const auto wrong = complaint(muscle, view); wrong && (best.starts_with("not") || wrong->size() < best.size()))
                best = *wrong;
        const bool isException = exceptions.contains(muscle.name);
        excepted += isException;
        EXPECT_EQ(best.empty(), !isException)
            << muscle.name << ": " << best << (isException ? "listed as an exception" : "") << "\nsource:" << source;
    }
    std::cout << "muscles of the models: " << checked << " checked, " << excepted << " listed with a reason\n";
    EXPECT_LE(excepted * 10, checked) << "at most 10 %";
}

} // namespace

} // namespace raphe::test
