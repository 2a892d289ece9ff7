"""The dish sheet of one dish for so many plates: from exact values to text, in the order in which it is built."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.model import StageBatch
from manchet.batch.parts_needed import is_weighed, parts_needed
from manchet.batch.preparations_needed import weighed_beside
from manchet.batch.work import Work
from manchet.cautions.registry import cautions_of
from manchet.formula.model import CountedAmount, Portion, Step
from manchet.formula.nouns import noun_for, singular
from manchet.larder.ingredient import Ingredient
from manchet.sheets.form import Ahead, PageSetup
from manchet.sheets.forms.dish.view import DishSheet, DishStage, PartCaution, PlateRow, StageRow
from manchet.sheets.page.issue import running_head
from manchet.sheets.page.measures import NBSP, Measures
from manchet.sheets.page.words import words_of
from manchet.sheets.parts.allergens import allergen_line
from manchet.sheets.parts.approval import no_longer_approved, status_of
from manchet.sheets.parts.caution import all_cautions_at_step, caution_note, cautions_of_no_stage, cautions_of_stage
from manchet.sheets.parts.make_ahead import make_ahead
from manchet.sheets.parts.own_pictures import own_illustrations
from manchet.sheets.parts.step_pictures import step_illustrations
from manchet.sheets.parts.views import AheadItem, Box
from manchet.sheets.parts.wording import boxes, done_and_how, has_reading, look, notes, single, verb_alone
from manchet.timing.jobs.rounds import rounds_of


def dish_sheet(work: Work, page: PageSetup) -> DishSheet:
    """The view. Pure: the day, the version and the house's habits all come in with the page."""
    words = words_of(page.house.words)
    m = Measures(page.house, words)
    formula, piece = work.formula, work.batch.pieces[0]
    number, one = m.plain(single(piece.number), 1), singular(piece.noun)
    unapproved = no_longer_approved(formula, page.issue)
    writer = _Writer(work, page, m)
    return DishSheet(
        title=formula.name,
        language=words["language"],
        paper=page.house.paper,
        running=running_head(formula.name, "", page.issue),
        status="" if unapproved else status_of(formula, m),
        warning=words["dish.not_approved"] if unapproved else "",
        about=formula.about,
        amount=f"{number} {noun_for(piece.number, piece.noun)}",
        plate=_plate(work, m),
        ahead=make_ahead(page.ahead, m),
        at_hand=tuple(_at_hand(work, page.ahead, m)),
        of_parts=tuple(_of_parts(page.ahead, m)),
        cautions=cautions_of_no_stage(cautions_of(work), [made.stage.key for made in work.batch.stages], m),
        stages=tuple(writer.stage(made) for made in work.batch.stages[:-1]),
        one=words.say("dish.one", one),
        all_of_them=words.say("dish.all", number),
        rows=tuple(writer.rows()),
        limit="" if formula.serve_within is None else words.say("dish.serve", m.duration(formula.serve_within)),
        rounds=_rounds(work, m),
        notes=formula.notes,
        figures=own_illustrations((*formula.pictures, *formula.dough.pictures), page.pictures),
        contains=allergen_line(work, m),
    )


def _plate(work: Work, m: Measures) -> str:
    piece = work.batch.pieces[0]
    if is_weighed(work.batch) and piece.baked_grams is not None:
        return m.words.say("dish.about_each", m.about(piece.baked_grams))
    unknown = next(one.part.noun for one in parts_needed(work.batch) if one.part.grams is None)
    return m.words.say("dish.unknown_plate", unknown)


def _of_parts(ahead: tuple[Ahead, ...], m: Measures) -> Iterator[PartCaution]:
    """The cautions of what was made ahead that are about how it is kept: its crew meets no other of them."""
    for each in ahead:
        for one in cautions_of(each.work):
            if one.name in KEPT_UNDER_FAT:
                yield PartCaution(each.work.formula.name, caution_note(one, m))


def _at_hand(work: Work, ahead: tuple[Ahead, ...], m: Measures) -> Iterator[AheadItem]:
    """What goes on it straight out of the larder, in all, and how cold it is kept."""
    known = {step.applied.name: step.applied.ingredient for step in work.formula.steps if step.applied is not None}
    wanted = dict(weighed_beside(work.batch))
    for weighed in work.dough.weighed:
        if weighed.portion.ingredient is not None:
            name = weighed.portion.name
            wanted[name] = wanted.get(name, Fraction(0)) + weighed.grams
            known.setdefault(name, weighed.portion.ingredient)
    for name, grams in wanted.items():
        figure, _, unit = m.mass(grams).rpartition(NBSP)
        yield AheadItem(name, figure, unit, keeps=_kept(known.get(name), m), boxes=_cold_box(known.get(name), m))


KEPT_UNDER_FAT = frozenset({"plants-under-fat", "plants-in-fat-today"})

COLD = Fraction(8)
"""Degrees Celsius: what is kept at no more than that comes out of a fridge."""


def _kept(ingredient: Ingredient | None, m: Measures) -> str:
    if ingredient is None or ingredient.kept_at is None or ingredient.kept_at > COLD:
        return ""
    return m.words.say("dish.kept", m.degrees(single(ingredient.kept_at)))


def _cold_box(ingredient: Ingredient | None, m: Measures) -> tuple[Box, ...]:
    return (Box("", m.degree()),) if _kept(ingredient, m) else ()


def _rounds(work: Work, m: Measures) -> str:
    """`4 rounds of 6 plates`, of the last heat that goes in rounds; of what stands in it, `5 rounds of 8 slices`, where no
    whole plates make a round."""
    plates = work.batch.pieces[0]
    heats = [(step, rounds_of(step, plates.number, work.kitchen)) for step in work.formula.dough.steps]
    step, rounds = next(((step, one) for step, one in reversed(heats) if one is not None), (None, None))
    if step is None or rounds is None or rounds.number < 2:
        return ""
    by_plate = rounds.at_a_time % step.stands_each == 0
    a_round = rounds.at_a_time / step.stands_each if by_plate else Fraction(rounds.at_a_time)
    number = plates.number if by_plate else plates.number * step.stands_each
    noun = plates.noun if by_plate else _standing(work)
    last = number - (rounds.number - 1) * a_round
    of = f"{m.plain(single(a_round), 1)} {noun_for(a_round, noun)}"
    if last == a_round:
        return m.words.say("dish.rounds", str(rounds.number), of)
    return m.words.say("dish.last_round", str(rounds.number), str(rounds.number - 1), of, m.plain(single(last), 1))


def _standing(work: Work) -> str:
    """What stands in the heat of a dish, by its noun."""
    units = {one.portion.counted.unit for one in work.dough.weighed if one.portion.counted is not None}
    return "slices" if units == {"slices"} else "pieces"


class _Writer:
    """Writes the rows of a dish and of its stages."""

    def __init__(self, work: Work, page: PageSetup, m: Measures) -> None:
        self.work, self.page, self.m = work, page, m
        told = {part.caution.hazard for part in _of_parts(page.ahead, m)}
        self.cautions = tuple(one for one in cautions_of(work) if one.name not in told)
        """What stands above the plate already, at its part, is not said again in its row."""
        self.plates = work.batch.pieces[0].number
        self.parts = {one.part.key: one for one in parts_needed(work.batch)}

    def rows(self) -> Iterator[PlateRow]:
        """What is laid down, the last of it with the first thing done; then each step."""
        stage, number = self.work.dough.stage, 0
        steps = [(at, step) for at, step in enumerate(stage.steps) if step.serve_within is None]
        laid = self.work.dough.weighed
        for at, weighed in enumerate(laid):
            number += 1
            row = self._laid(weighed.portion, weighed.grams, str(number))
            if at == len(laid) - 1 and steps and steps[0][1].applied is None:
                row = self._done(row, *steps.pop(0), stage.key, stage.steps)
            yield row
        for at, step in steps:
            number += 1
            yield self._done(self._put_on(step, str(number)), at, step, stage.key, stage.steps)

    def stage(self, made: StageBatch) -> DishStage:
        stage = made.stage
        rows = tuple(
            StageRow(
                w.portion.name, *self._figure(w.grams), (self.m.words["bowl.to_taste"],) if w.portion.to_taste else ()
            )
            for w in made.weighed
        )
        steps = tuple(
            self._done(self._put_on(step, ""), at, step, stage.key, stage.steps) for at, step in enumerate(stage.steps)
        )
        return DishStage(stage.name, rows, steps, cautions_of_stage(self.cautions, stage.key, self.m), stage.notes)

    def _laid(self, portion: Portion, grams: Fraction, number: str) -> PlateRow:
        weight, unit, beside, in_all = self._amount(portion.stage, portion.counted, grams / self.plates)
        return PlateRow(number, weight, unit, portion.name, beside, in_all, "", "", "")

    def _put_on(self, step: Step, number: str) -> PlateRow:
        applied = step.applied
        if applied is None:
            return PlateRow(number, "", "", "", "", "", "", "", "")
        each = applied.grams if applied.each else applied.grams / self.plates
        weight, unit, beside, in_all = self._amount(applied.stage, applied.counted, each)
        return PlateRow(number, weight, unit, applied.name, beside, in_all, "", "", "")

    def _amount(self, key: str, counted: CountedAmount | None, each: Fraction) -> tuple[str, str, str, str]:
        """For one plate a figure and its unit; what one slice weighs; and the same for all plates."""
        words = self.m.words
        if counted is None:
            return *self._figure(each), "", self.m.mass(each * self.plates)
        part = self.parts[key].part
        number = each / counted.grams
        unit = words["say.slice" if number == 1 else "say.slices"]
        weight = words.say("dish.a_slice", self.m.each(counted.grams))
        if counted.unit != "slices":
            unit, weight = noun_for(number, part.noun), words.say("dish.a_piece", self.m.each(counted.grams))
        beside = weight if counted.known else words.say("dish.unknown_slice", part.noun)
        return self._number(number), unit, beside, self._number(number * self.plates)

    def _number(self, number: Fraction) -> str:
        return self.m.plain(single(number), 2)

    def _figure(self, grams: Fraction) -> tuple[str, str]:
        figure, _, unit = self.m.each(grams).rpartition(NBSP)
        return figure, unit

    def _done(self, row: PlateRow, at: int, step: Step, key: str, steps: tuple[Step, ...]) -> PlateRow:
        bare = step._replace(applied=None)
        done, how = done_and_how(bare, self.m)
        if step.applied is not None:
            verb = self.m.words["verbs." + step.verb]
            alone = self.m.words["dish.put_on"] if step.verb == "top" else verb_alone(step.verb, self.m)
            done = _capital(alone) + done[len(verb) :]
        figures = step_illustrations(steps, "", (), self.work, self.page.pictures, self.m)[at]
        return row._replace(
            done=done,
            how=how,
            until=look(step, self.m),
            notes=notes(step, self.m),
            boxes=self._boxes(step),
            cautions=all_cautions_at_step(self.cautions, key, at, self.m),
            figures=figures,
        )

    def _boxes(self, step: Step) -> tuple[Box, ...]:
        """A reading where the step asks for one, and the heat of what it lies on; the hour of no step of a plate."""
        heated = (Box("", self.m.degree()),) if step.heats and not has_reading(step) else ()
        return (*heated, *boxes(step, self.m)[:-1])


def _capital(text: str) -> str:
    return text[:1].upper() + text[1:]
