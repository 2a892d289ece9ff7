"""What a prep sheet says, ready to print."""

from __future__ import annotations

from typing import Literal

from manchet.records import NamedTuple
from manchet.sheets.page.issue import Running
from manchet.sheets.parts.views import BakePhase, Box, CautionNote, Fact, Illustration, OverallShare, StepLine, WeighRow


class Steps(NamedTuple):
    """Steps one after another, in one table."""

    lines: tuple[StepLine, ...]
    part: Literal["steps"] = "steps"


class DivideRow(NamedTuple):
    """One line of the divide list: how many of what, at what weight, in which tin, about what when baked."""

    number: str
    noun: str
    weight: str
    unit: str
    tin: str = ""
    baked: str = ""


class DivideList(NamedTuple):
    """The divide list: what is weighed off the dough."""

    sorts: tuple[DivideRow, ...]
    rest: str = ""
    """What is left of the dough when all pieces are weighed off, where that is anything to speak of."""
    off: tuple[str, ...] = ()
    """Between what the dough for a wanted baked weight lies, where the file gives no bake loss."""
    part: Literal["divide"] = "divide"


class WayHeading(NamedTuple):
    """Here the way of one sort begins."""

    title: str
    adds: tuple[WeighRow, ...] = ()
    part: Literal["branch"] = "branch"


class BakeTable(NamedTuple):
    """The phases of one bake, in one table; the boxes stand beside each."""

    phases: tuple[BakePhase, ...]
    boxes: tuple[Box, ...] = ()
    notes: tuple[str, ...] = ()
    part: Literal["bake"] = "bake"


class IllustrationRow(NamedTuple):
    """Pictures of a stage or of a bake, in one row."""

    figures: tuple[Illustration, ...]
    part: Literal["figures"] = "figures"


StagePart = Steps | DivideList | WayHeading | BakeTable | IllustrationRow | CautionNote


class StageBlock(NamedTuple):
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
    rows: tuple[WeighRow, ...]
    holds: str
    """`the bowl now holds 6,420 g`, or ""."""
    aside: tuple[WeighRow, ...]
    """Weighed as well, but held back: each has a second tick at the step that adds it."""
    notes: tuple[str, ...]
    parts: tuple[tuple[StagePart, ...], ...]
    """What is done, in groups that stay on one page each: up to dividing, then the way of each sort."""
    goes: tuple[str, ...]
    """Where what was made goes: to a later stage, kept, back to the pot."""
    long: tuple[bool, ...] = ()
    """For each group of parts: it cannot stay on one page, so it need not begin on a new one."""


class WaterCell(NamedTuple):
    """Water at one flour and one room: its temperature, and the ice that is part of it ("" for none)."""

    figure: str
    ice: str


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
    """How warm the water is to be. Without a kitchen's temperatures: base and rule alone, for the baker to fill in."""

    base: str
    rule: str
    liquid: str
    figure: str
    assumed: str
    """The figure's range, and at which flour and room."""
    rooms: tuple[str, ...]
    rows: tuple[WaterRow, ...]
    notes: tuple[str, ...]
    hot: tuple[HotStage, ...] = ()


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
    blocks: tuple[StageBlock, ...]
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
    form: Literal["sheet"] = "sheet"
    swapped: tuple[str, ...] = ()
    """What was swapped, by what factor and source, and what moved with it; waits that were moved: a line each."""
    figures: tuple[Illustration, ...] = ()
    """The pictures of the head."""
