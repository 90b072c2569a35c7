// The drawing reader refuses whatever the design does not allow, and a drawing answers what lies under a point, on which
// side of the patient, and what lies on what.
#include "tests/core/anatomy/TinyAtlas.h"
#include "tests/support/Content.h"

#include "core/anatomy/Drawing.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace raphe::test {

namespace {

/// The tiny atlas with what drawings need: a second muscle below the mover and its segment on the midline.
const Atlas &drawnAtlas()
{
    static const Atlas read = [] {
        auto json = tinyJson();
        auto deep = tinyStructure("deep-mover", "muscle", "deep-muscle", true);
        deep["attachments"] = nlohmann::json::array({tinyHead("process", "crest")});
        json["structures"].push_back(deep);
        json["structures"].push_back(tinyStructure("apron", "fascia", "deep-fascia", false));
        return tinyAtlas(json);
    }();
    return read;
}

std::string box(const std::string &id, int left, int top, int right, int bottom)
{
    const auto s = [](int n) { return std::to_string(n); };
    return "<path id=\"" + id + "\" d=\"M" + s(left) + " " + s(top) + " L" + s(right) + " " + s(top) + " " + s(right) + " "
        + s(bottom) + " " + s(left) + " " + s(bottom) + " Z\"/>\n";
}

const std::string opening = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"-500 0 1000 1000\">\n";
const std::string silhouette =
    "<g id=\"outline\"><path id=\"body-outline\" class=\"outline\" d=\"M0 0 C50 0 80 50 80 500 L0 520\"/></g>\n";

std::string layer(const std::string &name, const std::string &paths)
{
    return "<g id=\"layer-" + name + "\">\n" + paths + "</g>\n";
}

std::string drawingOf(const std::string &groups)
{
    return opening + silhouette + groups + "</svg>\n";
}

/// A drawing whose only shape is the mover with this path data.
std::string moverWith(const std::string &d)
{
    return drawingOf(layer("superficial-muscle", "<path id=\"mover\" d=\"" + d + "\"/>\n"));
}

Result<Drawing> read(const std::string &svg, View view = View::Back)
{
    return readDrawing(svg, "tiny.svg", view, drawnAtlas());
}

struct BadDrawing {
    std::string name;
    std::string svg;
    std::string place; // as far as the id
    std::string detail; // what the message must hold
    ErrorCode code = ErrorCode::BadDrawing;
};

std::ostream &operator<<(std::ostream &out, const BadDrawing &bad)
{
    return out << bad.name;
}

class RefusedDrawing : public testing::TestWithParam<BadDrawing> { };

TEST_P(RefusedDrawing, IsRefusedWithItsPlace)
{
    const BadDrawing &bad = GetParam();
    const auto drawing = read(bad.svg);
    ASSERT_FALSE(drawing.ok()) << "this mistake goes unseen:\n" << bad.svg;
    EXPECT_EQ(drawing.error().code, bad.code) << inWords(drawing.error());
    EXPECT_TRUE(drawing.error().place.starts_with("tiny.svg, line ")) << drawing.error().place;
    EXPECT_NE(drawing.error().place.find(bad.place), std::string::npos) << drawing.error().place;
    EXPECT_NE(drawing.error().detail.find(bad.detail), std::string::npos) << drawing.error().detail;
}

const std::string okBox = "M1 1 L9 1 9 9 Z";

const std::vector<BadDrawing> badDrawings{
    {"RelativeLine", moverWith("M1 1 l9 1 9 9 Z"), "line 4, ", "found 'l'"},
    {"RelativeMove", moverWith("m1 1 L9 1 9 9 Z"), "id mover", "found 'm'"},
    {"RelativeCurve", moverWith("M1 1 c1 2 3 4 5 6 Z"), "id mover", "found 'c'"},
    {"SmallZ", moverWith("M1 1 L9 1 9 9 z"), "id mover", "found 'z'"},
    {"HorizontalLine", moverWith("M1 1 H9 L9 9 Z"), "id mover", "found 'H'"},
    {"ArcCommand", moverWith("M1 1 A5 5 0 0 1 9 9 Z"), "id mover", "found 'A'"},
    {"NumbersWithoutACommand", moverWith("1 1 L9 1 9 9 Z"), "id mover", "found '1'"},
    {"NegativeStart", moverWith("M-1 1 L9 1 9 9 Z"), "id mover", "M needs one point with x >= 0"},
    {"NegativeLine", moverWith("M1 1 L-9 1 9 9 Z"), "id mover", "L needs one point with x >= 0"},
    {"NegativeControlPoint", moverWith("M1 1 C-1 2 3 4 5 6 Z"), "id mover", "C needs three points with x >= 0"},
    {"CurveCutShort", moverWith("M1 1 C1 2 3 4 5 Z"), "id mover", "C needs three points"},
    {"NumberThatIsNone", moverWith("M1 1 L9 1-2 9 9 Z"), "id mover", "L needs one point"},
    {"NumberFarAway", moverWith("M1 1 L99999 1 9 9 Z"), "id mover", "L needs one point"},
    {"LineAfterZ", moverWith("M1 1 L9 1 9 9 Z L3 3"), "id mover", "a contour must start with M"},
    {"EmptyPath", moverWith(""), "id mover", "the path is empty"},
    {"PointOnly", moverWith("M1 1 Z"), "id mover", "the path is empty"},
    {"OpenShape", moverWith("M1 1 L9 1 9 9"), "id mover", "a shape must be closed with Z"},
    {"SecondContourOpen", moverWith("M1 1 L9 1 9 9 Z M2 2 L3 3 2 4"), "id mover", "a shape must be closed with Z"},
    {"UnknownId", drawingOf(layer("superficial-muscle", box("stranger", 1, 1, 9, 9))), "line 4", "stranger",
        ErrorCode::UnknownId},
    {"WrongLayer", drawingOf(layer("deep-muscle", box("mover", 1, 1, 9, 9))), "id mover", "superficial-muscle"},
    {"NoId", drawingOf(layer("superficial-muscle", "<path d=\"" + okBox + "\"/>\n")), "line 4", "ids must be there and unique"},
    {"SameIdTwice", drawingOf(layer("superficial-muscle", box("mover", 1, 1, 9, 9) + box("mover", 2, 2, 8, 8))), "id mover",
        "ids must be there and unique"},
    {"TransformOnAPath",
        drawingOf(layer("superficial-muscle", "<path id=\"mover\" transform=\"scale(2)\" d=\"" + okBox + "\"/>\n")), "id mover",
        "attribute transform"},
    {"StyleOnAPath", drawingOf(layer("superficial-muscle", "<path id=\"mover\" style=\"fill:red\" d=\"" + okBox + "\"/>\n")),
        "id mover", "attribute style"},
    {"ClipPathOnAPath",
        drawingOf(layer("superficial-muscle", "<path id=\"mover\" clip-path=\"url(#a)\" d=\"" + okBox + "\"/>\n")), "id mover",
        "attribute clip-path"},
    {"TransformOnAGroup", drawingOf("<g id=\"layer-skin\" transform=\"scale(2)\"></g>\n"), "id layer-skin",
        "attribute transform"},
    {"ClassOfOurOwnOnly", drawingOf(layer("superficial-muscle", "<path id=\"mover\" class=\"red\" d=\"" + okBox + "\"/>\n")),
        "id mover", "class is 'fibre' or absent"},
    {"GroupInAGroup", drawingOf(layer("superficial-muscle", layer("skin", ""))), "id layer-skin", "groups inside groups"},
    {"GroupThatIsNoLayer", drawingOf("<g id=\"muscles\"></g>\n"), "id muscles", "a group is 'outline' or 'layer-'"},
    {"LayerOutsideTheList", drawingOf(layer("middle", "")), "id layer-middle", "a group is 'outline' or 'layer-'"},
    {"PathOutsideOfAGroup", drawingOf(box("mover", 1, 1, 9, 9)), "id mover", "a path outside of a group"},
    {"ForeignElement", drawingOf(layer("superficial-muscle", "<circle id=\"mover\" r=\"5\"/>\n")), "line 4", "element circle"},
    {"Mask", drawingOf("<mask id=\"m\"/>\n"), "line 3", "element mask"},
    {"StyleSheet", drawingOf("<style>path { fill: red }</style>\n"), "line 3", "element style"},
    {"OtherViewBox", "<svg viewBox=\"0 0 1000 1000\">" + silhouette + "</svg>", "line 1", "viewBox must be -500 0 1000 1000"},
    {"NoOutline", opening + "</svg>\n", "id body-outline", "missing"},
    {"ClosedOutline", opening + "<g id=\"outline\"><path id=\"body-outline\" class=\"outline\" d=\"" + okBox + "\"/></g></svg>",
        "id body-outline", "open strokes"},
    {"OutlineTwice",
        opening
            + "<g id=\"outline\"><path id=\"a\" class=\"outline\" d=\"M0 0 L9 9\"/><path id=\"b\" class=\"outline\" d=\"M0 0 L8 "
              "8\"/></g></svg>",
        "id b", "holds one stroke"},
    {"ShapeInTheOutlineGroup", opening + "<g id=\"outline\">" + box("mover", 1, 1, 9, 9) + "</g></svg>", "id mover",
        "holds one stroke"},
    {"FibreOfAnotherShape",
        drawingOf(
            layer("superficial-muscle", box("mover", 1, 1, 9, 9) + "<path id=\"other--1\" class=\"fibre\" d=\"M1 1 L2 2\"/>\n")),
        "id other--1", "a fibre follows its own shape"},
    {"ClosedFibre",
        drawingOf(layer(
            "superficial-muscle", box("mover", 1, 1, 9, 9) + "<path id=\"mover--f\" class=\"fibre\" d=\"M1 1 L2 2 3 1 Z\"/>\n")),
        "id mover--f", "open strokes"},
    {"TextBetweenElements", drawingOf("hello"), "line 3", "text between elements"},
    {"ProcessingInstruction", drawingOf("<?style x?>"), "line 3", "processing instructions"},
    {"DocumentType", "<!DOCTYPE svg>\n" + drawingOf(""), "line 1", "document types"},
    {"XmlCutShort", opening + silhouette, "line ", ""},
};

INSTANTIATE_TEST_SUITE_P(
    Drawing, RefusedDrawing, testing::ValuesIn(badDrawings), [](const auto &each) { return each.param.name; });

TEST(DrawingReader, AcceptsShapesPiecesAndFibres)
{
    const auto drawing = read(drawingOf(layer("superficial-muscle",
        box("mover", 1, 1, 9, 9) + "<path id=\"mover--f1\" class=\"fibre\" d=\"M1 1 L2 2\"/>\n"
            + "<path id=\"mover--f2\" class=\"fibre\" d=\"M1 2 C1 3 2 4 3 5\"/>\n" + box("mover--2", 20, 20, 30, 30))));
    ASSERT_TRUE(drawing.ok()) << inWords(drawing.error());
    ASSERT_EQ(drawing.value().shapes().size(), 2U);
    EXPECT_EQ(drawing.value().shapes()[0].structure, drawing.value().shapes()[1].structure);
    EXPECT_EQ(drawing.value().shapes()[0].fibres.size(), 2U);
    EXPECT_EQ(drawing.value().silhouette().size(), 1U);
}

TEST(DrawingReader, TakesPairsAfterMAsLines)
{
    const auto drawing = read(moverWith("M0,0 10,0 10,10 0,10 Z"));
    ASSERT_TRUE(drawing.ok()) << inWords(drawing.error());
    EXPECT_DOUBLE_EQ(areaOf(drawing.value().shapes()[0].polygons), 100);
}

TEST(DrawingReader, ReadsTheBuiltInDrawings)
{
    const auto drawings = readEmbeddedBody(atlas());
    ASSERT_TRUE(drawings.ok()) << inWords(drawings.error());
    for (const View view : {View::Front, View::Back})
        EXPECT_GT(drawings.value().of(view).shapes().size(), 100U) << wordOf(viewWords, view);
}

// Skin over fascia over muscle over a deep muscle over the segment, from x = 0 to x = 40.
Drawing stack(View view)
{
    auto drawing =
        read(drawingOf(layer("skin", box("flank", 0, 100, 60, 200)) + layer("deep-fascia", box("apron", 0, 100, 40, 200))
                 + layer("superficial-muscle", box("mover", 10, 100, 40, 200))
                 + layer("deep-muscle", box("deep-mover", 0, 100, 40, 200)) + layer("bone", box("lumbosacral", 0, 100, 20, 200))),
            view);
    if (!drawing)
        throw std::runtime_error(inWords(drawing.error()));
    return std::move(drawing).value();
}

std::vector<Place> placesUnder(const Drawing &drawing, Point p)
{
    std::vector<Place> places;
    for (const UnderHit &hit : drawing.under(drawnAtlas(), p))
        places.push_back(hit.place);
    return places;
}

TEST(Under, NamesTheStackFromTheOutsideInWhateverTheOrderOfTheFile)
{
    EXPECT_EQ(placesUnder(stack(View::Back), {15, 150}),
        (std::vector<Place>{{{"flank"}, Side::Right}, {{"apron"}, Side::Midline}, {{"mover"}, Side::Right},
            {{"deep-mover"}, Side::Right}, {{"lumbosacral"}, Side::Right}}));
}

TEST(Under, BackViewShowsThePatientsRightAtPositiveX)
{
    EXPECT_EQ(placesUnder(stack(View::Back), {50, 150}), (std::vector<Place>{{{"flank"}, Side::Right}}));
    EXPECT_EQ(placesUnder(stack(View::Back), {-50, 150}), (std::vector<Place>{{{"flank"}, Side::Left}}));
}

TEST(Under, FrontViewShowsThePatientsLeftAtPositiveX)
{
    EXPECT_EQ(placesUnder(stack(View::Front), {50, 150}), (std::vector<Place>{{{"flank"}, Side::Left}}));
    EXPECT_EQ(placesUnder(stack(View::Front), {-50, 150}), (std::vector<Place>{{{"flank"}, Side::Right}}));
}

TEST(Under, TheOtherHalfIsTheMirrorImage)
{
    for (const View view : {View::Front, View::Back})
        for (double x = 0.5; x < 70; x += 1.5) {
            auto here = placesUnder(stack(view), {x, 150});
            for (Place &place : here)
                place = mirrored(place);
            EXPECT_EQ(here, placesUnder(stack(view), {-x, 150})) << "at x " << x;
        }
}

TEST(Under, ASpinalSegmentIsMidlineOnTheMidline)
{
    const Drawing drawing = stack(View::Back);
    const auto segmentAt = [&](double x) {
        const auto places = placesUnder(drawing, {x, 150});
        return places.empty() ? Place{} : places.back();
    };
    EXPECT_EQ(segmentAt(Drawing::midlineHalfWidth), (Place{{"lumbosacral"}, Side::Midline}));
    EXPECT_EQ(segmentAt(-Drawing::midlineHalfWidth), (Place{{"lumbosacral"}, Side::Midline}));
    EXPECT_EQ(segmentAt(Drawing::midlineHalfWidth + 0.5), (Place{{"lumbosacral"}, Side::Right}));
    EXPECT_EQ(segmentAt(-Drawing::midlineHalfWidth - 0.5), (Place{{"lumbosacral"}, Side::Left}));
}

// The mover behind and in front of x = 0, as only a view that is drawn whole may have it.
std::string wholeDrawing(const std::string &root)
{
    return root + "<g id=\"outline\"><path id=\"body-outline\" class=\"outline\" d=\"M0 0 L60 300 -60 300 0 0\"/></g>\n"
        + layer("superficial-muscle", box("mover", -40, 200, 10, 250)) + "</svg>\n";
}

TEST(WholeView, MayReachBehindZeroAndFacesEitherSide)
{
    const auto drawing = read(wholeDrawing(opening), View::Side);
    ASSERT_TRUE(drawing.ok()) << inWords(drawing.error());
    EXPECT_FALSE(read(wholeDrawing(opening), View::Back).ok()) << "half a body may not";
    const auto at = [&](double x, Side facing) {
        std::vector<Place> places;
        for (const UnderHit &hit : drawing.value().under(drawnAtlas(), {x, 225}, facing))
            places.push_back(hit.place);
        return places;
    };
    EXPECT_EQ(at(-30, Side::Right), (std::vector<Place>{{{"mover"}, Side::Right}}));
    EXPECT_TRUE(at(30, Side::Right).empty());
    EXPECT_EQ(at(30, Side::Left), (std::vector<Place>{{{"mover"}, Side::Left}}));
    EXPECT_TRUE(at(-30, Side::Left).empty());
    EXPECT_EQ(drawing.value().frame().left, -60);
    EXPECT_EQ(drawing.value().frame().right, 60);
}

TEST(WholeView, ASpinalSegmentIsMidlineWhereverItIsSeen)
{
    const auto drawing = read(drawingOf(layer("bone", box("lumbosacral", 20, 100, 40, 200))), View::Side);
    ASSERT_TRUE(drawing.ok()) << inWords(drawing.error());
    const auto hits = drawing.value().under(drawnAtlas(), {30, 150}, Side::Right);
    ASSERT_EQ(hits.size(), 1U);
    EXPECT_EQ(hits.front().place, (Place{{"lumbosacral"}, Side::Midline}));
}

TEST(Inset, StatesItsScaleAndWhereItBelongs)
{
    const std::string stated =
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"-500 0 1000 1000\" data-scale=\"5\" data-anchor=\"somewhere\">\n";
    const auto inset = read(wholeDrawing(stated), View::Head);
    ASSERT_TRUE(inset.ok()) << inWords(inset.error());
    EXPECT_EQ(inset.value().scale(), 5);
    for (const auto &[svg, view] : {std::pair{wholeDrawing(opening), View::Head}, std::pair{wholeDrawing(stated), View::Side}}) {
        const auto refused = read(svg, view);
        ASSERT_FALSE(refused.ok());
        EXPECT_EQ(refused.error().code, ErrorCode::BadDrawing);
        EXPECT_NE(refused.error().detail.find("data-scale"), std::string::npos) << refused.error().detail;
    }
    std::string far = stated;
    far.replace(far.find("data-scale=\"5\""), 14, "data-scale=\"500\"");
    EXPECT_FALSE(read(wholeDrawing(far), View::Head).ok());
}

TEST(Under, TheCellsAnswerAsEveryShapeWould)
{
    for (const Drawing &drawing : body().drawings())
        for (double y = 3.7; y < 1000; y += 37)
            for (double x = -490.3; x < 500; x += 23) {
                const Point drawn = drawing.drawnPoint({x, y});
                std::vector<StructureId> plain; // topmost first, each once
                for (auto it = drawing.shapes().rbegin(); it != drawing.shapes().rend(); ++it)
                    if (contains(it->polygons, drawn) && std::find(plain.begin(), plain.end(), it->structure) == plain.end())
                        plain.push_back(it->structure);
                std::vector<StructureId> asked;
                for (const UnderHit &hit : drawing.under(atlas(), {x, y}))
                    asked.push_back(hit.place.structure);
                EXPECT_EQ(asked, plain) << wordOf(viewWords, drawing.view()) << " at " << x << ", " << y;
            }
}

TEST(Under, NothingLiesOutside)
{
    EXPECT_TRUE(placesUnder(stack(View::Back), {200, 150}).empty());
    EXPECT_TRUE(placesUnder(stack(View::Back), {15, 900}).empty());
}

TEST(Under, AStructureInTwoPiecesIsNamedOnce)
{
    auto drawing = read(drawingOf(layer("superficial-muscle", box("mover", 0, 0, 20, 20) + box("mover--2", 10, 0, 30, 20))));
    ASSERT_TRUE(drawing.ok());
    EXPECT_EQ(placesUnder(drawing.value(), {15, 10}), (std::vector<Place>{{{"mover"}, Side::Right}}));
}

TEST(Under, WithinALayerTheLaterShapeLiesOnTop)
{
    auto drawing = read(drawingOf(layer("deep-fascia", box("tract", 0, 0, 20, 20) + box("apron", 0, 0, 20, 20))));
    ASSERT_TRUE(drawing.ok());
    EXPECT_EQ(placesUnder(drawing.value(), {10, 10}), (std::vector<Place>{{{"apron"}, Side::Midline}, {{"tract"}, Side::Right}}));
}

TEST(SideAndSign, AreEachOthersInverse)
{
    for (const View view : {View::Front, View::Back}) {
        const Drawing drawing = stack(view);
        for (const Side side : {Side::Left, Side::Right})
            EXPECT_EQ(drawing.sideAt(drawing.signOf(side) * 10.0), side);
        EXPECT_EQ(drawing.signOf(Side::Midline), 1);
    }
}

const Overlap *overlapOf(const std::vector<Overlap> &all, const std::string &outer, const std::string &inner)
{
    const auto it =
        std::find_if(all.begin(), all.end(), [&](const Overlap &o) { return o.outer.value == outer && o.inner.value == inner; });
    return it == all.end() ? nullptr : &*it;
}

TEST(Overlaps, NameDirectNeighboursOnlyWithTheShareOfTheSmaller)
{
    const auto all = stack(View::Back).overlaps(drawnAtlas(), 0.15);
    const Overlap *skinOnFascia = overlapOf(all, "flank", "apron");
    ASSERT_TRUE(skinOnFascia);
    EXPECT_NEAR(skinOnFascia->share, 1, 0.001) << "the apron lies wholly under the skin";
    const Overlap *fasciaOnMuscle = overlapOf(all, "apron", "mover");
    ASSERT_TRUE(fasciaOnMuscle);
    EXPECT_NEAR(fasciaOnMuscle->share, 1, 0.001);
    const Overlap *fasciaOnDeep = overlapOf(all, "apron", "deep-mover");
    ASSERT_TRUE(fasciaOnDeep) << "beside the mover the apron lies directly on the deep muscle";
    EXPECT_NEAR(fasciaOnDeep->share, 10.0 / 40, 0.04) << "3-unit samples";
    EXPECT_FALSE(overlapOf(all, "flank", "mover")) << "the apron lies between";
    EXPECT_FALSE(overlapOf(all, "mover", "apron")) << "the outer one comes first";
}

TEST(Overlaps, LeaveOutBonesAndWhatIsTooSmall)
{
    const auto all = stack(View::Back).overlaps(drawnAtlas(), 0.15);
    for (const Overlap &o : all)
        EXPECT_NE(o.inner.value, "lumbosacral") << "a joint is no soft tissue";
    EXPECT_FALSE(overlapOf(stack(View::Back).overlaps(drawnAtlas(), 0.5), "apron", "deep-mover"))
        << "a quarter is less than half";
}

TEST(Overlaps, OfTheBuiltInDrawingsTieTheGluteusMaximusToWhatItCovers)
{
    const auto all = body().of(View::Back).overlaps(atlas(), constants()["overlap-least"]);
    EXPECT_TRUE(overlapOf(all, "gluteus-maximus", "piriformis") || overlapOf(all, "gluteus-maximus", "gluteus-medius"));
    EXPECT_TRUE(overlapOf(all, "gluteal-fascia", "gluteus-maximus") || overlapOf(all, "thoracolumbar-fascia", "gluteus-maximus"));
}

} // namespace

} // namespace raphe::test
