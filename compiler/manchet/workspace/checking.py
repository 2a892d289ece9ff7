"""Checking what was asked for, and only what changed since it was last looked at.

What a file's reports follow from: its own text, and what the bakery shares (larders, kitchens, preparations, shared
stages, and names that two formulas claim). So a result is kept under a digest of those (see `cache`), and a formula
somewhere else that changes costs nothing here.
"""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Iterable, Iterator, Mapping, Sequence
from typing import TYPE_CHECKING

from manchet.diagnostics.diagnostic import Diagnostic, Place, Severity
from manchet.diagnostics.suggest import fold
from manchet.records import NamedTuple
from manchet.source.files import WHOLE_FILE
from manchet.syntax.block import FORMULAS, Block
from manchet.workspace import cache
from manchet.workspace.cache import Kept
from manchet.workspace.collecting import without_collecting
from manchet.workspace.drawn_on import DrawnOn, drawn_on
from manchet.workspace.faults import OUR_FAULT
from manchet.workspace.open_bakery import OpenBakery
from manchet.workspace.packing import Found, pack, unpack
from manchet.workspace.raw_files import Raw
from manchet.workspace.selection import Selection, no_such_kitchen
from manchet.workspace.wanted_by_dishes import has_dishes, wanted_by_dishes
from manchet.workspace.wanted_by_plans import has_plans, wanted_by_plans

if TYPE_CHECKING:
    from manchet.formula.picture import Picture

ENOUGH_FOR_TWO = 120
"""Files to look at from which a second process earns back what it takes to start."""


class Checked(NamedTuple):
    diagnostics: tuple[Diagnostic, ...]
    formulas: int
    files: int


def check_selection(selection: Selection, kitchen: str = "", jobs: int = 1, use_cache: bool = True) -> Checked:
    """All reports on what was asked for. `kitchen` names the one to judge by, "" leaves it to the bakery.

    Raises `Unknown` where there is no kitchen of that name.
    """
    if kitchen:
        known = [block.name for file in selection.files for block in file.blocks if block.word == "kitchen"]
        if fold(kitchen) not in map(fold, known):
            raise no_such_kitchen(kitchen, known)
    files = {file.path: file for file in selection.files}
    shared = selection.bakery.shared
    lent = {path for path, _ in shared}
    wanted = selection.paths | lent
    if any(has_plans(files[path]) for path in selection.paths):
        wanted |= {path for path, file in files.items() if has_plans(file)}  # orders, and plans that others are like
    context = cache.digest(*(part for path, block in shared for part in (path, str(block.line), block.text)))
    store = (
        cache.open_store(selection.root, str(selection.premises.whole), selection.prefix, kitchen)
        if use_cache
        else cache.Store()
    )
    keys = {path: cache.digest(store.compiler, context, kitchen, path, files[path].data) for path in wanted}
    drawing = {path: key for path, key in keys.items() if has_plans(files[path]) or has_dishes(files[path])}
    keys |= _keys_of_drawing(drawing, selection.bakery, files)
    packed = {path: store.kept[path].found for path in wanted if _is_kept(store, path, keys[path])}
    new = sorted(wanted - packed.keys())
    packed |= _look_at(selection.bakery, new, kitchen, jobs) if new else {}
    found = {path: unpack(packed[path]) for path in sorted(packed)}
    if new:
        kept = {path: one for path, one in store.kept.items() if path in files}
        worth = [path for path in new if not any(one.name == OUR_FAULT for one in found[path].diagnostics)]
        cache.close_store(store, kept | {path: Kept(keys[path], packed[path]) for path in worth})
    reports = (one for each in found.values() for one in each.diagnostics)
    pictures = tuple(picture for each in found.values() for picture in each.pictures)
    diagnostics = (
        *selection.diagnostics,
        *wanted_of(reports, selection, files, kitchen),
        *_not_shown(pictures, selection, files),
    )
    formulas = len(selection.names) or sum(found[path].formulas for path in selection.paths)
    return Checked(diagnostics, formulas, len(selection.paths))


def check_with_changes(selection: Selection, kitchen: str, swaps: tuple[str, ...], waits: tuple[str, ...]) -> Checked:
    """All reports on what was asked for, after some swaps and with other waits. Nothing of it is kept. Raises `Unknown`."""
    from manchet.formula.pictured import pictures_named
    from manchet.workspace.changes import Changes
    from manchet.workspace.opening import kitchen_of, not_refused

    bakery = selection.bakery.read(selection.paths, kitchen, Changes(swaps, selection.names, waits))
    not_refused(bakery)
    kitchen_of(bakery, kitchen, "")
    files = {file.path: file for file in selection.files}
    wanted = wanted_of((*bakery.diagnostics, *bakery.cautions), selection, files, kitchen)
    pictures = tuple(picture for formula in bakery.formulas for picture in pictures_named(formula))
    diagnostics = (*selection.diagnostics, *wanted, *_not_shown(pictures, selection, files))
    return Checked(diagnostics, len(selection.names) or len(bakery.formulas), len(selection.paths))


def _keys_of_drawing(keys: Mapping[str, str], bakery: OpenBakery, files: Mapping[str, Raw]) -> dict[str, str]:
    """The keys of files with plans or dishes: what is said of these follows from the formulas too that they name."""
    if not keys:
        return {}
    planned = wanted_by_plans(files.values(), keys.keys())
    drawn = sorted(planned | wanted_by_dishes(files.values(), keys.keys() | planned))
    around = cache.digest(*sorted(bakery.names), *(part for path in drawn for part in (path, files[path].data)))
    return {path: cache.digest(key, around) for path, key in keys.items()}


def _is_kept(store: cache.Store, path: str, key: str) -> bool:
    return path in store.kept and store.kept[path].key == key


def _look_at(bakery: OpenBakery, new: Sequence[str], kitchen: str, jobs: int) -> Mapping[str, str]:
    """The packed results for the files `new`, in one process or in several."""
    if jobs < 2 or len(new) < ENOUGH_FOR_TWO:
        return look(bakery, new, kitchen)
    from manchet.workspace.workers import spread

    parts = [new[start::jobs] for start in range(jobs)]
    calls = [(bakery.part(bakery.needed(frozenset(part))), part, kitchen) for part in parts]
    results: dict[str, str] = {}
    for found in spread(look, calls, jobs):
        results |= found
    return results


@without_collecting()
def look(bakery: OpenBakery, new: Sequence[str], kitchen: str) -> dict[str, str]:
    """Checks some files of a bakery: the path of each, and its packed result."""
    from manchet.formula.pictured import pictures_named

    found = bakery.read(new, kitchen)
    reports: dict[str, list[Diagnostic]] = {path: [] for path in new}
    for diagnostic in (*found.diagnostics, *found.cautions):
        if diagnostic.place.path in reports:
            reports[diagnostic.place.path].append(diagnostic)
    pictures: dict[str, list[Picture]] = {path: [] for path in new}
    for formula in found.formulas:
        if formula.place.path in pictures:
            pictures[formula.place.path] += pictures_named(formula)
    formulas = {file.path: _number_of_formulas(file) for file in bakery.files}
    return {
        path: pack(Found(tuple(reports[path]), formulas[path], tuple(dict.fromkeys(pictures[path])))) for path in new
    }


def _not_shown(pictures: Sequence[Picture], selection: Selection, files: Mapping[str, Raw]) -> tuple[Diagnostic, ...]:
    """The reports on those of the pictures that stand in what was asked for; and what they need is not loaded for none."""
    wanted = [picture for picture in pictures if _is_asked(picture.place, selection, files)]
    if not wanted:
        return ()
    from manchet.workspace.pictures import not_shown

    return not_shown(wanted, selection.root)


def _number_of_formulas(file: Raw) -> int:
    return sum(len(block.with_variants()) for block in file.blocks if block.word in FORMULAS)


def wanted_of(
    reports: Iterable[Diagnostic], selection: Selection, files: Mapping[str, Raw], kitchen: str
) -> Iterator[Diagnostic]:
    """The reports that belong to what was asked for: those in a file or formula asked about, and errors in something that
    they draw on."""
    lent: DrawnOn | None = None
    for one in reports:
        of_all = one.name in WHOLE_FILE and one.place.path in selection.paths
        if of_all or one.place.path not in files or _is_asked(one.place, selection, files):
            yield one
        elif one.severity is Severity.ERROR and one.name not in BETWEEN_NEIGHBOURS:
            block = _block_at(files[one.place.path].blocks, one.place.line)
            lent = lent or drawn_on(selection.paths, files, kitchen)
            if block is None or (block.word == "larder" and one.place.line == block.line) or lent.has(one.place):
                yield one


def _is_asked(place: Place, selection: Selection, files: Mapping[str, Raw]) -> bool:
    """Whether it stands in a file or a formula that was asked about."""
    if place.path not in selection.paths or not selection.names:
        return place.path in selection.paths
    block = _block_at(files[place.path].blocks, place.line)
    return block is not None and _names_one(selection, block, place.line)


BETWEEN_NEIGHBOURS = frozenset({"two-blocks-one-name", "larder-name-twice"})
"""Reports that two other files clash: they are told of when one of those is asked about, or the whole folder."""


def _names_one(selection: Selection, block: Block, line: int) -> bool:
    """Whether a line belongs to a formula (or variant) that was asked for by name."""
    return any(fold(one.name) in selection.names and one.holds(line) for one in block.with_variants())


def _block_at(found: Sequence[Block], line: int) -> Block | None:
    """The block that a line of its file belongs to. Blocks stand in the order of their lines."""
    at = bisect_right(found, line, key=lambda block: block.line)
    return found[at - 1] if at else None
