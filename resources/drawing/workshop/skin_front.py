from figure import body_outline

OUTLINE = body_outline("front")
SHAPES = []
