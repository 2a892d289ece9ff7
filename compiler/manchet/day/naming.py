"""What the words after `--done` and `--late` mean in a day: a job, a wait or a load, by its bread and what is done there."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterator, Sequence

from manchet.day.model import Day, DayJob
from manchet.diagnostics.suggest import fold, nearest
from manchet.records import NamedTuple

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
    jobs = [f"{_whose(job)}: {job.does}" for job in day.jobs]
    yield from (Named(name, job=at) for at, name in enumerate(_numbered(jobs)))
    for at, wait in enumerate(day.waits):
        if wait.what:
            yield Named(f"{_whose(day.jobs[wait.before])}: {wait.what}", wait=at)
    for at, load in enumerate(day.loads):
        yield Named(f"{load.bread}, {load.pieces} {load.noun}: bake", load=at)


def _whose(job: DayJob) -> str:
    return f"{' and '.join(job.breads)}{_of_key(job)}".removeprefix(", ")


def _of_key(job: DayJob) -> str:
    """The stage, branch, mix and load that a job is of: what its key has besides the bread and the verb."""
    first = job.does.split(",")[0]
    parts = [part for part in job.key.split("/") if not part.isdigit() and part != first and part not in job.breads]
    return "".join(f", {part}" for part in parts)


def _numbered(names: Sequence[str]) -> Iterator[str]:
    """Those that are called alike, with which of them each is."""
    met: Counter[str] = Counter()
    for name in names:
        met[name] += 1
        yield f"{name} {met[name]}" if names.count(name) > 1 else name


def _one_of(day: Day, text: str, things: Sequence[Named]) -> Named | Unnamed:
    words = fold(text).split()
    found = [one for one in things if _fits(words, one.words)]
    if len(found) > 1:
        # What is called by nothing but these words goes before what has them among others.
        found = [one for one in found if len(_parts(one.words)) == len(words)] or found
    if len(found) == 1:
        return found[0]
    if not found:
        near = nearest(fold(text), [fold(one.words) for one in things])
        known = next((one.words for one in things if near and fold(one.words) == near), "")
        theirs = [
            one.words
            for bread in day.breads
            if _fits(fold(bread).split(), text)
            for one in things
            if _fits(fold(bread).split(), one.words)
        ]
        help = f"breads of this plan: {', '.join(day.breads)}"
        if theirs:
            help = f"there is: {'; '.join(f'`{name}`' for name in theirs[:12])}"
        if known:
            help = f"did you mean `{known}`?"
        return Unnamed(f"nothing in this plan is called `{text}`", help)
    shown = "; ".join(f"`{one.words}`" for one in found[:6])
    more = f" and {len(found) - 6} more" if len(found) > 6 else ""
    return Unnamed(f"`{text}` fits {len(found)} things", f"say which: {shown}{more}")


def _fits(words: Sequence[str], name: str) -> bool:
    """Every word that was typed stands in the name."""
    parts = _parts(name)
    return bool(words) and all(word in parts for word in words)


def _parts(name: str) -> list[str]:
    return re.sub(r"[:,]", " ", fold(name)).split()
