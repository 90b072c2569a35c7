"""Writes the drawings ../<view>.svg from the art modules beside this file.

Each module <part>_<view>.py or <part>_<view>_<region>.py has SHAPES (a list of pen.Shape); skin_<view>.py also has OUTLINE
(path data).
Run: python3 resources/drawing/workshop/build.py
"""
import importlib
import sys
from pathlib import Path

HERE = Path(__file__).resolve().parent
sys.path.insert(0, str(HERE))
from pen import LAYERS  # noqa: E402

PARTS = ["skin", "fascia", "muscles", "bones"]
VIEWS = ["front", "back", "side", "sole", "palm", "head"]
WHOLE = ["side", "head"]  # drawn whole; the others are the half that is mirrored
INSETS = {  # units of the inset in one unit of the body, and where it belongs
    "sole": (5, "back of the heel at y 930, seen from the foot end, toes up"),
    "palm": (6, "middle of the wrist crease, front view 170 530, at 182 180; the hand upright, fingers down"),
    "head": (5, "side view 25 0 at 0 0"),
}


def shapes(view):
    outline, found = "", []
    for part in PARTS:
        names = sorted(p.stem for p in HERE.glob(f"{part}_{view}*.py") if p.stem == f"{part}_{view}" or p.stem.startswith(f"{part}_{view}_"))
        for name in names:
            module = importlib.import_module(name)
            found += module.SHAPES
            outline = getattr(module, "OUTLINE", outline)
    return outline, sorted(found, key=lambda s: s.z)


def svg(view):
    outline, found = shapes(view)
    scale = INSETS.get(view)
    stated = f' data-scale="{scale[0]}" data-anchor="{scale[1]}"' if scale else ""
    lines = [f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="-500 0 1000 1000"{stated}>']
    if outline:
        lines += ['<g id="outline">', f'<path id="body-outline" class="outline" d="{outline}"/>', "</g>"]
    for layer in reversed(LAYERS):
        lines.append(f'<g id="layer-{layer}">')
        source = "skin" if layer == "superficial-fascia" else layer
        prefix = "sf-" if layer == "superficial-fascia" else ""
        for s in found:
            if s.layer != source:
                continue
            name = prefix + s.id + (f"--{s.piece}" if s.piece > 1 else "")
            lines.append(f'<path id="{name}" d="{s.d}"/>')
            lines += [f'<path id="{name}--fibre-{i}" class="fibre" d="{d}"/>' for i, d in enumerate(s.fibres, 1)]
        lines.append("</g>")
    lines.append("</svg>")
    return "\n".join(lines) + "\n"


if __name__ == "__main__":
    for view in VIEWS:
        if not list(HERE.glob(f"*_{view}*.py")):
            continue
        (HERE.parent / f"{view}.svg").write_text(svg(view), encoding="utf-8")
