"""How many pieces lie on an oven floor or a tray, where, and in what order they go in. An estimate.

Millimetres, exact; roots are taken down to a tenth of one.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from math import isqrt

from manchet.batch.model import PieceBatch
from manchet.batch.tins import tin_called
from manchet.batch.work import Work, once
from manchet.figures.figure import Figure, Given
from manchet.formula.model import Formula
from manchet.kitchen.model import Floor, Oven
from manchet.quantities.printing import decimal
from manchet.records import NamedTuple
from manchet.syntax.vocabulary import GATHERS

GAP = Fraction(20)
"""Between pieces on a tray or a floor, for a soft skin to set. Common practice: two fingers."""
MOST = 2000
"""More pieces than this are on no floor."""
NOTHING = Fraction(0)

LONG = {"stick": 8, "baguette": 8, "baton": 8, "batard": 2, "oval": 2, "long": 3}
"""How many times as long as wide a piece is, by the word it is shaped as; all else lies round. Our rule."""
THIN = Fraction(5)
"""Millimetres that a flat piece is thick where the file does not say it. Our rule: flatbreads lie at 3 to 10."""
DENSE = Fraction("1.1")
"""Grams to a millilitre of a dough whose gas is rolled out. Common practice: dough without gas has 1.1 to 1.2 kg/l."""
PI = Fraction(355, 113)


class Spot(NamedTuple):
    """The middle of a piece, in millimetres from the left and from the back."""

    x: Fraction
    y: Fraction


class Footprint(NamedTuple):
    """What a piece takes of the floor, in millimetres: from side to side and from door to back."""

    wide: Fraction
    deep: Fraction


def across(grams: Fraction) -> Fraction:
    """About how wide a round piece is when baked: 20 mm times the cube root of its grams, in whole millimetres
    (900 g: 19 cm; 60 g: 8 cm; common practice)."""
    cubed, wide = grams * 8000, 1
    while (wide + 1) ** 3 <= cubed:
        wide += 1
    return Fraction(wide)


def footprint(work: Work, piece: PieceBatch) -> Footprint | None:
    """The place of one piece, its long side from door to back (`fullest` tries it across too): its tin's (None where nobody
    has measured that); else by weight and shape. One that is rolled or pressed flat is as wide as its dough makes it at its
    thickness, if that is wider than it would be risen. A long piece of the same weight keeps its volume: as wide as a round one
    / the cube root of how many times as long as wide it is."""
    if piece.tin:
        tin = tin_called(piece.tin, work.kitchen)
        return None if tin is None or tin.rim is None else Footprint(min(tin.rim), max(tin.rim))
    times = next((LONG[word] for word in shapes(work.formula, piece.noun) if word in LONG), 1)
    thick = thickness(work.formula, piece.noun)
    wide = max(across(piece.grams / times), NOTHING if thick is None else across_flat(piece.grams / times, thick))
    return Footprint(wide, wide * times)


def across_flat(grams: Fraction, thick: Fraction) -> Fraction:
    """How wide a disc of so much dough is at a thickness, in whole millimetres: area = grams / (1.1 kg/l) / thickness."""
    return Fraction(isqrt(int(4 * grams * 1000 / DENSE / thick / PI)))


def thickness(formula: Formula, noun: str) -> Fraction | None:
    """Millimetres that pieces are thick when they go in, where the last thing done to their form is to roll or press them
    flat (`roll out to 3 mm`, `shape flat`); None for all else."""
    thick: Fraction | None = None
    for step in formula.way_of(noun):
        said = next((reach.value.likely for reach in step.reaches if reach.what == "length"), None)
        if step.verb == "roll out" or (step.verb == "press" and said is not None):
            thick = said or THIN
        elif step.verb == "shape" and "flat" in (step.shape.casefold(), *step.manner):
            thick = thick or THIN
        elif step.verb in GATHERS:
            thick = None
    return thick


def shapes(formula: Formula, noun: str) -> Iterator[str]:
    """The words a piece is shaped as, the last first: `shape round`, then `shape long`, is long."""
    for step in reversed(formula.way_of(noun)):
        if step.verb == "shape":
            yield from (step.shape.casefold(), *reversed(step.manner))


def places(floor: Floor, wide: Fraction, deep: Fraction, gap: Fraction, most: int = MOST) -> tuple[Spot, ...]:
    """Where pieces of `wide` by `deep` lie with `gap` between them, in loading order: the back row first, each row
    from the sides to the middle, so that the peel never passes over a piece."""
    found: list[Spot] = []
    for y, left, right in _rows(floor, deep, gap):
        number = min(_in_a_row(left, right, wide, gap), most - len(found))
        found += [Spot(x, y) for x in _outer_first(_spread(left, right, wide, gap, number))]
    return tuple(found)


def room_for(floor: Floor, wide: Fraction, deep: Fraction, gap: Fraction) -> int:
    """How many such pieces lie on a floor: as many as `places` has places, without finding them."""
    if not floor.is_round:
        return min(_in_a_row(NOTHING, Fraction(floor.across), wide, gap) * _rows_of(floor, deep, gap), MOST)
    return min(sum(_in_a_row(left, right, wide, gap) for _, left, right in _rows(floor, deep, gap)), MOST)


def _rows(floor: Floor, deep: Fraction, gap: Fraction) -> Iterator[tuple[Fraction, Fraction, Fraction]]:
    """The rows from the back: the middle of each, and from where to where the floor reaches there."""
    for y in _spread(NOTHING, floor.deep, deep, gap, _rows_of(floor, deep, gap)):
        yield (y, *_chord(floor, y - deep / 2, y + deep / 2))


def _rows_of(floor: Floor, deep: Fraction, gap: Fraction) -> int:
    return max(0, int((floor.deep + gap) // (deep + gap)))


def _in_a_row(left: Fraction, right: Fraction, wide: Fraction, gap: Fraction) -> int:
    return max(0, int((right - left + gap) // (wide + gap)))


def _chord(floor: Floor, top: Fraction, foot: Fraction) -> tuple[Fraction, Fraction]:
    """From where to where the floor reaches at both of these heights."""
    if not floor.is_round:
        return NOTHING, Fraction(floor.across)
    half = Fraction(floor.across) / 2
    far = max(abs(top - half), abs(foot - half))
    reach = Fraction(isqrt(int((half * half - far * far) * 100)), 10) if far < half else NOTHING
    return half - reach, half + reach


def _spread(start: Fraction, end: Fraction, wide: Fraction, gap: Fraction, number: int) -> list[Fraction]:
    """The middles of so many pieces between two walls: evenly, and never nearer to each other than the gap."""
    if number < 1:
        return []
    free = end - start - number * wide
    between = max(gap, free / number)
    edge = (free - (number - 1) * between) / 2
    return [start + edge + wide / 2 + at * (wide + between) for at in range(number)]


def _outer_first(row: list[Fraction]) -> list[Fraction]:
    order: list[Fraction] = []
    while row:
        order.append(row.pop(0))
        if row:
            order.append(row.pop())
    return order


class FloorLoad(NamedTuple):
    """What one load of a floor holds: so many pieces, each taking this place."""

    piece: Footprint
    number: int
    floor: Floor

    @property
    def lie(self) -> tuple[Spot, ...]:
        """Where they lie."""
        return places(self.floor, self.piece.wide, self.piece.deep, GAP, self.number)


@once
def load_of(work: Work, piece: PieceBatch, oven: Oven) -> FloorLoad | None:
    """The fullest load of one sort, long pieces with their ends to the door or lying across, whichever are more; empty
    where none goes through the door. None: floor or tin is not measured."""
    one = footprint(work, piece)
    if oven.floor is None or one is None or piece.grams <= 0:
        return None
    return fullest(oven.floor, one, oven.door)


def fullest(floor: Floor, one: Footprint, door: Fraction | None = None) -> FloorLoad:
    """As many as lie on a floor, lengthways or across; lengthways where that is as many."""
    ways = [
        FloorLoad(way, room_for(floor, way.wide, way.deep, GAP), floor) for way in (one, Footprint(one.deep, one.wide))
    ]
    through = [load for load in ways if door is None or load.piece.wide <= door]
    return max(through, key=lambda load: load.number, default=FloorLoad(one, 0, floor))


def load_figures(work: Work, oven: Oven | None) -> dict[str, Figure]:
    """How many of each sort the oven of the bake takes at once, as an estimate."""
    found: dict[str, Figure] = {}
    where = work.kitchen.where
    for piece in work.batch.pieces:
        load = None if oven is None else load_of(work, piece, oven)
        if load is None or oven is None or oven.floor is None:
            continue
        noun = piece.noun or "pieces"
        thick = thickness(work.formula, piece.noun)
        how = "by its tin" if piece.tin else "by its weight and shape"
        if thick is not None and not piece.tin:
            how = f"by its weight, flat, {decimal(thick, 0)} mm thick"
        given = (
            Given(f"{oven.name}, across", oven.floor.across, "mm", where),
            Given(f"{oven.name}, door to back", oven.floor.deep, "mm", where),
            Given(f"one of the {noun}, from side to side", load.piece.wide, "mm", how),
            Given(f"one of the {noun}, door to back", load.piece.deep, "mm", how),
            Given("between two", GAP, "mm", "our rule"),
        )
        found[f"{noun} in one load of {oven.name}, estimate"] = Figure(
            f"{noun} in one load", Fraction(load.number), "",
            "rows from the back, as many as lie side by side in each", given,
            "a round piece is 20 mm x the cube root of its grams across: common practice; a flat one as wide as its volume "
            "makes it (1.1 kg/l), if that is wider",
        )  # fmt: skip
    return found
