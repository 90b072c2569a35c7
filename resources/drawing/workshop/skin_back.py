from figure import body_outline

OUTLINE = body_outline("back")
SHAPES = []
