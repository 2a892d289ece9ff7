"""What was swapped in a formula, as every form of it says it: by what factor, whose it is, and what else moved."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction

from manchet.formula.model import Range, Swapped
from manchet.sheets.page.measures import Measures


def swap_lines(swaps: Iterable[Swapped], m: Measures) -> tuple[str, ...]:
    """A line for each swap."""
    return tuple(_line(made, m) for made in swaps)


def _line(made: Swapped, m: Measures) -> str:
    """`instant yeast for fresh yeast: × 0.33 (Hamelman, Bread, 2004), water +0.67 % made up`"""
    words = m.words
    if made.of_all_flour is not None:
        return ", ".join([_leaven(made, made.of_all_flour, m), *([made.said] if made.said else [])])
    said = [words.say("swap.line", made.on, made.off, _factor(made.factor, m), made.source)]
    for name, share in made.moved:
        figure = m.percent(abs(share))
        said.append(words.say("swap.taken_off" if share < 0 else "swap.made_up", name, figure))
    return ", ".join([*said, *([made.said] if made.said else [])])


def _leaven(made: Swapped, share: Fraction, m: Measures) -> str:
    """`ripe wheat starter for fresh yeast: 20 % of the flour goes into the dough in the ripe wheat starter`; nothing is
    taken off or made up: what a culture brings is a part of the formula's own flour and water."""
    figure = m.percent(share)
    if made.into_culture:
        return m.words.say("swap.into_culture", made.on, made.off, figure, made.on)
    return m.words.say("swap.out_of_culture", made.on, made.off, figure)


def _factor(factor: Fraction, m: Measures) -> str:
    return m.plain(Range(factor, factor), 3)
