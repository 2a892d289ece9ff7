"""The yeast that moves a wait to another time or another warmth: for a poolish, a biga, a sponge, a straight dough.

Only where baker's yeast weighed into the very stage does all the work, and no fridge takes part. In a longer wait yeast also
grows, so what is needed falls faster than the hours rise: with the square of time x pace, as formulas in print have it. The
bulk and the proof of a straight dough are taken together.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from decimal import Decimal, localcontext
from fractions import Fraction

from manchet.batch.work import Work, once
from manchet.figures.fermentation.another_warmth import Waiting, leavens_of, mean_pace
from manchet.figures.fermentation.yeast_rate import BAKERS, NOTHING, holds, rising_pace
from manchet.figures.figure import Figure, Given
from manchet.formula.model import Formula, Moved, Portion, Range, Stage, Step
from manchet.quantities.printing import decimal, round_to
from manchet.records import NamedTuple
from manchet.syntax.vocabulary import BY_LEAVEN, SLOWED_BY_COLD

STEP = Fraction(2)
"""Celsius between two columns."""
ACROSS = (-2, -1, 1, 2)
"""Columns beside the written one, in steps."""
DOWN = (Fraction(1, 2), Fraction(3, 4), Fraction(5, 4), Fraction(3, 2))
"""Rows above and below the written one, as shares of its time."""
HOUR = Fraction(3600)

YEASTS = frozenset({"yeast", "sweet-dough yeast"})
POWER = 2
"""By what power of its time x pace a wait wants less yeast."""
POWERS = Decimal("1.5"), Decimal("2.4")
"""The ends of it: half the yeast for 8 h in place of 5 (US Army), and the steepest of formulas in print."""

FURTHEST = 2
"""A wait is told no further than half and twice of what the written yeast would take there. Our rule."""

HOT, HOT_LONGEST = Fraction(35), Fraction(2 * 3600)
"""Celsius over which yeast is told for no longer than so many seconds: proofs stand at 32 to 38 C for an hour (Home Baking
Association), and what stays so warm all night sours and dies off. Our rule."""

PRACTICE = (
    "formulas in print for 2, 3, 5, 8 and 15 h have 11.0, 8.3, 5.6, 4.5 and 2.0 as yeast x hours x pace: the power lies "
    "between 1.5 and 2.4; US Army, Manual for Army Bakers, 1916: half the yeast, a sponge of 5 h takes up to 8 h"
)
RULE = "yeast as written x (the work of the written wait / (hours x how fast the yeast works there)) to the power of 2"

CARRIES_ON = "most of the bread's yeast is in it, so the dough moves too: go by its look"


class YeastWait(NamedTuple):
    """The waits of one stage that its own baker's yeast raises alone."""

    stage: Stage
    branch: str
    """The noun of the pieces whose proof is meant, where there are several sorts; else ""."""
    waits: tuple[Waiting, ...]
    portion: Portion
    """The yeast: its first line, should it stand in several."""
    share: Fraction
    """All of that yeast in the stage, grams per gram of all flour."""
    carries_on: bool
    """It is most of the bread's yeast, and goes on working in the dough: that moves too, and nobody can say how far."""

    @property
    def seconds(self) -> Range:
        """From the shortest to the longest that is written, all waits together."""
        return Range(
            sum((w.time.likely if w.time.low is None else w.time.low for w in self.waits), NOTHING),
            sum((w.time.likely if w.time.high is None else w.time.high for w in self.waits), NOTHING),
        )

    @property
    def likely(self) -> Fraction:
        return sum((w.time.likely for w in self.waits), NOTHING)

    @property
    def work(self) -> Fraction:
        """Seconds at the yeast's best that would do the same."""
        return sum((w.time.likely * mean_pace(BAKERS, w.step) for w in self.waits), NOTHING)

    @property
    def celsius(self) -> Range:
        """From the coolest to the warmest that is written."""
        found = [end for w in self.waits for end in _ends(w.step)]
        return Range(min(found), max(found))

    @property
    def mean(self) -> Fraction:
        """Celsius, each wait counting by its time."""
        return sum((w.time.likely * w.celsius for w in self.waits), NOTHING) / self.likely

    def times(self, seconds: Fraction, celsius: Fraction | None = None) -> Fraction | None:
        """By what the yeast is multiplied for so many seconds in all at one temperature (None: as warm as written).

        None outside the model's range, beyond `FURTHEST`, and where yeast does not live so long.
        """
        if seconds <= 0 or (celsius is not None and not holds(BAKERS, celsius)) or not self.lives(seconds, celsius):
            return None
        ratio = self.as_far(celsius) / seconds
        return ratio**POWER if Fraction(1, FURTHEST) <= ratio <= FURTHEST else None

    def as_far(self, celsius: Fraction | None) -> Fraction:
        """Seconds in which the written yeast would do the work there."""
        return self.likely if celsius is None else self.work / rising_pace(BAKERS, celsius)

    def lives(self, seconds: Fraction, celsius: Fraction | None = None) -> bool:
        """Whether yeast lives through such a wait; the written one is never doubted here."""
        warmest = (self.celsius.high or self.celsius.likely) if celsius is None else celsius
        written = celsius is None and seconds <= self.likely
        return written or warmest <= HOT or seconds <= HOT_LONGEST


def ends_of(times: Fraction) -> tuple[Fraction, Fraction]:
    """The same by the two ends of the power, the smaller first; `times` is by the likely one."""
    with localcontext() as exact:
        exact.prec = 30
        ratio = (Decimal(times.numerator) / Decimal(times.denominator)).sqrt()
        low, high = sorted(Fraction(ratio**power) for power in POWERS)
    return low, high


def yeast_waits(formula: Formula) -> tuple[YeastWait, ...]:
    """Every wait of a formula that yeast can move, in working order."""
    found = (_yeast_wait(stage, formula) for stage in formula.stages)
    return () if formula.preparation else tuple(wait for wait in found if wait is not None)


def why_not(stage: Stage, formula: Formula) -> str:
    """Why yeast cannot move the waits of a stage, as a part of a sentence; "" where it can."""
    steps = _steps(stage, formula)[0]
    yeasts = _own_yeast(stage)
    if "culture" in _classes_in(stage, formula):
        return "a culture works in it, and nobody weighs out how much of that is alive"
    if not yeasts:
        return "no yeast is weighed into it"
    if any(_raised(other, formula) for other in _stages_in(stage, formula)):
        return "what ferments before it brings yeast of its own, and nobody knows how much by then"
    if len({p.key for p in yeasts}) > 1:
        return "two sorts of yeast work in it"
    if any(step.verb in SLOWED_BY_COLD for step in steps):
        return "it stands in the cold, where the dough's own slow cooling decides"
    waits = [step for step in steps if step.verb in BY_LEAVEN]
    if not waits:
        return "it has no wait that ends when the yeast has done its work (`ripen`, `ferment`, `prove`)"
    if any(step.time is None or not step.heats for step in waits):
        return "one of its waits has no time or no temperature"
    if not all(holds(BAKERS, end) for step in waits for end in _ends(step)):
        low, high = (decimal(end) for end in BAKERS.holds)
        return f"it stands colder or warmer than {low} to {high} C, where the model of yeast is silent"
    return ""


def _yeast_wait(stage: Stage, formula: Formula) -> YeastWait | None:
    if leavens_of(stage, formula) != (BAKERS,) or why_not(stage, formula):
        return None
    steps, branch = _steps(stage, formula)
    waits = tuple(
        Waiting(stage.name, step, step.time, (BAKERS,))
        for step in steps
        if step.verb in BY_LEAVEN and step.time is not None and step.time.likely > 0
    )
    portions = _own_yeast(stage)
    share = sum((p.share for p in portions), NOTHING)
    if not waits or not share:
        return None
    everywhere = sum((p.share for other in formula.stages for p in _own_yeast(other)), NOTHING)
    carries_on = stage is not formula.dough and share * 2 > everywhere
    return YeastWait(stage, branch, waits, portions[0], share, carries_on)


def _steps(stage: Stage, formula: Formula) -> tuple[tuple[Step, ...], str]:
    """What is done with a stage; with the dough, also what is done with the first sort of its pieces, and their noun."""
    if stage is not formula.dough:
        return stage.steps, ""
    noun, steps = formula.ways[0]
    return steps, noun if len(formula.ways) > 1 else ""


def _own_yeast(stage: Stage) -> list[Portion]:
    return [p for p in stage.portions if p.ingredient is not None and p.ingredient.class_ in YEASTS and p.share]


def _stages_in(stage: Stage, formula: Formula) -> Iterator[Stage]:
    used = {portion.stage for portion in stage.portions if portion.stage}
    return (other for other in formula.stages if other.key in used and other is not stage)


def _classes_in(stage: Stage, formula: Formula) -> frozenset[str]:
    own = {p.ingredient.class_ for p in stage.portions if p.ingredient is not None}
    return frozenset(own).union(*(_classes_in(other, formula) for other in _stages_in(stage, formula)))


def _raised(stage: Stage, formula: Formula) -> bool:
    return not _classes_in(stage, formula).isdisjoint(YEASTS)


def _ends(step: Step) -> Iterable[Fraction]:
    return (step.heats[0].celsius.likely, *([] if step.ramp is None else [step.ramp[1].likely]))


# ---- the grid -----------------------------------------------------------------------------------------


class YeastGridCell(NamedTuple):
    """How much of the yeast as written, and grams of it in one making of the stage; None where the model is silent."""

    times: Fraction | None
    grams: Fraction | None
    written: bool


class YeastGridRow(NamedTuple):
    seconds: Range
    cells: tuple[YeastGridCell, ...]
    """One for each of the grid's `celsius`."""


class YeastGrid(NamedTuple):
    wait: YeastWait
    makings: int
    """How many times the stage is made; the grams are for one."""
    celsius: tuple[Range, ...]
    rows: tuple[YeastGridRow, ...]


@once
def yeast_grids(work: Work, step: Fraction = STEP) -> tuple[YeastGrid, ...]:
    """For each wait that yeast can move, hours by Celsius; `step` is what the columns go by."""
    made = {making.stage.stage.key: making for making in work.mixes.makings}
    found = []
    for wait in yeast_waits(work.formula):
        making = made[wait.stage.key]
        grams = sum((w.grams for w in making.weighed if w.portion.key == wait.portion.key), NOTHING)
        found.append(_grid(wait, making.times, grams, step))
    return tuple(found)


def _grid(wait: YeastWait, makings: int, grams: Fraction, step: Fraction) -> YeastGrid:
    middle = round_to(wait.mean, 0) if wait.celsius.low != wait.celsius.high else wait.mean
    columns: list[Fraction | None] = [middle + step * n for n in ACROSS if n < 0]
    columns += [None, *(middle + step * n for n in ACROSS if n > 0)]

    def row(seconds: Fraction, said: Range) -> YeastGridRow:
        cells = []
        for celsius in columns:
            times = wait.times(seconds, celsius)
            written = celsius is None and seconds == wait.likely
            cells.append(YeastGridCell(times, None if times is None else grams * times, written))
        return YeastGridRow(said, tuple(cells))

    hours = sorted({hours_to_say(wait.likely * share) for share in DOWN} - {wait.likely})
    rows = [row(seconds, Range(seconds, seconds)) for seconds in hours]
    at = sum(1 for seconds in hours if seconds < wait.likely)
    rows.insert(at, row(wait.likely, wait.seconds))
    said = tuple(wait.celsius if celsius is None else Range(celsius, celsius) for celsius in columns)
    return YeastGrid(wait, makings, said, tuple(rows))


def hours_to_say(seconds: Fraction) -> Fraction:
    """A time a baker would plan by, in seconds: whole hours from six on, half hours from two, else quarters."""
    step = HOUR if seconds >= 6 * HOUR else HOUR / 2 if seconds >= 2 * HOUR else HOUR / 4
    return max(round_to(seconds / step, 0), Fraction(1)) * step


def yeast_figures(work: Work) -> dict[str, Figure]:
    """The yeast for other waits, in grams for the whole batch, by the name `poolish: instant yeast for 16 h at 18 C`."""
    found: dict[str, Figure] = {}
    for grid in yeast_grids(work):
        wait = grid.wait
        for row in grid.rows:
            for celsius, cell in zip(grid.celsius, row.cells, strict=True):
                if cell.times is None or cell.grams is None or cell.written:
                    continue
                name = f"{wait.stage.name}: {wait.portion.name} for {_hours(row.seconds)} {_warmth(wait, celsius)}"
                found[name] = _figure(name, wait, cell.times, cell.grams * grid.makings)
    return found


def _hours(seconds: Range) -> str:
    """`7 h`, and `12 to 14 h` of the written wait."""
    low, high = (decimal((end or seconds.likely) / 3600, 2) for end in (seconds.low, seconds.high))
    return f"{low} h" if low == high else f"{low} to {high} h"


def _warmth(wait: YeastWait, celsius: Range) -> str:
    """`at 18 C`; of what is as warm as written, and not of one warmth, from the coolest of it to the warmest."""
    low, high = celsius.low, celsius.high
    if low is None or high is None or low == high:
        return f"at {decimal(celsius.likely, 1)} C"
    return f"at {decimal(low, 1)} to {decimal(high, 1)} C, as written"


def _figure(name: str, wait: YeastWait, times: Fraction, grams: Fraction) -> Figure:
    low, high = (grams / times * end for end in ends_of(times))
    places = 0 if low >= 100 else 1 if low >= 10 else 2
    waits = tuple(
        Given(f"{w.step.verb} as written, at {decimal(w.celsius, 1)} C", w.time.likely / 60, "min",
              w.step.place.where)
        for w in wait.waits
    )  # fmt: skip
    place = wait.portion.place
    written = Given(f"{wait.portion.name} as written", grams / times, "g", place.where)
    rule = f"an estimate, {decimal(low, places)} to {decimal(high, places)} g: {RULE}; its ends to 1.5 and 2.4"
    return Figure(name, round_to(grams, places), "g", rule, (written, *waits), f"{BAKERS.source}; {PRACTICE}")


def moved_figures(formula: Formula) -> dict[str, Figure]:
    """By what the yeast of a wait that was asked for is multiplied, by the name `wait: poolish`."""
    return {f"wait: {one.stage}": _moved(one) for one in formula.moved}


def _moved(one: Moved) -> Figure:
    where = one.place.where
    seconds, celsius = one.seconds or one.written, one.celsius or one.written_celsius
    inputs = (
        Given(f"{one.stage} as written", one.written.likely / 60, "min", where),
        Given("as warm as written", one.written_celsius.likely, "C", where),
        Given("asked for", seconds.likely / 60, "min", "--wait"),
        Given("as warm as asked for", celsius.likely, "C", "--wait"),
        Given(f"{one.yeast} in all, as written", one.in_all * 100, "%", where),
        Given(f"{one.yeast} in all, now", one.in_all_now * 100, "%", "--wait"),
    )
    low, high = (decimal(round_to(end, 2), 2) for end in ends_of(one.times))
    rule = f"an estimate, {low} to {high}: {RULE}, to two decimals; flour and water as written"
    rule += f"; {CARRIES_ON}" if one.carries_on else ""
    return Figure(f"{one.yeast}, so many times as much", one.times, "", rule, inputs, f"{BAKERS.source}; {PRACTICE}")
