"""The stored tables are what lark makes of the grammar, and the driver reads every line as lark does."""

from __future__ import annotations

import re
import subprocess
import sys
from pathlib import Path
from typing import Any

from every import every
from lark import Token, Transformer, UnexpectedInput

from manchet.grammar import tables as stored
from manchet.syntax import line, tables
from manchet.syntax.driver import Stuck, run
from manchet.syntax.plan_building import OF_A_PLAN
from manchet.syntax.tokens import pieces

ROOT = Path(__file__).parent.parent.parent
SOURCES = sorted(ROOT.glob("recipes/**/*.bake")) + sorted(ROOT.glob("tests/corpus/quiet/*.bake"))


def test_stored_tables_are_made_of_the_grammar() -> None:
    grammar = tables.grammar_text()
    assert grammar == stored.GRAMMAR
    assert tables.load() == tables.made_from(grammar)


def test_reading_a_file_does_not_import_lark() -> None:
    code = "import sys, manchet.syntax.parser; sys.exit('lark' in sys.modules)"
    assert subprocess.run([sys.executable, "-c", code], check=False).returncode == 0


class _Build(Transformer):  # type: ignore[type-arg]
    def __default__(self, data: Any, children: list[Any], meta: Any) -> Any:
        return OF_A_PLAN[str(data)](*children)

    def __default_token__(self, token: Token) -> Any:
        return token.value


@every(SOURCES, at_least=70)
def test_driver_and_lark_agree(path: Path) -> None:
    lark = _lark()
    met = 0
    for row in sorted(set(path.read_text(encoding="utf-8").split("\n"))):
        body = row.split("#")[0].strip()
        raws = pieces(body)
        for context in (
            ("formula", "stage", "step", "kitchen", "entry", "thing", "plan", "order", "want") if raws else ()
        ):
            tokens, rule, _, _ = line.tokens_of(body, raws, context)
            if rule == "reserved":
                continue
            mine = run(tables.load(), rule, tokens.types, tokens.values, OF_A_PLAN)
            try:
                tree = lark.parse(list(zip(tokens.types, tokens.values, strict=True)), start=rule)
            except UnexpectedInput:
                assert isinstance(mine, Stuck), (context, body)
                continue
            assert mine == _Build().transform(tree), (context, body)
            met += 1
    assert met > 5


_kept: list[Any] = []


def _lark() -> Any:
    if not _kept:
        _kept.append(tables.lark_of(tables.grammar_text()))
    return _kept[0]


def test_every_rule_has_its_action() -> None:
    assert {rule.action for rule in tables.load().rules if rule.action and not rule.origin.startswith("$")} <= set(
        OF_A_PLAN
    )


def test_the_grammar_has_no_terminal_that_no_line_gives() -> None:
    declared = set(re.findall(r"\b_?[A-Z][A-Z_]+\b", "\n".join(re.findall(r"%declare .*", tables.grammar_text()))))
    used = {symbol for row in tables.load().rows for symbol in row}
    assert declared <= used, declared - used
