"""What a timing card holds, as values: the sheets print them in the house's own words."""

from __future__ import annotations

from datetime import datetime
from fractions import Fraction

from manchet.batch.far_from_written import FarStep
from manchet.formula.bake_events import BakeEvent
from manchet.formula.model import Moved, Range, Step, Swapped, Who
from manchet.records import NamedTuple
from manchet.timing.jobs.handling import Handling
from manchet.timing.jobs.loads import FromMix
from manchet.timing.jobs.rounds import Rounds
from manchet.timing.zones import ClockChange


class Gives(NamedTuple):
    """What a step yields to lateness. All in seconds; None is an open end (`at least 24 h`)."""

    shortens: Fraction
    """It may be this much shorter than planned."""
    stretches: Fraction | None
    """It may be this much longer than planned and still be what the file says."""
    waits: Fraction
    """After that the dough may still wait this long (`may wait`), at `waits_at`."""
    waits_at: Range | None


class Change(NamedTuple):
    """One thing that gives when a job is late: whose step it is, and by how many minutes."""

    stage: str
    """Name as written; "" for the dough."""
    step: Step
    minutes: int


class Late(NamedTuple):
    """What becomes of the day if a job begins `minutes` late, and the baker does what the file allows."""

    minutes: int
    shorter: tuple[Change, ...]
    """Waits cut short, within their ranges, in working order."""
    longer: tuple[Change, ...]
    """Waits that stand longer meanwhile, within their ranges or what they `may wait`."""
    over: tuple[Change, ...]
    """Waits that stand longer than the file allows: the step's `if late` says what to do, or nothing does."""
    bake: int
    """Minutes that the (first) bake moves."""
    ready: int
    """Minutes that the bread is later."""


class FloorHeat(NamedTuple):
    """The floor of a falling oven when a load goes in, all in Celsius. An estimate."""

    written: Range
    heat: Fraction
    least: Fraction
    """Colder than that it should not be."""
    fallen: bool
    """Not the first load of this fire: for that one the oven is what is written."""


class InRoom(NamedTuple):
    """What a wait takes in the room as it is. An estimate."""

    celsius: Fraction
    """Of the room."""
    written: Fraction
    """Celsius as the file has it."""
    seconds: Range | None
    """At most, or at least, where an end is open; None: so cold or warm that nobody can say."""


class CardRow(NamedTuple):
    """One line of the card.

    `job` is "step" (then `step` is what is done), "fold", "turn" or "stir" (work inside a wait), "turn bread",
    "steam", "vent open", "vent closed" (inside a bake; `step` is the wait or the bake), "preheat", "fire out" (of an oven
    that falls: hour 0 of its own card) or "take out of oven".
    """

    start: datetime
    begins: datetime
    """When the step itself begins: all is weighed, or the oven loaded."""
    end: datetime
    """When it is over; of a load before it is taken out."""
    elapsed: int
    """Minutes since the first line of the card."""
    job: str
    step: Step | None
    stage: str
    """The stage's name as written, "" for the dough."""
    branch: str
    """The noun of the branch (`loaves`), "" before the dough is divided, or where all is one."""
    mix: int
    """Which mix, from 1; 0 where it is done once for all mixes."""
    pieces: Fraction
    """How many pieces this line handles; 0 before the dough is divided."""
    who: Who
    is_estimate: bool
    """Neither the file nor the kitchen says how long it takes: `seconds` is what is usual."""
    seconds: Range
    """How long it takes, shortest and longest."""
    by_piece: bool
    """Done piece after piece, so that several hands share it."""
    handling: tuple[Handling, ...]
    """Weighing and loading that come before; of "take out of oven" the taking out itself."""
    place: str
    """Where: as written, or the oven or mixer of the kitchen, or ""."""
    number: int
    """Which fold, turn or stir, 1 of `of`; else 0."""
    of: int
    load: int
    """Which load of the oven, 1 of `loads`, from what is done by hand just before it goes in; 0 of 0 where all go in at once."""
    loads: int
    of_mixes: tuple[FromMix, ...]
    """Whose pieces, where those of several mixes go in together."""
    baked_before: bool
    """It goes on with what is in the oven: nothing is at rest before it."""
    celsius: Range | None
    """For "preheat": to what it is heated; for "fire out": what the floor has then."""
    critical: bool
    """On the longest way through the work: a minute lost here, with nothing cut short, is a minute lost."""
    latest: datetime | None
    """Until when it may begin before something else moves: the oven, another stage, the bread. None inside a wait."""
    moves: str
    """What moves then: "oven", "mixer" (the next mix), "ready", or the name of the stage that waits, "dough" too."""
    slack: int
    """Minutes from `start` to `latest`."""
    stands_until: datetime | None
    """Until when what waits for this job may stand, by its range and `may wait`. None: the file sets no end."""
    gives: Gives
    at: int | None
    """The number of its job in the course; None for work inside a wait, and for a fire."""
    rounds: Rounds | None = None
    """In which it is done on a griddle, in a pan or in a pot."""
    one_round: bool = False
    """Its minutes are of one such round, and nobody says how many there are."""
    is_fire: bool = False
    """For "preheat": a fire is lit."""
    floor: FloorHeat | None = None
    """Where a load goes into an oven whose fall the kitchen gives."""
    cold_after: Range | None = None
    """Seconds from when to when the middle of a dough in the fridge is cold. An estimate."""
    in_room: InRoom | None = None
    """For a wait whose room is not as warm as the file has it."""
    event: BakeEvent | None = None
    """For steam and vent inside a bake."""
    far: FarStep | None = None
    """Where its minutes were written for another size."""


class BeforeYouGo(NamedTuple):
    """One item of "before you go".

    `what` is "feed" (a culture: `grams` is what the formula takes), "put away" (what is kept), "soak" (a stage for
    next day: `at` is when), "take out" (to come to `celsius`) or "set oven" (`at`, `celsius`).
    """

    what: str
    name: str
    grams: Fraction
    celsius: Fraction | None
    at: datetime | None


class Clash(NamedTuple):
    """More is wanted at once than the kitchen has. A remark: nothing is planned anew.

    `what` is "oven", "mixer" or "hands"; `share` is how much is wanted of what there is (3/2: half too much).
    """

    what: str
    name: str
    start: datetime
    end: datetime
    share: Fraction
    who: tuple[str, ...]
    """The products, or the stages, that want it."""


class CardBar(NamedTuple):
    """A stretch of the day's picture."""

    start: datetime
    end: datetime
    kind: str
    """"hands-on", "waiting", "machine" or "preheat"."""
    label: str
    """The verb, or the product."""
    row: int
    """Index of the card's line that it pictures."""


class CardLane(NamedTuple):
    """One row of the picture. `what` is "stage", "product" or "oven": persons and mixers have none.

    A product's name is the branch's noun, or the formula's (the dough until it is divided into branches).
    """

    what: str
    name: str
    mix: int
    """From 1, or 0."""
    bars: tuple[CardBar, ...]


class CameOutAt(NamedTuple):
    """A line of "the dough came out at": how long the bulk is then, in seconds, as "about" (an estimate)."""

    celsius: Fraction
    low: Fraction
    high: Fraction | None


class Card(NamedTuple):
    """The card of one formula at one size. Times are wall-clock times of the bakehouse; where it says its zone, each with its
    offset from UTC, so that what lies between two is the time that passes."""

    name: str
    start: datetime
    """The first line's time; it may be the night before."""
    ready: datetime
    """When the last of it is cooled and ready."""
    out_of_oven: datetime | None
    """When the last bread leaves the oven (or the griddle, the pot); None if nothing is baked."""
    rows: tuple[CardRow, ...]
    """In order of time. A new day line is due where `start.date()` changes."""
    came_out_at: tuple[CameOutAt, ...]
    """Empty where the file gives no dough temperature, or no bulk."""
    before_you_go: tuple[BeforeYouGo, ...]
    clashes: tuple[Clash, ...]
    lanes: tuple[CardLane, ...]
    mixes: int
    swapped: tuple[Swapped, ...] = ()
    """What was swapped in the formula: other yeast, other times."""
    moved: tuple[Moved, ...] = ()
    """Waits that were asked for at another time or warmth."""
    clock_changes: tuple[ClockChange, ...] = ()
    """Those between the first line and the last, in a kitchen that says its zone."""
