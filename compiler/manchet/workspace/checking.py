"""Checking what was asked for, and only what changed since it was last looked at.

What a file's reports follow from: its own text, and what the bakery shares (larders, kitchens, preparations, shared
stages, and names that two formulas claim). So a result is kept under a digest of those (see `cache`), and a formula
somewhere else that changes costs nothing here.
"""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Iterator, Mapping, Sequence
from typing import TYPE_CHECKING

from manchet.diagnostics.diagnostic import Diagnostic, Place, Severity
from manchet.diagnostics.suggest import fold
from manchet.records import NamedTuple
from manchet.source.files import rough_text_of
from manchet.syntax.headings import Block, blocks
from manchet.syntax.openings import FORMULAS
from manchet.workspace import cache
from manchet.workspace.cache import Found, Kept
from manchet.workspace.raw_files import Raw
from manchet.workspace.selection import Selection, no_such_kitchen
from manchet.workspace.texts import texts

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
    shared = common(selection.files)
    lent = {path for path, _ in shared}
    wanted = selection.paths | lent
    context = cache.digest(*(part for path, block in shared for part in (path, str(block.line), block.text)))
    keys = {path: cache.digest(cache.compiler(), context, kitchen, path, files[path].data) for path in wanted}
    store = (
        cache.open_store(selection.root, str(selection.premises.whole), selection.prefix, kitchen)
        if use_cache
        else cache.Store("", {})
    )
    packed = {path: store.kept[path].found for path in wanted if _is_kept(store, path, keys[path])}
    new = sorted(wanted - packed.keys())
    if new:
        packed |= _looked_at([files[path] for path in sorted(lent)], [files[path] for path in new], kitchen, jobs)
        kept = {path: one for path, one in store.kept.items() if path in files}
        cache.close_store(store, kept | {path: Kept(keys[path], packed[path]) for path in new})
    found = {path: cache.unpack(packed[path]) for path in sorted(packed)}
    reports = (one for each in found.values() for one in each.diagnostics)
    pictures = tuple(picture for each in found.values() for picture in each.pictures)
    diagnostics = (
        *selection.diagnostics,
        *(one for one in reports if _is_wanted(one, selection, files)),
        *_not_shown(pictures, selection, files),
    )
    formulas = len(selection.names) or sum(found[path].formulas for path in selection.paths)
    return Checked(diagnostics, formulas, len(selection.paths))


def check_with_changes(selection: Selection, kitchen: str, swaps: tuple[str, ...], waits: tuple[str, ...]) -> Checked:
    """All reports on what was asked for, after some swaps and with other waits. Nothing of it is kept. Raises `Unknown`."""
    from manchet.formula.pictured import pictures_named
    from manchet.workspace.bakery import Changes
    from manchet.workspace.opening import bakery_of_files, kitchen_of, not_refused

    bakery = bakery_of_files(selection, selection.paths, kitchen, Changes(swaps, selection.names, waits))
    not_refused(bakery)
    kitchen_of(bakery, kitchen, "")
    files = {file.path: file for file in selection.files}
    wanted = (one for one in bakery.diagnostics if one.place.path not in files or _is_wanted(one, selection, files))
    pictures = tuple(picture for formula in bakery.formulas for picture in pictures_named(formula))
    diagnostics = (*selection.diagnostics, *wanted, *_not_shown(pictures, selection, files))
    return Checked(diagnostics, len(selection.names) or len(bakery.formulas), len(selection.paths))


def _is_kept(store: cache.Store, path: str, key: str) -> bool:
    return path in store.kept and store.kept[path].key == key


def common(files: Sequence[Raw]) -> tuple[tuple[str, Block], ...]:
    """The blocks that formulas in other files can draw on or clash with, and where each stands."""
    claims: dict[str, int] = {}
    for file in files:
        for top in file.blocks:
            for block in top.with_variants() if top.word in FORMULAS else ():
                claims[fold(block.name)] = claims.get(fold(block.name), 0) + 1
    return tuple(
        (file.path, block)
        for file in files
        for block in file.blocks
        if not block.is_formula or any(claims[fold(one.name)] > 1 for one in block.with_variants())
    )


def _looked_at(lent: Sequence[Raw], new: Sequence[Raw], kitchen: str, jobs: int) -> Mapping[str, str]:
    """The packed results for `new`, in one process or in several."""
    if jobs < 2 or len(new) < ENOUGH_FOR_TWO:
        return look([(file.path, file.data) for file in lent], [(file.path, file.data) for file in new], kitchen)
    from manchet.workspace.workers import spread

    shared = [(file.path, file.data) for file in lent]
    parts = [[(file.path, file.data) for file in part] for part in _dealt(new, jobs)]
    results: dict[str, str] = {}
    for part in spread(look, [(shared, part, kitchen) for part in parts], jobs):
        results |= part
    return results


def _dealt(files: Sequence[Raw], parts: int) -> Iterator[Sequence[Raw]]:
    return (files[start::parts] for start in range(parts))


def look(lent: Sequence[tuple[str, bytes]], new: Sequence[tuple[str, bytes]], kitchen: str) -> dict[str, str]:
    """Checks the files `new` with what the files `lent` share. (path, bytes) in, path and packed result out."""
    from manchet.formula.pictured import pictures_named
    from manchet.workspace.bakery import read

    wanted = dict(new)
    sources, unreadable = texts({**dict(lent), **wanted})
    bakery = read(sources, frozenset(wanted), kitchen)
    by_path: dict[str, list[Diagnostic]] = {path: [] for path in wanted}
    for diagnostic in (*unreadable, *bakery.diagnostics):
        if diagnostic.place.path in by_path:
            by_path[diagnostic.place.path].append(diagnostic)
    pictures: dict[str, list[Picture]] = {path: [] for path in wanted}
    for formula in bakery.formulas:
        if formula.place.path in pictures:
            pictures[formula.place.path] += pictures_named(formula)
    return {
        path: cache.pack(Found(tuple(found), _formulas(wanted[path]), tuple(dict.fromkeys(pictures[path]))))
        for path, found in by_path.items()
    }


def _not_shown(pictures: Sequence[Picture], selection: Selection, files: Mapping[str, Raw]) -> tuple[Diagnostic, ...]:
    """The reports on those of the pictures that stand in what was asked for; and what they need is not loaded for none."""
    wanted = [picture for picture in pictures if _is_asked(picture.place, selection, files)]
    if not wanted:
        return ()
    from manchet.workspace.pictures import not_shown

    return not_shown(wanted, selection.root)


def _formulas(data: bytes) -> int:
    return sum(len(block.with_variants()) for block in blocks(rough_text_of(data)) if block.word in FORMULAS)


def _is_wanted(diagnostic: Diagnostic, selection: Selection, files: Mapping[str, Raw]) -> bool:
    """Whether a report belongs to what was asked for: it is in a file or formula asked about, or it is an error in
    something that they draw on."""
    if _is_asked(diagnostic.place, selection, files):
        return True
    block = _block_at(files[diagnostic.place.path].blocks, diagnostic.place.line)
    return (
        diagnostic.severity is Severity.ERROR
        and diagnostic.name not in BETWEEN_NEIGHBOURS
        and (block is None or block.word != "formula")
    )


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
