"""Surface regions, sole: the patient's left sole seen from the foot end of the table, toes up, great toe at the midline.

Five of these units make one unit of the body drawing. Foot length and breadth follow ANSUR II (as in the drawing notes);
the toes' lengths and the borders of the regions are drawn from memory of anatomy.
"""
from figure import CORNER, Net
from pen import outline

C = CORNER
OUTSIDE = [
    # from the heel's outer border round the heel, up the inner border, over the toes and down the outer border
    (267, 772, "heel-out"), (263.4, 812), (258, 852), (245, 890), (222, 916), (190, 928.6), (160, 930, "heel-low"), (130, 922),
    (105, 902), (90, 872), (83, 836), (81.4, 800), (83, 764, "heel-in"), (86, 726), (87, 688), (84.4, 644),
    (78, 596), (69, 548), (58, 500), (46, 455, "ball-in"), (34, 408), (26.6, 366), (25.4, 334), (30.4, 302), (39, 276, "toe-1-in"),
    (42.4, 256), (40, 232), (38.6, 206), (44, 178), (59, 157), (79, 149.6, "toe-1-tip"), (99, 155.4), (113, 173),
    (118.6, 199), (117.4, 226), (114.6, 247), (118, 262, "cleft-1", C), (121.4, 246), (123.4, 224), (121.6, 204), (121, 184),
    (127, 166), (140.6, 157, "toe-2-tip"), (156, 160.4), (166, 176), (168, 198), (165, 222), (162.6, 244), (166.4, 266.6, "cleft-2", C),
    (169.4, 250), (170.4, 234), (168.6, 216), (171.6, 199), (182, 187.4), (195.6, 185.2, "toe-3-tip"), (208, 193),
    (214, 208), (214.2, 226), (211, 246), (208.8, 265), (212.6, 288.6, "cleft-3", C), (215.2, 274), (215.6, 261),
    (214.6, 248), (218.4, 234), (228.6, 224.6), (241.4, 224, "toe-4-tip"), (252.6, 232), (258, 247), (257.4, 265),
    (254, 283), (251.8, 300), (256.6, 322.6, "cleft-4", C), (258.8, 312), (259.4, 301), (261.6, 288.4), (269, 277.4), (280.6, 271.8, "toe-5-tip"),
    (293.4, 275.4), (302.4, 288), (306.6, 307), (308.4, 330), (311.6, 354, "toe-5-out"), (315.6, 382), (316.8, 410),
    (314.4, 440), (309.4, 470, "ball-out"), (303.8, 505), (299.8, 545), (298.4, 585), (297.2, 622), (291.4, 662),
    (281.6, 704), (272.6, 740), (267, 772, "heel-out-end"),
]

net = Net()
line = net.add
line(*OUTSIDE)
OUTLINE = outline(net.contours[0].between("heel-out", "heel-out-end"))

# where the toes leave the ball: the bent creases beneath them
line("toe-1-in", (58, 285), (82, 288.6), (104, 279), "cleft-1")
line("cleft-1", (130, 274), (149, 277.6), "cleft-2")
line("cleft-2", (177, 283), (196, 291), "cleft-3")
line("cleft-3", (221, 305), (239, 316.4), "cleft-4")
line("cleft-4", (266, 339), (288, 351.6), "toe-5-out")
# the ball's hinder edge, just behind the heads of the metatarsal bones
line("ball-in", (78, 440), (112, 424), (146, 418, "ball-mid"), (190, 428), (232, 448), (270, 468, "ball-strip"), "ball-out")
# heel pad's front edge: once for either name of the outline's first point
HEEL = ["heel-in", (112, 744), (146, 735, "heel-mid"), (192, 737), (232, 750, "heel-strip")]
line(*HEEL, "heel-out")
line(*HEEL, "heel-out-end")
line("ball-mid", (150, 480), (154, 560), (152, 650), "heel-mid")
line("ball-strip", (264, 520), (259, 580), (252, 640), (243, 696), "heel-strip")

region = net.region
SHAPES = [
    region("great-toe", "toe-1-in", "toe-1-tip", "cleft-1"),
    region("second-toe", "cleft-1", "toe-2-tip", "cleft-2"),
    region("third-toe", "cleft-2", "toe-3-tip", "cleft-3"),
    region("fourth-toe", "cleft-3", "toe-4-tip", "cleft-4"),
    region("little-toe", "cleft-4", "toe-5-tip", "toe-5-out"),
    region("ball-of-foot", "ball-in", "toe-1-in", "cleft-1", "cleft-2", "cleft-3", "cleft-4", "toe-5-out", "ball-out",
           "ball-strip", "ball-mid"),
    region("plantar-region-medial", "heel-in", "ball-in", "ball-mid", "heel-mid"),
    region("plantar-region-lateral", "heel-mid", "ball-mid", "ball-strip", "heel-strip"),
    region("lateral-border-of-foot", "heel-strip", "ball-strip", "ball-out", "heel-out-end"),
    region("heel-region", "heel-out", "heel-low", "heel-in", "heel-mid", "heel-strip"),
]
