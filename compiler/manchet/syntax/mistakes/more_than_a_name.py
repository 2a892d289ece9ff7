"""An ingredient's name that nobody knows, since more stands in it than a name: a second one, a remark, the size of the eggs."""

from __future__ import annotations

import re
from collections.abc import Callable

from manchet.syntax.mistakes.faults import Fault, choices, two_lines, with_under
from manchet.syntax.nodes import MaterialNode

Knows = Callable[[str], bool]
"""Whether a name means one thing."""


def more_than_a_name(node: MaterialNode, line: str, knows: Knows) -> Fault | None:
    """The mistake in a material of an unknown name in which a known one stands."""
    return _two_names(node, line, knows) or _remark(node, line, knows) or _size_of_eggs(node, line, knows)


def _two_names(node: MaterialNode, line: str, knows: Knows) -> Fault | None:
    """`salt & sugar 20 g`: of each, or of both together?"""
    names = re.split(r" ?[&+/] ?| and ", node.name.text)
    if len(names) != 2 or not all(map(knows, names)):
        return None
    one, two = (f"{name} {line[node.amount.start :]}" for name in names)
    fix = two_lines(line, one, two)
    amount = line[node.amount.start : node.amount.end]
    form = f"a line for each ingredient: if {amount} is of each, {fix.title}; else each with its own weight"
    return Fault("unreadable-line", node.name.start, node.name.end, {"text": node.name.text, "form": form}, (fix,))


def _remark(node: MaterialNode, line: str, knows: Knows) -> Fault | None:
    """`raisins (soaked) 100 g`, `soaked raisins 100 g`: what is said of them is a note."""
    found = _REMARKED.fullmatch(node.name.text)
    if found is None:
        return None
    name, remark = found["name"] or found["soaked"], found["remark"] or "soaked"
    if not knows(name):
        return None
    fix = with_under(line, f"{name} {line[node.amount.start :]}", f'note "{remark}"')
    stage = "; what is soaked here, and its water, stand under a heading `soaker`" if "soak" in remark else ""
    words = {"text": f"({remark})" if found["remark"] else node.name.text, "form": f"{fix.title}{stage}"}
    return Fault("unreadable-line", node.name.start, node.name.end, words, (fix,))


_REMARKED = re.compile(r"(?P<name>[^()]+?) ?\((?P<remark>[^()]+)\)|soaked (?P<soaked>[^()]+)", re.IGNORECASE)


def _size_of_eggs(node: MaterialNode, line: str, knows: Knows) -> Fault | None:
    """`medium eggs 2 whole`: what one weighs, countries and boxes see differently."""
    found = _SIZED.fullmatch(node.name.text)
    if found is None:
        return None
    eggs = f"{found['what'].lower().rstrip('s')}s"
    if not knows(eggs):
        return None
    amount = node.amount
    if amount.unit != "whole":
        fixes = choices(node.name.start, node.name.end, eggs)
        words = {"text": node.name.text, "form": fixes[0].title}
        return Fault("unreadable-line", node.name.start, node.name.end, words, fixes)
    counted = f"{eggs} {amount.low} whole"
    form = (
        f"write `{counted}`, which counts large ones; or weigh them without the shell, and write `{eggs} … g`; "
        f"or add `{node.name.text}` under a `larder` heading, and below it `class egg` and what one weighs, as in `whole 44 g`"
    )
    words = {"text": node.name.text, "form": form}
    return Fault("unreadable-line", node.name.start, node.name.end, words, choices(0, len(line), counted))


_SIZED = re.compile(
    r"(?:(?:small|medium|medium[- ]sized|large|extra large|very large|jumbo|free[- ]range|organic),? )+(?P<what>eggs?|egg (?:yolk|white)s?)",
    re.IGNORECASE,
)
