"""The steps of a formula as hands and one domestic oven do them."""

from __future__ import annotations

from manchet.figures.mixing.by_hand import DRINKS, TOGETHER, Handwork, handwork, is_machine_mix
from manchet.figures.mixing.turns import kneading
from manchet.formula.bake_events import STEAM
from manchet.formula.model import Step
from manchet.sheets.page.measures import Measures
from manchet.sheets.parts import wording
from manchet.sheets.parts.wording import single, targets


def sentence_by_hand(step: Step, stirred: bool, first: bool, after: Step | None, m: Measures) -> str:
    """What is done at home. `stirred`: kneading gains nothing; `first`: nothing was mixed in this stage before; `after`: the
    step that follows."""
    return "".join(done_by_hand(step, stirred, first, after, m))


def done_by_hand(step: Step, stirred: bool, first: bool, after: Step | None, m: Measures) -> tuple[str, str]:
    """The same in two: what is done and for how long, and under which conditions."""
    if not is_machine_mix(step):
        return wording.done_and_how(_plain(step), m)
    work = handwork(step, stirred, first, after)
    together = m.time(single(TOGETHER))
    match work:
        case Handwork.KNEAD:
            times: tuple[str, ...] = (m.time(kneading(step)),)
        case Handwork.BRING_TOGETHER_AND_REST:
            times = (together, m.time(single(DRINKS)))
        case _:
            times = (together,)
    done, _, how = m.words.say(f"by_hand.{work.value}", *times).partition(", ")
    return done, ", ".join(["", *filter(None, [how]), *targets(step, m)])


def _plain(step: Step) -> Step:
    """Without what only a bakery has: seconds a piece, dampers, the name of a machine."""
    changed = step._replace(events=tuple(event for event in step.events if event.what == STEAM))
    return changed._replace(time=None, per="") if step.per == "each" else changed
