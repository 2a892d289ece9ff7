"""A stage as the file writes it, its names bound but nothing yet computed."""

from __future__ import annotations

from fractions import Fraction
from itertools import takewhile
from typing import TYPE_CHECKING

from manchet.diagnostics.diagnostic import Place
from manchet.diagnostics.suggest import fold, nearest
from manchet.formula.model import Keep, KeptFor, Step
from manchet.formula.naming import Meaning
from manchet.formula.parts import CountedAmount
from manchet.formula.picture import Picture
from manchet.records import NamedTuple
from manchet.syntax import nodes

if TYPE_CHECKING:
    from manchet.formula.sale import Sale
    from manchet.larder.ingredient import ListedAs


class Item(NamedTuple):
    """One thing that goes into a stage. `how` says how much of it:

    "percent" (`figure` of `basis`), "grams" (`figure`), "all" (all of it: of a stage, or of overall's line),
    "left" (what is left of overall's line), "else" (every line of overall not used elsewhere).
    """

    how: str
    meaning: Meaning
    figure: Fraction
    basis: str
    celsius: Fraction | None
    booking: str
    counted_as: str
    flour: bool | None
    to_taste: bool
    held: bool
    """Comes in by a later step (`add seeds`, `lock in butter block`), not with the first weighing."""
    place: Place
    more: Fraction = Fraction(0)
    """By what part of itself it may grow, as the flour asks; `figure` is the least of it."""
    optional: bool = False
    counted: CountedAmount | None = None


class Hold(NamedTuple):
    """`hold back water 4%`: a thing, and how much of it (`figure` None: all)."""

    meaning: Meaning
    figure: Fraction | None
    unit: str
    basis: str
    place: Place


class Draft(NamedTuple):
    key: str
    name: str
    word: str
    share: Fraction | None
    """Share of all flour that the heading gives (a fraction of 1)."""
    items: tuple[Item, ...]
    holds: tuple[Hold, ...]
    steps: tuple[Step, ...]
    keeps: tuple[Keep, ...]
    branches: tuple[DraftBranch, ...]
    for_each_mix: bool
    from_nothing: bool
    shared: bool
    notes: tuple[str, ...]
    kept: tuple[KeptFor, ...]
    never_under: Fraction | None
    place: Place
    whole: bool
    """Every line of it could be read: its sums mean something."""
    pictures: tuple[Picture, ...] = ()
    slips: tuple[str, ...] = ()
    """The lines, folded, that could not be read or whose names mean nothing."""
    listed_as: tuple[ListedAs, ...] = ()
    heading_read: bool = True
    """Its heading could be read: its share and its name are what the file says."""

    def may_mean(self, verb: str, name: str) -> bool:
        """Whether a line that was not understood may have been `verb name`: it begins so, or names it."""
        return any(slip.startswith(verb) or fold(name) in slip for slip in self.slips)

    def may_take_the_rest(self) -> bool:
        """Whether a line that was not understood may have been `everything else`."""
        return any("else" in slip or slip.startswith(("every", "the ", "all ", "what ")) for slip in self.slips)

    def may_use(self, stage: str) -> bool:
        """Whether a line that was not understood may take a stage: it adds what is nothing else here, names it, or nearly does."""
        others = tuple(f" {fold(item.meaning.name)}" for item in self.items if fold(item.meaning.name) != fold(stage))
        slips = [slip for slip in self.slips if fold(stage) in slip or not slip.endswith(others)]
        names = (" ".join(takewhile(lambda word: not word[0].isdigit(), slip.split())) for slip in slips)
        adds = any(slip.startswith("add") or fold(stage) in slip for slip in slips)
        return adds or any(nearest(name, (fold(stage),)) for name in names)


class DraftBranch(NamedTuple):
    noun: str
    steps: tuple[Step, ...]
    added: tuple[Item, ...]
    place: Place
    sale: Sale | None = None


def stage_key(head: nodes.StageHead) -> str:
    """The key a stage is found by: its name, else its kind."""
    return fold(head.name.text if head.name else head.word.text)
