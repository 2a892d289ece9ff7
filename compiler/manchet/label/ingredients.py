"""The list of ingredients: by their weight as they were put in, water by what is left of it, with allergens set off and, where
the name of the food asks for it, how much of an ingredient there is.

Regulation (EU) 1169/2011, articles 18, 21 and 22, Annex VII part A and Annex VIII; in the United States 21 CFR 101.4.
"""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction

from manchet.account.mixture import Component, Content, TakenUp
from manchet.account.piece import SoldPiece
from manchet.diagnostics.suggest import fold
from manchet.label.allergens import AllergenAnswer, all_findings, answer_in_its_way
from manchet.label.markets import US
from manchet.label.named import named_lines
from manchet.label.names import Run, Runs, listed_name, plain, set_off
from manchet.larder.allergens import ALLERGENS
from manchet.larder.names import key
from manchet.larder.sources import with_source
from manchet.quantities.printing import decimal, round_to
from manchet.records import NamedTuple

NOTHING = Fraction(0)
ONE = Fraction(1)
HUNDRED = Fraction(100)

WATER = "water"
LEFT_OUT_UP_TO = Fraction(5, 100)
"""Of the finished food: so little added water may be left out (Annex VII part A, no. 1)."""
CLOSES_UNDER = Fraction(2, 100)
"""Of the finished food: what is less may close the list in any order (Annex VII part A, no. 6)."""


class ListLine(NamedTuple):
    """One ingredient, or a compound one with what it is made of."""

    name: str
    runs: Runs
    grams: Fraction
    """As it was put in; of added water what is left in the finished food."""
    share: Fraction | None
    """Of the finished food; None where its weight is not known."""
    allergens: tuple[str, ...] = ()
    inside: tuple[ListLine, ...] = ()
    is_water: bool = False
    at_most: bool = False
    """Nobody has weighed how much of it the food takes up: `grams` is what it can hardly pass."""
    how_much: str = ""
    """`24 %`, or `300 g per 100 g`, where it has to be said."""
    classes: frozenset[str] = frozenset()
    """Of what it stands for; of a compound one none."""

    @property
    def text(self) -> str:
        return plain(self.all_runs)

    @property
    def all_runs(self) -> Runs:
        said = (Run(f" ({self.how_much})"),) if self.how_much else ()
        if not self.inside:
            return (*self.runs, *said)
        inside = joined_runs(self.inside)
        return (*self.runs, *said, Run(" ("), *inside, Run(")"))


class IngredientList(NamedTuple):
    """In the order of the label."""

    market: str
    lines: tuple[ListLine, ...]
    water_left_out: bool = False
    """So little added water is left that it may be left out."""
    water_is_placed: bool = True
    """False where the finished weight is not known, so that nobody knows how much water is left."""

    @property
    def runs(self) -> Runs:
        return joined_runs(self.lines)

    @property
    def text(self) -> str:
        return plain(self.runs)


def joined_runs(lines: Iterable[ListLine]) -> Runs:
    found: list[Run] = []
    for n, line in enumerate(lines):
        found += [Run(", ")] if n else []
        found += line.all_runs
    return tuple(found)


def ingredient_list(
    piece: SoldPiece, market: str, called: str = "", how_much_of: tuple[str, ...] = ()
) -> IngredientList:
    """The list of a food for a market. `called` is the name of the food, of whose words those that are ingredients have their share
    told, but for the United States, where no law asks it; `how_much_of` names more of them."""
    weight = piece.finished
    sulphited = {
        because.ingredient.name
        for one in all_findings(piece)
        if one.allergen == "sulphites" and one.answer is AllergenAnswer.HAS
        for because in one.because
    }
    contents = [one for one in piece.mixture.holds.values() if one.grams and one.ingredient.class_ != "packaging"]
    making = _Making(market, weight, frozenset(sulphited))
    lines = making.lines((content, 0) for content in contents)
    dry = [line for line in lines if not line.is_water]
    water = next((line for line in lines if line.is_water), None)
    left_out = False
    if water is not None and weight is not None:
        left = weight - sum((line.grams for line in dry), NOTHING)
        share = left / weight if weight else NOTHING
        left_out = NOTHING < share <= LEFT_OUT_UP_TO and market != US
        dry += [water._replace(grams=left, share=share)] if left > 0 else []
    elif water is not None:
        dry.append(water)
    dry += [line for one in piece.mixture.taken_up for line in making.of_bath(one, dry)]
    asked = _asked_for(dry, "" if market == US else called, how_much_of)
    told = _told(dry, asked, piece)
    ordered = sorted(told, key=lambda line: (line.at_most, -line.grams, fold(line.name)))
    return IngredientList(market, tuple(ordered), left_out, weight is not None)


class _Making(NamedTuple):
    market: str
    weight: Fraction | None
    sulphited: frozenset[str]

    def lines(self, contents: Iterable[tuple[Content, int]]) -> list[ListLine]:
        """Each content with how many of the components that it came in with stand around it already."""
        alone: dict[str, list[Content]] = {}
        compound: dict[Component, list[tuple[Content, int]]] = {}
        for content, depth in contents:
            at = next((n for n in range(depth, len(content.way)) if content.way[n].listed_as), None)
            if at is None:
                name = listed_name(content.ingredient.name, content.ingredient.listed_as, self.market)
                name = with_source(name, content.ingredient)
                alone.setdefault(WATER if content.ingredient.class_ == "water" else name, []).append(content)
            else:
                compound.setdefault(content.way[at], []).append((content, at + 1))
        found = [self._line(name, held) for name, held in alone.items()]
        for component, inside in compound.items():
            lines = self.lines(inside)
            name = listed_name(component.name, component.listed_as, self.market)
            grams = sum((content.grams for content, _ in inside), NOTHING)
            grams *= ONE if component.left is None else component.left
            inner = tuple(sorted(_with_water_left(lines, grams), key=lambda line: (-line.grams, fold(line.name))))
            found.append(ListLine(name, (Run(name),), grams, self._share(grams), inside=inner))
        return found

    def _line(self, name: str, held: list[Content]) -> ListLine:
        grams = sum((content.grams for content in held), NOTHING)
        allergens = tuple(word for word in ALLERGENS if any(self._has(content, word) for content in held))
        is_water = name == WATER and all(content.ingredient.class_ == "water" for content in held)
        classes = frozenset(content.ingredient.class_ for content in held)
        runs = set_off(name, allergens, self.market)
        return ListLine(name, runs, grams, self._share(grams), allergens, is_water=is_water, classes=classes)

    def _has(self, content: Content, allergen: str) -> bool:
        if allergen == "gluten":
            return False
        if allergen == "sulphites":
            return content.ingredient.name in self.sulphited
        return answer_in_its_way(content, allergen)[0] is AllergenAnswer.HAS

    def _share(self, grams: Fraction) -> Fraction | None:
        return None if not self.weight else grams / self.weight

    def of_bath(self, taken: TakenUp, there: list[ListLine]) -> list[ListLine]:
        """What a bath may bring that the food does not list yet."""
        named = {line.name for line in there}
        lines = self.lines((content, 0) for content in taken.mixture.times(taken.most).holds.values())
        return [line._replace(at_most=True) for line in lines if not line.is_water and line.name not in named]


def _with_water_left(lines: list[ListLine], grams: Fraction) -> list[ListLine]:
    """The lines of a compound one that weighs so much: its water by what is left of it, and not listed where none is."""
    dry = [line for line in lines if not line.is_water]
    left = grams - sum((line.grams for line in dry), NOTHING)
    return [*dry, *(line._replace(grams=left) for line in lines if line.is_water and left > 0)]


# ---- how much of it ---------------------------------------------------------------------------------


def how_much(line: ListLine, piece: SoldPiece) -> Fraction | None:
    """Per cent of an ingredient at the time of its use: of the finished food where heat took water, which may be over 100; None
    where the finished weight is not known."""
    whole = piece.finished if piece.mixture.gone else piece.mixture.put_in
    return None if not whole else line.grams / whole * 100


def _asked_for(lines: list[ListLine], called: str, more: tuple[str, ...]) -> set[str]:
    wanted = {key(name) for name in more}
    there = [line for line in lines if not line.is_water]
    return named_lines(there, called) | {line.name for line in there if key(line.name) in wanted}


def _told(lines: list[ListLine], asked: set[str], piece: SoldPiece) -> list[ListLine]:
    shares = {line.name: how_much(line, piece) for line in lines if line.name in asked and not line.at_most}
    known = {name: share for name, share in shares.items() if share is not None}
    over = sum(known.values(), NOTHING) > HUNDRED
    return [
        line if line.name not in known else line._replace(how_much=how_much_text(known[line.name], over))
        for line in lines
    ]


def how_much_text(percent: Fraction, per_100_g: bool = False) -> str:
    """Two figures that tell, from the exact one: `24 %`, `1.4 %`; from 100 on in full, as `300 g per 100 g`."""
    if per_100_g or percent > HUNDRED:
        return f"{decimal(percent, 0)} g per 100 g"
    places = 0
    while places < 6 and percent and round_to(percent, places) * 10**places < 10:
        places += 1
    return f"{decimal(percent, places)} %"
