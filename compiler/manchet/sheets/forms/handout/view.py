"""What a handout says, ready to print."""

from __future__ import annotations

from typing import Literal

from manchet.records import NamedTuple
from manchet.sheets.page.issue import Running
from manchet.sheets.parts.views import AllergenLine, CautionNote, Illustration, OverallShare


class HomeRow(NamedTuple):
    """A line to weigh at home."""

    name: str
    weight: str
    unit: str
    ounces: str = ""
    """Beside the grams, in a house of ounces."""
    measure: str = ""
    """In spoons or cups: `3½ cups`."""
    density: str = ""
    """What the spoons were reckoned with, for other programs: `0.53 g/ml`. On no page."""
    notes: tuple[str, ...] = ()


class HomeStage(NamedTuple):
    """A stage as it is weighed, in the order it is made."""

    number: str
    """"" where there is one stage only."""
    title: str
    kind: str
    water: tuple[str, ...]
    """How warm the water is to be."""
    rows: tuple[HomeRow, ...]
    """What goes in later stands last, and says so."""
    notes: tuple[str, ...] = ()
    cautions: tuple[CautionNote, ...] = ()
    """Those of the weighing."""
    figures: tuple[Illustration, ...] = ()
    """The baker's own, of the stage as a whole."""


class HomeClause(NamedTuple):
    """One thing that is done: `Ferment covered 2 h`, what goes in with it, ` at 25 °C`, ` until domed`."""

    done: str
    adds: tuple[HomeRow, ...] = ()
    how: str = ""
    until: str = ""
    ticks: tuple[str, ...] = ()
    """What is done inside a wait, each with a box to tick: `fold at 40 min`."""
    notes: tuple[str, ...] = ()


class HomeStep(NamedTuple):
    """A line of the method: what is done in one go, with the cautions above it and the drawing beside it."""

    number: str
    """"" of a preparation, whose steps are read as one sentence."""
    clauses: tuple[HomeClause, ...]
    why: str = ""
    cautions: tuple[CautionNote, ...] = ()
    figures: tuple[Illustration, ...] = ()


class HomeWay(NamedTuple):
    """What is done one after another; `title` for the pieces of one sort, else ""."""

    title: str
    steps: tuple[HomeStep, ...]


class HomeMethod(NamedTuple):
    """All that is done in a stage, numbered within it."""

    title: str
    ways: tuple[HomeWay, ...]


class MadeAhead(NamedTuple):
    """A preparation that is made before the bread: so much of it, of what, and how."""

    title: str
    weight: str
    unit: str
    ounces: str
    least: str
    """Why more is made than the bread takes up, or ""."""
    rows: tuple[HomeRow, ...]
    steps: tuple[HomeStep, ...]
    good_for: str = ""
    kept: tuple[CautionNote, ...] = ()
    """The cautions on how it is kept."""


class HomeTime(NamedTuple):
    """An hour of a day: `Sat`, `14:00`."""

    day: str
    clock: str


class StartRow(NamedTuple):
    """What is begun, and when, for each of the ready times."""

    what: str
    times: tuple[HomeTime, ...]


class WhenToStart(NamedTuple):
    """When each thing is begun, so that the bread is ready at one of a few times, with few jobs at night."""

    ready: tuple[HomeTime, ...]
    rows: tuple[StartRow, ...]


class HomePhase(NamedTuple):
    """One phase of a bake as four ovens say it: the degrees without a fan, with one, those the house does not use, gas marks."""

    minutes: str
    oven: str
    fan: str
    other: str
    gas: str
    until: str = ""


class HomeBake(NamedTuple):
    """The phases of one bake; `title` says of which sort of piece, "" for all."""

    title: str
    phases: tuple[HomePhase, ...]
    figures: tuple[Illustration, ...] = ()


class HomeOven(NamedTuple):
    """All that is set on the oven, and what to know of it, said once."""

    degree: str
    """The unit of `oven` and `fan`."""
    other_degree: str
    bakes: tuple[HomeBake, ...]
    advice: tuple[str, ...]


class Handout(NamedTuple):
    """A formula to take home: for hands and one domestic oven."""

    title: str
    about: str
    language: str
    paper: str
    running: Running
    makes: tuple[str, ...]
    before: tuple[MadeAhead, ...]
    """In the order they are begun."""
    stages: tuple[HomeStage, ...]
    start: WhenToStart | None
    """None where nothing is done."""
    oven: HomeOven | None
    """None where nothing is baked."""
    method: tuple[HomeMethod, ...]
    at_home: tuple[CautionNote, ...]
    """The cautions of any kitchen at home, and whom the bread is not for."""
    once: tuple[str, ...]
    """What is said once of spoons and of yeast."""
    cautions: tuple[CautionNote, ...]
    """Those of the formula that no step causes."""
    overall_head: str
    """Of what the per cents are."""
    overall: tuple[OverallShare, ...]
    """Without figures where they are left for the pen."""
    blanks: bool
    """The per cents are left for the pen. The answers stand on the class set alone."""
    notes: tuple[str, ...]
    recipe: str
    """The same for machines: JSON-LD in the words of schema.org, fit to stand in HTML."""
    contains: AllergenLine = AllergenLine()
    form: Literal["handout"] = "handout"
    swapped: tuple[str, ...] = ()
    """What was swapped, as on the prep sheet."""
    figures: tuple[Illustration, ...] = ()
    """Those of the head."""
