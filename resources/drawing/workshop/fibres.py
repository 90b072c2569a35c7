"""Muscles from their edges: an outline from two side edges, and fibre strokes that flow between them.

Used by the muscle modules of all views, so that a muscle looks alike wherever it is seen.
"""
import math

from pen import FLOOR, Shape, closed, segments, stroke

STEPS = 40  # a fibre is followed in this many steps before it is cut to the outline and thinned out


def sampled(start, curve, per_segment=12):
    """Points close together on a curve given as cubic segments."""
    fine = [start]
    for c1, c2, end in curve:
        p = fine[-1]
        for i in range(1, per_segment + 1):
            t, u = i / per_segment, 1 - i / per_segment
            fine.append(tuple(u**3 * p[k] + 3 * u * u * t * c1[k] + 3 * u * t * t * c2[k] + t**3 * end[k]
                              for k in (0, 1)))
    return fine


def along(points, count):
    """`count` points at even distances on the smooth curve through `points`."""
    fine = sampled(points[0], segments(list(points)))
    dist = [0.0]
    for a, b in zip(fine, fine[1:]):
        dist.append(dist[-1] + math.dist(a, b))
    out, j = [], 0
    for i in range(count):
        want = dist[-1] * i / (count - 1)
        while j < len(fine) - 2 and dist[j + 1] < want:
            j += 1
        t = (want - dist[j]) / ((dist[j + 1] - dist[j]) or 1e-9)
        out.append(tuple(fine[j][k] + (fine[j + 1][k] - fine[j][k]) * t for k in (0, 1)))
    return out


def within(point, polygon):
    x, y = point
    inside = False
    for (x0, y0), (x1, y1) in zip(polygon, polygon[1:] + polygon[:1]):
        if (y0 > y) != (y1 > y) and x < x0 + (y - y0) * (x1 - x0) / (y1 - y0):
            inside = not inside
    return inside


def longest_run(line, polygon):
    """The longest stretch of `line` that stays inside `polygon`."""
    runs, run = [], []
    for point in line:
        if within(point, polygon):
            run.append(point)
        else:
            runs.append(run)
            run = []
    return max(runs + [run], key=len)


def strokes(a, b, count, lo, hi, start=(), end=(), polygon=()):
    """`count` strokes spread evenly between the edges a and b, from `lo` to `hi` of their length.

    They set out from the origin line `start` and arrive at the insertion line `end`, where those are given, and are
    cut off where they would leave `polygon`.
    """
    ea, eb = along(a, STEPS + 1), along(b, STEPS + 1)
    ends = [along([ea[i], *line, eb[i]], 101) if line else None for line, i in ((start, 0), (end, STEPS))]
    out = []
    for n in range(1, count + 1):
        t = n / (count + 1)
        line = [tuple(p[k] * (1 - t) + q[k] * t for k in (0, 1)) for p, q in zip(ea, eb)]
        # the pull of the end lines fades along the fibre
        at_start, at_end = (tuple(c[round(t * 100)][k] - line[i][k] for k in (0, 1)) if c else (0, 0)
                            for c, i in zip(ends, (0, STEPS)))
        line = [tuple(max(p[k] + at_start[k] * (1 - i / STEPS) ** 2 + at_end[k] * (i / STEPS) ** 2, FLOOR) for k in (0, 1))
                for i, p in enumerate(line)][round(lo * STEPS):round(hi * STEPS) + 1]
        run = longest_run(line, polygon)
        line = run if len(run) == len(line) else run[1:-1]
        if len(line) < 6:
            continue
        step = max(1, (len(line) - 1) // 7)
        picked = line[::step]
        if len(line) - 1 - step * (len(picked) - 1) > step / 2:
            picked.append(line[-1])
        out.append(stroke(picked))
    return out


def muscle(sid, layer, a, b, fibres=4, start=(), end=(), piece=1, lo=0.06, hi=0.94, sharp=(), rounded="", z=0):
    """A muscle given by its side edges a and b, both from origin to insertion.

    Outline: edge a, the insertion line `end`, edge b backwards, the origin line `start`. Its four ends are corners,
    but for those of a side named in `rounded` ("start", "end" or "both"); `sharp` adds corners by index in the outline.
    """
    points = list(a) + list(end) + list(reversed(b)) + list(start)
    na, ne, nb = len(a), len(end), len(b)
    corners = set(sharp)
    if rounded not in ("start", "both"):
        corners |= {0, na + ne + nb - 1}
    if rounded not in ("end", "both"):
        corners |= {na - 1, na + ne}
    polygon = sampled(points[0], segments(points, True, corners))
    return Shape(sid, layer, closed(points, corners),
                 strokes(a, b, fibres, lo, hi, list(reversed(start)), end, polygon), piece, z)
