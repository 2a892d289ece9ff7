"""Which part of a line is blamed where some of it is read loosely: one that no reading makes sense of."""

from __future__ import annotations

import re

from manchet.syntax.line import read_strictly
from manchet.syntax.loose.normal import normal_form
from manchet.syntax.mistakes.diagnosis import first_reason
from manchet.syntax.mistakes.faults import REMARKS, Fault, LineFix, LineTrouble
from manchet.syntax.mistakes.in_a_row import steps_in_a_row
from manchet.syntax.mistakes.odd_figures import short
from manchet.syntax.nodes import BareName, StepNode
from manchet.syntax.odd_lines import is_unmeant
from manchet.syntax.openings import OPENINGS, UNLESS_WEIGHED
from manchet.syntax.tokens import pieces


def diagnose(trouble: LineTrouble) -> Fault:
    """The one report of a line that could not be read."""
    fault = first_reason(trouble)
    return (steps_in_a_row(trouble) or _beyond_what_is_loose(trouble) or fault) if fault.name in _OF_A_PART else fault


_OF_A_PART = frozenset({"unreadable-line", "unknown-unit", "line-unfinished", "makes-unclear", "unknown-word"})
"""Reports that blame a part of a line: the part may be one that is read, loosely, where all else is sound."""


def _beyond_what_is_loose(t: LineTrouble) -> Fault | None:
    """What is wrong with the line when all that can be read loosely is: of `bake 30 min @ 220C until golden` the `until`."""
    normal = normal_form(t.body, t.context)
    if normal is None:
        return None
    found = read_strictly(normal, t.context)
    fault: Fault | None
    turned = False
    if found.trouble is not None:
        turned = normal.partition(" ")[0].casefold() in OPENINGS[UNLESS_WEIGHED] and not normal.casefold().startswith(
            t.raws[0].text
        )
        beside_its_colon = t.raws[0].text.endswith(":")
        if t.rule == "bare_name" and found.trouble.rule != "makes" and not turned and not beside_its_colon:
            return None  # its first word is what cannot be read
        fault = first_reason(found.trouble)
    elif (type(found.node) is StepNode and is_unmeant(found.node)) or (
        type(found.node) is BareName and normal.partition(" ")[0].casefold() in OPENINGS[UNLESS_WEIGHED]
    ):
        turned = True  # a stage of that name it is not, nor a place
        rule, at = ("bare_name", 1) if type(found.node) is BareName else ("step", 0)
        fault = first_reason(LineTrouble(normal, tuple(pieces(normal)), t.context, rule, ((0, len(normal)),), at, ()))
    else:
        fault = next((fault for fault in found.faults if fault.name not in REMARKS), None)
    number = re.search(r"[0-9.]+", normal[fault.start : fault.end]) if fault is not None else None
    if fault is None or (
        fault.name == "missing-unit"
        and (number is None or not re.search(rf"(?<![0-9.]){re.escape(number[0])}(?![0-9])", t.body))
    ):
        return None  # a number that was in words
    blamed = normal[fault.start : fault.end]
    start = t.body.casefold().find(blamed.casefold())
    if start < 0 and blamed != normal and not turned:
        return None  # it was written otherwise, and is blamed as it was written
    start, end = (start, start + len(blamed)) if start >= 0 else (0, len(t.body))
    words = {key: short(t.body) if word == short(normal) else word for key, word in fault.words.items()}
    return fault._replace(
        start=start, end=end, words=words, fixes=tuple(_of_the_whole(fix, normal, t.body) for fix in fault.fixes)
    )


def a_step_loosely(body: str) -> Fault | None:
    """The mistake in a line that is only words, is no stage's name, and loosely begins as a step: `leave to prove until doubled`."""
    normal = normal_form(body, "stage")
    first = "" if normal is None else normal.partition(" ")[0].casefold()
    if first not in OPENINGS[UNLESS_WEIGHED] or body.casefold().startswith(first):
        return None
    return _beyond_what_is_loose(LineTrouble(body, tuple(pieces(body)), "stage", "bare_name", ((0, len(body)),), 1, ()))


def _of_the_whole(fix: LineFix, normal: str, body: str) -> LineFix:
    """The fix of the normal form, for the body it was made of."""
    under = tuple((len(body), len(body), text) for _, _, text in fix.parts if text.startswith("\n"))
    title = f"write `{fix.of(normal)}`" if fix.title.startswith("write `") and not under else fix.title
    return LineFix(((0, len(body), fix.of(normal)), *under), title)
