"""A bakery as its files say it: read at once, checked when its reports are asked for."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from functools import cached_property
from typing import TYPE_CHECKING

from manchet.batch.order import AS_WRITTEN, Order
from manchet.batch.work import Work, work_of
from manchet.diagnostics.diagnostic import Diagnostic, Place, Severity
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.suggest import fold
from manchet.formula.model import Formula
from manchet.kitchen.model import Kitchen
from manchet.larder.book import Larder, builtin
from manchet.source.merge_marks import UNMERGED
from manchet.source.text import SourceText
from manchet.syntax.parsed_headings import name_of
from manchet.workspace.bound_formula import BoundFormula, known_preparations
from manchet.workspace.changes import NO_CHANGES, Changes
from manchet.workspace.memory import Memory
from manchet.workspace.passes import CHECKING, READING, ReadSoFar, run_passes

if TYPE_CHECKING:
    from datetime import date

    from manchet.changes.waits import Refused
    from manchet.day.said import Plan
    from manchet.larder.stocktake import Stock


class Bakery:
    """Everything some files say. `formulas` holds the sound ones, preparations too; `unsound` names the others."""

    def __init__(self, reading: ReadSoFar) -> None:
        self._reading = reading
        self.larder: Larder = reading.larder
        self.kitchens: tuple[Kitchen, ...] = reading.kitchens.all
        self.stock: Stock | None = reading.stock
        """What was counted last; None where nothing was."""
        self.formulas: tuple[Formula, ...] = tuple(reading.formulas())
        self.plans: tuple[Plan, ...] = reading.plans
        """Sound, and with a date."""
        self.refused: tuple[Refused, ...] = reading.refused()
        self.preparations: Mapping[str, Formula] = known_preparations(self.formulas)
        """The sound ones, by key."""
        self._bound: dict[int, BoundFormula] = {
            id(one.formula): one for block in reading.bound for one in block.formulas
        }

    @property
    def unsound(self) -> tuple[tuple[str, Place], ...]:
        """Those that are not sound, and where each stands."""
        every = (one.written.block for block in self._reading.bound for one in block.formulas if not one.is_sound)
        return tuple((name_of(block), block.line.place()) for block in every)

    @cached_property
    def mistakes(self) -> tuple[Diagnostic, ...]:
        """What reading reports, without any check."""
        return self._in_order(self._reading)

    @cached_property
    def diagnostics(self) -> tuple[Diagnostic, ...]:
        """What reading reports, and what the checks say."""
        return self._in_order(run_passes(self._reading, CHECKING, Memory()))

    @cached_property
    def cautions(self) -> tuple[Diagnostic, ...]:
        """What can hurt, at the lines that cause it: beside the reports, and none of them."""
        told = tuple(one for block in self._reading.bound for one in block.cautions())
        return self._in_order(self._reading._replace(reports=told))

    def _in_order(self, reading: ReadSoFar) -> tuple[Diagnostic, ...]:
        only = reading.only
        wanted = (r for r in reading.reports if only is None or r.place.path in only or r.severity is Severity.ERROR)
        unmerged = {one.place.path for one in reading.reports if one.name == UNMERGED}
        if unmerged:
            wanted = (one for one in wanted if one.name == UNMERGED or one.place.path not in unmerged)
        return tuple(sorted(dict.fromkeys(wanted), key=_by_place))

    def plans_on(self, day: date) -> tuple[Plan, ...]:
        """The plans of a day: those that are dated so, and the patterns of its weekday that none of these is like."""
        from manchet.workspace.passes import plan_sources
        from manchet.workspace.plans import plans_of

        dated = tuple(plan for plan in self.plans if plan.date == day)
        taken = {fold(name) for plan in dated for name in (plan.name, plan.like)}
        patterns = (plan for plan in plans_of(plan_sources(self._reading), day).value if plan.date == day)
        return dated + tuple(
            plan for plan in patterns if day.weekday() in plan.every and fold(plan.name) not in taken and not plan.like
        )

    @property
    def kitchen(self) -> Kitchen:
        """The kitchen to plan with where none is named: the first."""
        return self._reading.kitchens.first

    def kitchen_for(self, path: str, named: str = "") -> Kitchen:
        """The kitchen a file's breads are made in: the one named, else the one that stands nearest to the file."""
        return self._reading.kitchens.nearest(path, named)

    def kitchen_called(self, name: str) -> Kitchen | None:
        return self._reading.kitchens.called(name)

    def work(self, formula: Formula, order: Order = AS_WRITTEN, kitchen: str = "") -> Outcome[Work | None]:
        """A formula at a size in its kitchen, the nearest or the one named; None, with the reason, where it cannot be sized.

        Of one of its own formulas the bakery gives the same Work each time.
        """
        place = self.kitchen_for(formula.place.path, kitchen)
        known = self._bound.get(id(formula))
        return (
            work_of(formula, order, place, self.larder, self.preparations)
            if known is None
            else known.work(order, place)
        )

    def makings(self, formula: Formula) -> Mapping[str, Formula]:
        """What a formula may be made of, by key: the bakery's preparations, and of a dish the breads and dishes it is built on."""
        known = self._bound.get(id(formula))
        return self.preparations if known is None else known.around.preparations

    def formula(self, name: str) -> Formula | None:
        wanted = fold(name)
        return next((f for f in self.formulas if fold(f.name) == wanted), None)


def read(
    sources: Iterable[SourceText],
    only: frozenset[str] | None = None,
    kitchen: str = "",
    changes: Changes | None = None,
    memory: Memory | None = None,
    unreadable: tuple[Diagnostic, ...] = (),
    names: frozenset[str] = frozenset(),
) -> Bakery:
    """A bakery of files that belong together; see `passes.ReadSoFar`.

    `names` are those of all formulas, in files that are not read too. With the `memory` of an earlier reading, only what changed since is read again. `unreadable` are the reports on files
    that are no texts.
    """
    reading = ReadSoFar(
        tuple(sources), builtin(), only, kitchen, changes or NO_CHANGES, names=names, reports=unreadable
    )
    return Bakery(run_passes(reading, READING, memory or Memory()))


def _by_place(one: Diagnostic) -> tuple[str, int, int, str, str]:
    return one.place.path, one.place.line, one.place.column, one.name, one.message
