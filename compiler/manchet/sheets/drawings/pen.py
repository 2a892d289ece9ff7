"""The pen that every drawing is made with: lines, tubes, dimensions, as SVG text.

A drawing stands beside its step: 3 cm wide and 17 mm high at most, unless it says a size of its own. Words in it are 8 points
high on paper, whatever its scale. Every attribute stands on its own element, so that no style of the
page reaches in and none leaks out. Coordinates are plain numbers of the paper, not figures of a formula.
"""

from __future__ import annotations

from collections.abc import Iterable
from html import escape
from math import ceil, hypot

from manchet.records import NamedTuple

FACE = "Source Sans, Source Sans 3, Source Sans Pro, Liberation Sans, Arial, sans-serif"
LINE, THIN = 1.8, 0.9
MILLIMETRES, WORDLESS = 0.315, 0.24
"""Of paper for one unit; at most, of a drawing with no words to read in it."""
WIDEST, HIGHEST = 30.0, 17.0
"""Millimetres of the column beside a step, and of its line."""
LETTER = 2.835
"""Millimetres of a letter: 8 points."""


class Art(NamedTuple):
    """What is drawn on so wide and high a piece of paper, and where that begins, without its title."""

    width: float
    height: float
    body: str
    top: float = 0.0
    unit: float = MILLIMETRES
    """Millimetres of paper for one unit, where there are words in it: they are `letters(unit)` high."""


class Drawing(NamedTuple):
    """A finished drawing: its name in our closed list, the same in words, the SVG, and how many millimetres high it is."""

    name: str
    title: str
    svg: str
    high: int


def drawing(name: str, title: str, art: Art) -> Drawing:
    """The drawing with its title, which a screen reader says instead."""
    said = escape(title, quote=True)
    high = art.height - art.top
    unit = art.unit if "<text" in art.body else min(WORDLESS, WIDEST / art.width, HIGHEST / high)
    paper = f'width="{_n(art.width * unit)}mm" height="{_n(high * unit)}mm"'
    return Drawing(
        name,
        title,
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 {_n(art.top)} {_n(art.width)} {_n(high)}" {paper} role="img" aria-label="{said}">'
        f"<title>{said}</title>{art.body}</svg>",
        ceil(high * unit),
    )


def letters(unit: float) -> float:
    """How many units a letter of 8 points is high, where one is so many millimetres."""
    return LETTER / unit


def line(path: str, width: float = LINE, fill: str = "none", dash: str = "") -> str:
    """A path in SVG's own letters."""
    dashes = f' stroke-dasharray="{dash}"' if dash else ""
    return (
        f'<path d="{path}" fill="{fill}" stroke="#000" stroke-width="{_n(width)}" stroke-linecap="round"'
        f' stroke-linejoin="round"{dashes}/>'
    )


def oval(
    x: float, y: float, across: float, down: float, width: float = LINE, fill: str = "none", dash: str = ""
) -> str:
    """An ellipse by its middle and its half axes."""
    dashes = f' stroke-dasharray="{dash}"' if dash else ""
    return (
        f'<ellipse cx="{_n(x)}" cy="{_n(y)}" rx="{_n(across)}" ry="{_n(down)}" fill="{fill}" stroke="#000"'
        f' stroke-width="{_n(width)}"{dashes}/>'
    )


def box(x: float, y: float, wide: float, high: float, width: float = LINE, fill: str = "none") -> str:
    return (
        f'<rect x="{_n(x)}" y="{_n(y)}" width="{_n(wide)}" height="{_n(high)}" fill="{fill}" stroke="#000"'
        f' stroke-width="{_n(width)}"/>'
    )


def words(x: float, y: float, text: str, size: float = 9, anchor: str = "middle", bold: bool = False) -> str:
    """A word of the table or a figure, at its baseline."""
    weight = ' font-weight="700"' if bold else ""
    return (
        f'<text x="{_n(x)}" y="{_n(y)}" font-family="{FACE}" font-size="{_n(size)}"{weight} text-anchor="{anchor}"'
        f' fill="#000" stroke="none">{escape(text)}</text>'
    )


NARROW, WIDE = frozenset("fijlrtI .,:;'|°\N{NO-BREAK SPACE}\N{NARROW NO-BREAK SPACE}"), frozenset("mwMW%")


def breadth(text: str, size: float = 9) -> float:
    """How wide a word may get, in whichever of our faces it is set: paper is cut by it, so it is never too little."""
    ems = (0.36 if sign in NARROW else 0.89 if sign in WIDE else 0.73 if sign.isupper() else 0.56 for sign in text)
    return sum(ems) * size


def tube(path: str, thick: float, white: str = "") -> str:
    """A strand of dough: two edges with white between them, so that what is drawn later lies on top.

    `white` is the same way drawn a little longer at both ends, so that no hair of black stays where pieces meet.
    """
    edge = 'fill="none" stroke-linecap="butt" stroke-linejoin="round"'
    return (
        f'<path d="{path}" {edge} stroke="#000" stroke-width="{_n(thick)}"/>'
        f'<path d="{white or path}" {edge} stroke="#fff" stroke-width="{_n(thick - 2 * 1.4)}"/>'
    )


def arrow(x: float, y: float, to_x: float, to_y: float, bend: float = 0, width: float = THIN) -> str:
    """An arrow, bent to its left by `bend` units."""
    wide, high = to_x - x, to_y - y
    long = hypot(wide, high) or 1
    mid_x, mid_y = (x + to_x) / 2 + high / long * bend, (y + to_y) / 2 - wide / long * bend
    back_x, back_y = to_x - mid_x, to_y - mid_y
    far = hypot(back_x, back_y) or 1
    one, other = back_x / far * 5, back_y / far * 5
    head = (
        f"M{_n(to_x - one - other * 0.5)} {_n(to_y - other + one * 0.5)} L{_n(to_x)} {_n(to_y)}"
        f" L{_n(to_x - one + other * 0.5)} {_n(to_y - other - one * 0.5)}"
    )
    return line(f"M{_n(x)} {_n(y)} Q{_n(mid_x)} {_n(mid_y)} {_n(to_x)} {_n(to_y)}", width) + line(head, width)


def placed_at(body: str, x: float, y: float, scale: float) -> str:
    """What is drawn, smaller, with its corner at another place."""
    return f'<g transform="translate({_n(x)} {_n(y)}) scale({_n(scale)})">{body}</g>'


def path_of(points: Iterable[tuple[float, float]], close: bool = False) -> str:
    """A path through points, straight from one to the next."""
    said = " L".join(f"{_n(x)} {_n(y)}" for x, y in points)
    return f"M{said}{'Z' if close else ''}"


def n(value: float) -> str:
    """A coordinate with at most two decimals."""
    return _n(value)


def _n(value: float) -> str:
    text = f"{value:.2f}".rstrip("0").rstrip(".")
    return "0" if text in ("-0", "") else text
