"""The one module that knows the order: from the text of some files to a bakery that is read, bound and checked."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from typing import TYPE_CHECKING

from manchet.batch.order import AS_WRITTEN, Order
from manchet.batch.work import Work, work_of
from manchet.changes.variants import full_name, lines_of, rewrite_variant, swaps_of, variants_of, without_variants
from manchet.diagnostics.diagnostic import Diagnostic, Place, Related, Severity
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import report
from manchet.diagnostics.suggest import fold
from manchet.formula.binding import Offered, bind
from manchet.formula.changed import OPTION
from manchet.formula.draft import draft_of, stage_key
from manchet.formula.model import Allowed, Formula
from manchet.formula.naming import Names
from manchet.kitchen.model import PLAIN, Kitchen
from manchet.larder.book import Larder, builtin
from manchet.larder.ingredient import Ingredient, Question
from manchet.records import NamedTuple
from manchet.source.text import SourceText
from manchet.syntax import nodes
from manchet.syntax.headings import block_meant, name_of
from manchet.syntax.nodes import Entry, File, Word
from manchet.syntax.parser import parse

if TYPE_CHECKING:
    from manchet.changes.waits import Refused


class Bakery(NamedTuple):
    """Everything some files say. `formulas` holds the sound ones, preparations too; `unsound` names the others."""

    files: tuple[File, ...]
    larder: Larder
    kitchens: tuple[Kitchen, ...]
    formulas: tuple[Formula, ...]
    unsound: tuple[tuple[str, Place], ...]
    diagnostics: tuple[Diagnostic, ...]
    refused: tuple[Refused, ...] = ()
    """Waits asked for that no formula could be given, and why: no mistake of a file."""

    @property
    def kitchen(self) -> Kitchen:
        """The kitchen to plan with where none is named: the first."""
        return self.kitchens[0] if self.kitchens else PLAIN

    def kitchen_for(self, path: str, named: str = "") -> Kitchen:
        """The kitchen a file's breads are made in: the one named, else the one that stands nearest to the file.

        Nearest is the kitchen in the same folder, then in the folder above, and so on; else the first of the bakery.
        """
        if named:
            return self.kitchen_called(named) or self.kitchen
        above = [k for k in self.kitchens if k.place is not None and path.startswith(_folder(k.place.path))]
        return max(above, key=lambda k: len(_folder(k.place.path)) if k.place else 0, default=self.kitchen)

    def work(self, formula: Formula, order: Order = AS_WRITTEN, kitchen: str = "") -> Outcome[Work | None]:
        """A formula at a size in its kitchen, the nearest or the one named; None, with the reason, where it cannot be sized."""
        return work_of(formula, order, self.kitchen_for(formula.place.path, kitchen), self.larder)

    def formula(self, name: str) -> Formula | None:
        wanted = fold(name)
        return next((f for f in self.formulas if fold(f.name) == wanted), None)

    def kitchen_called(self, name: str) -> Kitchen | None:
        wanted = fold(name)
        return next((k for k in self.kitchens if fold(k.name) == wanted), None)


class _Blocks(NamedTuple):
    """The blocks of column 0, sorted by what they are."""

    formulas: tuple[Entry, ...]
    preparations: tuple[Entry, ...]
    larders: tuple[Entry, ...]
    kitchens: tuple[Entry, ...]
    stages: tuple[Entry, ...]


class Changes(NamedTuple):
    """What is asked for on top of what the files say: `fresh yeast for instant yeast`, `poolish 16 h at 18 C`.

    A formula among `names` (folded) has to have what is swapped out or moved; any other is left as it is where it has not.
    """

    swaps: tuple[str, ...] = ()
    names: frozenset[str] = frozenset()
    waits: tuple[str, ...] = ()


def read(
    sources: Iterable[SourceText], only: frozenset[str] | None = None, kitchen: str = "", changes: Changes | None = None
) -> Bakery:
    """Read, bind and check files that belong together.

    `only` names the paths whose formulas are bound and whose reports are wanted; the others serve with their larders,
    kitchens, shared stages and preparations. `kitchen` is the kitchen the checks judge by, the nearest if "". `changes`
    are carried out in every formula bound.
    """
    files: list[File] = []
    reports: list[Diagnostic] = []
    for source in sources:
        parsed = parse(source)
        files.append(parsed.value)
        reports += parsed.diagnostics
    blocks = _blocks(files)
    unread = {entry.line for file in files for entry in file.entries if isinstance(entry.node, nodes.Unread)}
    reports += _same_names((*blocks.formulas, *_named_variants(blocks.formulas), *blocks.preparations))
    reports += _same_names(blocks.stages)
    reports += _same_names(blocks.kitchens)
    larder, found = _larder(blocks.larders)
    reports += found
    kitchens, found = _kitchens(blocks.kitchens)
    reports += found
    bakery = Bakery(tuple(files), larder, kitchens, (), (), ())
    offered = _offered(blocks, larder, bakery.kitchen_for("", kitchen).measures)
    reports += _judge_shared(blocks.stages, offered)
    formulas: list[Formula] = []
    unsound: list[tuple[str, Place]] = []
    refused: list[Refused] = []
    for block in blocks.formulas + blocks.preparations:
        if only is not None and block.line.path not in only and block not in blocks.preparations:
            continue
        house = bakery.kitchen_for(block.line.path, kitchen)
        said: list[Diagnostic] = []
        for made in _written_formulas(block, larder):
            bound = _bound(made.value, offered._replace(measures=house.measures), house, changes)
            refused += bound.refused
            about = [*made.diagnostics]
            if bound.value is None or made.diagnostics:
                about += bound.diagnostics
            else:
                about += _not_allowed(bound.diagnostics, bound.value.allowed, house.always_allow)
                about += check_work(bakery.work(bound.value, kitchen=kitchen))
            if bound.value is None or made.diagnostics or block.line in unread:
                unsound.append((name_of(made.value.block), made.value.block.line.place()))
            else:
                formulas.append(bound.value)
            said += about if made.value.block.line is block.line else news(about, said, made.value)
        reports += said
    if changes is not None and changes.swaps and not changes.names:
        reports += _swapped_nowhere(changes, formulas, reports)
    wanted = [r for r in reports if only is None or r.place.path in only or r.severity is Severity.ERROR]
    if changes is not None and not changes.names and any(formula.moved for formula in formulas):
        refused = []  # a wait that one of several formulas has was not asked of the others
    return bakery._replace(
        formulas=tuple(formulas),
        unsound=tuple(unsound),
        diagnostics=tuple(sorted(dict.fromkeys(wanted), key=_by_place)),
        refused=tuple(refused),
    )


def _not_allowed(
    reports: Iterable[Diagnostic], allowed: Iterable[Allowed], always: Iterable[str]
) -> Iterator[Diagnostic]:
    """The remarks of binding that neither the formula nor the whole house allows."""
    quiet = {one.name for one in allowed} | set(always)
    return (r for r in reports if r.severity is Severity.ERROR or r.name not in quiet)


class Bound(NamedTuple):
    """A formula, or None with the reports that say why; and what was asked of it in vain."""

    value: Formula | None
    diagnostics: tuple[Diagnostic, ...]
    refused: tuple[Refused, ...] = ()


def _bound(written: WrittenFormula, offered: Offered, house: Kitchen, changes: Changes | None) -> Bound:
    """A formula bound, after the swaps of its variant and what was asked for."""
    on_top = changes if changes is not None and _is_formula(written.block) else Changes()
    if not (written.swaps or on_top.swaps or on_top.waits):
        return Bound(*bind(written.block, offered))
    from manchet.changes.swaps import binding as bound

    named = fold(name_of(written.block)) in on_top.names
    asked = [one for text in on_top.swaps if (one := bound.swap_asked_for(text, not named)) is not None]
    own = [bound.swap_in_line(entry) for entry in written.swaps]
    swapped = bound.with_swaps(written.block, [*own, *asked], offered, house.yeast_factors)
    if swapped.value is None:
        return Bound(None, swapped.diagnostics)
    block, offered, done = swapped.value
    if on_top.waits and (named or not on_top.names):
        from manchet.changes.waits import bind_with_waits

        made, refused = bind_with_waits(block, offered, on_top.waits)
    else:
        made, refused = bind(block, offered), ()
    value = None if made.value is None else made.value._replace(swapped=done)
    return Bound(value, (*swapped.diagnostics, *made.diagnostics), refused)


def _is_formula(block: Entry) -> bool:
    return isinstance(block.node, nodes.BlockHead) and block.node.word == "formula"


def _swapped_nowhere(changes: Changes, formulas: Iterable[Formula], said: Iterable[Diagnostic]) -> Iterator[Diagnostic]:
    """A report for each swap asked for of which no formula had anything; not for one that `said` reports on."""
    from manchet.changes.swaps import binding as bound

    made = [one.place for formula in formulas for one in formula.swapped] + [one.place for one in said]
    done = {fold(place.text) for place in made if place.path == OPTION}
    asked = (bound.swap_asked_for(text) for text in changes.swaps)
    return (bound.nowhere(one) for one in asked if one is not None and fold(one.line.raw) not in done)


class WrittenFormula(NamedTuple):
    """A formula as written, or a variant rewritten into one, and the variant's lines that swap."""

    block: Entry
    swaps: tuple[Entry, ...] = ()
    lines: range = range(0)
    """The variant's own lines."""


def _written_formulas(block: Entry, larder: Larder) -> Iterable[Outcome[WrittenFormula]]:
    """A formula, then each of its variants as a formula of its own."""
    found = variants_of(block)
    yield Outcome(WrittenFormula(without_variants(block) if found else block))
    for variant in found:
        made = rewrite_variant(block, variant, larder.key)
        yield Outcome(WrittenFormula(made.value, swaps_of(variant), lines_of(variant)), made.diagnostics)


def news(reports: Iterable[Diagnostic], said: Iterable[Diagnostic], variant: WrittenFormula) -> Iterator[Diagnostic]:
    """What reports on a variant say that was not said of its formula.

    Of the lines that a variant takes over, each mistake is said once. What is wrong with them in the variant alone is
    said at its heading, with the line. An `allow` that only the formula needs is no mistake in the variant.
    """
    known = {(one.name, one.place) for one in said}
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


def check_work(work: Outcome[Work | None]) -> tuple[Diagnostic, ...]:
    """What the checks say of a sound formula at the size its file asks for; or why it cannot be sized."""
    from manchet.checks.registry import check

    return work.diagnostics if work.value is None else check(work.value)


def _folder(path: str) -> str:
    """The folder of a path with its last stroke, "" for none."""
    return path[: path.rfind("/") + 1]


def _by_place(one: Diagnostic) -> tuple[str, int, int, str]:
    return one.place.path, one.place.line, one.place.column, one.name


def _blocks(files: Iterable[File]) -> _Blocks:
    formulas: list[Entry] = []
    preparations: list[Entry] = []
    larders: list[Entry] = []
    kitchens: list[Entry] = []
    stages: list[Entry] = []
    sorts = {"formula": formulas, "preparation": preparations, "larder": larders, "kitchen": kitchens}
    for file in files:
        for entry in map(block_meant, file.entries):
            match entry.node:
                case nodes.BlockHead(word, _):
                    sorts[word].append(entry)
                case nodes.StageHead():
                    stages.append(entry)
                case _:
                    pass
    return _Blocks(tuple(formulas), tuple(preparations), tuple(larders), tuple(kitchens), tuple(stages))


def _named_variants(formulas: Iterable[Entry]) -> Iterable[Entry]:
    """The variants of some formulas under their full names."""
    for formula in formulas:
        for variant in variants_of(formula):
            yield Entry(variant.line, nodes.BlockHead("formula", Word(full_name(formula, variant), 0, 0)))


def _same_names(entries: tuple[Entry, ...]) -> Iterator[Diagnostic]:
    first: dict[str, Entry] = {}
    for entry in entries:
        key = fold(name_of(entry))
        there = first.setdefault(key, entry)
        if there is entry:
            continue
        where = there.line.path if there.line.path != entry.line.path else f"line {there.line.number}"
        message = f"{name_of(entry)} is there already, in {where}"
        help = f"if {entry.line.path} is a copy, remove it; else give one of the two another name"
        also = (there.line.place(), "the first stands here")
        yield report("two-blocks-one-name", entry.line.place(), message, help, also)


def _larder(entries: tuple[Entry, ...]) -> Outcome[Larder]:
    larder = builtin()
    if not entries:
        return Outcome(larder)
    from manchet.larder.reading import ingredients_of

    reports: list[Diagnostic] = []
    own: list[Ingredient | Question] = []
    for entry in entries:
        ingredients = ingredients_of(entry)
        reports += ingredients.diagnostics
        own += ingredients.value
    filled = larder.with_entries(own)
    return Outcome(filled.value, (*reports, *filled.diagnostics))


def _kitchens(entries: tuple[Entry, ...]) -> Outcome[tuple[Kitchen, ...]]:
    if not entries:
        return Outcome(())
    from manchet.kitchen.reading import kitchen_of

    reports: list[Diagnostic] = []
    kitchens = []
    for entry in entries:
        kitchen = kitchen_of(entry)
        reports += kitchen.diagnostics
        kitchens.append(kitchen.value)
    return Outcome(tuple(kitchens), tuple(reports))


def _offered(blocks: _Blocks, larder: Larder, measures: str) -> Offered:
    shared: dict[str, Entry] = {}
    for entry in blocks.stages:
        assert isinstance(entry.node, nodes.StageHead)
        shared.setdefault(stage_key(entry.node), entry)
    preparations = {fold(name_of(p)): name_of(p) for p in blocks.preparations}
    return Offered(larder, shared, preparations, measures)


def _judge_shared(stages: tuple[Entry, ...], offered: Offered) -> Iterator[Diagnostic]:
    """Report on each shared stage once, where it stands, and not in every formula that draws on it."""
    names = Names({k: name_of(e) for k, e in offered.shared.items()}, offered.preparations, offered.larder)
    for entry in stages:
        assert isinstance(entry.node, nodes.StageHead)
        draft = draft_of(entry.node, entry, entry.children, names, offered.measures, shared=True)
        yield from draft.diagnostics
