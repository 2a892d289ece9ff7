"""In which order stages can be made: what is used first comes first."""

from __future__ import annotations

from collections.abc import Mapping


def users_last(uses: Mapping[str, tuple[str, ...]]) -> tuple[str, ...] | None:
    """Sort stage keys so that each comes after all it uses, as the file orders them otherwise.

    `uses` gives, for each stage, the stages used in it. None if they go round in a circle.
    """
    done: dict[str, None] = {}
    waiting = list(uses)
    while waiting:
        ready = [key for key in waiting if all(used in done or used not in uses for used in uses[key])]
        if not ready:
            return None
        done[ready[0]] = None
        waiting.remove(ready[0])
    return tuple(done)


def circle(uses: Mapping[str, tuple[str, ...]]) -> tuple[str, ...]:
    """One circle of stages, each used in the next; () if there is none."""
    for start in uses:
        path = [start]
        seen = {start}
        while True:
            following = next((u for u in uses.get(path[-1], ()) if u in uses and _reaches(uses, u, start)), None)
            if following is None:
                break
            path.append(following)
            if following == start:
                return tuple(path)
            if following in seen:
                break
            seen.add(following)
    return ()


def _reaches(uses: Mapping[str, tuple[str, ...]], key: str, goal: str) -> bool:
    seen: set[str] = set()
    waiting = [key]
    while waiting:
        at = waiting.pop()
        if at == goal:
            return True
        if at not in seen:
            seen.add(at)
            waiting += uses.get(at, ())
    return False
