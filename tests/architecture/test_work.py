"""A batch, its kitchen, its larder, its order and its formula travel together, as a `Work`; only its makers hold them apart."""

from __future__ import annotations

import ast
import re
import shutil
from pathlib import Path

import pytest
from architecture.modules import MODULES, PACKAGE, name_of, tree_of

PARTS = {"Formula", "Order", "Batch", "Kitchen", "Larder"}

MAKERS = {
    "batch/work.py": {"__init__", "work_of"},
    "batch/air.py": {"in_its_air"},
    "batch/sizing.py": {"size_batch"},
    "batch/batching.py": {"batch_of"},
    "batch/mixes.py": {"mixes_of"},
    "batch/totals.py": {"totals_of"},
    "workspace/bakery.py": {"work"},
    "workspace/bound_formula.py": {"work"},
}
"""What puts a Work together. Ten at most: whatever else needs two of the parts takes the Work."""


RECIPES = PACKAGE.parents[1] / "recipes"


@pytest.fixture
def divided(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """The formulas that are divided into mixes from now on, one for each time."""
    from manchet.batch import work

    found: list[str] = []
    mixes_of = work.mixes_of

    def counting(batch, kitchen, wet, fewest=1):  # type: ignore[no-untyped-def]
        found.append(batch.formula.name)
        return mixes_of(batch, kitchen, wet, fewest)

    monkeypatch.setattr(work, "mixes_of", counting)
    return found


def test_only_the_makers_of_a_work_take_two_of_its_parts() -> None:
    found: dict[str, set[str]] = {}
    for module in MODULES:
        for node in ast.walk(tree_of(module)):
            if not isinstance(node, ast.FunctionDef):
                continue
            given = [*node.args.posonlyargs, *node.args.args, *node.args.kwonlyargs]
            named = [set(re.findall(r"\w+", ast.unparse(one.annotation))) & PARTS for one in given if one.annotation]
            if sum(bool(parts) for parts in named) > 1:
                found.setdefault(name_of(module), set()).add(node.name)
    assert found == MAKERS
    assert sum(map(len, MAKERS.values())) <= 10


def test_the_demo_is_divided_into_mixes_once_a_formula(divided: list[str]) -> None:
    """n formulas, n divisions: whoever wants the mixes of a work asks the work."""
    from manchet.source.text import SourceText
    from manchet.workspace.bakery import read

    files = [SourceText(str(file), file.read_text(encoding="utf-8")) for file in sorted(RECIPES.rglob("*.bake"))]
    bakery = read(files)
    assert bakery.diagnostics is not None
    assert len(divided) == len(set(divided)) <= len(bakery.formulas)
    assert len(divided) >= 20


def test_a_build_of_the_demo_divides_each_formula_once(
    divided: list[str], tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Checks, sheets, cards and the turns at an oven go by one Work: reading, checking and printing share it."""
    from manchet.cli.main import command

    shutil.copytree(RECIPES, tmp_path / "recipes")
    monkeypatch.chdir(tmp_path)
    assert command(["build", "recipes", "--only", "sheet,card,house,oven,html", "--jobs", "1"]) == 0
    assert len(divided) == len(set(divided)) >= 20
