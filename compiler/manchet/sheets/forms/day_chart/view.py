"""What the day chart shows, ready to print: see `sheets/parts/views.py`."""

from __future__ import annotations

from typing import Literal

from manchet.records import NamedTuple
from manchet.sheets.page.issue import Running
from manchet.sheets.parts.views import Illustration


class ChartPage(NamedTuple):
    """All breads of a plan by the clock."""

    title: str
    language: str
    paper: str
    running: Running
    makes: tuple[str, ...]
    """`8 breads, 142 pieces`; what leaves when; who is there."""
    first: str
    """The first job, when the fire is lit and out, when the last load comes out."""
    chart: tuple[Illustration, ...]
    """One; of many breads several, each with some of them."""
    waits: tuple[str, ...]
    """Why each load waits that could have gone in sooner, and what stands beyond its range."""
    sure: tuple[str, ...]
    """Of each goal what was reached, and whether it is the least possible."""
    spare: tuple[str, ...]
    """Where there is least to spare."""
    oldest: str = ""
    """The oldest ages that were taken by kind; "" where files say them all."""
    clock_changes: tuple[str, ...] = ()
    form: Literal["chart"] = "chart"
