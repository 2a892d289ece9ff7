"""What an attribute of a drawing may say: figures where it takes figures, so that whatever reads the drawing can draw it.

The forms are those of SVG 1.1, second edition, of which a drawing for a page needs the plain part.
"""

from __future__ import annotations

import re

MOST = 10**9
_FIGURE = re.compile(r"([+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?)(px|pt|pc|mm|cm|in|em|ex|%)?")
_TURN = re.compile(r"\s*(\w+)\s*\(([^()]*)\)\s*,?")
_TURNS = {"matrix": (6,), "translate": (1, 2), "scale": (1, 2), "rotate": (1, 3), "skewX": (1,), "skewY": (1,)}
_PATH = re.compile(r"[MmZzLlHhVvCcSsQqTtAa\d\s,.eE+-]*")

ONE_FIGURE = frozenset(
    ["width", "height", "x1", "y1", "x2", "y2", "cx", "cy", "r", "rx", "ry", "stroke-width", "stroke-miterlimit", "opacity",
     "fill-opacity", "stroke-opacity", "pathLength", "font-size"]
)  # fmt: skip
SOME_FIGURES = frozenset(["x", "y", "dx", "dy", "rotate"])
WORDS = {"width": ("auto",), "height": ("auto",), "rx": ("auto",), "ry": ("auto",), "stroke-dasharray": ("", "none")}


def is_possible(attribute: str, value: str) -> bool:
    """Whether an attribute can have this value."""
    if value.strip() in WORDS.get(attribute, ()):
        return True
    match attribute:
        case "viewBox":
            box = figures(value)
            return box is not None and len(box) == 4 and box[2] > 0 and box[3] > 0
        case "points":
            corners = figures(value)
            return corners is not None and len(corners) % 2 == 0
        case "stroke-dasharray":
            dashes = figures(value)
            return dashes is not None and all(dash >= 0 for dash in dashes)
        case "d":
            return _PATH.fullmatch(value) is not None
        case "transform":
            return _is_transform(value)
    if attribute in ONE_FIGURE:
        found = figures(value)
        return found is not None and len(found) == 1
    return attribute not in SOME_FIGURES or bool(figures(value))


def figures(value: str) -> list[float] | None:
    """The figures of a list, without their units; None where anything else stands in it."""
    found = [float(figure) for figure, _ in _FIGURE.findall(value)]
    rest = _FIGURE.sub("", value).replace(",", "").strip()
    return None if rest or any(abs(figure) > MOST for figure in found) else found


def _is_transform(value: str) -> bool:
    at = 0
    while (turn := _TURN.match(value, at)) is not None:
        found = figures(turn[2])
        if found is None or len(found) not in _TURNS.get(turn[1], ()):
            return False
        at = turn.end()
    return not value[at:].strip()
