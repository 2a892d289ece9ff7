"""What every view has, whichever form it is of."""

from __future__ import annotations

from typing import Protocol

from manchet.sheets.page.issue import Running


class View(Protocol):
    """A named tuple of text and further tuples. `form` is the name of its form."""

    @property
    def title(self) -> str: ...
    @property
    def language(self) -> str: ...
    @property
    def paper(self) -> str: ...
    @property
    def running(self) -> Running: ...
    @property
    def form(self) -> str: ...
