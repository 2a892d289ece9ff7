"""How reports leave the command: with paths as they are from here, and beside a product on the error stream."""

from __future__ import annotations

import os
import sys
from collections.abc import Iterable

from manchet.cli.screen import columns, paint
from manchet.diagnostics.diagnostic import Diagnostic, Fix, Place

UNEXPLAINED = "no mistake was found in it, and yet it could not be put together: that is a fault in manchet"


def write_reports(diagnostics: Iterable[Diagnostic]) -> None:
    """Writes each report in full."""
    from manchet.diagnostics.text import full

    for one in from_here(diagnostics):
        print(full(one, paint(sys.stderr), columns(sys.stderr)), file=sys.stderr, end="\n\n")


def from_here(diagnostics: Iterable[Diagnostic]) -> tuple[Diagnostic, ...]:
    """The reports in order. A bakery is read from its top, so what lies beside this folder came as `../breads/tern.bake`."""
    from manchet.diagnostics.text import in_order

    return in_order(
        one._replace(
            place=_shortest(one.place),
            related=tuple(each._replace(place=_shortest(each.place)) for each in one.related),
            fixes=tuple(map(_fix_from_here, one.fixes)),
        )
        for one in diagnostics
    )


def _fix_from_here(fix: Fix) -> Fix:
    return fix._replace(edits=tuple(edit._replace(place=_shortest(edit.place)) for edit in fix.edits))


def _shortest(place: Place) -> Place:
    path = path_from_here(place.path)
    return place if path == place.path else place._replace(path=path)


def path_from_here(path: str) -> str:
    """A path of a bakery, as short as it can be said in this folder."""
    return os.path.relpath(path).replace(os.sep, "/") if path.startswith("../") else path
