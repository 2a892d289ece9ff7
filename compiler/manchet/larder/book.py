"""The larder: what is known of every ingredient, the built-in book and the house's own entries on top of it."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from fractions import Fraction
from functools import cached_property
from typing import TYPE_CHECKING, TypeVar

from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.suggest import fold
from manchet.larder.ingredient import POURED_CLASSES, Blend, Ingredient, Poured, Question
from manchet.larder.names import key
from manchet.syntax.describing import without_description

if TYPE_CHECKING:
    from manchet.larder.near import NamesToCompare

DRY_BELOW = 10
"""Grams of water in 100 g below which an ingredient of a poured class is a dry good (sugar, milk powder, dried yeast),
whose moisture is not counted. Our rule: nothing sold for bread lies near it."""

_NOTHING = Fraction(0)
_ALL = Fraction(1)
_DISSOLVED_SUGAR = frozenset({"sweetener", "liquid", "malt"})
_FREE_FAT = frozenset({"dairy", "egg", "fat", "liquid", "sweetener", "other"})


T = TypeVar("T")

Below = Callable[[str], Ingredient | Question | None]
"""Finds the entry under a key of `names.key`."""


class Larder:
    """Finds ingredients by any of their names. A value: adding entries gives another larder.

    Names are compared without case, accents, hyphens and plurals, and without what only describes (`softened butter`).
    The house's own entries come before the built-in.
    """

    def __init__(self, own: dict[str, Ingredient | Question] | None = None, below: Below | None = None) -> None:
        """`own` by key; `below` finds what is not among them (left out: the built-in entries)."""
        self._own = own or {}
        self._below = below
        self._found: dict[str, Ingredient | Question | None] = {}
        self._remembered: dict[tuple[object, int], tuple[Ingredient, object]] = {}

    def find(self, name: str) -> Ingredient | Question | None:
        """The ingredient of that name or alias; a question where the name means several things; None if unknown."""
        try:
            return self._found[name]
        except KeyError:
            wanted = key(name)
            found = self._own.get(wanted)
            if found is None:
                found = (self._below or _built_in())(wanted)
            if found is None and (bare := without_description(name)):
                found = self.find(bare)
            self._found[name] = found
            return found

    def key(self, name: str) -> str:
        """What a name is compared by: folded, and of the ingredient where it is a name of one."""
        found = self.find(name)
        return fold(found.name if isinstance(found, Ingredient) else name)

    def ingredient(self, name: str) -> Ingredient | None:
        """As `find`, for who has no use for a question."""
        found = self.find(name)
        return found if isinstance(found, Ingredient) else None

    def near(self, name: str) -> tuple[str, ...]:
        """At most three names that `name` may have been meant for, best first."""
        return self._names_to_compare.near(name)

    @cached_property
    def _names_to_compare(self) -> NamesToCompare:
        from manchet.larder.near import NamesToCompare  # a sound file has no need of it

        return NamesToCompare(self.names())

    def names(self) -> Iterator[str]:
        """Every name and alias as printed, the house's own first."""
        from manchet.larder.stock import printed_names

        for entry in self.own():
            yield entry.name
            if isinstance(entry, Ingredient):
                yield from entry.aliases
        yield from printed_names()

    def own(self) -> tuple[Ingredient | Question, ...]:
        """The house's own entries, each once."""
        return tuple({id(entry): entry for entry in self._own.values()}.values())

    def with_entries(self, entries: Iterable[Ingredient | Question]) -> Outcome[Larder]:
        """A larder with these entries on top, and reports for those that cannot be true. See `joining.join`."""
        from manchet.larder.joining import join

        joined, diagnostics = join(tuple(entries), self.find)
        return Outcome(Larder({**self._own, **joined}, self._below), diagnostics)

    def poured(self, ingredient: Ingredient) -> Poured:
        """What 1 g of the ingredient brings, in grams, all exact. See the fields of `Poured`.

        Water: of what is poured, dairy, egg, fat, syrup, yeast and culture; not the moisture of flour and dry goods,
        nor whole fruit and vegetables unless the entry `gives its water`. Salt: the `salt` of an entry (its natural
        sodium is not tasted). Sugar: of sweeteners, liquids and malt syrup. Fat: of fats, dairy, egg, chocolate and the
        like, not what seeds, nuts and flours keep to themselves. Blends and cultures are the sum of their parts.
        """
        return self.remembered(_poured, ingredient)

    def remembered(self, figure: Callable[[Ingredient, Larder], T], ingredient: Ingredient) -> T:
        """A figure of an ingredient, worked out once. By identity: its hash would walk through all that is in it."""
        known = self._remembered.get((figure, id(ingredient)))
        if known is None or known[0] is not ingredient:
            known = self._remembered[figure, id(ingredient)] = (ingredient, figure(ingredient, self))
        return known[1]  # type: ignore[return-value]

    def allergens(self, ingredient: Ingredient) -> tuple[str, ...] | None:
        """The allergens of an ingredient and of all it is made of; None if the larder does not know them all."""
        if ingredient.allergens is not None or not ingredient.made_of:
            return ingredient.allergens
        found: dict[str, None] = {}
        for part in ingredient.made_of:
            known = self.ingredient(part.name)
            inside = self.allergens(known) if known is not None else None
            if inside is None:
                return None
            found |= dict.fromkeys(inside)
        return tuple(found)


def builtin() -> Larder:
    """The built-in larder alone. Cheap: an entry is made when it is first found."""
    return Larder()


def _built_in() -> Below:
    from manchet.larder.stock import built_in

    return built_in


def _poured(ingredient: Ingredient, larder: Larder) -> Poured:
    return _of_parts(ingredient, larder) if ingredient.made_of else _of_composition(ingredient)


def _of_parts(ingredient: Ingredient, larder: Larder) -> Poured:
    parts = []
    for part in ingredient.made_of:
        known = larder.ingredient(part.name)
        if known is not None:
            parts.append((part.share, larder.poured(known)))
    whole = ingredient.counts_as_flour
    flours: dict[str, Fraction] = {ingredient.name: _ALL} if whole else {}
    if not whole and ingredient.flour is not False and ingredient.class_ != "bread":
        for share, poured in parts:
            for flour in poured.flours:
                flours[flour.name] = flours.get(flour.name, _NOTHING) + share * flour.share
    return Poured(
        flour=sum(flours.values(), _NOTHING),
        water=sum((share * poured.water for share, poured in parts), _NOTHING),
        salt=sum((share * poured.salt for share, poured in parts), _NOTHING),
        sugar=sum((share * poured.sugar for share, poured in parts), _NOTHING),
        fat=sum((share * poured.fat for share, poured in parts), _NOTHING),
        flours=tuple(Blend(name, share) for name, share in flours.items()),
    )


def _of_composition(ingredient: Ingredient) -> Poured:
    class_ = ingredient.class_
    per_100 = ingredient.composition.get
    is_flour = ingredient.counts_as_flour
    water = per_100("water", _NOTHING)
    if not ingredient.gives_water and (class_ not in POURED_CLASSES or water < DRY_BELOW):
        water = _NOTHING
    return Poured(
        flour=_ALL if is_flour else _NOTHING,
        water=water / 100,
        salt=per_100("salt", _NOTHING) / 100,
        sugar=per_100("sugars", _NOTHING) / 100 if class_ in _DISSOLVED_SUGAR else _NOTHING,
        fat=per_100("fat", _NOTHING) / 100 if class_ in _FREE_FAT else _NOTHING,
        flours=(Blend(ingredient.name, _ALL),) if is_flour else (),
    )
