"""What is weighed at home: grams first, spoons and cups beside them; what goes in later last."""

from __future__ import annotations

from manchet.batch.weighed_table import WeighedLine
from manchet.batch.weighing import weighings
from manchet.batch.work import Work
from manchet.cautions.registry import cautions_of
from manchet.figures.water.home_water import home_waters
from manchet.sheets.forms.handout.dried_yeast import dried_instead
from manchet.sheets.forms.handout.home_measures import spoons
from manchet.sheets.forms.handout.view import HomeRow, HomeStage
from manchet.sheets.forms.handout.water import home_water
from manchet.sheets.page.measures import BOTH, Measures
from manchet.sheets.parts.bowl import Bowl
from manchet.sheets.parts.caution import cautions_at_home
from manchet.sheets.parts.own_pictures import Pictures, own_illustrations
from manchet.sheets.parts.views import WeighRow


def home_stages(work: Work, pictures: Pictures, m: Measures) -> tuple[HomeStage, ...]:
    tables = weighings(work).value
    return tuple(
        _stage(Bowl(table, work, m), str(number) if len(tables) > 1 else "", pictures)
        for number, table in enumerate(tables, 1)
    )


def _stage(bowl: Bowl, number: str, pictures: Pictures) -> HomeStage:
    m, stage = bowl.m, bowl.table.making.stage.stage
    return HomeStage(
        number=number,
        title=stage_title(bowl),
        kind=m.words["kinds." + stage.word] if stage.name not in ("", stage.word) else "",
        water=home_water(home_waters(bowl.work).get(stage.key), m),
        rows=home_rows(bowl),
        notes=stage.notes,
        cautions=cautions_at_home(cautions_of(bowl.work), stage.key, None, m),
        figures=own_illustrations(stage.pictures, pictures),
    )


def stage_title(bowl: Bowl) -> str:
    stage = bowl.table.making.stage.stage
    return stage.name or bowl.m.words["kinds." + stage.word]


def home_rows(bowl: Bowl) -> tuple[HomeRow, ...]:
    """The lines of a weighing as the prep sheet has them, for a kitchen without a fine scale."""
    return (*_rows(bowl, held=False), *_rows(bowl, held=True))


def _rows(bowl: Bowl, held: bool) -> list[HomeRow]:
    m, rows = bowl.m, []
    for row, line in zip(bowl.rows(held), bowl.lines(held), strict=True):
        notes = list(row.notes)
        notes += dried_instead(line.weighed.grams, line.weighed.portion.ingredient, bowl.work.kitchen, m)
        measured = home_row(row, line, bowl)
        rows.append(measured._replace(notes=(*([m.words["handout.later"]] if held else []), *notes)))
    return rows


def home_row(row: WeighRow, line: WeighedLine, bowl: Bowl) -> HomeRow:
    """A row of the sheet with its spoons or cups."""
    said = spoons(line.weighed.grams, line.weighed.portion.ingredient, bowl.m, bowl.work.kitchen.measures)
    return HomeRow(row.name, row.weight, row.unit, some_ounces(bowl.m.ounces(line.shown)), said.said, said.density)


def some_ounces(said: str) -> str:
    """None, where they would be nothing."""
    return said if set(said) & set("123456789¼½¾") else ""


def added_row(row: WeighRow, m: Measures) -> HomeRow:
    """What a step adds: at home there is one scale, so that only the ounces stand beside the grams."""
    return HomeRow(row.name, row.weight, row.unit, some_ounces(row.aside) if m.house.units == BOTH else "")
