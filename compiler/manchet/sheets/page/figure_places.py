"""Where a drawing stands on its page, said in the tags of a PDF: a screen that magnifies what is read out finds it.

The type engine writes the place in its own pixels from the upper left corner. A PDF measures in points from the lower left
(ISO 32000-1, 8.3.2.3 and 14.8.5.4.3).
"""

from __future__ import annotations

from typing import Any

PIXEL = 0.75
"""Points."""


def place_figures(_: Any, pdf: Any) -> None:
    """The finisher of a PDF: rewrites the place of every figure."""
    sides = {item.reference: item["MediaBox"] for item in pdf.objects if _is(item, "Type", "/Page")}
    for figure in pdf.objects:
        if _is(figure, "S", "/Figure"):
            left, top, right, bottom = (PIXEL * side for side in figure["A"]["BBox"])
            height = sides[figure["Pg"]][3]
            place = left, height - bottom, right, height - top
            figure["A"]["BBox"] = b"[%s]" % b" ".join(b"%.3f" % side for side in place)


def _is(item: Any, name: str, value: str) -> bool:
    return isinstance(item, dict) and item.get(name) == value
