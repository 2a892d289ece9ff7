"""A job of a planned day in words: what is done to a bread, step by step, as briefly as whoever does it needs it."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from fractions import Fraction

from manchet.batch.weighing import weighings
from manchet.batch.work import Work
from manchet.cautions.registry import cautions_of
from manchet.day.floors import deck_mates, floor_at, heat_for_all
from manchet.day.jobs.values import MomentPart, WorkMoment
from manchet.day.model import DayLoad, Fire
from manchet.day.pages.day_plan import DayPlan
from manchet.day.pages.oven_settings import DeckTurn, OvenSetting, settings_of
from manchet.day.pages.oven_turns import jobs_inside
from manchet.formula.model import Step, Who
from manchet.formula.nouns import noun_for, same_noun
from manchet.quantities.printing import round_to
from manchet.records import NamedTuple
from manchet.sheets.page.measures import Measures
from manchet.sheets.parts import wording
from manchet.sheets.parts.bowl import Bowl
from manchet.sheets.parts.caution import all_cautions_at_step, cautions_of_stage
from manchet.sheets.parts.day_clock import WallTime
from manchet.sheets.parts.day_views import WorkClause, WorkLine
from manchet.sheets.parts.joining import run_on
from manchet.sheets.parts.steps import amount_moved
from manchet.sheets.parts.views import CautionNote
from manchet.sheets.parts.wording import single
from manchet.syntax.vocabulary import BRINGS_IN, MOVES_OUT
from manchet.timing.jobs.chains import pieces_of_mix

SET = "set the heat"
"""What a moment of an oven does where the next phase of a bake begins."""


class JobWords(NamedTuple):
    """Of one plan, by whose works it is made."""

    plan: DayPlan
    works: Mapping[str, Work]
    m: Measures

    def lines(self, jobs: Sequence[int], begins: int) -> tuple[WorkLine, ...]:
        """A row's lines: jobs of one stage that follow one another are one line."""
        wall, found = WallTime(self.plan, self.m), list[WorkLine]()
        for at in jobs:
            start = self.plan.begins(at)
            line = self.line(at)._replace(clock=wall.clock(start) if start != begins else "")
            last = found[-1] if found else None
            if last is not None and (last.bread, last.stage) == (line.bread, line.stage) and not last.then:
                found[-1] = last._replace(
                    clauses=(*last.clauses, *line.clauses), then=line.then, cautions=(*last.cautions, *line.cautions)
                )
            else:
                found.append(line)
        return tuple(found)

    def line(self, job: int) -> WorkLine:
        moment, said = self.plan.of.moments[job], self.plan.day.jobs[job]
        if moment is None:
            fire = next((fire for fire in self.plan.day.fires if fire.light == job), None)
            if fire is None:
                return WorkLine("", "", "", (WorkClause(self.m.words["day.break"]),))
            return WorkLine(fire.oven, "", "", tuple(map(WorkClause, self._lights(fire))))
        work = self.works[moment.bread]
        is_dough = moment.stage is work.dough.stage or moment.stage == work.dough.stage
        stage = "" if is_dough else moment.stage.name or moment.stage.word
        cold = any(wait.before == job and wait.is_cold for wait in self.plan.day.waits)
        return WorkLine(
            bread=", ".join(said.breads),
            stage=stage,
            clock="",
            clauses=tuple(self._clauses(job, moment, work)),
            then=self.m.words["day.to_the_cold"] if cold else "",
            cautions=tuple(self._cautions(moment, work)),
        )

    def brief(self, job: int) -> str:
        """`Tern loaf levain: weigh`: a job by what it begins with."""
        line = self.line(job)
        whose = " ".join(part for part in (line.bread, line.stage) if part)
        does = line.clauses[0].do if line.clauses else ""
        return f"{whose}: {does}" if whose and does else whose or does

    # ---- what is done to an oven

    def _lights(self, fire: Fire) -> Iterator[str]:
        oven = next(oven for oven in self.plan.day.ovens if oven.name == fire.oven)
        if oven.curve:
            yield self.m.words.say("day.light_to", self.m.oven(single(round_to(oven.curve[0].celsius, 0))))
            return
        yield from (self.setting(one) for one in settings_of(self.plan) if one.job == fire.light)

    def setting(self, one: OvenSetting) -> str:
        """`deck on, to 260 °C`, `set deck 2 to 230 °C`, `switch deck off`."""
        named, say = self.deck(one.oven, one.deck), self.m.words.say
        if one.turn is DeckTurn.OFF:
            return say("day.deck_off", named)
        if one.celsius is None:
            return say("day.deck_on", named)
        heat = self.m.oven(single(one.celsius))
        return say("day.deck_on_to" if one.turn is DeckTurn.ON else "day.deck_to", named, heat)

    def deck(self, oven: str, deck: int) -> str:
        """What a deck is called: by the oven where it has but one, else by its number, with the oven where there are several."""
        ovens = {one.name: one.decks for one in self.plan.day.ovens}
        name = oven or self.m.words["oven"]
        if ovens[oven] == 1:
            return name
        number = str(deck + 1)
        return (
            self.m.words.say("day.deck", number) if len(ovens) == 1 else self.m.words.say("day.deck_of", number, name)
        )

    def _next_heat(self, job: int) -> str:
        """What is set within a bake: the heat of its next phase, or what suits all that are on the deck then."""
        day = self.plan.day
        load = next((one for one in day.loads if job in jobs_inside(self.plan, one)), None)
        if load is None:
            return self.m.words["day_does.set the heat"]
        number = day.loads.index(load)
        named = self.deck(load.oven, self.plan.timetable.decks[number])
        heats = [phase for phase in self.plan.of.baked[number].phases[1:] if wording.heats(phase, self.m)]
        setting = [at for at in jobs_inside(self.plan, load) if self.sets_the_heat(at)]
        phase = heats[setting.index(job)] if job in setting and setting.index(job) < len(heats) else None
        mates = deck_mates(day, self.plan.timetable, load)
        if phase is None or (len(mates) > 1 and phase is heats[-1]):
            common = heat_for_all(mates, lambda one: one.leaves)
            heat = "" if common is None else self.m.oven(single(round_to(common / 5, 0) * 5))
        else:
            heat = wording.heats(phase, self.m)
        return self.m.words.say("day.deck_to", named, heat) if heat else self.m.words["day_does.set the heat"]

    def sets_the_heat(self, job: int) -> bool:
        """Within a bake, for its next phase."""
        moment = self.plan.of.moments[job]
        return moment is not None and any(part.does == SET for part in moment.parts)

    # ---- what is done

    def _clauses(self, job: int, moment: WorkMoment, work: Work) -> Iterator[WorkClause]:
        for part in moment.parts:
            if part.does == SET:
                yield WorkClause(self._next_heat(job), strong=True)
            elif part.does == "weigh" and work.formula.dish and moment.stage == work.dough.stage:
                yield WorkClause(self.m.words.say("day_does.lay", self._laid(work)))
            elif part.step is None:
                yield self._unwritten(job, part)
            elif (said := self._step(part.step, moment, work)).do:
                yield said
        yield from (WorkClause(self.setting(one), strong=True) for one in settings_of(self.plan) if one.job == job)

    def _unwritten(self, job: int, part: MomentPart) -> WorkClause:
        words, day = self.m.words, self.plan.day
        load = next((load for load in day.loads if job in (load.put, load.take)), None)
        if part.does in ("load", "take out") and load is not None and not load.pieces:
            heat = self._floor(load) if part.does == "load" else ""
            return WorkClause(words["day_does." + part.does], heat, strong=True)
        if part.does in ("load", "take out") and load is not None:
            alike = [one for one in day.loads if one.bread == load.bread and same_noun(one.noun, load.noun)]
            all_of = sum(one.pieces for one in alike)
            goes_in, noun = part.does == "load", noun_for(Fraction(all_of), load.noun)
            if all_of == load.pieces:
                said = words.say("day.all_in" if goes_in else "day.all_out", str(load.pieces), noun)
            else:
                said = words.say("day.some_in" if goes_in else "day.some_out", str(load.pieces), str(all_of), noun)
            return WorkClause(said, self._floor(load) if goes_in else "", strong=True)
        number, of = self._counted(job, part.does)
        said = words.known("day_does", part.does) or wording.verb_alone(part.does, self.m)
        return WorkClause(words.say("day.counted", said, str(number), str(of)) if of > 1 else said)

    def _laid(self, work: Work) -> str:
        """`Ebb rye 2 slices each`: what a dish is built on."""
        plates = work.batch.pieces[0].number
        lines = ((one.portion, one.grams / plates) for one in work.dough.weighed)
        said = ((one.name, wording.amount_each(one.counted, grams, True, self.m)) for one, grams in lines)
        return ", ".join(f"{name} {amount}" for name, amount in said)

    def _floor(self, load: DayLoad) -> str:
        """`floor about 270 °C` of an oven that falls, `at 230 °C` of one that is set."""
        floor = floor_at(self.plan.day, self.plan.timetable, load)
        if floor is None:
            return ""
        falls = any(oven.name == load.oven and oven.curve for oven in self.plan.day.ovens)
        heat = self.m.oven(single(round_to(floor / 5, 0) * 5))
        return self.m.words.say("day.floor" if falls else "day.set_to", heat)

    def _counted(self, job: int, does: str) -> tuple[int, int]:
        """Which of the folds of one wait it is, and of how many."""
        key = self.plan.day.jobs[job].key.split(f"/{does}")[0]
        mine = self.plan.of.moments[job]
        alike = [
            at
            for at, moment in enumerate(self.plan.of.moments)
            if moment is not None and mine is not None
            and self.plan.day.jobs[at].key.split(f"/{does}")[0] == key
            and moment.parts[0].does == does and (moment.mix, moment.load) == (mine.mix, mine.load)
        ]  # fmt: skip
        alike.sort(key=self.plan.begins)
        return (alike.index(job) + 1, len(alike)) if job in alike else (1, 1)

    def _step(self, step: Step, moment: WorkMoment, work: Work) -> WorkClause:
        m = self.m
        if step.verb in BRINGS_IN and step.goes:
            return WorkClause(f"{run_on(wording.opening(step, m))} {self._adds(step, moment, work)}")
        if step.verb == "divide" and work.batch.pieces:
            return WorkClause(f"{run_on(wording.opening(step, m))} {self._pieces(moment, work)}")
        moved = self._moved(step, work)
        with_what, each = wording.what_is_applied(step, m)
        how_long = [] if step.per else wording.how_long(step, m)
        do = [
            run_on(wording.opening(step, m)),
            *wording.manner(step, m),
            with_what,
            *wording.place(step, m),
            moved,
            *how_long,
        ]
        told = [wording.around_to(step, m), *wording.more(step, m), each]
        how = ", ".join(filter(None, told))
        if step.how and step.verb != "do":
            how = f"{how}: {step.how}" if how else step.how
        return WorkClause(" ".join(filter(None, do)), how, wording.look(step, m))

    def _adds(self, step: Step, moment: WorkMoment, work: Work) -> str:
        """`A salt, instant yeast`: under the letter that they are weighed under."""
        bowl = self._bowl(moment.stage.key, work)
        letters = {} if bowl is None else bowl.letters
        letter = next((letters[goes.key] for goes in step.goes if goes.key in letters), "")
        return " ".join(filter(None, (letter, ", ".join(goes.name for goes in step.goes))))

    def _pieces(self, moment: WorkMoment, work: Work) -> str:
        said = []
        for piece in (one for one in work.batch.pieces if one.number):
            number = pieces_of_mix(work, piece.noun, moment.mix) if moment.mix else piece.number
            said.append(self.m.words.say("day.pieces", self.m.plain(single(number), 1), str(self.m.piece(piece.grams))))
        return " + ".join(said)

    def _moved(self, step: Step, work: Work) -> str:
        if step.verb not in MOVES_OUT:
            return ""
        table = next(
            (one for one in weighings(work, self.m.system).value if step in one.making.stage.stage.steps), None
        )
        return "" if table is None else amount_moved(step, Bowl(table, work, self.m), self.m)

    def _bowl(self, key: str, work: Work) -> Bowl | None:
        table = next((one for one in weighings(work, self.m.system).value if one.making.stage.stage.key == key), None)
        return None if table is None else Bowl(table, work, self.m)

    # ---- what can hurt

    def _cautions(self, moment: WorkMoment, work: Work) -> Iterator[CautionNote]:
        """Those of the steps that are done, of the waits that begin with them, and of the stage where it is weighed."""
        mine = cautions_of(work)
        weighs = any(part.does == "weigh" for part in moment.parts)
        if weighs:
            yield from cautions_of_stage(mine, moment.stage.key, self.m)
        ways: list[tuple[int | None, Sequence[Step]]] = [(None, moment.stage.steps)]
        if moment.stage == work.dough.stage:
            ways += [
                (at, way.steps) for at, way in enumerate(work.formula.branches) if same_noun(way.noun, moment.branch)
            ]
        done = [part.step for part in moment.parts if part.step is not None]
        for branch, steps in ways:
            begins = weighs and branch is None
            for number, step in enumerate(steps):
                begins = step in done or (begins and step.who is Who.WAITING)
                if begins:
                    yield from all_cautions_at_step(mine, moment.stage.key, number, self.m, branch)
            if work.formula.preparation and begins:
                yield from all_cautions_at_step(mine, moment.stage.key, len(steps), self.m)
