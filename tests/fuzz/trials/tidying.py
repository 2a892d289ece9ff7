from __future__ import annotations

import random

from fuzz.disturbed import disturbed
from fuzz.read import PATH, bytes_of
from fuzz.trials.writing_otherwise import same_figures

from manchet.normal.text import normal_text
from manchet.source.files import text_of
from manchet.source.text import SourceText
from manchet.syntax.nodes import Entry, Unread
from manchet.syntax.parser import parse
from manchet.syntax.sameness import is_same_tree

SOME = 0.05
"""Of so many texts the figures are compared too."""


def tidying(text: str, rng: random.Random) -> None:
    """A text in its normal form says the same with the same remarks, is in normal form, and what could not be read in it stays."""
    source = text_of(PATH, bytes_of(disturbed(text, rng) if rng.random() < 0.5 else text)).value
    if source is None:
        return
    words = rng.choice(("", "American"))
    tidy = SourceText(PATH, normal_text(source, words))
    before, after = parse(source).value, parse(tidy).value
    assert normal_text(tidy, words) == tidy.text, f"tidied twice\n{tidy.text}"
    assert is_same_tree(before, after), f"another tree\n{tidy.text}"
    assert [line.comment.rstrip() for line in before.lines if line.comment] == [
        line.comment.rstrip() for line in after.lines if line.comment
    ], f"another remark\n{tidy.text}"
    assert _unread(before.entries) == _unread(after.entries), f"what was not read is otherwise\n{tidy.text}"
    assert tidy.text == "" or tidy.text.endswith("\n"), "no end of line"
    if rng.random() < SOME:
        same_figures(source.text, lambda *_: tidy.text, rng)


def _unread(entries: tuple[Entry, ...]) -> list[str]:
    """The lines that could not be read, but for what a safe fix may change in them."""
    found: list[str] = []
    for entry in entries:
        if isinstance(entry.node, Unread):
            found.append(entry.line.body)
        found += _unread(entry.children)
    return found
