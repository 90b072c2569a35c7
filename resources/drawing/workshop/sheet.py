"""Makes a PNG sheet of a view to look at while drawing (needs rsvg-convert).

usage: sheet.py VIEW OUT.png [--layers a,b,c] [--only id,id] [--box x0,y0,x1,y1] [--height 1400] [--labels]
Layers are painted in the order given, deepest first is sensible; the outline is always drawn. Both halves are shown.
"""
import argparse
import re
import subprocess
import sys
from pathlib import Path

HERE = Path(__file__).resolve().parent
sys.path.insert(0, str(HERE))
from build import WHOLE, shapes  # noqa: E402

FILL = {"skin": "#e9dccb", "superficial-fascia": "#efe3b8", "deep-fascia": "#d9dde6", "superficial-muscle": "#c98f86",
        "intermediate-muscle": "#b5786f", "deep-muscle": "#9c6560", "bone": "#efe9da"}


def main():
    ap = argparse.ArgumentParser()
    ap.add_argument("view")
    ap.add_argument("out")
    ap.add_argument("--layers", default="bone,deep-muscle,intermediate-muscle,superficial-muscle,deep-fascia")
    ap.add_argument("--only", default="")
    ap.add_argument("--box", default="-230,-10,230,1010")
    ap.add_argument("--height", type=int, default=1400)
    ap.add_argument("--labels", action="store_true")
    a = ap.parse_args()
    outline, found = shapes(a.view)
    x0, y0, x1, y1 = map(float, a.box.split(","))
    body = []
    only = set(filter(None, a.only.split(",")))
    for layer in a.layers.split(","):
        for s in [s for s in found if s.layer == layer and (not only or s.id in only)]:
            body.append(f'<path d="{s.d}" fill="{FILL[layer]}" fill-opacity="0.92" stroke="#5a4038" stroke-width="0.6"/>')
            body += [f'<path d="{d}" fill="none" stroke="#5a4038" stroke-width="0.4" stroke-opacity="0.55"/>' for d in s.fibres]
            if a.labels:
                nums = [float(v) for v in re.findall(r"-?\d+\.?\d*", s.d)]
                cx, cy = sum(nums[0::2]) / len(nums[0::2]), sum(nums[1::2]) / len(nums[1::2])
                size = (y1 - y0) / 170
                body.append(f'<text x="{cx}" y="{cy}" font-size="{size}" text-anchor="middle" font-family="DejaVu Sans">{s.id}</text>')
    if outline:
        body.append(f'<path d="{outline}" fill="none" stroke="#444" stroke-width="1"/>')
    half = "".join(body)
    mirrored = re.sub(r"<text.*?</text>", "", half)
    text = (f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="{x0} {y0} {x1 - x0} {y1 - y0}">'
            f'<rect x="{x0}" y="{y0}" width="{x1 - x0}" height="{y1 - y0}" fill="white"/>'
            + (f'<g>{half}</g></svg>' if a.view in WHOLE else f'<g>{half}</g><g transform="scale(-1,1)">{mirrored}</g></svg>'))
    subprocess.run(["rsvg-convert", "-h", str(a.height), "-o", a.out], input=text.encode(), check=True)


if __name__ == "__main__":
    main()
