"""One Work taken apart into moments: whatever is done by hand or machine between two waits is one.

A chain of steps (`timing.jobs.chains`) is walked from its first to its last. `After` says where one stands on the way: behind
which moment, and how much waiting has come since. What goes into an oven is walked load by load; from there on each load goes
its own way.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from fractions import Fraction

from manchet.batch.model import StageBatch
from manchet.batch.work import Work
from manchet.day.jobs import estimates
from manchet.day.jobs.moments import After, MomentMaking, Moments
from manchet.day.jobs.timing import part_of, said_range
from manchet.day.jobs.values import Finished, WorkOfDay
from manchet.formula.model import Step
from manchet.syntax.vocabulary import AT_THE_DOOR, COLD, IN_OVEN, MOVES_OUT
from manchet.timing.jobs.chains import Chain, chains_of, into_the_oven, pieces_of_mix
from manchet.timing.jobs.durations import inside, is_attended
from manchet.timing.jobs.loads import RECOVER, Doing
from manchet.timing.jobs.network import brought_by, mixes_made, used_at_once

NOTHING = Fraction(0)


def work_of_day(work: Work, already: frozenset[str] = frozenset()) -> WorkOfDay:
    """The moments of a batch, with the waits between them; `already` are keys of its stages that stand there."""
    return _Walk(work, already).all()


class _Walk:
    """Walks the chains of a Work, and hands what it meets to `Moments`."""

    def __init__(self, work: Work, already: frozenset[str]) -> None:
        self.work, self.already = work, already
        self.moments = Moments(work)
        self.done: dict[str, dict[int, tuple[After, ...]]] = {}
        """Key of a stage -> mix -> where one stands when it is made."""
        self.finished: list[Finished] = []

    def all(self) -> WorkOfDay:
        batch, mixes = self.work.batch, self.work.mixes
        for made in batch.stages:
            is_dough = made is self.work.dough
            if made.stage.key in self.already:
                self.done[made.stage.key] = {}
                continue
            stands: dict[str, dict[int, tuple[After, ...]]] = {}
            for mix in mixes_made(made, is_dough, mixes):
                trunk, *all_branches = chains_of(self.work, made, is_dough, mix)
                branches = [chain for chain in all_branches if pieces_of_mix(self.work, chain.branch, 0)]
                making = MomentMaking(made, "", mix, is_dough, self._noun(is_dough))
                after = self._walk(trunk.steps, (), making, is_first=True)
                for chain in branches:
                    stands.setdefault(chain.branch, {})[mix] = self._walk(
                        chain.steps, _forked(after), making._replace(branch=chain.branch, noun=chain.branch)
                    )
                if not branches:
                    stands.setdefault("", {})[mix] = after
                ends = tuple(one for by_mix in stands.values() for one in by_mix.get(mix, ()))
                self.done.setdefault(made.stage.key, {})[mix] = ends
            if is_dough and mixes.number > 1:
                for chain in into_the_oven(self.work, made):
                    if chain.branch and not pieces_of_mix(self.work, chain.branch, 0):
                        continue
                    self._goes_on(chain, made, stands)
            elif is_dough:
                for noun, by_mix in stands.items():
                    self._finish(noun, by_mix.get(0, ()))
        return self.moments.finish(self.work.formula.name, tuple(self.finished))

    def _noun(self, is_dough: bool) -> str:
        pieces = self.work.batch.pieces
        return pieces[0].noun if is_dough and pieces else ""

    def _goes_on(self, chain: Chain, made: StageBatch, stands: dict[str, dict[int, tuple[After, ...]]]) -> None:
        """Of several mixes: what is done with all pieces, load by load."""
        by_mix = stands.get(chain.branch) or stands.get("") or {}
        making = MomentMaking(made, chain.branch, 0, True, chain.branch or self._noun(True))
        entry = tuple(one._replace(mix=mix) for mix, afters in by_mix.items() for one in _forked(afters))
        self._finish(chain.branch, self._walk(chain.steps, entry, making))

    def _finish(self, noun: str, afters: Iterable[After]) -> None:
        for after in afters:
            moment = self.moments.seconds(after.moment)
            pieces = after.pieces or pieces_of_mix(self.work, noun, 0)
            self.finished.append(Finished(noun, after.moment, pieces, max(after.low - moment, NOTHING)))

    def _walk(
        self, doings: Sequence[Doing], entry: tuple[After, ...], making: MomentMaking, is_first: bool = False
    ) -> tuple[After, ...]:
        """The way through these steps from `entry`; where one stands at their end, once for each load."""
        after = entry
        if is_first:
            after = self._weighed(making)
        at = 0
        while at < len(doings):
            doing = doings[at]
            if doing.loads > 1 or _is_oven(doing.step):
                loads, at = _loads_from(doings, at)
                rest = doings[at:]
                share = sum((load[0].pieces for load in loads), NOTHING)
                ends: list[After] = []
                for number, load in enumerate(loads, 1):
                    mine = making._replace(load=number if len(loads) > 1 else making.load)
                    out = self._bake(load, _of_load(after, load), mine)
                    part = load[0].pieces / share if share else Fraction(1)
                    tail = tuple(
                        one._replace(pieces=one.pieces * part, load=0, loads=0, begins=False, goes_in=False, of=())
                        for one in rest
                        if one.step.verb != RECOVER
                    )
                    out = self._walk(tail, out, mine)
                    ends += [one._replace(pieces=load[0].pieces) for one in out]
                return tuple(ends)
            after = self._step(doing, after, making, leads=_leads_to_oven(doings, at))
            at += 1
        return after

    def _weighed(self, making: MomentMaking) -> tuple[After, ...]:
        """The moment at which a stage is weighed, with what it takes from the others."""
        made = making.made
        if not made.stage.steps or not made.weighed:
            return tuple(self._ready(used_at_once(made), making.mix))
        weighing = self.moments.weighing(making)
        ready = self._ready(used_at_once(made), making.mix)
        for one in ready:
            self.moments.gap(one, weighing.moment, NOTHING)
        weighing = self._carry(ready, weighing, making)
        for key in used_at_once(made) - self.done.keys():
            self.moments.uses(key, weighing.moment, NOTHING)
        return (weighing,)

    def _ready(self, keys: Iterable[str], mix: int) -> list[After]:
        made = (self.done.get(key, {}) for key in sorted(keys))
        return [
            one._replace(is_open=False, of_stage=True)
            for by_mix in made
            for number, afters in by_mix.items()
            if not mix or number in (0, mix)
            for one in afters
        ]

    def _step(self, doing: Doing, after: tuple[After, ...], making: MomentMaking, leads: bool) -> tuple[After, ...]:
        step = doing.step
        if not is_attended(step):
            return self._wait(doing, after, making)
        part = part_of(doing, self.work)
        if step.verb in MOVES_OUT and after and not making.is_dough and not any(one.is_open for one in after):
            return tuple(one._replace(carried=(*one.carried, part)) for one in after)
        begins_anew = leads and step.verb in AT_THE_DOOR and not self.moments.is_fresh(after)
        stood = self.moments.attend(part, after, making, apart=begins_anew)
        begun = stood.low - part.seconds
        ready = self._ready(brought_by(step), making.mix)
        for one in ready:
            self.moments.gap(one, stood.moment, begun)
        for key in brought_by(step) | ({step.bath} if step.bath else set()):
            if key and key not in self.done:
                self.moments.uses(key, stood.moment, begun)
        self.moments.stands(step, stood.moment, doing.pieces, making)
        return (self._carry(ready, stood, making),)

    def _carry(self, used: Iterable[After], stood: After, making: MomentMaking) -> After:
        """What is kept back of a stage is taken out of it in the moment that uses it."""
        for part in (part for one in used for part in one.carried):
            stood = self.moments.attend(part, (stood,), making)
        return stood

    def _wait(self, doing: Doing, after: tuple[After, ...], making: MomentMaking) -> tuple[After, ...]:
        step = doing.step
        if not after:
            after = (self.moments.weighing(making),)
        low, high = said_range(step)
        may = step.may_wait
        more = NOTHING if may is None else may.seconds.high or may.seconds.low or NOTHING
        place = self.moments.cold_place(step, doing.pieces)
        found = []
        for one in after:
            folds = tuple(self._fold(event.work, event.after, one, making) for event in inside(step))
            found.append(
                one._replace(
                    low=one.low + low,
                    high=None if high is None or one.high is None else one.high + high,
                    may=one.may + more,
                    what=f"{one.what}, {step.verb}" if one.what else step.verb,
                    is_cold=one.is_cold or step.verb in COLD,
                    is_open=False,
                    steps=(*one.steps, step),
                    folds=(*one.folds, *folds),
                    places=(*one.places, *place),
                )
            )
        return tuple(found)

    def _fold(self, work: str, seconds: Fraction, after: After, making: MomentMaking) -> str:
        """A fold inside a wait: a moment of its own."""
        early, late = estimates.FOLD_EARLY, estimates.FOLD_LATE
        low = max(after.low + seconds - early, self.moments.seconds(after.moment))
        high = after.low + seconds + late
        return self.moments.inside(work, Fraction(estimates.FOLD), after.moment, low, high, making)

    # ---- the oven

    def _bake(self, load: Sequence[Doing], after: tuple[After, ...], making: MomentMaking) -> tuple[After, ...]:
        """One load, with what is done to its pieces before it goes in and between its phases."""
        first = next(at for at, doing in enumerate(load) if _is_oven(doing.step))
        for at, doing in enumerate(load[:first]):
            after = self._step(doing, after, making, leads=at == 0)
        phases = load[first:]
        put = self.moments.put_in(phases[0], after, making)
        self.moments.goes_in(put.moment, phases[0], making)
        return (self.moments.baked(put, phases, making),)


def _forked(after: tuple[After, ...]) -> tuple[After, ...]:
    """Several ways go on from here: none of them is the same moment any more."""
    return tuple(one._replace(is_open=False) for one in after)


def _is_oven(step: Step) -> bool:
    return step.verb in IN_OVEN


def _loads_from(doings: Sequence[Doing], at: int) -> tuple[list[list[Doing]], int]:
    """The doings of each load from here on, and where the rest begins."""
    if doings[at].loads <= 1:
        last = at
        for number in range(at + 1, len(doings)):
            if _is_oven(doings[number].step):
                last = number
            elif not is_attended(doings[number].step):
                break
        return [list(doings[at : last + 1])], last + 1
    loads: dict[int, list[Doing]] = {}
    while at < len(doings) and (doings[at].loads > 1 or doings[at].step.verb == RECOVER):
        if doings[at].step.verb != RECOVER:
            if doings[at].begins and doings[at].load in loads:
                break
            loads.setdefault(doings[at].load, []).append(doings[at])
        at += 1
    return list(loads.values()), at


def _of_load(after: tuple[After, ...], load: Sequence[Doing]) -> tuple[After, ...]:
    """Where the pieces of a load stand: those of the mixes that are in it, and no more of each than the load takes."""
    taken = {one.mix: one.pieces for one in load[0].of}
    mine = tuple(one for one in after if not taken or one.mix in (0, *taken)) or after
    mine = tuple(_no_more_than(taken.get(one.mix, load[0].pieces), one) for one in mine)
    return _forked(mine) if len(mine) > 1 or load[0].loads > 1 else mine


def _no_more_than(pieces: Fraction, after: After) -> After:
    """What waits, where it waits for one load of several."""
    if not pieces:
        return after
    return after._replace(places=tuple((place, min(number, pieces)) for place, number in after.places))


def _leads_to_oven(doings: Sequence[Doing], at: int) -> bool:
    """From here on nothing is done but what belongs to loading."""
    for doing in doings[at:]:
        if _is_oven(doing.step):
            return True
        if doing.step.verb not in AT_THE_DOOR:
            return False
    return False
