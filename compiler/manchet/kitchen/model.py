"""What stands in a kitchen: its temperatures, machines, tins and scales, as values."""

from __future__ import annotations

from fractions import Fraction
from functools import lru_cache
from typing import TYPE_CHECKING, TypeVar

from manchet.diagnostics.diagnostic import Place
from manchet.larder.names import key
from manchet.larder.yeast_factors import USUAL, Factors
from manchet.records import NamedTuple
from manchet.syntax.things import THING

if TYPE_CHECKING:
    from manchet.larder.selling import Contact
    from manchet.quantities.money import Money


class SaidFriction(NamedTuple):
    """What a baker takes off for the mixer when water is worked out by the trade's rule."""

    celsius: Fraction
    """Degrees, a difference."""
    in_the_sum: bool
    """Taken off the sum of the readings, once; if not, it is of the dough, once for each reading."""


class Mixer(NamedTuple):
    name: str
    least_grams: Fraction | None = None
    most_grams: Fraction | None = None
    """Dough it takes, at least and at most."""
    slow_turns: Fraction | None = None
    fast_turns: Fraction | None = None
    """Turns a minute."""
    warms: Fraction | None = None
    """Degrees Celsius (a difference) in one measured mix of `warms_slow` and `warms_fast` seconds."""
    warms_slow: Fraction | None = None
    warms_fast: Fraction | None = None
    stiff_grams: Fraction | None = None
    """Of a stiff dough, at most; None where the kitchen does not say."""
    friction: SaidFriction | None = None
    number: int | None = None
    """How many there are; None where the kitchen does not say."""
    wash: Fraction | None = None
    """Seconds, between two doughs."""
    wash_after: tuple[tuple[str, Fraction], ...] = ()
    """Seconds instead, after a dough with this: an allergen or an ingredient."""


class Floor(NamedTuple):
    """An oven floor in millimetres, seen from the door. A round one is as wide as it is deep."""

    across: Fraction
    deep: Fraction
    is_round: bool = False


class Fall(NamedTuple):
    """How fast a fired oven grows colder from `start` (Celsius) on: degrees Celsius, a difference, an hour."""

    an_hour: Fraction
    """The figure to plan with: the middle of a range."""
    start: Fraction
    slowest: Fraction | None = None
    fastest: Fraction | None = None
    """The ends of a range, where the kitchen gives one."""


class LoadTakes(NamedTuple):
    """How much colder a floor is when a load has come out than when it went in: degrees Celsius, a difference."""

    drop: Fraction
    grams: Fraction | None = None
    """The dough of the load that was measured. None: a full one, whatever that weighs."""


class Mouth(NamedTuple):
    """When food may stand at the mouth of a fired oven while it heats: seconds before the fire is out, from and until."""

    start: Fraction
    end: Fraction


class Oven(NamedTuple):
    name: str
    heat: str = ""
    """As written: "wood, falling", "gas", "electric", "fan" …"""
    hottest: Fraction | None = None
    """Degrees Celsius."""
    holds: tuple[tuple[int, str], ...] = ()
    """How many of what: ((24, "loaves"), (6, "rounds"))."""
    recovers: Fraction | None = None
    heats_in: Fraction | None = None
    """Seconds."""
    steam: str = ""
    floor: Floor | None = None
    door: Fraction | None = None
    """Millimetres from side to side."""
    falls: tuple[Fall, ...] = ()
    """The hottest start first; empty where it holds its heat or nobody has measured."""
    load_takes: LoadTakes | None = None
    """None: nobody has measured."""
    decks: int | None = None
    """Of which each takes what it `holds`; None is one."""
    loads_within: Fraction | None = None
    """Seconds from the first piece to the last in one opening of the door: what goes in by then bakes together."""
    climbs: Fraction | None = None
    sinks: Fraction | None = None
    """Degrees Celsius (a difference) a minute, from one heat to the next."""
    mouth: Mouth | None = None
    costs: RunningCost | None = None
    """None: the kitchen does not say."""


class Cold(NamedTuple):
    """A fridge, a freezer or a prover: a place that keeps a temperature."""

    word: str
    name: str
    keeps: Fraction | None = None
    holds: tuple[tuple[int, str], ...] = ()
    """How many of what one of them holds."""
    number: int | None = None
    humidity: Fraction | None = None
    """Of its air, a share of 1; None where the kitchen does not say."""

    @property
    def called(self) -> str:
        """Its name, and what it is where it has none: `warm cupboard`, `prover`."""
        return self.name or self.word


class Vessel(NamedTuple):
    """A tin, tray, basket, couche, rack, tub, pot, griddle or bench."""

    word: str
    name: str
    millilitres: Fraction | None = None
    number: int | None = None
    rim: tuple[Fraction, ...] | None = None
    """Length and width at the rim, in millimetres, where they are measured."""
    base: tuple[Fraction, ...] | None = None
    """The same at its floor."""
    deep: Fraction | None = None
    """Millimetres from the rim to the floor, where that is measured."""
    holds: tuple[tuple[int, str], ...] = ()
    """How many of what one of them takes: of a tray, a couche."""
    lidded: bool = False
    """A tin that is baked with its lid on, unless the bake says `lid off`."""


class Scale(NamedTuple):
    name: str
    reads: Fraction
    """Grams to which it reads."""
    up_to: Fraction | None = None


class RunningCost(NamedTuple):
    """What something costs while it works: `an_hour`, else for each time it is fired."""

    money: Money
    an_hour: bool


class LabelStock(NamedTuple):
    """What labels are printed on: a roll so many millimetres wide, or so many across and down a sheet of paper."""

    roll: Fraction | None = None
    across: int = 0
    down: int = 0
    paper: str = ""


class Selling(NamedTuple):
    """What a kitchen says of selling."""

    markets: tuple[str, ...] = ()
    """Of "EU", "Britain", "US": whose law its labels keep. Empty where it does not say."""
    address: str = ""
    handles: tuple[str, ...] = ()
    """Allergens that are in the house and in none of its formulas."""
    contacts: tuple[Contact, ...] = ()
    work: Money | None = None
    """An hour of hands."""
    prices_old_after: Fraction | None = None
    """Seconds."""
    tax: Fraction | None = None
    """A share of the price without it; it is in every price that the house names."""
    margin: Fraction | None = None
    """What is left of a price without tax when the cost is paid, as a share of that price."""
    labels: LabelStock | None = None


NOT_SOLD = Selling()


class Kitchen(NamedTuple):
    name: str
    air: Fraction | None = None
    flour: Fraction | None = None
    tap: Fraction | None = None
    """Degrees Celsius."""
    hands: int | None = None
    measures: str = ""
    """"US", "metric", "imperial" or "": whose cups and spoons."""
    words: str = ""
    """"British", "American" or "": whose words are printed."""
    zone: str = ""
    """By whose clock it lives, as the IANA tz database names it ("Europe/Lisbon"); "" where no clock changes."""
    degrees: str = ""
    """"C" or "F": in what it writes its own temperatures; "" where it writes none."""
    lengths: str = ""
    """"inch" where it measures its tins in inches, else ""."""
    yeast: str = ""
    yeast_factors: Factors = USUAL
    """Between fresh and dried yeast."""
    mixers: tuple[Mixer, ...] = ()
    ovens: tuple[Oven, ...] = ()
    colds: tuple[Cold, ...] = ()
    vessels: tuple[Vessel, ...] = ()
    scales: tuple[Scale, ...] = ()
    minutes: tuple[tuple[str, Fraction], ...] = ()
    """Hands-on seconds a piece for a verb (`shape 20 s each`); for `load` and `take out` too, and for `weigh` a line of a bowl."""
    packs: tuple[tuple[str, Fraction], ...] = ()
    """Seconds out of the oven after which pieces of a noun are cold enough to pack."""
    busy: Fraction = Fraction(0)
    """The share of each hour that goes into other work: washing up, the shop."""
    always_allow: tuple[str, ...] = ()
    place: Place | None = None
    selling: Selling = NOT_SOLD

    def vessel(self, place: str) -> Vessel | None:
        """The tin, tray or couche that a step means by `place`: its name, its name and kind (`linen couche`), or its kind
        alone where the kitchen has no second of that kind. None where it means none of them."""
        return _meant(self.vessels, place)

    def cold(self, place: str) -> Cold | None:
        """The fridge, freezer or prover that a step means by `place`, as `vessel` finds a tin."""
        return _meant(self.colds, place)

    @property
    def where(self) -> str:
        """The line it begins in, for a figure that comes from it."""
        return self.place.where if self.place else "the kitchen"


_Kept = TypeVar("_Kept", bound=Vessel | Cold)


def _meant(things: tuple[_Kept, ...], place: str) -> _Kept | None:
    wanted = key(place)
    for thing in things:
        if wanted in _names_of(thing.word, thing.name):
            return thing
    alike = [thing for thing in things if wanted in _kinds_of(thing.word)]
    return alike[0] if len(alike) == 1 else None


_REMEMBERED = 512


@lru_cache(maxsize=_REMEMBERED)
def _names_of(word: str, name: str) -> frozenset[str]:
    """The keys that a thing of that kind and name is called by: every step of every bread asks for them."""
    called = (word, *THING[word].also)
    both = (key(said) for one in called for said in (f"{name} {one}", f"{one} {name}"))
    return frozenset((key(name), *both))


@lru_cache(maxsize=_REMEMBERED)
def _kinds_of(word: str) -> frozenset[str]:
    return frozenset(map(key, (word, *THING[word].also)))


PLAIN = Kitchen(name="")
"""The kitchen of someone who has described none: no mixer limit, no scale, no temperature is assumed."""
