// A bundle while it is made: its entries, the names that its ids are made of, and what nearly all resources say alike - of whom,
// when, where on the body, and in which state. Each theme (FhirThemes.h) adds its resources. One thread.
#pragma once

#include "core/document/fhir/FhirJson.h"
#include "core/document/fhir/FhirSource.h"

#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace raphe::fhir {

class Making {
public:
    explicit Making(const FhirSource &source);

    [[nodiscard]] const FhirSource &source() const { return m_source; }
    [[nodiscard]] const Visit &visit() const { return m_source.visit; }
    [[nodiscard]] const FhirCodes &codes() const { return *m_source.codes; }
    [[nodiscard]] const Atlas &atlas() const { return *m_source.atlas; }

    // Entries. The id is UUID version 5 of the name: the same of the same visit each time. A name that is taken already gets a
    // number behind it. All give a Reference.
    Json add(const std::string &name, Json resource);
    /// Of what is there beyond the visit: the people and the practice.
    Json addLasting(const std::string &id, Json resource);
    /// Of what was, or will be, added under that name.
    [[nodiscard]] Json referTo(const std::string &name) const;
    [[nodiscard]] bool has(const std::string &name) const { return m_names.contains(name); }
    [[nodiscard]] std::string idOf(const std::string &name) const;
    [[nodiscard]] std::string lastingId(const std::string &name) const; // within the practice
    /// What the signatures are about: all that was added but what lasts.
    [[nodiscard]] std::vector<Json> targets() const;
    [[nodiscard]] std::vector<Json> takeResources();

    // Who and when.
    [[nodiscard]] const std::string &patientId() const { return m_patient; }
    [[nodiscard]] Json patient() const { return fhir::referTo(m_patient); }
    [[nodiscard]] Json encounter() const { return referTo("encounter"); }
    /// By the name on the visit, or of an author; made where there is none yet. Nothing for an empty name.
    std::optional<Json> practitioner(const std::string &name);
    /// Sets `field` to the practitioner of the visit, if there is one.
    void putPractitioner(Json &json, const char *field);
    /// The day of the visit with this local time HH:MM:SS, as far as both, and the zone, are known; empty: not even the day.
    [[nodiscard]] std::string moment(const std::string &time) const;
    /// The same so many seconds later.
    [[nodiscard]] std::string momentAfter(const std::string &time, int seconds) const;

    // In which state.
    [[nodiscard]] bool isInError() const { return m_source.state == FhirState::InError; }
    [[nodiscard]] bool isSigned() const { return m_source.state == FhirState::Signed; }
    /// `open` while the visit is not signed (or its amendment is not), `done` once it is, and entered-in-error.
    [[nodiscard]] std::string status(const char *open, const char *done) const;

    // Observations.
    /// Status, category, code, subject, encounter; told by the patient or seen by the practitioner. `time`: as moment().
    [[nodiscard]] Json observation(std::string_view code, const std::string &time = {});
    /// The same with a code that FhirCodes does not have.
    [[nodiscard]] Json observation(Json code, std::string_view category, const std::string &time);
    [[nodiscard]] Json codeOf(std::string_view id) const; // with LOINC's where there is one
    [[nodiscard]] Json component(std::string_view code, const char *valueName, Json value) const;
    void setAbsent(Json &observation, const char *reason, const std::string &text) const;

    // Where. Each is coded with the structure and has the side as an extension of its own and in words, and a BodyStructure that
    // says the same with its qualifiers.
    [[nodiscard]] Json site(const Place &place, std::optional<Spot> spot = {}, const std::optional<StructureId> &at = {});
    /// Of a movement or test: the part of the body, and the side where it has one. Nothing where neither can be said.
    [[nodiscard]] std::optional<Json> partSite(const std::string &group, Side side);
    [[nodiscard]] Json sideConcept(Side side) const;
    [[nodiscard]] Json placeCoding(const Place &place) const; // with the side as an extension
    [[nodiscard]] std::string placeWords(
        const Place &place, std::optional<Spot> spot = {}, const std::optional<StructureId> &at = {}) const;

private:
    struct Entry {
        bool isTarget = true;
        Json resource;
    };
    void push(const std::string &id, Json resource, bool isTarget);
    [[nodiscard]] Json structureCoded(const StructureId &id) const;
    Json bodyStructure(const std::string &name, Json location, std::vector<Json> qualifiers, const std::string &words);
    [[nodiscard]] Json siteOf(Json coded, const std::string &words, Side side, const Json &structure) const;

    const FhirSource &m_source;
    std::string m_practice; // ids, as all
    std::string m_patient;
    std::string m_visit;
    std::vector<Entry> m_entries;
    std::vector<Entry> m_structures; // come last
    std::set<std::string> m_names;
    std::set<std::string> m_ids;
};

} // namespace raphe::fhir
