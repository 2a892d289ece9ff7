"""What bread loses: in the oven, where the file gives no figure; on the shelf; and how moist it is then. All estimates."""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise
from typing import NamedTuple

from manchet.diagnostics.suggest import fold
from manchet.figures.figure import Figure, Given
from manchet.formula.model import Batch, Formula, Makes, OverallLine, PieceBatch, Range, Step
from manchet.larder.book import Larder
from manchet.quantities.printing import decimal, rounded

NOTHING = Fraction(0)


class Crust(NamedTuple):
    """How much of its dough a shape loses in the oven, in per cent, least and most, and who says so."""

    what: str
    least: int
    most: int
    source: str


LIDDED = Crust("baked under a lid", 5, 9, "common practice; pans lose less than the hearth (Hamelman, as quoted)")
THIN = Crust(
    "long and thin, much crust", 17, 24, "335 g of dough loses up to 80 g: a television check of baguettes, 2023"
)
TIN = Crust(
    "in a tin", 8, 13, "10-13 %: Gisslen, Professional Baking; pans lose less than the hearth (Hamelman, as quoted)"
)
ROLL = Crust("a roll", 9, 15, "84 g of dough gives 75 g: weighed by a baker; 10-13 %: Gisslen, Professional Baking")
SMALL = Crust(
    "a small loaf on the hearth",
    12,
    18,
    "314 g of dough gives 267 g: weighed by a baker; 10-20 % (Hamelman, as quoted)",
)
LOAF = Crust(
    "a loaf on the hearth", 10, 16,
    "10-13 %: Gisslen, Professional Baking; 13.1 %: Count Rumford, 1794, and Accum, 1821; 15.3 % of brown bread: Accum",
)  # fmt: skip
"""Baked in the oven's heat with no lid and no tin."""

SMALL_LOAF = Fraction(400)
"""Grams of dough below which a hearth loaf loses as a small one. Our rule."""

ROLL_LIKE = frozenset({"rolls", "boiled", "lye"})
LOAVES = frozenset({"hearth loaf", "rye hearth loaf", "tin loaf", "rye tin loaf", "soft"}) | ROLL_LIKE
"""Kinds whose loss is known. What a crisp, a batter, a cake or a filled bread loses is its maker's to weigh."""

THIN_NAMES = ("baguette", "ficelle", "flute", "stick")

KEEPING = ((0, Fraction(0)), (24, Fraction(125, 6400)), (48, Fraction(500, 6400)), (70, Fraction(900, 6400)))
"""Hours and share lost by an unwrapped 4 lb loaf: 1.25, 5 and 9 oz of 64 (Goddard, grocers' guide)."""


def bake_loss_of(formula: Formula, makes: Makes | PieceBatch, grams: Fraction | None = None) -> Figure | None:
    """Per cent of its dough that a piece loses in the oven and while it cools: the file's, else an estimate.

    `grams` is the dough of one piece, where `makes` does not say. None for kinds nobody has weighed.
    """
    where = f"{formula.place.path}:{formula.place.line}"
    if formula.bake_loss is not None:
        given = Given("bake loss", formula.bake_loss * 100, "%", where)
        return Figure("bake loss", given.value, "%", "as the head says", (given,), "the file")
    crust = _crust(formula, makes.noun, bool(makes.tin), makes.grams if grams is None else grams)
    if crust is None:
        return None
    return Figure(
        "bake loss", Fraction(crust.least + crust.most, 2), "%",
        f"an estimate, {crust.least} to {crust.most} %: {crust.what}; weigh ten before and after, and write `bake loss`",
        (), crust.source,
    )  # fmt: skip


def bake_loss_range(formula: Formula, makes: Makes | PieceBatch) -> Range | None:
    """The same as a share, least and most; both alike where the file says it."""
    if formula.bake_loss is not None:
        return Range(formula.bake_loss, formula.bake_loss)
    crust = _crust(formula, makes.noun, bool(makes.tin), makes.grams)
    return None if crust is None else Range(Fraction(crust.least, 100), Fraction(crust.most, 100))


def _crust(formula: Formula, noun: str, in_tin: bool, grams: Fraction | None) -> Crust | None:
    steps = _steps(formula, noun)
    bakes = [step for step in steps if step.verb == "bake"]
    if formula.kind not in LOAVES or not bakes:
        return None
    if any(step.lid for step in bakes) and not any(step.lid is False for step in bakes):
        return LIDDED
    if in_tin or "tin" in formula.kind:
        return TIN
    if any(thin in fold(noun) for thin in THIN_NAMES):
        return THIN
    if formula.kind in ROLL_LIKE or "roll" in fold(noun):
        return ROLL
    return SMALL if grams is not None and grams < SMALL_LOAF else LOAF


def _steps(formula: Formula, noun: str) -> tuple[Step, ...]:
    branch = next((b.steps for b in formula.branches if b.noun == noun), ())
    return formula.stages[-1].steps + branch


def baked(grams: Fraction, loss: Range) -> Range:
    """Grams of bread that so much dough gives, least and most."""
    return Range(grams * (1 - (loss.high or NOTHING)), grams * (1 - (loss.low or NOTHING)))


def about_baked(grams: Fraction, loss: Range) -> Fraction:
    """Grams of bread to print: to ten from 200 g on, for it is an estimate."""
    likely = baked(grams, loss).likely
    return rounded(likely / 10, 0) * 10 if likely >= 200 else rounded(likely, 0)


def to_weigh_off(grams: Fraction, loss: Range) -> Range:
    """Grams of dough for a wanted baked weight. Who must not sell it too light weighs off the upper."""
    return Range(grams / (1 - (loss.low or NOTHING)), grams / (1 - (loss.high or NOTHING)))


def kept(hours: Fraction) -> Fraction | None:
    """The share of its weight an unwrapped loaf has lost, a straight line between what was weighed; None after 70 h."""
    for (before, least), (after, most) in pairwise(KEEPING):
        if before <= hours <= after:
            return least + (most - least) * (hours - before) / (after - before)
    return None


def half_the_water(formula: Formula, larder: Larder) -> Fraction:
    """Bake loss as a share by an old rule of thumb: dough loses in the oven half the water it took up (Boutroux, 1897)."""
    taken = sum((_poured_water(line, larder) for line in formula.overall), NOTHING)
    return taken / 2 / formula.dough_share


def moisture(formula: Formula, larder: Larder, loss: Fraction) -> Fraction | None:
    """Water in the whole baked loaf, as a share of it: all the water there is, flour's own too, less the losses.

    None where a preparation or a flour of unknown moisture goes in. What is lost on the way is taken for water; what
    rising eats (1 to 2 % of the flour) is left out. A crumb is some points moister than its loaf.
    """
    water = weighed = NOTHING
    for line in formula.overall:
        if line.ingredient is None or (line.is_flour and "water" not in line.ingredient.composition):
            return None
        share = line.ingredient.composition.get("water")
        water += _poured_water(line, larder) if share is None else line.share * share / 100
        weighed += line.share
    dough = formula.dough_share
    water -= weighed - dough + loss * dough
    return water / (dough * (1 - loss))


def _poured_water(line: OverallLine, larder: Larder) -> Fraction:
    return NOTHING if line.ingredient is None else line.share * larder.poured(line.ingredient).water


def loss_figures(batch: Batch, larder: Larder) -> dict[str, Figure]:
    """Bake loss, baked weight and moisture of each sort of piece, where the file gives no bake loss."""
    formula = batch.formula
    if formula.bake_loss is not None or formula.preparation:
        return {}
    found: dict[str, Figure] = {}
    head = formula.makes[0].place if formula.makes else formula.place
    where = f"{head.path}:{head.line}"
    for piece in batch.pieces:
        loss, span = bake_loss_of(formula, piece), bake_loss_range(formula, piece)
        if loss is None or span is None:
            continue
        whose = f" of {piece.noun}" if len(batch.pieces) > 1 else ""
        dough = Given(f"dough for one of the {piece.noun or 'pieces'}", piece.grams, "g", where)
        old = Figure("by half the water", rounded(half_the_water(formula, larder) * 100, 0), "%",
                     "half of the water added / all the dough", (), "Boutroux, Le pain et la panification, 1897")  # fmt: skip
        ends = baked(piece.grams, span)
        weight = Figure(
            f"baked weight{whose}", about_baked(piece.grams, span), "g",
            f"an estimate, {decimal(ends.low or NOTHING, 0)} to {decimal(ends.high or NOTHING, 0)} g: "
            "dough for one x (1 - bake loss / 100)",
            (dough, loss), loss.source,
        )  # fmt: skip
        found[f"bake loss{whose}, estimate"] = loss._replace(inputs=(*loss.inputs, old))
        found[f"baked weight{whose}, estimate"] = weight
        moist = moisture(formula, larder, span.likely)
        if moist is not None and moist > 0:
            found[f"moisture{whose}, estimate"] = Figure(
                f"moisture of the loaf{whose}", rounded(moist * 100, 0), "%",
                "an estimate: all the water weighed in and in the flour, less the bake loss / baked weight",
                (loss,), "the larder's composition of each ingredient; US law allows bread up to 38 % (21 CFR 136.110)",
            )  # fmt: skip
    return found
