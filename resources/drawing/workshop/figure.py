"""The figure: the silhouette of one half, from the crown down the outside and back up to the crotch.

Front and back are the same silhouette except for the foot. Points are (x, y), (x, y, name) or
(x, y, name, CORNER); a name is a station where surface regions meet, so a tile's edge and the silhouette
are cut from the same curve.
"""
import math

from pen import Border, Shape, outline, tile

CORNER = "corner"


def _tangent(before, here, after):
    d0 = math.dist(before, here) or 1e-9
    d1 = math.dist(here, after) or 1e-9
    v0 = ((here[0] - before[0]) / d0, (here[1] - before[1]) / d0)
    v1 = ((after[0] - here[0]) / d1, (after[1] - here[1]) / d1)
    return tuple((a * d1 + b * d0) / (d0 + d1) for a, b in zip(v0, v1))


class Contour:
    """A smooth curve through stations; `between` cuts a Border out of it without changing its course.

    Tangents are weighted by chord length, so unevenly spaced points do not overshoot. An end on the midline
    leaves it at a right angle, as a curve that goes on in the mirrored half must.
    """

    def __init__(self, *points):
        self.points = [(p[0], p[1]) for p in points]
        self.index = {p[2]: i for i, p in enumerate(points) if len(p) > 2 and p[2]}
        corners = {i for i, p in enumerate(points) if len(p) > 3 and p[3] == CORNER}
        pts, last = self.points, len(points) - 1
        self.segs = []
        for i in range(last):
            a, b = pts[i], pts[i + 1]
            third = math.dist(a, b) / 3.0
            ta = self._at(i, corners, leaving=True)
            tb = self._at(i + 1, corners, leaving=False)
            c1 = (max(a[0] + ta[0] * third, 0.0), a[1] + ta[1] * third)
            c2 = (max(b[0] - tb[0] * third, 0.0), b[1] - tb[1] * third)
            self.segs.append((c1, c2, b))

    def _at(self, i, corners, leaving):
        pts, last = self.points, len(self.points) - 1
        here = pts[i]
        if 0 < i < last and i not in corners:
            return _tangent(pts[i - 1], here, pts[i + 1])
        near = pts[i + 1] if leaving else pts[i - 1]
        if i in (0, last) and here[0] == 0.0 and i not in corners and near[0] > 0.0:
            mirror = (-near[0], near[1])
            return _tangent(mirror, here, near) if leaving else _tangent(near, here, mirror)
        # an open end or a corner: the chord, turned to a parabola through the next point
        far = i + 2 if leaving else i - 2
        chord = math.dist(here, near) or 1e-9
        v = ((near[0] - here[0]) / chord, (near[1] - here[1]) / chord)
        v = v if leaving else (-v[0], -v[1])
        mid = i + 1 if leaving else i - 1
        if 0 <= far <= last and mid not in corners:
            t = _tangent(here, near, pts[far]) if leaving else _tangent(pts[far], near, here)
            v = tuple(1.5 * a - 0.5 * b for a, b in zip(v, t))
        return v

    def between(self, first, second):
        i, j = self.index[first], self.index[second]
        if i > j:
            return -self.between(second, first)
        piece = Border.__new__(Border)
        piece.start, piece.end, piece.segs = self.points[i], self.points[j], self.segs[i:j]
        return piece


class Net:
    """Contours that meet at stations of the same name; a region is a walk from station to station."""

    def __init__(self):
        self.contours = []
        self.at = {}

    def add(self, *points):
        """A contour; a bare name stands for a station that an earlier contour has set."""
        full = [(*self.at[p], p) if isinstance(p, str) else p for p in points]
        full = [(*self.at[p[0]], p[0], p[1]) if isinstance(p[0], str) else p for p in full]
        contour = Contour(*full)
        for name, i in contour.index.items():
            here = contour.points[i]
            if self.at.setdefault(name, here) != here:
                raise ValueError(f"station {name} at {here} is already at {self.at[name]}")
        self.contours.append(contour)
        return contour

    def walk(self, stations):
        borders = []
        for a, b in zip(stations, stations[1:] + stations[:1]):
            found = [c for c in self.contours if a in c.index and b in c.index]
            if found:
                found.sort(key=lambda c: abs(c.index[a] - c.index[b]))
                borders.append(found[0].between(a, b))
            elif self.at[a][0] == self.at[b][0] == 0.0:
                borders.append(Border(self.at[a], self.at[b], straight=True))  # along the midline
            else:
                raise ValueError(f"no contour joins {a} and {b}")
        return borders

    def region(self, name, *stations, piece=1):
        return Shape(name, "skin", tile(*self.walk(list(stations))), piece=piece)


# ---- the hand, in its own frame: s from the wrist crease to the finger tips, t towards the thumb ----
WRIST = (170.0, 530.0)
HAND_ANGLE = math.radians(10.0)  # the arm's angle from the trunk


def hand(s, t, *rest):
    sin, cos = math.sin(HAND_ANGLE), math.cos(HAND_ANGLE)
    return (round(WRIST[0] + s * sin + t * cos, 2), round(WRIST[1] + s * cos - t * sin, 2), *rest)


HEAD = [
    (0, 0, "crown"), (12, 1.4), (22.6, 5.8), (32.2, 14), (39.2, 25.6), (43.2, 39.5), (44.5, 54, "temple"),
    (43.6, 63.5, "ear-top", CORNER), (46.6, 61), (49.4, 64.6), (49.3, 73.6), (47.3, 83), (44.6, 91),
    (42.2, 93.4), (40.6, 91.4, "ear-bottom", CORNER),
]
NECK = [
    (38.9, 100), (36, 108.5, "jaw-angle"), (33.6, 115.5), (32.7, 123.5), (33, 132), (34.8, 140, "neck-root"),
    (39.4, 147.4), (48.5, 153.8), (62, 159.6), (78, 165), (93, 169.8, "shoulder-mid"), (105, 174),
    (115, 178.4, "acromion-skin"),
]
OUTER_ARM = [
    (124, 184), (132, 192.6), (138, 204.2), (141.3, 216), (143, 229), (144.4, 245), (146.2, 262),
    (148.6, 280, "deltoid-end"), (152, 302), (155.6, 324), (158.8, 345, "arm-out-low"), (161.6, 363),
    (165.6, 380, "elbow-out"), (171, 397), (174.9, 414, "forearm-out-high"), (177, 434), (178.2, 455), (179.6, 475), (181.6, 495),
    (183.6, 511, "wrist-out-high"),
]
HAND = [
    hand(-2, 16.4, "wrist-out"), hand(6, 16.9), hand(13.5, 19), hand(22, 24.2, "thumb-root-out"), hand(31, 30.6), hand(38, 36),
    hand(45, 39.4), hand(52, 42.2), hand(57.5, 45.2), hand(63, 47.2), hand(69, 48.4), hand(73.2, 47.4), hand(74.6, 44),
    hand(72.2, 40.4), hand(66.5, 37.6), hand(60, 34.8), hand(53, 31.2), hand(47.2, 28.2), hand(44.6, 26.2, "thumb-web"),
    hand(47.6, 24.8), hand(54, 24.5), hand(60, 24, "index-out"),
    hand(67, 22.4), hand(75, 22), hand(82, 22.3), hand(90, 22), hand(96, 21.6), hand(100.2, 20.2), hand(101.8, 17.9),
    hand(100.4, 15.6), hand(96, 14.2), hand(88, 13.2), hand(81, 12.5), hand(73, 12), hand(67.6, 11.6), hand(66.4, 10.8, "web-2"),
    hand(67.6, 10.1), hand(73, 9.9), hand(80, 10), hand(86, 10.1), hand(94, 9.7), hand(104, 9.2), hand(109.2, 7.6), hand(111, 5.1),
    hand(109.3, 2.7), hand(104.4, 1), hand(95, 0.2), hand(87, -0.4), hand(80, -0.4), hand(73, -0.4), hand(67.6, -0.8), hand(66.4, -1.5, "web-3"),
    hand(67.5, -2.2), hand(73, -2.3), hand(79, -2.5), hand(86, -2.8), hand(93, -3.4), hand(99, -4.3), hand(102.9, -6.1), hand(104.2, -8.6),
    hand(102.5, -11), hand(98, -12.5), hand(91, -13), hand(84, -12.8), hand(77, -12.3), hand(70, -11.9), hand(64.8, -12), hand(63.6, -12.7, "web-4"),
    hand(64.6, -13.4), hand(69, -13.9), hand(74.5, -14.9), hand(80, -16.4), hand(84.6, -18.3), hand(87, -21),
    hand(85.6, -23.6), hand(81, -24.7), hand(75, -24.2), hand(69, -23.5), hand(61.5, -23.1, "little-in"), hand(54, -23.5), hand(44, -24.2),
    hand(34, -23.6), hand(22, -21.4), hand(10, -18.4), hand(-2, -16.5, "wrist-in"),
]
INNER_ARM = [
    (149.6, 511, "wrist-in-high"), (145.6, 494), (139.8, 473), (133.4, 450), (127.8, 430), (124, 413, "forearm-in-high"), (122.3, 398),
    (122.2, 386), (121.2, 374, "elbow-in"), (118.2, 360), (113.8, 341, "arm-in-low"), (108.4, 319), (102.4, 296), (96.4, 275), (90.4, 256),
    (84, 241, "armpit", CORNER),
]
FLANK = [
    (83.8, 252), (83.2, 268), (82.4, 286), (81.4, 303), (79.8, 322), (78, 340), (77.1, 355, "flank-rib"), (77.9, 370),
    (80.6, 385), (84.6, 400), (89, 417), (93.8, 437, "flank-spine"), (98, 456), (101.3, 475), (103, 493, "hip-out"),
]
OUTER_LEG = [
    (103.4, 512), (102.8, 532), (101.2, 555), (98.9, 580), (96, 606), (92.6, 632), (88.8, 658),
    (85, 682), (82, 702), (80.4, 718), (80, 732), (80.8, 748), (83.4, 767), (86.4, 786), (87.4, 803), (86.4, 822), (83, 846),
    (78.2, 872), (73.8, 896), (70.4, 917), (68.6, 934), (68.8, 947), (70.4, 957.5),
]
FOOT_FRONT = [
    (70.8, 964.5), (72.6, 970.4), (77, 976.4), (82.4, 981.2), (87, 985.6), (89, 989.6, "toe-5-out"), (88, 993.6), (84.2, 995.2), (80.8, 994.2),
    (79.5, 991.6, "toe-5-in"), (78.6, 995), (75, 997.4), (71.2, 996.6), (69.8, 994, "toe-4-in"), (68.8, 997.4), (65, 999), (61.4, 998.2),
    (60.1, 995.6, "toe-3-in"), (59, 998.8), (55.3, 1000), (51.6, 999.2), (50.1, 996.2, "toe-2-in"), (48, 999.2), (41, 1000), (34.6, 998.6),
    (31.4, 994), (30.6, 987.6, "toe-1-out"), (31.4, 981), (31.6, 974), (30.2, 966),
]
FOOT_BACK = [
    (70.9, 964), (73.6, 970), (79, 976), (84.3, 981.5), (86.6, 987), (84.8, 991.6), (79, 993.8), (72.5, 994.2),
    (67.4, 994.8, "heel-out", CORNER), (62, 998.8), (54, 1000), (45, 1000), (36.5, 998.8), (31.5, 994.5),
    (29.4, 987), (29.8, 978), (31.2, 970), (30.4, 962),
]
INNER_LEG = [
    (28, 953, "ankle-in"), (29.3, 944), (30.4, 932), (30.2, 918), (28.4, 900), (25.8, 880), (22.8, 858), (20, 836), (18.4, 815),
    (18.4, 797), (20, 779), (22.2, 762), (23.6, 747), (23.8, 732), (22.8, 718), (21.8, 704), (20, 686), (17.2, 663),
    (14, 638), (10.8, 612), (7.6, 586), (4.6, 560), (2.4, 540), (1, 528), (0, 519, "crotch", CORNER),
]


def silhouette(view):
    foot = FOOT_FRONT if view == "front" else FOOT_BACK
    return HEAD + NECK + OUTER_ARM + HAND + INNER_ARM + FLANK + OUTER_LEG + foot + INNER_LEG


def body_outline(view):
    return outline(Contour(*silhouette(view)).between("crown", "crotch"))
