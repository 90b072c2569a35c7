// raphe-batch map: the visit map as PDF, SVG or PNG.
#include "app/batch/Commands.h"

#include "app/batch/DocumentTasks.h"
#include "app/batch/Output.h"
#include "app/batch/PaperSize.h"
#include "app/batch/VisitFile.h"
#include "app/paint/VisitMapPages.h"
#include "core/document/MapReading.h"

#include <cmath>
#include <iostream>

namespace raphe::batch {

namespace {

Json readingJson(const ReadingGrade &grade, double limit)
{
    if (grade.words == 0)
        return nullptr; // the formula is for English
    return {{"grade", std::round(grade.grade * 10) / 10}, {"limit", limit}, {"words", grade.words},
        {"sentences", grade.sentences}, {"longest_sentence", grade.longest}, {"excepted", grade.excepted}};
}

} // namespace

Result<Done> writeMap(const MapVerb &verb)
{
    const auto paper = paperOf(verb.paper);
    if (!paper)
        return paper.error();
    const auto language = languageOf(verb.language);
    if (!language)
        return language.error();
    const auto tasks = documentTasks(verb.visits, verb.out, ".pdf");
    if (!tasks)
        return tasks.error();
    const auto read = readKnowledge();
    if (!read)
        return read.error();
    const Knowledge &knowledge = read.value();
    const Atlas &atlas = *knowledge.atlas;
    const auto rules = readEmbeddedSafetyRules(atlas);
    if (!rules)
        return rules.error();
    const auto examination = readEmbeddedExamination(atlas, rules.value());
    if (!examination)
        return examination.error();
    const auto techniques = readEmbeddedTechniques(rules.value());
    if (!techniques)
        return techniques.error();
    const auto advice = readEmbeddedHomeAdvice(rules.value());
    if (!advice)
        return advice.error();
    const auto readability = readEmbeddedReadability();
    if (!readability)
        return readability.error();
    const auto visits = readVisitFiles(tasks.value(), atlas);
    if (!visits)
        return visits.error();
    const MapSource source{rules.value(), atlas, *knowledge.body, examination.value(), techniques.value(), advice.value()};
    const Phrases phrases(language.value());
    const BodyArt front(atlas, knowledge.body->of(View::Front));
    const BodyArt back(atlas, knowledge.body->of(View::Back));
    Json documents = Json::array();
    for (std::size_t i = 0; i < tasks.value().size(); ++i) {
        tellProgress(tasks.value(), i);
        const VisitMap map = visitMap(source, visits.value()[i], phrases);
        const PrintedPages pages = visitMapPages({paper.value(), verb.isLarge, verb.isGrey}, map, front, back);
        const std::string &file = tasks.value()[i].out;
        if (const auto written = writePages(file, pages); !written)
            return written.error();
        documents.push_back({{"file", file}, {"language", verb.language}, {"pages", pages.pages.size()},
            {"reading", readingJson(gradeOf(readability.value(), map), readability.value().limit)}});
    }
    const Json out = documents.size() == 1 ? documents.front() : Json{{"documents", documents}};
    std::cout << out.dump(2) << "\n";
    return Done{};
}

Result<Done> printGrades()
{
    const auto readability = readEmbeddedReadability();
    if (!readability)
        return readability.error();
    for (std::string line; std::getline(std::cin, line);) {
        const ReadingGrade grade = readability.value().gradeOf({line});
        const Json out{{"grade", grade.grade}, {"sentences", grade.sentences}, {"words", grade.words},
            {"syllables", grade.syllables}, {"longest_sentence", grade.longest}, {"excepted", grade.excepted}};
        std::cout << out.dump(-1, ' ', false, Json::error_handler_t::replace) << "\n";
    }
    return Done{};
}

} // namespace raphe::batch
