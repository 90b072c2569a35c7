#!/usr/bin/env python3
"""Flesch-Kincaid grade of every question that a patient is asked, of all that is explained for a consent, of every other text that a
patient reads, and of the whole form before arrival: 6 or below (a handout's limit: AMA and NIH advice). Texts that stand on the page
to take home have no sentence of more than 15 words, others none of more than 20. Measured by the program (`raphe-batch grade`), and held
against the Kincaid index of GNU style (Debian package diction), which counts syllables in its own way.

usage: readability.py RAPHE_BATCH [--all]     exit 1: a text above grade 6 or too long, or the two measures lie apart
"""
import json
import pathlib
import re
import subprocess
import sys

RESOURCES = pathlib.Path(__file__).resolve().parents[2] / "resources"
FILLED = {"{place}": "shoulder", "{page}": "2", "{pages}": "6", "{count}": "3"}  # what a text with a gap is measured with
LIMIT = 6.0
LONGEST = 20  # words in a sentence that is asked or explained; our choice, no source
LONGEST_AT_HOME = 15
APART = 1.0  # grades between the two measures, for texts of many sentences; our choice


def load(name):
    return json.loads((RESOURCES / name).read_text(encoding="utf-8"))


def ended(text):
    """As a sentence of its own."""
    for gap, word in FILLED.items():
        text = text.replace(gap, word)
    return text if text[-1] in ".!?" else text + "."


def texts():
    """(name, text, the longest sentence that it may have)"""
    for sign in load("safety/warning-signs.json")["signs"]:
        if sign.get("by") != "practitioner":
            yield sign["id"], sign["ask"], LONGEST
    patient = load("intake/patient-texts.json")["texts"]
    for text in patient:
        yield text["id"], ended(text["text"]), LONGEST
    yield "the whole form", " ".join(ended(t["text"]) for t in patient if t["where"] != "patient-mode"), LONGEST
    for item in load("safety/consent.json")["items"]:
        for part in ("title", "explain", "benefits", "risks", "alternatives", "withdraw"):
            yield item["id"] + " " + part, ended(item[part].replace("{time}", "10 years")), LONGEST
    home = load("home-advice.json")
    for number, text in enumerate(home["always"]):
        yield f"always {number}", text, LONGEST_AT_HOME
    for item in home["advice"]:
        for part in ("title", "text", "stop"):
            yield item["id"] + " " + part, ended(item[part]), LONGEST_AT_HOME
    for item in home["expect"]:
        yield "after " + item["action"], item["text"], LONGEST_AT_HOME
    for item in home["call"]:
        yield "call " + item["id"], item["text"], LONGEST_AT_HOME


def grades(batch, lines):
    out = subprocess.run([batch, "grade"], input="\n".join(lines) + "\n", capture_output=True, text=True, check=True).stdout
    return [json.loads(line) for line in out.splitlines()]


def kincaid(text):
    out = subprocess.run(["style"], input=text + "\n", capture_output=True, text=True, check=True).stdout
    return float(re.search(r"Kincaid:\s*(-?[0-9.]+)", out).group(1))


def main():
    all_texts = list(texts())
    measured = grades(sys.argv[1], [text.replace("\n", " ") for _, text, _ in all_texts])
    assert len(measured) == len(all_texts)
    rows = sorted(((m["grade"], m["longest_sentence"], longest, name, text) for m, (name, text, longest) in zip(measured, all_texts)),
                  reverse=True)
    bad = 0
    for grade, longest, most, name, text in rows:
        if grade > LIMIT or longest > most or "--all" in sys.argv:
            print("%5.1f  longest %2d of %d  %s  %s" % (grade, longest, most, name, text[:200]))
        bad += grade > LIMIT or longest > most
    print("%d texts, highest grade %.1f, %d too hard" % (len(rows), rows[0][0], bad))

    apart = 0
    groups = {
        "what is asked, explained, and read on form and screen": [text for _, text, most in all_texts if most == LONGEST],
        "what patients take home": [text for _, text, most in all_texts if most == LONGEST_AT_HOME],
    }
    for name, group in groups.items():
        whole = " ".join(ended(text) for text in group).replace("\n", " ")
        ours, theirs = grades(sys.argv[1], [whole])[0]["grade"], kincaid(whole)
        print("%s: grade %.1f, by GNU style %.1f" % (name, ours, theirs))
        apart += abs(ours - theirs) > APART
    return 1 if bad or apart else 0


if __name__ == "__main__":
    sys.exit(main())
