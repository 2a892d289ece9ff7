"""One line, read: which rule it belongs to, its tokens, its node; or what is wrong with it."""

from __future__ import annotations

from typing import Any

from manchet.syntax import classes as c
from manchet.syntax import tables as t
from manchet.syntax.building import ACTIONS
from manchet.syntax.diagnosis import stuck, suspicious
from manchet.syntax.driver import Stuck, run
from manchet.syntax.faults import Fault
from manchet.syntax.lexer import Tokens
from manchet.syntax.nodes import Amount, Unread, Word
from manchet.syntax.tokens import WEIGHTS, Raw, pieces

_TABLES = t.load()

_FIRST: dict[str, tuple[c.Openings, c.Openings]] = {
    # context: what opens a line whatever it ends in, and what opens a line that does not end in a weight
    "top": (c.TOP, {}),
    "formula": (c.FORMULA, {}),
    "preparation": (c.PREPARATION, c.VERBS),
    "stage": (c.WORK, c.VERBS),
    "overall": (c.COMPOSITION, {}),
    "composition": (c.COMPOSITION, {}),
    "material": (c.CLAUSES, {}),
    "step": (c.CLAUSES, {}),
    "larder": ({}, {}),
    "entry": (c.ENTRY, {}),
    "kitchen": (c.KITCHEN, {}),
    "thing": (c.THING, {}),
}
_HAS_MATERIALS = frozenset({"preparation", "stage", "overall", "composition"})

_memo: dict[tuple[str, str], tuple[Any, tuple[Fault, ...]]] = {}
_MEMO_LIMIT = 50_000


def read_line(body: str, context: str) -> tuple[Any, tuple[Fault, ...]]:
    """The node of a line, or `Unread`, and what is wrong with it. Equal lines in equal contexts share one reading."""
    key = (context, body)
    try:
        return _memo[key]
    except KeyError:
        pass
    result = _read(body, context)
    if len(body) <= 200:
        if len(_memo) >= _MEMO_LIMIT:
            _memo.clear()
        _memo[key] = result
    return result


def _read(body: str, context: str) -> tuple[Any, tuple[Fault, ...]]:
    body, odd = suspicious(body)
    raws = pieces(body)
    if not raws:
        return Unread("line"), odd
    tokens, rule = _tokens(body, raws, context)
    made = run(_TABLES, rule, tokens.types, tokens.values, ACTIONS) if rule in _TABLES.starts else None
    if type(made) is Stuck or made is None:
        return stuck(body, raws, context, rule, tokens, made, odd)
    faults = odd + tuple(Fault(raw.fault, raw.start, raw.end, {"written": body[raw.start:raw.end]}) for raw in raws if raw.fault)
    return made, faults


def _tokens(body: str, raws: list[Raw], context: str) -> tuple[Tokens, str]:
    """The tokens of a line and the rule that reads it."""
    first, verbs = _FIRST[context]
    found = c.opening_of(first, raws)
    if found is None and context in _HAS_MATERIALS:
        weight = weight_at(raws)
        if weight:
            tokens = Tokens(body, raws, c.MATERIAL.phrases, "")
            _name_before(tokens, weight)
            tokens.figure(raws[weight], True)
            tokens.at = weight + 1
            tokens.rest()
            return tokens, "material"
    if found is None and verbs:
        found = c.opening_of(verbs, raws)
    if found is not None:
        opening, size = found
        reading = opening.reading
        if reading is c.STEP and opening.rest[-1:] == ("with",):
            size -= 1  # `brush with` tells a step from an ingredient; the `with` opens its clause
        tokens = Tokens(body, raws, reading.phrases, reading.mode)
        tokens.opening(opening.token, opening.canonical, size)
        if reading.mode == "line":
            tokens.whole_rest()
        else:
            tokens.rest()
        return tokens, reading.rule
    if context == "step":
        reading = c.CLAUSE_LINE
    elif context == "material":
        reading = c.CLAUSE_LINE if raws[0].kind == "QUOTED" else c.TAIL
    elif context == "larder":
        reading = c.ENTRY_NAME
    else:
        reading = c.BARE_NAME
    tokens = Tokens(body, raws, reading.phrases, reading.mode)
    if reading.mode == "line":
        tokens.whole_rest()
    else:
        tokens.rest()
    return tokens, reading.rule


def weight_at(raws: list[Raw]) -> int:
    """Where the weight of a material line stands, or 0: the first weight that no `loses` or `steam` claims and that
    neither `each` nor `in all` follows."""
    for at in range(1, len(raws)):
        raw = raws[at]
        if raw.kind in WEIGHTS and raws[at - 1].text not in ("loses", "steam"):
            after = raws[at + 1].text if at + 1 < len(raws) else ""
            if after in ("each", "apiece") or (after == "in" and raws[at + 2 : at + 3] and raws[at + 2].text == "all"):
                return 0
            return at
    return 0


def _name_before(tokens: Tokens, weight: int) -> None:
    raws = tokens.raws
    if weight == 1 and raws[0].kind == "QUOTED":
        first = raws[0]
        tokens.add("NAME", Word(" ".join(first.text.split()), first.start, first.end))
        return
    for at in range(weight):
        kind = raws[at].kind
        if kind == "COMMA" or kind == "QUOTED":
            tokens.add("_COMMA", None)
            return
    tokens.name(raws[0].start, raws[weight - 1].end)


__all__ = ["Amount", "read_line", "weight_at"]
