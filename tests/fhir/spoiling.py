"""Ways to break a good bundle, one at a time, and who must see it: the schema, the checks of a bundle, or those against its visit."""

from bundle_checks import LATERALITY, PANEL, SIDE, STRUCTURE, own_code, resources

NOBODY = "urn:uuid:00000000-0000-5000-8000-000000000000"
FHIR_SIDE = "http://terminology.hl7.org/CodeSystem/v2-0495"


def first(bundle, kind, fits=lambda r: True):
    return next(r for r in resources(bundle, kind) if fits(r))


def observed(bundle, code, fits=lambda r: True):
    return first(bundle, "Observation", lambda r: own_code(r["code"]) == code and fits(r))


def drop(bundle, resource):
    bundle["entry"] = [e for e in bundle["entry"] if e["resource"] is not resource]


def laterality(site):
    return next(e for e in site["extension"] if e["url"] == LATERALITY)["valueCodeableConcept"]


def turn(concept):
    """Left becomes right, in every word of the concept."""
    other = {"left": "right", "right": "left", "L": "R", "R": "L", "Left": "Right", "Right": "Left"}
    for coding in concept["coding"]:
        coding["code"] = other[coding["code"]]
        coding["display"] = other[coding["display"]]
    concept["text"] = other[concept["text"]]


def turn_everywhere(bundle):
    """A bundle of the mirrored visit: right in itself, wrong beside the visit."""
    site = observed(bundle, "tenderness", lambda r: own_code(laterality(r["bodySite"]), SIDE) == "right")["bodySite"]
    link = next(e["valueReference"]["reference"] for e in site["extension"] if "valueReference" in e)
    structure = next(e["resource"] for e in bundle["entry"] if e["fullUrl"] == link)
    words = "left" + site["text"].removeprefix("right")
    turn(next(q for q in structure["locationQualifier"] if own_code(q, SIDE)))
    structure["description"] = words
    for resource in resources(bundle):
        sites = resource.get("bodySite", [])
        for other in sites if isinstance(sites, list) else [sites]:
            if any(e.get("valueReference", {}).get("reference") == link for e in other.get("extension", [])):
                turn(laterality(other))
                other["text"] = words


def right(bundle):
    """A body site on the right."""
    return observed(bundle, PANEL, lambda r: own_code(laterality(r["bodySite"]), SIDE) == "right")["bodySite"]


def set_in(container, key, value):
    container[key] = value


def both_sides(concept):
    concept["coding"] += [{"system": SIDE, "code": "left", "display": "left"}, {"system": FHIR_SIDE, "code": "L", "display": "Left"}]

def with_part(bundle):
    return first(bundle, "Observation", lambda r: "component" in r)


def with_number(bundle, unit=None):
    return first(bundle, "Observation", lambda r: unit in (None, r.get("valueQuantity", {}).get("code")) and "valueQuantity" in r)


def with_members(bundle):
    return first(bundle, "Observation", lambda r: "hasMember" in r)


def timed(bundle):
    return first(bundle, "Procedure", lambda r: "performedPeriod" in r)["performedPeriod"]


def tested(bundle, test):
    return first(bundle, "Observation", lambda r: own_code(r["code"], "urn:raphe:fhir:test") == test)


def sided_answer(bundle):
    """The coding of a place among the answers."""
    items = [i for r in resources(bundle, "QuestionnaireResponse") for i in r["item"]]
    values = [v for i in items for part in i["answer"][0].get("item", []) for v in part["answer"]]
    return next(v["valueCoding"] for v in values if v.get("valueCoding", {}).get("system") == STRUCTURE)


def second_side(bundle):
    left = {"coding": [{"system": SIDE, "code": "left", "display": "left"}, {"system": FHIR_SIDE, "code": "L", "display": "Left"}], "text": "left"}
    right(bundle)["extension"].append({"url": LATERALITY, "valueCodeableConcept": left})


def without_extension(site, is_of_side):
    site["extension"] = [e for e in site["extension"] if (e["url"] == LATERALITY) != is_of_side]


def turned_structure(bundle):
    turn(next(q for r in resources(bundle, "BodyStructure") for q in r["locationQualifier"] if own_code(q, SIDE) == "right"))


def structure_without_side(bundle):
    structure = first(bundle, "BodyStructure")
    structure["locationQualifier"] = [q for q in structure["locationQualifier"] if not own_code(q, SIDE)]


def second_owner(bundle):
    other = observed(bundle, PANEL, lambda r: "hasMember" not in r)
    other["hasMember"] = [with_members(bundle)["hasMember"][0]]


def moved_member(bundle):
    member = observed(bundle, "tenderness")
    member["bodySite"] = observed(bundle, "tenderness", lambda r: r["bodySite"] != member["bodySite"])["bodySite"]


def follows_another(bundle):
    links = [e for r in resources(bundle, "Observation") for e in r.get("extension", []) if "sequelTo" in e["url"]]
    links[0]["valueReference"]["reference"] = f"urn:uuid:{observed(bundle, 'pain-worst')['id']}"


def tender_instead_of_clear(bundle):
    clear = observed(bundle, "tenderness", lambda r: r.get("valueCodeableConcept", {}).get("coding", [{}])[0].get("code") == "clear")
    del clear["valueCodeableConcept"]
    clear["valueInteger"] = 0


def unknown_instead_of_unable(bundle):
    reason = {"coding": [{"system": "http://terminology.hl7.org/CodeSystem/data-absent-reason", "code": "unknown"}]}
    observed(bundle, PANEL, lambda r: "dataAbsentReason" in r)["dataAbsentReason"] = reason


def second_patient(bundle):
    ident = NOBODY.removeprefix("urn:uuid:")
    bundle["entry"].append({"fullUrl": NOBODY, "resource": {"resourceType": "Patient", "id": ident}})


def worded_pain(bundle):
    pain = observed(bundle, "pain-now")
    pain["valueString"] = str(pain.pop("valueInteger"))


def suction(bundle):
    return next(e for r in resources(bundle, "Procedure") for e in r["extension"] if e["url"].endswith("suction"))["valueQuantity"]


def asked_too(bundle, sign):
    first(bundle, "QuestionnaireResponse")["item"].append({"linkId": sign, "answer": [{"valueBoolean": True}]})


WAYS = [
    # The schema's.
    ("an unknown field", "schema", lambda b: set_in(first(b, "Observation"), "colour", "red")),
    ("an observation without its code", "schema", lambda b: first(b, "Observation").pop("code")),
    ("a place in a component", "schema", lambda b: set_in(with_part(b)["component"][0], "bodySite", {"text": "x"})),
    ("two places of an observation", "schema", lambda b: set_in(observed(b, "tenderness"), "bodySite", [{"text": "a"}, {"text": "b"}])),
    ("a number as text", "schema", lambda b: set_in(observed(b, "tenderness", lambda r: "valueInteger" in r), "valueInteger", "3")),
    ("a status that is none", "schema", lambda b: set_in(first(b, "Observation"), "status", "done")),
    ("a consent without a scope", "schema", lambda b: first(b, "Consent").pop("scope")),
    ("a consent without a category", "schema", lambda b: first(b, "Consent").pop("category")),
    ("a goal without words", "schema", lambda b: first(b, "Goal").pop("description")),
    ("an impression without its patient", "schema", lambda b: first(b, "ClinicalImpression").pop("subject")),
    ("a signature about nothing", "schema", lambda b: first(b, "Provenance").pop("target")),
    ("a visit without its class", "schema", lambda b: first(b, "Encounter").pop("class")),
    ("a day that is none by its form", "schema", lambda b: set_in(first(b, "Encounter")["period"], "start", "19.3.2024")),
    ("a time without a zone", "schema", lambda b: set_in(timed(b), "start", "2024-03-19T09:20:00")),
    ("a list where one is asked", "schema", lambda b: set_in(first(b, "Procedure"), "subject", [])),
    ("a kind that is none", "schema", lambda b: set_in(first(b, "Flag"), "resourceType", "Banner")),
    ("an empty text", "schema", lambda b: set_in(first(b, "Condition")["code"], "text", "")),
    # What the schema lets pass.
    ("an observation without its status", "own", lambda b: first(b, "Observation").pop("status")),
    ("work without its status", "own", lambda b: first(b, "Procedure").pop("status")),
    ("work with a status of another list", "own", lambda b: set_in(first(b, "Procedure"), "status", "finished")),
    ("a plan without its intent", "own", lambda b: first(b, "CarePlan").pop("intent")),
    ("a plan with a status of another list", "own", lambda b: set_in(first(b, "CarePlan"), "status", "final")),
    ("an impression with a status of another list", "own", lambda b: set_in(first(b, "ClinicalImpression"), "status", "final")),
    ("answers without their status", "own", lambda b: first(b, "QuestionnaireResponse").pop("status")),
    ("a consent without its status", "own", lambda b: first(b, "Consent").pop("status")),
    ("a goal without its status", "own", lambda b: first(b, "Goal").pop("lifecycleStatus")),
    ("an event that may not have been", "own", lambda b: first(b, "AdverseEvent").pop("actuality")),
    ("a consent without its policy", "own", lambda b: first(b, "Consent").pop("policyRule")),
    ("a complaint without its status", "own", lambda b: first(b, "Condition").pop("clinicalStatus")),
    ("a complaint that is a diagnosis of no list", "own", lambda b: set_in(first(b, "Condition")["verificationStatus"]["coding"][0], "code", "sure")),
    ("a signature without its time", "own", lambda b: first(b, "Provenance").pop("recorded")),
    ("a signature on a part only", "own", lambda b: first(b, "Provenance")["target"].pop()),
    ("a reference that leads nowhere", "own", lambda b: set_in(first(b, "Observation")["subject"], "reference", NOBODY)),
    ("a reference to the wrong kind", "own", lambda b: set_in(first(b, "Observation")["subject"], "reference", f"urn:uuid:{first(b, 'Encounter')['id']}")),
    ("a member that is not there", "own", lambda b: drop(b, observed(b, "restriction"))),
    ("an id that is there twice", "own", lambda b: set_in(observed(b, "restriction"), "id", observed(b, "tenderness")["id"])),
    ("an address that is not the id", "own", lambda b: set_in(b["entry"][3], "fullUrl", NOBODY)),
    ("an id of chance", "own", lambda b: set_in(b["entry"][3]["resource"], "id", "not-made-of-a-name")),
    ("no day of that number", "own", lambda b: set_in(first(b, "Encounter")["period"], "start", "2024-02-30")),
    ("an end before the beginning", "own", lambda b: set_in(timed(b), "end", "2024-03-18")),
    ("a code without its system", "own", lambda b: first(b, "Observation")["code"]["coding"][0].pop("system")),
    ("a system without a code", "own", lambda b: first(b, "Observation")["code"]["coding"][0].pop("code")),
    ("the same code twice", "own", lambda b: first(b, "Observation")["code"]["coding"].append(dict(first(b, "Observation")["code"]["coding"][0]))),
    ("the answer code that says '2 or more'", "own", lambda b: set_in(observed(b, "pain-worst")["code"]["coding"][0], "code", "LA6113-0")),
    ("a pain that is no number", "own", worded_pain),
    ("a pain of eleven", "own", lambda b: set_in(observed(b, "pain-now"), "valueInteger", 11)),
    ("half a grade", "own", lambda b: set_in(observed(b, "tenderness", lambda r: "valueInteger" in r), "valueInteger", 2.5)),
    ("a number beyond all bounds", "own", lambda b: set_in(with_number(b)["valueQuantity"], "value", float("inf"))),
    ("a quantity without a unit", "own", lambda b: with_number(b)["valueQuantity"].pop("unit")),
    ("a unit of no list", "own", lambda b: set_in(with_number(b)["valueQuantity"], "code", "degrees")),
    ("a value and a reason why there is none", "own", lambda b: set_in(observed(b, "tenderness"), "dataAbsentReason", {"text": "tired"})),
    ("two values", "own", lambda b: set_in(observed(b, "tenderness"), "valueString", "sore")),
    ("no value at all", "own", lambda b: observed(b, "tenderness", lambda r: "valueInteger" in r).pop("valueInteger")),
    ("a component without a value", "own", lambda b: with_part(b)["component"].append({"code": {"text": "x"}})),
    ("a place without its side", "own", lambda b: without_extension(right(b), True)),
    ("left and right at once", "own", lambda b: both_sides(laterality(right(b)))),
    ("two sides in two extensions", "own", second_side),
    ("a side that the words contradict", "own", lambda b: turn(laterality(right(b)))),
    ("words that the side contradicts", "own", lambda b: set_in(right(b), "text", "left" + right(b)["text"].removeprefix("right"))),
    ("HL7's letter of the other side", "own", lambda b: set_in(laterality(right(b))["coding"][0], "code", "L")),
    ("a BodyStructure of the other side", "own", turned_structure),
    ("a BodyStructure without its side", "own", structure_without_side),
    ("a place without its BodyStructure", "own", lambda b: without_extension(right(b), False)),
    ("a finding without its place", "own", lambda b: observed(b, "tenderness").pop("bodySite")),
    ("a sided answer without its side", "own", lambda b: sided_answer(b).pop("extension")),
    ("a finding in no panel", "own", lambda b: with_members(b)["hasMember"].pop()),
    ("a finding in two panels", "own", second_owner),
    ("a member at another place", "own", moved_member),
    ("a result that follows another one", "own", follows_another),
    ("an item without its link", "own", lambda b: first(b, "QuestionnaireResponse")["item"][0].pop("linkId")),
    ("an extension without a value", "own", lambda b: first(b, "Procedure")["extension"][0].pop("valueReference")),
    ("a control character", "own", lambda b: set_in(first(b, "Condition")["code"], "text", "ache\u0001")),
    ("two patients", "own", second_patient),
    ("a bundle of another type", "own", lambda b: set_in(b, "type", "searchset")),
    # Right in itself, wrong beside the visit.
    ("one place mirrored throughout", "visit", turn_everywhere),
    ("another grade", "visit", lambda b: set_in(observed(b, "tenderness", lambda r: r.get("valueInteger") == 3), "valueInteger", 2)),
    ("a clear place that is tender", "visit", tender_instead_of_clear),
    ("a finding less", "visit", lambda b: drop(b, observed(b, "hurts-here"))),
    ("'could not' is gone", "visit", unknown_instead_of_unable),
    ("a measure in another unit", "visit", lambda b: set_in(with_number(b, "deg")["valueQuantity"], "code", "mm")),
    ("a measure with another value", "visit", lambda b: set_in(with_number(b, "deg")["valueQuantity"], "value", 44)),
    ("a test with another answer", "visit", lambda b: set_in(tested(b, "ankle-clonus"), "valueBoolean", True)),
    ("a blood pressure upside down", "visit", lambda b: tested(b, "blood-pressure")["component"].reverse()),
    ("after told as before", "visit", lambda b: first(b, "Observation", lambda r: len(r["category"]) > 1 and "valueQuantity" in r)["category"].pop()),
    ("work left out told as done", "visit", lambda b: set_in(first(b, "Procedure", lambda r: r["status"] == "not-done"), "status", "completed")),
    ("more suction", "visit", lambda b: set_in(suction(b), "value", 40)),
    ("a refusal told as a yes", "visit", lambda b: set_in(first(b, "Consent", lambda r: r["status"] == "rejected"), "status", "active")),
    ("an answer turned round", "visit", lambda b: set_in(first(b, "QuestionnaireResponse")["item"][0]["answer"][0], "valueBoolean", False)),
    ("a question that was asked alone", "visit", lambda b: asked_too(b, "unsafe-at-home")),
    ("who was told of what was said alone", "visit", lambda b: set_in(first(b, "Flag")["code"], "text", "call the helpers of Quarry Street")),
    ("why, of what was said alone", "visit", lambda b: set_in(first(b, "Condition")["code"], "text", "whispered: afraid of going home")),
    ("an answer that was moved to another patient", "visit", lambda b: asked_too(b, "walking-calf-pain")),
    ("a goal less", "visit", lambda b: drop(b, first(b, "Goal"))),
    ("another impression", "visit", lambda b: set_in(first(b, "ClinicalImpression"), "summary", "a slipped disc")),
    ("a dismissed row", "visit", lambda b: set_in(first(b, "Flag")["code"], "text", "said in passing")),
]
