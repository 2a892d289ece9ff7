"""What has to be typed to make one text of another: as little as may be, so that a cursor stays where it is."""

from __future__ import annotations

from collections.abc import Iterator
from difflib import SequenceMatcher
from itertools import pairwise

from manchet.diagnostics.diagnostic import Edit, Place
from manchet.source.text import END_OF_LINE


def edits_between(path: str, before: str, after: str) -> tuple[Edit, ...]:
    """The edits that make the lines of `after` of those of `before`, whatever each ends its lines in."""
    old, new = END_OF_LINE.split(before), END_OF_LINE.split(after)
    edits = tuple(_edits(path, old, new))
    if any(_begins(one) == _begins(other) for one, other in pairwise(edits)):  # around an empty line: in which order?
        whole = Place(path, 1, 1, len(old), len(old[-1]) + 1, old[0])
        return (Edit(whole, "\n".join(new)),)
    return edits


def _begins(edit: Edit) -> tuple[int, int]:
    return edit.place.line, edit.place.column


def _edits(path: str, old: list[str], new: list[str]) -> Iterator[Edit]:
    for what, start, end, begins, ends in SequenceMatcher(None, old, new, autojunk=False).get_opcodes():
        if what == "equal":
            continue
        if what == "replace" and end - start == ends - begins:
            for at, text in enumerate(new[begins:ends], start):
                if old[at] != text:
                    yield _within(path, at + 1, old[at], text)
        elif end < len(old):
            text = "".join(f"{line}\n" for line in new[begins:ends])
            yield Edit(Place(path, start + 1, 1, end + 1, 1, old[start]), text)
        elif start:  # at the end of the text: the end of the line before goes or comes with it
            column = len(old[start - 1]) + 1
            text = "".join(f"\n{line}" for line in new[begins:ends])
            yield Edit(Place(path, start, column, len(old), len(old[-1]) + 1, old[start - 1]), text)
        else:
            yield Edit(Place(path, 1, 1, len(old), len(old[-1]) + 1, old[0]), "\n".join(new[begins:ends]))


def _within(path: str, line: int, old: str, new: str) -> Edit:
    """What differs of a line, without what is the same before it and behind it."""
    most = min(len(old), len(new))
    start = next((n for n in range(most) if old[n] != new[n]), most)
    same = next((n for n in range(most - start) if old[-1 - n] != new[-1 - n]), most - start)
    return Edit(Place(path, line, start + 1, line, len(old) - same + 1, old), new[start : len(new) - same])
