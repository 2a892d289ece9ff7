"""`in`, `on`, `into` or `under` after a verb that has no place: what goes in, how often, into what shape.

Read as a place, `fold in walnuts` would be a dough folded inside some walnuts, and nobody would weigh them.
"""

from __future__ import annotations

import re

from manchet.syntax import nodes as n
from manchet.syntax.loose.normal import LONGEST
from manchet.syntax.mistakes.faults import Fault, LineFix, LineTrouble, choices, in_place, two_lines
from manchet.syntax.openings import WEIGHS
from manchet.syntax.vocabulary import VERB

_ADDED = ("write `add ", "write two lines: `add ")
_VESSEL = re.compile(r"\b(?:tin|pan|tray|basket|banneton|couche)s?\b", re.IGNORECASE)
_MACHINE = re.compile(r"\b(?:spiral|mixer|machine|planetary|bowl)\b", re.IGNORECASE)
_IN_THREE = frozenset({"half", "halves", "two", "third", "thirds", "three layers"})
_IN_FOUR = frozenset({"quarter", "quarters", "fourths", "a book", "book"})


def no_place(where: n.Where, step: n.StepNode, body: str) -> Fault:
    """The report of a place where the verb has none; what was meant is a matter of the verb."""
    verb, name = step.verb.text, where.place.text
    start = body.lower().rfind(f"{where.preposition} ", 0, where.place.start)
    start = start if start >= 0 else body.rfind(" ", 0, max(where.place.start - 1, 0)) + 1
    written = body[start : where.place.end]
    bare = re.sub(r"^(?:the|an?|some) ", "", name)
    fixes = tuple(_meant(verb, where.preposition, name, bare, written, start, where.place.end, body))
    words = {"written": f"{body[: step.verb.end]} {written}", "verb": verb, "offer": ""}
    if fixes and fixes[0].title.startswith(_ADDED):
        weighed = ", ".join(f"`{one} … g`" for one in re.split(r", | and ", bare))
        words["offer"] = (
            f"weigh {bare} with the materials and hold back what goes in now ({weighed}, `hold back {bare}`); then {fixes[0].title}"
        )
    return Fault("no-place", start, where.place.end, words, fixes)


def _meant(
    verb: str, preposition: str, name: str, bare: str, written: str, start: int, end: int, body: str
) -> list[LineFix]:
    without = " ".join(f"{body[:start]}{body[end:]}".replace(" ,", ",").split()).strip(" ,")
    row = VERB[verb]
    shapes = row.gathers and not row.sets_warmth

    def instead(text: str, why: str = "") -> LineFix:
        return in_place(0, len(body), text, title=f"write `{text}`{why}")

    def there(text: str) -> LineFix:
        return instead(f"{body[:start]}{text}{body[end:]}")

    if shapes and _VESSEL.search(bare):
        return [instead(f"place {preposition.replace('into', 'in')} {bare}", ", on a line of its own")]
    if verb == "fold" and bare.lower() in _IN_FOUR:
        return [there("in four")]
    if verb == "fold" and bare.lower() in _IN_THREE:
        return [there("in three"), there("in four")]
    if row.touches:
        return [there(f"{row.opens_with} {bare} 6 g each")]
    if verb == "divide":
        return [instead("divide", "; how many there are stands in `makes`")]
    if row.said_how:
        return [there(f'"{written}"'), there("")] if without != body else [there(f'"{written}"')]
    if shapes and preposition in ("on", "under"):
        return [instead("shape round" if without == "shape" else without), instead("dust with rice flour 6 g each")]
    if shapes:
        return [instead(f"shape as {bare}"), instead("shape long" if verb == "roll" else "shape round")]
    alone = row.example if without == verb and row.needs_time else without
    alone = re.sub(r"^mix (?!slow|fast|speed|by)", "mix slow ", alone)
    if preposition in ("on", "under"):
        return [instead(alone)]
    if re.match(r"an? ", name):
        return [instead(f'{alone} until "{name}"')]
    if _MACHINE.search(bare):
        return [instead(alone)]
    if re.search("[0-9]", alone):
        return [two_lines(body, f"add {bare}", alone), instead(alone)]
    return [instead(f"add {bare}")]


_BY_ITS_WEIGHT = re.compile(
    r"(?:put|place|transfer|tin|pan|move|turn|drop|set)(?: \w+)?? (?P<preposition>in|into|on|onto) (?:an? |the |its |your |two |[0-9]+ (?:x )?(?=[0-9]))?"
    r"(?P<name>[0-9.½]+[ -]?(?:lb|kg|g|oz|ml|l|inch|cm)s?[ -][^\W\d_][^,\d\"]*)",
    re.IGNORECASE,
)


def place_by_its_weight(t: LineTrouble) -> Fault | None:
    """`put into a 2lb tin`: a tin whose name is what it takes, and a weight that is no ingredient's."""
    found = _BY_ITS_WEIGHT.fullmatch(t.body) if t.context in WEIGHS and len(t.body) < LONGEST else None
    if found is None:
        return None
    typed = f'place {found["preposition"].lower()[:2]} "{found["name"].strip()}"'
    words = {"text": found["name"].strip(), "form": f"write `{typed}`, or the name that your kitchen gives it"}
    return Fault("unreadable-line", *found.span("name"), words, choices(0, len(t.body), typed))
