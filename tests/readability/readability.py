#!/usr/bin/env python3
"""Flesch-Kincaid grade of every question that a patient is asked, of all that is explained for a consent, of every other text that a
patient reads, and of the whole form before arrival: 6 or below (a handout's limit: AMA and NIH advice).

grade = 0.39 * words / sentences + 11.8 * syllables / words - 15.59

How it counts, always on the hard side: a sentence ends at . ! or ?; a hyphenated word is one word; a number is one word with the
syllables of its spoken form; a name of anatomical-names.txt counts as words of one syllable each.
The grade with no name excepted is printed too ('bare').

usage: readability.py [--all]     exit 1: a text above grade 6 or too long, or the syllable counter fails its check
"""
import json
import pathlib
import re
import sys

HERE = pathlib.Path(__file__).resolve().parent
RESOURCES = HERE.parents[1] / "resources"
SIGNS = RESOURCES / "safety" / "warning-signs.json"
TEXTS = RESOURCES / "intake" / "patient-texts.json"
FILLED = {"{place}": "shoulder", "{page}": "2", "{pages}": "6", "{count}": "3"}  # what a text with a gap is measured with
CONSENT = RESOURCES / "safety" / "consent.json"
HOME = RESOURCES / "home-advice.json"
LIMIT = 6.0
LONGEST = 20  # words in a sentence; our choice, no source

# Words that the rules below get wrong.
ODD = {
    "being": 2, "idea": 3, "area": 3, "people": 2, "science": 2, "quiet": 2, "diet": 2, "create": 2, "doing": 2,
    "going": 2, "something": 2, "someone": 2, "sometimes": 2, "somewhere": 2, "anyone": 3, "everyone": 3, "everything": 3, "every": 2,
    "elsewhere": 2, "diabetes": 4, "giant": 2, "lion": 2, "fluid": 2, "ruin": 2, "cruel": 2, "poem": 2, "real": 2,
    "headache": 2, "headaches": 2, "tailbone": 2, "breastbone": 2, "pacemaker": 3, "guardian": 3, "radius": 3,
    "varicose": 3, "silicone": 3, "used": 1, "aside": 2, "whose": 1, "lifetime": 2, "ribcage": 2, "homework": 2, "hopeful": 2,
    "careful": 2, "forearm": 2, "therefore": 2, "rhythm": 2, "prism": 2, "latex": 2, "client": 2, "trial": 2, "trials": 2,
    "via": 2, "dial": 2, "period": 4, "medium": 3, "studio": 3, "radio": 3, "react": 2, "reaction": 3, "coffee": 2, "e-mail": 2,
    "surgeon": 2, "pigeon": 2, "screwed": 1, "chaperone": 3, "question": 2, "questions": 2, "dying": 2, "trying": 2, "carrying": 3, "playing": 2, "staying": 2,
    "bruise": 1, "ourselves": 2, "yourself": 2, "safety": 2, "completely": 3, "mobile": 2, "tingles": 2, "clothes": 1, "eyes": 1, "goes": 1,
    "shoes": 1, "does": 1, "toes": 1, "axis": 2, "wiped": 1, "naked": 2, "rounded": 2, "safely": 2, "movement": 2, "movements": 2,
    "placement": 2, "statement": 2, "lonely": 2, "likely": 2, "entirely": 4, "hernia": 3, "pelvis": 2, "vagina": 3, "immediately": 5,
}
ONES = "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split()
TENS = "x x twenty thirty forty fifty sixty seventy eighty ninety".split()
NUMBER_WORDS = {"zero": 2, "seven": 2, "eleven": 3, "seventeen": 3, "seventy": 3, "hundred": 2, "thousand": 2, "million": 2}


def spoken(n):
    if n < 20:
        return [ONES[n]]
    if n < 100:
        return [TENS[n // 10]] + ([ONES[n % 10]] if n % 10 else [])
    for size, name in ((1000000, "million"), (1000, "thousand"), (100, "hundred")):
        if n >= size:
            return spoken(n // size) + [name] + (spoken(n % size) if n % size else [])


def syllables(word):
    w = word.lower().replace("\u2019", "'").strip("'")
    if re.fullmatch(r"[\d,]+", w):
        return sum(NUMBER_WORDS.get(x, syllables(x)) for x in spoken(int(w.replace(",", ""))))
    if w in ODD:
        return ODD[w]
    if "-" in w:
        return sum(syllables(p) for p in w.split("-") if p)
    w = re.sub(r"'(s|re|ve|ll|d|m|t)$", lambda m: "" if m.group(1) != "t" else "t", w)
    w = re.sub(r"[^a-z]", "", w)
    if not w:
        return 1
    if w in ODD:
        return ODD[w]
    n = len(re.findall(r"[aeiouy]+", w))
    if re.search(r"[^aeiouy]e$", w) and not re.search(r"[^aeiouyrw]le$", w):
        n -= 1                                    # silent e: tape, but not: table
    elif re.search(r"[^aeiouy]es$", w) and not re.search(r"(s|x|z|ch|sh|c|g|[^aeiouyrw]l)es$", w):
        n -= 1                                    # tapes, but not: places, tables
    elif re.search(r"[^aeiouytd]ed$", w) and not re.search(r"[^aeiouyrlw]led$", w):
        n -= 1                                    # moved, but not: wanted
    elif re.search(r"[^aeiouyrlw]led$", w):
        n -= 1                                    # tingled: two
    n += len(re.findall(r"(?<![tscgx])i[ao](?!u)|ier$|iest$|eous$|yi|ua[tl]|uo", w)) if len(w) > 3 else 0
    return max(n, 1)


# Words whose count is known.
KNOWN = {
    1: "ache burn shoot numb stiff throb touch place front back side left right pain bruise mark marked moved stretched groin breast thigh "
       "through clothes eyes bones",
    2: "tingle tingles table muscle muscles buttock shoulder shoulders tailbone pressing wanted places bruises neither people being quiet "
       "something latex picture question doctor belly gentle little under minute visit surgeon",
    3: "medicine exercise pregnancy surgery therapist allergy abdomen artery together suddenly another cartilage ligament reaction "
       "silicone implanted guardian idea area anyone vagina",
    4: "exercises operation practitioner manipulate information diabetes entirely especially alternative ordinary activity ability",
    5: "examination immediately electricity university international communication",
}
KNOWN_WORDS = [(w, n) for n, ws in KNOWN.items() for w in ws.split()]
NUMBERS = [("0", 2), ("7", 2), ("10", 1), ("13", 2), ("41", 3), ("100", 3), ("10,000", 3), ("1,000,000", 3), ("2016", 5)]


def names():
    lines = (HERE / "anatomical-names.txt").read_text(encoding="utf-8").splitlines()
    got = [line.strip().lower() for line in lines if line.strip() and not line.startswith("#")]
    return sorted(got, key=len, reverse=True)


NAMES = names()


def measure(text, bare=False):
    t = text
    if not bare:
        for n in NAMES:
            t = re.sub(r"\b" + re.escape(n) + r"\b", " ".join(["part"] * len(n.split())), t, flags=re.I)
    sentences = [s for s in re.split(r"(?<=[.!?])(?:\s+|$)", t) if re.search(r"[A-Za-z0-9]", s)]
    per = [re.findall(r"[A-Za-z0-9](?:[A-Za-z0-9,'\u2019-]*[A-Za-z0-9])?", s) for s in sentences]
    words = [w for s in per for w in s]
    syl = sum(syllables(w) for w in words)
    return 0.39 * len(words) / len(per) + 11.8 * syl / len(words) - 15.59, max(len(s) for s in per), words


def ended(text):
    """As a sentence of its own."""
    for gap, word in FILLED.items():
        text = text.replace(gap, word)
    return text if text[-1] in ".!?" else text + "."


def texts():
    for sign in json.loads(SIGNS.read_text(encoding="utf-8"))["signs"]:
        if sign.get("by") != "practitioner":
            yield sign["id"], sign["ask"]
    patient = json.loads(TEXTS.read_text(encoding="utf-8"))["texts"]
    for text in patient:
        yield text["id"], ended(text["text"])
    yield "the whole form", " ".join(ended(t["text"]) for t in patient if t["where"] != "patient-mode")
    yield from consent_texts()
    yield from home_texts()


def home_texts():
    home = json.loads(HOME.read_text(encoding="utf-8"))
    for number, text in enumerate(home["always"]):
        yield f"always {number}", text
    for item in home["advice"]:
        for part in ("title", "text", "stop"):
            yield item["id"] + " " + part, ended(item[part])
    for item in home["expect"]:
        yield "after " + item["action"], item["text"]
    for item in home["call"]:
        yield "call " + item["id"], item["text"]


def consent_texts():
    for item in json.loads(CONSENT.read_text(encoding="utf-8"))["items"]:
        for part in ("title", "explain", "benefits", "risks", "alternatives", "withdraw"):
            yield item["id"] + " " + part, item[part].replace("{time}", "10 years")


def main():
    bad = [(w, n, syllables(w)) for w, n in KNOWN_WORDS + NUMBERS if syllables(w) != n]
    for w, n, got in bad:
        print("syllables of %s: %d, counted %d" % (w, n, got))
    print("syllable counter: %d of %d words right" % (len(KNOWN_WORDS) + len(NUMBERS) - len(bad), len(KNOWN_WORDS) + len(NUMBERS)))
    rows = []
    for name, text in texts():
        grade, longest, _ = measure(text)
        bare, _, _ = measure(text, bare=True)
        rows.append((grade, bare, longest, name, text))
    rows.sort(reverse=True)
    over = [r for r in rows if r[0] > LIMIT]
    long = [r for r in rows if r[2] > LONGEST]
    for g, b, longest, name, text in (rows if "--all" in sys.argv else over):
        print("%5.1f  bare %5.1f  longest %2d  %s" % (g, b, longest, name) + ("  " + text[:200] if g > LIMIT else ""))
    for r in long:
        print("sentence of %d words: %s" % (r[2], r[3]))
    print("%d texts, highest grade %.1f, %d above %.0f; with no name excepted: highest %.1f, %d above"
          % (len(rows), rows[0][0], len(over), LIMIT, max(r[1] for r in rows), sum(r[1] > LIMIT for r in rows)))
    return 1 if bad or over or long else 0


if __name__ == "__main__":
    sys.exit(main())
