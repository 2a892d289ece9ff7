"""A page laid out for its paper, without the PDF: quicker, and what stands where can be measured."""

from __future__ import annotations

from typing import Any, NamedTuple

from manchet.sheets.page.pdf import NoPdf, engine


class LaidPage(NamedTuple):
    """Its lines in order, and how far down the last of them goes, as a share of the room there is."""

    lines: tuple[str, ...]
    down: float

    @property
    def words(self) -> str:
        return " ".join(self.lines)


def laid_out(html: str) -> list[LaidPage]:
    started = engine()
    assert not isinstance(started, NoPdf), started
    page = started.weasyprint.HTML(string=html, url_fetcher=started.fetch)
    laid = page.render(stylesheets=[started.style], font_config=started.fonts)
    return [_on(page._page_box) for page in laid.pages]


def _on(page: Any) -> LaidPage:
    work = next(box for box in page.children if box.element_tag == "html")
    lines = [box for box in work.descendants() if hasattr(box, "text")]
    ends = (box.position_y + box.height for box in lines)
    return LaidPage(tuple(box.text for box in lines), (max(ends) - page.content_box_y()) / page.height)
