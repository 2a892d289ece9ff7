"""A number that a word follows which is not a unit, or that nothing follows: the units it may have been meant in."""

from __future__ import annotations

import re

from manchet.diagnostics.reports import list_of_words
from manchet.diagnostics.suggest import nearest
from manchet.quantities.units import LONG_FORMS, UNITS
from manchet.syntax.mistakes.faults import Fault, LineTrouble, in_place
from manchet.syntax.mistakes.odd_figures import HOW_MANY, units_of, with_unit_meant
from manchet.syntax.mistakes.step_parts import form_of
from manchet.syntax.openings import WEIGHS, example_of


def units(t: LineTrouble) -> Fault | None:
    """The report of the last such number of the line."""
    if t.rule == "bare_name" and t.context not in WEIGHS | {"step"}:
        return None
    if t.rule not in ("bare_name", "material", "step", "tail", "clause_line", "hold_back", "add", "keep", "setting"):
        return None
    for at in range(len(t.raws) - 1, 0, -1):
        raw = t.raws[at]
        if raw.kind != "NUMBER" or (t.rule == "setting" and at < len(t.raws) - 1):
            continue
        after = t.raws[at + 1] if at + 1 < len(t.raws) else None
        if after is None or after.kind == "COMMA":
            if t.rule == "setting" and "NUMBER" in t.expected:
                return None
            material = t.context in WEIGHS and t.rule != "step"
            name = t.body[: raw.start].strip()
            if not material and t.rule in ("step", "clause_line"):
                return None  # said with the other parts of a step
            offer = _amounts(name, raw.text, t.context)
            start = 0 if material else t.raws[at - 1].start
            if t.rule == "setting":
                offer = shape_of(t)
            ways = () if t.rule == "setting" else units_of(raw.text, t.context, name)
            fixes = tuple(in_place(raw.start, raw.end, way, title=f"write `{name} {way}`") for way in ways)
            words = {"written": t.body[start : raw.end], "offer": offer}
            return Fault("missing-unit", raw.start, raw.end, words, fixes)
        if after.kind == "WORD" and after.end == t.raws[-1].end and t.context in WEIGHS | {"step"}:
            written = f"{raw.text} {after.text}"
            return Fault(
                "unknown-unit",
                raw.start,
                after.end,
                {"written": written, "unit": after.text, "offer": _unit_offer(after.text, t)},
                with_unit_meant(raw.start, after.end, raw.text, after.text, t.context),
            )
    for raw in t.raws if t.context in WEIGHS | {"step"} else ():
        glued = _GLUED.fullmatch(raw.text) if raw.kind == "WORD" else None
        if glued:
            words = {"written": t.body[raw.start : raw.end], "unit": glued[2], "offer": _unit_offer(glued[2], t)}
            fixes = with_unit_meant(raw.start, raw.end, glued[1], glued[2], t.context)
            return Fault("unknown-unit", raw.start, raw.end, words, fixes)
    return None


_GLUED = re.compile(r"([0-9]+(?:\.[0-9]+)?)(?!(?:st|nd|rd|th)$)([^\W\d_]+)")
"""A number and letters that are no unit, as one word; `1st` is an ordinal."""


def _amounts(name: str, number: str, context: str) -> str:
    return f"write {list_of_words(tuple(f'`{name} {way}`' for way in units_of(number, context, name)))}"


_SPOONS = {"el": "tbsp", "tl": "tsp", "kl": "tsp", "t": "tsp", "cs": "tbsp", "cc": "tsp", "msk": "tbsp", "tsk": "tsp"}
"""Spoons as they are written elsewhere."""


def _unit_offer(word: str, t: LineTrouble) -> str:
    if word in _SPOONS and t.rule != "step":
        spoon = "tbsp" if "T" in t.body and word == "t" else _SPOONS[word]
        return f"write `{spoon}`, with `measures metric` or `measures US` in the kitchen; better, grams"
    if t.rule == "step" and word in HOW_MANY:
        return form_of(t)
    near = nearest(word, (*UNITS, *LONG_FORMS)) if len(word) > 2 else None
    if near:
        return f"did you mean `{LONG_FORMS.get(near, near)}`?"
    if t.rule == "step":
        return "times are in `d h min s`, temperatures in `C F`, lengths in `mm cm inch`"
    return "weights are in `g kg lb oz`, volumes in `ml l cup tbsp tsp pt qt gal`, shares in `%`, pieces in `whole`"


def shape_of(t: LineTrouble) -> str:
    for size in range(5, 0, -1):
        example = example_of(" ".join(raw.text for raw in t.raws[:size]), t.context)
        if example:
            return f"write it like `{example}`"
    return "write a word of the vocabulary and its figure"
