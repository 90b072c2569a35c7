#!/usr/bin/env python3
"""Brings raphe_de.ts and raphe_es.ts up to date with what patients read: the content of resources (patient texts, warning signs, home
advice, plain names of movements and techniques) and the words of the visit map. Translations that are there stay; what is new is
unfinished, and a test fails until somebody translates it (Qt Linguist opens the files).

usage: update.py [--check]     --check: changes nothing; exit 1 when something is missing, unfinished, or does not fit its English
"""
import json
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as ET

HERE = pathlib.Path(__file__).resolve().parent
ROOT = HERE.parents[1]
RESOURCES = ROOT / "resources"
LANGUAGES = ("de", "es")
LUPDATE = shutil.which("lupdate", path="/usr/lib/qt6/bin") or "lupdate"


def content():
    """(context, what it is, text) of everything that stands in data files."""
    load = lambda name: json.loads((RESOURCES / name).read_text(encoding="utf-8"))
    for text in load("intake/patient-texts.json")["texts"]:
        yield "patient-texts", text["id"], text["text"]
    for sign in load("safety/warning-signs.json")["signs"]:
        yield "warning-signs", sign["id"] + ", as it is asked", sign["ask"]
        yield "warning-signs", sign["id"], sign["name"]
    home = load("home-advice.json")
    for text in home["always"]:
        yield "home-advice", "stands above all advice", text
    for item in home["advice"]:
        for part in ("title", "text", "stop"):
            yield "home-advice", item["id"] + ", " + part, item[part]
    for item in home["expect"]:
        yield "home-advice", "after " + item["action"], item["text"]
    for item in home["call"]:
        yield "home-advice", "when to call: " + item["id"], item["text"]
    for movement in load("examination/movements.json")["movements"]:
        yield "movements", movement["id"], movement["plain"]
    for technique in load("techniques.json")["techniques"]:
        yield "techniques", technique["id"], technique["plain"]


def quoted(text):
    return json.dumps(text, ensure_ascii=False)


def updated(folder):
    """The two files as lupdate leaves them, written into `folder`."""
    source = folder / "content.cpp"
    seen = set()
    with source.open("w", encoding="utf-8") as out:
        for context, what, text in content():
            if (context, text) not in seen:
                out.write(f"//: {what}\nQT_TRANSLATE_NOOP({quoted(context)}, {quoted(text)});\n")
            seen.add((context, text))
    code = sorted((ROOT / "core" / "document").glob("*Map*.cpp"))
    files = []
    for language in LANGUAGES:
        ts = folder / f"raphe_{language}.ts"
        if (HERE / ts.name).exists():
            shutil.copy(HERE / ts.name, ts)
        files.append(ts)
    subprocess.run([LUPDATE, str(source), *map(str, code), "-no-obsolete", "-locations", "none", "-source-language", "en",
                    "-silent", "-ts", *map(str, files)], check=True)
    return files


def messages(ts):
    for context in ET.parse(ts).getroot().iter("context"):
        for message in context.iter("message"):
            translation = message.find("translation")
            yield (context.findtext("name"), message.findtext("source"), translation.text or "", translation.get("type"))


def faults(ts):
    names = lambda text: sorted(re.findall(r"\{[a-z]+\}", text))
    for context, source, translation, kind in messages(ts):
        if kind == "unfinished" or not translation.strip():
            yield f"{ts.name}: {context}: not translated: {source}"
        elif names(source) != names(translation):
            yield f"{ts.name}: {context}: other names in braces than in: {source}"
        elif sorted(re.findall(r"\d+", source)) != sorted(re.findall(r"\d+", translation)):
            yield f"{ts.name}: {context}: other numbers than in: {source}"


def main():
    with tempfile.TemporaryDirectory() as name:
        files = updated(pathlib.Path(name))
        if "--check" not in sys.argv:
            for ts in files:
                shutil.copy(ts, HERE / ts.name)
            print(*(line for ts in files for line in faults(ts)), sep="\n")
            return 0
        bad = [line for ts in files for line in faults(ts)]
        for ts in files:
            if set(messages(ts)) != set(messages(HERE / ts.name)):
                bad.append(f"{ts.name}: not up to date, run resources/translations/update.py")
        print(*bad, sep="\n")
        print(sum(1 for _ in messages(files[0])), "texts,", len(bad), "faults")
        return 1 if bad else 0


if __name__ == "__main__":
    sys.exit(main())
