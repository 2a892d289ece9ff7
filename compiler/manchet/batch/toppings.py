"""What touches the bread at another size: a weight `in all` is for what the file makes, and goes with how much is made."""

from __future__ import annotations

from fractions import Fraction

from manchet.formula.model import Branch, Formula, Makes, Step
from manchet.formula.nouns import same_noun


def resize_toppings(formula: Formula, flour: Fraction, makes: tuple[Makes, ...], written: Fraction | None) -> Formula:
    """The formula with what is dusted, brushed or greased on `in all` in proportion; `each` is of a piece and stays.

    `written` is the flour, in grams, of the amount the file asks for, where anybody can say.
    """
    if not written or (flour == written and makes == formula.makes):
        return formula
    ratio = flour / written
    stages = tuple(stage._replace(steps=_steps(stage.steps, ratio)) for stage in formula.stages)
    branches = tuple(
        branch._replace(steps=_steps(branch.steps, _pieces(branch, formula, makes) or ratio))
        for branch in formula.branches
    )
    return formula._replace(stages=stages, branches=branches)


def _pieces(branch: Branch, formula: Formula, makes: tuple[Makes, ...]) -> Fraction | None:
    """How many times as many pieces of one sort are made; None where they are not counted."""
    wanted, written = (_number(branch.noun, lines) for lines in (makes, formula.makes))
    return wanted / written if wanted and written else None


def _number(noun: str, makes: tuple[Makes, ...]) -> Fraction:
    return sum((m.number for m in makes if m.number is not None and same_noun(m.noun, noun)), Fraction(0))


def _steps(steps: tuple[Step, ...], ratio: Fraction) -> tuple[Step, ...]:
    return tuple(_resized(step, ratio) for step in steps)


def _resized(step: Step, ratio: Fraction) -> Step:
    applied = step.applied
    if applied is None or applied.each:
        return step
    return step._replace(applied=applied._replace(grams=applied.grams * ratio))
