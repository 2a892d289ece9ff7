"""The head of a prep sheet: what is made, in how many mixes, what is made ahead, and what is read before the mixing."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from manchet.batch.model import PieceBatch
from manchet.batch.preparations_needed import preparations_needed, weighed_beside
from manchet.batch.work import Work
from manchet.diagnostics.suggest import fold
from manchet.figures.ahead import Ahead
from manchet.figures.baths import dipped_into
from manchet.figures.water.water_grid import DoughWater
from manchet.formula.model import Formula
from manchet.formula.nouns import noun_for
from manchet.sheets.forms.prep_sheet.view import MadeAmount, MakeAhead
from manchet.sheets.forms.prep_sheet.water_panel import hot_readings
from manchet.sheets.page.issue import Issue
from manchet.sheets.page.measures import Measures
from manchet.sheets.parts.baked_weight import about_baked_cell
from manchet.sheets.parts.good_for import good_for
from manchet.sheets.parts.make_ahead import make_ahead
from manchet.sheets.parts.mixing import stiff_mix_fact
from manchet.sheets.parts.views import Box
from manchet.sheets.parts.wording import single


def amount(p: PieceBatch, formula: Formula, m: Measures) -> MadeAmount:
    weight = m.piece(p.grams)
    number, noun = m.plain(single(p.number), 1), noun_for(p.number, p.noun)
    return MadeAmount(number, noun, weight.figure, weight.unit, p.tin, about_baked_cell(p, formula, m))


def head_lines(work: Work, issue: Issue, m: Measures) -> Iterator[str]:
    """Mixes and what is to be said of them, how long it is good, when it is out of the oven."""
    words, mixes = m.words, work.mixes
    if mixes.number > 1:
        yield words.say("sheet.many_mixes", str(mixes.number), m.mass(mixes.grams))
        yield from (fact.value for fact in stiff_mix_fact(mixes, m))
    if mixes.under is not None:
        yield words.say("sheet.under", m.mass(mixes.under))
    if work.formula.good_for is not None:
        yield words.say("sheet.good_for", good_for(work, m))
    if issue.out_at:
        yield words.say("sheet.out_at", issue.out_at)


def made_ahead(work: Work, ahead: Sequence[Ahead], m: Measures) -> Iterator[MakeAhead]:
    """Each preparation that today's amount takes, under the name that the file has for it; with what is known of its batch."""
    needed, dipped, names = preparations_needed(work.batch), dipped_into(work.batch), _names(work)
    known = dict(zip((fold(each.work.formula.name) for each in ahead), make_ahead(ahead, m), strict=True))
    for key, grams in needed.items():
        item = known.get(key)
        beside = () if item is None else tuple(filter(None, (item.of_what, item.keeps)))
        boxes = () if item is None else item.boxes
        yield MakeAhead(names[key], m.mass(grams) if grams else "", key in dipped, beside, boxes)


def beside_the_dough(work: Work, m: Measures) -> Iterator[MakeAhead]:
    """What else is weighed for today's amount: flour to dust, oil to grease, sugar to sprinkle."""
    for name, grams in weighed_beside(work.batch).items():
        yield MakeAhead(name, m.mass(grams))


def _names(work: Work) -> dict[str, str]:
    """What the file calls each thing made elsewhere, by its key."""
    applied = ((step.applied.stage, step.applied.name) for step in work.formula.steps if step.applied is not None)
    branches = (portion for branch in work.formula.branches for portion in branch.added)
    weighed = (portion for stage in work.formula.stages for portion in stage.portions)
    baths = ((step.bath, step.where[1]) for step in work.formula.steps if step.bath and step.where)
    return dict([*((p.stage, p.name) for p in (*branches, *weighed)), *applied, *baths])


def readings(work: Work, water: DoughWater | None, m: Measures) -> tuple[Box, ...]:
    """What the thermometer says before the mixing: the water's temperature follows from it."""
    started = Box(m.words["sheet.started"])
    if work.formula.preparation:
        return (started,)
    names = [m.words["sheet.flour"], m.words["sheet.room"]]
    if water is not None and water.preferment is not None:
        names.append(m.words["water.preferment"])
    names += [] if water is None else hot_readings(water)
    if water is not None:
        names.append(water.liquid)
    elif work.totals.water_added:
        names.append(m.words["water.name"])
    return (*(Box(name, m.degree()) for name in names), started)
