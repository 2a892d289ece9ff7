"""A wait moved to another time or another warmth, for one run: its lines rewritten, and the yeast that keeps it as far.

Flour and water stay as they are. The yeast of the stage goes by the one factor of `yeast_grid`, and where `overall` lists it
what is weighed in all changes by just as much, so that every other stage keeps its own.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from fractions import Fraction

from manchet.changes.swaps.lines import GRAMS, figure_of, times as multiplied, with_figure
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.suggest import fold, nearest
from manchet.figures.fermentation.another_warmth import mean_pace
from manchet.figures.fermentation.yeast_grid import (
    FURTHEST,
    HOT,
    HOT_LONGEST,
    YeastWait,
    hours_to_say,
    why_not,
    yeast_waits,
)
from manchet.figures.fermentation.yeast_rate import BAKERS, holds
from manchet.formula import measures
from manchet.formula.binding import Offered, bind
from manchet.formula.draft import stage_key
from manchet.formula.durations import duration, span
from manchet.formula.model import Formula, Moved, Stage, Step, Way
from manchet.quantities.printing import decimal, round_to
from manchet.quantities.units import in_fahrenheit
from manchet.records import NamedTuple
from manchet.syntax import nodes
from manchet.syntax.line import read_line
from manchet.syntax.nodes import Amount, Entry
from manchet.syntax.vocabulary import BY_LEAVEN

Key = Callable[[str], str]
"""What a name is compared by: the name folded, of the ingredient in the larder where it is one."""

FIVE_MINUTES = Fraction(300)


class WantedWait(NamedTuple):
    """What was asked for: a stage, how long, how warm. None: as written."""

    name: str
    time: Amount | None
    at: Amount | None

    @property
    def seconds(self) -> Fraction | None:
        return None if self.time is None else measures.seconds(self.time).likely

    @property
    def celsius(self) -> Fraction | None:
        return None if self.at is None else measures.celsius(self.at).likely

    @property
    def unit(self) -> str:
        """C or F, as it was asked."""
        return "C" if self.at is None else self.at.unit


class Refused(NamedTuple):
    """Why a wait cannot be moved so, and what to ask for instead."""

    message: str
    help: str


class MovedLines(NamedTuple):
    """A formula's lines with the wait moved, and the stages it shares with others."""

    formula: Entry
    shared: Mapping[str, Entry]
    moved: Moved


def wanted_wait(text: str) -> WantedWait | None:
    """The wait that `poolish 16 h at 18 C` asks for; `poolish 16 h` and `poolish at 18 C` leave the other as written.

    None where the text asks for none.
    """
    words = text.split()
    for first in range(1, len(words)):
        name, amounts = " ".join(words[:first]), _time_and_warmth(" ".join(words[first:]))
        if amounts is None:
            continue
        ends = [end for amount in amounts if amount for end in (amount.low, amount.high)]
        return None if None in ends or _time_and_warmth(name) else WantedWait(name, *amounts)
    return None


def _time_and_warmth(text: str) -> tuple[Amount | None, Amount | None] | None:
    """The two amounts of `16 h at 18 C`, of which one may be left out; None for any other text."""
    read = read_line(f"ripen {text}", "stage")
    if not isinstance(read.node, nodes.StepNode) or read.faults or not read.node.clauses:
        return None
    time: Amount | None = None
    at: Amount | None = None
    for clause in read.node.clauses:
        match clause:
            case nodes.Time(amount, "") if time is None:
                time = amount
            case nodes.At(amount, "") if at is None:
                at = amount
            case _:
                return None
    return time, at


def move_wait(
    formula: Entry, shared: Mapping[str, Entry], before: Formula, asked: WantedWait, key: Key
) -> MovedLines | Refused:
    """Move one wait. `before` is the formula as bound without it."""
    stage = _stage_called(asked.name, before)
    if isinstance(stage, Refused):
        return stage
    wait = next((w for w in yeast_waits(before) if w.stage is stage), None)
    if wait is None:
        why = why_not(stage, before) or "nothing in it waits for yeast"
        return Refused(
            f"yeast cannot move the {stage.name} of {before.name}: {why}",
            f"manchet trace '{before.name}' lists what its waits take where it is warmer or cooler; {_can(before)}",
        )
    if asked.time is not None and not asked.time.low:
        return _no_wait(stage, asked)
    seconds = wait.likely if asked.seconds is None else asked.seconds
    times = wait.times(seconds, asked.celsius)
    if times is None:
        return _out_of_reach(wait, seconds, asked.celsius, asked.unit)
    return _Moving(formula, shared, before, asked, wait, round_to(times, 2), key).carried()


def bind_with_waits(
    block: Entry, offered: Offered, texts: Iterable[str]
) -> tuple[Outcome[Formula | None], tuple[Refused, ...]]:
    """The formula after the waits asked for, which it then names; and those it cannot be given."""
    bound, done, refused = bind(block, offered), [], []
    for text in texts:
        asked = wanted_wait(text)
        if bound.value is None or asked is None:
            break
        found = move_wait(block, offered.shared, bound.value, asked, offered.larder.key)
        if isinstance(found, Refused):
            refused.append(found)
            continue
        block, offered = found.formula, offered._replace(shared=found.shared)
        bound = bind(block, offered)
        done.append(found.moved)
    value = None if bound.value is None else bound.value._replace(moved=tuple(done))
    return Outcome(value, bound.diagnostics), tuple(refused)


def _stage_called(name: str, formula: Formula) -> Stage | Refused:
    wanted = fold(name)
    for stage in formula.stages:
        if wanted in (stage.key, fold(stage.name), fold(f"{stage.word} {stage.name}")):
            return stage
    of_kind = [stage for stage in formula.stages if wanted == stage.word]
    if len(of_kind) == 1:
        return of_kind[0]
    names = [stage.name for stage in formula.stages]
    near = nearest(name, names)
    offer = f"did you mean {near}? " if near else ""
    return Refused(f"{formula.name} has no stage called {name}", f"{offer}{_can(formula)}")


def _can(formula: Formula) -> str:
    waits = [f"{w.stage.name} ({span(w.seconds)} at {decimal(w.mean, 0)} C)" for w in yeast_waits(formula)]
    return f"yeast can move: {', '.join(waits)}" if waits else "yeast can move none of its waits"


def _out_of_reach(wait: YeastWait, seconds: Fraction, celsius: Fraction | None, unit: str) -> Refused:
    name = wait.stage.name
    if celsius is not None and not holds(BAKERS, celsius):
        coolest, warmest = (_degrees(end, unit) for end in BAKERS.holds)
        return Refused(
            f"{name} at {_degrees(celsius, unit)}: how fast yeast works is told from {coolest} to {warmest} only",
            "ask for something between; in a fridge the dough's own slow cooling decides",
        )
    there = "" if celsius is None else f" at {_degrees(celsius, unit)}"
    if not wait.lives(seconds, celsius):
        hot, longest = _degrees(HOT, unit), duration(HOT_LONGEST)
        return Refused(
            f"{name} for {duration(seconds)}{there}: yeast does not live through {duration(seconds)} over {hot}",
            f"ask for {hot} or cooler, or for no more than {longest}",
        )
    as_far = wait.as_far(celsius)
    low, high = hours_to_say(as_far / FURTHEST), hours_to_say(as_far * FURTHEST)
    return Refused(
        f"{name} for {duration(seconds)}{there} lies beyond half and twice the {duration(hours_to_say(as_far))} that its "
        "yeast takes as written: so far off nobody can say how much it wants",
        f"from about {duration(low)} to {duration(high)} can be asked for{there}",
    )


def _no_wait(stage: Stage, asked: WantedWait) -> Refused:
    assert asked.time is not None
    unit, name = asked.time.unit, stage.name or stage.word
    written = next((step.time for step in stage.steps if step.verb in BY_LEAVEN and step.time), None)
    instead = "16 h" if written is None or not written.likely else span(written)
    warmth = "" if asked.celsius is None else f" at {_degrees(asked.celsius, asked.unit)}"
    if asked.time.high:
        return Refused(
            f"{name} for 0-{decimal(asked.time.high)} {unit}: 0 {unit} is no wait",
            f"give its shortest time too: '{name} {instead}{warmth}'",
        )
    return Refused(
        f"{name} for 0 {unit}: 0 {unit} is no wait", f"say how long it is to wait: '{name} {instead}{warmth}'"
    )


def _degrees(celsius: Fraction, unit: str) -> str:
    return f"{decimal(in_fahrenheit(celsius), 0)} F" if unit == "F" else f"{decimal(celsius, 1)} C"


class _Moving:
    """One wait under way."""

    def __init__(
        self,
        formula: Entry,
        shared: Mapping[str, Entry],
        before: Formula,
        asked: WantedWait,
        wait: YeastWait,
        times: Fraction,
        key: Key,
    ) -> None:
        self.formula, self.shared, self.before, self.asked = formula, shared, before, asked
        self.wait, self.times, self.key = wait, times, key
        self.yeast = wait.portion.key
        self.more = (times - 1) * wait.share
        """Grams of yeast per gram of all flour."""

    def carried(self) -> MovedLines:
        stage = self.wait.stage
        children = tuple(self._heading(child) for child in self.formula.children)
        shared = {k: self._stage(e) if stage.shared and k == stage.key else e for k, e in self.shared.items()}
        in_all = sum((p.share for s in self.before.stages for p in s.portions if p.key == self.yeast), Fraction(0))
        wait, asked = self.wait, self.asked
        made = Moved(
            stage=stage.name,
            yeast=wait.portion.name,
            times=self.times,
            written=wait.seconds,
            written_celsius=wait.celsius,
            seconds=None if asked.time is None else measures.seconds(asked.time),
            celsius=None if asked.at is None else measures.celsius(asked.at),
            share=wait.share,
            in_all=in_all,
            of_stage=_of_stage(stage, self.yeast),
            together=len(wait.waits) > 1,
            carries_on=wait.carries_on,
            place=wait.waits[0].step.place,
        )
        return MovedLines(self.formula._replace(children=children), shared, made)

    def _heading(self, entry: Entry) -> Entry:
        node = entry.node
        if isinstance(node, nodes.OverallHead):
            return entry._replace(children=tuple(self._in_overall(line) for line in entry.children))
        if isinstance(node, nodes.StageHead) and stage_key(node) == self.wait.stage.key:
            return self._stage(entry)
        if isinstance(node, nodes.StageHead):
            return entry._replace(children=tuple(self._takes_it(line) for line in entry.children))
        return entry

    def _is_yeast(self, entry: Entry) -> bool:
        return isinstance(entry.node, nodes.MaterialNode) and self.key(entry.node.name.text) == self.yeast

    def _in_overall(self, entry: Entry) -> Entry:
        return with_figure(entry, figure_of(entry) + self.more * 100) if self._is_yeast(entry) else entry

    def _takes_it(self, entry: Entry) -> Entry:
        """A line that says how much it takes of the stage still takes what that flour makes: all of it where it was all."""
        node, stage = entry.node, self.wait.stage
        if not isinstance(node, nodes.MaterialNode) or fold(node.name.text) not in (stage.key, fold(stage.name)):
            return entry
        flour = self.before.own_flour or Fraction(0)
        all_of_it = node.amount.unit == GRAMS and figure_of(entry) == stage.out_share * flour
        if self.before.way is Way.DOUGH_FLOUR or all_of_it:
            return with_figure(entry, figure_of(entry) * (stage.into_share + self.more) / stage.into_share)
        return entry

    def _stage(self, entry: Entry) -> Entry:
        return entry._replace(children=tuple(self._line(line) for line in entry.children))

    def _line(self, entry: Entry) -> Entry:
        node = entry.node
        if self._is_yeast(entry):
            assert isinstance(node, nodes.MaterialNode)
            return entry._replace(node=node._replace(amount=multiplied(node.amount, self.times)))
        if isinstance(node, nodes.HoldBack | nodes.Add):
            return entry._replace(node=node._replace(items=tuple(self._part(part) for part in node.items)))
        if isinstance(node, nodes.BranchHead):
            return self._stage(entry)
        if isinstance(node, nodes.StepNode) and node.verb.text in BY_LEAVEN:
            step = self._step_of(entry)
            return entry if step is None else self._waits(entry, step)
        return entry

    def _part(self, part: nodes.Part) -> nodes.Part:
        if part.amount is None or self.key(part.name.text) != self.yeast:
            return part
        return part._replace(amount=multiplied(part.amount, self.times))

    def _step_of(self, entry: Entry) -> Step | None:
        """The bound step that a line describes."""
        place = entry.line.place()
        here = (s for s in self.before.steps if (s.place.path, s.place.line) == (place.path, place.line))
        return next((step for step in here if step.verb in BY_LEAVEN and step.time is not None), None)

    def _waits(self, entry: Entry, step: Step) -> Entry:
        """The line of a wait, and the clauses under it, with its new time and warmth."""
        clauses = entry.node.clauses if isinstance(entry.node, nodes.StepNode | nodes.ClauseLine) else ()
        kept = tuple(
            self._clause(clause, step)
            for clause in clauses
            if not (isinstance(clause, nodes.Ramp) and self.asked.at is not None)
        )
        children = tuple(
            self._waits(child, step) if isinstance(child.node, nodes.ClauseLine) else child for child in entry.children
        )
        node = entry.node
        assert isinstance(node, nodes.StepNode | nodes.ClauseLine)
        return entry._replace(node=node._replace(clauses=kept), children=children)

    def _clause(self, clause: nodes.Clause, step: Step) -> nodes.Clause:
        if isinstance(clause, nodes.At) and self.asked.at is not None:
            return clause._replace(amount=self.asked.at)
        if isinstance(clause, nodes.Time) and self.asked.time is not None:
            return clause._replace(amount=self._new_time(step, clause.amount))
        if isinstance(clause, nodes.Within) and self.asked.time is not None:
            every, after = (a and self._in_proportion(step, a) for a in (clause.every, clause.after))
            return clause._replace(every=every, after=after)
        return clause

    def _share(self, step: Step) -> Fraction:
        """What one of the waits gets of all their time: in proportion to its work where all are to be as warm."""
        assert step.time is not None
        if self.asked.at is None:
            return step.time.likely / self.wait.likely
        return step.time.likely * mean_pace(BAKERS, step) / self.wait.work

    def _new_time(self, step: Step, written: Amount) -> Amount:
        asked = self.asked.time
        assert asked is not None
        if len(self.wait.waits) == 1:
            return asked
        seconds = (self.asked.seconds or Fraction(0)) * self._share(step)
        return _minutes(seconds, written)

    def _in_proportion(self, step: Step, amount: Amount) -> Amount:
        """Folds stay where they were in the wait."""
        assert step.time is not None
        new = (self.asked.seconds or Fraction(0)) * self._share(step)
        return _minutes(measures.seconds(amount).likely * new / step.time.likely, amount)


def _of_stage(stage: Stage, yeast: str) -> Fraction | None:
    """The yeast as a share of the stage's own flour, as its lines say it."""
    lines = [portion for portion in stage.portions if portion.key == yeast and portion.share]
    if not lines or any(portion.basis != "stage flour" for portion in lines):
        return None
    return sum((portion.percent or Fraction(0) for portion in lines), Fraction(0)) / 100


def _minutes(seconds: Fraction, amount: Amount) -> Amount:
    """A time in its place of the line: to five minutes, and no less than one step of it."""
    minutes = max(round_to(seconds / FIVE_MINUTES, 0), Fraction(1)) * 5
    return amount._replace(low=minutes, high=minutes, unit="min")
