"""The breads of two sides, each bread beside itself: by its name, or by its file where it is called otherwise now."""

from __future__ import annotations

import os
from collections.abc import Iterable, Sequence

from manchet.batch.work import Work
from manchet.diagnostics.diagnostic import Diagnostic, Severity
from manchet.diagnostics.suggest import fold, nearest
from manchet.records import NamedTuple
from manchet.source.files import SUFFIX
from manchet.syntax.block import FORMULAS, Block
from manchet.workspace.compared_sides import LAST_COMMIT, AskedSide, asked_sides, root_of
from manchet.workspace.open_bakery import OpenBakery
from manchet.workspace.raw_files import Raw
from manchet.workspace.revision import STAGED, bakery_at, bakery_staged, commit_of
from manchet.workspace.selection import Selection, selections
from manchet.workspace.trouble import Unknown

BEFORE, AFTER = "before", "after"
"""What the sides are called where git hands over two files and does not say of when."""


class SideBread(NamedTuple):
    """A formula, variant, preparation or dish of one side; `work` is None, and `why` says why, where it has a mistake. `text` is its block."""

    name: str
    text: str
    work: Work | None
    why: str = ""


class BreadPair(NamedTuple):
    """One bread on both sides; None on the side that has none of it."""

    before: SideBread | None
    after: SideBread | None

    @property
    def is_same_mistake(self) -> bool:
        """It cannot be read on either side, and its text is the same."""
        if self.before is None or self.after is None or self.before.work or self.after.work:
            return False
        return self.before.text == self.after.text


class ComparedSides(NamedTuple):
    """What the sides are called, and their breads in pairs: those of the newer side in its order, then what is gone."""

    called: tuple[str, str]
    pairs: tuple[BreadPair, ...]


class _Side(NamedTuple):
    asked: AskedSide
    bakery: OpenBakery
    prefix: str
    root: str

    def blocks(self) -> list[tuple[str, Block]]:
        return [
            (file.path, block)
            for file in self.bakery.files
            for top in file.blocks
            if top.word in FORMULAS and top.name
            for block in top.with_variants()
        ]


Placed = tuple[str, Block]


def compared_sides(words: Sequence[str]) -> ComparedSides:
    """Raises `Unknown` for words that name nothing, and where neither side has what is asked for."""
    old, new = asked_sides(words)
    (here,) = selections([])
    before, after = _opened(old, new, here), _opened(new, old, here)
    found = _beside(before, after)
    if not found.pairs:
        raise _on_neither_side(before, after)
    return found


def compared_file(path: str, before: bytes | None, after: bytes | None) -> ComparedSides:
    """One file of the bakery that stands at `path`, as it was and as it is (None: not there): its breads, with the house around it as
    that is now. Of a file without any, such as a larder, all the breads of the bakery."""
    around = selections([os.path.dirname(os.path.realpath(path))])[0]
    place = os.path.relpath(os.path.realpath(path), around.root).replace(os.sep, "/")
    sides = [
        _Side(AskedSide(called, os.path.realpath(path)), _with_file(around, place, data), around.prefix, around.root)
        for called, data in ((BEFORE, before), (AFTER, after))
    ]
    if not any(_asked_for(side) for side in sides):
        sides = [side._replace(asked=side.asked._replace(what=around.root)) for side in sides]
    return _beside(*sides)


def compared_staged() -> ComparedSides | None:
    """The last commit, and what is about to be committed; None where nothing is committed yet."""
    (here,) = selections([])
    if not commit_of(here.root, LAST_COMMIT):
        return None
    before = _opened(AskedSide(LAST_COMMIT, here.root), AskedSide("", ""), here)
    staged = bakery_staged(here.root, here.prefix)
    return _beside(before, _Side(AskedSide(STAGED, here.root), staged, here.prefix, here.root))


def _with_file(around: Selection, place: str, data: bytes | None) -> OpenBakery:
    others = [file for file in around.files if file.path.removeprefix(around.prefix) != place]
    return OpenBakery(files=others if data is None else [*others, Raw(around.prefix + place, data)])


def _beside(before: _Side, after: _Side) -> ComparedSides:
    pairs = _pairs(before, after)
    read_old, read_new = _SideReader(before, [a for a, _ in pairs]), _SideReader(after, [b for _, b in pairs])
    breads = tuple(BreadPair(read_old.bread(a), read_new.bread(b)) for a, b in pairs)
    return ComparedSides((before.asked.called, after.asked.called), breads)


def _opened(side: AskedSide, other: AskedSide, here: Selection) -> _Side:
    around = root_of(side if not side.revision or not other.what else other, here)
    if not side.revision:
        return _Side(side, around.bakery, around.prefix, around.root)
    then = bakery_at(around.root, around.prefix, side.revision)
    return _Side(side, then.bakery, around.prefix, around.root)


# ---- which is which -------------------------------------------------------------------------------


def _pairs(before: _Side, after: _Side) -> list[tuple[Placed | None, Placed | None]]:
    old, new = _asked_for(before), _asked_for(after)
    if before.asked.what == after.asked.what:
        # Called otherwise on one side: what stands in the same file there, and nowhere on the other.
        old, new = old or _in_its_file(before, after, new), new or _in_its_file(after, before, old)
    elif len(old) == len(new) == 1:
        return [(old[0], new[0])]
    pairs: list[tuple[Placed | None, Placed | None]] = []
    left = list(old)
    for one in new:
        # Of two of one name, the one in the same file.
        named = [other for other in left if fold(other[1].name) == fold(one[1].name)]
        was = next((other for other in named if other[0] == one[0]), next(iter(named), None))
        if was is not None:
            left.remove(was)
        pairs.append((was, one))
    new_in = [b[0] for a, b in pairs if a is None and b is not None]
    for at, (a, b) in enumerate(pairs):
        # One that is new beside one that is gone, in one file, is called otherwise now.
        gone = [other for other in left if b is not None and other[0] == b[0]]
        if a is None and len(gone) == 1 and new_in.count(gone[0][0]) == 1:
            left.remove(gone[0])
            pairs[at] = gone[0], b
    return [*pairs, *((other, None) for other in left)]


def _asked_for(side: _Side) -> list[Placed]:
    what = side.asked.what
    named = [one for one in side.blocks() if fold(one[1].name) == fold(what)]
    if named:
        return named
    place = os.path.relpath(os.path.realpath(what or "."), side.root).replace(os.sep, "/")
    paths = _paths(side, place, what)
    return [one for one in side.blocks() if one[0] in paths]


def _paths(side: _Side, place: str, what: str) -> frozenset[str]:
    """The files that a path names: as it is from here, else as git has it from the top of its checkout."""
    inside = {file.path: file.path.removeprefix(side.prefix) for file in side.bakery.files}
    found = {path for path, name in inside.items() if place in (".", name) or name.startswith(f"{place}/")}
    if not found and what.endswith(SUFFIX):
        found = {
            path for path, name in inside.items() if f"/{what}".endswith(f"/{name}") or f"/{name}".endswith(f"/{what}")
        }
    return frozenset(found)


def _in_its_file(side: _Side, other: _Side, there: Sequence[Placed]) -> list[Placed]:
    """What a bread of the other side was called here: the one in its file whose name the other side has nowhere."""
    known = {fold(block.name) for _, block in other.blocks()}
    files = {path for path, _ in there}
    found = [one for one in side.blocks() if one[0] in files and fold(one[1].name) not in known]
    return found if len(found) == len(there) == 1 else []


def _on_neither_side(before: _Side, after: _Side) -> Unknown:
    what = before.asked.what or after.asked.what
    names = [block.name for side in (after, before) for _, block in side.blocks()]
    near = nearest(what, names) if what else None
    if not names:
        return Unknown(f"neither {before.asked.called} nor {after.asked.called} has a formula here")
    message = f"neither {before.asked.called} nor {after.asked.called} has a formula called {what}"
    few = ", ".join(sorted(dict.fromkeys(names))[:8])
    return Unknown(message, f"near: {near}" if near else f"formulas there: {few}")


# ---- read -----------------------------------------------------------------------------------------


class _SideReader:
    """Reads of a side what is wanted of it, once."""

    def __init__(self, side: _Side, wanted: Iterable[Placed | None]) -> None:
        paths = frozenset(one[0] for one in wanted if one is not None)
        self._bakery = side.bakery.read(paths)
        self._formulas = {(one.place.path, one.place.line): one for one in self._bakery.formulas}

    def bread(self, placed: Placed | None) -> SideBread | None:
        if placed is None:
            return None
        path, block = placed
        formula = self._formulas.get((path, block.line))
        if formula is None:
            return SideBread(block.name, block.text, None, _told(self._bakery.mistakes, path, block))
        sized = self._bakery.work(formula)
        why = "" if sized.value is not None else _told(sized.diagnostics, path, block)
        return SideBread(formula.name, block.text, sized.value, why)


def _told(reports: Iterable[Diagnostic], path: str, block: Block) -> str:
    """The first error about it, else the first in what it draws on, with its place."""
    errors = [one for one in reports if one.severity is Severity.ERROR]
    own = (one for one in errors if one.place.path == path and block.holds(one.place.line))
    found = next(own, errors[0] if errors else None)
    return "" if found is None else f"{found.place.where}: {found.message}"
