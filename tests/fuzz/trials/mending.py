from __future__ import annotations

import random

from fuzz.read import PATH, bakery_at, bytes_of, without_fault

from manchet.source.files import text_of
from manchet.source.mending import mend
from manchet.syntax.sameness import reads_same


def mending(text: str, rng: random.Random) -> None:
    """Every fix fits the text that it was made for, and what is read after a safe one is what was read before."""
    source = text_of(PATH, bytes_of(text)).value
    if source is None:
        return
    for report in without_fault(bakery_at(text).diagnostics):
        for fix in report.fixes:
            made = mend(PATH, source.text, [fix])
            assert made.done == (0,), f"it does not fit: {report}"
            assert not fix.safe or reads_same(source, source._replace(text=made.text)), f"it is not safe: {report}"
