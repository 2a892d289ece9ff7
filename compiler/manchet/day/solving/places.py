"""Places: fridges, provers, baskets, trays, of which there are only so many."""

from __future__ import annotations

from ortools.sat.python import cp_model

from manchet.day.model import Stay
from manchet.day.solving.frame import Frame


def add_places(frame: Frame) -> None:
    for place in frame.day.places:
        stays = [stay for stay in frame.day.stays if stay.place == place.name and stay.takes > 0]
        if not place.away and sum(stay.takes for stay in stays) <= place.holds:
            continue
        intervals = [_interval(frame, stay) for stay in stays] + [frame.fixed(*away) for away in place.away]
        takes = [stay.takes for stay in stays] + [place.holds] * len(place.away)
        frame.model.add_cumulative(intervals, takes, place.holds)


def _interval(frame: Frame, stay: Stay) -> cp_model.IntervalVar:
    start, end = frame.starts[stay.begins], frame.starts[stay.ends] + frame.length(stay.ends)
    if stay.begins == stay.ends:
        return frame.interval(stay.begins)
    least, most = frame.apart(stay.begins, stay.ends)
    size = frame.model.new_int_var(max(least + frame.length(stay.ends), 0), most + frame.length(stay.ends), "")
    return frame.model.new_interval_var(start, size, end, "")
