"""What a comparison says was weighed is what the prep sheet says was weighed: *was 156 g* beside 141 g."""

from __future__ import annotations

import re

from comparison.breads import EIDER, GULL, Edits, edited, lines, work_of_text
from every import every
from loaves import LOAF_BY_WEIGHT, PLAIN_LOAF, POOLISH_LOAF

from manchet.batch.was_weighed import shares_by_name
from manchet.sheets.form import PageSetup
from manchet.sheets.forms.prep_sheet import FORM
from manchet.sheets.page.house import House
from manchet.sheets.page.issue import Issue
from manchet.sheets.page.json_data import json_of

CASES: tuple[tuple[str, Edits], ...] = (
    (GULL, (("2.1%", "1.9%"),)),
    (GULL, (("millet                 8%", "millet                10%"),)),
    (EIDER, (("1.9%", "2%"), ("malt syrup             2%", "malt syrup             1.5%"))),
    (PLAIN_LOAF, (("70%", "72%"), ("1.5%", "1.2%"), ("salt                   2%", "salt                   1.8%"))),
    (POOLISH_LOAF, (("salt                   2%", "salt                   2.2%"),)),
    (LOAF_BY_WEIGHT, (("700 g", "680 g"), ("salt                  20 g", "salt                  18 g"))),
)

TODAY = re.compile(r"^(?P<name>[a-z ]+) [\d.]+ → [\d.]+ %: (?P<was>[\d,.]+ k?g) → (?P<now>[\d,.]+ k?g) today$")
ROW = re.compile(
    r'"name": "(?P<name>[^"]+)",\s*"weight": "(?P<weight>[^"]*)",\s*"unit": "(?P<unit>[^"]*)",(?P<rest>.*?)"ice"', re.S
)


@every(CASES, at_least=6)
def test_weights_of_now_and_before(bread: str, edits: Edits) -> None:
    after = edited(bread, *edits)
    told = [found for line in lines(bread, after, everything=True) if (found := TODAY.match(line))]
    assert len(told) >= 1
    rows = sheet_rows(bread, after)
    for line in told:
        mine = [row for row in rows if row[0] == line["name"]]
        if len(mine) == 1 and mine[0][2]:
            assert mine == [(line["name"], line["now"], f"was {line['was']}")]
    assert any(was for _, _, was in rows)


def sheet_rows(before: str, after: str) -> list[tuple[str, str, str]]:
    """Name, weight and *was* of every row of the prep sheet."""
    page = PageSetup(Issue(), House(), before=shares_by_name(work_of_text(before).formula))
    view = FORM.render(work_of_text(after), page).value
    text = json_of(view).replace("\N{NO-BREAK SPACE}", " ")
    found = []
    for row in ROW.finditer(text):
        was = re.search(r'"was": "(was [^"]*)"', row["rest"])
        found.append((row["name"], f"{row['weight']} {row['unit']}", was[1] if was else ""))
    return found
