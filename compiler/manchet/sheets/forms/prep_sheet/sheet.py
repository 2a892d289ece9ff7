"""The prep sheet of one formula at one size: from exact values to text, in the order of the work."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from manchet.batch.model import Batch, PieceBatch, StageBatch
from manchet.batch.tubs import given_back, goes_whole, leaves_some
from manchet.batch.weighed_table import Table
from manchet.batch.weighing import weighings
from manchet.batch.work import Work
from manchet.cautions.registry import cautions_of
from manchet.diagnostics.suggest import fold
from manchet.figures.water.dough_temperature import wanted_of
from manchet.figures.water.stage_water import stage_waters
from manchet.figures.water.water_grid import DoughWater, water_of
from manchet.formula.changed import OPTION
from manchet.formula.model import Formula
from manchet.formula.nouns import noun_for
from manchet.sheets.form import NO_PICTURES, NO_VERSION
from manchet.sheets.forms.prep_sheet.page_breaks import with_page_breaks
from manchet.sheets.forms.prep_sheet.repeats import without_repeats
from manchet.sheets.forms.prep_sheet.stage_steps import page_groups, stage_parts
from manchet.sheets.forms.prep_sheet.view import PrepSheet, StageBlock
from manchet.sheets.forms.prep_sheet.water_panel import STEP, hot_readings, water_panel
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue, running_head
from manchet.sheets.page.measures import Measures
from manchet.sheets.page.words import words_of
from manchet.sheets.parts.baked_weight import about_baked_phrase
from manchet.sheets.parts.bowl import Bowl
from manchet.sheets.parts.caution import cautions_at_stage, cautions_of_no_stage
from manchet.sheets.parts.far_from_written import far_stage_notes
from manchet.sheets.parts.foot import flours_line, overall_shares, scale_notes, total_facts
from manchet.sheets.parts.mixing import stiff_mix_fact
from manchet.sheets.parts.own_pictures import Pictures, own_illustrations
from manchet.sheets.parts.swap_lines import swap_lines
from manchet.sheets.parts.views import Box, Fact
from manchet.sheets.parts.wait_lines import wait_lines
from manchet.sheets.parts.wording import single
from manchet.syntax.vocabulary import BY_CULTURE


def prep_sheet(
    work: Work,
    issue: Issue,
    house: House,
    before: Mapping[str, Fraction] = NO_VERSION,
    pictures: Pictures = NO_PICTURES,
) -> PrepSheet:
    """The view of the prep sheet. Pure: the day, the version and the house's habits all come in.

    `before` is the overall formula of the version before, by key: grams per gram of all flour.
    """
    words = words_of(house.words)
    m = Measures(house, words)
    tables, cautions = weighings(work, m.system).value, cautions_of(work)
    water = _water(work, m)
    formula, number = work.batch.formula, work.mixes.number
    mix = words.say("head.mixes_short", str(number)) if number > 1 else ""
    sheet = PrepSheet(
        title=formula.name,
        about=formula.about,
        language=words["language"],
        paper=house.paper,
        running=running_head(formula.name, mix, issue),
        status=formula.status,
        warning=words["sheet.not_approved"] if _no_longer_approved(formula, issue) else "",
        head=_head(work, issue, m),
        readings=_readings(work, m),
        blocks=without_repeats(_stage_block(n, table, work, pictures, m) for n, table in enumerate(tables, 1)),
        cautions=cautions_of_no_stage(cautions, [s.stage.key for s in work.batch.stages], m),
        hazards=words["sheet.hazards"] if any(c.of == "house" for c in cautions) else "",
        overall=overall_shares(formula, before, m),
        overall_head=words["sheet.overall" if formula.has_flour else "sheet.overall_whole"],
        totals=() if formula.preparation else total_facts(work.totals, m),
        flours=flours_line(formula, m),
        lots=(words["sheet.lot"],) if formula.preparation else words.several("sheet.lots"),
        water=None if water is None or not water.known else water_panel(water, m),
        swapped=(*swap_lines(formula.swapped, m), *wait_lines(formula.moved, m)),
        figures=own_illustrations(formula.pictures, pictures),
        notes=(*(() if formula.preparation else formula.notes), *scale_notes(tables, m)),
    )  # fmt: skip
    return sheet._replace(blocks=with_page_breaks(sheet))


def _water(work: Work, m: Measures) -> DoughWater | None:
    return None if work.formula.preparation else water_of(work, STEP[m.house.degrees])


def _no_longer_approved(formula: Formula, issue: Issue) -> bool:
    """What was approved is the file: not what was changed since, nor what was asked for beside it."""
    asked_for = bool(formula.moved) or any(made.place.path == OPTION for made in formula.swapped)
    return formula.status.startswith("approved") and (issue.edited or asked_for)


# ---- the head -------------------------------------------------------------------------------------


def _head(work: Work, issue: Issue, m: Measures) -> tuple[Fact, ...]:
    words, batch = m.words, work.batch
    facts = [Fact(words["head.makes"], _pieces_line(p, batch, m)) for p in batch.pieces]
    wanted = None if work.formula.preparation else wanted_of(work.dough.stage.steps)
    weight = m.mass(batch.dough)
    if wanted is not None:
        facts.append(Fact(words["sheet.dough_weight"], f"{m.degrees(wanted[1])}, {weight}"))
    else:
        facts.append(Fact(words["sheet.whole_made" if batch.formula.preparation else "sheet.dough_weight"], weight))
    if work.mixes.number > 1:
        value = words.say("sheet.many_mixes", str(work.mixes.number), m.mass(work.mixes.grams))
        facts.append(Fact(words["sheet.mixes"], value))
        facts += stiff_mix_fact(work.mixes, m)
    if work.mixes.under is not None:
        facts.append(Fact("", words.say("sheet.under", m.mass(work.mixes.under))))
    if batch.formula.good_for is not None:
        seconds, at = batch.formula.good_for
        time = m.time(single(seconds))
        kept = time if at is None else words.say("sheet.good_for_at", time, m.degrees(at))
        facts.append(Fact(words["sheet.good_for"], kept))
    if issue.out_at:
        facts.append(Fact(words["sheet.out_at"], issue.out_at))
    return tuple(facts)


def _readings(work: Work, m: Measures) -> tuple[Box, ...]:
    """What the thermometer says before the mixing: the water's temperature follows from it."""
    started = Box(m.words["sheet.started"])
    if work.formula.preparation:
        return (started,)
    water = _water(work, m)
    names = [m.words["sheet.flour"], m.words["sheet.room"]]
    if water is not None and water.preferment is not None:
        names.append(m.words["water.preferment"])
    names += [] if water is None else hot_readings(water)
    if water is not None:
        names.append(water.liquid)
    elif work.totals.water_added:
        names.append(m.words["water.name"])
    return (*(Box(name, m.degree()) for name in names), started)


def _pieces_line(p: PieceBatch, batch: Batch, m: Measures) -> str:
    number, weight = m.plain(single(p.number), 1), m.each(p.grams)
    said = (
        m.words.say("sheet.in_tin", number, noun_for(p.number, p.noun), p.tin, weight)
        if p.tin
        else m.words.say("head.pieces", number, noun_for(p.number, p.noun), weight)
    )
    return said + about_baked_phrase(p, batch.formula, m)


# ---- a stage --------------------------------------------------------------------------------------


def _stage_block(number: int, table: Table, work: Work, pictures: Pictures, m: Measures) -> StageBlock:
    making = table.making
    batch, stage = making.stage, making.stage.stage
    bowl = Bowl(table, work, m, stage_waters(work))
    return StageBlock(
        number=str(number),
        title=stage.name or m.words["kinds." + stage.word],
        kind=m.words["kinds." + stage.word] if stage.name not in ("", stage.word) else "",
        made=_how_often(making.times, work, m),
        flour=_flour_line(batch, work.batch, m),
        bowls=bowl.numbers,
        rows=bowl.rows(held=False),
        holds=bowl.holds(),
        aside=bowl.rows(held=True),
        notes=(*far_stage_notes(batch, m), *_kept_notes(batch, m), *_culture_notes(bowl, m), *stage.notes),
        parts=page_groups(
            [
                *cautions_at_stage(cautions_of(work), stage.key, m),
                *stage_parts(batch, bowl, work, pictures, m),
            ]
        ),
        goes=_where_it_goes(table, work, m),
    )


def _how_often(times: int, work: Work, m: Measures) -> str:
    number = work.mixes.number
    if number == 1:
        return ""
    return m.words.say("stage.once", str(number)) if times == 1 else m.words.say("stage.each_bowl", str(times))


def _flour_line(batch: StageBatch, whole: Batch, m: Measures) -> str:
    """`1,483 g of 6,743 g flour, and 9 g for the pot`: what the bread gets, and what is mixed on top to keep."""
    if batch.stage.flour_share is not None:
        flour = batch.stage.flour_share * whole.flour
    else:
        flour = sum((w.grams for w in batch.weighed if w.portion.is_flour), Fraction(0))
    if not flour or whole.formula.preparation:
        return ""
    said = m.words.say("stage.flour_of", m.flour(flour), m.flour(whole.flour))
    lines = [w for w in batch.weighed if w.portion.is_flour]
    more = sum((w.grams - w.portion.share * whole.flour for w in lines), Fraction(0))
    if more < Fraction(1, 2):
        return said
    return m.words.say(
        "stage.flour_for_pot" if batch.stage.word in BY_CULTURE else "stage.flour_to_keep", said, m.flour(more)
    )


def _kept_notes(batch: StageBatch, m: Measures) -> list[str]:
    return [
        m.words.say("stage.more_mixed", m.mass(keep.grams), keep.name)
        for keep in batch.stage.keeps
        if keep.grams is not None
    ]


def _culture_notes(bowl: Bowl, m: Measures) -> list[str]:
    """`ripe rye starter: takes 151.5 g, gives back 60 g`, for a culture that comes out of the pot and goes back."""
    batch = bowl.table.making.stage
    back: dict[str, Fraction] = {}
    for name, grams in (*batch.kept, *given_back(bowl.table, bowl.tables)):
        back[fold(name)] = back.get(fold(name), Fraction(0)) + grams
    return [
        m.words.say("stage.takes", name, m.mass(line.reading.grams * bowl.times), m.mass(back[fold(name)]))
        for line in bowl.table.lines
        if line.weighed.portion.booking.value and fold(name := line.weighed.portion.name) in back
    ]


def _where_it_goes(table: Table, work: Work, m: Measures) -> tuple[str, ...]:
    """Where what was made goes, and the part of it for each bowl: the very figures that are weighed there."""
    batch, times = table.making.stage, table.making.times
    tables = weighings(work, m.system).value
    said = []
    for user in tables:
        bowl, name = Bowl(user, work, m), user.making.stage.stage.name
        lines = [line for line in user.lines if line.weighed.portion.stage == batch.stage.key]
        if not lines or user.making.stage is batch:
            continue
        each, step = sum((x.reading.grams for x in lines), Fraction(0)), max(x.reading.step for x in lines)
        if user.making.times > times:
            whole = bowl.weight(each * user.making.times, step)
            said.append(m.words.say("stage.goes_bowls", name, str(whole), str(bowl.weight(each, step))))
        elif goes_whole(table, tables):
            phrase = "stage.rest_goes" if leaves_some(table) else "stage.all_goes"
            said.append(m.words.say(phrase, name, str(bowl.weight(each, step))))
        else:
            said.append(m.words.say("stage.goes_to", name, str(bowl.weight(each, step))))
    return tuple(said)
