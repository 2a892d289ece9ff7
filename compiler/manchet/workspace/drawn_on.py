"""What a file may draw on, told by its text: entries of larders, shared stages and preparations that it names, and its kitchen.

A mistake elsewhere is told to who draws on it. By the text, since a thing that cannot be read is in no tree; a name that
only stands in a remark counts too, which says too much and never too little.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping
from itertools import pairwise

from manchet.diagnostics.diagnostic import Place
from manchet.larder.names import key
from manchet.records import NamedTuple
from manchet.source.files import rough_text_of
from manchet.syntax.block import FORMULAS, Block
from manchet.workspace.raw_files import Raw


class _Lent(NamedTuple):
    """Something to draw on: where it stands, by what names it is drawn on, and its text. A kitchen has no name here."""

    path: str
    lines: range
    names: tuple[str, ...]
    text: str


class DrawnOn(NamedTuple):
    """The lines of a bakery that some of its files may draw on."""

    lines: Mapping[str, tuple[range, ...]]

    def has(self, place: Place) -> bool:
        return any(place.line in lines for lines in self.lines.get(place.path, ()))


def drawn_on(paths: Iterable[str], files: Mapping[str, Raw], kitchen: str = "") -> DrawnOn:
    """What the files at `paths` may draw on, and what that draws on in its turn. `kitchen`: the one asked for by name."""
    asked = tuple(paths)
    waiting = list(_lent(files.values()))
    found = [lent for lent in waiting if _is_kitchen_of(lent, asked, waiting, kitchen)]
    waiting = [lent for lent in waiting if lent.names]
    text = "\n".join(key(_flat(rough_text_of(files[path].data))) for path in asked)
    while named := [lent for lent in waiting if any(_stands_in(name, text) for name in lent.names)]:
        found += named
        waiting = [lent for lent in waiting if lent not in named]
        text = "\n".join(key(_flat(lent.text)) for lent in named)
    lines: dict[str, tuple[range, ...]] = {}
    for lent in found:
        lines[lent.path] = (*lines.get(lent.path, ()), lent.lines)
    return DrawnOn(lines)


def _stands_in(name: str, text: str) -> bool:
    return bool(name) and re.search(rf"(?<!\w){re.escape(name)}(?!\w)", text) is not None


def _flat(text: str) -> str:
    return " ".join(re.sub(r"[^\w\s'’-]", " ", text).split())


def _lent(files: Iterable[Raw]) -> Iterator[_Lent]:
    for file in files:
        for block in file.blocks:
            if block.word == "kitchen":
                yield _Lent(file.path, range(block.line, block.end), (), block.name)
            elif block.word == "larder":
                yield from _entries(file.path, block)
            elif block.word not in FORMULAS or block.word == "preparation":
                heading = block.text.split("\n", 1)[0]
                name = block.name or heading.partition(" ")[2] or heading
                names = (key(name), key("orders")) if block.word == "order" else (key(name),)
                yield _Lent(file.path, range(block.line, block.end), names, block.text)


def _entries(path: str, block: Block) -> Iterator[_Lent]:
    """The entries of a larder; its heading, and what stands before the first of them, goes with each."""
    rows = block.text.split("\n")
    heads = [n for n, row in enumerate(rows) if n and re.match(r" {1,3}[^\s#]", row)]
    for head, end in pairwise([*heads, len(rows)]):
        lines = rows[head:end]
        also = [row.split("called", 1)[1].split(",") for row in lines if row.strip().startswith("also called")]
        names = (key(_flat(lines[0])), *(key(_flat(one)) for group in also for one in group))
        yield _Lent(path, range(block.line + head, block.line + end), names, "\n".join(lines))


def _is_kitchen_of(lent: _Lent, asked: Iterable[str], every: Iterable[_Lent], kitchen: str) -> bool:
    """Whether a kitchen may be that of one of the files: the one named, else any that no other stands nearer to."""
    if lent.names:
        return False
    if kitchen:
        return key(lent.text) == key(kitchen)
    kitchens = [one for one in every if not one.names]
    return any(_nearness(lent, path) == max(_nearness(one, path) for one in kitchens) for path in asked)


def _nearness(kitchen: _Lent, path: str) -> int:
    folder = kitchen.path.rpartition("/")[0] + "/" if "/" in kitchen.path else ""
    return len(folder) if path.startswith(folder) else -1
