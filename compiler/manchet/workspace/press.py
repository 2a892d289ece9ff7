"""The press: it turns pages into PDF, and remembers what it has printed.

Setting type costs memory that the type engine never gives back: 0.3 MB a page (measured: WeasyPrint 70 with Pango; the
layout alone does it). A build ends before that matters. Watching goes on for weeks, so it prints in a process of its
own, which is kept warm and replaced after so many pages.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING, Any

from manchet.sheets.page.pdf import NoPdf, Pdf, pdf_of

if TYPE_CHECKING:
    from concurrent.futures import ProcessPoolExecutor

REPLACED_AFTER = 200
"""Pages a process prints; then it has grown by some 60 MB."""


class Press:
    """Prints each page once: `printed` holds the HTML that each PDF was made from, by (path, line, kind)."""

    def __init__(self, print_page: Callable[[str], Pdf | NoPdf] = pdf_of) -> None:
        self.printed: dict[tuple[str, int, str], str] = {}
        self.print_page = print_page


class Apart:
    """`pdf_of` in a process of its own. Use it as a context; call it with a page's HTML."""

    def __init__(self) -> None:
        self.pool: ProcessPoolExecutor | None = None
        self.pages = 0

    def __enter__(self) -> Apart:
        return self

    def __exit__(self, *_: Any) -> None:
        self._end()

    def __call__(self, html: str) -> Pdf | NoPdf:
        if self.pool is None or self.pages >= REPLACED_AFTER:
            self._end()
            self.pool = _one_process()
            self.pages = 0
        self.pages += 1
        return self.pool.submit(pdf_of, html).result()

    def _end(self) -> None:
        if self.pool is not None:
            self.pool.shutdown()
            self.pool = None


def _one_process() -> ProcessPoolExecutor:
    from concurrent.futures import ProcessPoolExecutor
    from multiprocessing import get_context

    return ProcessPoolExecutor(1, get_context("spawn"), _finish_the_page)


def _finish_the_page() -> None:
    """Ctrl-C is for the first process, which ends after the page in hand."""
    import signal

    signal.signal(signal.SIGINT, signal.SIG_IGN)
