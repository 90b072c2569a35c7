// The texts that patients read: read strictly, and all of those for the form stand on it.
#include "core/document/ArrivalForm.h"
#include "tests/support/Content.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

namespace raphe::test {

namespace {

const PatientTexts &texts()
{
    static const Result<PatientTexts> read = readEmbeddedPatientTexts();
    return read.value();
}

Result<PatientTexts> readOne(const nlohmann::json &text)
{
    return readPatientTexts(
        nlohmann::json{{"format", "raphe-patient-texts"}, {"version", 1}, {"texts", nlohmann::json::array({text})}}.dump());
}

void expectRefused(const nlohmann::json &text, ErrorCode code, const std::string &place)
{
    const auto read = readOne(text);
    ASSERT_FALSE(read.ok()) << text;
    EXPECT_EQ(read.error().code, code) << inWords(read.error());
    EXPECT_EQ(read.error().place, "intake/patient-texts.json#" + place) << inWords(read.error());
}

std::string everythingOn(const ArrivalForm &form)
{
    std::string out;
    const auto add = [&](const std::string &text) { out += text + "\n"; };
    for (const std::string &text : {form.title, form.nameLabel, form.pageText, form.frontTitle, form.frontWords, form.backTitle,
             form.backWords, form.left, form.right, form.leftLetter, form.rightLetter})
        add(text);
    for (const FormSection &section : form.sections) {
        add(section.title);
        for (const FormItem &item : section.items) {
            add(item.text);
            for (const auto &list : {item.options, item.rows})
                for (const std::string &text : list)
                    add(text);
        }
    }
    return out;
}

} // namespace

TEST(PatientTexts, AreReadStrictly)
{
    const nlohmann::json good{{"id", "a-title"}, {"text", "You marked your {place}."}, {"where", "both"}};
    const auto read = readOne(good);
    ASSERT_TRUE(read.ok()) << inWords(read.error());
    EXPECT_EQ(read.value().at("a-title"), "You marked your {place}.");
    const auto with = [&](const char *field, const nlohmann::json &value) {
        nlohmann::json changed = good;
        changed[field] = value;
        return changed;
    };
    expectRefused(with("colour", "red"), ErrorCode::UnknownField, "/texts/0");
    expectRefused(with("id", "A Title"), ErrorCode::BadId, "/texts/0/id");
    expectRefused(with("text", ""), ErrorCode::MissingField, "/texts/0");
    expectRefused(with("text", "Call {number}."), ErrorCode::UnknownWord, "/texts/0/text");
    expectRefused(with("where", "nowhere"), ErrorCode::UnknownWord, "/texts/0/where");
    const auto twice = readPatientTexts(
        nlohmann::json{{"format", "raphe-patient-texts"}, {"version", 1}, {"texts", nlohmann::json::array({good, good})}}.dump());
    ASSERT_FALSE(twice.ok());
    EXPECT_EQ(twice.error().code, ErrorCode::Duplicate);
    EXPECT_FALSE(readPatientTexts("").ok());
}

TEST(PatientTexts, AreFilledIn)
{
    EXPECT_EQ(filled("page {page} of {pages}, {page}", {{"page", "{page}"}, {"pages", "6"}}), "page {page} of 6, {page}");
}

TEST(ArrivalForm, ShowsEveryTextThatIsForItAndNoOther)
{
    const auto form = arrivalForm(texts());
    ASSERT_TRUE(form.ok()) << inWords(form.error());
    const std::string all = everythingOn(form.value());
    for (const PatientText &text : texts().texts) {
        PatientTexts others = texts();
        std::erase_if(others.texts, [&](const PatientText &other) { return other.id == text.id; });
        EXPECT_EQ(arrivalForm(others).ok(), text.use == TextUse::PatientMode) << text.id << " is not where its content says";
        EXPECT_TRUE(text.use == TextUse::PatientMode || all.find(text.text) != std::string::npos) << text.id;
    }
}

TEST(ArrivalForm, SaysFirstWhatCannotWait)
{
    const auto form = arrivalForm(texts());
    ASSERT_TRUE(form.ok());
    EXPECT_TRUE(form.value().sections.at(0).isUrgent);
    EXPECT_TRUE(form.value().sections.at(1).isUrgent);
    EXPECT_EQ(form.value().sections.at(0).title, texts().at("urgent-title"));
    EXPECT_EQ(form.value().sections.at(0).items.at(0).text, "Call your emergency number now. Do not fill in the rest.");
}

} // namespace raphe::test
