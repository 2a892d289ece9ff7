"""What a timing card says, ready to print."""

from __future__ import annotations

from typing import Literal

from manchet.records import NamedTuple
from manchet.sheets.page.issue import Running
from manchet.sheets.parts.views import AllergenLine, Illustration


class CardWeight(NamedTuple):
    """What goes in, to check by: `1,485 g`, `water`, `95 °C` or `about 21 °C + 70 g ice`. Of pieces `number` says how many there are of that weight."""

    weight: str
    unit: str
    name: str
    beside: str = ""
    number: str = ""


class Clause(NamedTuple):
    """One thing done: `mix slow 4 min`, and how, `to 25 °C`. `work` is who works meanwhile; `note` is a small remark."""

    do: str
    how: str
    work: Literal["hands", "machine", "left alone", "cold"]
    minutes: int
    """As planned."""
    weights: tuple[CardWeight, ...] = ()
    note: str = ""
    about: str = ""
    """`~ 4 min`, where nobody says how long it takes and it is a minute or more."""


class CardWait(NamedTuple):
    """What it is left in at the end of a job: `ferment 2 h`, from when to when."""

    do: str
    how: str
    work: Literal["left alone", "cold"]
    minutes: int
    begins: str
    ends: str
    ends_day: str = ""
    """`Mon`, where it ends on another day than it begins."""
    note: str = ""
    about: str = ""
    """`~ 75 min`, where nobody says how long it takes."""


class CardLine(NamedTuple):
    """What is done with one dough or branch at one clock. `whose` is its printed name, "" where it can only be the dough."""

    whose: str
    of_stage: str
    """Its name; "" for the dough."""
    of_branch: str
    """`loaves`; "" before the dough is parted."""
    clauses: tuple[Clause, ...]
    wait: CardWait | None = None
    weights: tuple[CardWeight, ...] = ()
    """All that is weighed into its bowl now."""


class MixTick(NamedTuple):
    """When it comes for one of several mixes."""

    mix: int
    label: str
    clock: str


class CardJob(NamedTuple):
    """A row of the card: one clock at which somebody must be there, and all that is done until the dough is left alone."""

    clock: str
    elapsed: str
    """Since the first job: `+13:03`."""
    lines: tuple[CardLine, ...]
    start_by: str = ""
    """The latest that moves nothing else; "" inside a wait, and where there is no room."""
    sharp: bool = False
    """There is no room."""
    mixes: tuple[MixTick, ...] = ()
    part: Literal["job"] = "job"


class CardLoad(NamedTuple):
    """One load of an oven: when it goes in, at what clocks something is done to it, when it is out."""

    number: str
    pieces: str
    into: str
    between: tuple[str, ...]
    out: str
    of_mixes: tuple[int, ...] = ()
    """Of which mixes its pieces are, where there are several."""


class LoadList(NamedTuple):
    """A bake in several loads, at the clock at which the first is seen to. `between` heads its clocks after going in."""

    clock: str
    elapsed: str
    whose: str
    oven: str
    clauses: tuple[Clause, ...]
    between: tuple[str, ...]
    loads: tuple[CardLoad, ...]
    part: Literal["loads"] = "loads"


class CardDay(NamedTuple):
    """A day, and its jobs in order of time."""

    title: str
    jobs: tuple[CardJob | LoadList, ...]


class LateLine(NamedTuple):
    """`19:03 – 22:08`, and what gives for whoever is late then."""

    clock: str
    gives: str


class BulkTime(NamedTuple):
    """`the dough came out at 26 °C`: then about so long in bulk."""

    degrees: str
    bulk: str


class CardClash(NamedTuple):
    """More wanted at once than there is, at these clocks."""

    clocks: tuple[str, ...]
    says: str


class TimingCard(NamedTuple):
    """One formula by the clock: its jobs, until when each may begin, and what gives if it is late."""

    title: str
    language: str
    paper: str
    running: Running
    makes: tuple[str, ...]
    """`16 loaves × 850 g`, a line a product."""
    start: str
    out: str
    """When the last of it is out of the oven; "" where nothing is baked."""
    ready: str
    """When the last of it is ready; "" while anything clashes, for then nobody can say."""
    strip: Illustration | None
    days: tuple[CardDay, ...]
    late: tuple[LateLine, ...]
    warmths: tuple[BulkTime, ...]
    """() where nobody can say, or the bulk is as long at every warmth."""
    before: tuple[str, ...]
    """Before you go."""
    clashes: tuple[CardClash, ...]
    notes: tuple[str, ...] = ()
    estimates: str = ""
    """What the mark of an estimate means, where one is said."""
    swapped: tuple[str, ...] = ()
    """What was swapped, as on the prep sheet."""
    clock_changes: tuple[str, ...] = ()
    """That the clocks change between the first line and the last."""
    contains: AllergenLine = AllergenLine()
    form: Literal["card"] = "card"
