"""Who remembers anything, and who touches a file: the workspace, and a short list of others, each for a reason."""

from __future__ import annotations

import ast

from architecture.modules import MODULES, name_of, tree_of

PURE = {
    "checks/registry.py": {"check_called"},
    "figures/limits/lookup.py": {"limit"},
    "formula/nouns.py": {"_stems"},
    "label/entry_bounds.py": {"_by_class", "_class_energy"},
    "kitchen/model.py": {"_kinds_of", "_names_of"},
    "larder/stock.py": {"_entry", "_lines", "_numbers"},
    "quantities/reading.py": {"_read_short"},
    "records.py": {"_compiled"},
    "sheets/page/html.py": {"_environment"},
    "sheets/page/pdf.py": {"_parsed"},
    "sheets/page/words.py": {"words_of", "_tables"},
    "syntax/line.py": {"_read_short"},
}
"""Functions whose answer follows from their arguments and the package alone, and which the standard library remembers."""

STARTED_ONCE = {"sheets/page/pdf.py": {"_engine"}}
"""WeasyPrint with its fonts, which takes most of a second to start."""

OPENS_FILES = frozenset(
    {
        "cli/main.py",
        "diagnostics/catalogue.py",
        "generate.py",
        "sheets/page/pdf.py",
        "sheets/page/words.py",
        "sheets/published.py",
        "source/files.py",
    }
)
"""Beside the workspace: what writes the generated modules; the primitives the workspace reads with; the package's own data;
and the command, where nobody reads its output any more."""

CALLS = frozenset({"open", "scandir", "listdir", "stat", "lstat", "unlink", "replace", "makedirs", "mkdir"})


def test_nothing_is_remembered_in_a_module() -> None:
    """No `global`, and no empty dictionary, list or set that waits to be filled."""
    found: dict[str, set[str]] = {}
    for module in MODULES:
        for node in ast.walk(tree_of(module)):
            if isinstance(node, ast.Global):
                found.setdefault(name_of(module), set()).update(node.names)
        for node in tree_of(module).body:
            if isinstance(node, ast.Assign | ast.AnnAssign) and is_empty(node.value):
                targets = node.targets if isinstance(node, ast.Assign) else [node.target]
                found.setdefault(name_of(module), set()).update(map(ast.unparse, targets))
    constants = {module: {name for name in names if not name.isupper()} for module, names in found.items()}
    assert {module: names for module, names in constants.items() if names} == STARTED_ONCE


def is_empty(value: ast.expr | None) -> bool:
    match value:
        case ast.Dict(keys=[]) | ast.List(elts=[]):
            return True
        case ast.Call(func=ast.Name(id=("dict" | "list" | "set" | "defaultdict" | "Counter" | "deque"))):
            return True
        case _:
            return False


def test_only_what_follows_from_the_package_is_remembered_by_a_function() -> None:
    found: dict[str, set[str]] = {}
    for module in MODULES:
        for node in ast.walk(tree_of(module)):
            if isinstance(node, ast.FunctionDef):
                names = {ast.unparse(one).partition("(")[0].rpartition(".")[2] for one in node.decorator_list}
                if names & {"cache", "lru_cache"}:
                    found.setdefault(name_of(module), set()).add(node.name)
    assert found == PURE


def test_only_the_workspace_touches_files() -> None:
    found = {
        name_of(module)
        for module in MODULES
        for node in ast.walk(tree_of(module))
        if isinstance(node, ast.Call) and touches(node.func)
    }
    assert {name for name in found if not name.startswith("workspace/")} == OPENS_FILES


def touches(function: ast.expr) -> bool:
    match function:
        case ast.Name(id="open"):
            return True
        case (
            ast.Attribute(value=ast.Name(id="os"), attr=name)
            | ast.Attribute(value=ast.Attribute(value=ast.Name(id="os"), attr="path"), attr=name)
        ):
            return name in CALLS
        case ast.Attribute(attr=("read_text" | "read_bytes" | "write_text" | "write_bytes")):
            return True
        case _:
            return False
