"""A page laid out for its paper, without the PDF: quicker, and what stands where can be measured."""

from __future__ import annotations

import re
from typing import Any, NamedTuple

from manchet.sheets.page.layouts import fewest_sides
from manchet.sheets.page.pdf import NoPdf, engine, typesetter
from manchet.sheets.registry import form_called

FORM = re.compile(r'<body class="(\w+)')


class LaidPage(NamedTuple):
    """Its lines in order, and how far down the last of them goes, as a share of the room there is."""

    lines: tuple[str, ...]
    down: float

    @property
    def words(self) -> str:
        return " ".join(self.lines)


def laid_out(html: str) -> list[LaidPage]:
    """The sides of the layout that is printed."""
    started = engine()
    assert not isinstance(started, NoPdf), started
    form = FORM.search(html)
    assert form is not None
    chosen = fewest_sides(form_called(form[1]).layouts, typesetter(html, started))
    return [_on(side._page_box) for side in chosen.document.pages]


def placed(page: Any) -> str:
    """What stands where on a page, to the millimetre from its upper left corner: a line of text for each line, and each box for
    the pen with its size. For a golden file."""
    lines: dict[tuple[int, int], list[str]] = {}
    for box in page.descendants():
        at = round(box.position_y * MM), round(box.position_x * MM)
        if hasattr(box, "text") and box.text.strip():
            lines.setdefault(at, []).append(box.text)
        elif _is_for_the_pen(box):
            size = f"{box.border_width() * MM:.1f} x {box.border_height() * MM:.1f}"
            lines.setdefault(at, []).append(f"[{size}]")
    return "\n".join(f"{y:4} {x:4}  {''.join(text)}" for (y, x), text in sorted(lines.items()))


MM = 25.4 / 96


def _is_for_the_pen(box: Any) -> bool:
    element = box.element
    return (
        element is not None
        and bool({"tick", "box"} & set(element.get("class", "").split()))
        and hasattr(box, "border_width")
    )


def _on(page: Any) -> LaidPage:
    work = next(box for box in page.children if box.element_tag == "html")
    lines = [box for box in work.descendants() if hasattr(box, "text")]
    ends = (box.position_y + box.height for box in lines)
    return LaidPage(tuple(box.text for box in lines), (max(ends) - page.content_box_y()) / page.height)
