"""What a handout says, ready to print."""

from __future__ import annotations

from typing import Literal

from manchet.records import NamedTuple
from manchet.sheets.page.issue import Running
from manchet.sheets.parts.views import CautionNote, Fact, Illustration, OverallShare, WeighRow


class HomeStep(NamedTuple):
    """One step: what is done, what to look for, why, remarks, what goes in now, and its pictures."""

    text: str
    look: str = ""
    why: str = ""
    notes: tuple[str, ...] = ()
    adds: tuple[WeighRow, ...] = ()
    counts: tuple[str, ...] = ()
    figures: tuple[Illustration, ...] = ()
    rows: int = 0
    """Beside how many steps its pictures stand, from this one on."""


class HomePhase(NamedTuple):
    """One phase of a bake as four ovens say it."""

    minutes: str
    oven: str
    fan: str
    other: str
    """In the degrees that the house does not use."""
    gas: str
    core: str
    look: str = ""
    why: str = ""
    notes: tuple[str, ...] = ()


class HomeOven(NamedTuple):
    """A bake at home: its phases, and what to know of oven, pot and stone."""

    other: str
    """What stands over the phases' other degrees."""
    phases: tuple[HomePhase, ...]
    advice: tuple[str, ...]
    figures: tuple[Illustration, ...] = ()


class HomeWay(NamedTuple):
    """What is done one after another, up to a bake; `title` for one sort only, else ""."""

    title: str
    doings: tuple[HomeStep, ...]
    oven: HomeOven | None = None


class HomeStage(NamedTuple):
    """A stage: what is weighed, then what is done."""

    number: str
    title: str
    kind: str
    rows: tuple[WeighRow, ...]
    aside: tuple[WeighRow, ...]
    cautions: tuple[CautionNote, ...]
    ways: tuple[HomeWay, ...]
    notes: tuple[str, ...] = ()
    figures: tuple[Illustration, ...] = ()
    """The baker's own, of the stage as a whole."""


class MadeAhead(NamedTuple):
    """What is made ahead, in short: how much of it, of what, how."""

    title: str
    rows: str
    steps: str


class ShareRow(NamedTuple):
    """A line of the teacher's weigh-out: what one bench gets, and all that is weighed."""

    name: str
    one: str
    whole: str


class TeacherPage(NamedTuple):
    """The teacher's page: how many sets, and each stage's lines."""

    title: str
    sets: str
    stages: tuple[tuple[str, tuple[ShareRow, ...]], ...]


class Handout(NamedTuple):
    """A formula to take home: for hands and one domestic oven."""

    title: str
    about: str
    language: str
    paper: str
    running: Running
    head: tuple[Fact, ...]
    spoons: str
    """The warning about spoons and cups, or ""."""
    yeast: str
    """Which yeast is meant, or ""."""
    sections: tuple[HomeStage, ...]
    cautions: tuple[CautionNote, ...]
    """Those of no stage, and those of any kitchen at home."""
    defers: str
    overall_head: str
    overall: tuple[OverallShare, ...]
    blanks: bool
    """The per cents are left for the pen, and stand on a page of their own at the end."""
    bench: TeacherPage | None
    notes: tuple[str, ...]
    recipe: str
    """The same for machines: JSON-LD in the words of schema.org, fit to stand in HTML."""
    form: Literal["handout"] = "handout"
    swapped: tuple[str, ...] = ()
    """What was swapped, as on the prep sheet."""
    figures: tuple[Illustration, ...] = ()
    """Those of the head."""
    before: tuple[MadeAhead, ...] = ()
    """What is made ahead, in the order it is needed."""
