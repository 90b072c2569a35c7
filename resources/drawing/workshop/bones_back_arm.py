"""Back view: bones, joints and landmarks of arm, forearm and hand (the back of the hand is seen, thumb outside).

Outlines are shared with bones_front_arm.py; what differs is which surface is seen and what lies in front.
"""
import bones_back
from bones_front_arm import (BONES, CARPALS, F, RADIUS, U, ULNA_BACK, Span, bone_shapes, forearm_joints, hand_joints,
                             points, polygon_of, polygon_of_path, ray_landmarks)
from pen import Shape, closed

SHAPES = []


def place(sid, d, z=0.5, piece=1):
    SHAPES.append(Shape(sid, "bone", d, piece=piece, z=z))


SHAPES.append(Shape("radius", "bone", closed(RADIUS)))
SHAPES.append(Shape("ulna", "bone", closed(ULNA_BACK)))
SHAPES += bone_shapes(["trapezium-bone"] + [s for s in CARPALS if s != "trapezium-bone"])
SHAPES += bone_shapes(sorted(BONES))
SHAPES += forearm_joints(False) + hand_joints(False) + ray_landmarks(False)

HUMERUS = Span(polygon_of_path(next(s.d for s in bones_back.SHAPES if s.id == "humerus")), U)
RAD, ULN = Span(polygon_of(RADIUS), F), Span(polygon_of(ULNA_BACK), F)

# ---- humerus ----
place("posterior-shaft-of-humerus", HUMERUS.area((90, 0.14, 0.6), (105, 0.1, 0.8), (125, 0.1, 0.86), (145, 0.14, 0.84),
                                                 (158, 0.26, 0.74)), z=0.3)
place("groove-for-radial-nerve", HUMERUS.area((54, 0.06, 0.3), (64, 0.2, 0.5), (76, 0.38, 0.68), (88, 0.56, 0.84),
                                              (100, 0.76, 0.94)))
place("anatomical-neck-of-humerus", closed([(104.4, 187.6), (107.4, 192), (107.6, 200), (104.6, 208), (101, 213),
                                            (99.6, 211), (103, 205), (105, 199), (104.6, 193), (102.4, 188.6)]))
place("medial-epicondyle-of-humerus", closed([(123.2, 375.6), (126.8, 370.6), (130.4, 367.4), (132.6, 371),
                                              (132, 377), (130.4, 381.6), (126, 379.8)]))
place("lateral-epicondyle-of-humerus", closed([(160.6, 374.6), (159.4, 368.8), (156, 364.6), (153.6, 368.6),
                                               (154.6, 375), (157.6, 379.6)]))
place("medial-supracondylar-ridge-of-humerus", HUMERUS.area((128, 0.02, 0.16), (142, 0.02, 0.17), (156, 0.02, 0.16),
                                                            (166, 0.03, 0.17)))
place("lateral-supracondylar-ridge-of-humerus", HUMERUS.area((122, 0.84, 0.97), (138, 0.83, 0.98), (152, 0.85, 0.98),
                                                             (162, 0.87, 0.98)))
# ---- ulna and radius ----
place("olecranon", closed(points(F, [(-12.6, -8.4), (-14.8, -5.2), (-14.4, -0.8), (-11.6, 1.4), (-6, 2), (0, 0.4),
                                     (3, -3), (5.4, -7), (3, -11), (-3, -11.6), (-8, -10.4)])))
place("posterior-border-of-ulna", ULN.area((8, 0.3, 0.5), (26, 0.22, 0.46), (50, 0.2, 0.42), (80, 0.2, 0.4),
                                           (110, 0.22, 0.4), (128, 0.26, 0.4)))
place("posterior-shaft-of-ulna", ULN.area((28, 0.54, 0.86), (50, 0.5, 0.86), (80, 0.48, 0.86), (110, 0.48, 0.86),
                                          (124, 0.52, 0.8)), z=0.3)
place("supinator-crest-of-ulna", closed(points(F, [(13.6, -2), (19, -4), (29, -5), (29.4, -6.6), (20, -6), (13.8,
    -4)])))
place("interosseous-border-of-ulna", ULN.area((32, 0.9, 0.98), (50, 0.89, 0.98), (80, 0.89, 0.98), (110, 0.89, 0.98),
                                              (122, 0.92, 0.97)))
place("head-of-ulna", closed(points(F, [(136.6, -6), (140, -4.8), (144.2, -5.6), (145, -9), (142.6, -12.4),
                                        (137.6, -12)])))
place("styloid-process-of-ulna", closed(points(F, [(144.8, -10), (147.6, -10.9), (149.8, -11.8), (149.6, -12.9),
                                                   (146.4, -13.4), (144, -13)])))
place("posterior-shaft-of-radius", RAD.area((44, 0.24, 0.76), (60, 0.2, 0.8), (85, 0.18, 0.8), (110, 0.18, 0.8),
                                            (124, 0.3, 0.7)), z=0.3)
place("head-of-radius", RAD.area((8.6, 0.1, 0.9), (9.6, 0.05, 0.95), (12, 0.05, 0.95), (13.8, 0.12, 0.88)))
place("neck-of-radius", RAD.area((15.4, 0.08, 0.92), (17.4, 0.08, 0.92), (19.6, 0.2, 0.92)))
place("pronator-tuberosity", RAD.area((66, 0.88, 0.96), (72, 0.84, 0.98), (78, 0.86, 0.98), (83, 0.9, 0.97)))
place("lateral-shaft-of-radius", RAD.area((86, 0.86, 0.98), (100, 0.84, 0.98), (116, 0.85, 0.98), (128, 0.88, 0.98)))
place("interosseous-border-of-radius", RAD.area((36, 0.03, 0.13), (60, 0.02, 0.14), (90, 0.02, 0.14), (118, 0.02, 0.12),
                                                (130, 0.03, 0.1)))
place("distal-end-of-radius", RAD.area((130, 0.06, 0.94), (136, 0.04, 0.96), (141, 0.04, 0.96), (144.6, 0.05, 0.95)),
      z=0.3)
place("dorsal-tubercle-of-radius", closed(points(F, [(138.4, 5.8), (140, 4.6), (144, 4.8), (145.6, 6), (144.2, 7.6),
                                                     (140.2, 7.6)])))
place("styloid-process-of-radius", closed(points(F, [(144.4, 14.6), (145.6, 11.6), (149, 11.6), (151.6, 13.8),
                                                     (150.4, 14.7), (147.4, 15)])))
