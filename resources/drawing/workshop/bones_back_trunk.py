"""Back view, trunk: rib borders, tubercles and tips, laminae, sacral and coccygeal points, costotransverse joints, and the
ligaments that lie against these bones. They follow the bones of the back view; details are drawn from memory of anatomy.
"""
from bones_back import LUMBAR, LUMBAR_TIP, RIB_PARTS, RIBS, THORACIC, THORACIC_TP, thoracic_tip
from fibres import along
from pen import Shape, closed, half, pebble, ribbon, sides, stroke

SHAPES = []


def put(id_, d, z=0.5, piece=1, lines=()):
    SHAPES.append(Shape(id_, "bone", d, [stroke(list(line)) for line in lines], piece, z))


def rib_line(n):
    ax, ay, sx, sy, tx, ty = RIBS[n]
    tp, tip = THORACIC_TP[n], thoracic_tip(n)
    return along([(8, tp - 3), (tip, tp + 0.4), (ax, ay), (sx, sy), (tx, ty)], RIB_PARTS)


def edge(n, upper):
    """A strip along the rib's upper or lower border, where the shoulder blade does not cover it."""
    line = rib_line(n)
    from_x = thoracic_tip(n) + 5.5
    to_x = min(RIBS[n][2] - 1, 37.4) if n < 7 else RIBS[n][2] + 1
    part = [p for p in line if from_x <= p[0] <= to_x]
    if len(part) < 3:
        part = along([p for p in line if from_x - 2 <= p[0] <= to_x + 3], 5)
    full = 6.4 if n < 11 else 5.4
    low, high = sides(part, [full * 0.62] * len(part))
    centre = high if upper else low
    k = max(1, len(centre) // 7)
    picked = centre[::k] + ([] if (len(centre) - 1) % k == 0 else [centre[-1]])
    return ribbon(picked, [1.2] + [2.2] * (len(picked) - 2) + [1.2], False)


for n in range(1, 13):
    if n > 1:
        put(f"superior-border-of-rib-{n}", edge(n, True))
    if n < 12:
        put(f"costal-groove-of-rib-{n}", edge(n, False))
    tip, tp = thoracic_tip(n), THORACIC_TP[n]
    if 1 < n < 11:
        put(f"tubercle-of-rib-{n}", pebble(tip + 3.3, tp + 0.9, 1.9, 2.2), 0.8)
        put(f"costotransverse-joint-{n}", ribbon([(tip + 0.2, tp - 3), (tip + 1.4, tp - 0.4), (tip + 0.4, tp + 2.4)], [1.2, 2.2, 1.2], False), 0.9)
put("tip-of-rib-11", closed([(63, 334.4), (66.6, 336.4), (69.4, 341.6), (69.6, 344.4), (67.4, 342.6), (64, 338), (61.8, 336.2)]))
put("tip-of-rib-12", closed([(42, 342.6), (44.4, 346), (47, 350.4), (47.8, 353), (45.6, 351.4), (42.4, 347.4), (40, 344.4)]))

# ---- laminae: the plates between spinous process and articular processes -------------------------------------------
for n in range(1, 13):
    y = THORACIC_TP[n]
    put(f"lamina-t{n}", closed([(3.4, y - 4.6), (6, y - 6.2), (8.4, y - 5.6), (8.8, y - 2), (8.6, y + 2.4), (7.6, y + 6.4), (5.4, y + 7.6),
                                (3.6, y + 6), (3, y)]), 0.3)
for n in range(1, 6):
    y = LUMBAR[n]
    put(f"lamina-l{n}", closed([(3.8, y - 5.6), (6.6, y - 6.6), (9.4, y - 4.6), (10.4, y - 0.8), (10, y + 3.6), (7.8, y + 5.6), (5.6, y + 4.4),
                                (4, y + 3.2), (3.4, y - 1)]), 0.3)

# ---- sacrum and coccyx ------------------------------------------------------------------------------------------------
put("sacral-hiatus", half([(0, 462.4), (1.6, 463.6), (2.8, 467.6), (3.8, 471.4), (2.4, 472.6), (0, 472.8)]))
put("dorsal-surface-of-coccyx", half([(0, 475.8), (3.6, 475), (5.6, 476.8), (4.2, 480), (3, 484.6), (2, 487), (0, 487.4)]))
put("apex-of-coccyx", half([(0, 487), (2.4, 486.8), (2.8, 488.6), (1.9, 490.6), (0, 492)]), 0.6)
put("sacrococcygeal-ligament", half([(0, 465), (2.2, 465.4), (3.4, 470), (3.4, 476), (2.4, 482), (0, 484)]), 0.4,
    lines=[[(0.8, 466.4), (1.4, 474), (0.8, 482)], [(2, 467.4), (2.6, 474), (1.8, 480.6)]])

# ---- ligaments --------------------------------------------------------------------------------------------------------
for n in range(1, 11):
    tip, tp = thoracic_tip(n), THORACIC_TP[n]
    put("lateral-costotransverse-ligament", ribbon([(tip - 1, tp - 2.6), (tip + 2, tp - 2), (tip + 4.4, tp - 0.8)], [1.8, 2.2, 2.2], False), 0.7, n)
for n in range(1, 12):
    tip, y0, y1 = thoracic_tip(n), THORACIC_TP[n] + 2.2, THORACIC_TP[n + 1] - 5.2
    put("superior-costotransverse-ligament", closed([(tip - 5.4, y0), (tip - 0.6, y0), (tip - 1.6, (y0 + y1) / 2), (tip - 3.4, y1 + 1), (tip - 7.4, y1),
                                                     (tip - 6.2, (y0 + y1) / 2)], (0, 1, 3, 4)), -0.5, n)
ARCH = [THORACIC_TP[n] for n in range(1, 13)] + [LUMBAR[n] - 0.6 for n in range(1, 6)] + [421]
WIDE = [8.6] * 12 + [9.4] * 5
for n, (a, b) in enumerate(zip(ARCH, ARCH[1:]), 1):
    w = WIDE[n - 1]
    top, low = a + 4.4, b - 4.6
    put("ligamenta-flava", closed([(1, top + 1.6), (w - 3, top), (w, top + 0.6), (w - 0.4, (top + low) / 2), (w, low - 0.4), (w - 3, low + 0.6), (1, low + 1),
                                   (0.6, (top + low) / 2 + 1)], (0, 2, 4, 6)), -0.6, n)
SPINES = [THORACIC[n] for n in range(1, 13)] + [LUMBAR[n] + 3 for n in range(1, 6)]
for n, (a, b) in enumerate(zip(SPINES, SPINES[1:]), 1):
    high, low = a + 2.4, b - (7 if n < 11 else 8.6)
    if low - high < 3:
        high, low = (high + low) / 2 - 1.5, (high + low) / 2 + 1.5
    put("interspinous-ligament", half([(0, high), (1.5, high + 0.3), (1.9, (high + low) / 2), (1.5, low - 0.3), (0, low)]), 0.4, n)
TIPS = [(thoracic_tip(n), THORACIC_TP[n]) for n in range(1, 13)] + [(LUMBAR_TIP[n] - 1.4, LUMBAR[n] - 3.5) for n in range(1, 6)]
for n, ((xa, ya), (xb, yb)) in enumerate(zip(TIPS, TIPS[1:]), 1):
    wide = 1.8 if n < 12 else 3
    put("intertransverse-ligament", ribbon([(xa - 1.6, ya + 2), ((xa + xb) / 2 - 1.8, (ya + yb) / 2), (xb - 1.6, yb - 2.6)], [wide, wide * 0.8, wide]), -0.5, n)
put("ischiofemoral-ligament", closed([
    (50.4, 494), (54.4, 488.4), (60, 483.8), (66, 482), (72, 482.8), (78.8, 486), (79.8, 489.4), (73, 488.6), (67.6, 490), (60.4, 494.6), (54.2, 498)],
    (5, 6)), 0.3,
    lines=[[(53, 494.4), (60, 488.4), (67, 485.2), (78, 487.4)], [(55, 496), (61.4, 491.4), (68, 487.8), (78.6, 488.6)],
           [(55, 489.6), (61, 485.4), (66.4, 483.4), (77, 486.4)]])
