"""Front view: bones, joints and landmarks of arm, forearm and hand (palm forward: radius and thumb on the outer side).

The bones of forearm and hand have the same outlines from front and back, so they are built here by functions that
bones_back_arm.py uses too. Upper arm and forearm have frames like the hand's in figure.py: s runs down the limb's
axis, t towards the outer side. Lengths of the hand's bones, as shares of hand length, from memory of anatomy; outlines
from memory of anatomy.
"""
import math
import re

import bones_front
from fibres import sampled
from figure import hand as H  # noqa: F401 (the other arm modules take it from here)
from pen import Shape, closed, ribbon, segments

SHAPES = []
SHOULDER, ELBOW, WRIST = (107, 199), (143, 383), (170, 530)


def frame(origin, end):
    size = math.dist(origin, end)
    u, v = (end[0] - origin[0]) / size, (end[1] - origin[1]) / size

    def at(s, t):
        return (round(origin[0] + s * u + t * v, 2), round(origin[1] + s * v - t * u, 2))

    def back(x, y):
        dx, dy = x - origin[0], y - origin[1]
        return dx * u + dy * v, dx * v - dy * u

    at.inverse = back
    return at


U = frame(SHOULDER, ELBOW)  # upper arm: s 0 at the centre of the humeral head, 187.5 at the elbow
F = frame(ELBOW, WRIST)     # forearm: s 0 at the elbow, 149.5 at the wrist crease


def points(at, pairs):
    return [at(s, t) for s, t in pairs]


class Span:
    """The stretch of a long bone's outline at each height, to cut areas of its surface from."""

    def __init__(self, polygon, at):
        self.at, self.polygon = at, [at.inverse(*p) for p in polygon]

    def edges(self, s):
        cuts = []
        for (s0, t0), (s1, t1) in zip(self.polygon, self.polygon[1:] + self.polygon[:1]):
            if (s0 > s) != (s1 > s):
                cuts.append(t0 + (s - s0) / (s1 - s0) * (t1 - t0))
        return min(cuts), max(cuts)

    def point(self, s, share):
        lo, hi = self.edges(s)
        return self.at(s, lo + (hi - lo) * share)

    def area(self, *rows):
        """Outline of an area given as rows (s, inner share, outer share) of the bone's breadth."""
        inner = [self.point(s, a) for s, a, _ in rows]
        outer = [self.point(s, b) for s, _, b in rows]
        return closed(inner + outer[::-1])


def polygon_of(pts, corners=()):
    return sampled(pts[0], segments(pts, True, corners))


def polygon_of_path(d):
    v = [float(n) for n in re.findall(r"-?\d+\.?\d*", d)]
    p = list(zip(v[0::2], v[1::2]))
    return sampled(p[0], [tuple(p[i:i + 3]) for i in range(1, len(p), 3)])


# ---- forearm bones ---------------------------------------------------------------------------------------------
RADIUS = points(F, [
    (7.6, 1), (9, 0), (12.4, 0.3), (14.6, 2), (18, 2.6), (21, 1.2), (25, -0.2), (29, 1.2), (34, 3.2), (45, 4.6),
    (60, 5.6), (80, 5.4), (100, 4.2), (115, 2.6), (127, 0), (136, -2.4), (141, -3.4), (145.4, -3), (147, 1),
    (147.6, 5.4), (148.4, 9.6), (150.4, 12.4), (152.2, 14), (150.6, 15), (145, 15), (138, 14.2), (128, 13), (115, 13),
    (100, 13.8), (82, 14.8), (66, 15), (52, 14), (38, 12), (27, 10.4), (18, 9.8), (14.8, 10.4), (12.6, 12.2),
    (9, 12.4), (7.6, 11.2), (8.6, 6)])
ULNA_FRONT = points(F, [
    (4, -16.4), (7.4, -11.6), (4.6, -8), (3.4, -5), (6, -2), (8.4, -0.8), (13, -1), (16, -2.8), (22, -4), (32, -4.6),
    (48, -4.8), (68, -4.6), (90, -5), (110, -5.8), (126, -6.2), (134, -5.8), (138, -4.6), (142, -4.4), (145, -5.6),
    (145.4, -8.4), (145.6, -10.4), (147.6, -11.4), (149.6, -12), (149.4, -13.2), (146, -13.6), (140, -13.4),
    (132, -12.2), (118, -11.6), (98, -11.8), (76, -12.4), (54, -13), (36, -13.6), (22, -13.8), (13, -14.6), (8, -16)])
ULNA_BACK = points(F, [
    (-13, -9), (-15.4, -5.4), (-15, -0.6), (-12, 2), (-6, 2.6), (0, 1.2), (6, 0), (13, -1), (17, -3), (24, -4.2),
    (34, -4.8), (48, -5), (68, -5), (90, -5.4), (110, -6), (126, -6.2), (134, -5.8), (138, -4.6), (142, -4.4),
    (145, -5.6), (145.4, -8.4), (145.8, -10.2), (147.6, -10.8), (150, -11.6), (149.8, -13), (146, -13.6),
    (140, -13.4), (132, -12.4), (118, -12), (98, -12.2), (76, -12.6), (54, -12.8), (36, -13), (22, -13.4), (13, -14),
    (6, -14.4), (-2, -13), (-8, -11)])

# ---- hand: rays as (base, head) pairs of points in the hand's frame, and a share of the middle finger's breadth ----
RAYS = {
    1: ([(21.4, 17.4), (45.4, 33.8), (61.2, 42), (71.8, 45.8)], 1.0),
    2: ([(17, 9.4), (53.4, 16.4), (76.6, 17.5), (90.2, 17.7), (99.8, 17.7)], 0.98),
    3: ([(19, 2.2), (56, 5), (82, 4.8), (98, 4.9), (108.6, 4.9)], 1.0),
    4: ([(18.8, -4.8), (53.6, -6.4), (77.2, -7.4), (92, -8.3), (102, -8.4)], 0.93),
    5: ([(17.2, -11), (47, -16.4), (66, -19.2), (76.4, -20.3), (85.2, -20.6)], 0.84),
}
GAP = 0.45
METACARPAL = [(0, 3.4), (0.04, 4.1), (0.12, 3.7), (0.25, 2.9), (0.45, 2.5), (0.65, 2.7), (0.8, 3.5), (0.89, 4.4),
              (0.96, 3.9), (1, 2.2)]
PROXIMAL = [(0, 3.2), (0.05, 4.3), (0.14, 3.9), (0.32, 3), (0.55, 2.7), (0.75, 2.8), (0.87, 3.4), (0.94, 3.5),
            (1, 2.3)]
MIDDLE = [(0, 2.9), (0.07, 3.8), (0.18, 3.4), (0.38, 2.6), (0.6, 2.4), (0.78, 2.5), (0.88, 3), (0.95, 3), (1, 2)]
DISTAL = [(0, 2.6), (0.1, 3.3), (0.24, 2.7), (0.45, 1.8), (0.65, 1.7), (0.8, 2.3), (0.9, 2.5), (0.97, 1.8), (1, 0.9)]


class Ray:
    """A bone of a finger: its axis in the hand's frame and half its breadth along it."""

    def __init__(self, base, head, profile, broad):
        size = math.dist(base, head)
        self.size, self.profile, self.broad = size, profile, broad
        self.u = ((head[0] - base[0]) / size, (head[1] - base[1]) / size)
        self.base = (base[0] + self.u[0] * GAP, base[1] + self.u[1] * GAP)
        self.length = size - 2 * GAP

    def at(self, share, off):
        """A point `share` down the bone, `off` units to its thumb side."""
        s, t = self.base[0] + self.u[0] * share * self.length, self.base[1] + self.u[1] * share * self.length
        return H(s - self.u[1] * off, t + self.u[0] * off)

    def half(self, share):
        for (a, wa), (b, wb) in zip(self.profile, self.profile[1:]):
            if a <= share <= b:
                return (wa + (wb - wa) * (share - a) / (b - a)) * self.broad
        return self.profile[-1][1] * self.broad

    def outline(self):
        up = [self.at(a, w * self.broad) for a, w in self.profile]
        down = [self.at(a, -w * self.broad) for a, w in self.profile]
        # a hollow base and a head with two knuckles; metacarpal heads are round
        dip = self.at(0.03, 0)
        tip = [] if self.profile is METACARPAL else [self.at(0.985 if self.profile is not DISTAL else 1.01, 0)]
        return closed(up + tip + down[::-1] + [dip])

    def area(self, lo, hi, inset=0.5, shares=(-1, 1)):
        steps = [lo + (hi - lo) * i / 4 for i in range(5)]
        side = [[self.at(a, k * max(self.half(a) - inset, 0.4)) for a in steps] for k in shares]
        return closed(side[0] + side[1][::-1])


def name_of(n, part):
    return f"metacarpal-{n}" if part == 0 else f"{part}-phalanx-of-finger-{n}"


BONES = {}
for n, (axis, broad) in RAYS.items():
    kinds = [(0, METACARPAL), ("proximal", PROXIMAL), ("middle", MIDDLE), ("distal", DISTAL)]
    if n == 1:
        kinds.pop(2)
    for (part, profile), a, b in zip(kinds, axis, axis[1:]):
        BONES[name_of(n, part)] = Ray(a, b, profile, broad)

CARPALS = {
    "trapezium-bone": [(9.6, 11.6), (9.2, 15), (12, 17.4), (15.4, 18.2), (18.4, 18.8), (19.8, 16.8), (19.6, 14.2),
                       (17.6, 12), (15, 10.8), (12, 10.4)],
    "trapezoid-bone": [(9.4, 6.4), (9.4, 9.6), (11.6, 10.2), (14.6, 10.4), (16.4, 9.4), (16.2, 6.6), (14.6, 5.2),
                       (11, 5.4)],
    "capitate-bone": [(4.6, -1.8), (3.6, 0.6), (4.4, 3.2), (7.6, 4.6), (11, 4.9), (14.6, 4.8), (17.2, 5.4),
                      (18.4, 3.4), (18.6, 0), (18, -2.2), (13, -2), (8.4, -2.6)],
    "hamate-bone": [(4.4, -4.2), (6.2, -3.2), (10, -2.6), (14, -2.4), (17.4, -2.8), (18, -5.6), (17, -9), (16.4, -13),
                    (14, -13.6), (11.2, -11.6), (8, -8.4), (5.6, -6)],
    "scaphoid-bone": [(-1.6, 6), (-1.4, 9.8), (0.4, 12.8), (3.4, 14), (6.4, 14.2), (8.4, 15), (9, 13.2), (8.9, 10),
                      (8.8, 7), (6.8, 5), (3.4, 4.4), (0.4, 4.4)],
    "lunate-bone": [(-2.6, -1), (-2.4, 2.6), (-0.6, 3.8), (2.6, 3.8), (3.8, 3.2), (2.8, 0.6), (3.8, -2.4),
                    (2.6, -4), (-0.8, -4)],
    "triquetral-bone": [(-0.4, -4.8), (2.4, -4.6), (4.2, -4.8), (6.2, -7), (8.8, -10), (8.4, -12.6), (5.4, -13.6),
                        (2.4, -12), (0, -8.4)],
}
PISIFORM = [(2.2, -11), (4, -9.2), (7, -9.2), (8.8, -11.2), (8.2, -13.8), (5.4, -14.8), (3, -13.6)]


def bone_shapes(order):
    out = []
    for sid in order:
        out.append(Shape(sid, "bone", closed(points(H, CARPALS[sid])) if sid in CARPALS else BONES[sid].outline()))
    return out


def joint(sid, pts, widths):
    return Shape(sid, "bone", ribbon(pts, widths, blunt=False), z=1)


def hand_joints(front):
    out = []
    for n, (axis, broad) in RAYS.items():
        names = [f"metacarpophalangeal-joint-{n}", f"proximal-interphalangeal-joint-of-finger-{n}",
                 f"distal-interphalangeal-joint-of-finger-{n}"]
        if n == 1:
            names = [names[0], "interphalangeal-joint-of-thumb"]
        for i, sid in enumerate(names):
            b = BONES[name_of(n, [0, "proximal", "middle"][i])]
            w = [4.4, 3.7, 3.2][i] * broad
            bow = 1.5 if i == 0 else 0.6
            ends = [b.at(1 + (bow * -0.8) / b.length, w), b.at(1 + (0.5 + bow * 0.3) / b.length, 0),
                    b.at(1 - bow * 0.8 / b.length, -w)]
            out.append(joint(sid, ends, [1.4, 2.8 if i == 0 else 2.2, 1.4]))
    carpo = {1: [(21.4, 14.4), (20.8, 17.4), (18.8, 20)], 2: [(16.4, 6), (16.8, 8.6), (17.4, 12.4)],
             3: [(18.4, -1.4), (18.9, 1.8), (18.2, 5.2)], 4: [(18.2, -7.6), (18.6, -5), (18.4, -2.2)],
             5: [(16.4, -13.4), (17.2, -11.2), (17.8, -8.4)]}
    for n, pts in carpo.items():
        out.append(joint(f"carpometacarpal-joint-{n}", points(H, pts), [1.4, 2.4, 1.4]))
    lines = {
        "midcarpal-joint": ([(9.4, 13.6), (9, 9.4), (7.4, 5), (3.8, 2.6), (3.4, -0.6), (4.2, -3.6), (6.6, -7.6),
                             (9.6, -11.4)], [1.2, 1.8, 2, 2.2, 2.2, 2, 1.8, 1.2]),
        "scapholunate-joint": ([(-1.6, 4.2), (1, 4.1), (3.6, 4)], [1.2, 1.9, 1.2]),
        "lunotriquetral-joint": ([(-0.8, -4.2), (1.2, -4.4), (3.4, -4.4)], [1.2, 1.9, 1.2]),
        "scaphotrapezial-joint": ([(8.8, 15), (9.2, 13), (9.2, 10.6)], [1.2, 2.1, 1.4]),
        "scaphotrapezoid-joint": ([(9.2, 9.8), (9, 7.8), (8.6, 6)], [1.2, 2.1, 1.4]),
        "capitohamate-joint": ([(5.4, -2.8), (10, -2.4), (14, -2.2), (17.6, -2.4)], [1.2, 1.8, 1.8, 1.2]),
    }
    if front:
        lines["pisotriquetral-joint"] = ([(3, -9.6), (5.6, -8.8), (8, -9.8)], [1.1, 1.9, 1.1])
    for sid, (pts, widths) in lines.items():
        out.append(joint(sid, points(H, pts), widths))
    return out


def forearm_joints(front):
    back = not front
    return [
        joint("wrist-joint", points(F, [(151.4, 13.2), (149, 9.4), (147.6, 5), (146.8, 0.6), (146.6, -3.4),
                                        (147.4, -7.6), (148.6, -10.6)]), [1.6, 2.8, 3.2, 3.2, 3, 2.6, 1.4]),
        joint("distal-radioulnar-joint", points(F, [(136, -3.6), (140.6, -4), (145, -3.8)]), [1.4, 2.6, 1.6]),
        joint("proximal-radioulnar-joint", points(F, [(7.4, -0.2), (10.8, -0.4), (14, 0.6)]), [1.4, 2.6, 1.4]),
        joint("humeroradial-joint", points(F, [(6, 0.8), (7.4, 6), (6.4, 12)] if front else
                                           [(5, 2.4), (7.4, 6.6), (6.2, 12)]), [1.6, 3, 1.8]),
        joint("humeroulnar-joint", points(F, [(2.6, -16), (6.2, -11.6), (4, -7.4), (2.8, -4.6), (5.4, -1.4)] if front
                                          else [(4, -14.6), (-3, -13.6), (-9, -11.6), (-13.6, -9.2)]),
              [1.6, 2.8, 3, 2.8, 1.6] if front else [1.6, 3, 3, 1.4]),
    ]


def ray_landmarks(front):
    out = []

    def add(sid, d):
        out.append(Shape(sid, "bone", d, z=0.5))

    for n in RAYS:
        m = BONES[name_of(n, 0)]
        add(f"shaft-of-metacarpal-{n}", m.area(0.22, 0.76, 0.55))
        add(f"base-of-metacarpal-{n}", m.area(0.03, 0.18))
        add(f"head-of-metacarpal-{n}", m.area(0.82, 0.97))
        add(f"base-of-proximal-phalanx-of-finger-{n}", BONES[name_of(n, "proximal")].area(0.04, 0.2))
        if n > 1:
            mid = BONES[name_of(n, "middle")]
            if front:
                add(f"palmar-surface-of-middle-phalanx-of-finger-{n}", mid.area(0.24, 0.8, 0.6))
            else:
                add(f"dorsal-base-of-middle-phalanx-of-finger-{n}", mid.area(0.04, 0.24))
        side = "palmar" if front else "dorsal"
        add(f"{side}-base-of-distal-phalanx-of-finger-{n}", BONES[name_of(n, "distal")].area(0.05, 0.36, 0.4))
    return out


def place(sid, d, z=0.5, piece=1):
    SHAPES.append(Shape(sid, "bone", d, piece=piece, z=z))


# =================================================================================================================
SHAPES.append(Shape("ulna", "bone", closed(ULNA_FRONT)))
SHAPES.append(Shape("radius", "bone", closed(RADIUS)))
SHAPES += bone_shapes([s for s in CARPALS if s != "trapezium-bone"] + ["trapezium-bone"])
SHAPES += bone_shapes(sorted(BONES))
SHAPES.append(Shape("pisiform-bone", "bone", closed(points(H, PISIFORM)), z=0.6))
SHAPES += forearm_joints(True) + hand_joints(True) + ray_landmarks(True)

# ---- landmarks of the humerus --------------------------------------------------------------------------------------
HUMERUS = Span(polygon_of_path(next(s.d for s in bones_front.SHAPES if s.id == "humerus")), U)
RAD, ULN = Span(polygon_of(RADIUS), F), Span(polygon_of(ULNA_FRONT), F)

place("anterior-shaft-of-humerus", HUMERUS.area((95, 0.2, 0.74), (110, 0.12, 0.84), (130, 0.1, 0.88), (150, 0.12, 0.86),
                                                (164, 0.2, 0.78), (172, 0.3, 0.66)), z=0.3)
place("medial-shaft-of-humerus", HUMERUS.area((76, 0.04, 0.2), (88, 0.03, 0.32), (104, 0.03, 0.32), (116, 0.05, 0.2)))
place("crest-of-greater-tubercle", HUMERUS.area((13, 0.7, 0.84), (26, 0.62, 0.82), (40, 0.58, 0.74), (52, 0.6, 0.7)))
place("crest-of-lesser-tubercle", HUMERUS.area((14, 0.32, 0.46), (26, 0.2, 0.38), (40, 0.14, 0.32), (50, 0.14, 0.24)))
place("intertubercular-sulcus", HUMERUS.area((2, 0.66, 0.74), (14, 0.5, 0.68), (28, 0.4, 0.6), (42, 0.34, 0.56),
                                             (50, 0.34, 0.5)))
place("anatomical-neck-of-humerus", ribbon([(111.4, 189), (108.6, 193.6), (105.8, 200), (103, 206), (100.4, 211)],
                                           [1.6, 3, 3.2, 3, 1.6], blunt=False))
place("medial-epicondyle-of-humerus", closed([(124.8, 377.4), (127, 372.6), (130.4, 368.4), (132.6, 372), (131.6,
    377.4),
                                              (130.4, 381.4), (126.8, 381.2)]))
place("lateral-epicondyle-of-humerus", closed([(158.8, 374.6), (157.4, 368.2), (153.4, 364.4), (152.2, 369.4),
                                               (153.6, 375), (156, 379.6)]))
place("medial-supracondylar-ridge-of-humerus", HUMERUS.area((132, 0.02, 0.16), (146, 0.02, 0.17), (158, 0.02, 0.16),
                                                            (167, 0.03, 0.17)))
place("lateral-supracondylar-ridge-of-humerus", HUMERUS.area((130, 0.84, 0.97), (144, 0.83, 0.98), (156, 0.85, 0.98),
                                                             (164, 0.87, 0.98)))

# ---- landmarks of ulna and radius ----------------------------------------------------------------------------------
place("anterior-shaft-of-ulna", ULN.area((28, 0.22, 0.78), (50, 0.16, 0.84), (80, 0.16, 0.84), (110, 0.2, 0.8),
                                         (124, 0.3, 0.7)), z=0.3)
place("coronoid-process-of-ulna", closed(points(F, [(8.4, -11.4), (5.4, -8), (4.4, -5), (6.6, -2.6), (9.4, -2.6),
                                                     (14, -5.6), (16.6, -8.4), (13, -10.4)])))
place("tuberosity-of-ulna", ULN.area((16, 0.3, 0.62), (19, 0.24, 0.7), (23, 0.24, 0.72), (27, 0.36, 0.6)))
place("radial-notch-of-ulna", closed(points(F, [(8.4, -2.2), (8.8, -0.9), (12.8, -1.1), (14, -2.4), (11.4, -3.2)])))
place("interosseous-border-of-ulna", ULN.area((30, 0.88, 0.98), (50, 0.84, 0.98), (80, 0.84, 0.98), (110, 0.86, 0.98),
                                              (122, 0.9, 0.97)))
place("head-of-ulna", closed(points(F, [(137.4, -5.6), (141, -4.7), (144.6, -5.8), (145, -9.6), (141.6, -11.8),
                                        (137.6, -9.6)])))
place("styloid-process-of-ulna", closed(points(F, [(144.6, -10.6), (147.6, -11.5), (149.4, -12.1), (149.2, -13.1),
                                                   (146, -13.5), (143, -13.2)])))
place("anterior-shaft-of-radius", RAD.area((42, 0.3, 0.64), (60, 0.2, 0.7), (85, 0.18, 0.78), (110, 0.18, 0.82),
                                           (122, 0.3, 0.74)), z=0.3)
place("head-of-radius", RAD.area((8.6, 0.1, 0.9), (9.6, 0.05, 0.95), (12, 0.05, 0.95), (13.8, 0.12, 0.88)))
place("neck-of-radius", RAD.area((15.4, 0.08, 0.92), (17.4, 0.08, 0.92), (19.6, 0.2, 0.92)))
place("radial-tuberosity", RAD.area((21, 0.06, 0.3), (23, 0.04, 0.46), (26, 0.04, 0.48), (29.4, 0.1, 0.36)))
place("anterior-oblique-line-of-radius", closed(points(F, [(30, 3), (38, 7), (50, 10.4), (62, 12.8), (63, 11.4),
                                                           (52, 8.8), (40, 5), (32, 2.4)])))
place("pronator-tuberosity", RAD.area((64, 0.8, 0.94), (70, 0.74, 0.97), (78, 0.76, 0.97), (84, 0.86, 0.96)))
place("lateral-shaft-of-radius", RAD.area((84, 0.84, 0.97), (100, 0.8, 0.97), (116, 0.82, 0.97), (128, 0.86, 0.97)))
place("interosseous-border-of-radius", RAD.area((36, 0.03, 0.13), (60, 0.02, 0.15), (90, 0.02, 0.15), (118, 0.02, 0.13),
                                                (130, 0.03, 0.1)))
place("distal-end-of-radius", RAD.area((130, 0.06, 0.94), (136, 0.04, 0.96), (141, 0.04, 0.96), (144.6, 0.05, 0.95)),
      z=0.3)
place("styloid-process-of-radius", closed(points(F, [(144.4, 14.6), (145.6, 11.6), (149, 11.6), (151.6, 13.8),
                                                     (150.4, 14.7), (147.4, 15)])))
# ---- landmarks of the wrist ----------------------------------------------------------------------------------------
place("tubercle-of-scaphoid", closed(points(H, [(5.6, 11.8), (6.4, 14), (8.2, 14.6), (8.6, 12.8), (7.6, 11)])), z=0.7)
place("tubercle-of-trapezium", closed(points(H, [(10.2, 11.8), (10.6, 14), (12.8, 15), (15.4, 14.2), (14.4, 12),
                                                 (12, 11.2)])), z=0.7)
place("hook-of-hamate", closed(points(H, [(9.2, -7.6), (10, -5.6), (12.8, -5), (14.6, -6.4), (13.6, -8.6),
                                          (11.2, -9)])), z=0.7)
