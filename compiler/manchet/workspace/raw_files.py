"""The files of a bakery as bytes: enough to know what changed and what is where, before anything is parsed."""

from __future__ import annotations

import os
from functools import cached_property

from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.suggest import fold
from manchet.source.files import bytes_of, rough_text_of
from manchet.syntax.block import FORMULAS, Block
from manchet.syntax.headings import blocks
from manchet.workspace.folder import Premises, listing


class Raw:
    """One file: its path as shown, its bytes, and its blocks (found when first asked for)."""

    def __init__(self, path: str, data: bytes) -> None:
        self.path = path
        self.data = data

    @cached_property
    def blocks(self) -> tuple[Block, ...]:
        try:
            return blocks(rough_text_of(self.data))
        except Exception:  # a fault of our own, which is reported when the file is read
            return ()

    @cached_property
    def words(self) -> frozenset[str]:
        """The words that open its blocks."""
        return frozenset(block.word for block in self.blocks)

    @cached_property
    def names(self) -> tuple[str, ...]:
        """Of its formulas, variants, preparations and dishes."""
        return tuple(
            block.name for top in self.blocks if top.word in FORMULAS and top.name for block in top.with_variants()
        )

    @cached_property
    def claims(self) -> tuple[str, ...]:
        """What it calls by a name that no second may have, folded: these, and what may be meant as one of them."""
        claiming = (top for top in self.blocks if top.word in FORMULAS or (top.name and not top.word))
        return tuple(fold(block.name) for top in claiming for block in top.with_variants())


def raw_files(premises: Premises, prefix: str) -> Outcome[tuple[Raw, ...]]:
    """Every `.bake` file of a bakery that can be read, and a report for each that cannot."""
    found = listing(premises)
    files: list[Raw] = []
    reports = [one._replace(place=one.place._replace(path=prefix + one.place.path)) for one in found.diagnostics]
    for path in found.paths:
        read = bytes_of(os.path.join(premises.root, path), prefix + path)
        reports += read.diagnostics
        if read.value is not None:
            files.append(Raw(prefix + path, read.value))
    return Outcome(tuple(files), tuple(reports))
