"""Head and neck from the right side: silhouette and surface regions, cut from one net so that nothing gaps.

Five units here are one unit of the body; x = 0 stands in the ear notch, +x is forward, y runs down from the crown to a
straight cut across the base of the neck. Levels follow the front and back views (brow, ear notch, mouth, chin, C7);
what lies between is drawn from memory. The borders follow what can be felt: temporal line, cheek arch, edge of the jaw,
both edges of sternocleidomastoid, front edge of trapezius, clavicle. Ear, lids and lips are drawn as lines of the skin.
"""
import re

from figure import CORNER, Net
from sidepen import Shape, outline, stroke

SHIFT = 600  # figure.py and fibres.py draw on x >= 0 only: shapes are made to the right of that line and moved back


def moved(d, dx=-SHIFT):
    """Path data pushed sideways."""
    return re.sub(r"(-?[\d.]+) (-?[\d.]+)", lambda m: f"{float(m[1]) + dx:.2f}".rstrip("0").rstrip(".") + " " + m[2], d)


BASE = 950  # the cut across the base of the neck

# base of the neck at the back, up the nape and the back of the head, crown, face, chin, throat, base at the front
PROFILE = [
    (-338, 950, "base-back", CORNER), (-322, 880), (-306, 822, "back-t1"), (-284, 756), (-263, 706, "c7"),
    (-243, 660), (-230, 612), (-226, 566), (-232, 528, "c2"), (-246, 486, "nape-hollow"), (-268, 440),
    (-289, 400, "inion"), (-304, 356), (-312, 306), (-310, 256), (-299, 205, "lambda"), (-272, 139), (-228, 79),
    (-168, 34), (-98, 8), (-25, 0, "crown"), (48, 10), (116, 38, "bregma"), (172, 81), (212, 130), (236, 180),
    (246, 226), (252, 256, "glabella"), (251, 276), (243, 296, "nasion"), (247, 316), (262, 346), (283, 380),
    (307, 414), (318, 430, "nose-tip"), (316, 445), (303, 456), (286, 461), (273, 465, "subnasale", CORNER),
    (271, 480), (275, 496, "lip-top"), (282, 505), (282, 515), (269, 521, "mouth", CORNER), (279, 528), (277, 542),
    (263, 557), (257, 571, "mental-groove"), (262, 588), (270, 608), (269, 630), (257, 648, "chin"), (236, 658),
    (205, 664), (168, 672), (138, 684), (120, 699), (112, 715, "hyoid"), (113, 737), (120, 760, "larynx"), (116, 782),
    (107, 806), (104, 830), (110, 866), (122, 896), (133, 911, "notch"), (146, 926), (156, 950, "base-front", CORNER),
]

net = Net()


def line(*points):
    net.add(*[(p[0] + SHIFT, *p[1:]) if isinstance(p, tuple) and not isinstance(p[0], str) else p for p in points])


line(*PROFILE)
FRONT = 156
for a, b in [((-338, BASE, "base-back", CORNER), (-306, BASE, "base-vertebral", CORNER)),
             ((-306, BASE, "base-vertebral", CORNER), (-126, BASE, "base-scapular", CORNER)),
             ((-126, BASE, "base-scapular", CORNER), (124, BASE, "base-clavicular", CORNER)),
             ((124, BASE, "base-clavicular", CORNER), (FRONT, BASE, "base-front", CORNER))]:
    line(a, b)

# vault
line("bregma", (98, 84), (72, 128, "coronal"), (56, 176, "stephanion"))
line("stephanion", (96, 178), (138, 196), (166, 226), (176, 262, "brow-out"))
line("brow-out", (202, 258), (222, 261), (233, 270, "brow-in"), (238, 284), "nasion")
line("stephanion", (4, 164), (-58, 178), (-112, 214), (-142, 258), (-152, 306, "temporal-back"))
line("lambda", (-256, 236), (-206, 276), "temporal-back")
line("temporal-back", (-146, 342), (-124, 356), (-96, 352, "ear-back"))
line("temporal-back", (-160, 356), (-156, 394), (-138, 428, "nuchal-out"))
line("inion", (-232, 402), (-184, 412), "nuchal-out")

# ear
line("ear-back", (-92, 318), (-78, 292), (-54, 280), (-26, 286), (-9, 308), (-8, 336, "ear-front-high"), (-1, 352),
     (2, 366, "tragus-top"), (13, 378), (10, 398, "tragus"), (3, 412), (9, 428), (11, 448, "ear-front-low"), (8, 466),
     (-6, 475), (-20, 466, "ear-bottom", CORNER))
line(("ear-bottom", CORNER), (-34, 440), (-58, 412), (-82, 384), "ear-back")

# face
line("ear-front-high", (24, 340), (66, 346), (110, 348), (144, 340, "orbit-zygoma"))
line("brow-out", (160, 286), (146, 314), "orbit-zygoma", (152, 362), (172, 378), (202, 378), (226, 360), (236, 332, "orbit-in"),
     (240, 310), "nasion")
line("orbit-in", (240, 358), (244, 384), (248, 404), (249, 424, "ala-top"), (238, 440), (240, 458), (254, 466, "ala"),
     (264, 467), "subnasale")
line("orbit-zygoma", (136, 362), (128, 396), (126, 430, "cheek"))
line("cheek", (88, 428), (50, 424), "tragus")
line("cheek", (166, 442), (204, 452), (232, 462, "mouth-fold"))
line("ala", (243, 467), "mouth-fold", (219, 486), (210, 520), (214, 556, "mouth-low"), (230, 568), "mental-groove")
line("cheek", (128, 470), (134, 520), (146, 566), (152, 604, "jaw-mid"))
line("mouth-low", (204, 590), (200, 622, "jaw-front"))
line("chin", (230, 638), "jaw-front", (176, 612), "jaw-mid", (112, 593), (72, 578, "jaw-scm"), (50, 560, "angle"))

# neck: sternocleidomastoid from the mastoid process to the breastbone and the clavicle
line("angle", (36, 530), (14, 500), (-6, 482, "scm-high"), (-16, 473), "ear-bottom")
line("nuchal-out", (-120, 452), (-88, 474, "scm-back-high"))
line("scm-high", (-46, 483), "scm-back-high")
line("scm-back-high", (-72, 540), (-46, 606), (-16, 684), (14, 766), (36, 840), (48, 893, "scm-clavicle"))
line("jaw-scm", (72, 634), (72, 700, "scm-hyoid"), (76, 770), (86, 840), (108, 894), "notch")
line("scm-hyoid", (92, 711), "hyoid")
line("nuchal-out", (-160, 452), (-186, 492), (-196, 528, "nape-out"))
line("c2", (-216, 530), "nape-out")
line("nape-out", (-176, 588), (-154, 660), (-138, 730), (-124, 796, "trapezius-front"), (-104, 846), (-70, 878), (-36, 886, "acromion"))
line("c7", (-244, 714), (-222, 722, "vertebral-high"))
line("vertebral-high", (-178, 756), "trapezius-front")
line("vertebral-high", (-258, 802), (-286, 876), "base-vertebral")
# clavicle and point of the shoulder
line("notch", (92, 900), "scm-clavicle", (2, 888), "acromion")
line("acromion", (-84, 912), "base-scapular")
line("notch", (124, 926), "base-clavicular")


def region(name, *stations):
    made = net.region(name, *stations)
    return Shape(name, "skin", moved(made.d), LINES.get(name, []))


def strokes(*lines):
    return [stroke(list(points)) for points in lines]


LINES = {  # what the eye looks for in a face; open lines within a region
    "auricular-region": strokes(
        [(-2, 368), (-20, 362), (-34, 352), (-22, 338), (-14, 318), (-26, 300), (-52, 294), (-74, 308), (-82, 338),
         (-78, 364), (-64, 388), (-46, 410), (-30, 428), (-20, 444)],
        [(-22, 324), (-40, 316), (-54, 330), (-60, 356), (-52, 384), (-34, 408), (-18, 420), (-6, 414)],
        [(-58, 340), (-48, 338), (-38, 342)],
        [(2, 366), (-8, 378), (-12, 394), (-8, 408), (3, 412)]),
    "orbital-region": strokes(
        [(166, 326), (182, 314), (202, 309), (217, 318), (220, 326)],
        [(166, 326), (184, 334), (204, 338), (217, 333)],
        [(209, 311), (204, 322), (208, 337)],
        [(162, 312), (182, 300), (204, 298), (222, 306)]),
    "nasal-region": strokes([(258, 462), (266, 455), (282, 453), (290, 458)], [(249, 424), (262, 420), (272, 428), (274, 444)]),
    "oral-region": strokes([(269, 521), (254, 523), (240, 525), (228, 529)], [(275, 496), (256, 508), (228, 527)],
                           [(263, 557), (248, 548), (228, 531)]),
}

SHAPES = [
    region("frontal-region", "bregma", "glabella", "nasion", "brow-in", "brow-out", "stephanion"),
    region("parietal-region", "lambda", "crown", "bregma", "stephanion", "temporal-back"),
    region("temporal-region", "stephanion", "brow-out", "orbit-zygoma", "ear-front-high", "ear-back", "temporal-back"),
    region("occipital-region", "inion", "lambda", "temporal-back", "nuchal-out"),
    region("auricular-region", "ear-back", "ear-front-high", "tragus", "ear-bottom"),
    region("mastoid-region", "temporal-back", "ear-back", "ear-bottom", "scm-high", "scm-back-high", "nuchal-out"),
    region("orbital-region", "brow-out", "brow-in", "nasion", "orbit-in", "orbit-zygoma"),
    region("nasal-region", "nasion", "nose-tip", "subnasale", "ala", "ala-top", "orbit-in"),
    region("infraorbital-region", "orbit-zygoma", "orbit-in", "ala", "mouth-fold", "cheek"),
    region("zygomatic-region", "ear-front-high", "orbit-zygoma", "cheek", "tragus"),
    region("oral-region", "subnasale", "mouth", "mental-groove", "mouth-low", "mouth-fold", "ala"),
    region("mental-region", "mental-groove", "chin", "jaw-front", "mouth-low"),
    region("buccal-region", "cheek", "mouth-fold", "mouth-low", "jaw-front", "jaw-mid"),
    region("parotideomasseteric-region", "tragus", "cheek", "jaw-mid", "jaw-scm", "angle", "scm-high", "ear-bottom"),
    region("submandibular-region", "chin", "hyoid", "scm-hyoid", "jaw-scm", "jaw-mid", "jaw-front"),
    region("anterior-cervical-region", "hyoid", "larynx", "notch", "scm-hyoid"),
    region("sternocleidomastoid-region", "scm-high", "angle", "jaw-scm", "scm-hyoid", "notch", "scm-clavicle",
           "scm-back-high"),
    region("lateral-cervical-region", "scm-back-high", "scm-clavicle", "acromion", "trapezius-front", "nape-out",
           "nuchal-out"),
    region("suboccipital-region", "c2", "nape-hollow", "inion", "nuchal-out", "nape-out"),
    region("posterior-cervical-region", "c7", "c2", "nape-out", "trapezius-front", "vertebral-high"),
    region("suprascapular-region", "vertebral-high", "trapezius-front", "acromion", "base-scapular", "base-vertebral"),
    region("vertebral-region-thoracic", "base-back", "c7", "vertebral-high", "base-vertebral"),
    region("clavicular-region", "notch", "base-clavicular", "base-scapular", "acromion", "scm-clavicle"),
    region("presternal-region", "notch", "base-front", "base-clavicular"),
]



ROUND = ["crown", "base-front", "base-clavicular", "base-scapular", "base-vertebral", "base-back"]
OUTLINE = moved(outline(*net.walk(ROUND)))
