"""Head and neck from the right side: bones, joints, palpable landmarks and the ligaments against bone.

The skull's bones meet along shared suture lines. Levels of the arches of C1 to C7 follow the back view, breastbone and
point of the shoulder the front and side views; everything between is drawn from memory of anatomy.
"""
from sidepen import Border, Shape, closed, ribbon, stroke, tile

SHAPES = []


def bone(id_, d, piece=1, z=0.0, fibres=()):
    """`fibres` are lines on the bone: sutures that a landmark would hide, the ear's opening."""
    SHAPES.append(Shape(id_, "bone", d, list(fibres), piece, z))


def mark(id_, points, corners=(), piece=1, z=3.0, fibres=()):
    bone(id_, closed(points, corners), piece, z, fibres)


def band(id_, points, width, piece=1, z=3.0, blunt=False):
    widths = width if isinstance(width, list) else [width] * len(points)
    bone(id_, ribbon(points, widths, blunt), piece, z)


# ---- vault: sutures first, each shared by the two bones beside it --------------------------------------------------
coronal = Border((108, 50), (96, 86), (90, 120), (98, 150), (100, 182), (108, 214))
vault_front = Border((108, 50), (126, 62), (162, 92), (200, 138), (222, 186), (231, 228), (236, 256), (235, 276), (227, 294))
vault_top = Border((108, 50), (88, 40), (46, 26), (-25, 16), (-94, 24), (-160, 49), (-217, 92), (-258, 149), (-277, 190), (-284, 210))
vault_back = Border((-284, 210), (-289, 230), (-294, 258), (-296, 306), (-288, 352), (-274, 386), (-266, 398), (-246, 404),
                    (-206, 418), (-160, 432), (-112, 440))
lambdoid = Border((-284, 210), (-262, 236), (-236, 254), (-206, 288), (-176, 310), (-134, 326))
occipitomastoid = Border((-134, 326), (-128, 356), (-118, 390), (-112, 440))
parietomastoid = Border((-134, 326), (-110, 318), (-82, 312))
squamous = Border((-82, 312), (-78, 276), (-52, 240), (-12, 220), (32, 218), (66, 234), (82, 252))
pterion_top = Border((82, 252), (92, 232), (108, 214))
sphenofrontal = Border((108, 214), (128, 236), (146, 262), (158, 280))
sphenosquamous = Border((82, 252), (86, 286), (84, 318), (78, 346))
sphenozygomatic = Border((158, 280), (152, 300), (146, 322), (142, 344))

bone("parietal-bone", tile(vault_top, lambdoid, parietomastoid, squamous, pterion_top, -coronal))
bone("occipital-bone", tile(vault_back, -occipitomastoid, -lambdoid))
# base of the occipital bone with its joint surface, seen under the mastoid process
bone("occipital-bone", closed([(-112, 440), (-84, 426), (-50, 414), (-14, 408), (20, 400), (40, 392), (44, 402),
                               (22, 414), (4, 420), (-4, 432), (-22, 438), (-38, 432), (-52, 430), (-84, 440)],
                              corners=(0, 5)), 2, -2)
orbit_top = Border((227, 294), (214, 276), (192, 270), (172, 274), (166, 286))
bone("frontal-bone", tile(vault_front, orbit_top, Border((166, 286), (158, 280), straight=True), -sphenofrontal, -Border(
    (108, 214), (108, 214), straight=True), -coronal))
bone("sphenoid-bone", tile(sphenofrontal, sphenozygomatic,
                           Border((142, 344), (120, 358), (98, 362), (78, 346)), -sphenosquamous, pterion_top))
# wings of the pterygoid process behind the upper jaw
bone("sphenoid-bone", closed([(84, 348), (118, 358), (122, 384), (124, 412), (126, 440), (118, 462), (106, 476),
                              (102, 464), (96, 452), (88, 428), (84, 400), (80, 372)], corners=(0, 6)), 2, -2)
bone("temporal-bone", tile(
    squamous, sphenosquamous, Border((78, 346), (64, 352), (46, 362), (38, 358), (28, 355), (20, 360), (17, 376), (12, 394),
                                      (0, 404), (-16, 406), (-30, 424), (-44, 446), (-62, 452), (-76, 444), (-92, 420),
                                      (-112, 440)),
    -occipitomastoid, parietomastoid), fibres=[stroke([(-6, 360), (6, 356), (14, 366), (12, 384), (2, 392), (-8, 384), (-9, 370)])])
bone("temporal-bone", closed([(40, 352), (66, 348), (96, 350), (122, 354), (126, 360), (120, 371), (98, 369), (70, 368),
                              (52, 370), (36, 364)], corners=(4, 5)), 2, 1.5)
bone("temporal-bone", ribbon([(-8, 402), (8, 430), (24, 460), (36, 490)], [15, 10, 7, 3], False), 3, -1)
bone("zygomatic-bone", closed([(166, 286), (174, 292), (170, 306), (170, 326), (180, 344), (198, 352), (210, 358),
                               (196, 376), (184, 394), (166, 402), (150, 392), (136, 378), (120, 371), (122, 354),
                               (138, 350), (146, 334), (150, 312), (156, 292)], corners=(0, 6, 12, 13)), z=1)
bone("maxilla", closed([(227, 300), (233, 302), (238, 318), (238, 344), (234, 366), (232, 384), (238, 402), (248, 420),
                        (258, 436), (250, 444), (246, 458), (250, 476), (250, 490), (240, 498), (226, 500), (204, 500),
                        (178, 496), (154, 490), (136, 480), (128, 458), (128, 424), (134, 396), (150, 388), (168, 396),
                        (186, 384), (200, 366), (210, 352), (218, 336), (222, 318)], corners=(0, 8)))
# teeth belong to the jaws: upper and lower row as one band each
bone("maxilla", closed([(142, 482), (166, 490), (196, 496), (224, 498), (248, 490), (252, 506), (250, 518), (240, 514),
                        (226, 513), (214, 517), (202, 513), (190, 516), (178, 512), (164, 512), (150, 506), (142, 496)]), 2, -1)

# ---- lower jaw ------------------------------------------------------------------------------------------------------
bone("mandible", closed([
    (36, 374), (50, 372), (56, 382), (54, 400), (66, 414), (80, 418), (92, 408), (102, 390), (114, 380), (122, 388),
    (120, 412), (124, 444), (134, 476), (146, 508), (160, 524), (186, 532), (214, 534), (238, 530), (248, 534),
    (247, 552), (242, 572), (246, 594), (255, 610), (252, 630), (236, 640), (206, 638), (170, 622), (128, 604),
    (92, 594), (66, 582), (52, 562), (48, 532), (44, 492), (38, 450), (34, 414), (32, 390)], corners=(8,)), z=0)
bone("mandible", closed([(146, 512), (150, 506), (164, 512), (178, 513), (192, 516), (206, 514), (220, 517), (234, 514), (246, 519),
                         (250, 536), (230, 534), (196, 536), (164, 528)]), 2, -2)

# ---- tongue bone and larynx ----------------------------------------------------------------------------------------
bone("hyoid-bone", closed([(96, 690), (104, 694), (106, 706), (100, 716), (90, 714), (84, 704), (66, 698), (44, 690), (28, 682),
                           (22, 676), (28, 671), (44, 676), (66, 684), (80, 688), (84, 678), (88, 678), (90, 688)]))
bone("thyroid-cartilage", closed([(98, 742), (110, 750), (113, 760), (108, 774), (100, 796), (94, 806), (80, 808), (62, 800),
                                  (54, 806), (52, 822), (46, 820), (46, 800), (42, 776), (38, 752), (32, 728), (24, 708), (29, 706),
                                  (40, 724), (50, 738), (66, 736), (84, 736)], corners=(0,)))

# ---- neck and first chest vertebrae: body, arch with facets and spinous process, side process ------------------------
BODY = {2: (-6, 503), 3: (-2, 540), 4: (0, 575), 5: (-3, 609), 6: (-12, 644), 7: (-28, 681), 8: (-50, 721), 9: (-74, 766),
        10: (-97, 813)}
TILT = {2: 3, 3: 3, 4: 3, 5: 1, 6: -3, 7: -8, 8: -11, 9: -12, 10: -12}  # how far the back edge lies below the front edge
DEPTH = {2: 40, 3: 43, 4: 44, 5: 45, 6: 47, 7: 49, 8: 51, 9: 54, 10: 56}
HEIGHT = {2: 25, 3: 25, 4: 24, 5: 24, 6: 25, 7: 28, 8: 33, 9: 36, 10: 37}
SPINE = {2: (-132, 524), 3: (-126, 559), 4: (-130, 594), 5: (-146, 630), 6: (-188, 663), 7: (-244, 702), 8: (-268, 751), 9: (-286, 805),
         10: (-299, 862)}
FACET = {n: (BODY[n][0] - DEPTH[n] / 2 - 15, BODY[n][1] + 4) for n in BODY}
SIDE = {n: (BODY[n][0] - DEPTH[n] / 2 + (10 if n < 8 else -34), BODY[n][1] + (8 if n < 8 else -4)) for n in BODY}
NAME = {n: f"c{n}" if n < 8 else f"t{n - 7}" for n in BODY}


def body(n):
    x, y = BODY[n]
    w, h, t = DEPTH[n] / 2, HEIGHT[n] / 2, TILT[n] / 2
    return [(x + w, y - h + 2 - t), (x + w - 3, y - t), (x + w + 1, y + h + 1 - t), (x, y + h - 2), (x - w, y + h - 3 + t),
            (x - w + 2, y + t), (x - w, y - h - 3 + t), (x, y - h)]


def arch(n):
    """From the pedicle over the facet pillar and the lamina to the tip of the spinous process and back."""
    (bx, by), (fx, fy), (sx, sy) = BODY[n], FACET[n], SPINE[n]
    back = bx - DEPTH[n] / 2 + 4
    thick = {2: 19, 3: 9, 4: 9, 5: 9, 6: 10, 7: 13, 8: 14, 9: 13, 10: 12}[n]
    mx, my = (fx - 16 + sx) / 2, (fy + 2 + sy) / 2
    return [(back, by - 9), (fx + 12, fy - 14), (fx + 4, fy - 20), (fx - 9, fy - 11), (fx - 18, fy - 4), (mx, my - thick * 0.55),
            (sx + 10, sy - thick * 0.62), (sx, sy - thick * 0.3), (sx + 1, sy + thick * 0.45), (sx + 12, sy + thick * 0.5),
            (mx, my + thick * 0.6), (fx - 16, fy + 17), (fx - 6, fy + 20), (fx + 8, fy + 10), (back, by + 2)]


for n in sorted(BODY, reverse=True):
    if n == 10:
        continue
    bone(f"vertebra-{NAME[n]}", closed(arch(n), corners=(0, 14)), 2, -4)
    bone(f"vertebra-{NAME[n]}", closed(body(n), corners=(0, 2, 4, 6)), 1, -4)
for n in range(2, 9):  # discs between the bodies
    upper, lower = body(n), body(n + 1)
    bone(f"intervertebral-disc-{NAME[n]}-{NAME[n + 1]}", closed([upper[4], upper[3], upper[2], lower[0], lower[7], lower[6]], corners=(0, 2, 3, 5)), 1, -4.5)
# dens of the axis rising behind the front arch of the atlas
bone("vertebra-c2", closed([(14, 496), (14, 480), (12, 462), (6, 446), (-3, 442), (-11, 448), (-13, 464), (-16, 480), (-24, 494)]), 3, -4)
ATLAS = [(25, 452), (30, 460), (26, 472), (16, 472), (2, 468), (-8, 476), (-28, 480), (-44, 474), (-66, 472), (-92, 476), (-112, 484),
         (-124, 486), (-126, 478), (-116, 470), (-92, 462), (-66, 458), (-48, 456), (-44, 446), (-30, 446), (-14, 450), (0, 444), (10, 452)]
bone("vertebra-c1", closed(ATLAS), 1, -4)

# ---- ribs, breastbone, collar bone, shoulder blade: what of them lies above the cut ---------------------------------
bone("rib-1", ribbon([(-74, 732), (-98, 744), (-106, 768), (-84, 800), (-40, 838), (16, 876), (66, 902), (100, 918)],
                     [9, 12, 15, 17, 18, 18, 18, 16]), z=-5)
bone("rib-2", ribbon([(-98, 782), (-128, 794), (-146, 820), (-134, 856), (-100, 892), (-58, 922), (-26, 942)],
                     [9, 12, 14, 15, 16, 16, 16]), z=-5)
bone("sternum", closed([(104, 916), (116, 911), (128, 913), (137, 926), (146, 944), (112, 946), (107, 934)], corners=(4, 5)), z=-3)
bone("clavicle", closed([(117, 896), (121, 907), (115, 917), (100, 914), (76, 906), (48, 902), (20, 904), (-8, 904), (-28, 903), (-34, 896),
                         (-28, 889), (-6, 889), (20, 888), (48, 886), (76, 889), (104, 894)]), z=-1)
bone("scapula", closed([(-282, 866), (-272, 862), (-236, 876), (-196, 888), (-150, 898), (-140, 902), (-126, 896), (-96, 904), (-84, 922),
                        (-88, 946), (-150, 946), (-230, 946), (-278, 946), (-286, 906)], corners=(9, 12)), z=-3)
bone("scapula", closed([(-262, 924), (-210, 908), (-150, 898), (-98, 890), (-58, 886), (-30, 890), (-18, 900), (-22, 912), (-44, 916),
                        (-76, 910), (-112, 910), (-160, 918), (-214, 930), (-256, 936)]), 2, -1)

# ---- joints ---------------------------------------------------------------------------------------------------------


def seam(id_, border, width=5.0):
    points = [border.start] + [s[2] for s in border.segs]
    band(id_, points, width)


seam("occipitomastoid-suture", occipitomastoid, 7)
seam("parietomastoid-suture", parietomastoid, 7)
seam("sphenofrontal-suture", sphenofrontal, 6)
seam("sphenozygomatic-suture", sphenozygomatic, 6)
band("zygomaticomaxillary-suture", [(209, 354), (198, 370), (184, 388), (168, 398)], 6)
mark("temporomandibular-joint", [(24, 366), (28, 360), (38, 357), (50, 361), (59, 367), (58, 374), (52, 371), (43, 369), (35, 372), (29, 378)])
mark("c0-c1", [(-52, 440), (-38, 435), (-20, 439), (0, 436), (5, 444), (-12, 450), (-30, 447), (-46, 449)])
mark("c1-c2", [(-50, 476), (-36, 480), (-18, 482), (-8, 478), (-8, 486), (-22, 492), (-38, 491), (-50, 485)])
band("hyoid-suspension", [(52, 628), (66, 650), (82, 676)], [10, 14, 12])
band("thyrohyoid-junction", [(88, 713), (88, 724), (86, 738)], [26, 34, 44], blunt=True)


def segment(lower, upper):
    """A spinal segment as the finger meets it: the gap between the facet pillars of both vertebrae."""
    (x0, y0), (x1, y1) = FACET[upper], FACET[lower]
    x, y = (x0 + x1) / 2 - 6, (y0 + y1) / 2 + 1
    return [(x + 15, y + 3), (x + 9, y + 7), (x - 4, y + 2), (x - 15, y - 5), (x - 13, y - 9), (x - 1, y - 5), (x + 10, y - 2)]


for n in range(2, 9):
    mark(f"{NAME[n]}-{NAME[n + 1]}", [(x, y + 2) for x, y in segment(n + 1, n)], z=4)
mark("costovertebral-joint-1", [(-86, 726), (-76, 722), (-68, 728), (-70, 738), (-80, 738)])
mark("costotransverse-joint-1", [(-112, 738), (-106, 732), (-100, 738), (-102, 748), (-110, 749)])
mark("sternoclavicular-joint", [(110, 900), (118, 898), (124, 905), (122, 914), (114, 917), (108, 911)])
mark("acromioclavicular-joint", [(-38, 890), (-30, 887), (-26, 894), (-30, 902), (-38, 902)])

# ---- landmarks of the skull -----------------------------------------------------------------------------------------
mark("temporal-fossa", [(140, 262), (122, 224), (88, 196), (34, 186), (-20, 194), (-64, 220), (-92, 258), (-98, 298), (-78, 324), (-40, 334),
                        (0, 340), (50, 346), (110, 346), (142, 330), (150, 300)], z=2,
     fibres=[stroke([(-82, 312), (-78, 276), (-52, 240), (-12, 220), (32, 218), (66, 234), (82, 252)]),
             stroke([(82, 252), (86, 286), (84, 318), (79, 344)]), stroke([(82, 252), (92, 232), (104, 216)])])
band("superior-temporal-line", [(158, 270), (142, 226), (104, 186), (44, 166), (-20, 170), (-76, 198), (-112, 240), (-122, 290), (-108, 318)],
     [3, 5, 5, 5, 5, 5, 5, 5, 3])
band("inferior-temporal-line", [(148, 264), (130, 226), (96, 194), (40, 178), (-18, 184), (-68, 210), (-100, 248), (-108, 290), (-96, 316)],
     [3, 5, 5, 5, 5, 5, 5, 5, 3])
mark("zygomatic-arch", [(36, 356), (66, 349), (100, 351), (126, 354), (146, 360), (150, 372), (136, 376), (100, 369), (68, 368), (50, 371), (36, 366)])
mark("articular-tubercle-of-temporal-bone", [(52, 362), (62, 361), (68, 367), (64, 376), (56, 376)], z=4)
mark("mandibular-fossa", [(22, 360), (30, 352), (42, 351), (52, 358), (48, 363), (38, 359), (28, 364)], z=3)
mark("mastoid-process", [(-26, 402), (-18, 408), (-28, 430), (-42, 449), (-60, 454), (-74, 444), (-82, 424), (-72, 404), (-48, 396)])
mark("mastoid-notch", [(-76, 446), (-70, 440), (-62, 450), (-66, 456), (-74, 455)], z=4)
band("styloid-process-of-temporal-bone", [(-4, 408), (10, 434), (24, 460), (36, 490)], [11, 10, 7, 4])
mark("superciliary-arch", [(176, 264), (192, 254), (212, 252), (228, 254), (232, 264), (222, 270), (206, 268), (190, 270)])
mark("external-occipital-protuberance", [(-290, 378), (-280, 374), (-272, 382), (-268, 394), (-276, 396), (-284, 388)], z=4)
band("superior-nuchal-line", [(-268, 388), (-236, 380), (-196, 380), (-158, 388), (-124, 398)], [5, 7, 7, 7, 5])
band("inferior-nuchal-line", [(-228, 406), (-198, 410), (-166, 418), (-136, 428)], [4, 5, 5, 4])
mark("area-between-nuchal-lines", [(-260, 394), (-230, 388), (-194, 388), (-156, 396), (-134, 404), (-144, 418), (-170, 410), (-200, 403), (-236, 402)])
band("occipital-condyle", [(-44, 430), (-22, 436), (-2, 428)], [6, 10, 6])
mark("jugular-process-of-occipital-bone", [(-62, 428), (-50, 424), (-40, 428), (-44, 436), (-58, 437)])
mark("alveolar-process-of-maxilla", [(138, 470), (170, 480), (206, 484), (236, 480), (250, 476), (250, 490), (238, 497), (206, 500), (172, 496), (142, 486)])
mark("frontal-process-of-maxilla", [(228, 302), (234, 304), (238, 320), (238, 344), (232, 360), (224, 354), (222, 336), (224, 318)])
mark("zygomatic-process-of-maxilla", [(200, 368), (206, 376), (194, 396), (178, 412), (164, 412), (162, 402), (178, 392), (190, 382)])
mark("tuberosity-of-maxilla", [(128, 426), (136, 424), (140, 446), (142, 470), (134, 474), (128, 458)])
mark("lateral-plate-of-pterygoid-process", [(88, 376), (104, 372), (118, 380), (121, 408), (120, 440), (110, 452), (98, 446), (90, 424), (87, 400)], z=-1.5)

# ---- landmarks of the lower jaw, tongue bone and larynx -----------------------------------------------------------------
mark("condylar-process-of-mandible", [(36, 374), (50, 372), (56, 382), (54, 398), (48, 410), (36, 410), (32, 390)])
mark("coronoid-process-of-mandible", [(84, 416), (94, 406), (103, 390), (114, 381), (122, 389), (120, 412), (120, 424), (102, 424)])
mark("ramus-of-mandible", [(40, 418), (64, 424), (100, 430), (122, 436), (132, 474), (140, 500), (118, 530), (92, 546), (58, 540), (50, 500), (44, 458)], z=2)
mark("angle-of-mandible", [(52, 544), (62, 552), (72, 568), (90, 584), (92, 594), (66, 582), (53, 562)])
mark("base-of-mandible", [(92, 582), (130, 592), (172, 610), (208, 626), (234, 628), (246, 632), (234, 640), (206, 638), (170, 622), (128, 604), (94, 594)])
mark("alveolar-part-of-mandible", [(148, 512), (162, 524), (188, 532), (216, 534), (246, 531), (247, 546), (218, 548), (184, 546), (156, 536)])
mark("mental-protuberance", [(240, 598), (248, 600), (255, 611), (252, 628), (242, 634), (234, 624), (234, 608)])
mark("incisive-fossa-of-mandible", [(230, 560), (240, 556), (242, 574), (240, 586), (230, 584), (226, 572)])
mark("digastric-fossa", [(220, 634), (234, 632), (244, 634), (236, 641), (222, 641)], z=4)
mark("body-of-hyoid", [(88, 690), (98, 691), (105, 697), (106, 707), (99, 716), (90, 714), (86, 704)])
mark("greater-horn-of-hyoid", [(82, 690), (84, 702), (64, 697), (44, 690), (28, 682), (22, 676), (28, 671), (44, 676), (64, 684)])
mark("lesser-horn-of-hyoid", [(82, 689), (84, 676), (88, 676), (91, 689)], z=4)
band("oblique-line-of-thyroid-cartilage", [(46, 746), (60, 762), (70, 780), (78, 800)], [4, 6, 6, 4])

# ---- landmarks of the vertebrae ----------------------------------------------------------------------------------------
for n in range(2, 10):
    (sx, sy), (fx, fy), (px, py), (bx, by) = SPINE[n], FACET[n], SIDE[n], BODY[n]
    name = NAME[n]
    mark(f"spinous-process-{name}", [(sx + 26, sy - 11 - (3 if n > 6 else 0)), (sx + 10, sy - 7), (sx, sy - 4), (sx + 1, sy + 5), (sx + 12, sy + 6), (sx + 26, sy + 1)], z=4)
    mark(f"transverse-process-{name}", [(px + 11, py - 6), (px + 13, py + 1), (px + 5, py + 7), (px - 6, py + 8), (px - 11, py + 2), (px - 4, py - 3), (px + 3, py - 2)], z=4)
    if n < 8:
        mark(f"articular-process-{name}", [(fx + 10, fy - 12), (fx + 4, fy - 18), (fx - 8, fy - 10), (fx - 14, fy - 2), (fx - 14, fy + 15), (fx - 6, fy + 18), (fx + 6, fy + 8)])
    mark(f"lamina-{name}", [(fx - 16, fy - 4), (fx - 26, fy), (fx - 34, fy + 5), (fx - 33, fy + 14), (fx - 24, fy + 15), (fx - 15, fy + 14)])
for n in range(3, 8):
    b = body(n)
    band(f"anterior-surface-of-vertebral-body-c{n}", [(b[0][0] - 3, b[0][1] + 2), (b[1][0] - 3, b[1][1]), (b[2][0] - 3, b[2][1] - 2)], 6)
for n in range(3, 7):
    x, y = SIDE[n]
    mark(f"anterior-tubercle-of-c{n}", [(x + 14, y - 8), (x + 20, y - 6), (x + 22, y + 1), (x + 16, y + 5), (x + 12, y)], z=4)
mark("transverse-process-c1", [(-14, 460), (-6, 464), (-8, 474), (-22, 478), (-32, 472), (-28, 464)], z=4)
mark("posterior-tubercle-of-atlas", [(-126, 478), (-118, 472), (-110, 476), (-110, 484), (-124, 487)], z=4)
mark("posterior-arch-of-atlas", [(-50, 458), (-70, 459), (-92, 464), (-108, 472), (-106, 481), (-90, 476), (-68, 471), (-50, 472)])
mark("lateral-mass-of-atlas", [(-44, 448), (-28, 448), (-12, 452), (-8, 460), (-14, 474), (-30, 479), (-44, 472)])
mark("scalene-tubercle", [(34, 876), (42, 872), (50, 878), (48, 887), (38, 886)], z=-2)
mark("superior-surface-of-rib-1", [(-78, 796), (-40, 828), (14, 866), (62, 892), (58, 902), (10, 880), (-44, 844), (-84, 808)], z=-2.5)
mark("external-surface-of-rib-2", [(-134, 832), (-124, 858), (-96, 886), (-60, 914), (-66, 922), (-104, 896), (-136, 864), (-142, 840)], z=-2.5)

# ---- landmarks of breastbone, collar bone and shoulder blade -----------------------------------------------------------
mark("jugular-notch", [(106, 918), (116, 912), (127, 914), (124, 921), (112, 921)], z=4)
mark("manubrium-of-sternum", [(112, 922), (126, 918), (136, 928), (144, 943), (114, 944), (108, 934)])
mark("medial-half-of-clavicle", [(48, 887), (78, 890), (106, 895), (112, 904), (102, 912), (76, 904), (48, 901)], z=2)
mark("lateral-third-of-clavicle", [(-26, 890), (-6, 890), (18, 889), (18, 903), (-6, 903), (-26, 902)], z=2)
mark("acromion", [(-78, 890), (-56, 887), (-40, 889), (-40, 903), (-22, 905), (-24, 912), (-46, 915), (-74, 908)], z=2)
mark("superior-angle-of-scapula", [(-282, 866), (-272, 862), (-258, 869), (-262, 882), (-276, 884), (-284, 876)], z=2)
band("superior-border-of-scapula", [(-262, 868), (-228, 880), (-190, 891), (-150, 900)], 7, z=2)
mark("spine-of-scapula", [(-260, 926), (-208, 909), (-150, 899), (-84, 890), (-80, 906), (-112, 909), (-160, 917), (-214, 929), (-256, 935)], z=2)
mark("medial-border-of-scapula", [(-284, 880), (-276, 884), (-274, 910), (-272, 944), (-278, 945), (-285, 906)], z=2)

# ---- ligament against bone ----------------------------------------------------------------------------------------------
band("lateral-ligament-of-temporomandibular-joint", [(66, 366), (56, 380), (48, 394), (44, 408)], [18, 16, 12, 10], z=5, blunt=True)
