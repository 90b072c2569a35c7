"""Front view: fascia sheets, retinacula, tendons and ligaments of shoulder, arm, forearm and hand.

Sheets follow the silhouette of figure.py just inside it. Outlines are drawn from memory of anatomy around the landmarks
of bones_front.py and bones_front_arm.py.
"""
import figure
from bones_front_arm import BONES, F, H, RAYS, U, name_of, points
from pen import Shape, closed, ribbon, stroke

SHAPES = []


def rim(contour, y0, y1, inset):
    """Points of the silhouette between two heights, moved inside by `inset`."""
    return [(round(p[0] + inset, 2), p[1]) for p in contour if y0 <= p[1] <= y1]


OUTER = [p[:2] for p in figure.OUTER_ARM]
INNER = [p[:2] for p in figure.INNER_ARM]
EDGE = 0.7


def sheet(sid, pts, corners=(), fibres=(), z=0, piece=1):
    SHAPES.append(Shape(sid, "deep-fascia", closed(pts, corners), [stroke(f) for f in fibres], piece, z))


def ligament(sid, pts, fibres=(), z=0.2, piece=1, corners=()):
    SHAPES.append(Shape(sid, "bone", closed(pts, corners), [stroke(f) for f in fibres], piece, z))


def band(sid, pts, widths, z=0.2, piece=1, layer="bone", blunt=True):
    SHAPES.append(Shape(sid, layer, ribbon(pts, widths, blunt), [stroke(pts)], piece, z))


def brachial(top):
    """The sleeve of the upper arm: `top` is its upper edge from the armpit outwards."""
    outer = rim(OUTER, top[-1][1] + 4, 372, -EDGE)
    inner = rim(INNER, top[0][1] + 4, 376, EDGE)
    low = points(F, [(-2, 22), (1, 10), (1.6, 0), (1, -10), (-2, -20.6)])
    return top + outer + low + inner, (0, len(top) - 1, len(top) + len(outer), len(top) + len(outer) + 4)


def antebrachial():
    """The sleeve of the forearm, from the elbow to the retinacula at the wrist."""
    outer = rim(OUTER, 380, 512, -EDGE) + [H(-2, 15.6)]
    inner = [H(-2, -15.8)] + rim(INNER, 386, 516, EDGE)
    top = points(F, [(-2, -20.6), (1, -10), (1.6, 0), (1, 10), (-2, 22)])
    low = points(H, [(2.4, 15.4), (3.4, 8), (3.6, 0), (3.4, -8), (2.4, -16)])
    return top + outer + low + inner, (0, 4, 5 + len(outer), 9 + len(outer))


def septa():
    band("medial-intermuscular-septum-of-arm", points(U, [(66, -14.6), (90, -16.4), (115, -17.4), (140, -17.6), (160,
        -16.8),
                                                          (177, -15)]), [1.2, 2.4, 3, 3.4, 3.4, 2.4], 1,
         layer="deep-fascia", blunt=False)
    band("lateral-intermuscular-septum-of-arm", points(U, [(92, 19), (110, 19.6), (130, 18.8), (150, 17.6), (166, 16.8),
                                                           (178, 16)]), [1.2, 2.4, 3, 3.2, 3, 2.2], 1,
         layer="deep-fascia", blunt=False)


def membrane():
    """Between the two bones of the forearm, under them in the drawing."""
    a = points(F, [(26, -5), (40, -6), (60, -6), (85, -6), (110, -7), (132, -7)])
    b = points(F, [(36, 5), (50, 6.6), (70, 7), (90, 6.4), (110, 4.6), (132, 1)])
    fibres = [points(F, [(s, 5), (s + 8, -0.5), (s + 14, -5.4)]) for s in (44, 62, 80, 98)]
    SHAPES.append(Shape("interosseous-membrane-of-forearm", "bone", closed(a + b[::-1], (0, 5, 6, 11)),
                        [stroke(f) for f in fibres], z=-1))


def elbow_and_wrist():
    band("anular-ligament-of-radius", points(F, [(9.4, -1), (11.6, 2.4), (12.4, 6.4), (11.6, 10.4), (9.6, 12.8)]),
         [2.2, 3, 3.2, 3, 2.2], 1.2, blunt=False)
    ligament("radial-collateral-ligament-of-elbow", points(F, [(-6, 13), (-5.4, 15.6), (0, 15.8), (7, 14.2), (12, 12.8),
                                                               (11.4, 10), (6, 11), (0, 12.4)]),
             [points(F, [(-4, 14.6), (3, 13.8), (10, 11.8)])], 1.1)
    ligament("radial-collateral-ligament-of-wrist", points(F, [(150, 13), (151.8, 14.6), (156, 15.2), (160.6, 15),
                                                               (160, 13), (155, 13), (151.6, 12.4)]),
             [points(F, [(151.6, 13.6), (159, 14)])], 1.1)
    ligament("ulnar-collateral-ligament-of-wrist", points(F, [(148, -11.2), (149, -13.4), (153, -13.8), (157.4, -13),
                                                              (156.6, -11), (152, -11.2)]),
             [points(F, [(149.6, -12.2), (156, -12.2)])], 1.1)
    p, m = BONES["proximal-phalanx-of-finger-1"], BONES["metacarpal-1"]
    ligament("ulnar-collateral-ligament-of-thumb", [m.at(0.88, -2.8), m.at(0.88, -4.6), m.at(1, -4.6), p.at(0.12, -4.4),
                                                    p.at(0.12, -2.6), m.at(0.99, -2.6)],
             [[m.at(0.9, -3.8), m.at(1, -3.8), p.at(0.1, -3.6)]], 1.1)


# ---- shoulder: sheets -------------------------------------------------------------------------------------------
sheet("clavipectoral-fascia",
      [(26, 188.6), (38, 184.6), (52, 181), (66, 179.8), (78, 182), (87, 186.4), (91, 191), (91, 196), (85, 198.6),
       (76, 203), (66, 208.4), (54, 214), (42, 219.6), (36, 212), (30, 201)], (0, 7, 12),
      [[(33, 190), (38, 202), (44, 215)], [(48, 185), (54, 198), (60, 209)], [(64, 183), (70, 194), (75, 201)]], z=-1)
sheet("deltoid-fascia",
      [(66, 177), (76, 178.6), (90, 180.6), (104, 179.6), (112, 178.6), (122, 185), (130.4, 193.8), (136.2, 205),
       (139.6, 217), (141.2, 230), (142.4, 246), (143.4, 262), (143.6, 276), (141.6, 288), (138.4, 296.6),
       (134.4, 287.4), (130.4, 273.4), (124.6, 257.4), (117.4, 240.4), (108, 222.4), (97, 207.4), (85, 194.4),
       (74, 184.4)], (0, 14),
      [[(84, 186), (104, 210), (122, 244)], [(102, 184), (118, 212), (132, 262)], [(114, 182), (132, 216), (138, 272)]])
sheet("axillary-fascia",
      [(84.8, 240.6), (91, 233), (100, 228.6), (109, 229), (113.4, 236), (109, 243.6), (100, 250), (91.6, 256)],
      (0, 7), [[(87, 241), (97, 237), (109, 234)], [(90, 249), (98, 243), (109, 240)]])
# ---- sleeves and septa ------------------------------------------------------------------------------------------
pts, corners = brachial([(90.6, 253), (98, 247), (106, 243.4), (112.6, 239), (117.6, 241.6), (124.6, 258), (130.4, 274),
                         (134.4, 288), (138.4, 297), (142.2, 288), (144.6, 276), (146, 268)])
sheet("brachial-fascia", pts, corners,
      [points(U, [(60, -19), (62, -8), (60, 4)]), points(U, [(100, -17), (103, 0), (100, 18)]),
       points(U, [(140, -16), (143, 0), (140, 18)])])
pts, corners = antebrachial()
sheet("antebrachial-fascia", pts, corners,
      [points(F, [(20, -19), (24, 0), (20, 20)]), points(F, [(55, -18), (58, 0), (55, 20)]),
       points(F, [(90, -14), (92, 0), (90, 16)]), points(F, [(120, -12), (121.6, 0), (120, 14)])])
septa()
sheet("transverse-humeral-ligament", [(108.6, 195), (112, 193.4), (116.6, 193.6), (118.6, 196.4), (118, 201),
                                      (114, 202), (109.6, 201)], (),
      [[(110, 196.4), (113.6, 195.6), (117, 196.6)], [(110.6, 199.4), (114, 199), (117.4, 199.4)]], z=-1)
sheet("tendon-of-biceps-brachii", points(F, [
    (-30, -3.4), (-20, -1.4), (-8, 0.4), (4, 1.4), (15, 2.2), (26, 2.6), (27, 6), (16, 6.4), (4, 5.6), (-8, 4.6),
    (-18, 4.8), (-30, 4.6), (-24, 1)]), (0, 5, 6, 11, 12),
    [points(F, [(-24, -1), (-6, 2), (10, 3.4), (25, 4)]), points(F, [(-22, 3), (-6, 3.6), (10, 4.8), (24, 5)])], z=1)
sheet("bicipital-aponeurosis", points(F, [
    (-20, -2.6), (-8, 0), (4, 1.2), (10, -3.6), (19, -9.4), (31, -15), (43, -19), (38, -21), (26, -22.2), (13, -22),
    (4, -16.6), (-6, -9.6), (-14, -5)]), (0, 2, 6, 9),
    [points(F, [(-12, -2.6), (2, -8), (18, -20)]), points(F, [(-7, -1.4), (7, -6.4), (26, -20)]),
     points(F, [(-2, 0), (12, -6.6), (34, -18.6)])], z=2)
# ---- wrist and palm ---------------------------------------------------------------------------------------------
sheet("flexor-retinaculum-of-hand", points(H, [
    (2.6, -10.6), (2.4, -4), (3, 3), (5, 11), (7.6, 14), (10.6, 13.2), (13.6, 13.4), (15.6, 12), (15.4, 4), (15.6, -3),
    (14.4, -7.8), (11.6, -7.4), (8.4, -9.6), (6, -13)]), (4, 7, 10, 13),
    [points(H, [(5, -9), (5.6, 0), (7.4, 11.4)]), points(H, [(9, -7.6), (9.4, 0), (10.4, 11.4)]),
     points(H, [(13, -6), (12.8, 0), (13.2, 11)])])
sheet("palmar-aponeurosis", points(H, [
    (-4, 0), (-4, 2), (4, 3), (12, 4.6), (24, 8), (36, 13), (46, 17), (54, 19.4), (57, 17.6), (54.6, 14.4), (47, 11.4),
    (49, 7.6), (58.6, 7), (59.4, 4.6), (58.6, 2.6), (48.6, 1.4), (47.6, -1.6), (54.6, -4.4), (56, -6.6), (54.6, -8.8),
    (45, -8.4), (43, -11.4), (47.4, -15), (48.4, -17), (46.4, -18.6), (38, -14), (28, -9), (18, -4.6), (8, -1.6)]),
    (0, 1, 10, 15, 16, 20, 21),
    [points(H, [(2, 1.6), (20, 6), (38, 11.4), (54, 17)]), points(H, [(2, 1.2), (20, 3), (38, 4.4), (57, 4.8)]),
     points(H, [(2, 0.8), (20, 0), (38, -3.6), (54, -6.6)]), points(H, [(2, 0.4), (18, -3), (32, -8.6), (46, -16.4)]),
     points(H, [(40, -10), (42, 0), (41, 12)])], z=1)
sheet("thenar-fascia", points(H, [
    (5.6, 12.6), (8.4, 5.6), (14, 3.8), (22, 6), (30, 9.4), (36, 15), (41, 22), (46.4, 30.4), (48, 35.6), (45.6, 38.4),
    (38, 35), (30, 29.6), (22, 23.4), (14, 17.8)]), (0, 8),
    [points(H, [(10, 11), (24, 19), (42, 34)]), points(H, [(14, 6.6), (28, 14.6), (44, 30)])])
sheet("hypothenar-fascia", points(H, [
    (4.6, -12), (8.4, -7.2), (14, -4.8), (24, -7), (36, -12.6), (48.6, -17.4), (51.6, -21.4), (42, -23), (32, -22.8),
    (21, -20.6), (12, -17.6), (6, -15.2)]), (5,),
    [points(H, [(10, -11), (24, -14), (46, -19.4)]), points(H, [(10, -14.4), (24, -19), (44, -21.6)])])
for n in RAYS:
    head, first, last = BONES[name_of(n, 0)], BONES[name_of(n, "proximal")], BONES[name_of(n, "distal")]
    k = RAYS[n][1]
    spots = [head.at(0.88, 0), head.at(0.99, 0), first.at(0.2, 0), first.at(0.6, 0), first.at(0.96, 0)]
    widths = [4.6, 5.6, 6, 6, 4.4]
    if n > 1:
        mid = BONES[name_of(n, "middle")]
        spots += [mid.at(0.2, 0), mid.at(0.55, 0), mid.at(0.95, 0)]
        widths += [5.2, 5.2, 3.8]
    spots.append(last.at(0.2, 0))
    widths.append(3.6)
    SHAPES.append(Shape("fibrous-sheaths-of-fingers", "deep-fascia", ribbon(spots, [w * k for w in widths]),
                        [stroke([b.at(q, 2.3 * k), b.at(q + 0.03, 0), b.at(q, -2.3 * k)])
                         for b, q in [(first, 0.25), (first, 0.45), (first, 0.65)]], n))
# ---- ligaments ---------------------------------------------------------------------------------------------------
membrane()
elbow_and_wrist()
ligament("ulnar-collateral-ligament-of-elbow", points(F, [(-5, -15.6), (-5.6, -12.8), (-1, -10.6), (6, -9), (9.4,
    -11.4),
                                                          (12, -14), (9.4, -16.2), (3, -16.4)]),
         [points(F, [(-3, -13.6), (7, -10.4)]), points(F, [(-3, -14.6), (9, -14)])], 1.1)
ligament("coracoacromial-ligament", [(91, 187.4), (94.4, 189.6), (95.4, 196.6), (104, 190.4), (110, 186), (112.6,
    184.6),
                                     (108.4, 181.8), (103, 183.4), (97, 185.4)],
         [[(93, 188.8), (102, 185.4), (109, 183.2)], [(95, 194), (103, 188.4), (110.6, 184.6)]], 0.8, corners=(4,))
ligament("coracohumeral-ligament", [(92, 194), (94.4, 198.4), (102, 198.8), (110, 197.6), (115.6, 194.6), (115.4,
    190.6),
                                    (110, 191.4), (102, 192.4)],
         [[(94, 195.4), (104, 194.8), (114, 192.2)], [(95, 197.4), (105, 197), (114, 194.4)]], 0.7)
ligament("coracoclavicular-ligament", [(78.4, 179.6), (84, 181.4), (92, 183.2), (91.6, 187), (89, 190), (86, 191),
                                       (83, 188), (80.4, 184)],
         [[(81, 181), (84, 186), (86, 189.6)], [(89, 183.6), (88.6, 187), (87.6, 190)]], 0.8)
ligament("acromioclavicular-ligament", [(99.6, 176.8), (104, 176.6), (109.6, 178.4), (111, 180.4), (108, 182),
                                        (103, 182), (99, 180.2)],
         [[(101, 178), (105, 178.4), (109.4, 179.8)], [(101, 180), (105, 180.6), (108.6, 181.2)]], 1.2)
ligament("glenohumeral-ligaments", [(95.6, 191), (99, 190), (105.6, 194.4), (108.4, 201), (109, 208.6), (106, 212),
                                    (101.4, 210.6), (97.6, 206.6), (96, 199)],
         [[(97, 193), (102.6, 195.6), (107, 201)], [(97, 198), (102, 202), (107, 206)],
          [(98, 204), (102, 208), (105.6, 210.6)]], 0.6)
ligament("costoclavicular-ligament", [(19, 188.4), (24.6, 187), (29.4, 186), (30, 189.6), (27.6, 192.4), (22, 191.6)],
         [[(22, 188.6), (25, 191.4)], [(27, 187.2), (28, 190.6)]], 0.8)
ligament("anterior-sternoclavicular-ligament", [(10.8, 180.8), (14, 179.6), (18.4, 181.6), (20, 186), (18, 190.4),
                                                (14, 191.6), (11.4, 188.4)],
         [[(18, 183), (14, 184), (11.6, 185.6)], [(18.4, 187), (15, 188), (12.4, 188.8)]], 1.2)
ligament("palmar-radiocarpal-ligament", points(H, [(-5.6, 12), (-3, 13), (0.6, 10.4), (4, 6), (5, 1), (3.2, -4.6),
    (0.6, -6.6),
                                                   (-1.6, -2), (-4.4, 2.6), (-5.6, 7)]),
         [points(H, [(-4, 11), (-0.4, 7.6), (3, 1.6)]), points(H, [(-4.4, 7), (-1.4, 2.6), (1, -4.6)])], 1.1)
band("pisohamate-ligament", points(H, [(7.6, -11.6), (9.6, -9), (11.2, -7)]), [2.6, 2.4, 2.2], 0.9)
band("pisometacarpal-ligament", points(H, [(8, -12.4), (12.6, -12.6), (18, -12.2)]), [2.6, 2.4, 2.4], 0.9)
for piece, n in enumerate((2, 3, 4), 1):
    p, q = BONES[name_of(n, 0)], BONES[name_of(n + 1, 0)]
    SHAPES.append(Shape("deep-transverse-metacarpal-ligament", "bone",
                        closed([p.at(0.86, -3), p.at(0.97, -2.6), q.at(0.99, 2.4), q.at(0.88, 3)]),
                        [stroke([p.at(0.91, -2.8), q.at(0.93, 2.8)])], piece, 1.1))
