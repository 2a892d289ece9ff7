"""What the words after `--done` and `--late` mean in a day: a job, a wait or a load, by its bread and what is done there."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterator, Sequence

from manchet.day.model import Day, DayJob, DayLoad, DayWait
from manchet.diagnostics.suggest import fold, nearest
from manchet.records import NamedTuple

MOST_SHOWN = 8
"""Things that words may mean which are shown. Our own rule."""
LATE_BY = re.compile(r"(?P<words>.*?)[\s,]+(?:by\s+)?(?P<number>\d{1,4})\s*(?P<unit>min|mins|minutes|h|hours?)")


class Named(NamedTuple):
    """One thing that words can mean: just one of the three numbers is not None."""

    words: str
    """As it is called in full: "Ebb rye: divide, shape"."""
    job: int | None = None
    wait: int | None = None
    load: int | None = None


class Unnamed(NamedTuple):
    """Why words name nothing, or more than one thing."""

    message: str
    help: str


def minutes_late(text: str) -> tuple[str, int] | None:
    """`Gangway loaf ferment 25 min` as what is late, and minutes; None where it does not end in them."""
    found = LATE_BY.fullmatch(text.strip())
    if found is None:
        return None
    return found["words"], int(found["number"]) * (60 if found["unit"].startswith("h") else 1)


def job_named(day: Day, text: str) -> Named | Unnamed:
    """The job that words name."""
    return _one_of(day, text, [one for one in _named(day) if one.job is not None])


def thing_named(day: Day, text: str) -> Named | Unnamed:
    """The job, wait or load that words name: a wait by what the dough does in it, a load by `bake`."""
    return _one_of(day, text, list(_named(day)))


def _named(day: Day) -> Iterator[Named]:
    """No two by the same words: each can be typed as it is called."""
    things = [
        *(Named(f"{_whose(job)}: {job.does}", job=at) for at, job in enumerate(day.jobs)),
        *(Named(_of_wait(day, wait), wait=at) for at, wait in enumerate(day.waits) if wait.what),
        *(Named(_of_load(load), load=at) for at, load in enumerate(day.loads)),
    ]
    names = _numbered([fold(one.words) for one in things])
    return (
        one._replace(words=f"{one.words} {number}" if number else one.words)
        for one, number in zip(things, names, strict=True)
    )


def _of_wait(day: Day, wait: DayWait) -> str:
    """By what the dough does in it; of what is kept until it is used by the word for that."""
    whose = _whose(day.jobs[wait.before])
    return f"{whose}: {'wait' if wait.what in (whose, *day.jobs[wait.before].breads) else wait.what}"


def _of_load(load: DayLoad) -> str:
    return f"{load.bread}, {load.pieces} {load.noun}: bake" if load.pieces else f"{load.bread}: bake"


def _whose(job: DayJob) -> str:
    if not job.breads:
        return job.key.partition("/")[0]
    return f"{' and '.join(job.breads)}{_of_key(job)}".removeprefix(", ")


def _of_key(job: DayJob) -> str:
    """The stage, branch, mix and load that a job is of: what its key has besides the bread and the verb."""
    first = job.does.split(",")[0]
    parts = [part for part in job.key.split("/") if not part.isdigit() and part != first and part not in job.breads]
    return "".join(f", {part}" for part in parts)


def _numbered(names: Sequence[str]) -> Iterator[int]:
    """Of those that are called alike, which of them each is; 0 for all others."""
    all_met, met = Counter(names), Counter[str]()
    for name in names:
        met[name] += 1
        yield met[name] if all_met[name] > 1 else 0


def _one_of(day: Day, text: str, things: Sequence[Named]) -> Named | Unnamed:
    words = _parts(text)
    found = [one for one in things if _fits(words, one.words)]
    if len(found) > 1:
        # What is called by nothing but these words goes before what has them among others, and just so before any.
        found = [one for one in found if len(_parts(one.words)) == len(words)] or found
        found = [one for one in found if _parts(one.words) == words] or found
    if len(found) == 1:
        return found[0]
    if not found:
        near = nearest(fold(text), [fold(one.words) for one in things])
        known = next((one.words for one in things if near and fold(one.words) == near), "")
        theirs = [
            one.words
            for bread in day.breads
            if _fits(_parts(bread), text)
            for one in things
            if _fits(_parts(bread), one.words)
        ]
        help = f"breads of this plan: {', '.join(day.breads)}"
        if theirs:
            help = f"there is: {'; '.join(f'`{name}`' for name in theirs[:12])}"
        if known:
            help = f"did you mean `{known}`?"
        return Unnamed(f"nothing in this plan is called `{text}`", help)
    shown = "; ".join(f"`{one.words}`" for one in found[:MOST_SHOWN])
    more = f" and {len(found) - MOST_SHOWN} more" if len(found) > MOST_SHOWN else ""
    return Unnamed(f"`{text}` fits {len(found)} things", f"say which: {shown}{more}")


def _fits(words: Sequence[str], name: str) -> bool:
    """Every word that was typed stands in the name."""
    parts = _parts(name)
    return bool(words) and all(word in parts for word in words)


def _parts(name: str) -> list[str]:
    return re.sub(r"[:,]", " ", fold(name)).split()
