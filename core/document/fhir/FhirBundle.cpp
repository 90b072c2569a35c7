#include "core/document/fhir/FhirBundle.h"

#include "core/document/fhir/FhirThemes.h"

#include <algorithm>
#include <cstdlib>

namespace raphe {

namespace {

using fhir::Json;
using fhir::Making;

constexpr int widestZone = 14 * 60; // minutes; FHIR's own bound

std::vector<Json> resourcesOf(Making &making)
{
    fhir::addPeople(making);
    fhir::addComplaints(making);
    fhir::addCautions(making);
    fhir::addAsked(making);
    fhir::addFindings(making);
    fhir::addMeasures(making);
    fhir::addWork(making);
    fhir::addCare(making);
    fhir::addSignatures(making);
    return making.takeResources();
}

bool hasAmendedStatus(const Json &resource)
{
    const auto type = resource.at("resourceType").get<std::string>();
    return type == "Observation" || type == "QuestionnaireResponse";
}

// Of a signed visit that was amended: what is not as it was first signed says so.
void markAmended(std::vector<Json> &resources, const FhirSource &source)
{
    std::map<std::string, Json> before;
    if (source.asSigned) {
        FhirSource first = source;
        first.visit = *source.asSigned;
        Making making(first);
        for (Json &resource : resourcesOf(making))
            before.emplace(resource.at("id").get<std::string>(), std::move(resource));
    }
    for (Json &resource : resources) {
        if (!hasAmendedStatus(resource))
            continue;
        const auto was = before.find(resource.at("id").get<std::string>());
        if (was == before.end() || was->second != resource)
            resource["status"] = "amended";
    }
}

bool isAmended(const FhirSource &source)
{
    return source.state == FhirState::Signed
        && std::any_of(
            source.entries.begin(), source.entries.end(), [](const FhirEntry &entry) { return entry.act == FhirAct::Amended; });
}

} // namespace

Result<std::string> fhirBundle(const FhirSource &source)
{
    if (source.utcOffset && std::abs(*source.utcOffset) > widestZone)
        return Error{ErrorCode::OutOfRange, "zone", std::to_string(*source.utcOffset) + " minutes, allowed: -840 to 840"};
    Making making(source);
    std::vector<Json> resources = resourcesOf(making);
    if (isAmended(source))
        markAmended(resources, source);
    const std::string id = making.idOf("bundle");
    Json out{{"resourceType", "Bundle"}, {"id", id}};
    out["identifier"] = Json{{"system", "urn:ietf:rfc:3986"}, {"value", "urn:uuid:" + id}};
    out["type"] = "collection";
    out["entry"] = Json::array();
    for (Json &resource : resources) {
        Json entry = Json::object();
        entry["fullUrl"] = "urn:uuid:" + resource.at("id").get<std::string>();
        entry["resource"] = std::move(resource);
        out["entry"].push_back(std::move(entry));
    }
    return out.dump(1, ' ', false, Json::error_handler_t::replace) + "\n";
}

} // namespace raphe
