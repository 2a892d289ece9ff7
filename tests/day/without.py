"""A day with less in it."""

from __future__ import annotations

from manchet.day.model import Day


def without(day: Day, bread: str) -> Day:
    """The day with all that only this bread wants left out."""
    kept = [at for at, job in enumerate(day.jobs) if job.breads != (bread,)]
    number = {job: at for at, job in enumerate(kept)}
    return day._replace(
        jobs=tuple(day.jobs[at] for at in kept),
        waits=tuple(
            wait._replace(before=number[wait.before], after=number[wait.after])
            for wait in day.waits
            if {wait.before, wait.after} <= {*kept}
        ),
        loads=tuple(
            load._replace(put=number[load.put], take=number[load.take]) for load in day.loads if load.bread != bread
        ),
        fires=tuple(fire._replace(light=number[fire.light]) for fire in day.fires),
        mixers=tuple(
            mixer._replace(
                gaps=tuple((number[one], number[two], gap) for one, two, gap in mixer.gaps if {one, two} <= {*kept})
            )
            for mixer in day.mixers
        ),
        stays=tuple(
            stay._replace(begins=number[stay.begins], ends=number[stay.ends])
            for stay in day.stays
            if {stay.begins, stay.ends} <= {*kept}
        ),
        ends=tuple(end._replace(job=number[end.job]) for end in day.ends if end.bread != bread),
    )
