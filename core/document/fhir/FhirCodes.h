// What our own words are called in a FHIR bundle, and which codes of others say the same: content of resources/fhir-codes.json,
// read strictly. Plain values, immutable after reading; thread-safe.
#pragma once

#include "core/anatomy/Structure.h"
#include "core/base/Result.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace raphe {

/// The name of a list of codes, or of an extension, that others defined.
struct FhirSystem {
    std::string id;
    std::string uri;
    std::string source;
    Reading read{};
};

/// A code of LOINC.
struct LoincCode {
    std::string code;
    std::string display;
    std::string source;
    Reading read{};
};

/// Something that is observed, by a code of our own.
struct FhirCode {
    std::string id;
    std::string display; // with its scale
    std::string category; // of HL7's observation categories; empty: it stands inside an observation only
    std::optional<LoincCode> loinc; // says the same
};

/// A vital sign among the tests.
struct FhirVital {
    std::string test; // id
    std::string loinc;
    std::string display;
    std::string unit; // in UCUM
    std::vector<LoincCode> fields; // of a sign that is several numbers; else empty. Without sources of their own
    std::string source;
    Reading read{};
};

/// A list of codes that a practitioner may name with an impression, by how its name begins.
struct ImpressionList {
    std::string begins;
    std::string uri;
    std::string source;
    Reading read{};
};

struct FhirCodes {
    std::vector<FhirSystem> systems;
    std::vector<FhirCode> codes;
    std::vector<FhirVital> vitals;
    LoincCode consent; // category of every consent
    std::vector<std::string> bodyParts; // groups of movements and tests that name a part of the body
    std::vector<ImpressionList> impressionLists;

    /// Of those that the bundle needs, all of which are there after reading.
    [[nodiscard]] const std::string &uri(std::string_view id) const;
    [[nodiscard]] const FhirCode &code(std::string_view id) const;
    // nullptr when there is no such thing.
    [[nodiscard]] const FhirVital *findVital(std::string_view test) const;
    /// The list with the longest name that `list` begins with, in whatever case: 'ICD-10-GM 2026' is of 'ICD-10-GM'.
    [[nodiscard]] const ImpressionList *listOf(const std::string &list) const;
};

/// Unknown fields and words, duplicates, texts that are missing, and a system or code that the bundle needs and that is not there
/// are errors with file and JSON pointer.
[[nodiscard]] Result<FhirCodes> readFhirCodes(std::string_view text, const std::string &file);
/// Built into the program.
[[nodiscard]] Result<FhirCodes> readEmbeddedFhirCodes();

} // namespace raphe
