"""Runs the grammar's tables over the tokens of one line."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any

from manchet.records import NamedTuple
from manchet.syntax.tables import ACCEPT, Tables


class Stuck(NamedTuple):
    """The token at which a line stopped making sense, and the tokens that could stand there."""

    at: int
    expected: tuple[str, ...]


def run(
    tables: Tables, rule: str, types: Sequence[str], values: Sequence[Any], actions: dict[str, Callable[..., Any]]
) -> Any:
    """What the rule makes of the tokens, or `Stuck`. Linear in the number of tokens."""
    rows, rules = tables.rows, tables.rules
    states = [tables.starts[rule]]
    stack: list[Any] = []
    size = len(types)
    at = 0
    symbol = types[0] if size else "$END"
    while True:
        move = rows[states[-1]].get(symbol)
        if move is None:
            return Stuck(at, tuple(rows[states[-1]]))
        if move > ACCEPT:
            states.append(move)
            stack.append(values[at])
            at += 1
            symbol = types[at] if at < size else "$END"
            continue
        if move == ACCEPT:
            return stack[-1]
        origin, length, action, plan = rules[~move]
        made: list[Any] = []
        base = len(stack) - length
        for keep in plan:
            if keep is None:
                made.append(None)
            elif keep >= 0:
                made.append(stack[base + keep])
            elif made:
                made += stack[base + ~keep]
            else:  # the list grows in place: a long line is read in linear time
                made = stack[base + ~keep]
        if length:
            del stack[base:]
            del states[-length:]
        stack.append(actions[action](*made) if action else made)
        states.append(rows[states[-1]][origin])


class Reduction(NamedTuple):
    """What an action was made of: the tokens from `start` up to `end`, those that carry nothing but themselves too."""

    action: str
    start: int
    end: int


def reductions(tables: Tables, rule: str, types: Sequence[str]) -> tuple[Reduction, ...]:
    """The actions of a line that can be read, in the order of their last tokens; () for one that cannot. Linear too."""
    states, begun = [tables.starts[rule]], [0]
    found: list[Reduction] = []
    at = 0
    while True:
        move = tables.rows[states[-1]].get(types[at] if at < len(types) else "$END")
        if move is None:
            return ()
        if move > ACCEPT:
            states.append(move)
            begun.append(at)
            at += 1
            continue
        if move == ACCEPT:
            return tuple(found)
        origin, length, action, _ = tables.rules[~move]
        start = begun[-length] if length else at
        if length:
            del states[-length:], begun[-length:]
        if action:
            found.append(Reduction(action, start, at))
        states.append(tables.rows[states[-1]][origin])
        begun.append(start)
