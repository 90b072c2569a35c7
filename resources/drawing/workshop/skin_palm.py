"""Surface regions, palm: the patient's left palm as in the front view, fingers down, thumb outside.

Six of these units make one unit of the body drawing. The outline is the figure's own hand, turned upright: P gives the
place of a point in the hand's frame (s from the wrist crease to the finger tips, t towards the thumb, body units).
Breadth and length follow ANSUR II, as in the figure; the creases that part the regions are drawn from memory of anatomy.
"""
import math

from figure import CORNER, HAND, HAND_ANGLE, Net, WRIST
from pen import Shape, outline, tile

SCALE, MID, CREASE = 6.0, 182.0, 180.0
TOP = -10.0  # the forearm is cut off here, 60 units above the crease


def P(s, t, *rest):
    return (round(MID + SCALE * t, 2), round(CREASE + SCALE * s, 2), *rest)


def frame(x, y):
    """s and t of a point of the front view."""
    sin, cos = math.sin(HAND_ANGLE), math.cos(HAND_ANGLE)
    dx, dy = x - WRIST[0], y - WRIST[1]
    return dx * sin + dy * cos, dx * cos - dy * sin


def _hand():
    return [P(*frame(p[0], p[1]), *p[2:]) for p in HAND]


net = Net()
line = net.add
line(P(TOP, 0, "top"), P(TOP, 16.6, "top-out", CORNER), *_hand(), P(TOP, -16.2, "top-in", CORNER), P(TOP, 0, "top-end"))
OUTLINE = outline(net.contours[0].between("top", "top-end"))

line("wrist-in", P(0.8, -8), P(1.1, 1, "wrist-mid"), P(0.4, 9), "wrist-out")
line("thumb-out", P(37.6, 31.4), P(41.8, 29), "thumb-web")
line("index-out", P(62.2, 19.6), P(62.6, 14.4), "web-2")
line("web-2", P(64.6, 7.8), P(64.8, 2), "web-3")
line("web-3", P(63.2, -5), P(62.4, -9.4), "web-4")
line("web-4", P(60.2, -16), P(59.6, -20.4), "little-in")
line("wrist-mid", P(10, 2.6), P(20, 6.6), P(29, 13), P(36.4, 20), "thumb-web")
line("wrist-mid", P(12, -2.2), P(26, -6.4), P(40, -13.4), P(48, -19.4), "hypothenar-out")

region = net.region
SHAPES = [
    Shape("anterior-region-of-wrist", "skin",
          tile(*net.walk(["top", "wrist-out", "wrist-mid", "wrist-in", "top-end"])[:-1])),
    region("thenar-eminence", "wrist-out", "thumb-out", "thumb-web", "wrist-mid"),
    region("palm", "wrist-mid", "thumb-web", "index-out", "web-2", "web-3", "web-4", "little-in", "hypothenar-out"),
    region("hypothenar-eminence", "wrist-mid", "hypothenar-out", "wrist-in"),
    region("thumb", "thumb-out", "thumb-tip", "thumb-web"),
    region("index-finger", "index-out", "index-tip", "web-2"),
    region("middle-finger", "web-2", "middle-tip", "web-3"),
    region("ring-finger", "web-3", "ring-tip", "web-4"),
    region("little-finger", "web-4", "little-tip", "little-in"),
]
