"""One line that says two steps."""

from __future__ import annotations

import re

from manchet.syntax.line import read_line
from manchet.syntax.loose.normal import LONGEST
from manchet.syntax.nodes import StepNode, Time
from manchet.syntax.vocabulary import VERBS


def in_two(body: str) -> tuple[str, str] | None:
    """The two steps of `mix slow 4 min, fast 4 min`, if it falls in two at a comma and each can be read."""
    verb = next((verb.word for verb in VERBS if body.lower().startswith(f"{verb.word} ")), "")
    for comma in list(re.finditer(r",\s*", body))[:3] if verb and len(body) < LONGEST else ():
        steps = body[: comma.start()], f"{verb} {body[comma.end() :]}"
        if all(
            type(read.node) is StepNode and not read.faults and sum(type(c) is Time for c in read.node.clauses) == 1
            for read in (read_line(step, "stage") for step in steps)
        ):
            return steps
    return None
