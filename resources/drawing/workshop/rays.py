"""Bones and tendons of toes and fingers from a few measures each, so that neighbours look related but not alike.

A ray bone is given by the middle of its base and of its head; widths say how the base, the shaft and the head swell.
"""
import math

from pen import closed, sides


def frame(a, b):
    """Point function of a line from a to b: u along (0 at a, 1 at b), v across in units, to the right of the way."""
    ux, uy = b[0] - a[0], b[1] - a[1]
    length = math.hypot(ux, uy)
    ux, uy = ux / length, uy / length

    def at(u, v=0.0):
        return (a[0] + ux * u * length - uy * v, a[1] + uy * u * length + ux * v)

    return at, length


def long_bone(base, head, wb, ws, wh, bow=0.0, cup=0.04, tip=0.0, waist=0.52):
    """A metacarpal, metatarsal or phalanx: flared base with a shallow cup, waisted shaft, rounded head with a notch.

    `bow` bends the shaft to the right of the way; `tip` > 0 makes a last phalanx with a tuft instead of a condyle.
    """
    at, length = frame(base, head)
    b, s, h = wb / 2, ws / 2, wh / 2
    k = min(0.5, wb * 0.5 / length)

    def p(u, v):
        return at(u, v + bow * math.sin(math.pi * min(max(u, 0), 1)))

    left = [p(0, -b * 0.8), p(k * 0.55, -b), p(k * 1.3, -(b * 0.5 + s * 0.5)), p(waist, -s)]
    right = [p(waist, s), p(k * 1.3, b * 0.5 + s * 0.5), p(k * 0.55, b), p(0, b * 0.8)]
    if tip:
        end = [p(0.76, -(s * 1.02)), p(0.88, -h * 1.1), p(0.97, -h * 0.78), p(1.0, 0), p(0.97, h * 0.78), p(0.88, h * 1.1),
               p(0.76, s * 1.02)]
    else:
        m = min(0.32, wh * 0.6 / length)
        end = [p(1 - m, -(h * 0.86 + s * 0.1)), p(1 - m * 0.5, -h), p(1 - m * 0.06, -h * 0.66), p(0.985, 0),
               p(1 - m * 0.06, h * 0.66), p(1 - m * 0.5, h), p(1 - m, h * 0.86 + s * 0.1)]
    return closed(left + end + right + [p(min(cup, k * 0.3), 0)])


def cut(base, head, lo, hi, wlo, whi, waist=None):
    """A stretch of a ray bone between two fractions of its length (a landmark on it), a little rounded."""
    at, _ = frame(base, head)
    a, b = wlo / 2, whi / 2
    mid = (waist if waist is not None else (wlo + whi) / 2) / 2
    d = (hi - lo)
    return closed([at(lo, -a * 0.8), at(lo + d * 0.14, -a), at(lo + d * 0.5, -mid), at(hi - d * 0.14, -b),
                   at(hi, -b * 0.72), at(hi + d * 0.03, 0), at(hi, b * 0.72), at(hi - d * 0.14, b),
                   at(lo + d * 0.5, mid), at(lo + d * 0.14, a), at(lo, a * 0.8), at(lo + d * 0.05, 0)])


def gap(a, b, width, thick, curve=0.0):
    """A joint line between two bone ends: a bent bar across the way from a to b, half way between them."""
    at, length = frame(a, b)
    w, t, c = width / 2, thick / 2 / (length or 1), curve / (length or 1)
    m = 0.5
    return closed([at(m - t * 0.7, -w), at(m - t + c * 0.7, -w * 0.5), at(m - t + c, 0), at(m - t + c * 0.7, w * 0.5),
                   at(m - t * 0.7, w), at(m + t * 0.7, w), at(m + t + c * 0.7, w * 0.5), at(m + t + c, 0),
                   at(m + t + c * 0.7, -w * 0.5), at(m + t * 0.7, -w)], (0, 4, 5, 9))


def comb(left, slips, forks, right, sharp=(), split=0.0):
    """Outline of a sheet or belly that parts into slips, all edges given from origin to insertion, in order of x.

    `slips` are (centre points, widths); `forks` are the points between neighbours, where the sheet parts. `split` cleaves
    each slip's end, as a share of the way back to the point before it.
    """
    points, corners = list(left), {0}
    for i, (line, widths) in enumerate(slips):
        one, two = sides(line, widths)
        if sum(p[0] for p in one) > sum(p[0] for p in two):
            one, two = two, one
        points += one
        corners |= {len(points) - 1, len(points)}
        if split:
            tip, back = line[-1], line[-2]
            points.append(tuple(tip[k] + (back[k] - tip[k]) * split for k in (0, 1)))
            corners.add(len(points))
        points += two[::-1]
        if i < len(forks):
            corners.add(len(points))
            points.append(forks[i])
    points += list(right)[::-1]
    corners.add(len(points) - 1)
    return closed(points, corners | set(sharp))
