"""Where a line may stand: what the lines under a line are, and what that decides of how they are read."""

from __future__ import annotations

from manchet.records import NamedTuple


class Context(NamedTuple):
    """What the lines under a line are. `skipped` is none of these: what stands there is not read."""

    name: str
    weighs: bool = False
    """A line that ends in a weight weighs an ingredient."""
    works: bool = False
    """Any other line may begin with a verb."""
    names: bool = False
    """A line may be a name alone; what it lacks is said where names are looked up."""
    per_piece: bool = False
    """An amount is for one piece or for all, and says which."""
    tells_a_day: bool = False
    """Clock times, days of the week and dates mean something in it."""
    one_line: bool = False
    """They belong to one line (its clauses), not to a heading."""


CONTEXTS = (
    Context("top"),
    Context("formula"),
    Context("variant"),
    Context("preparation", weighs=True, works=True, names=True),
    Context("assembly", weighs=True, works=True, names=True, per_piece=True),
    Context("stage", weighs=True, works=True, names=True),
    Context("part", weighs=True, works=True, names=True, per_piece=True),
    Context("overall", weighs=True),
    Context("composition", weighs=True, names=True),
    Context("material", one_line=True),
    Context("step", one_line=True),
    Context("larder"),
    Context("entry"),
    Context("stock", weighs=True),
    Context("kitchen"),
    Context("thing"),
    Context("plan", tells_a_day=True),
    Context("order", tells_a_day=True),
    Context("want", tells_a_day=True),
)

PER_PIECE = frozenset(context.name for context in CONTEXTS if context.per_piece)
WEIGHS = frozenset(context.name for context in CONTEXTS if context.weighs)
WORKS = frozenset(context.name for context in CONTEXTS if context.works)
NAMES = frozenset(context.name for context in CONTEXTS if context.names)
ONE_LINE = frozenset(context.name for context in CONTEXTS if context.one_line) | {"skipped"}

OF_A_DAY = frozenset(context.name for context in CONTEXTS if context.tells_a_day)

UNLESS_COUNTED = "fixed times"
"""In a plan, where a line counts nothing: `roll` may begin the name of a bread."""

UNLESS_WEIGHED = "verbs"
"""Where a line `works` and does not end in a weight: `return` may begin the name of an ingredient."""

HEAD = ("formula", "variant")
WORK = ("stage", "preparation", "assembly", "part")
MADE = (*HEAD, *WORK)
SOLD = (*HEAD, *WORK)
"""Where it is said how a thing is sold: at the head, and of a part of the dough under `for the …`."""
ANYWHERE = (
    *MADE,
    "overall",
    "composition",
    "material",
    "step",
    "entry",
    "stock",
    "kitchen",
    "thing",
    "plan",
    "order",
    "want",
)
