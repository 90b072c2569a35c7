"""Front view: muscles of arm, forearm and hand, each layer from deep to superficial.

Edges run from origin to insertion in the frames of bones_front_arm.py: U upper arm, F forearm, H hand (s down the
limb, t towards the thumb's side). Outlines are drawn from memory of anatomy around those bones.
"""
from bones_front_arm import BONES, F, H, RAYS, U, name_of, points
from fibres import muscle as drawn
from pen import Shape, closed, ribbon, sides, stroke

SHAPES = []
SUPERFICIAL, INTERMEDIATE, DEEP = "superficial-muscle", "intermediate-muscle", "deep-muscle"


def muscle(sid, layer, at, a, b, fibres=4, z=0, start=(), end=(), **kwargs):
    shape = drawn(sid, layer, points(at, a), points(at, b), fibres, start=points(at, start), end=points(at, end),
                  **kwargs)
    shape.z = z
    SHAPES.append(shape)


def slip(sid, layer, pts, widths, piece=1, z=0, fibres=1):
    """A tendon (one fibre) or a slim muscle (three): a band along its centre line in drawing units."""
    lines = [pts] if fibres == 1 else [pts, *sides(pts, [w * 0.5 for w in widths])]
    SHAPES.append(Shape(sid, layer, ribbon(pts, widths), [stroke(line) for line in lines], piece, z))


def finger_line(n, *places):
    """Points along a finger: (bone part, share of its length, units to the thumb's side)."""
    return [BONES[name_of(n, part)].at(share, off) for part, share, off in places]


def fan(n, s0, t0):
    """The way of a finger's tendon through the palm, from the wrist almost to the knuckle."""
    base, u, size = RAYS[n][0][0], BONES[name_of(n, 0)].u, BONES[name_of(n, 0)].size
    s1, t1 = base[0] + u[0] * size * 0.94, base[1] + u[1] * size * 0.94
    return points(H, [(s0 + (s1 - s0) * k, t0 + (t1 - t0) * (k * 0.9 + 0.1 * k * k)) for k in (0, 0.33, 0.66)])


# =================================================================================================================
# deep
# =================================================================================================================
muscle("triceps-brachii-medial-head", DEEP, U,
       [(58, -9), (76, -9.5), (96, -9), (116, -9), (136, -10.4), (154, -12), (166, -14)],
       [(58, -12), (76, -15.6), (96, -18.6), (116, -20), (136, -19.4), (154, -17.8), (168, -15.6)], 3, z=-2,
       rounded="both")
muscle("brachialis", DEEP, U,
       [(88, -9.4), (106, -12), (124, -14.4), (142, -15), (158, -13.8), (172, -11.4), (184, -9), (196, -8.2),
        (208, -9)],
       [(80, 9), (92, 14), (108, 18), (126, 19.4), (142, 19), (156, 16.4), (170, 11), (184, 3), (196, -3), (208, -6.4)],
       7, start=[(82, 6), (92, 3), (97, -0.6), (90, -4)], sharp=(), lo=0.04)
muscle("supinator", DEEP, F,
       [(0, 13), (7, 7.4), (16, 3), (24, 2.6), (32, 4.6)],
       [(-3, 15.6), (8, 17), (24, 16.4), (44, 15.6), (62, 14)], 5, end=[(57, 10.8), (44, 8)])
muscle("flexor-digitorum-profundus", DEEP, F,
       [(17, -3.4), (30, -2.6), (50, -0.6), (70, 1), (90, 1.8), (108, 2), (128, 2), (148, 2.4), (160, 3)],
       [(16, -12), (26, -16.4), (44, -17.4), (64, -16.4), (84, -14.6), (104, -12), (124, -9), (146, -6.4), (160, -7)],
       6, start=[(20, -7.4)], lo=0.02)
muscle("flexor-pollicis-longus", DEEP, F,
       [(38, 9.4), (54, 13), (70, 14.2), (86, 13.2), (102, 11), (118, 8.8), (134, 7.6), (150, 6.4)],
       [(32, 5), (50, 5.2), (68, 5), (86, 4.4), (102, 4), (118, 4.6), (134, 5.2), (150, 4.4)], 4)
slip("flexor-pollicis-longus", DEEP,
     points(F, [(149, 5.4)]) + points(H, [(8, 5.4), (18, 9), (28, 18)])
     + finger_line(1, (0, 0.92, -0.6), ("proximal", 0.4, 0), ("distal", 0.2, 0)),
     [2, 1.9, 1.9, 2, 2, 2, 2.4], piece=2)
muscle("pronator-quadratus", DEEP, F,
       [(114, -11), (114.6, -5), (114, 2), (114, 11)], [(138, -12.6), (138.6, -5), (138.4, 4), (137.4, 12.6)], 5,
       z=-1, start=[(126, -12)], end=[(126, 12)])
# the long muscles of the thumb come round the outer border from behind
muscle("abductor-pollicis-longus", DEEP, F,
       [(104, 12.4), (118, 11.4), (132, 11), (146, 11.4), (157, 13), (170, 16.6)],
       [(98, 15.8), (114, 15.6), (130, 14.8), (146, 13.8), (157, 15.4), (168, 18.6)], 3)
muscle("extensor-pollicis-brevis", DEEP, F,
       [(120, 13), (132, 13), (146, 12.8), (157, 14.2), (170, 20), (184, 27.6), (196, 34.8)],
       [(116, 15.8), (132, 15), (146, 14.2), (156, 15.6), (169, 21), (184, 29.6), (195, 36.6)], 3)
# tendons of the deep flexors to the last finger bones
for n, t0 in {2: 2, 3: 0.2, 4: -2.4, 5: -4.6}.items():
    slip("tendons-of-flexor-digitorum-profundus", DEEP,
         fan(n, 6, t0) + finger_line(n, (0, 0.94, 0), ("proximal", 0.5, 0), ("middle", 0.4, 0), ("distal", 0.2, 0)),
         [2.1, 2.1, 2.1, 2.2, 1.9, 1.7, 2.2], piece=n - 1, z=0.2)
# hand
muscle("adductor-pollicis", DEEP, H,
       [(17.4, 5.6), (23, 10), (31, 16.8), (38, 23.8), (44.4, 30.6)],
       [(20, 1.4), (28, 7.6), (34, 14), (39.4, 20.6), (46, 29.4)], 3, z=0.4)
muscle("adductor-pollicis", DEEP, H,
       [(29, 3.4), (32.4, 9), (36.4, 16), (39.4, 22.4), (44.4, 29.8)],
       [(53, 5.2), (50, 12), (45.4, 18.6), (42.4, 23.4), (45, 29)], 5, piece=2, z=0.4, start=[(41, 4.2)])
for piece, (n, side) in enumerate([(2, -1), (4, 1), (5, 1)], 1):
    slip("palmar-interossei", DEEP,
         finger_line(n, (0, 0.12, 3.4 * side), (0, 0.35, 3.4 * side), (0, 0.62, 3.6 * side), (0, 0.86, 4.4 * side),
                     ("proximal", 0.06, 4 * side)),
         [1.6, 3.4, 3.6, 2.2, 1.3], piece, z=-0.5, fibres=3)
# =================================================================================================================
# intermediate
# =================================================================================================================
muscle("extensor-carpi-radialis-brevis", INTERMEDIATE, F,
       [(-3, 15), (12, 15.4), (28, 16), (44, 16), (60, 15)],
       [(-5, 17.4), (10, 20), (26, 20.8), (44, 19.6), (60, 17.6)], 3, z=-1, rounded="end")
muscle("flexor-digitorum-superficialis", INTERMEDIATE, F,
       [(-7, -14), (2, -9.4), (12, -3.4), (22, 1.6), (34, 6.6), (48, 10.4), (62, 11.4), (76, 9.6), (92, 7), (110, 5.2),
        (130, 4), (150, 3.6), (158, 3.8)],
       [(-4, -17), (10, -18.4), (28, -19), (46, -17.8), (64, -15.6), (82, -13), (98, -10.6), (114, -8.4), (132, -6.8),
        (150, -6), (158, -6.4)], 7)
for n, t0 in {2: 2.6, 3: 0.4, 4: -2.6, 5: -5.2}.items():
    slip("flexor-digitorum-superficialis", INTERMEDIATE,
         fan(n, 7, t0) + finger_line(n, (0, 0.94, 0.2), ("proximal", 0.4, 0.2), ("proximal", 0.9, 0.2), ("middle",
             0.5, 0.2)),
         [2.4, 2.4, 2.5, 2.9, 2.9, 3.4, 3], piece=n)
for piece, (n, s0, t0, s1, t1) in enumerate([(2, 25, 8.4, 40, 15), (3, 26, 4.6, 41, 7.4), (4, 27, -0.6, 41, -1.4),
                                             (5, 27, -4.8, 38, -9.6)], 1):
    line = points(H, [(s0, t0), ((s0 + s1) / 2, (t0 + t1) / 2 + 0.9), (s1, t1 + 0.6)]) + finger_line(
        n, (0, 0.97, 4), ("proximal", 0.2, 3.2))
    slip("lumbricals-of-hand", INTERMEDIATE, line, [1.8, 3, 2.8, 1.4, 0.9], piece, z=0.3, fibres=3)
muscle("opponens-pollicis", INTERMEDIATE, H,
       [(9, 11.4), (17, 18), (25, 22.6), (33, 28.6), (41, 34.6)], [(14, 5), (22, 11), (30, 18.6), (36, 25), (42, 31)],
       4,
       z=0.5, start=[(11, 7.4)])
muscle("opponens-digiti-minimi-of-hand", INTERMEDIATE, H,
       [(10.4, -5.4), (18, -7.6), (28, -11.4), (37, -14.4), (43.6, -16.6)],
       [(13, -9), (19, -14.4), (27, -18), (35, -19), (43.6, -18.8)], 4, z=0.5)
# =================================================================================================================
# superficial
# =================================================================================================================
# the three heads of triceps from in front: what shows beside biceps
muscle("triceps-brachii-long-head", SUPERFICIAL, U,
       [(5, -15), (22, -16), (42, -17.4), (62, -17.6), (82, -17.6), (102, -17), (120, -16.4)],
       [(4, -18), (22, -23), (42, -26), (62, -25.2), (82, -23.2), (102, -21.4), (120, -19.4)], 3, z=-3, rounded="end")
muscle("triceps-brachii-lateral-head", SUPERFICIAL, U,
       [(34, 9), (56, 11), (78, 13), (98, 14.4), (116, 15.4), (132, 15.6), (147, 14.6)],
       [(34, 13), (56, 17.6), (78, 20.4), (98, 22), (116, 21.4), (132, 19.8), (147, 16.6)], 3, z=-3, rounded="end")
muscle("biceps-brachii-short-head", SUPERFICIAL, U,
       [(0, -13.6), (12, -12.6), (26, -12), (42, -15.4), (60, -17.6), (82, -18), (104, -17.2), (124, -15.2), (142,
       -11.6),
        (158, -7), (172, -3), (188, 0), (202, 2), (213, 2.4)],
       [(0, -10.4), (12, -8.4), (26, -5), (42, -2.6), (60, -1.6), (82, -1.2), (104, -1), (124, -1), (142, -1), (158,
       -0.8),
        (172, 0), (188, 1.8), (202, 3.6), (212, 4.6)], 5, z=-1, lo=0.04, hi=0.84)
muscle("biceps-brachii-long-head", SUPERFICIAL, U,
       [(-8, -7), (-12, 0), (-4, 5.4), (12, 4.4), (30, 1.6), (46, -0.4), (64, -1), (84, -0.8), (104, -0.6), (124, -0.6),
        (142, -0.6), (158, -0.4), (172, 0.4), (188, 2.2), (202, 3.8), (211, 4.8)],
       [(-10, -9), (-15, 0), (-4, 8.4), (12, 7.6), (30, 8), (46, 11.4), (64, 15.4), (84, 18), (104, 18.2),
        (124, 16), (142, 12), (158, 8), (172, 5), (188, 4.6), (202, 5.6), (211, 6.4)], 5, z=-1, lo=0.2, hi=0.84)
# forearm, from the outer border round
muscle("extensor-carpi-radialis-longus", SUPERFICIAL, F,
       [(-16, 15), (0, 17.4), (16, 19.6), (32, 20.6), (48, 19.6), (62, 17.6)],
       [(-24, 19.6), (-8, 21.4), (8, 23), (24, 24.6), (40, 24.4), (56, 22.6), (70, 18)], 3, rounded="end")
SHAPES.append(Shape("common-flexor-tendon", SUPERFICIAL, closed(points(F, [
    (-11, -15.8), (-8, -13.8), (0, -10.6), (9, -6.8), (13.4, -5), (18.4, -8), (21, -13), (20.8, -17.4), (18, -21),
    (10, -20.2), (0, -18.7), (-8, -17.4)]), (4, 8)),
    [stroke(points(F, [(-7, -14.8), (4, -10.6), (11, -7.6)])),
     stroke(points(F, [(-7, -15.4), (6, -12.8), (16.4, -10.2)])),
     stroke(points(F, [(-7, -16), (7, -15.6), (18.6, -15.2)])),
     stroke(points(F, [(-7, -16.6), (6, -18), (15.6, -19.2)]))],
    z=0.6))
muscle("flexor-carpi-ulnaris", SUPERFICIAL, F,
       [(-5, -16.6), (8, -16.8), (24, -16.2), (42, -14.4), (62, -12.6), (84, -11.6), (106, -11.2), (128, -10.8),
        (146, -10.4), (153, -9.8)],
       [(-3, -18.4), (8, -21), (24, -22.8), (42, -22.2), (62, -20.4), (84, -18), (104, -15.8), (122, -14.2), (140,
       -13.2),
        (154, -13)], 3, hi=0.72)
muscle("palmaris-longus", SUPERFICIAL, F,
       [(-5, -15.8), (10, -14.4), (26, -11.2), (42, -7.4), (56, -3.8), (70, -1.2), (90, 0.2), (115, 1), (135, 1.6),
        (152, 2.2)],
       [(-4, -17), (12, -17), (28, -15.6), (44, -12), (58, -7.6), (72, -3.4), (90, -1.6), (115, -0.8), (135, -0.4),
        (152, -0.8)], 2, hi=0.4)
muscle("flexor-carpi-radialis", SUPERFICIAL, F,
       [(-6, -15), (8, -11.8), (22, -7), (36, -1.8), (50, 2.8), (64, 5.8), (78, 7), (96, 7.2), (116, 7.6), (136, 8.4),
        (152, 9.2), (166, 9.6)],
       [(-5, -16.4), (9, -14.8), (24, -12), (40, -8), (54, -3.6), (68, 0.8), (80, 3.6), (96, 4.8), (116, 5.6), (136,
       6.4),
        (152, 7), (166, 7.6)], 3, hi=0.38)
muscle("brachioradialis", SUPERFICIAL, F,
       [(-50, 9.4), (-36, 9.6), (-20, 7.8), (-4, 7), (12, 8.6), (28, 11), (44, 13.2), (60, 14), (74, 13.8), (92, 12.6),
        (114, 11.8), (134, 12.2), (147, 12.6)],
       [(-46, 15), (-32, 19), (-18, 20.8), (-4, 20.6), (12, 20.6), (28, 22), (44, 22), (58, 21), (72, 19), (90, 17),
        (112, 15.8), (134, 15.4), (148, 15.2)], 3, start=[(-51, 13)], rounded="start", hi=0.58)
muscle("pronator-teres", SUPERFICIAL, F,
       [(-13, -13.6), (0, -7.6), (14, -1.6), (28, 4), (42, 8.8), (54, 12), (64, 14.2)],
       [(-7, -16), (6, -12.4), (20, -7.4), (36, -1.4), (52, 4.6), (66, 9.6), (78, 14)], 3, end=[(72, 14.6)],
       z=-0.5, lo=0.02, rounded="start")
# ---- hand
muscle("flexor-pollicis-brevis", SUPERFICIAL, H,
       [(15, 5), (22, 9.4), (30, 16.4), (38, 24.6), (46.6, 33.4)], [(20, -0.4), (27, 4.4), (33.6, 11), (39.6, 19.4),
       (46.6, 29.4)],
       4, start=[(17.4, 2)], rounded="start")
muscle("abductor-pollicis-brevis", SUPERFICIAL, H,
       [(7, 12.6), (15, 18), (23, 24), (32, 30.8), (40, 35.4), (47, 38)],
       [(13, 3.4), (21, 7.6), (29, 14.6), (37, 22.4), (43, 29), (48, 34)], 3, start=[(9, 7)], rounded="start")
muscle("flexor-digiti-minimi-brevis-of-hand", SUPERFICIAL, H,
       [(10.6, -4.6), (19, -6.4), (29, -10.4), (39, -14.2), (49, -18)], [(13, -9), (20, -12.6), (29, -16.4), (39,
       -18.8),
                                                                     (49.4, -20)], 2)
muscle("abductor-digiti-minimi-of-hand", SUPERFICIAL, H,
       [(7.6, -10.6), (16, -12.4), (25, -15.6), (35, -18.2), (44, -19.6), (51, -20.2)],
       [(5.6, -14.4), (13, -18), (22, -21), (33, -22.8), (43, -22.8), (52, -21.8)], 3, hi=0.85)
muscle("palmaris-brevis", SUPERFICIAL, H,
       [(9, -2.6), (9.4, -8), (9.4, -13), (10, -17)], [(27, -5.6), (27.4, -11), (26.4, -16.6), (25, -21)], 4, z=1,
       start=[(18, -3.4)], end=[(17.6, -19)])
