"""`Work`: one batch in one kitchen, which is what everything printed and every check is about.

Reading ends in a `Formula`, of no size and in no kitchen. From there on an order, a kitchen and a larder belong to each
answer, and a `Work` holds them together, so that two forms of one dough cannot be worked out from different ones.
"""

from __future__ import annotations

from collections.abc import Callable, Hashable, Mapping
from functools import cached_property, wraps
from types import MappingProxyType
from typing import Concatenate, Final, ParamSpec, TypeVar

from manchet.batch.air import in_its_air
from manchet.batch.mixes import Mixes, mixes_of
from manchet.batch.model import Batch, StageBatch
from manchet.batch.order import Order
from manchet.batch.sizing import size_batch
from manchet.batch.totals import Totals, totals_of
from manchet.diagnostics.outcome import Outcome
from manchet.formula.model import Formula, Stage
from manchet.kitchen.model import Kitchen
from manchet.larder.book import Larder
from manchet.syntax.vocabulary import Kind

P = ParamSpec("P")
T = TypeVar("T")

NONE_KNOWN: Mapping[str, Formula] = MappingProxyType({})


class Work:
    """One batch in one kitchen. Never changed after it is made; see `work_of`.

    What only `batch` knows is a property here. What a higher room works out of it is a function of that room marked
    `once`, and `answers` keeps what it said: so this class knows none of them.
    """

    def __init__(
        self,
        order: Order,
        batch: Batch,
        kitchen: Kitchen,
        larder: Larder,
        fewest_mixes: int = 1,
        preparations: Mapping[str, Formula] = NONE_KNOWN,
    ) -> None:
        self.order: Final = order
        self.batch: Final = batch
        self.kitchen: Final = kitchen
        self.larder: Final = larder
        self.fewest_mixes: Final = fewest_mixes
        """It is mixed in so many at least, whatever the mixer takes."""
        self.preparations: Final = preparations
        """The bakery's sound ones, by key: what goes into it or touches it may be one, and is of no size here."""
        self.answers: Final[dict[tuple[Hashable, ...], object]] = {}

    @property
    def formula(self) -> Formula:
        return self.batch.formula

    @property
    def kind(self) -> str:
        """The kind of bread it is; "" where the file does not say, and of a preparation."""
        return self.bread.word

    @property
    def bread(self) -> Kind:
        """What its kind says of it; nothing, of a preparation."""
        return self.batch.formula.bread

    @property
    def dough(self) -> StageBatch:
        """The stage that is divided; of a preparation, all of it."""
        return self.batch.dough_stage

    @cached_property
    def totals(self) -> Totals:
        return totals_of(self.formula, self.larder)

    @cached_property
    def mixes(self) -> Mixes:
        return mixes_of(self.batch, self.kitchen, self.totals.wet, self.fewest_mixes)


def work_of(
    formula: Formula, order: Order, kitchen: Kitchen, larder: Larder, preparations: Mapping[str, Formula] = NONE_KNOWN
) -> Outcome[Work | None]:
    """The work that an order asks for; None, with the reason, where it cannot be sized."""
    batch = size_batch(in_its_air(formula, kitchen), order, kitchen)
    made = None if batch.value is None else Work(order, batch.value, kitchen, larder, preparations=preparations)
    return Outcome(made, batch.diagnostics)


def in_mixes(work: Work, number: int) -> Work:
    """The same work, mixed in so many mixes at least."""
    return Work(work.order, work.batch, work.kitchen, work.larder, number, work.preparations)


def once(function: Callable[Concatenate[Work, P], T]) -> Callable[Concatenate[Work, P], T]:
    """A function of a `Work` that is worked out once for the same arguments, and then remembered by the `Work`.

    Arguments have to be hashable. A stage goes by its key: its hash would walk through all that is in it.
    """

    @wraps(function)
    def remembered(work: Work, /, *args: P.args, **kwargs: P.kwargs) -> T:
        key = (function, *map(_key, args), *kwargs.items())
        answer = work.answers.get(key, _NOT_YET)
        if answer is _NOT_YET:
            answer = work.answers[key] = function(work, *args, **kwargs)
        return answer  # type: ignore[return-value]

    return remembered


_NOT_YET = object()


def _key(argument: object) -> Hashable:
    if isinstance(argument, Stage):
        return argument.key
    if isinstance(argument, StageBatch):
        return argument.stage.key
    return argument
