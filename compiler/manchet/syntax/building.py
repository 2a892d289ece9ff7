"""What each rule of the grammar makes of its parts: nodes. One function a rule (or a rule's named alternative)."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from manchet.syntax import nodes as n
from manchet.syntax.nodes import Amount, Word

Made = Any
"""A node, a word, an amount or None: what a rule hands to the rule that uses it."""


def _whole(amount: Amount) -> int:
    """A number that counts something (folds, speed, additions); what is no whole number is reported by the parser."""
    return int(amount.low or 0)


def _material(name: Word, amount: Amount, *tail: Made) -> n.MaterialNode:
    return _from_its_low_end(_with_tail(n.MaterialNode(name, amount), tail))


def _laid(name: Word, amount: Amount, *tail: Made) -> n.MaterialNode:
    """A line of a dish: `Ebb rye 2 slices each`."""
    per = next((part.text for part in tail if isinstance(part, Word) and part.text in ("each", "all")), "")
    rest = tuple(part for part in tail if not (isinstance(part, Word) and part.text in ("each", "all")))
    return _with_tail(n.MaterialNode(name, amount), rest)._replace(per=per)


def _from_its_low_end(material: n.MaterialNode) -> n.MaterialNode:
    """Of a range that the flour decides the low end is the amount; what is no such range the parser reports."""
    low, high = material.amount.low, material.amount.high
    if not (material.asked and low and high and low < high):
        return material
    return material._replace(amount=material.amount._replace(high=low), more=high / low - 1)


def _with_tail(material: n.MaterialNode, tail: tuple[Made, ...]) -> n.MaterialNode:
    for part in tail:
        if isinstance(part, Amount):
            material = material._replace(at=part)
        elif isinstance(part, n.CountedAs):
            material = material._replace(booking="as", counted_as=part.name)
        elif part.text in _BOOKINGS:
            material = material._replace(**_BOOKINGS[part.text])
        else:
            material = material._replace(basis=part.text)
    return material


_BOOKINGS: dict[str, dict[str, Any]] = {
    "apart": {"booking": "apart"},
    "flour": {"flour": True},
    "no flour": {"flour": False},
    "taste": {"to_taste": True},
    "optional": {"optional": True},
    "asked": {"asked": True},
}


def tail_of(material: n.MaterialNode, tail: n.Tail) -> n.MaterialNode:
    """The material with what stands on a line of its own under it."""
    return _with_tail(material, tail.parts)


def _at(*parts: Made) -> n.At:
    amount, spot = parts[0], parts[1] if len(parts) > 1 else None
    return n.At(amount, spot.text if spot else "")


def _step(verb: Word, *clauses: Made) -> n.StepNode:
    made: list[n.Clause] = []
    for clause in clauses:
        if isinstance(clause, n.Prose) and clause.what == "how" and verb.text == "do":
            clause = n.Prose("do", clause.text)
        made.append(clause)
    return n.StepNode(verb, tuple(made))


def _applied(onto: Word, name: Word, amount: Amount | None = None, per: Word | None = None) -> n.AppliedClause:
    return n.AppliedClause(name, amount, per.text if per else "", "" if onto.text == "with" else onto.text)


def _setting(key: Word, *rest: Made) -> n.Setting:
    names = tuple(part for part in rest if isinstance(part, Word))
    return n.Setting(key.text, names, tuple(part for part in rest if isinstance(part, Amount)))


def _could_be(key: Word, *rest: Word | None) -> n.Setting:
    return n.Setting(key.text, tuple(part for part in rest[:-1] if part), (), rest[-1])


ACTIONS: dict[str, Callable[..., Made]] = {
    "block": lambda word, name: n.BlockHead(word.text, name),
    "stage": lambda word, name, share=None: n.StageHead(word, name, share),
    "overall": n.OverallHead,
    "branch": n.BranchHead,
    "variant": n.VariantHead,
    "swap": n.Swap,
    "without": n.Without,
    "about": n.About,
    "kind": n.KindNode,
    "makes_pieces": lambda number, noun, weight, state, tin: n.MakesNode(number, noun, weight, state.text, tin),
    "makes_weight": lambda weight, state: n.MakesNode(None, None, weight, state.text, None),
    "makes_at_least": lambda weight: n.MakesNode(None, None, weight, "at least", None),
    "makes_dish": lambda number, noun: n.MakesNode(number, noun, None, "dish", None),
    "makes_tins": lambda number, noun, tin: n.MakesNode(number, noun, None, "", tin),
    "from_flour": n.FromFlour,
    "sold": n.Sold,
    "loss": lambda which, amount: n.Loss(which.text, amount),
    "on_dough_flour": n.OnDoughFlour,
    "status": n.Status,
    "allow": lambda word, name, because: n.Allow(name, because, word.text == "always allow"),
    "material": _material,
    "laid": _laid,
    "tail": lambda *parts: n.Tail(parts),
    "counted_as": n.CountedAs,
    "take_all": lambda name, at=None: n.TakeAll(name, at),
    "take_left": lambda name, at=None: n.TakeLeft(name, at),
    "everything_else": lambda at=None: n.EverythingElse(at),
    "bare_name": n.BareName,
    "hold_back": lambda *parts: n.HoldBack(parts),
    "part": lambda name, amount, basis: n.Part(name, amount, basis.text if basis else ""),
    "add": lambda *parts: n.Add(parts),
    "add_in": lambda *parts: n.Add(parts[:-1], _whole(parts[-1])),
    "add_at": lambda part, at, number=None: n.Add((part,), None if number is None else _whole(number), at=at),
    "add_as_needed": lambda name: n.Add((n.Part(name),), as_needed=True),
    "add_up_to": lambda name, amount: n.Add((n.Part(name),), up_to=amount),
    "give_back": n.Return,
    "keep_amount": lambda amount, name: n.KeepNode("amount", amount, name),
    "keep_left": lambda name: n.KeepNode("left", None, name),
    "keep_enough": lambda name: n.KeepNode("enough", None, name),
    "discard": n.DiscardLeft,
    "top_up": n.TopUp,
    "lock_in": n.LockIn,
    "pour_off": n.PourOff,
    "each_mix": n.MadeForEachMix,
    "from_nothing": n.StartFromNothing,
    "good_for": lambda time, at=None: n.GoodFor(time, at),
    "never_under": n.NeverUnder,
    "step": _step,
    "clause_line": lambda *clauses: n.ClauseLine(clauses),
    "time": lambda amount, per: n.Time(amount, per.text if per else ""),
    "turns": n.Turns,
    "at": _at,
    "ramp": lambda way, amount: n.Ramp(way.text, amount),
    "to_temperature": lambda amount: n.To("temperature", amount),
    "to_core": lambda amount: n.To("core", amount),
    "to_length": lambda amount: n.To("length", amount),
    "to_below_rim": lambda amount: n.To("below rim", amount),
    "to_ph": lambda amount: n.To("pH", amount),
    "to_volume": lambda amount: n.To("volume", amount),
    "may_wait": lambda time, at=None: n.MayWait(time, at),
    "prose": lambda what, text: n.Prose(what.text, text),
    "how": lambda text: n.Prose("how", text),
    "where": lambda preposition, place: n.Where(preposition.text, place),
    "into_slices": lambda preposition, amount: n.IntoSlices(amount),
    "serve_within": n.ServeWithin,
    "shape_as": n.As,
    "manner": lambda word: n.Manner(word.text),
    "speed": lambda number: n.Manner("speed", _whole(number)),
    "by_fire": lambda word: n.ByFire(word.text),
    "humidity": n.Humidity,
    "steam": lambda amount=None: n.Steam(amount),
    "steam_after": lambda *times: n.Steam(*times) if len(times) > 1 else n.Steam(None, *times),
    "vent": lambda word, after: n.Vent(word.text == "open", after),
    "lid": lambda word: n.Lid(word.text == "on"),
    "turn_after": n.TurnAfter,
    "within_every": lambda number, work, every: n.Within(work.text, _whole(number), every, None),
    "within_after": lambda work, after: n.Within(work.text, 1, None, after),
    "at_a_time": lambda number: n.AtATime(_whole(number)),
    "loses": n.Loses,
    "takes_up": lambda amount, per: n.TakesUp(amount, per.text),
    "applied": _applied,
    "dipped": lambda preposition, name, amount, per=None: n.AppliedClause(name, amount, per.text if per else ""),
    "entry_name": n.EntryName,
    "setting": _setting,
    "could_be": _could_be,
    "sale": _setting,
    "contact": _could_be,
    "ask": _could_be,
    "stock": n.StockHead,
    "counted": lambda name, packs=None: n.StockLine(name, packs),
}
