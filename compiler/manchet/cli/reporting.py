"""Reports on the way of a command whose product is something else: they go to the error stream."""

from __future__ import annotations

import sys
from collections.abc import Iterable

from manchet.cli.screen import columns, paint
from manchet.diagnostics.diagnostic import Diagnostic

UNEXPLAINED = "no mistake was found in it, and yet it could not be put together; that is a fault of manchet"


def said(diagnostics: Iterable[Diagnostic]) -> None:
    """Writes each report in full."""
    from manchet.diagnostics.text import full, in_order

    for one in in_order(diagnostics):
        print(full(one, paint(sys.stderr), columns(sys.stderr)), file=sys.stderr, end="\n\n")
