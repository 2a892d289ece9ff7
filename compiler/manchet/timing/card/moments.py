"""The card's lines put together: a moment is one clock at which somebody must be there, for one dough or branch.

It takes in everything that is done until the dough is left alone for a while. What is done in several mixes is one moment with
a clock for each; what is baked in several loads is one table.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from datetime import datetime, timedelta

from manchet.formula.bake_events import OPEN, SHUT, STEAM
from manchet.formula.model import Who
from manchet.records import NamedTuple
from manchet.syntax.vocabulary import BOILS, COLD, IN_OVEN
from manchet.timing.card.values import CardRow
from manchet.timing.jobs.loads import RECOVER

LEFT_ALONE = timedelta(minutes=10)
"""A wait from this long on ends a moment: whoever waited goes and does something else. Our own rule."""
STAYS = timedelta(minutes=20)
"""A wait up to this long does not, if another wait follows it at once: nobody has to be there between the two. Our own rule."""
DOUGH = "dough"
FIRE = frozenset({"preheat", "fire out"})
READY = "ready"
OUT = "take out of oven"
EVENTS = frozenset({STEAM, OPEN, SHUT})
AT_LOADING = timedelta(minutes=6)
"""Steam or a damper so soon after a load is in are seen to by whoever put it in. Our own rule."""


class MomentLine(NamedTuple):
    """What is done with one dough or branch, in order; a wait at its end is the last of `rows`."""

    stage: str
    branch: str
    rows: tuple[CardRow, ...]
    first: bool
    """Nothing was done in this stage before: all that is weighed into its bowl goes in here."""
    start_by: datetime | None
    sharp: bool

    @property
    def wait(self) -> CardRow | None:
        """What it is left in at the end of the moment."""
        return next((row for row in reversed(self.rows) if is_left(row)), None)


class MixClock(NamedTuple):
    """When a moment comes for one of several mixes."""

    mix: int
    at: datetime


class Moment(NamedTuple):
    """One clock. With several mixes it is that of the first, and `mixes` has all."""

    start: datetime
    elapsed: int
    """Minutes since the first line of the card."""
    lines: tuple[MomentLine, ...]
    mixes: tuple[MixClock, ...] = ()

    @property
    def start_by(self) -> datetime | None:
        """The latest that moves nothing else; None inside a wait, where the file says when."""
        return min((line.start_by for line in self._limits if line.start_by is not None), default=None)

    @property
    def sharp(self) -> bool:
        """There is no room: a minute late moves something, or spoils it."""
        return any(line.sharp for line in self._limits)

    @property
    def _limits(self) -> list[MomentLine]:
        """Not those that only must be done before another of these: whoever is late is late for both."""
        here = {line.stage or DOUGH for line in self.lines}
        return [line for line in self.lines if line.rows[0].moves not in here - {line.stage or DOUGH}]


class LoadTurn(NamedTuple):
    """One load of an oven: what is done before it goes in, its phases in order, and when it is out."""

    number: int
    rows: tuple[CardRow, ...]
    into: datetime
    out: datetime


class LoadTable(NamedTuple):
    """A bake in several loads. It stands where the first of them goes in."""

    start: datetime
    elapsed: int
    branch: str
    loads: tuple[LoadTurn, ...]


def moments_of(rows: Sequence[CardRow]) -> tuple[Moment | LoadTable, ...]:
    """The rows of a card, in order of time, as moments and tables of loads."""
    of_loads = [row for row in rows if row.loads > 1]
    moments = _joined(_moments([row for row in rows if row.loads < 2]))
    return tuple(sorted([*moments, *_tables(of_loads)], key=lambda one: (one.start, isinstance(one, LoadTable))))


def is_left(row: CardRow) -> bool:
    """A wait so long that whoever is there goes away. What boils is not left."""
    waits = row.job == "step" and row.step is not None and row.who is Who.WAITING and row.step.verb not in BOILS
    return waits and row.end - row.begins >= LEFT_ALONE


def start_by(row: CardRow) -> datetime | None:
    """Until when a row may begin with nothing else moved, and with what waits for it no longer than the file lets it. None
    where only the end moves with it: what is left alone then is in nobody's way.

    Where the file sets a wait one figure and no more, it says nothing of longer; but in an oven every minute bakes.
    """
    in_oven = row.step is not None and row.step.verb in IN_OVEN
    if row.job == OUT:
        return row.start
    if row.moves == READY and not in_oven:
        return None
    if row.latest is None or row.stands_until is None:
        return row.latest
    if row.stands_until > row.start or row.baked_before:
        return min(row.latest, row.stands_until)
    return row.latest


# ---- moments -------------------------------------------------------------------------------------

Rows = tuple[CardRow, ...]


def _moments(rows: Sequence[CardRow]) -> Iterator[Moment]:
    """Those of each stage and branch; what is alike in several mixes is one."""
    threads: dict[tuple[str, str, str], dict[int, list[CardRow]]] = {}
    for row in rows:
        if row.step is not None and row.step.verb != RECOVER:
            fire = row.place if row.job in FIRE else ""
            threads.setdefault((row.stage, row.branch, fire), {}).setdefault(row.mix, []).append(row)
    for (stage, branch, _), mixes in threads.items():
        first = True
        for alike in _alike(mixes):
            for segment in _cut(alike):
                fires = segment[0][0].job in FIRE
                yield _moment(stage, branch, segment, first and not fires)
                first = False


def _alike(mixes: Mapping[int, list[CardRow]]) -> list[list[Rows]]:
    """What is done once, and what is done in each mix: together where they do the same, else each mix by itself."""
    once = [[tuple(rows)] for mix, rows in mixes.items() if not mix]
    each = [tuple(rows) for mix, rows in mixes.items() if mix]
    same = len({tuple((row.job, row.number, row.step and row.step.place) for row in rows) for rows in each}) == 1
    groups = [*once, *([each] if same else [[rows] for rows in each])]
    return sorted(groups, key=lambda group: group[0][0].start)


def _cut(alike: Sequence[Rows]) -> Iterator[list[Rows]]:
    """The rows of mixes that do the same, cut at the same places: where any of them is left alone."""
    begin = 0
    for at in range(1, len(alike[0]) + 1):
        if at == len(alike[0]) or any(_parts(rows[begin:at], rows[at]) for rows in alike):
            yield [rows[begin:at] for rows in alike]
            begin = at


def _parts(so_far: Rows, row: CardRow) -> bool:
    """Whether a row begins a moment of its own after these."""
    before = so_far[-1]
    if row.job in EVENTS and so_far[0].job not in EVENTS and row.start - _gone_in(so_far) <= AT_LOADING:
        return False
    if row.job in EVENTS and row.start == before.start:
        return False
    if row.job != "step" or before.job not in EVENTS | {"step", OUT}:
        return True
    if any(is_left(one) for one in so_far[:-1]) and not is_left(before):
        return True
    stays = before.end - before.begins <= STAYS and _is_wait_in_the_room(row)
    return (is_left(before) and not stays) or row.start - before.end >= LEFT_ALONE


def _gone_in(so_far: Rows) -> datetime:
    """When the last piece went in of what is in the oven now."""
    return next((row.begins for row in reversed(so_far) if row.job == "step"), so_far[0].start)


def _is_wait_in_the_room(row: CardRow) -> bool:
    return is_left(row) and row.step is not None and row.step.verb not in COLD | IN_OVEN


def _moment(stage: str, branch: str, segment: Sequence[Rows], first: bool) -> Moment:
    rows = segment[0]
    until = start_by(rows[0])
    sharp = any((end := start_by(own[0])) is not None and end <= own[0].start for own in segment)
    clocks = tuple(MixClock(own[0].mix, own[0].start) for own in segment if own[0].mix)
    return Moment(rows[0].start, rows[0].elapsed, (MomentLine(stage, branch, rows, first, until, sharp),), clocks)


def _joined(moments: Iterable[Moment]) -> list[Moment]:
    """Two doughs at one clock are two lines of one moment, and so are the sorts of piece that whoever divides goes on with;
    what is done with the fire comes first."""
    found: list[Moment] = []
    for moment in sorted(moments, key=lambda one: (one.start, one.lines[0].rows[0].job not in FIRE, len(one.mixes))):
        before = found[-1] if found and (found[-1].start == moment.start or _goes_on(found[-1], moment)) else None
        if before is not None and (not before.mixes or before.mixes == moment.mixes):
            found[-1] = before._replace(lines=(*before.lines, *moment.lines), mixes=moment.mixes)
        else:
            found.append(moment)
    return found


def _goes_on(before: Moment, moment: Moment) -> bool:
    """The dough was divided into sorts, and one of them is begun at once."""
    divided = (line for line in before.lines if not line.branch and not line.stage)
    ends = [line.rows[-1].end for line in divided if line.rows[-1].step is not None and line.wait is None]
    return moment.start in ends and all(line.branch for line in moment.lines)


# ---- loads ---------------------------------------------------------------------------------------


def _tables(rows: Sequence[CardRow]) -> Iterator[LoadTable]:
    """A table for each bake of each branch."""
    bakes: dict[tuple[str, int], list[list[CardRow]]] = {}
    for row in rows:
        own = bakes.setdefault((row.branch, row.mix), [[]])
        if row.load == 1 and any(one.job == OUT and one.load == one.loads for one in own[-1]):
            own.append([])
        own[-1].append(row)
    for (branch, _), tables in bakes.items():
        for table in tables:
            turns = tuple(_turn(load, table) for load in sorted({row.load for row in table}))
            yield LoadTable(table[0].start, table[0].elapsed, branch, turns)


def _turn(number: int, rows: Sequence[CardRow]) -> LoadTurn:
    own = tuple(row for row in rows if row.load == number)
    into = next(row.start for row in own if row.step is not None and row.job == "step" and row.step.verb in IN_OVEN)
    return LoadTurn(number, own, into, max(row.end for row in own if row.job != OUT))
