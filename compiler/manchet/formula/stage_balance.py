"""What is in the bowl, pot or tub, step by step: what goes in, what boils off, what is made good.

The same arithmetic serves shares (per gram of all flour) and grams.
"""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction

from manchet.formula.model import Portion, Step
from manchet.formula.what_goes import LossOf, loss_of
from manchet.records import NamedTuple
from manchet.syntax.vocabulary import BRINGS_IN, OF_THE_FIRST

NOTHING = Fraction(0)


class Contents(NamedTuple):
    """A stage's material account. into = out + lost - topped_up + returned, exactly."""

    into: Fraction
    lost: Fraction
    topped_up: Fraction
    returned: Fraction
    out: Fraction
    boiled_off: Fraction = Fraction(0)
    """Of what is lost, the water that goes off as steam from a hot pot or a scald, or in the air, or is poured off; less what
    tops it up."""
    left: tuple[Fraction, ...] = ()
    """What is in the vessel after each step that pours off."""


def contents(
    start: Fraction,
    held: dict[str, Fraction],
    steps: Iterable[Step],
    returned: dict[str, Fraction],
    hot: bool = False,
    first: Fraction | None = None,
) -> Contents:
    """Follow one vessel through its steps.

    `start` is what is weighed in before the first step; `held` what waits beside it, by folded name;
    `returned` how much of a culture came in, by folded name. A loss is a share of what is in the vessel then;
    losses chain. What is peeled off is a share of `first`, the first thing weighed (None: of all of it). Topping up makes good the weight that has gone in so far, but not what was poured off on purpose. Dividing ends the account: what
    happens to pieces is no longer one vessel. `hot`: the stage is made with hot water, so that what it loses is steam.
    """
    inside = into = start
    lost = topped_up = gone_back = boiled_off = poured = NOTHING
    left: list[Fraction] = []
    waiting = dict(held)
    peeled = start if first is None else first
    for step in steps:
        if step.verb == "divide":
            break
        if step.verb in BRINGS_IN:
            for goes in step.goes:
                if goes.beyond:
                    continue  # by feel, outside the balance
                arriving = _arriving(waiting, goes.key, goes.share)
                inside += arriving
                into += arriving
        elif step.verb == "top up":
            short = into - gone_back - poured - inside
            topped_up += short
            inside += short
            boiled_off -= short
        elif step.poured is not None:
            lost += step.poured.share
            inside -= step.poured.share
            poured += step.poured.share
            left.append(inside)
            boiled_off += step.poured.share * step.poured.water
        elif step.verb == "return":
            for goes in step.goes:
                back = returned.get(goes.key, NOTHING)
                gone_back += back
                inside -= back
        if step.loses is not None and not step.loss_is_weighed:
            loss = (peeled if step.verb in OF_THE_FIRST else inside) * step.loses
            lost += loss
            inside -= loss
            peeled *= 1 - step.loses
            if loss_of(step, hot) is LossOf.WATER:
                boiled_off += loss
    late = sum(waiting.values(), NOTHING)
    return Contents(into + late, lost, topped_up, gone_back, inside + late, boiled_off, tuple(left))


def _arriving(waiting: dict[str, Fraction], key: str, share: Fraction | None) -> Fraction:
    there = waiting.get(key, NOTHING)
    part = there if share is None else min(share, there)
    waiting[key] = there - part
    return part


def held_by_name(portions: Iterable[Portion]) -> dict[str, Fraction]:
    """Shares that are held back, by the folded name they are added under."""
    held: dict[str, Fraction] = {}
    for portion in portions:
        if portion.held:
            held[portion.key] = held.get(portion.key, NOTHING) + portion.share
    return held


def first_share(portions: Iterable[Portion]) -> Fraction:
    """The share of the first thing that is weighed in: what a preparation peels."""
    return next((p.share for p in portions if not p.held), NOTHING)


def start_share(portions: Iterable[Portion]) -> Fraction:
    """The share that is weighed in before the first step."""
    return sum((p.share for p in portions if not p.held), NOTHING)
