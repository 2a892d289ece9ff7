"""The built-in entries, each made from its literals when it is first asked for.

Reading `builtin.bake` at every start would take longer than checking a formula, so `python -m manchet.larder.compile`
writes it down once as `builtin.py`.
"""

from __future__ import annotations

from fractions import Fraction
from functools import cache
from typing import Any

from manchet.larder.ingredient import Blend, Ingredient, Question

Literal = tuple[Any, ...]
"""An entry as `builtin.py` has it: strings, tuples, True, False and None only."""


def built_in(key: str) -> Ingredient | Question | None:
    """The built-in entry under a key of `names.key`."""
    from manchet.larder.builtin import BY_KEY

    number = BY_KEY.get(key)
    return None if number is None else _entry(number)


def printed_names() -> tuple[str, ...]:
    """Every built-in name and alias as printed."""
    from manchet.larder.builtin import ENTRIES

    return tuple(name for entry in ENTRIES for name in (entry[0], *(entry[2] if len(entry) > 3 else ())))


def built_in_entries() -> tuple[Ingredient | Question, ...]:
    """All built-in entries, in the order of the file."""
    from manchet.larder.builtin import ENTRIES

    return tuple(_entry(number) for number in range(len(ENTRIES)))


@cache
def _entry(number: int) -> Ingredient | Question:
    from manchet.larder.builtin import ENTRIES

    return entry_of(ENTRIES[number])


def literal_of(entry: Ingredient | Question) -> Literal:
    """An entry as literals. Questions have three, ingredients more; prices and places are of a house, not built in."""
    if isinstance(entry, Question):
        return (entry.name, entry.choices, entry.why)
    return (
        entry.name,
        entry.class_,
        entry.aliases,
        tuple((name, str(grams)) for name, grams in entry.composition.items()),
        tuple((part.name, str(part.share)) for part in entry.made_of),
        entry.flour,
        entry.gives_water,
        entry.allergens,
        entry.may_contain,
        _text(entry.density),
        _text(entry.whole),
        entry.source,
    )


def entry_of(literal: Literal) -> Ingredient | Question:
    """The entry of such literals."""
    if len(literal) == 3:
        return Question(*literal)
    name, class_, aliases, composition, made_of, flour, gives_water, allergens, may_contain, density, whole, source = (
        literal
    )
    return Ingredient(
        name=name,
        class_=class_,
        aliases=aliases,
        composition={figure: Fraction(grams) for figure, grams in composition},
        made_of=tuple(Blend(part, Fraction(share)) for part, share in made_of),
        flour=flour,
        gives_water=gives_water,
        allergens=allergens,
        may_contain=may_contain,
        density=_fraction(density),
        whole=_fraction(whole),
        source=source,
    )


def _text(number: Fraction | None) -> str | None:
    return None if number is None else str(number)


def _fraction(text: str | None) -> Fraction | None:
    return None if text is None else Fraction(text)
