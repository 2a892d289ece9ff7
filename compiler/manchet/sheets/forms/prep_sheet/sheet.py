"""The prep sheet of one formula at one size: from exact values to text, in the order of the work."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from manchet.batch.model import Batch, StageBatch
from manchet.batch.weighed_table import Table
from manchet.batch.weighing import weighings
from manchet.batch.work import Work
from manchet.cautions.registry import cautions_of
from manchet.diagnostics.suggest import fold
from manchet.figures.ahead import Ahead
from manchet.figures.water.dough_temperature import wanted_of
from manchet.figures.water.stage_water import stage_waters
from manchet.figures.water.water_grid import DoughWater
from manchet.sheets.form import NO_PICTURES, NO_VERSION
from manchet.sheets.forms.prep_sheet.head import (
    amount,
    beside_the_dough,
    head_lines,
    made_ahead,
    readings,
)
from manchet.sheets.forms.prep_sheet.other_waits import other_waits
from manchet.sheets.forms.prep_sheet.stage_parts import Pages
from manchet.sheets.forms.prep_sheet.tub import tub_of
from manchet.sheets.forms.prep_sheet.view import Gone, PrepSheet, StageBlock
from manchet.sheets.forms.prep_sheet.water_panel import standing_panel, water_panel
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue, running_head
from manchet.sheets.page.measures import Measures
from manchet.sheets.page.words import words_of
from manchet.sheets.parts.allergens import allergen_line
from manchet.sheets.parts.approval import no_longer_approved, status_of
from manchet.sheets.parts.bowl import Bowl
from manchet.sheets.parts.caution import cautions_of_no_stage, cautions_of_stage
from manchet.sheets.parts.dough_ice import dough_water, ice_in_the_dough
from manchet.sheets.parts.far_from_written import far_stage_notes
from manchet.sheets.parts.foot import flours_line, overall_shares, scale_notes, total_facts
from manchet.sheets.parts.own_pictures import Pictures, own_illustrations
from manchet.sheets.parts.swap_lines import swap_lines
from manchet.sheets.parts.views import Fact, OverallShare
from manchet.sheets.parts.wait_lines import wait_lines


def prep_sheet(
    work: Work,
    issue: Issue,
    house: House,
    before: Mapping[str, Fraction] = NO_VERSION,
    pictures: Pictures = NO_PICTURES,
    ahead: tuple[Ahead, ...] = (),
) -> PrepSheet:
    """The view of the prep sheet. Pure: the day, the version and the house's habits all come in.

    `before` is the overall formula of the version before, by key: grams per gram of all flour.
    """
    words = words_of(house.words)
    m = Measures(house, words)
    tables, cautions = weighings(work, m.system).value, cautions_of(work)
    water, pages = dough_water(work), Pages(work, pictures, m)
    formula, number = work.batch.formula, work.mixes.number
    wanted = None if formula.preparation else wanted_of(work.dough.stage.steps)
    overall = overall_shares(formula, before, m)
    unapproved = no_longer_approved(formula, issue)
    blocks = tuple(_stage_block(n, table, work, pages, water, before, m) for n, table in enumerate(tables, 1))
    return PrepSheet(
        title=formula.name,
        language=words["language"],
        paper=house.paper,
        units=house.units,
        running=running_head(formula.name, words.say("head.mixes_short", str(number)) if number > 1 else "", issue),
        status="" if unapproved else status_of(formula, m),
        warning=words["sheet.not_approved"] if unapproved else "",
        amounts=tuple(amount(p, formula, m) for p in work.batch.pieces),
        lines=tuple(head_lines(work, issue, m)),
        ahead=tuple(made_ahead(work, ahead, m)),
        beside=tuple(beside_the_dough(work, m)),
        wanted="" if wanted is None else m.degrees(wanted[1]),
        dough=m.mass(work.batch.dough),
        readings=readings(work, water, m),
        blocks=blocks,
        bench=pages.bench(blocks[-1].bowls),
        cautions=cautions_of_no_stage(cautions, [s.stage.key for s in work.batch.stages], m),
        hazards=words["sheet.hazards"] if any(c.of == "house" for c in cautions) else "",
        overall=overall,
        overall_head=words["sheet.overall" if formula.has_flour else "sheet.overall_whole"],
        totals=() if formula.preparation else _not_twice(total_facts(work.totals, m), overall),
        flours=flours_line(formula, m),
        lots=(words["sheet.lot"],) if formula.preparation else words.several("sheet.lots"),
        water=standing_panel(work, m) if water is None else water_panel(water, work, m) if water.known else None,
        waits=() if formula.preparation else other_waits(work, m),
        swapped=(*swap_lines(formula.swapped, m), *wait_lines(formula.moved, m)),
        figures=own_illustrations(formula.pictures, pictures),
        notes=(*(() if formula.preparation else formula.notes), *scale_notes(tables, m)),
        contains=allergen_line(work, m),
    )  # fmt: skip


def _not_twice(totals: tuple[Fact, ...], overall: tuple[OverallShare, ...]) -> tuple[Fact, ...]:
    """Without what a line of the overall formula says already: the salt and the yeast, mostly."""
    said = {(line.name, line.percent) for line in overall}
    return tuple(fact for fact in totals if (fact.label, fact.value) not in said)


def _stage_block(
    number: int,
    table: Table,
    work: Work,
    pages: Pages,
    water: DoughWater | None,
    before: Mapping[str, Fraction],
    m: Measures,
) -> StageBlock:
    making = table.making
    batch, stage, mixes = making.stage, making.stage.stage, work.mixes.number
    is_dough = batch is work.dough and not work.formula.preparation
    bowl = Bowl(table, work, m, stage_waters(work), ice_in_the_dough(work, m) if is_dough else {}, before)
    return StageBlock(
        number=str(number) if len(work.batch.stages) > 1 else "",
        title=stage.name or m.words["kinds." + stage.word],
        kind=m.words["kinds." + stage.word] if stage.name not in ("", stage.word) else "",
        flour=_flour_share(batch, work.batch, m),
        once_for=str(mixes) if mixes > 1 and making.times == 1 else "",
        bowls_in_all=str(making.times) if making.times > 1 else "",
        bowls=bowl.numbers,
        rows=bowl.rows(held=False),
        aside=bowl.later(),
        gone=tuple(_gone(work, before, m)) if batch is work.dough else (),
        tub=tub_of(bowl),
        notes=(*far_stage_notes(batch, m), *stage.notes),
        cautions=cautions_of_stage(cautions_of(work), stage.key, m),
        parts=pages.mixing(batch, bowl),
    )


def _flour_share(batch: StageBatch, whole: Batch, m: Measures) -> str:
    """`20 %` of all flour: what the bread gets of it in this stage."""
    share = batch.stage.flour_share
    if share is None:
        share = sum((p.share for p in batch.stage.portions if p.is_flour), Fraction(0))
    if not share or share == 1 or not whole.formula.has_flour:
        return ""
    return m.worked_out(share)


def _gone(work: Work, before: Mapping[str, Fraction], m: Measures) -> list[Gone]:
    now = {fold(line.name) for line in work.formula.overall}
    return [Gone(name, m.percent(was)) for name, was in before.items() if name not in now]
