"""A rewriter: of what is written somewhere in a line, what it is in the normal form."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable

from manchet.syntax.loose.words import COUNTED

Rewriter = Callable[[str], str]

NUMBER = r"(?:[0-9]+(?:\.[0-9]+)?(?: ?[½⅓⅔¼¾⅛⅜⅝⅞]| [0-9]/[0-9])?|[0-9]/[0-9]|[½⅓⅔¼¾⅛⅜⅝⅞])"
_SHORT = {
    "<n>": NUMBER,
    "<time>": "(?:d|h|min|s)",
    "<span>": "(?:d|h|min|s|mm|cm)",
    "<sized>": "(?:d|h|min|s|C|F|mm|cm)",
    "<end>": r"(?![\w%°/])",
    "<counted>": f"(?:{'|'.join(COUNTED)})",
}
"""What the patterns of the rules have in common: a number, a unit, the end of a figure."""


def rule(written: str, normal: str | Callable[[re.Match[str]], str]) -> Rewriter:
    """`normal` in place of every stretch of a line that is so `written`, in capitals or not."""
    for short, long in _SHORT.items():
        written = written.replace(short, long)
    pattern = re.compile(written, re.IGNORECASE)
    return lambda text: pattern.sub(normal, text)


def any_of(words: Iterable[str]) -> str:
    """A pattern for one of the words, the longest first."""
    return "|".join(sorted(map(re.escape, words), key=len, reverse=True))
