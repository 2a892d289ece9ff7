"""Fridges, provers, baskets, trays: what holds so much and no more."""

from __future__ import annotations

from collections.abc import Iterator

from manchet.day.model import Day, DayPlace, Stay
from manchet.day.posting.choices import Choice, Finder, Rule, SoFar
from manchet.day.posting.net import Origin, Tie


def place_rules(day: Day) -> Iterator[Rule]:
    for number, place in enumerate(day.places):
        stays = tuple(stay for stay in day.stays if stay.place == place.name)
        if place.away or sum(stay.takes for stay in stays) > place.holds:
            jobs = tuple(dict.fromkeys(job for stay in stays for job in (stay.begins, stay.ends)))
            yield Rule(jobs, _finder(day, number, place, stays))


def _finder(day: Day, number: int, place: DayPlace, stays: tuple[Stay, ...]) -> Finder:
    zero = len(day.jobs)
    why = Origin("place", number)

    def out(stay: Stay) -> int:
        return day.jobs[stay.ends].minutes

    def ways_out(now: SoFar) -> tuple[Choice, ...] | None:
        starts = now.latest
        for gone, back in place.away:
            for stay in stays:
                if starts[stay.begins] < back and gone < starts[stay.ends] + out(stay):
                    return (
                        Choice((Tie(stay.ends, zero, out(stay) - gone, why),)),
                        Choice((Tie(zero, stay.begins, back, why),)),
                    )
        there: list[Stay] = []
        for stay in sorted(stays, key=lambda stay: -starts[stay.ends] - out(stay)):
            end = starts[stay.ends] + out(stay)
            there = [other for other in there if starts[other.begins] < end]
            there.append(stay)
            if sum(other.takes for other in there) > place.holds:
                return tuple(
                    Choice((Tie(one.ends, other.begins, out(one), why),))
                    for one in there
                    for other in there
                    if one is not other or len(there) == 1
                )
        return None

    return ways_out
