"""A day with less in it: fewer breads, a rule less, or with lateness forbidden."""

from __future__ import annotations

from collections.abc import Callable

from manchet.day.model import Day


def on_time(day: Day, bread: str = "", grace: int = 0) -> Day:
    """The same day, in which nothing may be late; or one bread by so many minutes, or all where none is named."""
    latest = [job.latest for job in day.jobs]
    for end in day.ends:
        due = end.due + (grace if bread in ("", end.bread) else 0)
        latest[end.job] = min(latest[end.job], due - end.after - day.jobs[end.job].minutes)
    jobs = zip(day.jobs, latest, strict=True)
    return day._replace(jobs=tuple(job._replace(latest=last) for job, last in jobs))


def without(day: Day, breads: frozenset[str]) -> Day:
    """The day without some breads. What they share with others stays; what nobody else has goes."""
    keep = [at for at, job in enumerate(day.jobs) if not job.breads or not breads.issuperset(job.breads)]
    number = {at: new for new, at in enumerate(keep)}
    return day._replace(
        jobs=tuple(
            day.jobs[at]._replace(breads=tuple(bread for bread in day.jobs[at].breads if bread not in breads))
            for at in keep
        ),
        waits=tuple(
            wait._replace(before=number[wait.before], after=number[wait.after])
            for wait in day.waits
            if wait.before in number and wait.after in number
        ),
        loads=tuple(
            load._replace(put=number[load.put], take=number[load.take])
            for load in day.loads
            if load.put in number and load.take in number
        ),
        fires=tuple(fire._replace(light=number[fire.light]) for fire in day.fires if fire.light in number),
        mixers=tuple(
            mixer._replace(
                gaps=tuple(
                    (number[one], number[other], minutes)
                    for one, other, minutes in mixer.gaps
                    if one in number and other in number
                )
            )
            for mixer in day.mixers
        ),
        stays=tuple(
            stay._replace(begins=number[stay.begins], ends=number[stay.ends])
            for stay in day.stays
            if stay.begins in number and stay.ends in number
        ),
        ends=tuple(end._replace(job=number[end.job]) for end in day.ends if end.job in number),
    )


def without_hands(day: Day) -> Day:
    return day._replace(jobs=tuple(job._replace(hands=0, shift="") for job in day.jobs))


def without_turns(day: Day) -> Day:
    """Each oven takes everything at once."""
    decks = max(len(day.loads), 1)
    return day._replace(ovens=tuple(oven._replace(decks=decks) for oven in day.ovens))


def without_heats(day: Day) -> Day:
    """Every floor suits every load."""
    ovens = tuple(oven._replace(climbs=None, sinks=None) for oven in day.ovens)
    return day._replace(loads=tuple(load._replace(enters=None, leaves=None) for load in day.loads), ovens=ovens)


def without_mixers(day: Day) -> Day:
    return day._replace(jobs=tuple(job._replace(mixer="") for job in day.jobs))


def without_places(day: Day) -> Day:
    return day._replace(stays=())


def without_ages(day: Day) -> Day:
    """Goods may be of any age, and there before their window."""
    return day._replace(ends=tuple(end._replace(oldest=None, not_before=None) for end in day.ends))


def without_ranges(day: Day) -> Day:
    """Every wait may be as long as one likes."""
    return day._replace(waits=tuple(wait._replace(most=None) for wait in day.waits))


RULES: dict[str, Callable[[Day], Day]] = {
    "places": without_places,
    "mixers": without_mixers,
    "ages": without_ages,
    "heats": without_heats,
    "turns": without_turns,
    "hands": without_hands,
    "ranges": without_ranges,
}
"""By what is left out; those that seldom stand in a day's way come first."""
