"""Side view: joints, felt points and the ligaments that lie against bone, on top of the bones of bones_side.py.

Each landmark is a patch of its bone where the finger meets it; each joint follows the gap between its bones. Places are
drawn from memory of anatomy, on the bones as drawn.
"""
from bones_side import CUTS, LINES, NECKS, RAYS, TOES, WIDTHS, along, hand, lerp, rib_band
from sidepen import Shape, closed, pebble, ribbon, sides, turned

SHAPES = []
LEVEL = 1.0  # depth of what is drawn next, unless it says otherwise (see the depths in bones_side.py)


def area(id_, points, corners=(), z=None, piece=1):
    z = LEVEL if z is None else z
    SHAPES.append(Shape(id_, "bone", closed(turned(points, True) if not corners else points, corners), piece=piece, z=z))


def band(id_, points, width, z=None, piece=1):
    """A band with round, narrower ends; `width` is one number or one for each point."""
    z = LEVEL if z is None else z
    widths = width if isinstance(width, list) else [width * (0.55 if i in (0, len(points) - 1) else 1)
                                                    for i in range(len(points))]
    if len(points) == 2:
        points, widths = [points[0], lerp(*points, 0.5), points[1]], [widths[0], max(widths) / 0.8, widths[1]]
    SHAPES.append(Shape(id_, "bone", ribbon(points, widths, False), piece=piece, z=z))


def spot(id_, x, y, rx, ry, tilt=0.0, z=None):
    z = LEVEL if z is None else z
    SHAPES.append(Shape(id_, "bone", pebble(x, y, rx, ry, tilt), z=z))


# ---- head ---------------------------------------------------------------------------------------------------------------
area("temporal-fossa", [(13.4, 59), (18, 54), (25, 51.4), (34, 50.4), (41, 52), (46, 50.8), (50.4, 54.6), (53.4, 59),
                        (53.4, 65), (51.4, 71), (46, 73), (40.4, 70.4), (32, 71.6), (22, 70.4), (14.6, 66)], z=0.8)
band("superior-temporal-line", [(40, 35.6), (31, 31.4), (18, 32), (6, 38.4), (-1, 48), (-3, 58), (-0.6, 67)], 1.8)
band("inferior-temporal-line", [(42, 43), (32, 38.6), (20, 39.4), (10.4, 45), (5, 53), (4.8, 64)], 1.8)
band("sphenofrontal-suture", [(45.2, 49.2), (49.6, 52.8), (54.2, 57.2)], 1.8)
band("sphenozygomatic-suture", [(54.4, 58.4), (54.6, 64), (53, 70.6)], 1.8)
band("zygomaticomaxillary-suture", [(66.4, 75), (63.4, 79.6), (61.8, 85)], 1.8)
band("parietomastoid-suture", [(-4.4, 71), (2, 69.6), (7.6, 67.6)], 2)
band("occipitomastoid-suture", [(-4.6, 71.6), (-1.4, 76), (2, 80.6), (5.8, 83)], 2)
area("area-between-nuchal-lines", [(-30.4, 75.4), (-24, 73.4), (-13, 73.8), (-3, 77.2), (0, 81), (-12, 80.2), (-22, 79.2)])
band("superior-nuchal-line", [(-31.4, 73.8), (-24, 72), (-13.6, 72.2), (-4, 75.2)], 2)
band("inferior-nuchal-line", [(-23, 80.4), (-13, 81.8), (-2, 82.6)], 1.8)
area("external-occipital-protuberance", [(-33, 70.6), (-31.8, 72), (-32.2, 74.4), (-29, 76), (-28.2, 73), (-30, 70.2)])
area("mastoid-process", [(24, 84.2), (21.6, 88), (18.4, 92.6), (15.2, 92.6), (11.8, 88.8), (9.6, 85), (13, 81.6), (19.4, 81)])
band("mastoid-notch", [(7.4, 84.6), (10.2, 88), (13.4, 91.6)], 1.8)
area("styloid-process-of-temporal-bone", [(28.8, 83), (30.2, 88), (32.6, 94.6), (31.8, 94.8), (28.8, 89.6), (27, 84.4)])
area("zygomatic-arch", [(40, 74), (43, 74.4), (49, 75), (54, 74.8), (57.4, 76.4), (57, 80), (53.6, 80.6), (50.4, 78.2),
                        (45, 78.2), (41, 79.2)])
area("articular-tubercle-of-temporal-bone", [(38.2, 78.4), (41, 77), (43, 78.4), (41, 80), (38.9, 81.4), (37.8, 80.2)])
band("mandibular-fossa", [(31, 77.6), (33.8, 75.8), (37, 77.4)], 1.8)
band("temporomandibular-joint", [(30.2, 82), (31, 79.2), (35, 77.6), (38.4, 79.2), (39, 82.4)], 2.2)
area("superciliary-arch", [(73.2, 54.4), (72.8, 51), (69, 50.4), (63, 52), (66.6, 53.8), (70, 55.6)])
area("frontal-process-of-maxilla", [(70.2, 62), (72, 63.4), (74.2, 69), (74, 73), (71, 73.4), (71.2, 67)])
area("zygomatic-process-of-maxilla", [(67, 75.6), (69.4, 76.4), (67, 81), (63.4, 86), (62.4, 85.2), (64, 79.8)])
area("tuberosity-of-maxilla", [(56, 90), (58, 88), (60, 91), (59.4, 97), (57, 96.4)])
band("alveolar-process-of-maxilla", [(59, 97.2), (66, 97.2), (73, 97), (79.4, 95.6)], 3.6)
area("ramus-of-mandible", [(33.6, 90), (38.4, 89), (42.6, 90), (46.6, 88.6), (50.4, 89.6), (51.6, 96.6), (53, 101), (44.4, 109),
                           (38, 104.6), (34.2, 101)])
area("condylar-process-of-mandible", [(31, 82), (31.6, 80.2), (35, 79), (38, 80.4), (38.2, 83.4), (39, 87), (33.6, 88.4)])
area("coronoid-process-of-mandible", [(46, 86), (47.6, 82), (49.6, 79.8), (51, 82.4), (51.2, 88), (47.6, 88)])
area("angle-of-mandible", [(34.4, 106), (36.8, 113.2), (41, 117.6), (43.6, 115), (40.6, 109.4), (37.4, 104.6)])
band("base-of-mandible", [(43.6, 118.2), (50, 121.4), (58, 124.4), (66, 126.6)], 2.6)
band("alveolar-part-of-mandible", [(57.6, 106.6), (65, 108.4), (73, 108.4)], 3.4)
area("incisive-fossa-of-mandible", [(74.6, 108.4), (78.4, 108.6), (76.4, 113), (73.6, 113)])
area("mental-protuberance", [(73.6, 117.4), (76.4, 118.2), (76.8, 123), (75, 126.8), (71.6, 127.2), (71.4, 122)])
band("digastric-fossa", [(66.4, 127.4), (69, 127.8), (71.4, 127.6)], 1.6)
area("body-of-hyoid", [(43.2, 136.8), (43.7, 139.6), (42.4, 142), (39.8, 141.4), (38.4, 139.4), (39.8, 136.2)])
band("greater-horn-of-hyoid", [(27, 133.2), (31, 135.2), (37, 137.6)], 3)
area("lesser-horn-of-hyoid", [(37.6, 133), (38.7, 133.4), (39.2, 136), (37, 136)])
area("oblique-line-of-thyroid-cartilage", [(33.6, 147.4), (35, 147), (37.4, 151.6), (40, 157.2), (38.8, 157.6), (35.8, 153)])
band("hyoid-suspension", [(32.6, 97), (34.6, 110), (36.6, 123), (38, 132.4)], 1.7, z=0.01)
band("thyrohyoid-junction", [(30.6, 137.8), (35, 142.2), (40.6, 143.6)], [2, 3, 2.4])
band("lateral-ligament-of-temporomandibular-joint", [(42.6, 79.4), (39.8, 83), (36.6, 87.6)], [3.6, 3, 1.8])

# ---- neck ---------------------------------------------------------------------------------------------------------------
area("posterior-arch-of-atlas", [(0, 90.8), (4, 90.5), (9.4, 89.4), (10.4, 93), (4, 94.6), (0, 94.8)])
area("posterior-tubercle-of-atlas", [(-2.8, 92.8), (-1.4, 90.8), (0.4, 91.4), (0.4, 94.6), (-1.6, 95)])
area("lateral-mass-of-atlas", [(13.8, 88.6), (18.6, 87.2), (24, 88.2), (24.4, 92.2), (19.4, 92.2), (14.4, 91.4)], z=0.02)
spot("transverse-process-c1", 22.6, 91.6, 2.6, 1.9, 0.5)
band("c0-c1", [(13.6, 87.6), (18.6, 86.8), (24.2, 87.4)], 1.8, z=0.03)
band("c1-c2", [(13, 92.6), (18, 93.2), (23.6, 93)], 2)

LEVEL = 0.3
# ---- ribs ---------------------------------------------------------------------------------------------------------------
for n in range(12, 0, -1):
    line, cut = LINES[n], CUTS[n]
    low, top = sides(line, [w * 0.62 for w in WIDTHS[n]])
    first, end = (14 if n < 11 else 18), cut - (5 if n < 11 else 12)
    if n == 12:
        first, end = 12, 44
    picks = range(first, end, max(2, (end - first) // 8))
    if n > 1:
        band(f"superior-border-of-rib-{n}", [top[i] for i in picks], 1.7)
    if n < 12:
        band(f"costal-groove-of-rib-{n}", [low[i] for i in picks], 1.7)
    a, b = {1: (0, 9), 12: (6, 20), 11: (3, 11)}.get(n, (2, 9))
    SHAPES.append(Shape(f"angle-of-rib-{n}", "bone", rib_band(n, a, b), z=LEVEL))
    if n in NECKS:
        near = along(NECKS[n], 9)
        if n < 11:
            spot(f"tubercle-of-rib-{n}", *near[4], 2, 1.9, 0.4, z=0.2)
            spot(f"costotransverse-joint-{n}", near[3][0] - 0.4, near[3][1] - 1.6, 2.2, 1.4, 0.5, z=0.3)
        spot(f"costovertebral-joint-{n}", near[0][0] - 0.6, near[0][1], 1.7, 2.2, z=0.3)
    else:
        spot("costotransverse-joint-1", line[5][0], line[5][1] - 0.4, 1.5, 2)
        spot("costovertebral-joint-1", line[0][0] + 0.4, line[0][1], 1.7, 2.2)
spot("tip-of-rib-11", LINES[11][-4][0], LINES[11][-4][1], 3, 1.4, 1.2)
spot("tip-of-rib-12", LINES[12][-4][0], LINES[12][-4][1], 2.2, 1.6, 1.2)
band("superior-surface-of-rib-1", LINES[1][16:36:4], 3.2)
spot("scalene-tubercle", *LINES[1][37], 2.1, 1.7, 0.7)
band("external-surface-of-rib-2", LINES[2][20:42:4], 3.6, z=0.29)
for n in range(1, 8):
    spot(f"sternocostal-joint-{n}", LINES[n][-1][0] - 0.4, LINES[n][-1][1], 1.7, 2.6, 0.5)

# ---- breastbone and shoulder girdle -----------------------------------------------------------------------------------------
area("manubrium-of-sternum", [(48, 184.4), (50.4, 183.4), (53.6, 185), (59.6, 192.6), (66.4, 202.4), (71.6, 208.6), (67.4, 210.4),
                              (61, 203.4), (54, 194.6), (49, 188.2)], z=0.29)
area("body-of-sternum", [(73.6, 211.2), (77.4, 217.4), (83.2, 230.4), (88.2, 245.4), (91.8, 261.4), (93.8, 276), (94.2, 286),
                         (90.6, 286.4), (89.2, 276), (87, 262), (83.2, 246.4), (78.2, 231.6), (72.6, 218.6), (69, 212.6)], z=0.29)
area("xiphoid-process", [(90.6, 288.2), (94.4, 288), (94, 291), (94.8, 296), (94.1, 301.2), (93, 301.2), (92.6, 296), (91.2, 291)])
band("sternal-angle", [(67.4, 211.8), (70.6, 210.6), (73.4, 209.2)], 2.6)
band("jugular-notch", [(48, 184), (50.4, 182.8), (53.4, 184.4)], 1.6)
LEVEL = 1.0
area("medial-half-of-clavicle", [(51.8, 184), (52, 187.4), (49.4, 189.6), (46, 187.8), (41.4, 182.8), (36, 179), (33.4, 178.4),
                                 (34, 173.2), (37.4, 174.4), (43.6, 178.8), (48.2, 182.4)])
area("lateral-third-of-clavicle", [(25.6, 178), (21.4, 178.8), (18, 179.4), (17.6, 174.6), (22, 173.2), (26.4, 172.6)], z=0.95)
band("sternoclavicular-joint", [(52.4, 182.8), (53.6, 186), (52, 190)], 2.6)
band("acromioclavicular-joint", [(17.4, 173.4), (22, 175), (26, 177.4)], 2.6)
area("acromion", [(8, 175), (12, 174.6), (19, 175.6), (24.8, 178.2), (25.9, 181), (23.6, 182.4), (16, 182.2), (9, 182.3)])
area("spine-of-scapula", [(-37.6, 193.4), (-33, 190), (-22, 186.8), (-10, 182.4), (2, 177.4), (6.4, 176), (7, 182.6), (3.2, 184.6),
                          (-8, 189), (-20, 192.8), (-31, 196.4), (-37, 198.2)], z=0.9)
area("supraspinous-fossa", [(-34, 184.6), (-31, 178.4), (-27, 174), (-19, 176.8), (-8.6, 180.6), (-14, 182.2), (-24, 186), (-33, 188.8)])
area("infraspinous-fossa", [(-34.4, 200), (-20, 195.6), (-6, 191), (3.4, 187.2), (5.6, 196), (4, 207.6), (-3.6, 217), (-9.6, 230),
                            (-15, 242), (-20, 243), (-26.6, 228), (-31.6, 212)], z=0.9)
band("superior-border-of-scapula", [(-19, 175.6), (-10, 179), (-2.4, 182.4)], 2)
spot("suprascapular-notch", 1.8, 182.2, 2.2, 1.3)
area("superior-angle-of-scapula", [(-30.8, 173), (-27.4, 171.8), (-23.4, 173.6), (-27.4, 178), (-33, 180.2)])
band("medial-border-of-scapula", [(-35.6, 184), (-37, 195), (-35, 208), (-30.6, 224), (-25.4, 239), (-23.6, 243)], 2.6)
area("inferior-angle-of-scapula", [(-12, 247), (-14, 250.8), (-18.4, 252.6), (-22, 248.8), (-23.4, 244.6), (-17.6, 243.4)])
band("lateral-border-of-scapula", [(2.6, 215.4), (-0.8, 219.8), (-6, 231), (-10.4, 243)], 3)
area("infraglenoid-tubercle", [(5, 211.6), (8.6, 209.6), (6, 213.4), (3.2, 216), (2.4, 213.6)])
band("scapulothoracic-joint", [(1.4, 223), (-3.4, 233), (-7.4, 244), (-11.6, 252.6)], 3.4, z=0.45)
band("shoulder-joint", [(12.6, 186.4), (7.2, 192), (5.6, 200), (8.4, 207.8), (14, 213)], 3.8)

# ---- upper arm and elbow ------------------------------------------------------------------------------------------------------
area("greater-tubercle-of-humerus", [(10.6, 193), (14.4, 188.8), (19.6, 188.2), (24, 190), (30, 191), (37, 194.2), (42.6, 198.4), (36.6, 201),
                                     (30.4, 205.8), (23, 206.6), (19, 204.2), (14, 203.8), (10.6, 199)])
area("lesser-tubercle-of-humerus", [(20.6, 185.7), (27, 186.4), (33.2, 188.6), (33.6, 190.6), (26.6, 188.2), (20, 186.8)])
band("intertubercular-sulcus", [(32, 190.8), (40, 193), (52, 193.8), (62, 193.6)], 1.8)
band("anatomical-neck-of-humerus", [(12.2, 189.4), (9.4, 195.6), (10.2, 203), (15, 209.6)], 1.8)
band("crest-of-greater-tubercle", [(37.6, 196), (48, 196.6), (60, 196.4), (76, 195.6)], 2.2)
area("deltoid-tuberosity", [(79, 194.8), (92, 194.6), (108, 195.2), (121, 198.6), (109, 201.2), (94, 203.2), (80, 204), (79, 201.8), (92, 199.4),
                            (92, 198.4), (79, 197)])
band("groove-for-radial-nerve", [(76, 204.8), (98, 205), (120, 202.4), (138, 198.6), (152, 195.8)], 2.4)
band("anterior-shaft-of-humerus", [(122, 193), (140, 194), (165, 195.6), (186, 195.8)], 3.2)
band("posterior-shaft-of-humerus", [(124, 205), (145, 204.8), (168, 204.6), (190, 206)], 3)
band("lateral-supracondylar-ridge-of-humerus", [(164, 199.8), (180, 199.8), (194, 199.6)], 2.2)
area("lateral-epicondyle-of-humerus", [(197.4, 199), (203, 197.4), (208.6, 199.4), (210, 203.4), (206.6, 206.6), (200.4, 205.4),
                                       (196.8, 202.4)])
area("olecranon", [(197.8, 208.6), (200.4, 206), (205.6, 206.4), (208.6, 210), (208.2, 217.2), (204, 216.8), (199, 213.4)])
band("humeroulnar-joint", [(199, 206), (205.6, 206.6), (211.4, 208.8), (217, 207)], 2.4, z=1.1)
band("humeroradial-joint", [(218.6, 190.6), (219.6, 199), (218.8, 206.8)], 2.4, z=1.1)
band("proximal-radioulnar-joint", [(220.6, 208.6), (227.6, 207), (233.4, 205.6)], 2.2)
area("head-of-radius", [(220.4, 192.6), (224, 191), (226.6, 192.2), (227.4, 199), (227, 207.4), (223.6, 208.8), (220.4, 207.4)])
area("neck-of-radius", [(228.6, 195.6), (233, 196.6), (237, 196), (237.6, 204), (233.6, 204.6), (229, 204.6), (228, 200)])
band("anular-ligament-of-radius", [(226.6, 191.4), (228.2, 199), (227.4, 209)], [2, 3, 2.2])
area("radial-collateral-ligament-of-elbow", [(207.4, 200.4), (213, 197), (220, 195), (226, 194.6), (227, 203.6), (220, 204.6),
                                             (213, 204.2), (207.6, 203.4)], z=0.95)
band("supinator-crest-of-ulna", [(229, 209), (239, 208.8), (252, 208.2)], 2)
band("posterior-border-of-ulna", [(214, 216.8), (232, 216), (262, 213.8), (300, 210.6), (330, 209.4)], 2)
band("posterior-shaft-of-ulna", [(256, 210.6), (280, 209.4), (305, 207.8), (328, 207)], 2.8)
band("interosseous-border-of-ulna", [(254, 207), (280, 205.9), (306, 204.9), (332, 205.3)], 1.5)
area("head-of-ulna", [(346.6, 204.6), (351.4, 203.2), (355.8, 204.8), (357, 208.6), (353.6, 212), (348.4, 211.6), (345.6, 208)])
area("styloid-process-of-ulna", [(357.2, 209.2), (361, 211.2), (360.9, 212.7), (357.4, 212.6), (355.4, 211)])
band("interosseous-border-of-radius", [(258, 199.4), (276, 196.8), (300, 195.2), (326, 196)], 1.5)
band("posterior-shaft-of-radius", [(258, 196.8), (280, 193.6), (306, 192.4), (334, 193.4)], 3)
band("lateral-shaft-of-radius", [(256, 192.8), (272, 190.2), (280, 189.4)], 2)
area("pronator-tuberosity", [(283, 189), (293, 188.2), (304, 188.4), (303, 190.4), (293, 191), (284, 191)])
band("lateral-shaft-of-radius", [(307, 188.8), (322, 188.8), (338, 189)], 2, piece=2)
area("distal-end-of-radius", [(344, 188.4), (353, 186.8), (358, 187.6), (359.6, 192.6), (358, 198), (356.6, 202), (352.6, 202.6),
                              (346, 200.4)], z=0.9)
area("styloid-process-of-radius", [(357.6, 187), (361, 187.6), (364.2, 189.4), (361.8, 192), (358.6, 191.4)])
area("dorsal-tubercle-of-radius", [(349, 193.8), (352, 192.6), (357, 193.2), (357.4, 194.8), (352.4, 195.4)])
band("distal-radioulnar-joint", [(346.4, 203.2), (351.6, 202.9), (357, 203.6)], 2, z=1.1)
band("interosseous-membrane-of-forearm", [(256, 203.6), (280, 201.6), (306, 200), (330, 200.8), (344, 202.6)], [2, 7.4, 9.4, 7.6, 1.6], z=-1)

# ---- wrist and hand -----------------------------------------------------------------------------------------------------------


def across(id_, p, toward, width, thick=2.0, z=1.1):
    """A joint of a ray: a narrow band across it at p."""
    dx, dy = toward[0] - p[0], toward[1] - p[1]
    size = (dx * dx + dy * dy) ** 0.5
    ox, oy = -dy / size * width / 2, dx / size * width / 2
    band(id_, [(p[0] - ox, p[1] - oy), p, (p[0] + ox, p[1] + oy)], thick, z)


def hands(*points):
    return [hand(*p) for p in points]


band("wrist-joint", hands((4.4, 12), (1.6, 8), (0, 3), (0, -2), (1.6, -7), (3.4, -11)), 2.4)
band("midcarpal-joint", hands((12.2, 9), (9.8, 6.4), (9.2, 2.4), (8.8, -2), (10.4, -5.4), (12.8, -9.4)), 1.7)
band("scapholunate-joint", hands((2.8, 4), (5.4, 3.5), (8.2, 2.7)), 1.6)
band("lunotriquetral-joint", hands((3.4, -3.8), (5.8, -3.9), (8.4, -3.2)), 1.6)
band("pisotriquetral-joint", hands((5.4, -9), (8.4, -10.5), (11.4, -11.6)), 1.7)
band("scaphotrapezial-joint", hands((11.8, 13), (12, 11), (12.4, 9)), 1.6, z=1.15)
band("scaphotrapezoid-joint", hands((12.6, 8.4), (11.9, 7.2), (11.6, 5.6)), 1.5, z=1.15)
band("capitohamate-joint", hands((9.8, -2.4), (14, -2.5), (19.4, -2)), 1.6)
area("tubercle-of-trapezium", hands((13, 14.6), (14.6, 16.8), (17.2, 15.8), (15.4, 13.8)))
band("radial-collateral-ligament-of-wrist", hands((2.4, 11.6), (5.4, 12.6), (9.4, 13.2)), [1.6, 2.6, 2])
band("ulnar-collateral-ligament-of-wrist", hands((0.6, -12), (4.4, -12), (9, -12.6)), [1.6, 2.4, 1.8])
band("dorsal-radiocarpal-ligament", hands((-2, 3), (3.6, -2), (8.4, -7.6)), [3.4, 4, 3.4], z=0.95)


def slices(names, points, k, w0, w1, w2):
    """Base, shaft and head of a small long bone, each as a patch; empty names are left out."""
    p, q = points[k], points[k + 1]
    for name, (t0, t1, a, b) in zip(names, ((0.03, 0.2, w0, w0 * 0.92), (0.28, 0.72, w1 * 0.7, w1 * 0.62), (0.82, 0.98, w2 * 0.94, w2 * 0.8))):
        if name:
            band(name, [lerp(p, q, t0), lerp(p, q, (t0 + t1) / 2), lerp(p, q, t1)], [a * 0.9, (a + b) / 2, b * 0.86])


for n, (ends, w) in RAYS.items():
    ends = [hand(*e) for e in ends]
    slices((f"base-of-metacarpal-{n}", f"shaft-of-metacarpal-{n}", f"head-of-metacarpal-{n}"), ends, 0, w + 3.2, w, w + 3.6)
    slices((f"base-of-proximal-phalanx-of-finger-{n}", "", ""), ends, 1, w + 1.9, w, w)
    if n > 1:
        slices((f"dorsal-base-of-middle-phalanx-of-finger-{n}", "", ""), ends, 2, w + 1.2, w, w)
    slices((f"dorsal-base-of-distal-phalanx-of-finger-{n}", "", ""), ends, len(ends) - 2, w + (0.6 if n > 1 else 1.3), w, w)
    across(f"carpometacarpal-joint-{n}", ends[0], ends[1], w + 3, 1.8)
    across(f"metacarpophalangeal-joint-{n}", ends[1], ends[2], w + 3.4, 2.4)
    if n == 1:
        across("interphalangeal-joint-of-thumb", ends[2], ends[3], w + 2, 2.2)
    else:
        across(f"proximal-interphalangeal-joint-of-finger-{n}", ends[2], ends[3], w + 2, 2.1)
        across(f"distal-interphalangeal-joint-of-finger-{n}", ends[3], ends[4], w + 1.2, 1.9)

LEVEL = 0.08
# ---- pelvis -------------------------------------------------------------------------------------------------------------------
band("median-sacral-crest", [(-32, 420), (-36.2, 427.4), (-38.8, 436), (-40.8, 446), (-41, 455)], 2.6)
band("dorsal-surface-of-sacrum", [(-29.6, 421), (-33, 430), (-35.8, 440), (-37.6, 450), (-37, 460)], 3.2, z=0.07)
band("lateral-border-of-sacrum", [(-25.6, 454.6), (-28.4, 461), (-30, 467), (-30.6, 472)], 3)
area("sacral-hiatus", [(-39.6, 462), (-37.4, 466.6), (-35, 470.6), (-34, 469.4), (-36, 465.4), (-38, 461.4)])
band("sacrococcygeal-joint", [(-34, 475.4), (-30.4, 477), (-26.4, 476)], 2.4)
band("dorsal-surface-of-coccyx", [(-30, 480.4), (-27.6, 486), (-24.4, 490.6)], 1.8)
band("lateral-border-of-coccyx", [(-27.4, 479), (-25.4, 484.6), (-22.4, 489.6)], 1.8)
area("apex-of-coccyx", [(-20.8, 490.4), (-19.4, 491.4), (-18.7, 494.2), (-20.4, 495.2), (-22.4, 493)])
band("sacroiliac-joint", [(-26.4, 419.6), (-29.4, 428), (-28.4, 437), (-24.6, 445)], 3, z=0.3)
LEVEL = 0.3
area("gluteal-surface-of-ilium", [(-24, 424), (-11, 411), (4, 404), (18, 402.4), (33, 406), (46, 414), (56, 425), (60, 435),
                                  (58, 445), (52.6, 453), (40, 457), (25, 458), (10, 455), (-4, 452), (-17, 447), (-24, 438)], z=0.2)
band("iliac-crest", [(-35, 424.4), (-31, 420), (-23, 411.4), (-11, 402.2), (2.6, 396.2), (15, 394.2), (27.4, 395.6), (39.6, 400.8),
                     (50.6, 409), (59.4, 419), (65.6, 429.6)], 4.4)
area("anterior-superior-iliac-spine", [(67, 431.6), (69.2, 437), (69.4, 441), (67.4, 445), (64, 447.8), (62.6, 444), (64.4, 438)])
area("anterior-inferior-iliac-spine", [(60.2, 458.6), (61.2, 461), (60, 464.8), (55.6, 467.6), (53.6, 464.4), (56.2, 459)])
area("posterior-superior-iliac-spine", [(-37, 433.6), (-37.4, 429), (-35, 424.8), (-31.6, 427), (-31, 433.4), (-32.6, 438.4)])
area("posterior-inferior-iliac-spine", [(-28.8, 446), (-29.4, 450), (-27.6, 452.9), (-22.6, 452.9), (-23, 448.4), (-26.4, 445.4)])
band("greater-sciatic-notch", [(-14, 456), (-6.6, 461.6), (-2.8, 469.6), (-2.4, 478.4), (-6, 485)], 2.4)
area("ischial-spine", [(-13.8, 493), (-12, 490.2), (-8.4, 488.6), (-6.6, 493.6), (-9, 496)])
band("lesser-sciatic-notch", [(-8.8, 497.2), (-7, 500.2), (-10, 504.4)], 1.9)
area("ischial-tuberosity", [(-11.7, 511), (-10.4, 505.6), (-5, 505), (-1, 511), (3.4, 517.6), (5, 523.3), (-2.8, 522.4), (-9, 517.6)])
band("ischial-ramus", [(7, 520.4), (20, 519.4), (33, 517.8)], 4)
band("inferior-pubic-ramus", [(37, 517.6), (50, 514), (62, 508.6)], 4)
area("body-of-pubis", [(63.6, 488), (70, 489), (73.4, 492), (73.4, 497), (70.4, 503), (64, 506), (61.8, 501), (62.4, 494.6)])
area("superior-pubic-ramus", [(52, 478.6), (57, 481.2), (63, 484.6), (62, 490), (56, 491.6), (47, 491.8), (43, 489.6), (47, 483)])
area("pubic-tubercle", [(65.8, 485.4), (69.4, 485.8), (72, 487.2), (71, 490), (67.2, 489.4)])
band("pubic-crest", [(71.6, 487.4), (73.8, 488.8), (74.8, 490.8)], 1.8)
band("pubic-symphysis", [(75, 491), (74.4, 496), (71.8, 502), (68.2, 506.6)], 2.2)
area("iliopubic-eminence", [(47.4, 471.8), (49.2, 472.2), (49.6, 475.6), (53.6, 478.6), (47.4, 479), (44.6, 475)])
LEVEL = 1.0
band("acetabular-margin", [(41.6, 488), (43.6, 479), (40, 469.4), (32, 463.4), (22, 463), (12.6, 467.6), (8.2, 476)], 2.4)
area("obturator-membrane", [(31.6, 503.4), (38, 499), (47.2, 494.4), (55.6, 493.8), (59.4, 497), (57.6, 502.6), (51.6, 507.8), (43, 511.4),
                            (34.6, 511.8), (31, 508.4)], z=-1)
area("sacrotuberous-ligament", [(-36.6, 438), (-30, 450), (-25, 461), (-17, 478), (-11, 492), (-7, 503), (-4, 512), (-8.4, 515), (-12.4, 511),
                                (-15.4, 500), (-21, 487), (-27.6, 479), (-30.6, 472), (-33, 458)], z=0.05)
area("sacrospinous-ligament", [(-28, 466), (-22, 477), (-13, 488.6), (-12, 492), (-15.6, 493), (-22, 489.4), (-28, 482), (-31, 473)], z=0.03)
area("posterior-sacroiliac-ligament", [(-35.4, 426), (-38, 434), (-40, 444), (-39.4, 452), (-35, 449.6), (-32.4, 443), (-31, 435), (-32.4, 428)], z=0.25)
area("iliofemoral-ligament", [(56.4, 463.8), (60, 466), (55.4, 473), (48, 482), (40.6, 492), (35.6, 501), (34.8, 512), (30.8, 509),
                              (28.6, 499), (30.4, 489.4), (37, 479.6), (46, 470.4)], z=0.6)
band("hip-joint", [(11, 480), (13.6, 471.6), (20, 465.4), (29.6, 465), (37, 470), (40.6, 478), (38.6, 486.4)], 2.8)

# ---- thigh and knee -------------------------------------------------------------------------------------------------------------
area("head-of-femur", [(13.6, 479.4), (16.4, 471.8), (22.2, 467.9), (28.8, 468.1), (34.8, 472), (37.4, 478), (36.4, 484), (30, 484),
                       (22, 482.4), (16.6, 482)], z=0.95)
area("greater-trochanter", [(5.2, 491), (6.2, 487.6), (9, 485.4), (14, 485), (22, 486.2), (29, 488.6), (33, 493), (33.4, 500), (31, 508),
                            (23, 512), (14.6, 512), (9, 504.8), (5.4, 497)])
band("gluteal-tuberosity", [(17.6, 527), (20.2, 541), (22, 558)], 3.4)
band("linea-aspera", [(21.8, 572), (22.6, 592), (22.8, 612), (22.2, 640)], 2.2)
band("lateral-supracondylar-line", [(20.6, 660), (17.6, 677), (13.4, 690), (8.4, 698.4)], 2.2)
band("anterior-shaft-of-femur", [(35, 540), (36.6, 570), (37.2, 610), (36.8, 640), (36.6, 668)], 3.6)
area("lateral-condyle-of-femur", [(-5.6, 713), (-1, 706), (8, 700.6), (20, 702), (32, 704), (42.6, 706), (44.4, 712), (43.4, 719), (38, 726),
                                  (28, 730.4), (17, 731.4), (6, 730.4), (-1.6, 726.6), (-5.6, 720)], z=0.8)
area("lateral-epicondyle-of-femur", [(9.4, 714), (12, 710.6), (17, 711), (20.6, 715), (19.6, 720), (14.6, 722), (10, 719.4)])
band("knee-joint", [(-4.4, 731), (4, 732.6), (17, 733.2), (30, 732.2), (38.6, 730.8)], 3)
band("patellofemoral-joint", [(48.4, 708.4), (46.8, 714), (46.8, 721), (48.6, 727), (52, 733)], 2.4)
area("base-of-patella", [(51, 709.6), (55, 707.2), (60.2, 708.8), (63, 712.6), (57, 712.4), (51, 712.8)])
area("apex-of-patella", [(54, 731), (58, 729.6), (61.4, 730.8), (59, 736), (57, 737.6), (54.6, 734.4)])
band("lateral-border-of-patella", [(53.6, 714.6), (54, 720), (56, 727.4)], 2.6)
area("fibular-collateral-ligament", [(13, 716), (16, 716.6), (12.4, 728), (6, 740), (2.4, 748), (-0.8, 746.4), (3.6, 737), (9.6, 726)], z=1.05)
area("lateral-condyle-of-tibia", [(-5.2, 737), (-2, 734.4), (10, 734.8), (24, 735), (38, 735.2), (41.6, 739), (42.6, 745.4), (35, 752), (22, 753.4),
                                  (10, 751), (2.4, 747.4), (-2.8, 744)], z=0.8)
area("anterolateral-tubercle-of-tibia", [(28, 742), (32.6, 739.6), (37.6, 742), (37.4, 747.6), (32.6, 750.8), (28.2, 747.6)])
area("tibial-tuberosity", [(46, 753.4), (49.2, 758.4), (49.8, 764.4), (47, 773), (44, 776), (43, 767), (43.6, 758)])
band("anterior-border-of-tibia", [(44.6, 779), (38.4, 793.6), (33, 811.6), (27.6, 834), (21.4, 869), (15.4, 906)], 2.2)
band("lateral-surface-of-tibia", [(33, 781), (28, 800), (22.4, 826), (15.6, 858), (9, 892), (5.6, 918)], [3, 8, 8.4, 7.4, 6.4, 3], z=0.9)
band("interosseous-border-of-tibia", [(16, 786), (15.4, 803), (11, 831), (5.6, 860), (1.8, 880)], 1.8)
band("interosseous-membrane-of-leg", [(3, 768), (8.6, 790), (8, 812), (5, 836), (2.4, 862), (1, 888)], [3, 13, 12, 8, 4, 2], z=-1)
area("head-of-fibula", [(-3.4, 746.2), (-0.4, 744.2), (2.8, 747.4), (3.9, 753), (2.6, 758.4), (-2, 760), (-6.6, 758), (-7.2, 751.4)])
area("neck-of-fibula", [(-6.4, 760.4), (-2, 761.4), (2.2, 760.6), (0.8, 768), (-2, 769), (-4.9, 768)])
band("proximal-tibiofibular-joint", [(0, 742.8), (4, 746.6), (5.4, 752.6), (4, 758.4)], 2.2)
band("lateral-surface-of-fibula", [(-1.8, 774), (-1.6, 810), (-1.5, 850), (-0.8, 890), (-0.4, 920)], 3.2, z=0.9)
band("posterior-border-of-fibula", [(-4.6, 776), (-4, 815), (-3.8, 860), (-3.2, 900)], 1.5)
band("anterior-border-of-fibula", [(1, 776), (1.2, 815), (1.1, 860), (2, 900)], 1.5)
area("lateral-malleolus", [(-4.6, 936), (0, 934), (4.4, 937), (6.8, 953), (6, 960.8), (2.4, 966.9), (-1.4, 969.2), (-4.1, 966.2),
                           (-6, 959), (-6, 948)])
band("distal-tibiofibular-joint", [(4.8, 930), (6.8, 940), (8, 949.4)], 2.2)

# ---- foot -------------------------------------------------------------------------------------------------------------------------
band("ankle-joint", [(-15.4, 955.4), (-9, 951.2), (0, 949.2), (8.4, 949.6), (15.4, 953)], 2.4, z=0.95)
area("anterior-tibiofibular-ligament", [(8, 938), (12.6, 943), (10.6, 947.4), (6.4, 954), (5, 950), (6, 943)], z=1.02)
area("anterior-talofibular-ligament", [(5.4, 957.4), (11, 957.4), (17.4, 960.6), (18, 965), (11, 963.4), (5, 962.4)], z=1.05)
area("posterior-talofibular-ligament", [(-5.4, 960.4), (-10, 961.4), (-16, 962.4), (-16.4, 965.6), (-10, 965.6), (-4.8, 964)], z=1.05)
area("calcaneofibular-ligament", [(-3.4, 965.4), (0.6, 967), (-2.6, 973), (-6.6, 980), (-9.6, 979), (-7, 972.6)], z=1.05)
area("neck-of-talus", [(15.8, 961), (19, 964.4), (23, 965.8), (22, 972), (20, 975.4), (15.8, 973), (15, 967)])
area("head-of-talus", [(24, 966.2), (28.4, 968.8), (29.5, 973), (27, 976.1), (22.4, 975.8), (23.4, 971)])
area("posterior-process-of-talus", [(-17.3, 966), (-17, 961.6), (-13.6, 958.4), (-11, 962.6), (-11.8, 968)])
band("subtalar-joint", [(-13, 970.2), (-4, 969.4), (2, 973), (6, 976.4)], 2.2)
area("tarsal-sinus", [(5.8, 977.2), (10.2, 975.8), (15.6, 975), (17, 976.6), (14, 977.4), (10.4, 978.6)])
area("calcaneal-tuberosity", [(-37.4, 981), (-36.2, 976.4), (-32, 974), (-29.4, 977.6), (-30, 985), (-31, 991), (-33.2, 995), (-36.4, 991.4),
                              (-38, 986)])
area("lateral-surface-of-calcaneus", [(-26, 977), (-10, 973.6), (0, 976), (9, 981), (21, 980.8), (22.2, 988), (8, 989), (-10, 990.4),
                                      (-25, 992)], z=0.8)
area("fibular-trochlea", [(1.6, 983), (5.4, 981.8), (9.4, 983.4), (8.2, 986.2), (3.4, 986.2)])
area("lateral-process-of-calcaneal-tuberosity", [(-29.6, 993.6), (-24, 992.8), (-19, 994.6), (-25, 996.3), (-29, 996.4)])
band("superior-surface-of-calcaneus", [(-29, 974.6), (-20, 973.4), (-13, 971.8)], 2)
band("plantar-surface-of-calcaneus", [(-16, 993.6), (-4, 991.5), (10, 989.9), (20, 990.2)], 2)
band("calcaneocuboid-joint", [(24.8, 979.4), (24, 984.6), (25.2, 990)], 2)
area("bifurcate-ligament", [(18, 977.4), (22, 975.8), (30, 972.6), (33, 974), (26, 977.4), (31, 979.4), (29, 981.4), (22, 979.8)], z=1.02)
band("talonavicular-joint", [(29.8, 967.4), (31.2, 972.6), (29.8, 978)], 2)
band("cuboideonavicular-joint", [(30.6, 978.6), (33.6, 979.4), (36.4, 979.8)], 1.7)
band("intermediate-cuneonavicular-joint", [(39.6, 970.8), (40, 972.4), (40, 974.2)], 1.7)
band("lateral-cuneonavicular-joint", [(39.8, 974.8), (40, 977.4), (40.4, 980.6)], 1.7)
area("tuberosity-of-cuboid", [(26.4, 988.8), (30, 990), (34, 990.4), (35, 991.8), (31, 992.9), (26.6, 991)])
area("tuberosity-of-metatarsal-5", [(33.8, 991), (35.6, 988.8), (39, 987.4), (41, 990), (40.4, 993), (36, 993.4)])
for n, (ends, w) in TOES.items():
    if n > 1:
        head = 0.7 if n < 5 else 1
        slices((f"base-of-metatarsal-{n}", f"shaft-of-metatarsal-{n}", f"head-of-metatarsal-{n}"),
               ends if n < 5 else [(41, 988.6), (79.4, 993.6)], 0, (w + 2.4) * head, w * (1 if n == 5 else 0.8), (w + 2.6) * head)
        across(f"tarsometatarsal-joint-{n}", ends[0] if n < 5 else (38.6, 987), ends[1], w + 1.6, 1.6)
        across(f"proximal-interphalangeal-joint-of-toe-{n}", ends[2], ends[3], w + 0.4, 1.3)
        across(f"distal-interphalangeal-joint-of-toe-{n}", ends[3], ends[4], w, 1.2)
    else:
        across("interphalangeal-joint-of-big-toe", ends[2], ends[3], w, 1.6)
    across(f"metatarsophalangeal-joint-{n}", (ends[1][0] + 0.2, ends[1][1]), ends[2], w + 1.8, 1.7)
