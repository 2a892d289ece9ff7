"""What the oven takes of a dough whose file does not say, by shape, size, tin and lid: what was weighed, as a range.

An estimate, for sizing by baked weight and for the sheet; a `bake loss` in the file takes its place.
"""

from __future__ import annotations

from fractions import Fraction

from manchet.batch.model import PieceBatch
from manchet.batch.way_of_piece import UNTOUCHED, Touching, finishing_of, touching_of, way_of_piece
from manchet.diagnostics.suggest import fold
from manchet.formula.model import Formula, Makes, Range, Step
from manchet.larder.ingredient import POURED_CLASSES
from manchet.quantities.printing import round_to
from manchet.records import NamedTuple

NOTHING = Fraction(0)


class UsualLoss(NamedTuple):
    """How much of its dough a shape loses in the oven, in per cent, least and most, and who says so."""

    what: str
    least: int
    most: int
    source: str


LIDDED = UsualLoss("baked under a lid", 5, 9, "common practice; pans lose less than the hearth (Hamelman, as quoted)")
THIN = UsualLoss(
    "long and thin, much crust", 17, 24, "335 g of dough loses up to 80 g: a television check of baguettes, 2023"
)
TIN = UsualLoss(
    "in a tin", 8, 13, "10-13 %: Gisslen, Professional Baking; pans lose less than the hearth (Hamelman, as quoted)"
)
ROLL = UsualLoss("a roll", 9, 15, "84 g of dough gives 75 g: weighed by a baker; 10-13 %: Gisslen, Professional Baking")
SMALL = UsualLoss(
    "a small loaf on the hearth",
    12,
    18,
    "314 g of dough gives 267 g: weighed by a baker; 10-20 % (Hamelman, as quoted)",
)
LOAF = UsualLoss(
    "a loaf on the hearth", 10, 16,
    "10-13 %: Gisslen, Professional Baking; 13.1 %: Count Rumford, 1794, and Accum, 1821; 15.3 % of brown bread: Accum",
)  # fmt: skip
"""Baked in the oven's heat with no lid and no tin."""

SMALL_LOAF = Fraction(400)
"""Grams of dough below which a hearth loaf loses as a small one. Our rule."""

THIN_NAMES = ("baguette", "ficelle", "flute", "stick")


def usual_loss_of(formula: Formula, noun: str, in_tin: bool, grams: Fraction | None) -> UsualLoss | None:
    """How pieces of a noun are baked; None for kinds nobody has weighed. `grams` is the dough of one, where that is known.

    No more than the water there is lets it: butter and sugar leave a rich dough with little to lose.
    """
    usual = _by_shape(formula, noun, in_tin, grams)
    bound = poured_water(formula) * (HALF if formula.bread.core == "rich" else DRIEST) * 100
    if usual is None or not bound or usual.most <= bound:
        return usual
    least, most = int(usual.least * bound / usual.most), max(int(bound), 1)
    source = f"{usual.source}; about half the water a dough took up: Boutroux, Le pain et la panification, 1897"
    return UsualLoss(f"{usual.what}, of a dough with little water", least, most, source)


def poured_water(formula: Formula) -> Fraction:
    """Water that a dough took up, as a share of it; 0 where that of some ingredient is not known."""
    found = NOTHING
    for line in formula.overall:
        if line.ingredient is None:
            return NOTHING
        wet = line.ingredient.class_ in POURED_CLASSES or line.ingredient.gives_water
        share = HALF if line.ingredient.made_of else line.ingredient.composition.get("water", NOTHING) / 100
        found += line.share * share if wet else NOTHING
    return found / formula.dough_share if formula.dough_share else NOTHING


HALF = Fraction(1, 2)
"""Of its water a rich dough loses so much at the most; and of a culture so much is water, kept on its own weight of it."""
DRIEST = Fraction(2, 3)
"""Of its water a lean bread that is all crust loses so much. Our rule: a baguette that lost 24 % had 37 %."""


def _by_shape(formula: Formula, noun: str, in_tin: bool, grams: Fraction | None) -> UsualLoss | None:
    steps = formula.way_of(noun)
    bakes = [step for step in steps if step.verb == "bake"]
    if not formula.bread.crust or not bakes:
        return None
    if any(step.lid for step in bakes) and not any(step.lid is False for step in bakes):
        return LIDDED
    if in_tin or formula.bread.tin or any(_goes_into_a_tin(step) for step in steps):
        return TIN
    if any(thin in fold(noun) for thin in THIN_NAMES):
        return THIN
    if formula.bread.crust == "roll" or "roll" in fold(noun):
        return ROLL
    return SMALL if grams is not None and grams < SMALL_LOAF else LOAF


def _goes_into_a_tin(step: Step) -> bool:
    return step.verb == "place" and step.where is not None and fold(step.where[1]).split(" ")[-1] in ("tin", "tins")


def bake_loss_range(formula: Formula, makes: Makes | PieceBatch) -> Range | None:
    """What a piece loses to be bread, as a share, least and most; both alike where the file says it. None for kinds nobody has weighed."""
    loss = formula.piece_loss(makes.noun)
    if loss is not None:
        return Range(loss, loss)
    crust = usual_loss_of(formula, makes.noun, bool(makes.tin), makes.grams)
    return None if crust is None else Range(Fraction(crust.least, 100), Fraction(crust.most, 100))


def to_weigh_off(grams: Fraction, loss: Range, touching: Touching = UNTOUCHED) -> Range:
    """Grams of dough for a wanted baked weight, less what touches the piece. Who must not sell it too light weighs off the upper."""
    low, high = (touching.dough_for(grams, end or NOTHING) for end in (loss.low, loss.high))
    return Range(low, high)


def dough_for_baked(formula: Formula, makes: Makes) -> Range | None:
    """Grams of dough to weigh off for one piece whose baked weight is written, least and most.

    Exact, and both alike, by the file's bake loss. Without one an estimate, to ten grams from 200 g on and to one below;
    None for kinds nobody has weighed, and for a weight in all.
    """
    if makes.written is None:
        return None
    way = way_of_piece(formula, makes.noun, formula.makes)
    if formula.piece_loss(makes.noun) is not None:
        exact = finishing_of(way).dough_for(makes.written)
        return Range(exact, exact)
    loss = bake_loss_range(formula, makes._replace(grams=makes.written * DOUGH_OF_BAKED))
    if loss is None or makes.number is None:
        return None
    dough = to_weigh_off(makes.written, loss, touching_of(way))
    return Range(to_tens(dough.low or NOTHING), to_tens(dough.high or NOTHING))


def piece_for_baked(formula: Formula, makes: Makes) -> Fraction | None:
    """The one figure that is weighed off: exact by the file's bake loss, else the middle of the estimate."""
    dough = dough_for_baked(formula, makes)
    if dough is None or dough.low == dough.high:
        return None if dough is None else dough.low
    return to_tens(dough.likely)


DOUGH_OF_BAKED = Fraction(115, 100)
"""Dough for 1 g of bread, to find whether a loaf is a small one before its loss is known."""


def to_tens(grams: Fraction) -> Fraction:
    """An estimate of a weight: to ten grams from 200 g on, for it is no finer."""
    return round_to(grams / 10, 0) * 10 if grams >= 200 else round_to(grams, 0)
