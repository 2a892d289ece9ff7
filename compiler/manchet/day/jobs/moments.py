"""Moments as they are made, one part after another, with the waits that lead to them and what they keep in hand."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from fractions import Fraction
from itertools import pairwise

from manchet.batch.model import StageBatch
from manchet.batch.work import Work
from manchet.day.jobs import estimates
from manchet.day.jobs.oven_times import events_of, seconds_in_oven
from manchet.day.jobs.timing import part_beside, part_of
from manchet.day.jobs.values import (
    BowlHeld,
    Finished,
    Gap,
    MomentPart,
    OvenTurn,
    Standing,
    Using,
    WorkMoment,
    WorkOfDay,
)
from manchet.figures.oven.curve import oven_of
from manchet.formula.model import Step
from manchet.formula.nouns import same_noun
from manchet.kitchen.model import Cold
from manchet.records import NamedTuple
from manchet.syntax.things import GOES_IN_OVEN
from manchet.syntax.vocabulary import AT_THE_DOOR, BOILS, COLD
from manchet.timing.jobs.handling import loading, taking_out, weighing
from manchet.timing.jobs.loads import Doing
from manchet.timing.jobs.places import mixer_of

NOTHING = Fraction(0)


class MomentMaking(NamedTuple):
    """What the moments of one making of a stage have in common."""

    made: StageBatch
    branch: str
    mix: int
    is_dough: bool
    noun: str = ""
    """Of its pieces; "" where it has none."""
    load: int = 0


class After(NamedTuple):
    """Where one stands: behind a moment, and between `low` and `high` seconds from its beginning."""

    moment: str
    low: Fraction
    high: Fraction | None
    may: Fraction = NOTHING
    what: str = ""
    is_cold: bool = False
    is_open: bool = True
    """The moment can go on: nothing has been waited for, and only one way leads on."""
    of_stage: bool = False
    steps: tuple[Step, ...] = ()
    folds: tuple[str, ...] = ()
    """Moments inside the wait."""
    places: tuple[tuple[str, Fraction], ...] = ()
    """What the pieces stand in while they wait, and how many of them."""
    mix: int = 0
    pieces: Fraction = NOTHING
    carried: tuple[MomentPart, ...] = ()
    """What is kept back or returned of it when it is used: a minute of whoever uses it."""


class _Draft(NamedTuple):
    making: MomentMaking
    key: str
    parts: list[MomentPart]


class _WayOn(NamedTuple):
    """One stands there, and goes on with what lies `offset` seconds into a moment."""

    after: After
    to: str
    offset: Fraction


class Moments:
    """Gathers the moments of a Work."""

    def __init__(self, work: Work) -> None:
        self.work = work
        self.drafts: dict[str, _Draft] = {}
        self.ways: list[_WayOn] = []
        self.fixed: list[Gap] = []
        self.loads: list[OvenTurn] = []
        self.standings: list[Standing] = []
        self.using: list[Using] = []
        self.holding: dict[tuple[str, int, int], Standing] = {}
        """By branch, mix and load: what the pieces lie in."""
        self.mixers: dict[str, str] = {}

    def seconds(self, key: str) -> Fraction:
        return sum((part.seconds for part in self.drafts[key].parts), NOTHING)

    def is_fresh(self, after: tuple[After, ...]) -> bool:
        """A new moment begins here anyhow, or has just begun with nothing but work at the oven's door."""
        return len(after) != 1 or not after[0].is_open or not self.drafts[after[0].moment].parts

    def weighing(self, making: MomentMaking) -> After:
        return self.attend(part_beside(weighing(making.made, self.work.kitchen)), (), making)

    def attend(self, part: MomentPart, after: tuple[After, ...], making: MomentMaking, apart: bool = False) -> After:
        """The part at the end of the moment that is open, or in one of its own."""
        if len(after) == 1 and after[0].is_open and not apart and not self._parts_from_mixing(after[0], part):
            key = after[0].moment
            self.drafts[key].parts.append(part)
        else:
            key = self._begin(part, making)
            for one in after:
                self.gap(one, key, NOTHING)
        if part.is_machine and part.step is not None and part.step.verb == "mix":
            mixer = mixer_of(part.step, self.work.kitchen) or self.work.mixes.mixer
            self.mixers.setdefault(key, "" if mixer is None else mixer.name)
        end = self.seconds(key)
        return After(key, end, end, pieces=part.pieces)

    def _parts_from_mixing(self, after: After, part: MomentPart) -> bool:
        """The mixer is free for others while the pieces are weighed off."""
        return part.by_piece and any(one.is_machine for one in self.drafts[after.moment].parts)

    def _begin(self, part: MomentPart, making: MomentMaking) -> str:
        stage = making.made.stage
        whose = stage.name if not making.is_dough else making.branch
        name = "/".join(
            (
                *(() if stage.shared else (self.work.formula.name,)),
                *((whose,) if whose else ()),
                part.does,
                *((f"mix {making.mix}",) if making.mix else ()),
                *((f"load {making.load}",) if making.load else ()),
            )
        )
        key, number = name, 1
        while key in self.drafts:
            number += 1
            key = f"{name}/{number}"
        self.drafts[key] = _Draft(making, key, [part])
        return key

    def gap(self, after: After, to: str, offset: Fraction) -> None:
        if after.moment == to:
            return
        self.ways.append(_WayOn(after, to, offset))
        noun = self.drafts[after.moment].making.noun
        self.standings += [Standing(place, number, noun, after.moment, to) for place, number in after.places]

    def uses(self, key: str, moment: str, offset: Fraction) -> None:
        self.using.append(Using(key, moment, offset))

    def inside(
        self, does: str, seconds: Fraction, moment: str, low: Fraction, high: Fraction, making: MomentMaking
    ) -> str:
        """A moment within a wait or a bake, between `low` and `high` seconds from the beginning of another."""
        key = self._begin(MomentPart(None, does, seconds, NOTHING, True), making)
        self.fixed.append(Gap(moment, key, low, high, NOTHING, "", False))
        return key

    # ---- what holds the pieces

    def stands(self, step: Step, moment: str, pieces: Fraction, making: MomentMaking) -> None:
        """Notes what the pieces lie in from here on."""
        vessel = self.work.kitchen.vessel(step.where[1]) if step.where is not None else None
        boils = step.verb in BOILS
        if vessel is not None and vessel.number and not boils and making.is_dough and pieces and vessel.word != "bench":
            mine = (making.branch, making.mix, making.load)
            self.holding[mine] = Standing(vessel.name, pieces, making.noun, moment, "")

    def goes_in(self, moment: str, first: Doing, making: MomentMaking) -> None:
        """A basket is free when what lay in it goes into the oven."""
        for held in self._held(first, making):
            if not self._goes_in_with(held.place):
                self.standings.append(held._replace(ends=moment))

    def _held(self, first: Doing, making: MomentMaking) -> Iterator[Standing]:
        """What the pieces of a load lie in: those of several mixes each in their own."""
        mixes = [(one.mix, one.pieces) for one in first.of] or [(making.mix, first.pieces)]
        for mix, pieces in mixes:
            keys = [(branch, mix, load) for branch in (making.branch, "") for load in (making.load, 0)]
            held = next((self.holding[key] for key in keys if key in self.holding), None)
            if held is not None:
                yield held._replace(number=min(pieces, held.number) if pieces else held.number)

    def _goes_in_with(self, place: str) -> bool:
        vessel = self.work.kitchen.vessel(place)
        return vessel is not None and vessel.word in GOES_IN_OVEN

    def cold_place(self, step: Step, pieces: Fraction) -> tuple[tuple[str, Fraction], ...]:
        """The fridge or prover that pieces wait in: the one the step names, else the only one that it can mean."""
        if not pieces:
            return ()
        if step.where is not None:
            named = [cold for cold in self.work.kitchen.colds if cold.name.casefold() in step.where[1].casefold()]
        else:
            named = [cold for cold in self.work.kitchen.colds if _suits(step, cold)]
        return ((named[0].name, pieces),) if len(named) == 1 and named[0].holds else ()

    # ---- the oven

    def put_in(self, first: Doing, after: tuple[After, ...], making: MomentMaking) -> After:
        """The pieces go through the door, at the end of what was done to them just before."""
        if first.step.at_a_time:
            return self.attend(part_of(first, self.work)._replace(by_piece=False), after, making)
        one = part_beside(loading(first.pieces, self.work.kitchen), first.pieces)
        is_bench_work = len(after) == 1 and after[0].is_open and self._is_bench_work(after[0].moment)
        return self.attend(one, after, making, apart=is_bench_work)

    def _is_bench_work(self, key: str) -> bool:
        """More than is done at an oven's door: shaping, mixing, a long while of anything."""
        return any(part.does not in AT_THE_DOOR for part in self.drafts[key].parts)

    def baked(self, put: After, phases: Sequence[Doing], making: MomentMaking) -> After:
        """From the door to the bench: the load, what is done to it meanwhile, and taking it out."""
        first = phases[0]
        oven = oven_of(first.step, self.work.kitchen)
        attended = bool(first.step.at_a_time)
        start = NOTHING if attended else put.low
        stays = put.low if attended else put.low + seconds_in_oven(phases, self.work)
        out = part_beside(taking_out(first.pieces, self.work.kitchen), first.pieces)
        take = self._begin(out, making)
        if not attended:
            for event in events_of(phases, self.work, oven):
                at = start + event.seconds
                inside = self.inside(event.does, event.lasts, put.moment, at, at + estimates.AT_THE_OVEN_LATE, making)
                self.fixed.append(Gap(inside, take, event.lasts, None, NOTHING, "", False))
        number = f" {making.load}" if making.load else ""
        share = first.room or Fraction(1)
        grams = self._grams(making, first.pieces)
        for held in self._held(first, making):
            if self._goes_in_with(held.place):
                self.standings.append(held._replace(ends=take))
        self.loads.append(
            OvenTurn(
                key=f"{self.work.formula.name}/{making.branch or making.made.stage.name}{number}",
                bread=self.work.formula.name,
                stage=making.made.stage,
                branch=making.branch,
                put=put.moment,
                take=take,
                stays=stays,
                phases=tuple(doing.step for doing in phases if oven_of(doing.step, self.work.kitchen) is not None),
                oven="" if oven is None else oven.name,
                pieces=first.pieces,
                noun=making.noun,
                grams=grams,
                share=share,
            )
        )
        end = self.seconds(take)
        return After(take, end, end, pieces=first.pieces)

    def _grams(self, making: MomentMaking, pieces: Fraction) -> Fraction:
        """What so many pieces weigh as they go in; of a stage that is baked by itself, all of it."""
        mine = [one for one in self.work.batch.pieces if not making.branch or same_noun(one.noun, making.branch)]
        number = sum((one.number for one in mine), NOTHING)
        if not making.is_dough or not number:
            return making.made.into
        return sum((one.number * one.grams for one in mine), NOTHING) * pieces / number

    # ---- the end

    def finish(self, bread: str, finished: tuple[Finished, ...]) -> WorkOfDay:
        moments = tuple(
            WorkMoment(
                key,
                bread,
                draft.making.made.stage,
                tuple(draft.parts),
                draft.making.mix,
                draft.making.load,
                draft.making.branch,
                self.mixers.get(key, ""),
                draft.making.made.stage.key if draft.making.made.stage.shared else "",
            )
            for key, draft in self.drafts.items()
        )
        gaps = (*(gap for way in self.ways for gap in self._gaps(way)), *self.fixed, *_mix_after_mix(moments))
        bowls = tuple(_bowls(moments, gaps))
        return WorkOfDay(
            bread, moments, gaps, tuple(self.loads), tuple(self.standings), bowls, finished, tuple(self.using)
        )

    def _gaps(self, way: _WayOn) -> Iterable[Gap]:
        """The wait of one way, and that its folds are over before it is.

        Of work piece by piece the first piece and the last must both lie in the range: the last comes into its wait when the
        moment ends and leaves it when the next one ends, the first as much sooner. Where that leaves no time, the middle piece.
        """
        after, moment = way.after, self.seconds(way.after.moment)
        low, high = after.low, after.high
        if not after.steps and high is not None:
            high += estimates.KEEPS if after.of_stage else estimates.STANDS
        before, then = self._by_piece(way.after), self._leading(way)
        least, most = low - way.offset - then, None if high is None else high - way.offset - before
        least = max(least, moment - way.offset)
        if most is not None and least > most:
            middle = (before + then) / 2
            least = max(low - way.offset - middle, NOTHING)
            most = max(after.high or NOTHING, low) - way.offset - middle if after.steps else least
            most = max(most, least)
        yield Gap(after.moment, way.to, least, most, after.may, after.what, after.is_cold, after.steps)
        for fold in after.folds:
            yield Gap(fold, way.to, self.seconds(fold), None, NOTHING, "", False)

    def _by_piece(self, after: After) -> Fraction:
        """Seconds by which the first piece enters a wait before the last."""
        if not after.steps:
            return NOTHING
        found = NOTHING
        for part in reversed(self.drafts[after.moment].parts):
            if not part.by_piece:
                break
            found += part.seconds * (part.pieces - 1) / part.pieces
        return found

    def _leading(self, way: _WayOn) -> Fraction:
        """Seconds by which the first piece leaves a wait before the last."""
        if way.offset or not way.after.steps:
            return NOTHING
        found = NOTHING
        for part in self.drafts[way.to].parts:
            if not part.by_piece:
                break
            found += part.seconds * (part.pieces - 1) / part.pieces
        return found


def _bowls(moments: Iterable[WorkMoment], gaps: Iterable[Gap]) -> Iterator[BowlHeld]:
    """Of each making, the bowl from its first mix to the last that comes soon enough after the one before."""
    soon = {
        (gap.before, gap.after) for gap in gaps if gap.most is not None and gap.most + gap.may <= estimates.IN_THE_BOWL
    }
    makings: dict[tuple[str, int], list[WorkMoment]] = {}
    for moment in moments:
        if moment.mixer:
            makings.setdefault((moment.stage.key, moment.mix), []).append(moment)
    for mixed in makings.values():
        first = before = mixed[0]
        for moment in mixed[1:]:
            if (before.key, moment.key) not in soon or moment.mixer != first.mixer:
                yield BowlHeld(first.mixer, first.key, before.key)
                first = moment
            before = moment
        yield BowlHeld(first.mixer, first.key, before.key)


def _mix_after_mix(moments: Iterable[WorkMoment]) -> Iterator[Gap]:
    """Mixes of one stage are weighed and mixed in the order of their numbers: on paper the second never comes before the first."""
    makings: dict[str, dict[int, list[WorkMoment]]] = {}
    for moment in moments:
        if moment.mix and not moment.branch:
            makings.setdefault(moment.stage.key, {}).setdefault(moment.mix, []).append(moment)
    for mixes in makings.values():
        for one, other in pairwise(sorted(mixes)):
            last = max((at for at, moment in enumerate(mixes[other]) if moment.mixer), default=0)
            for before, after in zip(mixes[one], mixes[other][: last + 1], strict=False):
                yield Gap(before.key, after.key, NOTHING, None, NOTHING, "", False)


def _suits(step: Step, cold: Cold) -> bool:
    """A fridge for what is cold, a prover for what it keeps warm enough."""
    if cold.word == "prover":
        warm = step.heats[0].celsius.likely if step.heats else None
        return step.verb == "prove" and cold.keeps is not None and warm is not None and abs(cold.keeps - warm) <= 2
    wants = "freezer" if step.verb == "freeze" else "fridge"
    return cold.word == wants and step.verb in COLD
