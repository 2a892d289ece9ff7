"""The words, figures and clauses that lines are made of.

Every offset counts from the start of a line's body, so that equal lines share one parse.
"""

from __future__ import annotations

from fractions import Fraction

from manchet.records import NamedTuple


class Word(NamedTuple):
    """A name or a word as written (quotes taken off, inner space folded) and where it stands in the body."""

    text: str
    start: int
    end: int


class Amount(NamedTuple):
    """A figure with its unit, as written: `76 %`, `12-15 h`, `1 lb 4 oz`, `at least 24 h`.

    `unit` is a key of `quantities.units.UNITS`; a compound is summed in its smaller unit. `low` equals
    `high` for a single figure; `at least` has no `high`, `at most` no `low`. A bare number has unit "".
    `smaller` is what comes on top of it in measures that only a country can sum: `3/4 cup 2 tbsp`.
    """

    low: Fraction | None
    high: Fraction | None
    unit: str
    start: int
    end: int
    smaller: tuple[tuple[Fraction, str], ...] = ()


class Time(NamedTuple):
    """`12-15 h`, `20 s each`, `60-75 s a side`; `per` is "", "each" or "side"."""

    amount: Amount
    per: str = ""


class Turns(NamedTuple):
    """`700-800 turns`"""

    amount: Amount


class At(NamedTuple):
    """What surrounds the thing: `at 250 C`, `at 260 C floor`; `where` is "", floor, air, top, bottom or fan."""

    amount: Amount
    where: str = ""


class Ramp(NamedTuple):
    """`falling to 200 C`, `rising to 95 C`; `way` is "falling" or "rising"."""

    way: str
    amount: Amount


class To(NamedTuple):
    """What the thing itself reaches; `what` is temperature, core, length, pH, volume or below rim.

    pH and volume amounts have unit "".
    """

    what: str
    amount: Amount


class MayWait(NamedTuple):
    time: Amount
    at: Amount | None = None


class Prose(NamedTuple):
    """Words for people; `what` is until, if late, why, note, picture, how (score, cut, slice) or do."""

    what: str
    text: Word


class Where(NamedTuple):
    """`in fridge`, `on oven floor`, `into tins`, `under cloth`."""

    preposition: str
    place: Word


class As(NamedTuple):
    """`shape as wreath`"""

    name: Word


class Manner(NamedTuple):
    """slow, fast, covered, uncovered, round, long, oval, flat, seam up, seam down, in three, in four,
    by hand, hands-on, waiting, optional, or `speed N` (then `word` is "speed" and `number` N)."""

    word: str
    number: int | None = None


class ByFire(NamedTuple):
    """`beside the fire`, `at the mouth`: in an oven while its fire burns."""

    where: str


class Humidity(NamedTuple):
    """`75% humidity`: of the air around it."""

    amount: Amount


class Steam(NamedTuple):
    """`steam`, `steam 10 s`, `steam 200 ml`; `after`: so long after the step began, else at once."""

    amount: Amount | None = None
    after: Amount | None = None


class Vent(NamedTuple):
    open: bool
    after: Amount | None = None


class Lid(NamedTuple):
    on: bool


class TurnAfter(NamedTuple):
    time: Amount


class Within(NamedTuple):
    """Work inside a wait: `with 4 folds every 30 min`, `with a fold after 45 min`.

    `work` is fold, turn or stir. Exactly one of `every` and `after` is set; with `after`, `number` is 1.
    """

    work: str
    number: int
    every: Amount | None
    after: Amount | None


class IntoSlices(NamedTuple):
    """`into 22 slices`"""

    amount: Amount


class ServeWithin(NamedTuple):
    """`within 10 min`"""

    time: Amount


class AtATime(NamedTuple):
    """`6 at a time`"""

    number: int


class Loses(NamedTuple):
    amount: Amount


class TakesUp(NamedTuple):
    """`takes up 9 g each`: of the fat that it is fried in. `per` is "each" or "all"."""

    amount: Amount
    per: str


class AppliedClause(NamedTuple):
    """Something that touches the bread but is no dough: `with egg wash 6 g each`, `tins with oil 3 g each`.

    `per` is "each" or "all". `amount` and `per` are None and "" where the file forgot them.
    """

    name: Word
    amount: Amount | None
    per: str
    onto: str = ""
    """For `grease`: tins or trays."""


Clause = (
    Time | Turns | At | Ramp | To | MayWait | Prose | Where | As | Manner | ByFire | Humidity | Steam | Vent | Lid | TurnAfter
    | Within | AtATime | Loses | TakesUp | AppliedClause | IntoSlices | ServeWithin
)  # fmt: skip
