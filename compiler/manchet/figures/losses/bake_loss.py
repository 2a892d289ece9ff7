"""What bread loses: in the oven, where the file gives no figure; on the shelf; and how moist it is then. All estimates."""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Iterator
from fractions import Fraction
from itertools import pairwise

from manchet.batch.model import Batch, PieceBatch
from manchet.batch.usual_bake_loss import bake_loss_range, to_tens, to_weigh_off, usual_loss_of
from manchet.batch.way_of_piece import UNTOUCHED, Touched, Touching, way_of_piece
from manchet.batch.work import Work
from manchet.figures.figure import Figure, Given
from manchet.formula.model import Formula, Makes, OverallLine, Range
from manchet.larder.book import Larder
from manchet.quantities.printing import decimal, round_to

NOTHING = Fraction(0)


KEEPING = ((0, Fraction(0)), (24, Fraction(125, 6400)), (48, Fraction(500, 6400)), (70, Fraction(900, 6400)))
"""Hours and share lost by an unwrapped 4 lb loaf: 1.25, 5 and 9 oz of 64 (Goddard, grocers' guide)."""


def bake_loss_of(formula: Formula, makes: Makes | PieceBatch, grams: Fraction | None = None) -> Figure | None:
    """Per cent of its dough that a piece loses in the oven and while it cools: the file's, else an estimate.

    `grams` is the dough of one piece, where `makes` does not say. None for kinds nobody has weighed.
    """
    said = said_loss(formula, makes.noun)
    if said is not None:
        return said
    crust = usual_loss_of(formula, makes.noun, bool(makes.tin), makes.grams if grams is None else grams)
    if crust is None:
        return None
    return Figure(
        "bake loss", Fraction(crust.least + crust.most, 2), "%",
        f"an estimate, {crust.least} to {crust.most} %: {crust.what}; weigh ten before and after, and write `bake loss`",
        (), crust.source,
    )  # fmt: skip


def said_loss(formula: Formula, noun: str) -> Figure | None:
    """Per cent of its dough that a piece loses, as the file says it: in its head, or where it happens; None where it says none."""
    loss = formula.piece_loss(noun)
    if loss is None:
        return None
    head = () if formula.bake_loss is None else (Given("bake loss", formula.bake_loss * 100, "%", formula.place.where),)
    lost = tuple(
        Given(f"{s.verb}, loses", (s.loses or NOTHING) * 100, "%", s.place.where) for s in formula.losing_steps(noun)
    )
    rule = "as the head says" if not lost else "what is lost after dividing, each of what was there then"
    return Figure("bake loss", loss * 100, "%", rule, head + lost, "the file")


def baked_weight(grams: Fraction, loss: Range, touching: Touching = UNTOUCHED) -> Range:
    """Grams of bread that so much dough gives, least and most, with what touches it."""
    least, most = (touching.finished(grams, end or NOTHING) for end in (loss.high, loss.low))
    return Range(least, most)


def estimated_baked_weight(grams: Fraction, loss: Range, touching: Touching = UNTOUCHED) -> Fraction:
    """Grams of bread to print: to ten from 200 g on, for it is an estimate."""
    return to_tens(baked_weight(grams, loss, touching).likely)


def shelf_loss(hours: Fraction) -> Fraction | None:
    """The share of its weight an unwrapped loaf has lost, a straight line between what was weighed; None after 70 h."""
    for (before, least), (after, most) in pairwise(KEEPING):
        if before <= hours <= after:
            return least + (most - least) * (hours - before) / (after - before)
    return None


def finished_rule(piece: PieceBatch) -> str:
    """How the finished weight of a piece follows from its dough."""
    touching = piece.touching
    dough = "(dough for one + what touches it before the last heat)" if touching.before else "dough for one"
    return f"{dough} x (1 - bake loss / 100)" + (" + what comes on after" if touching.after else "")


def what_touches(batch: Batch, noun: str) -> tuple[Given, ...]:
    """What comes onto one piece of a noun, in grams, in the order it does."""
    return tuple(
        Given(f"{event.step.verb}: {event.applied.name}", event.grams, "g", event.step.place.where)
        for event in way_of_piece(batch.formula, noun, batch.pieces)
        if isinstance(event, Touched) and event.grams
    )


def half_the_water(work: Work) -> Fraction:
    """Bake loss as a share by an old rule of thumb: dough loses in the oven half the water it took up (Boutroux, 1897)."""
    taken = sum((_poured_water(line, work.larder) for line in work.formula.overall), NOTHING)
    return taken / 2 / work.formula.dough_share


def moisture(work: Work, loss: Fraction) -> Fraction | None:
    """Water in the whole baked loaf, as a share of it: all the water there is, flour's own too, less the losses.

    None where a preparation or a flour of unknown moisture goes in. What is lost on the way is taken for water; what
    rising eats (1 to 2 % of the flour) is left out. A crumb is some points moister than its loaf.
    """
    water = weighed = NOTHING
    for line in work.formula.overall:
        if line.ingredient is None or (line.is_flour and "water" not in line.ingredient.composition):
            return None
        share = line.ingredient.composition.get("water")
        water += _poured_water(line, work.larder) if share is None else line.share * share / 100
        weighed += line.share
    dough = work.formula.dough_share
    water -= weighed - dough + loss * dough
    return water / (dough * (1 - loss))


def _poured_water(line: OverallLine, larder: Larder) -> Fraction:
    return NOTHING if line.ingredient is None else line.share * larder.poured(line.ingredient).water


def loss_figures(work: Work) -> dict[str, Figure]:
    """Of each sort of piece: bake loss and baked weight where the file gives no loss, dough to weigh off where a baked
    weight is wanted, moisture, and what a plain loaf weighs when it has lain for a day and for two."""
    batch = work.batch
    if work.formula.preparation:
        return {}
    found: dict[str, Figure] = _dough_loss(batch)
    for piece in batch.pieces:
        whose = f" of {piece.noun}" if len(batch.pieces) > 1 else ""
        for name, figure in _of_piece(work, piece):
            found[f"{name}{whose}, estimate"] = figure
    return found


DOUGH_LOSS = (1, 2, 5)
"""Per cent of its dough that bowl, bench, scale and fermentation take: least, likely, most."""


def _dough_loss(batch: Batch) -> dict[str, Figure]:
    """What to reckon with between bowl and scale, where the file says no dough loss and pieces are weighed off."""
    formula = batch.formula
    if formula.dough_loss or not batch.pieces or not formula.bread.crust:
        return {}
    least, likely, most = (Fraction(share) for share in DOUGH_LOSS)
    head = formula.makes[0].place
    pieces = Given("dough in the pieces", batch.divided, "g", f"{head.path}:{head.line}")
    mixed = Figure(
        "dough to mix for that", round_to(batch.divided / (1 - likely / 100) / 10, 0) * 10, "g",
        "dough in the pieces / (1 - dough loss / 100)", (pieces,), "arithmetic",
    )  # fmt: skip
    rule = (
        f"an estimate, {decimal(least)} to {decimal(most)} %: what stays in bowl, on bench and scale, and what fermentation "
        "takes; weigh it once, and write `dough loss`"
    )
    source = "2 %: W. Prejean, The Bakery Network, 2011, and 2.03 %: Count Rumford, 1794; 5 % and more: IREKS Compendium 13.5"
    return {"dough loss, estimate": Figure("dough loss", likely, "%", rule, (mixed,), source)}


def _of_piece(work: Work, piece: PieceBatch) -> Iterator[tuple[str, Figure]]:
    formula = work.formula
    loss, span = bake_loss_of(formula, piece), bake_loss_range(formula, piece)
    if loss is None or span is None:
        return
    head = formula.makes[0].place if formula.makes else formula.place
    dough = Given(f"dough for one of the {piece.noun or 'pieces'}", piece.grams, "g", f"{head.path}:{head.line}")
    weight = _baked_weight(work.batch, piece, span, dough, loss)
    if formula.piece_loss(piece.noun) is None:
        half = Figure("by half the water", round_to(half_the_water(work) * 100, 0), "%",
                      "half of the water added / all the dough", (), "Boutroux, Le pain et la panification, 1897")  # fmt: skip
        yield "bake loss", loss._replace(inputs=(*loss.inputs, half))
        yield "baked weight", weight
        if piece.baked_wanted is not None:
            yield "dough to weigh off", _weighed_off(piece, piece.baked_wanted, span, loss)
    yield from _kept(formula, piece, weight)
    moist = moisture(work, span.likely)
    if moist is not None and _is_that_of_bread(moist, formula):
        yield "moisture", Figure(
            "moisture of the loaf", round_to(moist * 100, 0), "%",
            "an estimate: all the water weighed in and in the flour, less the bake loss / baked weight",
            (loss,), "the larder's composition of each ingredient; US law allows bread up to 38 % (21 CFR 136.110)",
        )  # fmt: skip


MOIST = {"lean": (30, 50), "rye": (36, 54), "rich": (16, 42), "": (20, 50)}
"""Per cent of water between which whole breads lie when they have cooled, by how they are baked: white bread about 36, brown
40, rye 45, brioche and sweet doughs 22 to 35 (food tables, from memory). Our rule; outside it nothing is said."""


def _is_that_of_bread(moist: Fraction, formula: Formula) -> bool:
    least, most = MOIST.get(formula.bread.core, MOIST[""])
    return least <= moist * 100 <= most


def _baked_weight(batch: Batch, piece: PieceBatch, span: Range, dough: Given, loss: Figure) -> Figure:
    touching = what_touches(batch, piece.noun)
    if piece.baked_grams is not None:
        rule = finished_rule(piece)
        return Figure("baked weight", piece.baked_grams, "g", rule, (dough, loss, *touching), loss.source)
    ends = baked_weight(piece.grams, span, piece.touching)
    rule = f"an estimate, {_span(ends)} g: {finished_rule(piece)}"
    likely = (
        estimated_baked_weight(piece.grams, span, piece.touching) if piece.baked_wanted is None else piece.baked_wanted
    )
    return Figure("baked weight", likely, "g", rule, (dough, loss, *touching), loss.source)


def _weighed_off(piece: PieceBatch, wanted: Fraction, span: Range, loss: Figure) -> Figure:
    ends = to_weigh_off(wanted, span, piece.touching)
    less = ", less what touches it" if piece.touching != UNTOUCHED else ""
    rule = (
        f"an estimate, {_span(ends)} g: baked weight / (1 - bake loss / 100){less}; "
        "who must not sell it too light takes the upper"
    )
    given = Given("wanted baked", wanted, "g", "the head, or what was asked for")
    return Figure("dough to weigh off", piece.grams, "g", rule, (given, loss), loss.source)


def _span(ends: Range) -> str:
    return f"{decimal(ends.low or NOTHING, 0)} to {decimal(ends.high or NOTHING, 0)}"


# ---- on the shelf -------------------------------------------------------------------------------------

WEIGHED_LOAF = Fraction(4 * 45359237, 100000)
"""Grams of the 4 lb loaf that was weighed on the shelf."""

DAYS = (24, 48)
KEPT_LEAST, KEPT_MOST = WEIGHED_LOAF / 3, WEIGHED_LOAF * 2
"""Grams of bread for which the one loaf that was weighed tells something. Our rule: a third of it and twice it."""
AIR = Fraction(6, 10), Fraction(14, 10)
"""What a loaf may lose for 1 that was weighed, in damper and in drier air. Our rule."""


def _kept(formula: Formula, piece: PieceBatch, weight: Figure) -> Iterator[tuple[str, Figure]]:
    for hours in DAYS:
        share, kept = shelf_loss(Fraction(hours)), kept_weight(formula, weight.value, Fraction(hours))
        if share is None or kept is None:
            return
        light, heavy = kept
        name = f"weight after {hours} h unwrapped"
        rule = (
            f"an estimate, {decimal(to_tens(light), 0)} to {decimal(to_tens(heavy), 0)} g: baked weight x (1 - what a 4 lb loaf lost), "
            "give or take two fifths for the air, and more for a smaller loaf, by its surface for its weight"
        )
        lost = Given("a 4 lb loaf lost", round_to(share * 100, 1), "%", "1.25 oz of 64 in 24 h, 5 oz in 48 h")
        yield name, Figure(name, round_to((light + heavy) / 10, 0) * 5, "g", rule, (weight, lost), GODDARD)


def kept_weight(formula: Formula, grams: Fraction, hours: Fraction) -> tuple[Fraction, Fraction] | None:
    """Grams that a loaf of so many may weigh when it has stood unwrapped for so many hours, least and most; None where the one loaf that
    was weighed tells nothing of it: of rolls, and after 70 h."""
    share = shelf_loss(hours)
    if share is None or not formula.bread.loaf or not KEPT_LEAST <= grams <= KEPT_MOST:
        return None
    skins = sorted((Fraction(1), more_skin(grams)))
    return grams * (1 - share * skins[1] * AIR[1]), grams * (1 - share * skins[0] * AIR[0])


GODDARD = "Goddard, grocers' guide: a 4 lb loaf weighed from day to day"


def more_skin(grams: Fraction) -> Fraction:
    """How much more skin for its weight a loaf has than the one that was weighed: as the cube root of their weights."""
    return Fraction(bisect_left(range(10_000), WEIGHED_LOAF / grams, key=lambda n: Fraction(n, 1000) ** 3), 1000)
