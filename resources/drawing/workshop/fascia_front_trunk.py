"""Front view, trunk: sheets and bands of belly wall and groin.

Drawn from memory of anatomy.
"""
from pen import Shape, closed, ribbon, stroke


def strokes(*lines):
    return [stroke(list(line)) for line in lines]


SHAPES = [
    # where the belly muscles' flat tendons part to enclose the rectus: a curved line from the ninth cartilage to the pubis
    Shape("linea-semilunaris", "deep-fascia", ribbon(
        [(36, 318), (40, 334), (42.2, 356), (42.8, 380), (41.2, 406), (35.8, 432), (26.8, 458), (17.4, 478), (13.4, 486.4)],
        [1.6, 2.6, 3, 3, 3, 3, 2.6, 2.2, 1.4], False), strokes([(39, 326), (43.4, 360), (43, 400), (36, 434), (22, 470)]), z=1),
    Shape("lacunar-ligament", "deep-fascia", closed([(13.6, 487), (18.6, 483), (23.6, 479), (22, 483.6), (19, 487.6), (15, 489.6)], (0, 2)),
          strokes([(15, 487.6), (18.4, 485), (21.6, 482)])),
    Shape("serratus-fascia", "deep-fascia", closed([
        (78, 252), (82, 262), (81.6, 280), (80.4, 300), (79, 318), (77.6, 330), (71.4, 322), (68.4, 312), (65, 297), (61.6, 281), (58.4, 268), (66, 258)], (0, 5, 10)),
        strokes([(77, 262), (70, 268), (62, 272)], [(79, 278), (73, 284), (65.6, 288)], [(78.6, 296), (75, 300), (69, 304)], [(77.6, 314), (75.6, 316), (71.6, 318)]), z=-1),
]
