"""A baker's own picture, made fit to stand inside a page: a drawing with nothing in it but lines and words, or a photograph.

What comes out is a `data:` address, so that the page stays one file and asks for nothing. A drawing is written anew
from what is known to be harmless; anything else in it is refused, not dropped in silence.
"""

from __future__ import annotations

import re
from xml.parsers import expat

from manchet.records import NamedTuple
from manchet.workspace.drawing_values import is_possible
from manchet.workspace.photographs import is_whole_jpeg, is_whole_png

MOST_BYTES = 2_000_000
MOST_ELEMENTS = 5_000
DEEPEST = 60
"""Elements inside one another."""
LONGEST = 40
"""Characters of a value that is quoted."""

SVG = "http://www.w3.org/2000/svg"
DRAWN = frozenset(
    {"svg", "g", "path", "line", "polyline", "polygon", "rect", "circle", "ellipse", "text", "tspan", "title", "desc"}
)
SAID = frozenset(
    [
        "viewBox",
        "width",
        "height",
        "x",
        "y",
        "x1",
        "y1",
        "x2",
        "y2",
        "cx",
        "cy",
        "r",
        "rx",
        "ry",
        "d",
        "points",
        "transform",
        "fill",
        "stroke",
        "stroke-width",
        "stroke-linecap",
        "stroke-linejoin",
        "stroke-dasharray",
        "stroke-miterlimit",
        "fill-rule",
        "opacity",
        "fill-opacity",
        "stroke-opacity",
        "font-size",
        "font-family",
        "font-weight",
        "font-style",
        "text-anchor",
        "dx",
        "dy",
        "rotate",
        "pathLength",
        "preserveAspectRatio",
        "role",
        "aria-label",
        "version",
        "id",
    ]
)
"""Attributes of such a drawing. None of them can name another file."""

_REACHES_OUT = re.compile(r"url\s*\(|:\s*//|javascript|@import|expression", re.IGNORECASE)
_JPEG, _PNG = b"\xff\xd8\xff", b"\x89PNG\r\n\x1a\n"


class SafePicture(NamedTuple):
    """A picture that can be shown: its title ("" where it has none) and the address that holds it."""

    title: str
    address: str


class RefusedPicture(NamedTuple):
    """Why it cannot be: "large", "kind", "damaged", or "reaches out" with what does."""

    why: str
    what: str = ""


def safe_picture(data: bytes) -> SafePicture | RefusedPicture:
    """The picture, whatever its name says it is: SVG, PNG or JPEG by its first bytes."""
    from binascii import b2a_base64  # base64 and html take longer to load than a picture to read

    if len(data) > MOST_BYTES:
        return RefusedPicture("large")
    for begins, kind, is_whole in ((_PNG, "png", is_whole_png), (_JPEG, "jpeg", is_whole_jpeg)):
        if data.startswith(begins):
            address = f"data:image/{kind};base64,{b2a_base64(data, newline=False).decode()}"
            return SafePicture("", address) if is_whole(data) else RefusedPicture("damaged")
    if b"<svg" in data[:2000]:
        drawn = _redraw(data)
        if isinstance(drawn, RefusedPicture):
            return drawn
        text, title = drawn
        return SafePicture(title, "data:image/svg+xml;base64," + b2a_base64(text.encode(), newline=False).decode())
    return RefusedPicture("kind")


_ESCAPED = str.maketrans({"&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;", "'": "&#x27;"})
"""As `html.escape` writes them."""


class _Trouble(Exception):
    def __init__(self, refused: RefusedPicture) -> None:
        super().__init__(refused.why)
        self.refused = refused


def _redraw(data: bytes) -> tuple[str, str] | RefusedPicture:
    """The drawing written anew, and its title."""
    parts: list[str] = []
    title: list[str] = []
    open_: list[str] = []
    seen = 0

    def start(name: str, attributes: dict[str, str]) -> None:
        nonlocal seen
        seen += 1
        space, _, local = name.rpartition(" ")
        if space != SVG or local not in DRAWN:
            raise _Trouble(RefusedPicture("reaches out", local or name))
        if seen > MOST_ELEMENTS or len(open_) > DEEPEST:
            raise _Trouble(RefusedPicture("large"))
        said = []
        for key, value in attributes.items():
            if key not in SAID or _REACHES_OUT.search(value):
                raise _Trouble(RefusedPicture("reaches out", key.rpartition(" ")[2]))
            if not is_possible(key, value):
                raise _Trouble(RefusedPicture("damaged", f'{key}="{value[:LONGEST]}"'))
            said.append(f' {key}="{value.translate(_ESCAPED)}"')
        own = f' xmlns="{SVG}"' if not open_ else ""
        parts.append(f"<{local}{own}{''.join(said)}>")
        open_.append(local)

    def end(name: str) -> None:
        parts.append(f"</{open_.pop()}>")

    def text(words: str) -> None:
        if open_[-1] in ("text", "tspan", "title", "desc"):
            parts.append(words.translate(_ESCAPED))
            if open_ == ["svg", "title"]:
                title.append(words)

    def never(*_: object) -> None:
        raise _Trouble(RefusedPicture("reaches out", "DOCTYPE"))

    parser = expat.ParserCreate(namespace_separator=" ")
    parser.StartElementHandler, parser.EndElementHandler = start, end
    parser.CharacterDataHandler, parser.StartDoctypeDeclHandler = text, never
    try:
        parser.Parse(data, True)
    except expat.ExpatError:
        return RefusedPicture("damaged")
    except (LookupError, ValueError):
        return RefusedPicture("damaged", "its encoding is none that is known")
    except _Trouble as trouble:
        return trouble.refused
    if not parts or not parts[0].startswith("<svg"):
        return RefusedPicture("kind")
    return "".join(parts), " ".join("".join(title).split())
