"""A bundle held against the visit that it was made of: all that must be there with its side and value, nothing beyond, and nothing
of what was said when nobody else could hear. The visit file is read here by itself, not by the program."""

import json
from collections import Counter

from bundle_checks import SIDE, STRUCTURE, own_code, resources, side_of

PHASE = "urn:raphe:fhir:phase"
FOUND = "urn:raphe:fhir:found"


def plain(value):
    """A number that can be compared: 45 and 45.0 are one."""
    return float(value) if isinstance(value, (int, float)) and not isinstance(value, bool) else value


def spot_of(bundle, site):
    """Spot and landmark, from the BodyStructure."""
    link = next(e["valueReference"]["reference"] for e in site["extension"] if "valueReference" in e)
    structure = next(e["resource"] for e in bundle["entry"] if e["fullUrl"] == link)
    qualifiers = structure["locationQualifier"]
    first = lambda system: next((own_code(q, system) for q in qualifiers if own_code(q, system)), None)
    return first("urn:raphe:fhir:spot"), first("urn:raphe:fhir:attached-at")


def place_of(bundle, site):
    return (own_code(site, STRUCTURE), side_of(site), *spot_of(bundle, site))


def phase_of(observation):
    return any(own_code(c, PHASE) == "after-the-treatment" for c in observation["category"])


def value_of(observation):
    for name, value in observation.items():
        if name == "valueCodeableConcept":
            return value["coding"][0]["code"]
        if name == "valueQuantity":
            return plain(value["value"]), value["code"]
        if name.startswith("value"):
            return plain(value) if name != "valueBoolean" else value
    if "dataAbsentReason" in observation:
        return observation["dataAbsentReason"]["coding"][0]["code"], observation["dataAbsentReason"].get("text")
    return None


def side_or_midline(item):
    return item.get("side", "midline")


def wanted_qualities(finding):
    """(code, place, value) of each quality of a finding."""
    place = (finding["structure"], side_or_midline(finding), finding.get("spot"), finding.get("at"))
    clear = finding.get("clear", [])
    clear = ["tenderness", "motion"] if clear is True else clear or []
    if "tenderness" in finding:
        yield "tenderness", place, plain(finding["tenderness"])
    if finding.get("sore"):
        yield "tenderness", place, "present-not-graded"
    if "tenderness" in clear:
        yield "tenderness", place, "clear"
    if "restriction" in finding:
        yield "restriction", place, plain(finding["restriction"])
    if finding.get("stiff"):
        yield "restriction", place, "present-not-graded"
    if "motion" in clear:
        yield "restriction", place, "clear"
    if "play" in finding:
        yield "joint-play", place, plain(finding["play"])
    if "end_feel" in finding:
        yield "end-feel", place, finding["end_feel"]
    if finding.get("familiar"):
        yield "familiar-pain", place, True
    if finding.get("texture"):
        yield "texture", place, "; ".join(finding["texture"])
    for other in finding.get("refers_to", []):
        yield "felt-also-here", (other["structure"], side_or_midline(other), None, None), True
    if finding.get("note"):
        yield "remark", place, finding["note"]
    if "unable" in finding:
        yield "palpation", place, ("not-performed", finding["unable"])
    else:
        yield "palpation", place, None


def told_qualities(bundle, after):
    codes = {"tenderness", "restriction", "joint-play", "end-feel", "familiar-pain", "texture", "felt-also-here", "remark", "palpation"}
    for observation in resources(bundle, "Observation"):
        code = own_code(observation["code"])
        if code in codes and phase_of(observation) == after:
            yield code, place_of(bundle, observation["bodySite"]), value_of(observation)


def differences(name, wanted, told):
    wanted, told = Counter(wanted), Counter(told)
    yield from (f"{name}: {item} is not told" for item in (wanted - told).elements())
    yield from (f"{name}: {item} is told and not in the visit" for item in (told - wanted).elements())


def check_findings(bundle, visit, _content):
    again = visit.get("retested", {})
    for name, findings, after in [("findings", visit["findings"], False), ("found again", again.get("findings", []), True)]:
        yield from differences(name, [q for f in findings for q in wanted_qualities(f)], told_qualities(bundle, after))


def sided(observation):
    return side_of(observation.get("bodySite", {})) or "midline"


def check_measures(bundle, visit, content):
    units = {m["id"]: "deg" if m["unit"] == "degrees" else "mm" for m in content["movements"]}
    system = "urn:raphe:fhir:movement"

    def wanted(measures):
        for m in measures:
            unit = units[m["movement"]]
            value = (plain(m["value"]), unit) if "value" in m else "watched-not-measured"
            start = (plain(m["pain_from"]), unit) if "pain_from" in m else None
            yield m["movement"], side_or_midline(m), value, start, m.get("mode"), m.get("device"), bool(m.get("hurts")), bool(m.get("familiar"))

    def told(after):
        for o in resources(bundle, "Observation"):
            if own_code(o["code"], system) and phase_of(o) == after:
                parts = {own_code(c["code"]): value_of(c) for c in o.get("component", [])}
                yield (own_code(o["code"], system), sided(o), value_of(o), parts.get("pain-from"), own_code(o.get("method", {}), "urn:raphe:fhir:method"),
                       o.get("device", {}).get("display"), parts.get("brings-pain", False), parts.get("familiar-pain", False))  # fmt: skip

    yield from differences("measures", wanted(visit.get("measures", [])), told(False))
    yield from differences("measured again", wanted(visit.get("retested", {}).get("measures", [])), told(True))


def check_tests(bundle, visit, content):
    system = "urn:raphe:fhir:test"
    vitals = {v["test"]: v for v in content["vitals"]}

    def wanted(results):
        for t in results:
            if "values" in t:
                unit = vitals[t["test"]]["unit"]
                value = tuple((plain(v), unit) for v in t["values"])
            elif "unable" in t:
                value = (("not-performed", t["unable"]),)
            else:
                value = (next((plain(t[k]) if k != "present" else t[k]) for k in ("pain", "grade", "present") if k in t),)
            yield t["test"], side_or_midline(t), value, bool(t.get("changes"))

    def told(after):
        for o in resources(bundle, "Observation"):
            if own_code(o["code"], system) and phase_of(o) == after:
                numbers = tuple(value_of(c) for c in o.get("component", []) if "valueQuantity" in c)
                changes = any(own_code(c["code"]) == "changes-from-afar" for c in o.get("component", []))
                yield own_code(o["code"], system), sided(o), numbers or (value_of(o),), changes

    yield from differences("tests", wanted(visit.get("tests", [])), told(False))
    yield from differences("tested again", wanted(visit.get("retested", {}).get("tests", [])), told(True))


def check_vitals(bundle, _visit, content):
    for vital in content["vitals"]:
        for o in resources(bundle, "Observation"):
            if own_code(o["code"], "urn:raphe:fhir:test") != vital["test"]:
                continue
            if own_code(o["code"], "http://loinc.org") != vital["loinc"]:
                yield f"{vital['test']}: not coded as {vital['loinc']}"
            if not any(c["coding"][0]["code"] == "vital-signs" for c in o["category"]):
                yield f"{vital['test']}: not a vital sign"
            codes = [own_code(c["code"], "http://loinc.org") for c in o.get("component", []) if "valueQuantity" in c]
            if "dataAbsentReason" not in o and codes != [f["loinc"] for f in vital["fields"]]:
                yield f"{vital['test']}: its parts are {codes}"


def check_complaints(bundle, visit, _content):
    complaints = visit.get("complaints") or ([{"text": visit["complaint"]}] if visit.get("complaint") else [])
    told = [c for c in resources(bundle, "Condition") if own_code(c["code"], "urn:raphe:fhir:problem") == "complaint"]
    if len(told) != len(complaints):
        yield f"{len(told)} complaints, expected {len(complaints)}"
    wanted = []
    for complaint in complaints:
        wanted += [(code, plain(complaint[k])) for k, code in [("now", "pain-now"), ("worst", "pain-worst"), ("best", "pain-best")] if k in complaint]
        wanted += [("activity", plain(a.get("score", -1))) for a in complaint.get("activities", [])]
    found = []
    for o in resources(bundle, "Observation"):
        code = own_code(o["code"])
        if code in ("pain-now", "pain-worst", "pain-best", "activity") and not phase_of(o):
            found.append((code, plain(o.get("valueInteger", -1))))
        if code == "pain-now" and own_code(o["code"], "http://loinc.org") != "72514-3":
            yield "pain now is not coded as LOINC 72514-3"
    yield from differences("scales", wanted, found)
    after = [o.get("valueInteger") for o in resources(bundle, "Observation") if own_code(o["code"]) == "pain-now" and phase_of(o)]
    if after != ([visit["retested"]["pain"]] if "pain" in visit.get("retested", {}) else []):
        yield f"pain after the treatment: {after}"
    places = [(p["structure"], side_or_midline(p), None, None) for p in visit.get("complaint_at", [])]
    here = [place_of(bundle, o["bodySite"]) for o in resources(bundle, "Observation") if own_code(o["code"]) == "hurts-here"]
    yield from differences("where it hurts", places, here)
    if len(told) == 1:
        yield from differences("where the complaint is", places, [place_of(bundle, s) for s in told[0].get("bodySite", [])])
    wanted = [(c["condition"], p["structure"], side_or_midline(p)) for c in visit.get("conditions", []) for p in c.get("at", [{"structure": None}])]
    found = []
    for c in resources(bundle, "Condition"):
        if ident := own_code(c["code"], "urn:raphe:fhir:condition"):
            found += [(ident, *place_of(bundle, s)[:2]) for s in c.get("bodySite", [])] or [(ident, None, "midline")]
    yield from differences("conditions", wanted, found)
    if len(resources(bundle, "Flag")) != len([c for c in visit.get("cautions", []) if c.strip()]):
        yield f"{len(resources(bundle, 'Flag'))} cautions"


def check_drawing(bundle, visit, _content):
    def painted(patch):
        if patch["view"] in ("side", "head"):
            return patch["facing"]
        turn = 1 if patch["view"] == "back" else -1
        xs = [(turn * p[0], s["radius"]) for s in patch["strokes"] for p in s["points"]]
        right, left = any(x + r > 0 for x, r in xs), any(x - r < 0 for x, r in xs)
        return "both" if left and right else "left" if left else "right"

    wanted = [(p["view"], painted(p), p.get("quality"), p.get("intensity"), p["painter"], bool(p.get("confirmed"))) for p in visit.get("pain", [])]
    told = []
    for o in resources(bundle, "Observation"):
        if own_code(o["code"]) == "pain-drawing":
            parts = {own_code(c["code"]): c.get("valueInteger", value_of(c)) for c in o["component"]}
            told.append(tuple(parts.get(k) for k in ("drawn-view", "drawn-side", "pain-quality", "pain-intensity", "painted-by", "place-confirmed")))
    yield from differences("pain drawing", wanted, told)


STEP = {"done": "completed", "partly": "stopped", "skipped": "not-done"}


def check_work(bundle, visit, _content):
    steps = visit.get("treatment", {}).get("steps", [])
    wanted = [(s["structure"], side_or_midline(s), s["technique"], STEP.get(s.get("done")), plain(s.get("kpa")), plain(s.get("seconds") or None)) for s in steps]
    told = []
    for p in resources(bundle, "Procedure"):
        extra = {e["url"].split(":")[-1]: e["valueQuantity"]["value"] for e in p["extension"] if "valueQuantity" in e}
        status = None if p["status"] in ("in-progress", "unknown") else p["status"]
        place = place_of(bundle, p["bodySite"][0])[:2]
        technique = own_code(p["code"], "urn:raphe:fhir:technique")
        told.append((*place, technique, status, plain(extra.get("suction")), plain(extra.get("seconds-of-work"))))
    if all(p["status"] != "entered-in-error" for p in resources(bundle, "Procedure")):
        yield from differences("steps", wanted, told)
    words = [(w, s["structure"], side_or_midline(s)) for s in steps for w in s.get("words", [])]
    said = [(value_of(o), *place_of(bundle, o["bodySite"])[:2]) for o in resources(bundle, "Observation") if own_code(o["code"]) == "said-in-work"]
    yield from differences("said", words, said)
    events = visit.get("treatment", {}).get("events", [])
    told = [[c["code"] for c in a.get("event", {}).get("coding", [])] for a in resources(bundle, "AdverseEvent")]
    if told != [e.get("signs", []) for e in events]:
        yield f"events: {told}"


def check_asked(bundle, visit, content):
    alone = {s["id"] for s in content["signs"] if s.get("alone")}
    shown = [w for w in visit.get("warnings", []) if w["sign"] not in alone and not w.get("moved")]
    wanted = []
    for w in shown:
        wanted.append((w["sign"], w["answer"] == "yes", tuple(sorted((p["structure"], side_or_midline(p)) for p in w.get("at", []))), w.get("decided")))
    told = []
    for response in resources(bundle, "QuestionnaireResponse"):
        for item in response["item"]:
            answer = item["answer"][0]
            inner = {i["linkId"].split(".")[-1]: i["answer"] for i in answer.get("item", [])}
            where = tuple(sorted((a["valueCoding"]["code"], side_of(a["valueCoding"])) for a in inner.get("where", [])))
            told.append((item["linkId"], answer["valueBoolean"], where, inner["decided"][0]["valueCoding"]["code"] if "decided" in inner else None))
    yield from differences("warning signs", wanted, told)
    if len(resources(bundle, "QuestionnaireResponse")) != (1 if shown else 0):
        yield "not one answered questionnaire"
    statuses = {"given": "active", "refused": "rejected", "withdrawn": "inactive"}
    consents = [(c["category"][1]["coding"][0]["code"], c["status"], c["provision"]["type"]) for c in resources(bundle, "Consent")]
    if all(c["status"] != "entered-in-error" for c in resources(bundle, "Consent")):
        wanted = [(c["item"], statuses[c["answer"]], "permit" if c["answer"] == "given" else "deny") for c in visit.get("consents", [])]
        yield from differences("consents", wanted, consents)


def check_care(bundle, visit, _content):
    closing = visit.get("closing", {})
    goals = [c["goal"] for c in visit.get("complaints", []) if c.get("goal")] + [g["text"] for g in closing.get("goals", [])]
    goals += [closing["plan"]["success"]] if closing.get("plan", {}).get("success") else []
    yield from differences("goals", goals, [g["description"]["text"] for g in resources(bundle, "Goal")])
    activities = [a["detail"]["code"]["coding"][0]["code"] for p in resources(bundle, "CarePlan") for a in p.get("activity", [])]
    wanted = ["visits"] * ("plan" in closing) + ["advice-for-home"] * len(closing.get("advice", [])) + ["call"] * ("call" in closing)
    wanted += ["promised-until-next-visit"] * len(visit.get("promised", [])) + ["focus-of-next-visit"] * len(closing.get("focus", []))
    yield from differences("plan", wanted, activities)
    impressions = [c.get("summary") for c in resources(bundle, "ClinicalImpression")]
    if impressions != ([closing["impression"].get("text")] if closing.get("impression") else []):
        yield f"impression: {impressions}"


def check_secrets(bundle, visit, content):
    """Of an answer that was given alone, or moved to another patient, not a word: neither what was asked nor what was said."""
    everything = json.dumps(bundle, ensure_ascii=False)
    names = {s["id"]: s for s in content["signs"]}
    shown = {w["sign"] for w in visit.get("warnings", []) if not names[w["sign"]].get("alone") and not w.get("moved")}
    for warning in visit.get("warnings", []):
        sign = names[warning["sign"]]
        if warning["sign"] in shown:
            continue
        words = [sign["id"], sign["ask"], sign["name"], sign["means"], sign["act"], warning.get("why"), warning.get("told")]
        others = json.dumps({k: v for k, v in visit.items() if k != "warnings"}, ensure_ascii=False)
        for word in words:
            if word and word not in others and word in everything:
                yield f"told of {sign['id']}: {word}"
    for sign in content["signs"]:
        if sign.get("alone") and (sign["id"] in everything or sign["ask"] in everything or sign["name"] in everything):
            yield f"{sign['id']} is named"
    for judgement in visit.get("judgements", []):
        if judgement.get("dismissed") and judgement["dismissed"] in everything:
            yield f"what was dismissed is told: {judgement['dismissed']}"


CHECKS = [check_findings, check_measures, check_tests, check_vitals, check_complaints, check_drawing, check_work, check_asked, check_care, check_secrets]


def problems(bundle, visit, content):
    return [problem for check in CHECKS for problem in check(bundle, visit, content)]
