"""The one formula a command is about, with the bakery around it."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from manchet.batch.order import AS_WRITTEN
from manchet.batch.work import Work
from manchet.diagnostics.diagnostic import Diagnostic, Severity
from manchet.diagnostics.suggest import fold
from manchet.formula.model import Formula
from manchet.kitchen.model import Kitchen
from manchet.records import NamedTuple
from manchet.syntax.headings import Block
from manchet.syntax.openings import FORMULAS
from manchet.workspace.bakery import Bakery, Changes, read
from manchet.workspace.selection import Selection, no_such_kitchen, selections
from manchet.workspace.texts import texts
from manchet.workspace.trouble import Unknown


class OpenedFormula(NamedTuple):
    """`asked` is all of the bakery, of which only what the formula draws on has been read. `formula` is None where it has errors; `diagnostics` are the reports on it and on what it draws on."""

    selection: Selection
    bakery: Bakery
    kitchen: Kitchen
    formula: Formula | None
    diagnostics: tuple[Diagnostic, ...]


def open_formula(
    word: str, kitchen: str = "", swaps: tuple[str, ...] = (), waits: tuple[str, ...] = ()
) -> OpenedFormula:
    """The formula called `word`, or the only one in the file or folder `word`, after `swaps` and with
    other `waits`. Raises `Unknown`.
    """
    (selection,) = selections([word])
    found = [
        (path, block)
        for path, block in formula_blocks(selection)
        if fold(block.name) in selection.names or not selection.names
    ]
    if len(found) != 1:
        names = ", ".join(block.name for _, block in found[:8])
        raise Unknown(f"{word} holds {len(found)} formulas", f"say which: {names}" if names else "")
    path, block = found[0]
    bakery = bakery_of_files(selection, [path], kitchen, Changes(swaps, frozenset({fold(block.name)}), waits))
    not_refused(bakery)
    formula = next((one for one in bakery.formulas if (one.place.path, one.place.line) == (path, block.line)), None)
    reports = tuple(one for one in bakery.diagnostics if concerns(one, path, block, selection))
    return OpenedFormula(selection, bakery, kitchen_of(bakery, kitchen, path), formula, reports)


def baked_beside(found: OpenedFormula, kitchen: str = "") -> tuple[Work, ...]:
    """What else the bakery bakes in the same kitchen, as a build of all of it does for the oven card: without variants, and
    without what has errors. `kitchen` is the one asked for by name, "" for each formula's nearest. Nothing where no oven
    of the kitchen falls: then nobody waits for a turn."""
    if not any(oven.falls for oven in found.kitchen.ovens):
        return ()
    everything = found.selection._replace(
        paths=frozenset(file.path for file in found.selection.files), names=frozenset()
    )
    blocks = [(path, block) for path, block in formula_blocks(everything) if block.word != "variant"]
    bakery = bakery_of_files(everything, {path for path, _ in blocks}, kitchen)
    formulas = {(formula.place.path, formula.place.line): formula for formula in bakery.formulas}
    beside: list[Work] = []
    for path, block in blocks:
        formula = formulas.get((path, block.line))
        reports = [one for one in bakery.diagnostics if concerns(one, path, block, everything)]
        if formula is not None and not has_errors(reports, path) and kitchen_of(bakery, kitchen, path) == found.kitchen:
            work = bakery.work(formula, AS_WRITTEN, kitchen).value
            beside += () if work is None else (work,)
    return tuple(beside)


def bakery_of_files(
    selection: Selection, paths: Iterable[str], kitchen: str = "", changes: Changes | None = None
) -> Bakery:
    """Some files of a bakery read with all that they draw on: the other files with larders, kitchens and so on."""
    wanted = frozenset(paths)
    needed = {
        file.path: file.data
        for file in selection.files
        if file.path in wanted or any(not block.is_formula for block in file.blocks)
    }
    sources, unreadable = texts(needed)
    bakery = read(sources, wanted, kitchen, changes)
    return bakery._replace(diagnostics=(*unreadable, *bakery.diagnostics))


def not_refused(bakery: Bakery) -> None:
    """Raises `Unknown` where a wait was asked for that cannot be given."""
    for refused in bakery.refused:
        raise Unknown(refused.message, refused.help)


def kitchen_of(bakery: Bakery, name: str, path: str) -> Kitchen:
    """The kitchen called `name`, or the one nearest to the file at `path`. Raises `Unknown`."""
    if not name:
        return bakery.kitchen_for(path)
    kitchen = bakery.kitchen_called(name)
    if kitchen is None:
        raise no_such_kitchen(name, [one.name for one in bakery.kitchens])
    return kitchen


def formula_blocks(selection: Selection) -> Sequence[tuple[str, Block]]:
    """The formulas and preparations in the files asked about, with their paths."""
    return [
        (file.path, block)
        for file in selection.files
        if file.path in selection.paths
        for top in file.blocks
        if top.word in FORMULAS
        for block in top.with_variants()
    ]


def concerns(diagnostic: Diagnostic, path: str, formula: Block, selection: Selection) -> bool:
    """Whether a report is about a formula of the file at `path`, or is an error in what all share."""
    place = diagnostic.place
    if place.path == path and formula.holds(place.line):
        return True
    if diagnostic.severity is not Severity.ERROR:
        return False
    around = [
        block
        for file in selection.files
        if file.path == place.path
        for block in file.blocks
        if block.line <= place.line
    ]
    return not around or around[-1].word not in FORMULAS


def has_errors(reports: Sequence[Diagnostic], path: str) -> bool:
    """Something in this file cannot be true: nothing of it is printed."""
    return any(one.severity is Severity.ERROR and one.place.path == path for one in reports)
