"""Front view, trunk: the muscles and thin sheets between the ribs and their cartilages, and the groin's joined tendon.

They follow the bones of the front view; the outlines between attachments are drawn from memory of anatomy.
"""
import math

from bones_front import CARTILAGES, PARTS, RIBS
from fibres import along
from pen import Shape, closed, ribbon, sides, stroke

SHAPES = []
DEEP = "deep-muscle"


def border(n, upper):
    """The upper or lower edge of rib n from the side round to the front, and of its cartilage, as two lists."""
    line = along(RIBS[n] + CARTILAGES.get(n, []), PARTS)
    x, y = RIBS[n][-1]
    cut = min(range(PARTS), key=lambda i: (line[i][0] - x) ** 2 + (line[i][1] - y) ** 2)
    side = max(range(PARTS), key=lambda i: line[i][0])
    one, two = sides(line, [5.6] * PARTS)
    edge = [max((one[i], two[i]), key=lambda p: -p[1] if upper else p[1]) for i in range(PARTS)]
    return edge[side + 1:cut + 1], edge[cut:]


def sheet(id_, a, b, piece, z, slant):
    """A tile between two edges, both running forwards; `slant` > 0 leads the fibres forwards as they go down."""
    a, b = along(a, 6), along(b, 6)
    lines = []
    for i in range(5):
        p, q = (a[i], b[i + 1]) if slant > 0 else (a[i + 1], b[i])
        if slant:
            lines.append(stroke([tuple(p[k] + (q[k] - p[k]) * t for k in (0, 1)) for t in (0.12, 0.5, 0.88)]))
    SHAPES.append(Shape(id_, DEEP, closed(a + b[::-1], (0, 5, 6, 11)), lines, piece, z))


for n in range(1, 10):
    upper_rib, upper_cartilage = border(n, False)
    lower_rib, lower_cartilage = border(n + 1, True)
    if len(upper_rib) > 3 and len(lower_rib) > 3:
        sheet("external-intercostals", upper_rib, lower_rib, n, -4, 1)
    if n < 7 and len(upper_cartilage) > 2 and len(lower_cartilage) > 2:
        sheet("internal-intercostals", upper_cartilage, lower_cartilage, n, -5, -1)
        sheet("external-intercostal-membrane", upper_cartilage, lower_cartilage, n, -4, 0)

# the lowest fibres of internal oblique and transversus, joined, arch over the cord to the pubic crest and pecten
SHAPES.append(Shape("conjoint-tendon", DEEP, closed([
    (24, 468), (19.4, 470.6), (14, 474.6), (9.6, 479.6), (7.4, 485), (8.4, 487), (12, 488), (17.6, 487.6), (22.4, 484.6), (19.4, 482), (19, 478), (21.4, 473.4)],
    (0, 4, 8)),
    [stroke([(22.6, 470), (16, 475), (10.4, 485)]), stroke([(22, 471.6), (17, 477.4), (14, 486.6)]), stroke([(21.6, 472.8), (18.2, 478.4), (19, 485)])], 1, 1))

# the sheet between vastus medialis and the adductors, met in the groove on the inner side of the thigh
SEPTUM = [(57, 582), (48.4, 599), (40.6, 622), (33.6, 645), (28.4, 664), (25.6, 682)]
SHAPES.append(Shape("medial-femoral-septum", "intermediate-muscle", ribbon(SEPTUM, [1.4, 2.6, 3, 3, 2.6, 1.4], False), [stroke(SEPTUM)], 1, 1))
