"""A formula of a bakery in its kitchen: bound once, then sized and checked when that is asked for."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Set
from functools import cached_property, partial
from typing import TYPE_CHECKING, cast

from manchet.batch.order import AS_WRITTEN, Order
from manchet.batch.work import Work, work_of
from manchet.changes.variants import lines_of, rewrite_variant, swaps_of, variants_of, without_variants
from manchet.diagnostics.diagnostic import Diagnostic, Place, Related, Severity
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.suggest import fold
from manchet.formula.binding import Offered, bind
from manchet.formula.changed import OPTION
from manchet.formula.made_elsewhere import made_elsewhere
from manchet.formula.model import Formula
from manchet.kitchen.model import Kitchen
from manchet.larder.book import Larder
from manchet.records import NamedTuple
from manchet.syntax import nodes
from manchet.syntax.nodes import Entry
from manchet.syntax.parsed_headings import name_of
from manchet.workspace.changes import NO_CHANGES, Changes
from manchet.workspace.faults import kept_to
from manchet.workspace.house import Around

if TYPE_CHECKING:
    from manchet.changes.waits import Refused


class WrittenFormula(NamedTuple):
    """A formula as written, or a variant rewritten into one, and the variant's lines that swap."""

    block: Entry
    swaps: tuple[Entry, ...] = ()
    lines: range = range(0)
    """The variant's own lines."""


class Binding(NamedTuple):
    """A formula, or None with the reports that say why; and what was asked of it in vain."""

    value: Formula | None
    diagnostics: tuple[Diagnostic, ...]
    refused: tuple[Refused, ...] = ()


class BoundFormula:
    """A formula, or a variant as a formula of its own, and all that has been worked out of it so far.

    `formula` is None where it could not be put together; `reading` are the reports that say why, and other ones.
    """

    def __init__(self, written: Outcome[WrittenFormula], binding: Binding, around: Around, is_unread: bool) -> None:
        self.written = written.value
        self.formula = binding.value
        self.refused = binding.refused
        self.around = around
        self.is_judged = binding.value is not None and not written.diagnostics
        """It is what its file means it to be, so that the checks have something to say of it."""
        self.is_sound = self.is_judged and not is_unread
        found = binding.diagnostics
        if self.formula is not None and self.is_judged:
            quiet = {one.name for one in self.formula.allowed} | set(around.kitchen.always_allow)
            found = tuple(_not_allowed(found, quiet))
        self.reading = (*written.diagnostics, *found)
        self._works: list[tuple[Order, Kitchen, Outcome[Work | None]]] = []
        """A few: compared, for to hash all that a kitchen says takes longer than to size a dough."""

    def work(self, order: Order, kitchen: Kitchen) -> Outcome[Work | None]:
        """It at a size in a kitchen, the same Work each time; None, with the reason, where it cannot be sized."""
        formula = self.formula
        assert formula is not None
        for of, at, made in self._works:
            if of == order and at == kitchen:
                return made
        made = kept_to(
            formula.place,
            f"{formula.name} could not be sized",
            lambda: work_of(formula, order, kitchen, self.around.offered.larder, self.around.preparations),
            _no_work,
        )
        self._works.append((order, kitchen, made))
        return made

    @cached_property
    def as_written(self) -> Outcome[Work | None]:
        """It at the size its file asks for, in the kitchen of its file."""
        return self.work(AS_WRITTEN, self.around.kitchen)

    @cached_property
    def checking(self) -> tuple[Diagnostic, ...]:
        """What the checks say of it at the size its file asks for; or why it cannot be sized."""
        if self.formula is None or not self.is_judged:
            return ()
        work = self.as_written
        if work.value is None:
            return work.diagnostics
        from manchet.checks.registry import check

        broke_off = f"{self.formula.name} could not be checked"
        found = kept_to(self.formula.place, broke_off, partial(check, work.value), lambda fault: (fault,))
        return (*found, *self._priced(work.value))

    def _priced(self, work: Work) -> tuple[Diagnostic, ...]:
        """Why what has a price of its own gets no cost sheet, where its costs do not add."""
        formula = work.formula
        if formula.sale is None or formula.sale.sells_at is None:
            return ()
        from manchet.costing.cost import cost_of

        broke_off = f"the cost of {formula.name} could not be worked out"
        return kept_to(formula.place, broke_off, lambda: cost_of(work).diagnostics, lambda fault: (fault,))

    @cached_property
    def cautions(self) -> tuple[Diagnostic, ...]:
        """What can hurt in it at the size its file asks for, but for what a check has told of in other words."""
        if self.formula is None or not self.is_judged:
            return ()
        work = self.as_written
        if work.value is None:
            return ()
        from manchet.cautions.gate import may_hurt

        if not may_hurt(work.value):
            return ()
        from manchet.cautions.telling import cautions_told

        told = {name for one in self.checking for name in TOLD_BY_CHECKS.get(one.name, ())}
        broke_off = f"the cautions of {self.formula.name} could not be told"
        made = kept_to(
            self.formula.place, broke_off, lambda: tuple(cautions_told(cast(Work, work.value))), lambda fault: (fault,)
        )
        return tuple(one for one in made if one.name not in told)


TOLD_BY_CHECKS: Mapping[str, tuple[str, ...]] = {
    "kept-too-long": ("raw-egg-kept",),
    "kept-too-warm": ("raw-egg-kept", "neither-cold-nor-hot"),
    "lye-bath-strong": ("lye-too-strong",),
    "raw-egg-on-baked": ("raw-egg-after-heat",),
    "under-oil-too-long": ("plants-under-fat",),
}
"""What a check says that a caution would say again. Where such a report is allowed the caution is told: nobody can allow it."""


def known_preparations(formulas: Iterable[Formula]) -> dict[str, Formula]:
    """By key; of two that claim one name the last."""
    return {fold(formula.name): formula for formula in formulas if formula.preparation and not formula.dish}


def _no_work(fault: Diagnostic) -> Outcome[Work | None]:
    return Outcome(None, (fault,))


class BoundBlock(NamedTuple):
    """What became of a block: the formula itself, then its variants. `drawn` are the shared stages that it follows from."""

    formulas: tuple[BoundFormula, ...]
    drawn: Mapping[str, Entry]
    made_by: object = None
    """Where something that is made ahead goes into it or touches it: what all preparations follow from."""

    def reading(self) -> Iterator[Diagnostic]:
        first, *variants = self.formulas
        yield from first.reading
        yield from _with_variants([(one.written, one.reading) for one in variants], first.reading)

    def cautions(self) -> Iterator[Diagnostic]:
        first, *variants = self.formulas
        yield from first.cautions
        yield from _with_variants([(one.written, one.cautions) for one in variants], first.cautions)

    def checking(self) -> Iterator[Diagnostic]:
        first, *variants = self.formulas
        yield from first.checking
        found = [(one.written, one.checking) for one in variants]
        yield from _with_variants(found, first.checking) if first.is_judged else _of_variants_alone(found)


def bind_block(block: Entry, around: Around, changes: Changes, is_unread: bool) -> BoundBlock:
    """A block of a formula or a preparation, bound with its variants."""

    def unbound(fault: Diagnostic) -> BoundBlock:
        written = Outcome(WrittenFormula(block))
        nothing = BoundFormula(written, Binding(None, (fault,)), around, is_unread)
        return BoundBlock((nothing,), dict(around.offered.shared), around.made_by)

    broke_off = f"{name_of(block) or 'this formula'} could not be read to the end"
    return kept_to(block.line.place(), broke_off, lambda: _bind_block(block, around, changes, is_unread), unbound)


def _bind_block(block: Entry, around: Around, changes: Changes, is_unread: bool) -> BoundBlock:
    formulas = tuple(
        BoundFormula(written, _bind(written.value, around, changes), around, is_unread)
        for written in _written_formulas(block, around.offered.larder)
    )
    takes_made = any(one.formula is None or made_elsewhere(one.formula) for one in formulas)
    drawn = around.offered.shared if takes_made else _drawn_by(formulas, around.offered, changes)
    return BoundBlock(formulas, dict(drawn), around.made_by if takes_made else None)


def _drawn_by(formulas: Iterable[BoundFormula], offered: Offered, changes: Changes) -> Mapping[str, Entry]:
    """The shared stages that formulas were made of. All of them, where one could not be put together or was changed: then
    it cannot be told."""
    keys: set[str] = set()
    for one in formulas:
        if one.formula is None or one.written.swaps or changes != NO_CHANGES:
            return dict(offered.shared)
        keys |= {stage.key for stage in one.formula.stages}
    return {key: entry for key, entry in offered.shared.items() if key in keys}


def _written_formulas(block: Entry, larder: Larder) -> Iterable[Outcome[WrittenFormula]]:
    """A formula, then each of its variants as a formula of its own."""
    found = variants_of(block)
    alone = without_variants(block) if found else block
    yield Outcome(WrittenFormula(alone))
    for variant in found:
        made = rewrite_variant(alone, variant, larder.key)
        yield Outcome(WrittenFormula(made.value, swaps_of(variant), lines_of(variant)), made.diagnostics)


def _bind(written: WrittenFormula, around: Around, changes: Changes) -> Binding:
    """A formula bound, after the swaps of its variant and what was asked for."""
    on_top = changes if _is_formula(written.block) else NO_CHANGES
    if not (written.swaps or on_top.swaps or on_top.waits):
        return Binding(*bind(written.block, around.offered))
    from manchet.changes.swaps import binding as swaps

    named = fold(name_of(written.block)) in on_top.names
    asked = [one for text in on_top.swaps if (one := swaps.swap_asked_for(text, not named)) is not None]
    own = [swaps.swap_in_line(entry) for entry in written.swaps]
    swapped = swaps.with_swaps(written.block, [*own, *asked], around.offered, around.kitchen.yeast_factors)
    if swapped.value is None:
        return Binding(None, swapped.diagnostics)
    block, offered, done = swapped.value
    if on_top.waits and (named or not on_top.names):
        from manchet.changes.waits import bind_with_waits

        made, refused = bind_with_waits(block, offered, on_top.waits)
    else:
        made, refused = bind(block, offered), ()
    value = None if made.value is None else made.value._replace(swapped=done)
    return Binding(value, (*swapped.diagnostics, *made.diagnostics), refused)


def _is_formula(block: Entry) -> bool:
    return isinstance(block.node, nodes.BlockHead) and block.node.word == "formula"


def _not_allowed(reports: Iterable[Diagnostic], quiet: Set[str]) -> Iterator[Diagnostic]:
    """The remarks of binding that neither the formula nor the whole house allows."""
    return (r for r in reports if r.severity is Severity.ERROR or r.name not in quiet)


def _with_variants(
    variants: Iterable[tuple[WrittenFormula, Iterable[Diagnostic]]], of_formula: Iterable[Diagnostic]
) -> Iterator[Diagnostic]:
    """What reports on the variants say that was not said of their formula or of a variant before.

    Of the lines that a variant takes over, each mistake is said once. What is wrong with them in the variant alone is
    said at its heading, with the line. An `allow` that only the formula needs is no mistake in the variant.
    """
    known = {(one.name, one.place) for one in of_formula}
    for written, reports in variants:
        news = list(_news(reports, known, written))
        known |= {(one.name, one.place) for one in news}
        yield from news


def _of_variants_alone(variants: Iterable[tuple[WrittenFormula, Iterable[Diagnostic]]]) -> Iterator[Diagnostic]:
    """What is said of the variants of a formula that cannot be judged itself: each once, at the line it is about."""
    known: set[tuple[str, Place]] = set()
    for _, reports in variants:
        news = [one for one in reports if (one.name, one.place) not in known and one.name != "allow-unused"]
        known |= {(one.name, one.place) for one in news}
        yield from news


def _news(
    reports: Iterable[Diagnostic], known: set[tuple[str, Place]], variant: WrittenFormula
) -> Iterator[Diagnostic]:
    for one in reports:
        place = one.place
        if (one.name, place) in known:
            continue
        if place.line not in variant.lines and place.path != OPTION:
            if one.name == "allow-unused":
                continue
            taken_over = Related(place, "this line, in the variant")
            one = one._replace(place=variant.block.line.place(), related=(*one.related, taken_over))
        yield one
