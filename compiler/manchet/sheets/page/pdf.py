"""The PDF of a page: tagged, with its fonts inside, the same bytes every time. The only module that knows WeasyPrint."""

from __future__ import annotations

import contextlib
import os
import re
import sys
from collections.abc import Callable, Iterator
from functools import cache
from typing import TYPE_CHECKING, Any

from manchet.records import NamedTuple
from manchet.sheets.page.artefacts import mark_artefacts
from manchet.sheets.page.figure_places import place_figures
from manchet.sheets.page.layouts import NORMAL, LaidOut, PageLayout, fewest_sides
from manchet.sheets.page.table_heads import head_tables

if TYPE_CHECKING:
    import logging

INSTALL = {
    "linux": "apt install libpango-1.0-0 libpangoft2-1.0-0 libharfbuzz-subset0",
    "darwin": "brew install pango",
    "win32": "install MSYS2, then: pacman -S mingw-w64-x86_64-pango",
}
"""What brings Pango to a machine, as WeasyPrint's own documentation has it."""

FACES = (("SourceSansPro-Regular.ttf", 400), ("SourceSansPro-Bold.ttf", 700))

_MISSING = ".notdef glyph rendered"

_UNDRAWN = re.compile(r"Failed to (?:load image at|render SVG image) '?(data:[^\s']+)")

_STYLE = re.compile(r"<style>(.*?)</style>", re.DOTALL)
"""Of a page, shared with others of its form."""

_BROWSERS = re.compile(r'<style class="browsers">.*?</style>', re.DOTALL)
"""What a page says to browsers alone."""

PLACE = "place"
"""The class of what is of a fixed height, such as a label on a sheet of labels: what stands in it may not reach out of it."""

_PLACES = re.compile(rf'class="[^"]*\b{PLACE}"')

ROLL = "data-roll"
"""On the body of a page that is cut off where its work ends: a roll has no height of its own."""

_OPTIONS = {"pdf_variant": "pdf/ua-1"}


class Pdf(NamedTuple):
    """The file, and what is not as it should be on it."""

    content: bytes
    missing: tuple[str, ...] = ()
    """Characters that the fonts do not have, each once, in the order they turn up."""
    undrawn: tuple[str, ...] = ()
    """The addresses of pictures that the layout engine could not draw."""
    faults: tuple[str, ...] = ()
    """What the layout engine complained of: our own mistakes in style or template."""
    layout: str = NORMAL.name
    """The words of the layout that was chosen, for the page's HTML."""
    sides: int = 0
    crowded: int = 0
    """Places that do not hold what stands in them, whatever the layout."""


class NoPdf(NamedTuple):
    """Why there is none, and what to install."""

    reason: str
    install: str


class _Engine(NamedTuple):
    weasyprint: Any
    fonts: Any
    style: Any
    fetch: Any
    refused: Any
    """What the fetcher raises: not an Exception, so that WeasyPrint does not swallow it."""


_engine: _Engine | NoPdf | None = None


@contextlib.contextmanager
def _quiet_import() -> Iterator[None]:
    """While WeasyPrint is imported: our fonts only, nothing on stdout, and on Linux no search by fifty processes.

    cffi asks `ctypes.util.find_library` for each spelling of each library's name, and on Linux each question starts
    a compiler and a linker. The last spelling is the one the loader knows anyway, so the questions are answered "no".
    """
    import ctypes.util
    import warnings

    os.environ.setdefault("SOURCE_DATE_EPOCH", "0")
    os.environ["FONTCONFIG_FILE"] = os.path.join(os.path.dirname(__file__), "fonts.conf")
    search = ctypes.util.find_library
    if sys.platform == "linux":
        ctypes.util.find_library = lambda name: None
    try:
        with (
            open(os.devnull, "w") as nowhere,
            contextlib.redirect_stdout(nowhere),
            warnings.catch_warnings(),
        ):
            warnings.simplefilter("ignore")  # that the machine's fonts are not there is what we want
            yield
    finally:
        ctypes.util.find_library = search


def _import_engine() -> Any:
    """WeasyPrint itself, and the two parts of it that are used beside. Raises OSError where Pango is missing."""
    with _quiet_import():
        import weasyprint  # type: ignore[import-untyped]
        from weasyprint.text.fonts import FontConfiguration  # type: ignore[import-untyped]
        from weasyprint.urls import FatalURLFetchingError, URLFetcher  # type: ignore[import-untyped]
    return weasyprint, FontConfiguration, FatalURLFetchingError, URLFetcher


def _start() -> _Engine | NoPdf:
    try:
        weasyprint, FontConfiguration, FatalURLFetchingError, URLFetcher = _import_engine()
    except OSError as missing:
        return NoPdf(str(missing).partition("\n")[0].strip(), INSTALL.get(sys.platform, INSTALL["linux"]))
    from pathlib import Path

    import font_source_sans_pro  # type: ignore[import-untyped]

    folder = os.path.realpath(font_source_sans_pro.font_directory)

    class OwnFontsOnly(URLFetcher):  # type: ignore[valid-type, misc]
        """Reads our fonts and what the page itself holds, and refuses everything else, aloud: a sheet has no reason to ask."""

        def fetch(self, url: str, headers: Any = None) -> Any:
            from urllib.request import url2pathname

            if url.startswith("data:image/"):  # a picture that is already inside the page
                return super().fetch(url, headers)
            if url.startswith("file:"):
                path = os.path.realpath(url2pathname(url.removeprefix("file://")))
                if os.path.dirname(path) == folder:
                    return super().fetch(url, headers)
            raise FatalURLFetchingError(f"a sheet asked for {url}")

    fetch = OwnFontsOnly(allowed_protocols={"file", "data"}, allow_redirects=False)
    fonts = FontConfiguration()

    faces = "".join(
        f'@font-face {{ font-family: "Source Sans"; font-weight: {weight};'
        f' src: url("{Path(folder, file).as_uri()}"); }}\n'
        for file, weight in FACES
    )
    style = weasyprint.CSS(string=faces, font_config=fonts, url_fetcher=fetch)
    return _Engine(weasyprint, fonts, style, fetch, FatalURLFetchingError)


def engine() -> _Engine | NoPdf:
    """The layout engine, started at the first call; or why it cannot be."""
    global _engine
    if _engine is None:
        _engine = _start()
    return _engine


@contextlib.contextmanager
def _complaints() -> Iterator[list[str]]:
    """Collect what WeasyPrint logs, which is its only way of saying that a character or an option is unknown to it."""
    import logging

    said: list[str] = []

    class Ear(logging.Handler):
        def emit(self, record: logging.LogRecord) -> None:
            said.append(record.getMessage())

    logger = logging.getLogger("weasyprint")
    ear, before, level = Ear(logging.WARNING), list(logger.handlers), logger.level
    logger.handlers, logger.propagate = [ear], False
    logger.setLevel(logging.WARNING)
    try:
        yield said
    finally:
        logger.handlers, logger.propagate = before, True
        logger.setLevel(level)


def pdf_of(html: str, layouts: tuple[PageLayout, ...] = (NORMAL,)) -> Pdf | NoPdf:
    """The PDF of one of our own pages (never of a stranger's HTML) in the best of its layouts.

    A page that asks for a file is a RuntimeError.
    """
    with _complaints() as said:
        started = engine()
        if isinstance(started, NoPdf):
            return started
        try:
            if len(layouts) > 1 and _PLACES.search(html):
                once = fewest_sides(layouts, typesetter(html, started, each_once=True))
                chosen = typesetter(html, started)(once.classes)
            else:
                chosen = fewest_sides(layouts, typesetter(html, started))
            content = chosen.document.write_pdf(finisher=_finish, **_OPTIONS)
        except started.refused as asked:
            raise RuntimeError(str(asked)) from None
    missing, undrawn, faults = _told_apart(said)
    return Pdf(content, missing, undrawn, faults, chosen.classes, chosen.sides, chosen.crowded)


def _finish(document: Any, pdf: Any) -> None:
    """What PDF/UA asks of the tags beyond what the layout engine writes."""
    mark_artefacts(document, pdf)
    head_tables(document, pdf)
    place_figures(document, pdf)


def typesetter(html: str, started: _Engine, each_once: bool = False) -> Callable[[str], LaidOut]:
    """Lays the page out with the words of one layout in the class of its body, as often as asked; read but once. With `each_once`
    it has one of all places that say the same: whether that has room tells of all."""
    styles = [started.style, *(_parsed(css) for css in _STYLE.findall(html))]
    bare = _BROWSERS.sub("", _STYLE.sub("", html))
    page = started.weasyprint.HTML(string=bare, url_fetcher=started.fetch)
    body = page.etree_element.find("body")
    if each_once:
        _keep_one_of_each(body)
    form = body.get("class").split()[0]

    def lay_out(classes: str) -> LaidOut:
        body.set("class", f"{form} {classes}")
        document = page.render(stylesheets=styles, font_config=started.fonts, **_OPTIONS)
        sides = [side._page_box for side in document.pages]
        places = [box for side in sides for box in side.descendants() if _has_class(box, PLACE)]
        fillers = sum(_filled(side) for side in sides)
        crowded = sum(map(_is_crowded, places))
        if ROLL in body.attrib:
            for leaf in document.pages:
                leaf.height = _end_of(leaf._page_box) + leaf._page_box.margin_bottom
        return LaidOut(
            classes,
            len(sides),
            sum(map(_covered, sides)),
            fillers,
            document,
            crowded,
            max(map(_taken, places), default=0.0),
        )

    return lay_out


@cache
def _parsed(css: str) -> Any:
    """Most pages share their style: it is read once."""
    started = engine()
    assert not isinstance(started, NoPdf)
    return started.weasyprint.CSS(string=css, font_config=started.fonts, url_fetcher=started.fetch)


def _covered(side: Any) -> float:
    """How far down a side its work reaches: 0 for none, 1 to the end."""
    return float((_end_of(side) - side.content_box_y()) / side.height)


def _end_of(side: Any) -> float:
    """Where the work on a side ends, from its upper edge."""
    work = next(box for box in side.children if box.element_tag == "html")
    ends = (box.position_y + box.margin_height() for box in work.descendants() if _is_seen(box))
    return float(max(ends, default=side.content_box_y()))


def _keep_one_of_each(body: Any) -> None:
    """Takes out every place that says what one before it says."""
    from xml.etree.ElementTree import tostring

    seen: set[bytes] = set()
    for above in list(body.iter()):
        for place in list(above):
            if PLACE in (place.get("class") or "").split():
                said = tostring(place)
                if said in seen:
                    above.remove(place)
                seen.add(said)
    for above in list(body.iter()):
        for side in list(above):
            if side.get("class") == "side" and not len(side):
                above.remove(side)


def _is_crowded(place: Any) -> bool:
    """Whether something in it stands lower than it reaches."""
    return bool(_deep(place) > place.height + _HAIR)


def _taken(place: Any) -> float:
    """How much of its height what stands in it takes: over 1 where it reaches out of it."""
    return float(_deep(place) / place.height)


def _deep(place: Any) -> float:
    """How deep what stands in it reaches."""
    start = place.content_box_y()
    return float(max((b.position_y + b.margin_height() - start for b in place.descendants() if _is_seen(b)), default=0))


_HAIR = 0.5
"""Of the engine's own pixels (0.13 mm), by which sums of heights may differ from the height."""


def _is_seen(box: Any) -> bool:
    """Text, a picture, or whatever has a line below."""
    return hasattr(box, "text") or hasattr(box, "replacement") or getattr(box, "border_bottom_width", 0) > 0


def _filled(side: Any) -> float:
    """What the fillers cover of a side."""
    heights: dict[int, float] = {}
    for box in side.descendants():
        if _is_filler(box):  # its lines are of the same element
            heights[id(box.element)] = max(heights.get(id(box.element), 0.0), box.margin_height())
    return float(sum(heights.values()) / side.height)


def _is_filler(box: Any) -> bool:
    return _has_class(box, "filler")


def _has_class(box: Any, name: str) -> bool:
    element = box.element
    return element is not None and hasattr(box, "children") and name in element.get("class", "").split()


def _told_apart(said: list[str]) -> tuple[tuple[str, ...], tuple[str, ...], tuple[str, ...]]:
    """What the engine logged: signs that are in no font, pictures that could not be drawn, and faults; each once."""
    missing: dict[str, None] = {}
    undrawn: dict[str, None] = {}
    faults: dict[str, None] = {}
    for line in said:
        if line.startswith(_MISSING):
            missing[line.split('"')[1] if line.count('"') == 2 else '"'] = None
        elif picture := _UNDRAWN.match(line):
            undrawn[picture[1]] = None
        elif "HarfBuzz" not in line:
            faults[line] = None
    return tuple(missing), tuple(undrawn), tuple(faults)
