"""The core of a bread whose file says none: always as an estimate, with the rule it comes from, in the same words on every form."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from manchet.figures.oven.core import core_of
from manchet.formula.model import Formula, Step
from manchet.records import NamedTuple
from manchet.sheets.page.measures import Measures
from manchet.sheets.parts.wording import single


class CoreEstimate(NamedTuple):
    about: str
    """`about 96 °C`"""
    note: str
    """`a core marked “about” is the usual one for this kind of bread, an estimate: the formula gives none`"""


def core_estimate(formula: Formula, phases: Sequence[Step], m: Measures) -> CoreEstimate | None:
    """None where the file says a core itself, and for kinds with no crumb to measure."""
    core = core_of(formula, phases)
    if core is None:
        return None
    about = m.words.say("core_estimate.about", m.degrees(single(Fraction(core.celsius))))
    return CoreEstimate(about, m.words["core_estimate.note"])
