"""The pen and the fibres for views that are drawn whole (side, head): the same tools, but x may be negative."""
import importlib.util
import sys
from pathlib import Path

HERE = Path(__file__).resolve().parent


def _copy(name):
    """A second copy of a module, so that the other views keep their own."""
    spec = importlib.util.spec_from_file_location(f"side_{name}", HERE / f"{name}.py")
    module = importlib.util.module_from_spec(spec)
    sys.modules[spec.name] = module
    spec.loader.exec_module(module)
    return module


_pen = _copy("pen")
_pen.FLOOR = float("-inf")
_usual = sys.modules.get("pen")
sys.modules["pen"] = _pen  # the copied fibres draw with the copied pen
_fibres = _copy("fibres")
if _usual:
    sys.modules["pen"] = _usual
else:
    del sys.modules["pen"]
for _module in (_pen, _fibres):
    globals().update({name: value for name, value in vars(_module).items() if not name.startswith("_")})
