"""Cautions as they are printed: those of the formula at their stage, those of the house on one posted card."""

from __future__ import annotations

import re
from collections.abc import Sequence
from fractions import Fraction

from manchet.cautions.caution import Caution
from manchet.sheets.page.measures import NBSP, Measures
from manchet.sheets.parts.views import Box, CautionNote
from manchet.sheets.parts.wording import single

_DEGREES = re.compile(r"(?:(\d+)( to | and | or |-))?(\d+) C\b")
_BETWEEN = re.compile(r"; |, (?=C )")
"""Between the labels of two boxes."""


def cautions_at_stage(cautions: Sequence[Caution], key: str, m: Measures) -> tuple[CautionNote, ...]:
    """The formula's cautions that the stage of this key causes."""
    return tuple(caution_note(c, m) for c in cautions if c.of == "formula" and c.stage == key)


def cautions_of_no_stage(cautions: Sequence[Caution], keys: Sequence[str], m: Measures) -> tuple[CautionNote, ...]:
    """The formula's cautions of no stage that is printed: they stand under the head."""
    return tuple(caution_note(c, m) for c in cautions if c.of == "formula" and c.stage not in keys)


def caution_note(c: Caution, m: Measures) -> CautionNote:
    """Its temperatures in the degrees of the sheet; a source keeps its own words."""
    boxes = tuple(_box(label, m) for label in _BETWEEN.split(c.reading)) if c.reading else ()
    words, limit, missed = (in_degrees(text, m) for text in (c.words, c.limit, c.if_missed))
    return CautionNote(words, limit, boxes, missed, c.source, c.level == "warning")


def _box(label: str, m: Measures) -> Box:
    """`C at 2 h`: a box for degrees, at two hours."""
    if label.startswith("C "):
        return Box(label.removeprefix("C "), m.degree())
    return Box(in_degrees(label, m))


def in_degrees(text: str, m: Measures) -> str:
    """`57 and 5 C` as `57 and 5 °C`, or `135 and 41 °F`."""

    def figure(celsius: str) -> str:
        return m.plain(single(m.reading(Fraction(celsius))), 0)

    def said(found: re.Match[str]) -> str:
        first, joint, last = found.groups()
        return f"{figure(first) + joint if first else ''}{figure(last)}{NBSP}{m.degree()}"

    return _DEGREES.sub(said, text)
