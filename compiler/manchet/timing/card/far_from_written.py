"""A step whose minutes were written for another weight of piece, of dough or of what is in the pot."""

from __future__ import annotations

from manchet.batch.far_from_written import FarStep, step_far_from_written
from manchet.batch.work import Work
from manchet.timing.card.values import CardRow


def with_far(work: Work, rows: tuple[CardRow, ...]) -> tuple[CardRow, ...]:
    """The rows; each such step says so, the first time it is done."""
    stages = {stage.stage.name: stage for stage in work.batch.stages[:-1]} | {"": work.dough}
    seen: set[tuple[str, str]] = set()
    found = []
    for row in rows:
        far: FarStep | None = None
        if row.step is not None and row.job == "step":
            stage = None if row.branch else stages.get(row.stage)
            far = step_far_from_written(work, row.step.verb, stage, row.branch)
            where = (row.step.verb, row.stage or row.branch)
            far = None if where in seen else far
            seen.add(where)
        found.append(row._replace(far=far))
    return tuple(found)
