// The figure has the proportions of people: each measure of landmarks-in-drawing-units.csv that a view can show lies within
// mean plus or minus two standard deviations. Measures of another posture than drawn are left out and named in the table.
#include "tests/published/Silhouette.h"
#include "tests/support/Content.h"
#include "tests/support/Published.h"

#include <gtest/gtest.h>

#include <cmath>
#include <cstdio>
#include <functional>
#include <map>

namespace raphe::test {

namespace {

using Measure = std::function<double(const Drawing &front, const Drawing &back)>;

double twiceEdge(const Drawing &drawing, double y)
{
    return 2 * Silhouette(drawing).edge(y);
}

double leg(const Drawing &drawing, double y)
{
    return Silhouette(drawing).at(y).front().breadth();
}

// Where trunk and arm part: the first height below the shoulder with two stretches.
double armpit(const Drawing &drawing)
{
    const Silhouette s(drawing);
    for (double y = 190; y < 300; y += 0.5)
        if (s.at(y).size() > 1)
            return y;
    throw std::runtime_error("arm and trunk do not part");
}

// Height of the outermost point of the fibula's lower end.
double outerAnkle(const Drawing &drawing)
{
    Point outermost;
    for (const DrawnShape &shape : drawing.shapes())
        if (shape.structure.value == "fibula")
            for (const Point &p : shape.polygons.front())
                if (p.y > 900 && p.x > outermost.x)
                    outermost = p;
    return outermost.y;
}

const Silhouette &side()
{
    static const Silhouette silhouette(body().of(View::Side));
    return silhouette;
}

// The height between two where f is largest.
template <class F> double heightOf(double top, double bottom, F f)
{
    double best = top;
    for (double y = top; y <= bottom; ++y)
        if (f(y) > f(best))
            best = y;
    return best;
}

double middleX(const Box &box)
{
    return (box.left + box.right) / 2;
}

double headDepth()
{
    return Silhouette::largest(20, 70, [](double y) { return side().at(y).back().to - side().at(y).front().from; });
}

double headBreadth(const Drawing &front)
{
    return Silhouette::largest(20, 62, [&](double y) { return twiceEdge(front, y); });
}

const double armTilt = std::cos(10.0 * 3.14159265358979 / 180.0); // the arms hang about 10 degrees from the trunk

double armThickness(const Drawing &front, double top, double bottom)
{
    return Silhouette::largest(top, bottom, [&](double y) { return Silhouette(front).at(y).back().breadth(); }) * armTilt;
}

// In the palm's inset the wrist crease is the edge between wrist and palm.
double wristCrease()
{
    return boundsOfDrawn(body().of(View::Palm), "anterior-region-of-wrist").bottom;
}

// Across the four fingers' roots, where the thumb is a stretch of its own.
double palmBreadth()
{
    const Drawing &palm = body().of(View::Palm);
    const auto stretches = Silhouette(palm).at(wristCrease() + 56 * palm.scale());
    return stretches.front().breadth() / palm.scale();
}

// The measure's name in the table, and how the drawing shows it.
const std::map<std::string, Measure> measures{
    {"spinous process of C7", [](const Drawing &, const Drawing &b) { return middleY(boundsOfDrawn(b, "spinous-process-c7")); }},
    {"acromion, tip", [](const Drawing &, const Drawing &b) { return middleY(boundsOfDrawn(b, "acromion")); }},
    {"suprasternal notch", [](const Drawing &f, const Drawing &) { return boundsOfDrawn(f, "presternal-region").top; }},
    {"axilla, front fold", [](const Drawing &f, const Drawing &) { return armpit(f); }},
    {"lower edge of tenth rib", [](const Drawing &f, const Drawing &) { return boundsOfDrawn(f, "rib-10").bottom; }},
    {"iliac crest, highest point at the side",
        [](const Drawing &, const Drawing &b) { return boundsOfDrawn(b, "hip-bone").top; }},
    {"greater trochanter, top", [](const Drawing &, const Drawing &b) { return boundsOfDrawn(b, "greater-trochanter").top; }},
    {"crotch", [](const Drawing &f, const Drawing &) { return Silhouette(f).line().back().y; }},
    {"middle of the kneecap", [](const Drawing &f, const Drawing &) { return middleY(boundsOfDrawn(f, "patella")); }},
    {"lateral epicondyle of femur",
        [](const Drawing &f, const Drawing &) { return middleY(boundsOfDrawn(f, "lateral-epicondyle-of-femur")); }},
    {"tibial plateau", [](const Drawing &f, const Drawing &) { return boundsOfDrawn(f, "tibia").top; }},
    {"lateral malleolus", [](const Drawing &f, const Drawing &) { return outerAnkle(f); }},
    {"head", [](const Drawing &f, const Drawing &) { return headBreadth(f); }},
    {"between acromions", [](const Drawing &, const Drawing &b) { return 2 * boundsOfDrawn(b, "acromion").right; }},
    {"between deltoids",
        [](const Drawing &f, const Drawing &) {
            return Silhouette::largest(190, armpit(f) - 1, [&](double y) { return twiceEdge(f, y); });
        }},
    {"chest", [](const Drawing &f, const Drawing &) { return twiceEdge(f, 273); }},
    {"waist at navel", [](const Drawing &f, const Drawing &) { return twiceEdge(f, 398); }},
    {"between iliac crests", [](const Drawing &, const Drawing &b) { return 2 * boundsOfDrawn(b, "hip-bone").right; }},
    {"hips",
        [](const Drawing &f, const Drawing &) {
            return Silhouette::largest(460, 518, [&](double y) { return twiceEdge(f, y); });
        }},
    {"foot",
        [](const Drawing &f, const Drawing &) {
            return Silhouette::largest(968, 995, [&](double y) {
                const auto s = Silhouette(f).at(y);
                return s.back().to - s.front().from;
            });
        }},
    {"heel",
        [](const Drawing &, const Drawing &b) {
            return boundsOfDrawn(b, "heel-region").right - boundsOfDrawn(b, "heel-region").left;
        }},
    {"ankle bones",
        [](const Drawing &f, const Drawing &) { return Silhouette::largest(950, 966, [&](double y) { return leg(f, y); }); }},
    {"neck girth",
        [](const Drawing &f, const Drawing &) {
            return Silhouette::smallest(100, 150, [&](double y) { return twiceEdge(f, y); });
        }},
    {"thigh girth", [](const Drawing &f, const Drawing &) { return leg(f, 545); }},
    {"lower thigh girth", [](const Drawing &f, const Drawing &) { return leg(f, 668); }},
    {"calf girth",
        [](const Drawing &f, const Drawing &) { return Silhouette::largest(760, 860, [&](double y) { return leg(f, y); }); }},
    {"ankle girth",
        [](const Drawing &f, const Drawing &) { return Silhouette::smallest(880, 950, [&](double y) { return leg(f, y); }); }},
    {"nipple level (men) / bust point (women)",
        [](const Drawing &, const Drawing &) { return heightOf(245, 330, [](double y) { return side().at(y).back().to; }); }},
    {"most backward point of the buttock",
        [](const Drawing &, const Drawing &) { return heightOf(440, 560, [](double y) { return -side().at(y).front().from; }); }},
    {"wrist crease level, arm hanging",
        [](const Drawing &f, const Drawing &) { return middleY(boundsOfDrawn(f, "anterior-region-of-wrist")); }},
    {"cheekbones", [](const Drawing &f, const Drawing &) { return 2 * boundsOfDrawn(f, "zygomatic-bone").right; }},
    {"hand", [](const Drawing &, const Drawing &) { return palmBreadth(); }},
    {"head, front to back", [](const Drawing &, const Drawing &) { return headDepth(); }},
    {"chest depth", [](const Drawing &, const Drawing &) { return side().at(273).front().breadth(); }},
    {"waist depth", [](const Drawing &, const Drawing &) { return side().at(398).front().breadth(); }},
    {"buttock depth", [](const Drawing &, const Drawing &) { return side().at(491).front().breadth(); }},
    {"foot length",
        [](const Drawing &, const Drawing &) {
            return Silhouette::largest(960, 998, [](double y) { return side().at(y).back().to; })
                - Silhouette::smallest(960, 998, [](double y) { return side().at(y).front().from; });
        }},
    {"hand length",
        [](const Drawing &, const Drawing &) {
            const Drawing &palm = body().of(View::Palm);
            return (boundsOfDrawn(palm, "middle-finger").bottom - wristCrease()) / palm.scale();
        }},
    {"palm length",
        [](const Drawing &, const Drawing &) {
            const Drawing &palm = body().of(View::Palm);
            return (boundsOfDrawn(palm, "middle-finger").top - wristCrease()) / palm.scale();
        }},
    {"acromion to elbow joint",
        [](const Drawing &, const Drawing &) {
            const Drawing &s = body().of(View::Side);
            return boundsOfDrawn(s, "head-of-radius").left - middleX(boundsOfDrawn(s, "acromion"));
        }},
    {"elbow joint to wrist",
        [](const Drawing &, const Drawing &) {
            const Drawing &s = body().of(View::Side);
            return boundsOfDrawn(s, "styloid-process-of-radius").right - boundsOfDrawn(s, "head-of-radius").left;
        }},
    {"ear notch to crown",
        [](const Drawing &, const Drawing &) { return middleY(boundsOfDrawn(body().of(View::Side), "auricular-region")); }},
    {"upper arm girth, flexed", [](const Drawing &f, const Drawing &) { return armThickness(f, 260, 320); }},
    {"forearm girth", [](const Drawing &f, const Drawing &) { return armThickness(f, 395, 440); }},
    {"wrist girth",
        [](const Drawing &f, const Drawing &) {
            return Silhouette::smallest(500, 525, [&](double y) { return Silhouette(f).at(y).back().breadth(); }) * armTilt;
        }},
    {"head girth", [](const Drawing &f, const Drawing &) { return (headDepth() + headBreadth(f)) / 2; }},
};

TEST(DrawingProportions, LieWithinTwoStandardDeviationsOfPeople)
{
    const Table table = publishedTable("landmarks-in-drawing-units.csv");
    std::size_t shown = 0;
    std::printf("%-42s %8s %8s %8s %8s\n", "measure", "drawn", "low", "mean", "high");
    for (const auto &row : table.rows) {
        const std::string &what = row.at("what");
        const double low = std::stod(row.at("low"));
        const double high = std::stod(row.at("high"));
        const auto measure = measures.find(what);
        if (measure == measures.end()) {
            std::printf("%-42s %8s %8.0f %8s %8.0f\n", what.c_str(), "-", low, row.at("drawing_value").c_str(), high);
            continue;
        }
        ++shown;
        const double drawn = measure->second(body().of(View::Front), body().of(View::Back));
        std::printf("%-42s %8.1f %8.0f %8s %8.0f\n", what.c_str(), drawn, low, row.at("drawing_value").c_str(), high);
        EXPECT_GE(drawn, low) << what << " (" << row.at("kind") << "); source:" << table.source;
        EXPECT_LE(drawn, high) << what << " (" << row.at("kind") << "); source:" << table.source;
    }
    EXPECT_EQ(shown, measures.size()) << "a measure is not in landmarks-in-drawing-units.csv";
}

TEST(DrawingProportions, TheNavelLiesInTheUmbilicalRegion)
{
    const Table table = publishedTable("landmarks-in-drawing-units.csv");
    for (const auto &row : table.rows)
        if (row.at("what") == "navel") {
            const auto under = body().of(View::Front).under(atlas(), {1, std::stod(row.at("drawing_value"))});
            ASSERT_FALSE(under.empty());
            EXPECT_EQ(under.front().place.structure.value, "umbilical-region") << "source:" << table.source;
        }
}

TEST(DrawingProportions, FrontAndBackShowTheSameBody)
{
    const Silhouette front(body().of(View::Front));
    const Silhouette back(body().of(View::Back));
    for (double y = 5; y < 950; y += 5) {
        const auto f = front.at(y);
        const auto b = back.at(y);
        ASSERT_EQ(f.size(), b.size()) << "at y " << y;
        for (std::size_t i = 0; i < f.size(); ++i) {
            EXPECT_NEAR(f[i].from, b[i].from, 1.5) << "at y " << y;
            EXPECT_NEAR(f[i].to, b[i].to, 1.5) << "at y " << y;
        }
    }
}

TEST(DrawingProportions, TheSilhouetteRunsFromTheCrownToTheCrotchAndTouchesTheFloor)
{
    for (const View view : {View::Front, View::Back}) {
        const Silhouette s(body().of(view));
        EXPECT_EQ(s.polygons().size(), 1U);
        EXPECT_NEAR(s.line().front().x, 0, 0.01);
        EXPECT_NEAR(s.line().front().y, 0, 1) << "the crown is at y = 0";
        EXPECT_NEAR(s.line().back().x, 0, 0.01);
        const Box box = boundsOf(s.polygons());
        EXPECT_NEAR(box.bottom, 1000, 1) << "the floor is at y = 1000";
        EXPECT_GE(box.left, 0);
        EXPECT_LE(box.right, 300);
    }
}

} // namespace

} // namespace raphe::test
