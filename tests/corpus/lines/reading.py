"""The rows of `lines.txt`, and what the compiler makes of a line where it stands."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from works import bakery_of

from manchet.diagnostics.diagnostic import Diagnostic, Severity
from manchet.records import NamedTuple
from manchet.source.text import SourceText
from manchet.syntax.nodes import Amount, Entry, Word
from manchet.syntax.parser import parse

FILE = Path(__file__).parent / "lines.txt"

WHERE = {
    "dough": "formula A\n  makes 2 loaves at 900 g dough\n  dough\n    durum flour 1000 g\n    salt 20 g\n    {}\n",
    "spoons": "kitchen A\n  measures US\nformula A\n  makes 2 loaves at 900 g dough\n  dough\n    durum flour 1000 g\n    {}\n",
    "per cent": "formula A\n  makes 2 loaves at 900 g dough\n  percentages of dough flour\n  dough\n"
    "    durum flour 100%\n    {}\n",
    "heading": "formula A\n  makes 2 loaves at 900 g dough\n  overall\n    white flour 100%\n    water 70%\n"
    "  {}\n    white flour 100%\n    water 50%\n  dough\n    everything else\n",
    "head": "formula A\n  {}\n  dough\n    white flour 1000 g\n    salt 20 g\n",
    "formula": "{}\n  makes 2 loaves at 900 g dough\n  dough\n    white flour 1000 g\n    salt 20 g\n",
    "kitchen": "kitchen A\n  {}\n",
    "oven": "kitchen A\n  oven stone\n    {}\n",
    "mixer": "kitchen A\n  mixer spiral\n    {}\n",
    "prover": "kitchen A\n  prover cupboard\n    {}\n",
    "preparation": "preparation A\n  white flour 100 g\n  {}\n",
    "plan": "plan A\n  on 2026-11-28\n  {}\n",
    "entry": "larder A\n  grey flour\n    {}\n",
}
"""A text for each place that a line may stand in."""


class Row(NamedTuple):
    """A line and what it should be: `normal`, the line it means, or the `report` that answers it and `words` it offers."""

    where: str
    line: str
    normal: str = ""
    report: str = ""
    words: str = ""


def rows() -> list[Row]:
    found: list[Row] = []
    where = ""
    for text in FILE.read_text(encoding="utf-8").split("\n"):
        if text.startswith("[") and text.endswith("]") and text[1:-1] in WHERE:
            where = text[1:-1]
        elif where and "  ->  " in text:
            line, normal = text.split("  ->  ")
            found.append(Row(where, line, line if normal == "=" else normal))
        elif where and "  ??  " in text:
            line, answer = text.split("  ??  ")
            report, words = answer.split(": ", 1)
            found.append(Row(where, line, "", report, words))
    return found


def reports_at(where: str, line: str) -> list[Diagnostic]:
    """What is said of the line itself."""
    number = WHERE[where].split("{}")[0].count("\n") + 1
    return [report for report in bakery_of(WHERE[where].format(line)).diagnostics if report.place.line == number]


def errors_at(where: str, line: str) -> list[Diagnostic]:
    return [report for report in reports_at(where, line) if report.severity is Severity.ERROR]


def tree_of(where: str, line: str) -> Any:
    """The tree of the text with that line in it, whatever the offsets and the case of its names."""
    return [_bare(entry) for entry in parse(SourceText("test.bake", WHERE[where].format(line))).value.entries]


def _bare(value: Any) -> Any:
    if isinstance(value, Entry):
        return (_bare(value.node), [_bare(child) for child in value.children])
    if isinstance(value, Word):
        return value.text.casefold()
    if isinstance(value, Amount):
        return (value.low, value.high, value.unit)
    if isinstance(value, tuple):
        return (type(value).__name__, *map(_bare, value))
    return value


def parse_reports(where: str, text: str) -> list[Diagnostic]:
    """What is wrong with the writing of the line, in a text that has another in its place."""
    number = WHERE[where].split("{}")[0].count("\n") + 1
    reports = parse(SourceText("test.bake", text)).diagnostics
    return [one for one in reports if one.place.line == number and one.severity is Severity.ERROR]


def offered(report: Diagnostic) -> str:
    """All that a report tells to type."""
    return " ".join((report.help, *(fix.title for fix in report.fixes)))
