"""Whether the weights of a formula make the bread it says it is, and which one line would have to be otherwise for that."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.pieces import dough_span
from manchet.batch.work import Work
from manchet.figures.fermentation.fresh_yeast import fresh_equivalent
from manchet.figures.limits.lookup import limit
from manchet.formula.model import OverallLine, Way
from manchet.records import NamedTuple

NOTHING = Fraction(0)

FAR = Fraction(1, 4)
"""How far the dough may be from what the pieces take and still be meant for them. Our rule: over what is left or short."""
NEAR = Fraction(1, 10)
"""How near a dough put right has to come to what the pieces take."""


class Weights(NamedTuple):
    """What is weighed in all, in grams; yeast as fresh yeast."""

    flour: Fraction
    water: Fraction
    salt: Fraction
    yeast: Fraction
    whole: Fraction

    def with_more(self, other: Weights, times: Fraction) -> Weights:
        return Weights(*(mine + theirs * times for mine, theirs in zip(self, other, strict=True)))


NO_WEIGHTS = Weights(NOTHING, NOTHING, NOTHING, NOTHING, NOTHING)


def weights_in_all(work: Work) -> Weights:
    """What all that is weighed brings, as the file weighs it."""
    now = NO_WEIGHTS
    for line in work.formula.overall:
        now = now.with_more(weights_of(work, line), Fraction(1))
    return now


def weights_of(work: Work, line: OverallLine) -> Weights:
    """What one line of all that is weighed brings, as the file weighs it."""
    grams = line.share * (work.formula.own_flour or NOTHING)
    if line.ingredient is None:
        return Weights(NOTHING, NOTHING, NOTHING, NOTHING, grams)
    poured = work.larder.poured(line.ingredient)
    yeast = fresh_equivalent(line.ingredient, grams) if line.ingredient.class_.endswith("yeast") else NOTHING
    return Weights(grams if line.is_flour else NOTHING, poured.water * grams, poured.salt * grams, yeast, grams)


def can_be_weighed_up(work: Work) -> bool:
    """Whether anything can be said: the file weighs a bread, and says how much dough its pieces take."""
    formula = work.formula
    written = formula.way is Way.BY_WEIGHT and not formula.preparation and formula.own_flour is not None
    return written and dough_span(formula) is not None and limit("water-least", work.kind) is not None


def weight_for_pieces(work: Work) -> Fraction:
    """Grams that have to be weighed in for the pieces, all losses made up; 0 where that is not known."""
    formula, span = work.formula, dough_span(work.formula)
    weighed = sum((line.share for line in formula.overall), NOTHING)
    if span is None or not formula.dough_share or not weighed:
        return NOTHING
    return (span[0] + span[1]) / 2 / (1 - formula.dough_loss) * weighed / formula.dough_share


def faults(work: Work, weights: Weights, within: Fraction) -> Iterator[str]:
    """What does not fit: the pieces, the water, the salt, the yeast."""
    goal = weight_for_pieces(work)
    if goal and abs(weights.whole / goal - 1) > within:
        yield "pieces"
    if not weights.flour:
        yield "flour"
        return
    for name, of_what, least, most in (
        ("water", weights.water, limit("water-least", work.kind), limit("water-most", work.kind)),
        ("salt", weights.salt, limit("salt-least", work.kind), limit("salt-most", work.kind)),
        ("yeast", weights.yeast, None, limit("yeast-most", work.kind)),
    ):
        share = of_what / weights.flour
        if ((share or name == "water") and least is not None and share < least) or (most is not None and share > most):
            yield name
