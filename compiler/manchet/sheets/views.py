"""What a page says, ready to print: every figure is already text, so that a template only places it.

A view holds no number to reckon with and no name to look up. The same view is written as HTML, PDF and JSON.
"""

from __future__ import annotations

from typing import Literal, NamedTuple

from manchet.sheets.wait_values import Warmth, YeastTable
from manchet.sheets.water_values import Water


class House(NamedTuple):
    """How this house prints: paper ("A4", "Letter"), units ("metric", "US"), degrees ("C", "F"), whose words, and lengths
    ("mm", "inch"; US units have inches)."""

    paper: str = "A4"
    units: str = "metric"
    degrees: str = "C"
    words: str = "British"
    lengths: str = "mm"


class Issue(NamedTuple):
    """Which sheet this is: all of it comes from outside, so that the same file always prints the same page."""

    date: str = ""
    """The day it is for, as it is to be printed: "Thu 26 Nov 2026"."""
    file: str = ""
    version: str = ""
    """The commit, or words that say the file was edited since."""
    digest: str = ""
    replaces: str = ""
    """The date of the sheet this one replaces, or "" if it is the first."""
    edited: bool = False
    """Changed since it was approved: then the sheet says NOT APPROVED."""
    out_at: str = ""
    """When it is out of the oven, if a timing was asked for."""


class Running(NamedTuple):
    """What stands on every page."""

    name: str
    mix: str
    date: str
    file: str
    version: str
    digest: str
    replaces: str


class Fact(NamedTuple):
    """A label and what it is: `dough temperature`, `28 °C`."""

    label: str
    value: str
    was: str = ""
    """What it was before, "" if that is unchanged or unknown."""


class Row(NamedTuple):
    """One line to weigh. `weight` and `unit` are apart so that figures line up; `aside` stands beside a spoon or an ounce."""

    name: str
    weight: str
    unit: str
    percent: str = ""
    aside: str = ""
    notes: tuple[str, ...] = ()
    ticks: int = 1
    """Boxes to tick: one, or one for each bowl."""
    fine: bool = False
    """Weighed on the fine scale."""


class Box(NamedTuple):
    """A place for the pen: what is written into it, and its unit."""

    label: str
    unit: str = ""


class Figure(NamedTuple):
    """A drawing of ours (`svg`, made by our own pen) or a baker's picture (`data`, an address that holds it whole).

    `title` is what it shows, for whoever cannot see it; `high` about how many millimetres it takes.
    """

    title: str
    svg: str = ""
    data: str = ""
    high: int = 26


class Line(NamedTuple):
    """One step: what is done, what to look for, smaller remarks, what is weighed in now, boxes for what happened."""

    text: str
    look: str = ""
    notes: tuple[str, ...] = ()
    adds: tuple[Row, ...] = ()
    boxes: tuple[Box, ...] = ()
    counts: tuple[str, ...] = ()
    """Things that happen inside a wait and get a tick each: `fold, 40 min`, `fold, 80 min`."""
    figures: tuple[Figure, ...] = ()
    rows: int = 0
    """Beside how many lines its pictures stand, from this one on."""


class Steps(NamedTuple):
    """Steps one after another, in one table."""

    lines: tuple[Line, ...]
    part: Literal["steps"] = "steps"


class Sort(NamedTuple):
    """One line of the divide list: how many of what, at what weight, in which tin, about what when baked."""

    number: str
    noun: str
    weight: str
    unit: str
    tin: str = ""
    baked: str = ""


class Divide(NamedTuple):
    """The divide list: what is weighed off the dough."""

    sorts: tuple[Sort, ...]
    rest: str = ""
    """What is left of the dough when all pieces are weighed off, where that is anything to speak of."""
    off: tuple[str, ...] = ()
    """Between what the dough for a wanted baked weight lies, where the file gives no bake loss."""
    part: Literal["divide"] = "divide"


class Branch(NamedTuple):
    """Here the way of one sort begins."""

    title: str
    adds: tuple[Row, ...] = ()
    part: Literal["branch"] = "branch"


class Phase(NamedTuple):
    """One phase of a bake; every cell is text, "" for what the file does not say."""

    minutes: str
    heat: str
    steam: str
    vent: str
    core: str
    look: str = ""
    notes: tuple[str, ...] = ()


class Bake(NamedTuple):
    """The phases of one bake, in one table; the boxes stand beside each."""

    phases: tuple[Phase, ...]
    boxes: tuple[Box, ...] = ()
    notes: tuple[str, ...] = ()
    part: Literal["bake"] = "bake"


class Figures(NamedTuple):
    """Pictures of a stage or of a bake, in one row."""

    figures: tuple[Figure, ...]
    part: Literal["figures"] = "figures"


class Caution(NamedTuple):
    """A hazard of this formula where it arises: the limit, a box for the reading, what to do if it is missed.

    A grave one is boxed, another is a remark.
    """

    text: str
    limit: str = ""
    boxes: tuple[Box, ...] = ()
    missed: str = ""
    source: str = ""
    grave: bool = True
    part: Literal["caution"] = "caution"


Part = Steps | Divide | Branch | Bake | Figures | Caution


class Block(NamedTuple):
    """A stage in working order: what is weighed, then what is done."""

    number: str
    title: str
    kind: str
    """`soaker`, where the title does not say it."""
    made: str
    """`made once for all 3 mixes`, or ""."""
    flour: str
    """`1,483 g of 6,743 g flour`, or ""."""
    bowls: tuple[str, ...]
    """What stands over the tick boxes: the number of each bowl, or () for one box a line."""
    rows: tuple[Row, ...]
    holds: str
    """`the bowl now holds 6,420 g`, or ""."""
    aside: tuple[Row, ...]
    """Weighed as well, but held back: each has a second tick at the step that adds it."""
    notes: tuple[str, ...]
    parts: tuple[tuple[Part, ...], ...]
    """What is done, in groups that stay on one page each: up to dividing, then the way of each sort."""
    goes: tuple[str, ...]
    """Where what was made goes: to a later stage, kept, back to the pot."""
    long: tuple[bool, ...] = ()
    """For each group of parts: it cannot stay on one page, so it need not begin on a new one."""


class Overall(NamedTuple):
    """A line of the foot: per cent only, so that nobody weighs from it."""

    name: str
    percent: str
    was: str = ""


class PrepSheet(NamedTuple):
    """One formula at one size, in the order of the work: what is weighed, what is done, what happened."""

    title: str
    about: str
    language: str
    paper: str
    running: Running
    status: str
    warning: str
    """NOT APPROVED, or ""."""
    head: tuple[Fact, ...]
    readings: tuple[Box, ...]
    """Measured before the mixing begins."""
    blocks: tuple[Block, ...]
    cautions: tuple[Caution, ...]
    """Those that belong to no stage."""
    hazards: str
    """The line that points to the posted card of the house, or ""."""
    defers: str
    """That local codes come first, where any caution is given; else ""."""
    overall_head: str
    """Of what the per cents are."""
    overall: tuple[Overall, ...]
    totals: tuple[Fact, ...]
    flours: str
    lots: tuple[str, ...]
    notes: tuple[str, ...] = ()
    water: Water | None = None
    form: Literal["sheet"] = "sheet"
    swapped: tuple[str, ...] = ()
    """What was swapped, by what factor and source, and what moved with it; waits that were moved: a line each."""
    figures: tuple[Figure, ...] = ()
    """The pictures of the head."""


class HouseCard(NamedTuple):
    """The hazards of a house, posted once: sheets only point to it."""

    title: str
    language: str
    paper: str
    running: Running
    cautions: tuple[Caution, ...]
    defers: str
    form: Literal["house"] = "house"


# ---- the timing card ------------------------------------------------------------------------------


class Job(NamedTuple):
    """A line of the card. `day` is "" except where a new day begins."""

    clock: str
    elapsed: str
    job: str
    where: str = ""
    who: str = ""
    look: str = ""
    latest: str = ""
    moves: str = ""
    """What moves if it is later still."""
    late: tuple[str, ...] = ()
    """What becomes of 15, 30 and 45 minutes, a line each."""
    gives: str = ""
    """Whether it stretches, shortens, may wait or must not."""
    critical: bool = False
    """On the longest way through the work."""
    tight: bool = False
    """No slack at all."""
    day: str = ""


class Bar(NamedTuple):
    """A stretch of the picture, in its units: where it begins, how wide, which ink, what is written at which height."""

    x: str
    width: str
    y: str
    ink: str
    """hands, machine, wait, oven or cold: the name of a pattern, never a user's word."""
    text: str
    text_x: str
    text_y: str


class Lane(NamedTuple):
    """A row of the picture: one product, oven, mixer or person."""

    title: str
    y: str
    text_y: str
    bars_foot: str
    foot: str
    bars: tuple[Bar, ...]


class Tick(NamedTuple):
    """An hour, marked along the foot of the picture."""

    x: str
    text: str
    day: str = ""


class Key(NamedTuple):
    """One ink of the key under the picture, and its word."""

    ink: str
    word: str
    x: str
    y: str
    text_x: str
    text_y: str


class Picture(NamedTuple):
    """The day drawn: numbers are the drawing's own units, already text."""

    width: str
    height: str
    foot: str
    ticks: tuple[Tick, ...]
    lanes: tuple[Lane, ...]
    keys: tuple[Key, ...]
    words: str
    """The same in words, for a screen reader."""
    note: str = ""
    """What must be known to read it."""


class TimingCard(NamedTuple):
    """One formula by the clock: its jobs, until when each may begin, and what to do if it is late."""

    title: str
    language: str
    paper: str
    running: Running
    head: tuple[Fact, ...]
    jobs: tuple[Job, ...]
    warmths: tuple[Warmth, ...]
    before: tuple[str, ...]
    """Before you go."""
    pictures: tuple[Picture, ...]
    notes: tuple[str, ...] = ()
    form: Literal["card"] = "card"
    untimed: str = ""
    """That some jobs stand there with no length; it is read before the clock times are."""
    swapped: tuple[str, ...] = ()
    """What was swapped, as on the prep sheet."""
    yeasts: tuple[YeastTable, ...] = ()


Sheet = PrepSheet | TimingCard | HouseCard
