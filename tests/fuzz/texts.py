"""Texts of bakeries: put together from lines that may stand where they stand, spliced of two sound ones, sound ones with other
figures in another kitchen, and any of these spoilt by slips.

A line is put under a heading of the sort it was found under in the demo and the corpus, so that most of what comes out can be
read, and much of it nobody would have thought of. Kitchens and larders are headings like formulas.
"""

from __future__ import annotations

import random
import re
from collections.abc import Iterator, Mapping
from fractions import Fraction
from functools import cache
from pathlib import Path

from manchet.source.text import SourceText
from manchet.syntax.nodes import Entry
from manchet.syntax.parser import parse

TESTS = Path(__file__).parent.parent
SPICE = ['"', "“", "”", "#", ",", "\t", "  ", "\n", "\r", "-", "–", "½", "0", "9" * 50, "1/0", "%", "é", "\u202e", "\u200b", "𝟙", "\x00",
         " with ", " of ", " to ", " at ", " C", " g", "formula ", "\n    ", "each", "٣", "а", "\u00a0", "１"]  # fmt: skip


def any_text(rng: random.Random) -> str:
    text = rng.choice((put_together, spliced, spliced, refigured, refigured, refigured))(rng)
    return with_slips(text, rng) if rng.random() < 0.1 else text


@cache
def sound_texts() -> tuple[str, ...]:
    """The files of the demo and of the quiet corpus."""
    paths = [*TESTS.parent.glob("recipes/**/*.bake"), *TESTS.glob("corpus/quiet/**/*.bake")]
    return tuple(path.read_text(encoding="utf-8") for path in sorted(paths))


def put_together(rng: random.Random) -> str:
    """A bakery of one to four blocks, line by line."""

    def block(body: str, over: tuple[str, ...], above: tuple[str, ...]) -> Iterator[str]:
        lines_so_far = (*above, "  " * len(above) + body)
        yield lines_so_far[-1]
        here = (*over[-1:], sort_of(last_entry("\n".join(lines_so_far))))
        known = lines_found().get(here, []) if len(above) < 4 else []
        chosen = rng.sample(range(len(known)), k=min(len(known), rng.choice((0, 1, 3, 6))))
        for child in sorted(chosen):  # in the order in which they were found, so that heads stand before doughs
            yield from block(known[child], here, lines_so_far)

    text: list[str] = []
    for _ in range(rng.randint(1, 4)):
        text += [*block(rng.choice(lines_found()[()]), (), ()), ""]
    return "\n".join(text) + "\n"


@cache
def lines_found() -> Mapping[tuple[str, ...], list[str]]:
    """Every line of the sound texts, by the sorts of the headings over it."""
    found: dict[tuple[str, ...], list[str]] = {}

    def gather(entries: tuple[Entry, ...], over: tuple[str, ...]) -> None:
        for entry in entries:
            found.setdefault(over, []).append(entry.line.body)
            gather(entry.children, (*over[-1:], sort_of(entry)))

    for text in sound_texts():
        gather(parse(SourceText("x", text)).value.entries, ())
    return found


def sort_of(entry: Entry) -> str:
    """What a line is, as far as it matters to what may stand under it: the name of its node, and the word of a block."""
    return f"{type(entry.node).__name__} {getattr(entry.node, 'word', '')}".strip()


def last_entry(text: str) -> Entry:
    found = parse(SourceText("x", text)).value.entries[-1]
    while found.children:
        found = found.children[-1]
    return found


def spliced(rng: random.Random) -> str:
    """A sound text in which some lines were exchanged for lines of another that stand as deep."""
    rows = rng.choice(sound_texts()).split("\n")
    for _ in range(rng.randint(1, 4)):
        other = rng.choice(sound_texts()).split("\n")
        at = rng.randrange(len(rows))
        deep = len(rows[at]) - len(rows[at].lstrip())
        fitting = [row for row in other if row.strip() and len(row) - len(row.lstrip()) == deep]
        if fitting:
            put = rng.sample(fitting, k=min(len(fitting), rng.choice((0, 1, 2))))
            rows[at : at + rng.choice((0, 1, 1, 1, 2))] = put
    return "\n".join(rows)


FIGURE = re.compile(r"(?<![\w.])\d+(\.\d+)?(?= ?(?:%|g|kg|min|h|C|loaves|rolls)\b|%)")


def refigured(rng: random.Random) -> str:
    """A sound text with a few other figures, but for its flours, and perhaps in another's kitchen. Most of these are sound."""
    rows = rng.choice(sound_texts()).split("\n")
    for _ in range(rng.choice((0, 1, 2, 4))):
        at = rng.randrange(len(rows))
        if not re.search(r"flour|wheat|rye|spelt|semolina", rows[at]):
            rows[at] = FIGURE.sub(lambda found: _other(found[0], rng), rows[at], count=1)
    text = "\n".join(rows)
    return text if re.search(r"(?m)^kitchen", text) or rng.random() < 0.4 else f"{text}\n{rng.choice(kitchens())}"


def _other(figure: str, rng: random.Random) -> str:
    value = Fraction(figure) * rng.choice(
        (Fraction(1, 10), Fraction(1, 2), Fraction(9, 10), Fraction(11, 10), 2, 3, 10)
    )
    return f"{float(value):.2f}".rstrip("0").rstrip(".") if "." in figure or value < 1 else str(round(value))


@cache
def kitchens() -> tuple[str, ...]:
    blocks = (block for text in sound_texts() for block in re.split(r"(?m)^(?=\w)", text))
    return tuple(block for block in blocks if block.startswith("kitchen"))


def with_slips(text: str, rng: random.Random) -> str:
    for _ in range(rng.randint(1, 12)):
        at = rng.randrange(len(text) + 1)
        to = min(len(text), at + rng.choice((0, 0, 1, 3, 40)))
        how = rng.random()
        put = rng.choice(SPICE) if how < 0.7 else text[to : to + 30] if how < 0.85 else ""
        text = text[:at] + put + text[to:]
    return text
