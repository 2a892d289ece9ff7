from __future__ import annotations

import random
import re
from fractions import Fraction

from fuzz.asked import any_amount, print_options
from fuzz.read import bakery_at, has_errors
from sheets.same_figures import METRIC, differing_card_weights, differing_times, differing_weights, of_type, whole_of

from manchet.batch.weighed_table import Table
from manchet.batch.weighing import weighings
from manchet.batch.work import Work
from manchet.figures.past_a_day import past_a_day
from manchet.sheets.forms.prep_sheet.sheet import prep_sheet
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue
from manchet.sheets.page.json_data import json_of
from manchet.sheets.registry import html_of

HOUSES = (METRIC, House("Letter", "US", "F", "American"))
GRAMS = {"g": Fraction(1), "kg": Fraction(1000), "oz": Fraction(45359237, 1600000), "lb": Fraction(45359237, 100000)}
"""The avoirdupois pound is 0.45359237 kg exactly (NIST Handbook 44, appendix C)."""
QUARTERS = {"": Fraction(0), "¼": Fraction(1, 4), "½": Fraction(1, 2), "¾": Fraction(3, 4)}


def weighing(text: str, rng: random.Random) -> None:
    """Every printed tub adds up, and sheet, handout, card, HTML and JSON say one weight, one time, one warmth."""
    bakery = bakery_at(text)
    if has_errors(bakery.diagnostics):
        return
    for formula in bakery.formulas[:3]:
        options = print_options(any_amount(formula, rng))
        work = bakery.work(formula, options.order).value if options else None
        work = work or bakery.work(formula).value
        if work is None or formula.preparation or past_a_day(work) or has_errors(weighings(work).diagnostics):
            continue
        house = rng.choice(HOUSES)
        adds_up(work, house)
        found = [*differing_weights(work), *differing_card_weights(work, house)[0], *differing_times(work, house)[0]]
        assert not found, f"forms differ: {found} at {work.order}"
        in_every_format(work, house)


def adds_up(work: Work, house: House) -> None:
    """The printed rows of each bowl are its printed weight, to half of what its coarsest scale reads."""
    tables = weighings(work, house.system).value
    for block, table in zip(prep_sheet(work, Issue(), house).blocks, tables, strict=True):
        if block.tub is None or not block.tub.weight:
            continue
        rows = sum((grams(*whole_of(row)) for row in block.rows), Fraction(0))
        shown = grams(*block.tub.weight.rsplit("\N{NO-BREAK SPACE}", 1))
        slack = coarsest(table, tables) / 2 + (GRAMS["oz"] / 8 * len(block.rows) if house.units == "US" else 0)
        assert abs(rows - shown) <= slack, f"{block.title} of {work.formula.name}: {float(rows)} and {block.tub.weight}"


def coarsest(table: Table, tables: tuple[Table, ...]) -> Fraction:
    """Grams that the coarsest of the scales reads which weigh this bowl, or what is taken of it."""
    key = table.making.stage.stage.key
    taken = [line for other in tables for line in other.lines if line.weighed.portion.stage == key]
    return max((line.reading.step for line in (*table.lines, *taken)), default=Fraction(1))


def in_every_format(work: Work, house: House) -> None:
    sheet = prep_sheet(work, Issue(), house)
    page, data = html_of(sheet), json_of(sheet)
    for row in of_type(sheet, "WeighRow"):
        assert row.weight in page and f'"weight": "{row.weight}"' in data, f"{row} is not in every format"


def grams(figure: str, unit: str) -> Fraction:
    """`1,560` `g`, `12.34` `kg`, `1¾` `oz`, `2 lb 3½` `oz` as grams."""
    *before, last = (
        re.split(r"\s*lb\s*", figure.replace("\N{NO-BREAK SPACE}", " "))
        if " " in figure or "\xa0" in figure
        else [figure]
    )
    pounds = sum((Fraction(one.replace(",", "")) for one in before), Fraction(0))
    whole, quarter = re.fullmatch(r"([\d,.]*)([¼½¾]?)", last).groups()  # type: ignore[union-attr]
    return pounds * GRAMS["lb"] + (Fraction(whole.replace(",", "") or 0) + QUARTERS[quarter]) * GRAMS[unit]
