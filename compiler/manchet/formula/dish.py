"""A dish: what of its formula follows from the plates, and from the parts that other blocks make."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.outcome import Outcome
from manchet.diagnostics.reports import report
from manchet.formula.draft import Draft
from manchet.formula.laid import slicing_in
from manchet.formula.model import Formula, Makes, Stage, Step
from manchet.formula.naming import Names
from manchet.formula.parts import DishPart, Parts
from manchet.syntax.nodes import Entry
from manchet.syntax.vocabulary import COOKS, MOVES_OUT


def as_dish(formula: Formula, parts: Parts, plates: Fraction) -> Outcome[Formula]:
    """The formula of an assembly that is written for so many plates: a plate begins with what is laid down on it."""
    weight = (formula.own_flour or Fraction(0)) * formula.dough.into_share / plates
    makes = tuple(made._replace(grams=weight) for made in formula.makes)
    used = tuple(parts_used(formula, parts))
    stages = tuple(stage._replace(steps=tuple(_standing(formula, stage, plates))) for stage in formula.stages)
    dish = formula._replace(dish=True, makes=makes, parts=used, stages=stages)
    return Outcome(dish, tuple(_reports(formula, used)))


def _standing(formula: Formula, stage: Stage, plates: Fraction) -> Iterator[Step]:
    """The steps of a stage, each knowing how many stand in its heat for one plate: the slices or pieces laid down, else what was
    put on last; one where nothing is counted."""
    flour = formula.own_flour or Fraction(0)
    counted = ((one.share * flour / one.counted.grams) for one in stage.portions if one.counted is not None)
    number = laid = sum(counted, Fraction(0)) / plates
    for step in stage.steps:
        yield step._replace(stands_each=number) if number and step.verb in COOKS else step
        put_on = step.applied
        if not laid and put_on is not None and put_on.counted is not None:
            number = put_on.grams / put_on.counted.grams / (1 if put_on.each else plates)


def parts_used(formula: Formula, parts: Parts) -> Iterator[DishPart]:
    keys = {portion.stage for stage in formula.stages for portion in stage.portions}
    keys |= {step.applied.stage for step in formula.steps if step.applied is not None}
    own = {stage.key for stage in formula.stages}
    for part in parts.all:
        if part.key in keys - own:
            yield part


def _reports(formula: Formula, used: tuple[DishPart, ...]) -> Iterator[Diagnostic]:
    steps = formula.dough.steps
    for at, step in enumerate(steps):
        if step.serve_within is not None and any(map(_is_work, steps[at + 1 :])):
            message = "something is still done after `serve within`"
            yield report("served-too-early", step.place, message, "put the line `serve within …` last")
    for part in used:
        if not part.is_sound:
            message = f"{part.name} has mistakes of its own, so {formula.name} is left out until they are put right"
            yield report(
                "part-has-mistakes", formula.place, message, f"`manchet check` says what is wrong with {part.name}"
            )


def _is_work(step: Step) -> bool:
    return step.verb not in MOVES_OUT


def plates_of(makes: tuple[Makes, ...]) -> Fraction:
    """For how many a dish is written; 1 where it does not say, which is reported."""
    return next((made.number for made in makes if made.number is not None), Fraction(1))


def names_on_a_dish(vessels: tuple[Entry, ...], names: Names, parts: Parts) -> Outcome[Names]:
    """What a dish may be built on besides what any formula may name, and how it cuts its breads. `vessels` are the blocks of
    the dish and of its stages."""
    named = names._replace(parts=parts)
    slicing, reports = slicing_in(vessels, named)
    return Outcome(named._replace(slicing=slicing), reports)


def cut_as_weighed(draft: Draft) -> Draft:
    """A vessel of a dish whose slices are weighed as they are cut: what the slicing loses is off them already."""
    steps = (step if step.slices is None else step._replace(loss_is_weighed=True) for step in draft.steps)
    return draft._replace(steps=tuple(steps))
