"""Muscles of the back view, each layer from deep to superficial.

A muscle is given by its two side edges, both from origin to insertion; fibre strokes run between them. Ends follow
the model attachments the project starts from where those have the muscle; outlines are drawn from memory of anatomy.
"""
import math

from fascia_back import AMONG_MUSCLES
from pen import Shape, closed, segments, stroke

SHAPES = []
SUPERFICIAL, INTERMEDIATE, DEEP = "superficial-muscle", "intermediate-muscle", "deep-muscle"


def along(points, count):
    """`count` points at even distances on the smooth curve through `points`."""
    fine = [points[0]]
    for c1, c2, end in segments(list(points)):
        start = fine[-1]
        for i in range(1, 13):
            t, u = i / 12, 1 - i / 12
            fine.append(tuple(u**3 * start[k] + 3 * u * u * t * c1[k] + 3 * u * t * t * c2[k] + t**3 * end[k]
                              for k in (0, 1)))
    dist = [0.0]
    for a, b in zip(fine, fine[1:]):
        dist.append(dist[-1] + math.dist(a, b))
    out, j = [], 0
    for i in range(count):
        want = dist[-1] * i / (count - 1)
        while j < len(fine) - 2 and dist[j + 1] < want:
            j += 1
        t = (want - dist[j]) / ((dist[j + 1] - dist[j]) or 1e-9)
        out.append(tuple(fine[j][k] + (fine[j + 1][k] - fine[j][k]) * t for k in (0, 1)))
    return out


def within(point, polygon):
    x, y = point
    inside = False
    for (x0, y0), (x1, y1) in zip(polygon, polygon[1:] + polygon[:1]):
        if (y0 > y) != (y1 > y) and x < x0 + (y - y0) * (x1 - x0) / (y1 - y0):
            inside = not inside
    return inside


def longest_run(line, polygon):
    """The longest stretch of `line` that stays inside `polygon`."""
    runs, run = [], []
    for point in line:
        if within(point, polygon):
            run.append(point)
        else:
            runs.append(run)
            run = []
    return max(runs + [run], key=len)


def strokes(a, b, count, lo=0.07, hi=0.93, start=(), end=(), polygon=None):
    """`count` strokes spread evenly between the edges a and b, from `lo` to `hi` of their length.

    They set out from the origin line `start` and arrive at the insertion line `end`, where those are given, and are
    cut off where they would leave `polygon`.
    """
    ea, eb = along(a, 41), along(b, 41)
    ends = []
    for line, i in ((start, 0), (end, 40)):
        ends.append(along([ea[i], *line, eb[i]], 101) if line else None)
    first, last = round(lo * 40), round(hi * 40)
    out = []
    for n in range(1, count + 1):
        t = n / (count + 1)
        line = [tuple(ea[i][k] * (1 - t) + eb[i][k] * t for k in (0, 1)) for i in range(41)]
        off = [tuple(c[round(t * 100)][k] - line[i][k] for k in (0, 1)) if c else (0, 0)
               for c, i in zip(ends, (0, 40))]
        line = [tuple(max(line[i][k] + off[0][k] * (1 - i / 40) ** 2 + off[1][k] * (i / 40) ** 2, 0) for k in (0, 1))
                for i in range(41)][first:last + 1]
        if polygon:
            run = longest_run(line, polygon)
            line = run if len(run) == len(line) else run[2:-2]
            if len(line) < 6:
                continue
        step = max(1, (len(line) - 1) // 7)
        picked = line[::step]
        if len(line) - 1 - step * (len(picked) - 1) > step / 2:
            picked.append(line[-1])
        out.append(stroke(picked))
    return out


def muscle(sid, layer, a, b, fibres=4, end=(), start=(), piece=1, lo=0.07, hi=0.93, sharp=(), into=None):
    """Outline: edge a, the insertion `end`, edge b backwards, the origin `start`; its four ends are corners.

    `sharp` lists further corners by index in the outline.
    """
    points = list(a) + list(end) + list(reversed(b)) + list(start)
    na, ne, nb = len(a), len(end), len(b)
    corners = {0, na - 1, na + ne, na + ne + nb - 1} | set(sharp)
    polygon = along(a, 41) + list(end) + list(reversed(along(b, 41))) + list(start)
    shape = Shape(sid, layer, closed(points, corners),
                  strokes(a, b, fibres, lo, hi, list(reversed(start)), end, polygon), piece)
    (SHAPES if into is None else into).append(shape)


# =================================================================================================================
# deep
# =================================================================================================================
muscle("transversus-abdominis", DEEP,
       [(43, 350), (52, 347), (64, 343), (76.4, 347)], [(43, 404), (54, 396.6), (66, 392.4), (77.6, 393)],
       5, end=[(76.4, 366), (77.4, 380)])
muscle("quadratus-lumborum", DEEP,
       [(29, 426), (24, 408), (22, 388), (20, 366), (18, 336)], [(54, 399), (47, 384), (43, 368), (40, 346)], 5,
       end=[(24, 330.4), (32, 337.6)], start=[(46, 404.6), (37, 413.6)])
SHAPES.append(AMONG_MUSCLES["thoracolumbar-fascia-middle-layer"])
for n, (y0, y1, x0, x1) in enumerate([(321, 336.4, 14.6, 20.6), (341, 352.4, 21, 22.6), (357, 368.4, 22.6, 24),
                                      (373, 385.4, 24, 23), (390, 401.6, 23, 22.4)], 1):
    muscle("intertransversarii-lumborum", DEEP, [(x0 - 5.4, y0), (x1 - 6.4, (y0 + y1) / 2), (x1 - 6, y1)],
           [(x0, y0), (x1 - 1.4, (y0 + y1) / 2), (x1, y1)], 1, piece=n)
for n, (y0, y1) in enumerate([(327, 337), (347.6, 353), (363.6, 369), (379.6, 386), (396.6, 402), (412.6, 419)], 1):
    muscle("interspinales-lumborum", DEEP, [(0.4, y0), (0.4, y1)], [(3.2, y0), (3.2, y1)], 1, piece=n)
TP = [150, 163, 177, 190, 203, 218, 233, 248, 265, 282, 300, 318]  # thoracic transverse processes
for n in range(1, 12):
    y0, y1 = TP[n], TP[n - 1]
    x = 18.6 - 4 * n / 11
    muscle("rotatores-thoracis", DEEP, [(x - 3, y0 - 6), (3.4, y1 + 2.6)], [(x, y0 - 2), (3.8, y1 + 7.4)], 1, piece=n)
muscle("semispinalis-thoracis", DEEP,
       [(15, 217), (11, 197), (6, 174), (1.6, 130)], [(10.4, 284), (7, 256), (3.6, 228), (1.2, 203)], 6,
       end=[(2.2, 140), (1.2, 148), (2, 154), (1, 162), (1.8, 169), (1, 177), (1.8, 185), (1, 194)],
       start=[(14, 274), (12.2, 267), (15.4, 258), (13.4, 250), (16.2, 242), (14, 235), (16.6, 227)])
# ---- pelvis, hip, thigh
muscle("levator-ani", DEEP, [(5, 502), (3.6, 497), (1.2, 490.6)], [(29.4, 494), (20, 494.6), (9, 490), (3.4, 485)], 4,
       start=[(27, 501), (19, 507), (11, 507.6)])
muscle("coccygeus", DEEP, [(29, 490), (24, 482.4), (17, 467)], [(30.4, 493.4), (20, 491.6), (3.6, 489.4)], 4,
       end=[(12, 472), (7.6, 475), (5.6, 481)])
muscle("obturator-externus", DEEP,
       [(13, 499), (30, 496), (52, 497), (66, 494), (75, 491)], [(13, 507), (30, 511), (50, 509), (65, 501.6),
        (76, 495)],
       4, start=[(11, 503)])
muscle("gluteus-minimus", DEEP,
       [(43, 450), (52, 460), (66, 472), (78, 484), (85, 496)], [(77.4, 424), (81, 438), (86, 458), (90, 476),
        (91.6, 493)],
       6, end=[(89, 498)], start=[(73, 418), (63, 421), (52, 431), (45, 441)])
muscle("piriformis", DEEP,
       [(14, 437), (26, 443.6), (40, 453), (60, 466.4), (76, 478), (84, 484.4)],
       [(14, 463), (26, 467), (38, 473), (56, 483), (72, 488), (83, 488.8)], 5,
       start=[(10.6, 459), (13.4, 454), (10.4, 448.6), (13.4, 443)])
muscle("obturator-internus", DEEP,
       [(16, 492), (24, 493.4), (33, 495), (44, 493.6), (60, 492), (77, 490.4)],
       [(18, 510), (26, 507), (34, 502.4), (44, 500.4), (60, 497.6), (77.6, 495)], 5, start=[(12.6, 501)])
muscle("superior-gemellus", DEEP, [(30.6, 489.6), (42, 486.8), (58, 487.6), (76, 489)],
       [(32, 495), (44, 494.8), (60, 493.2), (76.6, 491.4)], 3)
muscle("inferior-gemellus", DEEP, [(36, 502.6), (46, 499.6), (60, 497), (77, 493.6)],
       [(36, 508.4), (46, 506.8), (60, 503), (77.4, 497)], 3)
muscle("quadratus-femoris", DEEP, [(42.6, 506.4), (54, 504.6), (66, 503.4), (79.4, 501)],
       [(38.6, 523), (50, 526), (60, 528.4), (69.6, 526.4)], 5, end=[(78.6, 508), (75.6, 518)], start=[(44.6, 514)])
muscle("adductor-magnus", DEEP,
       [(40, 518), (50, 530), (60, 542), (70.4, 552)],
       [(12, 512), (8.4, 530), (10.6, 560), (16, 610), (22, 655), (28, 690), (31.6, 711)], 6,
       end=[(68.6, 575), (66.6, 600), (64.4, 628), (60, 650), (52, 663), (45, 676), (39, 696), (35, 712)],
       start=[(20, 518), (31, 523.6)], sharp=(4, 8), lo=0.06, hi=0.9)
# ---- over the pelvis
muscle("multifidus", DEEP,
       [(13.4, 371), (10.4, 360), (6, 349), (1.2, 339)], [(4, 478), (3, 462), (2.4, 440), (1, 411)], 6,
       end=[(2.8, 350), (1, 356), (3, 366), (1, 372), (3.2, 382), (1, 388), (3.2, 398), (1, 404)],
       start=[(10, 473), (16, 461), (21.6, 448), (24.4, 437), (22.6, 427), (17.6, 416), (14, 400), (13.4, 386)])
# =================================================================================================================
# intermediate
# =================================================================================================================
muscle("internal-oblique", INTERMEDIATE,
       [(46, 402), (49, 384), (53, 366), (57, 350)], [(78, 394.6), (77.4, 382), (76.4, 366), (76, 352)], 5,
       end=[(64, 341), (71, 343)], start=[(74, 391.4), (67, 391.6), (56, 396)])
muscle("iliocostalis-lumborum-lumbar-part", INTERMEDIATE,
       [(22.4, 442), (21, 420), (20.4, 396), (19, 372), (17, 338)],
       [(38, 412), (39.6, 396), (38, 376), (33, 354), (24, 336)], 5, start=[(32, 420), (26.4, 430)])
muscle("longissimus-thoracis-lumbar-part", INTERMEDIATE,
       [(14, 446), (11, 426), (9, 400), (9, 370), (10.6, 338)],
       [(25, 445), (24, 426), (23, 402), (22, 372), (18, 340)], 4, start=[(20, 450)])
muscle("iliocostalis-lumborum-thoracic-part", INTERMEDIATE,
       [(36, 416), (37, 400), (35.4, 382), (31, 355), (28.6, 312), (31, 270), (36.6, 226)],
       [(42.4, 408), (44.4, 390), (43.6, 372), (41, 346), (42, 312), (46, 276), (45.6, 240), (41.4, 225)], 5,
       start=[(39, 413)])
muscle("longissimus-thoracis-thoracic-part", INTERMEDIATE,
       [(2.4, 442), (2.4, 420), (2.4, 390), (4, 350), (7.6, 310), (9, 260), (11.4, 210), (14, 168), (16, 150)],
       [(12, 444), (14, 424), (17, 398), (23, 365), (27.4, 328), (29, 285), (30.4, 245), (27, 205), (20, 166),
        (18.4, 151)], 5, start=[(7, 448)])
muscle("spinalis-thoracis", INTERMEDIATE,
       [(1, 366), (1, 330), (1, 290), (1, 250), (1, 205), (1, 168)],
       [(3.4, 366), (5.4, 335), (6.6, 300), (7, 260), (6.2, 215), (3.6, 168)], 3)
muscle("serratus-posterior-inferior", INTERMEDIATE,
       [(0.6, 303), (14, 303), (30, 299), (44, 290), (60, 285)], [(0.6, 360), (14, 351), (28, 346), (42, 345),
        (48, 351)],
       6, end=[(64, 292), (53, 299.6), (63, 306), (65, 312), (52, 317), (58, 325.6), (59, 331), (47, 334)],
       sharp=(5, 6, 8, 9, 11, 12))
muscle("serratus-posterior-superior", INTERMEDIATE,
       [(0.6, 129), (12, 137), (22, 149), (29, 160), (34, 168)], [(0.6, 171), (14, 181), (25, 193), (34, 207),
        (40, 216)],
       5, end=[(36, 173.6), (33, 176), (39, 183.6), (40.4, 189), (36.4, 191), (42, 199), (43, 204), (39, 206.4)],
       sharp=(5, 7, 8, 10, 11, 13))
muscle("serratus-anterior", INTERMEDIATE,
       [(47, 247), (53, 239), (62, 228), (73, 216)], [(47.4, 251), (58, 260), (68, 275), (77, 300)], 6,
       end=[(77, 221), (73, 228), (79, 237), (75, 243), (80.6, 252), (76, 257.6), (81, 267), (77, 272.6),
            (81, 282), (77, 286.6), (80, 296)], sharp=(5, 7, 9, 11, 13))
muscle("rhomboid-major", INTERMEDIATE,
       [(0.6, 152.6), (14, 163), (28, 176), (39, 189)], [(0.6, 217), (14, 227), (28, 237), (43, 245)], 6,
       end=[(38.6, 200), (39.2, 214), (41, 232)])
muscle("rhomboid-minor", INTERMEDIATE,
       [(0.6, 134.4), (14, 147), (28, 164), (39, 179.6)], [(0.6, 151), (14, 161), (28, 174), (38.8, 188)], 3)
muscle("levator-scapulae", INTERMEDIATE,
       [(13.4, 120), (18, 134), (26, 150), (34, 166), (39.4, 179)], [(21.6, 95.6), (25, 112), (30, 130), (38, 150),
       (46, 171)], 4, end=[(41, 173), (43.6, 170.6)], start=[(17, 103), (13, 105), (16.4, 110), (12.6, 112),
       (15.4, 117)],
       sharp=(7, 12, 14))
muscle("supraspinatus", INTERMEDIATE,
       [(41.6, 174), (54, 172.6), (68, 174.8), (82, 179.6), (98, 185), (113, 189)],
       [(40.4, 184.6), (56, 184.6), (72, 184), (86, 185.4), (100, 190), (115, 194)], 4,
       end=[(115.6, 191)], start=[(39.6, 179)])
# ---- hip and thigh
muscle("gluteus-medius", INTERMEDIATE,
       [(34.6, 440), (46, 456), (59, 471.4), (72, 484.4), (79, 493.4), (83, 501)],
       [(80, 402), (84, 418), (88.6, 440), (92.6, 464), (94, 484), (93, 498)], 6, end=[(88, 503)],
       start=[(77, 394.4), (68, 393), (56, 397.6), (44, 406), (37, 416), (34, 427)])
muscle("semimembranosus", INTERMEDIATE,
       [(38.4, 508), (39.4, 530), (38, 556), (31, 590), (24.6, 626), (24.2, 665), (27, 695), (28.6, 720), (31, 744)],
       [(44.4, 509), (44.6, 530), (46.4, 558), (50, 595), (52.4, 635), (50.4, 672), (44.4, 705), (40, 722),
        (38, 744)], 5,
       end=[(34, 748)], start=[(41.6, 506)])
SHAPES.append(AMONG_MUSCLES["lateral-femoral-septum"])
muscle("biceps-femoris-short-head", INTERMEDIATE,
       [(64, 590), (60, 620), (59, 650), (60.6, 685), (63.6, 715), (66, 738), (67.4, 748)],
       [(69, 582), (73.4, 615), (76, 650), (77.6, 690), (76.8, 720), (75.6, 740), (73.6, 750)], 4, end=[(70.6, 753)])
# =================================================================================================================
# superficial
# =================================================================================================================
muscle("external-oblique", SUPERFICIAL,
       [(48, 349), (56, 364), (62, 378), (64.4, 393)], [(78.6, 302), (77.6, 325), (76, 345), (76.2, 362), (78.4, 380),
       (80, 397)], 5, end=[(71, 391.6)], start=[(73, 306), (71, 314), (68, 318), (66.6, 328), (61, 331), (58.6, 342),
       (53, 343)], sharp=(12, 14, 16))
muscle("infraspinatus", SUPERFICIAL,
       [(41, 190.6), (56, 190), (72, 188.8), (88, 188), (102, 190.4), (115, 192.6)],
       [(46, 241), (57, 233), (70, 221), (86, 208.6), (102, 200), (118, 198)], 6, start=[(42.4, 228), (40.4, 208)])
muscle("teres-minor", SUPERFICIAL,
       [(58, 233.6), (70, 221.6), (86, 209), (102, 200.4), (117.6, 198)],
       [(62, 239), (73, 227.6), (88, 215), (103, 206.6), (119, 205)], 3)
muscle("teres-major", SUPERFICIAL,
       [(44, 240), (54, 238), (68, 231), (84, 220), (98, 212.6), (107, 210)],
       [(47, 252), (58, 252), (72, 247.6), (86, 239.6), (99, 231), (109, 228)], 4)
muscle("latissimus-dorsi", SUPERFICIAL,
       [(0, 246), (14, 247), (30, 246.4), (46, 242.6), (62, 241), (76, 240.4), (88, 233), (99, 222), (107, 215)],
       [(66, 393.4), (70.6, 375), (74, 350), (77.6, 322), (80, 297), (81.8, 275), (82.6, 257), (85.4, 240.4),
        (94, 234.4), (102, 230), (109, 225)], 6, start=[(52, 383), (40, 368), (27, 352), (15, 337), (6, 326),
        (0, 318.6)], sharp=(25,), lo=0.05)
# ---- hamstrings over the calf heads, the great buttock muscle over the hamstrings
muscle("gastrocnemius-medial-head", SUPERFICIAL,
       [(43, 711.6), (48, 728), (50.6, 750), (51.4, 790), (51, 835), (50, 866), (49.4, 915), (49.4, 973)],
       [(34.4, 711), (27.6, 735), (23, 765), (20.4, 795), (22, 828), (28, 853), (38, 869), (45, 880), (47, 915),
        (45.4, 973)],
       5, hi=0.62, start=[(38, 709.6)])
muscle("gastrocnemius-lateral-head", SUPERFICIAL,
       [(62.4, 711.6), (56.6, 728), (53, 750), (51.8, 790), (51.4, 835), (50.4, 866), (49.6, 915), (49.6, 973)],
       [(72, 710.6), (77.6, 735), (82, 765), (85, 795), (84.4, 822), (79, 842), (68, 858), (57, 872), (52.6, 915),
        (53.6, 973)],
       5, hi=0.6, start=[(67.6, 709)])
muscle("vastus-lateralis", SUPERFICIAL,
       [(84, 512), (78, 540), (74, 565), (70, 600), (69, 640), (71.6, 675), (76.4, 711)],
       [(94.6, 508), (97.6, 540), (96.6, 565), (92.4, 605), (87.4, 645), (82.6, 682),
        (79.8, 710)], 5, end=[(78.6, 716)], start=[(90, 500)])
muscle("gracilis", SUPERFICIAL,
       [(6, 509), (5.4, 530), (7.4, 560), (12.6, 610), (17.4, 650), (21.6, 690), (25, 718), (26.6, 742), (33, 768)],
       [(13, 513), (13.6, 535), (15.4, 562), (20, 610), (24, 650), (27, 690), (28.6, 718), (30, 742), (38, 766)], 3)
muscle("sartorius", SUPERFICIAL,
       [(22.2, 688), (24, 705), (24.8, 722), (25.8, 742), (33, 770)],
       [(24.4, 684), (26.4, 704), (27.8, 722), (28.6, 742), (39, 768)], 3)
muscle("semitendinosus", SUPERFICIAL,
       [(31, 513), (27.6, 535), (25.6, 565), (26.4, 600), (29, 640), (31, 670), (31, 700), (29.6, 725),
        (29.8, 748), (35.4, 773)],
       [(40, 511), (43, 535), (46, 563), (49.4, 600), (48, 635), (41.6, 668), (36, 698), (33.4, 725), (33.2, 747),
        (39, 770)],
       4, hi=0.78)
muscle("biceps-femoris-long-head", SUPERFICIAL,
       [(36.6, 510), (41, 535), (46, 563), (49.8, 600), (54, 640), (61, 680), (66.4, 712), (68.4, 735), (69.4, 752)],
       [(43.6, 509), (53, 535), (61, 563), (68.6, 600), (73.6, 640), (76.4, 680), (76.4, 710), (75.4, 732),
        (73.2, 750)],
       5, hi=0.85)
muscle("tensor-fasciae-latae", SUPERFICIAL,
       [(78.6, 412), (86, 434), (92, 462), (96, 490), (98, 522)],
       [(82, 408), (91, 436), (98, 464), (101.4, 492), (100, 523)], 3)
muscle("gluteus-maximus", SUPERFICIAL,
       [(38, 411.4), (50, 419), (64, 434), (77, 455), (86.6, 480), (92, 504), (93, 524)],
       [(3, 491), (9, 505), (20, 521.4), (34, 538.6), (49, 555), (62, 568.6), (71, 577)], 6,
       end=[(91, 540), (84.4, 555), (77, 569)],
       start=[(4.4, 484), (6.4, 475), (9, 464), (12.6, 452), (17, 441), (24, 430), (31, 419.4)], sharp=(9,))
# ---- shoulder
muscle("deltoid-spinal-part", SUPERFICIAL,
       [(104, 187.6), (113, 198), (122, 216), (129, 240), (134, 264), (138, 292)],
       [(54, 187.6), (70, 197), (86, 208.6), (101, 223), (114, 243), (125, 266), (134.4, 286)], 5, end=[(136.2, 291)],
       start=[(68, 186), (80, 185), (92, 184.4)])
muscle("deltoid-acromial-part", SUPERFICIAL,
       [(104, 186.4), (113, 198), (122, 216), (129, 240), (134, 264), (138, 292)],
       [(117.4, 181), (127.4, 189.6), (135, 202), (139.4, 217), (141.4, 234), (142.6, 255), (142.6, 274),
        (141.4, 286)], 4, end=[(139.8, 291)],
       start=[(111, 182.6)])
# ---- trapezius over everything
muscle("trapezius-ascending-part", SUPERFICIAL,
       [(0, 184), (14, 187), (28, 187), (44, 184.4), (58, 184.6)],
       [(0, 324), (5, 312), (12, 288), (21, 258), (31, 230), (41, 207), (50, 195), (60, 188)], 6)
muscle("trapezius-transverse-part", SUPERFICIAL,
       [(0, 132.6), (20, 146), (46, 160), (74, 170.4), (98, 177), (110, 180.4)],
       [(0, 189), (16, 191), (32, 191), (48, 189)], 6,
       end=[(113, 184), (106, 185.4), (92, 184.6), (78, 185.4), (62, 187.6)])
muscle("trapezius-descending-part", SUPERFICIAL,
       [(13, 76.6), (17.6, 90), (22.4, 105), (27, 120), (32, 137), (40, 149.4), (53, 157.6), (70, 165), (88, 170.6),
        (103, 177)],
       [(0, 77), (0, 95), (0, 115), (0, 134), (20, 147), (46, 161), (74, 171), (98, 177.6)], 5, end=[(101, 178.6)],
       start=[(6, 75.4)], sharp=(15,))
