"""The nutrition panel of a food: each line known, or withheld with what would have to be known for it. Refused by part.

Per 100 g as sold: what went in / finished weight. Energy from the figures as they are, before any is rounded.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.account.mixture import Content
from manchet.account.piece import SoldPiece
from manchet.label.conventions import (
    ENERGY_WIDTH,
    PARTS,
    SALT_OF_SODIUM,
    WIDTH_OF_TOLERANCE,
    eu_text,
    tolerance_of,
    us_text,
)
from manchet.label.entry_bounds import Bounds, bounds_of, energy_of, factors_of
from manchet.label.markets import US
from manchet.label.span import NONE_OF_IT, LowHigh
from manchet.larder.ingredient import Ingredient
from manchet.quantities.printing import decimal
from manchet.records import NamedTuple

NOTHING = Fraction(0)
MILLIGRAMS = 1000

ENERGY_LINES = {"energy kj": "kj", "energy kcal": "kcal"}
DISSOLVES = frozenset({"sugars", "salt", "sodium"})
"""Goes with what is drained, nobody knows how much of it."""


VOLUNTARY = frozenset({"fibre"})
"""Left out where it cannot be said; all else a declaration has to say: Regulation (EU) 1169/2011, article 30(1)."""


class Brought(NamedTuple):
    """What one ingredient brings of a line, in 100 g of the food."""

    ingredient: Ingredient
    span: LowHigh


class PanelLine(NamedTuple):
    """`name`: `energy kj`, `energy kcal`, fat, saturates …; `span` per 100 g of the food (in the United States per serving)."""

    name: str
    unit: str
    span: LowHigh
    text: str
    """As it is printed; "" where it cannot be said."""
    shares: tuple[Brought, ...] = ()
    """What each ingredient brings."""

    @property
    def is_known(self) -> bool:
        return bool(self.text)

    @property
    def wide(self) -> tuple[Brought, ...]:
        """The ingredients that make it wide, the widest first."""
        return tuple(sorted((one for one in self.shares if one.span.width), key=lambda one: -one.span.width))

    @property
    def between(self) -> str:
        """`3.1 to 9.0 g`, what it lies between."""
        low, high = (decimal(end, 0 if self.unit in ("kJ", "kcal") else 1) for end in self.span)
        return f"{low} to {high} {self.unit}"

    @property
    def why_not(self) -> str:
        """`fibre: 3.1 to 9.0 g. medium rye flour (5.7): write its "per 100 g" from the mill's sheet`"""
        if self.is_known:
            return ""
        names = ", ".join(f"{one.ingredient.name} ({decimal(one.span.width, 1)})" for one in self.wide[:3])
        return f"{self.name}: {self.between}. {names}: write its `per 100 g` from the maker's sheet"


class Panel(NamedTuple):
    """`lines` is empty where the finished weight is not known; `refused` says why, and what to write."""

    market: str
    lines: tuple[PanelLine, ...]
    refused: str = ""
    serving: Fraction | None = None
    """Grams, in the United States."""

    def line(self, name: str) -> PanelLine:
        return next(line for line in self.lines if line.name == name)

    @property
    def is_whole(self) -> bool:
        return bool(self.lines) and all(line.is_known for line in self.lines)

    @property
    def says_all_it_must(self) -> bool:
        return bool(self.lines) and all(line.is_known or line.name in VOLUNTARY for line in self.lines)


NO_FINISHED_WEIGHT = "nobody has weighed what the heat takes: weigh ten cooled pieces and write `bake loss`"


def panel_of(piece: SoldPiece, market: str, serving: Fraction | None = None) -> Panel:
    """The panel of a food for a market; `serving` in grams is for the United States, and 100 where nobody says."""
    weight = piece.finished
    if not weight:
        return Panel(market, (), NO_FINISHED_WEIGHT)
    counted = list(_counted(piece, weight))
    if market == US:
        grams = serving or Fraction(100)
        return Panel(market, tuple(_us_lines(counted, grams / 100)), serving=grams)
    lines = [_line(name, unit, [energy_of(one.entry, market, unit.lower()) for one in counted], counted, market)
             for name, unit in (("energy kj", "kJ"), ("energy kcal", "kcal"))]  # fmt: skip
    lines += [_line(name, "g", [_part(name, one.bounds) for one in counted], counted, market) for name in PARTS]
    return Panel(market, tuple(lines))


class PanelEntry(NamedTuple):
    """One ingredient as a panel counts it."""

    entry: Ingredient
    bounds: Bounds
    low: Fraction
    high: Fraction
    """Grams of it in 100 g of the food; apart where nobody has weighed how much is taken up."""
    leached: Fraction
    heated: bool


def _counted(piece: SoldPiece, weight: Fraction) -> Iterator[PanelEntry]:
    per_100 = 100 / weight

    def one(content: Content, low: Fraction, high: Fraction) -> PanelEntry:
        entry = content.ingredient
        return PanelEntry(entry, bounds_of(entry), low * per_100, high * per_100, content.leached, content.heated)

    for content in piece.mixture.holds.values():
        if content.ingredient.class_ != "packaging":
            yield one(content, content.grams, content.grams)
    for taken in piece.mixture.taken_up:
        for content in taken.mixture.holds.values():
            yield one(content, NOTHING, content.grams * taken.most)


def _part(name: str, bounds: Bounds) -> LowHigh:
    """Of 100 g of an entry, as the EU and Britain count it."""
    if name == "protein":
        return bounds.protein_by_nitrogen
    if name == "carbohydrate":
        return bounds.carbohydrate_by_difference
    if name == "salt":
        return bounds.held["sodium"].times(SALT_OF_SODIUM)
    return bounds.held[name]


def _line(name: str, unit: str, per_100_g: list[LowHigh], counted: list[PanelEntry], market: str) -> PanelLine:
    shares = _shares(name, per_100_g, counted, market)
    span = _sum(shares)
    return PanelLine(name, unit, span, _said("energy" if name in ENERGY_LINES else name, span), shares)


def _shares(
    name: str, per_100_g: list[LowHigh], counted: list[PanelEntry], market: str, scale: Fraction = Fraction(1)
) -> tuple[Brought, ...]:
    """What each ingredient brings to 100 g of the food, so many times, each once."""
    found: dict[str, Brought] = {}
    for span, one in zip(per_100_g, counted, strict=True):
        brought = _brought(name, span, one, market).times(scale)
        there = found.get(one.entry.name)
        found[one.entry.name] = Brought(one.entry, brought if there is None else there.span.plus(brought))
    return tuple(found.values())


def _brought(name: str, span: LowHigh, one: PanelEntry, market: str) -> LowHigh:
    """What an entry brings to 100 g of the food: less what a drained liquid may have taken of it, and less the alcohol that the heat may
    have taken."""
    low, high = span.low * one.low / 100, span.high * one.high / 100
    held, share = one.bounds.held, one.low / 100
    gone = NOTHING
    if name in DISSOLVES:
        low -= low * one.leached
    elif name == "carbohydrate":
        gone = held["sugars"].high * share * one.leached
    elif name in ENERGY_LINES:
        unit = ENERGY_LINES[name]
        factors = factors_of(market, unit)
        gone = held["sugars"].high * factors["carbohydrate"] * share * one.leached
        gone += held["alcohol"].high * factors["alcohol"] * share if one.heated else NOTHING
    return LowHigh(max(low - gone, NOTHING), high)


def _sum(shares: tuple[Brought, ...]) -> LowHigh:
    found = NONE_OF_IT
    for share in shares:
        found = found.plus(share.span)
    return found


def _said(line: str, span: LowHigh) -> str:
    """Both ends print the same; or the span is so small beside the tolerance that its middle is printed; else nothing."""
    low, high = eu_text(line, span.low), eu_text(line, span.high)
    if low == high:
        return low
    middle = span.middle
    if line == "energy":
        return eu_text(line, middle) if span.width <= middle * ENERGY_WIDTH else ""
    return eu_text(line, middle) if span.width / 2 <= tolerance_of(line, middle) * WIDTH_OF_TOLERANCE else ""


def figure_in(line: PanelLine, market: str, grams: Fraction) -> str:
    """A figure that is known for 100 g, for so many grams: worked out from the figure as it is, then rounded."""
    middle = line.span.middle * grams / 100
    if market == US:
        return us_text("calories" if line.name in ENERGY_LINES else line.name, middle)
    return eu_text("energy" if line.name in ENERGY_LINES else line.name, middle)


# ---- the United States ------------------------------------------------------------------------------


US_LINES = ("fat", "saturates", "sodium", "carbohydrate", "fibre", "sugars", "protein")


def _us_lines(counted: list[PanelEntry], servings: Fraction) -> Iterator[PanelLine]:
    """Per serving. Carbohydrate is with its fibre, and protein by the factor of its own table."""
    energy = [energy_of(one.entry, US, "kcal") for one in counted]
    yield _us_line("energy kcal", "kcal", energy, counted, servings)
    for name in US_LINES:
        spans = [_us_part(name, one.bounds) for one in counted]
        yield _us_line(name, "mg" if name == "sodium" else "g", spans, counted, servings)


def _us_part(name: str, bounds: Bounds) -> LowHigh:
    held = bounds.held
    return held["carbohydrate"].plus(held["fibre"]) if name == "carbohydrate" else held[name]


def _us_line(
    name: str, unit: str, per_100_g: list[LowHigh], counted: list[PanelEntry], servings: Fraction
) -> PanelLine:
    shares = _shares(name, per_100_g, counted, US, servings * (MILLIGRAMS if unit == "mg" else 1))
    span = _sum(shares)
    return PanelLine(name, unit, span, _us_said("calories" if name in ENERGY_LINES else name, span, servings), shares)


def _us_said(line: str, span: LowHigh, servings: Fraction) -> str:
    low, high = us_text(line, span.low), us_text(line, span.high)
    if low == high:
        return low
    middle = span.middle
    if line == "calories":
        return us_text(line, middle) if span.width <= middle * ENERGY_WIDTH else ""
    as_eu, per = ("salt", SALT_OF_SODIUM / MILLIGRAMS) if line == "sodium" else (line, Fraction(1))
    per_100 = middle * per / servings
    allowed = tolerance_of(as_eu, per_100) * WIDTH_OF_TOLERANCE
    return us_text(line, middle) if span.width * per / servings / 2 <= allowed else ""
