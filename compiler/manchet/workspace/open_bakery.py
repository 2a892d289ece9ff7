"""A bakery held open: its files in memory, each read once for what it says, and asked again after any change.

What is asked of it after a file was changed is what a bakery opened afresh would answer, word for word; but a file is
parsed again only if its bytes are others, and a formula bound and checked again only if its own block changed or what it
draws on: the larder, its kitchen, the shared stages it is made of, the names of what stands by itself.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Set
from functools import cached_property
from typing import TYPE_CHECKING, Any

from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.suggest import fold
from manchet.source.files import text_of
from manchet.syntax.block import FORMULAS, PLANNED, Block
from manchet.workspace.changes import NO_CHANGES, Changes
from manchet.workspace.folder import Premises
from manchet.workspace.memory import Memory
from manchet.workspace.raw_files import Raw, raw_files
from manchet.workspace.wanted_by_dishes import DISH, wanted_by_dishes
from manchet.workspace.wanted_by_plans import names_of_formulas, second_kitchens, wanted_by_plans

if TYPE_CHECKING:
    from manchet.batch.order import Order
    from manchet.batch.work import Work
    from manchet.formula.model import Formula
    from manchet.source.text import SourceText
    from manchet.syntax.nodes import File
    from manchet.workspace.bakery import Bakery


class OpenBakery:
    """The files of one bakery, and what was worked out of them so far.

    `premises` is the folder they come from, None for a bakery that is on no disk; `prefix` is put before a path in the
    folder to make it a path as it is shown. Raises `Unknown` where the folder cannot be read.
    """

    def __init__(
        self,
        premises: Premises | None = None,
        prefix: str = "",
        files: Iterable[Raw] = (),
        elsewhere: Iterable[str] = (),
    ) -> None:
        self.premises = premises
        self.prefix = prefix
        self.refused: tuple[Diagnostic, ...] = ()
        """What cannot be read of the folder: a report each."""
        self._elsewhere = frozenset(elsewhere)
        """The names of formulas in files that are left out of this part of a bakery."""
        self._disk = {file.path: file for file in files}
        self._unsaved: dict[str, Raw] = {}
        self._memory = Memory()
        self._state = _State(self._disk.values())
        self._read: dict[tuple[Set[str] | None, str, Changes], Bakery] = {}
        if premises is not None and not self._disk:
            self.refresh()

    def __reduce__(self) -> tuple[Any, ...]:
        """In another process it is opened with the same files, and nothing worked out."""
        return OpenBakery, (None, self.prefix, self.files, self._elsewhere)

    @property
    def files(self) -> tuple[Raw, ...]:
        """Every file as it is now, in the order of the paths."""
        return self._state.files

    def part(self, paths: Set[str]) -> OpenBakery:
        """A bakery of these files alone, of which nothing is worked out."""
        return OpenBakery(files=[file for file in self.files if file.path in paths], elsewhere=self.names)

    @property
    def names(self) -> frozenset[str]:
        """Of all formulas, variants and preparations."""
        return self._elsewhere | self._state.names

    def needed(self, paths: Set[str] | None) -> frozenset[str]:
        """The files to read for these: themselves, what others can draw on, and what their plans do."""
        if paths is None:
            return frozenset(file.path for file in self.files)
        planned = wanted_by_plans(self.files, paths)
        return frozenset((*paths, *self._state.lent, *planned, *wanted_by_dishes(self.files, paths | planned)))

    def update(self, path: str, data: bytes | None) -> None:
        """What an editor holds of a file, saved or not; None where it holds nothing any more: then what is on disk counts."""
        if data is None:
            self._unsaved.pop(path, None)
        else:
            self._unsaved[path] = Raw(path, data)
        self._changed()

    def refresh(self) -> None:
        """Looks at the folder again. Raises `Unknown`, and is as before, where it cannot be read."""
        if self.premises is None:
            return
        found, self.refused = raw_files(self.premises, self.prefix)
        self._disk = {file.path: _same(file, self._disk.get(file.path)) for file in found}
        self._changed()

    def read(self, paths: Iterable[str] | None = None, kitchen: str = "", changes: Changes | None = None) -> Bakery:
        """The bakery with the formulas of these files bound, or with all of them; see `passes.ReadSoFar`. Its reports are those
        on these files, and errors in what they draw on."""
        changes = changes if changes is not None and (changes.swaps or changes.waits) else NO_CHANGES
        only = None if paths is None else frozenset(paths)
        key = (only, kitchen, changes)
        if key not in self._read:
            from manchet.workspace.bakery import (
                read,  # where all is known from before, nothing of the language is loaded
            )

            paths = self.needed(only)
            needed = [file for file in self.files if file.path in paths]
            texts = [self._text(file) for file in needed]
            sources = (one.value for one in texts if one.value is not None)
            unreadable = tuple(report for one in texts for report in one.diagnostics)
            self._read[key] = read(sources, only, kitchen, changes, self._memory, unreadable, self.names)
        return self._read[key]

    def tree(self, path: str) -> File | None:
        """A file as it is now, parsed; None where there is no such file, or it is no text."""
        from manchet.workspace.passes import parsed_file

        text = next((self._text(file).value for file in self.files if file.path == path), None)
        return None if text is None else parsed_file(text, self._memory).file

    def reports(self, paths: Iterable[str] | None = None, kitchen: str = "") -> tuple[Diagnostic, ...]:
        """What reading and checking say of these files, or of all."""
        return self.read(paths, kitchen).diagnostics

    def formula(self, name: str, kitchen: str = "") -> Formula | None:
        """The sound formula, variant or preparation of that name; no other is bound for it."""
        wanted = fold(name)
        for file in self.files:
            for top in file.blocks:
                for block in top.with_variants() if top.word in FORMULAS else ():
                    if fold(block.name) == wanted:
                        return self.read([file.path], kitchen).formula(name)
        return None

    def work(self, name: str, order: Order | None = None, kitchen: str = "") -> Outcome[Work | None]:
        """The formula of that name at a size, by default its file's; the same Work as long as nothing that it follows from changes."""
        formula = self.formula(name, kitchen)
        if formula is None:
            return Outcome(None)
        from manchet.batch.order import AS_WRITTEN

        return self.read([formula.place.path], kitchen).work(formula, order or AS_WRITTEN, kitchen)

    @property
    def shared(self) -> tuple[tuple[str, Block], ...]:
        """The blocks that formulas in other files can draw on or clash with, and the path of each."""
        return self._state.shared

    def _text(self, file: Raw) -> Outcome[SourceText | None]:
        return self._memory.answer(("text", file.path), file.data, lambda: text_of(file.path, file.data))

    def _changed(self) -> None:
        gone = {file.path for file in self.files}
        self._state = _State((self._disk | self._unsaved).values())
        gone -= {file.path for file in self.files}
        self._read.clear()
        if gone:
            self._memory.forget(lambda slot: isinstance(slot, tuple) and slot[1] in gone)


class _State:
    """The files at one moment."""

    def __init__(self, files: Iterable[Raw]) -> None:
        self.files = tuple(sorted(files, key=lambda file: file.path))

    @cached_property
    def shared(self) -> tuple[tuple[str, Block], ...]:
        claims = Counter(name for file in self.files for name in file.claims)
        claimed_twice = {name for name, number in claims.items() if number > 1}
        apart = second_kitchens(self.files)
        return tuple(
            (file.path, block)
            for file in self.files
            if not file.words <= _LENT_BY_NONE or not claimed_twice.isdisjoint(file.claims)
            for block in file.blocks
            if (block.word not in _LENT_BY_NONE and (file.path, block.line) not in apart)
            or any(fold(one.name) in claimed_twice for one in block.with_variants())
        )

    @cached_property
    def names(self) -> frozenset[str]:
        return frozenset(name for name, _ in names_of_formulas(self.files))

    @cached_property
    def lent(self) -> frozenset[str]:
        """The files that others need: those with such a block."""
        return frozenset(path for path, _ in self.shared)


_LENT_BY_NONE = frozenset({"formula", "variant", *PLANNED, DISH})
"""Blocks that no other draws on."""


def _same(file: Raw, before: Raw | None) -> Raw:
    """The file as it was, where it is the same: then its headings are known."""
    return before if before is not None and before.data == file.data else file
