"""The handout: a formula to take home, for hands and one domestic oven, in stage blocks as on the prep sheet."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from manchet.batch.pieces import branch_additions
from manchet.batch.weighed_table import WeighedLine
from manchet.batch.weighing import weighings
from manchet.batch.work import Work
from manchet.cautions.caution import DEFERS, caution
from manchet.cautions.registry import cautions_of
from manchet.figures.water.home_water import home_waters
from manchet.formula.nouns import same_noun
from manchet.sheets.forms.handout.dried_yeast import DRIED, dried_instead
from manchet.sheets.forms.handout.home_measures import spoons
from manchet.sheets.forms.handout.made_ahead import made_ahead
from manchet.sheets.forms.handout.recipe_data import RecipeTimes, recipe_json
from manchet.sheets.forms.handout.teacher_page import teacher_page
from manchet.sheets.forms.handout.view import Handout, HomeStage
from manchet.sheets.forms.handout.water import home_water
from manchet.sheets.forms.handout.ways import HomeWriter, pieces_line
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue, running_head
from manchet.sheets.page.measures import BOTH, Measures
from manchet.sheets.page.words import words_of
from manchet.sheets.parts.bowl import Bowl, exact_weight
from manchet.sheets.parts.caution import caution_note, cautions_at_stage, cautions_for_eaters, cautions_of_no_stage
from manchet.sheets.parts.foot import overall_shares
from manchet.sheets.parts.own_pictures import Pictures, own_illustrations
from manchet.sheets.parts.steps import worked_in_rows
from manchet.sheets.parts.swap_lines import swap_lines
from manchet.sheets.parts.views import Fact, WeighRow
from manchet.sheets.parts.wait_lines import wait_lines
from manchet.timing.card.card import course_of

POT = "hot-lid"
AT_HOME = ("raw-dough", "oven-steam", POT)
"""Hazards of the house that a kitchen at home has too; those of a bakery's machines and sacks stay on its card."""


def handout(
    work: Work,
    issue: Issue,
    house: House,
    pictures: Pictures,
    benches: int = 0,
    blanks: bool = False,
    made: Sequence[Work] = (),
) -> Handout:
    """The view. `made`: the preparations it needs, each as much as that."""
    words = words_of(house.words)
    m = Measures(house._replace(units=BOTH if house.units == "US" else "metric"), words)
    formula, tables, cautions = work.formula, weighings(work).value, cautions_of(work)
    sections = tuple(_home_stage(at, work, pictures, m) for at in range(len(tables)))
    head = tuple(Fact(words["head.makes"], pieces_line(p, formula, m)) for p in work.batch.pieces)
    whole = m.mass(work.batch.dough)
    head = head or (
        Fact(words["head.makes"], whole if formula.preparation else words.say("handout.whole_dough", whole)),
    )
    spoony = any(_spoons(line, Bowl(table, work, m)) for table in tables for line in table.lines)
    named = [c.name for c in cautions]
    potted = any(
        words["handout.stone"] in way.oven.advice
        for section in sections
        for way in section.ways
        if way.oven is not None
    )
    # A lid that the file itself names has its caution at the stage.
    home = [caution(name) for name in AT_HOME if (potted if name == POT else name in named)]
    return Handout(
        title=formula.name,
        about=formula.about,
        language=words["language"],
        paper=house.paper,
        running=running_head(formula.name, words["handout.title"], issue),
        head=head,
        spoons=words["handout.spoons_vary"] if spoony else "",
        yeast=_yeast(work, m),
        sections=sections,
        cautions=(
            *cautions_of_no_stage(cautions, [s.stage.key for s in work.batch.stages], m),
            *(caution_note(c, m) for c in home),
            *cautions_for_eaters(cautions, m),
        ),
        defers=DEFERS,
        overall_head=words["handout.per_cent" if formula.has_flour else "handout.per_cent_whole"],
        overall=overall_shares(formula, {}, m),
        blanks=blanks,
        bench=teacher_page(work, made, benches, m) if benches else None,
        notes=() if formula.preparation else formula.notes,
        swapped=(*swap_lines(formula.swapped, m), *wait_lines(formula.moved, m)),
        figures=own_illustrations(formula.pictures, pictures),
        before=tuple(made_ahead(each, m) for each in made),
        recipe=recipe_json(
            formula.name, formula.about, words["language"], [fact.value for fact in head], _to_buy(work, m), sections,
            _times(work),
        ),
    )  # fmt: skip


def _to_buy(work: Work, m: Measures) -> list[str]:
    """What goes in, the stages taken apart: `958 g white flour`."""
    grams: dict[str, Fraction] = {}
    for table in weighings(work).value:
        for line in table.lines:
            if not line.weighed.portion.stage:
                name = line.weighed.portion.name
                grams[name] = grams.get(name, Fraction(0)) + line.shown
    for branch in work.batch.formula.branches:
        for portion, much in branch_additions(branch, work.batch):
            grams[portion.name] = grams.get(portion.name, Fraction(0)) + much
    return [f"{m.grams(much)} {name}" for name, much in grams.items()]


def _times(work: Work) -> RecipeTimes:
    """How long it all takes at home, and how long of that something bakes: the longest way of several."""
    ways = [steps for _, steps in work.batch.formula.ways]
    baked = [sum((s.time.likely for s in way if s.verb == "bake" and s.time is not None), Fraction(0)) for way in ways]
    return RecipeTimes(max(baked), course_of(work).total)


def _yeast(work: Work, m: Measures) -> str:
    """Which yeast the weights are for: one kind is never weighed as another."""
    yeasts = [yeast for yeast, _ in work.totals.yeasts]
    if not yeasts:
        return ""
    names = ", ".join(yeast.name for yeast in yeasts)
    if any(yeast.name in DRIED for yeast in yeasts):
        return m.words.say("handout.yeast_or_dried", names, work.kitchen.yeast_factors.source)
    return m.words.say("handout.yeast", names)


def _largest(work: Work, noun: str) -> Fraction:
    """Grams of the largest piece of one sort, or of any where no noun is given."""
    there = (p.grams for p in work.batch.pieces if not noun or same_noun(p.noun, noun))
    return max(there, default=work.batch.dough)


# ---- a stage --------------------------------------------------------------------------------------


def _home_stage(at: int, work: Work, pictures: Pictures, m: Measures) -> HomeStage:
    table = weighings(work).value[at]
    batch, stage = table.making.stage, table.making.stage.stage
    bowl = Bowl(table, work, m)
    is_dough = batch is work.dough
    home = HomeWriter(work, pictures, m)
    branches = work.batch.formula.branches if is_dough else ()
    after = tuple(step for branch in branches for step in branch.steps)
    ways = list(home.ways("", stage.steps, after, bowl, is_dough, _largest(work, "")))
    for branch in branches:
        adds = worked_in_rows(branch, work.batch, m)
        ways += home.ways(branch.noun, branch.steps, (), adds, True, _largest(work, branch.noun))
    return HomeStage(
        number=str(at + 1),
        title=stage.name or m.words["kinds." + stage.word],
        kind=m.words["kinds." + stage.word] if stage.name not in ("", stage.word) else "",
        rows=_rows(bowl, held=False),
        aside=_rows(bowl, held=True),
        cautions=cautions_at_stage(cautions_of(work), stage.key, m),
        ways=tuple(ways),
        notes=(*home_water(home_waters(work).get(stage.key), m), *stage.notes),
        figures=own_illustrations(stage.pictures, pictures),
    )


def _rows(bowl: Bowl, held: bool) -> tuple[WeighRow, ...]:
    """Grams first; spoons or cups beside them, with the density they were reckoned with."""
    fine = bowl.table.fine
    lines = [line for line in bowl.table.lines if line.weighed.portion.held is held]
    lines.sort(key=lambda line: fine is not None and line.reading.step < fine)  # as the bowl has them
    rows = []
    for row, line in zip(bowl.rows(held), lines, strict=True):
        ingredient = line.weighed.portion.ingredient
        # How far a reading is from the exact figure is a thing for the bakery's own sheet.
        exactly = exact_weight(line, bowl.m)
        notes = tuple(note for note in row.notes if note != exactly)
        instead = dried_instead(line.weighed.grams, ingredient, bowl.work.kitchen, bowl.m)
        beside = (bowl.m.ounces(line.shown), _spoons(line, bowl))
        aside = ", ".join(filter(None, beside))
        rows.append(row._replace(aside=aside, percent="", notes=(*notes, *instead)))
    return tuple(rows)


def _spoons(line: WeighedLine, bowl: Bowl) -> str:
    return spoons(line.weighed.grams, line.weighed.portion.ingredient, bowl.m, bowl.work.kitchen.measures)
