"""What a prep sheet says, ready to print."""

from __future__ import annotations

from typing import Literal

from manchet.records import NamedTuple
from manchet.sheets.page.issue import Running
from manchet.sheets.parts.views import (
    AllergenLine,
    BakePhase,
    Box,
    CautionNote,
    Fact,
    Illustration,
    OverallShare,
    StepClause,
    WeighRow,
)


class MadeAmount(NamedTuple):
    """What is made, and of what weight: `16 loaves × 850 g → about 730 g baked`."""

    number: str
    noun: str
    weight: str
    unit: str
    tin: str = ""
    baked: str = ""


class MakeAhead(NamedTuple):
    """A preparation, or what else touches the bread, and how much of it today's amount takes."""

    name: str
    weight: str
    taken_up: bool = False
    """Pieces are dipped into it: so much of it they take up, and more is made. Without a weight they are boiled in it."""
    beside: tuple[str, ...] = ()
    """Its share of a batch, and how long it is good for."""
    boxes: tuple[Box, ...] = ()


class Handed(NamedTuple):
    """What goes from one tub to somewhere: `1,560 g` to the dough, `180 g` back as a starter."""

    weight: str
    to: str
    each: str = ""
    """The part of it for each bowl, where there are several."""


class Tub(NamedTuple):
    """What a scale shows when all is in, and where that goes."""

    vessel: str
    weight: str
    before: tuple[str, ...] = ()
    """The letters of what is added later, and not in yet."""
    back: tuple[Handed, ...] = ()
    """Kept, or given back to the pot."""
    goes: tuple[Handed, ...] = ()


class Gone(NamedTuple):
    """What the version before had and this one has no more."""

    name: str
    was: str


class LeafLine(NamedTuple):
    """One line with one set of boxes: a step, or several that are done in one go."""

    clauses: tuple[StepClause, ...]
    notes: tuple[str, ...] = ()
    boxes: tuple[Box, ...] = ()
    numbers: tuple[str, ...] = ()
    """Of the bowls that have a box each, where there are several."""
    figures: tuple[Illustration, ...] = ()
    cautions: tuple[CautionNote, ...] = ()
    """What stands directly above it."""
    limits: tuple[Box, ...] = ()
    """For the readings that have a limit, which the file keeps to."""

    @property
    def text(self) -> str:
        return " · ".join(clause.text for clause in self.clauses)


class Steps(NamedTuple):
    """Steps one after another."""

    lines: tuple[LeafLine, ...]
    part: Literal["steps"] = "steps"


class DivideRow(NamedTuple):
    """One line of the divide list: how many of what, at what weight, in which tin, about what when baked."""

    number: str
    noun: str
    weight: str
    unit: str
    beside: str = ""
    baked: str = ""
    a_bowl: str = ""
    """How many come out of each bowl, where there are several."""


class DivideList(NamedTuple):
    """The divide list: what is weighed off the dough."""

    clause: StepClause
    sorts: tuple[DivideRow, ...]
    rest: str = ""
    """What is left of the dough when all pieces are weighed off, where that is anything to speak of."""
    off: tuple[str, ...] = ()
    """Between what the dough for a wanted baked weight lies, where the file gives no bake loss."""
    notes: tuple[str, ...] = ()
    cautions: tuple[CautionNote, ...] = ()
    part: Literal["divide"] = "divide"


class WayHeading(NamedTuple):
    """Here the way of one sort begins."""

    title: str
    part: Literal["branch"] = "branch"


class BakeTable(NamedTuple):
    """The phases of one bake, in one table."""

    phases: tuple[BakePhase, ...]
    boxes: tuple[Box, ...] = ()
    notes: tuple[str, ...] = ()
    figures: tuple[Illustration, ...] = ()
    cautions: tuple[CautionNote, ...] = ()
    part: Literal["bake"] = "bake"


class IllustrationRow(NamedTuple):
    """Pictures of a stage, in one row."""

    figures: tuple[Illustration, ...]
    part: Literal["figures"] = "figures"


StagePart = Steps | DivideList | WayHeading | BakeTable | IllustrationRow


class StageBlock(NamedTuple):
    """A stage in working order: what is weighed, and what is done until it is mixed."""

    number: str
    title: str
    kind: str
    """`soaker`, where the title does not say it."""
    flour: str
    """How much of all flour ferments or swells in it: `20 %`, or ""."""
    once_for: str
    """For how many mixes it is made once, "" where there is one mix, or it is made for each."""
    bowls_in_all: str
    """How many bowls of it are made, "" for one."""
    bowls: tuple[str, ...]
    """What stands over the tick boxes: the number of each bowl, or () for one box a line."""
    rows: tuple[WeighRow, ...]
    aside: tuple[WeighRow, ...]
    """Weighed as well, but added later: each has a second tick at the step that adds it."""
    gone: tuple[Gone, ...]
    tub: Tub | None
    notes: tuple[str, ...]
    cautions: tuple[CautionNote, ...]
    """Those of the whole stage: above what is weighed."""
    parts: tuple[StagePart, ...]


class WaterCell(NamedTuple):
    """Water at one flour and one room: its temperature, and the ice that is part of it ("" for none)."""

    figure: str
    ice: str
    assumed: bool = False
    """For the flour and the room that the kitchen gives."""


class WaterRow(NamedTuple):
    """The water at one flour temperature, for each room."""

    flour: str
    cells: tuple[WaterCell, ...]
    """One for each of `rooms`."""


class HotStage(NamedTuple):
    """A stage that goes in hot: its name, how warm it is taken to be, and what a warmer one does to the water."""

    name: str
    taken: str
    beside: str


class WaterPanel(NamedTuple):
    """How warm the water is to be. Without a kitchen's temperatures: the rule alone, for the baker to fill in."""

    rule: str
    liquid: str
    figure: str
    flour: str
    room: str
    """At which flour and room the figure is; "" without one."""
    spread: str
    """Between what the figure lies, or why there is none."""
    rooms: tuple[str, ...]
    rows: tuple[WaterRow, ...]
    notes: tuple[str, ...]
    hot: tuple[HotStage, ...] = ()


class OtherWait(NamedTuple):
    """The yeast for another wait of a stage: how that differs from the written one, and its weight."""

    how: Literal["colder", "as written", "warmer", "longer", "shorter"]
    said: str
    time: str
    degrees: str
    weight: str


class OtherWaits(NamedTuple):
    """The same wait colder and warmer, and a longer one, or else a shorter."""

    stage: str
    yeast: str
    waits: tuple[OtherWait, ...]
    notes: tuple[str, ...]


class PrepSheet(NamedTuple):
    """One formula at one size, in the order of the work: what is weighed, what is done, what happened."""

    title: str
    language: str
    paper: str
    units: str
    running: Running
    status: str
    """`approved 14 Nov 2026, Ines`; "" where that is no longer so."""
    warning: str
    """NOT APPROVED, or ""."""
    amounts: tuple[MadeAmount, ...]
    lines: tuple[str, ...]
    """Under the amounts: mixes, how long it is good, when it is out of the oven."""
    ahead: tuple[MakeAhead, ...]
    beside: tuple[MakeAhead, ...]
    """What touches the bread and is made nowhere: in all."""
    wanted: str
    """How warm the dough is to be, "" where nothing says it."""
    dough: str
    """The weight of it all."""
    readings: tuple[Box, ...]
    """Measured before the mixing begins."""
    blocks: tuple[StageBlock, ...]
    bench: tuple[StagePart, ...]
    """From the first step after the last mixing: where the work goes from the mixer to the bench."""
    cautions: tuple[CautionNote, ...]
    """Those that belong to no stage."""
    hazards: str
    """The line that points to the posted card of the house, or ""."""
    overall_head: str
    """Of what the per cents are."""
    overall: tuple[OverallShare, ...]
    totals: tuple[Fact, ...]
    flours: str
    lots: tuple[str, ...]
    notes: tuple[str, ...] = ()
    water: WaterPanel | None = None
    waits: tuple[OtherWaits, ...] = ()
    contains: AllergenLine = AllergenLine()
    form: Literal["sheet"] = "sheet"
    swapped: tuple[str, ...] = ()
    """What was swapped, by what factor and source, and what moved with it; waits that were moved: a line each."""
    figures: tuple[Illustration, ...] = ()
    """The pictures of the head."""
