"""What is in a vessel or a piece: which larder ingredient, how much of it, by which way it came in, and what has gone.

A value that is made of others: two put together, so much of one, one with its water boiled off. All weights are exact; a mixture
is of any unit (grams of a piece, or grams per gram of all flour).
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from fractions import Fraction
from typing import TYPE_CHECKING

from manchet.diagnostics.suggest import fold
from manchet.larder.ingredient import Ingredient, ListedAs
from manchet.records import NamedTuple

if TYPE_CHECKING:
    from manchet.larder.selling import Contact

NOTHING = Fraction(0)
ONE = Fraction(1)


class Component(NamedTuple):
    """Something that was made by itself before it went in: a stage, a preparation, a culture, a blend, a dish's part."""

    name: str
    listed_as: tuple[ListedAs, ...] = ()
    """The name it has of its own in a list of ingredients, one for each market; without one it is dissolved into the list."""
    allergens: tuple[str, ...] | None = None
    """What a blend or culture states of itself; None where it leaves that to what it is made of."""
    contacts: tuple[Contact, ...] = ()
    """What its own head states of contact: that goes with it into everything it goes into."""
    left: Fraction | None = None
    """What it weighed when it went in, as a share of all that was put into it: a bread in a dish is lighter than its dough. Reckoned where it is
    listed by a name of its own; None elsewhere: a component is part of a key, and a fraction is slow to hash."""


class Content(NamedTuple):
    """So much of one ingredient, as it was put in."""

    ingredient: Ingredient
    grams: Fraction
    way: tuple[Component, ...] = ()
    """What it came in with, the outermost first."""
    leached: Fraction = NOTHING
    """Of what dissolves in water, the largest share that may have gone with a liquid that was drained."""
    heated: bool = False
    """It has been through a heat, so that nobody knows how much of its alcohol is left."""


Key = tuple[str, tuple[Component, ...]]
"""An ingredient by its folded name, and its way."""


class TakenUp(NamedTuple):
    """What a piece takes up of a bath or a fat, of which the file does not say how much: `mixture` is of 1 g of it."""

    name: str
    mixture: Mixture
    most: Fraction
    """Grams it can hardly pass."""


class Mixture(NamedTuple):
    """`weight` = all that was put in, less the water that has gone."""

    holds: Mapping[Key, Content] = {}
    gone: Fraction = NOTHING
    """Water that has gone off, or was poured off: of what was put in and of what the ingredients brought."""
    taken_up: tuple[TakenUp, ...] = ()

    @property
    def put_in(self) -> Fraction:
        return sum((held.grams for held in self.holds.values()), NOTHING)

    @property
    def weight(self) -> Fraction:
        return self.put_in - self.gone

    def times(self, share: Fraction) -> Mixture:
        """So much of it, as it is."""
        if share == 1:
            return self
        holds = {key: held._replace(grams=held.grams * share) for key, held in self.holds.items()}
        taken = tuple(one._replace(most=one.most * share) for one in self.taken_up)
        return Mixture(holds, self.gone * share, taken)

    def amount(self, grams: Fraction) -> Mixture:
        """So many grams of it; nothing of a mixture that weighs nothing."""
        weight = self.weight
        return self.times(grams / weight) if weight else NO_MIXTURE

    def without_water(self, grams: Fraction) -> Mixture:
        return self._replace(gone=self.gone + grams)

    def drained(self, grams: Fraction, water: Fraction) -> Mixture:
        """Without a liquid that was poured off. `water`: grams of water in the vessel then, over which at the most all that dissolves
        is spread evenly: what is soaked keeps more of it inside."""
        share = min(grams / water, ONE) if water > 0 else ONE
        holds = {key: held._replace(leached=1 - (1 - held.leached) * (1 - share)) for key, held in self.holds.items()}
        return self._replace(holds=holds, gone=self.gone + grams)

    def through_heat(self) -> Mixture:
        return self._replace(holds={key: held._replace(heated=True) for key, held in self.holds.items()})

    def came_in(self, component: Component) -> Mixture:
        """The same as what went in with it."""
        if component.listed_as and self.put_in:
            component = component._replace(left=self.weight / self.put_in)
        holds: dict[Key, Content] = {}
        for (name, way), held in self.holds.items():
            longer = (component, *way)
            holds[name, longer] = held._replace(way=longer)
        taken = tuple(one._replace(mixture=one.mixture.came_in(component)) for one in self.taken_up)
        return Mixture(holds, self.gone, taken)

    def taking_up(self, one: TakenUp) -> Mixture:
        return self._replace(taken_up=(*self.taken_up, one))


NO_MIXTURE = Mixture()


def held_alone(ingredient: Ingredient, grams: Fraction) -> Mixture:
    return Mixture({(fold(ingredient.name), ()): Content(ingredient, grams)})


def put_together(mixtures: Iterable[Mixture]) -> Mixture:
    """All of them in one vessel."""
    holds: dict[Key, Content] = {}
    gone = NOTHING
    taken: list[TakenUp] = []
    for mixture in mixtures:
        for key, held in mixture.holds.items():
            there = holds.get(key)
            holds[key] = held if there is None else _both(there, held)
        gone += mixture.gone
        taken += mixture.taken_up
    return Mixture(holds, gone, tuple(taken))


def _both(a: Content, b: Content) -> Content:
    grams = a.grams + b.grams
    leached = (a.grams * a.leached + b.grams * b.leached) / grams if grams else NOTHING
    return a._replace(grams=grams, leached=leached, heated=a.heated or b.heated)


def by_ingredient(mixture: Mixture, of: Callable[[Content], bool] = lambda _: True) -> dict[str, Content]:
    """Of each ingredient, by whatever way it came, in the order of the work; the ways forgotten."""
    found: dict[str, Content] = {}
    for (name, _), held in mixture.holds.items():
        if of(held):
            alone = held._replace(way=())
            found[name] = alone if name not in found else _both(found[name], alone)
    return found
