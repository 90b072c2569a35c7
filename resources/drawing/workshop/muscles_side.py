"""Muscles of the side view: trunk, shoulder girdle, hip and thigh, each layer from deep to superficial.

The patient's right side, +x forward, the arm raised straight forward. A muscle is given by its two side edges, both from
origin to insertion; fibre strokes run between them. What lies on the far side of the trunk or limb is left out, or drawn
only as far as it shows. Ends of hip and thigh muscles follow the model attachments the project starts from where those
have the muscle; outlines are drawn from memory of anatomy.
"""
import math

from bones_side import CUTS, LINES, PARTS, WIDTHS
from fibres import longest_run, sampled
from sidepen import Shape, closed, segments, stroke

SHAPES = []
SUPERFICIAL, INTERMEDIATE, DEEP = "superficial-muscle", "intermediate-muscle", "deep-muscle"
STEPS = 40


def along(points, count):
    """`count` points at even distances on the smooth curve through `points`."""
    fine = sampled(points[0], segments(list(points)))
    dist = [0.0]
    for p, q in zip(fine, fine[1:]):
        dist.append(dist[-1] + math.dist(p, q))
    out, j = [], 0
    for i in range(count):
        want = dist[-1] * i / (count - 1)
        while j < len(fine) - 2 and dist[j + 1] < want:
            j += 1
        t = (want - dist[j]) / ((dist[j + 1] - dist[j]) or 1e-9)
        out.append(tuple(fine[j][k] + (fine[j + 1][k] - fine[j][k]) * t for k in (0, 1)))
    return out


def flow(a, b, count, lo, hi, start, end, polygon):
    """Fibre strokes between the edges a and b, as in the other views, with no midline to stop at."""
    ea, eb = along(a, STEPS + 1), along(b, STEPS + 1)
    ends = [along([ea[i], *line, eb[i]], 101) if line else None for line, i in ((start, 0), (end, STEPS))]
    out = []
    for n in range(1, count + 1):
        t = n / (count + 1)
        line = [tuple(p[k] * (1 - t) + q[k] * t for k in (0, 1)) for p, q in zip(ea, eb)]
        pull = [tuple(c[round(t * 100)][k] - line[i][k] for k in (0, 1)) if c else (0, 0)
                for c, i in zip(ends, (0, STEPS))]
        line = [tuple(p[k] + pull[0][k] * (1 - i / STEPS) ** 2 + pull[1][k] * (i / STEPS) ** 2 for k in (0, 1))
                for i, p in enumerate(line)][round(lo * STEPS):round(hi * STEPS) + 1]
        run = longest_run(line, polygon)
        line = run if len(run) == len(line) else run[1:-1]
        if len(line) < 6:
            continue
        step = max(1, (len(line) - 1) // 7)
        picked = line[::step]
        if len(line) - 1 - step * (len(picked) - 1) > step / 2:
            picked.append(line[-1])
        out.append(stroke(picked))
    return out


def muscle_side(sid, layer, a, b, fibres=4, start=(), end=(), piece=1, lo=0.06, hi=0.94, sharp=(), rounded="", z=0):
    """A muscle given by its side edges a and b, both from origin to insertion.

    Outline: edge a, the insertion line `end`, edge b backwards, the origin line `start`. Its four ends are corners,
    but for those of a side named in `rounded` ("start", "end" or "both"); `sharp` adds corners by index in the outline.
    """
    points = list(a) + list(end) + list(reversed(b)) + list(start)
    na, ne, nb = len(a), len(end), len(b)
    corners = set(sharp)
    if rounded not in ("start", "both"):
        corners |= {0, na + ne + nb - 1}
    if rounded not in ("end", "both"):
        corners |= {na - 1, na + ne}
    polygon = sampled(points[0], segments(points, True, corners))
    return Shape(sid, layer, closed(points, corners),
                 flow(a, b, fibres, lo, hi, list(reversed(start)), end, polygon), piece, z)


def muscle(*args, **kwargs):
    SHAPES.append(muscle_side(*args, **kwargs))


# =================================================================================================================
# deep
# =================================================================================================================
# ---- rib spaces, between the edges of the ribs as they are drawn
def edge(n, side, first, last):
    """Points on the lower (side 1) or upper (-1) edge of a rib's line, from one part of it to another."""
    line = LINES[n]
    return [(line[i][0], line[i][1] + side * (WIDTHS[n][i] / 2 + 0.3))
            for i in (first + (last - first) * k // 6 for k in range(7))]


for n in range(1, 12):
    upper, lower = edge(n, 1, 5, CUTS[n]), edge(n + 1, -1, 5, CUTS[n + 1])
    SHAPES.append(muscle_side("external-intercostals", DEEP, upper, lower, 0, piece=n, z=-3))
    a, b = along(upper, 13), along(lower, 13)
    SHAPES[-1].fibres = [stroke([a[i], tuple((p + q) / 2 for p, q in zip(a[i], b[i + 1])), b[i + 1]])
                         for i in (0, 2, 4, 6, 8, 10)]
for n in range(1, 7):
    upper, lower = edge(n, 1, CUTS[n] + 1, PARTS - 1), edge(n + 1, -1, CUTS[n + 1] + 1, PARTS - 1)
    SHAPES.append(muscle_side("internal-intercostals", DEEP, upper, lower, 0, piece=n, z=-3))
    a, b = along(upper, 9), along(lower, 9)
    SHAPES[-1].fibres = [stroke([a[i], tuple((p + q) / 2 for p, q in zip(a[i], b[i - 2])), b[i - 2]]) for i in (3, 5, 7)]
TP = [150, 163, 177, 190, 203, 218, 233, 248, 265, 282, 300, 318]  # thoracic transverse processes
TPX = [-12, -16, -19, -22, -24, -25.6, -26.4, -26.4, -25.6, -24, -22, -19]
TIPS = [(-30.6, 154), (-35.6, 169), (-40.6, 185), (-44, 200), (-47.6, 215), (-50.4, 231), (-52, 246), (-51.6, 261), (-50, 277),
        (-47, 292), (-43.6, 307), (-40, 323)]  # thoracic spinous tips
for n in range(1, 12):
    muscle("rotatores-thoracis", DEEP, [(TPX[n] - 5, TP[n] - 4), (TPX[n - 1] - 10, TP[n - 1] + 2)],
           [(TPX[n] - 1, TP[n] - 1), (TPX[n - 1] - 11, TP[n - 1] + 7)], 1, piece=n, z=-2)
    (x0, y0), (x1, y1) = LINES[n + 1][2], LINES[n + 1][6]
    muscle("levatores-costarum", DEEP, [(TPX[n - 1] - 1.4, TP[n - 1] + 2), (x0 + 2, y0)],
           [(TPX[n - 1] + 1.6, TP[n - 1] + 2), (TPX[n] + 2, (TP[n - 1] + y1) / 2), (x1 + 1, y1)], 2, piece=n, z=-2)
for n, i in enumerate((0, 1, 10), 1):
    (x0, y0), (x1, y1) = TIPS[i], TIPS[i + 1]
    muscle("interspinales-thoracis", DEEP, [(x0 + 2, y0 + 2), (x1 + 2, y1 - 3.4)], [(x0 + 6, y0 + 2.6), (x1 + 6.4, y1 - 4)], 1,
           piece=n, z=-2)
LUMBAR = [(-40, 323), (-33, 342), (-28, 358), (-26, 374), (-26, 391), (-30, 407), (-36, 420)]
for n, ((x0, y0), (x1, y1)) in enumerate(zip(LUMBAR, LUMBAR[1:]), 1):
    muscle("interspinales-lumborum", DEEP, [(x0 + 4, y0 + 4), (x1 + 4, y1 - 4)], [(x0 + 12, y0 + 3), (x1 + 12, y1 - 5)], 2, piece=n,
           z=-2)
LTP = [(-17, 330), (-13, 346), (-7.4, 361), (-2, 374), (2.6, 387), (8, 402)]
for n, ((x0, y0), (x1, y1)) in enumerate(zip(LTP, LTP[1:]), 1):
    muscle("intertransversarii-lumborum", DEEP, [(x0 - 2, y0 + 2), (x1 - 2.4, y1 - 2)], [(x0 + 2.2, y0 + 2), (x1 + 2, y1 - 2)], 1,
           piece=n, z=-2)
muscle("multifidus-thoracis", DEEP, [(-26, 330), (-32, 300), (-37, 270), (-38.6, 240), (-36, 210), (-30, 180), (-22, 152)],
       [(-17, 322), (-21, 300), (-24.6, 270), (-25, 240), (-23, 210), (-18, 180), (-12, 156)], 5, z=-2.5)
muscle("semispinalis-thoracis", DEEP, [(-38, 284), (-44, 258), (-47, 232), (-44, 206), (-36, 176), (-25, 148)],
       [(-27, 272), (-31, 250), (-32, 226), (-30, 202), (-24, 174), (-17, 150)], 5, z=-1, start=[(-33, 280)], end=[(-21, 146)])
# the psoas above the crest; then, behind the hip bone, it is lost to sight until it comes out in front of it
muscle("psoas-major", DEEP,
       [(-10, 326), (-10, 346), (-5, 362), (0, 378), (6, 391)], [(4, 330), (12, 348), (19, 364), (25, 380), (31, 398)], 4,
       start=[(-3, 324)], end=[(18, 391.6)], z=-2)
muscle("psoas-major", DEEP,
       [(60, 460), (58, 474), (54, 490), (44, 506), (30, 520), (19, 525)],
       [(68, 464), (68, 476), (64, 490), (54, 507), (38, 524), (21, 531)], 4, piece=2, z=-1.6, hi=0.8)
muscle("iliacus", DEEP,  # what shows in front of the hip bone, and the strip just within its edge
       [(57, 426), (58, 440), (56, 456), (52, 474), (46, 490), (36, 505), (26, 517), (17, 525)],
       [(64, 431), (68, 441), (63, 454), (62.4, 472), (57, 490), (47, 506), (34, 521), (19, 532)], 4, hi=0.85, z=-1.5)
muscle("quadratus-lumborum", DEEP,
       [(-10, 404), (-14, 390), (-17, 372), (-21, 352), (-22, 338)], [(14, 395), (8, 384), (2, 370), (-4, 358), (-8, 350)], 5,
       end=[(-15, 343)], start=[(4, 401)], z=-1)
muscle("multifidus", DEEP,
       [(-38, 476), (-42, 458), (-43, 442), (-38, 428), (-31, 410), (-26.4, 392), (-25.6, 374), (-28, 356), (-33, 340)],
       [(-29, 472), (-27, 456), (-22, 440), (-16, 424), (-11, 408), (-10, 390), (-13, 372), (-19, 354), (-27, 337)], 6, z=0.5)
muscle("transversus-abdominis", DEEP,
       [(-7, 353), (8, 356), (24, 359), (42, 359), (58, 355), (72, 343), (83, 326), (90, 310)],
       [(-5, 396), (4, 394), (15, 393), (32, 401), (50, 416), (64, 432), (72, 442)], 7,
       start=[(-8, 384), (-9, 368)], end=[(92, 320), (89, 344), (87, 368), (87, 394), (83, 420), (77, 438)], sharp=(7,))
# ---- hip
muscle("coccygeus", DEEP, [(-2, 490), (-14, 484), (-28, 474), (-38, 466)], [(-2, 495), (-16, 494), (-32, 492), (-42, 488)], 4,
       end=[(-40, 476)])
muscle("iliococcygeus", DEEP, [(-4, 499), (-14, 499), (-26, 497), (-40, 491)], [(-1, 507), (-12, 508), (-24, 504), (-38, 497)], 3, z=-1)
muscle("obturator-externus", DEEP, [(56, 500), (46, 497), (38, 495.6), (31, 496)], [(45, 514), (39, 511), (34, 507), (30, 502)], 3,
       z=-1, start=[(52, 509)], rounded="start")
muscle("quadratus-femoris", DEEP, [(0, 510), (6, 507), (14, 504)], [(-4, 525), (4, 528), (12, 529)], 4, end=[(16, 516)],
       start=[(-4, 518)])
muscle("obturator-internus", DEEP, [(-8, 497), (-4, 493.6), (4, 491), (14, 488), (20, 486)],
       [(-7, 503), (-2, 501), (6, 497.4), (14, 493.6), (20, 490)], 3, rounded="start")
muscle("superior-gemellus", DEEP, [(-4, 490.6), (4, 487.6), (13, 485.6), (19, 484.4)],
       [(-4, 495), (4, 492.4), (13, 489), (20, 486.6)], 3, rounded="start")
muscle("inferior-gemellus", DEEP, [(-5, 502), (4, 497), (13, 492.6), (20, 489)],
       [(-4, 508), (4, 505), (13, 498.4), (20, 493)], 3, rounded="start")
muscle("piriformis", DEEP,
       [(-30, 440), (-20, 446), (-8, 456), (6, 468), (16, 478), (22, 482)],
       [(-38, 468), (-26, 470), (-12, 474), (2, 480), (14, 484.6), (20, 485.6)], 5,
       start=[(-37, 463), (-33, 456), (-36, 452), (-31, 446)])
muscle("gluteus-minimus", DEEP,
       [(-6, 459), (2, 466), (10, 476), (17, 488), (22, 498)],
       [(60, 446), (56, 460), (48, 474), (38, 488), (30, 500)], 7, end=[(26, 502)],
       start=[(58, 436), (46, 424), (30, 417), (14, 420), (2, 432), (-5, 446)])
muscle("adductor-magnus", DEEP,
       [(26, 520), (26, 532), (24, 546), (20, 566), (17, 590), (15, 620), (12, 650), (9, 680), (9, 704), (10, 711)],
       [(-8, 520), (-13, 545), (-15, 575), (-14, 610), (-10, 640), (-6, 665), (-1, 690), (5, 711)], 7,
       start=[(2, 522), (14, 526)], hi=0.92, z=-1)
# =================================================================================================================
# intermediate
# =================================================================================================================
muscle("spinalis-thoracis", INTERMEDIATE,
       [(-30, 362), (-36, 340), (-43, 315), (-49.4, 286), (-53.6, 255), (-52, 225), (-45.4, 196), (-37, 168)],
       [(-28, 362), (-32, 340), (-39, 313), (-46, 284), (-49.6, 255), (-48, 225), (-42, 196), (-35, 168)], 3)
muscle("longissimus-thoracis-lumbar-part", INTERMEDIATE,
       [(-38, 449), (-34, 426), (-29, 402), (-26, 376), (-28, 346)],
       [(-24, 446), (-21, 424), (-17, 402), (-16, 376), (-19, 344)], 4, start=[(-32, 454)], rounded="start")
muscle("longissimus-thoracis-thoracic-part", INTERMEDIATE,
       [(-42.6, 456), (-39, 432), (-32, 406), (-28, 380), (-32, 352), (-41, 318), (-49, 280), (-52, 250), (-49, 218), (-40, 188),
        (-29, 158)],
       [(-34, 454), (-28, 430), (-23, 404), (-19, 376), (-20, 350), (-30, 320), (-39, 284), (-42, 252), (-40, 220), (-33, 190),
        (-25, 160)], 6, start=[(-40, 464)], rounded="start")
muscle("iliocostalis-lumborum-lumbar-part", INTERMEDIATE,
       [(-28, 434), (-21, 416), (-16, 396), (-15, 374), (-21, 340)],
       [(-14, 414), (-9, 400), (-6, 386), (-8, 366), (-14, 346)], 4, start=[(-21, 424)])
muscle("iliocostalis-lumborum-thoracic-part", INTERMEDIATE,
       [(-28, 430), (-23, 408), (-20, 384), (-23, 358), (-33, 322), (-42, 286), (-45, 254), (-44.6, 228)],
       [(-20, 420), (-14, 400), (-11, 378), (-14, 354), (-23, 322), (-32, 288), (-37, 258), (-41, 229)], 3,
       start=[(-24, 426)])
muscle("iliocostalis-thoracis", INTERMEDIATE,
       [(-34, 322), (-41, 290), (-44, 258), (-44, 224), (-37, 190), (-24, 160)],
       [(-27, 314), (-33, 286), (-36, 256), (-36, 222), (-29, 190), (-17, 158)], 4, z=0.1)
muscle("serratus-posterior-inferior", INTERMEDIATE,
       [(-44, 304), (-36, 302), (-27, 296), (-18, 289)], [(-29, 358), (-24, 354), (-17, 350), (-11, 350)], 6, z=0.3,
       end=[(-12, 295), (-19, 301), (-10, 306), (-8, 314), (-17, 319), (-6, 326), (-6, 333), (-15, 336), (-9, 342)],
       sharp=(5, 8, 11))
muscle("serratus-posterior-superior", INTERMEDIATE,
       [(-19.6, 130), (-19, 142), (-15, 156), (-6, 169)], [(-41, 185), (-38, 194), (-31, 204), (-20, 217)], 5, z=0.3,
       end=[(-5, 175), (-12, 177), (-7, 184), (-8, 190), (-15, 191), (-11, 199), (-13, 205), (-20, 206), (-16, 213)],
       sharp=(5, 8, 11), start=[(-33, 168), (-24.6, 146)])
# scapula with the arm raised: superior angle -24,168; root of the spine -33,187; inferior angle -20,250; joint 14,204
FRONTS = [(40, 180), (55, 203), (61, 223), (65, 243), (64, 261), (59, 278), (51, 295), (40, 310), (28, 324)]
ends, corners = [], []
for n, (x, y) in enumerate(FRONTS):
    ends += [(x - 2.4, y - 3), (x, y + 3.2)]
    if n < len(FRONTS) - 1:
        x1, y1 = FRONTS[n + 1]
        ends.append((min(x, x1) - 11 + n * 0.3, (y + y1) / 2 - 2))
        corners.append(len(ends))
muscle("serratus-anterior", INTERMEDIATE,
       [(-23, 169), (-6, 168), (16, 168), (37, 174)],
       [(-19, 253), (-10, 270), (2, 294), (12, 313), (22, 327)], 9, end=ends, start=[(-26, 236), (-32, 214), (-34, 192), (-28, 178)],
       sharp=[3 + c for c in corners], z=0.4, lo=0.3, hi=0.97)
muscle("pectoralis-minor", INTERMEDIATE,
       [(34, 187), (44, 196), (56, 212), (68, 229)], [(31, 191), (36, 208), (46, 236), (60, 262), (74, 276)], 5, z=0.6,
       end=[(70, 234), (65, 239), (76, 250), (77, 255), (69, 258), (79, 270)], sharp=(6, 9))
muscle("subclavius", INTERMEDIATE, [(50, 190), (42, 184.6), (32, 181), (24, 180)], [(49, 193), (42, 189), (32, 185), (24, 183)], 2,
       z=0.7, rounded="start")
muscle("rhomboid-major", INTERMEDIATE,
       [(-36, 168), (-36, 176), (-35, 184), (-33, 190)], [(-46.6, 214), (-42, 225), (-33, 238), (-22, 249)], 6, z=0.8,
       end=[(-33, 204), (-30, 222), (-26, 238)], start=[(-44, 200), (-41, 185)])
muscle("rhomboid-minor", INTERMEDIATE,
       [(-22, 139), (-25, 150), (-29, 166), (-32, 180)], [(-35.4, 166), (-36, 174), (-36, 182), (-34, 189)], 3, z=0.8,
       start=[(-29, 152)])
muscle("supraspinatus", INTERMEDIATE,
       [(-24, 170), (-10, 170), (4, 174), (16, 181), (25, 187)], [(-33, 185), (-18, 185), (-2, 184), (12, 187), (22, 193)], 4, z=0.9,
       end=[(25, 190)], start=[(-31, 178)])
muscle("internal-oblique", INTERMEDIATE,
       [(-4, 397), (-6, 386), (-7, 370), (-8, 355)],
       [(72, 443), (78, 436), (84, 418), (88, 396), (89, 372), (90, 346), (92, 318)], 8,
       end=[(8, 357), (24, 360), (42, 360), (58, 356), (72, 344), (82, 328)],
       start=[(64, 433), (50, 417), (32, 402), (15, 393.6), (4, 394.6)])
muscle("gluteus-medius", INTERMEDIATE,
       [(-15, 436), (-6, 449), (2, 463), (9, 478), (14, 490), (17, 501)],
       [(62, 430), (60, 444), (53, 460), (43, 476), (34, 490), (28, 503)], 8, end=[(23, 505)],
       start=[(54, 420), (42, 408), (28, 399), (12, 396), (-2, 401), (-12, 411), (-17, 424)], z=0.5)
muscle("vastus-intermedius", INTERMEDIATE,
       [(33, 564), (45, 572), (50, 586), (51, 606), (50, 640), (50, 672), (54, 692), (60, 704)],
       [(26, 566), (22, 576), (20, 590), (19, 612), (19, 645), (25, 672), (40, 694), (56, 708)], 5, hi=0.9, start=[(29, 563)], rounded="start")
muscle("semimembranosus", INTERMEDIATE,
       [(-3, 511), (-6, 535), (-10, 560), (-12, 590), (-12, 620), (-11, 650), (-9, 680), (-5, 705), (2, 728), (8, 742)],
       [(-9, 513), (-14, 535), (-23, 560), (-29, 588), (-28, 616), (-23, 646), (-18, 676), (-14, 704), (-9, 726), (3, 746)], 5, z=-0.5)
muscle("biceps-femoris-short-head", INTERMEDIATE,
       [(17, 576), (16, 596), (15, 620), (13, 650), (10, 680), (7, 705), (4, 728), (1, 749)],
       [(13, 578), (6, 596), (-3, 620), (-8, 650), (-12, 680), (-13, 705), (-10, 728), (-5, 750)], 6, end=[(-2, 752)])
# =================================================================================================================
# superficial
# =================================================================================================================
# ---- trunk
muscle("rectus-abdominis", SUPERFICIAL,
       [(71, 489), (81, 470), (89, 446), (92, 420), (92, 395), (91.6, 370), (90, 345), (88, 318), (84, 292), (80, 272)],
       [(75, 489), (88, 470), (96, 446), (102, 420), (103.4, 395), (100.6, 368), (97.2, 345), (95.6, 320), (95.6, 304), (96, 284)], 4,
       end=[(83, 264), (90, 267), (93, 276)], z=-2, start=[(68, 496)])
# its slips lie between those of serratus anterior on ribs 5 to 9, and between those of latissimus dorsi below
start = [(-12, 344.6), (0, 352), (1.4, 348), (3, 341), (17, 346), (16, 342), (12, 330)]
for n in (8, 7, 6, 5, 4):
    (x, y), (x1, y1) = FRONTS[n], FRONTS[n - 1]
    start += [(x + 0.6, y + 4), (x - 1.8, y - 2.4), (min(x, x1) - 10.4 + n * 0.3, (y + y1) / 2 - 1)]
start[-2:] = [(63.4, 261)]
muscle("external-oblique", SUPERFICIAL,
       [(68, 263), (76, 269), (83, 281)], [(-19, 350), (-8, 366), (3, 381), (13, 392)], 10,
       end=[(87, 300), (88, 324), (88, 350), (88.6, 376), (88.6, 400), (86, 424), (81, 448), (74, 470), (69.4, 455), (67, 436),
            (56, 420), (42, 407), (26, 396)],
       start=start, sharp=(10, *range(23, 41, 3)), z=-1.5, lo=0.08, hi=0.94)
muscle("pectoralis-major-abdominal-part", SUPERFICIAL,
       [(92, 303), (84, 290), (75, 272), (66, 252), (58, 230), (55, 206)], [(95, 292), (90, 280), (82, 266), (72, 250), (64, 230), (60, 206)],
       3, z=-1, start=[(95, 298)])
muscle("pectoralis-major-sternocostal-part", SUPERFICIAL,
       [(95, 294), (88, 280), (80, 265), (71, 248), (62, 228), (57, 204)],
       [(57, 190), (60, 189), (64, 190), (68, 194), (71, 199)], 9,
       end=[(64, 202)],
       start=[(64, 197), (72, 208), (82, 222), (91.6, 236), (97.4, 252), (101, 270), (100, 284)], z=-0.8)
muscle("pectoralis-major-clavicular-part", SUPERFICIAL,
       [(34, 177), (44, 182), (56, 187), (68, 194)], [(51, 184), (57, 188), (65, 191), (76, 195)], 4, start=[(44, 178)], z=-0.7)
muscle("latissimus-dorsi", SUPERFICIAL,
       [(-51.6, 247), (-40, 246), (-28, 244), (-14, 241), (4, 239), (20, 233), (34, 224), (46, 212)],
       [(5, 394), (12, 378), (18, 356), (22, 334), (25, 310), (26.6, 286), (28, 264), (33, 248), (42, 236), (50, 222), (54, 210)], 8,
       start=[(-6, 396), (-13, 384), (-20, 370), (-27, 354), (-33, 340), (-40, 326), (-45, 302), (-49.6, 276)], z=-1, lo=0.03)
muscle("infraspinatus", SUPERFICIAL,
       [(-33, 189), (-20, 189), (-6, 189), (8, 190), (19, 191)], [(-24, 244), (-15, 236), (-4, 224), (8, 211), (19, 199)], 6,
       start=[(-28, 234), (-32, 216), (-33.6, 201)], end=[(20, 195)], z=-0.8)
muscle("teres-minor", SUPERFICIAL,
       [(-17, 238), (-6, 226), (7, 212), (19, 200)], [(-14, 242), (-2, 234), (10, 221), (21, 206)], 3, z=-0.75, rounded="start")
muscle("teres-major", SUPERFICIAL,
       [(-26, 243), (-16, 235), (-2, 229), (14, 222), (32, 214), (50, 207.4), (66, 203.6), (78, 202.4)],
       [(-22, 259), (-10, 260.6), (6, 255), (22, 246), (38, 235), (53, 223), (67, 213), (79, 206.4)], 5,
       rounded="start", z=-0.9, start=[(-27, 252)])
# ---- thigh
muscle("semitendinosus", SUPERFICIAL,
       [(-4, 513), (-9, 535), (-14, 560), (-17, 590), (-18, 620), (-17, 645), (-15.4, 668), (-14, 690), (-13.6, 708), (-14, 722), (-15, 731)],
       [(-10, 512), (-24, 516), (-35, 527), (-39.6, 544), (-39.4, 562), (-36.6, 590), (-31, 620), (-25.6, 645), (-21.2, 668), (-17.8, 690),
        (-15.8, 708), (-15.2, 722), (-15.2, 731)], 3, z=-0.6, hi=0.74, lo=0.14)
muscle("sartorius", SUPERFICIAL,
       [(67, 439), (65, 458), (66, 480), (69, 505), (72, 530), (74, 558)],
       [(70, 441), (74, 458), (77, 480), (78, 500), (76.4, 524), (74.6, 557)], 3, hi=0.9, z=-0.4)
muscle("rectus-femoris", SUPERFICIAL,
       [(54, 464), (53, 480), (52, 505), (51, 540), (50, 580), (49, 620), (49, 650), (51, 678), (54, 694), (58, 706)],
       [(60, 466), (67, 484), (72, 512), (73.4, 545), (73, 580), (70, 620), (65, 652), (60.4, 676), (58, 692), (59.6, 700), (63, 707)], 4, z=-0.3,
       hi=0.9)
muscle("vastus-lateralis", SUPERFICIAL,
       [(22, 494), (34, 512), (44, 540), (48, 580), (48.6, 620), (49, 650), (51, 678), (55, 698)],
       [(17, 500), (11, 530), (7, 562), (4, 600), (4, 635), (9, 664), (20, 684), (36, 698), (51, 709)], 6, end=[(57, 706)], z=-0.2,
       hi=0.92)
muscle("biceps-femoris-long-head", SUPERFICIAL,
       [(-3, 511), (0, 535), (2.4, 560), (2.6, 590), (2.4, 620), (2.4, 648), (3, 672), (3, 692), (1.8, 712), (0.6, 732), (0.2, 748)],
       [(-10, 514), (-19, 535), (-25.6, 560), (-27.4, 590), (-25, 620), (-19, 648), (-12.4, 672), (-7, 692), (-4.2, 712), (-3.8, 732), (-4.8, 748)], 5,
       end=[(-0.6, 752.6), (-3.6, 753.2)], hi=0.74, rounded="end", z=0.1)
muscle("tensor-fasciae-latae", SUPERFICIAL,
       [(57, 423), (48, 446), (42, 470), (36, 496), (32, 522), (30, 546), (31, 560)],
       [(68, 437), (65, 456), (60, 478), (55, 500), (49, 524), (42, 546), (37, 561)], 4, start=[(64, 428)], end=[(34, 564)],
       rounded="both", z=0.2)
muscle("gluteus-maximus", SUPERFICIAL,
       [(-22, 411), (-8, 424), (6, 444), (16, 466), (23, 488), (26, 510), (27, 530)],
       [(-51, 484), (-52.8, 498), (-51, 514), (-45, 528), (-33, 541), (-15, 556), (3, 570), (18, 580)], 9,
       end=[(28, 548), (27, 566), (23, 578)],
       start=[(-51.6, 470), (-48.8, 456), (-45.2, 443), (-40, 430), (-31, 418)], rounded="both", z=0.3)
# ---- shoulder: deltoid over the root of the arm
muscle("deltoid-spinal-part", SUPERFICIAL,
       [(10, 184), (26, 199), (46, 209), (68, 211), (90, 207), (107, 202)],
       [(-27, 191), (-14, 204), (4, 217), (24, 227), (46, 230), (68, 226), (90, 215), (107, 205)], 6,
       start=[(-12, 189), (0, 186)], z=1)
muscle("deltoid-acromial-part", SUPERFICIAL,
       [(24, 176), (40, 180), (60, 186), (84, 194), (107, 199)],
       [(10, 184), (26, 199), (46, 209), (68, 211), (90, 207), (107, 202)], 5, start=[(14, 186), (20, 183), (22, 178)], z=1)
muscle("deltoid-clavicular-part", SUPERFICIAL,
       [(38, 177), (48, 171), (62, 170), (78, 176), (94, 187), (107, 197)],
       [(24, 176), (40, 180), (60, 186), (84, 194), (107, 199)], 4, start=[(31, 175)], z=1)
# ---- trapezius over everything
muscle("trapezius-ascending-part", SUPERFICIAL,
       [(-44, 188), (-34, 188), (-24, 188), (-12, 187)],
       [(-41, 323), (-40, 305), (-41, 280), (-40, 256), (-36, 232), (-28, 210), (-18, 196), (-10, 190)], 7, end=[(-10, 188)],
       start=[(-47.4, 298), (-52, 272), (-54.6, 248), (-53.6, 226), (-49.6, 204)], z=1.2)
muscle("trapezius-transverse-part", SUPERFICIAL,
       [(-22, 136), (-14, 152), (-2, 164), (10, 172), (18, 176)],
       [(-45, 188), (-30, 189), (-16, 187.6), (0, 184.6), (12, 182)], 7, start=[(-43, 180), (-37, 164), (-29, 149)],
       end=[(16, 179)], z=1.2)
muscle("trapezius-descending-part", SUPERFICIAL,
       [(-20, 75), (-12, 92), (-6, 110), (1, 128), (8, 144), (18, 158), (30, 170), (35, 175)],
       [(-32, 76), (-22.4, 92), (-18.8, 106), (-19, 118), (-21.4, 134), (-13, 152), (-1, 163), (11, 171), (20, 175.6)], 5,
       start=[(-27, 75)], end=[(28, 176)], z=1.3)
