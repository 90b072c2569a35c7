// raphe-batch read: a typed line as findings and measurements, in the form of the visit file, and what it leaves open
// (resources/schema/read.schema.json).
#include "app/batch/Commands.h"
#include "app/words/LineQuestionText.h"

#include "core/anatomy/AtlasReader.h"
#include "core/base/Utf8.h"
#include "core/language/LineReading.h"
#include "core/record/VisitJson.h"

#include <nlohmann/json.hpp>

#include <iostream>

namespace raphe::batch {

namespace {

using Json = nlohmann::ordered_json;

Json askJson(const LineQuestion &question)
{
    Json choices = Json::array();
    for (const LineChoice &choice : question.choices) {
        Json one{{"insert", choice.insert}};
        if (choice.structure)
            one["structure"] = choice.structure->value;
        choices.push_back(std::move(one));
    }
    return {{"about", wordOf(askAboutWords, question.about)}, {"words", question.words}, {"begin", question.begin},
        {"end", question.end}, {"question", questionText(question).toStdString()}, {"choices", std::move(choices)}};
}

Json mistakeJson(const LineMistake &mistake)
{
    return {{"about", wordOf(askAboutWords, mistake.about)}, {"words", mistake.words}, {"begin", mistake.begin},
        {"end", mistake.end}, {"message", mistakeText(mistake).toStdString()}};
}

} // namespace

Result<Done> printReading(const std::string &text, bool &isCheckFailed)
{
    if (!saysSomething(text))
        return Error{ErrorCode::BadArgument, "--text", "there is nothing in it to read"};
    if (!isUtf8(text))
        return Error{ErrorCode::BadArgument, "--text", "it is not UTF-8"};
    const auto atlas = readEmbeddedAtlas();
    if (!atlas)
        return atlas.error();
    auto list = readEmbeddedWordList("en", atlas.value());
    if (!list)
        return list.error();
    const LineWords words(atlas.value(), std::move(list).value());
    const LineReading reading = readLine(text, words);

    Visit visit; // written as a visit, so that the form is the same
    visit.findings = reading.findings();
    visit.measures = reading.measures();
    const Json written = Json::parse(writeVisit(visit));
    Json out{{"findings", written.value("findings", Json::array())}, {"measures", written.value("measures", Json::array())},
        {"ask", Json::array()}, {"mistakes", Json::array()}};
    for (const LineQuestion &question : reading.questions())
        out["ask"].push_back(askJson(question));
    for (const LineMistake &mistake : reading.mistakes())
        out["mistakes"].push_back(mistakeJson(mistake));
    std::cout << out.dump(1) << '\n';
    const auto mistakes = reading.mistakes();
    isCheckFailed = !mistakes.empty();
    if (isCheckFailed)
        return Error{ErrorCode::NotAllowed, "--text", mistakeText(mistakes.front()).toStdString()};
    return Done{};
}

} // namespace raphe::batch
