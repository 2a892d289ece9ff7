"""Mistakes that can be put into any text where their lines fit: the cases of all reports, taken apart into lines left out and
lines put in; and slips of the pen in any line."""

from __future__ import annotations

import random
import re
from collections.abc import Iterator, Sequence
from difflib import SequenceMatcher
from functools import cache

from manchet.diagnostics.catalogue import explain, names
from manchet.larder.book import builtin
from manchet.larder.ingredient import Ingredient
from manchet.records import NamedTuple


class Change(NamedTuple):
    """Lines of a text, from `start` to before `end`, exchanged for others."""

    start: int
    end: int
    rows: tuple[str, ...]

    def touches(self, other: Change) -> bool:
        return self.start <= other.end and other.start <= self.end


class Mistake(NamedTuple):
    """Changes in one text, from above to below, that make one mistake."""

    title: str
    changes: tuple[Change, ...]

    def touches(self, other: Mistake) -> bool:
        return any(one.touches(two) for one in self.changes for two in other.changes)

    def things(self, rows: Sequence[str]) -> set[str]:
        """The words in its lines, before and after, that name an ingredient by themselves."""
        lines = [row for change in self.changes for row in (*change.rows, *rows[change.start : change.end])]
        return {word for line in lines for word in line.split() if isinstance(builtin().find(word), Ingredient)}


class Slip(NamedTuple):
    """A mistake as a case shows it: what is left out, what is put in its place, and the line before it."""

    title: str
    hunks: tuple[tuple[str, tuple[str, ...], tuple[str, ...]], ...]


HIDING = frozenset({"merge-unfinished"})
"""What is said of a text alone until it is put right: it means to hide all else."""


@cache
def slips() -> tuple[Slip, ...]:
    """Those of the cases that are told by a few lines: most."""
    found = []
    for name in names():
        case = explain(name)
        if case is not None and case.mistake and case.put_right and name not in HIDING:
            right, wrong = case.put_right.split("\n"), case.mistake.split("\n")
            hunks = tuple(_hunks(right, wrong))
            if sum(len(out) + len(put) for _, out, put in hunks) <= 8:
                found.append(Slip(name, hunks))
    return tuple(found)


def _hunks(right: Sequence[str], wrong: Sequence[str]) -> Iterator[tuple[str, tuple[str, ...], tuple[str, ...]]]:
    for how, start, end, low, high in SequenceMatcher(None, right, wrong, autojunk=False).get_opcodes():
        if how != "equal":
            yield right[start - 1] if start else "", tuple(right[start:end]), tuple(wrong[low:high])


@cache
def fitting(rows: tuple[str, ...]) -> dict[str, Mistake]:
    """The mistakes of the cases that fit these rows, by their titles."""
    squeezed = [squeeze(row) for row in rows]
    return {slip.title: made for slip in slips() if (made := _fitted(slip, squeezed)) is not None}


def _fitted(slip: Slip, squeezed: Sequence[str]) -> Mistake | None:
    """The mistake in these rows; None where its lines are not there, or not once."""
    changes = []
    for before, out, put in slip.hunks:
        lines = [squeeze(row) for row in out or (before,)]
        found = [at for at, row in enumerate(squeezed) if row == lines[0] and squeezed[at : at + len(lines)] == lines]
        if len(found) != 1 or not lines[0]:
            return None
        start = found[0] if out else found[0] + 1
        changes.append(Change(start, start + len(out), put))
    return Mistake(slip.title, tuple(changes))


@cache
def squeeze(row: str) -> str:
    """The row with its figures no longer in columns."""
    body = row.lstrip(" ")
    return row[: len(row) - len(body)] + " ".join(body.split())


def of_the_pen(rows: Sequence[str], rng: random.Random) -> Mistake | None:
    """A slip in one line."""
    at = rng.randrange(len(rows))
    how = rng.choice(PEN)
    row = how(rows[at], rng)
    return None if row == rows[at] else Mistake(f"{how.__name__.strip('_')} {at + 1}", (Change(at, at + 1, (row,)),))


def _letter(row: str, rng: random.Random) -> str:
    """A letter twice in one of its words."""
    at = [one.start() for one in re.finditer(r"(?<=[a-z])[a-z](?=[a-z])", row)]
    if not at or '"' in row:
        return row
    here = rng.choice(at)
    return row[:here] + row[here] + row[here:]


def _first_word(row: str, rng: random.Random) -> str:
    return re.sub(r"^( *)(\w)(\w+)", r"\1\2\3x", row, count=1)


def _comma(row: str, rng: random.Random) -> str:
    return re.sub(r"(\d)\.(\d)", r"\1,\2", row, count=1) if '"' not in row else row


def _no_unit(row: str, rng: random.Random) -> str:
    return re.sub(r"(\d) ?(%|g|kg|min|h|C)(?=[ ,]|$)", r"\1", row, count=1) if '"' not in row else row


def _more(row: str, rng: random.Random) -> str:
    return row + rng.choice((" and so on", " 12", " with", " of the", ' "x', ", about 5%")) if row.strip() else row


def _less(row: str, rng: random.Random) -> str:
    return row.rpartition(" ")[0] if row.strip().count(" ") else row


def _figure(row: str, rng: random.Random) -> str:
    return re.sub(r"\d+(\.\d+)?", lambda one: rng.choice(("0", "1e3", "-5", "1/0", "7" * 30)), row, count=1)


PEN = (_letter, _first_word, _comma, _no_unit, _more, _less, _figure)


MOST_PUT_IN = 1000


def put_in_at(origin: int) -> int:
    """Before which line a new line was put in."""
    return -origin // MOST_PUT_IN - 1


def carried_out(rows: Sequence[str], mistakes: Sequence[Mistake]) -> tuple[str, list[int]]:
    """The text with these mistakes, and of each line which it was before; a line that is new goes by its change and its place in it."""
    changes = sorted(change for one in mistakes for change in one.changes)
    lines: list[str] = []
    origins: list[int] = []
    at = 0
    for change in changes:
        lines += rows[at : change.start]
        origins += range(at, change.start)
        lines += change.rows
        was = range(change.start, change.end) if len(change.rows) == change.end - change.start else ()
        origins += was or [-MOST_PUT_IN * (change.start + 1) - k for k in range(len(change.rows))]
        at = change.end
    lines += rows[at:]
    origins += range(at, len(rows))
    return "\n".join(lines), origins
