#include "app/batch/Commands.h"
#include "app/batch/Verbs.h"
#include "core/record/PlanWish.h"

#include <memory>

namespace raphe::batch {

namespace {

struct Given {
    std::string view;
    std::string facing = "right";
    double x = 0;
    double y = 0;
    std::string visit;
    std::string before;
    std::string out;
    std::string paper = "a4";
    std::string structure;
    std::string text;
    double stature = 0;
    std::vector<std::string> visits;
};

} // namespace

void addVisitVerbs(CLI::App &cli, Result<Done> &result, bool &isCheckFailed)
{
    const auto given = std::make_shared<Given>(); // lives in the callbacks
    cli.add_subcommand("atlas", "print the atlas")->callback([&result] { result = printAtlas(); });

    auto *under = cli.add_subcommand("under", "print what lies under a point, outside in");
    under->add_option("--view", given->view, "front, back, side, sole, palm or head")->required();
    under->add_option("--facing", given->facing, "side and head: which side of the patient is seen, right or left");
    under
        ->add_option("--x", given->x,
            "units of 1/1000 stature (insets: their own) from the middle of the view; in the back view x > 0 is the patient's "
            "right, in the side view facing right x > 0 is forward")
        ->required();
    under->add_option("--y", given->y, "units of 1/1000 stature below the crown")->required();
    under->callback([&result, given] { result = printUnder(given->view, given->facing, given->x, given->y); });

    const auto ofVisit = [&](const char *name, const char *words, Result<Done> (*print)(const std::string &)) {
        auto *verb = cli.add_subcommand(name, words);
        verb->add_option("--visit", given->visit, "visit file")->required();
        verb->callback([&result, given, print] { result = print(given->visit); });
    };
    ofVisit("reason", "print what to explain, check and treat", printReasons);
    ofVisit("cautions", "print what must be respected in a visit, and why", printCautions);
    ofVisit("extent", "print how much of the body's surface the findings on the skin take, and the pain drawing", printExtent);

    const auto planned = std::make_shared<PlanVerb>();
    auto *plan = cli.add_subcommand("plan", "print the best use of the minutes left: places in order, technique, position, why");
    plan->add_option("--visit", planned->visit, "visit file")->required();
    plan->add_option("--minutes", planned->minutes, "until the patient leaves; else as the visit says, or 20")
        ->check(CLI::Range(0, PlanWish::mostMinutes));
    plan->add_option("--bar", planned->barred, "a position not taken today: prone, supine, on-left-side, on-right-side, seated");
    plan->add_option("--scope", planned->scope, "a group of techniques within the scope of practice; none: all");
    plan->add_option("--without", planned->without, "a technique that is not wanted today");
    plan->callback([&result, planned] { result = printPlan(*planned); });

    auto *reads = cli.add_subcommand("read", "print a typed line as findings and measurements, and what it leaves open");
    reads->add_option("--text", given->text, "the line, such as 'right glute max origin tender 3, left L4/5 clear'")->required();
    reads->callback([&result, &isCheckFailed, given] { result = printReading(given->text, isCheckFailed); });

    auto *overlap = cli.add_subcommand("overlap", "print how far the pain drawings of two visits cover each other");
    overlap->add_option("--visit", given->visit, "visit file")->required();
    overlap->add_option("--before", given->before, "visit file of an earlier visit")->required();
    overlap->callback([&result, given] { result = printOverlap(given->visit, given->before); });

    const auto mapped = std::make_shared<MapVerb>();
    auto *map = cli.add_subcommand("map", "write the visit map, and print its reading grade");
    map->add_option("--visit", mapped->visits, "visit files")->required();
    map->add_option("--out", mapped->out, "file ending in .pdf, .svg or .png; for several visits a folder")->required();
    map->add_option("--paper", mapped->paper, "a4 or letter");
    map->add_option("--language", mapped->language, "what the patient reads: en, de or es");
    map->add_flag("--large", mapped->isLarge, "large print, on as many pages as it takes");
    map->add_flag("--grey", mapped->isGrey, "without colours");
    map->callback([&result, mapped] { result = writeMap(*mapped); });

    cli.add_subcommand("grade", "print the reading grade of each line of the standard input")->callback([&result] {
        result = printGrades();
    });

    auto *csv =
        cli.add_subcommand("csv", "print the findings of visits as a table for analysis; patients are numbered, not named");
    csv->add_option("--visit", given->visits, "visit files")->required();
    csv->add_option("--out", given->out, "file for the table");
    csv->callback([&result, given] { result = writeCsv(given->visits, given->out); });

    auto *deidentify =
        cli.add_subcommand("deidentify", "write copies of visits for teaching, without names, words and real dates");
    deidentify->add_option("--visit", given->visits, "visit files")->required();
    deidentify->add_option("--out-dir", given->out, "folder for the copies; one alone is printed without");
    deidentify->callback([&result, given] { result = writeDeidentified(given->visits, given->out); });

    auto *edges = cli.add_subcommand("edge", "print how long an edge is and who attaches along it");
    edges->add_option("--structure", given->structure, "id of the edge, such as iliac-crest")->required();
    edges->add_option("--stature", given->stature, "stature of the patient in millimetres")->required();
    edges->callback([&result, given] { result = printEdge(given->structure, given->stature); });
}

} // namespace raphe::batch
