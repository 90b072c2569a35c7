"""Surface regions, side: tiles cut from one net of borders, so they cover the silhouette without gaps.

The patient's right side; x grows forward and may be negative. The arm is raised straight forward, thumb up, so that
flank and armpit lie open. Borders keep the heights that they have in the front and back views.
"""
import math

from figure import CORNER, HAND_ANGLE, THUMB_ROOT, WRIST, WRIST_CREASE, Contour, Net, digits, finger_roots
from figure import HAND as HANGING_HAND
from sidepen import Shape, outline, tile

SHIFT = 1000.0  # Contour keeps to x >= 0, so curves are made this far to the right and moved back


def shifted(point, by):
    return (round(point[0] + by, 4), *point[1:])


class SideContour(Contour):
    """A contour that may lie on either side of x = 0."""

    def __init__(self, *points):
        super().__init__(*[shifted(p, SHIFT) for p in points])
        self.points = [shifted(p, -SHIFT) for p in self.points]
        self.segs = [tuple(shifted(p, -SHIFT) for p in seg) for seg in self.segs]


class SideNet(Net):
    def add(self, *points):
        full = [(*self.at[p], p) if isinstance(p, str) else p for p in points]
        full = [(*self.at[p[0]], p[0], p[1]) if isinstance(p[0], str) else p for p in full]
        contour = SideContour(*full)
        for name, i in contour.index.items():
            if self.at.setdefault(name, contour.points[i]) != contour.points[i]:
                raise ValueError(f"station {name} at {contour.points[i]} is already at {self.at[name]}")
        self.contours.append(contour)
        return contour


def forward(point):
    """A point of the hanging hand, on the arm that is raised forward; a station's name stays as it is."""
    if isinstance(point, str):
        return point
    dx, dy = point[0] - WRIST[0], point[1] - WRIST[1]
    sin, cos = math.sin(HAND_ANGLE), math.cos(HAND_ANGLE)
    return (round(361 + dx * sin + dy * cos, 2), round(200 - (dx * cos - dy * sin), 2), *point[2:])


FACE = [
    (14, 0, "crown"), (34, 2.6), (51.6, 9.4), (64.6, 20, "cap-mid"), (72, 33), (75.6, 45), (76.9, 52.8), (75.9, 57),
    (74.2, 60.4, "nasion"), (76.2, 66), (80.4, 73.4), (85.6, 80.6), (90, 85.4), (91.9, 88.4), (90.4, 91.2),
    (86, 92.9), (81.8, 94.6, "subnasale"), (81.6, 97.4), (83.2, 100.4), (83.9, 102.8), (81.6, 104.5, CORNER),
    (83.2, 106.4), (82.5, 109.8), (79, 114.4, "mental-groove"), (79.2, 118.6), (80.1, 122.4), (78.9, 127),
    (74.6, 130.4, "chin"), (67, 131.8), (59, 133.8), (51.6, 137), (46.6, 141.6, "hyoid"), (45.6, 147), (46.8, 152.6),
    (47.2, 157.4), (46.2, 162.6), (45.6, 169.6, "throat-arm", CORNER),
]
ARM_TOP = [
    (56, 168), (70, 166.6), (84, 166.8, "deltoid-top"), (100, 168.6), (116, 171), (134, 172), (150, 172.2),
    (168, 174), (185, 177.6, "elbow-top-high"), (199, 179.4), (213, 177.8), (227, 175.6, "elbow-top-low"),
    (246, 174.4), (266, 175.6), (286, 178.6), (308, 181.8), (326, 184), (340.5, 185, "wrist-top-high"),
]
ARM_UNDER = [
    (340.5, 215.6, "wrist-under-high"), (326, 217), (308, 219.6), (288, 223.4), (268, 226.4), (248, 227.6),
    (227, 226.2, "elbow-under-low"), (216, 224), (206, 223.4), (196, 224.4), (185, 226.4, "elbow-under-high"),
    (168, 229.4), (148, 232.4), (126, 233.6), (106, 232.8), (92, 231.6, "arm-chest", CORNER),
]
TRUNK_FRONT = [
    (95.2, 240.4, "chest-split-top"), (99.6, 254), (102.6, 267), (103.2, 276), (101.6, 287.4, "sternum-pectoral"),
    (99.4, 297), (98.2, 306, "xiphoid"), (98, 322), (99, 340), (101, 359, "subcostal"), (103.4, 378),
    (104.8, 396), (104.6, 412), (102.4, 428), (100, 438, "interspinous"), (95.4, 454), (91.4, 470), (88.6, 482),
    (86.6, 493), (82.8, 507), (79, 519, "crotch-front"),
]
LEG_FRONT = [
    (76.6, 531), (75.6, 544), (75.8, 562), (75.4, 588, "triangle-apex"), (73, 616), (68.6, 646), (63.6, 672),
    (61.4, 692, "thigh-front-low"), (63, 702.4), (66.2, 711), (68, 720), (67.4, 731), (64.2, 741), (59.8, 749),
    (56, 757), (53.4, 766), (51, 774, "tuberosity"), (44.2, 792), (38, 811), (32.8, 832), (27.8, 858), (22.6, 888),
    (18, 914), (15.4, 935, "ankle-crest"),
]
FOOT = [
    (16.8, 946), (22, 955.8), (30.4, 963.6, "ankle-front-low"), (44, 970.4), (60, 976), (74, 980.6),
    (86, 984.2, "toe-root-top"), (94.6, 985.6), (102, 985.6), (108.4, 988), (111, 992.6, "toe-tip"),
    (109.6, 997.2), (105, 999, "toe-under-1"), (100.6, 998.8, "toe-under-2"), (95.2, 999.2, "toe-under-3"),
    (89.4, 999.4, "toe-under-4"), (80, 999.9, "toe-root-under"), (60, 999.8), (38, 999.4), (14, 999.6),
    (-4, 999.8, "heel-under"), (-20, 999.9), (-32, 998.8), (-39, 994.8), (-42, 986), (-41, 976), (-38, 966, "heel-high"),
]
LEG_BACK = [
    (-33.4, 951), (-30.4, 935, "ankle-back-high"), (-30, 918), (-31.4, 898), (-34.2, 876),
    (-37.4, 850, "calf-split-low"), (-40.6, 828), (-42, 806), (-40.4, 785), (-35.6, 767.6, "calf-high"), (-28, 752),
    (-20.4, 739.4), (-16, 727), (-15.8, 712), (-18.8, 691, "popliteal-high"), (-25, 664), (-31.6, 632),
    (-37, 600), (-40.6, 570), (-41.9, 557), (-42.4, 548.6, "fold"),
]
TRUNK_BACK = [
    (-45.2, 538.6), (-49.8, 525), (-53.6, 508), (-54.2, 503.6, "cleft"), (-55, 491), (-53.4, 474),
    (-50.8, 460, "sacrum-side"),
    (-47.4, 444), (-43, 430), (-37.6, 418, "l5"), (-32.6, 402), (-30.6, 386), (-31.4, 370), (-36.4, 350),
    (-43.6, 326.4, "t12"), (-50.2, 298), (-54, 274), (-56.2, 254, "t8"), (-56.8, 232), (-53.6, 207), (-47, 184),
    (-38.4, 163), (-28.8, 145.8, "c7"), (-23, 132), (-19.8, 117), (-19.4, 103, "c2"), (-23, 92.4),
    (-31, 79.4, "inion"), (-36.4, 66), (-38.2, 54), (-37.8, 47, "lambda"), (-34.6, 34), (-27, 20.4), (-15, 8.8),
    (0, 1.3),
]
SILHOUETTE = (FACE + ARM_TOP + [forward(p) for p in HANGING_HAND] + ARM_UNDER + TRUNK_FRONT + LEG_FRONT + FOOT
              + LEG_BACK + TRUNK_BACK)
SILHOUETTE = [(*p[:2], "", CORNER) if p[2:] == (CORNER,) else p for p in SILHOUETTE]
# once round and a point further at both ends, so that the curve runs smoothly over the crown
net = SideNet()
line = net.add
round_body = line(SILHOUETTE[-1][:2], *SILHOUETTE, (*SILHOUETTE[0][:2], "crown-end"), SILHOUETTE[1][:2])
OUTLINE = outline(round_body.between("crown", "crown-end"))

# head
forehead_edge = line("cap-mid", (60.4, 23.6), (57, 28.4, "coronal"))
temporal_line = line("coronal", (49, 24.8), (37, 23.6), (23, 27), (10, 37.4, "parietal-low"), (1.6, 51),
                     (-2, 66.6, "asterion"))
cap_back = line("asterion", (-13, 57), (-25, 50.4), "lambda")
line("coronal", (60.4, 38), (64.4, 48), (65, 57.6, "brow-out"))
line("brow-out", (69, 54.6), (73, 56.6, "brow-in"), "nasion")
line("brow-out", (62.6, 61.6), (62.6, 66, "orbit-out"), (65.4, 70, "orbit-zygoma"), (69.6, 70.2),
     (72.6, 67.6, "orbit-in"),
     (72.4, 62), "brow-in")
line("orbit-in", (74.4, 73.4), (77.4, 80), (78.4, 85.4), (78.6, 89.4, "ala-back"), (80, 92.8), "subnasale")
line("orbit-zygoma", (65.4, 79), (62, 88, "cheek"))
line("orbit-out", (50, 67.6), (37, 69.6), (25.6, 71.4, "tragion"))
line("tragion", (26, 75.4), (26.6, 78.4), (24.8, 81.6, "ear-front"), (23.8, 86), (22.8, 90.4), (19.4, 93, "ear-bottom"),
     (16.4, 91), (14.4, 86.4), (10.6, 80.4), (7, 74), (6, 67.6, "ear-back"), (8.8, 62.4), (14.6, 60), (21, 60.8),
     (25, 64.6), (25.8, 68), "tragion")
line("asterion", (2, 67.8), "ear-back")
line("ear-front", (38, 84.4), (50, 86.6), "cheek")
line("cheek", (68.6, 91.6), (74, 95.6, "mouth-fold"))
line("ala-back", (76, 92), "mouth-fold", (72, 99), (70.4, 104.6), (71, 110), (73.4, 115, "mouth-low"), (76, 115.6),
     "mental-groove")
line("cheek", (56.4, 98), (52, 108), (49.6, 119.4, "jaw-mid"))
line("mouth-low", (69, 120), (66, 128, "jaw-front"))
line("chin", "jaw-front", (58, 124), "jaw-mid", (41, 115.4, "jaw-scm"), (32.4, 111.8), (27, 106, "jaw-angle"),
     (23.4, 99),
     "ear-bottom")
line("asterion", (-5.4, 76), (-9, 86.4, "nuchal-out"), (-2, 94.6), (7, 100, "mastoid-low"), (13.4, 98), "ear-bottom")
line("nuchal-out", (-20, 82.4), "inion")
line("c2", (-9, 101.8), (1.6, 100.8, "nape-out"), "mastoid-low")

# neck
line("jaw-scm", (37, 124), (36.4, 136), (38.4, 148, "hyoid-out"), (41.6, 159), "throat-arm")
line("hyoid-out", "hyoid")
line("mastoid-low", (12, 117), (19, 136), (26.6, 154), (34.6, 168.8, "scm-clavicle"))
line("nape-out", (2, 117), (4.4, 134, "neck-low"), (8.4, 151), (17, 169, "trapezius-clavicle"))
line("neck-low", (-9, 140.4), (-23.4, 147, "vertebral-high"), "c7")

# shoulder girdle
line("throat-arm", "scm-clavicle", "trapezius-clavicle", (8, 172.4, "ac-top"), (3, 178, "acromion"))
line("throat-arm", (35, 173.8), (24, 177.6, "deltoid-clavicle"), (12, 179.8), "acromion")
line("acromion", (-7, 183), (-19, 187, "deltoid-spine"), (-29, 188.4), (-39, 188, "spine-root"))
line("spine-root", (-36.4, 176), (-31, 161), "vertebral-high")
line("spine-root", (-43.6, 206), (-44.4, 230), (-40, 251, "inferior-angle"))
line("vertebral-high", (-34.4, 166), (-42.6, 186), (-49, 208), (-52, 232), (-51.4, 253.4, "vertebral-mid"),
     (-49.2, 273),
     (-45.2, 297), (-38.6, 327.4, "vertebral-t12"), (-31, 350), (-26.8, 370), (-26, 386), (-28.4, 402),
     (-33.4, 417.4, "vertebral-l5"))
line("vertebral-mid", "inferior-angle", (-20, 253), (2, 249, "axilla-back"))
line("deltoid-spine", (-8, 201), (6, 216, "deltoid-axilla"), (24, 226), (44, 228.6, "deltoid-arm"), (68, 224.6),
     (92, 214.6), (114, 204, "deltoid-tip"))
line("deltoid-top", (94, 177), (104, 190), "deltoid-tip")
line("deltoid-axilla", (4.6, 230), "axilla-back", (10, 261), (23, 271, "axilla-flank"))
line("deltoid-arm", (59, 231.6), (76, 232.8), "arm-chest")

# chest
line("arm-chest", (80, 243), (76, 255, "axilla-pectoral"), (79.4, 269), (87.4, 280, "pectoral-low"), (94, 285),
     "sternum-pectoral")
line("chest-split-top", (94, 254), "pectoral-low")
line("axilla-flank", (42, 271.4), (61, 265.6), "axilla-pectoral")
line("pectoral-low", (82.6, 291), (78.4, 307, "chest-side-low"))
line("axilla-flank", (23.4, 288), (22.6, 307, "flank-chest"), (20.6, 331), (18, 355.4, "flank-rib"), (15.6, 374),
     (15, 392.4, "flank-crest"))
line("xiphoid", (89, 305), "chest-side-low", (50, 308.4), "flank-chest")
line("xiphoid", (93, 311), (86.8, 321, "costal-rectus"), (87.6, 338), (88.8, 358.6, "rectus-high"), (90.6, 380),
     (91.2, 400), (90.6, 420), (88, 439, "rectus-low"), (85.4, 458), (83.6, 476), (81.8, 493, "pubic-tubercle"))
line("flank-rib", (50, 361), "rectus-high", "subcostal")
line("vertebral-t12", (-30, 337), (-24, 345, "rib-12"), (-4, 351.4), "flank-rib")
line("inferior-angle", (-35.6, 280), (-29, 314), "rib-12", (-20.6, 366), (-18.6, 390), (-19.6, 412, "crest-low"))
line("t12", "vertebral-t12")

# pelvis
line("interspinous", "rectus-low", (79, 439), (70, 440, "asis"))
line("asis", (57, 419), (38, 400), "flank-crest", (1, 396.4), (-11, 402.6), "crest-low", (-27, 416.4, "sacrum-corner"),
     "vertebral-l5", "l5")
line("asis", (46, 436.6), (22, 437.4, "flank-spine"), (8, 455), (0, 482.6, "hip-mid"), (-7, 508, "hip-deep"),
     (-15, 534, "hip-back-low"))
line("sacrum-corner", (-34, 433), (-42.4, 450), "sacrum-side")
line("crest-low", (-21.4, 424), (-26, 436.6, "gluteus-high"), (-37, 449.6), "sacrum-side")
line("gluteus-high", (-14, 447), (-4, 464), "hip-mid")
line("cleft", (-38, 500.6), (-20, 503), "hip-deep")
line("asis", (74, 458), (79, 477), "pubic-tubercle", (81, 506), "crotch-front")
line("asis", (66.6, 466), (60.6, 494), (56, 520, "hip-front-low"), (53.6, 560), (51.4, 610), (48, 656),
     (44, 693, "thigh-front-side"))
line("asis", (71, 474), (69.4, 512), (70, 550), "triangle-apex")
line("hip-front-low", (40, 529), (22, 532.6), "hip-back-low", (-30, 540.6), "fold")

# thigh and knee
line("hip-back-low", (-13.6, 570), (-10.6, 612), (-6, 656), (-2, 692, "thigh-back-side"))
line("popliteal-high", "thigh-back-side", (21, 695.4), "thigh-front-side", "thigh-front-low")
line("thigh-front-side", (45.4, 714), (43, 737), (38, 758, "leg-front-side"))
line("thigh-back-side", (-3.4, 714), (-6.4, 736), (-12.6, 757, "leg-back-side"))
line("calf-high", (-26, 761.4), "leg-back-side", (12, 760.4), "leg-front-side", (45.4, 764.6), "tuberosity")

# leg
line("leg-front-side", (33.4, 782), (27.6, 812), (20.4, 850), (13.4, 894), (8.4, 934.6, "ankle-front-side"))
line("leg-back-side", (-21.6, 784), (-26.6, 813), (-27.4, 844, "calf-lateral-low"), (-23, 890),
     (-18.6, 934.4, "ankle-back-side"))
line("calf-split-low", (-33, 847.4), "calf-lateral-low")
line("ankle-back-high", "ankle-back-side", (-5, 933), "ankle-front-side", "ankle-crest")
line("ankle-front-side", (9, 950), (13.6, 966, "ankle-front-foot"))
line("ankle-back-side", (-19, 950), (-20, 966.4, "heel-side-high"))
line("heel-high", "heel-side-high", (-12, 969.6, "foot-side-back"), (2, 971, "foot-side-front"), "ankle-front-foot",
     (23, 965.4), "ankle-front-low")
line("foot-side-back", (-8, 984), "heel-under")
line("foot-side-front", (20, 978), (40, 983.4), (60, 987.6), (76, 991.4, "toe-root-5"))

# toes, fanned out from the little one
line("toe-root-top", (85.6, 985.6, "toe-root-1"), (84.4, 987.2, "toe-root-2"), (82.6, 988.8, "toe-root-3"),
     (80.2, 990.2, "toe-root-4"), "toe-root-5", (76.6, 996), "toe-root-under")
line("toe-root-1", (95.6, 986.8), (103, 989), (106.4, 993.4), "toe-under-1")
line("toe-root-2", (93, 988.2), (99, 990.4), (101.8, 994.4), "toe-under-2")
line("toe-root-3", (89.4, 989.6), (94.4, 991.8), (96.6, 995.4), "toe-under-3")
line("toe-root-4", (85.4, 991), (89.2, 993), (91, 996.2), "toe-under-4")

# arm, thumb up: the septum on its outer side, then the edge of the radius that winds up to the wrist
line("deltoid-tip", (140, 203.4), (164, 202.6), (185, 202.4, "elbow-side-high"), (206, 201.6),
     (227, 200, "elbow-side-low"),
     (260, 193.6), (300, 187.6), "wrist-top-high")
line("elbow-top-high", (183, 190), "elbow-side-high", (183, 214), "elbow-under-high")
line("elbow-top-low", (229.6, 188), "elbow-side-low", (229.6, 207, "forearm-split"), (229.4, 217), "elbow-under-low")
line("forearm-split", (262, 206), (302, 203), (341.6, 201, "wrist-side-high"))
line("wrist-top-high", (342, 192), "wrist-side-high", (342, 208), "wrist-under-high")
line(*[forward(p) for p in WRIST_CREASE])
line(*[forward(p) for p in THUMB_ROOT])
for root in finger_roots(6.0):
    line(*[forward(p) for p in root])

r = net.region
SHAPES = [
    Shape("parietal-region", "skin", tile(
        round_body.between("lambda", "crown-end"), round_body.between("crown", "cap-mid"),
        forehead_edge.between("cap-mid", "coronal"), temporal_line.between("coronal", "asterion"),
        cap_back.between("asterion", "lambda"))),
    r("frontal-region", "cap-mid", "coronal", "brow-out", "brow-in", "nasion"),
    r("temporal-region", "coronal", "asterion", "ear-back", "tragion", "orbit-out", "brow-out"),
    r("occipital-region", "lambda", "asterion", "nuchal-out", "inion"),
    r("auricular-region", "tragion", "ear-front", "ear-bottom", "ear-back"),
    r("mastoid-region", "asterion", "ear-back", "ear-bottom", "mastoid-low", "nuchal-out"),
    r("orbital-region", "brow-in", "brow-out", "orbit-out", "orbit-zygoma", "orbit-in"),
    r("nasal-region", "nasion", "brow-in", "orbit-in", "ala-back", "subnasale"),
    r("infraorbital-region", "orbit-in", "orbit-zygoma", "cheek", "mouth-fold", "ala-back"),
    r("zygomatic-region", "orbit-zygoma", "orbit-out", "tragion", "ear-front", "cheek"),
    r("oral-region", "subnasale", "ala-back", "mouth-fold", "mouth-low", "mental-groove"),
    r("buccal-region", "cheek", "jaw-mid", "jaw-front", "mouth-low", "mouth-fold"),
    r("parotideomasseteric-region", "cheek", "ear-front", "ear-bottom", "jaw-angle", "jaw-scm", "jaw-mid"),
    r("mental-region", "mental-groove", "mouth-low", "jaw-front", "chin"),

    r("submandibular-region", "chin", "jaw-front", "jaw-mid", "jaw-scm", "hyoid-out", "hyoid"),
    r("anterior-cervical-region", "hyoid", "hyoid-out", "throat-arm"),
    r("sternocleidomastoid-region", "ear-bottom", "mastoid-low", "scm-clavicle", "throat-arm", "hyoid-out", "jaw-scm",
        "jaw-angle"),
    r("lateral-cervical-region", "mastoid-low", "scm-clavicle", "trapezius-clavicle", "neck-low", "nape-out"),
    r("suboccipital-region", "inion", "nuchal-out", "mastoid-low", "nape-out", "c2"),
    r("posterior-cervical-region", "c2", "nape-out", "neck-low", "vertebral-high", "c7"),

    r("suprascapular-region", "neck-low", "trapezius-clavicle", "ac-top", "acromion", "deltoid-spine", "spine-root",
        "vertebral-high"),
    r("clavicular-region", "throat-arm", "scm-clavicle", "trapezius-clavicle", "ac-top", "acromion",
        "deltoid-clavicle"),
    r("deltoid-region", "acromion", "deltoid-clavicle", "throat-arm", "deltoid-top", "deltoid-tip", "deltoid-arm",
        "deltoid-axilla",
        "deltoid-spine"),
    r("scapular-region", "spine-root", "deltoid-spine", "deltoid-axilla", "axilla-back", "inferior-angle"),
    r("interscapular-region", "vertebral-high", "spine-root", "inferior-angle", "vertebral-mid"),
    r("vertebral-region-thoracic", "c7", "vertebral-high", "vertebral-mid", "vertebral-t12", "t12"),
    r("infrascapular-region-medial", "vertebral-mid", "inferior-angle", "rib-12", "vertebral-t12"),
    r("infrascapular-region-lateral", "inferior-angle", "axilla-back", "axilla-flank", "flank-rib", "rib-12"),
    r("axillary-region", "deltoid-axilla", "deltoid-arm", "arm-chest", "axilla-pectoral", "axilla-flank",
        "axilla-back"),

    r("pectoral-region", "chest-split-top", "pectoral-low", "sternum-pectoral"),
    r("lateral-pectoral-region", "arm-chest", "chest-split-top", "pectoral-low", "axilla-pectoral"),
    r("lateral-thoracic-region", "axilla-pectoral", "pectoral-low", "chest-side-low", "flank-chest", "axilla-flank"),
    r("inframammary-region", "sternum-pectoral", "pectoral-low", "chest-side-low", "xiphoid"),
    r("epigastric-region", "xiphoid", "costal-rectus", "rectus-high", "subcostal"),
    r("hypochondriac-region", "xiphoid", "chest-side-low", "flank-chest", "flank-rib", "rectus-high", "costal-rectus"),
    r("umbilical-region", "subcostal", "rectus-high", "rectus-low", "interspinous"),
    r("lateral-abdominal-region", "rectus-high", "flank-rib", "flank-crest", "asis", "rectus-low"),
    r("inguinal-region", "rectus-low", "asis", "pubic-tubercle"),
    r("pubic-region", "interspinous", "rectus-low", "pubic-tubercle", "crotch-front"),

    r("vertebral-region-lumbar", "t12", "vertebral-t12", "vertebral-l5", "l5"),
    r("lumbar-region-medial", "vertebral-t12", "rib-12", "crest-low", "sacrum-corner", "vertebral-l5"),
    r("lumbar-region-lateral", "rib-12", "flank-rib", "flank-crest", "crest-low"),
    r("sacral-region", "l5", "vertebral-l5", "sacrum-corner", "sacrum-side"),
    r("sacroiliac-region", "sacrum-corner", "crest-low", "gluteus-high", "sacrum-side"),
    r("gluteal-region-superior", "crest-low", "flank-crest", "asis", "flank-spine", "hip-mid", "gluteus-high"),
    r("gluteal-region-middle", "gluteus-high", "hip-mid", "hip-deep", "cleft", "sacrum-side"),
    r("gluteal-region-inferior", "cleft", "hip-deep", "hip-back-low", "fold"),
    r("hip-region", "asis", "flank-spine", "hip-mid", "hip-deep", "hip-back-low", "hip-front-low"),

    r("anterior-region-of-arm", "deltoid-top", "elbow-top-high", "elbow-side-high", "deltoid-tip"),
    r("posterior-region-of-arm", "deltoid-tip", "elbow-side-high", "elbow-under-high", "arm-chest", "deltoid-arm"),
    r("anterior-region-of-elbow", "elbow-top-high", "elbow-top-low", "elbow-side-low", "elbow-side-high"),
    r("posterior-region-of-elbow", "elbow-side-high", "elbow-side-low", "forearm-split", "elbow-under-low",
        "elbow-under-high"),
    r("anterior-region-of-forearm-radial", "elbow-top-low", "wrist-top-high", "elbow-side-low"),
    r("posterior-region-of-forearm-radial", "elbow-side-low", "wrist-top-high", "wrist-side-high", "forearm-split"),
    r("posterior-region-of-forearm-ulnar", "forearm-split", "wrist-side-high", "wrist-under-high", "elbow-under-low"),
    r("posterior-region-of-wrist", "wrist-top-high", "wrist-out", "wrist-mid", "wrist-in", "wrist-under-high",
        "wrist-side-high"),
    r("dorsum-of-hand", "wrist-in", "wrist-mid", "wrist-out", "thumb-out", "thumb-web", "index-out", "web-2", "web-3",
        "web-4", "little-in"),
    *digits(net),

    r("femoral-triangle", "asis", "triangle-apex", "crotch-front", "pubic-tubercle"),
    r("anterior-region-of-thigh", "asis", "triangle-apex", "thigh-front-low", "thigh-front-side", "hip-front-low"),
    r("lateral-region-of-thigh", "hip-front-low", "hip-back-low", "thigh-back-side", "thigh-front-side"),
    r("posterior-region-of-thigh-lateral", "fold", "hip-back-low", "thigh-back-side", "popliteal-high"),
    r("anterior-region-of-knee", "thigh-front-low", "thigh-front-side", "leg-front-side", "tuberosity"),
    r("lateral-region-of-knee", "thigh-front-side", "thigh-back-side", "leg-back-side", "leg-front-side"),
    r("posterior-region-of-knee", "popliteal-high", "thigh-back-side", "leg-back-side", "calf-high"),
    r("anterior-region-of-leg-lateral", "tuberosity", "leg-front-side", "ankle-front-side", "ankle-crest"),
    r("lateral-region-of-leg", "leg-front-side", "leg-back-side", "calf-lateral-low", "ankle-back-side",
        "ankle-front-side"),
    r("sural-region-lateral", "calf-high", "leg-back-side", "calf-lateral-low", "calf-split-low"),
    r("posterior-region-of-leg-distal", "calf-split-low", "calf-lateral-low", "ankle-back-side", "ankle-back-high"),
    r("anterior-region-of-ankle", "ankle-crest", "ankle-front-side", "ankle-front-foot", "ankle-front-low"),
    r("lateral-malleolar-region", "ankle-front-side", "ankle-back-side", "heel-side-high", "foot-side-back",
        "foot-side-front", "ankle-front-foot"),
    r("posterior-region-of-ankle", "ankle-back-high", "ankle-back-side", "heel-side-high", "heel-high"),
    r("heel-region", "heel-high", "heel-side-high", "foot-side-back", "heel-under"),
    r("lateral-border-of-foot", "foot-side-back", "foot-side-front", "toe-root-5", "toe-root-under", "heel-under"),
    r("dorsum-of-foot", "ankle-front-low", "ankle-front-foot", "foot-side-front", "toe-root-5", "toe-root-4",
        "toe-root-3",
        "toe-root-2", "toe-root-1", "toe-root-top"),
    r("great-toe", "toe-root-top", "toe-tip", "toe-under-1", "toe-root-1"),
    r("second-toe", "toe-root-1", "toe-under-1", "toe-under-2", "toe-root-2"),
    r("third-toe", "toe-root-2", "toe-under-2", "toe-under-3", "toe-root-3"),
    r("fourth-toe", "toe-root-3", "toe-under-3", "toe-under-4", "toe-root-4"),
    r("little-toe", "toe-root-4", "toe-under-4", "toe-root-under", "toe-root-5"),
]
