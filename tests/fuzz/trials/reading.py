from __future__ import annotations

import random
import time
from collections.abc import Iterable

from fuzz.read import PATH, bakery_at, bytes_of, without_fault

from manchet.diagnostics.diagnostic import Diagnostic
from manchet.source.files import text_of
from manchet.source.text import SourceText
from manchet.syntax.parser import parse

SLOW = 2.0
"""Seconds of the processor."""


def reading(text: str, rng: random.Random) -> None:
    """Every line is kept, every report stands at a place of the text, nothing breaks off, and nobody waits for it."""
    source = text_of(PATH, bytes_of(text)).value
    if source is not None:
        parsing(source)
    started = time.process_time()
    stand_somewhere(without_fault(bakery_at(text).diagnostics), text if source is None else source.text)
    assert time.process_time() - started < SLOW, "slow"


def parsing(source: SourceText) -> None:
    out = parse(source)
    assert "\n".join(line.raw for line in out.value.lines) == source.text.removesuffix("\n"), "a line is lost"
    stand_somewhere(out.diagnostics, source.text)


def stand_somewhere(reports: Iterable[Diagnostic], text: str) -> None:
    rows = text.split("\n")
    for report in reports:
        place = report.place
        assert place.path and 1 <= place.line <= len(rows), f"no place: {report}"
        assert 1 <= place.column <= place.end_column <= len(rows[place.line - 1]) + 2, f"no place: {report}"
        assert report.message.strip() and "Traceback" not in report.message, report
