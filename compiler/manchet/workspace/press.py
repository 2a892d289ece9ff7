"""The press: it turns pages into PDF, and remembers what it has printed.

Setting type costs memory that the type engine never gives back: 0.3 MB a page (measured: WeasyPrint 70 with Pango; the
layout alone does it). A build ends before that matters. Watching goes on for weeks, so it prints in a process of its
own, which is kept warm and replaced after so many pages.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING, Any

from manchet.records import NamedTuple
from manchet.sheets.page.layouts import PageLayout
from manchet.sheets.page.pdf import NoPdf, Pdf, pdf_of
from manchet.workspace.trouble import Blocked

if TYPE_CHECKING:
    from concurrent.futures import ProcessPoolExecutor

REPLACED_AFTER = 200
"""Pages a process prints; then it has grown by some 60 MB."""


Key = tuple[str, int, str]
"""Of a page: the path and the line of its formula, and its form."""


class Sheet(NamedTuple):
    """What a PDF was made from: the page, as it is before a layout is chosen, and the layout that was."""

    html: str
    layout: str


class Press:
    """Prints each page once: `printed` says what each PDF was made from."""

    def __init__(self, print_page: Callable[[str, tuple[PageLayout, ...]], Pdf | NoPdf] = pdf_of) -> None:
        self.printed: dict[Key, Sheet] = {}
        self.print_page = print_page

    def has_printed(self, key: Key, html: str) -> bool:
        return key in self.printed and self.printed[key].html == html


class Apart:
    """`pdf_of` in a process of its own. Use it as a context; call it with a page's HTML and its layouts."""

    def __init__(self) -> None:
        self.pool: ProcessPoolExecutor | None = None
        self.pages = 0

    def __enter__(self) -> Apart:
        return self

    def __exit__(self, *_: Any) -> None:
        self._end()

    def __call__(self, html: str, layouts: tuple[PageLayout, ...]) -> Pdf | NoPdf:
        from concurrent.futures.process import BrokenProcessPool

        for _ in range(2):  # one that was killed since the last page is replaced
            try:
                return self._ready().submit(pdf_of, html, layouts).result()
            except BrokenProcessPool:
                self._end()
        raise Blocked("the printing process was ended twice from outside", "perhaps this machine is short of memory")

    def _ready(self) -> ProcessPoolExecutor:
        if self.pages >= REPLACED_AFTER:
            self._end()
        if self.pool is None:
            self.pool = _one_process()
            self.pages = 0
        self.pages += 1
        return self.pool

    def _end(self) -> None:
        if self.pool is not None:
            self.pool.shutdown()
            self.pool = None


def _one_process() -> ProcessPoolExecutor:
    from concurrent.futures import ProcessPoolExecutor
    from multiprocessing import get_context

    return ProcessPoolExecutor(1, get_context("spawn"), _finish_the_page)


def _finish_the_page() -> None:
    """Ctrl-C is for the first process, which ends after the page in hand; without it this one ends too."""
    import signal

    from manchet.workspace.workers import end_with_the_first

    end_with_the_first()
    signal.signal(signal.SIGINT, signal.SIG_IGN)
