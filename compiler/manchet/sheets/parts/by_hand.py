"""The steps of a formula as hands and one domestic oven do them."""

from __future__ import annotations

from manchet.figures.mixing.turns import is_fast, kneading
from manchet.formula.model import Step, Who
from manchet.sheets.page.measures import Measures
from manchet.sheets.parts import wording
from manchet.sheets.parts.wording import targets


def is_machine_mix(step: Step) -> bool:
    return step.verb == "mix" and step.who is Who.MACHINE


def differs_by_hand(step: Step) -> bool:
    """Whether a step says something that only a bakery has."""
    return is_machine_mix(step) or step.per == "each" or step.vent is not None


def sentence_by_hand(step: Step, stirred: bool, first: bool, after: Step | None, m: Measures) -> str:
    """What is done at home. `stirred`: kneading gains nothing; `first`: nothing was mixed in this stage before; `after`: the
    step that follows."""
    if not is_machine_mix(step):
        return wording.sentence(_plain(step), m)
    if stirred:
        said = m.words["by_hand.stir" if first else "by_hand.work_in"]
    elif is_fast(step):
        said = m.words.say("by_hand.knead", m.time(kneading(step)))
    elif first:
        # Flour that drinks for a while needs less kneading; where the file rests it anyway, once is enough.
        rests = after is not None and after.verb == "rest"
        said = m.words["by_hand.bring_together" if rests else "by_hand.bring_together_and_rest"]
    else:
        said = m.words["by_hand.work_in"]
    return ", ".join([said, *targets(step, m)])


def _plain(step: Step) -> Step:
    """Without what only a bakery has: seconds a piece, dampers, the name of a machine."""
    changed = step._replace(vent=None, vent_after=None)
    return changed._replace(time=None, per="") if step.per == "each" else changed
