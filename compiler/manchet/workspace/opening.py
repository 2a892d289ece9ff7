"""The one formula a command is about, with the bakery around it."""

from __future__ import annotations

from collections.abc import Sequence

from manchet.batch.order import AS_WRITTEN
from manchet.batch.work import Work
from manchet.diagnostics.diagnostic import Diagnostic, Severity
from manchet.diagnostics.suggest import fold
from manchet.formula.model import Formula
from manchet.kitchen.model import Kitchen
from manchet.records import NamedTuple
from manchet.source.files import WHOLE_FILE
from manchet.syntax.block import FORMULAS, Block
from manchet.workspace.bakery import Bakery
from manchet.workspace.changes import Changes
from manchet.workspace.selection import Selection, never_two_of_a_name, no_such_kitchen, selections
from manchet.workspace.trouble import Unknown


class OpenedFormula(NamedTuple):
    """The formula at `block` of the file at `path`, None where it has errors, in its kitchen.

    `selection` is all of the bakery, of which only what the formula draws on has been read.
    """

    selection: Selection
    bakery: Bakery
    kitchen: Kitchen
    path: str
    block: Block
    formula: Formula | None

    @property
    def diagnostics(self) -> tuple[Diagnostic, ...]:
        """The reports on it and on what it draws on."""
        return tuple(one for one in self.bakery.diagnostics if concerns(one, self.path, self.block, self.selection))


def open_formula(
    word: str, kitchen: str = "", swaps: tuple[str, ...] = (), waits: tuple[str, ...] = ()
) -> OpenedFormula:
    """The formula called `word`, or the only one in the file or folder `word`, after `swaps` and with
    other `waits`. Raises `Unknown`.
    """
    (selection,) = selections([word])
    never_two_of_a_name(selection)
    found = [
        (path, block)
        for path, block in formula_blocks(selection)
        if fold(block.name) in selection.names or not selection.names
    ]
    for wrong in selection.diagnostics if not found else ():
        if wrong.severity is Severity.ERROR:
            raise Unknown(f"{wrong.place.path}: {wrong.message}", wrong.help)
    if len(found) != 1:
        names = ", ".join(block.name for _, block in found[:8])
        raise Unknown(f"{word} holds {len(found)} formulas", f"say which: {names}" if names else "")
    path, block = found[0]
    bakery = selection.bakery.read([path], kitchen, Changes(swaps, frozenset({fold(block.name)}), waits))
    not_refused(bakery)
    formula = next((one for one in bakery.formulas if (one.place.path, one.place.line) == (path, block.line)), None)
    return OpenedFormula(selection, bakery, kitchen_of(bakery, kitchen, path), path, block, formula)


def baked_beside(found: OpenedFormula, kitchen: str = "") -> tuple[Work, ...]:
    """What else the bakery bakes in the same kitchen, as a build of all of it does for the oven card: without variants, and
    without what cannot be read. `kitchen` is the one asked for by name, "" for each formula's nearest. Nothing where no oven
    of the kitchen falls: then nobody waits for a turn."""
    if not any(oven.falls for oven in found.kitchen.ovens):
        return ()
    everything = found.selection._replace(
        paths=frozenset(file.path for file in found.selection.files), names=frozenset()
    )
    bakery = everything.bakery.read(None, kitchen)
    formulas = {(formula.place.path, formula.place.line): formula for formula in bakery.formulas}
    beside: list[Work] = []
    for path, block in formula_blocks(everything):
        formula = formulas.get((path, block.line))
        if block.word == "variant" or formula is None or kitchen_of(bakery, kitchen, path) != found.kitchen:
            continue
        reports = [one for one in bakery.mistakes if concerns(one, path, block, everything)]
        if not has_errors(reports, path):
            work = bakery.work(formula, AS_WRITTEN, kitchen).value
            beside += () if work is None else (work,)
    return tuple(beside)


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
    place, of_all = diagnostic.place, diagnostic.name in WHOLE_FILE
    if place.path == path and (of_all or formula.holds(place.line)):
        return True
    if diagnostic.severity is not Severity.ERROR:
        return False
    there = [block for file in selection.files if file.path == place.path for block in file.blocks]
    around = there if of_all else [block for block in there if block.line <= place.line][-1:]
    return not around or any(block.word not in FORMULAS for block in around)


def has_errors(reports: Sequence[Diagnostic], path: str) -> bool:
    """Something in this file cannot be true: nothing of it is printed."""
    return any(one.severity is Severity.ERROR and one.place.path == path for one in reports)
