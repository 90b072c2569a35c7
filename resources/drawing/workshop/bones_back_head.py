"""Back view: skull beside the occipital bone, the jaw seen past the neck, and felt points of head and neck.

All outlines are drawn from memory of anatomy around the occipital bone and the cervical vertebrae of bones_back.py.
"""
from pen import Shape, closed, half, pebble, ribbon

SHAPES = []
FAR, SKULL, FELT = -2, -1, 1  # depth within the bone layer


def paired(sid, points, corners=(), z=FELT):
    SHAPES.append(Shape(sid, "bone", closed(points, corners), z=z))


def mid(sid, points, corners=(), z=FELT):
    SHAPES.append(Shape(sid, "bone", half(points, corners), z=z))


def strip(sid, points, widths, z=FELT):
    SHAPES.append(Shape(sid, "bone", ribbon(points, widths, blunt=False), z=z))


def small(sid, x, y, rx=2.2, ry=2.2, tilt=0.0, z=FELT):
    SHAPES.append(Shape(sid, "bone", pebble(x, y, rx, ry, tilt), z=z))


# ---- jaw, seen past the neck; skull -------------------------------------------------------------------------------
mid("mandible", [(0, 107), (12, 106.6), (18.6, 106.6), (22.4, 100), (24.4, 88), (29, 85.6), (28.6, 80.8), (30.8, 78.8),
                 (34, 79.2), (34.6, 81.6), (32.8, 84.8), (32, 90), (31.4, 98), (30.4, 106), (28.8, 111.6),
                 (25.6, 116.8), (20.4, 121.6), (14.4, 125.2), (9, 127.6), (4.6, 127.2), (0, 126.2)], (2,), FAR)
LAMBDOID = [(0, 37.4), (5, 39), (13, 46), (22, 54.6), (29.4, 65), (33.4, 76)]
paired("temporal-bone", [(33.2, 75), (35.6, 70.6), (39.4, 66.4), (41.2, 61.4), (40.8, 67), (40, 72), (39.8, 76.6),
                         (38.6, 80), (38.2, 84), (37.4, 88.6), (35.2, 92.6), (32.6, 92.4), (30.6, 89.6), (27, 89),
                         (24, 89.6), (27, 87), (31, 84)], (0, 3, 14), SKULL)
paired("parietal-bone", [(0, 2.6), (12, 4), (22, 8.4), (30.6, 16.4), (37, 27.4), (40.6, 40.6), (41.6, 52),
                         (41.2, 61.4), (39.4, 66.4), (35.6, 70.6), (33.4, 76)] + LAMBDOID[-2::-1], (0, 7, 10, 15),
       SKULL)

# ---- joints -------------------------------------------------------------------------------------------------------
strip("occipitomastoid-suture", [(33.4, 77.4), (32.2, 82), (28.6, 86.4), (24.6, 89.2)], [1.5, 1.7, 1.7, 1.5])
strip("parietomastoid-suture", [(34.4, 74), (36.4, 70.4), (39.6, 67)], [1.5, 1.7, 1.5])

# ---- landmarks: skull ---------------------------------------------------------------------------------------------
strip("superior-temporal-line", [(38, 32), (39.2, 42), (39, 53), (37.6, 62)], [1.2, 1.6, 1.6, 1.2])
strip("inferior-temporal-line", [(40.2, 41), (40.9, 48), (40.7, 56), (39.8, 62)], [1, 1.3, 1.3, 1])
paired("area-between-nuchal-lines", [(1.6, 81.6), (6, 80.2), (12, 79.6), (20.4, 81.8), (26, 84), (24.4, 85.6),
                                     (17.6, 84.8), (9.4, 85.2), (3, 86.6), (1.4, 85)])
strip("inferior-nuchal-line", [(2, 88.6), (7, 87.4), (13, 87), (19, 87.4), (23, 88.4)], [1.4, 1.9, 2, 1.9, 1.4])
paired("mastoid-process", [(34, 83), (37.6, 83.6), (36.8, 88.2), (35, 91.8), (33.4, 91.2), (32.8, 87.4)])
strip("mastoid-notch", [(31.6, 85.4), (31, 87.8), (31.6, 90.2)], [1.2, 1.6, 1.2])

paired("angle-of-mandible", [(30, 105.4), (28.6, 111), (25.6, 116), (22.6, 118.4), (23, 115), (26, 111), (27.6, 106.4)])

# ---- landmarks: neck ----------------------------------------------------------------------------------------------
CERVICAL = {2: 104, 3: 111, 4: 118, 5: 124.5, 6: 131.5, 7: 139}  # middle of the arch, as in bones_back.py
mid("posterior-tubercle-of-atlas", [(0, 94.8), (1.8, 95.2), (2.6, 97), (1.8, 98.8), (0, 99.2)])
paired("posterior-arch-of-atlas", [(3.4, 95.4), (7, 94.8), (10.6, 95.2), (10.8, 98.2), (7, 98.6), (3.4, 98.6)])
small("lateral-mass-of-atlas", 14, 97, 2.4, 2.4)
mid("spinous-process-c2", [(0, 102), (2, 102.4), (4.4, 106), (4.2, 108.8), (2.4, 108.8), (1, 107.6), (0, 107.4)])
for n in (3, 4, 5):
    y = CERVICAL[n]
    mid(f"spinous-process-c{n}", [(0, y - 1.4), (1.4, y - 1), (2.8, y + 2.4), (2.6, y + 4.6), (1.4, y + 4.4),
                                  (0, y + 3.6)])
for n in range(2, 8):
    small(f"articular-process-c{n}", 8.4, CERVICAL[n] + 0.2, 1.9, 2.5)
for n, x in ((5, 13.6), (6, 14), (7, 16)):
    small(f"transverse-process-c{n}", x, CERVICAL[n] - 0.4, 2.4, 2.3)
strip("superior-border-of-scapula", [(50, 171.8), (60, 173.4), (70, 176), (77, 179)], [1.6, 2.2, 2.2, 1.6])
