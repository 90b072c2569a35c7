"""Writes ../front.svg and ../back.svg from the art modules beside this file.

Each module <part>_<view>.py has SHAPES (a list of pen.Shape); skin_<view>.py also has OUTLINE (path data).
Run: python3 resources/drawing/workshop/build.py
"""
import importlib
import sys
from pathlib import Path

HERE = Path(__file__).resolve().parent
sys.path.insert(0, str(HERE))
from pen import LAYERS  # noqa: E402

PARTS = ["skin", "fascia", "muscles", "bones"]


def shapes(view):
    outline, found = "", []
    for part in PARTS:
        name = f"{part}_{view}"
        if not (HERE / f"{name}.py").exists():
            continue
        module = importlib.import_module(name)
        found += module.SHAPES
        outline = getattr(module, "OUTLINE", outline)
    return outline, found


def svg(view):
    outline, found = shapes(view)
    lines = ['<svg xmlns="http://www.w3.org/2000/svg" viewBox="-500 0 1000 1000">']
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
    for view in ("front", "back"):
        (HERE.parent / f"{view}.svg").write_text(svg(view), encoding="utf-8")
