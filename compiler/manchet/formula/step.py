"""One thing done, as the model holds it: who works, how long, in what heat, to what it comes, and what it moves.

Shares are grams per gram of all flour; masses are grams; times seconds; temperatures degrees Celsius; all `Fraction`.
"""

from __future__ import annotations

from enum import Enum
from fractions import Fraction

from manchet.diagnostics.diagnostic import Place
from manchet.formula.bake_events import OPEN, STEAM, BakeEvent
from manchet.formula.parts import CountedAmount
from manchet.formula.picture import Picture
from manchet.formula.ranges import Range
from manchet.larder.ingredient import Ingredient
from manchet.records import NamedTuple


class Who(Enum):
    HANDS = "hands-on"
    WAITING = "waiting"
    MACHINE = "machine"


class Heat(NamedTuple):
    """Degrees Celsius around a thing, and where they are measured ("", floor, air, top, bottom, fan)."""

    celsius: Range
    where: str = ""


class Reach(NamedTuple):
    """What the thing itself reaches. `what`: temperature, core (Celsius), length, below rim (mm), pH, volume (times)."""

    what: str
    value: Range


class Folds(NamedTuple):
    """`with 4 folds every 30 min`: `work` is fold, turn or stir; `seconds` lie between two, or before the only one."""

    work: str
    number: int
    seconds: Fraction
    every: bool


class Wait(NamedTuple):
    """`may wait 4 h at 4 C`"""

    seconds: Range
    celsius: Range | None = None


class Applied(NamedTuple):
    """What touches the bread but is no dough: egg wash, dusting flour, grease, filling, lye.

    `grams` is for one piece if `each`, else in all. `stage` is the key of a stage or preparation, else "".
    """

    name: str
    ingredient: Ingredient | None
    stage: str
    grams: Fraction
    each: bool
    onto: str = ""
    counted: CountedAmount | None = None
    """Where it is counted, in whole pieces or slices."""


class Goes(NamedTuple):
    """What an `add`, `lock in`, `return`, `keep` or `top up` step moves: the name, and how much of it.

    `share` is grams per gram of all flour for this much; None where it follows from the balance.
    """

    name: str
    key: str
    """The name folded: of the ingredient in the larder, or of the stage."""
    share: Fraction | None = None
    of_dough: Fraction | None = None
    """Instead: this share of the dough that is divided (`hazelnuts 12% of the dough`)."""
    per_base: bool = False
    """`share` is still of what 100 % means in its stage (only while binding)."""
    by_feel: bool = False
    celsius: Fraction | None = None
    """How warm it is when it goes in, where the step says so."""
    beyond: bool = False
    """More than overall says, by feel (`add water up to 4%`): a jug line, no part of the balance."""


class PouredOff(NamedTuple):
    """What is poured off and gone: `share` is grams per gram of all flour, `water` the part of it that is water."""

    name: str
    share: Fraction
    water: Fraction
    in_percent: bool
    """The file says it in per cent."""


class Step(NamedTuple):
    """One thing done. `verb` is a verb of the vocabulary or add, lock in, return, keep, discard, top up.

    Every field but verb and who may be absent (None, "", ()).
    """

    verb: str
    who: Who
    place: Place
    time: Range | None = None
    per: str = ""
    """"each": `time` is for one piece. "side": for one side."""
    turns: Range | None = None
    manner: tuple[str, ...] = ()
    speed: int | None = None
    heats: tuple[Heat, ...] = ()
    ramp: tuple[str, Range] | None = None
    by_fire: str = ""
    """"beside the fire" or "at the mouth": in the oven while its fire burns."""
    humidity: Range | None = None
    """Of the air around it: shares of 1."""
    reaches: tuple[Reach, ...] = ()
    may_wait: Wait | None = None
    if_late: str = ""
    until: str = ""
    why: str = ""
    how: str = ""
    """`score "two long cuts"`, `do "rub the seam"`."""
    notes: tuple[str, ...] = ()
    pictures: tuple[Picture, ...] = ()
    where: tuple[str, str] | None = None
    """Preposition and place."""
    shape: str = ""
    events: tuple[BakeEvent, ...] = ()
    """Steam and vent, in order of time."""
    lid: bool | None = None
    turn_after: Fraction | None = None
    folds: tuple[Folds, ...] = ()
    at_a_time: int | None = None
    stands_each: Fraction = Fraction(1)
    """How many stand in a heat for each piece that is counted: two slices for a plate."""
    loses: Fraction | None = None
    """Share of what is in the vessel then."""
    optional: bool = False
    goes: tuple[Goes, ...] = ()
    additions: int | None = None
    poured: PouredOff | None = None
    applied: Applied | None = None
    slices: int | None = None
    """`slice into 22 slices`: of one piece."""
    loss_is_weighed: bool = False
    """What it loses is off already from the weight of what was laid down: a slice is weighed as it is cut."""
    serve_within: Fraction | None = None
    """Seconds."""
    bath: str = ""
    """The key of the preparation that pieces are boiled in, where the step says no other weight of it."""

    @property
    def steamed(self) -> bool:
        return any(event.what == STEAM for event in self.events)

    @property
    def opens_vent(self) -> bool:
        return any(event.what == OPEN for event in self.events)
