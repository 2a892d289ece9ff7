"""When each job begins: the dough goes straight through, every other stage is timed to be ready for its use.

All times are seconds from the first job of all, exact. Nothing here knows a clock.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from fractions import Fraction

from manchet.records import NamedTuple
from manchet.syntax.vocabulary import BAKES
from manchet.timing.jobs.network import Job, Link

ZERO = Fraction(0)
AT_ONCE: Mapping[int, Fraction] = {}


class Latest(NamedTuple):
    """Until when a job may begin if every wait after it is cut to its shortest, and what moves next if it is later.

    `moves` is "oven", "ready", "mixer", or the key of the stage that is waiting.
    """

    at: Fraction
    moves: str


def starts_of(jobs: tuple[Job, ...]) -> tuple[Fraction, ...]:
    """The planned beginning of every job, the earliest at 0.

    Forward from the beginning of the dough for the dough and its branches, which never stand between two steps: a second
    mix waits for the mixer, and is begun so much later that it comes to an oven with room for it. Only what goes in with a
    later load stands. Backward from their use for all other stages, so that they are ready just then. Lengths are the
    planned ones.
    """
    starts = _forward(jobs)
    wanted_by = followers_of(jobs)
    for at in range(len(jobs) - 1, -1, -1):
        if not jobs[at].is_dough:
            use = min((starts[j] for j in wanted_by[at]), default=ZERO)
            starts[at] = use - jobs[at].length.planned
    first = min(starts, default=ZERO)
    return tuple(start - first for start in starts)


def _forward(jobs: tuple[Job, ...]) -> list[Fraction]:
    """The beginnings of the dough's jobs, each as soon as what it needs is done; a mix so much later that there is room for it.

    In one sweep, mix by mix: what needs no later mix is laid down for good. How long a mix would stand is seen by laying down
    with it what is in the oven before it.
    """
    starts: list[Fraction] = [ZERO] * len(jobs)
    takers, last_mix = _takers(jobs), _last_mixes(jobs)
    begins: dict[int, int] = {}
    rounds: dict[int, list[int]] = {}
    for at, job in enumerate(jobs):
        if job.is_dough:
            begins.setdefault(job.mix, at)
            rounds.setdefault(last_mix[at], []).append(at)
    for mix in sorted(rounds):
        in_ovens = (last_mix[n.job] for job in takers.get(mix, ()) for n in job.needs if n.how == "oven")
        for one in range(mix, max((mix, *in_ovens)) + 1):
            _lay(jobs, rounds.get(one, ()), starts)
        waits_for_oven = _stands_before_the_oven(jobs, starts, mix, takers.get(mix, ()))
        if waits_for_oven:
            _lay(jobs, rounds[mix], starts, {begins[mix]: waits_for_oven})
    return starts


def _lay(
    jobs: tuple[Job, ...],
    places: Iterable[int],
    starts: list[Fraction],
    delays: Mapping[int, Fraction] = AT_ONCE,
) -> None:
    """Puts the beginnings of the dough's jobs at these places into `starts`, those in `delays` so much later."""
    for at in places:
        before = [n.job for n in jobs[at].needs if jobs[n.job].is_dough]
        starts[at] = max((end_of(jobs, starts, j) for j in before), default=ZERO) + delays.get(at, ZERO)


def _last_mixes(jobs: tuple[Job, ...]) -> list[int]:
    """For every job the last of the mixes that it is of or waits for."""
    last: list[int] = []
    for job in jobs:
        last.append(max((job.mix, *(last[need.job] for need in job.needs))))
    return last


def _takers(jobs: tuple[Job, ...]) -> dict[int, list[Job]]:
    """For every mix the jobs, not of it, that go on with what it made."""
    found: dict[int, list[Job]] = {}
    for job in jobs:
        for mix in dict.fromkeys(jobs[need.job].mix for need in job.needs if need.how == "step"):
            if mix not in (0, job.mix):
                found.setdefault(mix, []).append(job)
    return found


def _stands_before_the_oven(
    jobs: tuple[Job, ...], starts: Sequence[Fraction], mix: int, takers: Sequence[Job]
) -> Fraction:
    """How long the first pieces of a mix would stand ready while others are in the oven; of several sorts the longest."""
    waits: dict[str, Fraction] = {}
    for job in takers:
        free = [end_of(jobs, starts, n.job) for n in job.needs if n.how == "oven"]
        stands = [end_of(jobs, starts, n.job) for n in job.needs if n.how == "step" and jobs[n.job].mix == mix]
        wait = max([*free, ZERO]) - max(stands)
        waits[job.branch] = min(waits.get(job.branch, wait), wait)
    return max([*waits.values(), ZERO])


def end_of(jobs: tuple[Job, ...], starts: Sequence[Fraction], at: int) -> Fraction:
    """When a job is done, as planned."""
    return starts[at] + jobs[at].length.planned


def followers_of(jobs: Sequence[Job]) -> tuple[tuple[int, ...], ...]:
    """For every job those that need it."""
    return _followers(jobs, for_things=True)


def doughs_after(jobs: tuple[Job, ...]) -> tuple[tuple[int, ...], ...]:
    """For every job those that go on with what it made; not what only waits for its mixer or its oven."""
    return _followers(jobs, for_things=False)


def _followers(jobs: Sequence[Job], for_things: bool) -> tuple[tuple[int, ...], ...]:
    found: list[list[int]] = [[] for _ in jobs]
    for at, job in enumerate(jobs):
        for need in job.needs:
            if for_things or not need.is_for_a_thing:
                found[need.job].append(at)
    return tuple(tuple(one) for one in found)


def critical_jobs(jobs: tuple[Job, ...], starts: tuple[Fraction, ...]) -> frozenset[int]:
    """The jobs that make the day as long as it is: any of them longer, with nothing cut short, and the day is longer.

    These are the stages that are begun first of all, as far as one follows the other without a gap; and of the dough
    the longest way to its end, but for what lies before the use of those stages: there a longer mix only means that
    the mixer is started earlier, while the stage ripens.
    """
    tight = _tight(jobs, starts)
    end = max((start + job.length.planned for start, job in zip(starts, jobs, strict=True)), default=ZERO)
    dough = [at for at, job in enumerate(jobs) if job.is_dough]
    last = {at for at in dough if starts[at] + jobs[at].length.planned == end}
    to_the_end = _back_from(last, jobs, tight)
    first = {at for at, job in enumerate(jobs) if starts[at] == 0 and not job.is_dough}
    for at in range(len(jobs)):
        if any(before in first for before in tight[at]) and not jobs[at].is_dough:
            first.add(at)
    if any(starts[at] == 0 for at in dough):
        return frozenset(first | to_the_end)
    uses = [at for at in dough if any(before in first for before in tight[at])]
    before_all_uses = set(dough).intersection(*(_back_from({use}, jobs, tight) - {use} for use in uses))
    return frozenset(first | (to_the_end - before_all_uses))


def _tight(jobs: tuple[Job, ...], starts: tuple[Fraction, ...]) -> tuple[tuple[int, ...], ...]:
    """For every job what it needs and what ends just when it begins."""
    return tuple(
        tuple(n.job for n in job.needs if starts[n.job] + jobs[n.job].length.planned == starts[at])
        for at, job in enumerate(jobs)
    )


def _back_from(last: set[int], jobs: tuple[Job, ...], tight: tuple[tuple[int, ...], ...]) -> set[int]:
    """Of the dough: these jobs, and all that lead up to them without a gap."""
    found = set(last)
    for at in range(len(jobs) - 1, -1, -1):
        if at in found:
            found.update(before for before in tight[at] if jobs[before].is_dough)
    return found


def latest_of(jobs: tuple[Job, ...], starts: tuple[Fraction, ...]) -> tuple[Latest, ...]:
    """How long each job may be put off before something else moves.

    What must not move: the first bake of a dough, the use of a stage in another, the mixer's next mix, the time the
    bread is ready. Up to there waits may shrink to their shortest.
    """
    done_by: list[Latest | None] = [None] * len(jobs)
    found: list[Latest] = [Latest(ZERO, "")] * len(jobs)
    for at in range(len(jobs) - 1, -1, -1):
        job = jobs[at]
        limit = done_by[at] or Latest(starts[at] + job.length.planned, "ready")
        found[at] = Latest(max(limit.at - job.length.low, starts[at]), limit.moves)
        for need in job.needs:
            limit = _limit(jobs, starts, found, need, at)
            before = done_by[need.job]
            done_by[need.job] = limit if before is None else min(before, limit)
    return tuple(found)


def _limit(jobs: tuple[Job, ...], starts: tuple[Fraction, ...], found: list[Latest], need: Link, then: int) -> Latest:
    """By when what `then` needs must be done for its sake."""
    if need.how == "stage":
        return Latest(starts[then], jobs[then].stage.key)
    if need.is_for_a_thing:
        return Latest(starts[then], need.how)
    if begins_bake(jobs, need.job, then):
        return Latest(starts[then], "oven")
    return found[then]


def begins_bake(jobs: tuple[Job, ...], before: int, at: int) -> bool:
    """Job `at` is the first phase of a bake: it needs the oven and the job before it does not."""
    return jobs[at].step.verb in BAKES and jobs[before].step.verb not in BAKES


def stands_of(jobs: tuple[Job, ...], starts: tuple[Fraction, ...]) -> tuple[Fraction | None, ...]:
    """For every job until when what waits for it may stand: the longest of its wait, and what it `may wait` after it. None
    where nothing sets an end."""
    found: list[Fraction | None] = []
    may_stand: list[Fraction | None] = []
    for at, job in enumerate(jobs):
        ends = [may_stand[need.job] for need in job.needs if not need.is_for_a_thing]
        until = min((end for end in ends if end is not None), default=None)
        found.append(until)
        may_stand.append(_may_stand(job, starts[at], until))
    return tuple(found)


def _may_stand(job: Job, start: Fraction, until: Fraction | None) -> Fraction | None:
    """Until when what a job made may stand; what takes no time hands on what stood `until` then."""
    wait = job.step.may_wait
    more = ZERO if wait is None else wait.seconds.high or wait.seconds.low or ZERO
    if waits(job):
        return None if job.length.high is None else start + job.length.high + more
    if wait is not None:
        return start + job.length.planned + more
    return None if job.length.planned else until


def waits(job: Job) -> bool:
    """A step that is over when its time is, and not when somebody is done."""
    return job.step.who.value == "waiting"
