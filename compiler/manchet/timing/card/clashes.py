"""Where more is wanted at once than the kitchen has: oven, mixer, hands. Said, not solved."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import datetime
from fractions import Fraction

from manchet.batch.model import Batch
from manchet.batch.work import Work
from manchet.figures.oven.curve import oven_of
from manchet.formula.model import Who
from manchet.formula.nouns import same_noun
from manchet.kitchen.model import Kitchen, Oven
from manchet.records import NamedTuple
from manchet.timing.card.values import CardRow, Clash
from manchet.timing.jobs.places import mixer_of


class Use(NamedTuple):
    """Something takes up `share` of a thing from `start` to `end`."""

    start: datetime
    end: datetime
    share: Fraction
    who: str


def clashes_of(work: Work, rows: tuple[CardRow, ...]) -> tuple[Clash, ...]:
    """All clashes, in order of time. What the kitchen does not say (places in the oven, hands) is not judged."""
    kitchen = work.kitchen
    found: list[Clash] = []
    for oven in kitchen.ovens:
        found += _too_much("oven", oven.name, _oven_uses(work, rows, oven))
    if kitchen.mixers:
        found += _too_much("mixer", _joint_name(kitchen), _mixer_uses(rows, kitchen))
    if kitchen.hands:
        found += _too_much("hands", str(kitchen.hands), _hand_uses(rows, kitchen.hands))
    return tuple(sorted(found, key=lambda clash: (clash.start, clash.what, clash.name)))


def _too_much(what: str, name: str, uses: Iterable[Use]) -> list[Clash]:
    """Each time a use begins and there is then more than one whole of it."""
    ordered = sorted(uses, key=lambda use: use.start)
    found: list[Clash] = []
    for use in ordered:
        together = [other for other in ordered if other.start <= use.start < other.end]
        share = sum((other.share for other in together), Fraction(0))
        if share > 1:
            who = tuple(dict.fromkeys(other.who for other in together))
            clash = Clash(what, name, use.start, min(other.end for other in together), share, who)
            if clash not in found:
                found.append(clash)
    return found


def _oven_uses(work: Work, rows: tuple[CardRow, ...], oven: Oven) -> list[Use]:
    """What each load takes of an oven's places, from its first phase to its last."""
    found: dict[tuple[str, int, int], Use] = {}
    for row in rows:
        if row.job != "step" or row.step is None or oven_of(row.step, work.kitchen) != oven:
            continue
        share = _share_of_oven(work.batch, row, oven)
        if share is None:
            continue
        load = row.branch, row.mix, row.load
        start = found[load].start if load in found else row.start
        found[load] = Use(start, row.end, share, _said(work.batch, row))
    return list(found.values())


def _share_of_oven(batch: Batch, row: CardRow, oven: Oven) -> Fraction | None:
    """Places taken over places there are; None where the kitchen does not say how many of these it holds."""
    everything = sum((p.number for p in batch.pieces), Fraction(0))
    sorts = [(p.noun, p.number) for p in batch.pieces] if not row.branch else [(row.branch, everything)]
    places = [next((n for n, held in oven.holds if same_noun(held, noun)), 0) for noun, _ in sorts]
    if not everything or not all(places):
        return None
    at_once = row.pieces
    if row.step is not None and row.step.at_a_time:
        at_once = min(at_once, Fraction(row.step.at_a_time))
    return sum((at_once * number / everything / n for (_, number), n in zip(sorts, places, strict=True)), Fraction(0))


def _mixer_uses(rows: tuple[CardRow, ...], kitchen: Kitchen) -> list[Use]:
    share = Fraction(1, len(kitchen.mixers))
    return [
        Use(row.begins, row.end, share, row.stage or "dough")
        for row in rows
        if row.job == "step" and row.step is not None and row.end > row.begins
        if row.step.verb == "mix" and row.who is Who.MACHINE
        if len(kitchen.mixers) > 1 or mixer_of(row.step, kitchen) is not None
    ]


def _hand_uses(rows: tuple[CardRow, ...], hands: int) -> list[Use]:
    """Work on every piece takes all hands, as its time is counted; other work takes one pair."""
    return [
        Use(
            row.begins,
            row.end,
            Fraction(1) if row.by_piece else Fraction(1, hands),
            row.stage or row.branch or "dough",
        )
        for row in rows
        if row.job == "step" and row.who is Who.HANDS and row.end > row.begins
    ]


def _said(batch: Batch, row: CardRow) -> str:
    return row.branch or (batch.pieces[0].noun if len(batch.pieces) == 1 else batch.formula.name)


def _joint_name(kitchen: Kitchen) -> str:
    return ", ".join(mixer.name for mixer in kitchen.mixers)
