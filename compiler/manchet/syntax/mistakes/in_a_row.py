"""Several steps on one line, each sound by itself."""

from __future__ import annotations

import re

from manchet.syntax.line import read_strictly
from manchet.syntax.loose.normal import LONGEST, normal_form
from manchet.syntax.mistakes.faults import Fault, LineFix, LineTrouble, two_lines
from manchet.syntax.mistakes.odd_figures import short
from manchet.syntax.mistakes.prose import ANY_VERB
from manchet.syntax.nodes import StepNode

_NEXT_STEP = re.compile(rf"[,;]? (?:and |then )*(?=(?:{ANY_VERB})\b(?: (?!every\b)[a-z]+){{0,2}} [0-9])", re.IGNORECASE)


def steps_in_a_row(t: LineTrouble) -> Fault | None:
    """`mix slow 3 min rest 20 min mix fast 4 min`: a step a line."""
    if t.rule != "step" or len(t.body) >= LONGEST or '"' in t.body:
        return None
    lines = [normal_form(part.strip(), t.context) or part.strip() for part in _NEXT_STEP.split(t.body)]
    steps = [read_strictly(line, t.context).node for line in lines] if len(lines) > 1 else []
    if not steps or any(type(step) is not StepNode or step.verb.text in _WITHIN_ANOTHER for step in steps):
        return None
    if len(lines) == 2:
        fix = two_lines(t.body, *lines)
    else:
        title = f"write a line for each: {', '.join(f'`{line}`' for line in lines)}"
        fix = LineFix(((0, len(t.body), "\n".join(lines)),), title)
    return Fault("unreadable-line", 0, len(t.body), {"text": short(t.body), "form": fix.title}, (fix,))


_WITHIN_ANOTHER = frozenset({"do", "fold", "steam", "turn"})
"""Verbs of what is mostly done within a wait or a bake, and told there."""
