"""Palm: bones of wrist and hand from the front, with the joints, felt points and ligaments on their palmar side.

The patient's left hand, fingers down; places are given in the hand's frame (see skin_palm.P). Proportions of the bones to
the hand's length are drawn from memory of anatomy.
"""
from pen import Shape, closed, ribbon
from rays import cut, frame, gap, long_bone
from skin_palm import P, SCALE

SHAPES = []
K = SCALE


def at(points):
    return [P(*p) for p in points]


def put(id_, d, z=0.0, piece=1):
    SHAPES.append(Shape(id_, "bone", d, piece=piece, z=z))


def shape(id_, points, z=0.0, piece=1, corners=()):
    put(id_, closed(at(points), corners), z, piece)


# ---- forearm ends and carpal bones: the row next to the forearm first, pisiform and hamate's hook nearest the palm --
shape("ulna", [(-9.8, -12.6), (-9.8, -7.6), (-7.4, -6.8), (-5.4, -5.4), (-4, -4.6), (-3.1, -5.8), (-3, -8), (-3.4, -9.8), (-2.2, -11.4),
               (-1.2, -12.2), (-1.4, -13.4), (-3, -14), (-5.2, -13.8), (-7.4, -13)], corners=(0, 1))
shape("radius", [(-9.8, 0.6), (-9.8, 11.4), (-7, 12.4), (-4, 13.6), (-1.4, 14.4), (0.6, 14.6), (1.2, 13.6), (-0.2, 11.8), (-0.8, 9),
                 (-1.2, 5.6), (-1.6, 2), (-1.9, -1), (-2, -3.4), (-3.2, -4.2), (-5.2, -3.6), (-7.4, -1.2)], corners=(0, 1))
shape("lunate-bone", [(-0.6, -3.6), (-1, -1), (-0.6, 1.8), (0.4, 3.6), (2.6, 4), (5.2, 3.6), (6.8, 2.2), (6.2, 0.2), (6.6, -2), (5.4, -3.8),
                      (2.8, -4.6), (0.8, -4.6)])
shape("scaphoid-bone", [(0.2, 4.8), (-0.2, 7), (0.4, 9.6), (1.8, 11.6), (3.8, 12.4), (5.6, 12), (7.4, 12.6), (9.6, 13.6), (11, 12.8),
                        (11.2, 10.8), (10, 9.2), (8.6, 8), (7.2, 6), (6.2, 4.6), (4, 4.4), (1.8, 4.2)])
shape("triquetral-bone", [(1.6, -5.2), (1.2, -7.4), (2, -9.6), (3.8, -11.4), (6, -12), (7.6, -10.8), (8.4, -8.6), (8.2, -6), (6.8, -4.8),
                          (4.2, -4.6)])
shape("trapezoid-bone", [(10.2, 6.4), (10.8, 8.4), (12.8, 8.8), (15.2, 8.4), (17.4, 8.6), (17.6, 6.6), (16.8, 4.8), (13.8, 4.4),
                         (11.4, 4.6)], z=-0.5)
shape("trapezium-bone", [(10.4, 9.8), (10.6, 12.6), (11, 14.6), (12.4, 16.2), (13.8, 16.4), (14.8, 14.6), (15.2, 12.8), (16.6, 11),
                         (17.6, 9.8), (16.2, 8.6), (13.4, 8.8), (11.4, 8.8)])
shape("capitate-bone", [(7.4, -1.6), (6.6, 0.6), (7.4, 2.8), (9, 4.4), (11, 4.4), (13.8, 4), (16.8, 4.6), (18.6, 4.4), (19.2, 1.6), (18.8, -1.4),
                        (16.6, -2.2), (13.2, -2.2), (10, -2.6)])
shape("hamate-bone", [(8, -3.2), (8.6, -5.4), (9, -8.2), (9.8, -10.6), (12.2, -11.8), (15.4, -12.8), (17, -12.6), (17.8, -9.6), (18.4, -6),
                      (18.6, -2.4), (16.6, -2.6), (13.2, -2.8), (10, -3)])
shape("pisiform-bone", [(3.6, -9.8), (3.2, -11.6), (4.2, -13.4), (6, -14), (7.8, -13.2), (8.6, -11.4), (8, -9.8), (6.2, -8.8), (4.8, -9)], z=0.5)

# ---- metacarpal bones and phalanges ---------------------------------------------------------------------------------
META = {  # middle of base and of head in the frame; widths of base, shaft, head (body units); bow
    1: ((16.4, 14.8), (37.2, 29.2), 8.8, 5.4, 8.6, 2),
    2: ((18, 7.6), (54.4, 16.6), 9, 4.8, 8.8, 3),
    3: ((19.4, 1.6), (55.6, 5.2), 8, 4.6, 8.8, 3),
    4: ((18.8, -4.4), (52.6, -6.4), 7, 4, 8, -3),
    5: ((18, -9.8), (48.6, -16.8), 7.6, 4.2, 8, -4),
}
PHALANX = {
    1: [((38.2, 30), (54.6, 38.8), 8.6, 5.2, 6.8), ((55.8, 39.4), (70.4, 45.8), 7.4, 4, 4.8)],
    2: [((55.4, 16.8), (77, 17.6), 7.8, 4.8, 6), ((78, 17.6), (90, 17.8), 6.4, 4.2, 5.2), ((90.9, 17.8), (99.4, 17.7), 5.4, 2.8, 3.7)],
    3: [((56.6, 5.3), (81, 4.9), 8.2, 5, 6.4), ((82, 4.9), (96.4, 4.9), 6.8, 4.4, 5.4), ((97.3, 4.9), (107.6, 4.9), 5.7, 3, 3.9)],
    4: [((53.6, -6.5), (75.8, -7.7), 7.4, 4.6, 6), ((76.8, -7.7), (90, -8), 6.4, 4.2, 5.2), ((90.9, -8), (101, -8.3), 5.4, 2.9, 3.8)],
    5: [((49.6, -17), (66.6, -19), 6.8, 4, 5.2), ((67.6, -19.1), (76, -19.8), 5.6, 3.6, 4.6), ((76.9, -19.9), (84.4, -20.5), 4.8, 2.6, 3.4)],
}


def scaled(base, head, *widths):
    return (P(*base), P(*head), *(w * K for w in widths))


for n, m in META.items():
    put(f"metacarpal-{n}", long_bone(*scaled(*m[:5]), bow=m[5] * 0.8))
for n, parts in PHALANX.items():
    names = ["proximal", "distal"] if n == 1 else ["proximal", "middle", "distal"]
    for name, part in zip(names, parts):
        put(f"{name}-phalanx-of-finger-{n}", long_bone(*scaled(*part), tip=name == "distal", cup=0.06))

# ---- felt points and attachment areas -------------------------------------------------------------------------------
shape("head-of-ulna", [(-7, -12.6), (-7, -8), (-5.4, -6), (-4, -5.2), (-3.4, -6.4), (-3.4, -8.4), (-3.8, -10), (-3, -11.8), (-4.6, -13.2)], 1)
shape("styloid-process-of-ulna", [(-3.6, -10.6), (-2.4, -11.6), (-1.5, -12.3), (-1.7, -13.2), (-3, -13.6), (-4.4, -12.8)], 2)
shape("distal-end-of-radius", [(-8.6, 1.4), (-8.4, 6), (-8, 11.6), (-5, 12.8), (-1.8, 13.8), (-0.8, 11.4), (-1.4, 8), (-1.8, 4), (-2.4, 0),
                               (-2.6, -3), (-4, -3.6), (-6.2, -1.8)], 1)
shape("styloid-process-of-radius", [(-3.6, 11.6), (-3.4, 13.2), (-1.4, 14), (0.4, 14.2), (0.8, 13.4), (-0.4, 11.8), (-1.4, 10.6)], 2)
shape("tubercle-of-scaphoid", [(7.6, 11.8), (8, 10.4), (9.2, 9.9), (10.6, 10.8), (10.8, 12.4), (9.6, 13.2), (8.4, 12.8)], 2)
shape("tubercle-of-trapezium", [(12, 10.4), (13, 9.7), (14.8, 9.9), (15.8, 11), (15, 12.2), (13.2, 12.2), (12, 11.6)], 2)
shape("hook-of-hamate", [(12.6, -6.4), (12.2, -8.2), (13.2, -9.8), (14.8, -9.9), (15.8, -8.8), (15.4, -7.2), (14.2, -6.2)], 2)
for n, m in META.items():
    b, h, wb, ws, wh = scaled(*m[:5])
    put(f"base-of-metacarpal-{n}", cut(b, h, 0.03, 0.16, wb * 0.84, wb * 0.72), 1)
    put(f"shaft-of-metacarpal-{n}", cut(b, h, 0.22, 0.76, ws * 1.14, ws * 0.88, ws * 0.76), 1)
    put(f"head-of-metacarpal-{n}", cut(b, h, 0.845, 0.97, wh * 0.74, wh * 0.82, wh * 0.92), 1)
for n, parts in PHALANX.items():
    b, h, wb, ws, wh = scaled(*parts[0])
    put(f"base-of-proximal-phalanx-of-finger-{n}", cut(b, h, 0.03, 0.22, wb * 0.84, wb * 0.66), 1)
    if n > 1:
        b, h, wb, ws, wh = scaled(*parts[1])
        put(f"palmar-surface-of-middle-phalanx-of-finger-{n}", cut(b, h, 0.12, 0.8, wb * 0.62, ws * 0.84, ws * 0.74), 1)
    b, h, wb, ws, wh = scaled(*parts[-1])
    put(f"palmar-base-of-distal-phalanx-of-finger-{n}", cut(b, h, 0.04, 0.32, wb * 0.8, wb * 0.56), 1)


# ---- joints ---------------------------------------------------------------------------------------------------------
def joint(id_, points, widths, z=2.5):
    put(id_, ribbon(at(points), [w * K for w in widths], False), z)


joint("distal-radioulnar-joint", [(-6.8, -4.4), (-5, -4.4), (-3, -4.4)], [0.9, 1.3, 0.9])
joint("wrist-joint", [(0.8, -8.6), (-0.6, -5), (-1.2, -1), (-1, 4), (-0.4, 9), (0.8, 13)], [0.7, 1.2, 1.4, 1.4, 1.2, 0.7])
joint("midcarpal-joint", [(9.6, 12.8), (10.4, 9.6), (9, 6.4), (7, 3.6), (6.6, 0.6), (7.2, -2.4), (8.2, -5.6), (8.6, -9.4)],
      [0.7, 1.1, 1.2, 1.2, 1.2, 1.2, 1.1, 0.7], 2.4)
joint("scapholunate-joint", [(0.4, 4.2), (3, 4.2), (6, 4.1)], [0.7, 1.1, 0.7])
joint("lunotriquetral-joint", [(1.2, -4.9), (3.6, -4.7), (6.2, -4.4)], [0.7, 1.1, 0.7])
joint("pisotriquetral-joint", [(4, -9.2), (6, -8.6), (8, -9.4)], [0.7, 1.2, 0.7])
joint("scaphotrapezial-joint", [(11, 13.4), (10.7, 11.6), (10.2, 9.9)], [0.7, 1.2, 0.7])
joint("scaphotrapezoid-joint", [(10, 8.7), (9.9, 7.4), (9.8, 5.8)], [0.6, 1, 0.6])
joint("capitohamate-joint", [(9, -2.9), (13, -2.6), (17.6, -2.4)], [0.7, 1.1, 0.7])
joint("carpometacarpal-joint-1", [(13.7, 17.6), (15.4, 15), (17.4, 11.8)], [0.9, 1.5, 0.9])
joint("carpometacarpal-joint-2", [(18, 10.8), (17.7, 7.8), (18, 4.8)], [0.8, 1.3, 0.8])
joint("carpometacarpal-joint-3", [(18.8, 4.2), (19.3, 1.6), (19, -1.6)], [0.8, 1.3, 0.8])
joint("carpometacarpal-joint-4", [(18.8, -2.2), (18.6, -4.6), (18.2, -7)], [0.8, 1.2, 0.8])
joint("carpometacarpal-joint-5", [(18, -7.6), (17.7, -10), (17.2, -12.6)], [0.8, 1.3, 0.8])
for n, parts in PHALANX.items():
    put(f"metacarpophalangeal-joint-{n}", gap(P(*META[n][1]), P(*parts[0][0]), parts[0][2] * K + 3, 9, 2), 2.5)
    names = ["interphalangeal-joint-of-thumb"] if n == 1 else [f"proximal-interphalangeal-joint-of-finger-{n}",
                                                                f"distal-interphalangeal-joint-of-finger-{n}"]
    for name, a, b in zip(names, parts, parts[1:]):
        put(name, gap(P(*a[1]), P(*b[0]), b[2] * K + 2, 8, 1.5), 2.5)

# ---- ligaments against the bones ------------------------------------------------------------------------------------
RADIOCARPAL = [  # from the radius: one band to the capitate, one to the lunate and triquetral bones
    ([(-2.2, 12.4), (1, 11.4), (4.6, 8.4), (8.4, 5.2), (11.4, 2)], [2.6, 3.2, 3, 2.8, 2.4]),
    ([(-2.6, 8.6), (0, 5), (2, 0.8), (3.6, -3.6), (4.8, -7.8)], [3, 3.4, 3.4, 3, 2.4]),
]
for n, (line, widths) in enumerate(RADIOCARPAL, 1):
    put("palmar-radiocarpal-ligament", ribbon(at(line), [w * K for w in widths], False), 3, n)
joint("radial-collateral-ligament-of-wrist", [(-0.2, 14), (2.6, 13.2), (5.6, 12.6), (8.2, 12.8)], [1.6, 2, 2, 2], 3)
joint("ulnar-collateral-ligament-of-wrist", [(-1.6, -12.6), (1, -12.4), (3.6, -11.8)], [1.6, 2.2, 2.4], 3)
joint("pisohamate-ligament", [(7.4, -11), (10, -10.4), (13.4, -9)], [2.6, 2.2, 2.2], 3)
joint("pisometacarpal-ligament", [(7.6, -12.4), (12, -12.6), (18.6, -11.6)], [2.4, 2, 3], 3)
joint("ulnar-collateral-ligament-of-thumb", [(35.6, 25.6), (37.8, 26), (41, 27.6)], [1.6, 2.2, 1.8], 4)
joint("deep-transverse-metacarpal-ligament", [(53, 19.6), (54.2, 11), (54.6, 5), (53, -1), (51.4, -7), (49.4, -12), (47.2, -18.6)],
      [3.4, 4.4, 4.4, 4.4, 4.4, 4.4, 3.2], 3.5)
