"""The handout: a formula to take home, for hands and one domestic oven, in stage blocks as on the prep sheet."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from manchet.batch.pieces import worked_in
from manchet.batch.weighed_table import WeighedLine
from manchet.batch.weighing import weighings
from manchet.batch.work import Work
from manchet.cautions.caution import DEFERS, caution
from manchet.cautions.registry import cautions_of
from manchet.figures.water.home_water import home_waters
from manchet.formula.nouns import same_noun
from manchet.sheets import caution_view, class_view, foot_view, home_yeast, prep_steps, views
from manchet.sheets.handout_values import Handout, Section
from manchet.sheets.home_made import before
from manchet.sheets.home_measures import spoons
from manchet.sheets.home_ways import Home, pieces_of
from manchet.sheets.measures import BOTH, Measures
from manchet.sheets.own_pictures import Pictures, own
from manchet.sheets.recipe_data import Times, recipe_of
from manchet.sheets.swap_lines import swap_lines
from manchet.sheets.views import Fact, House, Issue, Row
from manchet.sheets.wait_lines import wait_lines
from manchet.sheets.water_view import home_water
from manchet.sheets.weigh_view import Bowl, exact_weight
from manchet.sheets.words_of import words_of
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
    sections = tuple(_section(at, work, pictures, m) for at in range(len(tables)))
    head = tuple(Fact(words["head.makes"], pieces_of(p, formula, m)) for p in work.batch.pieces)
    whole = m.mass(work.batch.dough)
    head = head or (Fact(words["head.makes"], whole if formula.preparation else words.say("head.whole", whole)),)
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
        running=views.Running(
            formula.name, words["handout.title"], issue.date, issue.file, issue.version, issue.digest, issue.replaces
        ),
        head=head,
        spoons=words["handout.spoons_vary"] if spoony else "",
        yeast=_yeast(work, m),
        sections=sections,
        cautions=(
            *caution_view.belong_nowhere(cautions, [s.stage.key for s in work.batch.stages], m),
            *(caution_view.caution_view(c, m) for c in home),
        ),
        defers=DEFERS,
        overall_head=words["handout.per_cent_whole" if formula.preparation else "handout.per_cent"],
        overall=foot_view.overall(formula, {}, m),
        blanks=blanks,
        bench=class_view.bench(work, made, benches, m) if benches else None,
        notes=() if formula.preparation else formula.notes,
        swapped=(*swap_lines(formula.swapped, m), *wait_lines(formula.moved, m)),
        figures=own(formula.pictures, pictures),
        before=tuple(before(each, m) for each in made),
        recipe=recipe_of(
            formula.name, formula.about, words["language"], [fact.value for fact in head], _bought(work, m), sections,
            _times(work),
        ),
    )  # fmt: skip


def _bought(work: Work, m: Measures) -> list[str]:
    """What goes in, the stages taken apart: `958 g white flour`."""
    grams: dict[str, Fraction] = {}
    for table in weighings(work).value:
        for line in table.lines:
            if not line.weighed.portion.stage:
                name = line.weighed.portion.name
                grams[name] = grams.get(name, Fraction(0)) + line.shown
    for branch in work.batch.formula.branches:
        for portion, much in worked_in(branch, work.batch):
            grams[portion.name] = grams.get(portion.name, Fraction(0)) + much
    return [f"{m.grams(much)} {name}" for name, much in grams.items()]


def _times(work: Work) -> Times:
    """How long it all takes at home, and how long of that something bakes: the longest way of several."""
    ways = [steps for _, steps in work.batch.formula.ways]
    baked = [sum((s.time.likely for s in way if s.verb == "bake" and s.time is not None), Fraction(0)) for way in ways]
    return Times(max(baked), course_of(work).total)


def _yeast(work: Work, m: Measures) -> str:
    """Which yeast the weights are for: one kind is never weighed as another."""
    yeasts = [yeast for yeast, _ in work.totals.yeasts]
    if not yeasts:
        return ""
    names = ", ".join(yeast.name for yeast in yeasts)
    if any(yeast.name in home_yeast.DRIED for yeast in yeasts):
        return m.words.say("handout.yeast_or_dried", names, home_yeast.factors_of(work.kitchen).source)
    return m.words.say("handout.yeast", names)


def _largest(work: Work, noun: str) -> Fraction:
    """Grams of the largest piece of one sort, or of any where no noun is given."""
    there = (p.grams for p in work.batch.pieces if not noun or same_noun(p.noun, noun))
    return max(there, default=work.batch.dough)


# ---- a stage --------------------------------------------------------------------------------------


def _section(at: int, work: Work, pictures: Pictures, m: Measures) -> Section:
    table = weighings(work).value[at]
    batch, stage = table.making.stage, table.making.stage.stage
    bowl = Bowl(table, work, m)
    is_dough = batch is work.dough
    home = Home(work, pictures, m)
    branches = work.batch.formula.branches if is_dough else ()
    after = tuple(step for branch in branches for step in branch.steps)
    ways = list(home.ways("", stage.steps, after, bowl, is_dough, _largest(work, "")))
    for branch in branches:
        adds = prep_steps.branch_adds(branch, work.batch, m)
        ways += home.ways(branch.noun, branch.steps, (), adds, True, _largest(work, branch.noun))
    return Section(
        number=str(at + 1),
        title=stage.name or m.words["kinds." + stage.word],
        kind=m.words["kinds." + stage.word] if stage.name not in ("", stage.word) else "",
        rows=_rows(bowl, held=False),
        aside=_rows(bowl, held=True),
        cautions=caution_view.at_stage(cautions_of(work), stage.key, m),
        ways=tuple(ways),
        notes=(*home_water(home_waters(work).get(stage.key), m), *stage.notes),
        figures=own(stage.pictures, pictures),
    )


def _rows(bowl: Bowl, held: bool) -> tuple[Row, ...]:
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
        instead = home_yeast.instead_of(line.weighed.grams, ingredient, bowl.work.kitchen, bowl.m)
        beside = (bowl.m.ounces(line.shown), _spoons(line, bowl))
        aside = ", ".join(filter(None, beside))
        rows.append(row._replace(aside=aside, percent="", notes=(*notes, *instead)))
    return tuple(rows)


def _spoons(line: WeighedLine, bowl: Bowl) -> str:
    return spoons(line.weighed.grams, line.weighed.portion.ingredient, bowl.m, bowl.work.kitchen.measures)
