"""What whoever eats the bread has to be told."""

from __future__ import annotations

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.cautions.at import CautionPlace
from manchet.cautions.caution import Caution, caution
from manchet.larder.foods import words_of_name


def told_to_eaters(work: Work) -> Iterator[Caution]:
    """Honey, baked or not, weighed in or brushed on."""
    formula = work.formula
    names = {p.name for stage in formula.stages for p in stage.portions}
    names |= {line.name for line in formula.overall} | {p.name for b in formula.branches for p in b.added}
    names |= {step.applied.name for step in formula.steps if step.applied is not None}
    if any("honey" in words_of_name(name) for name in names):
        yield caution("honey", CautionPlace(formula.dough.key))
