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

    Tangents are weighted by chord length, so unevenly spaced points do not overshoot, and handles suit a circle's arc.
    An end on the midline leaves it at a right angle, as a curve that goes on in the mirrored half must.
    """

    def __init__(self, *points):
        self.points = [(p[0], p[1]) for p in points]
        self.index = {p[2]: i for i, p in enumerate(points) if len(p) > 2 and p[2]}
        corners = {i for i, p in enumerate(points) if len(p) > 3 and p[3] == CORNER}
        pts, last = self.points, len(points) - 1
        self.segs = []
        for i in range(last):
            a, b = pts[i], pts[i + 1]
            ta = self._at(i, corners, leaving=True)
            tb = self._at(i + 1, corners, leaving=False)
            turn = abs(math.atan2(ta[0] * tb[1] - ta[1] * tb[0], ta[0] * tb[0] + ta[1] * tb[1]))
            third = math.dist(a, b) / (3.0 * math.cos(min(turn, 2.5) / 4.0) ** 2)  # exact for a circle's arc
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
    (0, 0, "crown"), (12, 1.4), (22.6, 5.8), (32.2, 14), (39.2, 25.6), (43.2, 39.5, "parietal-low"), (44.5, 54),
    (43.6, 63.5, "ear-top", CORNER), (46.6, 61), (49.4, 64.6), (49.3, 73.6, "ear-outer"), (47.3, 83), (44.6, 91),
    (42.2, 93.4), (40.6, 91.4, "ear-bottom", CORNER),
]
NECK = [
    (38.9, 100, "mastoid-low"), (36, 108.5, "jaw-angle"), (33.6, 115.5), (32.7, 123.5), (33, 132, "neck-low"),
    (34.8, 140, "neck-root"), (39.4, 147.4), (48.5, 153.8), (62, 159.6), (78, 165), (93, 169.8), (105, 174, "ac-top"),
    (115, 178.4, "acromion"),
]
OUTER_ARM = [
    (124, 184), (132, 192.6), (138, 204.2), (141.3, 216), (143, 229), (144.4, 245), (146.2, 262),
    (148.6, 280, "deltoid-end"), (152, 302), (155.6, 324), (158.6, 343), (160.6, 356, "elbow-out-high"), (163.2, 370),
    (167, 384), (171.4, 398, "elbow-out-low"), (174.9, 414), (177, 434), (178.2, 455), (179.6, 475), (181.6, 495),
    (183.4, 509.5, "wrist-out-high"),
]
HAND = [
    hand(-2, 16.4, "wrist-out"), hand(6, 17), hand(13.5, 19.6), hand(22, 25), hand(29, 30),
    hand(34, 33.8, "thumb-out"), hand(38.4, 36.8), hand(45, 40), hand(52, 43.8), hand(58, 47.4), hand(63.6, 49.8),
    hand(69.4, 50.6), hand(73.6, 48.8), hand(75, 45, "thumb-tip"), hand(72.6, 40.8), hand(67, 37), hand(60.4, 33.4),
    hand(53.4, 30), hand(47.6, 27.6), hand(44.6, 25.8, "thumb-web"), hand(47.6, 24.8), hand(54, 24.6),
    hand(60, 24.4, "index-out"), hand(67, 23.1), hand(75, 22.8), hand(82, 23.1), hand(90, 22.9), hand(96, 22.5),
    hand(100.6, 20.7), hand(102.2, 17.7, "index-tip"), hand(100.8, 14.7), hand(96.4, 13), hand(88, 12.4),
    hand(81, 12), hand(73, 11.6), hand(67.6, 11.3), hand(66.4, 10.8, "web-2"), hand(67.6, 10.3), hand(73, 10.3),
    hand(80, 10.5), hand(87, 10.5), hand(96, 10.3), hand(105, 9.6), hand(109.5, 7.8), hand(111, 4.9, "middle-tip"),
    hand(109.5, 2), hand(105, 0.2), hand(96, -0.5), hand(87, -0.8), hand(80, -0.8), hand(73, -0.9), hand(67.6, -1),
    hand(66.4, -1.5, "web-3"), hand(67.5, -2), hand(73, -2), hand(79, -2.1), hand(86, -2.3), hand(93, -2.7),
    hand(99, -3.7), hand(102.9, -5.4), hand(104.4, -8.4, "ring-tip"), hand(102.9, -11.6), hand(98.6, -13.1),
    hand(91, -13.5), hand(84, -13.3), hand(77, -12.8), hand(70, -12.2), hand(64.8, -12.2), hand(63.6, -12.7, "web-4"),
    hand(64.6, -13.2), hand(69, -13.6), hand(74.5, -14.4), hand(80.4, -15.4), hand(85, -17.2),
    hand(87.2, -20.6, "little-tip"), hand(86, -24), hand(81.4, -25.4), hand(75, -25), hand(69, -24.2),
    hand(61.5, -23.6, "little-in"), hand(52, -23.8, "hypothenar-out"), hand(44, -24.3), hand(33, -23.8),
    hand(21, -21.4), hand(9, -18.2), hand(-2, -16.5, "wrist-in"),
]
INNER_ARM = [
    (150.6, 515, "wrist-in-high"), (146.4, 497), (140.2, 474), (133.4, 450), (127.8, 430), (124, 413),
    (122.6, 403, "elbow-in-low"), (122, 389), (121.4, 375), (118.8, 362, "elbow-in-high"), (113.8, 341), (108.4, 319),
    (102.4, 296), (96.4, 275), (90.4, 256, "axilla-arm"), (84, 241, "armpit", CORNER),
]
FLANK = [
    (83.7, 256), (83.1, 270, "axilla-flank"), (82.3, 288), (81.2, 306, "flank-chest"), (79.8, 322), (78, 340),
    (77.1, 355, "flank-rib"), (77.7, 368), (79.6, 381), (82.6, 393, "flank-crest"), (88, 413),
    (93.8, 437, "flank-spine"), (98, 456), (101.3, 475), (103, 493),
]
OUTER_LEG = [
    (103.4, 512), (102.8, 532, "hip-low"), (101.2, 555), (98.9, 580), (96, 606), (92.6, 632), (88.8, 658), (85, 682),
    (83.2, 693, "knee-out-high"), (81.4, 707), (80.2, 720), (80, 734), (81.4, 753, "knee-out-low"), (83.6, 768),
    (86.4, 786), (87.4, 803), (86.4, 822), (83, 846), (78.2, 872), (73.8, 896), (70.4, 917),
    (68.6, 934, "ankle-out-high"), (68.8, 947), (70.4, 957.5),
]
FOOT_FRONT = [
    (70.8, 964.5, "ankle-out-low"), (72.6, 970.4), (77, 976.4), (82.4, 981), (86.2, 984.4, "toe-root-out"),
    (88.8, 989), (88, 993.6, "toe-5-tip"), (84.2, 995.2), (80.8, 994.2), (79.5, 991.6, "toe-cleft-4"), (78.6, 995),
    (75, 997.4, "toe-4-tip"), (71.2, 996.6), (69.8, 994, "toe-cleft-3"), (68.8, 997.4), (65, 999, "toe-3-tip"),
    (61.4, 998.2), (60.1, 995.6, "toe-cleft-2"), (59, 998.8), (55.3, 1000, "toe-2-tip"), (51.6, 999.2),
    (50.1, 996.2, "toe-cleft-1"), (48, 999.2), (41, 1000, "toe-1-tip"), (34.6, 998.6), (31.2, 994), (30.4, 987.6),
    (31, 981.4, "toe-root-in"), (31.6, 974), (30.2, 966, "ankle-in-low"),
]
FOOT_BACK = [
    (70.9, 964.5, "ankle-out-low"), (72.4, 969.6), (76, 975.2), (81, 980.4), (85, 985), (86.9, 989.6), (85.6, 993.2),
    (82.4, 994.2), (79.6, 992.6, "back-toe-cleft", CORNER), (77.6, 995), (74.2, 996), (70.6, 995.2),
    (68.2, 992.4, "heel-out", CORNER), (66.4, 996), (61.6, 999), (54, 1000), (45, 1000), (37, 999), (31.8, 995.4),
    (29.2, 989), (29, 981), (30.2, 973), (30.8, 967.4), (30.2, 962.4, "ankle-in-low"),
]
INNER_LEG = [
    (28, 953), (29.3, 944), (30.4, 932, "ankle-in-high"), (30.2, 918), (28.4, 900), (25.8, 880), (22.8, 858),
    (20, 836), (18.4, 815), (18.4, 797), (20, 779), (22, 764), (23.3, 752, "knee-in-low"), (23.8, 735), (23.1, 719),
    (22, 706), (20.6, 691, "knee-in-high"), (17.2, 663), (14, 638), (10.8, 612), (7.6, 586), (4.6, 560),
    (2.4, 540, "fold-in"), (1, 528), (0, 519, "crotch", CORNER),
]


# ---- borders inside the silhouette that both views share ----
EAR = [("ear-top", CORNER), (42.3, 72, "tragion"), (41.2, 81, "ear-front"), "ear-bottom"]
DELTOID_TIP = ["deltoid-end", (142.5, 284, "deltoid-tip")]
WRIST_TOP = ["wrist-in-high", (166.6, 511, "wrist-mid-high"), "wrist-out-high"]
WRIST_CREASE = ["wrist-in", hand(0.8, -8), hand(0.8, 1, "wrist-mid"), hand(0, 9), "wrist-out"]
THUMB_ROOT = ["thumb-out", hand(40.8, 31.6), "thumb-web"]


def finger_roots(rise):
    """Borders at the fingers' roots; `rise` is how far they bow towards the wrist (knuckles on the back)."""
    return [
        ["index-out", hand(63.4 - rise, 17.6), "web-2"],
        ["web-2", hand(66 - rise, 4.6), "web-3"],
        ["web-3", hand(64.6 - rise, -7.2), "web-4"],
        ["web-4", hand(62.2 - rise, -18), "little-in"],
    ]


def silhouette(view):
    foot = FOOT_FRONT if view == "front" else FOOT_BACK
    return HEAD + NECK + OUTER_ARM + HAND + INNER_ARM + FLANK + OUTER_LEG + foot + INNER_LEG


def body_outline(view):
    return outline(Contour(*silhouette(view)).between("crown", "crotch"))


def start(view):
    """A net that holds the silhouette and the shared borders."""
    net = Net()
    for points in [silhouette(view), EAR, DELTOID_TIP, WRIST_TOP, WRIST_CREASE, THUMB_ROOT]:
        net.add(*points)
    for points in finger_roots(1.0 if view == "front" else 6.0):
        net.add(*points)
    return net


def digits(net):
    """Thumb and fingers: the same outlines in both views."""
    return [
        net.region("thumb", "thumb-out", "thumb-tip", "thumb-web"),
        net.region("index-finger", "index-out", "index-tip", "web-2"),
        net.region("middle-finger", "web-2", "middle-tip", "web-3"),
        net.region("ring-finger", "web-3", "ring-tip", "web-4"),
        net.region("little-finger", "web-4", "little-tip", "little-in"),
    ]
