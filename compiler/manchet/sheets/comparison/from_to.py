"""What it was and what it is, beside each other."""

from __future__ import annotations

from fractions import Fraction

from manchet.sheets.comparison.view import ChangedLine
from manchet.sheets.page.measures import NBSP, Measures


def from_to(was: str, now: str, m: Measures, one_unit: bool = True) -> str:
    """`78 → 80 %`: the unit once, where both have it."""
    figure, space, unit = was.rpartition(NBSP)
    same = one_unit and space and now.endswith(f"{NBSP}{unit}") and NBSP not in figure
    return m.words.say("compared.from_to", figure if same else was, now)


def percents(was: Fraction, now: Fraction, m: Measures, worked_out: bool = False) -> tuple[str, str]:
    """Two shares as per cents, with as many decimals as it takes to tell them apart; `worked_out`: nobody wrote them so."""
    said = (m.worked_out(was), m.worked_out(now)) if worked_out else (m.percent(was), m.percent(now))
    return m.percents_apart(was, now) if said[0] == said[1] else said


def figures_line(what: str, was: str, now: str, m: Measures, one_unit: bool = True) -> ChangedLine:
    """`water 78 → 80 %`"""
    return ChangedLine(f"{what} {from_to(was, now, m, one_unit)}", what, now, was)


def sided_line(what: str, was: str | None, now: str | None, m: Measures) -> ChangedLine:
    """The same of what one side may not say: `best before 4 d, new`, `best before 4 d, no longer said`."""
    if was is not None and now is not None:
        return figures_line(what, was, now, m)
    if now is not None:
        return words_line(m.words.say("compared.new", what, now))
    return words_line(m.words.say("compared.no_longer_says", what, was or ""))


def words_line(text: str) -> ChangedLine:
    """What has no figure of now to set in large type."""
    return ChangedLine(text, text)
