"""What is to be printed, and how this house prints."""

from __future__ import annotations

from typing import NamedTuple

from manchet.formula.order import AS_WRITTEN, Order
from manchet.timing.when import When

KINDS = ("sheet", "card")
FORMS = ("html", "pdf", "json")


class Wish(NamedTuple):
    """`kinds` and `forms` are some of KINDS and FORMS. "" leaves paper, units, degrees and words to the kitchen."""

    order: Order = AS_WRITTEN
    kitchen: str = ""
    kinds: tuple[str, ...] = KINDS
    forms: tuple[str, ...] = FORMS
    paper: str = ""
    units: str = ""
    degrees: str = ""
    words: str = ""
    when: When | None = None
    today: str = ""
    """The day, as ISO 8601: it comes in, so that the same input gives the same sheet."""
