"""A bread beside itself is the same; two breads the other way round have the same changes, with their sides exchanged."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path
from typing import Any

from comparison.breads import edited, work_of_text
from comparison.test_twelve_edits import TWELVE
from every import every
from hypothesis import given, strategies as st
from loaves import NUTTY_ROLLS
from run_length import EXAMPLES

from manchet.batch.work import Work
from manchet.comparison.compare import comparison_of
from manchet.comparison.values import Change, CostChange, HoursChange, MakesChange, StepMoved
from manchet.source.text import SourceText
from manchet.workspace.bakery import read

ROOT = Path(__file__).parents[2]


def works_of(files: list[Path]) -> Iterator[Work]:
    bakery = read(SourceText(str(file), file.read_text("utf-8")) for file in files)
    for formula in bakery.formulas:
        work = bakery.work(formula).value
        if work is not None:
            yield work


def demo() -> list[Work]:
    return list(works_of(sorted((ROOT / "recipes").rglob("*.bake"))))


def quiet() -> list[Work]:
    return [work for file in sorted((ROOT / "tests/corpus/quiet").glob("*.bake")) for work in works_of([file])]


@every([*demo(), *quiet()], at_least=100)
def test_a_bread_beside_itself_is_the_same(work: Work) -> None:
    assert comparison_of(work, work).changes == ()


def mirrored(change: Change) -> Any:
    """The same change seen from the other side, as far as it has sides: what a step follows is said of one side only."""
    fields: dict[str, Any] = change._asdict()
    found = dict(fields)
    for name in fields:
        if "before" in name:
            other = name.replace("before", "after")
            found[name], found[other] = fields[other], fields[name]
    if fields.get("prefermented"):
        found["prefermented"] = tuple(reversed(fields["prefermented"]))
    return change._replace(**found)


def names_left_out(change: Change) -> tuple[object, ...]:
    """Without what only tells where it is: the name of a stage or ingredient as the newer side has it, its basis."""
    told = {"stage", "name", "key", "noun", "basis", "follows", "rank"}
    if isinstance(change, StepMoved):
        return "StepMoved", change.before.verb, change.after.verb, change.facets
    return (type(change).__name__, *(str(value) for name, value in change._asdict().items() if name not in told))


def both_ways(one: Work, other: Work) -> None:
    """Hours and cost are told at the size of the newer side, so where the sizes differ they are set aside."""
    here, back = comparison_of(one, other).changes, comparison_of(other, one).changes
    of_size = (HoursChange, CostChange) if any(isinstance(change, MakesChange) for change in here) else ()
    told = sorted(names_left_out(change) for change in here if not isinstance(change, of_size))
    assert sorted(names_left_out(mirrored(change)) for change in back if not isinstance(change, of_size)) == told


@every([(title, *edits) for title, edits in TWELVE.items()], at_least=12)
def test_the_twelve_edits_taken_back(title: str, bread: str, edits: Any, told: Any) -> None:
    both_ways(work_of_text(bread), work_of_text(edited(bread, *edits)))


CHANGED_LINES = (
    ("salt                   2%", "salt                   1.8%"),
    ("water                 66%", "water                 68%"),
    ("mix slow 8 min", "mix slow 6 min"),
    ("shape round", "shape long"),
    ("    ferment covered 2 h at 26 C\n", "    rest covered 20 min\n    ferment covered 100 min at 26 C\n"),
    ("bake 40 min at 230 C", "bake 35 min at 235 C"),
    ("      cool 2 h", "      cool 3 h"),
    ("fresh yeast            1.5%", "instant yeast          0.5%"),
    ("white flour          100%", "white flour           90%\n    whole rye flour       10%"),
    ("      prove covered 40", "      rest covered 10 min\n      prove covered 40"),
    ("bake 16 min at 230 C, steam", "bake 16 min at 230 C"),
    ("add hazelnuts 12%", "add hazelnuts 15%"),
    ("  kind hearth loaf\n", '  kind hearth loaf\n  sells at 4.50 EUR each\n  about "both"\n'),
)  # fmt: skip


@given(st.sets(st.sampled_from(range(len(CHANGED_LINES)))), st.sets(st.sampled_from(range(len(CHANGED_LINES)))))
@EXAMPLES
def test_any_two_edits_of_a_bread(these: set[int], those: set[int]) -> None:
    one, other = (edited(NUTTY_ROLLS, *(CHANGED_LINES[at] for at in sorted(which))) for which in (these, those))
    both_ways(work_of_text(one), work_of_text(other))
    assert (comparison_of(work_of_text(one), work_of_text(other)).changes == ()) is (these == those)
