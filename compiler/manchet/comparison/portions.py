"""What is weighed into a stage, as far as the overall formula does not tell it: a wetter poolish, scalding water of another heat."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Set
from fractions import Fraction

from manchet.comparison.materials import LEAVENS
from manchet.comparison.values import HeldBack, KeptChange, LiquidWarmth, ShareChange
from manchet.formula.model import Portion, Stage
from manchet.records import NamedTuple

FOLLOWS = "all flour"
"""Per cents of a stage that are of this follow from overall: `all of the millet`."""
NOTHING = Fraction(0)


class StageLine(NamedTuple):
    """An ingredient of a stage, all its lines together; `percent` None where no per cent is told of it."""

    portion: Portion
    percent: Fraction | None

    @property
    def is_leaven(self) -> bool:
        ingredient = self.portion.ingredient
        return ingredient is not None and ingredient.class_ in LEAVENS


def stage_changes(before: Stage, after: Stage, names: Mapping[str, str], told: Set[str]) -> Iterator[ShareChange]:
    """`names` are the newer keys by the older ones, of what was exchanged or is called otherwise. Of what is `told` already, by key, only
    those per cents are that do not follow from overall."""
    old, new = _lines(before, names), _lines(after, {})
    for key in dict.fromkeys((*new, *old)):
        a, b = old.get(key), new.get(key)
        known = b or a
        if known is None:
            continue
        basis = known.portion.basis
        shares = (None if a is None else a.percent, None if b is None else b.percent)
        written = basis not in (FOLLOWS, "")
        if shares[0] != shares[1] and (key not in told or (written and a is not None and b is not None)):
            was, now = (None if percent is None else percent / 100 for percent in shares)
            name = known.portion.name
            yield ShareChange(name, key, after.name, was, now, NOTHING, NOTHING, known.is_leaven, basis)


def warmth_changes(before: Stage, after: Stage, names: Mapping[str, str]) -> Iterator[LiquidWarmth]:
    """How warm things are weighed in."""
    old, new = _lines(before, names), _lines(after, {})
    for key, line in new.items():
        was, now = (old[key].portion.celsius if key in old else None), line.portion.celsius
        if key in old and was != now:
            yield LiquidWarmth(after.name, line.portion.name, was, now)


def held_changes(before: Stage, after: Stage, names: Mapping[str, str]) -> Iterator[HeldBack]:
    """How much of a thing is held back, where both sides hold some of it and one of them not all. That it is held back at all the step says
    that adds it."""
    old, new = _held(before, names), _held(after, {})
    for key, (name, now) in new.items():
        if key in old and old[key][1] != now:
            yield HeldBack(after.name, name, old[key][1], now)


def _held(stage: Stage, names: Mapping[str, str]) -> dict[str, tuple[str, Fraction | None]]:
    held: dict[str, tuple[str, Fraction | None]] = {}
    for portion in stage.portions:
        if portion.held:
            whole = all(one.held for one in stage.portions if one.key == portion.key)
            held[names.get(portion.key, portion.key)] = portion.name, None if whole else portion.share
    return held


def _lines(stage: Stage, names: Mapping[str, str]) -> dict[str, StageLine]:
    found: dict[str, StageLine] = {}
    for portion in stage.portions:
        key = names.get(portion.key, portion.key)
        there = found.get(key)
        percent = portion.percent
        if there is not None and there.percent is not None and percent is not None:
            percent += there.percent
        found[key] = StageLine(portion if there is None else there.portion, percent)
    return found


def kept_changes(before: Stage, after: Stage) -> Iterator[KeptChange]:
    """What is kept of it for next time."""
    old = {keep.key: keep for keep in before.keeps}
    new = {keep.key: keep for keep in after.keeps}
    for key, known in {**old, **new}.items():
        was, now = (("", None) if one is None else (one.how, one.grams) for one in (old.get(key), new.get(key)))
        if was != now:
            yield KeptChange(after.name, known.name, was, now)
