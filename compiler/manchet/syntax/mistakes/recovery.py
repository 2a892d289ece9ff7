"""What stands in the tree for a line that could not be read, so that later lines keep their place."""

from __future__ import annotations

from manchet.diagnostics.suggest import nearest
from manchet.syntax.block import BLOCKS
from manchet.syntax.mistakes.faults import LineTrouble
from manchet.syntax.nodes import Unread, Word
from manchet.syntax.openings import OPENINGS, WEIGHS, opening_of
from manchet.syntax.tokens import RawToken
from manchet.syntax.vocabulary import CALLED_BY_KIND


def unread_node(trouble: LineTrouble) -> Unread:
    """What stands in the tree for the line: what it may have been, its name, and what may stand under it."""
    body, raws, context, rule = trouble.body, trouble.raws, trouble.context, trouble.rule
    if rule in ("block", "stage", "branch", "overall", "reserved"):
        opens = "stage" if rule in ("stage", "branch") else rule if rule == "overall" else raws[0].text
        return Unread(
            "heading", _name_after(body, raws, 1) or (_kind_as_name(raws) if rule == "stage" else None), opens
        )
    if context == "top":
        near = nearest(raws[0].text, (*OPENINGS["top"],)) if raws[0].kind == "WORD" else None
        opens = near if near in BLOCKS else "stage" if near else "skipped"
        return Unread("heading", _name_after(body, raws, 1), opens)
    if rule == "variant":
        return Unread("heading", None, "variant")
    if context == "variant" and rule in ("swap", "without"):
        return Unread("line", None, "step")
    if context in ("formula", "variant"):
        kind = _kind_as_name(raws)
        opens = "overall" if kind is not None and kind.text == "overall" else "stage"
        return Unread("heading", _name_after(body, raws, 1) or kind, opens)
    opening = opening_of(OPENINGS[context], list(raws))
    opens = opening[0].opens if opening else _OPENED_IN.get(context, "step")
    if context in WEIGHS:
        if rule == "step":
            return Unread("step", Word(raws[0].text, raws[0].start, raws[0].end), opens)
        if rule in ("material", "bare_name"):
            figure = next((raw for raw in raws if raw.kind not in ("WORD", "QUOTED", "COMMA", "UNCLOSED")), None)
            name = body[: figure.start].strip() if figure is not None and figure.start else ""
            return Unread("material", Word(name, 0, len(name)) if name else None, opens)
    return Unread("line", None, opens)


_OPENED_IN = {"larder": "entry", "entry": "composition", "kitchen": "thing", "plan": "want", "order": "want"}
"""What the lines are that stand under a line of a context, if any may, whatever opens it."""


def _kind_as_name(raws: tuple[RawToken, ...]) -> Word | None:
    """A stage without a name is called by its kind: the first word, or the heading it is nearest to."""
    word = raws[0].text.rstrip(":")
    near = word if word in _HEADINGS else nearest(word, _HEADINGS)
    return Word(near, raws[0].start, raws[0].end) if near else None


_HEADINGS = ("overall", *(word for word in CALLED_BY_KIND if " " not in word))


def _name_after(body: str, raws: tuple[RawToken, ...], first: int) -> Word | None:
    """The words after the first, up to `with` or a figure."""
    end = first
    while end < len(raws) and raws[end].kind == "WORD" and raws[end].text != "with":
        end += 1
    if end == first:
        return None
    start, stop = raws[first].start, raws[end - 1].end
    return Word(" ".join(body[start:stop].split()), start, stop)
