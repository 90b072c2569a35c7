#include "core/reasoning/Constants.h"

#include "core/base/JsonReader.h"

#include <nlohmann/json.hpp>

#include <QFile>

#include <array>

namespace raphe {

namespace {

constexpr std::array names{
    std::string_view{"grade-verified"},
    std::string_view{"grade-supported"},
    std::string_view{"grade-described"},
    std::string_view{"grade-convention"},
    std::string_view{"link-continues"},
    std::string_view{"link-attaches"},
    std::string_view{"link-crosses"},
    std::string_view{"link-part-of"},
    std::string_view{"link-overlies"},
    std::string_view{"link-supplied"},
    std::string_view{"link-adjoins"},
    std::string_view{"link-synergist"},
    std::string_view{"synergist-together"},
    std::string_view{"link-opposes"},
    std::string_view{"link-other-side"},
    std::string_view{"restart"},
    std::string_view{"strength-tenderness"},
    std::string_view{"strength-restriction"},
    std::string_view{"strength-familiar"},
    std::string_view{"strength-least"},
    std::string_view{"detect-tenderness"},
    std::string_view{"leak-tenderness-1"},
    std::string_view{"leak-tenderness-2"},
    std::string_view{"leak-tenderness-3"},
    std::string_view{"leak-tenderness-4"},
    std::string_view{"detect-familiar"},
    std::string_view{"leak-familiar"},
    std::string_view{"detect-motion"},
    std::string_view{"leak-motion"},
    std::string_view{"weight-motion"},
    std::string_view{"prior-muscle"},
    std::string_view{"prior-joint"},
    std::string_view{"prior-segment"},
    std::string_view{"prior-fascia"},
    std::string_view{"prior-ligament"},
    std::string_view{"prior-tendon"},
    std::string_view{"prior-superficial-fascia"},
    std::string_view{"seat-occasional"},
    std::string_view{"seat-rare"},
    std::string_view{"touch-occasional"},
    std::string_view{"touch-rare"},
    std::string_view{"prior-unexplained"},
    std::string_view{"prior-complaint"},
    std::string_view{"near-over"},
    std::string_view{"near-felt"},
    std::string_view{"near-felt-later"},
    std::string_view{"near-supplied"},
    std::string_view{"near-supplied-skin"},
    std::string_view{"treat-complaint"},
    std::string_view{"treat-tenderness"},
    std::string_view{"treat-restriction"},
    std::string_view{"treat-familiar"},
    std::string_view{"treat-linkage"},
    std::string_view{"treat-joint-first"},
    std::string_view{"treat-superficial-first"},
    std::string_view{"overlap-least"},
};

} // namespace

Result<Constants> readConstants(std::string_view text, const std::string &file)
{
    auto json = parseJson(text, file);
    if (!json)
        return json.error();
    return guarded([&] {
        const JsonReader root(json.value(), file);
        root.expectObject({"format", "version", "constants"});
        if (root.string("format") != "raphe-reasoning" || root.field("version").asNumber() != 1)
            root.fail(ErrorCode::WrongFormat, root.string("format"));
        const JsonReader list = root.field("constants");
        std::map<std::string, double, std::less<>> values;
        for (const auto name : names) {
            const JsonReader at = list.field(name);
            at.expectObject({"value", "reason"});
            if (at.string("reason").empty())
                at.fail(ErrorCode::MissingField, "reason");
            const double value = at.field("value").asNumber();
            if (value < 0 || value > 10)
                at.fail(ErrorCode::OutOfRange, std::to_string(value) + ", allowed: 0 to 10");
            // Chances; at their ends the walk has no solution or no reach, and a single finding would rule places out for good.
            const bool isChance = name == "restart" || name.starts_with("detect-") || name.starts_with("leak-");
            if (isChance && (value <= 0 || value >= 1))
                at.fail(ErrorCode::OutOfRange, std::to_string(value) + ", allowed: above 0 and below 1");
            if ((name.starts_with("prior-") || name.starts_with("seat-")) && value <= 0)
                at.fail(ErrorCode::OutOfRange, std::to_string(value) + ", allowed: above 0");
            if (name.starts_with("touch-") && (value <= 0 || value > 1))
                at.fail(ErrorCode::OutOfRange, std::to_string(value) + ", allowed: above 0, at most 1");
            values.emplace(name, value);
        }
        if (json.value()["constants"].size() != values.size())
            for (const auto &item : json.value()["constants"].items())
                if (!values.contains(item.key()))
                    list.fail(ErrorCode::UnknownField, item.key());
        return Constants(std::move(values));
    });
}

Result<Constants> readEmbeddedConstants()
{
    QFile file(QStringLiteral(":/reasoning.json"));
    if (!file.open(QIODevice::ReadOnly))
        return Error{ErrorCode::CannotRead, "reasoning.json", file.errorString().toStdString()};
    return readConstants(file.readAll().toStdString(), "reasoning.json");
}

} // namespace raphe
