"""What FHIR R4 asks of a bundle and the JSON schema lets pass, and what we ask of our own. Each check yields sentences."""

import datetime
import math
import re

UUID = re.compile(r"^[0-9a-f]{8}-[0-9a-f]{4}-5[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$")  # version 5: made of names
LATERALITY = "urn:raphe:fhir:laterality"
STRUCTURE = "urn:raphe:fhir:structure"
SIDE = "urn:raphe:fhir:side"
OBSERVED = "urn:raphe:fhir:observed"
OFFICIAL_SIDE = "http://terminology.hl7.org/CodeSystem/v2-0495"
OFFICIAL_LETTER = {"left": "L", "right": "R"}
BODY_STRUCTURE_OF = "http://hl7.org/fhir/StructureDefinition/bodySite"
SEQUEL_TO = "http://hl7.org/fhir/StructureDefinition/observation-sequelTo"
UCUM = "http://unitsofmeasure.org"

# The value sets of R4 with a required binding, from the pages of the resources (read from memory of the specification; the
# schema has those of Observation, Encounter, QuestionnaireResponse, Consent, Flag, Goal and AdverseEvent too, but not that one
# must be there).
STATUS = {
    "Observation": ("status", "registered preliminary final amended corrected cancelled entered-in-error unknown"),
    "Encounter": ("status", "planned arrived triaged in-progress onleave finished cancelled entered-in-error unknown"),
    "Procedure": ("status", "preparation in-progress not-done on-hold stopped completed entered-in-error unknown"),
    "CarePlan": ("status", "draft active on-hold revoked completed entered-in-error unknown"),
    "Goal": ("lifecycleStatus", "proposed planned accepted active on-hold completed cancelled entered-in-error rejected"),
    "QuestionnaireResponse": ("status", "in-progress completed amended entered-in-error stopped"),
    "Consent": ("status", "draft proposed active rejected inactive entered-in-error"),
    "ClinicalImpression": ("status", "in-progress completed entered-in-error"),
    "Flag": ("status", "active inactive entered-in-error"),
    "AdverseEvent": ("actuality", "actual potential"),
}
CONDITION = {
    "clinicalStatus": ("http://terminology.hl7.org/CodeSystem/condition-clinical", "active recurrence relapse inactive remission resolved"),
    "verificationStatus": (
        "http://terminology.hl7.org/CodeSystem/condition-ver-status",
        "unconfirmed provisional differential confirmed refuted entered-in-error",
    ),
}
# What must be there in R4 (1..1 or 1..*), beside the statuses.
NEEDED = {
    "Bundle": ["type"],
    "Observation": ["code", "subject", "category"],
    "Encounter": ["class", "subject"],
    "Procedure": ["subject", "code"],
    "Condition": ["subject", "code", "verificationStatus"],
    "BodyStructure": ["patient", "location"],
    "CarePlan": ["subject", "intent"],
    "Goal": ["subject", "description"],
    "QuestionnaireResponse": ["item", "subject"],
    "Consent": ["scope", "category", "patient", "policyRule"],
    "AdverseEvent": ["subject"],
    "Provenance": ["target", "recorded", "agent"],
    "ClinicalImpression": ["subject"],
    "Flag": ["code", "subject"],
    "RelatedPerson": ["patient"],
}
ALLOWED_TYPES = set(NEEDED) - {"Bundle"} | {"Patient", "Practitioner", "Organization"}
# To which kind of resource a field leads; fields not named here may lead to any.
LEADS_TO = {
    "subject": {"Patient"},
    "patient": {"Patient"},
    "encounter": {"Encounter"},
    "hasMember": {"Observation"},
    "derivedFrom": {"Observation"},
    "partOf": {"Procedure"},
    "recorder": {"Practitioner"},
    "author": {"Practitioner"},
    "assessor": {"Practitioner"},
    "asserter": {"Patient"},
    "source": {"Patient"},
    "individual": {"Practitioner"},
    "actor": {"Practitioner"},
    "who": {"Practitioner"},
    "performer": {"Practitioner", "Patient", "RelatedPerson"},
    "expressedBy": {"Practitioner", "Patient"},
    "reasonReference": {"Condition"},
    "addresses": {"Condition"},
    "problem": {"Condition"},
    "goal": {"Goal"},
    "detail": {"Observation"},
    "serviceProvider": {"Organization"},
    "managingOrganization": {"Organization"},
    "assigner": {"Organization"},
}
UNITS = {"deg", "mm", "mm[Hg]", "/min", "Cel", "%", "{score}", "s", "kPa"}
PANEL = "palpation"
QUALITIES = {"tenderness", "restriction", "joint-play", "end-feel", "familiar-pain", "texture", "felt-also-here", "remark"}
DATE_FIELDS = {
    "effectiveDateTime", "date", "start", "end", "birthDate", "recordedDate", "authored", "dateTime", "dueDate", "statusDate", "created",
    "recorded", "occurredDateTime", "valueDate",
}  # fmt: skip
DATE = re.compile(r"^(\d{4})-(\d\d)-(\d\d)$")
TIME = re.compile(r"^(\d{4}-\d\d-\d\d)T(\d\d):(\d\d):(\d\d)(Z|[+-]\d\d:\d\d)$")


def walk(value, path=()):
    """All values within, each with the names that lead to it."""
    yield path, value
    if isinstance(value, dict):
        for name, inner in value.items():
            yield from walk(inner, (*path, name))
    elif isinstance(value, list):
        for index, inner in enumerate(value):
            yield from walk(inner, (*path, index))


def resources(bundle, kind=None):
    return [e["resource"] for e in bundle["entry"] if kind in (None, e["resource"]["resourceType"])]


def said(resource, path=()):
    return f"{resource['resourceType']}/{resource.get('id', '?')[:8]}{''.join('/' + str(p) for p in path)}"


def own_code(concept, system=OBSERVED):
    """The code of that list of ours; nothing when there is none."""
    return next((c["code"] for c in concept.get("coding", []) if c.get("system") == system), None)


def nearest_name(path):
    return next((p for p in reversed(path) if isinstance(p, str)), "")


def check_frame(bundle):
    if bundle.get("type") != "collection":
        yield f"the bundle's type is {bundle.get('type')}"
    seen = set()
    for entry in bundle["entry"]:
        resource = entry["resource"]
        ident = resource.get("id", "")
        if entry.get("fullUrl") != f"urn:uuid:{ident}":
            yield f"{said(resource)}: the address {entry.get('fullUrl')} is not its id"
        if not UUID.match(ident):
            yield f"{said(resource)}: the id is no UUID of version 5"
        if ident in seen:
            yield f"{said(resource)}: the id is there twice"
        seen.add(ident)
        if resource["resourceType"] not in ALLOWED_TYPES:
            yield f"{said(resource)}: not among the kinds that are told"
    if bundle.get("id") in seen:
        yield "the bundle has the id of an entry"
    for kind in ("Patient", "Encounter"):
        if len(resources(bundle, kind)) != 1:
            yield f"{len(resources(bundle, kind))} of {kind}, expected 1"


def check_needed(bundle):
    for resource in [bundle, *resources(bundle)]:
        for field in NEEDED.get(resource["resourceType"], []):
            if not resource.get(field):
                yield f"{said(resource)}: {field} is missing"
    for resource in resources(bundle):
        for path, value in walk(resource):
            if value in ({}, [], "", None):
                yield f"{said(resource, path)}: empty"
            if isinstance(value, str) and (value != value.strip() or any(ord(c) < 32 and c not in "\t\n\r" for c in value)):
                yield f"{said(resource, path)}: white space at an end, or a control character"
            if path and isinstance(path[-1], int) and nearest_name(path) == "note" and not value.get("text"):
                yield f"{said(resource, path)}: a note without text"
            if isinstance(value, dict) and path and isinstance(path[-1], int) and nearest_name(path) == "item" and not value.get("linkId"):
                yield f"{said(resource, path)}: an item without linkId"
            if isinstance(value, dict) and path and isinstance(path[-1], int) and nearest_name(path) in ("extension", "modifierExtension"):
                if not value.get("url") or len([k for k in value if k.startswith("value")]) != 1:
                    yield f"{said(resource, path)}: an extension has one url and one value"


def check_status(bundle):
    for resource in resources(bundle):
        kind = resource["resourceType"]
        if kind in STATUS:
            field, words = STATUS[kind]
            if resource.get(field) not in words.split():
                yield f"{said(resource)}: {field} is {resource.get(field)}"
        if kind == "CarePlan":
            if resource.get("intent") not in ("proposal", "plan", "order", "option"):
                yield f"{said(resource)}: intent is {resource.get('intent')}"
            for activity in resource.get("activity", []):
                if not activity.get("detail", {}).get("status"):
                    yield f"{said(resource)}: an activity without its status"
        if kind == "Condition":
            for field, (system, words) in CONDITION.items():
                codes = [(c.get("system"), c.get("code")) for c in resource.get(field, {}).get("coding", [])]
                if field in resource and not (len(codes) == 1 and codes[0][0] == system and codes[0][1] in words.split()):
                    yield f"{said(resource)}: {field} is {codes}"
            wrong = own_code(resource.get("verificationStatus", {}), CONDITION["verificationStatus"][0]) == "entered-in-error"
            if wrong == ("clinicalStatus" in resource):  # con-5, and con-3 for the rest
                yield f"{said(resource)}: clinicalStatus goes with all but entered-in-error"


def check_references(bundle):
    kinds = {entry.get("fullUrl"): entry["resource"]["resourceType"] for entry in bundle["entry"]}
    for resource in resources(bundle):
        for path, value in walk(resource):
            if not (path and path[-1] == "reference"):
                continue
            if value not in kinds:
                yield f"{said(resource, path)}: {value} leads nowhere"
                continue
            field = nearest_name(path[:-1])
            if field in LEADS_TO and kinds[value] not in LEADS_TO[field]:
                yield f"{said(resource, path)}: leads to {kinds[value]}"
    about = {entry["fullUrl"] for entry in bundle["entry"]
             if entry["resource"]["resourceType"] not in ("Patient", "Practitioner", "Organization", "RelatedPerson", "BodyStructure", "Provenance")}  # fmt: skip
    for provenance in resources(bundle, "Provenance"):
        if {t.get("reference") for t in provenance.get("target", [])} != about:
            yield f"{said(provenance)}: is not about all that was recorded at the visit"


def check_codings(bundle):
    for resource in resources(bundle):
        for path, value in walk(resource):
            # A coding: an entry of a list of codings, or a value of its own.
            is_coding = isinstance(value, dict) and path and (
                (isinstance(path[-1], int) and nearest_name(path) in ("coding", "tag", "security")) or path[-1] in ("valueCoding", "class")
            )  # fmt: skip
            if is_coding:
                if not re.match(r"^(https?://|urn:)[^\s]+$", value.get("system", "")):
                    yield f"{said(resource, path)}: a code without its system"
                if not value.get("code"):
                    yield f"{said(resource, path)}: a system without a code"
                if value.get("code") == "LA6113-0":
                    yield f"{said(resource, path)}: the answer code that says '2 or more'"
                if "snomed" in value.get("system", ""):
                    yield f"{said(resource, path)}: a list that needs a licence"
            if isinstance(value, dict) and "coding" in value and len({(c.get("system"), c.get("code")) for c in value["coding"]}) != len(value["coding"]):
                yield f"{said(resource, path)}: the same code twice"


def check_numbers(bundle):
    for resource in resources(bundle):
        for path, value in walk(resource):
            if isinstance(value, float) and not math.isfinite(value):
                yield f"{said(resource, path)}: {value} is no number"
            if path and path[-1] in ("valueQuantity", "valueDuration") and isinstance(value, dict):
                if not isinstance(value.get("value"), (int, float)) or isinstance(value.get("value"), bool):
                    yield f"{said(resource, path)}: no number"
                if value.get("system") != UCUM or value.get("code") not in UNITS or not value.get("unit"):
                    yield f"{said(resource, path)}: the unit is {value.get('code')} of {value.get('system')}"
            if path and path[-1] == "valueInteger" and not (isinstance(value, int) and not isinstance(value, bool)):
                yield f"{said(resource, path)}: {value} is no whole number"


def check_dates(bundle):
    for resource in resources(bundle):
        for path, value in walk(resource):
            if not (path and path[-1] in DATE_FIELDS and isinstance(value, str)):
                continue
            time = TIME.match(value)
            day = time.group(1) if time else value
            try:
                if not DATE.match(day):
                    raise ValueError("neither a day nor a time with a zone")
                datetime.date.fromisoformat(day)
                if time and not (int(time.group(2)) < 24 and int(time.group(3)) < 60 and int(time.group(4)) < 60):
                    raise ValueError("no time of day")
            except ValueError as error:
                yield f"{said(resource, path)}: {value}: {error}"
            if path[-1] == "recorded" and not time:
                yield f"{said(resource, path)}: {value} has no time of day"
        for path, value in walk(resource):
            if path and path[-1] in ("period", "performedPeriod", "scheduledPeriod") and isinstance(value, dict) and value.get("start", "") > value.get("end", "9999"):
                yield f"{said(resource, path)}: ends before it begins"


def check_values(bundle):
    for resource in resources(bundle, "Observation"):
        values = [k for k in resource if k.startswith("value")]
        absent = "dataAbsentReason" in resource
        parts = "component" in resource or "hasMember" in resource
        if len(values) > 1 or (values and absent):  # obs-6
            yield f"{said(resource)}: more than one of {values} and dataAbsentReason"
        if not values and not absent and not parts:
            yield f"{said(resource)}: says nothing"
        for component in resource.get("component", []):
            if len([k for k in component if k.startswith("value")]) != 1:
                yield f"{said(resource)}: a component without one value"
            same = {(c.get("system"), c.get("code")) for c in component["code"].get("coding", [])} & {
                (c.get("system"), c.get("code")) for c in resource["code"].get("coding", [])
            }
            if same and values:  # obs-7
                yield f"{said(resource)}: a component has its code"
        code = own_code(resource["code"])
        bounds = {"tenderness": 4, "restriction": 3, "joint-play": 6, "pain-now": 10, "pain-worst": 10, "pain-best": 10, "activity": 10}
        number = resource.get("valueInteger")
        if code in bounds and number is not None and not 0 <= number <= bounds[code]:
            yield f"{said(resource)}: {code} of {number}"
        if code in ("pain-now", "pain-worst", "pain-best") and not isinstance(number, int):
            yield f"{said(resource)}: {code} is not a number"


def sides_of(concept):
    """All sides that a concept names, in our own code, HL7's, and its words."""
    found = {c["code"] for c in concept.get("coding", []) if c.get("system") == SIDE and "code" in c}
    letters = {c["code"] for c in concept.get("coding", []) if c.get("system") == OFFICIAL_SIDE and "code" in c}
    return found, letters, concept.get("text")


def check_side_concept(where, concept):
    found, letters, words = sides_of(concept)
    if len(found) != 1:
        yield f"{where}: the sides are {sorted(found)}, expected one"
        return
    side = next(iter(found))
    if side not in ("left", "right", "midline") or words != side:
        yield f"{where}: the side is {side}, in words {words}"
    if letters != ({OFFICIAL_LETTER[side]} if side in OFFICIAL_LETTER else set()):
        yield f"{where}: the side is {side}, HL7's codes are {sorted(letters)}"


def side_of(site):
    """The side of a body site, or nothing."""
    for extension in site.get("extension", []):
        if extension.get("url") == LATERALITY:
            return own_code(extension.get("valueCodeableConcept", {}), SIDE)
    return None


def check_site(bundle, where, site):
    structures = {e["fullUrl"]: e["resource"] for e in bundle["entry"] if e["resource"]["resourceType"] == "BodyStructure"}
    laterality = [e for e in site.get("extension", []) if e.get("url") == LATERALITY]
    text = site.get("text", "")
    words = {w for w in ("left", "right") if re.search(rf"\b{w}\b", text.split(",")[0])}
    sided = own_code(site, STRUCTURE) is not None or bool(words) or bool(laterality)
    if not text:
        yield f"{where}: no words"
    if not sided:
        return
    if len(laterality) != 1:
        yield f"{where}: {len(laterality)} sides, expected 1"
        return
    concept = laterality[0].get("valueCodeableConcept", {})
    yield from check_side_concept(where, concept)
    side = own_code(concept, SIDE)
    if words != ({side} - {"midline"}):
        yield f"{where}: the side is {side}, in words '{text}'"
    links = [e["valueReference"]["reference"] for e in site["extension"] if e.get("url") == BODY_STRUCTURE_OF and "valueReference" in e]
    if len(links) != 1 or links[0] not in structures:
        yield f"{where}: no BodyStructure"
        return
    qualifiers = [q for q in structures[links[0]].get("locationQualifier", []) if own_code(q, SIDE)]
    if len(qualifiers) != 1 or own_code(qualifiers[0], SIDE) != side:
        yield f"{where}: the side is {side}, its BodyStructure says otherwise"
    if structures[links[0]].get("location", {}).get("coding") != site.get("coding"):
        yield f"{where}: its BodyStructure is another structure"
    if structures[links[0]].get("description") != text:
        yield f"{where}: its BodyStructure has other words"


def check_sides(bundle):
    for resource in resources(bundle):
        sites = resource.get("bodySite", [])
        for index, site in enumerate(sites if isinstance(sites, list) else [sites]):
            yield from check_site(bundle, said(resource, ("bodySite", index)), site)
        for path, value in walk(resource):
            if path and path[-1] == "valueCoding" and value.get("system") == STRUCTURE:
                if side_of(value) is None:
                    yield f"{said(resource, path)}: no side"
                for extension in value.get("extension", []):
                    yield from check_side_concept(said(resource, path), extension.get("valueCodeableConcept", {}))
                    side = own_code(extension.get("valueCodeableConcept", {}), SIDE)
                    if side in OFFICIAL_LETTER and not value.get("display", "").startswith(side + " "):
                        yield f"{said(resource, path)}: the side is {side}, in words '{value.get('display')}'"
        if resource["resourceType"] == "BodyStructure":
            sides = [q for q in resource.get("locationQualifier", []) if own_code(q, SIDE)]
            if len(sides) != 1:
                yield f"{said(resource)}: {len(sides)} sides, expected 1"
            for qualifier in sides:
                yield from check_side_concept(said(resource), qualifier)
    for resource in resources(bundle, "Observation"):
        if own_code(resource["code"]) in QUALITIES | {PANEL, "hurts-here"} and "bodySite" not in resource:
            yield f"{said(resource)}: no place"
    for resource in resources(bundle, "Procedure"):
        if len(resource.get("bodySite", [])) != 1:
            yield f"{said(resource)}: not one place"


def check_members(bundle):
    owners = {}
    for panel in resources(bundle, "Observation"):
        if "hasMember" in panel and own_code(panel["code"]) != PANEL:
            yield f"{said(panel)}: has members and is no panel"
        for member in panel.get("hasMember", []):
            owners.setdefault(member.get("reference"), []).append(panel)
    for observation in resources(bundle, "Observation"):
        code = own_code(observation["code"])
        its = owners.get(f"urn:uuid:{observation['id']}", [])
        if code in QUALITIES and len(its) != 1:
            yield f"{said(observation)}: {code} is a member of {len(its)} panels, expected 1"
        if code not in QUALITIES and its:
            yield f"{said(observation)}: {code} is a member of a panel"
        for panel in its:
            if code != "felt-also-here" and panel.get("bodySite") != observation.get("bodySite"):
                yield f"{said(observation)}: not at the place of its panel"
            for field in ("status", "category", "effectiveDateTime", "subject"):
                if field != "status" and panel.get(field) != observation.get(field):
                    yield f"{said(observation)}: {field} is not that of its panel"
    known = {f"urn:uuid:{o['id']}": o for o in resources(bundle, "Observation")}
    for observation in resources(bundle, "Observation"):
        for extension in observation.get("extension", []):
            if extension.get("url") == SEQUEL_TO:
                before = known.get(extension.get("valueReference", {}).get("reference"))
                if before is None or before["code"] != observation["code"] or before.get("bodySite") != observation.get("bodySite"):
                    yield f"{said(observation)}: follows something else"


CHECKS = [check_frame, check_needed, check_status, check_references, check_codings, check_numbers, check_dates, check_values, check_sides, check_members]


def problems(bundle):
    return [problem for check in CHECKS for problem in check(bundle)]
