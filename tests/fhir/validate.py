#!/usr/bin/python3
"""Checks the FHIR R4 bundles of raphe-batch: by HL7's own JSON schema, by what that schema lets pass, and against the visits.

    tests/fhir/validate.py <path of raphe-batch>

Needs Debian's python3-jsonschema. Ends with 'N passed, N failed'; exit status 1 when anything failed.
"""

import copy
import hashlib
import json
import lzma
import os
import pathlib
import shutil
import subprocess
import sys
import tempfile
import time

import jsonschema

import against_visit
import bundle_checks
import spoiling

HERE = pathlib.Path(__file__).resolve().parent
ROOT = HERE.parents[1]
SCHEMA = HERE / "fhir.schema.json.xz"
CHECKSUM = "15b9548af6412c44faaa411456e0652542de286fd1c58ef882b09bdc8947909d"
FULL = HERE / "visit.json"
VISITS = [FULL, ROOT / "tests/schema/visit.json", ROOT / "tests/schema/intake-visit.json", *sorted((ROOT / "demo/practice").glob("*.json"))]
STATES = {  # of the export; status of observations, answers, plan, visit
    "draft": ("preliminary", "in-progress", "draft", "in-progress"),
    "signed": ("final", "completed", "active", "finished"),
    "being amended": ("preliminary", "in-progress", "draft", "finished"),
    "entered in error": ("entered-in-error",) * 4,
}


def load(path):
    return json.loads(pathlib.Path(path).read_text(encoding="utf-8"))


CONTENT = {
    "signs": load(ROOT / "resources/safety/warning-signs.json")["signs"],
    "movements": load(ROOT / "resources/examination/movements.json")["movements"],
    "vitals": load(ROOT / "resources/fhir-codes.json")["vitals"],
}


class Tally:
    def __init__(self):
        self.passed = self.failed = 0

    def check(self, name, complaints):
        complaints = list(complaints)
        if complaints:
            self.failed += 1
            print(f"FAILED {name}")
            for complaint in complaints[:10]:
                print(f"  {complaint}")
        else:
            self.passed += 1


class Schema:
    """The whole schema, as it is; and one resource by the part of its kind, which says the same of it and takes no search."""

    def __init__(self):
        text = lzma.decompress(SCHEMA.read_bytes())
        found = hashlib.sha256(text).hexdigest()
        if found != CHECKSUM:
            raise SystemExit(f"{SCHEMA.name}: the checksum is {found}, expected {CHECKSUM}")
        self.schema = json.loads(text)
        draft = jsonschema.Draft6Validator
        if self.schema["$schema"] != draft.META_SCHEMA["$id"].rstrip("#") + "#":
            raise SystemExit(f"{SCHEMA.name}: is of {self.schema['$schema']}")
        draft.check_schema(self.schema)
        self.whole = draft(self.schema)
        self.seconds = 0.0

    def problems(self, bundle):
        start = time.monotonic()
        found = [f"{'/'.join(map(str, e.absolute_path))}: {e.message[:200]}" for e in self.whole.iter_errors(bundle)]
        self.seconds += time.monotonic() - start
        return found + list(self.shapes(bundle, "Bundle"))

    def shapes(self, value, kind, place=""):
        """What the schema means and forgets to say: that an object is an object, and one where one is asked."""
        if kind == "ResourceList":
            kind = value.get("resourceType", "")
        fields = self.schema["definitions"].get(kind, {}).get("properties")
        if fields is None:
            return
        if not isinstance(value, dict):
            yield f"{place}: no object, but {kind} is asked"
            return
        for name, inner in value.items():
            field = fields.get(name, {})
            part = (field.get("items", field).get("$ref") or "/").split("/")[-1]
            for index, one in enumerate(inner if "items" in field and isinstance(inner, list) else [inner]):
                yield from self.shapes(one, part, f"{place}/{name}/{index}" if "items" in field else f"{place}/{name}")

    def quick_problems(self, bundle):
        """Entry by entry, until the first that does not fit."""
        for entry in bundle["entry"]:
            kind = entry["resource"].get("resourceType")
            if kind not in self.schema["definitions"]:
                return [f"no kind {kind}"]
            errors = self.whole.evolve(schema={"$ref": f"#/definitions/{kind}"}).iter_errors(entry["resource"])
            if error := next(iter(errors), None):
                return [error.message[:200]]
        return list(self.shapes(bundle, "Bundle"))


class Batch:
    def __init__(self, program, folder):
        self.program, self.folder = program, pathlib.Path(folder)

    def run(self, *arguments):
        return subprocess.run([self.program, "fhir", *map(str, arguments)], capture_output=True, cwd=self.folder, timeout=120)

    def bundle(self, *arguments):
        ran = self.run(*arguments)
        if ran.returncode or ran.stderr:
            raise SystemExit(f"raphe-batch fhir {' '.join(map(str, arguments))}: {ran.returncode}, {ran.stderr.decode()}")
        return json.loads(ran.stdout, parse_constant=lambda word: float(word))

    def write(self, name, document):
        path = self.folder / name
        path.write_text(json.dumps(document), encoding="utf-8")
        return path


def all_problems(schema, bundle, visit):
    return schema.problems(bundle) + bundle_checks.problems(bundle) + against_visit.problems(bundle, visit, CONTENT)


def cleaned(visit):
    """The full visit with its texts as FHIR may hold them."""
    visit = copy.deepcopy(visit)
    visit["complaints"][0]["text"] = "Ache at the low back after long drives"
    return visit


def check_visits(tally, schema, batch):
    for path in VISITS:
        bundle = batch.bundle("--visit", path)
        visit = load(path)
        tally.check(f"bundle of {path.name}", all_problems(schema, bundle, visit))
        statuses = {r["status"] for r in bundle_checks.resources(bundle, "Observation")}
        tally.check(f"{path.name} alone is a draft", [] if statuses <= {"preliminary"} else [str(statuses)])
        text = json.dumps(bundle)
        tally.check(f"no time of day without a zone, {path.name}", [word for word in ["T09:", "T00:"] if f"{visit['date']}{word}" in text])
    texts = [c["code"]["text"] for c in bundle_checks.resources(batch.bundle("--visit", FULL), "Condition")]
    tally.check("white space and control characters are cleaned", [] if cleaned(load(FULL))["complaints"][0]["text"] in texts else texts)


def check_same(tally, batch):
    twice = [batch.run("--visit", FULL).stdout for _ in range(2)]
    tally.check("the same visit gives the same bundle", [] if twice[0] == twice[1] and twice[0] else ["they differ"])
    ran = batch.run("--visit", FULL, "--out", "bundle.json")
    written = (batch.folder / "bundle.json").read_bytes()
    tally.check("a file holds what is printed", [] if (ran.returncode, ran.stdout, written) == (0, b"", twice[0]) else ["they differ"])


def export_of(visit, state, history):
    """What the verb export prints, of one patient with an older visit and this one."""
    older = {"format": "raphe-visit", "version": 2, "patient": visit["patient"], "date": "2024-03-05", "findings": []}
    return {
        "format": "raphe-export",
        "version": 1,
        "patient": load(ROOT / "tests/schema/patient.json"),
        "visits": [{"state": "draft", "document": older}, {"state": state, "document": visit, "history": history}],
        "accesses": [],
    }


def signed(visit, **more):
    return {"act": "signed", "author": "J. Ambar", "entered_at": "2024-03-19T09:05:00Z", "document": visit, **more}


def check_states(tally, schema, batch):
    visit = load(FULL)
    for state, expected in STATES.items():
        history = [] if state == "draft" else [signed(visit), {"act": "opened", "author": "B. Holm", "entered_at": "2024-03-20T08:00:00Z"}]
        if state == "entered in error":
            history.append({"act": "in-error", "author": "B. Holm", "entered_at": "2024-03-21T08:00:00Z", "reason": "the wrong patient"})
        document = export_of(visit, state, history)
        export_schema = load(ROOT / "resources/schema/export.schema.json")
        tally.check("the export is one", [e.message for e in jsonschema.Draft202012Validator(export_schema).iter_errors(document)])
        path = batch.write("export.json", document)
        bundle = batch.bundle("--export", path, "--zone", "+01:00", "--practice-name", "Lowbridge Practice")
        tally.check(f"bundle of a visit, {state}", all_problems(schema, bundle, visit))
        found = tuple(
            sorted({r["status"] for r in bundle_checks.resources(bundle, kind)}) for kind in ("Observation", "QuestionnaireResponse", "CarePlan", "Encounter")
        )
        tally.check(f"statuses, {state}", [] if found == tuple([status] for status in expected) else [str(found)])
        acts = [p["activity"]["coding"][1]["code"] for p in bundle_checks.resources(bundle, "Provenance")]
        tally.check(f"signatures, {state}", [] if acts == [h["act"] for h in history if h["act"] != "opened"] else [str(acts)])
        if state == "entered in error":
            check_in_error(tally, bundle)
        if state == "signed":
            check_signed(tally, bundle)


def check_signed(tally, bundle):
    patient = bundle_checks.resources(bundle, "Patient")[0]
    record = load(ROOT / "tests/schema/patient.json")
    told = json.dumps(patient)
    tally.check("the record's contacts", [word for word in ["0555 12", record["email"], record["address"], "Ib Lund", "Dr Quill", "female"] if word not in told])
    tally.check("not the rest of the record", [word for word in ["metformin", "nickel", "appendix", "scar", "plate", "diabetes"] if word in json.dumps(bundle)])
    times = {p["performedPeriod"]["start"] for p in bundle_checks.resources(bundle, "Procedure") if "performedPeriod" in p}
    tally.check("times have the zone", [] if times == {"2024-03-19T09:20:00+01:00", "2024-03-19T09:24:00+01:00"} else [str(times)])
    ends = [p["performedPeriod"]["end"] for p in bundle_checks.resources(bundle, "Procedure") if "performedPeriod" in p]
    tally.check("work ends after its seconds", [] if ends == ["2024-03-19T09:21:35+01:00", "2024-03-19T09:26:00+01:00"] else [str(ends)])
    names = [o["name"] for o in bundle_checks.resources(bundle, "Organization")]
    tally.check("the practice is named", [] if names == ["Lowbridge Practice"] else [str(names)])
    findings = [c["finding"][0]["itemCodeableConcept"]["coding"][0] for c in bundle_checks.resources(bundle, "ClinicalImpression")]
    expected = [{"system": "http://fhir.de/CodeSystem/bfarm/icd-10-gm", "code": "M54.5", "version": "2024"}]
    tally.check("the impression's code has its list and edition", [] if findings == expected else [str(findings)])


def check_in_error(tally, bundle):
    wrong = []
    for kind, field in [("Procedure", "status"), ("Consent", "status"), ("Flag", "status"), ("Goal", "lifecycleStatus"), ("ClinicalImpression", "status")]:
        wrong += [f"{kind}: {r[field]}" for r in bundle_checks.resources(bundle, kind) if r[field] != "entered-in-error"]
    for condition in bundle_checks.resources(bundle, "Condition"):
        if condition["verificationStatus"]["coding"][0]["code"] != "entered-in-error":
            wrong.append(f"Condition: {condition['verificationStatus']}")
    wrong += ["AdverseEvent without the mark" for a in bundle_checks.resources(bundle, "AdverseEvent") if not a.get("modifierExtension")]
    tally.check("everything of a visit entered in error says so", wrong)


def check_amended(tally, schema, batch):
    """What an amendment changed says so; the rest stays final, and all keeps its id."""
    before, after = load(FULL), load(FULL)
    after["findings"][0]["tenderness"] = 2
    history = [signed(before), {"act": "amended", "author": "B. Holm", "entered_at": "2024-03-22T08:00:00Z", "reason": "a slip", "document": after}]
    bundle = batch.bundle("--export", batch.write("amended.json", export_of(after, "signed", history)))
    tally.check("bundle of an amended visit", all_problems(schema, bundle, after))
    amended = [bundle_checks.own_code(o["code"]) for o in bundle_checks.resources(bundle, "Observation") if o["status"] == "amended"]
    tally.check("what was amended", [] if amended == ["tenderness"] else [str(amended)])
    first = batch.bundle("--export", batch.write("first.json", export_of(before, "signed", history[:1])))
    ids = [[e["fullUrl"] for e in b["entry"] if e["resource"]["resourceType"] not in ("Provenance", "Practitioner")] for b in (first, bundle)]
    tally.check("an amendment keeps the ids", [] if ids[0] == ids[1] else ["they differ"])
    older = batch.bundle("--export", batch.folder / "first.json", "--nth", 1)
    tally.check("an older visit of the export", [] if bundle_checks.resources(older, "Encounter")[0]["period"]["start"] == "2024-03-05" else ["another one"])


def check_catches(tally, schema, batch):
    """Each broken bundle is caught by whom it is made for; so a check that never fails is seen."""
    visit = load(FULL)
    path = batch.write("export.json", export_of(visit, "signed", [signed(visit)]))
    good = batch.bundle("--export", path, "--zone", "+01:00", "--practice-name", "Lowbridge Practice")
    judges = {
        "schema": schema.quick_problems,
        "own": bundle_checks.problems,
        "visit": lambda bundle: against_visit.problems(bundle, visit, CONTENT),
    }
    tally.check("the good bundle is good by each judge", [f"{name}: {judge(good)[:3]}" for name, judge in judges.items() if judge(good)])
    for name, judge, spoil in spoiling.WAYS:
        bundle = copy.deepcopy(good)
        spoil(bundle)
        if bundle == good:
            tally.check(f"spoils: {name}", ["nothing was changed"])
            continue
        try:
            found = judges[judge](bundle)
        except (KeyError, TypeError, AttributeError, StopIteration) as error:
            found = [] if judge == "schema" else [f"cannot be read: {error!r}"]
        tally.check(f"caught by {judge}: {name}", [] if found else ["it passed"])
    # The quick way finds what the whole schema finds: on the good bundle, and where an entry is spoilt.
    bundle = copy.deepcopy(good)
    spoiling.WAYS[0][2](bundle)
    tally.check("the whole schema catches it too", [] if schema.problems(bundle) else ["it passed"])


def check_refusals(tally, batch):
    export = batch.write("export.json", export_of(load(FULL), "draft", []))
    spoilt = batch.write("spoilt.json", export_of({**load(FULL), "date": "2024-02-30"}, "draft", []))
    cases = [
        ("neither visit nor export", [], ["fhir", "--visit"]),
        ("both", ["--visit", FULL, "--export", export], ["fhir", "--export"]),
        ("a visit that is missing", ["--visit", "nowhere.json"], ["nowhere.json"]),
        ("an export that is missing", ["--export", "nowhere.json"], ["nowhere.json"]),
        ("a visit for an export", ["--export", FULL], [FULL.name]),
        ("a visit beyond the last", ["--export", export, "--nth", 3], ["--nth", "1 to 2"]),
        ("a visit before the first", ["--export", export, "--nth", 0], ["--nth"]),
        ("a zone that is none", ["--visit", FULL, "--zone", "CET"], ["--zone", "CET"]),
        ("a zone too far", ["--visit", FULL, "--zone", "+15:00"], ["--zone", "+15:00"]),
        ("a folder that is missing", ["--visit", FULL, "--out", "nowhere/b.json"], ["nowhere/b.json"]),
        ("a state that is none", ["--export", batch.write("state.json", export_of(load(FULL), "lost", []))], ["state.json#/visits/1/state", "lost"]),
        ("a spoilt visit in it", ["--export", spoilt], ["spoilt.json#/visits/1/document", "2024-02-30"]),
    ]
    for name, arguments, words in cases:
        ran = batch.run(*arguments)
        error = ran.stderr.decode(errors="replace")
        complaints = [] if ran.returncode == 2 else [f"exit status {ran.returncode}, expected 2"]
        complaints += ["standard output is not empty"] if ran.stdout else []
        complaints += [] if error.endswith("\n") and error.count("\n") == 1 else [f"not one line on standard error: {error!r}"]
        complaints += [f"'{word}' is not named in: {error.strip()}" for word in words if word not in error]
        tally.check(f"refused: {name}", complaints)


def main():
    if len(sys.argv) != 2 or not shutil.which(sys.argv[1]):
        print("usage: tests/fhir/validate.py <path of raphe-batch>", file=sys.stderr)
        return 2
    schema, tally = Schema(), Tally()
    with tempfile.TemporaryDirectory(prefix="raphe-fhir-") as folder:
        batch = Batch(os.path.abspath(shutil.which(sys.argv[1])), folder)
        check_visits(tally, schema, batch)
        check_same(tally, batch)
        check_states(tally, schema, batch)
        check_amended(tally, schema, batch)
        check_catches(tally, schema, batch)
        check_refusals(tally, batch)
    print(f"HL7's schema: {schema.seconds:.1f} s; {len(spoiling.WAYS)} ways to break a bundle")
    print(f"{tally.passed} passed, {tally.failed} failed")
    return 1 if tally.failed else 0


if __name__ == "__main__":
    sys.exit(main())
