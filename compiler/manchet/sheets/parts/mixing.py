"""What stands at a mix besides its minutes: the order of the bowl, the way by hand, where mixing goes too far."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from itertools import pairwise

from manchet.batch.mixes import Mixes
from manchet.batch.model import StageBatch
from manchet.batch.work import Work
from manchet.figures.limits.lookup import limit
from manchet.figures.mixing.order_of_adding import order_of_adding
from manchet.figures.mixing.turns import by_machine, is_fast, turns_of
from manchet.formula.model import Step
from manchet.quantities.printing import round_to
from manchet.sheets.page.measures import Measures
from manchet.sheets.parts.by_hand import sentence_by_hand
from manchet.sheets.parts.views import Fact
from manchet.sheets.parts.wording import single

INTENSIVE = Fraction(8 * 60)
"""Seconds of fast mixing from which on a mix is an intensive one: 8 to 15 min (DiMuzio, Bread Baking, 2010)."""

WORTH_AN_ORDER = 4
"""Lines from which on the order of the bowl is said. Our rule."""


def stiff_mix_fact(mixes: Mixes, m: Measures) -> tuple[Fact, ...]:
    """In the head: why there are more mixes than the mixer's load would ask for."""
    if mixes.mixer is None or mixes.most is None or not mixes.is_stiff:
        return ()
    return (Fact("", m.words.say("mixing.stiff", mixes.mixer.name, m.about(mixes.most))),)


def mixing_notes(step: Step, stage: StageBatch | None, work: Work, m: Measures) -> tuple[str, ...]:
    """Beside a mix of a machine. None in the way of one sort of piece, where nothing is mixed."""
    if stage is None or step.verb != "mix":
        return ()
    mixing = by_machine(stage.stage.steps)
    if step not in mixing:
        return ()
    said = []
    if step is mixing[0]:
        said += order_of_the_bowl(stage, m)
    said += _minutes(step, work, m)
    if stage is work.dough:
        said += _by_hand(step, stage, work, m)
        said += _no_return(step, mixing, work.batch.formula.kind, m)
    return tuple(said)


def order_of_the_bowl(stage: StageBatch, m: Measures) -> list[str]:
    """`into the bowl: water, poolish, then white flour, instant yeast, then salt`"""
    portions = [w.portion for w in stage.weighed if not w.portion.held]
    if len(portions) < WORTH_AN_ORDER or stage.stage.steps[0].verb != "mix":
        return []
    turns = [", ".join(dict.fromkeys(portion.name for portion in turn)) for turn in order_of_adding(portions)]
    return [m.words.say("mixing.order", m.words["mixing.then"].join(turns))]


def _minutes(step: Step, work: Work, m: Measures) -> list[str]:
    """What turns are in minutes, on a mixer that says how fast it turns."""
    mixer = work.mixes.mixer
    own = None if mixer is None else mixer.fast_turns if is_fast(step) else mixer.slow_turns
    if mixer is None or own is None or step.turns is None:
        return []
    half_minutes = round_to(turns_of(step, mixer) / own * 2, 0)
    return [m.words.say("mixing.minutes", m.time(single(half_minutes * 30)), mixer.name)]


def _by_hand(step: Step, stage: StageBatch, work: Work, m: Measures) -> list[str]:
    """Where the house has no mixer, or one that cannot take hold of so little."""
    if work.mixes.under is None and (work.kitchen.mixers or not work.kitchen.name):
        return []
    steps = stage.stage.steps
    after = next((b for a, b in pairwise(steps) if a is step), None)
    said = sentence_by_hand(step, work.batch.formula.bread.stirred, step is by_machine(steps)[0], after, m)
    return [m.words.say("mixing.by_hand", said[:1].lower() + said[1:])]


def _no_return(step: Step, mixing: Sequence[Step], kind: str, m: Measures) -> list[str]:
    """At the last fast mix of an intensive one: where the look has to begin, and where there is no way back."""
    fast = [each for each in mixing if is_fast(each) and each.time is not None]
    most = limit("fast-mix-most", kind)
    longest = sum((each.time.high or each.time.likely for each in fast if each.time is not None), Fraction(0))
    if most is None or not fast or step is not fast[-1] or not INTENSIVE <= longest < most:
        return []
    return [m.words.say("mixing.no_return", m.time(single(INTENSIVE)), m.time(single(most)))]
