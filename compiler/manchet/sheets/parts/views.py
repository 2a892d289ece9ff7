"""What several forms show, ready to print: every figure is already text, so that a template only places it.

A view holds no number to reckon with and no name to look up. The same view is written as HTML, PDF and JSON.
"""

from __future__ import annotations

from typing import Literal

from manchet.records import NamedTuple


class Fact(NamedTuple):
    """A label and what it is: `dough temperature`, `28 °C`."""

    label: str
    value: str
    was: str = ""
    """What it was before, "" if that is unchanged or unknown."""


class WeighRow(NamedTuple):
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
    letter: str = ""
    """Of what is weighed now and goes in later: A goes in first."""
    was: str = ""
    """What the version before would weigh today, `new` for what it did not have, "" where that is unchanged or unknown."""
    ice: str = ""
    """How much of it goes in as ice, beside `weight`; then `whole` is both together."""
    whole: str = ""


class Box(NamedTuple):
    """A place for the pen: what is written into it, and its unit."""

    label: str
    unit: str = ""
    wide: bool = False
    """Its label is a limit with what to do beyond it, and it is as wide as that."""


class AheadItem(NamedTuple):
    """Something that is made ahead, in the amount that is wanted of it in all, with the pen's place for when it was made."""

    name: str
    weight: str
    """A figure: grams, slices, loaves; "" of what pieces are boiled in."""
    unit: str
    of_what: str = ""
    """Its share of what is made: `of a batch of 602 g`, `48 slices of 66, 18 over`."""
    keeps: str = ""
    """How long it is good for, or how old a bread may be."""
    taken_up: bool = False
    """Pieces are dipped into it: so much of it they take up, and more is made."""
    boxes: tuple[Box, ...] = ()


class Illustration(NamedTuple):
    """A drawing of ours (`svg`, made by our own pen) or a baker's picture (`data`, an address that holds it whole).

    `title` is what it shows, for whoever cannot see it; `high` about how many millimetres it takes.
    """

    title: str
    svg: str = ""
    data: str = ""
    high: int = 26


class StepClause(NamedTuple):
    """One thing done, as a part of a line: what is done in bold, and after it on what conditions."""

    by: Literal["hands", "machine", "left alone", "cold", "oven"]
    """Who or what is at work."""
    verb: str
    """The verb of the file."""
    doing: str
    """The verb in the words of the house, or the baker's own."""
    letter: str = ""
    """Of what was weighed before and goes in now."""
    object: str = ""
    """How, with what and where: `with rice flour`, `seam up on linen`."""
    minutes: str = ""
    """How long, where that is not for a piece."""
    rest: str = ""
    """The conditions, from the sign on that parts them from what is done: ` at 5 °C`, `, 6 g each`, `: two long cuts`."""
    adds: tuple[WeighRow, ...] = ()
    counts: tuple[str, ...] = ()
    """Things that happen inside a wait and get a tick each: `fold at 40 min`, `fold at 80 min`."""

    @property
    def text(self) -> str:
        added = ", ".join(f"{row.name} {row.weight}" for row in self.adds)
        bold = " ".join(part for part in (self.doing, self.letter, self.object, self.minutes, added) if part)
        return " ".join((bold + self.rest, *self.counts))


class StepLine(NamedTuple):
    """One step: what is done, what to look for, smaller remarks, what is weighed in now, boxes for what happened."""

    text: str
    look: str = ""
    notes: tuple[str, ...] = ()
    adds: tuple[WeighRow, ...] = ()
    boxes: tuple[Box, ...] = ()
    counts: tuple[str, ...] = ()
    """Things that happen inside a wait and get a tick each: `fold, 40 min`, `fold, 80 min`."""


class BakePhase(NamedTuple):
    """One phase of a bake; every cell is text, "" for what the file does not say."""

    minutes: str
    heat: str
    steam_vent: tuple[str, ...]
    """In order of time."""
    core: str
    look: str = ""
    notes: tuple[str, ...] = ()


class CautionNote(NamedTuple):
    """A hazard directly above the step that causes it: the limit, a box for the reading, what to do when it goes wrong.

    A top and a warning are framed, a note is a remark; of a limit there are the boxes for the pen and no words.
    """

    level: Literal["top", "warning", "note", "limit"]
    words: str
    limit: str = ""
    if_missed: str = ""
    """What to do when it has gone wrong."""
    boxes: tuple[Box, ...] = ()
    source: str = ""
    """Who says so, in a few words: what stands at the end of a caution."""
    address: str = ""
    """Where that is to be read, in full: on the posted card, and in data."""
    catchword: str = ""
    """What it is called, in large letters, where the hazards of a house are posted."""
    hazard: str = ""
    """As `manchet explain` knows it."""
    of_stage: str = ""
    """Key of the stage that causes it, "" for the house."""
    of_step: str = ""
    """Which of the stage's steps, or of the branch's, the first being 1; "" for the stage as a whole."""
    of_branch: str = ""
    """Which of the breads that the dough is divided into, the first being 1, where the step is of one of them."""
    part: Literal["caution"] = "caution"

    @property
    def is_warning(self) -> bool:
        return self.level in ("top", "warning")


class OverallShare(NamedTuple):
    """A line of the foot: per cent only, so that nobody weighs from it."""

    name: str
    percent: str
    was: str = ""


class AlsoContains(NamedTuple):
    """What is in one sort of piece beside what is in all."""

    noun: str
    words: tuple[str, ...]


class AllergenLine(NamedTuple):
    """The allergens of what is made. Nothing here says that something is not in it."""

    contains: tuple[str, ...] = ()
    """What is in all of it."""
    also: tuple[AlsoContains, ...] = ()
    unknown: tuple[str, ...] = ()
    """What nobody knows, each with its ingredient."""
    may: tuple[str, ...] = ()
    """What may be in it, as the operator or a packet states."""
