"""What the page of the evening before shows, ready to print: see `sheets/parts/views.py`."""

from __future__ import annotations

from typing import Literal

from manchet.records import NamedTuple
from manchet.sheets.page.issue import Running
from manchet.sheets.parts.day_views import LateBread, WorkDay


class TonightPage(NamedTuple):
    """The evening before a planned day."""

    title: str
    language: str
    paper: str
    running: Running
    head: str
    """`Tonight: Tom`; `Tonight` where nobody has anything to do yet."""
    hours: str
    days: tuple[WorkDay, ...]
    late: tuple[LateBread, ...]
    fire: str
    """That nothing of it delays the fire; "" where something may."""
    before_you_go: tuple[str, ...]
    equipment: tuple[str, ...]
    """Counted for the whole day: `round basket 36 of 40`."""
    estimates: str
    form: Literal["tonight"] = "tonight"
