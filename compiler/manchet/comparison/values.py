"""What of a bread is otherwise on the other side, as values: a sort of change a class. How soon each is told is in `ranks`.

Every change has both sides: `before` and `after`. The same breads compared the other way round give the same changes with the sides
exchanged. Shares are grams per gram of all flour, masses grams, times seconds, temperatures degrees Celsius; all exact.
"""

from __future__ import annotations

from enum import IntEnum
from fractions import Fraction
from typing import Literal, TypeAlias

from manchet.formula.model import Step
from manchet.formula.ranges import Range
from manchet.records import NamedTuple


class Rank(IntEnum):
    """What is told first."""

    ALLERGENS = 0
    SIZE = 1
    LEAVEN = 2
    """Water, salt, and what raises it."""
    MATERIALS = 3
    COST = 4
    WARMTH = 5
    """How warm the dough is to be."""
    TIMES = 6
    STEPS = 7
    NAMES = 8
    WORDS = 9


Answer = Literal["in it", "may be in it", "not known", "not in it"]


class AllergenChange(NamedTuple):
    """An allergen of which something else is to be said. `noun`: of which sort of piece, "" of all that is made.

    `why_before` and `why_after` are the ingredients that have it, or of which nobody knows; of what may be in it the reason given.
    """

    allergen: str
    noun: str
    before: Answer
    after: Answer
    why_before: tuple[str, ...]
    why_after: tuple[str, ...]


class UnknownAllergens(NamedTuple):
    """Nobody knows the allergens of an ingredient that is in it on one side."""

    ingredient: str
    noun: str
    before: bool
    after: bool


class MadePieces(NamedTuple):
    """`grams` is dough for one as weighed off; of what is not counted all of it, with a `number` of 1 and no noun; of a dish 0."""

    number: Fraction
    noun: str
    grams: Fraction
    tin: str = ""


class MakesChange(NamedTuple):
    """One sort of piece. None where that side makes none."""

    before: MadePieces | None
    after: MadePieces | None


class FlourChange(NamedTuple):
    """Grams of all flour (or of all that is weighed) in a file by weight that makes the same pieces of another dough."""

    before: Fraction
    after: Fraction


class LossChange(NamedTuple):
    """`what`: "dough loss" or "bake loss". Shares of what was there; None where the file does not say."""

    what: str
    before: Fraction | None
    after: Fraction | None


class ShareChange(NamedTuple):
    """A line of the overall formula, or with `stage` one of a stage: then the shares are of what its per cents are of.

    `more` is what may go in on top as the flour asks. None where that side has none of it.
    """

    name: str
    key: str
    stage: str
    before: Fraction | None
    after: Fraction | None
    more_before: Fraction
    more_after: Fraction
    is_leaven: bool
    basis: str = ""
    """Of a stage's line: what its per cents are of, as `Portion` has it."""


class ExchangedFor(NamedTuple):
    """One ingredient for another of its class, at the same per cent (of a yeast at any)."""

    before: str
    after: str
    key_before: str
    key_after: str
    share_before: Fraction
    share_after: Fraction
    is_leaven: bool


class StageShare(NamedTuple):
    """The part of all flour that goes into a stage. `prefermented`: of the whole bread, before and after, where this is its cause."""

    stage: str
    before: Fraction
    after: Fraction
    is_leaven: bool
    prefermented: tuple[Fraction, Fraction] | None = None


class StageComesOrGoes(NamedTuple):
    """A stage that is on one side alone; its part of all flour, 0 where it takes none, None on the side where it is not."""

    stage: str
    before: Fraction | None
    after: Fraction | None
    is_leaven: bool


Total = Literal["water in all", "salt in all", "sugar", "fat", "prefermented flour"]


class TotalChange(NamedTuple):
    """What the bread comes to, where no line of it says so already."""

    total: Total
    before: Fraction
    after: Fraction


class OptionalChange(NamedTuple):
    """Whether the baker may leave it out."""

    name: str
    before: bool
    after: bool


class CountedChange(NamedTuple):
    """How many slices, or whole ones, a plate takes of a bread, a preparation or another dish. None on the side that takes none. A unit is
    "slices" or "whole"."""

    name: str
    before: Fraction | None
    after: Fraction | None
    unit_before: str
    unit_after: str


class KeptChange(NamedTuple):
    """What a stage keeps for next time. `how` as `Keep` has it: "amount" (then grams), "enough", "left", "discard"; "" for nothing."""

    stage: str
    name: str
    before: tuple[str, Fraction | None]
    after: tuple[str, Fraction | None]


class WeighedOtherwise(NamedTuple):
    """A stage that is weighed otherwise though no per cent of the file tells it: more of it is left over, say."""

    stage: str
    before: Fraction
    after: Fraction
    """All that is weighed into it."""


class MadeWith(NamedTuple):
    """A preparation that goes into it or touches it, and is made differently now."""

    name: str


class CostChange(NamedTuple):
    """What the ingredients of one cost."""

    noun: str
    before: Fraction
    after: Fraction
    currency: str


class LiquidWarmth(NamedTuple):
    """How warm something is weighed into a stage; None where the file does not say."""

    stage: str
    name: str
    before: Fraction | None
    after: Fraction | None


class HeldBack(NamedTuple):
    """How much of an ingredient is held back at the start, per gram of all flour; None where that is all of it."""

    stage: str
    name: str
    before: Fraction | None
    after: Fraction | None


class StepChange(NamedTuple):
    """One step of a stage, and what of it is otherwise: the names of `facets.FACETS`. None on the side that has no such step."""

    stage: str
    before: Step | None
    after: Step | None
    facets: tuple[str, ...]
    rank: Rank


class StepMoved(NamedTuple):
    """A step that is done at another time, and what else of it is otherwise. `follows` is what comes before it now, None where it comes
    first."""

    stage: str
    before: Step
    after: Step
    follows: Step | None
    facets: tuple[str, ...]
    rank: Rank


class HoursChange(NamedTuple):
    """From the first job to the bread that is ready."""

    before: Fraction
    after: Fraction


class StageCalled(NamedTuple):
    """A stage that is called otherwise, or is of another sort: `word` is its heading's; "" of a bread or preparation that goes into it."""

    before: str
    after: str
    word_before: str
    word_after: str


HeadValue: TypeAlias = str | Fraction | Range | tuple[Fraction, str] | tuple[Fraction, Range | None] | None


class HeadChange(NamedTuple):
    """A line of the head that is no weight of the dough: how it is sold and kept, what it is called. Money as amount and currency,
    keeping as seconds and degrees."""

    what: str
    before: HeadValue
    after: HeadValue
    noun: str
    rank: Rank


Change: TypeAlias = (
    AllergenChange
    | UnknownAllergens
    | MakesChange
    | FlourChange
    | LossChange
    | ShareChange
    | ExchangedFor
    | StageShare
    | StageComesOrGoes
    | TotalChange
    | OptionalChange
    | CountedChange
    | KeptChange
    | WeighedOtherwise
    | MadeWith
    | CostChange
    | LiquidWarmth
    | HeldBack
    | StepChange
    | StepMoved
    | HoursChange
    | StageCalled
    | HeadChange
)
