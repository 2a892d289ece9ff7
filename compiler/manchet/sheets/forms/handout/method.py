"""What is done at home, one thing after another: by hand, in lines numbered within a stage, each with its cautions and drawing."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from fractions import Fraction

from manchet.batch.tins import tin_called
from manchet.batch.weighing import weighings
from manchet.batch.work import Work
from manchet.cautions.registry import cautions_of
from manchet.formula.model import Step
from manchet.formula.nouns import same_noun
from manchet.records import NamedTuple
from manchet.sheets.forms.handout.floor_plans import floor_plan, tray_plan
from manchet.sheets.forms.handout.home_measures import oven_marks
from manchet.sheets.forms.handout.ingredients import added_row, stage_title
from manchet.sheets.forms.handout.oven import POTTED, dial, is_on_a_stone
from manchet.sheets.forms.handout.view import HomeClause, HomeMethod, HomeStep, HomeWay
from manchet.sheets.page.measures import NBSP, Measures
from manchet.sheets.parts import wording
from manchet.sheets.parts.bowl import Bowl
from manchet.sheets.parts.by_hand import done_by_hand
from manchet.sheets.parts.caution import cautions_at_home
from manchet.sheets.parts.core_estimate import core_estimate
from manchet.sheets.parts.joining import SHORT_REST, Joinable, lines_of, run_on, seconds_waited
from manchet.sheets.parts.mixing import order_of_the_bowl
from manchet.sheets.parts.own_pictures import Pictures, own_illustrations
from manchet.sheets.parts.pieces_line import divided_line
from manchet.sheets.parts.step_pictures import illustrations, step_illustrations
from manchet.sheets.parts.steps import bakes_from, for_the_sort, step_line, worked_in_rows
from manchet.sheets.parts.views import Illustration, WeighRow
from manchet.syntax.vocabulary import IN_OVEN
from manchet.timing.at_home import is_stirred

Adds = Bowl | Mapping[str, WeighRow]
"""Where the weights of what a step adds are looked up."""


class Lines(NamedTuple):
    """The steps of one way, before they are joined and numbered. `bakes` tells the phases of a bake."""

    steps: tuple[HomeStep, ...]
    waits: tuple[Fraction | None, ...]
    """Seconds that each waits; None for what is done."""


def home_method(work: Work, pictures: Pictures, m: Measures) -> tuple[HomeMethod, ...]:
    writer = HomeWriter(work, pictures, m)
    return tuple(
        HomeMethod(stage_title(bowl), ways)
        for bowl in (Bowl(table, work, m) for table in weighings(work).value)
        if (ways := tuple(way for way in writer.ways(bowl) if way.steps))
    )


class HomeWriter(NamedTuple):
    """One formula as it is made at home."""

    work: Work
    pictures: Pictures
    m: Measures

    def ways(self, bowl: Bowl) -> Iterator[HomeWay]:
        """The steps of the stage; of the dough also the way of each sort."""
        batch = bowl.table.making.stage
        stage, is_dough = batch.stage, batch is self.work.dough
        branches = self.work.formula.branches if is_dough else ()
        after = tuple(step for branch in branches for step in branch.steps)
        shared = self._lines(stage.key, stage.steps, None, "", after, bowl, is_dough)
        number = 1
        joined, number = _numbered(shared, number)
        yield HomeWay("", joined)
        for at, branch in enumerate(branches):
            adds = worked_in_rows(branch, self.work.batch, self.m)
            lines = self._lines(stage.key, branch.steps, at, branch.noun, (), adds, True)
            joined, number = _numbered(lines, number)
            yield HomeWay(for_the_sort(branch.noun, self.work.batch, self.m), joined)

    def _lines(
        self, key: str, steps: Sequence[Step], branch: int | None, noun: str, follow: Sequence[Step], adds: Adds,
        is_dough: bool,
    ) -> Lines:  # fmt: skip
        """`follow`: steps of the sorts that come after."""
        found: list[HomeStep] = []
        waits: list[Fraction | None] = []
        mixed = False
        cautions = cautions_of(self.work)
        drawn = step_illustrations(steps, noun, follow, self.work, self.pictures, self.m)
        for at, step in enumerate(steps):
            above = cautions_at_home(cautions, key, at, self.m, branch)
            if step.verb == "bake":
                if at and steps[at - 1].verb == "bake":
                    found[-1] = found[-1]._replace(cautions=(*found[-1].cautions, *above))
                    continue
                phases = bakes_from(steps, at)
                found.append(self._bake(phases, noun)._replace(cautions=above))
                waits.append(sum((s.time.likely for s in phases if s.time is not None), Fraction(0)) or SHORT_REST * 2)
                continue
            after = steps[at + 1] if at + 1 < len(steps) else None
            clause = self._clause(step, adds, not mixed, after, is_dough)
            if step.verb == "mix" and not mixed and isinstance(adds, Bowl):
                order = order_of_the_bowl(adds.table.making.stage, self.m)
                clause = clause._replace(notes=(*order, *clause.notes))
            found.append(HomeStep("", (clause,), step.why, above, self._with_tray(step, drawn[at])))
            waits.append(seconds_waited(step))
            mixed = mixed or step.verb == "mix"
        return Lines(tuple(found), tuple(waits))

    def _clause(self, step: Step, adds: Adds, first: bool, after: Step | None, is_dough: bool) -> HomeClause:
        line = step_line(step, adds, self.m)
        rows = tuple(added_row(row, self.m) for row in line.adds)
        notes = (*line.notes, *self._tin_holds(step))
        if step.verb == "divide":
            sorts = [divided_line(p, self.work.formula, self.m) for p in self.work.batch.pieces if p.noun]
            into = self.m.words.say("handout.into", "; ".join(sorts)) if sorts else ""
            done, how = done_by_hand(step, False, first, after, self.m)
            return HomeClause(done, rows, into + how, line.look, line.counts, notes)
        if step.goes and not rows:  # what is moved, or added by feel, stands in the sentence
            done, how = line.text, ""
        else:
            done, how = done_by_hand(step, is_stirred(self.work, is_dough), first, after, self.m)
        return HomeClause(done, rows, how, line.look, line.counts, notes)

    def _bake(self, phases: Sequence[Step], noun: str) -> HomeStep:
        """All phases of a bake in one line: what the dial is set to, and until when."""
        say = self.m.words.say
        said = [self._phase(step) for step in phases]
        core = core_estimate(self.work.formula, phases, self.m)
        cores = [self.m.degrees(reach.value) for step in phases for reach in step.reaches if reach.what == "core"]
        if core is not None:
            cores.append(core.about)
        looks = [look for step in phases if (look := wording.look(step, self.m))]
        notes = tuple(note for step in phases for note in wording.phase(step, self.m).notes)
        notes += () if core is None else (core.note,)
        how = "".join(say("handout.then", each) for each in said[1:])
        how += "".join(f", {say('say.core', each)}" for each in cores)
        done = f"{self.m.words['verbs.bake']} {said[0]}".rstrip()
        figures = tuple(shown for step in phases for shown in own_illustrations(step.pictures, self.pictures))
        if self.pictures is not None and self._largest(noun) >= POTTED and is_on_a_stone(phases, self.work, noun):
            figures += illustrations(floor_plan(phases[0], self.work, self.m))
        why = " ".join(step.why for step in phases if step.why)
        return HomeStep("", (HomeClause(done, (), how, ", ".join(looks), (), notes),), why, (), figures)

    def _phase(self, step: Step) -> str:
        """`12 min at 255 °C`, `20 min at 250 °C falling to 215 °C`"""
        heat, said = dial(step), []
        if step.time is not None:
            said.append(self.m.time(step.time))
        if heat is not None:
            degrees = f"{oven_marks(heat, self.m).oven}{NBSP}{self.m.degree()}"
            said.append(self.m.words.say("say.at", degrees))
        if step.ramp is not None:
            said.append(self.m.words.say("say." + step.ramp[0], self.m.oven(step.ramp[1])))
        return " ".join(said)

    def _largest(self, noun: str) -> Fraction:
        """Grams of the largest piece of one sort, or of any where no noun is given."""
        there = (p.grams for p in self.work.batch.pieces if not noun or same_noun(p.noun, noun))
        return max(there, default=self.work.batch.dough)

    def _tin_holds(self, step: Step) -> tuple[str, ...]:
        """How large the bakery's tin is: at home another one serves, if it holds as much."""
        if step.verb != "place" or step.where is None:
            return ()
        tin = tin_called(step.where[1], self.work.kitchen)
        if tin is None or tin.word != "tin" or tin.millilitres is None:
            return ()
        return (self.m.words.say("handout.tin_holds", self.m.volume(tin.millilitres)),)

    def _with_tray(self, step: Step, figures: tuple[Illustration, ...]) -> tuple[Illustration, ...]:
        """Ours, and where pieces are shaped how they lie on the tray."""
        own = own_illustrations(step.pictures, self.pictures)
        if self.pictures is None or step.verb != "shape" or own or self._in_pots() or not self._sees_a_tray():
            return figures
        return figures + illustrations(tray_plan(step, self.work.batch.pieces, self.m))

    def _sees_a_tray(self) -> bool:
        """What is done on a griddle, in a pan, in a pot or over steam alone lies on none."""
        formula = self.work.formula
        ways = [formula.dough.steps, *(branch.steps for branch in formula.branches)]
        return any(step.verb in IN_OVEN for way in ways for step in way)

    def _in_pots(self) -> bool:
        return any(step.verb == "bake" and step.lid is not None for step in self.work.formula.steps)


def _numbered(lines: Lines, number: int) -> tuple[tuple[HomeStep, ...], int]:
    """Joined, and numbered from `number`; and the next number."""
    shared = lines_of([_joinable(step, wait) for step, wait in zip(lines.steps, lines.waits, strict=True)])
    found = []
    for at, line in enumerate(shared):
        steps = [lines.steps[n] for n in line]
        first, *others = (clause for step in steps for clause in step.clauses)
        clauses = (first, *(clause._replace(done=run_on(clause.done)) for clause in others))
        figures = next((step.figures for step in steps if step.figures), ())
        found.append(HomeStep(str(number + at), clauses, steps[-1].why, steps[0].cautions, figures))
    return tuple(found), number + len(found)


def _joinable(step: HomeStep, waits: Fraction | None) -> Joinable:
    says_more = any(clause.until or clause.ticks or clause.notes for clause in step.clauses)
    letters = sum(map(_letters, step.clauses))
    return Joinable(letters, waits, bool(step.cautions), bool(step.why) or says_more, bool(step.figures))


def _letters(clause: HomeClause) -> int:
    rows = sum(len(row.name) + len(row.weight) + len(row.unit) + 4 for row in clause.adds)
    return len(clause.done) + len(clause.how) + rows + 3
