"""Which ingredients the name of a food names, so that its list has to say how much of each there is: an ingredient, or a category of them.

Regulation (EU) 1169/2011, article 22(1)(a): where the ingredient or category of ingredients appears in the name of the food. A wheat bread is
named for all its flours of wheat, a fruit loaf for all its fruit, a roll with coarse salt for that salt alone.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from typing import Protocol

from manchet.larder.names import key

_SORTS = frozenset(
    key(word)
    for word in ("flour", "seed", "dried", "fresh", "ground", "syrup", "powder", "flakes", "kernels", "chopped")
)
"""Words of an ingredient's name that say its form: a rye bread is named for its rye flour."""
_GRADES = frozenset(
    key(word)
    for word in (
        "wholemeal", "whole", "wholegrain", "white", "strong", "plain", "soft", "brown", "light", "medium", "dark", "coarse", "fine",
        "flaky", "rolled", "roasted", "toasted", "salted", "unsalted", "smoked", "skimmed", "semi", "organic", "tinned", "canned", "cooked", "frozen", "raw", "minced",
    )
)  # fmt: skip
"""Words that tell one of a kind from another of it: `oats` names rolled oats too, `coarse salt` no other salt."""
_WHOLE = {
    key("wholemeal"): frozenset({"wholemeal", "whole", "wholegrain"}),
    key("wholegrain"): frozenset({"wholemeal", "whole", "wholegrain"}),
}
"""Grades that name an ingredient by themselves: a bread with wholemeal."""
_CATEGORIES = {
    "fruit": "fruit", "fruited": "fruit", "nut": "nut", "nutty": "nut", "seed": "seed", "seeded": "seed", "multiseed": "seed",
    "vegetable": "vegetable", "fish": "fish", "meat": "meat",
}  # fmt: skip
"""Words that name all the ingredients of a class."""
_CHEESES = frozenset(
    key(name)
    for name in (
        "cheese", "cheddar", "gruyere", "parmesan", "feta", "mozzarella", "ricotta", "gouda", "edam", "emmental", "pecorino", "quark",
        "mascarpone", "comte", "manchego", "halloumi",
    )
)  # fmt: skip


class NamedLine(Protocol):
    """A line of a list of ingredients, with the classes of what it stands for."""

    @property
    def name(self) -> str: ...
    @property
    def classes(self) -> frozenset[str]: ...


def named_lines(lines: Iterable[NamedLine], called: str) -> set[str]:
    """The names of the lines that a name of a food names."""
    said = [key(word) for word in re.findall(r"\w+", called)]
    there = tuple(lines)
    known = {word for line in there for word in _words(line)}
    # A grade that no ingredient has tells nothing apart: `salted butter`, of a butter that does not say.
    said = [word for word in said if word not in _GRADES or word in known or word in _WHOLE]
    return {line.name for line in there if _is_named(line, said)}


def _words(line: NamedLine) -> list[str]:
    return [key(word) for word in re.findall(r"\w+", re.sub(r"\(.*\)", "", line.name))]


def _is_named(line: NamedLine, said: list[str]) -> bool:
    own = _words(line)
    grades = {word for word in own if word in _GRADES}
    telling = [word for word in own if word not in _SORTS and word not in _GRADES]
    if telling and all(_is_said(word, grades, said) for word in telling):
        return True
    if any(grades & _WHOLE[word] for word in said if word in _WHOLE):
        return True
    if any(
        _CATEGORIES.get(word) in line.classes and not _is_tied(n, said)
        for n, word in enumerate(said)
        if word in _CATEGORIES
    ):
        return True
    return key("cheese") in said and any(word in _CHEESES for word in own)


def _is_said(word: str, grades: set[str], said: list[str]) -> bool:
    """It is there, with no grade before it that is another's."""
    return any(
        one == word and (n == 0 or said[n - 1] not in _GRADES or said[n - 1] in grades) for n, one in enumerate(said)
    )


def _is_tied(n: int, said: list[str]) -> bool:
    """`sunflower seeds` names no other seeds: the word before a category tells which of it."""
    return n > 0 and said[n - 1] not in _LINKS


_LINKS = frozenset(
    key(word)
    for word in (
        "and",
        "with",
        "of",
        "in",
        "on",
        "mixed",
        "a",
        "the",
        "rich",
        "dried",
        "candied",
        "our",
        "more",
        "roasted",
    )
)
