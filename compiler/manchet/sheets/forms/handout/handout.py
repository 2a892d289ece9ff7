"""The handout: a formula to take home, for hands and one domestic oven, on two sides."""

from __future__ import annotations

from fractions import Fraction

from manchet.batch.pieces import branch_additions
from manchet.batch.weighed_table import more_on_the_scale
from manchet.batch.weighing import weighings
from manchet.batch.work import Work
from manchet.cautions.caution import caution
from manchet.cautions.registry import cautions_of
from manchet.sheets.form import HomeWork
from manchet.sheets.forms.handout.dried_yeast import DRIED
from manchet.sheets.forms.handout.ingredients import home_stages
from manchet.sheets.forms.handout.made_ahead import made_ahead
from manchet.sheets.forms.handout.method import home_method
from manchet.sheets.forms.handout.oven import heats_in, home_oven, is_potted
from manchet.sheets.forms.handout.recipe_data import RecipeTimes, recipe_json
from manchet.sheets.forms.handout.view import Handout, MadeAhead
from manchet.sheets.forms.handout.when_to_start import when_to_start
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue, running_head
from manchet.sheets.page.measures import BOTH, Measures
from manchet.sheets.page.words import words_of
from manchet.sheets.parts.allergens import allergen_line
from manchet.sheets.parts.caution import caution_note, cautions_for_eaters, cautions_of_no_stage
from manchet.sheets.parts.foot import overall_shares, per_cents_of
from manchet.sheets.parts.own_pictures import Pictures, own_illustrations
from manchet.sheets.parts.pieces_line import made_lines
from manchet.sheets.parts.swap_lines import swap_lines
from manchet.sheets.parts.views import CautionNote, OverallShare
from manchet.sheets.parts.wait_lines import wait_lines
from manchet.timing.at_home import HomeCourse, course_at_home

POT, BURNS = "hot-lid", "burns"
AT_HOME = ("raw-dough", "oven-steam", POT, BURNS)
"""Hazards of the house that a kitchen at home has too; those of a bakery's machines and sacks stay on its card."""


def handout(home: HomeWork, issue: Issue, house: House, pictures: Pictures, blanks: bool = False) -> Handout:
    """The view. With `blanks` no per cent of the formula stands on it: nor beside what was swapped."""
    work, words = home.work, words_of(house.words)
    m = Measures(house._replace(units=BOTH if house.units == "US" else "metric"), words)
    formula, cautions = work.formula, cautions_of(work)
    course = course_at_home(work, [each.work for each in home.made_ahead], heats_in(work))
    stages, method = home_stages(work, pictures, m), home_method(work, pictures, m)
    before = tuple(made_ahead(each, m) for each in home.made_ahead)
    spoony = any(row.density for stage in stages for row in stage.rows)
    overall = overall_shares(formula, {}, m)
    makes = made_lines(work, m)
    return Handout(
        title=formula.name,
        about=formula.about,
        language=words["language"],
        paper=house.paper,
        running=running_head(formula.name, words["handout.title"], issue),
        makes=makes,
        before=_as_begun(before, course),
        stages=stages,
        start=when_to_start(course, m),
        oven=home_oven(work, m),
        method=method,
        at_home=_at_home(work, m),
        once=(*([words["handout.spoons_vary"]] if spoony else []), *_yeast(work, m)),
        cautions=cautions_of_no_stage(cautions, [s.stage.key for s in work.batch.stages], m),
        overall_head=per_cents_of(formula, m),
        overall=tuple(OverallShare(one.name, "") for one in overall) if blanks else overall,
        blanks=blanks,
        notes=() if formula.preparation else formula.notes,
        swapped=() if blanks else (*swap_lines(formula.swapped, m), *wait_lines(formula.moved, m)),
        figures=own_illustrations(formula.pictures, pictures),
        recipe=recipe_json(
            formula.name, formula.about, words["language"], makes, _to_buy(work, m), before, method,
            RecipeTimes(course.baked, course.total),
        ),
        contains=allergen_line(work, m, stated=False),
    )  # fmt: skip


def _as_begun(before: tuple[MadeAhead, ...], course: HomeCourse) -> tuple[MadeAhead, ...]:
    order = [one.name for one in course.begins if one.what == "ahead"]
    return tuple(sorted(before, key=lambda each: order.index(each.title)))


def _at_home(work: Work, m: Measures) -> tuple[CautionNote, ...]:
    """What is dangerous in any kitchen, and whom the bread is not for. A lid that the file itself names has its caution at
    its step."""
    met = {one.name for one in cautions_of(work)}
    said = [name for name in AT_HOME if (is_potted(work) if name == POT else name in met or name == BURNS)]
    burns = caution_note(caution(BURNS), m)
    notes = [caution_note(caution(name), m) for name in said]
    # What to do with a burn is said once.
    notes = [
        note._replace(if_missed="") if note.if_missed.startswith(f"{burns.catchword}:") else note for note in notes
    ]
    return (*notes, *cautions_for_eaters(cautions_of(work), m))


def _to_buy(work: Work, m: Measures) -> list[str]:
    """What goes in, the stages taken apart: `958 g white flour`."""
    grams: dict[str, Fraction] = {}
    more: dict[str, Fraction] = {}
    needed: set[str] = set()
    for table in weighings(work).value:
        for line in table.lines:
            portion = line.weighed.portion
            if not portion.stage:
                grams[portion.name] = grams.get(portion.name, Fraction(0)) + line.shown
                more[portion.name] = more.get(portion.name, Fraction(0)) + more_on_the_scale(line)
                needed |= set() if portion.optional else {portion.name}
    for branch in work.formula.branches:
        for portion, much in branch_additions(branch, work.batch):
            grams[portion.name] = grams.get(portion.name, Fraction(0)) + much
            needed.add(portion.name)
    said = []
    for name, much in grams.items():
        on_top = [m.words.say("bowl.as_asked", str(m.grams(more[name])))] if more.get(name) else []
        optional = [] if name in needed else [m.words["bowl.optional"]]
        said.append(", ".join((f"{m.grams(much)} {name}", *optional, *on_top)))
    return said


def _yeast(work: Work, m: Measures) -> list[str]:
    """Which yeast the weights are for: one kind is never weighed as another."""
    yeasts = [yeast for yeast, _ in work.totals.yeasts]
    if not yeasts:
        return []
    names = ", ".join(yeast.name for yeast in yeasts)
    if any(yeast.name in DRIED for yeast in yeasts):
        return [m.words.say("handout.yeast_or_dried", names, work.kitchen.yeast_factors.source)]
    return [m.words.say("handout.yeast", names)]
