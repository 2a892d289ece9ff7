"""How fast a tub of dough grows cold in the fridge: the middle of it, an estimate between a still and a blowing fridge.

It is the model of `cooling`, step by step, for what the leaven does meanwhile. The heat the yeast makes is left out.
"""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction

from manchet.batch.model import Batch
from manchet.batch.work import Work, once
from manchet.figures.fermentation.another_warmth import leavens_of
from manchet.figures.fermentation.cooling import BLOWING, STILL, seconds_of_lag
from manchet.figures.fermentation.yeast_rate import NOTHING, Leaven, holds, pace
from manchet.figures.figure import Figure, Given
from manchet.formula.model import Stage, Step
from manchet.quantities.printing import decimal, round_to
from manchet.records import NamedTuple
from manchet.syntax.vocabulary import BY_LEAVEN, IN_FRIDGE

STEP = Fraction(600)
"""Seconds of one step of the reckoning."""
LONGEST = 48 * 6
"""Steps after which a dough counts as cold."""


class Cooling(NamedTuple):
    """The middle of the dough at each step of ten minutes, Celsius: fastest and slowest."""

    fast: tuple[Fraction, ...]
    slow: tuple[Fraction, ...]

    def seconds_to(self, celsius: Fraction) -> tuple[Fraction, Fraction | None] | None:
        """From when to when the middle is as cold as that. None: not within two days (second: not if slow)."""
        soon, late = (next((n * STEP for n, t in enumerate(c) if t <= celsius), None) for c in (self.fast, self.slow))
        return None if soon is None else (soon, late)

    def work(self, leaven: Leaven, seconds: Fraction) -> tuple[Fraction, Fraction]:
        """What the leaven does in the first so many seconds, as seconds at the temperature the dough came with."""
        steps = int(seconds / STEP)
        least, most = (sum((pace(leaven, t) for t in c[:steps]), NOTHING) for c in (self.fast, self.slow))
        full = pace(leaven, self.fast[0])
        return (least * STEP / full, most * STEP / full) if full else (NOTHING, NOTHING)


def cooling(grams: Fraction, start: Fraction, fridge: Fraction) -> Cooling:
    """A tub of so many grams of dough, put into the fridge at `start`."""
    return Cooling(_curve(grams, start, fridge, BLOWING), _curve(grams, start, fridge, STILL))


def _curve(grams: Fraction, start: Fraction, fridge: Fraction, skin: Fraction) -> tuple[Fraction, ...]:
    share = min(STEP / seconds_of_lag(grams, skin), Fraction(1))
    found = [start]
    for _ in range(LONGEST):
        found.append(round_to(found[-1] + (fridge - found[-1]) * share, 3))
    return tuple(found)


COLD = Fraction(8)
"""Celsius: warmer is no fridge; and the middle counts as cold two degrees above its fridge's temperature. Our rules."""
NEAR = Fraction(2)


class Chilled(NamedTuple):
    """Dough that is put into the fridge while it is warm."""

    where: str
    """The stage, or the bread, it belongs to."""
    branch: str
    """The noun of the branch; "" before the dough is divided into branches."""
    stage: Stage
    step: Step
    grams: Fraction
    """In one piece: a bowl's dough before it is divided, a piece after."""
    warmth: Fraction
    """Celsius that it last reached."""

    @property
    def fridge(self) -> Fraction:
        return self.step.heats[0].celsius.likely

    @property
    def cooling(self) -> Cooling:
        return cooling(self.grams, self.warmth, self.fridge)

    @property
    def cold_after(self) -> tuple[Fraction, Fraction] | None:
        """Seconds until the middle is cold: before a fan, and in still air; to half an hour, from three hours on to one.

        None where it takes more than two days.
        """
        found = self.cooling.seconds_to(self.fridge + NEAR)
        if found is None or found[1] is None:
            return None
        return _to_print(found[0]), _to_print(found[1])


def _to_print(seconds: Fraction) -> Fraction:
    step = 1800 if seconds < 3 * 3600 else 3600
    return max(round_to(seconds / step, 0), Fraction(1)) * step


@once
def chilled_in(work: Work) -> tuple[Chilled, ...]:
    """Each time that a dough, or what is made before it, is put into a fridge while it is warm."""
    batch, mixes = work.batch, work.mixes
    found: list[Chilled] = []
    for making in mixes.makings[:-1]:
        stage = making.stage.stage
        found += _followed(stage.name, "", stage, stage.steps, making.stage.out / making.times, None, batch)[0]
    dough = batch.formula.dough
    of_dough, grams, warmth = _followed(dough.name, "", dough, dough.steps, batch.dough / mixes.number, None, batch)
    found += of_dough
    for branch in batch.formula.branches:
        piece = next((p.grams for p in batch.pieces if p.noun == branch.noun), grams)
        found += _followed(branch.noun, branch.noun, dough, branch.steps, piece, warmth, batch)[0]
    return tuple(found)


def _followed(
    where: str,
    branch: str,
    stage: Stage,
    steps: Iterable[Step],
    grams: Fraction,
    warmth: Fraction | None,
    batch: Batch,
) -> tuple[list[Chilled], Fraction, Fraction | None]:
    """What is chilled on the way through some steps; how large and how warm it is at their end."""
    found: list[Chilled] = []
    for step in steps:
        cold = step.verb in IN_FRIDGE and bool(step.heats) and step.heats[0].celsius.likely <= COLD
        if cold and warmth is not None and warmth > step.heats[0].celsius.likely + NEAR:
            found.append(Chilled(where, branch, stage, step, grams, warmth))
        if step.verb == "divide" and batch.pieces:
            grams = batch.pieces[0].grams
        warmth = step.heats[0].celsius.likely if cold else _warmth(step, warmth)
    return found, grams, warmth


def chilling_figures(work: Work) -> dict[str, Figure]:
    """For each dough that goes into the fridge warm: in how many hours its middle is cold, and what its leaven does
    until then and after."""
    found: dict[str, Figure] = {}
    for one in chilled_in(work):
        cold = _cold_after(one)
        if cold is None:
            continue
        found.setdefault(f"{one.where}, {one.step.verb}: cold after", cold)
        works = _works_on(one, work.batch, cold)
        if works is not None:
            found.setdefault(f"{one.where}, {one.step.verb}: works on as if for", works)
    return found


def _warmth(step: Step, before: Fraction | None) -> Fraction | None:
    """How warm the dough is after a step, as far as the file says."""
    reached = next((r.value.likely for r in step.reaches if r.what == "temperature"), None)
    if reached is not None:
        return reached
    if step.verb in BY_LEAVEN and step.heats:
        return step.heats[0].celsius.likely
    return before


def _cold_after(one: Chilled) -> Figure | None:
    if one.cold_after is None:
        return None
    soon, late = (seconds / 3600 for seconds in one.cold_after)
    place = one.step.place.where
    return Figure(
        "cold after", round_to(soon + late, 0) / 2, "h",
        f"an estimate, {decimal(soon)} to {decimal(late)} h (a fan, still air) until the middle is within "
        f"{decimal(NEAR)} C of the fridge: a cube of dough that loses heat through itself and its skin",
        (Given("dough in one piece", one.grams, "g", place), Given("as warm as", one.warmth, "C", place),
         Given("the fridge", one.fridge, "C", place)),
        "specific heat: Geankoplis, Transport Processes, A.4; conduction and air: Incropera, from memory",
    )  # fmt: skip


def _works_on(one: Chilled, batch: Batch, cold: Figure) -> Figure | None:
    """The work of the fridge's hours as hours in the warmth the dough came with; None where nobody works, or no time is said."""
    leavens = leavens_of(one.stage, batch.formula)
    if not leavens or one.step.time is None or not all(holds(leaven, one.warmth) for leaven in leavens):
        return None
    ends = [end for leaven in leavens for end in one.cooling.work(leaven, one.step.time.likely)]
    low, high = (round_to(end / 1800, 0) / 2 for end in (min(ends), max(ends)))
    place = one.step.place.where
    return Figure(
        "works on as if for", (low + high) / 2, "h",
        f"an estimate, {decimal(low)} to {decimal(high)} h at {decimal(one.warmth)} C do as much, most of it before the "
        "dough is cold",
        (Given(one.step.verb, one.step.time.likely / 3600, "h", place), cold),
        "; ".join(leaven.source for leaven in leavens),
    )  # fmt: skip
