"""A stage of the house that several doughs take: made once where their uses lie close enough, else once for each group."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from fractions import Fraction

from manchet.day.jobs.values import WorkMoment, WorkOfDay
from manchet.records import NamedTuple

NOTHING = Fraction(0)


class Builds(NamedTuple):
    """Which making of a shared stage each bread takes: (bread, stage) -> number from 1."""

    number: dict[tuple[str, str], int]
    twice: tuple[str, ...]
    """Names of stages that are made more than once."""

    def key_of(self, bread: str, moment: WorkMoment) -> str:
        number = self.number.get((bread, moment.making), 1)
        return moment.key if number == 1 else f"{moment.key}/build {number}"


class _StageUse(NamedTuple):
    bread: str
    stage: str
    name: str
    latest: Fraction
    """Seconds, from any common zero: when the dough takes it at the latest to be on time."""
    range: Fraction | None
    """Seconds that it may stand longer than at least; None for as long as one likes."""


def builds_of(works: Sequence[WorkOfDay], due_of: Callable[[str], int]) -> Builds:
    """`due_of` a bread: the minute of its end. Doughs whose latest uses lie within the range that the stage may stand take one
    making; the first whose use lies later begins another."""
    uses: dict[str, list[_StageUse]] = {}
    for work in works:
        for use in _uses(work, due_of(work.bread)):
            uses.setdefault(use.stage, []).append(use)
    number: dict[tuple[str, str], int] = {}
    twice: list[str] = []
    for stage, found in uses.items():
        found.sort(key=lambda use: (use.latest, use.bread))
        build, begins = 1, found[0].latest
        for use in found:
            if use.range is not None and use.latest - begins > use.range + SLACK:
                build, begins = build + 1, use.latest
            number[use.bread, stage] = build
        if build > 1:
            twice.append(found[0].name)
    return Builds(number, tuple(twice))


SLACK = Fraction(4 * 3600)
"""Seconds by which a dough can be begun sooner than at its latest, so that two share a making. Our own rule."""


def _uses(work: WorkOfDay, due: int) -> list[_StageUse]:
    latest = _latest(work, Fraction(due * 60))
    moments = {moment.key: moment for moment in work.moments}
    found = []
    for gap in work.gaps:
        before, after = moments[gap.before], moments[gap.after]
        if before.making and before.making != after.making:
            range = None if gap.most is None else gap.most + gap.may - gap.least
            found.append(_StageUse(work.bread, before.making, before.stage.name, latest[gap.after], range))
    return found


def _latest(work: WorkOfDay, due: Fraction) -> dict[str, Fraction]:
    """When each moment begins at the latest, for the last of its bread to be there when due."""
    latest = {moment.key: due - moment.seconds for moment in work.moments}
    for end in work.finished:
        latest[end.moment] = min(latest[end.moment], due - end.cools - NOTHING)
    after: dict[str, list[tuple[str, Fraction]]] = {}
    for gap in work.gaps:
        after.setdefault(gap.before, []).append((gap.after, gap.least))
    for load in work.loads:
        after.setdefault(load.put, []).append((load.take, load.stays))
    for _ in work.moments:
        changed = False
        for key, followers in after.items():
            soonest = min(latest[then] - least for then, least in followers)
            if soonest < latest[key]:
                latest[key], changed = soonest, True
        if not changed:
            break
    return latest
