"""What one work wants made ahead, in whole batches: the preparations it draws on, and of a dish the breads."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.order import AS_WRITTEN, Order
from manchet.batch.parts_needed import PartNeeded, parts_needed
from manchet.batch.work import Work, work_of
from manchet.diagnostics.suggest import fold
from manchet.formula.made_elsewhere import made_elsewhere
from manchet.formula.model import Formula
from manchet.sheets.form import Ahead
from manchet.workspace.made_ahead import made_ahead


def made_for(work: Work) -> tuple[Ahead, ...]:
    """In the order it is made: breads first, then preparations. Nothing of a work that draws on none."""
    if not made_elsewhere(work.formula):
        return ()
    known = {key: work.preparations[key] for key in _drawn_on(work)}
    ahead = made_ahead([work], known, lambda formula, grams: _work_for(work, formula, grams), at_home=False)
    own = work.formula.name
    direct = (each for each in ahead if any(name == own for name, _ in each.by))
    counted = {one.part.key: one for one in parts_needed(work.batch)}
    return (
        *_breads(work),
        *(
            each._replace(part=counted.get(fold(each.work.formula.name)), batch=_batch(work, each.work.formula))
            for each in direct
        ),
    )


def _work_for(user: Work, formula: Formula, grams: Fraction | None) -> Work | None:
    order = AS_WRITTEN if grams is None else Order(dough=grams)
    return work_of(formula, order, user.kitchen, user.larder, user.preparations).value


def _batch(user: Work, formula: Formula) -> Fraction | None:
    """Grams that its file makes at once."""
    made = None if formula.is_in_percent else _work_for(user, formula, None)
    return None if made is None else made.batch.dough


def _drawn_on(work: Work) -> Iterator[str]:
    """The keys of the preparations that go into it, and of those that go into these."""
    seen: set[str] = set()
    waiting = sorted(made_elsewhere(work.formula))
    while waiting:
        formula = work.preparations.get(key := waiting.pop())
        if formula is not None and formula.preparation and key not in seen:
            seen.add(key)
            waiting += sorted(made_elsewhere(formula))
    return (key for key in work.preparations if key in seen)


def _breads(work: Work) -> Iterator[Ahead]:
    """The breads of a dish, each in as many whole pieces as it takes."""
    for needed in parts_needed(work.batch):
        formula = work.preparations.get(needed.part.key)
        if not needed.part.is_bread or formula is None:
            continue
        made = work_of(formula, order_for(needed), work.kitchen, work.larder, work.preparations).value
        if made is not None:
            yield Ahead(made, ((work.formula.name, needed.grams),), part=needed)


def order_for(needed: PartNeeded) -> Order:
    """So many pieces of a bread as a dish takes; as many as its file makes, where nobody can say how many that are."""
    if needed.pieces is None or not needed.part.noun:
        return AS_WRITTEN
    return Order(pieces=((Fraction(needed.pieces), needed.part.noun),))
