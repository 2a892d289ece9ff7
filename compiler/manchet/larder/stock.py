"""The built-in entries, each made when it is first asked for.

Reading `builtin.bake` at every start would take longer than checking a formula, so `python -m manchet.generate`
writes it down once as `builtin.py`: an entry a line, its fields between tabs. Two long texts rather than tables of
Python, because those take ten times as long to load where no bytecode is kept.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from fractions import Fraction
from functools import cache
from typing import Any

from manchet.larder.ingredient import NOWHERE, Blend, Ingredient, ListedAs, Question, Takes, names_of
from manchet.larder.names import key

_ASKED = "?"
_NEXT = " | "
_FLOUR = {"": None, "yes": True, "no": False}
_FLOUR_WORDS = {None: "", True: "yes", False: "no"}


def built_in(wanted: str) -> Ingredient | Question | None:
    """The built-in entry under a key of `names.key`."""
    number = _numbers().get(wanted)
    return None if number is None else _entry(int(number))


def printed_names() -> tuple[str, ...]:
    """Every built-in name and alias as printed."""
    return tuple(name for line in _lines() for name in _names_in(line))


def built_in_entries() -> tuple[Ingredient | Question, ...]:
    """All built-in entries, in the order of the file."""
    return tuple(_entry(number) for number in range(len(_lines())))


def line_of(entry: Ingredient | Question) -> str:
    """An entry as a line of `builtin.py`. Prices, places and shelf lives are of a house and not built in."""
    if isinstance(entry, Question):
        return "\t".join((_ASKED, entry.name, ", ".join(entry.choices), entry.why))
    allergens = "?" if entry.allergens is None else ", ".join(entry.allergens)
    return "\t".join(
        (
            entry.name,
            entry.class_,
            ", ".join(entry.aliases),
            _pairs(entry.composition.items()),
            _pairs((part.name, part.share) for part in entry.made_of),
            _FLOUR_WORDS[entry.flour],
            "yes" if entry.gives_water else "",
            allergens,
            ", ".join(entry.may_contain),
            _densities(entry),
            "" if entry.whole is None else str(entry.whole),
            "" if entry.takes_water is None else " ".join(map(str, entry.takes_water)),
            entry.source,
            _NEXT.join(_sale_facts(entry)),
        )
    )


def _sale_facts(entry: Ingredient) -> Iterator[str]:
    """What is said for the label and for cautions: few entries say any of it, so it shares one field."""
    yield from (f"ask {allergen}: {why}" for allergen, why in entry.asked)
    yield from (f"no {allergen}" for allergen in entry.has_not)
    yield from (f"listed {one.market}: {one.text}" for one in entry.listed_as)
    yield from (f"is {fact}" for fact in sorted(entry.facts))
    figures = (entry.sulphites, entry.protein_factor, entry.ph, entry.water_activity)
    yield from (f"{name} {figure}" for name, figure in zip(_FIGURES, figures, strict=True) if figure is not None)
    if entry.made_from:
        yield f"from {entry.made_from}"


_FIGURES = ("sulphites", "protein_factor", "ph", "water_activity")


def _with_sale_facts(entry: Ingredient, facts: str) -> Ingredient:
    for fact in facts.split(_NEXT):
        word, _, said = fact.partition(" ")
        before, _, after = said.partition(": ")
        if word == "ask":
            entry = entry._replace(asked=(*entry.asked, (before, after)))
        elif word == "no":
            entry = entry._replace(has_not=(*entry.has_not, said))
        elif word == "listed":
            entry = entry._replace(listed_as=(*entry.listed_as, ListedAs(after, before, NOWHERE)))
        elif word == "is":
            entry = entry._replace(facts=entry.facts | {said})
        elif word == "from":
            entry = entry._replace(made_from=said)
        else:
            figure: dict[str, Any] = {word: Fraction(said)}
            entry = entry._replace(**figure)
    return entry


def entry_of(line: str) -> Ingredient | Question:
    """The entry of such a line."""
    fields = line.split("\t")
    if fields[0] == _ASKED:
        return Question(fields[1], _list(fields[2]), fields[3])
    (
        name,
        class_,
        aliases,
        composition,
        made_of,
        flour,
        water,
        allergens,
        may_contain,
        density,
        whole,
        takes,
        source,
        facts,
    ) = fields
    entry = Ingredient(
        name=name,
        class_=class_,
        aliases=_list(aliases),
        composition=dict(_figures(composition)),
        made_of=tuple(Blend(part, share) for part, share in _figures(made_of)),
        flour=_FLOUR[flour],
        gives_water=bool(water),
        allergens=None if allergens == "?" else _list(allergens),
        may_contain=_list(may_contain),
        density=Fraction(density) if density and " " not in density else None,
        density_span=_span(density),
        whole=Fraction(whole) if whole else None,
        source=source,
        takes_water=Takes(*map(Fraction, takes.split())) if takes else None,
    )
    return _with_sale_facts(entry, facts) if facts else entry


def _densities(entry: Ingredient) -> str:
    if entry.density_span is not None:
        return " ".join(map(str, entry.density_span))
    return "" if entry.density is None else str(entry.density)


def _span(density: str) -> tuple[Fraction, Fraction] | None:
    low, space, high = density.partition(" ")
    return (Fraction(low), Fraction(high)) if space else None


def keys_of(entries: Iterable[Ingredient | Question]) -> dict[str, int]:
    """The number of the entry under each key."""
    return {key(name): number for number, entry in enumerate(entries) for name in names_of(entry)}


@cache
def _entry(number: int) -> Ingredient | Question:
    return entry_of(_lines()[number])


@cache
def _lines() -> tuple[str, ...]:
    from manchet.larder.builtin import ENTRIES

    return tuple(ENTRIES.strip("\n").split("\n"))


@cache
def _numbers() -> dict[str, str]:
    from manchet.larder.builtin import KEYS

    numbers = {}
    for line in KEYS.strip("\n").split("\n"):
        wanted, number = line.split("\t")
        numbers[wanted] = number
    return numbers


def _names_in(line: str) -> tuple[str, ...]:
    first, second, third, _rest = line.split("\t", 3)
    return (second,) if first == _ASKED else (first, *_list(third))


def _pairs(figures: Iterable[tuple[str, Fraction]]) -> str:
    return ", ".join(f"{name} {figure}" for name, figure in figures)


def _figures(text: str) -> list[tuple[str, Fraction]]:
    pairs = (pair.rsplit(" ", 1) for pair in _list(text))
    return [(name, Fraction(figure)) for name, figure in pairs]


def _list(text: str) -> tuple[str, ...]:
    return tuple(text.split(", ")) if text else ()
