"""What is printed changes no number, and what a page is made of has names of its own."""

from __future__ import annotations

import ast
from collections import Counter
from pathlib import Path

import manchet.batch
import manchet.sheets

SHEETS = Path(manchet.sheets.__path__[0])
BATCH = Path(manchet.batch.__path__[0])


def trees(folder: Path) -> dict[Path, ast.Module]:
    return {file: ast.parse(file.read_text(encoding="utf-8")) for file in sorted(folder.rglob("*.py"))}


def classes(folder: Path) -> list[str]:
    nodes = (node for tree in trees(folder).values() for node in tree.body)
    return [node.name for node in nodes if isinstance(node, ast.ClassDef)]


EXACT = frozenset({"grams", "share", "reading", "lines", "weighed", "stages", "pieces", "number", "step"})
"""Fields that hold a weight, or what weights are made from."""


def test_no_sheet_makes_or_moves_a_weight() -> None:
    """Only `batch` does: a sheet neither builds one of its values nor builds one anew with another weight in it."""
    values = set(classes(BATCH))
    assert {"Batch", "WeighedLine", "Reading", "Work"} <= values
    for file, tree in trees(SHEETS).items():
        for call in (node for node in ast.walk(tree) if isinstance(node, ast.Call)):
            called = call.func
            if isinstance(called, ast.Name):
                assert called.id not in values, f"{file.name}:{call.lineno} builds a {called.id}"
            elif isinstance(called, ast.Attribute) and called.attr == "_replace":
                changed = {word.arg for word in call.keywords} & EXACT
                assert not changed, f"{file.name}:{call.lineno} changes {changed}"


def test_no_name_of_a_sheet_stands_elsewhere_in_the_house() -> None:
    house = Counter(classes(SHEETS.parent))
    mine = [name for name in classes(SHEETS) if not name.startswith("_")]
    assert len(mine) > 50
    assert [name for name in mine if house[name] > 1] == []
