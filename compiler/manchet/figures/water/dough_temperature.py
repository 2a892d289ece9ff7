"""How warm the water has to be for the dough to come out as wanted: a heat balance over everything in the bowl.

    capacity x (wanted - friction) = heat that came in + heat of wetting + water x its specific heat x its temperature

with, for each kg of all flour, capacity in kJ for 1 C, and the bowl as one of the things that come in, as warm as the room.
The result is an estimate and has a range: by either of two heats of wetting in print, to the ends of the friction, and to
those of what is hot and was left to cool.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from fractions import Fraction

from manchet.batch.work import Work, once
from manchet.figures.estimate import Estimate
from manchet.figures.mixing.turns import by_machine
from manchet.figures.water.friction import Friction, friction_of, wetted_by
from manchet.figures.water.heat import BOWL, WETTING, WETTING_MOST
from manchet.figures.water.ice import ALL_ICE
from manchet.figures.water.mix_inputs import MixInput, Surroundings, mix_inputs, surroundings
from manchet.formula.model import Range, Stage, Step
from manchet.kitchen.model import Mixer
from manchet.larder.book import Larder
from manchet.records import NamedTuple
from manchet.syntax.vocabulary import ENDS_MIXING, PREFERMENTS

NOTHING = Fraction(0)
RULE = "(capacity x (dough - friction) - heat that comes in with the rest - heat of wetting) / capacity of the water"
SOURCE = "heat balance; specific heats: Choi and Okos 1986; heat of wetting: 6.5 BTU/lb flour, bakingbusiness.com"

POURED = frozenset({"dairy", "liquid"})
WATERY = Fraction(4, 5)
"""Of two classes of liquid, what may be warmed in place of water: milk, beer, juice. Our rule."""


LEVER = Fraction(1, 5)
"""Of the heat in a bowl, what the liquid has to hold to set the dough's temperature: below it, a degree of the dough takes
more than five of the liquid, and the estimate says nothing. Our rule."""


class Warming(NamedTuple):
    """One way to account for what warms the dough from within: kJ of wetting for each kg of all flour, and the work."""

    wetting: Fraction
    friction: Friction


class Balance(NamedTuple):
    """What meets in one bowl, for each kg of all flour. `free` is the liquid whose temperature is asked."""

    wanted: Fraction
    """Celsius that the mix is to reach."""
    free: tuple[MixInput, ...]
    rest: tuple[MixInput, ...]
    room: Fraction
    """Celsius of the bowl."""
    warming: Warming
    """By the lower of the two heats of wetting in print, which is the trade's own."""
    other: Warming
    """By the higher."""

    @property
    def liquid(self) -> str:
        """`water`, `milk`, or `milk and water` that are tempered together."""
        return " and ".join(dict.fromkeys(thing.portion.name for thing in self.free))

    @property
    def of_water(self) -> bool:
        return bool(self.free) and all(_is_water(thing) for thing in self.free)

    @property
    def coldest(self) -> Fraction:
        """Celsius below which the free liquid cannot be had: water with ice in it, milk from the fridge."""
        return ALL_ICE if self.of_water else NOTHING

    @property
    def bowl(self) -> Fraction:
        return (capacity(self.free) + capacity(self.rest)) * BOWL

    @property
    def capacity(self) -> Fraction:
        """kJ for 1 C of all that comes to the dough's temperature, the bowl too."""
        return capacity(self.free) + capacity(self.rest) + self.bowl

    @property
    def came(self) -> Fraction:
        """kJ above 0 C in the bowl and in all but the free liquid."""
        return sum((thing.heat for thing in self.rest), self.bowl * self.room)

    def water(self) -> Estimate:
        """Celsius of the free liquid so that the mix comes out as wanted. There has to be some."""
        whole, came, free = self.capacity, self.came, capacity(self.free)

        def needed(wetting: Fraction, friction: Fraction, more: Fraction) -> Fraction:
            return (whole * (self.wanted - friction) - came - more - wetting) / free

        return self._estimate(needed)

    def dough(self, liquid: Fraction | None = None) -> Estimate:
        """Celsius at which the mix comes out: with the free liquid at `liquid` Celsius, or as warm as it comes."""
        poured = sum((t.capacity * (t.celsius if liquid is None else liquid) for t in self.free), self.came)
        whole = self.capacity

        def reached(wetting: Fraction, friction: Fraction, more: Fraction) -> Fraction:
            return (poured + more + wetting) / whole + friction

        return self._estimate(reached)

    def _estimate(self, model: Callable[[Fraction, Fraction, Fraction], Fraction]) -> Estimate:
        things = (*self.free, *self.rest)
        heats = (-sum((t.colder for t in things), NOTHING), sum((t.warmer for t in things), NOTHING))
        ends = [
            model(w.wetting, end, more)
            for w in (self.warming, self.other)
            for end in (w.friction.low, w.friction.high)
            for more in heats
        ]
        return Estimate(model(self.warming.wetting, self.warming.friction.likely, NOTHING), min(ends), max(ends))


@once
def balance(work: Work, stage: Stage) -> Balance | None:
    """The balance of a stage where and how this work makes it."""
    return balance_of(stage, work, surroundings(work), work.mixes.mixer)


def balance_of(stage: Stage, work: Work, place: Surroundings, mixer: Mixer | None) -> Balance | None:
    """What meets in a stage's bowl until its mix has the wanted temperature; None where the file wants none, or nothing is
    in the bowl yet.

    There is no free liquid where each has a temperature in the file, and where it is too little to warm or cool the rest.
    """
    wanted = wanted_of(stage.steps)
    if wanted is None:
        return None
    until, warmth = wanted
    before = stage.steps[: until + 1]
    added = {goes.key for step in before if step.verb == "add" for goes in step.goes}
    things = mix_inputs((p for p in stage.portions if p.share and (not p.held or p.key in added)), work, place)
    if not capacity(things):
        return None
    free = _free(things, work.larder)
    readings = 4 if any(_ferments_before(t, work) for t in things) else 3
    flour = sum((t.portion.share for t in things if t.portion.is_flour and not t.portion.stage), NOTHING)
    return Balance(
        wanted=warmth.likely,
        free=free,
        rest=tuple(t for t in things if t not in free),
        room=place.air,
        warming=_warming(WETTING, flour, before, mixer, readings),
        other=_warming(WETTING_MOST, flour, before, mixer, readings),
    )


def _ferments_before(thing: MixInput, work: Work) -> bool:
    stage = work.formula.stage(thing.portion.stage)
    return stage is not None and stage.word in PREFERMENTS


def _warming(wetting: Fraction, flour: Fraction, steps: Sequence[Step], mixer: Mixer | None, readings: int) -> Warming:
    """By one of the heats of wetting in print, kJ for 1 kg; `flour` is wetted in this bowl, of 1 of all flour."""
    known = mixer if by_machine(steps) else None
    return Warming(flour * wetted_by(known, wetting, readings), friction_of(steps, mixer, wetting, readings))


def capacity(things: Iterable[MixInput]) -> Fraction:
    return sum((thing.capacity for thing in things), NOTHING)


def wanted_of(steps: Sequence[Step]) -> tuple[int, Range] | None:
    """The last mix before the dough is left to ferment that is to reach a temperature: which step, and Celsius."""
    found = None
    for at, step in enumerate(steps):
        if step.verb in ENDS_MIXING:
            break
        if step.verb == "mix":
            reached = next((reach.value for reach in step.reaches if reach.what == "temperature"), None)
            found = found if reached is None else (at, reached)
    return found


def _free(things: tuple[MixInput, ...], larder: Larder) -> tuple[MixInput, ...]:
    """Water without a temperature in the file; where there is too little of it, with it the most of the milk, beer or
    juice, or all of them, the largest first."""
    enough = LEVER * capacity(things)
    waters = [t for t in things if _is_water(t) and t.portion.celsius is None]
    liquids = [t for t in things if t.portion.celsius is None and _may_be_warmed(t, larder)]
    liquids.sort(key=lambda t: t.portion.share, reverse=True)
    for together in (waters, [*liquids[:1], *waters], [*liquids, *waters]):
        if together and capacity(together) >= enough:
            return tuple(sorted(together, key=lambda t: t.portion.share, reverse=True))
    return ()


def _is_water(thing: MixInput) -> bool:
    return thing.portion.ingredient is not None and thing.portion.ingredient.class_ == "water"


def _may_be_warmed(thing: MixInput, larder: Larder) -> bool:
    ingredient = thing.portion.ingredient
    return ingredient is not None and ingredient.class_ in POURED and larder.poured(ingredient).water >= WATERY
