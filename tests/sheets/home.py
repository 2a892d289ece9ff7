"""A loaf as it is taken home: from its text to its handout and its class set."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Any

from sheets.test_hostile_text import seen
from sheets.work import ISSUE

from manchet.sheets.form import HomeWork
from manchet.sheets.forms.class_set.class_set import class_set
from manchet.sheets.forms.class_set.view import ClassSet
from manchet.sheets.forms.handout.handout import handout
from manchet.sheets.forms.handout.view import Handout, HomeClause, HomeRow, HomeStep
from manchet.sheets.page.house import House
from manchet.source.text import SourceText
from manchet.workspace.bakery import read
from manchet.workspace.home_work import home_work
from manchet.workspace.print_options import PrintOptions

QUAY = """formula Quay loaf
  about "Everyday wheat loaf, proved cold."
  kind hearth loaf
  makes 24 loaves at 900 g dough
  bake loss 14%

  overall
    white flour           90%
    whole rye flour       10%
    water                 70%
    salt                   2%
    fresh yeast            1%

  poolish with 20% of all flour
    white flour          100%
    water                100%
    fresh yeast            0.5%
    mix slow 3 min to 24 C
    ripen covered 10-12 h at 20 C until "domed"

  dough
    poolish
    everything else
    hold back salt
    mix slow 5 min
    add salt
    mix fast 4 min to 25 C until "stretches thin"
      why "it holds the gas later"
    ferment covered 2 h at 25 C with 2 folds every 40 min
    divide
    shape oval 20 s each
    prove covered 60-75 min at 26 C until "a finger's mark fills slowly"
    score "one long cut, 6 mm deep"
    bake 15 min at 255 C, steam
    bake 25-30 min at 220 C to 97 C core, vent open
      until "chestnut"
    cool 2 h

  note "Better on the second day."
"""

PLAIN = House()
US = House("Letter", "US", "F", "American")
AT_HOME = PrintOptions()


def at_home(text: str = QUAY, house: House = PLAIN, wish: PrintOptions = AT_HOME) -> HomeWork:
    bakery = read([SourceText("quay.bake", text)])
    assert [d for d in bakery.diagnostics if d.severity.value == "error"] == []
    home = home_work(bakery, bakery.formulas[0], wish, house)
    assert home.value is not None, home.diagnostics
    return home.value


def taken(text: str = QUAY, house: House = PLAIN, wish: PrintOptions = AT_HOME) -> Handout:
    return handout(at_home(text, house, wish), ISSUE, house, {}, wish.blanks)


def class_of(text: str = QUAY, benches: int = 12, house: House = PLAIN) -> ClassSet:
    return class_set(at_home(text, house), ISSUE, house, benches)


def plain(text: str) -> str:
    return text.replace("\N{NO-BREAK SPACE}", " ")


def steps(view: Handout) -> Iterator[HomeStep]:
    return (step for stage in view.method for way in stage.ways for step in way.steps)


def clauses(view: Handout) -> Iterator[HomeClause]:
    return (clause for step in steps(view) for clause in step.clauses)


def said(clause: HomeClause) -> str:
    """As it is read aloud."""
    adds = "".join(f" {row.name} {row.weight} {row.unit}" for row in clause.adds)
    return plain(f"{clause.done}{adds}{clause.how}" + (f" {clause.until}" if clause.until else ""))


def home_rows(view: Handout) -> Iterator[HomeRow]:
    return (row for stage in view.stages for row in stage.rows)


def text_of(page: str) -> str:
    """What a reader sees, a line for each block."""
    body = re.sub(r"<(style|script|svg)[^>]*>.*?</\1>", "", page, flags=re.DOTALL)
    lines = re.sub(r"</?(p|tr|table|h1|h2|h3|h4|li|ol|div|section|header|main)[^>]*>", "\n", body)
    read_aloud = seen(re.sub(r"</?(td|th|span|b)[^>]*>", " ", lines)).text
    return "\n".join(line for line in (" ".join(raw.split()) for raw in read_aloud.splitlines()) if line) + "\n"


def each_text(view: Any) -> Iterator[str]:
    if isinstance(view, str):
        yield view
    elif isinstance(view, tuple):
        for part in view:
            yield from each_text(part)
