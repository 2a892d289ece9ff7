"""What a tin, an oven floor or a door measures, and how a fire falls, as the lines of a kitchen say it."""

from __future__ import annotations

from fractions import Fraction

from manchet.kitchen.model import Fall, Floor, LoadTakes
from manchet.kitchen.tin_volume import box_volume, round_volume, tapered_volume
from manchet.larder.figures import worth
from manchet.quantities.units import LENGTH, MASS, TEMPERATURE, UNITS
from manchet.syntax.nodes import Amount, Setting

LEAST, MOST = Fraction(5), Fraction(20_000)
"""Millimetres between which anything lies that is baked in or on. Our rule."""
STEEPEST = Fraction(300)
"""Degrees Celsius an hour: no oven that bakes loses more. Our rule."""

SIZE_EXAMPLES = {
    "inside": "230 x 110 x 95 mm", "top": "229 x 114 mm", "bottom": "210 x 96 mm", "round": "200 mm",
    "deep": "80 mm", "floor": "120 x 90 cm", "round floor": "110 cm", "door": "45 cm",
}  # fmt: skip
FALL_EXAMPLE = "12 C an hour from 250 C"
LOAD_EXAMPLE = "15 C for 20 kg dough"
_SIDES = {"inside": (3,), "top": (2,), "bottom": (1, 2), "floor": (2,)}
"""How many measures a line has; one where none is said. A bottom of one measure is a round tin's."""

Sides = tuple[Fraction, ...]


def sides_of(node: Setting) -> Sides | None:
    """The measures of a line in millimetres; the last one's unit is that of all that have none. None: they do not fit."""
    if len(node.amounts) not in _SIDES.get(node.key, (1,)):
        return None
    sides = tuple(_millimetres(amount, node.amounts[-1].unit) for amount in node.amounts)
    known = tuple(side for side in sides if side is not None and LEAST <= side <= MOST)
    return known if len(known) == len(sides) else None


def _millimetres(amount: Amount, unit: str) -> Fraction | None:
    found = UNITS.get(amount.unit or unit)
    if found is None or found.dimension != LENGTH or amount.low is None or amount.low != amount.high:
        return None
    return amount.low * found.factor


def volume_of(sides: dict[str, Sides]) -> Fraction | None:
    """Millilitres to the rim by what is measured; None where a measure is missing or two do not go together."""
    wide, bottom = sides.get("round") or sides.get("top"), sides.get("bottom")
    if "inside" in sides:
        length, width, depth = sides["inside"]
        return box_volume(length, width, depth) if len(sides) == 1 else None
    if wide is None or "deep" not in sides or len(sides) != 2 + (bottom is not None):
        return None
    (depth,) = sides["deep"]
    below = bottom or wide
    if len(below) != len(wide):
        return None
    if len(wide) == 1:
        return round_volume(wide[0], depth, below[0])
    return tapered_volume((wide[0], wide[1]), (below[0], below[1]), depth)


def rim_of(sides: dict[str, Sides]) -> Sides | None:
    """How long and wide a tin is at its rim, in millimetres: the place it takes."""
    wide = sides.get("inside") or sides.get("top") or sides.get("round")
    return None if wide is None else (wide[0], wide[0] if len(wide) == 1 else wide[1])


def base_of(sides: dict[str, Sides]) -> Sides | None:
    """The same at its floor: as wide as the rim where no bottom is measured."""
    below = sides.get("bottom")
    return rim_of(sides) if below is None else (below[0], below[0] if len(below) == 1 else below[1])


def depth_of(sides: dict[str, Sides]) -> Fraction | None:
    """From the rim of a tin to its floor, in millimetres."""
    return sides["inside"][2] if "inside" in sides else sides["deep"][0] if "deep" in sides else None


def floor_of(sides: dict[str, Sides]) -> Floor | None:
    """An oven floor of two measures is as wide as the first says, seen from the door, and as deep as the second."""
    if "floor" in sides:
        return Floor(sides["floor"][0], sides["floor"][1])
    return Floor(sides["round floor"][0], sides["round floor"][0], True) if "round floor" in sides else None


def fall_of(node: Setting) -> Fall | None:
    """`falls 10-13 C an hour from 250 C`: the first is a difference (18 F are 10 C), the second a reading."""
    if len(node.amounts) != 2:
        return None
    drops, start = drops_of(node.amounts[0]), node.amounts[1]
    if drops is None or start.unit not in UNITS or UNITS[start.unit].dimension != TEMPERATURE:
        return None
    if start.low is None or start.low != start.high:
        return None
    of, (least, most) = UNITS[start.unit], drops
    fall = Fall((least + most) / 2, (start.low - of.offset) * of.factor)
    return fall if least == most else fall._replace(slowest=least, fastest=most)


def load_takes_of(node: Setting) -> LoadTakes | None:
    """`each load cools it 15 C for 20 kg dough`: a difference (27 F are 15 C), and the dough it was measured with, if said."""
    drop = drop_of(node.amounts[0]) if node.amounts else None
    dough = worth(node.amounts[1], MASS) if len(node.amounts) > 1 else None
    if drop is None or (dough is not None and dough <= 0) or (dough is None and len(node.amounts) > 1):
        return None
    return LoadTakes(drop, dough)


def drop_of(amount: Amount) -> Fraction | None:
    """A single difference of temperature, see `drops_of`."""
    drops = drops_of(amount)
    return drops[0] if drops is not None and drops[0] == drops[1] else None


def drops_of(amount: Amount) -> tuple[Fraction, Fraction] | None:
    """A difference of temperature in Celsius, least and most: above nothing, and no more than an oven loses in an hour."""
    if amount.unit not in UNITS or UNITS[amount.unit].dimension != TEMPERATURE:
        return None
    if amount.low is None or amount.high is None:
        return None
    least, most = (end * UNITS[amount.unit].factor for end in (amount.low, amount.high))
    return (least, most) if 0 < least <= most <= STEEPEST else None
