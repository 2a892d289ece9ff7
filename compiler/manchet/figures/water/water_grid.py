"""The water of a dough for the sheet: base temperature, the figure, and what it is in a warmer or colder bakehouse.

The heat balance fills all of it. The base temperature is the balance said as the trade says it: what water, flour and room
(and a preferment) add up to where the balance was made. So figure and base agree at the kitchen's own temperatures; where
it is warmer the two part, since the rule lets flour and room count as much as water.

Where the kitchen's mixer has a friction that the baker goes by, the rule leads: figure and grid are its, and the balance stands
beside it. What goes in hot the rule does not know; there the balance leads, with that friction in it.
"""

from __future__ import annotations

from fractions import Fraction

from manchet.batch.model import Batch
from manchet.batch.work import Work, once
from manchet.figures.estimate import Estimate
from manchet.figures.fermentation.cooling import exactly
from manchet.figures.mixing.turns import by_machine
from manchet.figures.water.base_temperature import in_the_sum, water as water_by_rule
from manchet.figures.water.dough_temperature import Balance, balance_of, wanted_of
from manchet.figures.water.friction import warmed_in_all
from manchet.figures.water.ice import ice_in
from manchet.figures.water.mix_inputs import HOTTER, MixInput, surroundings
from manchet.kitchen.model import SaidFriction
from manchet.records import NamedTuple
from manchet.syntax.vocabulary import PREFERMENTS

STEP = Fraction(4)
"""Celsius between two lines of the grid. Our rule: about what a night does to a flour store."""

BOILING = Fraction(100)

HOT_TAP = Fraction(60)
"""Celsius of the hottest water a tap gives: it is stored so hot for Legionella's sake. Common practice."""


class WaterGridCell(NamedTuple):
    """The liquid at one flour and one room: Celsius, and grams of ice in one bowl's liquid (0 where none is needed).

    `ice` is None where the kitchen's tap is not known, and where the liquid cannot be so cold or so hot (`can_be` is False
    then).
    """

    room: Fraction
    celsius: Fraction
    ice: Fraction | None
    can_be: bool = True


class WaterGridRow(NamedTuple):
    flour: Fraction
    cells: tuple[WaterGridCell, ...]


class DoughWater(NamedTuple):
    """All exact: grams for one bowl, Celsius. The page rounds; each of the temperatures is an estimate."""

    balance: Balance
    liquid: str
    """What is to be warmed or cooled: water, or the milk of a dough without water."""
    grams: Fraction
    preferment: Fraction | None
    """Celsius of the preferments together; None where none goes in, and the base has three readings."""
    flour: Fraction
    room: Fraction
    tap: Fraction | None
    """The kitchen's; None where it gives none, and for a liquid that does not come from the tap."""
    celsius: Estimate
    """At that flour and room."""
    assumed: bool
    """The kitchen gives temperatures. If not, the base was made at 20 C, and there are no figure and no grid to print."""
    known: bool
    """The kitchen gives a temperature or a mixer's warming; if not, all of this is assumed, and none of it is printed."""
    here: WaterGridCell | None
    """At that flour and room; None where nothing is assumed."""
    friction: SaidFriction | None = None
    """By what the rule leads; None where the balance does."""
    hot: tuple[MixInput, ...] = ()
    """The stages that go in much warmer than the room: how warm is read, or assumed, and moves the water."""
    preferments: frozenset[str] = frozenset()
    """The keys of the stages that `preferment` is of."""

    @property
    def can_be(self) -> bool:
        """Not colder than ice, nor hotter than water gets."""
        return self.balance.coldest <= self.celsius.likely < BOILING

    @property
    def ice(self) -> Fraction | None:
        """Grams, as in the cell."""
        return None if self.here is None else self.here.ice

    @property
    def readings(self) -> int:
        return 3 if self.preferment is None else 4

    @property
    def base(self) -> Fraction:
        """The sum of the readings in Celsius; in Fahrenheit see `units.in_fahrenheit`."""
        return self.celsius.likely + self.flour + self.room + (self.preferment or 0)


@once
def water_of(work: Work) -> DoughWater | None:
    """The water of the dough; None where its mix is to reach no temperature, or all it is made with has one."""
    batch, kitchen, mixes, place = work.batch, work.kitchen, work.mixes, surroundings(work)
    balance = _balance_at(work, place.flour, place.air)
    if balance is None or not balance.free:
        return None
    grams = sum((thing.portion.share for thing in balance.free), Fraction(0)) * batch.flour / mixes.number
    tap = kitchen.tap if balance.of_water else None
    hot = tuple(t for t in balance.rest if t.portion.stage and t.celsius - place.air >= HOTTER)
    leads = None if hot or mixes.mixer is None or not _by_machine(work) else mixes.mixer.friction
    celsius = _asked(balance, batch, leads, place.flour, place.air)
    assumed = kitchen.air is not None or kitchen.flour is not None
    return DoughWater(
        balance=balance,
        liquid=balance.liquid,
        grams=grams,
        preferment=_preferment(balance, batch),
        preferments=_preferments(batch),
        flour=place.flour,
        room=place.air,
        tap=tap,
        celsius=celsius,
        assumed=assumed,
        known=assumed
        or kitchen.tap is not None
        or (mixes.mixer is not None and warmed_in_all(mixes.mixer, readings=3) is not None),
        here=_cell(balance, celsius.likely, place.air, grams, tap) if assumed else None,
        friction=leads,
        hot=hot,
    )


@once
def water_grid(work: Work, step: Fraction = STEP) -> tuple[WaterGridRow, ...]:
    """The water where flour and room are a step colder or warmer, in Celsius; () where the kitchen gives no temperatures. Its middle
    is where they are as the kitchen says."""
    water = water_of(work)
    if water is None or not water.assumed:
        return ()
    spread = (-step, Fraction(0), step)
    return tuple(
        WaterGridRow(
            water.flour + warmer, tuple(_met(work, water, water.flour + warmer, water.room + air) for air in spread)
        )
        for warmer in spread
    )


def _met(work: Work, water: DoughWater, flour: Fraction, room: Fraction) -> WaterGridCell:
    there = _balance_at(work, flour, room)
    assert there is not None
    celsius = _asked(there, work.batch, water.friction, flour, room).likely
    return _cell(there, celsius, room, water.grams, water.tap)


def _balance_at(work: Work, flour: Fraction, room: Fraction) -> Balance | None:
    now = surroundings(work)._replace(flour=flour, air=room)
    return balance_of(work.dough.stage, work, now, work.mixes.mixer)


def _asked(there: Balance, batch: Batch, leads: SaidFriction | None, flour: Fraction, room: Fraction) -> Estimate:
    if leads is None:
        return there.water()
    preferment = _preferment(there, batch)
    others = [flour, room] if preferment is None else [flour, room, preferment]
    taken = leads.celsius if leads.in_the_sum else in_the_sum(leads.celsius, len(others) + 1)
    return exactly(water_by_rule(there.wanted, others, taken))


def _cell(there: Balance, celsius: Fraction, room: Fraction, grams: Fraction, tap: Fraction | None) -> WaterGridCell:
    can_be = there.coldest <= celsius < BOILING
    return WaterGridCell(room, celsius, ice_in(grams, tap, celsius) if tap is not None and can_be else None, can_be)


def _by_machine(work: Work) -> bool:
    wanted = wanted_of(work.dough.stage.steps)
    return wanted is not None and bool(by_machine(work.dough.stage.steps[: wanted[0] + 1]))


def _preferment(balance: Balance, batch: Batch) -> Fraction | None:
    """Celsius of what ferments before the dough, together: the fourth reading."""
    things = [t for t in balance.rest if t.portion.stage in _preferments(batch)]
    weight = sum((t.portion.share for t in things), Fraction(0))
    return sum((t.portion.share * t.celsius for t in things), Fraction(0)) / weight if weight else None


def _preferments(batch: Batch) -> frozenset[str]:
    return frozenset(stage.stage.key for stage in batch.stages if stage.stage.word in PREFERMENTS)
