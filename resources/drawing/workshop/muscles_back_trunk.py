"""Back view, trunk: the deep muscles between the ribs and along the thoracic spine.

They follow the bones of the back view; the outlines between attachments are drawn from memory of anatomy.
"""
from bones_back import RIB_PARTS, RIBS, THORACIC, THORACIC_TP, thoracic_tip
from bones_back_trunk import rib_line
from fibres import along
from fibres import muscle as drawn
from pen import Shape, closed, ribbon, sides, stroke

SHAPES = []
DEEP, INTERMEDIATE = "deep-muscle", "intermediate-muscle"


def muscle(*args, z=0.0, **kwargs):
    shape = drawn(*args, **kwargs)
    shape.z = z
    SHAPES.append(shape)


def space(n, from_x, to_x):
    """Lower edge of rib n and upper edge of the next, between two distances from the midline."""
    upper = [p for p in sides(rib_line(n), [6 if n < 11 else 5] * RIB_PARTS)[0] if from_x <= p[0] <= to_x]
    lower = [p for p in sides(rib_line(n + 1), [6 if n + 1 < 11 else 5] * RIB_PARTS)[1] if from_x <= p[0] <= to_x]
    return along(upper, 6), along(lower, 6)


for n in range(1, 12):
    to_x = {10: 57, 11: 41}.get(n, 37.5 if n < 7 else 68)
    a, b = space(n, thoracic_tip(n) + 5, to_x)
    fibres = []
    for i in range(5):  # down and outwards, away from the spine
        p, q = a[i], b[i + 1]
        fibres.append(stroke([tuple(p[k] + (q[k] - p[k]) * t for k in (0, 1)) for t in (0.12, 0.5, 0.88)]))
    SHAPES.append(Shape("external-intercostals", DEEP, closed(a + b[::-1], (0, 5, 6, 11)), fibres, n, -4))
    tip = thoracic_tip(n)
    a, b = space(n, 7.6, tip + 6)
    SHAPES.append(Shape("internal-intercostal-membrane", DEEP, closed(a + b[::-1], (0, 5, 6, 11)), [], n, -5))

# each fans from a transverse process to the rib below, between tubercle and angle
STARTS = [(17, 140.6)] + [(thoracic_tip(n) - 1, THORACIC_TP[n] + 1.6) for n in range(1, 12)]
for n, (x, y) in enumerate(STARTS, 1):
    line = rib_line(n)
    tip = thoracic_tip(n)
    part = along([p for p in line if tip + 4.4 <= p[0] <= max(RIBS[n][0] - 1.6, tip + 8)], 4)
    ends = [(px, py - 2.2) for px, py in part]
    muscle("levatores-costarum", DEEP, [(x + 1.8, y), ((x + ends[-1][0]) / 2 + 1.6, (y + ends[-1][1]) / 2 - 0.6), ends[-1]],
           [(x - 1.8, y + 0.4), ((x + ends[0][0]) / 2 - 1.2, (y + ends[0][1]) / 2), ends[0]], 3, piece=n, end=ends[1:3][::-1], z=-3)

# interspinales: short pairs at the upper and the lowest thoracic spines, beside the ligament
for piece, n in enumerate((1, 2, 10, 11), 1):
    a, b = THORACIC[n] + 2.2, THORACIC[n + 1] - 3.6
    SHAPES.append(Shape("interspinales-thoracis", DEEP, closed([(0.8, a), (2.6, a + 0.4), (3.4, (a + b) / 2), (3, b - 0.4), (1, b), (0.6, (a + b) / 2)], (0, 4)),
                        [stroke([(1.4, a + 1), (1.6, (a + b) / 2), (1.6, b - 1)]), stroke([(1.9, a + 1.1), (2.2, (a + b) / 2), (2, b - 1)]),
                         stroke([(2.4, a + 1.2), (2.8, (a + b) / 2), (2.6, b - 1)])], piece, -0.5))

# multifidus: one slip from each transverse process, up and in to the spinous processes two to four levels higher
for n in range(12, 0, -1):
    tip, tp = thoracic_tip(n), THORACIC_TP[n]
    spine = THORACIC[n - 3] if n > 3 else 118 + 7.4 * (n - 1)  # the first three slips go to the neck
    low = THORACIC[n - 2] if n > 2 else spine + 14
    muscle("multifidus-thoracis", DEEP, [(tip - 7, tp - 2), (6, (tp + spine) / 2 - 1), (2, spine + 1.6)],
           [(tip - 1.6, tp - 3.2), (8.6, (tp + low) / 2 - 1.6), (2.6, low + 1.6)], 3, piece=n, z=-1, end=[(1.6, (spine + low) / 2 + 1)])

# iliocostalis, thoracic part: slips from the angles of the lower six ribs to those of the upper six and C7
muscle("iliocostalis-thoracis", INTERMEDIATE,
       [(23, 326), (33, 305), (38, 285), (38, 262), (36, 238), (34, 214), (30, 190), (25, 168), (18.4, 146), (16, 139)],
       [(30, 333), (44, 314), (49, 290), (48.6, 266), (46.4, 242), (44, 218), (40, 194), (34, 170), (25, 150), (18.6, 140)], 5, z=-1)

# the arch from the first lumbar transverse process to the twelfth rib, across quadratus lumborum
arch = [(21, 339), (26, 335.8), (32, 336), (38, 340.6)]
SHAPES.append(Shape("lateral-arcuate-ligament", DEEP, ribbon(arch, [1.8, 2.4, 2.4, 1.8], False), [stroke(arch)], 1, 1))
