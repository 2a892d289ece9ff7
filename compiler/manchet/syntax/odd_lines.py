"""Lines that the grammar reads and nobody means so: asked for a loose spelling before they are believed."""

from __future__ import annotations

import re
from typing import Any

from manchet.syntax.nodes import (
    Add,
    As,
    BareName,
    HoldBack,
    MakesNode,
    MaterialNode,
    Setting,
    StageHead,
    StepNode,
    TakeAll,
    TakeLeft,
    Time,
    To,
    Where,
)
from manchet.syntax.openings import OPENINGS, UNLESS_WEIGHED
from manchet.syntax.things import THING

LOOSE_OPENINGS = frozenset(
    {
        "1", "a", "allow", "and", "blast", "bulk", "coil", "cool", "de-pan", "de-tin", "deep-fry", "demold",
        "demould", "depan", "fold", "hold", "holdback", "keep", "knead",
        "leave", "let", "load", "move", "next", "now", "pan", "poach", "pre", "pre-shape", "preshape", "put",
        "remove", "reserve", "set", "shock", "slash", "stretch", "then", "tip", "transfer", "unmold",
        "unmould", "work", "withhold",
    }
)  # fmt: skip
"""First words of lines that a stage's name could be, and that may be a loose spelling of a step (`loose.words`)."""

LOOSE_PAIRS = frozenset({"rise", "proof", "prove", "ferment", "fermentation", "rest", "fold", "shape", "mix", "fry"})
"""Second words of such lines whose first word says which: `first rise`, `book fold`. A `first build` is a stage."""

LOOSE_WEIGHED = frozenset({"reserve", "withhold", "holdback", "set", "hold", "keep", "drain", "pour", "tip", "decant"})
"""The same of lines that end in a weight: `reserve water 50 g` is no ingredient."""

LAYING = frozenset({"arrange", "garnish", "lay", "layer", "pile", "put"})
"""First words of lines of a dish that are meant as `top with`, and no ingredient's."""

BEFORE_A_NAME = frozenset({"optional"})
"""What stands behind the amount in the normal form, and is no part of a name."""

HEATED = frozenset({"boiling", "freshly"})
"""First words of a liquid that say how hot it is, as a figure does in the normal form."""


_VERBS = frozenset(OPENINGS[UNLESS_WEIGHED])
_UNIT_BEFORE = (" g", " g.", " gr", " gr.", " kg", " kg.", " ml", " l")
"""What stands before a figure where it is written `kg 1`."""

_SCALES = (" C", " F")


def is_odd(node: Any) -> bool:
    """Whether a line that the grammar reads says something that nobody means: a thing called `- water` or `the salt`, a stage
    called `now divide`, two times of one step."""
    kind = type(node)
    if kind is MaterialNode:
        name = node.name.text
        first = name.partition(" ")[0].lower()
        if first in LOOSE_WEIGHED or first in BEFORE_A_NAME or (first in HEATED and node.at is None):
            return True
        if first in _VERBS and (" until" in name or " to" in name):
            return True  # `prove until 80%`
        return (
            _is_odd_name(name)
            or name[-2:] in _SCALES
            or "(" in name
            or "@" in name
            or " at " in name
            or " a " in name
            or " à " in name
        )
    if kind is TakeAll or kind is TakeLeft:
        return node.at is None and node.name.text.partition(" ")[0].lower() in HEATED
    if kind is StepNode:
        return _is_odd_step(node)
    if kind is BareName:
        name = node.name.text
        words = name.lower().split(" ", 2)
        if _is_odd_name(name) or words[0] in LOOSE_OPENINGS or (len(words) > 1 and words[1] in LOOSE_PAIRS):
            return True
        if not any(letter.isdigit() for letter in name):
            return False
        return not name[-1].isdigit() or " x " in name or name.rpartition(" ")[0].lower().endswith(_UNIT_BEFORE)
    if kind is Add or kind is HoldBack:
        return any(_is_odd_part(part.name.text) for part in node.items)
    if kind is MakesNode:
        return node.noun is not None and node.noun.text.lower().startswith("dozen")
    if kind is Setting:  # no fridge is called `3 C`, and no oven steams by `yes`
        return (
            bool(node.names) and (node.key in THING or node.key == "steam") and _is_figure(node.key, node.names[0].text)
        )
    return kind is StageHead and node.name is not None and _is_odd_name(node.name.text)


def _is_odd_name(name: str) -> bool:
    return not (name[0].isalnum() and name[-1].isalnum()) or (name[0].isdigit() and name.split(" ")[0][-1] in ".)")


def _is_odd_part(name: str) -> bool:
    return name.startswith(("the ", "in ")) or " in " in name or "&" in name or "+" in name or _is_odd_name(name)


def is_unmeant(node: Any) -> bool:
    """Whether the line is to be asked about where no loose spelling of it can be read either: a stage called `(20% of flour)`, a
    fridge called `3 C`, a place called `fridge overnight`."""
    if type(node) is StepNode:
        return any(type(clause) is Where and _is_no_place(clause.place.text) for clause in node.clauses)
    return type(node) in (StageHead, Setting) and is_odd(node)


def _is_odd_step(step: StepNode) -> bool:
    times = 0
    for clause in step.clauses:
        if isinstance(clause, Time):
            times += 1
        elif isinstance(clause, As):
            if clause.name.text.startswith(("a ", "an ", "the ")):
                return True
        elif isinstance(clause, Where):
            if _is_no_place(clause.place.text):
                return True
        elif isinstance(clause, To) and clause.what == "length" and step.verb.text == "roll":
            return True
    return times > 1


def _is_no_place(text: str) -> bool:
    """Whether it has what is in no place's name, and said of it all the same: `in fridge overnight`, `in tub until doubled`."""
    words = text.lower().split(" ")
    return words[-1] == "overnight" or "until" in words or "till" in words


def _is_figure(key: str, name: str) -> bool:
    """Whether it is what a thing of a kitchen does, where its name should stand: its heat, what it holds, to what it reads."""
    pattern = {"steam": YES_OR_NO, "mixer": f"{_FIGURE}|{_DOUGH}"}.get(key, _FIGURE)
    return re.search(pattern, name, re.IGNORECASE) is not None


LINES_WITH_FIGURES = "holds|takes|keeps|volume|count|decks|hottest|recovers|reads|up to"
"""Lines under a thing that say a figure of it, and no part of its name."""

_FIGURE = (
    r"^(?:at |@ ?)?-?[0-9]+ ?°?[CF](?:,? [0-9]+ ?%)?$|(?:^| )[0-9.]+ ?(?:ml|l|qt)$|^(?:reads (?:to )?)?[0-9.]+ ?g$"
    r"|(?:^| )(?:[0-9]+|two|three|four) decks?$"
    rf"|(?:^| )(?:{LINES_WITH_FIGURES}) -?[0-9]"
)
_DOUGH = r"(?:^| )[0-9.-]+ ?(?:kg|lb)(?: (?:of )?dough)?$"
"""What a mixer takes; a tin may well be called `2 lb`."""

YES_OR_NO = r"^(?:yes|no)$|^[0-9]+ ?(?:s|min|ml|l)\b"
"""No way in which an oven makes steam."""
