"""House rules that a reader of the code can rely on."""

from __future__ import annotations

import ast
import re
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest
from architecture.modules import MODULES, PACKAGE, name_of, tree_of
from every import every

ROOT = Path(__file__).parents[2]

EXACT = (
    "quantities", "syntax", "larder", "kitchen", "formula", "batch", "figures", "changes", "checks", "cautions", "timing",
    "day",
)  # fmt: skip
"""Packages between the lexer and the page, where every number is exact."""

PHYSICAL_MODELS: frozenset[str] = frozenset()
"""Modules whose result is rounded and said to be an estimate, and which may therefore reckon in floats."""


GENERATED = frozenset({"larder/builtin.py", "diagnostics/names.py"})
"""Modules made from a data file, which nobody reads."""


@every([m for m in MODULES if name_of(m) not in GENERATED], at_least=300)
def test_module_is_of_readable_length(module: Path) -> None:
    assert len(module.read_text(encoding="utf-8").splitlines()) <= 400


def floats(tree: ast.AST) -> Iterator[int]:
    """Lines on which a binary float comes into being."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Constant) and isinstance(node.value, float):
            yield node.lineno
        if isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id == "float":
            yield node.lineno


@every(
    [m for m in MODULES if m.relative_to(PACKAGE).parts[0] in EXACT and name_of(m) not in PHYSICAL_MODELS], at_least=200
)
def test_numbers_are_exact(module: Path) -> None:
    assert list(floats(tree_of(module))) == []


PARTICIPLE = re.compile(
    r"(?!speed|need|feed|seed)[a-z]+ed|made|said|shown|told|taken|given|gone|kept|met|known|meant|written|drawn|done|found|left|put|set"
)


def test_a_class_name_stands_once_in_the_house() -> None:
    stands: dict[str, list[str]] = {}
    for module in MODULES:
        for node in ast.walk(tree_of(module)):
            if isinstance(node, ast.ClassDef):
                stands.setdefault(node.name, []).append(name_of(module))
    assert {name: modules for name, modules in stands.items() if len(modules) > 1} == {}


def test_no_function_is_named_by_a_bare_participle() -> None:
    """A function is named for what it gives, or with a verb."""
    named = [
        f"{name_of(module)}: {node.name}"
        for module in MODULES
        for node in tree_of(module).body
        if isinstance(node, ast.FunctionDef) and PARTICIPLE.fullmatch(node.name)
    ]
    assert named == []


ASKS_A_CLOCK = frozenset({"now", "today", "utcnow"})
MAY_ASK_A_CLOCK = ("cli", "workspace")


@every([m for m in MODULES if m.relative_to(PACKAGE).parts[0] not in MAY_ASK_A_CLOCK], at_least=250)
def test_nobody_below_the_command_asks_what_time_it_is(module: Path) -> None:
    asked = [
        node.lineno
        for node in ast.walk(tree_of(module))
        if isinstance(node, ast.Attribute) and node.attr in ASKS_A_CLOCK
    ]
    assert asked == []


def test_check_starts_light() -> None:
    """One formula is looked over without the writers of pages, and without building a grammar."""
    probe = (
        "import sys, io, contextlib\n"
        "from manchet.cli.main import command\n"
        "with contextlib.redirect_stdout(io.StringIO()):\n"
        "    status = command(['check', 'recipes'])\n"
        "heavy = {'weasyprint', 'jinja2', 'lark', 'watchdog', 'icalendar', 'ortools', 'pygls', 'lsprotocol', 'manchet.editor', 'json', 'dataclasses', 'inspect', 'tempfile', 'logging', 'subprocess', 'manchet.sheets'}\n"
        "print(status, *sorted(heavy & sys.modules.keys()))\n"
    )
    done = subprocess.run([sys.executable, "-c", probe], cwd=ROOT, capture_output=True, text=True, timeout=60)
    assert done.stdout.split() == ["0"], done.stdout + done.stderr


@pytest.mark.parametrize(
    "tool",
    [
        ("mypy",),
        ("ruff", "check", "."),
        ("ruff", "format", "--check", "."),
    ],
    ids=" ".join,
)
def test_tool_finds_nothing(tool: tuple[str, ...]) -> None:
    done = subprocess.run([sys.executable, "-m", *tool], cwd=ROOT, capture_output=True, text=True, timeout=240)
    assert done.returncode == 0, done.stdout + done.stderr


FORBIDDEN = re.compile(rb"/work/|/root/|/opt/|/tmp/manchet|\blocalhost:\d|TODO|FIXME|XXX|for now\b", re.IGNORECASE)


def test_no_file_tells_of_a_machine_or_of_unfinished_work() -> None:
    listed = subprocess.run(["git", "ls-files", "-z"], cwd=ROOT, capture_output=True, text=True, check=True).stdout
    told = [
        f"{name}: {found[0].decode()}"
        for name in listed.split("\0")
        if name
        and (ROOT / name).is_file()
        and not name.endswith((".png", ".pdf", "-lock.json"))  # hashes spell anything
        if name != str(Path(__file__).relative_to(ROOT))
        for found in [FORBIDDEN.search((ROOT / name).read_bytes())]
        if found
    ]
    assert told == []
