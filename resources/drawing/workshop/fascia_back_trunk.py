"""Back view, trunk: the band from the coccyx to the skin behind it.

Drawn from memory of anatomy.
"""
from pen import Shape, half, stroke

SHAPES = [
    Shape("anococcygeal-ligament", "deep-fascia", half([(0, 488), (1.6, 488.6), (2.4, 492), (2, 496.4), (1.2, 500), (0, 501)]),
          [stroke([(0.7, 490), (1, 494), (0.6, 499)])]),
]
