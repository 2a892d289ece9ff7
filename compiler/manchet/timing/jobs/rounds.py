"""What is done on a griddle, in a pan or in a pot goes in rounds: as many as it takes at a time, till all are done."""

from __future__ import annotations

from fractions import Fraction
from math import ceil

from manchet.batch.model import StageBatch
from manchet.batch.work import Work
from manchet.formula.model import Step
from manchet.kitchen.model import Kitchen
from manchet.records import NamedTuple
from manchet.syntax.vocabulary import BAKES, BOILS, IN_OVEN

ON_A_PLATE = BAKES - IN_OVEN


class Rounds(NamedTuple):
    """So many rounds of `at_a_time` each, the last perhaps of fewer. Counted is what stands in the heat: of a dish its slices."""

    number: int
    at_a_time: int


def rounds_of(step: Step, pieces: Fraction, kitchen: Kitchen) -> Rounds | None:
    """By what the step says (`4 at a time`), else by what the griddle or pot of the kitchen holds (`holds 4 rounds`; of two
    such twice that, of several sorts the fewest). None where it goes in no rounds, or nobody says in how many."""
    takes = step.at_a_time or _held(step, kitchen)
    return Rounds(ceil(pieces * step.stands_each / takes), takes) if takes and pieces else None


def is_one_round_of_unknown(step: Step, pieces: Fraction, kitchen: Kitchen) -> bool:
    """Its minutes are of one round on a griddle or in a pan, and neither file nor kitchen says how many there are."""
    once = step.time is not None and step.per != "each"
    return (
        once and step.verb in ON_A_PLATE and pieces * step.stands_each != 1 and rounds_of(step, pieces, kitchen) is None
    )


def pieces_of_stage(work: Work, made: StageBatch) -> Fraction:
    """The plates of a dish whose slices or pieces a stage is made of; 0 of any other stage before the dough: nobody counts it."""
    counted = any(weighed.portion.counted is not None for weighed in made.weighed)
    return work.batch.pieces[0].number if work.formula.dish and counted else Fraction(0)


def _held(step: Step, kitchen: Kitchen) -> int:
    """0 where nobody says. A griddle that is not named is the kitchen's only one."""
    if step.verb not in ON_A_PLATE | BOILS:
        return 0
    vessel = kitchen.vessel(step.verb if step.where is None else step.where[1])
    if vessel is None or not vessel.holds:
        return 0
    return min(number for number, _ in vessel.holds) * (vessel.number or 1)
