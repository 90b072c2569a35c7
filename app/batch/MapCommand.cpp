// raphe-batch map: the visit map as PDF, SVG or PNG.
#include "app/batch/Commands.h"

#include "app/batch/Output.h"
#include "app/batch/PaperSize.h"
#include "app/batch/VisitFile.h"
#include "app/paint/VisitMapPages.h"
#include "core/document/MapReading.h"

#include <cmath>
#include <iostream>

namespace raphe::batch {

Result<Done> writeMap(const MapVerb &verb)
{
    const auto paper = paperOf(verb.paper);
    if (!paper)
        return paper.error();
    const auto language = languageOf(verb.language);
    if (!language)
        return language.error();
    const auto read = readKnownVisit(verb.visit);
    if (!read)
        return read.error();
    const auto &[knowledge, visit] = read.value();
    const auto rules = readEmbeddedSafetyRules(*knowledge.atlas);
    if (!rules)
        return rules.error();
    const auto examination = readEmbeddedExamination(*knowledge.atlas, rules.value());
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
    const VisitMap map =
        visitMap({rules.value(), *knowledge.atlas, *knowledge.body, examination.value(), techniques.value(), advice.value()},
            visit, Phrases(language.value()));
    const BodyArt front(*knowledge.atlas, knowledge.body->of(View::Front));
    const BodyArt back(*knowledge.atlas, knowledge.body->of(View::Back));
    const PrintedPages pages = visitMapPages({paper.value(), verb.isLarge, verb.isGrey}, map, front, back);
    const auto written = writePages(verb.out, pages);
    if (!written)
        return written.error();
    const ReadingGrade grade = gradeOf(readability.value(), map);
    Json out{{"file", verb.out}, {"language", verb.language}, {"pages", pages.pages.size()}};
    out["reading"] = nullptr; // the formula is for English
    if (grade.words > 0)
        out["reading"] = {{"grade", std::round(grade.grade * 10) / 10}, {"limit", readability.value().limit},
            {"words", grade.words}, {"sentences", grade.sentences}, {"longest_sentence", grade.longest},
            {"excepted", grade.excepted}};
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
