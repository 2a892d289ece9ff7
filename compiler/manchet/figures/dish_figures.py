"""The figures of a dish: what a slice weighs, how many loaves that is, what is over, and what a plate comes to."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.parts_needed import PartNeeded, is_weighed, parts_needed
from manchet.batch.preparations_needed import touching
from manchet.batch.work import Work
from manchet.figures.figure import Figure, Given
from manchet.formula.nouns import singular
from manchet.formula.parts import CountedAmount
from manchet.records import NamedTuple

SLICE = "a slice is its part of the cooled loaf, what comes off in the slicing spread over all slices; our own rule"
ACCOUNT = "what is laid down, what each step puts on it and what each heat takes, one after the other"


class PartFigures(NamedTuple):
    """What is laid down or put on, of all plates: grams, and how many slices or pieces where it is counted."""

    name: str
    stage: str
    """The key of the stage, preparation or bread that it is, else "" of what the larder has."""
    grams: Figure | None
    """None where nobody knows what one weighs."""
    number: Figure | None
    unit: str
    """"slices" or "whole"; "" where it is weighed."""


def part_figures(work: Work) -> Iterator[PartFigures]:
    """All that is on the plates, from the bottom up; none of what is no dish."""
    if not work.formula.dish:
        return
    plates = Given(work.batch.pieces[0].noun, work.batch.pieces[0].number, "", work.formula.place.where)
    for weighed in work.dough.weighed:
        portion = weighed.portion
        yield _on_plates(portion.name, portion.stage, weighed.grams, portion.counted, plates)
    for applied, grams in touching(work.batch):
        yield _on_plates(applied.name, applied.stage, grams, applied.counted, plates)


def _on_plates(name: str, stage: str, grams: Fraction, counted: CountedAmount | None, plates: Given) -> PartFigures:
    rule, source = "what the file says for one x plates, or in all", "arithmetic of the dish"
    weight = Figure(name, grams, "g", rule, (plates,), source)
    if counted is None:
        return PartFigures(name, stage, weight, None, "")
    number = Figure(f"{counted.unit} of {name}", grams / counted.grams, "", rule, (plates,), source)
    return PartFigures(name, stage, weight if counted.known else None, number, counted.unit)


def dish_figures(work: Work) -> dict[str, Figure]:
    """Empty for what is no dish. What nobody can say is left out."""
    if not work.formula.dish:
        return {}
    found: dict[str, Figure] = {}
    for needed in parts_needed(work.batch):
        found |= _of_part(work, needed)
    piece, known = work.batch.pieces[0], is_weighed(work.batch)
    if known and piece.baked_grams is not None:
        laid = Given("laid down first on one", piece.grams, "g", work.formula.place.where)
        name = f"{singular(piece.noun)} weight"
        found["plate_grams"] = Figure(name, piece.baked_grams, "g", "what is laid down, less what it loses, and what goes on it",
                                      (laid,), ACCOUNT)  # fmt: skip
    return found


def _of_part(work: Work, needed: PartNeeded) -> dict[str, Figure]:
    part, counted = needed.part, needed.counted
    found: dict[str, Figure] = {}
    if counted is None or needed.pieces is None or needed.number is None:
        return found
    key = part.key.replace(" ", "_")
    where = work.formula.place.where
    if counted.known and counted.unit == "slices" and part.grams is not None:
        loaf = Given(f"{part.name}, cooled", part.grams, "g", "the account of what one weighs finished")
        number = Given("slices of one", Fraction(counted.a_piece), "", where)
        rule = "cooled weight x (1 - loss of the slicing / 100) / slices"
        found[f"{key}_slice_grams"] = Figure(f"slice of {part.name}", counted.grams, "g", rule, (loaf, number), SLICE)
    wanted = Given(f"{counted.unit} of {part.name}", needed.number, "", where)
    pieces = Figure(f"{part.name} {part.noun}", Fraction(needed.pieces), "", "what is wanted, in whole pieces upward", (wanted,),
                    "arithmetic of the dish")  # fmt: skip
    found[f"{key}_pieces"] = pieces
    if needed.over:
        rule = "slices of the pieces that are cut, less those that are wanted"
        found[f"{key}_over"] = Figure(
            f"slices of {part.name} over", needed.over, "", rule, (pieces, wanted), "arithmetic of the dish"
        )
    return found
