"""The demo bakery shows every construct of the language: a newcomer finds an example of anything in recipes/."""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache
from pathlib import Path
from typing import Any, get_args

from every import every

from manchet.source.text import SourceText
from manchet.syntax import nodes
from manchet.syntax.line import read_line, weight_at
from manchet.syntax.nodes import Entry
from manchet.syntax.openings import OPENINGS, RESERVED, UNLESS_WEIGHED, WORK, WORKS, OpeningLine, lines, opening_of
from manchet.syntax.parser import parse
from manchet.syntax.plan_nodes import PlanNode
from manchet.syntax.tokens import pieces

RECIPES = Path(__file__).parents[2] / "recipes"

WORDS_KEPT_FOR_LATER = {nodes.ReservedHead}
"""`assembly`, `bake log`: no bakery can use them yet."""

JOINED_TO_THE_LINE_ABOVE = {nodes.Tail}
"""`counted apart` on a line of its own: no tree keeps it as a line."""

NODES = [
    kind.__name__
    for kind in (*get_args(nodes.BreadNode), *get_args(PlanNode))
    if kind not in WORDS_KEPT_FOR_LATER | JOINED_TO_THE_LINE_ABOVE
]
CLAUSES = [kind.__name__ for kind in get_args(nodes.Clause)]

OPENED = [line for line in lines() if line.reading is not RESERVED]
"""Every row of the vocabulary that opens a line."""

HEAD = [
    "makes at dough", "makes at baked", "makes in a tin", "makes a bare weight", "several makes lines",
    "dough loss", "bake loss", "status trial", "status approved", "allow", "always allow",
    "a share in a heading", "a heading without a share", "a named stage", "a stage in column 0",
    "a heading with nothing under it",
]  # fmt: skip

MATERIALS = [
    "a per cent", "a weight", "of all flour", "of what is soaked", "of the dough", "a temperature when weighed",
    "counted apart", "counted as a flour", "counted as flour", "not counted as flour", "to taste",
    "so much of a stage", "hold back", "hold back in part", "add", "add in additions", "add as needed", "add up to",
    "keep amount", "keep left", "keep enough",
]  # fmt: skip

WAYS_OF_WORKING = [
    "mix slow", "mix fast", "mix by hand", "mix speed", "mix turns", "fold in three", "fold in four", "shape round",
    "shape long", "shape oval", "shape flat", "shape as", "grease tins", "grease trays", "do hands-on", "do waiting",
    "place seam up", "place seam down",
]  # fmt: skip

MANNERS = [
    "slow", "fast", "covered", "uncovered", "round", "long", "oval", "flat", "seam up", "seam down", "in three",
    "in four", "by hand", "speed", "hands-on", "waiting", "optional",
]  # fmt: skip

CLAUSE_FORMS = [
    "time each", "time a side", "a range of time", "time at least", "time at most",
    "at", "at floor", "at air", "at top", "at bottom", "at fan", "a range of heat",
    "to temperature", "to core", "to length", "to pH", "to volume", "to below rim",
    "may wait", "may wait at", "until", "if late", "why", "note", "picture", "how", "do",
    "in", "on", "under", "steam", "steam s", "steam after", "steam ml", "vent open", "vent closed", "vent after",
    "lid on", "lid off", "turn after", "falling", "rising", "fold every", "turn every", "stir every", "fold after",
    "turn after a while", "stir after", "at a time", "loses", "each", "all", "clauses on a line of their own",
]  # fmt: skip

UNITS = [
    "kg", "g", "mg", "lb", "oz", "l", "ml", "gal", "qt", "pt", "cup", "tbsp", "tsp", "d", "h", "min", "s", "C", "F",
    "cm", "mm", "inch", "%", "whole", "turns",
]  # fmt: skip


@cache
def _files() -> tuple[nodes.File, ...]:
    paths = sorted(RECIPES.rglob("*.bake"))
    return tuple(parse(SourceText(str(p.relative_to(RECIPES)), p.read_text(encoding="utf-8"))).value for p in paths)


def _entries(entries: tuple[Entry, ...]) -> Iterator[Entry]:
    for entry in entries:
        yield entry
        yield from _entries(entry.children)


@cache
def _all_entries() -> tuple[Entry, ...]:
    return tuple(entry for file in _files() for entry in _entries(file.entries))


@cache
def _opened() -> frozenset[tuple[str, str, str]]:
    """What opens the lines of the demo: where it stands, the token it is, what it is called."""
    return frozenset(found for file in _files() for found in _openings(file.entries, "top"))


def _openings(entries: tuple[Entry, ...], context: str) -> Iterator[tuple[str, str, str]]:
    for entry in entries:
        raws = pieces(entry.line.body)
        for where in (context, UNLESS_WEIGHED) if context in WORKS and not weight_at(raws) else (context,):
            if found := opening_of(OPENINGS[where], raws):
                yield where, found[0].token, found[0].called
                break
        yield from _openings(entry.children, read_line(entry.line.body, context).opens)


def _inside(value: Any) -> Iterator[Any]:
    """A value and all values in it."""
    yield value
    if isinstance(value, tuple):
        for part in value:
            yield from _inside(part)


@cache
def _kinds() -> frozenset[str]:
    return frozenset(type(value).__name__ for entry in _all_entries() for value in _inside(entry.node))


@cache
def _forms() -> frozenset[str]:
    found: set[str] = set()
    for file in _files():
        for top in file.entries:
            if isinstance(top.node, nodes.BlockHead):
                found.add(top.node.word)
                if sum(isinstance(entry.node, nodes.MakesNode) for entry in top.children) > 1:
                    found.add("several makes lines")
            if isinstance(top.node, nodes.StageHead):
                found.add("a stage in column 0")
    for entry in _all_entries():
        found.update(_of_node(entry))
        for value in _inside(entry.node):
            found.update(_of_value(value))
    return frozenset(found)


def _of_node(entry: Entry) -> Iterator[str]:
    match entry.node:
        case nodes.StageHead(word, name, share):
            yield word.text
            yield "a share in a heading" if share else "a heading without a share"
            if name:
                yield "a named stage"
            if not entry.children:
                yield "a heading with nothing under it"
        case nodes.MakesNode(number, _, _, state, tin):
            yield "makes in a tin" if tin else f"makes at {state}"
            if number is None:
                yield "makes a bare weight"
        case nodes.Loss(which, _):
            yield f"{which} loss"
        case nodes.Status(word, _, _):
            yield f"status {word.text}"
        case nodes.Allow(_, _, always):
            yield "always allow" if always else "allow"
        case nodes.MaterialNode() as material:
            yield from _of_material(material)
        case nodes.HoldBack(items):
            yield "hold back"
            if any(item.amount for item in items):
                yield "hold back in part"
        case nodes.Add() as add:
            yield "add"
            yield from (f"add {what}" for what, said in zip(
                ("in additions", "as needed", "up to"), (add.additions, add.as_needed, add.up_to), strict=True
            ) if said)  # fmt: skip
            yield from (item.basis and f"of {item.basis}" for item in add.items)
        case nodes.KeepNode(how, _, _):
            yield f"keep {how}"
        case nodes.StepNode() as step:
            yield from _of_step(step)
        case nodes.ClauseLine():
            yield "clauses on a line of their own"
        case nodes.Setting(key, _, _):
            yield f"setting {key}"
        case _:
            pass


def _of_material(material: nodes.MaterialNode) -> Iterator[str]:
    yield "a per cent" if material.amount.unit == "%" else "a weight"
    yield f"of {material.basis}"
    if material.amount.unit == "g" and material.name.text == "levain":
        yield "so much of a stage"
    if material.at:
        yield "a temperature when weighed"
    if material.booking:
        yield "counted apart" if material.booking == "apart" else "counted as a flour"
    if material.flour is not None:
        yield "counted as flour" if material.flour else "not counted as flour"
    if material.to_taste:
        yield "to taste"


def _of_step(step: nodes.StepNode) -> Iterator[str]:
    yield f"verb {step.verb.text}"
    for clause in step.clauses:
        match clause:
            case nodes.Manner(word, _):
                yield f"{step.verb.text} {word}"
            case nodes.Turns():
                yield f"{step.verb.text} turns"
            case nodes.As():
                yield f"{step.verb.text} as"
            case nodes.AppliedClause(_, _, _, onto) if onto:
                yield f"{step.verb.text} {onto}"
            case _:
                pass


def _of_value(value: Any) -> Iterator[str]:
    match value:
        case nodes.Amount(_, _, unit, _, _):
            yield f"unit {unit}"
        case nodes.Manner(word, _):
            yield f"manner {word}"
        case nodes.Time(amount, per):
            yield {"each": "time each", "side": "time a side", "": ""}[per]
            yield from _range("time", amount)
        case nodes.At(amount, where):
            yield f"at {where}".strip()
            yield from _range("heat", amount)
        case nodes.Ramp(way, _):
            yield way
        case nodes.To(what, _):
            yield f"to {what}"
        case nodes.MayWait(_, at):
            yield "may wait at" if at else "may wait"
        case nodes.Prose(what, _):
            yield what
        case nodes.Where(preposition, _):
            yield preposition
        case nodes.Steam(amount, after):
            yield f"steam {amount.unit}" if amount else "steam"
            if after:
                yield "steam after"
        case nodes.Vent(is_open, after):
            yield "vent open" if is_open else "vent closed"
            if after:
                yield "vent after"
        case nodes.Lid(on):
            yield "lid on" if on else "lid off"
        case nodes.TurnAfter():
            yield "turn after"
        case nodes.Within(work, _, every, _):
            yield f"{work} every" if every else "turn after a while" if work == "turn" else f"{work} after"
        case nodes.AtATime():
            yield "at a time"
        case nodes.Loses():
            yield "loses"
        case nodes.AppliedClause(_, _, per, _):
            yield per
        case _:
            pass


def _range(what: str, amount: nodes.Amount) -> Iterator[str]:
    if amount.low is None:
        yield f"{what} at most"
    elif amount.high is None:
        yield f"{what} at least"
    elif amount.low != amount.high:
        yield f"a range of {what}"


@every(NODES + CLAUSES, at_least=50)
def test_every_kind_of_line_and_clause(kind: str) -> None:
    assert kind in _kinds()


@every(OPENED, at_least=150)
def test_every_word_that_opens_a_line(line: OpeningLine) -> None:
    """In one of the contexts in which it may stand: `flour` in a kitchen is not the ingredient."""
    contexts = (
        (*WORK, UNLESS_WEIGHED) if line.token == "VERB" else ("kitchen",) if line.token == "THING" else line.under
    )
    assert any((context, line.token, line.called) in _opened() for context in contexts)


@every(HEAD + MATERIALS + WAYS_OF_WORKING + CLAUSE_FORMS, at_least=107)
def test_every_form(form: str) -> None:
    assert form in _forms()


@every(MANNERS, at_least=17)
def test_every_manner(manner: str) -> None:
    assert f"manner {manner}" in _forms()


@every(UNITS, at_least=25)
def test_every_unit(unit: str) -> None:
    assert f"unit {unit}" in _forms()
