"""Loose spellings: a line that cannot be read, rewritten into the normal form where only one reading exists.

Asked of no other line. A closed list of rewriters, each for one habit of the trade, is gone through in order outside quotes;
the one grammar then reads what comes out, and if it cannot, or finds fault with it, the line is as unreadable as before.
So a rewriter need not judge whether a line makes sense, and what has two readings has no rewriter.
"""

from __future__ import annotations

import re

from manchet.syntax.loose.days import DAYS
from manchet.syntax.loose.figures import FIGURES, SIGNS
from manchet.syntax.loose.headings import HEAD, HEADINGS, SETTINGS
from manchet.syntax.loose.materials import MATERIALS, beside, boiling
from manchet.syntax.loose.money import MONEY
from manchet.syntax.loose.rules import Rewriter
from manchet.syntax.loose.steps import STEP_WORDS
from manchet.syntax.loose.times import FOLDS, HEAT, TIMES, around

LONGEST = 300
"""Letters of a line that is looked at: nobody types a longer one by hand, and all work here stays small."""


def normal_form(body: str, context: str) -> str | None:
    """The line as the grammar may read it; None where no rewriter has anything to say."""
    if len(body) > LONGEST:
        return None
    text, quoted = _set_quotes_aside(body)
    for rewriter in _of(context):
        text = rewriter(text)
    text = " ".join(text.split()).strip(" ,;")
    for at, words in enumerate(quoted):
        text = text.replace(_MARK.format(at), words)
    if text != " ".join(body.split()):
        return text
    spaced = re.sub(r"\s*\t\s*|  +", " ", body)  # `1000  g`, and the cells of a table
    return spaced if spaced != body else None


_QUOTED = re.compile(r'"[^"]*"|“[^”]*”|„[^“”]*[“”]')
_MARK = '"\x01{}\x01"'


def _set_quotes_aside(body: str) -> tuple[str, list[str]]:
    quoted: list[str] = []

    def aside(match: re.Match[str]) -> str:
        quoted.append(match[0])
        return _MARK.format(len(quoted) - 1)

    return _QUOTED.sub(aside, body), quoted


# ---- which of them, where ----

_FIGURED = (*SIGNS, *FIGURES, *TIMES, *HEAT)
_STAGE = (*_FIGURED, beside, *FOLDS, *STEP_WORDS, around, *MATERIALS, boiling)
_BY_CONTEXT: dict[str, tuple[Rewriter, ...]] = {
    "top": (*SIGNS, *FIGURES, *HEADINGS),
    "formula": (*SIGNS, *FIGURES, *HEAT, *MONEY, *HEAD, *HEADINGS),
    "variant": (*SIGNS, *FIGURES, *HEAT, *HEAD, *HEADINGS),
    "stage": _STAGE,
    "preparation": (*HEAD, *_STAGE),
    "overall": (*_FIGURED, beside, *MATERIALS),
    "composition": (*SIGNS, *FIGURES, *MATERIALS),
    "material": (*_FIGURED, beside, *FOLDS, *STEP_WORDS, around),
    "step": (*_FIGURED, beside, *FOLDS, *STEP_WORDS, around),
    "larder": SIGNS,
    "entry": (*_FIGURED, *MONEY, *SETTINGS),
    "kitchen": (*_FIGURED, *STEP_WORDS, *MONEY, *SETTINGS),
    "thing": (*_FIGURED, *MONEY, *SETTINGS),
    "plan": (*SIGNS, *DAYS, *FIGURES),
    "order": (*SIGNS, *DAYS, *FIGURES),
    "want": (*SIGNS, *DAYS, *FIGURES),
}


def _of(context: str) -> tuple[Rewriter, ...]:
    return _BY_CONTEXT.get(context, ())
