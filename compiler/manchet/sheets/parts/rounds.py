"""In how many rounds something is done on a griddle, in a pan or in a pot, as every form says it."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction

from manchet.formula.model import Range
from manchet.sheets.page.measures import Measures
from manchet.timing.jobs.rounds import Rounds


def rounds_line(of_mixes: Iterable[Rounds | None], m: Measures) -> str:
    """`12 rounds of 4`; `11–12 rounds of 4` where not every mix has as many. "" where nobody says, and for a single round."""
    rounds = [one for one in of_mixes if one is not None]
    if not rounds or max(one.number for one in rounds) < 2:
        return ""
    numbers = Range(Fraction(min(one.number for one in rounds)), Fraction(max(one.number for one in rounds)))
    return m.words.say("say.rounds", m.plain(numbers, 0), str(rounds[0].at_a_time))
