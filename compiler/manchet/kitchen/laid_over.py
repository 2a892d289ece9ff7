"""A kitchen with what a second block of its name says instead: thing by thing, and in a thing line by line.

Blocks go in and a block comes out, so that what comes of both is read and looked over as any kitchen.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable

from manchet.diagnostics.suggest import fold
from manchet.larder.names import key
from manchet.syntax.nodes import Entry, Setting, StepNode
from manchet.syntax.things import THING

BY_THE_NOUN = frozenset({"holds", "packs"})
"""Lines of which what is said of one noun stands, where another is said anew."""

OF_ONE_THING = ({"floor", "round floor"}, {"volume", "holds water", "inside"}, {"top", "inside", "round"})
"""Lines that say one thing in several ways."""


def kitchen_laid_over(kitchen: Entry, over: Entry) -> Entry:
    """The block of the kitchen, with the lines of the other in the place of those that say the same."""
    return kitchen._replace(children=_laid(kitchen.children, over.children, _with_thing))


def _with_thing(entry: Entry, over: Entry) -> Entry:
    node = over.node
    if isinstance(node, Setting) and node.key in THING:
        return entry._replace(children=_laid(entry.children, over.children, lambda _, line: line))
    return over


def _laid(lines: Iterable[Entry], over: Iterable[Entry], put: Callable[[Entry, Entry], Entry]) -> tuple[Entry, ...]:
    own = list(over)
    found: list[Entry] = []
    for line in lines:
        said = [one for one in own if _key(one) == _key(line)]
        if isinstance(line.node, Setting) and line.node.key in BY_THE_NOUN:
            kept = _without_nouns(line, said)
            found += [kept] if kept is not None else []
        elif said and isinstance(line.node, Setting) and line.node.key in THING:
            found.append(put(line, said[0]))
            own.remove(said[0])
        elif not said and not any(_is_instead(line, one) for one in own):
            found.append(line)
    return _joined((*found, *own))


def _key(entry: Entry) -> tuple[str, ...]:
    """What a line of a kitchen or of a thing is about."""
    node = entry.node
    if isinstance(node, StepNode):
        return (node.verb.text,)
    if not isinstance(node, Setting):
        return ("", str(entry.line.number), entry.line.path)
    return (node.key, *(fold(word.text) for word in node.names)) if node.key in THING else (node.key,)


def _is_instead(line: Entry, other: Entry) -> bool:
    keys = {one.node.key for one in (line, other) if isinstance(one.node, Setting)}
    return len(keys) == 2 and any(keys <= group for group in OF_ONE_THING)


def _without_nouns(line: Entry, said: Iterable[Entry]) -> Entry | None:
    """A line `holds` or `packs` without the nouns that are said anew; None where nothing is left of it."""
    node = line.node
    assert isinstance(node, Setting)
    anew = {key(word.text) for one in said if isinstance(one.node, Setting) for word in one.node.names}
    kept = [at for at, word in enumerate(node.names) if key(word.text) not in anew]
    amounts = tuple(node.amounts[at] for at in kept) if len(node.amounts) == len(node.names) else node.amounts
    rest = node._replace(names=tuple(node.names[at] for at in kept), amounts=amounts)
    return line._replace(node=rest) if kept else None


def _joined(lines: tuple[Entry, ...]) -> tuple[Entry, ...]:
    """Two lines `holds` as one: what is left of the kitchen's own, and what is said anew."""
    holding = [line for line in lines if isinstance(line.node, Setting) and line.node.key == "holds"]
    if len(holding) != 2:
        return lines
    old, new = holding
    assert isinstance(old.node, Setting) and isinstance(new.node, Setting)
    both = new.node._replace(names=(*old.node.names, *new.node.names), amounts=(*old.node.amounts, *new.node.amounts))
    return tuple(new._replace(node=both) if line is new else line for line in lines if line is not old)
