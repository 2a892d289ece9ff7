"""A smallest set of breads and rules that clash: one after the other is left out, and stays out where the rest still clashes."""

from __future__ import annotations

from itertools import combinations

from manchet.day.checking import check
from manchet.day.clashes.asking import FOR_A_SET, Inquiry
from manchet.day.clashes.less import RULES, on_time, without
from manchet.day.clashes.values import DayClash, Hour
from manchet.day.clashes.words import and_list, breads_of, job_of
from manchet.day.clock import hours_and_minutes
from manchet.day.model import Day, Timetable
from manchet.records import NamedTuple

MOST_BREADS = 5
"""A clash of more breads than these tells nobody anything."""


class ClashCore(NamedTuple):
    """Breads that can't all be done, and the rules that stand against them: leave out any, and it can be done."""

    breads: tuple[str, ...]
    rules: tuple[str, ...]
    """Of `RULES`."""
    day: Day
    """These breads under these rules alone, on time."""


def smallest(day: Day, inquiry: Inquiry) -> ClashCore | None:
    """None where the time was up, or too many breads clash."""
    breads = _smallest_breads(day, inquiry)
    if len(breads) > MOST_BREADS or inquiry.is_over(FOR_A_SET):
        return None
    core = on_time(without(day, frozenset(day.breads) - set(breads)))
    rules = []
    for name, leave_out in RULES.items():
        less = leave_out(core)
        if less == core:
            continue
        if inquiry.plan(less) is None:
            core = less
        else:
            rules.append(name)
    if inquiry.plan(core) is not None:
        return None
    return ClashCore(tuple(breads), tuple(rules), core)


def _smallest_breads(day: Day, inquiry: Inquiry) -> list[str]:
    """Halves are tried first, then quarters, and at last each bread by itself."""
    kept = list(day.breads)
    size = len(kept) // 2
    while size >= 1:
        at = 0
        while at < len(kept) and not inquiry.is_over(FOR_A_SET):
            fewer = kept[:at] + kept[at + size :]
            if fewer and inquiry.plan(on_time(without(day, frozenset(day.breads) - set(fewer)))) is None:
                kept = fewer
            else:
                at += size
        size //= 2
    return kept


def clash_of(core: ClashCore, inquiry: Inquiry, hour: Hour) -> DayClash:
    names = and_list(core.breads)
    told = [words for rule in core.rules for words in [_stands_against(core, rule, inquiry, hour)] if words]
    if len(core.breads) == 1:
        head = f"{names} can't be done on time, even with nothing else to do"
    elif len(core.breads) == 2:
        head = f"{names} can't both be done on time"
    else:
        head = f"{names} can't all be done on time"
    if not inquiry.is_certain:
        head = f"no plan was found that has {names} on time, which does not prove that there is none"
    return DayClash(head, core.breads, "searched", inquiry.is_certain, tuple(told))


def _stands_against(core: ClashCore, rule: str, inquiry: Inquiry, hour: Hour) -> str:
    """What it would come to without this rule."""
    timetable = inquiry.plan(RULES[rule](core.day))
    if timetable is None:
        return ""
    if rule == "hands":
        return _nobody_there(core.day, timetable, hour)
    if rule == "ages":
        return _of_the_wrong_age(core.day, timetable, hour)
    if rule == "turns":
        return _both_in_the_oven(core.day, timetable, hour)
    return _broken(core.day, timetable, rule, hour)


def _nobody_there(day: Day, timetable: Timetable, hour: Hour) -> str:
    for number, job in enumerate(day.jobs):
        start = timetable.starts[number]
        if job.hands and not any(s.begins <= start and start + job.minutes <= s.ends for s in day.shifts):
            gone = [shift.ends for shift in day.shifts if shift.ends < start + job.minutes]
            come = [shift.begins for shift in day.shifts if shift.begins > start]
            if gone and come and max(gone) < min(come):
                when = f"from {hour(max(gone))} to {hour(min(come))} nobody is there"
            elif come and not gone:
                when = f"nobody is there before {hour(min(come))}"
            elif gone and not come:
                when = f"nobody is there after {hour(max(gone))}"
            else:
                when = "nobody who is there then can do it"
            return f"{job_of(day, number)} would begin at {hour(start)}, and {when}"
    for one, other in combinations(range(len(day.jobs)), 2):
        first, second = timetable.starts[one], timetable.starts[other]
        both = day.jobs[one].hands and day.jobs[other].hands
        if both and first < second + day.jobs[other].minutes and second < first + day.jobs[one].minutes:
            return f"{job_of(day, one)} and {job_of(day, other)} would both want hands at {hour(max(first, second))}"
    return "there are not the hands for it"


def _both_in_the_oven(day: Day, timetable: Timetable, hour: Hour) -> str:
    for one, other in combinations(day.loads, 2):
        first, second = timetable.starts[one.put], timetable.starts[other.put]
        if one.oven == other.oven and first < second + other.stays and second < first + one.stays:
            return f"{one.bread} and {other.bread} would both be in {one.oven} at {hour(max(first, second))}"
    return "their loads would follow each other too closely in the oven"


def _of_the_wrong_age(day: Day, timetable: Timetable, hour: Hour) -> str:
    for end in day.ends:
        out = timetable.starts[end.job] + day.jobs[end.job].minutes
        if end.not_before is not None and out + end.after < end.not_before:
            return f"{end.bread} would be {end.word} at {hour(out + end.after)}, sooner than {hour(end.not_before)}"
        if end.oldest is not None and end.due - out > end.oldest:
            old, most = hours_and_minutes(end.due - out), hours_and_minutes(end.oldest)
            return f"{end.bread} would be {old} old at {hour(end.due)}, and may be {most}"
    return ""


REFUSED = {
    "places": ("place",),
    "mixers": ("mixer",),
    "heats": ("floor", "deck"),
    "ranges": ("wait",),
}
"""What the checker calls the rules."""


def _broken(day: Day, timetable: Timetable, rule: str, hour: Hour) -> str:
    refusal = next((found for found in check(day, timetable) if found.rule in REFUSED[rule]), None)
    if refusal is None:
        return ""
    at = "" if refusal.minute is None else hour(refusal.minute)
    whose = and_list(
        breads_of(day, refusal.jobs) or tuple(dict.fromkeys(day.loads[load].bread for load in refusal.loads))
    )
    match rule:
        case "places":
            return f"at {at} more would be in {refusal.where} than it holds"
        case "mixers":
            return f"{whose} would be mixed at {at}, when no mixer is free and clean"
        case "heats":
            return f"{whose} would go in at {at}, when the oven is not in its heats"
        case _:
            return f"{whose} would have waited longer at {at} than it may"
