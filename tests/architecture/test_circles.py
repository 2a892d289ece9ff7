"""No module imports another that imports it, however far round: inside a folder either, in a function or for a type either."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from pathlib import Path

import manchet

PACKAGE = Path(manchet.__file__).parent
MODULES = {
    ".".join(("manchet", *file.relative_to(PACKAGE).with_suffix("").parts)).removesuffix(".__init__"): file
    for file in sorted(PACKAGE.rglob("*.py"))
}


def imported_by(module: str) -> Iterator[str]:
    """The modules of the package that a module imports, wherever in it the import stands."""
    for node in ast.walk(ast.parse(MODULES[module].read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            yield from (name.name for name in node.names if name.name in MODULES)
        elif isinstance(node, ast.ImportFrom) and node.module in MODULES:
            inside = [f"{node.module}.{name.name}" for name in node.names]
            yield from (name if name in MODULES else node.module for name in inside)


def circles(imports: dict[str, set[str]]) -> list[list[str]]:
    """A way round for each import that leads back to a module from which it was come to."""
    found: list[list[str]] = []
    done: set[str] = set()

    def follow(way: list[str]) -> None:
        for module in sorted(imports[way[-1]] - done):
            if module in way:
                found.append([*way[way.index(module) :], module])
            else:
                follow([*way, module])
        done.add(way[-1])

    for module in imports:
        if module not in done:
            follow([module])
    return found


def test_a_circle_is_found() -> None:
    assert circles({"a": {"b"}, "b": {"c", "d"}, "c": {"a"}, "d": set()}) == [["a", "b", "c", "a"]]
    assert circles({"a": {"b", "c"}, "b": {"d"}, "c": {"d"}, "d": set()}) == []


def test_no_module_imports_in_a_circle() -> None:
    assert circles({module: set(imported_by(module)) - {"manchet"} for module in MODULES}) == []
