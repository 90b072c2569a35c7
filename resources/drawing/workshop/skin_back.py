"""Surface regions, back: tiles cut from one net of borders, so they cover the silhouette without gaps.

The named borders follow what can be felt: nuchal line, spine and borders of the scapula, twelfth rib, iliac
crest, edges of the sacrum, upper edge of gluteus maximus, gluteal fold, hamstring parting, calf bellies.
"""
from figure import body_outline, digits, start

OUTLINE = body_outline("back")

net = start("back")
line = net.add

# head and neck
line((0, 47, "lambda"), (12, 50), (24.4, 57.6), (36, 66.6, "asterion"))
line("parietal-low", (39.2, 52), "asterion", (37.4, 77), (34.6, 87.4, "nuchal-out"))
line("asterion", "tragion")
line("nuchal-out", (36, 94.4), "mastoid-low")
line((0, 79, "inion"), (11, 80), (23, 83), "nuchal-out")
line((0, 103, "c2"), (14, 102.4), (30.4, 98.6, "nape-out"), "mastoid-low")
line("nape-out", (27.6, 109), (28, 121), "neck-low")
line((0, 146, "c7"), (9.6, 145.6, "vertebral-high"), (23, 143.6), "neck-root")

# shoulder blade and back
line("neck-root", (37, 156), (38.6, 172), (41, 187.6, "spine-root"))
line("spine-root", (58, 189), (76, 188.4, "deltoid-spine"), (92, 185.4), (105, 181.4), "acromion")
line("spine-root", (43, 206), (45.4, 228), (49, 250, "inferior-angle"))
line("vertebral-high", (11, 180), (10.6, 220), (10, 254, "vertebral-mid"), (9.4, 290), (9.4, 326, "vertebral-t12"),
     (9.8, 370), (10.4, 417.4, "vertebral-l5"))
line("vertebral-mid", (30, 253.4), "inferior-angle", (63, 251.6), (76.6, 248.6, "axilla-back"))
line("deltoid-spine", (87, 202), (98, 217.4, "deltoid-axilla"), (106, 230), (113, 241, "deltoid-arm"), (122.6, 256),
     (132.6, 271), "deltoid-tip")
line("deltoid-axilla", (89.2, 227), (81.4, 238), "axilla-back", (79.4, 260.6), "axilla-flank")
line("deltoid-arm", (101.6, 246.6), "axilla-arm")
line("inferior-angle", (46.4, 280), (44.6, 312), (44, 344.6, "rib-12"))
line((0, 326.4, "t12"), "vertebral-t12", (26, 333.4), "rib-12", (60, 352), "flank-rib")

# loin and pelvis
line("rib-12", (43.6, 366), (41.4, 390), (36.6, 413, "crest-low"))
line("flank-crest", (70, 391), (56.4, 395), (45.6, 403), "crest-low", (23, 417, "sacrum-corner"),
    "vertebral-l5", (0, 418, "l5"))
line("sacrum-corner", (22, 430), (20.2, 445), (17.6, 459, "sacrum-side"), (13.2, 469.6, "sacrum-angle"), (6.4, 476.8),
     (0, 479.4, "sacrum-low"))
line("crest-low", (40.8, 423), (41, 434.6, "gluteus-high"), (35.6, 446.6), (27.4, 455), "sacrum-side")
line("sacrum-angle", (9.4, 485), (5, 496), (0, 503.6, "cleft"))
line("gluteus-high", (57, 444), (73.6, 460), (83.6, 483, "hip-mid"))
line("flank-spine", (88, 458), "hip-mid", (83.4, 510, "hip-deep"), (87, 534, "hip-low-in"))
line("hip-low-in", (95, 536), "hip-low")
line("cleft", (22, 499.6), (46, 502), (66, 507.4), "hip-deep")
line("hip-low-in", (71, 542.4), (47.4, 548.6, "fold-mid"), (29, 549.4), (14, 546.6, "fold-medial"), "fold-in")

# thigh
line("hip-low-in", (87.6, 566), (85.4, 604), (81, 646), (74.6, 692, "thigh-lateral-low"))
line("fold-mid", (50, 600), (51.6, 646), (52, 690, "popliteal-high"))
line("fold-medial", (18.4, 580), (22.4, 618), (26, 656), (30, 692, "thigh-medial-low"))

# knee
line("knee-in-high", "thigh-medial-low", "popliteal-high", "thigh-lateral-low", "knee-out-high")
line("thigh-medial-low", (32.4, 714), (32.4, 736), (31.4, 756, "leg-medial-high"))
line("thigh-lateral-low", (72, 714), (72, 736), (73.4, 756, "leg-lateral-high"))
line("knee-in-low", "leg-medial-high", (41, 762), (52, 764.6, "calf-high"), (63, 762),
    "leg-lateral-high", "knee-out-low")

# leg
line("leg-medial-high", (28, 784), (26.8, 815), (30, 853, "calf-medial-low"), (34.4, 892),
     (38, 934, "ankle-medial-high"))
line("leg-lateral-high", (77, 784), (77.6, 812), (73.6, 842, "calf-lateral-low"), (66, 890),
     (60.4, 934, "ankle-lateral-high"))
line("calf-high", (51.6, 800), (50.8, 848, "calf-split-low"))
line("calf-medial-low", (36.6, 863), (44.6, 860), "calf-split-low", (57.4, 851.6), (66.4, 851), "calf-lateral-low")
line("ankle-in-high", "ankle-medial-high", (49.4, 935.4), "ankle-lateral-high", "ankle-out-high")
line("ankle-medial-high", (40.4, 949), (39, 965.4, "heel-medial-high"))
line("ankle-lateral-high", (58.6, 949), (60.6, 965.8, "heel-lateral-high"))
line("ankle-in-low", "heel-medial-high", (50, 967), "heel-lateral-high", (66.4, 965.6, "foot-lateral-high"),
    "ankle-out-low")
line("foot-lateral-high", (69, 974), (69.8, 985), "heel-out")

# arm and forearm
line("elbow-in-high", (139, 358), "elbow-out-high")
line("elbow-in-low", (147, 405.4, "elbow-mid-low"), "elbow-out-low")
line("elbow-mid-low", (154, 440), (161, 478), "wrist-mid-high")

r = net.region
SHAPES = [
    r("parietal-region", "crown", "parietal-low", "asterion", "lambda"),
    r("occipital-region", "lambda", "asterion", "nuchal-out", "inion"),
    r("temporal-region", "parietal-low", "ear-top", "tragion", "asterion"),
    r("auricular-region", "ear-top", "ear-outer", "ear-bottom", "ear-front", "tragion"),
    r("mastoid-region", "asterion", "tragion", "ear-front", "ear-bottom", "mastoid-low", "nuchal-out"),
    r("suboccipital-region", "inion", "nuchal-out", "mastoid-low", "nape-out", "c2"),
    r("posterior-cervical-region", "c2", "nape-out", "neck-low", "neck-root", "vertebral-high", "c7"),
    r("lateral-cervical-region", "nape-out", "mastoid-low", "neck-low"),

    r("suprascapular-region", "neck-root", "ac-top", "acromion", "deltoid-spine", "spine-root"),
    r("scapular-region", "spine-root", "deltoid-spine", "deltoid-axilla", "axilla-back", "inferior-angle"),
    r("interscapular-region", "vertebral-high", "neck-root", "spine-root", "inferior-angle", "vertebral-mid"),
    r("vertebral-region-thoracic", "c7", "vertebral-high", "vertebral-mid", "vertebral-t12", "t12"),
    r("axillary-region", "deltoid-axilla", "deltoid-arm", "axilla-arm", "armpit", "axilla-flank", "axilla-back"),
    r("infrascapular-region-medial", "vertebral-mid", "inferior-angle", "rib-12", "vertebral-t12"),
    r("infrascapular-region-lateral", "inferior-angle", "axilla-back", "axilla-flank", "flank-rib", "rib-12"),
    r("vertebral-region-lumbar", "t12", "vertebral-t12", "vertebral-l5", "l5"),
    r("lumbar-region-medial", "vertebral-t12", "rib-12", "crest-low", "sacrum-corner", "vertebral-l5"),
    r("lumbar-region-lateral", "rib-12", "flank-rib", "flank-crest", "crest-low"),

    r("sacral-region", "l5", "vertebral-l5", "sacrum-corner", "sacrum-side", "sacrum-angle", "sacrum-low"),
    r("sacroiliac-region", "sacrum-corner", "crest-low", "gluteus-high", "sacrum-side"),
    r("coccygeal-region", "sacrum-low", "sacrum-angle", "cleft"),
    r("gluteal-region-superior", "crest-low", "flank-crest", "flank-spine", "hip-mid", "gluteus-high"),
    r("gluteal-region-middle", "gluteus-high", "hip-mid", "hip-deep", "cleft", "sacrum-angle", "sacrum-side"),
    r("gluteal-region-inferior", "cleft", "hip-deep", "hip-low-in", "fold-mid", "fold-medial", "fold-in", "crotch"),
    r("hip-region", "flank-spine", "hip-low", "hip-low-in", "hip-deep", "hip-mid"),

    r("deltoid-region", "acromion", "deltoid-end", "deltoid-tip", "deltoid-arm", "deltoid-axilla", "deltoid-spine"),
    r("posterior-region-of-arm", "deltoid-arm", "deltoid-tip", "deltoid-end", "elbow-out-high", "elbow-in-high",
        "axilla-arm"),
    r("posterior-region-of-elbow", "elbow-in-high", "elbow-out-high", "elbow-out-low", "elbow-mid-low", "elbow-in-low"),
    r("posterior-region-of-forearm-radial", "elbow-mid-low", "elbow-out-low", "wrist-out-high", "wrist-mid-high"),
    r("posterior-region-of-forearm-ulnar", "elbow-in-low", "elbow-mid-low", "wrist-mid-high", "wrist-in-high"),
    r("posterior-region-of-wrist", "wrist-in-high", "wrist-mid-high", "wrist-out-high", "wrist-out", "wrist-mid",
        "wrist-in"),
    r("dorsum-of-hand", "wrist-in", "wrist-mid", "wrist-out", "thumb-out", "thumb-web", "index-out", "web-2", "web-3",
        "web-4", "little-in"),
    *digits(net),

    r("posterior-region-of-thigh-medial", "fold-medial", "fold-mid", "popliteal-high", "thigh-medial-low"),
    r("posterior-region-of-thigh-lateral", "fold-mid", "hip-low-in", "thigh-lateral-low", "popliteal-high"),
    r("lateral-region-of-thigh", "hip-low-in", "hip-low", "knee-out-high", "thigh-lateral-low"),
    r("medial-region-of-thigh", "fold-in", "fold-medial", "thigh-medial-low", "knee-in-high"),
    r("posterior-region-of-knee", "thigh-medial-low", "popliteal-high", "thigh-lateral-low", "leg-lateral-high",
        "calf-high", "leg-medial-high"),
    r("medial-region-of-knee", "knee-in-high", "thigh-medial-low", "leg-medial-high", "knee-in-low"),
    r("lateral-region-of-knee", "thigh-lateral-low", "knee-out-high", "knee-out-low", "leg-lateral-high"),
    r("sural-region-medial", "leg-medial-high", "calf-high", "calf-split-low", "calf-medial-low"),
    r("sural-region-lateral", "calf-high", "leg-lateral-high", "calf-lateral-low", "calf-split-low"),
    r("medial-region-of-leg", "knee-in-low", "leg-medial-high", "calf-medial-low", "ankle-medial-high",
        "ankle-in-high"),
    r("lateral-region-of-leg", "leg-lateral-high", "knee-out-low", "ankle-out-high", "ankle-lateral-high",
        "calf-lateral-low"),
    r("posterior-region-of-leg-distal", "calf-medial-low", "calf-split-low", "calf-lateral-low", "ankle-lateral-high",
        "ankle-medial-high"),
    r("medial-malleolar-region", "ankle-in-high", "ankle-medial-high", "heel-medial-high", "ankle-in-low"),
    r("posterior-region-of-ankle", "ankle-medial-high", "ankle-lateral-high", "heel-lateral-high", "heel-medial-high"),
    r("lateral-malleolar-region", "ankle-lateral-high", "ankle-out-high", "ankle-out-low", "foot-lateral-high",
        "heel-lateral-high"),
    r("heel-region", "ankle-in-low", "heel-medial-high", "heel-lateral-high", "foot-lateral-high", "heel-out"),
    r("lateral-border-of-foot", "foot-lateral-high", "ankle-out-low", "heel-out"),
]
