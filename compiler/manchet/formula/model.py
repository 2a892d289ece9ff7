"""A formula as the trade looks at it: materials (what is weighed), stages (where it is mixed), steps (what is done).

Names are bound and percentages resolved to exact shares; it is not yet of any size (see `batch.model`).

Shares are grams per gram of all flour; masses are grams; times seconds; temperatures degrees Celsius; all `Fraction`.
"""

from __future__ import annotations

from enum import Enum
from fractions import Fraction
from typing import TYPE_CHECKING

from manchet.diagnostics.diagnostic import Place
from manchet.formula.changed import Moved as Moved, Swapped as Swapped
from manchet.formula.nouns import same_noun
from manchet.formula.parts import CountedAmount as CountedAmount, DishPart as DishPart
from manchet.formula.picture import Picture
from manchet.formula.ranges import Range as Range
from manchet.formula.step import (
    Applied as Applied,
    Folds as Folds,
    Goes as Goes,
    Heat as Heat,
    PouredOff as PouredOff,
    Reach as Reach,
    Step as Step,
    Wait as Wait,
    Who as Who,
)
from manchet.formula.what_goes import LossOf, loss_of
from manchet.larder.ingredient import Ingredient
from manchet.records import NamedTuple
from manchet.syntax.vocabulary import COOKS, KIND, NO_KIND, Kind

if TYPE_CHECKING:
    from manchet.formula.sale import Sale
    from manchet.larder.ingredient import ListedAs


class Way(Enum):
    """The three ways of writing a formula."""

    OVERALL = "overall"
    BY_WEIGHT = "by weight"
    DOUGH_FLOUR = "written on dough flour"


class Booking(Enum):
    """How a culture stands in the formula."""

    COUNTED = "counted"
    """Its flour and water are part of `overall`."""
    APART = "counted apart"
    """A line of its own, not split."""
    RETURNED = "returned"
    """The weight that came in goes back to the pot."""
    NONE = ""
    """Not a culture."""


# ---- the formula, of no size ----------------------------------------------------------------------


FROZEN, COLDEST_ROOM, COLDEST_HOT = -15, 12, 50
"""Degrees Celsius that tell ways of keeping apart, however well each is kept: frozen, in the cold, in a room, held hot. Our rule;
how cold and how hot a thing has to be is for the limits to say."""

ALL_WEIGHED, THE_LINE = "all that is weighed", "the line at 100%"
"""What the per cents of a preparation are of."""


class Portion(NamedTuple):
    """One line of a stage's weighing: an ingredient, or a stage used in it.

    `share` is what the bread gets of it (keeps left out). `percent` is as the file says or as computed, of
    `basis`: "stage flour", "all flour", "what is soaked", "dough flour", of a preparation ALL_WEIGHED or THE_LINE; "" by weight.
    """

    name: str
    key: str
    """The name folded: of the ingredient in the larder, or of the stage or preparation."""
    ingredient: Ingredient | None
    stage: str
    """The key of the stage or preparation that is used, else ""."""
    share: Fraction
    percent: Fraction | None
    basis: str
    celsius: Fraction | None
    booking: Booking
    counted_as: str
    """For a counted culture: the flour its flour is booked under, "" for the larder's own."""
    is_flour: bool
    to_taste: bool
    held: bool
    """Held back at the start and added by a later step."""
    place: Place
    more: Fraction = Fraction(0)
    """By what part of itself it may grow at the bowl, as the flour asks. Nothing but this is told of it: `share` is the least."""
    optional: bool = False
    """The baker may leave it out. Every figure is with it."""
    counted: CountedAmount | None = None
    """In a dish: where it is counted, in whole pieces or slices."""


class Keep(NamedTuple):
    """`keep 60 g as X`: grams, on top of what the bread gets, fixed when the formula is resized.

    `grams` is None for `keep what is left`, `keep enough` and `discard what is left` (then `name` is "" for discard).
    """

    grams: Fraction | None
    name: str
    key: str
    """The name folded, as the larder has it."""
    how: str
    """"amount", "enough" (as much as the formula takes of it), "left" or "discard"."""
    place: Place


class Stage(NamedTuple):
    """Where something is mixed. `key` is the name folded for comparison; the dough's key is "dough"."""

    key: str
    name: str
    word: str
    """The kind of stage: poolish, levain, sour, soaker, scald, stage, dough …"""
    flour_share: Fraction | None
    """Share of all flour weighed into it as the heading says (a fraction of 1), None where it says none."""
    portions: tuple[Portion, ...]
    steps: tuple[Step, ...]
    keeps: tuple[Keep, ...]
    into_share: Fraction
    """All that is weighed into it, per gram of all flour (keeps left out)."""
    out_share: Fraction
    """What is left of it after its losses and what went back to the pot."""
    returned_share: Fraction
    reaching: Fraction
    """The part of what comes out that reaches the bread: 1 unless some is left over, to keep or to throw away."""
    for_each_mix: bool
    shared: bool
    """Stands in column 0 (or in another file) and is drawn on by several formulas."""
    place: Place
    notes: tuple[str, ...] = ()
    from_nothing: bool = False
    """A culture without a seed: `start from nothing`."""
    pictures: tuple[Picture, ...] = ()
    lost_share: Fraction = Fraction(0)
    topped_up_share: Fraction = Fraction(0)
    """What boils off or stays on the way, and what is made good of it, per gram of all flour."""
    listed_as: tuple[ListedAs, ...] = ()
    """Its name in a list of ingredients, one for each market; without one its ingredients stand there."""
    boiled_off_share: Fraction = Fraction(0)
    """Water that has gone off as steam and was not made good, per gram of all flour; below 0 where more was topped up."""


class Branch(NamedTuple):
    """What a part of the divided dough goes on to be: its steps, and what is added to it per gram of dough."""

    noun: str
    steps: tuple[Step, ...]
    added: tuple[Portion, ...]
    """`share` here is grams per gram of the divided dough."""
    sale: Sale | None = None
    """How these are sold, where that is said of them and not at the head."""


class Makes(NamedTuple):
    """One `makes` line. `grams` is dough for one piece as weighed off; None where a tin decides.

    `number` is None for a bare weight (`makes 20 kg dough`; then `grams` is the whole).
    """

    number: Fraction | None
    noun: str
    grams: Fraction | None
    state: str
    """"dough", "baked" or "tin", of a preparation "raw" or "ready", of a dish "dish": how the file said it. `written` keeps the figure it gave."""
    written: Fraction | None
    tin: str
    place: Place


class OverallLine(NamedTuple):
    """One line of the overall formula: what is weighed for the bread, preferments and scalds included."""

    name: str
    ingredient: Ingredient | None
    stage: str
    """A preparation used as an ingredient, else ""."""
    share: Fraction
    """Grams per gram of all flour."""
    is_flour: bool
    apart: bool
    """A culture counted apart."""
    place: Place | None
    more: Fraction = Fraction(0)
    """Grams per gram of all flour that may go in on top, as the flour asks."""
    optional: bool = False


class Allowed(NamedTuple):
    """`allow salt-missing because "…"`; `stage` is the key of the stage it stands in, "" for the whole formula."""

    name: str
    because: str
    stage: str
    place: Place


class KeptFor(NamedTuple):
    """`good for 2 d at 4 C`: one way of keeping a preparation, in seconds and degrees Celsius."""

    seconds: Fraction
    celsius: Range | None
    place: Place

    @property
    def way(self) -> str:
        """`frozen`, `cold`, `hot`, or `` where it stands in a room or the line does not say."""
        if self.celsius is None or COLDEST_ROOM < self.celsius.likely < COLDEST_HOT:
            return ""
        return "hot" if self.celsius.likely >= COLDEST_HOT else "cold" if self.celsius.likely > FROZEN else "frozen"


class Formula(NamedTuple):
    name: str
    way: Way
    kind: str
    about: str
    status: str
    makes: tuple[Makes, ...]
    from_flour: Fraction | None
    """Grams of flour, if the file sizes by flour."""
    dough_loss: Fraction
    bake_loss: Fraction | None
    """Shares of what was there."""
    overall: tuple[OverallLine, ...]
    stages: tuple[Stage, ...]
    """In working order; the dough last."""
    branches: tuple[Branch, ...]
    dough_share: Fraction
    """Grams of finished dough (after all losses but the dough loss) per gram of all flour."""
    own_flour: Fraction | None
    """Grams of all flour that the file itself weighs; None for a formula in per cent.

    A preparation, or a formula without flour, counts by all that is weighed instead of by flour."""
    allowed: tuple[Allowed, ...]
    notes: tuple[str, ...]
    pictures: tuple[Picture, ...]
    place: Place
    preparation: bool = False
    """It is no bread: a preparation, or a dish."""
    dish: bool = False
    """An assembly."""
    parts: tuple[DishPart, ...] = ()
    """Of a dish: what it takes of what other blocks make by the piece."""
    kept: tuple[KeptFor, ...] = ()
    """How long a preparation is good for: a line for each way of keeping it, cold, hot or frozen."""
    never_under: Fraction | None = None
    """Grams of a preparation under which its vessel is not filled; None where the file does not say."""
    sold: Range | None = None
    """How old it may be when it is cut, packed or served: seconds from out of the oven. None where the file does not say."""
    swapped: tuple[Swapped, ...] = ()
    moved: tuple[Moved, ...] = ()
    """Waits asked for with the command, not by the file."""
    sale: Sale | None = None
    """How it is sold; None where the head says nothing of it."""

    @property
    def bread(self) -> Kind:
        """What its kind says of it; nothing, of a formula that names none, and of a preparation, which is no bread."""
        return NO_KIND if self.preparation else KIND.get(self.kind, NO_KIND)

    @property
    def good_for(self) -> KeptFor | None:
        """How long it is good for in the cold, where it is kept so; else as the first line has it."""
        cold = (one for one in self.kept if one.way == "cold")
        return next(cold, self.kept[0] if self.kept else None)

    @property
    def has_flour(self) -> bool:
        """Whether a bread's per cents are of flour: in a batter of soaked pulses they are of all that is weighed."""
        return not self.preparation and any(line.is_flour for line in self.overall)

    @property
    def is_in_percent(self) -> bool:
        """Whether it is a preparation in per cent, of which the file does not say how much is made."""
        return self.preparation and any(portion.basis == THE_LINE for portion in self.dough.portions)

    @property
    def dough(self) -> Stage:
        """The stage that is divided; of a preparation, its only one."""
        return self.stages[-1]

    @property
    def is_parted(self) -> bool:
        """Whether the divided dough goes on to be several breads. (A branch without a noun only adds to all of it.)"""
        return any(branch.noun for branch in self.branches)

    @property
    def ways(self) -> tuple[tuple[str, tuple[Step, ...]], ...]:
        """What each bread is called, and all that is done to it from the first mix of its dough to the end.

        One way if it is not parted, called after the first thing that the formula makes.
        """
        if self.is_parted:
            return tuple((branch.noun, self.dough.steps + branch.steps) for branch in self.branches if branch.noun)
        return ((self.makes[0].noun if self.makes else "", self.dough.steps),)

    @property
    def steps(self) -> tuple[Step, ...]:
        """Every step once: of each stage, then of each branch."""
        done = [stage.steps for stage in self.stages] + [branch.steps for branch in self.branches]
        return tuple(step for steps in done for step in steps)

    def way_of(self, noun: str) -> tuple[Step, ...]:
        """What is done to the pieces of a noun: the dough's steps, then their own."""
        own = next((branch.steps for branch in self.branches if same_noun(branch.noun, noun)), ())
        return self.dough.steps + own

    def losing_steps(self, noun: str) -> tuple[Step, ...]:
        """The steps after dividing that say what the pieces of a noun lose there: the bake, the cooling, a trimming."""
        steps = self.way_of(noun)
        divided = max((n for n, step in enumerate(steps) if step.verb == "divide"), default=len(steps))
        return tuple(step for step in steps[divided:] if step.loses is not None)

    def piece_loss(self, noun: str) -> Fraction | None:
        """What a divided piece has lost when it is bread, as a share of it: the head's bake loss and what the steps after
        dividing lose, one after another. None where neither says any, or only what is cut off it, and not what its heat takes."""
        steps = self.losing_steps(noun)
        is_heated = any(step.verb in COOKS for step in self.way_of(noun))
        if self.bake_loss is None and not any(not is_heated or loss_of(step) is not LossOf.STUFF for step in steps):
            return None
        left = 1 - (self.bake_loss or Fraction(0))
        for step in steps:
            left *= 1 - (step.loses or Fraction(0))
        return 1 - left

    @property
    def loss_in_its_pot(self) -> Fraction:
        """What the pieces of a preparation lose from their last heat on, where they are not divided off before it: so much less
        than it weighs raw one is when it is ready."""
        steps = self.dough.steps
        if not self.preparation or self.dish or any(step.verb == "divide" for step in steps):
            return Fraction(0)
        heat = max((n for n, step in enumerate(steps) if step.verb in COOKS), default=len(steps))
        left = Fraction(1)
        for step in steps[heat:]:
            left *= 1 - (step.loses or 0)
        return 1 - left

    def part(self, key: str) -> DishPart | None:
        """What a dish takes under that key of what other blocks make by the piece."""
        return next((part for part in self.parts if part.key == key), None)

    @property
    def serve_within(self) -> Fraction | None:
        """Seconds that a dish may stand before it is served."""
        return next((step.serve_within for step in self.dough.steps if step.serve_within is not None), None)

    def stage(self, key: str) -> Stage | None:
        """The stage of that key; None for the key of an ingredient or of a preparation, and for ""."""
        return next((stage for stage in self.stages if stage.key == key), None)
