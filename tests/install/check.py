#!/usr/bin/python3
"""Installs Raphe from a build tree into an empty folder and checks what lies there.

    tests/install/check.py <cmake> <build tree>

Menu entry and AppStream data are judged by their own validators (desktop-file-utils, appstream), the MIME type by
update-mime-database; what several files say must be the same in all: version, id, MIME type, categories, the mark of a practice file.
Ends with 'N passed, N failed'; exit status 1 when anything failed.
"""

import configparser
import gzip
import os
import pathlib
import re
import struct
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as xml

ROOT = pathlib.Path(__file__).resolve().parents[2]
ID = "arpa.home.raphe"
MIME = "application/x-raphe-practice"
MIME_SPACE = "{http://www.freedesktop.org/standards/shared-mime-info}"
LANG = "{http://www.w3.org/XML/1998/namespace}lang"
ICONS = {48: "raphe-48.png", 128: "raphe-128.png", 256: "raphe-256.png"}
FILES = {
    "bin/raphe",
    "bin/raphe-batch",
    "share/applications/raphe.desktop",
    f"share/metainfo/{ID}.metainfo.xml",
    "share/mime/packages/raphe.xml",
    "share/icons/hicolor/scalable/apps/raphe.svg",
    "share/doc/raphe/copyright",
    "share/doc/raphe/changelog.gz",
    "share/man/man1/raphe.1.gz",
    "share/man/man1/raphe-batch.1.gz",
} | {f"share/icons/hicolor/{size}x{size}/apps/raphe.png" for size in ICONS} | {
    f"share/doc/raphe/licences/{path.name}" for path in (ROOT / "resources" / "licences").glob("*.txt")}


class Tally:
    """Counts checks and prints the failed ones."""

    def __init__(self):
        self.passed = 0
        self.failed = 0

    def check(self, name, complaints):
        complaints = list(complaints)
        if not complaints:
            self.passed += 1
            return
        self.failed += 1
        print(f"FAILED {name}")
        for complaint in complaints[:10]:
            print(f"    {complaint}")

    def same(self, name, found, expected):
        self.check(name, [] if found == expected else [f"found {found!r}, expected {expected!r}"])


def run(*command, **more):
    return subprocess.run(command, capture_output=True, text=True, timeout=300, **more)


def said(done):
    """What a validator complains of: a status other than 0, or anything above a hint."""
    lines = (done.stdout + done.stderr).splitlines()
    loud = [line for line in lines if re.search(r"\b(error|warning)\b|^[EWI]:", line)]
    return loud + ([f"exit status {done.returncode}"] if done.returncode else [])


def check_files(tally, prefix):
    found = {str(path.relative_to(prefix)) for path in prefix.rglob("*") if path.is_file()}
    tally.check("nothing is missing", sorted(FILES - found))
    tally.check("nothing is too much", sorted(found - FILES))
    for name in ["raphe", "raphe-batch"]:
        done = run(str(prefix / "bin" / name), "--version", env={**os.environ, "QT_QPA_PLATFORM": "offscreen"})
        tally.same(f"{name} --version", (done.returncode, done.stdout.strip(), done.stderr), (0, version(), ""))


def version():
    return re.search(r"project\(raphe VERSION ([0-9.]+)", (ROOT / "CMakeLists.txt").read_text()).group(1)


def check_versions(tally, prefix):
    changelog = gzip.decompress((prefix / "share/doc/raphe/changelog.gz").read_bytes()).decode()
    tally.same("version of the changelog", re.match(r"raphe \(([^)]+)\)", changelog).group(1), version())
    release = xml.parse(prefix / "share/metainfo" / f"{ID}.metainfo.xml").find("releases/release")
    tally.same("version of the AppStream data", release.get("version"), version())
    day = run("date", "-u", "-d", re.search(r"^ -- .*>  (.*)$", changelog, re.M).group(1), "+%Y-%m-%d").stdout.strip()
    tally.same("day of the AppStream data", release.get("date"), day)
    for page in ["raphe.1.gz", "raphe-batch.1.gz"]:
        text = gzip.decompress((prefix / "share/man/man1" / page).read_bytes()).decode()
        tally.same(f"version of {page}", re.search(r'"Raphe ([0-9.]+)"', text).group(1), version())
        tally.same(f"first line of {page}", text.count("\n.SH NAME\n"), 1)


def check_menu_entry(tally, prefix):
    path = prefix / "share/applications/raphe.desktop"
    tally.check("desktop-file-validate", said(run("desktop-file-validate", str(path))))
    parser = configparser.ConfigParser(interpolation=None, strict=True, delimiters=("=",))
    parser.optionxform = str
    parser.read(path, encoding="utf-8")
    entry = parser["Desktop Entry"]
    tally.same("what it starts", entry["Exec"].split(), ["raphe", "%f"])
    tally.same("its icon", entry["Icon"], "raphe")
    tally.same("its MIME type", entry["MimeType"], MIME + ";")
    for key in ["GenericName", "Comment", "Keywords"]:
        for language in ["de", "es"]:
            tally.check(f"{key} in {language}", [] if entry.get(f"{key}[{language}]") else ["is missing"])
    return entry["Categories"].rstrip(";").split(";")


def check_appstream(tally, prefix, categories):
    path = prefix / "share/metainfo" / f"{ID}.metainfo.xml"
    tally.check("appstreamcli validate", said(run("appstreamcli", "validate", "--no-net", "--no-color", str(path))))
    tree = run("appstreamcli", "validate-tree", "--no-net", "--no-color", str(prefix.parent))
    tally.check("appstreamcli validate-tree", said(tree))
    root = xml.parse(path).getroot()
    tally.same("its id", root.findtext("id"), ID)
    tally.same("its menu entry", root.findtext("launchable"), "raphe.desktop")
    tally.same("its MIME type", root.findtext("provides/mediatype"), MIME)
    tally.same("its categories", [c.text for c in root.findall("categories/category")], categories)
    for tag in ["summary", "description/p"]:
        found = [node.get(LANG) for node in root.findall(tag)]
        tally.same(f"{tag} in three languages", {found.count(None), found.count("de"), found.count("es")}, {found.count(None)})


def check_mime(tally, prefix, work):
    path = prefix / "share/mime"
    done = run("update-mime-database", str(path), env={**os.environ, "XDG_DATA_DIRS": str(prefix / "share")})
    tally.same("update-mime-database", done.returncode, 0)
    kind = xml.parse(path / "packages/raphe.xml").find(MIME_SPACE + "mime-type")
    tally.same("its type", kind.get("type"), MIME)
    tally.same("its endings", [g.get("pattern") for g in kind.findall(MIME_SPACE + "glob")], ["*.raphe"])
    mark = kind.find(f"{MIME_SPACE}magic/{MIME_SPACE}match/{MIME_SPACE}match")
    practice = work / "practice.raphe"
    made = run(str(prefix / "bin/raphe-batch"), "make", "--practice", str(practice), "--name", "Check", "--sign-in", "check",
        "--user-name", "Check", "--passphrase-fd", "0", input="a lantern by the mill\n")
    tally.same("a practice file is made", made.returncode, 0)
    if made.returncode == 0:
        head = practice.read_bytes()[:100]
        at = int(mark.get("offset"))
        tally.same("its mark", struct.unpack(">I", head[at:at + 4])[0], int(mark.get("value"), 16))
        tally.same("its beginning", head[:15], b"SQLite format 3")


def check_copyright(tally, prefix):
    text = (prefix / "share/doc/raphe/copyright").read_text(encoding="utf-8")
    for words in ["Uberon", "Creative Commons Attribution 3.0 Unported", "This material contains content from LOINC",
            "Permission is hereby granted, free of charge", "/usr/share/common-licenses/LGPL-3", "The Qt Company",
            "University of Cincinnati"]:
        tally.check(f"copyright says '{words}'", [] if words in text else ["it does not"])


def main():
    cmake, build = sys.argv[1:3]
    tally = Tally()
    with tempfile.TemporaryDirectory() as folder:
        prefix = pathlib.Path(folder) / "root" / "usr"
        done = run(cmake, "--install", build, "--prefix", str(prefix))
        tally.check("cmake --install", [] if done.returncode == 0 else [done.stderr])
        check_files(tally, prefix)
        check_versions(tally, prefix)
        check_appstream(tally, prefix, check_menu_entry(tally, prefix))
        check_mime(tally, prefix, pathlib.Path(folder))
        check_copyright(tally, prefix)
    print(f"{tally.passed} passed, {tally.failed} failed")
    return 1 if tally.failed else 0


if __name__ == "__main__":
    sys.exit(main())
