"""What is made ahead for a bread, in short: so much of it, of what, and what is done. The student has not its sheet."""

from __future__ import annotations

from manchet.batch.weighed_table import WeighedLine
from manchet.batch.weighing import weighings
from manchet.batch.work import Work
from manchet.formula.model import Step
from manchet.sheets.forms.handout.view import MadeAhead
from manchet.sheets.page.measures import Measures
from manchet.sheets.parts.bowl import Bowl
from manchet.sheets.parts.steps import step_line


def made_ahead(work: Work, m: Measures) -> MadeAhead:
    """One preparation: `egg wash 24 g`, `eggs 20 g, milk 4 g`, `whisk 2 min; strain`."""
    rows, steps = [], []
    for table in weighings(work).value:
        bowl = Bowl(table, work, m)
        rows += [f"{line_name(line, table.lines, m)} {m.grams(line.shown)}" for line in table.lines]
        steps += [_step_in_short(step, bowl, m) for step in table.making.stage.stage.steps]
    name = f"{work.batch.formula.name} {m.with_ounces(work.batch.dough)}"
    return MadeAhead(name, ", ".join(rows), "; ".join(step for step in steps if step))


def line_name(line: WeighedLine, lines: tuple[WeighedLine, ...], m: Measures) -> str:
    """Its name; of two lines of one thing the one that is held back says so."""
    portion = line.weighed.portion
    twice = any(other is not line and other.weighed.portion.key == portion.key for other in lines)
    return m.words.say("handout.held_back", portion.name) if twice and portion.held else portion.name


def _step_in_short(step: Step, bowl: Bowl, m: Measures) -> str:
    line = step_line(step, bowl, (), m)
    adds = ", ".join(row.name for row in line.adds)
    said = " ".join(part for part in (line.text, adds, line.look) if part)
    return said[:1].lower() + said[1:]
