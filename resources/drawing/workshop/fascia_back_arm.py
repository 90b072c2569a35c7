"""Back view: fascia sheets, retinacula, tendons and ligaments of shoulder, arm, forearm and hand.

Shares its frames and sleeves with fascia_front_arm.py; outlines are drawn from memory of anatomy.
"""
import fascia_front_arm as front
from bones_front_arm import BONES, F, H, RAYS, U, name_of, points
from pen import Shape, closed, stroke

SHAPES = []
PLAIN = front.SHAPES


def sheet(sid, pts, corners=(), fibres=(), z=0, piece=1):
    SHAPES.append(Shape(sid, "deep-fascia", closed(pts, corners), [stroke(f) for f in fibres], piece, z))


def ligament(sid, pts, fibres=(), z=0.2, piece=1, corners=()):
    SHAPES.append(Shape(sid, "bone", closed(pts, corners), [stroke(f) for f in fibres], piece, z))


def shared(draw, *args):
    """The shapes that a function of the front view's module draws, taken over into this view."""
    count = len(PLAIN)
    draw(*args)
    SHAPES.extend(PLAIN[count:])
    del PLAIN[count:]


# ---- shoulder -------------------------------------------------------------------------------------------------------
sheet("supraspinatus-fascia",
      [(41, 175), (54, 173), (68, 175), (82, 179), (97, 183.4), (97, 186.4), (84, 184.4), (70, 184.2), (54, 185),
      (40.4, 185)],
      (0, 9), [[(45, 177), (66, 177.6), (90, 183)], [(45, 182), (66, 181.4), (86, 183)]], z=-1)
sheet("infraspinatus-fascia",
      [(39.4, 189), (56, 189.6), (72, 188.4), (88, 187.4), (97, 191), (103, 198.6), (97, 208), (86, 214.6), (72, 226),
       (61, 238), (48, 247), (44, 240), (41.4, 222), (39, 204)], (0, 5, 10),
      [[(44, 195), (66, 195), (94, 193)], [(44, 212), (66, 208), (95, 199)], [(48, 236), (66, 224), (92, 206)]], z=-1)
sheet("deltoid-fascia",
      [(54, 189.4), (72, 186.8), (90, 185), (101, 185), (108.6, 188), (116, 185), (118, 181.4), (126, 187.4), (133.6,
      198),
       (138.6, 210.6), (141, 226), (142.2, 242), (143.2, 260), (143.4, 274), (142, 285.6), (139, 292.4), (136.6, 292.4),
       (134.4, 287), (125.6, 264.4), (116, 243.4), (104, 224.4), (88.6, 208.4), (70, 197)], (0, 4, 6),
      [[(70, 191), (100, 206), (132, 272)], [(96, 188), (118, 212), (137, 280)], [(118, 187), (134, 216), (140, 276)]])
sheet("axillary-fascia",
      [(84.8, 240.8), (91, 238.6), (99, 234), (106, 231.4), (111, 238), (107.4, 245), (100, 251), (91.8, 256.4)], (0,
      7),
      [[(88, 242), (97, 239.6), (108, 237)], [(90, 249), (98, 245), (107, 242)]])
# ---- sleeves and septa ----------------------------------------------------------------------------------------------
pts, corners = front.brachial([(90.6, 253), (96, 247), (103, 238), (107, 229.6), (116, 244), (125.6, 265), (134.4, 288),
                               (137.4, 293.4), (140, 292), (142.8, 285), (144.6, 276), (146, 268)])
sheet("brachial-fascia", pts, corners,
      [points(U, [(60, -20), (62, -8), (60, 6)]), points(U, [(100, -17), (103, 0), (100, 18)]),
       points(U, [(140, -16), (143, 0), (140, 18)])])
pts, corners = front.antebrachial()
sheet("antebrachial-fascia", pts, corners,
      [points(F, [(20, -19), (24, 0), (20, 20)]), points(F, [(55, -18), (58, 0), (55, 20)]),
       points(F, [(90, -14), (92, 0), (90, 16)]), points(F, [(120, -12), (121.6, 0), (120, 14)])])
shared(front.septa)
sheet("triceps-tendon", points(U, [
    (98, -1), (108, 4), (122, 7), (138, 7.2), (154, 5.4), (168, 3.4), (178, 2), (184, 1), (184.6, -4.6), (178, -7),
    (168, -7.4), (154, -8.2), (138, -9.4), (122, -9), (108, -5.6)]), (0, 7, 8),
    [points(U, [(106, -1), (140, -1), (180, -1.6)]), points(U, [(114, 3), (140, 3.6), (178, 0.4)]),
     points(U, [(114, -5), (140, -5.6), (178, -4.4)])], z=1)
# ---- wrist and back of the hand -------------------------------------------------------------------------------------
sheet("extensor-retinaculum-of-hand", points(F, [
    (128, 15.6), (130.4, 8), (134, 0), (138, -8), (141, -14.4), (150, -14), (155.4, -13.4), (152.4, -6), (148.6, 2),
    (145, 9), (141.6, 15.4)]), (0, 4, 6, 10),
    [points(F, [(132, 14.4), (138, 2), (145, -13)]), points(F, [(136, 14.6), (142, 2), (149, -12.6)]),
     points(F, [(140, 14.4), (145.6, 3), (152.4, -12.2)])], z=1)
for n in RAYS:
    head, first, last = BONES[name_of(n, 0)], BONES[name_of(n, "proximal")], BONES[name_of(n, "distal")]
    mid = BONES[name_of(n, "middle")] if n > 1 else None
    k = RAYS[n][1]
    # a hood over the knuckle that narrows to the two side bands and the end tendon
    rows = [(head, 0.9, 2), (head, 1, 4.7), (first, 0.14, 4.9), (first, 0.36, 3.9), (first, 0.66, 2.8), (first, 0.94,
        2.7)]
    if mid:
        rows += [(mid, 0.14, 2.9), (mid, 0.5, 2.1), (mid, 0.9, 1.5)]
    rows += [(last, 0.14, 1.7), (last, 0.3, 1.2)]
    side = [[b.at(q, f * w * k) for b, q, w in rows] for f in (1, -1)]
    fibres = [[b.at(q, 0) for b, q, _ in rows]] + [[b.at(q, f * w * k * 0.7) for b, q, w in rows[2:-1]] for f in (1,
        -1)]
    sheet("extensor-expansion-of-hand", side[0] + side[1][::-1], (0, len(rows) - 1, len(rows), 2 * len(rows) - 1),
        fibres,
          z=0.5, piece=n)
# ---- ligaments ------------------------------------------------------------------------------------------------------
shared(front.membrane)
shared(front.elbow_and_wrist)
ligament("ulnar-collateral-ligament-of-elbow", points(F, [(-8.6, -16.6), (-5, -17), (2, -15), (5, -13.4), (0, -11.8),
                                                          (-6, -11.6), (-9.6, -13)]),
         [points(F, [(-7, -15.4), (-4, -12.4)]), points(F, [(-6, -16), (2, -13.6)])], 1.1)
ligament("dorsal-radiocarpal-ligament", points(H, [(-5, 9), (-4.6, 4.6), (-1.6, 1), (0, -4.6), (3, -9.6), (5.6,
    -10.4), (5, -5.6),
                                                   (2.4, 0), (-0.6, 5.6), (-2.6, 9.6)]),
         [points(H, [(-3.4, 8), (0, 1.4), (4, -8.6)]), points(H, [(-4, 5.6), (-0.6, -0.6), (3.4, -8.4)])], 1.1)
ligament("acromioclavicular-ligament", [(99.4, 176.8), (104, 175.8), (109.6, 178), (110.6, 181.6), (107, 184), (102.4,
    183.2),
                                        (99.6, 180.6)],
         [[(101, 178), (105, 178), (109, 179.8)], [(101.4, 181), (105, 181.6), (108.6, 182)]], 1.2)
