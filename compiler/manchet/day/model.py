"""A day as whoever plans it sees it, and a plan of it: jobs, waits, loads, shifts, and when each job begins.

All times are whole minutes from the day's zero, elapsed and not of a clock; only printing turns them into hours. All that is
said here is about *beginnings*: a job's length is fixed, so a wait, the room a load takes and an end are sums of beginnings and
figures. Nothing here knows a formula, a kitchen or a file.
"""

from __future__ import annotations

from fractions import Fraction

from manchet.records import NamedTuple


class DayJob(NamedTuple):
    """A moment at which somebody must be there: all work by hand and machine between two waits."""

    key: str
    """Its name in this day, the same as long as the files say the same: "Tern loaf/divide"."""
    breads: tuple[str, ...]
    """Whose it is. Several where one stage of the house serves several doughs; none for a break."""
    does: str
    """In words: "divide, shape"."""
    minutes: int
    """At least 1."""
    earliest: int
    latest: int
    """It begins between these two."""
    hands: int = 1
    """How many pairs of hands it wants, all of one shift; 0 where it goes by itself."""
    mixer: str = ""
    """Which mixer it has for all its minutes."""
    shift: str = ""
    """The key of the only shift that does it; "" where any may."""
    is_break: bool = False
    """It lies in no load's last `BREAK_BEFORE_OUT` minutes."""


BREAK_BEFORE_OUT = 10
"""Minutes before a load comes out in which nobody takes a break. Our own rule."""


class DayWait(NamedTuple):
    """From the beginning of one job to the beginning of another: at least `least` minutes, at most `most`.

    Minutes beyond `most` up to `may` more are allowed and paid for (`may wait`). `most` None: for as long as one likes.
    """

    before: int
    after: int
    least: int
    most: int | None
    may: int = 0
    what: str = ""
    """In words: "ferment"."""
    is_cold: bool = False
    """What waits stands in a fridge or freezer."""


class HeatSpan(NamedTuple):
    """Degrees Celsius, from coldest to hottest."""

    low: Fraction
    high: Fraction
    near: Fraction = Fraction(0)
    """How much of it lies to either side of the one figure that the file says; 0 of a range, which is all the file's."""


class DayLoad(NamedTuple):
    """What goes into an oven through one opening of its door and comes out together.

    It has the oven from the beginning of `put` to the end of `take`; `take` begins exactly `stays` minutes after `put` begins.
    """

    key: str
    bread: str
    pieces: int
    noun: str
    oven: str
    put: int
    take: int
    """Numbers of the jobs that put it in and take it out."""
    stays: int
    share: Fraction
    """Of one deck; up to 1."""
    enters: HeatSpan | None
    """The floor it may go in at; None where any will do."""
    leaves: HeatSpan | None
    """What the oven is set to at its end."""
    extra: int = 0
    """Minutes of its curve that a falling oven loses to it beyond the minutes it stays."""
    at_the_mouth: bool = False
    """It may stand at the mouth while the oven heats, too: never bread."""
    is_in: bool = False
    """It is in the oven already, beside whatever is: two such are not asked whether they suit one deck."""


class CurvePoint(NamedTuple):
    """A floor's heat so many minutes after the fire is out."""

    minute: Fraction
    celsius: Fraction


class DayOven(NamedTuple):
    """An oven that holds its heat (`curve` empty), or one that falls from the minute its fire is out."""

    name: str
    decks: int = 1
    within: int = 0
    """Loads whose putting in begins no more than so many minutes apart go in through one opening."""
    recovers: int = 0
    """Minutes between two loads."""
    climbs: Fraction | None = None
    sinks: Fraction | None = None
    """Degrees Celsius a minute, between two loads of other heat; None where nobody says: a change takes no time."""
    curve: tuple[CurvePoint, ...] = ()
    """Straight between its points; the last is as cold as anyone bakes."""
    mouth_from: int = 0
    mouth_until: int = 0
    """Minutes before the fire is out between which food stands at the mouth; 0 and 0 where none may."""


LENGTHS_APART = 25
"""Minutes by which two loads that share a deck may stay longer than one another. Our own rule."""


class Fire(NamedTuple):
    """One heating of an oven: from the beginning of the job `light` on for `heats` minutes it is used for nothing but the mouth.

    A falling oven's fire is then out, and its curve begins. One that holds its heat takes loads from then on, up to its next fire.
    Every load of an oven that has fires belongs to the last fire that was out before it went in.
    """

    oven: str
    light: int
    heats: int


class DayMixer(NamedTuple):
    name: str
    number: int = 1
    gaps: tuple[tuple[int, int, int], ...] = ()
    """(job, later job, minutes): what must lie between the end of the one and the beginning of the other on one machine, to
    wash it; 0 for pairs that do not stand here."""
    away: tuple[tuple[int, int], ...] = ()
    """From when to when it is lent or serviced: all of them."""


class DayPlace(NamedTuple):
    """A fridge, a prover, baskets, trays, tins: whatever runs out."""

    name: str
    holds: int
    """In its own units."""
    away: tuple[tuple[int, int], ...] = ()


class Stay(NamedTuple):
    """Pieces have `takes` units of a place from the beginning of job `begins` to the end of job `ends`."""

    place: str
    takes: int
    begins: int
    ends: int


class Shift(NamedTuple):
    key: str
    name: str
    """Who: "Tom"; or "hands 2"."""
    hands: int
    begins: int
    ends: int


class End(NamedTuple):
    """By when something must be there: it is so `after` minutes from the end of job `job`."""

    bread: str
    pieces: int
    noun: str
    job: int
    after: int
    due: int
    not_before: int | None = None
    """Of a window: it is not there sooner."""
    oldest: int | None = None
    """`due` lies at most so many minutes after the end of the job; lateness aside."""
    word: str = "ready"
    """"ready", "packed" or "served"."""


class Day(NamedTuple):
    """Everything that a plan must hold to. Jobs are named by their number."""

    jobs: tuple[DayJob, ...]
    waits: tuple[DayWait, ...]
    loads: tuple[DayLoad, ...]
    ovens: tuple[DayOven, ...]
    fires: tuple[Fire, ...]
    mixers: tuple[DayMixer, ...]
    places: tuple[DayPlace, ...]
    stays: tuple[Stay, ...]
    shifts: tuple[Shift, ...]
    ends: tuple[End, ...]
    begins: int
    finishes: int
    """No job begins before the one or ends after the other."""

    @property
    def breads(self) -> tuple[str, ...]:
        """Each once, in the order of their ends."""
        return tuple(dict.fromkeys(end.bread for end in self.ends))


class Timetable(NamedTuple):
    """When each job begins, which shift does it, which deck each load has. Index for index as in its `Day`."""

    starts: tuple[int, ...]
    shifts: tuple[int, ...]
    """The number of a shift; -1 where a job wants no hands."""
    decks: tuple[int, ...]
    """From 0."""


class Goal(NamedTuple):
    """One of the things a plan is good at, in the order they count."""

    name: str
    """"late", "may wait", "room", "presence", "age" or "early"."""
    value: int
    """Minutes: more is worse, but of room."""
    bound: int
    """No plan does better than this, those before it held; equal to `value` where that is proven."""
    proven: bool


class Planned(NamedTuple):
    """A plan with how good it is."""

    timetable: Timetable
    goals: tuple[Goal, ...]
    engine: str
    """"by hand" (posting) or "cp-sat"."""
    is_finished: bool = True
    """False: the time ran out before all goals were gone through."""
