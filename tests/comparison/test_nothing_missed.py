"""Whatever is otherwise on a sheet is told: every figure of a bread is changed by itself, every line left out."""

from __future__ import annotations

import json
import re
from collections.abc import Iterator

from comparison.breads import EIDER, GULL, work_of_text
from comparison.every_change import SOAKED, WASHED
from every import every
from loaves import LOAF_BY_WEIGHT, NUTTY_ROLLS, POOLISH_LOAF
from works import bakery_of

from manchet.batch.work import Work
from manchet.comparison.compare import comparison_of
from manchet.figures.work_report import stage_work, work_report
from manchet.timing.card.card import course_of

FIGURE = re.compile(r"(?<![\w.])\d+(?:\.\d+)?")
BREADS = (GULL, EIDER, NUTTY_ROLLS, POOLISH_LOAF, LOAF_BY_WEIGHT, SOAKED, WASHED)


def edits_of(text: str) -> Iterator[tuple[str, str]]:
    """Each with the line that it changes."""
    lines = text.split("\n")
    for at, line in enumerate(lines):
        written = line.partition("#")[0]
        changed = [
            f"{written[: found.start()]}{larger(found.group())}{written[found.end() :]}"
            for found in FIGURE.finditer(written)
        ]
        for instead in (*changed, *([""] if written.startswith("    ") else [])):
            yield line.strip(), "\n".join([*lines[:at], *([instead] if instead else []), *lines[at + 1 :]])


def larger(figure: str) -> str:
    return f"{figure}5" if "." in figure else str(int(figure) + 1)


def on_the_sheet(work: Work) -> str:
    """All that is weighed and done, whatever order the materials stand in, and without the lines it stands on."""
    told = work_report(work, course_of(work).total)
    told["stages"] = [
        {
            **stage_work(stage.stage),
            "weighed": sorted(
                (one.portion.name, str(one.grams), str(one.portion.celsius), str(one.portion.more))
                for one in stage.weighed
            ),
        }
        for stage in work.batch.stages
    ]
    return re.sub(r'"at": "[^"]*"', "", json.dumps(told))


@every([(line, before, after) for before in BREADS for line, after in edits_of(before)], at_least=300)
def test_each_figure_and_each_line(line: str, before: str, after: str) -> None:
    bakery = bakery_of(after)
    sized = bakery.work(bakery.formulas[0]).value if bakery.formulas else None
    if sized is not None and sized.formula.name == work_of_text(before).formula.name:
        changes = comparison_of(work_of_text(before), sized).changes
        assert changes or on_the_sheet(work_of_text(before)) == on_the_sheet(sized), line
