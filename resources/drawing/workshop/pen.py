"""The pen: turns named points into the path data the drawings allow (absolute M L C Z).

Units are 1/1000 of stature, y down from the crown. Only x >= 0 is drawn; the program mirrors.
A Border is written once and used by the two tiles on either side of it, so tiles cannot gap.
"""
from dataclasses import dataclass, field

FLOOR = 0.0  # half a body is drawn: nothing crosses the midline (sidepen.py lifts this)

LAYERS = ["skin", "superficial-fascia", "deep-fascia", "superficial-muscle",
          "intermediate-muscle", "deep-muscle", "bone"]


@dataclass
class Shape:
    """One closed outline of a structure; `piece` > 1 for a second piece of the same structure."""
    id: str
    layer: str
    d: str
    fibres: list = field(default_factory=list)  # open path data
    piece: int = 1
    z: float = 0  # within a layer higher lies on top; equal: in the order drawn


def _n(value):
    text = f"{round(value + 0.0, 2):.2f}".rstrip("0").rstrip(".")
    return "0" if text == "-0" else text


def _pt(p):
    return f"{_n(p[0])} {_n(p[1])}"


def segments(points, closed=False, corners=(), tension=1.0):
    """Cubic segments [(c1, c2, end), ...] of a smooth curve through all points (Catmull-Rom).

    Points whose index is in `corners` stay sharp. Control points never cross the midline x = 0.
    """
    n = len(points)
    corners = set(c % n for c in corners)
    out = []
    last = n if closed else n - 1
    for i in range(last):
        p1, p2 = points[i], points[(i + 1) % n]
        p0 = points[(i - 1) % n] if (closed or i > 0) else p1
        p3 = points[(i + 2) % n] if (closed or i + 2 < n) else p2
        if i in corners:
            p0 = p1
        if (i + 1) % n in corners:
            p3 = p2
        k = tension / 6.0
        c1 = (p1[0] + (p2[0] - p0[0]) * k, p1[1] + (p2[1] - p0[1]) * k)
        c2 = (p2[0] - (p3[0] - p1[0]) * k, p2[1] - (p3[1] - p1[1]) * k)
        out.append(((max(c1[0], FLOOR), c1[1]), (max(c2[0], FLOOR), c2[1]), p2))
    return out


def _curve(segs):
    return " ".join(f"C {_pt(a)} {_pt(b)} {_pt(e)}" for a, b, e in segs)


def closed(points, corners=(), tension=1.0):
    """Closed smooth outline; list the indices of the sharp corners."""
    return f"M {_pt(points[0])} " + _curve(segments(points, True, corners, tension)) + " Z"


def half(points, corners=(), tension=1.0):
    """Closed outline of a midline structure: first and last point lie on x = 0, joined by a straight line."""
    return f"M {_pt(points[0])} " + _curve(segments(points, False, corners, tension)) + " Z"


def _area(points):
    return sum(a[0] * b[1] - b[0] * a[1] for a, b in zip(points, points[1:] + points[:1]))


def turned(points, clockwise):
    """The points in the wanted winding, so that an inner outline cuts a hole under either fill rule."""
    return points if (_area(points) > 0) == clockwise else points[::-1]


def pierced(points, *holes, corners=()):
    """Closed outline with holes; `corners` are indices into `points`, which must run clockwise on screen."""
    if _area(points) <= 0:
        raise ValueError("outer outline must run clockwise on screen")
    return " ".join([closed(points, corners)] + [closed(turned(list(h), False)) for h in holes])


def sides(points, widths):
    """The two edges of a band: centre points with the full width at each of them."""
    left, right = [], []
    n = len(points)
    for i, (x, y) in enumerate(points):
        a, b = points[max(i - 1, 0)], points[min(i + 1, n - 1)]
        dx, dy = b[0] - a[0], b[1] - a[1]
        size = (dx * dx + dy * dy) ** 0.5
        w = widths[i] / 2.0
        ox, oy = -dy / size * w, dx / size * w
        left.append((max(x + ox, FLOOR), y + oy))
        right.append((max(x - ox, FLOOR), y - oy))
    return left, right


def ribbon(points, widths, blunt=True):
    """Closed outline of a band; blunt ends have corners, the others are round."""
    left, right = sides(points, widths)
    n = len(points)
    return closed(left + right[::-1], (0, n - 1, n, 2 * n - 1) if blunt else ())


def pebble(x, y, rx, ry, tilt=0.0):
    """A small rounded shape for a joint or a felt point; `tilt` lowers its outer end."""
    ring = [(1, 0.1), (0.62, 0.8), (-0.3, 0.96), (-0.94, 0.42), (-0.9, -0.52), (-0.2, -1), (0.72, -0.78)]
    return closed([(x + a * rx, y + b * ry + a * tilt) for a, b in ring])


def stroke(points, tension=1.0):
    """Open smooth stroke (fibre direction)."""
    return f"M {_pt(points[0])} " + _curve(segments(points, False, (), tension))


class Border:
    """A smooth open curve with a name of its own, shared by two tiles."""

    def __init__(self, *points, corners=(), straight=False):
        self.start = points[0]
        self.end = points[-1]
        if straight:
            self.segs = [(a, b, b) for a, b in zip(points, points[1:])]
        else:
            self.segs = segments(list(points), False, corners)

    def reversed(self):
        other = Border.__new__(Border)
        other.start, other.end = self.end, self.start
        starts = [self.start] + [s[2] for s in self.segs]
        other.segs = [(s[1], s[0], starts[i]) for i, s in reversed(list(enumerate(self.segs)))]
        return other

    def __neg__(self):
        return self.reversed()


def tile(*borders):
    """Closed outline from borders in order; a gap between one's end and the next's start becomes a straight line."""
    text = f"M {_pt(borders[0].start)}"
    at = borders[0].start
    for b in borders:
        if _pt(at) != _pt(b.start):
            text += f" L {_pt(b.start)}"
        text += " " + _curve(b.segs)
        at = b.end
    return text + " Z"


def outline(*borders):
    """The silhouette as an open path from the crown (0, 0) to the crotch on x = 0."""
    text = f"M {_pt(borders[0].start)}"
    for b in borders:
        text += " " + _curve(b.segs)
    return text
