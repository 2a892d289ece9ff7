"""Whatever a file says, a page shows it as text: no tag, attribute, style or address is made of it."""

from __future__ import annotations

from html.parser import HTMLParser
from typing import Any

import pytest
from sheets import samples, samples_card

from manchet.sheets.page.json_data import data_of
from manchet.sheets.registry import html_of

HOSTILE = "<script>x</script>\"'>&{{7*7}}</style><img src=//a.b onerror=x>"

NOT_FREE = {
    "language",
    "paper",
    "form",
    "part",
    "level",
    "units",
    "by",
    "verb",
    "how",
    "ink",
    "x",
    "y",
    "width",
    "height",
    "foot",
    "text_x",
    "text_y",
    "svg",
}
"""Ours: words of a closed list, the drawing's own figures, and what the pen has drawn."""
OURS = NOT_FREE | {"bars_foot", "address", "catchword", "hazard", "of_stage", "of_step", "of_branch", "work", "begins"}
"""Of a caution: in the data, and on the posted card alone. Of a job: in the data, for whoever draws it otherwise."""


def poisoned(value: Any, name: str = "") -> Any:
    """The view with every text of the file replaced."""
    if isinstance(value, str):
        return value if name in OURS or not value else HOSTILE
    if hasattr(value, "_asdict"):
        return type(value)(**{key: poisoned(part, key) for key, part in value._asdict().items()})
    if isinstance(value, tuple):
        return tuple(poisoned(part, name) for part in value)
    return value


class Seen(HTMLParser):
    def __init__(self) -> None:
        super().__init__(convert_charrefs=True)
        self.tags: set[str] = set()
        self.attributes: list[tuple[str, str | None]] = []
        self.text = ""

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.tags.add(tag)
        self.attributes += attrs

    def handle_data(self, data: str) -> None:
        self.text += data


def seen(page: str) -> Seen:
    reader = Seen()
    reader.feed(page)
    return reader


@pytest.mark.parametrize("view", [samples.ebb_rye(), samples_card.night_card()], ids=["sheet", "card"])
def test_hostile_text_in_every_field_stays_text(view: Any) -> None:
    plain, hostile = seen(html_of(view)), seen(html_of(poisoned(view)))
    assert HOSTILE in hostile.text
    assert hostile.tags == plain.tags
    names = {name for name, _ in hostile.attributes}
    assert names == {name for name, _ in plain.attributes}
    for name, value in hostile.attributes:
        if HOSTILE in (value or ""):
            assert name in ("aria-label", "data-sheet"), f"a file's words stand in {name}"


def fields(value: Any, path: str = "") -> list[str]:
    """The address of every text of the file in a view."""
    if isinstance(value, str):
        return [path] if value and path.rsplit(".", 1)[-1] not in OURS else []
    if hasattr(value, "_asdict"):
        return [p for key, part in value._asdict().items() for p in fields(part, f"{path}.{key}")]
    if isinstance(value, tuple):
        return [p for at, part in enumerate(value) for p in fields(part, f"{path}.{at}")]
    return []


def with_mark(value: Any, path: list[str], mark: str) -> Any:
    if not path:
        return mark
    head, *rest = path
    if hasattr(value, "_asdict"):
        return value._replace(**{head: with_mark(getattr(value, head), rest, mark)})
    at = int(head)
    return (*value[:at], with_mark(value[at], rest, mark), *value[at + 1 :])


@pytest.mark.parametrize("view", [samples.ebb_rye(), samples_card.night_card()], ids=["sheet", "card"])
def test_every_field_of_a_view_is_printed(view: Any) -> None:
    """A view holds nothing for nobody: each text, changed, changes the page."""
    page = html_of(view)
    unprinted = []
    for path in fields(view):
        if html_of(with_mark(view, path.strip(".").split("."), "QQQ")) == page:
            unprinted.append(path)
    assert unprinted == []
    assert data_of(view)["title"] == view.title
