"""How clashes are put: lists and jobs."""

from __future__ import annotations

from collections.abc import Sequence

from manchet.day.model import Day

MOST_NAMES = 5


def and_list(names: Sequence[str], last: str = "and") -> str:
    """ "Ebb rye", "Ebb rye and Mudlark", "Ebb rye, Mudlark and Tern loaf"."""
    if len(names) < 2:
        return "".join(names)
    return f"{', '.join(names[:-1])} {last} {names[-1]}"


def some(breads: Sequence[str]) -> str:
    """Their names, as long as these can be taken in: "Ebb rye and Mudlark", "12 breads"."""
    return and_list(breads) if len(breads) <= MOST_NAMES else f"{len(breads)} breads"


def job_of(day: Day, number: int) -> str:
    """ "Ebb rye (divide, shape)"."""
    job = day.jobs[number]
    return f"{and_list(job.breads)} ({job.does})" if job.breads else job.does


def breads_of(day: Day, jobs: Sequence[int]) -> tuple[str, ...]:
    """Each once, in the order of the jobs."""
    return tuple(dict.fromkeys(bread for job in jobs for bread in day.jobs[job].breads))
