"""The pen for views that are drawn whole (side, head): the same tools, but x may be negative."""
import importlib.util
from pathlib import Path

_spec = importlib.util.spec_from_file_location("sidepen_tools", Path(__file__).resolve().parent / "pen.py")
_tools = importlib.util.module_from_spec(_spec)
import sys  # noqa: E402

sys.modules["sidepen_tools"] = _tools
_spec.loader.exec_module(_tools)
_tools.FLOOR = float("-inf")
globals().update({name: value for name, value in vars(_tools).items() if not name.startswith("__")})
