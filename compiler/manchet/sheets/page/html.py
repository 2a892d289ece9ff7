"""A view as one self-contained HTML page: it works offline, asks for nothing, and is what the PDF is made from."""

from __future__ import annotations

import re
from collections.abc import Sequence
from functools import cache
from itertools import count
from typing import TYPE_CHECKING, Protocol

from manchet.sheets.page.view import View
from manchet.sheets.page.words import in_language, phrase_with

if TYPE_CHECKING:
    from jinja2 import Environment
    from markupsafe import Markup

FAMILY = '"Source Sans", "Source Sans 3", "Source Sans Pro", "Liberation Sans", Arial, sans-serif'
"""The PDF brings the first; a screen uses the nearest sans it has, so that a page stays small and asks for nothing."""


class HasWeight(Protocol):
    """A row of a table with a weight to line up."""

    @property
    def weight(self) -> str: ...


_BODY = re.compile(r'<body class="(\w+) [^"]*"')


def html_page(view: View, template: str, landscape: bool, layout: str) -> str:
    """The page of a view, by the template of its form (a path below `sheets`), in the layout of that name."""
    table = in_language(view.language).table
    says = {"v": view, "w": table, "family": FAMILY, "landscape": landscape, "layout": layout}
    script = _environment().get_template("page/ticks.js").render()
    return _environment().get_template(template).render(**says, script_sum=_sum_of(script), next_id=count(1).__next__)


def _sum_of(script: str) -> str:
    """By which a page allows one script of ours, and no other."""
    from base64 import b64encode
    from hashlib import sha256

    return "sha256-" + b64encode(sha256(script.encode()).digest()).decode()


def set_layout(html: str, classes: str) -> str:
    """The same page in another layout: nothing else of it depends on that."""
    return _BODY.sub(rf'<body class="\1 {classes}"', html, count=1)


@cache
def _environment() -> Environment:
    """One set of templates: whatever a file says is escaped, and a word that is missing is an error, not a gap."""
    from jinja2 import Environment, PackageLoader, StrictUndefined

    environment = Environment(
        loader=PackageLoader("manchet.sheets", ""),
        autoescape=True,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
        auto_reload=False,
    )
    environment.filters["places"] = places
    environment.filters["blank"] = blank
    environment.filters["css_string"] = css_string
    environment.filters["say"] = phrase_with
    return environment


def places(rows: Sequence[HasWeight]) -> int:
    """The most decimals in a table of weights; none where one has parts of an ounce, which do not line up with them."""
    if any(set(row.weight) & set("¼½¾") for row in rows):
        return 0
    return max((len(row.weight.partition(".")[2]) for row in rows), default=0)


def css_string(text: str) -> Markup:
    """A text as a string of CSS inside a page: whatever could end the string, or the style, is written as its number."""
    from markupsafe import Markup

    said = "".join(c if c.isalnum() or c in _PLAIN else f"\\{ord(c):x} " for c in text)
    return Markup(f'"{said}"')


_PLAIN = " .,:;·–-()"


def blank(weight: str, places: int) -> str:
    """What a weight lacks to `places` decimals, to be printed unseen, so that the points stand under one another."""
    _, dot, rest = weight.partition(".")
    return ("" if dot or not places else ".") + "0" * (places - len(rest))
