"""The words of the language as they are written in the normal form: one spelling of each, in the English of the house.

Names and words for people stay as they are.
"""

from __future__ import annotations

from manchet.normal.figures import in_short
from manchet.records import NamedTuple
from manchet.source.text import QUOTES
from manchet.syntax import openings
from manchet.syntax.line import LineTokens
from manchet.syntax.nodes import Amount, Word
from manchet.syntax.openings import OpeningLine, RestOfLine

_AS_WRITTEN = frozenset({"PREPOSITION", "WORK", "_ADDITIONS"})
"""Read as the same, and yet not the same word: `into` and `in`, `fold` and `folds`."""

_IN_AMERICA = {"tins with": "pans with", "trays with": "sheet pans with"}

_CAPITALS = {"to ph": "to pH", "ph": "pH"}


class SpeltToken(NamedTuple):
    """One token of a line: its terminal in the grammar, and its text."""

    kind: str
    text: str


def words_of(body: str, read: LineTokens, american: bool) -> list[SpeltToken]:
    """Every token of a line with its text, in order. One that shares its letters with the one before (`2 turns` is a number
    and a word) has none."""
    found: list[SpeltToken] = []
    end = 0
    for at, (kind, value) in enumerate(zip(read.tokens.types, read.tokens.values, strict=True)):
        if value is None or value.start < end:
            text = ""
        elif at == 0 and read.opening is not None:
            text = _opening(read.opening, american)
        else:
            text = _text(kind, value, body[value.start : value.end], american)
        end = value.end if value is not None else end
        found.append(SpeltToken(kind, text))
    return found


def join_words(words: list[SpeltToken]) -> str:
    """The words with a space between them, a comma close to the word before it."""
    line = ""
    for word in words:
        if word.text:
            line += word.text if not line or word.kind == "_COMMA" else f" {word.text}"
    return line


def _opening(line: OpeningLine, american: bool) -> str:
    if american and line.american:
        return line.american
    # `brush with` and `roll in` tell a step from an ingredient; their last word opens a clause
    words = line.words.rpartition(" ")[0] if line.reading is openings.STEP and line.kept else line.words
    return _CAPITALS.get(words, words)


def _text(kind: str, value: Word | Amount, written: str, american: bool) -> str:
    if isinstance(value, Amount):
        return in_short(written)
    if kind in ("NAME", "QUOTED"):
        return _straight(written) if written[:1] in QUOTES else " ".join(written.split())
    if kind in ("DAY", "CLOCK"):
        return value.text
    as_written = " ".join(written.split()).lower()
    if kind in _AS_WRITTEN:
        return as_written
    first = _FIRST.get((kind, "" if kind[0] == "_" else value.text), as_written)
    if american:
        first = _IN_AMERICA.get(first, first)
    return _CAPITALS.get(first, first)


def _straight(quoted: str) -> str:
    """Words in quotes with straight marks around them, unless such a mark stands in them."""
    inner = quoted[1:-1]
    return quoted if '"' in inner else f'"{inner}"'


def _first_spellings() -> dict[tuple[str, str], str]:
    """Of each phrase that is written in several ways the one that the tables of phrases name first. A terminal that carries
    nothing but itself is one phrase."""
    found: dict[tuple[str, str], str] = {}
    named = [value for value in vars(openings).values() if isinstance(value, RestOfLine)]
    for reading in (*named, *(line.reading for line in openings.lines())):
        for first, group in reading.phrases.items():
            for phrase in group:
                key = phrase.token, "" if phrase.token[0] == "_" else phrase.canonical
                found.setdefault(key, " ".join((first, *phrase.rest)))
    return found


_FIRST = _first_spellings()
