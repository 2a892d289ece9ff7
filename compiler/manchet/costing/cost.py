"""What a batch costs: ingredients by what is weighed, hands and oven where the house says what they cost.

All sums are exact; the page rounds. What is not known withholds the total it is in, and nothing else.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from fractions import Fraction

from manchet.batch.model import PieceBatch
from manchet.batch.preparations_needed import preparations_needed
from manchet.batch.work import Work, once
from manchet.costing.charges import TOUCHING, Charge, charges_of
from manchet.costing.prices import GramPrice, gram_price
from manchet.costing.work_and_fire import Hands, OvenCost, fires_of, hands_of
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import list_of_words, report
from manchet.formula.nouns import same_noun
from manchet.larder.ingredient import Ingredient
from manchet.larder.names import key
from manchet.records import NamedTuple

NOTHING = Fraction(0)
Worth = Callable[[Iterable[Charge]], Fraction]
"""What some charges cost, as far as they have a price."""


class CostLine(NamedTuple):
    """An ingredient: grams weighed in all, and what they cost; None where nobody knows."""

    ingredient: Ingredient
    grams: Fraction
    price: GramPrice | None
    money: Fraction | None


class CostShare(NamedTuple):
    """A part of the total: `grams` 0 where it is not of a weight."""

    name: str
    grams: Fraction
    money: Fraction


class PieceCost(NamedTuple):
    """What the ingredients of one piece cost, by what it weighs off and what touches it; `finished` grams, None where not known."""

    piece: PieceBatch
    money: Fraction
    finished: Fraction | None


class Cost(NamedTuple):
    currency: str
    lines: tuple[CostLine, ...]
    """The dearest first, those without a price last."""
    ingredients: Fraction
    """The sum of what has a price."""
    without: tuple[str, ...]
    """What has none; water is not counted among them."""
    free_water: bool
    """Water is weighed, and the larder has no price for it."""
    by_stage: tuple[CostShare, ...]
    spare: tuple[CostShare, ...]
    """What of it becomes no bread: left in bowl and on bench, left of a bath, kept for the pot."""
    from_pot: Fraction
    pieces: tuple[PieceCost, ...]
    dough: Fraction
    """Grams that are divided; of a preparation, that are made."""
    hands: Hands
    fires: tuple[OvenCost, ...]

    @property
    def is_whole(self) -> bool:
        return not self.without

    @property
    def work(self) -> Fraction:
        """What hands and fires cost, as far as that is known."""
        return (self.hands.money or NOTHING) + sum((fire.money for fire in self.fires), NOTHING)


def cost_of_one(cost: Cost, noun: str) -> Fraction | None:
    """What the ingredients of one cost, of all where nothing is counted; None where a price is missing."""
    if not cost.is_whole:
        return None
    each = next((one for one in cost.pieces if one.piece.noun == noun), None)
    return cost.ingredients if each is None else each.money


@once
def cost_of(work: Work) -> Outcome[Cost | None]:
    """The cost of a work; None where no ingredient of it has a price, and, with the reason, where prices do not add."""
    return cost_without(work, lambda _: False)


def cost_without(work: Work, is_left_out: Callable[[Charge], bool]) -> Outcome[Cost | None]:
    """The same, had some of what is weighed been left out."""
    charges = charges_of(work)
    charges = charges._replace(lines=tuple(line for line in charges.lines if not is_left_out(line)))
    prices = {key(line.ingredient.name): gram_price(line.ingredient, work.larder) for line in charges.lines}
    known = [price for price in prices.values() if price is not None]
    if not known:
        return Outcome(None)
    hands, fires = hands_of(work), fires_of(work)
    mixed = _currencies(work, prices, hands, fires)
    if mixed:
        return Outcome(None, mixed)
    lines = _lines(charges.lines, prices)
    total = sum((line.money for line in lines if line.money is not None), NOTHING)
    without = tuple(line.ingredient.name for line in lines if line.money is None and line.ingredient.class_ != "water")
    water = any(line.money is None and line.ingredient.class_ == "water" for line in lines)

    def worth(some: Iterable[Charge]) -> Fraction:
        found = ((line.grams, prices[key(line.ingredient.name)]) for line in some if not is_left_out(line))
        return sum((grams * price.money.amount for grams, price in found if price is not None), NOTHING)

    places = dict.fromkeys(line.where for line in charges.lines)
    stages = tuple(
        CostShare(
            where,
            sum((line.grams for line in charges.lines if line.where == where), NOTHING),
            worth(line for line in charges.lines if line.where == where),
        )
        for where in places
    )
    money_of = {share.name: share.money for share in stages}
    in_dough = worth(line for line in charges.lines if line.where in _in_dough(work) and not line.noun)
    spare = [CostShare(one.what, one.grams, money_of.get(one.what, NOTHING) * one.share) for one in charges.spare]
    lost = work.batch.dough - work.batch.divided
    if lost:
        spare.append(CostShare("", lost, in_dough * lost / work.batch.dough))
    for made in work.batch.stages:
        for name, grams in (
            *made.kept,
            *((("", made.left),) if made.left > 0 and made.stage is not work.dough.stage else ()),
        ):
            if made.out and grams:
                spare.append(
                    CostShare(name or made.stage.name, grams, money_of.get(made.stage.name, NOTHING) * grams / made.out)
                )
    cost = Cost(
        currency=known[0].money.currency,
        lines=lines,
        ingredients=total,
        without=without,
        free_water=water,
        by_stage=stages,
        spare=tuple(spare),
        from_pot=charges.from_pot,
        pieces=_pieces(work, total, worth, charges.lines),
        dough=work.batch.divided,
        hands=hands,
        fires=fires,
    )
    return Outcome(cost)


def _in_dough(work: Work) -> frozenset[str]:
    return frozenset(made.stage.name for made in work.batch.stages)


def _lines(charges: Iterable[Charge], prices: dict[str, GramPrice | None]) -> tuple[CostLine, ...]:
    found: dict[str, CostLine] = {}
    for one in charges:
        name = key(one.ingredient.name)
        grams = one.grams + (found[name].grams if name in found else NOTHING)
        price = prices[name]
        found[name] = CostLine(one.ingredient, grams, price, None if price is None else grams * price.money.amount)
    return tuple(
        sorted(found.values(), key=lambda line: (line.money is None, -(line.money or 0), line.ingredient.name))
    )


def _pieces(work: Work, total: Fraction, worth: Worth, charges: Sequence[Charge]) -> tuple[PieceCost, ...]:
    """The total shared out: what touches a piece, or goes into its part of the dough, is its own; all else by weight of dough."""
    pieces = work.batch.pieces
    needed = preparations_needed(work.batch)
    a_gram: dict[str, Fraction] = {}
    for name, grams in needed.items():
        formula = work.preparations.get(name)
        if formula is not None and grams:
            a_gram[name] = worth(line for line in charges if line.where == formula.name) / grams

    def own(piece: PieceBatch) -> Fraction:
        everyone = sum((one.number for one in pieces), NOTHING)
        alike = sum((one.number for one in pieces if same_noun(one.noun, piece.noun)), NOTHING)
        steps = [(step, everyone) for made in work.batch.stages for step in made.stage.steps]
        steps += [
            (step, alike) for one in work.formula.branches if same_noun(one.noun, piece.noun) for step in one.steps
        ]
        money = NOTHING
        for step, number in steps:
            applied = step.applied
            if applied is None:
                continue
            grams = applied.grams if applied.each else applied.grams / number
            if applied.stage:
                money += grams * a_gram.get(applied.stage, NOTHING)
            elif applied.ingredient is not None:
                money += worth([Charge(applied.ingredient, TOUCHING, grams)])
        inside = [line for line in charges if line.noun and same_noun(line.noun, piece.noun)]
        return money + (worth(inside) / alike if inside else NOTHING)

    owned = [own(piece) for piece in pieces]
    dough = sum((piece.number * piece.grams for piece in pieces), NOTHING)
    shared = total - sum((piece.number * money for piece, money in zip(pieces, owned, strict=True)), NOTHING)
    return tuple(
        PieceCost(piece, money + shared * piece.grams / dough, piece.baked_grams)
        for piece, money in zip(pieces, owned, strict=True)
    )


def _currencies(
    work: Work, prices: Mapping[str, GramPrice | None], hands: Hands, fires: Iterable[OvenCost]
) -> tuple[Diagnostic, ...]:
    """A report where what is to be added is in several currencies: there is no rate that holds tomorrow."""
    found: dict[str, str] = {}
    for name, price in prices.items():
        if price is not None:
            found.setdefault(price.money.currency, name)
    if hands.rate is not None:
        found.setdefault(hands.rate.currency, "an hour of work")
    for fire in fires:
        if fire.currency:
            found.setdefault(fire.currency, f"the oven {fire.oven}".rstrip())
    sells = work.formula.sale.sells_at if work.formula.sale is not None else None
    is_the_sale = sells is not None and sells.price.currency not in found
    if sells is not None:
        found.setdefault(sells.price.currency, "what it sells at")
    if len(found) < 2:
        return ()
    told = list_of_words(tuple(f"{what} in {currency}" for currency, what in found.items()), "and")
    message = f"no cost sheet is made of {work.formula.name}, its prices are in several currencies: {told}"
    help = "write all of it in one: amounts of two currencies do not add, and no rate holds for long"
    place = sells.place if sells is not None and is_the_sale else work.formula.place
    return (report("currencies-mixed", place, message, help),)
