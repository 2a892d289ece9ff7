"""How mistakes are said: each has one case, in the package that makes it, and all travel in the same way."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from pathlib import Path

from architecture.modules import MODULES, PACKAGE, name_of, tree_of

from manchet.diagnostics.names import REPORTS

MAKERS = frozenset({"report", "Fault", "fault", "_fault", "_report"})
"""What a report is made with; its first argument is the name."""


def names_given_to_reports(module: Path) -> Iterator[str]:
    """Names written where a report is made: `report("salt-missing", …)`."""
    for node in ast.walk(tree_of(module)):
        if isinstance(node, ast.Call) and node.args and ast.unparse(node.func).split(".")[-1] in MAKERS:
            yield from (part.value for part in ast.walk(node.args[0]) if isinstance(part, ast.Constant))


def test_every_report_has_a_case_in_the_package_that_makes_it() -> None:
    for module in MODULES:
        package = module.relative_to(PACKAGE).parts[0]
        for name in names_given_to_reports(module):
            assert name in REPORTS, f"{name} of {module} has no case"
            assert REPORTS[name][1].split("/")[0] == package, f"{name} of {module} is explained elsewhere"


def test_every_case_is_of_a_report_that_its_package_makes() -> None:
    strings: dict[str, set[str]] = {}
    for module in MODULES:
        if name_of(module) != "checks/index.py":
            strings.setdefault(module.relative_to(PACKAGE).parts[0], set()).update(
                node.value
                for node in ast.walk(tree_of(module))
                if isinstance(node, ast.Constant) and isinstance(node.value, str)
            )
    assert [name for name, (_, folder) in REPORTS.items() if name not in strings[folder.split("/")[0]]] == []


def test_how_grave_a_report_is_stands_in_its_case_alone() -> None:
    """But for two that are graver or milder where the figures say so, and for reports read back from the cache."""
    asked = {"Diagnostic": set[str](), "graver": set[str](), "milder": set[str]()}
    for module in MODULES:
        for node in ast.walk(tree_of(module)):
            if isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id in asked:
                asked[node.func.id].add(name_of(module))
    assert asked == {
        "Diagnostic": {"diagnostics/reports.py", "workspace/packing.py"},
        "graver": {"batch/weighing.py"},
        "milder": {"checks/pieces/tin_fill_odd.py"},
    }


RESULTS = frozenset({"Diagnostic", "Iterator[Diagnostic]", "tuple[Diagnostic, ...]", "lsp.Diagnostic"})
"""One report that is made, reports out of an iterator, or the reports of a piece of work that is done; and what an editor is
told of one."""


def test_a_report_travels_in_an_iterator_or_beside_its_value_in_an_outcome() -> None:
    """No list is passed in to be filled, and none is handed out beside a value, or in its stead."""
    found = set()
    for module in MODULES:
        for node in ast.walk(tree_of(module)):
            if isinstance(node, ast.FunctionDef):
                taken = [one.annotation for one in (*node.args.args, *node.args.kwonlyargs) if one.annotation]
                found |= {
                    f"{name_of(module)}: {node.name} fills a list"
                    for one in taken
                    if "list[Diagnostic]" in ast.unparse(one)
                }
                given = "" if node.returns is None else ast.unparse(node.returns)
                if "Diagnostic" in given and given not in RESULTS:
                    found.add(f"{name_of(module)}: {node.name} -> {given}")
    assert found == set()
