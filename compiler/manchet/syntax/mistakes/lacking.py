"""What a line that can be read still lacks, or says in a way that cannot be: a range as an amount, half a fold."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Any

from manchet.syntax import nodes as n
from manchet.syntax.mistakes.faults import Fault, choices, in_place, left_out
from manchet.syntax.mistakes.odd_figures import ends_of, range_as_amount
from manchet.syntax.nodes import Amount, Clause
from manchet.syntax.vocabulary import SHAPES, STAGE, VERB, VERBS


def old_spelling(body: str, start: int, end: int, now: str) -> Fault:
    """The remark on body[start:end], which is written otherwise now."""
    words = {"written": body[start:end], "now": now}
    return Fault("old-spelling", start, end, words, (in_place(start, end, now, safe=True),))


def as_spelt_now(node: Any) -> Any:
    """The node that the words of now would have made of an older spelling."""
    if type(node) not in (n.StepNode, n.ClauseLine):
        return node
    return node._replace(clauses=tuple(n.Manner(c.name.text) if _lies(c) else c for c in node.clauses))


def _lies(clause: Clause) -> bool:
    """Whether it says `as round`, which is how a piece lies and not what it is shaped into."""
    return type(clause) is n.As and clause.name.text in SHAPES


def wrong_with(node: Any, body: str) -> tuple[Fault, ...]:
    """What is wrong with a node by itself, whatever stands under it."""
    kind = type(node)
    if kind is n.MaterialNode:
        if node.per == "":
            return (
                _each_or_in_all(node.amount, node.name.text, body[: node.name.end], body),
                *_single(node.amount, body),
            )
        loose = node.name.text.rpartition(" ")[2].lower()
        if loose in LOOSE and " " in node.name.text:
            start, end = node.name.end - len(loose), node.amount.end
            offer = (
                f"write `{body[node.amount.start : end]}`; what is by feel is `add water as needed`, or `, to taste`"
            )
            fixes = choices(start, end, body[node.amount.start : end])
            return (Fault("about-amount", start, end, {"written": body[start:end], "offer": offer}, fixes),)
        if loose in _BEFORE_HEAT and " " in node.name.text:
            return (_not_an_ingredient(node, loose, body),)
        if node.asked:
            return () if node.more else (_how_much_more(node, body),)
        if node.amount.low == node.amount.high:
            return ()
        return (range_as_amount(node.name.text, body[node.amount.start : node.amount.end], node.amount.start),)
    if kind is n.StepNode or kind is n.ClauseLine:
        found: tuple[Fault, ...] = ()
        for clause in node.clauses:
            if type(clause) in _CLAUSES:
                found += _clause(clause, node, body)
            elif _lies(clause):
                start = len(body[: clause.name.start].rstrip()) - len("as")
                found += (old_spelling(body, start, clause.name.end, clause.name.text),)
        return found
    if kind is n.Add and (
        slowly := re.search(r" (?:gradually|slowly|bit by bit|little by little)$", node.items[-1].name.text)
    ):
        end = node.items[-1].name.end
        start = end - len(slowly[0]) + 1
        fix = in_place(start, end, "in 4 additions", title=f"write `{body[:start]}in 4 additions`")
        offer = f"{fix.title}, or in as many as it is"
        return (Fault("unreadable-line", start, end, {"text": slowly[0].strip(), "form": offer}, (fix,)),)
    if kind is n.HoldBack or kind is n.Add:
        return tuple(fault for part in node.items if part.amount for fault in _single(part.amount, body))
    if kind is n.PourOff:
        return _single(node.amount, body)
    if kind is n.MakesNode:
        return tuple(fault for amount in (node.number, node.weight) if amount for fault in _single(amount, body))
    if (
        kind is n.StageHead
        and node.word.text == "stage"
        and node.name is not None
        and (twice := _kind_as_name(node, body))
    ):
        return (twice,)
    amount = node.share if kind is n.StageHead else node.amount
    return () if amount is None else _single(amount, body)


def _kind_as_name(head: n.StageHead, body: str) -> Fault | None:
    """`stage levain`: a levain needs no other word, and called a stage it would be none."""
    assert head.name is not None
    if head.name.text.lower() not in STAGE:
        return None
    plain = body[head.name.start :]
    words = {"text": body[: head.name.end], "form": f"write `{plain}`"}
    return Fault("unreadable-line", 0, head.name.end, words, (in_place(0, len(body), plain),))


LOOSE = frozenset({"about", "ca", "ca.", "circa", "approx", "approx.", "approximately", "roughly", "around", "c.", "~"})
"""Words that leave a figure open."""

_BEFORE_HEAT = frozenset({"at", "to", "into"})
"""No ingredient's name ends in one: `scale at 450 g` is a step, in somebody else's words."""


def _not_an_ingredient(node: n.MaterialNode, last: str, body: str) -> Fault:
    from manchet.syntax.mistakes.beginnings import after_a_name  # a sound file has no need of it

    name, amount = node.name, node.amount
    lower = re.search(r" ([0-9.]+) to$", name.text)
    if lower is not None:
        start = name.end - len(lower[0]) + 1
        return range_as_amount(name.text[: lower.start()], body[start : amount.end], start)
    weight = body[amount.start : amount.end]
    words = {"text": f"{last} {weight}", "form": after_a_name(name.text.lower(), weight)}
    return Fault("unreadable-line", name.end - len(last), amount.end, words)


def _how_much_more(node: n.MaterialNode, body: str) -> Fault:
    """`water 65%, as the flour asks`: between what?"""
    start, end = node.amount.start, node.amount.end
    out = re.sub(r",?\s*as the flour asks", "", body, flags=re.IGNORECASE)
    words = {"written": body[start:end], "name": node.name.text}
    return Fault("how-much-more", start, end, words, (in_place(0, len(body), out),))


CHECKED = frozenset(
    {
        n.MaterialNode,
        n.StepNode,
        n.ClauseLine,
        n.HoldBack,
        n.Add,
        n.PourOff,
        n.MakesNode,
        n.KeepNode,
        n.FromFlour,
        n.Loss,
        n.StageHead,
    }
)
_CLAUSES = frozenset({n.Within, n.AtATime, n.AppliedClause, n.Where, n.IntoSlices, n.ServeWithin})


def _single(amount: Amount, body: str) -> tuple[Fault, ...]:
    if amount.low == amount.high:
        return ()
    written = body[amount.start : amount.end]
    if amount.unit:
        return (range_as_amount("", written, amount.start),)
    fixes = choices(amount.start, amount.end, *ends_of(written))
    return (Fault("range-as-number", amount.start, amount.end, {"written": written}, fixes),)


def _clause(clause: Clause, node: Any, body: str) -> tuple[Fault, ...]:
    if isinstance(clause, n.AppliedClause):
        return _touching(clause, node, body)
    if isinstance(clause, n.Where):
        return _somewhere(clause, node, body)
    if isinstance(clause, n.IntoSlices):
        return _sliced(clause, node, body)
    if isinstance(clause, n.ServeWithin):
        return _in_time(clause, node, body)
    if isinstance(clause, (n.Within, n.AtATime)) and clause.number < 1:
        none = re.search(r",?\s*with 0 \w+ (every|after)\b[^,]*", body, re.IGNORECASE)
        fixes = (
            left_out(body, none.start() + len(none[0]) - len(none[0].lstrip(" ,")), none.end(), True) if none else ()
        )
        return (Fault("part-of-a-number", 0, len(body), {"written": body}, fixes[-1:]),)
    return ()


def _sliced(clause: n.IntoSlices, node: Any, body: str) -> tuple[Fault, ...]:
    amount = clause.amount
    if isinstance(node, n.StepNode) and node.verb.text != "slice":
        instead = f"slice into {body[amount.start : amount.end]}"
        words = {"text": body, "form": f"write `{instead}` on a line of its own"}
        return (Fault("unreadable-line", 0, len(body), words, (in_place(0, len(body), instead),)),)
    if amount.low is not None and amount.low == amount.high and (amount.low.denominator != 1 or amount.low < 1):
        words = {"text": body[amount.start : amount.end], "form": "write how many whole slices a loaf gives"}
        return (Fault("unreadable-line", amount.start, amount.end, words),)
    return _single(amount, body)


def _in_time(clause: n.ServeWithin, node: Any, body: str) -> tuple[Fault, ...]:
    time = clause.time
    if isinstance(node, n.StepNode) and node.verb.text != "serve":
        instead = f"serve within {body[time.start : time.end]}"
        words = {"text": f"within {body[time.start : time.end]}", "form": f"write `{instead}` on a line of its own"}
        return (Fault("unreadable-line", time.start, time.end, words),)
    return _single(time, body)


def _somewhere(where: n.Where, node: Any, body: str) -> tuple[Fault, ...]:
    start = body.rfind(" ", 0, where.place.start - 1) + 1
    if where.place.text.lower() == "night":
        return (
            Fault(
                "overnight",
                start,
                where.place.end,
                {"word": body[start : where.place.end]},
                choices(start, where.place.end, "8-12 h"),
            ),
        )
    if not isinstance(node, n.StepNode) or VERB[node.verb.text].has_place:
        return ()
    if VERB[node.verb.text].opens_with == where.preposition:
        return _touching(n.AppliedClause(where.place, None, ""), node, body)
    from manchet.syntax.mistakes.places import no_place  # a sound file has no need of it

    return (no_place(where, node, body),)


_BY_FEEL = re.compile(
    r",? (?:(?:a|some|one) (?:pinch|handful|sprinkle|sprinkling|dash|little|bit|few)|some|lightly|generously)(?: each)?$",
    re.IGNORECASE,
)


def _touching(clause: n.AppliedClause, node: Any, body: str) -> tuple[Fault, ...]:
    name = clause.name
    if isinstance(node, n.StepNode) and not (VERB[node.verb.text].touches or VERB[node.verb.text].may_touch):
        return (_not_with(node.verb.text, name, body),)
    before = body[: name.end]
    if clause.amount is None:
        words = {"name": _BY_FEEL.sub("", name.text), "instead": f"{_BY_FEEL.sub('', before)} 6 g each"}
        return (Fault("touching-without-weight", name.start, name.end, words),)
    if not clause.per:
        return (_each_or_in_all(clause.amount, name.text, before, body), *_single(clause.amount, body))
    return _single(clause.amount, body)


def _each_or_in_all(amount: Amount, name: str, before: str, body: str) -> Fault:
    written, end = body[amount.start : amount.end], amount.end
    words = {"amount": written, "name": name, "each": f"{before} {written} each", "all": f"{before} {written} in all"}
    fixes = tuple(in_place(end, end, f" {word}", title=f"write `{written} {word}`") for word in ("each", "in all"))
    return Fault("each-or-in-all", amount.start, end, words, fixes)


def _not_with(verb: str, name: n.Word, body: str) -> Fault:
    from manchet.syntax.mistakes.repeated import folds_counted, folds_every  # a sound file has no need of them
    from manchet.syntax.mistakes.step_parts import nearest_part

    if (folds := folds_every(body) or folds_counted(body)) is not None:
        return folds
    near = nearest_part(f"with {name.text.lower()}", ("_STEAM", "ONE_WORK"))
    led = re.search(r"with\s*$", body[: name.start], re.IGNORECASE)
    start = led.start() if led else name.start
    if near:
        fixes = choices(start, name.end, near)
        offer = f"did you mean `{near}`?"
    elif VERB[verb].said_how:
        fixes = (in_place(start, name.end, f'"{name.text}"', title=f'write `{verb} "{name.text}"`'),)
        offer = f'write `{verb} "{name.text}"`'
    else:
        fixes = left_out(body, start, name.end)
        offer = (
            f"write folds like `with 4 folds every 30 min`, an ingredient on a line of its own, as in `add {name.text}`"
        )
    return Fault("with-what", name.start, name.end, {"verb": verb, "name": name.text, "offer": offer}, fixes)


_WHOSE = ("hands-on", "waiting")


def in_its_stage(step: n.StepNode, above: Sequence[Any]) -> tuple[n.StepNode, Fault | None]:
    """A step that ripens or ferments, with the verb of the stage it is in. `above` are the nodes it stands under, the
    nearest last."""
    head = next((node for node in reversed(above) if type(node) is n.StageHead), None)
    verb, now = step.verb, "" if head is None else STAGE[head.word.text].verb
    if head is None or now in ("", verb.text):
        return step, None
    words = {"verb": verb.text, "stage": head.word.text, "now": now}
    fix = in_place(verb.start, verb.end, now, safe=True)
    return step._replace(verb=verb._replace(text=now)), Fault("ripen-or-ferment", verb.start, verb.end, words, (fix,))


def lacking(step: n.StepNode, under: tuple[n.Clause, ...], body: str) -> Fault | None:
    """What a step needs to mean anything and neither it nor the lines under it say. (Times and heats are checks.)"""
    verb = step.verb
    clauses = step.clauses + under
    kinds = {type(clause) for clause in clauses}
    if verb.text == "do" and not any(isinstance(c, n.Manner) and c.word in _WHOSE for c in clauses):
        end = len(body)
        fixes = tuple(in_place(end, end, f" {word}", title=f"write `{word}` at the end") for word in _WHOSE)
        return Fault("whose-time", verb.start, verb.end, {}, fixes)
    row = VERB[verb.text]
    if verb.text == "serve" and n.ServeWithin not in kinds:
        words = {"text": body, "form": f"write `{row.example}`: how long it may stand before it is served"}
        return Fault("unreadable-line", 0, len(body), words)
    if row.touches and n.AppliedClause not in kinds:
        return Fault("touching-nothing", verb.start, verb.end, {"verb": verb.text, "offer": f"write `{row.example}`"})
    if row.needs_place and n.Where not in kinds and not (row.may_touch and n.AppliedClause in kinds):
        examples = ", ".join(f"`{other.example}`" for other in VERBS if other.needs_place)
        return Fault("place-without-thing", verb.start, verb.end, {"verb": verb.text, "offer": f"write {examples}"})
    return None
