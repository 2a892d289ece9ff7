"""`flour for dusting`, `sea salt to finish`: what touches the bread is said where it goes on, with what it weighs."""

from __future__ import annotations

import re

from manchet.syntax.loose.normal import LONGEST
from manchet.syntax.mistakes.faults import Fault, LineTrouble
from manchet.syntax.mistakes.odd_figures import short
from manchet.syntax.mistakes.several_kinds import KINDS
from manchet.syntax.openings import WEIGHS

_FOR = re.compile(
    r"(?:(?:a little|some|extra|more) )*(?P<name>[^\W\d_][^\d,]*?),? \(?(?:plus )?(?:(?:some|a little|extra|more) )*"
    r"(?P<what>for (?:dusting|flouring|(?:the )?bench|kneading|rolling(?: out)?|shaping|the peel|greasing|oiling|the tins?|the pans?"
    r"|the trays?|brushing|glazing|sprinkling|topping|rolling in|the top)|to (?:dust|grease|brush|glaze|sprinkle|finish|top))\)?",
    re.IGNORECASE,
)
_HOW = (
    (r"greas|oil|tins?$|pans?$|trays?$", "grease tins with {} 3 g each"),
    (r"brush|glaz", "brush with {} 5 g each"),
    (r"sprinkl|top|finish", "sprinkle with {} 3 g each"),
    (r"rolling in$", "roll in {} 6 g each"),
    (r"", "dust with {} 6 g each"),
)


def for_the_bench(t: LineTrouble) -> Fault | None:
    if t.context not in WEIGHS or t.rule not in ("bare_name", "material") or len(t.body) >= LONGEST:
        return None
    found = _FOR.fullmatch(_WEIGHED.sub("", t.body)) if " for " in t.body or " to " in t.body else None
    if found is None:
        return None
    said, name = found["what"].lower(), found["name"].strip()
    step = next(step for words, step in _HOW if re.search(words, said))
    typed = step.format(KINDS.get(name.lower(), (name,))[0])
    start = t.body.lower().index(said)
    words = {"text": short(found["what"]), "form": f"say it at its step, with what it weighs: `{typed}`"}
    return Fault("unreadable-line", start, start + len(said), words)


_WEIGHED = re.compile(r"^[0-9.]+ ?(?:g|kg|ml) (?:of )?")
