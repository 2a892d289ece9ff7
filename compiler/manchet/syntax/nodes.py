"""What one line of a file says, before any name in it is looked up.

A node holds offsets into its line's body, never into the file, so that equal lines share one parse.
`Entry` ties a node to its line and to the lines that stand one step deeper.
"""

from __future__ import annotations

from fractions import Fraction
from typing import TYPE_CHECKING

from manchet.records import NamedTuple
from manchet.source.text import Line
from manchet.syntax.clauses import (
    Amount as Amount,
    AppliedClause as AppliedClause,
    As as As,
    At as At,
    AtATime as AtATime,
    ByFire as ByFire,
    Clause as Clause,
    Humidity as Humidity,
    IntoSlices as IntoSlices,
    Lid as Lid,
    Loses as Loses,
    Manner as Manner,
    MayWait as MayWait,
    Prose as Prose,
    Ramp as Ramp,
    ServeWithin as ServeWithin,
    Steam as Steam,
    TakesUp as TakesUp,
    Time as Time,
    To as To,
    TurnAfter as TurnAfter,
    Turns as Turns,
    Vent as Vent,
    Where as Where,
    Within as Within,
    Word as Word,
)
from manchet.syntax.stock_nodes import StockHead as StockHead, StockLine as StockLine

# ---- headings -------------------------------------------------------------------------------------


class BlockHead(NamedTuple):
    """`formula NAME`, `preparation NAME`, `assembly NAME`, `larder NAME`, `kitchen NAME` (column 0)."""

    word: str
    name: Word


class ReservedHead(NamedTuple):
    """`bake log`: words kept for later; what stands under them is unread."""

    word: Word


class StageHead(NamedTuple):
    """`levain sour with 22% of all flour`, `soaker seeds`, `stage butter block`, `dough`, `poolish`.

    `word` is the kind of stage as written in the vocabulary; `name` is None where none is given.
    `share` is per cent of all flour.
    """

    word: Word
    name: Word | None
    share: Amount | None


class OverallHead(NamedTuple):
    """`overall`"""


class BranchHead(NamedTuple):
    """`for the rolls`: its steps stand one deeper."""

    noun: Word


# ---- variants -------------------------------------------------------------------------------------


class VariantHead(NamedTuple):
    """`variant by hand`: what is different stands one deeper."""

    name: Word


class Swap(NamedTuple):
    """`swap fresh yeast for instant yeast`, `swap fresh yeast for ripe wheat starter with 20% of all flour`.

    `share` is per cent of all flour: the flour in a culture, or the weight of a yeast that takes a culture's place.
    """

    off: Word
    on: Word
    share: Amount | None = None


class Without(NamedTuple):
    """`without malt`"""

    name: Word


# ---- head lines -----------------------------------------------------------------------------------


class About(NamedTuple):
    text: Word


class KindNode(NamedTuple):
    name: Word


class MakesNode(NamedTuple):
    """`makes 14 loaves at 900 g dough`, `makes 12 loaves in long tin`, `makes 20 kg dough`, `makes 24 plates`. `state` is "dough", "baked", "raw", "ready", "at least" (a weight alone), "dish" or "" (in a tin). `number` and `noun` are None for a bare weight."""

    number: Amount | None
    noun: Word | None
    weight: Amount | None
    state: str
    tin: Word | None


class FromFlour(NamedTuple):
    """`from 10 kg flour`"""

    amount: Amount


class Sold(NamedTuple):
    """`sold 8-48 h old`"""

    time: Amount


class Loss(NamedTuple):
    """`dough loss 2%` or `bake loss 13%`; `which` is "dough" or "bake"."""

    which: str
    amount: Amount


class OnDoughFlour(NamedTuple):
    """`written on dough flour`"""


class Status(NamedTuple):
    """`status trial`, `status approved 2026-11-14 by NAME`"""

    word: Word
    date: Word | None
    by: Word | None


class Allow(NamedTuple):
    """`allow NAME because "…"`, in a kitchen `always allow NAME because "…"`."""

    name: Word
    because: Word
    always: bool


# ---- materials ------------------------------------------------------------------------------------


class MaterialNode(NamedTuple):
    """`NAME AMOUNT` with what may follow it.

    `basis` is "", "all flour", "what is soaked" or "the dough". `booking` is "" , "apart" or "as" (then
    `counted_as` names a flour). `flour` is True for `counted as flour`, False for `not counted as flour`.
    Of `28-30 qt, as the flour asks` the `amount` is the low end; `more` is by what part of itself it may grow.
    """

    name: Word
    amount: Amount
    basis: str = ""
    at: Amount | None = None
    booking: str = ""
    counted_as: Word | None = None
    flour: bool | None = None
    to_taste: bool = False
    optional: bool = False
    asked: bool = False
    more: Fraction = Fraction(0)
    per: str | None = None
    """In a dish: "each", "all", or "" where the file forgot it; None of all other lines."""


class CountedAs(NamedTuple):
    """`counted as whole rye flour`: a part of a material line."""

    name: Word


class Tail(NamedTuple):
    """What may follow a material's amount, on a line of its own one step deeper; the parser joins it to its material.

    `parts` are an amount (`at 98 C`), a word (a basis, a booking) or `CountedAs`.
    """

    parts: tuple[Amount | Word | CountedAs, ...]


class TakeAll(NamedTuple):
    """`all of the X`"""

    name: Word
    at: Amount | None = None


class TakeLeft(NamedTuple):
    """`what is left of the X`"""

    name: Word
    at: Amount | None = None


class EverythingElse(NamedTuple):
    """`everything else`"""

    at: Amount | None = None


class BareName(NamedTuple):
    """A line that is only a name: a stage, all of it."""

    name: Word


class Part(NamedTuple):
    """One item of a `hold back` or `add` list; with an amount, that much of it."""

    name: Word
    amount: Amount | None = None
    basis: str = ""


class HoldBack(NamedTuple):
    items: tuple[Part, ...]


class Add(NamedTuple):
    """`add X and Y in 2 additions`, `add butter at 16 C`, `add water as needed`, `add water up to 4%`."""

    items: tuple[Part, ...]
    additions: int | None = None
    as_needed: bool = False
    up_to: Amount | None = None
    at: Amount | None = None


class Return(NamedTuple):
    name: Word


class KeepNode(NamedTuple):
    """`keep 60 g as X`, `keep what is left as X`, `keep enough as X`; `how` is "amount", "left" or "enough"."""

    how: str
    amount: Amount | None
    name: Word


class DiscardLeft(NamedTuple):
    """`discard what is left`"""


class TopUp(NamedTuple):
    """`top up with water`"""

    name: Word


class PourOff(NamedTuple):
    """`pour off 200 g`, `pour off whey 200 g`; without a name it is water."""

    name: Word | None
    amount: Amount


class LockIn(NamedTuple):
    """`lock in butter block`"""

    name: Word


class MadeForEachMix(NamedTuple):
    pass


class StartFromNothing(NamedTuple):
    pass


class GoodFor(NamedTuple):
    """`good for 3 d at 4 C`"""

    time: Amount
    at: Amount | None


class NeverUnder(NamedTuple):
    """`never under 1 kg`: less of a bath does not fill its vessel."""

    mass: Amount


# ---- steps and their clauses ----------------------------------------------------------------------


class StepNode(NamedTuple):
    """A verb and its clauses. `verb` is a canonical verb of the vocabulary (`fill with` is `fill`)."""

    verb: Word
    clauses: tuple[Clause, ...]


class ClauseLine(NamedTuple):
    """Clauses on a line of their own, one step deeper than the line they belong to."""

    clauses: tuple[Clause, ...]


# ---- larder ---------------------------------------------------------------------------------------


class EntryName(NamedTuple):
    """The name of a larder entry, or of a thing in a kitchen that begins with none of the kitchen's words."""

    name: Word


class Setting(NamedTuple):
    """A line of a larder or kitchen entry: a key of the vocabulary, and what follows it.

    `key` is canonical (`class`, `also called`, `per 100 g`, `made of`, `gives its water`, `counts as flour`,
    `not counted as flour`, `allergens`, `no allergens`, `may contain`, `density`, `whole`, `kept at`, `good for`,
    `price`, `source`, `could be`; `air`, `flour`, `tap`, `hands`, `measures`, `yeast`, `words`, `mixer`, `oven`,
    `prover`, `fridge`, `freezer`, `bench`, `tin`, `tray`, `basket`, `couche`, `scale`, `griddle`, `pot`, `takes`,
    `slow`, `fast`, `warms`, `friction`, `heat`, `hottest`, `holds`, `recovers`, `heats in`, `steam`, `keeps`, `volume`,
    `count`, `reads`, `up to`, `inside`, `floor`, `falls`, `each load cools it`, …). `names` are the words or list items after it, `amounts`
    the figures, in order.
    """

    key: str
    names: tuple[Word, ...] = ()
    amounts: tuple[Amount, ...] = ()
    because: Word | None = None
    """The reason that a `could be`, an `ask`, a `may contain` or a `kept apart from` gives."""


BreadNode = (
    StockHead | StockLine | BlockHead | ReservedHead | StageHead | OverallHead | BranchHead
    | About | KindNode | MakesNode | FromFlour | Sold | Loss | OnDoughFlour | Status | Allow
    | MaterialNode | TakeAll | TakeLeft | EverythingElse | BareName | HoldBack | Add | Return | KeepNode | DiscardLeft
    | TopUp | PourOff | LockIn | MadeForEachMix | StartFromNothing | GoodFor | NeverUnder | Tail
    | StepNode | ClauseLine | EntryName | Setting | VariantHead | Swap | Without
)  # fmt: skip

if TYPE_CHECKING:
    from manchet.syntax.plan_nodes import PlanNode

    Node = BreadNode | PlanNode
else:  # those of plans are loaded where there is one
    Node = BreadNode


class Unread(NamedTuple):
    """A line that could not be read. `guess` says what it may have been, so that later checks hold back:
    "material", "step", "heading" or "line"; `name` is the best guess at its name, or None."""

    guess: str
    name: Word | None = None
    opens: str = ""
    """The context of the lines under it, where that is known (the parser's business)."""


class Entry(NamedTuple):
    """A line that says something, and the lines under it."""

    line: Line
    node: Node | Unread
    children: tuple[Entry, ...] = ()


class File(NamedTuple):
    """A whole file: every line of it (layout and comments kept), and the tree of those that say something.

    `contexts` are what each line was read as (a context of `openings`); "" for one that was not read.
    """

    path: str
    lines: tuple[Line, ...]
    entries: tuple[Entry, ...]
    contexts: tuple[str, ...] = ()
