"""How long a preparation is good for, as every form says it."""

from __future__ import annotations

from manchet.batch.work import Work
from manchet.sheets.page.measures import Measures
from manchet.sheets.parts.wording import single


def good_for(work: Work, m: Measures) -> str:
    """`24 h at 4 °C`; "" where the file does not say."""
    if work.formula.good_for is None:
        return ""
    seconds, at = work.formula.good_for
    time = m.time(single(seconds))
    return time if at is None else m.words.say("good_for.at", time, m.degrees(at))
