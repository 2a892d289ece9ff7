"""Other ways to write the very same bread: ingredients of a stage in another order, remarks, blank lines."""

from __future__ import annotations

import random
from collections.abc import Sequence

from manchet.source.text import SourceText
from manchet.syntax.nodes import Entry, MaterialNode
from manchet.syntax.parser import parse


def with_remarks(text: str, rng: random.Random) -> str:
    """Remarks behind lines and between them, and blank lines. Not behind a quote that may run on, nor in a note."""
    rows = ["# ours", ""]
    for row in text.split("\n"):
        plain = row.strip() and '"' not in row and "#" not in row and "“" not in row
        rows.append(row + (" # a remark" if plain and rng.random() < 0.3 else ""))
        rows += rng.choice(([], [], [], [""], ["# a remark between"]))
    return "\n".join(rows)


def permuted(text: str, rng: random.Random) -> str:
    """Ingredients that stand one under the other, in another order: each with what stands under it."""
    rows = text.split("\n")
    entries = parse(SourceText("x", text)).value.entries
    _permute(entries, rows, len(rows), rng)
    return "\n".join(rows)


def _permute(entries: Sequence[Entry], rows: list[str], end: int, rng: random.Random) -> None:
    if not entries:
        return
    ends = [*(entry.line.number - 1 for entry in entries[1:]), end]
    run: list[range] = []
    for entry, stop in zip(entries, ends, strict=True):
        lines = range(entry.line.number - 1, stop)
        if isinstance(entry.node, MaterialNode):
            run.append(lines)
            continue
        _shuffle(run, rows, rng)
        run = []
        _permute(entry.children, rows, stop, rng)
    _shuffle(run, rows, rng)


def _shuffle(run: list[range], rows: list[str], rng: random.Random) -> None:
    if len(run) > 1:
        parts = [[rows[at] for at in lines] for lines in run]
        rng.shuffle(parts)
        rows[run[0].start : run[-1].stop] = [row for part in parts for row in part]
