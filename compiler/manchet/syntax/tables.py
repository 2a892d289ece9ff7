"""The grammar's tables: read from `grammar/tables.py` if they were made from the grammar as it stands, else made anew.

lark turns the grammar into tables; it is imported only for that. `python -m manchet.generate` writes them.
"""

from __future__ import annotations

import os
from typing import Any

import manchet.grammar  # type: ignore[import-not-found,unused-ignore]
from manchet.records import NamedTuple

ACCEPT = 0


class GrammarRule(NamedTuple):
    """One rule of the grammar: pop `size` values, hand those of `plan` to the action, go on as `origin`.

    A number in `plan` keeps that value, a negative one (`~n`) keeps all of a list, None stands for what is absent.
    A rule with no action is a list of its parts.
    """

    origin: str
    size: int
    action: str
    plan: tuple[int | None, ...]


class Tables(NamedTuple):
    """`rows[state][symbol]` is the next state if positive, a rule `~r` if negative, the end if `ACCEPT`."""

    starts: dict[str, int]
    rows: tuple[dict[str, int], ...]
    rules: tuple[GrammarRule, ...]


def grammar_text() -> str:
    """The text of `grammar/manchet.lark` as it is installed (importlib.resources would cost 4 ms of every start)."""
    loader: Any = manchet.grammar.__loader__
    text: str = loader.get_data(_beside("manchet.lark")).decode()
    return text


def _beside(name: str) -> str:
    return os.path.join(os.path.dirname(str(manchet.grammar.__file__)), name)


def load() -> Tables:
    """The tables of the grammar as it stands. The stored ones hold the text they were made from."""
    text = grammar_text()
    try:
        from manchet.grammar import tables as stored
    except ImportError:
        return made_from(text)
    if text == stored.GRAMMAR:
        return Tables(stored.STARTS, stored.ROWS, tuple(GrammarRule(*rule) for rule in stored.RULES))
    return made_from(text)


def line_rules() -> list[str]:
    """The rules that read a whole line: those of which each line has an example of its own, and those that have one form."""
    from manchet.syntax.mistakes.forms import BY_EXAMPLE, FORMS

    return [*FORMS, *BY_EXAMPLE]


def lark_of(grammar: str) -> Any:
    """lark's own parser of the grammar, fed with ready-made tokens (also for the test that compares the two)."""
    from lark import Lark
    from lark.lexer import Lexer, Token

    class Ready(Lexer):
        """Hands on what it is given: a list of (type, value)."""

        __future_interface__ = 1

        def __init__(self, conf: Any) -> None:
            pass

        def lex(self, lexer_state: Any, parser_state: Any) -> Any:
            for kind, value in lexer_state.text:
                token = Token(kind, kind)
                token.value = value
                yield token

    return Lark(grammar, parser="lalr", lexer=Ready, start=line_rules(), maybe_placeholders=True)


def made_from(grammar: str) -> Tables:
    """The tables lark makes of the grammar."""
    from lark.parsers.lalr_analysis import Shift

    parser = lark_of(grammar)
    table = parser.parser.parser._parse_table
    rules = list(parser.rules)
    number = {rule: at for at, rule in enumerate(rules)}
    ends = set(table.end_states.values())
    # lark numbers states by visiting sets, whose order differs from run to run: number them by visiting names instead
    order: list[int] = []
    waiting = [table.start_states[name] for name in line_rules()]
    seen = set(waiting)
    while waiting:
        state = waiting.pop(0)
        order.append(state)
        for symbol, (action, target) in sorted(table.states[state].items()):
            if action is Shift and symbol != "$END" and target not in seen:
                seen.add(target)
                waiting.append(target)
    new = {state: at for at, state in enumerate(order)}
    rows = []
    for state in order:
        row: dict[str, int] = {}
        for symbol, (action, target) in sorted(table.states[state].items()):
            if symbol != "$END":
                row[str(symbol)] = new[target] if action is Shift else ~number[target]
            elif action is not Shift:
                row[str(symbol)] = ~number[target]
        if state in ends:
            row["$END"] = ACCEPT
        rows.append(row)
    starts = {name: new[table.start_states[name]] for name in line_rules()}
    return Tables(starts, tuple(rows), tuple(_rule(rule) for rule in rules))


def _rule(rule: Any) -> GrammarRule:
    expansion = rule.expansion
    absent = [0] * (len(expansion) + 1)
    if rule.options and rule.options.empty_indices:
        marks = "".join(str(int(mark)) for mark in rule.options.empty_indices)
        absent = [len(run) for run in marks.split("0")]
    plan: list[int | None] = []
    for at, symbol in enumerate(expansion):
        plan += [None] * absent[at]
        if symbol.is_term:
            if not symbol.name.startswith("_"):
                plan.append(at)
        else:
            plan.append(~at if symbol.name.startswith("_") else at)
    plan += [None] * absent[-1]
    origin = str(rule.origin.name)
    action = "" if origin.startswith("_") else str(rule.alias or origin)
    return GrammarRule(origin, len(expansion), action, tuple(plan))


def module_of(grammar: str) -> str:
    """The text of `grammar/tables.py` for a grammar."""
    tables = made_from(grammar)
    rows = "".join(f"    {row!r},\n" for row in tables.rows)
    rules = "".join(f"    {tuple(rule)!r},\n" for rule in tables.rules)
    return (
        '"""The tables of manchet.lark, written by `python -m manchet.generate`. Not for editing."""\n\n'
        "# ruff: noqa\n# fmt: off\n"
        f"GRAMMAR = {grammar!r}\n"
        f"STARTS: dict[str, int] = {tables.starts!r}\n"
        f"ROWS: tuple[dict[str, int], ...] = (\n{rows})\n"
        f"RULES: tuple[tuple[str, int, str, tuple[int | None, ...]], ...] = (\n{rules})\n"
    )
