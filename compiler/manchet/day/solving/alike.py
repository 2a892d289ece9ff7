"""Which of several things that are alike, decks or mixers, each user has."""

from __future__ import annotations

from ortools.sat.python.cp_model_helper import Literal

from manchet.day.solving.frame import Frame

Shared = list[dict[int, Literal]]
"""For each user, by the number of the thing: that it has this one."""


def share_out(frame: Frame, users: int, things: int) -> Shared:
    """Each user has exactly one. Since they are alike, the first user has the first, and nobody the third before an earlier one
    has the second: so no arrangement is looked at under two sets of numbers."""
    shared: Shared = []
    for user in range(users):
        mine = {
            thing: frame.true if min(user + 1, things) == 1 else frame.boolean()
            for thing in range(min(user + 1, things))
        }
        frame.exactly_one(list(mine.values()))
        for thing in range(2, len(mine)):
            frame.model.add_bool_or([~mine[thing], *(other[thing - 1] for other in shared if thing - 1 in other)])
        shared.append(mine)
    return shared


def number_anew(had: tuple[int, ...]) -> tuple[int, ...]:
    """Numbers of things that are alike, given out anew in the order of their first users."""
    order = list(dict.fromkeys(had))
    return tuple(order.index(number) for number in had)
