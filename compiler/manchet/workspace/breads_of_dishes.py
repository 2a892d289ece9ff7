"""The breads that the dishes of a plan are built on: so many loaves more are baked for them, unless they are there."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction

from manchet.batch.parts_needed import parts_needed
from manchet.batch.work import Work
from manchet.day.said import Finish, Pieces, Plan, SaidEnd, Want
from manchet.diagnostics.suggest import fold
from manchet.formula.nouns import same_noun
from manchet.formula.ranges import Range


def with_breads_of_dishes(plan: Plan, dishes: Iterable[tuple[Want, Work]]) -> tuple[Want, ...]:
    """What the plan wants, and the breads of its dishes: on top of what it wants of a bread, or as a want of their own that is
    fit to cut when the first plate is served, and young enough for the last."""
    wants = {fold(want.name): want for want in plan.wants}
    there = {one.key for one in plan.already}
    for want, work in dishes:
        for needed in parts_needed(work.batch):
            bread = work.preparations.get(needed.part.key)
            if not needed.part.is_bread or bread is None or needed.pieces is None or fold(bread.name) in there:
                continue
            more = Fraction(needed.pieces), needed.part.noun
            known = wants.get(fold(bread.name))
            if known is None:
                end = SaidEnd(Finish.READY, want.end.not_before or want.end.by, place=want.place)
                known = Want(bread.name, (), None, end, (), (), None, _for_the_last(bread.sold, want.end), want.place)
            wants[fold(bread.name)] = known._replace(pieces=_with(known.pieces, more))
    return tuple(wants.values())


def _for_the_last(sold: Range | None, end: SaidEnd) -> Range | None:
    """How old a bread may be at the first plate, so that it is not too old at the last."""
    if sold is None or sold.high is None or end.not_before is None:
        return sold
    served = Fraction(int((end.by - end.not_before).total_seconds()))
    return sold._replace(high=max(sold.high - served, sold.low or Fraction(0)))


def _with(pieces: Pieces, more: tuple[Fraction, str]) -> Pieces:
    number, noun = more
    if any(same_noun(noun, one) for _, one in pieces):
        return tuple((n + number if same_noun(noun, one) else n, one) for n, one in pieces)
    return (*pieces, more)
