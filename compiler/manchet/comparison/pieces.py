"""Which sort of piece of the one bread is which of the other."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Protocol, TypeVar

from manchet.formula.nouns import same_noun


class HasNoun(Protocol):
    @property
    def noun(self) -> str: ...


P = TypeVar("P", bound=HasNoun)


def of_noun(noun: str, among: Sequence[P]) -> P | None:
    """The one of that noun: `roll` and `rolls` are one."""
    return next((one for one in among if same_noun(one.noun, noun)), None)


def paired_pieces(before: Sequence[P], after: Sequence[P]) -> Iterator[tuple[P | None, P | None]]:
    """Those of one noun; where each side makes one thing, these, whatever they are called. Those of the newer side in its order, then
    what is gone."""
    if len(before) == len(after) == 1:
        yield before[0], after[0]
        return
    left = list(before)
    for new in after:
        old = of_noun(new.noun, left)
        if old is not None:
            left.remove(old)
        yield old, new
    yield from ((old, None) for old in left)
