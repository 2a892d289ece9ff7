"""What a wait becomes when the place is not as warm as written, and the yeast that moves it. All of it estimates."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from fractions import Fraction

from manchet.figures.fermentation.yeast_rate import (
    BAKERS,
    NOTHING,
    SOUR_BACTERIA,
    SOUR_YEAST,
    THUMB_SOURCE,
    Leaven,
    holds,
    longer_by_thumb,
    rising_pace,
)
from manchet.figures.figure import Figure, Given
from manchet.formula.model import Formula, Range, Stage, Step
from manchet.quantities.printing import decimal, round_to
from manchet.records import NamedTuple
from manchet.syntax.vocabulary import BY_LEAVEN

AROUND = (-4, -2, 2, 4)
"""Degrees from the written ones for which a wait is told."""

SLICES = 12
"""Into how many pieces a falling or rising temperature is cut; more change no printed figure."""


class Elsewhere(NamedTuple):
    """A wait at another temperature: seconds, from the shortest to the longest of what is written and who works. One range,
    whoever prints it."""

    celsius: Fraction
    seconds: Range
    by_thumb: Fraction
    """The likely time by the trade's rule of thumb, to read beside it."""


class Waiting(NamedTuple):
    """A wait with a time and a temperature, and what works in it."""

    where: str
    """The stage or the bread it belongs to."""
    step: Step
    time: Range
    leavens: tuple[Leaven, ...]

    @property
    def celsius(self) -> Fraction:
        """As written; halfway, where it falls or rises."""
        first, last = ends(self.step)
        return (first + last) / 2

    def at(self, celsius: Fraction) -> Elsewhere | None:
        """The same work done at one other temperature; None outside the model's range for any that work in it."""
        first = ends(self.step)[0]
        if not all(holds(leaven, celsius) and holds(leaven, first) for leaven in self.leading):
            return None
        longer = [mean_pace(leaven, self.step) / rising_pace(leaven, celsius) for leaven in self.leading]
        low = self.time.likely if self.time.low is None else self.time.low
        high = self.time.likely if self.time.high is None else self.time.high
        thumb = self.time.likely * longer_by_thumb(self.celsius, celsius)
        return Elsewhere(celsius, Range(low * min(longer), high * max(longer)), thumb)

    @property
    def leading(self) -> tuple[Leaven, ...]:
        """Who is waited for: baker's yeast where there is any, for it is faster than a sour's; else all that live in it."""
        return (BAKERS,) if BAKERS in self.leavens else self.leavens


def waits_of(formula: Formula) -> tuple[Waiting, ...]:
    """Every wait of a formula that has a time, a temperature and something alive in it, in working order."""
    found: list[Waiting] = []
    for stage in formula.stages:
        found += _waits(stage.name, stage.steps, leavens_of(stage, formula))
    for branch in formula.branches:
        found += _waits(branch.noun, branch.steps, leavens_of(formula.dough, formula))
    return tuple(found)


def _waits(where: str, steps: Iterable[Step], leavens: tuple[Leaven, ...]) -> Iterator[Waiting]:
    for step in steps:
        if leavens and step.verb in BY_LEAVEN and step.time is not None and step.heats:
            yield Waiting(where, step, step.time, leavens)


def leavens_of(stage: Stage, formula: Formula) -> tuple[Leaven, ...]:
    """What works in a stage, its own and what other stages bring. Bacteria count where a sour is to ripen."""
    classes = set(_classes(stage, formula))
    found = []
    if not classes.isdisjoint(("yeast", "sweet-dough yeast")):
        found.append(BAKERS)
    if "culture" in classes:
        found.append(SOUR_YEAST)
        if any(step.verb == "ripen" for step in stage.steps):
            found.append(SOUR_BACTERIA)
    return tuple(found)


def _classes(stage: Stage, formula: Formula) -> Iterator[str]:
    for portion in stage.portions:
        if portion.ingredient is not None:
            yield portion.ingredient.class_
        inner = formula.stage(portion.stage)
        if inner is not None:
            yield from _classes(inner, formula)


def ends(step: Step) -> tuple[Fraction, Fraction]:
    """Celsius at the start and at the end of a step that has a temperature."""
    first = step.heats[0].celsius.likely
    return first, first if step.ramp is None else step.ramp[1].likely


def mean_pace(leaven: Leaven, step: Step) -> Fraction:
    """How fast it works on the average of a step that has a temperature; one that falls or rises does so steadily."""
    first, last = ends(step)
    if first == last:
        return rising_pace(leaven, first)
    width = (last - first) / SLICES
    return sum((rising_pace(leaven, first + width * (2 * n + 1) / 2) for n in range(SLICES)), NOTHING) / SLICES


def hours_at(celsius: Fraction, steps: Iterable[Step], leaven: Leaven = BAKERS) -> Fraction | None:
    """The waiting of some steps as hours at one temperature; None where one has none or is outside the model's range."""
    total = NOTHING
    for step in steps:
        if step.time is None:
            continue
        if not step.heats or not holds(leaven, celsius) or not all(holds(leaven, end) for end in ends(step)):
            return None
        total += step.time.likely / 3600 * mean_pace(leaven, step) / rising_pace(leaven, celsius)
    return total


def fermentation_figures(formula: Formula, air: Fraction | None = None) -> dict[str, Figure]:
    """For each wait what it takes some degrees cooler and warmer, in minutes, by a name that says so.

    `air` is the kitchen's, Celsius: a wait that names no place of its own is told for it too.
    """
    found: dict[str, Figure] = {}
    for wait in waits_of(formula):
        place = wait.step.place.where
        written = (
            Given(f"{wait.step.verb} as written", wait.time.likely / 60, "min", place),
            Given("as warm as", wait.celsius, "C", place),
        )
        elsewhere = {wait.celsius + degrees for degrees in AROUND}
        if air is not None and wait.step.where is None:
            elsewhere.add(air)
        for celsius in sorted(elsewhere - {wait.celsius}):
            there = wait.at(celsius)
            if there is None:
                continue
            name = f"{wait.where}, {wait.step.verb} at {decimal(there.celsius, 1)} C"
            thumb = Figure("by the rule of thumb", _minutes(there.by_thumb), "min",
                           "a tenth longer for each degree cooler", (), THUMB_SOURCE)  # fmt: skip
            low, high = (decimal(_minutes(end or NOTHING), 0) for end in there.seconds)
            rule = (
                f"an estimate, {low if low == high else f'{low} to {high}'} min: the written time x "
                f"how fast {' and '.join(leaven.name for leaven in wait.leading)} worked / how fast there"
            )
            source = "; ".join(leaven.source for leaven in wait.leading)
            found.setdefault(name, Figure(name, _minutes(there.seconds.likely), "min", rule, (*written, thumb), source))
    return found


def _minutes(seconds: Fraction) -> Fraction:
    """No finer than an estimate is: to five minutes from half an hour on, to half an hour from five hours on."""
    step = 1 if seconds < 1800 else 5 if seconds < 18_000 else 30
    return round_to(seconds / 60 / step, 0) * step
