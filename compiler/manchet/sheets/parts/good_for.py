"""How long a preparation is good for, as every form says it."""

from __future__ import annotations

from manchet.batch.work import Work
from manchet.cautions.kept_within import kept_within
from manchet.formula.model import KeptFor
from manchet.sheets.page.measures import Measures
from manchet.sheets.parts.wording import single


def good_for(work: Work, m: Measures) -> str:
    """`24 h at 4 °C, 90 d at -18 °C`; "" where the file does not say. Where a caution is against what it says, the limit."""
    return ", ".join(_way(kept, m) for kept in kept_within(work))


def _way(kept: KeptFor, m: Measures) -> str:
    time = m.time(single(kept.seconds))
    return time if kept.celsius is None else m.words.say("good_for.at", time, m.degrees(kept.celsius))
