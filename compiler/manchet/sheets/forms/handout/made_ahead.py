"""What is made ahead for a bread: so much of it, of what, how. The learner has not its own page."""

from __future__ import annotations

from manchet.batch.weighing import weighings
from manchet.batch.work import Work
from manchet.cautions.registry import cautions_of
from manchet.figures.baths import Because
from manchet.sheets.form import Ahead
from manchet.sheets.forms.handout.ingredients import home_rows
from manchet.sheets.forms.handout.method import HomeWriter
from manchet.sheets.forms.handout.view import HomeRow, HomeStep, MadeAhead
from manchet.sheets.page.measures import Measures
from manchet.sheets.parts.bowl import Bowl
from manchet.sheets.parts.caution import cautions_at_home
from manchet.sheets.parts.good_for import good_for
from manchet.sheets.parts.joining import run_on
from manchet.sheets.parts.line_names import line_name
from manchet.sheets.parts.views import CautionNote


def made_ahead(ahead: Ahead, m: Measures) -> MadeAhead:
    """One preparation. What its vessel needs is said where more is made than the bread wants."""
    work = ahead.work
    rows: list[HomeRow] = []
    steps: list[HomeStep] = []
    for table in weighings(work).value:
        bowl = Bowl(table, work, m)
        names = {line.weighed.portion.name: line_name(line, table.lines, m) for line in table.lines}
        rows += [row._replace(name=names.get(row.name, row.name)) for row in home_rows(bowl)]
        key = table.making.stage.stage.key
        above = cautions_at_home(cautions_of(work), key, None, m)
        own = [step for way in HomeWriter(work, None, m).ways(bowl) for step in way.steps]
        own = [_in_a_sentence(step, not steps and not at) for at, step in enumerate(own)]
        steps += [own[0]._replace(cautions=(*above, *own[0].cautions)), *own[1:]] if own else []
    weight = m._replace(house=m.house._replace(units="metric")).weight(work.batch.dough)
    return MadeAhead(
        work.formula.name, weight.figure, weight.unit, m.ounces(work.batch.dough), _least(ahead, m),
        tuple(rows), tuple(steps), good_for(work, m), _kept(work, m),
    )  # fmt: skip


def _kept(work: Work, m: Measures) -> tuple[CautionNote, ...]:
    stage = work.dough.stage
    return cautions_at_home(cautions_of(work), stage.key, len(stage.steps), m)


def _in_a_sentence(step: HomeStep, is_first: bool) -> HomeStep:
    """Without its number, and with a capital letter only where it begins what is read as one sentence, or follows a caution."""
    begins = is_first or bool(step.cautions)
    done = (clause._replace(done=clause.done if begins else run_on(clause.done)) for clause in step.clauses[:1])
    return HomeStep("", (*done, *step.clauses[1:]), *step[2:])


def _least(ahead: Ahead, m: Measures) -> str:
    taken = m.mass(ahead.wanted)
    match ahead.because:
        case Because.FILE:
            return m.words.say("handout.least", taken)
        case Because.WRITTEN:
            return m.words["ahead.kettle"]
        case Because.USUAL:
            return m.words.say("handout.least_usual", taken)
    return ""
