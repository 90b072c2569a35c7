"""Front view: knee, lower leg and foot beyond the large bones: the foot's bones, joints, ligaments and felt points.

The foot is seen from in front along its length, so its bones are foreshortened: each lies in front of and below the one
behind it. Heights of attachments follow the published models where those have them; the rest is drawn from memory of
anatomy.
"""
import math

from pen import Shape, closed, ribbon

SHAPES = []


def put(id_, d, z, piece=1, fibres=()):
    SHAPES.append(Shape(id_, "bone", d, list(fibres), piece, z))


def ray(start, end, outline):
    """Points of a long bone given in its own frame: s along it (0..1), t across it in units.

    Across is halfway between level and square to the bone, as the joints of the foot stand seen from in front.
    """
    (x0, y0), (x1, y1) = start, end
    dx, dy = x1 - x0, y1 - y0
    size = math.dist(start, end)
    ax, ay = -dy / size - 1, dx / size
    a = math.hypot(ax, ay)
    return [(x0 + dx * s + ax / a * t, y0 + dy * s + ay / a * t) for s, t in outline]


def blunt(points):
    """Closed outline of a bone given from one end down one side and up the other, its four ends sharp."""
    n = len(points)
    return closed(points, (0, n // 2 - 1, n // 2, n - 1))


# ---- behind the bones: membrane and capsule -------------------------------------------------------------------------
put("interosseous-membrane-of-leg", closed([
    (62.4, 764), (65.4, 770), (66, 784), (65.6, 820), (64.2, 860), (62.8, 900), (62.4, 930), (61.6, 942), (58.6, 938),
    (55.8, 920), (55.4, 900), (56, 870), (56.8, 840), (57.8, 810), (59, 785), (60.4, 770)]), -1)
put("capsule-of-knee-joint", closed([
    (34, 705), (42, 694), (52, 689), (62, 694), (71.4, 704), (76.6, 714), (77, 727), (76.6, 738), (73.6, 745),
    (64, 743), (52, 741), (40, 743), (30.6, 744), (27.6, 737), (27.8, 722), (29.6, 713)]), -1)

# ---- the foot's bones -----------------------------------------------------------------------------------------------
put("calcaneus", closed([
    (57, 970.4), (60.4, 967.4), (62.6, 969.4), (66, 970.8), (69.4, 970.2), (70.4, 973), (69.4, 977.4), (64, 978),
    (58.6, 976.4)]), 1)
put("navicular-bone", closed([
    (38, 970.6), (39.6, 968.4), (44, 969.2), (50, 969.4), (54.6, 968.2), (57.4, 969.8), (57, 972.4), (53.6, 973.8),
    (47, 974), (41.4, 973.6), (38.4, 972.8)]), 1.1)
put("cuboid-bone", closed([
    (57.4, 973), (60.6, 972), (65.4, 972.2), (69.6, 973.6), (70.6, 976), (69.6, 979), (65, 979.2), (60, 978.4),
    (57.8, 976.6)]), 1.2)
put("lateral-cuneiform-bone", closed([
    (52.4, 973.4), (55.6, 972.6), (58.2, 973.4), (59, 976), (57.8, 978), (54.6, 978.2), (52.4, 976.8)]), 1.3)
put("intermediate-cuneiform-bone", closed([
    (46.8, 973.2), (49.8, 972.6), (52.4, 973.2), (52.9, 975.4), (51.6, 977), (48.4, 977), (46.7, 975.6)]), 1.3)
put("medial-cuneiform-bone", closed([
    (37.4, 973.6), (40.4, 972.6), (45, 972.6), (47.2, 974), (47.2, 977), (45, 978.6), (40, 978.8), (37, 978),
    (36.6, 975.6)]), 1.4)

# base middle, head middle, half-width of base, of shaft, of head
METATARSALS = {
    1: ((42.4, 978), (40.4, 988.2), 5.1, 3.8, 4.8),
    2: ((49.8, 976.6), (54.6, 987.4), 3.1, 2.2, 2.8),
    3: ((56, 977.4), (63.4, 987.4), 2.8, 1.6, 2.6),
    4: ((62, 978), (72, 987.2), 2.7, 1.5, 2.5),
    5: ((68, 978.2), (80.2, 987.2), 2.9, 1.7, 2.4),
}


def metatarsal(n, parts=(0, 1)):
    """Outline points of a metatarsal, or of the part of it between two places along it (0..1)."""
    start, end, base, shaft, head = METATARSALS[n]
    edge = [(0, base * 0.9), (0.12, base), (0.3, shaft * 1.12), (0.5, shaft), (0.68, shaft * 1.1), (0.86, head),
            (0.96, head * 0.9), (1, head * 0.6)]
    lo, hi = parts
    if (lo, hi) != (0, 1):
        edge = [(lo, at(edge, lo))] + [p for p in edge if lo < p[0] < hi] + ([(hi, at(edge, hi))] if hi < 1 else [])
        edge = [(s, t * 0.9) for s, t in edge]
    return ray(start, end, edge + [(s, -t) for s, t in reversed(edge)])


def at(edge, s):
    for (a, p), (b, q) in zip(edge, edge[1:]):
        if a <= s <= b:
            return p + (q - p) * (s - a) / (b - a)
    return edge[-1][1]


for n in (5, 4, 3, 2, 1):
    points = metatarsal(n)
    put(f"metatarsal-{n}", blunt(points), 1.5)
SHAPES[-5].d = closed([(66.2, 976.2), (69.4, 975.6), (73, 976), (74.4, 977.6), (73.6, 979.4), (76.6, 982), (80.4, 984.4),
                       (82, 986.4), (81, 988.6), (78.6, 988.8), (76.6, 986.8), (72.4, 983.6), (68, 981.2),
                       (65.4, 979.2)])

# the toes: places along the midline of each (root, joints, tip) and half-widths (base, waist, head of each phalanx)
TOES = {
    1: [(40.2, 988.6), (40.6, 993.6), (41, 999)],
    2: [(54.8, 987.8), (55.3, 992.4), (55.4, 995.4), (55.4, 999.1)],
    3: [(63.8, 987.8), (64.8, 992), (65, 994.6), (65.1, 998.1)],
    4: [(72.6, 987.6), (74.4, 991.4), (74.9, 993.7), (75, 996.6)],
    5: [(80.8, 987.6), (83, 990.2), (83.9, 992.2), (84.4, 994.4)],
}
WIDTHS = {1: (4.2, 3.4, 3.7), 2: (2.4, 1.9, 2.1), 3: (2.3, 1.8, 2), 4: (2.2, 1.7, 1.9), 5: (2, 1.5, 1.7)}


def phalanx(n, i):
    start, end = TOES[n][i], TOES[n][i + 1]
    base, waist, head = (w * (1, 0.94, 0.9)[i] for w in WIDTHS[n])
    if i == len(TOES[n]) - 2:  # the last one ends in a narrow tuft
        edge = [(0.08, base * 0.9), (0.46, waist * 0.82), (0.78, head * 0.8), (0.97, head * 0.4)]
    else:
        edge = [(0.06, base * 0.96), (0.5, waist), (0.95, head * 0.96)]
    return blunt(ray(start, end, edge + [(s, -t) for s, t in reversed(edge)]))


for n, places in TOES.items():
    names = ["proximal", "distal"] if n == 1 else ["proximal", "middle", "distal"]
    for i, name in enumerate(names):
        put(f"{name}-phalanx-of-toe-{n}", phalanx(n, i), 1.6 - 0.02 * i)

# ---- menisci: their front rims on the plateau -----------------------------------------------------------------------
put("medial-meniscus", closed([(29.8, 731.4), (34, 730.9), (40, 731.4), (45.6, 730.4), (46.4, 731.8), (42, 733.4),
                               (36, 733.9), (30.4, 734.4), (28.9, 733)]), 1.8)
put("lateral-meniscus", closed([(59, 730.4), (63, 731.2), (69, 731), (74.8, 731.4), (75.9, 733), (74.6, 734.4),
                                (69, 734), (63, 733.8), (58.4, 732.2)]), 1.8)

# ---- joints ---------------------------------------------------------------------------------------------------------


def gap(id_, a, b, width, z=2):
    """A joint seen as the line between two bones."""
    mid = ((a[0] + b[0]) / 2, (a[1] + b[1]) / 2)
    put(id_, ribbon([a, mid, b], [width * 0.7, width, width * 0.7], blunt=False), z)


put("talonavicular-joint", ribbon([(40.4, 968), (45, 968.9), (50, 969.3), (54.4, 968.6), (57, 967.8)],
                                  [0.8, 1.4, 1.5, 1.4, 0.8], blunt=False), 2)
gap("calcaneocuboid-joint", (59, 972), (69.4, 973), 1.7)
gap("cuboideonavicular-joint", (57.4, 970.8), (58, 973.2), 1.5)
gap("medial-cuneonavicular-joint", (38.4, 973.3), (46.2, 973.2), 1.5)
gap("intermediate-cuneonavicular-joint", (47, 973.3), (52, 973.2), 1.5)
gap("lateral-cuneonavicular-joint", (52.8, 973.2), (57, 972.8), 1.5)
for n, (start, end, base, shaft, head) in METATARSALS.items():
    a, b = ray(start, end, [(0, base * 0.86), (0, -base * 0.86)])
    gap(f"tarsometatarsal-joint-{n}", a, b, 1.2)
    a, b = ray(start, end, [(1.03, head * 0.8), (1.03, -head * 0.8)])
    gap(f"metatarsophalangeal-joint-{n}", a, b, 1.3)
for n, places in TOES.items():
    names = ["interphalangeal-joint-of-big-toe"] if n == 1 else [
        f"proximal-interphalangeal-joint-of-toe-{n}", f"distal-interphalangeal-joint-of-toe-{n}"]
    for i, name in enumerate(names, 1):
        half = WIDTHS[n][2] * 0.8
        a, b = ray(places[i - 1], places[i], [(1, half), (1, -half)])
        gap(name, a, b, 0.9)

# ---- ligaments against bone -----------------------------------------------------------------------------------------
put("tibial-collateral-ligament", ribbon([(32.2, 719.6), (30.6, 729), (30.7, 742), (33.2, 756), (37, 770)],
                                          [3, 3.8, 3.8, 3.6, 2.6]), 2.4)
put("fibular-collateral-ligament", ribbon([(73.6, 719), (74.4, 730), (73.8, 740), (72, 749)], [2.2, 2, 2, 2.4]), 2.4)
put("anterior-tibiofibular-ligament", closed([(56, 945.6), (59.4, 946.4), (66, 953.6), (65.6, 958.4), (62, 957.4),
                                              (56, 950.6)], (0, 2, 3, 5)), 2.4)
put("deltoid-ligament", closed([(31.6, 965.8), (34, 966.8), (37.4, 963.6), (42.6, 967), (41, 970.4), (37.6, 972.4),
                                (34, 973), (32.8, 969.6)], (0, 2, 3, 6)), 2.4)
put("anterior-talofibular-ligament", closed([(62.4, 960.8), (64.6, 962.6), (64, 965), (58, 967.2), (56.4, 965)],
                                            (2, 3, 4)), 2.4)
put("bifurcate-ligament", closed([(59.4, 969.4), (61.2, 970.4), (61.6, 973.8), (59.8, 974), (59, 971.8), (55.6, 971.4),
                                  (55.6, 969.8)], (2, 3, 4, 5, 6)), 2.4)

# ---- landmarks: a patch of the bone each ----------------------------------------------------------------------------
put("medial-condyle-of-femur", closed([
    (37.4, 713), (38.4, 719.4), (41.8, 726.4), (45.8, 730), (38.4, 731), (33, 728.6), (31.2, 725), (35.8, 722.8),
    (37, 717.4)]), 3)
put("lateral-condyle-of-femur", closed([
    (68, 716.6), (69.2, 722), (74.2, 724), (72.4, 727.8), (66.6, 730.6), (60.4, 730.2), (61, 728.2), (65.4, 723),
    (67.2, 718.6)]), 3)
put("medial-border-of-patella", ribbon([(42.4, 710.6), (40.2, 714.6), (41, 719.6), (44.4, 726.8), (47.8, 732)],
                                        [1.8, 2.6, 2.8, 2.8, 1.8], blunt=False), 3)
put("lateral-border-of-patella", ribbon([(62.4, 711.4), (64, 715), (63.2, 719.4), (59.8, 726.2), (56.6, 731.6)],
                                         [1.8, 2.6, 2.8, 2.8, 1.8], blunt=False), 3)
put("medial-condyle-of-tibia", closed([
    (32, 736), (38.4, 735.8), (45.6, 735.8), (45.2, 741), (41.4, 747.4), (36.4, 753), (34.4, 755.6), (31.6, 749.6),
    (30, 743)]), 3)
put("lateral-condyle-of-tibia", closed([
    (56.8, 735.8), (65, 735.4), (72.6, 735.6), (74.2, 738), (73.8, 743), (71.4, 745.4), (70.6, 741), (66.8, 738.4),
    (62.4, 740), (60, 744), (58, 742)]), 3)
put("medial-surface-of-tibia", closed([
    (41.4, 795), (45, 793.6), (50, 797), (50, 830), (49.4, 865), (47.6, 895), (44.6, 922), (40.4, 944), (36.6, 947),
    (34.6, 943), (38.2, 924), (41, 898), (42, 870), (42.2, 835)]), 3)
put("lateral-surface-of-tibia", closed([
    (55, 782), (58, 776), (57.6, 796), (56.2, 830), (55.2, 862), (54.4, 890), (54, 906), (51.6, 908), (51.6, 890),
    (52.6, 862), (53, 830), (53.2, 800)]), 3)
put("anterior-border-of-tibia", ribbon([(50.8, 778), (51.6, 800), (51.6, 835), (50.8, 868), (48.8, 898), (45.6, 924),
                                        (41.4, 945)], [2, 2.2, 2.2, 2.2, 2.2, 2, 1.4], blunt=False), 3)
put("medial-border-of-tibia", ribbon([(37.8, 786), (40, 805), (41.4, 835), (41.3, 868), (40.2, 896), (37.4, 922),
                                      (33.6, 942)], [1.6, 2, 2, 2, 2, 2, 1.4], blunt=False), 3)
put("medial-malleolus", closed([
    (31.2, 949.6), (35.6, 949), (38.8, 952.6), (38.6, 957.6), (37.6, 961.4), (37, 964.4), (34, 966.4), (30.6, 963.8), (29.2, 956.6)]), 3)
put("neck-of-fibula", closed([(66, 766.4), (70.6, 766), (70.2, 772), (70, 779), (65.9, 779), (65.6, 772)]), 3)
put("medial-surface-of-fibula", closed([
    (65.9, 782), (67.4, 782), (67.6, 800), (67.2, 830), (65.9, 865), (64.6, 900), (64.2, 924), (62.9, 924), (63, 900),
    (64.2, 862), (65.5, 822)]), 3)
put("lateral-surface-of-fibula", closed([
    (68.6, 782), (70, 782), (69.5, 820), (68.1, 860), (66.6, 900), (65.8, 922), (65, 920), (65.6, 900), (67, 862),
    (68.2, 824)]), 3)
put("anterior-border-of-fibula", ribbon([(68, 781), (67.9, 822), (66.5, 862), (65.1, 900), (64.8, 926), (65.4, 944)],
                                         [1.2, 1.4, 1.4, 1.4, 1.4, 1.2], blunt=False), 3.1)
put("lateral-malleolus", closed([
    (62.6, 950.4), (65.2, 949), (67.7, 948.2), (69, 958.4), (68, 968), (65.4, 969.4), (63.4, 966.4), (62.2, 960)]), 3)
put("neck-of-talus", closed([(42.4, 962), (50, 962.4), (58, 961.6), (57, 963.6), (55.4, 965), (50, 965.6), (45.4, 965.2),
                                 (43.2, 963.8)]), 3)
put("head-of-talus", closed([(44.6, 965.8), (50, 966.2), (55.4, 965.6), (57, 966.6), (56.4, 968), (50, 968.5), (44, 968.2),
                                 (42.8, 967)]), 3)
put("tarsal-sinus", closed([(57.8, 966.4), (60, 965), (62.2, 965.8), (61.6, 967.6), (59.4, 968.4)]), 3)
put("superior-surface-of-calcaneus", closed([(60.2, 968.9), (62.4, 970), (65.8, 971.2), (65.6, 972), (61.2, 971.5),
                                             (59.4, 970.6)]), 3)
put("navicular-tuberosity", closed([(37.6, 970.8), (39.2, 968.8), (41.2, 969.4), (41.2, 972.2), (39, 973.2),
                                    (37.8, 972.4)]), 3)
put("medial-surface-of-medial-cuneiform", closed([(37, 974.4), (38.8, 973.6), (39.6, 976), (39.4, 978.4), (37.2, 977.8)]),
    3)
put("tuberosity-of-cuboid", closed([(67, 977), (69.4, 975.8), (70.2, 977.4), (69, 978.7), (67.2, 978.6)]), 1.25)
for n in METATARSALS:
    put(f"base-of-metatarsal-{n}", blunt(metatarsal(n, (0.03, 0.26))), 2.9)
    put(f"shaft-of-metatarsal-{n}", blunt(metatarsal(n, (0.3, 0.68))), 3)
    put(f"head-of-metatarsal-{n}", blunt(metatarsal(n, (0.74, 1))), 3)
put("tuberosity-of-metatarsal-5", closed([(70.2, 976.2), (72.8, 976.2), (74.2, 977.7), (73, 979.2), (70.6, 978.8)]), 3)

# ---- gliding pouches that lie on bone -------------------------------------------------------------------------------
put("suprapatellar-bursa", closed([(45.6, 706.6), (43.6, 700), (45.6, 692), (50, 687), (55.4, 686.6), (60, 691),
                                   (62, 699), (60.4, 706.4), (53, 705.6)]), 0.2)
put("deep-infrapatellar-bursa", closed([(47.4, 745.6), (52, 744.4), (56.4, 746), (57, 751), (54.6, 754.4), (49.6, 754.6),
                                        (46.8, 751)]), 2.6)
put("anserine-bursa", closed([(34.6, 760.6), (37, 757.6), (40.6, 760.4), (43, 765), (43.2, 771), (40.6, 774),
                              (37.6, 770.4)]), 3.2)
