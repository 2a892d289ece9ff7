"""Cautions as they are printed: those of the formula at their stage, those of the house on one posted card."""

from __future__ import annotations

import re
from collections.abc import Sequence
from fractions import Fraction

from manchet.cautions.at import CautionPlace
from manchet.cautions.caution import Caution
from manchet.sheets.page.measures import NBSP, Measures
from manchet.sheets.parts.views import Box, CautionNote
from manchet.sheets.parts.wording import single

_DEGREES = re.compile(r"(?:(\d+)( to | and | or |-))?(\d+) C\b")
_BETWEEN = re.compile(r"; |, (?=C )")
"""Between the labels of two boxes."""


def cautions_of_stage(cautions: Sequence[Caution], key: str, m: Measures) -> tuple[CautionNote, ...]:
    """Those that the stage of this key causes as a whole: above what is weighed."""
    return _at(cautions, CautionPlace(key), m)


def cautions_at_step(
    cautions: Sequence[Caution], key: str, step: int, m: Measures, branch: int | None = None
) -> tuple[CautionNote, ...]:
    """Those that one step causes: `step` of the steps of the stage of this key, or of a branch of `Formula.branches`."""
    return _at(cautions, CautionPlace(key, step, branch), m)


def cautions_above_step(
    cautions: Sequence[Caution], key: str, step: int, m: Measures, branch: int | None = None
) -> tuple[CautionNote, ...]:
    """As `cautions_at_step`, for a form that has nothing above the steps: those of the whole stage above its first."""
    whole = cautions_of_stage(cautions, key, m) if step == 0 and branch is None else ()
    return whole + cautions_at_step(cautions, key, step, m, branch)


def cautions_at_stage(cautions: Sequence[Caution], key: str, m: Measures) -> tuple[CautionNote, ...]:
    """All that the stage of this key causes, with its steps and branches, for a form that prints no steps."""
    return tuple(caution_note(c, m) for c in cautions if c.of == "formula" and c.at.stage == key)


def cautions_of_no_stage(cautions: Sequence[Caution], keys: Sequence[str], m: Measures) -> tuple[CautionNote, ...]:
    """The formula's cautions of no stage that is printed: they stand under the head."""
    return tuple(caution_note(c, m) for c in cautions if c.of == "formula" and c.at.stage not in keys)


def caution_note(c: Caution, m: Measures) -> CautionNote:
    """Its temperatures in the degrees of the sheet; a source keeps its own words."""
    boxes = tuple(_box(label, m) for label in _BETWEEN.split(c.reading)) if c.reading else ()
    words, limit, missed = (in_degrees(text, m) for text in (c.words, c.limit, c.if_missed))
    return CautionNote(c.level, words, limit, missed, boxes, c.source)


def _at(cautions: Sequence[Caution], at: CautionPlace, m: Measures) -> tuple[CautionNote, ...]:
    return tuple(caution_note(c, m) for c in cautions if c.of == "formula" and c.at == at)


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
