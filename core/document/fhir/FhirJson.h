// Pieces of FHIR JSON. Texts are cleaned here once: FHIR knows no control characters but tab and line breaks, no white space but
// these and the space, and no empty text. Plain functions; nothing fails.
#pragma once

#include "core/anatomy/Place.h"

#include <nlohmann/json.hpp>

#include <string>
#include <string_view>

namespace raphe::fhir {

using Json = nlohmann::ordered_json;

/// As FHIR may hold it; ill-formed UTF-8 becomes U+FFFD, white space at the ends goes.
[[nodiscard]] std::string cleaned(const std::string &text);
/// An empty text, also once it is cleaned, is left out.
void put(Json &json, const char *name, const std::string &text);

/// 'urn:raphe:fhir:side': a list of codes, or an extension, of our own.
[[nodiscard]] std::string own(std::string_view name);
/// 'sustained pressure' of 'sustained-pressure'.
[[nodiscard]] std::string spelt(std::string_view id);

/// White space within the code becomes single spaces. An empty code or display is left out.
[[nodiscard]] Json coding(const std::string &system, const std::string &code, const std::string &display);
/// Of our own; without a display the code is spelt out.
[[nodiscard]] Json ownCoding(std::string_view list, std::string_view code, const std::string &display = {});
/// Something coded (CodeableConcept), with one coding.
[[nodiscard]] Json coded(Json coding, const std::string &text = {});
[[nodiscard]] Json ownCoded(std::string_view list, std::string_view code, const std::string &display = {});
[[nodiscard]] Json textOnly(const std::string &text);

/// Adds to an array of that name, which is made where there is none.
void append(Json &json, const char *name, Json value);
[[nodiscard]] Json extension(const std::string &url, const char *valueName, Json value);
/// Adds a note (Annotation); an empty one is left out.
void addNote(Json &json, const std::string &text);
[[nodiscard]] Json referTo(const std::string &id);

} // namespace raphe::fhir
