#include "core/document/ArrivalForm.h"

#include <initializer_list>

namespace raphe {

namespace {

using Kind = FormItem::Kind;
using Ids = std::initializer_list<std::string_view>;

// Inside guarded() only.
class Maker {
public:
    explicit Maker(const PatientTexts &texts) : m_texts(texts) { }

    ArrivalForm make()
    {
        m_form.title = text("welcome-title");
        m_form.nameLabel = text("welcome-form-name");
        m_form.pageText = text("move-page");
        m_form.frontTitle = text("mark-front-title");
        m_form.frontWords = text("mark-front-faces");
        m_form.backTitle = text("mark-back-title");
        m_form.backWords = text("mark-back-faces");
        m_form.left = text("figure-left");
        m_form.right = text("figure-right");
        m_form.leftLetter = text("figure-left-letter");
        m_form.rightLetter = text("figure-right-letter");
        urgent();
        whoAndWhere();
        pain();
        change();
        living();
        health();
        end();
        return std::move(m_form);
    }

private:
    [[nodiscard]] std::string text(std::string_view id) const { return m_texts.at(id); }
    [[nodiscard]] std::vector<std::string> all(Ids ids) const
    {
        std::vector<std::string> out;
        for (const std::string_view id : ids)
            out.push_back(text(id));
        return out;
    }
    // Texts that are read in one go.
    [[nodiscard]] std::string joined(Ids ids) const
    {
        std::string out;
        for (const std::string_view id : ids)
            out += (out.empty() ? "" : " ") + text(id);
        return out;
    }

    FormSection &section(std::string_view title)
    {
        m_form.sections.push_back({text(title), {}});
        return m_form.sections.back();
    }
    void add(FormItem item) { m_form.sections.back().items.push_back(std::move(item)); }
    void words(Ids ids) { add({Kind::Words, joined(ids), {}, {}}); }
    void choices(Ids question, Ids options) { add({Kind::Choices, joined(question), all(options), {}}); }
    void scale(std::string_view question) { add({Kind::Scale, text(question), {}, {}}); }
    void table(Ids options, Ids rows) { add({Kind::Table, {}, all(options), all(rows)}); }
    void lines(std::string_view question, int count) { lines(Ids{question}, count); }
    void lines(Ids question, int count) { add({Kind::Lines, joined(question), {}, {}, count}); }

    void urgent()
    {
        section("urgent-title").isUrgent = true;
        words({"urgent-what-form"});
        add({Kind::Signs, {},
            all({"urgent-chest", "urgent-face", "urgent-speech", "urgent-head", "urgent-head-fever", "urgent-joint",
                "urgent-throb", "urgent-saddle", "urgent-bladder", "urgent-legs", "urgent-fall", "urgent-pregnant"}),
            {}});
        section("today-title").isUrgent = true;
        words({"today-what"});
        add({Kind::Signs, {}, all({"today-calf", "today-joint", "today-head", "today-pregnant", "today-weak"}), {}});
        choices({}, {"urgent-none"});
    }

    void whoAndWhere()
    {
        section("welcome-title");
        words({"welcome-why", "welcome-skip", "welcome-form-how", "welcome-help", "welcome-private", "welcome-limits"});
        for (const std::string_view id : {"welcome-form-name", "welcome-form-born", "welcome-form-date", "welcome-form-reach",
                 "welcome-form-tell", "welcome-form-helper"})
            lines(id, 1);
        section("mark-title").startsPage = true;
        add({Kind::Signs, {},
            {joined({"mark-touch"}), joined({"mark-letters"}), joined({"mark-both-views"}),
                joined({"mark-draw-form", "mark-worst-form"}), joined({"mark-spread"}), joined({"mark-no-touch"})},
            {}});
        add({Kind::Figures, {}, {}, {}});
        lines("side-form-write", 1);
    }

    void pain()
    {
        section("quality-title");
        choices({"quality-how"},
            {"quality-aches", "quality-burns", "quality-shoots", "quality-tingles", "quality-numb", "quality-stiff",
                "quality-throbs", "quality-sharp", "quality-pulls", "quality-tight", "quality-weak", "quality-catches",
                "quality-gives-way", "quality-touch", "quality-swollen"});
        lines("quality-own", 1);
        section("strength-title");
        words({"strength-how", "strength-zero", "strength-ten"});
        for (const std::string_view id : {"strength-now", "strength-worst", "strength-best"})
            scale(id);
        section("since-title");
        choices({}, {"since-today", "since-days", "since-weeks", "since-months", "since-years"});
        lines("since-date", 1);
        choices({"since-how"}, {"since-sudden", "since-slow", "since-injury", "since-unknown"});
        lines("since-trend", 1);
        lines("since-care", 1);
    }

    void change()
    {
        section("change-title");
        table({"change-worse", "change-better"},
            {"change-sitting", "change-standing", "change-walking", "change-lying", "change-bending", "change-lifting",
                "change-turning", "change-reaching", "change-stairs", "change-rising", "change-resting", "change-moving",
                "change-cough", "change-heat", "change-cold", "change-stress"});
        lines("change-own", 1);
        choices({"settle-how-much"}, {"settle-little", "settle-some", "settle-lots"});
        choices({"settle-title"}, {"settle-minutes", "settle-hours", "settle-days"});
        section("day-title");
        table({"day-none", "day-less", "day-same", "day-more"}, {"day-waking", "day-noon", "day-evening", "day-night"});
        lines("day-stiff", 1);
        lines("day-wakes", 1);
    }

    void living()
    {
        section("hard-title");
        words({"hard-how", "hard-like", "hard-number", "hard-zero", "hard-ten"});
        for (const std::string_view id : {"hard-first", "hard-second", "hard-third"}) {
            lines(id, 1);
            add({Kind::Scale, {}, {}, {}});
        }
        section("goal-title");
        lines("goal-own", 2);
        lines("goal-fear", 1);
        lines("goal-not", 1);
        section("medicine-title");
        words({"medicine-all", "medicine-bring", "medicine-keep"});
        lines(Ids{}, 3);
        lines({"surgery-title", "surgery-what"}, 2);
        lines("allergy-title", 2);
        lines("health-doctor", 1);
    }

    void health()
    {
        section("health-title");
        words({"health-why"});
        table({"health-yes", "health-no", "health-unsure"},
            {"medicine-anticoagulant", "medicine-antiplatelet", "medicine-steroids", "health-bleeding-disorder",
                "health-osteoporosis", "health-cancer", "health-clot", "health-diabetes", "health-pressure", "health-heart",
                "health-numb", "health-skin", "health-wound", "health-veins", "health-lymph", "health-injection", "health-joints",
                "health-fused", "implant-title", "health-reaction", "pregnancy-title", "pregnancy-birth"});
        lines("health-which", 2);
        lines("pregnancy-week", 1);
        lines("health-other", 1);
    }

    void end()
    {
        section("end-thanks");
        words({"end-form-bring", "end-form-worse"});
        lines("end-form-sign", 1);
    }

    const PatientTexts &m_texts;
    ArrivalForm m_form;
};

} // namespace

Result<ArrivalForm> arrivalForm(const PatientTexts &texts)
{
    return guarded([&] { return Maker(texts).make(); });
}

} // namespace raphe
