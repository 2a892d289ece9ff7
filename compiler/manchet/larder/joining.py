"""A house's own entries put on top of a larder: what they leave unsaid, and what cannot be true of them together."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping
from fractions import Fraction
from functools import cached_property
from typing import TYPE_CHECKING

from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.fixes import exchange_of
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import list_of_words, report
from manchet.larder.allergens import ALLERGENS
from manchet.larder.circles import without_circles
from manchet.larder.ingredient import (
    CLASSES,
    POURED_CLASSES,
    Blend,
    Buying,
    Ingredient,
    ListedAs,
    Question,
    names_of,
    place_of,
)
from manchet.larder.inherited import composition_on_top, factor_on_top
from manchet.larder.names import key
from manchet.larder.sources import allergens_of_source

if TYPE_CHECKING:
    from manchet.larder.near import NamesToCompare

Entry = Ingredient | Question
Find = Callable[[str], Entry | None]
"""Finds an entry by one of its names."""


def join(entries: tuple[Entry, ...], below: Find) -> Outcome[dict[str, Entry]]:
    """The entries by their keys, and reports. `below` finds what is in the larder they are put on top of.

    What an entry does not say is taken from the entry of that name in the larder below it, so that a price alone may be
    added to flour. Of two entries with one name the first holds. An entry made of itself, however far round, or of
    something unknown loses its `made of`, so that what is left can be reckoned with.
    """
    reports = list(duplicates(entries))
    own: dict[str, Entry] = {}
    for entry in entries:
        whole = _with_allergens_of_its_class(_with_what_is_unsaid(entry, below(entry.name)))
        for name in names_of(whole):
            own.setdefault(key(name), whole)
    larder = _Stacked(own, below)
    cut: dict[int, Entry] = {}
    for entry in {id(entry): entry for entry in own.values()}.values():
        sound, wrong = _sound(entry, larder)
        reports += wrong
        if sound is not entry:
            cut[id(entry)] = sound
    own = {name: cut.get(id(entry), entry) for name, entry in own.items()}
    own, wrong = without_circles(own)
    reports += wrong
    return Outcome(own, tuple(reports))


def duplicates(entries: Iterable[Entry]) -> Iterator[Diagnostic]:
    """A report for each name that an earlier entry has taken."""
    taken: dict[str, Entry] = {}
    for entry in entries:
        for name in names_of(entry):
            first = taken.setdefault(key(name), entry)
            if first is not entry:
                whose = "" if key(name) == key(first.name) else f" a name of {first.name}, which is"
                message = f"`{name}` is{whose} in the larder already"
                help = "put both into one entry, or give this one another name"
                yield report("larder-name-twice", place_of(entry), message, help, (place_of(first), "the first one"))
                break


def _with_what_is_unsaid(entry: Entry, below: Entry | None) -> Entry:
    if isinstance(entry, Question):
        return entry
    if not isinstance(below, Ingredient):
        return entry._replace(protein_factor=factor_on_top(entry, None))
    says_what_it_is = bool(entry.composition or entry.made_of)
    same = key(below.name) == key(entry.name)
    inherits = entry.allergens is None and not _is_otherwise(entry, below)
    allergens = _inherited_allergens(entry, below) if inherits else entry.allergens
    asked = (*entry.asked, *(below.asked if inherits else ()))
    return entry._replace(
        class_=entry.class_ or below.class_,
        aliases=entry.aliases + (tuple(a for a in below.aliases if a not in entry.aliases) if same else ()),
        composition=_composition(entry, below),
        protein_factor=factor_on_top(entry, below),
        made_of=entry.made_of if says_what_it_is else below.made_of,
        flour=below.flour if entry.flour is None else entry.flour,
        gives_water=entry.gives_water or below.gives_water,
        allergens=allergens,
        may_contain=entry.may_contain or below.may_contain,
        density=entry.density or (None if entry.density_span else below.density),
        density_span=entry.density_span or (None if entry.density else below.density_span),
        whole=entry.whole or below.whole,
        kept_at=below.kept_at if entry.kept_at is None else entry.kept_at,
        good_for=entry.good_for or below.good_for,
        buying=_bought(entry.buying, below.buying),
        asked=tuple(one for one in asked if one[0] not in (*entry.has_not, *(allergens or ()))),
        has_not=entry.has_not or (below.has_not if inherits else ()),
        sulphites=below.sulphites if entry.sulphites is None and inherits else entry.sulphites,
        listed_as=_listed(entry, below),
        made_from=entry.made_from or below.made_from,
        facts=entry.facts or below.facts,
        ph=below.ph if entry.ph is None else entry.ph,
        water_activity=below.water_activity if entry.water_activity is None else entry.water_activity,
        source=_source(entry, below),
        takes_water=below.takes_water if entry.takes_water is None else entry.takes_water,
    )


def _inherited_allergens(entry: Ingredient, below: Ingredient) -> tuple[str, ...] | None:
    """An entry that asks of some allergens knows of all others that it has them not: still so once the house has answered."""
    if below.allergens is not None or not below.asked:
        return below.allergens
    return (*OF_CLASS.get(below.class_, ()), *allergens_of_source(entry))


def _listed(entry: Ingredient, below: Ingredient) -> tuple[ListedAs, ...]:
    """What the house says for one market leaves the name for the others; what it says for all replaces them."""
    own = {one.market for one in entry.listed_as}
    if "" in own or _is_otherwise(entry, below):
        return entry.listed_as
    return (*entry.listed_as, *(one for one in below.listed_as if one.market not in own))


def _bought(own: Buying, below: Buying) -> Buying:
    return Buying(
        own.prices or below.prices,
        own.pack or below.pack,
        own.packed_as or below.packed_as,
        below.trimming if own.trimming is None else own.trimming,
    )


def _source(entry: Ingredient, below: Ingredient) -> str:
    """Whose the figures are: those that the house does not give have the source of the built-in entry."""
    own = entry.source or below.source
    if not entry.composition or not entry.source or not below.source or _composition(entry, below) == entry.composition:
        return own
    return f"{own}; what it does not give: {below.source}, by dry matter"


def _composition(entry: Ingredient, below: Ingredient) -> Mapping[str, Fraction]:
    """What the house says; what it does not say as the built-in entry has it, unless the entry is made of other things or of another
    class, or says that nothing else is known."""
    if entry.made_of or entry.nothing_else_known or (entry.composition and below.made_of):
        return entry.composition
    if entry.composition and entry.class_ and entry.class_ != below.class_:
        return entry.composition
    return composition_on_top(entry.composition, below.composition)


OF_CLASS = {
    "wheat flour": ("wheat", "gluten"),
    "rye flour": ("rye", "gluten"),
    "dairy": ("milk",),
    "egg": ("egg",),
    "fish": ("fish",),
}
"""Allergens that a class carries by what it is (Regulation (EU) 1169/2011, Annex II)."""


def _is_otherwise(entry: Ingredient, below: Ingredient) -> bool:
    """Whether it is of another class than the entry it is put on top of, or made of other things: then that one's allergens
    say nothing of it."""
    return bool(entry.made_of) or bool(entry.class_ and entry.class_ != below.class_)


def _with_allergens_of_its_class(entry: Entry) -> Entry:
    """A flour of wheat carries wheat, whether the house says so or not."""
    if isinstance(entry, Question) or entry.allergens is not None or entry.made_of or entry.class_ not in OF_CLASS:
        return entry
    return entry._replace(allergens=OF_CLASS[entry.class_])


class _Stacked:
    """A house's own entries by their keys, on top of the larder that `below` finds in."""

    def __init__(self, own: Mapping[str, Entry], below: Find) -> None:
        self.own, self.below = own, below

    def find(self, name: str) -> Entry | None:
        return self.own.get(key(name)) or self.below(name)

    def near(self, name: str) -> tuple[str, ...]:
        """Ingredients of both that an unknown name may have been meant for."""
        return tuple(one for one in self._names.near(name) if isinstance(self.find(one), Ingredient))

    @cached_property
    def _names(self) -> NamesToCompare:
        from manchet.larder.near import NamesToCompare  # a sound larder has no need of it
        from manchet.larder.stock import printed_names

        return NamesToCompare((*(entry.name for entry in self.own.values()), *printed_names()))


def _sound(entry: Entry, larder: _Stacked) -> Outcome[Entry]:
    find = larder.find
    place = place_of(entry)
    if isinstance(entry, Question):
        lost = [choice for choice in entry.choices if not isinstance(find(choice), Ingredient)]
        return Outcome(entry, tuple(_choice_unknown(entry, choice, larder) for choice in lost))
    if not entry.class_:
        message = f"{entry.name} has no class: nobody knows whether it counts as flour or water"
        help = f"add a line `class …`: {list_of_words(tuple(sorted(CLASSES)))}"
        return Outcome(entry._replace(class_="other"), (report("class-missing", place, message, help),))
    unknown = [part for part in entry.made_of if not isinstance(find(part.name), Ingredient)]
    if unknown:
        return Outcome(entry._replace(made_of=()), tuple(_part_unknown(entry, p, larder) for p in unknown))
    return Outcome(entry, tuple(_doubts(entry)))


def _part_unknown(entry: Ingredient, part: Blend, larder: _Stacked) -> Diagnostic:
    found = larder.find(part.name)
    why = "which is not in the larder" if found is None else "which can mean more than one thing"
    message = f"{entry.name} is made of {part.name}, {why}"
    place = part.place or place_of(entry)
    near = found.choices if isinstance(found, Question) else larder.near(part.name)
    help = _meant(near) + "make an entry for it, or use a name the larder has"
    return report("part-unknown", place, message, help, fixes=exchange_of(place, part.name, *near))


def _choice_unknown(question: Question, choice: str, larder: _Stacked) -> Diagnostic:
    message = f"`{question.name}` could be `{choice}`, which is not in the larder"
    near = larder.near(choice)
    help = _meant(near) + "name ingredients of the larder, by one name each"
    fixes = exchange_of(question.asked, choice, *near) if question.asked else ()
    return report("choice-unknown", place_of(question), message, help, fixes=fixes)


def _meant(near: tuple[str, ...]) -> str:
    return f"did you mean {list_of_words(tuple(f'`{name}`' for name in near))}? else " if near else ""


def _doubts(entry: Ingredient) -> Iterator[Diagnostic]:
    place = place_of(entry)
    carried = OF_CLASS.get(entry.class_, ())[:1]
    known = entry.allergens is not None and set(entry.allergens) <= set(ALLERGENS)
    if (
        entry.allergens is not None
        and known
        and entry.place is not None
        and any(one not in entry.allergens for one in carried)
    ):
        said = f"{list_of_words(entry.allergens, 'and')} for its allergens" if entry.allergens else "no allergens"
        message = f"{entry.name} is of class {entry.class_}, which carries {carried[0]}, and is said to have {said}"
        help = (
            f"write `allergens {', '.join((*OF_CLASS[entry.class_], *entry.allergens))}`, or give it the class it has"
        )
        yield report("allergens-against-class", place, message, help)
    if entry.class_ == "culture" and not entry.made_of:
        message = f"{entry.name} is a culture, and nobody knows what flour it holds"
        help = "add `made of`, and below it what it is fed with: `white flour 100%`, `water 100%`"
        yield report("culture-of-nothing", place, message, help)
    elif entry.class_ in POURED_CLASSES - {"culture", "fat"} and not entry.made_of and "water" not in entry.composition:
        message = f"nobody knows how much water {entry.name} brings: it counts as none"
        yield report("water-unknown", place, message, "add `per 100 g`, and below it `water … g`")
