#include "core/store/Retention.h"

#include "core/base/JsonReader.h"
#include "core/record/Visit.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <chrono>
#include <cstdio>
#include <optional>
#include <tuple>

namespace raphe {

namespace {

using Day = std::chrono::year_month_day;

std::optional<Day> dayOf(const std::string &iso)
{
    if (!isIsoDate(iso))
        return std::nullopt;
    return Day(std::chrono::year(std::stoi(iso.substr(0, 4))),
        std::chrono::month(static_cast<unsigned>(std::stoi(iso.substr(5, 2)))),
        std::chrono::day(static_cast<unsigned>(std::stoi(iso.substr(8, 2)))));
}

std::string isoOf(const Day &day)
{
    std::array<char, 32> text{};
    std::snprintf(text.data(), text.size(), "%04d-%02u-%02u", static_cast<int>(day.year()), static_cast<unsigned>(day.month()),
        static_cast<unsigned>(day.day()));
    return text.data();
}

// The same day so many years later; 1 March where there is no 29 February.
Day yearsAfter(const Day &day, int years)
{
    const Day later = day + std::chrono::years(years);
    return later.ok() ? later : Day(later.year(), std::chrono::March, std::chrono::day(1));
}

void expectRule(const RetentionRule &rule)
{
    for (const auto &[name, value] : {std::pair("years", rule.years), std::pair("childUntil", rule.childUntil),
             std::pair("childOf17Until", rule.childOf17Until)})
        if (value < 0 || value > RetentionRule::longest)
            throw Error{
                ErrorCode::OutOfRange, name, std::to_string(value) + ", allowed: 0 to " + std::to_string(RetentionRule::longest)};
}

// What is known of the birth date; nothing when it is missing or after the last visit.
std::optional<Day> bornBefore(const KeptRecord &record, const Day &last)
{
    const std::optional<Day> born = dayOf(record.born);
    return born && *born <= last ? born : std::nullopt;
}

Day dueFrom(const Day &last, const std::optional<Day> &born, const RetentionRule &rule)
{
    const Day from = yearsAfter(last, rule.years);
    if (!born || last >= yearsAfter(*born, adultAge))
        return from;
    const bool was17 = last >= yearsAfter(*born, adultAge - 1);
    return std::max(from, yearsAfter(*born, was17 ? rule.childOf17Until : rule.childUntil));
}

// Empty when the document says none.
std::string dateIn(const std::string &document)
{
    const auto json = nlohmann::json::parse(document, nullptr, false);
    const bool given = json.is_object() && json.contains("date") && json["date"].is_string();
    return given ? json["date"].get<std::string>() : std::string();
}

} // namespace

Result<RetentionReview> reviewRetention(std::span<const KeptRecord> records, const RetentionRule &rule, const std::string &today)
{
    return guarded([&] {
        expectRule(rule);
        const std::optional<Day> now = dayOf(today);
        if (!now)
            throw Error{ErrorCode::OutOfRange, "today", today + std::string(dateAllowed)};
        const bool keepsChildren = rule.childUntil > 0 || rule.childOf17Until > 0;
        RetentionReview out;
        if (rule.years == 0)
            return out;
        for (const KeptRecord &record : records) {
            if (record.visits == 0)
                continue;
            const std::optional<Day> last = dayOf(record.lastVisit);
            if (!last) {
                out.unclear.push_back(record);
                continue;
            }
            const std::optional<Day> born = bornBefore(record, *last);
            if (const Day from = dueFrom(*last, born, rule); from <= *now)
                out.due.push_back({record, isoOf(from), keepsChildren && !born});
        }
        std::sort(out.due.begin(), out.due.end(), [](const DueRecord &a, const DueRecord &b) {
            return std::tie(a.from, a.record.lastVisit, a.record.patient)
                < std::tie(b.from, b.record.lastVisit, b.record.patient);
        });
        std::sort(out.unclear.begin(), out.unclear.end(),
            [](const KeptRecord &a, const KeptRecord &b) { return a.patient < b.patient; });
        return out;
    });
}

Result<KeptRecord> readKeptRecord(const Practice &practice, std::int64_t patient)
{
    return guarded([&] {
        const PatientRecord record = valueOrThrow(practice.patient(patient));
        KeptRecord kept{patient, record.name, record.born, 0, {}};
        for (const std::string &born : record.otherBorn)
            kept.born = std::max(kept.born, born);
        bool isClear = true;
        for (const StoredVisit &visit : valueOrThrow(practice.visits(patient))) {
            if (visit.state == VisitState::InError)
                continue;
            ++kept.visits;
            const std::string date = dateIn(visit.document);
            isClear = isClear && isIsoDate(date);
            kept.lastVisit = std::max(kept.lastVisit, date);
        }
        if (!isClear)
            kept.lastVisit.clear();
        return kept;
    });
}

Result<std::vector<KeptRecord>> readKeptRecords(const Practice &practice)
{
    return guarded([&] {
        std::vector<KeptRecord> out;
        for (const PatientCard &card : valueOrThrow(practice.patients()))
            out.push_back(valueOrThrow(readKeptRecord(practice, card.id)));
        return out;
    });
}

} // namespace raphe
