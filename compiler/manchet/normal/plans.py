"""The normal form of a line that tells of a day: what it is about, and in its column what is said of it.

Counts of pieces stand with their ones below one another; what follows them stands behind a comma.
"""

from __future__ import annotations

from manchet.normal.columns import Column, in_column
from manchet.normal.wording import SpeltToken, join_words

ABOUT = {
    "want": ("NAME", "_COMMA NAME"),
    "want_line": ("_FOR NAME", "SPARE"),
    "departs": ("VAN", "NAME"),
    "already": ("_ALREADY_MADE",),
    "shift": ("_HANDS", "NAME", "NUMBER"),
    "of_a_thing": ("THING", "NAME"),
    "appointment": ("VERB", "NAME"),
}
"""By the rule of a line: the tokens that say what it is about, one after another."""

_PARTS = frozenset({"NUMBER", "MASS", "_FOR", "SPARE", "ENDING", "TIME"})
"""What begins a part of what is wanted."""


def plan_line(rule: str, words: list[SpeltToken], column: Column | None) -> str:
    """The line of its words."""
    size = _size_of_what_it_is_about(rule, words)
    about, rest = join_words(words[:size]), words[size:]
    if rule in ("want", "want_line"):
        rest = _parted(rest, size)
    elif rule in ("shift", "of_a_thing"):
        rest = _with_comma_before(rest, "_BREAK" if rule == "shift" else "_LIT")
    said = join_words(rest)
    if not about or not said or rest[0].kind == "_COMMA":
        return about + said
    by_ones = rule in ("want", "want_line") and rest[0].kind in ("NUMBER", "MASS")
    place = None if column is None else column._replace(by_ones=by_ones, at=column.at + by_ones)
    return in_column(about, said, place)


def _size_of_what_it_is_about(rule: str, words: list[SpeltToken]) -> int:
    kinds = [word.kind for word in words]
    size = 0
    for phrase in ABOUT[rule]:
        wanted = phrase.split()
        size += len(wanted) if kinds[size : size + len(wanted)] == wanted else 0
    return size


def _parted(words: list[SpeltToken], follows: int) -> list[SpeltToken]:
    """The parts of what is wanted with a comma before each, but before a count that belongs to what stands before it."""
    line: list[SpeltToken] = []
    for word in words:
        if word.kind == "_COMMA":
            continue
        kinds = [one.kind for one in line[-2:]]
        is_count = word.kind in ("NUMBER", "MASS")
        belongs = is_count and (not line or kinds[-1:] == ["SPARE"] or kinds == ["_FOR", "NAME"])
        if word.kind in _PARTS and not belongs and (line or follows):
            line.append(SpeltToken("_COMMA", ","))
        line.append(word)
    return line


def _with_comma_before(words: list[SpeltToken], kind: str) -> list[SpeltToken]:
    line: list[SpeltToken] = []
    for word in words:
        if word.kind == kind and line and line[-1].kind != "_COMMA":
            line.append(SpeltToken("_COMMA", ","))
        if word.kind != "_COMMA":
            line.append(word)
    return line
