"""The modules of the package as the tests of its rules read them."""

from __future__ import annotations

import ast
from functools import cache
from pathlib import Path

import manchet

PACKAGE = Path(manchet.__file__).parent
MODULES = sorted(PACKAGE.rglob("*.py"))


def name_of(module: Path) -> str:
    return str(module.relative_to(PACKAGE))


@cache
def tree_of(module: Path) -> ast.Module:
    return ast.parse(module.read_text(encoding="utf-8"))
