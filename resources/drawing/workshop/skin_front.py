"""Surface regions, front: tiles cut from one net of borders, so they cover the silhouette without gaps.

The named borders follow what can be felt: clavicle, sternum, edge of pectoralis major, costal margin,
edge of rectus, inguinal ligament, sartorius, tibial crest.
"""
from figure import CORNER, body_outline, digits, hand, start

OUTLINE = body_outline("front")

net = start("front")
line = net.add

# head
line((0, 21, "cap-mid"), (10, 21.6), (20, 24), (28.4, 29.6, "coronal"), (36, 34.8), "parietal-low")
line("coronal", (33.4, 38), (35, 47), (34.6, 57.6, "brow-out"))
line((0, 57.4, "nasion"), (5.4, 57, "brow-in"), (11.6, 55.4), (19.4, 54), (27.4, 54.6), "brow-out")
line("brow-out", (35, 61.4), (33.6, 65, "orbit-out", CORNER), (28, 69.4, "orbit-zygoma"), (20.6, 71.2), (13, 70),
     (6.4, 66, "orbit-in", CORNER))
line("brow-in", (5.2, 61.6), "orbit-in")
line("orbit-in", (6, 73), (7, 80.4), (9.2, 86), (10.2, 89.4), (8.8, 92.2, "ala"), (5.2, 92.6), (2.4, 94.2),
     (0, 94.4, "subnasale"))
line("tragion", (37.6, 69.6), "orbit-out")
line("orbit-zygoma", (27.4, 79), (24.6, 88, "cheek"))
line("cheek", (31.4, 86.4), (37.2, 83.6), "ear-front")
line("cheek", (19, 92), (13, 94.4, "mouth-fold"))
line("ala", "mouth-fold", (15.6, 98.6), (17.8, 104.4, "mouth-corner"), (16.6, 109.6), (12, 113.6, "mouth-low"),
     (6.4, 115), (0, 115.2, "mental-groove"))
line("cheek", (26.4, 98), (27.2, 108), (26.8, 118.4, "jaw-mid"))
line("mouth-low", (13.8, 120), (14.8, 127.2, "jaw-front"))
line((0, 130, "chin"), (7.6, 129.6), "jaw-front", (20.8, 123.4), "jaw-mid", (31.6, 114, "jaw-scm"), "jaw-angle")

# neck
line((0, 183, "notch"), (5.8, 181.4, "notch-out"), (10.6, 171), (17, 155), (20.6, 144.6, "hyoid-out"), (25.6, 131),
    "jaw-scm")
line((0, 141, "hyoid"), (9, 141.4), "hyoid-out")
line("neck-low", (31, 148), (28.2, 165), (25.4, 182, "scm-clavicle"))
line("notch-out", (14.4, 180.6), "scm-clavicle", (40, 181.4), (56, 178.4), (72, 176),
     (86, 175.2, "trapezius-clavicle"), (96, 175), "ac-top")
line("neck-low", (35.4, 149), (43.4, 160), (56, 168), (70, 172.4), "trapezius-clavicle")

# shoulder girdle and chest
line("notch-out", (12, 185), (14.6, 191.4, "manubrium-out"))
line("manubrium-out", (30, 192.4), (46, 190), (60, 187), (75, 185.4), (88, 185.4, "deltoid-clavicle"), (102, 186.2),
     (111.4, 184.6), "acromion")
line("deltoid-clavicle", (90.2, 197), (93.6, 208, "deltoid-chest"), (98, 219, "deltoid-axilla"), (104, 230.4),
     (110, 240, "deltoid-arm"), (120.6, 256), (132, 272), "deltoid-tip")
line("manubrium-out", (12.8, 202), (11.4, 214, "sternum-2"), (10.2, 236), (10.6, 256),
     (11.4, 277, "sternum-pectoral"), (9.6, 291, "sternum-low"), (5.4, 299), (0, 303, "xiphoid"))
line("sternum-2", (32, 214.4), (54, 213.4), (73, 212, "chest-split"), (84, 210.6), "deltoid-chest")
line("chest-split", (73.4, 230), (71.6, 254), (68.4, 274, "pectoral-low"))
line("deltoid-axilla", (89.4, 228), (82.6, 239), (79, 252, "axilla-pectoral"))
line("axilla-pectoral", (80.4, 262.6), "axilla-flank")
line("axilla-pectoral", (75, 263.4), "pectoral-low", (57, 283.4), (42, 286.6), (25, 283.4), "sternum-pectoral")
line("deltoid-arm", (100, 245.6), "axilla-arm")
line("pectoral-low", (67, 291), (67.4, 308.4, "chest-side-low"))
line("sternum-low", (24, 299.6), (45, 305.8), "chest-side-low", "flank-chest")

# abdomen
line("sternum-low", (20.6, 303.4), (33, 313.4), (44.4, 323, "costal-rectus"))
line("costal-rectus", (46.6, 340), (47.4, 358, "rectus-high"), (47, 378), (45, 400), (42, 420),
     (38, 438, "rectus-low"), (29.6, 458), (20.6, 476), (13, 491.6, "pubic-tubercle"))
line("flank-rib", (63, 357.4), "rectus-high", (24, 358.6), (0, 359, "subcostal"))
line((0, 438, "interspinous"), (20, 438), "rectus-low", (56, 438.4), (74, 440, "asis"))
line("asis", (80, 424), (82.8, 408), "flank-crest")
line("asis", (84, 440.6), "flank-spine")
line("asis", (60, 457.6), (42, 473.4), (25.6, 485.6), "pubic-tubercle", (9.4, 502.4), (4.6, 511.6), "crotch")

# thigh
line("asis", (80.4, 462), (84.4, 490), (87.4, 519, "hip-low-in"), (88.4, 552), (86.6, 592), (82.6, 634), (77.4, 670),
     (73.4, 694, "thigh-lateral-low"))
line("hip-low-in", (95, 527), "hip-low")
line("asis", (70.6, 472), (63, 512), (53, 552), (44.4, 588, "triangle-apex"), (38, 628), (34.4, 664),
     (32.4, 694, "thigh-medial-low"))
line("pubic-tubercle", (19.4, 520), (29, 554), "triangle-apex")

# knee
line("knee-in-high", "thigh-medial-low", (52, 690), "thigh-lateral-low", "knee-out-high")
line("thigh-medial-low", (32.4, 712), (33, 734), (36.4, 757, "leg-medial-high"))
line("thigh-lateral-low", (73, 713), (71, 736), (66.6, 757, "leg-lateral-high"))
line("knee-in-low", (29.6, 755.4), "leg-medial-high", (43, 765), (50.4, 772, "tuberosity"), (58.6, 764.6),
    "leg-lateral-high", (74, 755.4), "knee-out-low")

# leg
line("leg-medial-high", (31.4, 782), (29.6, 812), (31.6, 848), (35, 890), (37, 934, "ankle-medial-high"))
line("tuberosity", (49.4, 800), (47, 850), (45, 900), (44.8, 935.4, "ankle-crest"))
line("leg-lateral-high", (73.4, 782), (74.8, 812), (71.6, 850), (65.4, 894), (61.6, 935, "ankle-lateral-high"))
line("ankle-in-high", "ankle-medial-high", "ankle-crest", "ankle-lateral-high", "ankle-out-high")
line("ankle-medial-high", (37.6, 950), (38.4, 967, "ankle-medial-low"))
line("ankle-lateral-high", (61.8, 950), (62, 966, "ankle-lateral-low"))
line("ankle-in-low", "ankle-medial-low", (50, 968.6), "ankle-lateral-low", "ankle-out-low")

# toes
line("toe-root-in", (40, 978.6), (49.6, 983.4, "toe-root-1"), (55, 982), (60.4, 984.6, "toe-root-2"), (65, 982.4),
     (70, 984.4, "toe-root-3"), (74.6, 982.2), (79.2, 984, "toe-root-4"), (82.8, 982.8), "toe-root-out")
for i in (1, 2, 3, 4):
    line(f"toe-root-{i}", f"toe-cleft-{i}")

# arm and forearm
line("elbow-in-high", (139, 361), "elbow-out-high")
line("elbow-in-low", (135, 409), (149, 418, "cubital-apex"), (161.6, 408.6), "elbow-out-low")
line("cubital-apex", (152.4, 446), (159.6, 482), "wrist-mid-high")

# palm
line("wrist-mid", hand(14, 3.4), hand(27, 7.6), hand(38, 15.4), "thumb-web")
line("wrist-mid", hand(14, -2.6), hand(29, -5.6), hand(42, -10), hand(49, -16.4), "hypothenar-out")

r = net.region
SHAPES = [
    r("parietal-region", "crown", "parietal-low", "coronal", "cap-mid"),
    r("frontal-region", "cap-mid", "coronal", "brow-out", "brow-in", "nasion"),
    r("temporal-region", "parietal-low", "ear-top", "tragion", "orbit-out", "brow-out", "coronal"),
    r("auricular-region", "ear-top", "ear-outer", "ear-bottom", "ear-front", "tragion"),
    r("orbital-region", "brow-in", "brow-out", "orbit-out", "orbit-zygoma", "orbit-in"),
    r("nasal-region", "nasion", "brow-in", "orbit-in", "ala", "subnasale"),
    r("infraorbital-region", "orbit-in", "orbit-zygoma", "cheek", "mouth-fold", "ala"),
    r("zygomatic-region", "orbit-zygoma", "orbit-out", "tragion", "ear-front", "cheek"),
    r("oral-region", "subnasale", "ala", "mouth-fold", "mouth-low", "mental-groove"),
    r("buccal-region", "cheek", "jaw-mid", "jaw-front", "mouth-low", "mouth-fold"),
    r("parotideomasseteric-region", "cheek", "ear-front", "ear-bottom", "jaw-angle", "jaw-scm", "jaw-mid"),
    r("mental-region", "mental-groove", "mouth-low", "jaw-front", "chin"),

    r("submandibular-region", "chin", "jaw-front", "jaw-mid", "jaw-scm", "hyoid-out", "hyoid"),
    r("anterior-cervical-region", "hyoid", "hyoid-out", "notch-out", "notch"),
    r("sternocleidomastoid-region", "jaw-scm", "jaw-angle", "neck-low", "scm-clavicle", "notch-out", "hyoid-out"),
    r("lateral-cervical-region", "neck-low", "trapezius-clavicle", "scm-clavicle"),
    r("suprascapular-region", "neck-low", "ac-top", "trapezius-clavicle"),

    r("clavicular-region", "notch-out", "scm-clavicle", "trapezius-clavicle", "ac-top", "acromion",
        "deltoid-clavicle", "manubrium-out"),
    r("infraclavicular-fossa", "manubrium-out", "deltoid-clavicle", "deltoid-chest", "chest-split", "sternum-2"),
    r("presternal-region", "notch", "notch-out", "manubrium-out", "sternum-2", "sternum-pectoral", "sternum-low",
        "xiphoid"),
    r("pectoral-region", "sternum-2", "chest-split", "pectoral-low", "sternum-pectoral"),
    r("lateral-pectoral-region", "chest-split", "deltoid-chest", "deltoid-axilla", "axilla-pectoral", "pectoral-low"),
    r("axillary-region", "deltoid-axilla", "deltoid-arm", "axilla-arm", "armpit", "axilla-flank", "axilla-pectoral"),
    r("lateral-thoracic-region", "axilla-pectoral", "axilla-flank", "flank-chest", "chest-side-low", "pectoral-low"),
    r("inframammary-region", "sternum-pectoral", "pectoral-low", "chest-side-low", "sternum-low"),

    r("epigastric-region", "xiphoid", "sternum-low", "costal-rectus", "rectus-high", "subcostal"),
    r("hypochondriac-region", "sternum-low", "chest-side-low", "flank-chest", "flank-rib", "rectus-high",
        "costal-rectus"),
    r("umbilical-region", "subcostal", "rectus-high", "rectus-low", "interspinous"),
    r("lateral-abdominal-region", "rectus-high", "flank-rib", "flank-crest", "asis", "rectus-low"),
    r("inguinal-region", "rectus-low", "asis", "pubic-tubercle"),
    r("pubic-region", "interspinous", "rectus-low", "pubic-tubercle", "crotch"),

    r("deltoid-region", "acromion", "deltoid-end", "deltoid-tip", "deltoid-arm", "deltoid-axilla", "deltoid-chest",
        "deltoid-clavicle"),
    r("anterior-region-of-arm", "deltoid-arm", "deltoid-tip", "deltoid-end", "elbow-out-high", "elbow-in-high",
        "axilla-arm"),
    r("anterior-region-of-elbow", "elbow-in-high", "elbow-out-high", "elbow-out-low", "cubital-apex", "elbow-in-low"),
    r("anterior-region-of-forearm-radial", "cubital-apex", "elbow-out-low", "wrist-out-high", "wrist-mid-high"),
    r("anterior-region-of-forearm-ulnar", "elbow-in-low", "cubital-apex", "wrist-mid-high", "wrist-in-high"),
    r("anterior-region-of-wrist", "wrist-in-high", "wrist-mid-high", "wrist-out-high", "wrist-out", "wrist-mid",
        "wrist-in"),
    r("thenar-eminence", "wrist-mid", "wrist-out", "thumb-out", "thumb-web"),
    r("hypothenar-eminence", "wrist-mid", "hypothenar-out", "wrist-in"),
    r("palm", "wrist-mid", "thumb-web", "index-out", "web-2", "web-3", "web-4", "little-in", "hypothenar-out"),
    *digits(net),

    r("gluteal-region-superior", "asis", "flank-crest", "flank-spine"),
    r("hip-region", "asis", "flank-spine", "hip-low", "hip-low-in"),
    r("femoral-triangle", "asis", "triangle-apex", "pubic-tubercle"),
    r("anterior-region-of-thigh", "asis", "hip-low-in", "thigh-lateral-low", "thigh-medial-low", "triangle-apex"),
    r("lateral-region-of-thigh", "hip-low-in", "hip-low", "knee-out-high", "thigh-lateral-low"),
    r("medial-region-of-thigh", "pubic-tubercle", "triangle-apex", "thigh-medial-low", "knee-in-high", "crotch"),
    r("anterior-region-of-knee", "thigh-medial-low", "thigh-lateral-low", "leg-lateral-high", "tuberosity",
        "leg-medial-high"),
    r("medial-region-of-knee", "knee-in-high", "thigh-medial-low", "leg-medial-high", "knee-in-low"),
    r("lateral-region-of-knee", "thigh-lateral-low", "knee-out-high", "knee-out-low", "leg-lateral-high"),
    r("medial-region-of-leg", "knee-in-low", "leg-medial-high", "ankle-medial-high", "ankle-in-high"),
    r("anterior-region-of-leg-medial", "leg-medial-high", "tuberosity", "ankle-crest", "ankle-medial-high"),
    r("anterior-region-of-leg-lateral", "tuberosity", "leg-lateral-high", "ankle-lateral-high", "ankle-crest"),
    r("lateral-region-of-leg", "leg-lateral-high", "knee-out-low", "ankle-out-high", "ankle-lateral-high"),
    r("medial-malleolar-region", "ankle-in-high", "ankle-medial-high", "ankle-medial-low", "ankle-in-low"),
    r("anterior-region-of-ankle", "ankle-medial-high", "ankle-crest", "ankle-lateral-high", "ankle-lateral-low",
        "ankle-medial-low"),
    r("lateral-malleolar-region", "ankle-lateral-high", "ankle-out-high", "ankle-out-low", "ankle-lateral-low"),
    r("dorsum-of-foot", "ankle-in-low", "ankle-medial-low", "ankle-lateral-low", "ankle-out-low", "toe-root-out",
        "toe-root-4", "toe-root-3",
      "toe-root-2", "toe-root-1", "toe-root-in"),
    r("great-toe", "toe-root-in", "toe-root-1", "toe-cleft-1", "toe-1-tip"),
    r("second-toe", "toe-root-1", "toe-root-2", "toe-cleft-2", "toe-2-tip", "toe-cleft-1"),
    r("third-toe", "toe-root-2", "toe-root-3", "toe-cleft-3", "toe-3-tip", "toe-cleft-2"),
    r("fourth-toe", "toe-root-3", "toe-root-4", "toe-cleft-4", "toe-4-tip", "toe-cleft-3"),
    r("little-toe", "toe-root-4", "toe-root-out", "toe-5-tip", "toe-cleft-4"),
]
