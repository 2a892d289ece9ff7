"""The bytes of some files as text, and what is wrong with those that are none."""

from __future__ import annotations

from collections.abc import Mapping

from manchet.diagnostics.outcome import Outcome
from manchet.source.files import text_of
from manchet.source.text import SourceText


def texts(data: Mapping[str, bytes]) -> Outcome[tuple[SourceText, ...]]:
    """In the order of their paths, so that the same files always give the same bakery."""
    read = [text_of(path, data[path]) for path in sorted(data)]
    sources = tuple(one.value for one in read if one.value is not None)
    return Outcome(sources, tuple(report for one in read for report in one.diagnostics))
