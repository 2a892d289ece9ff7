"""Files in their normal form, in the English of the kitchen that is nearest to each; ends of lines are those of its first line."""

from __future__ import annotations

import os
from collections.abc import Iterable, Iterator

from manchet.diagnostics.outcome import Outcome
from manchet.normal.text import normal_text
from manchet.records import NamedTuple
from manchet.source.files import LARGEST, text_of, text_with_its_newlines
from manchet.source.text import END_OF_LINE
from manchet.syntax.nodes import BlockHead, Entry
from manchet.syntax.parser import parse
from manchet.workspace.folder import premises_of
from manchet.workspace.house import Kitchens, kitchens_of
from manchet.workspace.open_bakery import OpenBakery
from manchet.workspace.raw_files import Raw
from manchet.workspace.selection import Selection


class TidyFile(NamedTuple):
    """A file and its normal form. `place` is where it lies on the disk."""

    path: str
    place: str
    before: bytes
    after: bytes

    @property
    def was_tidy(self) -> bool:
        return self.before == self.after


def tidy_files(selection: Selection) -> Outcome[tuple[TidyFile, ...]]:
    """The normal form of the files that were asked for, and a report of each that is no text. Nothing is written."""
    kitchens = _kitchens(selection.files)
    found: list[TidyFile] = []
    reports = list(selection.diagnostics)
    for file in selection.files:
        if file.path in selection.paths:
            tidy = tidy_bytes(file.path, file.data, kitchens.nearest(file.path).words)
            reports += tidy.diagnostics
            if tidy.value is not None:
                place = os.path.join(selection.root, file.path.removeprefix(selection.prefix))
                found.append(TidyFile(file.path, place, file.data, tidy.value))
    return Outcome(tuple(found), tuple(reports))


def tidy_bytes(path: str, data: bytes, words: str) -> Outcome[bytes | None]:
    """The bytes of a text in its normal form, or a report that it is none. A byte-order mark stays."""
    read = text_of(path, data)
    if read.value is None:
        return Outcome(None, read.diagnostics)
    mark, written = text_with_its_newlines(data)
    end = END_OF_LINE.search(written)
    tidy = normal_text(read.value, words).replace("\n", end[0] if end else "\n")
    after = mark + tidy.encode("utf-8")
    return Outcome(after if len(after) <= LARGEST else data)


def words_here() -> str:
    """The English of a file that would lie in the folder the command runs in."""
    return words_at("-")


def words_at(path: str) -> str:
    """The English of a file that lies, or would lie, there."""
    place = os.path.realpath(path)
    premises = premises_of(place)
    inside = os.path.relpath(place, premises.root).replace(os.sep, "/")
    return _kitchens(OpenBakery(premises).files).nearest(inside).words


def _kitchens(files: Iterable[Raw]) -> Kitchens:
    return kitchens_of(tuple(_kitchen_entries(files))).value


def _kitchen_entries(files: Iterable[Raw]) -> Iterator[Entry]:
    for file in files:
        if any(block.word == "kitchen" for block in file.blocks):
            text = text_of(file.path, file.data).value
            for entry in parse(text).value.entries if text is not None else ():
                if isinstance(entry.node, BlockHead) and entry.node.word == "kitchen":
                    yield entry
