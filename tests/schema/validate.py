#!/usr/bin/python3
"""Checks content and output of Raphe against the schemas, and that bad input is refused in one line.

    tests/schema/validate.py <path of raphe-batch>

Needs Debian's python3-jsonschema. Ends with 'N passed, N failed'; exit status 1 when anything failed.
"""

import copy
import csv
import datetime
import io
import json
import os
import pathlib
import shutil
import subprocess
import sys
import tempfile

import jsonschema

ROOT = pathlib.Path(__file__).resolve().parents[2]
SCHEMAS = ROOT / "resources" / "schema"
ATLAS = ROOT / "resources" / "atlas"
SAFETY = ROOT / "resources" / "safety"
EXAMINATION = ROOT / "resources" / "examination"
OWN_VISIT = pathlib.Path(__file__).resolve().parent / "visit.json"
INTAKE_VISIT = OWN_VISIT.with_name("intake-visit.json")
OWN_PATIENT = pathlib.Path(__file__).resolve().parent / "patient.json"

# The design's order, outside in.
LAYERS = ["skin", "superficial-fascia", "deep-fascia", "superficial-muscle", "intermediate-muscle", "deep-muscle", "bone"]

# The least that the whole body must hold: the project's own aim.
FLOORS = {"muscle": 150, "joint": 75, "bone": 60, "landmark": 120, "surface-region": 75, "nerve": 1, "vessel": 1, "bursa": 1, "caution-area": 18}


class Tally:
    """Counts checks and prints the failed ones."""

    def __init__(self):
        self.passed = 0
        self.failed = 0

    def check(self, name, complaints):
        """A check holds when there is nothing to complain of; returns whether it did."""
        complaints = list(complaints)
        if not complaints:
            self.passed += 1
            return True
        self.failed += 1
        print(f"FAILED {name}")
        for complaint in complaints[:10]:
            print(f"    {complaint}")
        if len(complaints) > 10:
            print(f"    and {len(complaints) - 10} more")
        return False


formats = jsonschema.FormatChecker(formats=[])


@formats.checks("date", raises=ValueError)
def is_date(value):
    """A real day, as the schema's description says."""
    return not isinstance(value, str) or bool(datetime.datetime.strptime(value, "%Y-%m-%d"))


def load(path):
    with open(path, encoding="utf-8") as file:
        return json.load(file)


def validator(name):
    schema = load(SCHEMAS / f"{name}.schema.json")
    return jsonschema.Draft202012Validator(schema, format_checker=formats)


def problems(schema, document):
    """What the schema has against the document, each with its place."""
    for error in sorted(validator(schema).iter_errors(document), key=lambda e: list(map(str, e.absolute_path))):
        pointer = "/" + "/".join(map(str, error.absolute_path))
        yield f"{pointer}: {error.message[:300]}"


def check_schemas(tally):
    for path in sorted(SCHEMAS.glob("*.json")):
        try:
            jsonschema.Draft202012Validator.check_schema(load(path))
            tally.check(f"schema {path.name}", [])
        except jsonschema.SchemaError as error:
            tally.check(f"schema {path.name}", [error.message])
        tally.check(f"schema {path.name} is closed", open_objects(load(path)))


def open_objects(schema, place=""):
    """Objects that would let unknown fields through."""
    if isinstance(schema, dict):
        if schema.get("type") == "object" and schema.get("additionalProperties") is not False:
            yield f"{place or '/'}: an object without additionalProperties false"
        for key, value in schema.items():
            yield from open_objects(value, f"{place}/{key}")
    elif isinstance(schema, list):
        for index, value in enumerate(schema):
            yield from open_objects(value, f"{place}/{index}")


def check_content(tally):
    files = sorted(ATLAS.glob("*.json"))
    tally.check("atlas files are there", [] if files else [f"no file in {ATLAS}"])
    for path in files:
        tally.check(f"atlas file {path.name}", problems("atlas", load(path)))
    tally.check("body-shares.json", problems("body-shares", load(ROOT / "resources" / "body-shares.json")))
    tally.check("unreachable.json", problems("unreachable", load(ROOT / "resources" / "drawing" / "unreachable.json")))
    tally.check("reasoning.json", problems("reasoning", load(ROOT / "resources" / "reasoning.json")))
    for name in ["techniques", "access", "home-advice", "readability", "fhir-codes"]:
        tally.check(f"{name}.json", problems(name, load(ROOT / "resources" / f"{name}.json")))
    tally.check("safety/scope.json", problems("scope", load(SAFETY / "scope.json")))
    tally.check("notices.json", problems("notices", load(ROOT / "resources" / "notices.json")))
    tally.check("retention.json", problems("retention", load(ROOT / "resources" / "retention.json")))
    tally.check("safety/feeds.json", problems("caution-feeds", load(SAFETY / "feeds.json")))
    tally.check("safety/consent.json", problems("consent", load(SAFETY / "consent.json")))
    tally.check("safety/warning-signs.json", problems("warning-signs", load(SAFETY / "warning-signs.json")))
    tally.check("intake/patient-texts.json", problems("patient-texts", load(ROOT / "resources" / "intake" / "patient-texts.json")))
    tally.check("help/pages.json", problems("help", load(ROOT / "resources" / "help" / "pages.json")))
    tally.check("language/en.json", problems("language", load(ROOT / "resources" / "language" / "en.json")))
    for name in ["actions", "conditions", "rules"]:
        tally.check(f"safety/{name}.json", problems(f"safety-{name}", load(SAFETY / f"{name}.json")))
    for name in ["sources", "movements", "tests", "sheets"]:
        tally.check(f"examination/{name}.json", problems(f"examination-{name}", load(EXAMINATION / f"{name}.json")))


def visits():
    return [OWN_VISIT, INTAKE_VISIT, *sorted((ROOT / "demo" / "practice").glob("*.json"))]


def check_visits(tally):
    for path in visits():
        tally.check(f"visit {path.name}", problems("visit", load(path)))


def check_patient(tally):
    """Something stands in every field, so that no field of the schema goes untried."""
    patient = load(OWN_PATIENT)
    tally.check(f"patient {OWN_PATIENT.name}", problems("patient", patient))
    fields = load(SCHEMAS / "patient.schema.json")["properties"]
    tally.check(f"patient {OWN_PATIENT.name} has every field", [f"{field} is missing" for field in fields if field not in patient])


def spoilt(document, *path, **change):
    """A copy in which the object at the path has other or fewer (None) fields."""
    copied = copy.deepcopy(document)
    at = copied
    for step in path:
        at = at[step]
    for key, value in change.items():
        if value is None:
            del at[key]
        else:
            at[key] = value
    return copied


def check_refusals_by_schema(tally):
    """The schemas are no rubber stamps: one spoilt copy for each rule that matters."""
    visit = load(OWN_VISIT)
    intake = load(INTAKE_VISIT)
    patient = load(OWN_PATIENT)
    hip = {"structure": "hip-joint", "side": "left"}
    muscles = load(ATLAS / "muscles-hip.json")
    at = next(i for i, s in enumerate(muscles["structures"]) if s["kind"] == "muscle" and s.get("attachments"))
    landmarks = load(ATLAS / "landmarks.json")
    edge = next(i for i, s in enumerate(landmarks["structures"]) if "border" in s)
    cautions = load(ATLAS / "cautions.json")
    ties = load(ATLAS / "continuities.json")
    joints = load(ATLAS / "joints.json")
    sources = load(ATLAS / "sources.json")
    patch = {"view": "side", "facing": "left", "painter": "patient", "quality": "numb", "intensity": 0,
             "confirmed": True, "strokes": [{"radius": 1, "points": [[-500, 0], [500, 1000]]}]}
    stroke = patch["strokes"][0]
    reasoning = load(ROOT / "resources" / "reasoning.json")
    rules = load(SAFETY / "rules.json")
    signs = load(SAFETY / "warning-signs.json")
    feeds = load(SAFETY / "feeds.json")
    texts = load(ROOT / "resources" / "intake" / "patient-texts.json")
    consent = load(SAFETY / "consent.json")
    techniques = load(ROOT / "resources" / "techniques.json")
    access = load(ROOT / "resources" / "access.json")
    exam = {name: load(EXAMINATION / f"{name}.json") for name in ["sources", "movements", "tests", "sheets"]}
    normed = next(i for i, m in enumerate(exam["movements"]["movements"]) if "norms" in m and "errors" in m)
    studied = next(i for i, t in enumerate(exam["tests"]["tests"]) if "sensitivity" in t.get("accuracy", [{}])[0])
    pressure = next(i for i, t in enumerate(exam["tests"]["tests"]) if len(t.get("vital", {}).get("fields", [])) == 2)
    warning = {"sign": "hot-joint", "answer": "yes", "asked": "2026-11-27", "at": [hip], "decided": "care-same-day", "why": "red"}
    closing = {"advice": [{"item": "walk-a-little", "title": "Walk a little", "text": "Ten minutes, twice a day."}, {"text": "A warm bath."}],
               "told": True, "focus": ["stairs"],
               "impression": {"text": "joints of the low back", "code": "B-12", "system": "list of the house, 2nd edition"},
               "goals": [{"text": "to drive to the sea", "until": "2024-05-01", "reached": True}, {"text": "to sleep"}],
               "plan": {"agreed": "2024-03-12", "visits": 6, "every_days": 7, "success": "an hour's drive without a stop"},
               "review": {"decision": "change-plan", "why": "as before"},
               "call": {"due": "2024-03-14", "made": "2024-03-15", "reaction": "sore", "told": "for a day"}}

    letter = {"written": "2024-03-12", "to": {"name": "Dr Nord", "role": "general practice", "lines": ["4 Mill Lane"]}, "title": "A letter", "urgency": "same-day",
              "reason": {"text": "swollen", "composed": "sore"}, "question": {"text": "May care go on?"},
              "parts": [{"title": "Complaint", "text": "sore"}, {"title": "Tests", "text": "", "composed": "none"}], "sent": "2024-03-13"}

    def closed(*path, **change):
        return spoilt(intake, closing=spoilt(closing, *path, **change))

    def lettered(*path, **change):
        return spoilt(intake, letters=[spoilt(letter, *path, **change)])

    cases = [
        ("atlas", "unknown field", spoilt(muscles, colour="red")),
        ("atlas", "unknown field of a structure", spoilt(muscles, "structures", at, colour="red")),
        ("atlas", "unknown field of an attachment", spoilt(muscles, "structures", at, "attachments", 0, colour="red")),
        ("atlas", "unknown kind", spoilt(muscles, "structures", at, kind="sinew")),
        ("atlas", "a kind that is derived", spoilt(muscles, "structures", at, kind="superficial-fascia")),
        ("atlas", "muscle in the skin", spoilt(muscles, "structures", at, layer="skin")),
        ("atlas", "id in capitals", spoilt(muscles, "structures", at, id="Psoas")),
        ("atlas", "id with two hyphens", spoilt(muscles, "structures", at, id="psoas--major")),
        ("atlas", "no source", spoilt(muscles, "structures", at, sources=[])),
        ("atlas", "no insertion", spoilt(muscles, "structures", at, "attachments", 0, insertions=[])),
        ("atlas", "unknown root", spoilt(muscles, "structures", at, roots=["L6"])),
        ("atlas", "no German name", spoilt(muscles, "structures", at, "names", "plain", de=None)),
        ("atlas", "landmark of no bone", spoilt(landmarks, "structures", 0, part_of=None)),
        ("atlas", "unknown grade", spoilt(ties, "continuities", 0, evidence="certain")),
        ("atlas", "unknown force", spoilt(ties, "continuities", 0, force="maybe")),
        ("atlas", "unknown motion", spoilt(muscles, "structures", at, "actions", 0, motions=["wiggling"])),
        ("atlas", "joint of no complex", spoilt(joints, "joints", 0, complex=None)),
        ("atlas", "caution area without its caution", spoilt(cautions, "structures", 0, caution=None)),
        ("atlas", "border of a muscle", spoilt(muscles, "structures", at, border={"from": "a", "to": "b", "length_over_stature": 0.1, "sources": ["gray-1918"]})),
        ("atlas", "border longer than the body", spoilt(landmarks, "structures", edge, "border", length_over_stature=1.5)),
        ("atlas", "three bones", spoilt(joints, "joints", 0, bones=["sacrum", "femur", "tibia"])),
        ("atlas", "doi with a prefix", spoilt(sources, "sources", 0, doi="https://doi.org/10.1000/1")),
        ("reasoning", "number without a reason", spoilt(reasoning, "constants", "restart", reason=None)),
        ("reasoning", "number too large", spoilt(reasoning, "constants", "restart", value=11)),
        ("reasoning", "constant missing", spoilt(reasoning, "constants", restart=None)),
        ("scope", "group without techniques", spoilt(load(SAFETY / "scope.json"), "groups", 0, techniques=[])),
        ("home-advice", "advice that does not say when to stop", spoilt(load(ROOT / "resources" / "home-advice.json"), "advice", 0, stop=None)),
        ("home-advice", "a sheet of no part of the body", spoilt(load(ROOT / "resources" / "home-advice.json"), "by_sheet", 0, regions=[])),
        ("home-advice", "a call to nobody", spoilt(load(ROOT / "resources" / "home-advice.json"), "call", 0, how="nobody")),
        ("visit", "a step of the treatment that was not begun", spoilt(intake, treatment={"steps": [{**hip, "technique": "gliding"}]})),
        ("visit", "a step ahead that is done", spoilt(intake, treatment={"ahead": [{**hip, "technique": "gliding", "done": "done"}]})),
        ("visit", "an event of which nothing is told", spoilt(intake, treatment={"events": [{"time": "10:00:00"}]})),
        ("visit", "more suction than any cup has", spoilt(intake, treatment={"ahead": [{**hip, "technique": "cups-still", "kpa": 81}]})),
        ("visit", "no such time", spoilt(intake, treatment={"running": "24:00:00"})),
        ("visit", "pain of the retest below its scale", spoilt(intake, retested={"pain": -1})),
        ("visit", "pain of the retest above its scale", spoilt(intake, retested={"pain": 11})),
        ("visit", "pain of the retest between two grades", spoilt(intake, retested={"pain": 2.5})),
        ("visit", "pain of the retest in words", spoilt(intake, retested={"pain": "none"})),
        ("visit", "pain of a retest in the first version", spoilt(visit, retested={"pain": 2})),
        ("visit", "a focus that is no list", spoilt(intake, focus="stairs")),
        ("visit", "a line of the focus that is no text", spoilt(intake, focus=["stairs", 3])),
        ("visit", "a focus in the first version", spoilt(visit, focus=["stairs"])),
        ("visit", "a closing in the first version", spoilt(visit, closing=closing)),
        ("visit", "a closing that is a list", spoilt(intake, closing=[closing])),
        ("visit", "unknown field of the closing", closed(colour="red")),
        ("visit", "advice that is no list", closed(advice={"text": "rest"})),
        ("visit", "advice in words alone", closed(advice=["rest"])),
        ("visit", "unknown field of an advice", closed("advice", 1, stop="pain")),
        ("visit", "advice with an id in capitals", closed("advice", 0, item="Walk")),
        ("visit", "advice with a number for its title", closed("advice", 0, title=1)),
        ("visit", "advice without its text", closed("advice", 0, text=None)),
        ("visit", "advice of an empty text", closed("advice", 1, text="")),
        ("visit", "advice with a number for its text", closed("advice", 1, text=1)),
        ("visit", "told, in words", closed(told="yes")),
        ("visit", "a next focus that is no list", closed(focus="stairs")),
        ("visit", "a line of the next focus that is no text", closed(focus=[3])),
        ("visit", "an impression in words alone", closed(impression="low back")),
        ("visit", "unknown field of the impression", closed("impression", sure=True)),
        ("visit", "an impression of which nothing is said", closed(impression={})),
        ("visit", "an impression that only names its list", closed("impression", text=None, code=None)),
        ("visit", "an impression of empty words", closed("impression", text="", code="")),
        ("visit", "an impression with a number for its words", closed("impression", text=1)),
        ("visit", "an impression with a number for its code", closed("impression", code=12)),
        ("visit", "an impression with a number for its list", closed("impression", system=2)),
        ("visit", "goals that are no list", closed(goals={"text": "to sleep"})),
        ("visit", "a goal in words alone", closed(goals=["to sleep"])),
        ("visit", "unknown field of a goal", closed("goals", 1, score=3)),
        ("visit", "a goal without its words", closed("goals", 0, text=None)),
        ("visit", "a goal of empty words", closed("goals", 1, text="")),
        ("visit", "a goal with a number for its words", closed("goals", 1, text=1)),
        ("visit", "a goal until no such day", closed("goals", 0, until="2024-02-30")),
        ("visit", "a goal reached, in words", closed("goals", 0, reached="yes")),
        ("visit", "a plan of care that is a number", closed(plan=6)),
        ("visit", "unknown field of the plan of care", closed("plan", cost=1)),
        ("visit", "a plan of care that was agreed on no day", closed("plan", agreed=None)),
        ("visit", "a plan of care of no such day", closed("plan", agreed="2024-02-30")),
        ("visit", "a plan of care without its visits", closed("plan", visits=None)),
        ("visit", "a plan of care of no visits", closed("plan", visits=0)),
        ("visit", "a plan of care of more visits than are allowed", closed("plan", visits=61)),
        ("visit", "a plan of care of half a visit", closed("plan", visits=1.5)),
        ("visit", "a plan of care that does not say how often", closed("plan", every_days=None)),
        ("visit", "a plan of care every 0 days", closed("plan", every_days=0)),
        ("visit", "a plan of care with longer pauses than are allowed", closed("plan", every_days=181)),
        ("visit", "a plan of care every day and a half", closed("plan", every_days=1.5)),
        ("visit", "a success of care that is no text", closed("plan", success=True)),
        ("visit", "a review in a word", closed(review="refer")),
        ("visit", "unknown field of the review", closed("review", whom="B. Okoye")),
        ("visit", "a review without a decision", closed("review", decision=None)),
        ("visit", "a review with an unknown decision", closed("review", decision="wait")),
        ("visit", "a review without why", closed("review", why=None)),
        ("visit", "a review with an empty why", closed("review", why="")),
        ("visit", "a review with a number for its why", closed("review", why=1)),
        ("visit", "a call that is a day", closed(call="2024-03-14")),
        ("visit", "unknown field of the call", closed("call", by="phone")),
        ("visit", "a call that is due on no day", closed("call", due=None)),
        ("visit", "a call that is due on no such day", closed("call", due="2024-02-30")),
        ("visit", "a call made on no such day", closed("call", made="2024-02-30")),
        ("visit", "an unknown reaction", closed("call", reaction="worse")),
        ("visit", "a number told in the call", closed("call", told=3)),
        ("visit", "a reaction told in no call", closed("call", made=None, told=None)),
        ("visit", "words told in no call", closed("call", made=None, reaction=None)),
        ("visit", "letters in the first version", spoilt(visit, letters=[letter])),
        ("visit", "letters that are no list", spoilt(intake, letters=letter)),
        ("visit", "more letters than are allowed", spoilt(intake, letters=[letter] * 21)),
        ("visit", "unknown field of a letter", lettered(colour="red")),
        ("visit", "a letter of no day", lettered(written=None)),
        ("visit", "a letter of no such day", lettered(written="2024-02-30")),
        ("visit", "a letter sent on no such day", lettered(sent="")),
        ("visit", "a letter without a title", lettered(title="")),
        ("visit", "a letter of no urgency", lettered(urgency=None)),
        ("visit", "an unknown urgency", lettered(urgency="soon")),
        ("visit", "an addressee of no name or role", lettered("to", name=None, role=None)),
        ("visit", "an addressee of empty words", lettered("to", name="", role="")),
        ("visit", "unknown field of an addressee", lettered("to", phone="1")),
        ("visit", "a name that is too long", lettered("to", name="x" * 201)),
        ("visit", "an address of too many lines", lettered("to", lines=["x"] * 7)),
        ("visit", "an empty line of an address", lettered("to", lines=[""])),
        ("visit", "a reason in words alone", lettered(reason="swollen")),
        ("visit", "a reason of which nothing is said", lettered(reason={"text": ""})),
        ("visit", "a question that is too long", lettered("question", text="x" * 20001)),
        ("visit", "unknown field of a question", lettered("question", by="me")),
        ("visit", "a part without a title", lettered("parts", 0, title=None)),
        ("visit", "a part of no words", lettered("parts", 0, text="")),
        ("visit", "a part that was composed of nothing and says nothing", lettered("parts", 1, composed="")),
        ("visit", "more parts than are allowed", lettered(parts=[{"title": str(i), "text": "x"} for i in range(21)])),
        ("techniques", "unknown field of a technique", spoilt(techniques, "techniques", 0, colour="red")),
        ("techniques", "dose without a source", spoilt(techniques, "techniques", 0, "dose", source=None)),
        ("techniques", "no time at all", spoilt(techniques, "techniques", 0, "dose", seconds=0)),
        ("techniques", "unknown tissue", spoilt(techniques, "techniques", 0, "suits", 0, tissue="bone")),
        ("techniques", "a way without its time", spoilt(techniques, "times", "turn", "prone", seated=None)),
        ("access", "unknown position", spoilt(access, "regions", 0, positions=["standing"])),
        ("access", "no position", spoilt(access, "regions", 0, positions=[])),
        ("access", "cover without a name", spoilt(access, "covers", 0, name="")),
        ("safety-actions", "unknown kind of action", spoilt(load(SAFETY / "actions.json"), "actions", 0, kind="cure")),
        ("safety-conditions", "unknown need of a place", spoilt(load(SAFETY / "conditions.json"), "conditions", 0, place="maybe")),
        ("caution-feeds", "text without words", spoilt(feeds, "feeds", 0, words=None)),
        ("caution-feeds", "text with a limit", spoilt(feeds, "feeds", 0, to=3)),
        ("caution-feeds", "word in capitals", spoilt(feeds, "feeds", 0, words=["Warfarin"])),
        ("caution-feeds", "unknown part of the record", spoilt(feeds, "feeds", 0, field="shoes")),
        ("help", "a page without a title", spoilt(load(ROOT / "resources" / "help" / "pages.json"), "pages", 0, title="")),
        ("help", "a page that is no Markdown", spoilt(load(ROOT / "resources" / "help" / "pages.json"), "pages", 0, file="help/en/index.html")),
        ("patient-texts", "text of no use", spoilt(texts, "texts", 0, where="nowhere")),
        ("patient-texts", "empty text", spoilt(texts, "texts", 0, text="")),
        ("patient-texts", "a gap that nobody fills", spoilt(texts, "texts", 0, text="Hello {name}.")),
        ("consent", "item that covers nothing", spoilt(consent, "items", 0, covers={})),
        ("consent", "elsewhere of no technique", spoilt(consent, "items", 0, covers={"elsewhere": True})),
        ("consent", "inside of no place", spoilt(consent, "items", 0, covers={"inside": True})),
        ("consent", "item without risks", spoilt(consent, "items", 0, risks="")),
        ("consent", "item without an interval", spoilt(consent, "items", 0, renew_days=None)),
        ("warning-signs", "unknown level", spoilt(signs, "signs", 0, level="soon")),
        ("warning-signs", "no question", spoilt(signs, "signs", 0, ask="Chest pain")),
        ("warning-signs", "asked of nobody", spoilt(signs, "signs", 0, areas=[])),
        ("warning-signs", "when, without saying when", spoilt(signs, "signs", 0, when={})),
        ("warning-signs", "sign without a source", spoilt(signs, "signs", 0, source="")),
        ("visit", "warning sign without its day", spoilt(visit, warnings=[{"sign": "hot-joint", "answer": "no"}])),
        ("visit", "warning sign decided without why", spoilt(visit, warnings=[{k: v for k, v in warning.items() if k != "why"}])),
        ("visit", "warning sign that is not there, decided", spoilt(visit, warnings=[{**warning, "answer": "no"}])),
        ("visit", "complaints in the first version", spoilt(intake, version=1)),
        ("visit", "measures in the first version", {**spoilt(visit), "measures": intake["measures"]}),
        ("visit", "sore, and graded", spoilt(visit, "findings", 8, tenderness=2)),
        ("visit", "stiff, and clear of motion", spoilt(visit, "findings", 8, clear=["motion"])),
        ("visit", "felt after comparing, and nothing felt", spoilt(visit, "findings", 0, restriction=None, after_comparing=True)),
        ("visit", "unknown end feel", spoilt(visit, "findings", 9, end_feel="nice")),
        ("visit", "measured with nothing known", spoilt(intake, "measures", 0, device="spoon")),
        ("visit", "test that says two things", spoilt(intake, "tests", 0, grade=2)),
        ("visit", "test that says nothing", spoilt(intake, "tests", 0, pain=None)),
        ("visit", "a change of no pain", spoilt(intake, "tests", 2, changes=True)),
        ("visit", "retest of a finding", spoilt(intake, "retest", kind="finding")),
        ("visit", "time that is none", spoilt(intake, "timeline", 0, time="24:00:00")),
        ("visit", "one complaint in the second version", spoilt(intake, complaint="back")),
        ("visit", "pain above ten", spoilt(intake, "complaints", 0, now=11)),
        ("visit", "activity of nothing", spoilt(intake, "complaints", 0, activities=[{}])),
        ("visit", "unknown answer of a consent", spoilt(intake, "consents", 0, answer="maybe")),
        ("visit", "name of a chaperone who was not there", spoilt(intake, "consents", 1, chaperone="declined")),
        ("visit", "consent without its day", spoilt(intake, "consents", 0, asked=None)),
        ("visit", "unknown decision", spoilt(visit, warnings=[{**warning, "decided": "nothing"}])),
        ("safety-rules", "rule without a source", spoilt(rules, "rules", 0, source="")),
        ("safety-rules", "root of a limb without a reason", spoilt(rules, "limb_roots", 0, reason="")),
        ("safety-rules", "root of an unknown limb", spoilt(rules, "limb_roots", 0, limb="tail")),
        ("safety-rules", "empty list of actions", spoilt(rules, "rules", 0, actions=[])),
        ("safety-rules", "place of no condition", spoilt(rules, "rules", 1, conditions=None)),
        ("examination-sources", "source without a citation", spoilt(exam["sources"], "sources", 0, citation="")),
        ("examination-sources", "doi with a prefix", spoilt(exam["sources"], "sources", 0, doi="https://doi.org/10.1000/1")),
        ("examination-movements", "unknown field of a movement", spoilt(exam["movements"], "movements", 0, colour="red")),
        ("examination-movements", "movement that no caution could bar", spoilt(exam["movements"], "movements", 0, actions=None)),
        ("examination-movements", "movement of no joint", spoilt(exam["movements"], "movements", 0, joints=[])),
        ("examination-movements", "unknown unit", spoilt(exam["movements"], "movements", 0, unit="inch")),
        ("examination-movements", "norm of neither active nor passive", spoilt(exam["movements"], "movements", normed, "norms", 0, mode=None)),
        ("examination-movements", "norm of no device", spoilt(exam["movements"], "movements", normed, "norms", 0, device=None)),
        ("examination-movements", "norm without a source", spoilt(exam["movements"], "movements", normed, "norms", 0, source=None)),
        ("examination-movements", "standard deviation of nothing", spoilt(exam["movements"], "movements", normed, "norms", 0, sd=0)),
        ("examination-movements", "unknown kind of error", spoilt(exam["movements"], "movements", normed, "errors", 0, kind="guess")),
        ("examination-movements", "error of nothing", spoilt(exam["movements"], "movements", normed, "errors", 0, value=0)),
        ("examination-tests", "unknown kind of test", spoilt(exam["tests"], "tests", 0, kind="magic")),
        ("examination-tests", "test by hand that no caution could bar", spoilt(exam["tests"], "tests", 0, actions=None)),
        ("examination-tests", "root in lower case", spoilt(exam["tests"], "tests", 0, roots=["l5"])),
        ("examination-tests", "vital sign without its numbers", spoilt(exam["tests"], "tests", pressure, vital=None)),
        ("examination-tests", "numbers of no vital sign", spoilt(exam["tests"], "tests", pressure, kind="power")),
        ("examination-tests", "one bound for two numbers", spoilt(exam["tests"], "tests", pressure, "vital", least=[40])),
        ("examination-tests", "share in percent", spoilt(exam["tests"], "tests", studied, "accuracy", 0, sensitivity=60)),
        ("examination-tests", "sensitivity alone", spoilt(exam["tests"], "tests", studied, "accuracy", 0, specificity=None)),
        ("examination-tests", "table and shares", spoilt(exam["tests"], "tests", studied, "accuracy", 0, tp=1, fn=1, fp=1, tn=1)),
        ("examination-tests", "three cells of a table", spoilt(exam["tests"], "clusters", 0, "studies", 0, tn=None)),
        ("examination-tests", "cluster without a table", spoilt(exam["tests"], "clusters", 0, studies=[])),
        ("examination-tests", "threshold of none", spoilt(exam["tests"], "clusters", 0, threshold=0)),
        ("examination-tests", "cluster of a side that is none", spoilt(exam["tests"], "clusters", 0, "tests", 0, side="both")),
        ("examination-sheets", "sheet of no region", spoilt(exam["sheets"], "sheets", 0, regions=None)),
        ("examination-sheets", "movement twice", spoilt(exam["sheets"], "sheets", 0, movements=["trunk-flexion", "trunk-flexion"])),
        ("examination-sheets", "called by something unknown", spoilt(exam["sheets"], "sheets", 0, called={"moods": ["pulse"]})),
        ("visit", "unknown field", spoilt(visit, colour="red")),
        ("visit", "no findings", spoilt(visit, findings=None)),
        ("visit", "grade too high", spoilt(visit, "findings", 0, tenderness=5)),
        ("visit", "tender and clear of it", spoilt(visit, "findings", 0, clear=["tenderness"])),
        ("visit", "no such day", spoilt(visit, date="2023-02-29")),
        ("visit", "play off its scale", spoilt(visit, "findings", 3, play=7)),
        ("visit", "play that is not normal and clear motion", spoilt(visit, "findings", 2, play=2)),
        ("visit", "certain of nothing felt", spoilt(visit, "findings", 4, certain=True)),
        ("visit", "certain of what could not be examined", spoilt(visit, "findings", 6, certain=True)),
        ("visit", "play of what could not be examined", spoilt(visit, "findings", 6, play=3)),
        ("visit", "where it hurts, twice", spoilt(visit, complaint_at=[hip, hip])),
        ("visit", "where it hurts, with a spot", spoilt(visit, complaint_at=[{**hip, "spot": "belly"}])),
        ("visit", "condition without its id", spoilt(visit, conditions=[{"at": [hip]}])),
        ("visit", "condition in capitals", spoilt(visit, conditions=[{"condition": "Fever"}])),
        ("visit", "condition twice at a place", spoilt(visit, conditions=[{"condition": "burn", "at": [hip, hip]}])),
        ("visit", "judgement of no list", spoilt(visit, judgements=[{**hip, "pinned": True}])),
        ("visit", "judgement of an unknown list", spoilt(visit, judgements=[{"list": "tied", **hip, "pinned": True}])),
        ("visit", "judgement that says nothing", spoilt(visit, judgements=[{"list": "check", **hip}])),
        ("visit", "neither pinned nor dismissed", spoilt(visit, judgements=[{"list": "check", **hip, "pinned": False}])),
        ("visit", "dismissed without a reason", spoilt(visit, judgements=[{"list": "check", **hip, "dismissed": ""}])),
        ("visit", "pinned and dismissed", spoilt(visit, judgements=[{"list": "check", **hip, "pinned": True, "dismissed": "sore"}])),
        ("visit", "a plan of more minutes than are allowed", spoilt(intake, plan={"minutes": 241})),
        ("visit", "a plan with an unknown field", spoilt(intake, plan={"colour": "red"})),
        ("visit", "a position twice", spoilt(intake, plan={"barred": ["prone", "prone"]})),
        ("visit", "no such position", spoilt(intake, plan={"barred": ["standing"]})),
        ("visit", "a place of the plan of which nothing is said", spoilt(intake, plan={"places": [hip]})),
        ("visit", "pinned and dropped in the plan", spoilt(intake, plan={"places": [{**hip, "pinned": True, "dropped": True}]})),
        ("visit", "an order of one", spoilt(intake, plan={"order": [{"first": hip}]})),
        ("visit", "pain in words", spoilt(visit, pain="knee")),
        ("visit", "more patches than are allowed", spoilt(visit, pain=101 * [patch])),
        ("visit", "patch with an unknown field", spoilt(visit, pain=[{**patch, "colour": "red"}])),
        ("visit", "patch on no view", spoilt(visit, pain=[{**patch, "view": "inside"}])),
        ("visit", "patch on the side view of no side", spoilt(visit, pain=[spoilt(patch, facing=None)])),
        ("visit", "patch on the front that faces left", spoilt(visit, pain=[{**patch, "view": "front"}])),
        ("visit", "patch of an unknown quality", spoilt(visit, pain=[{**patch, "quality": "strange"}])),
        ("visit", "patch off the scale", spoilt(visit, pain=[{**patch, "intensity": 11}])),
        ("visit", "patch painted by nobody", spoilt(visit, pain=[spoilt(patch, painter=None)])),
        ("visit", "patch without strokes", spoilt(visit, pain=[{**patch, "strokes": []}])),
        ("visit", "patch of too many strokes", spoilt(visit, pain=[{**patch, "strokes": 501 * [stroke]}])),
        ("visit", "stroke without points", spoilt(visit, pain=[{**patch, "strokes": [{**stroke, "points": []}]}])),
        ("visit", "stroke of too many points", spoilt(visit, pain=[{**patch, "strokes": [{**stroke, "points": 5001 * [[0, 0]]}]}])),
        ("visit", "stroke too thin", spoilt(visit, pain=[{**patch, "strokes": [{**stroke, "radius": 0.5}]}])),
        ("visit", "stroke too wide", spoilt(visit, pain=[{**patch, "strokes": [{**stroke, "radius": 101}]}])),
        ("visit", "point beside the view", spoilt(visit, pain=[{**patch, "strokes": [{**stroke, "points": [[501, 0]]}]}])),
        ("visit", "point below the view", spoilt(visit, pain=[{**patch, "strokes": [{**stroke, "points": [[0, 1001]]}]}])),
        ("visit", "point in space", spoilt(visit, pain=[{**patch, "strokes": [{**stroke, "points": [[1, 2, 3]]}]}])),
        ("visit", "point of one number", spoilt(visit, pain=[{**patch, "strokes": [{**stroke, "points": [[1]]}]}])),
        ("patient", "unknown field", spoilt(patient, nickname="Z")),
        ("patient", "no name", spoilt(patient, name=None)),
        ("patient", "blank name", spoilt(patient, name=" \t")),
        ("patient", "later version", spoilt(patient, version=2)),
        ("patient", "text too long", spoilt(patient, mark=10001 * "x")),
        ("patient", "no such day", spoilt(patient, born="2023-02-29")),
        ("patient", "day first", spoilt(patient, other_born=["05.03.1980"])),
        ("patient", "contact without name and phone", spoilt(patient, doctor={})),
        ("patient", "contact of blanks", spoilt(patient, doctor={"name": " ", "phone": ""})),
        ("patient", "blank medicine", spoilt(patient, medicines=[""])),
        ("patient", "list too long", spoilt(patient, allergies=501 * ["nickel"])),
        ("patient", "surgery without its text", spoilt(patient, "surgery", 0, text=None)),
        ("patient", "surgery before its time", spoilt(patient, "surgery", 0, year=1879)),
        ("patient", "implant with a side", spoilt(patient, "implants", 0, side="left")),
        ("patient", "condition in capitals", spoilt(patient, "conditions", 0, condition="Diabetes")),
        ("patient", "condition with a place", spoilt(patient, "conditions", 0, at=[hip])),
        ("patient", "pregnancy without its day", spoilt(patient, "pregnancy", date=None)),
        ("patient", "pregnancy too long", spoilt(patient, "other_pregnancies", 0, week=43)),
        ("patient", "pressure off its scale", spoilt(patient, "blood_pressure", systolic=301)),
        ("patient", "pressure of one number", spoilt(patient, "other_blood_pressures", 0, diastolic=None)),
        ("patient", "complaint without its id", spoilt(patient, "complaints", 0, id=None)),
        ("patient", "complaint with id 0", spoilt(patient, "complaints", 0, id=0)),
        ("patient", "blank complaint", spoilt(patient, "complaints", 0, text=" ")),
        ("patient", "closed in words", spoilt(patient, "complaints", 0, closed="yes")),
    ]
    accepted = [
        ("visit", "play of a joint that moves freely", spoilt(visit, "findings", 2, play=3, certain=True)),
        ("visit", "play alone", spoilt(visit, "findings", 3, restriction=None, play=0, certain=True)),
        ("visit", "not certain", spoilt(visit, "findings", 6, certain=False)),
        ("visit", "where it hurts", spoilt(visit, complaint_at=[hip, {"structure": "sacrum"}])),
        ("visit", "conditions", spoilt(visit, conditions=[{"condition": "burn", "at": [hip]}, {"condition": "fever-or-infection"}])),
        ("visit", "warning signs", spoilt(visit, injured=True, warnings=[warning, {"sign": "fever-now", "answer": "no", "asked": "2026-11-27"}])),
        ("visit", "judgements", spoilt(visit, judgements=[{"list": "check", **hip, "pinned": True}, {"list": "treat", **hip, "dismissed": "sore"}])),
        ("visit", "a treatment", spoilt(intake, treatment={"steps": [{**hip, "technique": "gliding", "began": "10:00:00", "seconds": 90, "words": ["familiar", "eased"], "minded": ["thin-bone"], "done": "partly"}, {**hip, "technique": "thrust", "done": "skipped"}], "ahead": [{**hip, "technique": "cups-still", "planned": 300, "rest": 60, "kpa": 20, "position": "prone"}], "events": [{"time": "10:05:00", "signs": ["faint"], "answer": "lay down"}]})),
        ("visit", "what was examined again", spoilt(intake, retested={"findings": [{**hip, "restriction": 1}], "measures": [], "tests": []})),
        ("visit", "no pain at the retest", spoilt(intake, retested={"pain": 0})),
        ("visit", "the worst pain at the retest", spoilt(intake, retested={"pain": 10})),
        ("visit", "what the visit before left", spoilt(intake, focus=["stairs", "the left hip"])),
        ("visit", "a letter with all its fields", lettered()),
        ("visit", "a letter of the least", spoilt(intake, letters=[{"written": "2024-03-12", "title": "A letter", "urgency": "routine"}])),
        ("visit", "a part that was written by hand", lettered("parts", 0, composed="")),
        ("visit", "no letters", spoilt(intake, letters=[])),
        ("visit", "a closing with all its fields", closed()),
        ("visit", "a closing of which nothing is said", spoilt(intake, closing={})),
        ("visit", "a closing of empty lists", spoilt(intake, closing={"advice": [], "told": False, "focus": [], "goals": []})),
        ("visit", "an impression that is a code alone", closed("impression", text=None)),
        ("visit", "an impression in words alone, with an empty code", closed("impression", code="", system=None)),
        ("visit", "the least plan of care", closed("plan", visits=1, every_days=1, success=None)),
        ("visit", "the longest plan of care", closed("plan", visits=60, every_days=180)),
        ("visit", "a review that refers", closed("review", decision="refer")),
        ("visit", "a review that discharges", closed("review", decision="discharge")),
        ("visit", "a reaction of none", closed("call", reaction="none")),
        ("visit", "a bad reaction", closed("call", reaction="bad")),
        ("visit", "a call that is due", closed(call={"due": "2024-03-14"})),
        ("visit", "a call that is due, with nothing told yet", closed(call={"due": "2024-03-14", "told": ""})),
        ("visit", "a call that told nothing", closed("call", reaction=None, told=None)),
        ("visit", "wishes for the plan", spoilt(intake, plan={"minutes": 35, "barred": ["prone"], "refused": ["cups-still"], "places": [{**hip, "pinned": True, "technique": "held-ease"}], "order": [{"first": hip, "then": {"structure": "sacrum"}}]})),
        ("visit", "a pain drawing", spoilt(visit, pain=[patch, {"view": "sole", "painter": "practitioner", "strokes": [stroke]}])),
        ("visit", "as many patches as are allowed", spoilt(visit, pain=100 * [patch])),
        ("patient", "a name alone", {"format": "raphe-patient", "version": 1, "name": "Ana"}),
        ("patient", "contact with a phone alone", spoilt(patient, doctor={"phone": "0555 90"})),
        ("patient", "contact with a name alone", spoilt(patient, doctor={"name": "Dr Quill", "phone": ""})),
        ("patient", "text of the greatest length", spoilt(patient, mark=10000 * "ß")),
        ("patient", "list of the greatest length", spoilt(patient, allergies=500 * ["nickel"])),
    ]
    for schema, name, document in accepted:
        tally.check(f"{schema} schema takes: {name}", problems(schema, document))
    for schema, name, document in cases:
        tally.check(f"{schema} schema refuses: {name}", [] if any(problems(schema, document)) else ["it was let through"])


PASSPHRASE = b"for the test only\n"  # on standard input, for the verbs that are told to read it there


def key(*arguments):
    return [*arguments, "--sign-in", "ada", "--passphrase-fd", "0"]


class Batch:
    """Runs raphe-batch in a folder of its own."""

    def __init__(self, program, folder):
        self.program = program
        self.folder = pathlib.Path(folder)
        # Without a session's runtime folder, as under cron: the program must be silent there too.
        self.environment = {**os.environ, "HOME": folder, "LC_ALL": "C.UTF-8", "QT_QPA_PLATFORM": "offscreen"}
        self.environment.pop("XDG_RUNTIME_DIR", None)

    def run(self, *arguments):
        return subprocess.run([self.program, *map(str, arguments)], capture_output=True, timeout=300, check=False,
                              cwd=self.folder, env=self.environment, input=PASSPHRASE)

    def write(self, name, content):
        """A file in the folder: text as it is, anything else as JSON. Returns its name."""
        text = content if isinstance(content, str) else json.dumps(content)
        (self.folder / name).write_text(text, encoding="utf-8")
        return name

    def answer(self, tally, name, schema, *arguments):
        """The JSON of a call that must succeed; None when it does not."""
        ran = self.run(*arguments)
        complaints = []
        document = None
        if ran.returncode != 0:
            complaints.append(f"exit status {ran.returncode}: {ran.stderr.decode(errors='replace').strip()}")
        else:
            if ran.stderr:
                complaints.append(f"standard error is not empty: {ran.stderr.decode(errors='replace').strip()}")
            try:
                document = json.loads(ran.stdout)
                complaints.extend(problems(schema, document))
            except ValueError as error:
                complaints.append(f"no JSON: {error}")
        tally.check(f"raphe-batch {name}", complaints)
        return document


def check_atlas_output(tally, batch):
    atlas = batch.answer(tally, "atlas", "atlas-output", "atlas")
    if atlas is None:
        return
    kinds = [s["kind"] for s in atlas["structures"]]
    counts = atlas["counts"]
    tally.check("the counts are right", [f"{kind}: {count}" for kind, count in counts.items() if kinds.count(kind) != count]
                + [f"{kind} is not counted" for kind in set(kinds) - set(counts)])
    for kind, least in FLOORS.items():
        tally.check(f"at least {least} of kind {kind}", [] if counts.get(kind, 0) >= least else [f"there are {counts.get(kind, 0)}"])
    connective = counts.get("fascia", 0) + counts.get("ligament", 0) + counts.get("tendon", 0)
    tally.check("at least 60 fasciae, ligaments and tendons", [] if connective >= 60 else [f"there are {connective}"])
    tally.check("at least 90 continuities", [] if len(atlas["continuities"]) >= 90 else [f"there are {len(atlas['continuities'])}"])
    print("atlas: " + ", ".join(f"{count} {kind}" for kind, count in counts.items()) + f", {len(atlas['continuities'])} continuities")
    ids = [s["id"] for s in atlas["structures"]]
    tally.check("every structure once", [f"{i} stands twice" for i in sorted(set(ids)) if ids.count(i) > 1])
    known = set(ids)
    sources = {s["id"] for s in atlas["sources"]}
    named = [(c["from"], c["to"]) for c in atlas["continuities"]] + [(a["structure"], a["onto"], *a["bones"]) for a in atlas["attachments"]] \
        + [(c["muscle"], c["joint"]) for c in atlas["crossings"]] + [(o["outer"], o["inner"]) for o in atlas["overlies"]] \
        + [(j["id"], *j["bones"]) for j in atlas["joints"]]
    tally.check("what the atlas names is in it", sorted({f"{i} is not a structure" for ends in named for i in ends if i not in known}))
    cited = [i for part in ("structures", "attachments", "crossings", "continuities") for entry in atlas[part] for i in entry["sources"]]
    tally.check("what the atlas cites is in it", sorted({f"{i} is not a source" for i in cited if i not in sources}))


def check_under(tally, batch):
    hits = batch.answer(tally, "under (buttock)", "under", "under", "--view", "back", "--x", 60, "--y", 470)
    if hits is not None:
        glute = [h for h in hits if h["structure"] == "gluteus-maximus"]
        tally.check("gluteus maximus lies under the buttock, on the right", [] if [h["side"] for h in glute] == ["right"] else [f"{hits}"])
        order = [LAYERS.index(h["layer"]) for h in hits]
        tally.check("layers come outside in", [] if order == sorted(order) else [", ".join(h["layer"] for h in hits)])
        tally.check("more than one layer", [] if len(set(order)) > 1 else [f"{hits}"])
        mirror = batch.answer(tally, "under (other buttock)", "under", "under", "--view", "back", "--x", -60, "--y", 470)
        swap = {"left": "right", "right": "left", "midline": "midline"}
        same = mirror is not None and [(h["structure"], swap[h["side"]]) for h in mirror] == [(h["structure"], h["side"]) for h in hits]
        tally.check("the other side is the mirror image", [] if same else [f"{mirror}"])
    for view in ["side", "sole", "palm", "head"]:
        batch.answer(tally, f"under ({view})", "under", "under", "--view", view, "--x", 40, "--y", 500)
    side = batch.answer(tally, "under (left side)", "under", "under", "--view", "side", "--facing", "left", "--x", -10, "--y", 490)
    if side is not None:
        tally.check("the side view facing left gives left places", [f"{h}" for h in side if h["side"] == "right"] or ([] if side else ["nothing there"]))
    batch.answer(tally, "under (front)", "under", "under", "--view", "front", "--x", 0, "--y", 400)
    beside = batch.answer(tally, "under (beside the body)", "under", "under", "--view", "front", "--x", 499, "--y", 10)
    tally.check("nothing lies beside the body", [] if beside == [] else [f"{beside}"])


def check_read(tally, batch):
    read = batch.answer(tally, "read", "read", "read", "--text", "right glute max origin tender 3, left L4/5 clear, psoas t2, slr r 60")
    if read is not None:
        tally.check("the line gives two findings and a value, and asks for a side", [] if (
            [f["structure"] for f in read["findings"]] == ["gluteus-maximus", "l4-l5"] and [m["value"] for m in read["measures"]] == [60]
            and [a["about"] for a in read["ask"]] == ["side"] and not read["mistakes"]) else [f"{read}"])
        visit = {"format": "raphe-visit", "version": 2, "findings": read["findings"], "measures": read["measures"]}
        tally.check("what was read stands in a visit", problems("visit", visit))
        batch.answer(tally, "reason (on what was read)", "reason", "reason", "--visit", batch.write("read.json", visit))
    ran = batch.run("read", "--text", "r left psoas t2")
    lines = ran.stderr.decode().strip().splitlines()
    tally.check("a line that makes no sense ends with status 1 and one line", [] if ran.returncode == 1 and len(lines) == 1
                and "r left" in lines[0] else [f"{ran.returncode}: {lines}"])
    tally.check("and its JSON is whole", problems("read", json.loads(ran.stdout)))


def check_plan(tally, batch):
    visit = batch.write("planned.json", {"format": "raphe-visit", "version": 1, "findings": [
        {"structure": "gluteus-medius", "side": "right", "tenderness": 2, "restriction": 2},
        {"structure": "l4-l5", "side": "right", "restriction": 2}, {"structure": "soleus", "side": "left", "tenderness": 1}]})
    plan = batch.answer(tally, "plan", "plan", "plan", "--visit", visit, "--minutes", 20)
    if plan is None:
        return
    steps = sum(sum(s["seconds"].values()) for s in plan["steps"])
    tally.check("its steps add up", [] if steps == plan["seconds"] and steps + plan["reserved_seconds"] <= 20 * 60 else [f"{plan}"])
    tally.check("every place is worked or left", [] if len(plan["steps"]) + len(plan["left_out"]) == 3 and plan["proved"] else [f"{plan}"])
    barred = batch.answer(tally, "plan (not face down)", "plan", "plan", "--visit", visit, "--minutes", 20, "--bar", "prone", "--without", "gliding")
    if barred is not None:
        tally.check("a barred position is not taken", [] if all(s["position"] != "prone" for s in barred["steps"]) else [f"{barred}"])
    wished = batch.write("wished.json", {**json.loads((batch.folder / visit).read_text()), "version": 2,
        "plan": {"minutes": 20, "barred": ["prone"], "refused": ["gliding"]}})
    same = batch.answer(tally, "plan (wishes of the visit)", "plan", "plan", "--visit", wished)
    tally.check("the visit's own wishes give the same plan", [] if same == barred else [f"{same}"])
    for words in [["--bar", "standing"], ["--scope", "magic"], ["--without", "magic"], ["--minutes", "-1"]]:
        given = words if "--minutes" in words else [*words, "--minutes", "20"]
        ran = batch.run("plan", "--visit", visit, *given)
        lines = ran.stderr.decode().strip().splitlines()
        tally.check(f"plan {words[0]} {words[1]} is refused in one line", [] if ran.returncode == 2 and len(lines) == 1 else [f"{ran.returncode}: {lines}"])


def check_edge(tally, batch):
    crest = batch.answer(tally, "edge", "edge", "edge", "--structure", "iliac-crest", "--stature", 1700)
    if crest is None:
        return
    starts = [entry["from"] for entry in crest["attached"]]
    tally.check("what attaches along an edge comes in order", [] if starts == sorted(starts) and len(starts) > 5 else [f"{starts}"])
    tally.check("steps cover the edge", [] if 0 <= crest["steps"] * 25 - crest["length_mm"] < 25 else [f"{crest['steps']} steps over {crest['length_mm']} mm"])


def check_extent(tally, batch):
    skin = batch.write("skin.json", {"format": "raphe-visit", "version": 1, "findings": [
        {"structure": "deltoid-region", "side": "right", "tenderness": 2}, {"structure": "gluteus-maximus", "side": "right", "tenderness": 2}]})
    extent = batch.answer(tally, "extent", "extent", "extent", "--visit", skin)
    if extent is not None:
        tally.check("only the skin region counts", [] if [r["structure"] for r in extent["regions"]] == ["deltoid-region"] else [f"{extent}"])
        tally.check("the whole is the sum of the parts",
                    [] if abs(extent["percent"] - sum(p["percent"] for p in extent["parts"])) < 1e-9 and 0.3 < extent["percent"] < 4 else [f"{extent}"])


def painting(view, points, radius=12):
    return {"view": view, "painter": "patient", "intensity": 6, "strokes": [{"radius": radius, "points": points}]}


def mirror_of(points):
    return [[-x, y] for x, y in points]


def check_pain(tally, batch):
    """The pain drawing: its percent, its mirror image, and its overlap with another."""
    line = [[40, 470], [62, 478], [70, 505]]

    def drawn(name, *patches):
        return batch.write(name, {"format": "raphe-visit", "version": 1, "findings": [], "pain": list(patches)})

    right = drawn("right.json", painting("back", line))
    left = drawn("left.json", painting("back", mirror_of(line)))
    beside = drawn("beside.json", painting("back", [[x + 4, y] for x, y in line]))
    side = drawn("side.json", {**painting("side", [[0, 500]]), "facing": "left"})
    plain = drawn("plain.json")
    extents = [batch.answer(tally, f"extent ({name})", "extent", "extent", "--visit", name) for name in (right, left, side, plain)]
    if None not in extents:
        here, there, aside, none = (extent["pain"] for extent in extents)
        tally.check("a pain drawing takes its percent", [] if 0.1 < here["percent"] < 3 else [f"{here}"])
        for part in ("parts", "regions"):
            total = sum(entry["percent"] for entry in here[part])
            tally.check(f"its {part} add up", [] if abs(total - here["percent"]) < 1e-9 else [f"{total} of {here['percent']}"])
        tally.check("back, x > 0: the patient's right", [f"{r}" for r in here["regions"] if r["side"] == "left"])
        swap = {"left": "right", "right": "left", "midline": "midline"}

        def keyed(regions, sides):
            return {(r["structure"], sides[r["side"]]): r["percent"] for r in regions}

        same = here["percent"] == there["percent"] and keyed(here["regions"], {s: s for s in swap}) == keyed(there["regions"], swap)
        tally.check("the mirrored drawing has the mirrored answer", [] if same else [f"{here}", f"{there}"])
        tally.check("the side view counts in no percent", [] if aside["percent"] == 0 and aside["uncounted_patches"] == 1 else [f"{aside}"])
        tally.check("no drawing, no percent", [] if none == {"percent": 0, "parts": [], "regions": [], "patches": 0, "uncounted_patches": 0} else [f"{none}"])
    for name, now, before, verdict in [("same", right, right, "within-redrawing-error"), ("a little beside", beside, right, "within-redrawing-error"),
                                       ("other side", left, right, "may-have-moved"), ("none before", right, plain, None), ("side view", side, right, None)]:
        overlap = batch.answer(tally, f"overlap ({name})", "overlap", "overlap", "--visit", now, "--before", before)
        if overlap is not None:
            tally.check(f"verdict: {name}", [] if overlap["verdict"] == verdict else [f"{overlap}"])
            tally.check(f"a number where there is a verdict: {name}", [] if (overlap["jaccard"]["both"] is None) == (verdict is None) else [f"{overlap}"])


LISTS = ["tied", "explain", "check", "treat", "leave"]


def ill_ordered(reasons):
    """What is wrong with the order, the ranks and the paths of an answer of reason."""
    for name in LISTS:
        entries = reasons[name]
        scores = [entry["score"] for entry in entries]
        if scores != sorted(scores, reverse=True):
            yield f"{name} is not sorted"
        places = [(entry["structure"], entry["side"]) for entry in entries]
        if len(set(places)) != len(places):
            yield f"{name} has a place twice"
        for index, entry in enumerate(entries):
            first = scores.index(entry["score"]) + 1
            if entry["rank"] != first:
                yield f"{name}/{index}: rank {entry['rank']}, expected {first}"
            for one, next_one in zip(entry["path"], entry["path"][1:]):
                if one["to"] != next_one["from"]:
                    yield f"{name}/{index}: the path is broken"
            ends = {(p["structure"], p["side"]) for step in entry["path"][:1] + entry["path"][-1:] for p in (step["from"], step["to"])}
            if entry["path"] and entry["side"] != "midline" and places[index] not in ends:
                yield f"{name}/{index}: the path does not end at the place"


def missaid(reasons):
    """What is wrong with what each list says of its rows."""
    explain = [entry["score"] for entry in reasons["explain"]]
    if explain and explain[0] != 1:
        yield f"the best score of explain is {explain[0]}"
    for index, entry in enumerate(reasons["check"]):
        if "position" not in entry:
            yield f"check/{index} has no position"
    for index, entry in enumerate(reasons["treat"]):
        if abs(entry["score"] - sum(term["value"] for term in entry["terms"])) > 1e-9:
            yield f"treat/{index}: {entry['score']} is not the sum of its terms"
    for index, entry in enumerate(reasons["leave"]):
        if entry["score"] != 0 or entry["rank"] != 1:
            yield f"leave/{index} stands before or after another"
    both = places_of(reasons["treat"]) & places_of(reasons["leave"])
    if both:
        yield f"to be treated and to be left alone: {both}"


def places_of(entries):
    return {(entry["structure"], entry["side"]) for entry in entries}


def found_places(visit):
    """Places with something found, without those that are clear or could not be examined."""
    return {(f["structure"], f.get("side", "midline")) for f in visit["findings"]
            if any(f.get(quality) for quality in ("tenderness", "restriction", "sore", "stiff", "familiar")) or f.get("play", 3) != 3
            or not {"tenderness", "restriction", "play", "clear", "unable"} & set(f)}


def check_reason(tally, batch):
    bare = {"format": "raphe-visit", "version": 1}
    alone = {**bare, "findings": [{"structure": "gluteus-maximus", "side": "right", "tenderness": 2}]}
    noted = {**bare, "findings": [{"structure": "hip-joint", "side": "left", "note": "clicks"}]}
    cases = {path.name: path for path in visits()}
    cases["one finding"] = batch.write("alone.json", alone)
    cases["a note only"] = batch.write("noted.json", noted)
    for name, path in cases.items():
        reasons = batch.answer(tally, f"reason ({name})", "reason", "reason", "--visit", path)
        if reasons is None:
            continue
        tally.check(f"order, ranks and paths of reason ({name})", ill_ordered(reasons))
        tally.check(f"what the lists of reason say ({name})", missaid(reasons))
        found = found_places(load(batch.folder / path))
        told = places_of(reasons["treat"]) | places_of(reasons["leave"])
        tally.check(f"all that was found is to be treated or left alone ({name})", [] if told == found else [f"{told ^ found}"])
        far = [f"tied/{i} has no path" for i, entry in enumerate(reasons["tied"]) if not entry["path"] and (entry["structure"], entry["side"]) not in found]
        tally.check(f"what is tied to the findings has a path ({name})", far)

    check_reason_of_nothing(tally, batch, bare)
    check_reason_with_cautions(tally, batch, alone)


def check_reason_of_nothing(tally, batch, bare):
    nothing = {"tied": [], "explain": [], "unexplained": 0, "check": [], "treat": [], "leave": [], "cautions": []}
    silent = {"no findings": [], "nothing but a failed try": [{"structure": "hip-joint", "side": "left", "unable": "plaster"}],
              "all clear": [{"structure": "hip-joint", "side": "left", "clear": True}]}
    for name, findings in silent.items():
        reasons = batch.answer(tally, f"reason ({name})", "reason", "reason", "--visit", batch.write("silent.json", {**bare, "findings": findings}))
        asked = reasons.pop("warnings_to_ask", []) if reasons else []
        tally.check(f"{name}, no suggestions", [] if reasons == nothing else [f"{reasons}"])
        tally.check(f"{name}, but warning signs to ask for", [] if asked else ["none"])


def check_reason_with_cautions(tally, batch, visit):
    place = {"structure": "gluteus-maximus", "side": "right"}
    two = {**visit, "findings": visit["findings"] + [{"structure": "piriformis", "side": "left", "tenderness": 1}]}
    refused = batch.answer(tally, "reason (consent refused at a place)", "reason", "reason", "--visit",
                           batch.write("refused.json", {**two, "conditions": [{"condition": "consent-refused", "at": [place]}]}))
    if refused is not None:
        tally.check("where consent is refused nothing is treated",
                    [] if places_of(refused["leave"]) == {("gluteus-maximus", "right")} and places_of(refused["treat"]) == {("piriformis", "left")}
                    else [f"treat {places_of(refused['treat'])}, leave {places_of(refused['leave'])}"])
        stops = [v for entry in refused["leave"] for v in entry.get("cautions", []) if v["verdict"] == "stop" and v["condition"] == "consent-refused"]
        tally.check("what is left alone says why", [] if stops and refused["leave"][0]["why"] == stops[0]["reason"] else [f"{refused['leave']}"])
        tally.check("what holds at one place does not stand for everywhere",
                    [f"{v}" for v in refused["cautions"] if v["condition"] == "consent-refused"])
    many = {**two, "findings": two["findings"] + [{"structure": i, "side": "midline", "play": 2} for i in
            ("c2-c3", "c3-c4", "c4-c5", "c5-c6", "c6-c7", "t1-t2", "t2-t3", "t3-t4", "t4-t5", "t5-t6", "t6-t7", "t7-t8", "t8-t9",
             "t9-t10", "t10-t11", "l1-l2", "l2-l3", "l3-l4", "l4-l5", "l5-s1")]}
    for name, findings in {"two findings": two, "more findings than a list holds": many}.items():
        locked = batch.answer(tally, f"reason (emergency, {name})", "reason", "reason", "--visit",
                              batch.write("locked.json", {**findings, "conditions": [{"condition": "suspected-cauda-equina"}]}))
        if locked is None:
            continue
        tally.check(f"an emergency locks checks and treatment ({name})", [f"{part}: {places_of(locked[part])}" for part in ("check", "treat") if locked[part]])
        tally.check(f"in an emergency all that was found is left alone ({name})",
                    [] if places_of(locked["leave"]) == found_places(findings) else [f"{places_of(locked['leave']) ^ found_places(findings)}"])
        gravest = locked["cautions"][0] if locked["cautions"] else {}
        tally.check(f"the emergency is the first caution ({name})",
                    [] if gravest.get("verdict") == "stop" and not gravest["actions"] and gravest["condition"] == "suspected-cauda-equina" else [f"{gravest}"])
        tally.check(f"order, ranks and paths in an emergency ({name})", ill_ordered(locked))
        tally.check(f"what the lists say in an emergency ({name})", missaid(locked))


def check_cautions(tally, batch):
    for path in visits():
        batch.answer(tally, f"cautions ({path.name})", "cautions", "cautions", "--visit", path)
    held = batch.write("held.json", {"format": "raphe-visit", "version": 1, "conditions": [
        {"condition": "anticoagulant"}, {"condition": "suspected-leg-clot", "at": [{"structure": "sural-region-medial", "side": "right"}]}],
        "complaint_at": [{"structure": "sural-region-medial", "side": "right"}],
        "findings": [{"structure": "soleus", "side": "right", "tenderness": 2}, {"structure": "soleus", "side": "left", "tenderness": 1}]})
    cautions = batch.answer(tally, "cautions", "cautions", "cautions", "--visit", held)
    if cautions is None:
        return
    weights = ["stop", "adapt", "ask"]
    complaints = []
    for verdicts in [cautions["general"], *(p["verdicts"] for p in cautions["places"])]:
        order = [(weights.index(v["verdict"]), v["rule"]) for v in verdicts]
        if order != sorted(order):
            complaints.append(f"not in order: {order}")
    tally.check("the gravest verdict comes first", complaints)
    places = [(p["structure"], p["side"]) for p in cautions["places"]]
    tally.check("each place once, sorted", [] if places == [("soleus", "left"), ("soleus", "right"), ("sural-region-medial", "right")] else [f"{places}"])
    barred = [(p["structure"], p["side"]) for p in cautions["places"] if any(v["verdict"] == "stop" and not v["actions"] for v in p["verdicts"])]
    tally.check("a suspected clot bars that leg and not the other", [] if barred == places[1:] else [f"{barred}"])
    tally.check("what the blood thinner calls for stands for everywhere",
                [] if "anticoagulant" in {v["condition"] for v in cautions["general"]} else [f"{cautions['general']}"])


def check_map(tally, batch):
    starts = {"pdf": b"%PDF-", "svg": b"<?xml", "png": b"\x89PNG"}
    for ending, start in starts.items():
        ran = batch.run("map", "--visit", OWN_VISIT, "--out", f"map.{ending}", "--paper", "letter" if ending == "svg" else "a4")
        file = batch.folder / f"map.{ending}"
        complaints = []
        if ran.returncode != 0 or ran.stderr:
            complaints.append(f"exit status {ran.returncode}: {(ran.stdout + ran.stderr).decode(errors='replace').strip()}")
        elif not file.exists() or not file.read_bytes().startswith(start):
            complaints.append(f"{file.name} is not what its name says")
        else:
            complaints += problems("map", json.loads(ran.stdout))
        tally.check(f"raphe-batch map to .{ending}", complaints)
    german = json.loads(batch.run("map", "--visit", OWN_VISIT, "--out", "map.pdf", "--language", "de").stdout)
    tally.check("raphe-batch map in German", list(problems("map", german)) + ([] if german["reading"] is None else ["the formula is for English"]))
    (batch.folder / "several").mkdir()
    ran = batch.run("map", "--visit", OWN_VISIT, INTAKE_VISIT, "--out", "several")
    several = json.loads(ran.stdout)
    tally.check("raphe-batch map of several visits",
                list(problems("map", several)) + ([] if len(several["documents"]) == len(list((batch.folder / "several").iterdir())) == 2 else [f"{several}"]))


def check_grade(tally, batch):
    ran = subprocess.run([batch.program, "grade"], input=b"The cat sat on the mat.\n\n", capture_output=True, env=batch.environment)
    grades = [json.loads(line) for line in ran.stdout.splitlines()]
    complaints = [] if len(grades) == 2 and abs(grades[0]["grade"] + 1.45) < 0.001 else [f"{grades}"]
    tally.check("raphe-batch grade", complaints + [c for grade in grades for c in problems("grade", grade)])


def check_csv(tally, batch):
    ran = batch.run("csv", "--visit", OWN_VISIT, INTAKE_VISIT)
    rows = list(csv.reader(io.StringIO(ran.stdout.decode(), newline=""), strict=True))
    complaints = [] if ran.returncode == 0 and not ran.stderr else [f"exit status {ran.returncode}: {ran.stderr.decode().strip()}"]
    tally.check("raphe-batch csv", complaints + [f"line {i + 1}: {len(row)} cells" for i, row in enumerate(rows) if len(row) != len(rows[0])])
    found = [dict(zip(rows[0], row)) for row in rows[1:]]
    tender = [row["value"] for row in found if (row["id"], row["quality"]) == ("gluteus-maximus", "tenderness")]
    tally.check("csv: the grades of both visits", [] if tender == ["3", "2"] else [f"{tender}"])
    tally.check("csv: both visits are of one patient", [] if {row["patient"] for row in found} == {"1"} else ["they are not"])
    tally.check("csv: nobody is named", [] if b"Halvorsen" not in ran.stdout else ["somebody is"])


def check_deidentified(tally, batch):
    (batch.folder / "copies").mkdir()
    ran = batch.run("deidentify", "--visit", INTAKE_VISIT, OWN_VISIT, "--out-dir", "copies")
    names = sorted(file.name for file in (batch.folder / "copies").iterdir())
    complaints = [] if ran.returncode == 0 and not ran.stdout else [f"exit status {ran.returncode}: {ran.stderr.decode().strip()}"]
    tally.check("raphe-batch deidentify", complaints + ([] if b"local law" in ran.stderr else ["no warning"]))
    tally.check("deidentify: the names of the copies", [] if names == ["patient-1-visit-1.json", "patient-1-visit-2.json"] else names)
    for name in names:
        copied = load(batch.folder / "copies" / name)
        text = json.dumps(copied)
        tally.check(f"the copy {name}", problems("visit", copied))
        tally.check(f"the copy {name} holds no name and no day", [word for word in ["Halvorsen", "Ambar", "Lind", "drive", "2024", "1981"] if word in text])
    days = [load(batch.folder / "copies" / name)["date"] for name in names]
    tally.check("deidentify: intervals stay", [] if days == ["2000-01-08", "2000-01-01"] else days)
    alone = batch.run("deidentify", "--visit", OWN_VISIT)
    tally.check("deidentify prints one copy alone", problems("visit", json.loads(alone.stdout)))


def check_practice(tally, batch):
    made = batch.answer(tally, "make", "make", *key("make", "--practice", "practice.raphe", "--name", "Test", "--user-name", "Ada Brook"))
    first = batch.answer(tally, "import", "import", *key("import", "--practice", "practice.raphe", "--visit", OWN_VISIT))
    again = batch.answer(tally, "import (again)", "import", *key("import", "--practice", "practice.raphe", "--visit", OWN_VISIT, OWN_VISIT))
    if first is not None and again is not None:
        entries = first + again
        tally.check("one patient", [] if len({e["patient"] for e in entries}) == 1 else [f"{entries}"])
        tally.check("three visits", [] if len({e["visit"] for e in entries}) == 3 else [f"{entries}"])
    chain = batch.answer(tally, "verify", "verify", "verify", "--practice", "practice.raphe")
    whole = batch.answer(tally, "verify (with the key)", "verify", *key("verify", "--practice", "practice.raphe"))
    if chain and whole:
        tally.check("what verify says it checked", [] if (chain["checked"], whole["checked"]) == ("chain", "all") else [f"{chain}, {whole}"])
    batch.answer(tally, "backup", "backup", "backup", "--practice", "practice.raphe", "--out", "practice.raphe-backup")
    batch.answer(tally, "restore", "restore", "restore", "--practice", "elsewhere.raphe", "--from", "practice.raphe-backup")
    exported = batch.answer(tally, "export", "export", *key("export", "--practice", "elsewhere.raphe", "--patient", "1"))
    if exported is not None:
        tally.check("the patient in an export", problems("patient", exported["patient"]))
        taken = batch.answer(tally, "import-patient", "import-patient",
                             *key("import-patient", "--practice", "practice.raphe", "--export", batch.write("export.json", exported)))
        again = batch.answer(tally, "export (of what was imported)", "export", *key("export", "--practice", "practice.raphe", "--patient", "2"))
        if taken is not None and again is not None:
            tally.check("who is alike is named", [] if taken["alike"] == [1] else [f"{taken}"])
            same = again["patient"] == exported["patient"] and [v["document"] for v in again["visits"]] == [v["document"] for v in exported["visits"]]
            tally.check("an imported record is exported the same", [] if same else [f"{again}"])
    if made:
        held = (batch.folder / "practice.raphe").read_bytes()
        tally.check("the recovery key is not in the file", [] if made["recovery_key"].encode() not in held else ["it is"])


def check_refusals(tally, batch):
    """Bad input: exit status 2, exactly one line on standard error that names the place, nothing on standard output."""
    visit = load(OWN_VISIT)

    def reason(document, name="visit.json"):
        return ["reason", "--visit", batch.write(name, document)]

    def drawn(*more):
        return ["map", "--visit", OWN_VISIT, *more]

    batch.write("not-a-practice.raphe", "just words")
    (batch.folder / "locked").mkdir()
    # Name, arguments (made when it is their turn), words that the line must hold.
    cases = [
        ("unknown field", lambda: reason(spoilt(visit, colour="red")), ["visit.json#/", "colour"]),
        ("unknown field of a finding", lambda: reason(spoilt(visit, "findings", 1, colour="red")), ["visit.json#/findings/1", "colour"]),
        ("bad JSON", lambda: reason('{\n  "format": "raphe-visit",\n  "version" 1\n}\n'), ["visit.json, line 3, column 13"]),
        ("empty file", lambda: reason(""), ["visit.json, line 1, column 1"]),
        ("another format", lambda: reason(spoilt(visit, format="notes")), ["visit.json#/format", "notes"]),
        ("later version", lambda: reason(spoilt(visit, version=3)), ["visit.json#/version", "3"]),
        ("unknown structure", lambda: reason(spoilt(visit, "findings", 0, structure="third-lung")), ["visit.json#/findings/0/structure", "third-lung"]),
        ("wrong side", lambda: reason(spoilt(visit, "findings", 0, side="midline")), ["visit.json#/findings/0/side", "gluteus-maximus"]),
        ("no side", lambda: reason(spoilt(visit, "findings", 0, side=None)), ["visit.json#/findings/0", "side"]),
        ("side that is none", lambda: reason(spoilt(visit, "findings", 0, side="dorsal")), ["visit.json#/findings/0/side", "dorsal"]),
        ("grade too high", lambda: reason(spoilt(visit, "findings", 0, tenderness=5)), ["visit.json#/findings/0/tenderness", "5"]),
        ("text for a number", lambda: reason(spoilt(visit, "findings", 0, tenderness="3")), ["visit.json#/findings/0/tenderness", "number"]),
        ("tender and clear of it", lambda: reason(spoilt(visit, "findings", 0, clear=True)), ["visit.json#/findings/0", "tenderness"]),
        ("the same place twice", lambda: reason({**visit, "findings": visit["findings"] + visit["findings"][:1]}), ["visit.json#/findings/10", "gluteus-maximus"]),
        ("no such day", lambda: reason(spoilt(visit, date="2023-02-29")), ["visit.json#/date", "2023-02-29"]),
        ("play of a muscle", lambda: reason(spoilt(visit, "findings", 0, play=3)), ["visit.json#/findings/0/play", "gluteus-maximus"]),
        ("play and clear motion", lambda: reason(spoilt(visit, "findings", 2, play=2)), ["visit.json#/findings/2", "play"]),
        ("certain of nothing felt", lambda: reason(spoilt(visit, "findings", 4, certain=True)), ["visit.json#/findings/4", "certain"]),
        ("where it hurts, no side", lambda: reason({**visit, "complaint_at": [{"structure": "hip-joint"}]}), ["visit.json#/complaint_at/0", "side"]),
        ("judged twice", lambda: reason({**visit, "judgements": 2 * [{"list": "check", "structure": "sacrum", "pinned": True}]}),
         ["visit.json#/judgements/1", "sacrum"]),
        ("pinned and dismissed", lambda: reason({**visit, "judgements": [{"list": "check", "structure": "sacrum", "pinned": True, "dismissed": "x"}]}),
         ["visit.json#/judgements/0", "pinned"]),
        ("unknown condition", lambda: reason({**visit, "conditions": [{"condition": "hiccups"}]}), ["visit.json#/conditions/0/condition", "hiccups"]),
        ("condition without its place", lambda: reason({**visit, "conditions": [{"condition": "open-wound"}]}), ["visit.json#/conditions/0", "at"]),
        ("condition that has no place", lambda: reason({**visit, "conditions": [{"condition": "diabetes", "at": [{"structure": "femur", "side": "left"}]}]}),
         ["visit.json#/conditions/0", "at"]),
        ("cautions of an unknown condition", lambda: ["cautions", "--visit", batch.write("visit.json", {**visit, "conditions": [{"condition": "hiccups"}]})],
         ["visit.json#/conditions/0/condition", "hiccups"]),
        ("import of an unknown condition", lambda: key("import", "--practice", "new.raphe", "--visit",
                                                    batch.write("visit.json", {**visit, "conditions": [{"condition": "hiccups"}]})),
         ["visit.json#/conditions/0/condition", "hiccups"]),
        ("missing file", lambda: ["reason", "--visit", "nowhere.json"], ["nowhere.json"]),
        ("a folder for a file", lambda: ["reason", "--visit", "locked"], ["locked"]),
        ("no verb", lambda: [], ["raphe-batch", "required"]),
        ("unknown verb", lambda: ["guess"], ["guess"]),
        ("unknown option", lambda: ["atlas", "--loud"], ["--loud"]),
        ("missing option", lambda: ["reason"], ["--visit"]),
        ("one option missing of three", lambda: ["under", "--view", "back", "--x", "1"], ["--y"]),
        ("option without its value", lambda: ["reason", "--visit"], ["--visit"]),
        ("wrong view", lambda: ["under", "--view", "inside", "--x", 60, "--y", 470], ["--view", "inside"]),
        ("empty line", lambda: ["read", "--text", " , "], ["--text"]),
        ("no line", lambda: ["read"], ["--text"]),
        ("wrong facing", lambda: ["under", "--view", "side", "--facing", "up", "--x", 0, "--y", 470], ["--facing", "up"]),
        ("word for a number", lambda: ["under", "--view", "back", "--x", "far", "--y", 470], ["--x", "far"]),
        ("point off the drawing", lambda: ["under", "--view", "back", "--x", 501, "--y", 470], ["--x"]),
        ("point below the floor", lambda: ["under", "--view", "back", "--x", 60, "--y", 1001], ["--y"]),
        ("point that is no number", lambda: ["under", "--view", "back", "--x", "nan", "--y", 470], ["--x"]),
        ("edge that is none", lambda: ["edge", "--structure", "piriformis", "--stature", 1700], ["--structure", "piriformis"]),
        ("stature in metres", lambda: ["edge", "--structure", "iliac-crest", "--stature", 1.7], ["--stature", "millimetres"]),
        ("bad paper size", lambda: drawn("--out", "map.pdf", "--paper", "napkin"), ["--paper", "napkin"]),
        ("unknown language", lambda: drawn("--out", "map.pdf", "--language", "la"), ["--language", "la"]),
        ("unknown ending", lambda: drawn("--out", "map.doc"), ["map.doc", ".pdf"]),
        ("no ending", lambda: drawn("--out", "map"), ["map", ".pdf"]),
        ("folder for the map missing", lambda: drawn("--out", "nowhere/map.pdf"), ["nowhere/map.pdf"]),
        ("map of a broken visit", lambda: ["map", "--visit", batch.write("broken.json", "{"), "--out", "map.pdf"], ["broken.json, line 1, column 2"]),
        ("import of a nameless visit", lambda: key("import", "--practice", "new.raphe", "--visit", batch.write("nameless.json", spoilt(visit, patient=None))),
         ["nameless.json", "patient"]),
        ("import into some other file", lambda: key("import", "--practice", "not-a-practice.raphe", "--visit", OWN_VISIT), ["not-a-practice.raphe"]),
        ("import into a missing file", lambda: key("import", "--practice", "nowhere/p.raphe", "--visit", OWN_VISIT), ["nowhere/p.raphe"]),
        ("import by someone unknown", lambda: ["import", "--practice", "practice.raphe", "--visit", OWN_VISIT, "--sign-in", "bo", "--passphrase-fd", "0"],
         ["sign-in name"]),
        ("a practice made over another", lambda: key("make", "--practice", "practice.raphe", "--name", "Test", "--user-name", "Ada"), ["practice.raphe", "exists"]),
        ("a practice in a missing folder", lambda: key("make", "--practice", "nowhere/p.raphe", "--name", "Test", "--user-name", "Ada"), ["nowhere/p.raphe"]),
        ("import of a record that is none", lambda: key("import-patient", "--practice", "practice.raphe", "--export", batch.write("visit.json", visit)),
         ["visit.json#/format", "raphe-visit"]),
        ("import of a missing record", lambda: key("import-patient", "--practice", "practice.raphe", "--export", "nowhere.json"), ["nowhere.json"]),
        ("table of a broken visit", lambda: ["csv", "--visit", OWN_VISIT, batch.write("broken.json", "{")], ["broken.json, line 1, column 2"]),
        ("table into a missing folder", lambda: ["csv", "--visit", OWN_VISIT, "--out", "nowhere/t.csv"], ["nowhere/t.csv"]),
        ("copies without a folder", lambda: ["deidentify", "--visit", OWN_VISIT, INTAKE_VISIT], ["--out-dir"]),
        ("copies into a missing folder", lambda: ["deidentify", "--visit", OWN_VISIT, "--out-dir", "nowhere"], ["nowhere/patient-1-visit-1.json"]),
        ("copies over others", lambda: ["deidentify", "--visit", OWN_VISIT, "--out-dir", "copies"], ["copies/patient-1-visit-1.json", "exists"]),
        ("verify of a missing file", lambda: ["verify", "--practice", "nowhere.raphe"], ["nowhere.raphe"]),
        ("export of nobody", lambda: key("export", "--practice", "practice.raphe", "--patient", "77"), ["77"]),
    ]
    for name, arguments, words in cases:
        for left in batch.folder.glob("map*"):
            left.unlink()
        ran = batch.run(*arguments())
        error = ran.stderr.decode(errors="replace")
        complaints = []
        if ran.returncode != 2:
            complaints.append(f"exit status {ran.returncode}, expected 2")
        if ran.stdout:
            complaints.append(f"standard output is not empty: {ran.stdout[:80]!r}")
        if not (error.endswith("\n") and error.count("\n") == 1 and error.strip()):
            complaints.append(f"not exactly one line on standard error: {error!r}")
        complaints += [f"'{word}' is not named in: {error.strip()}" for word in words if word not in error]
        complaints += [f"{left.name} was left behind" for left in batch.folder.glob("map*")]
        tally.check(f"raphe-batch refuses: {name}", complaints)
    words = (batch.folder / "not-a-practice.raphe").read_text(encoding="utf-8")
    tally.check("a file that is no practice stays as it was", [] if words == "just words" else [words[:80]])
    tally.check("a refused import leaves no practice file", ["new.raphe was made"] if (batch.folder / "new.raphe").exists() else [])


def main():
    if len(sys.argv) != 2 or not shutil.which(sys.argv[1]):
        print("usage: tests/schema/validate.py <path of raphe-batch>", file=sys.stderr)
        return 2
    tally = Tally()
    check_schemas(tally)
    check_content(tally)
    check_visits(tally)
    check_patient(tally)
    check_refusals_by_schema(tally)
    with tempfile.TemporaryDirectory(prefix="raphe-schema-") as folder:
        batch = Batch(os.path.abspath(shutil.which(sys.argv[1])), folder)
        check_atlas_output(tally, batch)
        check_under(tally, batch)
        check_read(tally, batch)
        check_edge(tally, batch)
        check_plan(tally, batch)
        check_extent(tally, batch)
        check_pain(tally, batch)
        check_reason(tally, batch)
        check_cautions(tally, batch)
        check_map(tally, batch)
        check_grade(tally, batch)
        check_csv(tally, batch)
        check_deidentified(tally, batch)
        check_practice(tally, batch)
        check_refusals(tally, batch)
    print(f"{tally.passed} passed, {tally.failed} failed")
    return 1 if tally.failed else 0


if __name__ == "__main__":
    sys.exit(main())
